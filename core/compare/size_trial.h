#pragma once

#include "core/compare/platforms.h"
#include "core/compare/search.h"
#include "core/water/water_plan.h"
#include "core/works/labour.h"

#include <optional>

namespace core::compare {

/// Limits in the order in which they are held against a size.
enum class Limit { geometry, pit_depth, cut, platform, people, bags, cost };

/// Tries one size after another on one project: what core::plan would say of it, and no more than that.
/// Each thread needs its own.
class SizeTrial {
public:
  /// @param in_force the project with its records in force, see works::inForce
  /// @param plan of the project; must outlive this
  SizeTrial(Project in_force, const Plan& plan);
  SizeTrial(const SizeTrial&) = delete;
  SizeTrial& operator=(const SizeTrial&) = delete;

  /// Puts the numbers of its size into a candidate, all but the years; the cost may be less than it is, by
  /// the days of filling that only the schedule tells. The limit that it breaks first, or nothing; then
  /// curve() is that of the tank.
  std::optional<Limit> attempt(Candidate& candidate);
  const water::TankCurve& curve() const { return curve_; }

  /// What a size that broke no limit costs, its works laid out day by day. @pre isByCost(plan)
  double costOf(const Candidate& size);

  /// Curve of a size that broke no limit.
  water::TankCurve curveFor(const Candidate& size);

private:
  Project project_;  ///< with the size that is tried
  Tank entered_;
  std::optional<water::WaterPlan> water_;  ///< for the days of filling
  bool has_prices_;
  std::optional<double> most_cut_m_;  ///< height at which the soil just stands
  Platforms platforms_;
  water::TankCurve curve_;

  double fullCost(const works::LabourInput& input) const;
  bool isSound() const;
  std::optional<Limit> digging(const geometry::TankGeometry& tank) const;
  std::optional<Limit> building(const geometry::TankGeometry& tank, const works::Platform& platform,
                                Candidate& candidate) const;
};

/// True when money is asked for and a price is known.
bool isByCost(const Plan& plan);

}  // namespace core::compare
