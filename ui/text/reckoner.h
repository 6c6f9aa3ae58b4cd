#pragma once

#include "core/exchange/plan_leaves.h"
#include "ui/text/reckoning_entries.h"
#include "ui/text/reckoning_values.h"
#include "ui/text/reckonings.h"

#include <cstddef>
#include <string>
#include <unordered_map>
#include <vector>

namespace ui::words {

/// Puts entries and the plan's values together.
class Reckoner {
public:
  Reckoner(const core::Project& project, const core::Plan& plan, const Formatter& format);

  /// Adds the reckonings of a group.
  void add(std::string_view group, std::vector<Reckoning>& to) const;

private:
  struct Use {
    const ReckoningEntry* entry;
    const ReckoningPlace* place;  // null: none
  };

  core::Project project_;  // in force
  core::Project blank_;    // what a new project has
  Formatter format_;
  bool has_map_;
  std::vector<core::exchange::PlanLeaf> leaves_;
  std::unordered_map<std::string, const core::exchange::PlanLeaf*> by_path_;
  std::vector<ReckoningPart> parts_;
  std::unordered_map<std::string, std::vector<Use>> uses_;  // by path

  const core::exchange::PlanLeaf* leafAt(const std::string& path) const;
  std::string token(const std::string& path) const;
  core::Unit unitOf(const std::string& path, const std::string& row) const;
  RowText rowText(const core::exchange::PlanLeaf& leaf, std::size_t row) const;
  QString valueOf(const core::exchange::PlanLeaf& leaf, const std::vector<std::size_t>& rows) const;
  QString ends(const core::exchange::PlanLeaf& leaf, const std::vector<std::size_t>& rows) const;
  void addEntry(const ReckoningPart& part, const Use& use, std::vector<Reckoning>& to) const;
  void addBySource(const Reckoning& blank, const core::exchange::PlanLeaf& leaf,
                   const std::vector<std::size_t>& rows, std::vector<Reckoning>& to) const;
  QString inputsOf(const Use& use) const;
  QString planInput(std::string path) const;
  QString fieldInput(std::string_view id) const;
  std::string_view fieldSource(std::string_view id) const;
  std::string_view sourceOf(const ReckoningEntry& entry) const;
  std::string_view figureSource(std::string_view wanted) const;
};

}  // namespace ui::words
