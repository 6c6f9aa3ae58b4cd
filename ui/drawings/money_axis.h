#pragma once

#include "core/project/project.h"
#include "ui/drawings/chart_axes.h"

#include <QString>

namespace ui::drawings {

/// Money on an axis is a plain number; its currency stands in the title.
AxisUnit moneyUnit();
/// "Money needed (Rs)"; without a currency the name alone.
QString moneyTitle(const QString& what, const core::Project& project);

}  // namespace ui::drawings
