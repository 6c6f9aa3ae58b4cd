#pragma once

#include "core/geometry/built.h"
#include "core/geometry/tank_geometry.h"
#include "core/works/schedule.h"

#include <optional>
#include <string>
#include <vector>

namespace core::works {

/// The pit at the end of a day, or at a stage of the works when there are no dates.
struct BuildDay {
  std::string stage;  ///< natural, pegs, platform, dig, dug, stone_bed, coat_1, cure_1, ..., fill, full
  std::optional<Day> date;
  geometry::Built built;
};

/// The stages from pegs to full tank in order, without dates: digging half done, the tank half full.
std::vector<BuildDay> buildStages(const geometry::TankGeometry& geometry, bool has_platform);

/// Every day from the day before the works to the day when the tank is full, or to the last of filling.
/// Digging goes on evenly by volume over the worked days of its tasks; the level of filling is that of
/// Works::filling. Empty when there are no days.
std::vector<BuildDay> buildDays(const geometry::TankGeometry& geometry, const Works& works);

/// Depth at which a share of the volume between two depths of the pit is dug [m]; by bisection, within 0.1
/// mm.
double depthDug(const geometry::TankGeometry& geometry, double from_m, double to_m, double share);

}  // namespace core::works
