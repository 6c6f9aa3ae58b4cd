#pragma once

#include <optional>

namespace core::water::fao56 {

/// Equations of FAO Irrigation and Drainage Paper 56. Temperatures [C], pressures [kPa], radiation
/// [MJ m-2 day-1], latitude [rad], wind at 2 m [m/s], elevation [m].

double atmosphericPressure(double elevation_m);                 ///< [kPa] eq. 7
double psychrometricConstant(double pressure_kpa);              ///< [kPa/C] eq. 8
double saturationPressure(double t_c);                          ///< e0 [kPa] eq. 11
double meanSaturationPressure(double t_min_c, double t_max_c);  ///< es [kPa] eq. 12
double saturationSlope(double t_c);                             ///< Delta [kPa/C] eq. 13
double vapourPressureFromHumidity(double t_min_c, double t_max_c, double rh_min, double rh_max);  ///< eq. 17
double vapourPressureFromMeanHumidity(double t_min_c, double t_max_c, double rh_mean);            ///< eq. 19
double vapourPressureFromPsychrometer(double t_dry_c, double t_wet_c, double pressure_kpa,
                                      double a_psy);  ///< eq. 15, 16
double inverseSunDistance(int day_of_year);           ///< dr eq. 23
double solarDeclination(int day_of_year);             ///< [rad] eq. 24
double sunsetHourAngle(double latitude_rad,
                       double declination_rad);  ///< [rad] eq. 25; 0 or pi in polar night and day
double extraterrestrialRadiation(double latitude_rad, int day_of_year);  ///< Ra eq. 21
double daylightHours(double latitude_rad, int day_of_year);              ///< N [h] eq. 34
double solarRadiation(double ra, double sun_h, double daylight_h);       ///< Rs eq. 35
double solarRadiationFromTemperature(double ra, double t_min_c, double t_max_c, double k_rs);  ///< Rs eq. 50
double clearSkyRadiation(double ra, double elevation_m);                                       ///< Rso eq. 37
double netShortwave(double rs);                                                                ///< Rns eq. 38
double netLongwave(double t_min_c, double t_max_c, double ea_kpa, double rs_over_rso);         ///< Rnl eq. 39
double windAt2m(double wind_m_s, double height_m);                                             ///< eq. 47
double soilHeatFluxMonth(double t_before_c, double t_after_c);                                 ///< G eq. 43
double soilHeatFluxFromPrevious(double t_before_c, double t_now_c);                            ///< G eq. 44
/// ET0 [mm/day] eq. 6
double penmanMonteith(double t_mean_c, double net_radiation, double soil_heat, double wind2_m_s,
                      double es_kpa, double ea_kpa, double slope_kpa, double gamma_kpa);
/// ET0 [mm/day] eq. 52. @param ra [MJ m-2 day-1]
double hargreaves(double t_mean_c, double t_min_c, double t_max_c, double ra);

/// What was measured on one day (or as the mean of a month); what is absent is estimated as the paper says:
/// humidity from dew point at Tmin (eq. 48), radiation from the temperature range (eq. 50), wind 2 m/s.
struct DayInput {
  double t_min_c = 0, t_max_c = 0;
  std::optional<double> humidity_percent, wind_m_s, sun_hours;
};

struct Place {
  double latitude_rad = 0;
  double elevation_m = 0;
  double k_rs = 0.16;  ///< eq. 50
};

/// Daily ET0 by Penman-Monteith, missing data estimated, soil heat flux zero (eq. 42). Never below 0.
/// [mm/day]
double et0PenmanMonteith(const DayInput& day, const Place& place, int day_of_year);
/// Daily ET0 by Hargreaves. Never below 0. [mm/day]
double et0Hargreaves(const DayInput& day, const Place& place, int day_of_year);

}  // namespace core::water::fao56
