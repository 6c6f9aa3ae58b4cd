#include "core/water/check.h"

#include "core/water/crops.h"
#include "core/water/rain_month.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

#include <fmt/format.h>

namespace core::water {
namespace {

constexpr int kLongestSeason_days = 365;

Problem problem(std::string code, std::string path, std::string value, double least, double most, Unit unit) {
  return {std::move(code), std::move(path), std::move(value), least, most, unit, "number"};
}

std::string text(double value) {
  return fmt::format("{}", value);
}

void checkBed(const Bed& bed, std::size_t row, const Water& water, Problems& out) {
  const std::string path = fmt::format("water.beds[{}].", row);
  if (!findCrop(bed.crop, water.crops))
    out.push_back({"unknown_crop", path + "crop", "\"" + bed.crop + "\"", {}, {}, Unit::none, {}});
  const int last = daysInMonth(bed.plant_month);
  if (bed.plant_day > last)
    out.push_back(problem("bad_day_of_month", path + "plant_day", text(bed.plant_day), 1, last, Unit::none));
}

void checkCrop(const OwnCrop& crop, std::size_t row, const Water& water, Problems& out) {
  const std::string path = fmt::format("water.crops[{}].", row);
  if (crop.name.empty()) out.push_back({"missing", path + "name", "\"\"", {}, {}, Unit::none, "text"});
  const auto end = water.crops.begin() + static_cast<std::ptrdiff_t>(row);
  const bool is_of_table = std::any_of(crops().begin(), crops().end(),
                                       [&](const CropFigures& other) { return other.id == crop.name; });
  const bool is_repeated =
      std::any_of(water.crops.begin(), end, [&](const OwnCrop& other) { return other.name == crop.name; });
  if (is_of_table || is_repeated)
    out.push_back({"name_repeated", path + "name", "\"" + crop.name + "\"", {}, {}, Unit::none, {}});
  const int days = crop.ini_days + crop.dev_days + crop.mid_days + crop.late_days;
  if (days > kLongestSeason_days)
    out.push_back(
        problem("season_too_long", path + "late_days", text(days), 4, kLongestSeason_days, Unit::day));
}

void checkMonth(const ClimateMonth& month, std::size_t row, Problems& out) {
  const std::string path = fmt::format("water.climate.months[{}].", row);
  const int days = daysInMonth(static_cast<int>(row) + 1);
  if (month.wet_days > days)
    out.push_back(
        problem("more_wet_days_than_days", path + "wet_days", text(*month.wet_days), 0, days, Unit::day));
  if (month.rain_mm && month.wet_days) {
    const double rain = *month.rain_mm;
    const double wet = *month.wet_days;
    if (rain > 0 && wet <= 0)
      out.push_back(problem("rain_without_wet_days", path + "wet_days", text(wet), 1, days, Unit::day));
    if (rain < kWetDay_mm * wet)
      out.push_back({"less_rain_than_wet_days",
                     path + "rain_mm",
                     text(rain),
                     kWetDay_mm * wet,
                     {},
                     Unit::millimetre,
                     "number"});
  }
  if (month.t_min_c && month.t_max_c && *month.t_max_c < *month.t_min_c)
    out.push_back(
        problem("max_below_min", path + "t_max_c", text(*month.t_max_c), *month.t_min_c, 60, Unit::celsius));
}

}  // namespace

int daysInMonth(int month) {
  constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return days.at(static_cast<std::size_t>(month - 1));
}

Problems check(const Water& water) {
  Problems out;
  for (std::size_t k = 0; k < water.crops.size(); ++k) checkCrop(water.crops[k], k, water, out);
  for (std::size_t k = 0; k < water.beds.size(); ++k) checkBed(water.beds[k], k, water, out);
  for (std::size_t k = 0; k < water.climate.months.size(); ++k) checkMonth(water.climate.months[k], k, out);
  return out;
}

}  // namespace core::water
