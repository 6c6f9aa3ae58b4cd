#pragma once

#include "core/geometry/scene.h"

#include <vector>

namespace core::geometry {

/// Several tanks in one picture at one scale: cut open along their length, full to the overflow, from left to
/// right along x with their rims level and `gap_m` of ground between the pits; a person stands at the first
/// one. One dimension, "option_1", "option_2", ..., lies before each tank for its name; its own dimensions
/// are left out. Part ids end in "_1", "_2", ... @pre tanks are not empty
Scene sideBySide(const std::vector<TankGeometry>& tanks, double gap_m, int facets_per_circle = 48);

}  // namespace core::geometry
