#pragma once

#include "core/base/figure.h"
#include "core/hydraulics/result.h"

#include <string_view>
#include <vector>

namespace core::hydraulics {

/// Hydraulic data with low, typical, high, unit and source, in this order of keys:
/// - roughness.<wall> [mm], equivalent sand roughness
/// - hazen_williams.<wall>
/// - minor.<fitting>: K of V^2/2g; the spread between handbooks is the range
/// - manning.<bed>
/// - erosion.<soil or cover> [m/s]: mean speed at which a channel begins to scour; the soils carry the
/// project's
///   soil keys
/// - weir.<crest>: share of the theoretical broad-crested flow
/// - orifice.<edge>: discharge coefficient
/// - storm_runoff.<ground>: runoff coefficient of the rational method
/// - siphon.reserve [m]
/// - pipe.reserve [m]: kept between the lowest pressure in a line and the water's vapour
/// - silt.reserve (area over ideal area), silt.speed (factor of sqrt(d in mm) [m/s]), silt.grain_density,
///   silt.packing, silt.length_over_width
/// - leak.<band> [mm/day]: upper end of the band is `typical`
/// - outlet.<kind>.head [m], outlet.<kind>.flow [L/min] of one
const std::vector<Figure>& figures();

/// The figure with `key`, else unknown_key.
Result<Figure> figure(std::string_view key);

/// `typical` of a figure that the table is known to hold. @throws std::logic_error when it does not.
double typical(std::string_view key);

/// All figures whose key begins with `prefix`, in the table's order.
std::vector<Figure> figuresOf(std::string_view prefix);

}  // namespace core::hydraulics
