#include "core/water/day_parts.h"

#include "core/water/check.h"
#include "core/water/crop_water.h"
#include "core/water/figures.h"

#include <algorithm>
#include <array>

namespace core::water {
namespace {

constexpr double kLitresPerM3 = 1000;
constexpr double kMinutesPerHour = 60;
constexpr double kMmPerM = 1000;
constexpr double kPercent = 100;

std::vector<float> sourceDays(const WaterSource& source, const Weather& weather) {
  std::array<float, kMonths> by_month{};
  for (std::size_t m = 0; m < kMonths; ++m) {
    const SourceMonth& month = source.months.at(m);
    by_month[m] =
        static_cast<float>(month.flow_l_per_min * kMinutesPerHour * month.hours_per_day / kLitresPerM3);
  }
  std::vector<float> days(weather.days());
  for (std::size_t d = 0; d < days.size(); ++d) days[d] = by_month[weather.month[d]];
  return days;
}

double animalNeed(const Water& water) {
  double litres = 0;
  for (const Herd& herd : water.animals)
    litres += herd.head * herd.l_per_head_day.value_or(need(herd.kind).typical);
  return litres / kLitresPerM3;
}

double sum(const std::vector<float>& column) {
  double total = 0;
  for (const float value : column) total += value;
  return total;
}

void setSeason(BedNeed& out, const Bed& bed, int season_days) {
  out.plant_month = bed.plant_month;
  out.plant_day = bed.plant_day;
  out.season_days = std::min(season_days, static_cast<int>(kYearDays));
  out.end_month = bed.plant_month;
  out.end_day = bed.plant_day;
  for (int day = 1; day < out.season_days; ++day) {
    if (++out.end_day <= daysInMonth(out.end_month)) continue;
    out.end_day = 1;
    out.end_month = out.end_month % static_cast<int>(kMonths) + 1;
  }
}

/// Adds what one bed draws to `beds` [m3] and says its need.
BedNeed addBed(const Bed& bed, const Water& water, const Weather& weather, std::vector<float>& beds) {
  const Crop crop =
      adjusted(findCrop(bed.crop, water.crops).value(), weather, bed.plant_month, bed.plant_day);
  const BedInput input{crop, bed.plant_month, bed.plant_day, water.soil_water_mm_per_m};
  const std::vector<float> net = netIrrigation_mm(input, weather);
  BedNeed out;
  out.crop = bed.crop;
  out.area_m2 = bed.area_m2;
  out.efficiency_percent = bed.efficiency_percent.value_or(efficiency(bed.method).typical);
  setSeason(out, bed, crop.seasonDays());
  const double m3_per_mm = bed.area_m2 / kMmPerM * kPercent / out.efficiency_percent;
  const auto years = static_cast<double>(weather.years());
  out.use_mm = sum(cropUse_mm(input, weather)) / years;
  out.net_mm = sum(net) / years;
  out.gross_m3 = out.net_mm * m3_per_mm;
  out.peak_l_day = meanPeak(net, weather.year_start) * m3_per_mm * kLitresPerM3;
  for (std::size_t d = 0; d < net.size(); ++d) beds[d] += net[d] * static_cast<float>(m3_per_mm);
  return out;
}

}  // namespace

double meanPeak(const std::vector<float>& column, const std::vector<std::size_t>& year_start) {
  double total = 0;
  for (std::size_t y = 0; y + 1 < year_start.size(); ++y) {
    const auto first = column.begin() + static_cast<std::ptrdiff_t>(year_start[y]);
    const auto last = column.begin() + static_cast<std::ptrdiff_t>(year_start[y + 1]);
    total += *std::max_element(first, last);
  }
  return total / static_cast<double>(year_start.size() - 1);
}

DayParts dayParts(const Water& water, const Weather& weather, std::vector<BedNeed>& needs) {
  DayParts parts{.source = sourceDays(water.source, weather),
                 .roof = runoff_m3(water.roof, weather),
                 .ground = runoff_m3(water.ground, weather),
                 .beds = std::vector<float>(weather.days()),
                 .animals = animalNeed(water),
                 .people = water.people * water.l_per_person_day / kLitresPerM3};
  for (const Bed& bed : water.beds) needs.push_back(addBed(bed, water, weather, parts.beds));
  return parts;
}

DaySeries daySeries(const Water& water, const Weather& weather, const DayParts& parts) {
  const std::size_t days = weather.days();
  DaySeries series;
  series.rain_mm = weather.rain_mm;
  series.evaporation_mm.resize(days);
  series.supply_m3.resize(days);
  series.beds_m3 = parts.beds;
  series.household_m3.assign(days, static_cast<float>(parts.animals + parts.people));
  const double open = water.losses.open_water_kc * (1 - water.losses.cover_percent / kPercent);
  for (std::size_t d = 0; d < days; ++d) {
    series.evaporation_mm[d] = weather.et0_mm[d] * static_cast<float>(open);
    series.supply_m3[d] = parts.source[d] + parts.roof[d] + parts.ground[d];
  }
  series.year_start = weather.year_start;
  series.seepage_mm_day = water.losses.seepage_mm_day;
  return series;
}

}  // namespace core::water
