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

std::array<double, kMonths> monthlyMeans(const Weather& weather, const std::vector<float>& column) {
  std::array<double, kMonths> means{};
  std::array<int, kMonths> days{};
  for (std::size_t d = 0; d < weather.days(); ++d) {
    means.at(weather.month[d]) += column[d];
    ++days.at(weather.month[d]);
  }
  for (std::size_t m = 0; m < kMonths; ++m) means[m] /= std::max(days[m], 1);
  return means;
}

}  // namespace core::water
