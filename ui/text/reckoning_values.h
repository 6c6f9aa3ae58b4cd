#pragma once

#include "core/exchange/plan_leaves.h"
#include "core/project/project.h"
#include "ui/text/formatter.h"

#include <QString>
#include <QStringList>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ui::words {

/// A row of a place and its value as people read it.
struct RowText {
  QString name;  ///< empty where the place has no rows
  QString value;
};

/// Whether a row bears a name; an empty one names all, "coat_*" all that begin so.
bool isRow(const core::exchange::PlanRow& row, std::string_view wanted);

/// A number with at least the decimals that its unit usually has, and as many more as show it to half a
/// percent.
QString enoughDecimals(double value, core::Unit unit, const Formatter& format);

/// Value of a row of a plan's place, a number in `unit`, a day or a word; empty when there is none.
QString rowValue(const std::string& path, const core::exchange::PlanRow& row, core::Unit unit,
                 const core::Project& project, const Formatter& format);

/// What a row is called: "Coat 1", "Cement", "Mar", "3".
QString rowName(const std::string& path, const core::exchange::PlanRow& row, const Formatter& format);

/// "Coat 1 2.10 m³; Coat 2 2.31 m³".
QString listed(const std::vector<RowText>& rows);

}  // namespace ui::words
