#pragma once

#include "core/water/crops.h"
#include "core/water/weather.h"

#include <vector>

namespace core::water {

/// Kc of mid season or end, adjusted to the climate: Kc + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h/3)^0.3.
/// Wind is held to 1..6 m/s, RHmin to 20..80 %, h to 0.1..10 m. @source fao56 eq. 62 and 65
double adjustedKc(double kc, double wind_m_s, double rh_min_percent, double height_m);

/// Kc on a day of the season (day 1 is the day of planting), straight lines in the development and late
/// stages. @source fao56 eq. 66
/// @return nothing outside of the season
std::optional<double> kcOnDay(const Crop& crop, int day);

/// A crop with its mid and end Kc adjusted to the mean wind and RHmin of its mid and late stage; the end Kc
/// only when it is over 0.45.
Crop adjusted(const Crop& crop, const Weather& weather, int plant_month, int plant_day);

struct BedInput {
  Crop crop;
  int plant_month = 1;
  int plant_day = 1;
  double soil_water_mm_per_m = 140;
};

/// Water that the root zone of a bed needs each day [mm over the bed], before the method's efficiency.
/// A bucket of the root depth: depletion rises by Kc ET0 and falls by rain (what overfills it drains); each
/// day of the season it is brought back to the depletion the crop bears (p x soil water x root depth). It
/// starts at that depletion on the day of planting: rain before planting is not counted. A season may run
/// over the end of a year; the first year begins with the season that the last one leaves. @source fao56 eq.
/// 82 to 85
std::vector<float> netIrrigation_mm(const BedInput& bed, const Weather& weather);

/// Kc ET0 of a bed each day [mm], 0 outside of the season.
std::vector<float> cropUse_mm(const BedInput& bed, const Weather& weather);

/// Runoff into the tank from a catchment each day [m3]: runoff share x area x rain, less the first flush on
/// the first wet day after a dry day.
std::vector<float> runoff_m3(const Catchment& catchment, const Weather& weather);

}  // namespace core::water
