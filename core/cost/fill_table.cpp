#include "core/cost/fill_table.h"

#include "core/works/filling.h"

#include <algorithm>
#include <cmath>

namespace core::cost {
namespace {

/// The first filling with the flow of the source multiplied.
class ScaledFilling {
public:
  explicit ScaledFilling(const RangesInput& input)
      : input_(input), project_(input.project), water_(input.water ? *input.water : water::WaterPlan()) {}

  std::optional<int> days(double factor) {
    if (project_.works->fill_inflow_l_per_day)
      project_.works->fill_inflow_l_per_day = *input_.project.works->fill_inflow_l_per_day * factor;
    for (std::size_t m = 0; project_.water && m < project_.water->source.months.size(); ++m)
      project_.water->source.months[m].flow_l_per_min =
          input_.project.water->source.months[m].flow_l_per_min * factor;
    for (std::size_t m = 0; input_.water && m < kMonths; ++m)
      water_.months[m].source = input_.water->months[m].source * factor;
    return works::daysToFill(input_.geometry, project_, input_.water ? &water_ : nullptr,
                             input_.works->filling->start);
  }

private:
  const RangesInput& input_;
  Project project_;
  water::WaterPlan water_;
};

}  // namespace

double FillTable::factorAt(std::size_t place) const {
  if (place == kSteps) return 1;
  const double share = static_cast<double>(place % kSteps) / kSteps;
  if (place == 2 * kSteps) return high_;
  return place < kSteps ? low_ + (1 - low_) * share : 1 + (high_ - 1) * share;
}

std::optional<FillTable> FillTable::make(const RangesInput& input, const Triangular& flow) {
  if (!input.works || !input.works->filling || !input.project.works) return {};
  FillTable table;
  table.low_ = flow.low;
  table.high_ = flow.high;
  ScaledFilling filling(input);
  for (std::size_t place = 0; place < table.days_.size(); ++place) {
    const std::optional<int> days = filling.days(table.factorAt(place));
    if (!days) return {};
    table.days_[place] = *days;
  }
  return table;
}

double FillTable::operator()(double factor) const {
  const bool is_left = factor < 1;
  const double width = is_left ? 1 - low_ : high_ - 1;
  if (width <= 0) return days_[kSteps];
  const double steps = (is_left ? factor - low_ : factor - 1) / width * kSteps;
  const std::size_t within = std::min(static_cast<std::size_t>(steps), kSteps - 1);
  const std::size_t place = within + (is_left ? 0 : kSteps);
  const double days =
      days_[place] + (days_[place + 1] - days_[place]) * (steps - static_cast<double>(within));
  return std::floor(days + 0.5);
}

}  // namespace core::cost
