#pragma once

#include "core/geometry/built.h"
#include "core/geometry/tank_geometry.h"

#include <vector>

namespace core::geometry {

/// The surface of a tank as far as it is built, seen from above: from the edge of its floor outward and up to
/// the level ground at the edge of pit or rim collar. The floor is the flat cap inside the first point, so a
/// capped profile of the points is what is open to the sky: pit as dug less the layers that are there. Joints
/// between coat, collar and ground have a point of their own. A coat that stands over an open collar ledge is
/// gone over and down on its outside. Before anything is dug: the one point where the edge will be.
/// @pre layers stand only in a pit that is dug to its floor
/// @param arc_steps chords of the cove
std::vector<ProfilePoint> insideSoFar(const TankGeometry& tank, const Built& built, int arc_steps = 12);

}  // namespace core::geometry
