#include "core/water/sweep.h"

#include "core/water/sweep_kernel.h"

#include <algorithm>
#include <numeric>

namespace core::water {
namespace {

using kernel::Column;
using kernel::Day;
using kernel::Keep;
using kernel::kPackLanes;
using kernel::Pack;

constexpr double kLowTangent = 0.3;   // level of the second tangent, over the full level
constexpr std::size_t kSumDays = 32;  // that are summed in single precision

std::vector<Day> daysOf(const DaySeries& series) {
  std::vector<Day> days(series.days());
  for (std::size_t i = 0; i < days.size(); ++i) {
    days[i] = {series.supply_m3[i], series.rain_mm[i] / 1000, series.evaporation_mm[i] / 1000,
               series.household_m3[i], series.beds_m3[i]};
  }
  return days;
}

void setTank(Pack& p, std::size_t i, const TankCurve& t, double seepage_m) {
  const auto set = [i](Column& column, double value) { column[i] = static_cast<float>(value); };
  set(p.a0, t.a0), set(p.a1, t.a1), set(p.a2, t.a2);
  set(p.seepage0, seepage_m * t.a0), set(p.seepage1, seepage_m * t.w1), set(p.seepage2, seepage_m * t.w2);
  set(p.volume0, -t.cove_m3 - t.dead_m3), set(p.volume2, t.a1 / 2), set(p.volume3, t.a2 / 3);
  const double low_m = kLowTangent * t.full_level_m;
  const double slope = 1 / t.surface(t.full_level_m), low_slope = 1 / t.surface(low_m);
  set(p.tangent0, t.full_level_m - slope * (t.full_m3 - t.dead_m3)), set(p.tangent1, slope);
  set(p.low_tangent0, low_m - low_slope * (t.volume(low_m) - t.dead_m3)), set(p.low_tangent1, low_slope);
  set(p.catch_m2, t.catch_m2);
  set(p.empty_m3, -t.dead_m3), set(p.full_m3, t.full_m3 - t.dead_m3);
  set(p.volume_m3, t.full_m3 - t.dead_m3), set(p.level_m, t.full_level_m), set(p.slope, slope);
}

/// Full tanks; places without a lane repeat the last one, so that a vector is always filled.
Pack packOf(std::span<const Lane> lanes, double seepage_mm_day) {
  Pack pack{};
  pack.lanes = lanes.size();
  for (std::size_t i = 0; i < kPackLanes; ++i) {
    const Lane& lane = lanes[std::min(i, lanes.size() - 1)];
    setTank(pack, i, lane.tank, seepage_mm_day / 1000);
    pack.bed_factor[i] = static_cast<float>(lane.bed_factor);
  }
  return pack;
}

std::span<const Day> yearOf(std::span<const Day> days, const DaySeries& series, std::size_t year) {
  return days.subspan(series.year_start[year], series.year_start[year + 1] - series.year_start[year]);
}

/// Tanks as the last year leaves them when it has been run once from full.
Pack startOf(std::span<const Lane> lanes, const DaySeries& series, std::span<const Day> days) {
  Pack pack = packOf(lanes, series.seepage_mm_day);
  if (series.years() > 0) kernel::runDays(pack, yearOf(days, series, series.years() - 1), Keep::slack);
  pack.slack_m3.fill(0);
  return pack;
}

std::span<const Lane> packAt(std::span<const Lane> lanes, std::size_t first) {
  return lanes.subspan(first, std::min(kPackLanes, lanes.size() - first));
}

bool isCancelled(const std::atomic<bool>* cancel) {
  return cancel != nullptr && cancel->load(std::memory_order_relaxed);
}

double waterIn(const Pack& pack, std::size_t i, const TankCurve& tank) {
  return static_cast<double>(pack.volume_m3[i]) + static_cast<double>(pack.carry_m3[i]) + tank.dead_m3;
}

void takeSums(Pack& pack, std::span<LaneResult> results) {
  for (std::size_t i = 0; i < results.size(); ++i) {
    Totals& totals = results[i].totals;
    totals.evaporation += pack.evaporation_m3[i];
    totals.seepage += pack.seepage_m3[i];
    totals.drawn += pack.drawn_m3[i];
    totals.unmet += pack.unmet_m3[i];
    totals.spill += pack.spill_m3[i];
    results[i].dry_days += static_cast<int>(pack.dry_days[i]);
  }
  for (Column* sum : {&pack.evaporation_m3, &pack.seepage_m3, &pack.drawn_m3, &pack.unmet_m3, &pack.spill_m3,
                      &pack.dry_days}) {
    sum->fill(0);
  }
}

template <typename Count>
void countYear(Pack& pack, std::size_t lanes, Count count) {
  for (std::size_t i = 0; i < lanes; ++i) {
    if (!(pack.slack_m3[i] < 0)) ++count(i);
  }
  pack.slack_m3.fill(0);
}

void runYear(Pack& pack, std::span<const Day> days, std::span<LaneResult> results) {
  for (std::size_t first = 0; first < days.size(); first += kSumDays) {
    kernel::runDays(pack, days.subspan(first, std::min(kSumDays, days.size() - first)), Keep::totals);
    takeSums(pack, results);
  }
  countYear(pack, results.size(), [&](std::size_t i) -> int& { return results[i].years_without_dry_day; });
}

double sum(const std::vector<float>& column) {
  return std::accumulate(column.begin(), column.end(), 0.0);
}

void setInflow(std::span<LaneResult> results, const std::vector<Lane>& lanes, const DaySeries& series) {
  const double supply = sum(series.supply_m3);
  const double rain_m = sum(series.rain_mm) / 1000;
  for (std::size_t i = 0; i < results.size(); ++i) {
    results[i].totals.supply = supply;
    results[i].totals.rain = rain_m * lanes[i].tank.catch_m2;
  }
}

}  // namespace

std::vector<LaneResult> sweep(const std::vector<Lane>& lanes, const DaySeries& series,
                              const std::atomic<bool>* cancel) {
  const std::vector<Day> days = daysOf(series);
  std::vector<LaneResult> results(lanes.size());
  setInflow(results, lanes, series);
  for (std::size_t first = 0; first < lanes.size(); first += kPackLanes) {
    const std::span<const Lane> of = packAt(lanes, first);
    const std::span<LaneResult> into = std::span(results).subspan(first, of.size());
    Pack pack = startOf(of, series, days);
    for (std::size_t i = 0; i < of.size(); ++i) into[i].totals.start = waterIn(pack, i, of[i].tank);
    for (std::size_t year = 0; year < series.years(); ++year) {
      if (isCancelled(cancel)) return {};
      runYear(pack, yearOf(days, series, year), into);
    }
    for (std::size_t i = 0; i < of.size(); ++i) into[i].totals.end = waterIn(pack, i, of[i].tank);
  }
  return results;
}

std::vector<int> yearsWithoutDryDay(std::span<const Lane> lanes, const DaySeries& series,
                                    const std::atomic<bool>* cancel) {
  const std::vector<Day> days = daysOf(series);
  std::vector<int> years(lanes.size(), 0);
  for (std::size_t first = 0; first < lanes.size(); first += kPackLanes) {
    const std::span<const Lane> of = packAt(lanes, first);
    Pack pack = startOf(of, series, days);
    for (std::size_t year = 0; year < series.years(); ++year) {
      if (isCancelled(cancel)) return {};
      kernel::runDays(pack, yearOf(days, series, year), Keep::slack);
      countYear(pack, of.size(), [&](std::size_t i) -> int& { return years[first + i]; });
    }
  }
  return years;
}

std::vector<std::vector<float>> sweepVolumes(const std::vector<Lane>& lanes, const DaySeries& series) {
  const std::vector<Day> days = daysOf(series);
  std::vector<std::vector<float>> volumes(lanes.size());
  for (std::size_t first = 0; first < lanes.size(); first += kPackLanes) {
    const std::span<const Lane> of = packAt(lanes, first);
    Pack pack = startOf(of, series, days);
    for (std::size_t day = 0; day < days.size(); ++day) {
      kernel::runDays(pack, std::span(days).subspan(day, 1), Keep::slack);
      for (std::size_t i = 0; i < of.size(); ++i) {
        volumes[first + i].push_back(static_cast<float>(waterIn(pack, i, of[i].tank)));
      }
    }
  }
  return volumes;
}

std::string sweepTarget() {
  return kernel::target();
}

}  // namespace core::water
