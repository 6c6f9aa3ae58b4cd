#pragma once

#include "core/plan.h"
#include "ui/drawings/dimensions.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/section_ground.h"
#include "ui/drawings/section_shape.h"
#include "ui/text/formatter.h"

namespace ui::drawings {

inline constexpr double kSectionEarth_mm = 5;  ///< depth of the hatched ground

/// Names the levels beside the pit, over and under the ground on its right, then measures widths and depths
/// in rows outside all of it.
void addSectionLabels(Figure& figure, const SectionShape& shape, const SectionGround& ground,
                      const core::Plan& plan, const Formatter& format, const Lettering& lettering,
                      LongText long_text);

}  // namespace ui::drawings
