#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/project/project.h"
#include "core/water/water_plan.h"
#include "core/works/calendar.h"

#include <optional>
#include <string>
#include <vector>

namespace core::works {

/// One day of the first filling.
struct FillDay {
  Day date;
  double inflow_m3;     ///< let in
  double lost_m3;       ///< evaporated and seeped
  double volume_m3;     ///< at the end of the day
  double level_m;       ///< at the end of the day
  double bare_wall_m2;  ///< wall above the water at the end of the day
  double wetting_l;     ///< to keep the sacks on the bare wall wet
};

/// A band of the wall and how long its sacks must stay wet.
struct WallBand {
  double from_m, to_m;            ///< above the finished floor
  double area_m2;                 ///< along the slope
  Day wet_from;                   ///< the day after the last coat
  std::optional<Day> covered_on;  ///< the day by whose end water covers it; absent: not within a year, or it
                                  ///< lies above the overflow level
  Day wet_until;  ///< last day of wetting: the day before it is covered, and no earlier than the end of
                  ///< curing; never covered below the overflow level: the last day reckoned
  int days;       ///< of wetting
};

/// The first filling, day by day.
struct Filling {
  std::string inflow_from;   ///< source, entered, none
  double inflow_m3_day = 0;  ///< on the first day
  Day start{}, latest_start{};
  std::optional<Day> full_on;  ///< absent: not within a year, or no inflow is known
  bool is_held_back = false;   ///< the limit on the rise held it back on some day
  std::vector<FillDay> days;
  std::vector<WallBand> bands;      ///< from the floor up
  double wetting_after_cure_l = 0;  ///< water for sacks after the end of curing
  double carried_m3 = 0;            ///< to be brought by hand for the water to cover all walls by the
                                    ///< latest start of filling plus the curing days of the last coat, as
                                    ///< far as the limit on the rise lets it
};

/// What the filling needs to know of dates.
struct FillingDates {
  Day last_coat;
  Day last_cure;  ///< last day of its curing
  Day start;      ///< of filling
};

/// The rise from the real inflow: each day V = V + inflow - losses, the inflow held to what raises the level
/// by no more than the limit. Losses and inflow of the month from the water plan, where there is one.
/// At most 366 days.
Filling filling(const geometry::TankGeometry& geometry, const Project& project, const water::WaterPlan* water,
                const FillingDates& dates);

/// How long the first filling takes.
struct FillTime {
  int days = 0;  ///< as far as they are reckoned, at most 366; 0: no inflow is known
  bool ends_full = false;
};
FillTime fillTime(const geometry::TankGeometry& geometry, const Project& project,
                  const water::WaterPlan* water, Day start);

/// Days until full from `start` on; nothing when not within a year or no inflow is known. To lay the bar.
std::optional<int> daysToFill(const geometry::TankGeometry& geometry, const Project& project,
                              const water::WaterPlan* water, Day start);

}  // namespace core::works
