// The weather window on weather that is made by hand: rain, frost and heat on known days.
#include "core/works/weather_window.h"

#include <cstdint>
#include <random>
#include <stdexcept>

#include <catch2/catch.hpp>

namespace {

using core::water::Weather;
using core::works::addDays;
using core::works::Day;
using core::works::weatherWindow;
using core::works::WeatherWindow;

Day day(int y, unsigned m, unsigned d) {
  return {std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

/// Mild dry days from one date to another, the years beginning with the first month.
Weather mild(Day from, Day to, bool has_leap_days) {
  Weather w;
  w.first_month = static_cast<int>(static_cast<unsigned>(from.month())) - 1;
  for (Day d = from; d < to; d = addDays(d, 1)) {
    if (!has_leap_days && d.month() == std::chrono::February && d.day() == std::chrono::day(29)) continue;
    if (d.month() == from.month() && d.day() == from.day()) w.year_start.push_back(w.days());
    w.rain_mm.push_back(0);
    w.t_min_c.push_back(10);
    w.t_max_c.push_back(25);
    w.humidity_percent.push_back(60);
    w.wind_m_s.push_back(3);
    w.month.push_back(static_cast<std::uint8_t>(static_cast<unsigned>(d.month()) - 1));
    w.day.push_back(static_cast<std::uint8_t>(static_cast<unsigned>(d.day())));
  }
  w.year_start.push_back(w.days());
  return w;
}

/// Two years of 365 days from 1 July on.
Weather twoYears() {
  return mild(day(2001, 7, 1), day(2003, 7, 1), false);
}

std::size_t indexOf(const Weather& w, unsigned month, unsigned day_of_month, int which = 0) {
  for (std::size_t d = 0; d < w.days(); ++d) {
    if (w.month[d] + 1U == month && w.day[d] == day_of_month && which-- == 0) return d;
  }
  throw std::logic_error("no such day");
}

WeatherWindow windowOf(const Weather& w, const std::vector<Day>& coats,
                       const core::Climate* climate = nullptr) {
  core::Works works;
  works.start_date = day(2027, 2, 15);
  return weatherWindow(w, works, coats, climate);
}

const std::vector<Day> kOneCoat{day(2027, 3, 8)};
const std::vector<Day> kTwoCoats{day(2027, 3, 8), day(2027, 3, 12)};

/// Week that begins on a day of the year.
const core::works::WeekChance& weekFrom(const WeatherWindow& window, int month, int day_of_month) {
  for (const auto& week : window.weeks) {
    if (week.month == month && week.day == day_of_month) return week;
  }
  throw std::logic_error("no week begins there");
}

double sumOf(const WeatherWindow& window, double core::works::WeekChance::*kind) {
  double sum = 0;
  for (const auto& week : window.weeks) sum += week.*kind;
  return sum;
}

core::Climate windy() {
  core::Climate climate;
  for (auto& month : climate.months) month.wind_m_s = 3;
  return climate;
}

}  // namespace

TEST_CASE("window: 52 weeks from 1 January, all undisturbed in mild dry weather") {
  const WeatherWindow window = windowOf(twoYears(), kTwoCoats);
  REQUIRE(window.weeks.size() == 52);
  CHECK(window.years == 2);
  CHECK(window.weeks[0].month == 1);
  CHECK(window.weeks[0].day == 1);
  CHECK(window.weeks[8].month == 2);
  CHECK(window.weeks[8].day == 26);
  CHECK(window.weeks[9].month == 3);
  CHECK(window.weeks[9].day == 5);
  CHECK(window.weeks[51].month == 12);
  CHECK(window.weeks[51].day == 24);
  for (const auto& week : window.weeks) CHECK(week.undisturbed == 1);
  CHECK(window.chosen == 9);  // 8 March
}

TEST_CASE("window: heavy rain spoils a coat on its day and the day after it") {
  Weather w = twoYears();
  w.rain_mm[indexOf(w, 3, 10)] = 10;  // in one of the two years
  const WeatherWindow one = windowOf(w, kOneCoat);
  CHECK(weekFrom(one, 3, 5).rain == Approx(2 / 14.0));  // 9 and 10 March
  CHECK(weekFrom(one, 3, 5).undisturbed == Approx(12 / 14.0));
  CHECK(weekFrom(one, 3, 5).frost == 0);
  CHECK(sumOf(one, &core::works::WeekChance::rain) == Approx(2 / 14.0));
  // a second coat 4 days later is hit when the first goes on on 5 or 6 March
  const WeatherWindow two = windowOf(w, kTwoCoats);
  CHECK(weekFrom(two, 3, 5).rain == Approx(4 / 14.0));
  CHECK(sumOf(two, &core::works::WeekChance::rain) == Approx(4 / 14.0));
  w.rain_mm[indexOf(w, 3, 10)] = 9.9F;
  CHECK(weekFrom(windowOf(w, kOneCoat), 3, 5).rain == 0);
}

TEST_CASE("window: the last day of the weather years is followed by the first") {
  Weather w = twoYears();
  w.rain_mm[0] = 50;  // 1 July: hits a coat of that day and one of 30 June of the last year
  const WeatherWindow rain = windowOf(w, kOneCoat);
  CHECK(weekFrom(rain, 6, 25).rain == Approx(2 / 14.0));
  CHECK(sumOf(rain, &core::works::WeekChance::rain) == Approx(2 / 14.0));
  // the coats of a pattern go round too: second coats of 30 June and 1 July
  CHECK(weekFrom(windowOf(w, kTwoCoats), 6, 25).rain == Approx(4 / 14.0));
  w = twoYears();
  w.t_min_c[2] = -1;  // 3 July: coats of 26 June of the last year to 3 July of the first
  const WeatherWindow frost = windowOf(w, kOneCoat);
  CHECK(weekFrom(frost, 6, 25).frost == Approx(6 / 14.0));
  CHECK(weekFrom(frost, 7, 2).frost == Approx(2 / 14.0));
}

TEST_CASE("window: a night of 0 C spoils coats of that day and of the seven days before") {
  Weather w = twoYears();
  w.t_min_c[indexOf(w, 3, 18, 1)] = 0;  // coats of 11 to 18 March
  const WeatherWindow window = windowOf(w, kOneCoat);
  CHECK(weekFrom(window, 3, 5).frost == Approx(1 / 14.0));
  CHECK(weekFrom(window, 3, 12).frost == Approx(7 / 14.0));
  CHECK(sumOf(window, &core::works::WeekChance::frost) == Approx(8 / 14.0));
  w.t_min_c[indexOf(w, 3, 18, 1)] = 0.1F;
  CHECK(sumOf(windowOf(w, kOneCoat), &core::works::WeekChance::frost) == 0);
}

TEST_CASE("window: a coat's day may be as warm as 35 C and in the mean as cool as 5 C") {
  Weather w = twoYears();
  const std::size_t d = indexOf(w, 3, 10);
  const auto heat = [&] { return weekFrom(windowOf(w, kOneCoat), 3, 5).heat; };
  w.t_max_c[d] = 35;
  CHECK(heat() == 0);
  w.t_max_c[d] = 35.1F;
  CHECK(heat() == Approx(1 / 14.0));
  w.t_min_c[d] = 1;
  w.t_max_c[d] = 9;
  CHECK(heat() == 0);
  w.t_max_c[d] = 8.9F;
  CHECK(heat() == Approx(1 / 14.0));
}

TEST_CASE("window: a start that several things disturb is disturbed once") {
  Weather w = twoYears();
  const std::size_t d = indexOf(w, 3, 10);
  w.rain_mm[d] = 20;
  w.t_max_c[d] = 40;
  const auto week = weekFrom(windowOf(w, kOneCoat), 3, 5);
  CHECK(week.rain == Approx(2 / 14.0));
  CHECK(week.heat == Approx(1 / 14.0));
  CHECK(week.undisturbed == Approx(12 / 14.0));
}

TEST_CASE("window: the last week has eight days, and 29 February makes its week one of eight") {
  Weather w = mild(day(2003, 7, 1), day(2004, 7, 1), true);
  REQUIRE(w.days() == 366);
  w.rain_mm[indexOf(w, 12, 31)] = 30;
  w.rain_mm[indexOf(w, 3, 1)] = 30;
  const WeatherWindow window = windowOf(w, kOneCoat);
  CHECK(weekFrom(window, 12, 24).rain == Approx(2 / 8.0));
  CHECK(weekFrom(window, 2, 26).rain == Approx(2 / 8.0));  // 29 February and 1 March of 8 days
  CHECK(weekFrom(window, 3, 5).rain == 0);
  CHECK(windowOf(w, {day(2028, 2, 29)}).chosen == 8);
  CHECK(windowOf(w, {day(2028, 3, 4)}).chosen == 8);
  CHECK(windowOf(w, {day(2027, 12, 31)}).chosen == 51);
}

TEST_CASE("window: of equal weeks the next after the planned one, past the year's end too") {
  Weather w = twoYears();
  for (float& rain : w.rain_mm) rain = 30;
  const auto dry = [&](unsigned month, unsigned from, unsigned to) {
    for (const int year : {0, 1}) {
      for (unsigned d = from; d <= to; ++d) w.rain_mm[indexOf(w, month, d, year)] = 0;
    }
  };
  dry(1, 8, 15);  // second week of the year: seven starts without rain
  dry(2, 5, 12);  // week from 5 February
  const WeatherWindow window = windowOf(w, kOneCoat);
  CHECK(window.weeks[1].undisturbed == 1);
  CHECK(window.weeks[5].undisturbed == 1);
  CHECK(window.best == 1);
  CHECK(window.best_coat == day(2028, 1, 8));
  // 8 March 2027 to 8 January 2028 are 306 days: 365 - 28 - 31
  CHECK(window.best_start == addDays(day(2027, 2, 15), 306));
  const WeatherWindow before = windowOf(w, {day(2027, 1, 20)});
  CHECK(before.best == 5);
  CHECK(before.best_coat == day(2027, 2, 5));
}

TEST_CASE("window: a planned week that none beats stays, with its date") {
  Weather w = twoYears();
  CHECK(windowOf(w, kOneCoat).best == 9);
  CHECK(windowOf(w, kOneCoat).best_coat == kOneCoat.front());
  CHECK(windowOf(w, kOneCoat).best_start == day(2027, 2, 15));
  w.rain_mm[indexOf(w, 3, 10)] = 30;
  CHECK(windowOf(w, kOneCoat).best == 10);
  CHECK(windowOf(w, kOneCoat).best_coat == day(2027, 3, 12));
  CHECK(windowOf(w, kOneCoat).best_start == day(2027, 2, 19));
}

TEST_CASE("window: the same as trying every start by itself on random weather") {
  std::mt19937 random(7);
  const auto below = [&](unsigned limit) { return static_cast<float>(random() % limit); };
  Weather w = mild(day(1999, 5, 1), day(2005, 5, 1), true);
  for (std::size_t d = 0; d < w.days(); ++d) {
    w.rain_mm[d] = below(12);
    w.t_min_c[d] = below(40) - 1;
    w.t_max_c[d] = w.t_min_c[d] + below(20);
  }
  const std::vector<Day> coats{day(2027, 3, 8), day(2027, 3, 13), day(2027, 4, 1)};
  const std::size_t offsets[]{0, 5, 24};
  const std::size_t n = w.days();
  std::vector<double> starts(52), rain(52), frost(52), heat(52), good(52);
  for (std::size_t d = 0; d < n; ++d) {
    bool is_rain = false;
    bool is_frost = false;
    bool is_heat = false;
    for (const std::size_t offset : offsets) {
      const std::size_t c = (d + offset) % n;
      is_rain = is_rain || w.rain_mm[c] >= 10 || w.rain_mm[(c + 1) % n] >= 10;
      for (std::size_t k = 0; k <= 7; ++k) is_frost = is_frost || w.t_min_c[(c + k) % n] <= 0;
      is_heat = is_heat || w.t_max_c[c] > 35 || w.t_min_c[c] + w.t_max_c[c] < 10;
    }
    // day 1 to 365 of a year without a leap day
    const int of_year = core::works::daysBetween(day(2001, 1, 1), day(2001, w.month[d] + 1U, w.day[d]));
    const auto week = static_cast<std::size_t>(std::min(of_year / 7, 51));
    ++starts[week];
    rain[week] += is_rain;
    frost[week] += is_frost;
    heat[week] += is_heat;
    good[week] += !is_rain && !is_frost && !is_heat;
  }
  const WeatherWindow window = windowOf(w, coats);
  for (std::size_t week = 0; week < 52; ++week) {
    CHECK(window.weeks[week].rain == Approx(rain[week] / starts[week]).margin(1e-12));
    CHECK(window.weeks[week].frost == Approx(frost[week] / starts[week]).margin(1e-12));
    CHECK(window.weeks[week].heat == Approx(heat[week] / starts[week]).margin(1e-12));
    CHECK(window.weeks[week].undisturbed == Approx(good[week] / starts[week]).margin(1e-12));
  }
}

TEST_CASE("window: fresh plaster in the warmest hours of the mean day") {
  const core::Climate climate = windy();
  const WeatherWindow window = windowOf(twoYears(), kTwoCoats, &climate);
  REQUIRE(window.drying.size() == 2);
  CHECK(window.drying[0].coat == 1);
  CHECK(window.drying[1].coat == 2);
  CHECK(window.drying[0].air_c == Approx(25));
  CHECK(window.drying[0].wind_km_h == Approx(10.8));
  // FAO-56 annex 2, table 2.3: e0 1.228 kPa at 10 C, 3.168 at 25 C; 60 % of their mean over 3.168
  CHECK(window.drying[0].humidity_percent == Approx(41.63).margin(0.01));
  // 5 * 43^2.5 * (1 - 0.4163) * 14.8 / 10^6
  CHECK(window.drying[0].kg_m2_h == Approx(0.5237).margin(1e-3));
}

TEST_CASE("window: the mean day is that of the chosen week, moved on for a later coat") {
  Weather w = twoYears();
  const core::Climate climate = windy();
  for (const int year : {0, 1}) {
    for (unsigned d = 9; d <= 15; ++d) w.t_max_c[indexOf(w, 3, d, year)] = year == 0 ? 30 : 34;
  }
  const WeatherWindow window = windowOf(w, kTwoCoats, &climate);
  CHECK(window.drying[0].air_c == Approx((4 * 25 + 3 * 32) / 7.0));  // 5 to 11 March
  CHECK(window.drying[1].air_c == Approx(32));                       // 9 to 15 March
}

TEST_CASE("window: no word on drying where wind was not measured") {
  CHECK(windowOf(twoYears(), kTwoCoats).drying.empty());
  core::Climate climate = windy();
  climate.months[2].wind_m_s.reset();
  CHECK(windowOf(twoYears(), kTwoCoats, &climate).drying.empty());
  CHECK(windowOf(twoYears(), {day(2027, 3, 30), day(2027, 4, 3)}, &climate).drying.size() == 1);
  climate.kind = core::ClimateKind::daily;
  std::vector<core::DailyWeather> record(20);
  for (unsigned k = 0; k < 20; ++k) {
    record[k].date = day(2001, 3, k + 1);
    if (k < 18) record[k].wind_m_s = 3;
  }
  climate.daily = core::DailyRecord(record);
  CHECK(windowOf(twoYears(), kTwoCoats, &climate).drying.size() == 2);
  record[0].wind_m_s.reset();  // 17 of 20 days
  climate.daily = core::DailyRecord(record);
  CHECK(windowOf(twoYears(), kTwoCoats, &climate).drying.empty());
}

TEST_CASE("window: it cannot be asked without weather, without coats or with coats out of order") {
  CHECK_THROWS_AS(windowOf(Weather{}, kOneCoat), std::logic_error);
  CHECK_THROWS_AS(windowOf(twoYears(), {}), std::logic_error);
  CHECK_THROWS_AS(windowOf(twoYears(), {day(2027, 3, 8), day(2027, 3, 7)}), std::logic_error);
}
