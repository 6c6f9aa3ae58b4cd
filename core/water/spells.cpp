#include "core/water/spells.h"

#include <algorithm>
#include <cmath>

namespace core::water {
namespace {

constexpr double kMmPerM = 1000;
constexpr std::size_t kLongest_days = 365;

/// Water in the tank and its level, which follows by one Newton step a day: the level is needed for the
/// losses only.
struct Held {
  double volume_m3;
  double level_m;

  Held(const TankCurve& tank, double volume) : volume_m3(volume), level_m(tank.level(volume)) {}

  /// Evaporation and seepage of a day, no more than there is [m3].
  double losses(const TankCurve& tank, double evaporation_mm, double seepage_mm) const {
    const double wanted =
        (evaporation_mm * tank.surface(level_m) + seepage_mm * tank.wetted(level_m)) / kMmPerM;
    return std::min(wanted, volume_m3);
  }
  void hold(const TankCurve& tank, double volume) {
    volume_m3 = volume;
    const double next = level_m - (tank.volume(level_m) - volume) / tank.surface(level_m);
    level_m = std::clamp(next, 0.0, tank.full_level_m);
  }
};

/// Days of one spell from `first`; nothing when it does not end within a year. After the last day comes the
/// first.
/// @param is_over steps a day and says whether the spell ends with it
template <class Step>
std::optional<int> daysOf(std::size_t first, std::size_t days, Step is_over) {
  for (std::size_t k = 0; k < kLongest_days; ++k) {
    if (is_over((first + k) % days)) return static_cast<int>(k);
  }
  return std::nullopt;
}

/// Middle of the years; a spell that does not end counts as longer than any other.
std::optional<int> middle(std::vector<std::optional<int>> spells) {
  if (spells.empty()) return std::nullopt;
  const auto half = spells.begin() + static_cast<std::ptrdiff_t>((spells.size() - 1) / 2);
  std::nth_element(spells.begin(), half, spells.end(),
                   [](const auto& a, const auto& b) { return a.has_value() && (!b.has_value() || *a < *b); });
  return *half;
}

template <class Spell>
std::vector<DaysFrom> byMonth(const Weather& weather, Spell spell) {
  std::vector<std::vector<std::optional<int>>> spells(kMonths);
  for (std::size_t d = 0; d < weather.days(); ++d) {
    if (weather.day[d] == 1) spells[weather.month[d]].push_back(spell(d));
  }
  std::vector<DaysFrom> out;
  for (std::size_t m = 0; m < kMonths; ++m)
    out.push_back({static_cast<int>(m), middle(std::move(spells[m]))});
  return out;
}

}  // namespace

std::vector<DaysFrom> lasting(const TankCurve& tank, const DaySeries& series, const Weather& weather) {
  const Held full(tank, tank.full_m3);
  return byMonth(weather, [&](std::size_t first) {
    Held held = full;
    return daysOf(first, series.days(), [&](std::size_t d) {
      const double left = held.volume_m3 - held.losses(tank, series.evaporation_mm[d], series.seepage_mm_day);
      const double need = series.beds_m3[d] + series.household_m3[d];
      const double drawn = std::min(need, std::max(0.0, left - tank.dead_m3));
      held.hold(tank, left - drawn);
      return drawn < kMetShare * need;
    });
  });
}

std::vector<DaysFrom> filling(const TankCurve& tank, const DaySeries& series, const Weather& weather) {
  const Held empty(tank, 0);
  return byMonth(weather, [&](std::size_t first) {
    Held held = empty;
    const auto days = daysOf(first, series.days(), [&](std::size_t d) {
      const double in = series.supply_m3[d] + series.rain_mm[d] / kMmPerM * tank.catch_m2;
      const double out = held.losses(tank, series.evaporation_mm[d], series.seepage_mm_day);
      held.hold(tank, std::min(held.volume_m3 - out + in, tank.full_m3));
      return held.volume_m3 >= tank.full_m3;
    });
    return days ? std::optional(*days + 1) : days;  // the day on which it fills counts
  });
}

}  // namespace core::water
