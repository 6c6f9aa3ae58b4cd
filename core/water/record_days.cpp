#include "core/water/record_days.h"

#include "core/water/record_limits.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace core::water {
namespace {

using std::chrono::year_month_day;

constexpr std::size_t kMostMonthDays = 31;

constexpr std::array<std::pair<RecordValue, RecordRange>, 6> kRanges{{
    {&DailyWeather::rain_mm, kRain_mm},
    {&DailyWeather::t_min_c, kTemperature_c},
    {&DailyWeather::t_max_c, kTemperature_c},
    {&DailyWeather::wind_m_s, kWind_m_s},
    {&DailyWeather::humidity_percent, kHumidity_percent},
    {&DailyWeather::sun_hours, kSun_h},
}};

bool isDated(const DailyWeather& day) {
  const int year = static_cast<int>(day.date.year());
  return day.date.ok() && year >= kFirstRecordYear && year <= kLastRecordYear;
}

bool isTemperatureUpright(const DailyWeather& day) {
  return !day.t_min_c || !day.t_max_c || *day.t_min_c <= *day.t_max_c;
}

/// The day without what cannot have been measured.
DailyWeather cleaned(DailyWeather day) {
  for (const auto& [value, range] : kRanges) {
    if (day.*value && !range.holds(*(day.*value))) day.*value = std::nullopt;
  }
  if (!isTemperatureUpright(day)) day.t_min_c = day.t_max_c = std::nullopt;
  return day;
}

std::size_t indexOf(const year_month_day& date) {
  return monthOf(date) * kMostMonthDays + static_cast<unsigned>(date.day()) - 1;
}

year_month_day withoutLeapDay(const year_month_day& date) {
  const std::chrono::day last(28);
  const bool is_leap_day = date.month() == std::chrono::February && date.day() > last;
  return is_leap_day ? year_month_day(date.year(), date.month(), last) : date;
}

}  // namespace

RecordDays inOrder(const RecordDays& record) {
  RecordDays days;
  days.reserve(record.size());
  for (const DailyWeather& day : record) {
    if (isDated(day)) days.push_back(cleaned(day));
  }
  std::stable_sort(days.begin(), days.end(), [](const auto& a, const auto& b) { return a.date < b.date; });
  days.erase(
      std::unique(days.begin(), days.end(), [](const auto& a, const auto& b) { return a.date == b.date; }),
      days.end());
  return days;
}

std::size_t monthOf(const year_month_day& date) {
  return static_cast<unsigned>(date.month()) - 1;
}

std::array<double, kMonths> monthlyRain(const RecordDays& days) {
  constexpr std::array<double, kMonths> kMeanDays{31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  std::array<double, kMonths> sum{}, measured{};
  for (const DailyWeather& day : days) {
    if (!day.rain_mm) continue;
    sum[monthOf(day.date)] += *day.rain_mm;
    ++measured[monthOf(day.date)];
  }
  for (std::size_t k = 0; k < kMonths; ++k) sum[k] *= measured[k] > 0 ? kMeanDays[k] / measured[k] : 0;
  return sum;
}

SameDays::SameDays(const RecordDays& days) : by_day_(kMonths * kMostMonthDays) {
  for (const DailyWeather& day : days) by_day_[indexOf(day.date)].push_back(&day);
}

std::optional<double> SameDays::nearest(DailyWeather day, RecordValue value) const {
  std::optional<double> found;
  int least_apart = kLastRecordYear;
  for (const DailyWeather* other : by_day_[indexOf(withoutLeapDay(day.date))]) {
    const int apart = std::abs(static_cast<int>((other->date.year() - day.date.year()).count()));
    day.*value = other->*value;
    if (!(day.*value) || !isTemperatureUpright(day) || apart >= least_apart) continue;
    least_apart = apart;
    found = day.*value;
  }
  return found;
}

}  // namespace core::water
