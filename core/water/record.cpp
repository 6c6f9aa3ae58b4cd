#include "core/water/record_days.h"
#include "core/water/weather.h"
#include "core/water/weather_builder.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace core::water {
namespace {

using std::chrono::sys_days;

constexpr std::array<RecordValue, 3> kNeeded{&DailyWeather::rain_mm, &DailyWeather::t_min_c,
                                             &DailyWeather::t_max_c};

/// Cuts a record into whole years.
class Cutter {
public:
  Cutter(const Climate& climate, const WeatherPlace& place, const RecordDays& days)
      : days_(days), first_month_(wettestMonth(monthlyRain(days))), builder_(climate, place, days.size()) {
    if (climate.gaps == GapRule::nearest_year) same_days_.emplace(days);
  }

  Weather take() {
    days_outside_ = days_.size();
    if (!days_.empty()) cutAll();
    Weather weather = builder_.take(first_month_);
    weather.years_left_out = std::move(years_left_out_);
    weather.values_filled = values_filled_;
    weather.days_outside = days_outside_;
    return weather;
  }

private:
  sys_days startOf(int year) const {
    const std::chrono::month month(static_cast<unsigned>(first_month_) + 1);
    return std::chrono::year(year) / month / 1;
  }

  void cutAll() {
    int year = static_cast<int>(days_.front().date.year());
    if (startOf(year) < sys_days(days_.front().date)) ++year;
    const sys_days end = sys_days(days_.back().date) + std::chrono::days(1);
    for (; startOf(year + 1) <= end; ++year) cut(year);
  }

  void cut(int year) {
    const auto before = [](const DailyWeather& day, sys_days date) { return sys_days(day.date) < date; };
    const auto from = std::lower_bound(days_.begin(), days_.end(), startOf(year), before);
    const auto to = std::lower_bound(from, days_.end(), startOf(year + 1), before);
    days_outside_ -= static_cast<std::size_t>(to - from);
    RecordDays whole = emptyYear(year);
    for (auto day = from; day != to; ++day) {
      whole[static_cast<std::size_t>((sys_days(day->date) - startOf(year)).count())] = *day;
    }
    // a year without a single day is not a gap to be filled
    const std::optional<std::size_t> filled = from == to ? std::nullopt : fill(whole);
    if (!filled) {
      years_left_out_.push_back(year);
      return;
    }
    values_filled_ += *filled;
    keep(whole);
  }

  RecordDays emptyYear(int year) const {
    RecordDays whole;
    for (sys_days date = startOf(year); date < startOf(year + 1); date += std::chrono::days(1)) {
      whole.emplace_back().date = date;
    }
    return whole;
  }

  /// Fills the gaps of a year. @return number of values put in; nothing when the year has to be left out
  std::optional<std::size_t> fill(RecordDays& whole) const {
    std::size_t filled = 0;
    for (DailyWeather& day : whole) {
      for (const RecordValue value : kNeeded) {
        if (day.*value) continue;
        if (same_days_) day.*value = same_days_->nearest(day, value);
        if (!(day.*value)) return std::nullopt;
        ++filled;
      }
    }
    return filled;
  }

  void keep(const RecordDays& whole) {
    builder_.startYear();
    for (const DailyWeather& day : whole) {
      const sys_days new_year = day.date.year() / std::chrono::January / 1;
      const DayOfYear date{static_cast<int>(monthOf(day.date)),
                           static_cast<int>(static_cast<unsigned>(day.date.day())),
                           static_cast<int>((sys_days(day.date) - new_year).count()) + 1};
      builder_.add(date, *day.rain_mm,
                   {*day.t_min_c, *day.t_max_c, day.humidity_percent, day.wind_m_s, day.sun_hours});
    }
  }

  const RecordDays& days_;
  int first_month_;
  std::optional<SameDays> same_days_;  // absent: gaps are not filled
  WeatherBuilder builder_;
  std::vector<int> years_left_out_;
  std::size_t values_filled_ = 0;
  std::size_t days_outside_ = 0;
};

}  // namespace

Weather fromRecord(const Climate& climate, const WeatherPlace& place) {
  const RecordDays days = inOrder(climate.daily.days());
  return Cutter(climate, place, days).take();
}

}  // namespace core::water
