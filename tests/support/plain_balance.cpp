#include "tests/support/plain_balance.h"

#include <algorithm>
#include <cmath>

namespace support {

double PlainTank::surface(double z_m) const {
  const double d = batter * z_m;
  return floor_m2 + perimeter_m * d + corners * d * d;
}

double PlainTank::wetted(double z_m) const {
  const double top_perimeter = perimeter_m + 2 * corners * batter * z_m;
  return floor_m2 + (perimeter_m + top_perimeter) / 2 * std::hypot(z_m, batter * z_m);
}

double PlainTank::volume(double z_m) const {
  return z_m / 6 * (surface(0) + 4 * surface(z_m / 2) + surface(z_m)) - cove_m3;
}

double PlainTank::level(double volume_m3) const {
  double low = 0, high = full_level_m;
  while (high - low > 1e-11) {
    const double middle = (low + high) / 2;
    (volume(middle) > volume_m3 ? high : low) = middle;
  }
  return (low + high) / 2;
}

PlainTank plainTank(const core::geometry::TankGeometry& tank) {
  PlainTank t;
  t.floor_m2 = tank.outline().area(0);
  t.perimeter_m = tank.outline().perimeter(0);
  t.corners = tank.outline().cornerCoefficient();
  t.batter = tank.batter();
  t.full_level_m = tank.fullLevel();
  t.full_m3 = tank.volumeToLevel(tank.fullLevel());
  t.dead_m3 = tank.volumeToLevel(tank.deadLevel());
  t.cove_m3 = t.volume(tank.fullLevel()) - t.full_m3;
  t.opening_m2 = tank.brimArea();
  return t;
}

PlainRun plainRun(const PlainTank& tank, const core::water::DaySeries& series, std::size_t first,
                  std::size_t last, double start_m3, double bed_factor) {
  PlainRun run;
  double volume = start_m3;
  for (std::size_t day = first; day < last; ++day) {
    const double z = tank.level(volume);
    const double rain = series.rain_mm[day] / 1000.0 * tank.opening_m2;
    double evaporation = series.evaporation_mm[day] / 1000.0 * tank.surface(z);
    double seepage = series.seepage_mm_day / 1000.0 * tank.wetted(z);
    volume += series.supply_m3[day] + rain;
    if (evaporation + seepage > volume) {
      const double share = volume / (evaporation + seepage);
      evaporation *= share;
      seepage *= share;
    }
    volume = std::max(0.0, volume - evaporation - seepage);
    const double need = series.household_m3[day] + bed_factor * series.beds_m3[day];
    double drawn = 0;
    if (volume > tank.dead_m3) drawn = std::min(need, volume - tank.dead_m3);
    volume -= drawn;
    double spill = 0;
    if (volume > tank.full_m3) {
      spill = volume - tank.full_m3;
      volume = tank.full_m3;
    }
    run.volume_m3.push_back(volume);
    run.dry.push_back(need > 0 && drawn < 0.999 * need ? 1 : 0);
    run.rain += rain;
    run.evaporation += evaporation;
    run.seepage += seepage;
    run.drawn += drawn;
    run.unmet += need - drawn;
    run.spill += spill;
  }
  return run;
}

double plainStart(const PlainTank& tank, const core::water::DaySeries& series, double bed_factor) {
  const std::size_t first = series.year_start[series.years() - 1];
  const PlainRun year = plainRun(tank, series, first, series.days(), tank.full_m3, bed_factor);
  return year.volume_m3.back();
}

}  // namespace support
