#include "core/works/weather_window.h"

#include "core/water/evapotranspiration.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <stdexcept>

namespace core::works {
namespace {

using water::Weather;

constexpr std::uint8_t kRain = 1, kFrost = 2, kHeat = 4;  // what disturbs a coat
constexpr std::size_t kKinds = 8;                         // all of them together or not
constexpr std::size_t kFrostDays = 7;                     // after the coat's own day
constexpr double kFrost_c = 0;
constexpr double kColdest_c = 5,
                 kHottest_c = 35;  // IS 7861: placed not below 5 C, wanted at most 35 C (second-hand)
constexpr int kWeekDays = 7;
constexpr double kPercent = 100;
constexpr double kKmPerHour = 3.6;       // of a metre a second
constexpr double kWindShareKnown = 0.9;  // own: of a record's days in a month
constexpr std::array kDaysBefore{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};

/// Week of a calendar day, 0 to 51; 29 February lies in the week of 1 March.
int weekOf(int month, int day) {
  const int of_year = kDaysBefore.at(static_cast<std::size_t>(month)) + day - 1;
  return std::min(of_year / kWeekDays, kWeeks - 1);
}

int weekOf(Day day) {
  return weekOf(static_cast<int>(static_cast<unsigned>(day.month())) - 1,
                static_cast<int>(static_cast<unsigned>(day.day())));
}

/// First day of a week in a year.
Day firstDay(int week, std::chrono::year year) {
  const int of_year = week * kWeekDays;
  std::size_t month = kMonths - 1;
  while (kDaysBefore[month] > of_year) --month;
  return {year, std::chrono::month(static_cast<unsigned>(month) + 1),
          std::chrono::day(static_cast<unsigned>(of_year - kDaysBefore[month] + 1))};
}

/// What befalls a coat put on on each day; after the last day comes the first.
class CoatDays {
public:
  CoatDays(const Weather& weather, double heavy_rain_mm) : weather_(weather), marks_(weather.days()) {
    markRain(heavy_rain_mm);
    markFrost();
    markHeat();
  }

  /// The same for a whole pattern of coats by the day of the first one.
  std::vector<std::uint8_t> ofPattern(const std::vector<std::size_t>& offsets) const {
    std::vector<std::uint8_t> all(marks_.size());
    for (const std::size_t offset : offsets) {
      const std::size_t before_end = marks_.size() - offset;
      for (std::size_t d = 0; d < before_end; ++d) all[d] |= marks_[d + offset];
      for (std::size_t d = before_end; d < marks_.size(); ++d) all[d] |= marks_[d - before_end];
    }
    return all;
  }

private:
  const Weather& weather_;
  std::vector<std::uint8_t> marks_;

  void markRain(double heavy_rain_mm) {
    const auto is_heavy = [&](std::size_t d) { return weather_.rain_mm[d] >= heavy_rain_mm; };
    for (std::size_t d = 0; d < marks_.size(); ++d) {
      if (is_heavy(d) || is_heavy((d + 1) % marks_.size())) marks_[d] |= kRain;
    }
  }

  void markFrost() {
    const std::size_t n = marks_.size();
    std::size_t until = 0;  // days from here back to the last frost are marked
    for (std::size_t back = n + kFrostDays; back-- > 0;) {
      if (weather_.t_min_c[back % n] <= kFrost_c) until = kFrostDays + 1;
      if (until == 0) continue;
      if (back < n) marks_[back] |= kFrost;
      --until;
    }
  }

  void markHeat() {
    for (std::size_t d = 0; d < marks_.size(); ++d) {
      const double mean_c = (static_cast<double>(weather_.t_min_c[d]) + weather_.t_max_c[d]) / 2;
      if (mean_c < kColdest_c || weather_.t_max_c[d] > kHottest_c) marks_[d] |= kHeat;
    }
  }
};

std::vector<int> weeksOf(const Weather& weather) {
  std::vector<int> weeks(weather.days());
  for (std::size_t d = 0; d < weeks.size(); ++d) weeks[d] = weekOf(weather.month[d], weather.day[d]);
  return weeks;
}

std::vector<WeekChance> chances(const std::vector<std::uint8_t>& disturbed, const std::vector<int>& weeks) {
  std::array<std::array<int, kKinds>, kWeeks> counts{};
  for (std::size_t d = 0; d < disturbed.size(); ++d)
    ++counts.at(static_cast<std::size_t>(weeks[d])).at(disturbed[d]);
  std::vector<WeekChance> result;
  for (int week = 0; week < kWeeks; ++week) {
    const auto& of_week = counts.at(static_cast<std::size_t>(week));
    double all = 0;
    std::array<double, kKinds> with{};
    for (std::size_t kinds = 0; kinds < kKinds; ++kinds) {
      all += of_week.at(kinds);
      for (const std::uint8_t kind : {kRain, kFrost, kHeat})
        with.at(kind) += (kinds & kind) != 0 ? of_week.at(kinds) : 0;
    }
    const Day first = firstDay(week, std::chrono::year(1));
    result.push_back({static_cast<int>(static_cast<unsigned>(first.month())),
                      static_cast<int>(static_cast<unsigned>(first.day())), of_week[0] / all,
                      with[kRain] / all, with[kFrost] / all, with[kHeat] / all});
  }
  return result;
}

/// The planned week when none is better, else the first of the best ones after it.
int bestWeek(const std::vector<WeekChance>& weeks, int planned) {
  int best = planned;
  for (int k = 1; k < kWeeks; ++k) {
    const int week = (planned + k) % kWeeks;
    if (weeks[static_cast<std::size_t>(week)].undisturbed > weeks[static_cast<std::size_t>(best)].undisturbed)
      best = week;
  }
  return best;
}

/// The planned day when it lies in the week, else the next first day of the week.
Day coatIn(int week, Day planned) {
  if (weekOf(planned) == week) return planned;
  const Day same_year = firstDay(week, planned.year());
  return same_year > planned ? same_year : firstDay(week, planned.year() + std::chrono::years(1));
}

/// Whether wind was measured in a month, 0 to 11; weather years hold an estimate where it was not.
bool isWindKnown(const Climate& climate, std::size_t month) {
  if (climate.kind == ClimateKind::monthly) return climate.months.at(month).wind_m_s.has_value();
  std::size_t all = 0;
  std::size_t known = 0;
  for (const DailyWeather& day : climate.daily.days()) {
    if (static_cast<unsigned>(day.date.month()) != month + 1) continue;
    ++all;
    known += day.wind_m_s ? 1 : 0;
  }
  return known > 0 && static_cast<double>(known) >= kWindShareKnown * static_cast<double>(all);
}

/// Mean weather of the days a coat falls on when the first one is put on in a week.
struct MeanDay {
  double t_min_c = 0, t_max_c = 0, humidity_percent = 0, wind_m_s = 0;
};

MeanDay meanDay(const Weather& weather, const std::vector<int>& weeks, int week, std::size_t offset) {
  MeanDay sum;
  double count = 0;
  for (std::size_t first = 0; first < weather.days(); ++first) {
    if (weeks[first] != week) continue;
    const std::size_t d = (first + offset) % weather.days();
    sum.t_min_c += weather.t_min_c[d];
    sum.t_max_c += weather.t_max_c[d];
    sum.humidity_percent += weather.humidity_percent[d];
    sum.wind_m_s += weather.wind_m_s[d];
    ++count;
  }
  return {sum.t_min_c / count, sum.t_max_c / count, sum.humidity_percent / count, sum.wind_m_s / count};
}

/// In the warmest hours: the air at the mean maximum, its humidity there from the vapour pressure of the day,
/// the plaster as warm as the air.
Drying dryingOf(int coat, const MeanDay& day) {
  namespace fao = water::fao56;
  const double ea_kpa = fao::vapourPressureFromMeanHumidity(day.t_min_c, day.t_max_c, day.humidity_percent);
  const double humidity = ea_kpa / fao::saturationPressure(day.t_max_c);
  const double wind_km_h = day.wind_m_s * kKmPerHour;
  return {coat, day.t_max_c, humidity * kPercent, wind_km_h,
          evaporationRate(day.t_max_c, day.t_max_c, humidity, wind_km_h)};
}

std::vector<std::size_t> offsetsOf(const std::vector<Day>& coats, std::size_t days) {
  std::vector<std::size_t> offsets;
  for (const Day coat : coats) {
    const int after = daysBetween(coats.front(), coat);
    if (after < 0) throw std::logic_error("coats out of order");
    offsets.push_back(static_cast<std::size_t>(after) % days);
  }
  return offsets;
}

std::size_t monthOf(Day day) {
  return static_cast<unsigned>(day.month()) - 1;
}

}  // namespace

double evaporationRate(double plaster_c, double air_c, double humidity, double wind_km_h) {
  const auto term = [](double t_c) { return std::pow(std::max(0.0, t_c + 18), 2.5); };
  // uno_1998
  return std::max(0.0, 5 * (term(plaster_c) - humidity * term(air_c)) * (wind_km_h + 4) * 1e-6);
}

WeatherWindow weatherWindow(const Weather& weather, const core::Works& works, const std::vector<Day>& coats,
                            const Climate* climate) {
  if (weather.years() == 0 || coats.empty()) throw std::logic_error("no weather or no coats");
  const std::vector<std::size_t> offsets = offsetsOf(coats, weather.days());
  const std::vector<int> weeks = weeksOf(weather);
  WeatherWindow window;
  window.years = weather.years();
  window.heavy_rain_mm = works.heavy_rain_mm;
  window.weeks = chances(CoatDays(weather, works.heavy_rain_mm).ofPattern(offsets), weeks);
  window.chosen = weekOf(coats.front());
  window.best = bestWeek(window.weeks, window.chosen);
  window.best_coat = coatIn(window.best, coats.front());
  window.best_start = addDays(works.start_date, daysBetween(coats.front(), window.best_coat));
  for (std::size_t k = 0; k < coats.size(); ++k) {
    if (climate && isWindKnown(*climate, monthOf(coats[k])))
      window.drying.push_back(
          dryingOf(static_cast<int>(k) + 1, meanDay(weather, weeks, window.chosen, offsets[k])));
  }
  return window;
}

}  // namespace core::works
