#pragma once

#include "core/base/source.h"
#include "core/base/unit.h"
#include "core/project/project.h"

#include <optional>
#include <span>
#include <string_view>

namespace core::site {

/// A number from which a finding is raised. An officer may change those tagged own.
struct Threshold {
  std::string_view key;  ///< stable, "pit.ladder_from"
  double value;
  Unit unit;
  std::string_view source;  ///< key
  Tag tag;                  ///< how well this number is founded, where the source covers several
};

/// All thresholds of site and safety, each key once.
std::span<const Threshold> thresholds();

/// The threshold with `key`. @throws std::logic_error when there is none.
const Threshold& threshold(std::string_view key);

/// Soil of an excavation as 29 CFR 1926 Subpart P, appendix A, sorts it.
enum class ExcavationSoil { stable_rock, type_a, type_b, type_c };

/// Class taken for a soil until someone competent has tested it: never type A, for clay with cracks or
/// seepage is not; rock counts as type B until it is known to be sound. Unknown soil is type C. Own proposal.
ExcavationSoil excavationSoil(std::optional<Soil> soil);

/// Steepest side allowed in a class, horizontal run per unit height; 0 for a vertical side.
/// Appendix B, table B-1; for depths under 20 ft (6.1 m). @source osha_1926p
double steepestBatter(ExcavationSoil soil);

/// Steepest side of a type A cut at most 12 ft (3.67 m) deep that stands open 24 hours at most. @source
/// osha_1926p
inline constexpr double kShortTermTypeABatter = 0.5;

/// How far the pit must stay from a downhill edge. Two rules, both given where they disagree.
struct EdgeDistance {
  double own_m;   ///< own proposal: height of the edge plus depth of the pit
  double code_m;  ///< a third of the height of the edge, at most 12.2 m: building-code setback of footings
                  ///< above a slope

  double largest() const { return own_m > code_m ? own_m : code_m; }
  bool disagree(double distance_m) const { return (distance_m >= own_m) != (distance_m >= code_m); }
};

EdgeDistance edgeDistance(double edge_height_m, double pit_depth_m);

}  // namespace core::site
