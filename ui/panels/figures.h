#pragma once

#include "core/plan.h"
#include "ui/text/formatter.h"

#include <QString>
#include <vector>

namespace ui {

/// One answer as people read it.
struct Figure {
  QString id;
  QString name;
  QString value;      ///< in big letters
  QString rest;       ///< what belongs to it, in small letters
  QString reckoning;  ///< formula, inputs and source
};

/// What a household asks first, always the same figures in the same order; a value that is not known is a
/// dash.
std::vector<Figure> figures(const core::Project& project, const core::Plan& plan, const Formatter& format);

}  // namespace ui
