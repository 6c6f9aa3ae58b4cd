#include "core/water/evapotranspiration.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::water::fao56 {
namespace {

using std::numbers::pi;

// Constants as printed in FAO Irrigation and Drainage Paper 56.
constexpr double kSolarConstant = 0.0820;        // Gsc [MJ m-2 min-1]
constexpr double kStefanBoltzmann = 4.903e-9;    // [MJ K-4 m-2 day-1]
constexpr double kAlbedo = 0.23;                 // of the grass reference crop
constexpr double kAngstromA = 0.25;              // as: share of Ra that comes through an overcast sky
constexpr double kAngstromB = 0.50;              // bs: what clear sky adds
constexpr double kMmPerMj = 0.408;               // 1 / 2.45 MJ/kg, latent heat at 20 C [mm per MJ m-2]
constexpr double kSeaLevelPressure_kpa = 101.3;  // P0
constexpr double kKelvinRadiation = 273.16;      // of eq. 39
constexpr double kKelvinEt0 = 273;               // of eq. 6
constexpr double kUsualWind_m_s = 2;             // world mean where wind was not measured, chapter 3
constexpr double kOvercast = 0.3;                // Rs/Rso of a fully clouded sky, chapter 4
constexpr double kNightCloud = 0.5;              // Rs/Rso taken where the sun does not rise, chapter 4
constexpr double kMinutesPerDay = 24 * 60;

/// Rs/Rso held to what a sky can be.
double relativeRadiation(double rs, double rso) {
  return rso > 0 ? std::clamp(rs / rso, kOvercast, 1.0) : kNightCloud;
}

double meanTemperature(const DayInput& day) {
  return (day.t_min_c + day.t_max_c) / 2;
}

double vapourPressure(const DayInput& day) {
  if (day.humidity_percent)
    return vapourPressureFromMeanHumidity(day.t_min_c, day.t_max_c, *day.humidity_percent);
  return saturationPressure(day.t_min_c);  // FAO-56 eq. 48 in eq. 14
}

double radiation(const DayInput& day, const Place& place, int day_of_year, double ra) {
  if (!day.sun_hours) return solarRadiationFromTemperature(ra, day.t_min_c, day.t_max_c, place.k_rs);
  return solarRadiation(ra, *day.sun_hours, daylightHours(place.latitude_rad, day_of_year));
}

}  // namespace

double atmosphericPressure(double elevation_m) {
  return kSeaLevelPressure_kpa * std::pow((293 - 0.0065 * elevation_m) / 293, 5.26);  // FAO-56 eq. 7
}

double psychrometricConstant(double pressure_kpa) {
  return 0.665e-3 * pressure_kpa;  // FAO-56 eq. 8
}

double saturationPressure(double t_c) {
  return 0.6108 * std::exp(17.27 * t_c / (t_c + 237.3));  // FAO-56 eq. 11
}

double meanSaturationPressure(double t_min_c, double t_max_c) {
  return (saturationPressure(t_min_c) + saturationPressure(t_max_c)) / 2;  // FAO-56 eq. 12
}

double saturationSlope(double t_c) {
  return 4098 * saturationPressure(t_c) / ((t_c + 237.3) * (t_c + 237.3));  // FAO-56 eq. 13
}

double vapourPressureFromHumidity(double t_min_c, double t_max_c, double rh_min, double rh_max) {
  // FAO-56 eq. 17
  return (saturationPressure(t_min_c) * rh_max + saturationPressure(t_max_c) * rh_min) / 200;
}

double vapourPressureFromMeanHumidity(double t_min_c, double t_max_c, double rh_mean) {
  return rh_mean / 100 * meanSaturationPressure(t_min_c, t_max_c);  // FAO-56 eq. 19
}

double vapourPressureFromPsychrometer(double t_dry_c, double t_wet_c, double pressure_kpa, double a_psy) {
  return saturationPressure(t_wet_c) - a_psy * pressure_kpa * (t_dry_c - t_wet_c);  // FAO-56 eq. 15, 16
}

double inverseSunDistance(int day_of_year) {
  return 1 + 0.033 * std::cos(2 * pi / 365 * day_of_year);  // FAO-56 eq. 23
}

double solarDeclination(int day_of_year) {
  return 0.409 * std::sin(2 * pi / 365 * day_of_year - 1.39);  // FAO-56 eq. 24
}

double sunsetHourAngle(double latitude_rad, double declination_rad) {
  // FAO-56 eq. 25, held where the sun does not rise or set
  return std::acos(std::clamp(-std::tan(latitude_rad) * std::tan(declination_rad), -1.0, 1.0));
}

double extraterrestrialRadiation(double latitude_rad, int day_of_year) {
  const double d = solarDeclination(day_of_year);
  const double ws = sunsetHourAngle(latitude_rad, d);
  const double height =
      ws * std::sin(latitude_rad) * std::sin(d) + std::cos(latitude_rad) * std::cos(d) * std::sin(ws);
  return kMinutesPerDay / pi * kSolarConstant * inverseSunDistance(day_of_year) * height;  // FAO-56 eq. 21
}

double daylightHours(double latitude_rad, int day_of_year) {
  return 24 / pi * sunsetHourAngle(latitude_rad, solarDeclination(day_of_year));  // FAO-56 eq. 34
}

double solarRadiation(double ra, double sun_h, double daylight_h) {
  if (daylight_h <= 0) return 0;
  return (kAngstromA + kAngstromB * std::min(sun_h / daylight_h, 1.0)) * ra;  // FAO-56 eq. 35
}

double solarRadiationFromTemperature(double ra, double t_min_c, double t_max_c, double k_rs) {
  return k_rs * std::sqrt(std::max(t_max_c - t_min_c, 0.0)) * ra;  // FAO-56 eq. 50
}

double clearSkyRadiation(double ra, double elevation_m) {
  return (0.75 + 2e-5 * elevation_m) * ra;  // FAO-56 eq. 37
}

double netShortwave(double rs) {
  return (1 - kAlbedo) * rs;  // FAO-56 eq. 38
}

double netLongwave(double t_min_c, double t_max_c, double ea_kpa, double rs_over_rso) {
  const double t4 = (std::pow(t_max_c + kKelvinRadiation, 4) + std::pow(t_min_c + kKelvinRadiation, 4)) / 2;
  // FAO-56 eq. 39
  return kStefanBoltzmann * t4 * (0.34 - 0.14 * std::sqrt(ea_kpa)) * (1.35 * rs_over_rso - 0.35);
}

double windAt2m(double wind_m_s, double height_m) {
  return wind_m_s * 4.87 / std::log(67.8 * height_m - 5.42);  // FAO-56 eq. 47
}

double soilHeatFluxMonth(double t_before_c, double t_after_c) {
  return 0.07 * (t_after_c - t_before_c);  // FAO-56 eq. 43
}

double soilHeatFluxFromPrevious(double t_before_c, double t_now_c) {
  return 0.14 * (t_now_c - t_before_c);  // FAO-56 eq. 44
}

double penmanMonteith(double t_mean_c, double net_radiation, double soil_heat, double wind2_m_s,
                      double es_kpa, double ea_kpa, double slope_kpa, double gamma_kpa) {
  const double energy = kMmPerMj * slope_kpa * (net_radiation - soil_heat);
  const double air = gamma_kpa * 900 / (t_mean_c + kKelvinEt0) * wind2_m_s * (es_kpa - ea_kpa);
  return (energy + air) / (slope_kpa + gamma_kpa * (1 + 0.34 * wind2_m_s));  // FAO-56 eq. 6
}

double hargreaves(double t_mean_c, double t_min_c, double t_max_c, double ra) {
  const double range = std::sqrt(std::max(t_max_c - t_min_c, 0.0));
  return 0.0023 * (t_mean_c + 17.8) * range * kMmPerMj * ra;  // FAO-56 eq. 52, Ra in mm/day
}

double et0PenmanMonteith(const DayInput& day, const Place& place, int day_of_year) {
  const double ra = extraterrestrialRadiation(place.latitude_rad, day_of_year);
  const double rs = radiation(day, place, day_of_year, ra);
  const double ea = vapourPressure(day);
  const double cloud = relativeRadiation(rs, clearSkyRadiation(ra, place.elevation_m));
  const double rn = netShortwave(rs) - netLongwave(day.t_min_c, day.t_max_c, ea, cloud);  // FAO-56 eq. 40
  const double t = meanTemperature(day);                                                  // FAO-56 eq. 9
  const double et0 = penmanMonteith(t, rn, 0, day.wind_m_s.value_or(kUsualWind_m_s),
                                    meanSaturationPressure(day.t_min_c, day.t_max_c), ea, saturationSlope(t),
                                    psychrometricConstant(atmosphericPressure(place.elevation_m)));
  return std::max(et0, 0.0);
}

double et0Hargreaves(const DayInput& day, const Place& place, int day_of_year) {
  const double ra = extraterrestrialRadiation(place.latitude_rad, day_of_year);
  return std::max(hargreaves(meanTemperature(day), day.t_min_c, day.t_max_c, ra), 0.0);
}

}  // namespace core::water::fao56
