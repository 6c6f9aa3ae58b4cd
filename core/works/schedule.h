#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/lining/quantities.h"
#include "core/project/project.h"

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace core::works {

/// A published or reported rate for one kind of work.
struct Rate {
  std::string key;  ///< digging.<soil>, stone_bed, plaster, mixing
  double low, typical, high;
  Unit unit;
  std::string source;
};

/// The table of rates.
const std::vector<Rate>& rates();

struct Labour {
  std::string task;            ///< excavate, stone_bed, coat_1, coat_2, ..., curing
  double days;                 ///< person-days at the rate used
  double low_days, high_days;  ///< at the table's low and high rate
  std::string skill;           ///< labourer, mason_and_helpers
  double quantity;             ///< m3 or m2 worked
  double rate;                 ///< person-days per quantity
  std::string source;
};

/// One bar of the schedule; start and finish are both worked (or wetted) days.
struct Task {
  std::string id;  ///< excavate, stone_bed, coat_1, cure_1, coat_2, cure_2, ..., fill_by
  std::chrono::year_month_day start, finish;
  int days;  ///< working days; calendar days for curing
  int crew;  ///< people; 0 where hands are needed for wetting only
};

/// The one-go check of a coat: people who must be there to finish it in a day.
struct CoatCrew {
  int coat;
  int people;  ///< as entered
  int needed;
};

struct Works {
  std::vector<Labour> labour;
  double person_days = 0;  ///< all of labour together
  std::vector<Task> schedule;
  std::vector<CoatCrew> coat_crews;
  std::optional<double> digging_days_by_norm, digging_days_by_practice;  ///< two rules of thumb side by side
};

/// @param site soil decides the digging rate when the user gave none; unknown soil counts as firm loam and is
/// said in a finding A coat takes one day however many people it needs; the check of the crew stands beside
/// it.
Works schedule(const geometry::TankGeometry& geometry, const Site& site, const lining::Quantities& quantities,
               const Lining& lining, const core::Works& works);

}  // namespace core::works
