#include "ui/text/water_sizes.h"

#include "ui/text/units.h"
#include "ui/text/worth.h"

namespace ui::words {
namespace {

constexpr double kAnySize = 0.01;  // of the present tank

/// The target is met by the present tank and by nearly none at all.
bool isAnyEnough(const core::water::WaterPlan& plan) {
  const bool is_tiny = *plan.smallest_full_m3 < kAnySize * plan.curve.full_m3;
  return is_tiny && (plan.storage.empty() || plan.years_in_ten >= plan.storage.front().years_in_ten);
}

}  // namespace

MetSize smallestTank(const core::water::WaterPlan& plan, const Formatter& format) {
  using Kind = MetSize::Kind;
  if (!plan.smallest_full_m3) return {Kind::none, litresWorth(plan.most_tried_m3, format, Rounding::down)};
  if (isAnyEnough(plan)) return {Kind::any, {}};
  return {Kind::size, litresWorth(*plan.smallest_full_m3, format, Rounding::up)};
}

MetSize largestBeds(const core::water::WaterPlan& plan, const Formatter& format) {
  using Kind = MetSize::Kind;
  const double area_m2 = plan.largest_bed_area_m2.value_or(0);
  const double shown = area_m2 * units::shown(core::Unit::square_metre, format.system()).per_si;
  if (shown < 1) return {Kind::none, areaWorth(plan.most_tried_area_m2, format, Rounding::down)};
  const bool is_all = area_m2 >= plan.most_tried_area_m2;
  return {is_all ? Kind::all_tried : Kind::size, areaWorth(area_m2, format, Rounding::down)};
}

}  // namespace ui::words
