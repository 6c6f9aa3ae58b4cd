#pragma once

#include "core/plan.h"
#include "ui/text/formatter.h"

#include <QString>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ui::words {

/// How one number of the plan was reckoned.
struct Reckoning {
  std::string id;     ///< place in the plan's JSON, "[]" for rows: "tank.full_volume_m3", "coats[].face_m2"
  std::string group;  ///< one of reckoningGroups()
  QString name;
  QString value;            ///< with unit; of rows all, or least and most where they are many
  QString formula;          ///< in words and plain symbols
  QString inputs;           ///< numbers that went in, with units
  std::string_view source;  ///< key
};

/// Parts of the job in the order of the sheet: tank, earthwork, lining, customary, labour, dates, records,
/// one_go, filling, weather, water, source, pipes, emptying, overflow, trap, leak, notes, site, stability,
/// bill, linings, ranges, options.
std::span<const std::string_view> reckoningGroups();
/// Places that can have a reckoning, whatever the plan.
std::vector<std::string> reckoningIds();
QString reckoningGroupName(std::string_view group);

/// Every number of the plan, group by group. What the plan does not hold has none.
std::vector<Reckoning> reckonings(const core::Project& project, const core::Plan& plan,
                                  const Formatter& format);
/// Those of one group.
std::vector<Reckoning> reckoningsOf(std::string_view group, const core::Project& project,
                                    const core::Plan& plan, const Formatter& format);

}  // namespace ui::words
