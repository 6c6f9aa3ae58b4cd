#include "core/water/weather.h"

#include <algorithm>
#include <cmath>

namespace core::water {
namespace {

bool isKnown(const ClimateMonth& month) {
  const auto known = [](const std::optional<double>& value) { return value && std::isfinite(*value); };
  return known(month.rain_mm) && known(month.wet_days) && known(month.t_min_c) && known(month.t_max_c);
}

}  // namespace

bool isClimateKnown(const Climate& climate) {
  if (climate.kind == ClimateKind::daily) return !climate.daily.empty();
  return climate.months.size() == kMonths &&
         std::all_of(climate.months.begin(), climate.months.end(), isKnown);
}

Weather weatherYears(const Climate& climate, const WeatherPlace& place) {
  if (!isClimateKnown(climate)) return {};
  return climate.kind == ClimateKind::daily ? fromRecord(climate, place)
                                            : generate(climate, place, climate.years);
}

}  // namespace core::water
