#pragma once

#include "core/geometry/scene.h"

#include <QColor>

#include <Eigen/Core>

namespace ui::view3d {

/// Whether a part is the stripes on cut or filled ground, which are darker than that ground and have no edge
/// lines.
bool isPattern(const core::geometry::Part& part);

/// Colour of a part, by what it is: earth ochre, cut ground reddish, filled ground olive, stone grey, coats
/// in warm tones that differ in lightness too.
QColor faceColour(const core::geometry::Part& part);
/// The same part where it is cut: a stronger tone.
QColor sectionColour(const core::geometry::Part& part);
/// Thin line along the sharp edges of a part.
QColor edgeColour(const QColor& face);

/// Colours around the parts.
struct Surroundings {
  QColor background;
  QColor line;   ///< dimension lines and their text
  QColor halo;   ///< around a dimension line, so that it reads on any part
  QColor label;  ///< behind the text
};
Surroundings surroundings(bool dark);

/// Two lights fixed to the viewer and an even light, in the viewer's axes (x right, y up, z toward the
/// viewer).
struct Lights {
  Eigen::Vector3f key = Eigen::Vector3f(-0.40F, 0.52F, 0.75F).normalized();
  Eigen::Vector3f fill = Eigen::Vector3f(0.70F, 0.10F, 0.60F).normalized();
  float even = 0.55F, key_strength = 0.42F, fill_strength = 0.12F;

  /// Part of its colour that a face shows, from its unit normal in the viewer's axes.
  float shade(const Eigen::Vector3f& normal) const {
    return even + key_strength * std::max(0.0F, key.dot(normal)) +
           fill_strength * std::max(0.0F, fill.dot(normal));
  }
};

/// Parts of the distance to the eye by which faces seen from behind are pushed back, so that of two solids
/// that touch the outer face shows, and by which edges are drawn nearer, so that they show on their own
/// faces.
constexpr float kBehind = 2e-4F;
constexpr float kNearer = 3e-4F;

constexpr double kEdgeWidth_px = 1.1;
constexpr double kDimensionWidth_px = 1.3;
constexpr double kHaloWidth_px = 3.6;
constexpr double kTick_px = 6;

}  // namespace ui::view3d
