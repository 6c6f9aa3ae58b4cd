#pragma once

#include "core/plan.h"
#include "core/project/project.h"
#include "ui/text/formatter.h"

#include <QString>

namespace app {

/// The plan as plain text for a terminal: what the tank holds, clear and pit sizes, layers, materials, work,
/// findings.
QString planSummary(const core::Project& project, const core::Plan& plan, const ui::Formatter& format);

}  // namespace app
