#pragma once

#include "ui/drawings/drawings.h"

namespace ui {

/// How drawings and charts are made on the screen.
inline drawings::Style screenStyle(bool dark) {
  constexpr double kScreenText_mm = 2.4;
  drawings::Style style;
  style.dark = dark;
  style.text_mm = kScreenText_mm;
  style.fixed_scale = false;
  return style;
}

}  // namespace ui
