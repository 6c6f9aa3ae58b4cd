#pragma once

#include "core/project/project.h"

namespace support {

/// A tank on a hill with a summer monsoon, beds in the dry season and a small tap; invented.
inline core::Project waterProject() {
  core::Project project;
  project.site.latitude_deg = 27.5;
  project.site.elevation_m = 1400;
  project.water.emplace();
  core::Water& water = *project.water;
  constexpr double kRain[]{20, 25, 35, 60, 120, 260, 400, 370, 210, 60, 8, 12};
  constexpr double kWetDays[]{2, 3, 4, 6, 11, 17, 23, 22, 14, 5, 1, 1};
  constexpr double kMin[]{4, 6, 10, 13, 16, 19, 20, 20, 18, 14, 9, 5};
  constexpr double kMax[]{18, 20, 24, 27, 28, 28.5, 27.5, 27.5, 27, 25.5, 22.5, 19};
  for (std::size_t m = 0; m < core::kMonths; ++m) {
    core::ClimateMonth& month = water.climate.months[m];
    month.rain_mm = kRain[m];
    month.wet_days = kWetDays[m];
    month.t_min_c = kMin[m];
    month.t_max_c = kMax[m];
    water.source.months[m] = {0.3, 24};
  }
  water.climate.years = 30;
  water.climate.rain_cv_percent = 18;
  water.beds.push_back({"tomato", 200, 2, 15, core::IrrigationMethod::watering_can, {}});
  water.animals.push_back({core::Animal::goat_or_sheep, 4, {}});
  return project;
}

}  // namespace support
