#pragma once

#include "core/project/project.h"

#include <string_view>

#include <tl/expected.hpp>

namespace core::site {

/// Strength and weight of a soil.
struct SoilStrength {
  double cohesion_kpa = 0;
  double friction_deg = 0;
  double unit_weight_kn_m3 = 18;
};

/// Strength by soil class: what can be expected without tests. Low is for a check that must be safe.
struct SoilStrengthRange {
  SoilStrength low, typical, high;
  std::string_view source;  ///< key
};

const SoilStrengthRange& soilStrength(Soil soil);

enum class StabilityFault {
  bad_input,             ///< a weight, height, factor or angle outside what the formula is for
  outside_table,         ///< face or friction angle outside the table of stability numbers
  stands_at_any_height,  ///< friction alone holds the slope: there is no critical height
};

using StabilityNumber = tl::expected<double, StabilityFault>;

/// Strength left when a factor of safety is put on cohesion and on tan(friction) alike.
SoilStrength mobilised(const SoilStrength& soil, double factor);

/// Height of a vertical cut that just stands [m]: 4 c / gamma tan(45 + phi / 2). Plane slip; no crack, no
/// water, nothing standing on the edge. @source culmann
StabilityNumber verticalCutHeight(const SoilStrength& soil, double factor);

/// Height of a cut with a plane face that just stands [m], by Culmann's plane slip through the toe. Too
/// large for flat faces: over 60 degrees within some 10 % of curved slips for clay with friction, elsewhere
/// use taylorHeight(). @param face_deg over the friction angle, at most 90 @source culmann
StabilityNumber culmannHeight(const SoilStrength& soil, double face_deg, double factor);

/// Stability number c / (gamma H) of a slope that just stands, circular slips through the toe. Table for face
/// 30 to 90 and friction 0 to 25 degrees, interpolated both ways; nothing outside it. With friction 0, a face
/// under 53 degrees and deep soft ground below the toe the number rises to 0.181: see deepTaylorNumber().
/// @source taylor_1937
StabilityNumber taylorNumber(double face_deg, double friction_deg);

/// Stability number without friction where soft ground reaches far below the toe: 0.181 for a face under 53
/// degrees, taylorNumber() above. @source taylor_1937
StabilityNumber deepTaylorNumber(double face_deg);

/// Height of a cut that just stands by the stability number [m].
StabilityNumber taylorHeight(const SoilStrength& soil, double face_deg, double factor);

/// Factor of safety, on cohesion and friction alike, of a cut by the stability number.
StabilityNumber taylorFactor(const SoilStrength& soil, double face_deg, double height_m);

enum class SlopeWater {
  dry,
  seepage,    ///< flow along the slope, water up to the surface
  submerged,  ///< still water over the whole slope
};

/// A long even slope with a slip along a plane `depth_m` under its surface, measured downward.
struct InfiniteSlope {
  SoilStrength soil;  ///< unit weight: as it is, saturated for seepage and submerged
  double slope_deg = 0;
  double depth_m = 0;
  SlopeWater water = SlopeWater::dry;
  double water_kn_m3 = 9.81;
};

/// Factor of safety of a long slope:
///   c / (g H cos2(b) tan(b)) + (g'/g) tan(phi) / tan(b)
/// with the effective weight g' against slip for seepage, for submerged also as the driving one.
StabilityNumber infiniteSlopeFactor(const InfiniteSlope& slope);

/// Depth at which a long slope just slips [m]: c / (cos2(b) (g tan(b) - g' tan(phi))).
/// `depth_m` is not used.
StabilityNumber infiniteSlopeCriticalDepth(const InfiniteSlope& slope);

}  // namespace core::site
