#pragma once

#include "ui/view3d/pit_view_base.h"
#include "ui/view3d/shaded_part.h"

#include <QImage>
#include <functional>
#include <vector>

namespace ui::view3d {

enum class Quality { quick, smooth };  ///< smooth: drawn at twice the size and halved

/// Picture of the parts that `shows` lets through, drawn without OpenGL; `size` in real pixels.
/// @param edge_width_px width of the thin lines along edges, in real pixels
QImage softwarePicture(const std::vector<ShadedPart>& parts,
                       const std::function<bool(const std::string&)>& shows, const Projection& projection,
                       QSize size, bool dark, Quality quality, double edge_width_px);

}  // namespace ui::view3d
