#pragma once

#include "ui/handouts/handout.h"
#include "ui/handouts/sheet.h"

#include <QString>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ui::handouts {

/// Sources that a sheet refers to, numbered in the order in which they first come up.
class SourceList {
public:
  explicit SourceList(const Formatter& format) : format_(format) {}

  /// "[2]"; for what the user entered a word instead.
  QString mark(std::string_view key);
  /// Marks of several.
  QString marks(const std::vector<std::string_view>& keys);
  /// All sources so far with their tags.
  void print(Sheet& sheet) const;

private:
  const Formatter& format_;
  std::vector<std::string> keys_;
};

/// Number of a field in decimals that show it whole, with its unit.
QString valueOf(std::string_view field_id, double value, const Formatter& format);

/// Decimals that show all of a column's numbers whole.
int decimalsOf(const std::vector<std::optional<double>>& values);

/// Table of the site and of all that is entered of the water by itself, not in rows.
void addSingleInputs(Sheet& sheet, const Content& content, SourceList& sources);

/// Tables of what needs water; nothing when there is none.
void addBeds(Sheet& sheet, const Content& content, SourceList& sources);
void addCrops(Sheet& sheet, const Content& content, SourceList& sources);
void addAnimals(Sheet& sheet, const Content& content, SourceList& sources);

/// Table of the usual figures behind what was entered: low, typical, high.
void addUsualFigures(Sheet& sheet, const Content& content, SourceList& sources);

}  // namespace ui::handouts
