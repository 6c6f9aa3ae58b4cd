#include "core/water/weather_builder.h"

#include <algorithm>
#include <cstdint>
#include <numbers>
#include <utility>

namespace core::water {
namespace {

constexpr int kMostDays = 366;
constexpr double kUsualWind_m_s = 2;  // FAO-56 chapter 3, missing wind speed data
constexpr double kOvercast = 0.3;     // Rs/Rso of a fully clouded sky, FAO-56 chapter 4
constexpr double kNightCloud = 0.5;   // Rs/Rso where the sun does not rise, FAO-56 chapter 4

fao56::Place fao56Place(const Climate& climate, const WeatherPlace& place) {
  return {place.latitude_deg * std::numbers::pi / 180, place.elevation_m, climate.radiation_factor};
}

/// Mean relative humidity when the dew point is the day's least temperature [%].
double humidityFromDewPoint(const fao56::DayInput& day) {
  // FAO-56 eq. 48 and 19
  return 100 * fao56::saturationPressure(day.t_min_c) /
         fao56::meanSaturationPressure(day.t_min_c, day.t_max_c);
}

float single(double value) {
  return static_cast<float>(value);
}

}  // namespace

int wettestMonth(const std::array<double, kMonths>& rain_mm) {
  const auto driest = std::min_element(rain_mm.begin(), rain_mm.end()) - rain_mm.begin();
  const double most = *std::max_element(rain_mm.begin(), rain_mm.end());
  auto month = static_cast<std::size_t>(driest);
  while (rain_mm[month] < most) month = (month + 1) % kMonths;
  return static_cast<int>(month);
}

WeatherBuilder::WeatherBuilder(const Climate& climate, const WeatherPlace& place, std::size_t days)
    : place_(fao56Place(climate, place)),
      gamma_kpa_(fao56::psychrometricConstant(fao56::atmosphericPressure(place.elevation_m))),
      hargreaves_first_(climate.et0_method == Et0Method::hargreaves) {
  for (int day = 1; day <= kMostDays; ++day) {
    const double ra = fao56::extraterrestrialRadiation(place_.latitude_rad, day);
    skies_.push_back({ra, fao56::daylightHours(place_.latitude_rad, day),
                      fao56::clearSkyRadiation(ra, place_.elevation_m)});
  }
  for (auto* column : {&weather_.rain_mm, &weather_.t_min_c, &weather_.t_max_c, &weather_.humidity_percent,
                       &weather_.wind_m_s, &weather_.et0_mm, &weather_.et0_other_mm}) {
    column->reserve(days);
  }
  weather_.month.reserve(days);
  weather_.day.reserve(days);
  weather_.day_of_year.reserve(days);
}

void WeatherBuilder::startYear() {
  weather_.year_start.push_back(weather_.days());
}

void WeatherBuilder::add(const DayOfYear& date, double rain_mm, const fao56::DayInput& day) {
  const Sky& sky = skies_[static_cast<std::size_t>(date.number - 1)];
  const double t_mean = (day.t_min_c + day.t_max_c) / 2;  // FAO-56 eq. 9
  double et0 = penmanMonteith(day, sky);
  double other = std::max(0.0, fao56::hargreaves(t_mean, day.t_min_c, day.t_max_c, sky.ra));
  if (hargreaves_first_) std::swap(et0, other);
  weather_.rain_mm.push_back(single(rain_mm));
  weather_.t_min_c.push_back(single(day.t_min_c));
  weather_.t_max_c.push_back(single(day.t_max_c));
  weather_.humidity_percent.push_back(
      single(day.humidity_percent ? *day.humidity_percent : humidityFromDewPoint(day)));
  weather_.wind_m_s.push_back(single(day.wind_m_s.value_or(kUsualWind_m_s)));
  weather_.et0_mm.push_back(single(et0));
  weather_.et0_other_mm.push_back(single(other));
  weather_.month.push_back(static_cast<std::uint8_t>(date.month));
  weather_.day.push_back(static_cast<std::uint8_t>(date.day));
  weather_.day_of_year.push_back(static_cast<std::uint16_t>(date.number));
}

Weather WeatherBuilder::take(int first_month) {
  if (!weather_.year_start.empty()) startYear();
  weather_.first_month = first_month;
  return std::move(weather_);
}

double WeatherBuilder::penmanMonteith(const fao56::DayInput& day, const Sky& sky) const {
  const double t_mean = (day.t_min_c + day.t_max_c) / 2;  // FAO-56 eq. 9
  const double es = fao56::meanSaturationPressure(day.t_min_c, day.t_max_c);
  const double ea = day.humidity_percent ? fao56::vapourPressureFromMeanHumidity(day.t_min_c, day.t_max_c,
                                                                                 *day.humidity_percent)
                                         : fao56::saturationPressure(day.t_min_c);  // FAO-56 eq. 48
  const double wind = day.wind_m_s.value_or(kUsualWind_m_s);
  return std::max(0.0, fao56::penmanMonteith(t_mean, netRadiation(day, ea, sky), 0, wind, es, ea,
                                             fao56::saturationSlope(t_mean), gamma_kpa_));
}

double WeatherBuilder::netRadiation(const fao56::DayInput& day, double ea_kpa, const Sky& sky) const {
  const double rs = day.sun_hours
                        ? fao56::solarRadiation(sky.ra, *day.sun_hours, sky.daylight_h)
                        : fao56::solarRadiationFromTemperature(sky.ra, day.t_min_c, day.t_max_c, place_.k_rs);
  const double ratio = sky.clear_sky > 0 ? std::clamp(rs / sky.clear_sky, kOvercast, 1.0) : kNightCloud;
  return fao56::netShortwave(rs) - fao56::netLongwave(day.t_min_c, day.t_max_c, ea_kpa, ratio);
}

}  // namespace core::water
