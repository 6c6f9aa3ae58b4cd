#pragma once

#include "core/geometry/scene.h"

#include <array>
#include <vector>

#include <Eigen/Core>

namespace ui::view3d {

/// Corner of a face, as both views draw it: three follow one another to a triangle and share one normal and
/// colour.
struct FaceVertex {
  std::array<float, 3> point;   ///< [m]
  std::array<float, 3> normal;  ///< unit, outward
  std::array<float, 4> colour;  ///< red, green, blue, alpha 0..1
};

/// Straight edge of a part where its faces meet at an angle.
struct EdgeLine {
  std::array<float, 3> from, to;  ///< [m]
  std::array<float, 4> colour;
};

/// A part made ready for drawing.
struct ShadedPart {
  std::string id;
  core::geometry::Role role;
  std::vector<FaceVertex> faces;
  std::vector<EdgeLine> edges;
};

/// Faces and sharp edges of a part in its colours. Triangles without area are left out.
ShadedPart shaded(const core::geometry::Part& part);

}  // namespace ui::view3d
