#include "core/water/evapotranspiration.h"
#include "core/water/weather.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::Climate;
using core::DailyWeather;
using core::GapRule;
using core::water::fromRecord;
using core::water::Weather;
using std::chrono::sys_days;
using Days = std::vector<DailyWeather>;

const core::water::WeatherPlace kPlace{27.7, 1400};

std::chrono::year_month_day date(int y, unsigned m, unsigned d) {
  return {std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

/// Days with most rain in one month; the year stands in the rain's decimals.
Days days(std::chrono::year_month_day first, std::chrono::year_month_day last, unsigned wettest = 7) {
  Days all;
  for (sys_days day = first; day <= sys_days(last); day += std::chrono::days(1)) {
    const std::chrono::year_month_day at = day;
    const double year = static_cast<int>(at.year()) % 100;
    const double rain = (static_cast<unsigned>(at.month()) == wettest ? 10 : 1) + year / 100;
    all.push_back({at, rain, 10.0, 20.0 + year / 100, {}, {}, {}});
  }
  return all;
}

Weather cut(Days all, GapRule rule = GapRule::leave_out_year) {
  Climate climate;
  climate.kind = core::ClimateKind::daily;
  climate.gaps = rule;
  climate.daily = core::DailyRecord(std::move(all));
  return fromRecord(climate, kPlace);
}

std::size_t indexOf(const Days& all, std::chrono::year_month_day day) {
  const auto at = std::find_if(all.begin(), all.end(), [=](const DailyWeather& d) { return d.date == day; });
  REQUIRE(at != all.end());
  return static_cast<std::size_t>(at - all.begin());
}

Days without(Days all, std::chrono::year_month_day day) {
  all.erase(all.begin() + static_cast<std::ptrdiff_t>(indexOf(all, day)));
  return all;
}

/// Day of the weather at a month (1 to 12) and day of one of its years.
std::size_t place(const Weather& weather, std::size_t year, int month, int day) {
  for (std::size_t t = weather.year_start[year]; t < weather.year_start[year + 1]; ++t) {
    if (weather.month[t] == month - 1 && weather.day[t] == day) return t;
  }
  FAIL("no such day");
  return 0;
}

bool isSound(const Weather& weather) {
  const auto all_finite = [](const std::vector<float>& column) {
    return std::all_of(column.begin(), column.end(), [](float x) { return std::isfinite(x); });
  };
  return all_finite(weather.rain_mm) && all_finite(weather.t_min_c) && all_finite(weather.t_max_c) &&
         all_finite(weather.humidity_percent) && all_finite(weather.wind_m_s) && all_finite(weather.et0_mm) &&
         all_finite(weather.et0_other_mm) &&
         (weather.year_start.empty() || weather.year_start.back() == weather.days());
}

}  // namespace

TEST_CASE("a record is cut into whole years from the wettest month on") {
  const Weather weather = cut(days(date(2001, 3, 15), date(2005, 12, 31)));
  CHECK(weather.first_month == 6);
  REQUIRE(weather.years() == 4);
  // years from 1 July 2001, 2002, 2003, 2004; the third holds 29 February 2004
  CHECK(weather.year_start == std::vector<std::size_t>{0, 365, 730, 1096, 1461});
  CHECK(weather.days() == 1461);
  CHECK(weather.days_outside == 108 + 184);  // 15 March to 30 June 2001, 1 July to 31 December 2005
  CHECK(weather.years_left_out.empty());
  CHECK(weather.values_filled == 0);
  for (const std::size_t start : {0U, 365U, 730U, 1096U}) {
    CHECK(weather.month[start] == 6);
    CHECK(weather.day[start] == 1);
  }
  CHECK(weather.rain_mm[0] == 10.01F);
  CHECK(weather.rain_mm[1460] == 1.05F);
}

TEST_CASE("leap days stay, and days are counted as in their own year") {
  const Weather weather = cut(days(date(2003, 7, 1), date(2005, 6, 30)));
  REQUIRE(weather.year_start == std::vector<std::size_t>{0, 366, 731});
  CHECK(weather.day_of_year[0] == 182);  // 1 July 2003
  CHECK(weather.day_of_year[184] == 1);  // 1 January 2004
  const std::size_t leap = place(weather, 0, 2, 29);
  CHECK(weather.day_of_year[leap] == 60);
  CHECK(weather.month[leap + 1] == 2);
  CHECK(weather.day_of_year[366] == 183);  // 1 July 2004, a leap year
  CHECK(*std::max_element(weather.day_of_year.begin(), weather.day_of_year.end()) == 366);
}

TEST_CASE("a record of exactly one year gives one year, a day less gives none") {
  const Days all = days(date(2001, 7, 1), date(2002, 6, 30));
  CHECK(cut(all).years() == 1);
  CHECK(cut(all).days_outside == 0);
  const Weather shorter = cut(Days(all.begin(), all.end() - 1));
  CHECK(shorter.years() == 0);
  CHECK(shorter.days() == 0);
  CHECK(shorter.year_start.empty());
  CHECK(shorter.days_outside == 364);
  CHECK(cut(Days(all.begin() + 1, all.end())).years() == 0);
}

TEST_CASE("the first month is the one with most rain a day, not the one measured most often") {
  Days all = days(date(2001, 1, 1), date(2004, 12, 31), 9);
  CHECK(cut(all).first_month == 8);
  // rain of September was measured on few days only
  for (DailyWeather& day : all) {
    if (day.date.month() == std::chrono::September && day.date.day() > std::chrono::day(2))
      day.rain_mm.reset();
  }
  CHECK(cut(all).first_month == 8);
}

TEST_CASE("values that were not measured are estimated or left to the equations") {
  namespace fao56 = core::water::fao56;
  Days all = days(date(2001, 7, 1), date(2002, 6, 30));
  all[5].humidity_percent = 55;
  all[5].wind_m_s = 3.5;
  all[5].sun_hours = 7;
  const Weather weather = cut(all);
  CHECK(weather.humidity_percent[5] == 55);
  CHECK(weather.wind_m_s[5] == 3.5F);
  CHECK(weather.wind_m_s[6] == 2);  // FAO-56: 2 m/s where wind was not measured
  // FAO-56 eq. 48: dew point at the minimum
  CHECK(weather.humidity_percent[6] ==
        Approx(100 * fao56::saturationPressure(10) / fao56::meanSaturationPressure(10, *all[6].t_max_c)));
  const fao56::Place at{kPlace.latitude_deg * std::numbers::pi / 180, kPlace.elevation_m, 0.16};
  for (const std::size_t t : {5U, 6U}) {
    const fao56::DayInput day{10, *all[t].t_max_c, all[t].humidity_percent, all[t].wind_m_s,
                              all[t].sun_hours};
    CHECK(weather.et0_mm[t] == Approx(fao56::et0PenmanMonteith(day, at, weather.day_of_year[t])));
    CHECK(weather.et0_other_mm[t] == Approx(fao56::et0Hargreaves(day, at, weather.day_of_year[t])));
  }
}

TEST_CASE("gaps leave out the year they are in and no other") {
  const Days all = days(date(2001, 7, 1), date(2006, 6, 30));
  for (const auto gap : {&DailyWeather::rain_mm, &DailyWeather::t_min_c, &DailyWeather::t_max_c}) {
    Days holed = all;
    holed[indexOf(all, date(2003, 7, 1))].*gap = std::nullopt;   // first day of a year
    holed[indexOf(all, date(2005, 6, 30))].*gap = std::nullopt;  // last day of the next
    const Weather weather = cut(holed);
    CHECK(weather.years_left_out == std::vector<int>{2003, 2004});
    CHECK(weather.years() == 3);
    CHECK(weather.rain_mm[weather.year_start[2]] == 10.05F);
    CHECK(weather.values_filled == 0);
    CHECK(weather.days_outside == 0);
  }
  const Weather missing = cut(without(all, date(2002, 12, 24)));
  CHECK(missing.years_left_out == std::vector<int>{2002});
  CHECK(missing.years() == 4);
}

TEST_CASE("a missing day or value comes from the same day of the nearest year, of two the earlier") {
  const Days all = days(date(2001, 7, 1), date(2006, 6, 30));
  const Weather day = cut(without(all, date(2003, 12, 24)), GapRule::nearest_year);
  CHECK(day.years() == 5);
  CHECK(day.years_left_out.empty());
  CHECK(day.values_filled == 3);
  const std::size_t t = place(day, 2, 12, 24);
  CHECK(day.rain_mm[t] == 1.02F);
  CHECK(day.t_max_c[t] == 20.02F);

  Days holed = all;
  holed[indexOf(all, date(2002, 12, 24))].rain_mm.reset();
  holed[indexOf(all, date(2003, 12, 24))].rain_mm.reset();
  const Weather value = cut(holed, GapRule::nearest_year);
  CHECK(value.values_filled == 2);
  CHECK(value.rain_mm[place(value, 1, 12, 24)] == 1.01F);  // 2002 from 2001
  CHECK(value.rain_mm[place(value, 2, 12, 24)] == 1.04F);  // 2003 from 2004, not from the filled 2002
  CHECK(value.t_max_c[place(value, 2, 12, 24)] == 20.03F);
}

TEST_CASE("days outside of the whole years help to fill gaps") {
  const Days all = days(date(2001, 3, 1), date(2002, 6, 30));
  const Weather weather = cut(without(all, date(2002, 4, 2)), GapRule::nearest_year);
  CHECK(weather.years() == 1);
  CHECK(weather.rain_mm[place(weather, 0, 4, 2)] == 1.01F);
}

TEST_CASE("29 February is filled from 28 February") {
  const Days all = days(date(2001, 7, 1), date(2006, 6, 30));
  const Weather same = cut(without(all, date(2004, 2, 29)), GapRule::nearest_year);
  CHECK(same.rain_mm[place(same, 2, 2, 29)] == 1.04F);
  CHECK(same.values_filled == 3);
  const Weather other =
      cut(without(without(all, date(2004, 2, 29)), date(2004, 2, 28)), GapRule::nearest_year);
  CHECK(other.rain_mm[place(other, 2, 2, 29)] == 1.03F);
  CHECK(other.rain_mm[place(other, 2, 2, 28)] == 1.03F);
  CHECK(other.values_filled == 6);
}

TEST_CASE("what no year has cannot be filled") {
  Days all = days(date(2001, 7, 1), date(2004, 6, 30));
  for (int year = 2001; year <= 2003; ++year) all[indexOf(all, date(year, 10, 10))].t_min_c.reset();
  const Weather weather = cut(all, GapRule::nearest_year);
  CHECK(weather.years() == 0);
  CHECK(weather.days() == 0);
  CHECK(weather.years_left_out == std::vector<int>{2001, 2002, 2003});
  CHECK(weather.values_filled == 0);
  CHECK(isSound(weather));
}

TEST_CASE("years without a single day are left out, not copied") {
  Days all = days(date(2001, 7, 1), date(2002, 6, 30));
  const Days later = days(date(2004, 7, 1), date(2005, 6, 30));
  all.insert(all.end(), later.begin(), later.end());
  for (const GapRule rule : {GapRule::leave_out_year, GapRule::nearest_year}) {
    const Weather weather = cut(all, rule);
    CHECK(weather.years() == 2);
    CHECK(weather.years_left_out == std::vector<int>{2002, 2003});
    CHECK(weather.values_filled == 0);
  }
}

TEST_CASE("a filled temperature never puts the minimum over the maximum") {
  Days all = days(date(2001, 7, 1), date(2004, 6, 30));
  DailyWeather& cold = all[indexOf(all, date(2002, 10, 10))];
  cold.t_max_c = 8;  // the other years' minimum is 10
  cold.t_min_c.reset();
  CHECK(cut(all, GapRule::nearest_year).years_left_out == std::vector<int>{2002});
  all[indexOf(all, date(2003, 10, 10))].t_min_c = 7;
  const Weather weather = cut(all, GapRule::nearest_year);
  CHECK(weather.years() == 3);
  CHECK(weather.t_min_c[place(weather, 1, 10, 10)] == 7);
}

TEST_CASE("values that cannot have been measured count as missing") {
  const Days all = days(date(2001, 7, 1), date(2002, 6, 30));
  constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();
  constexpr double kInfinite = std::numeric_limits<double>::infinity();
  for (const double value : {kNaN, kInfinite, -kInfinite, 1e300, -1e300, -999.0, 1e9}) {
    for (const auto member : {&DailyWeather::rain_mm, &DailyWeather::t_min_c, &DailyWeather::t_max_c}) {
      Days wrong = all;
      wrong[100].*member = value;
      CHECK(cut(wrong).years_left_out == std::vector<int>{2001});
      CHECK(isSound(cut(wrong, GapRule::nearest_year)));
    }
    for (const auto member :
         {&DailyWeather::wind_m_s, &DailyWeather::humidity_percent, &DailyWeather::sun_hours}) {
      Days wrong = all;
      wrong[100].*member = value;
      const Weather weather = cut(wrong);
      CHECK(weather.years() == 1);
      CHECK(weather.wind_m_s[100] == 2);
      CHECK(isSound(weather));
    }
  }
  Days upside_down = all;
  std::swap(upside_down[7].t_min_c, upside_down[7].t_max_c);
  CHECK(cut(upside_down).years_left_out == std::vector<int>{2001});
}

TEST_CASE("absurd records are borne") {
  CHECK(cut({}).years() == 0);
  CHECK(cut({}).first_month == 0);
  CHECK(isSound(cut({DailyWeather{}})));
  CHECK(cut({DailyWeather{date(2001, 2, 3), {}, {}, {}, {}, {}, {}}}).days_outside == 1);

  const Days all = days(date(2001, 3, 1), date(2004, 12, 31));
  Days backwards(all.rbegin(), all.rend());
  CHECK(cut(backwards).rain_mm == cut(all).rain_mm);
  Days twice = all;
  twice.insert(twice.end(), all.begin(), all.end());
  twice.back().rain_mm = 999;  // the first of a date counts
  CHECK(cut(twice).rain_mm == cut(all).rain_mm);
  CHECK(cut(twice).days_outside == cut(all).days_outside);

  Days odd = all;
  for (const auto& wrong : {date(2001, 2, 30), date(2001, 13, 1), date(2001, 0, 0), date(-32767, 1, 1),
                            date(32767, 12, 31), date(1849, 12, 31), date(2200, 1, 1)}) {
    odd.push_back({wrong, 1.0, 1.0, 2.0, {}, {}, {}});
  }
  CHECK(cut(odd).rain_mm == cut(all).rain_mm);
  CHECK(cut(odd).years_left_out == cut(all).years_left_out);
  CHECK(cut(odd).days_outside == cut(all).days_outside);

  Days ends{{date(1850, 1, 1), 5.0, 1.0, 2.0, {}, {}, {}}, {date(2199, 12, 31), 1.0, 1.0, 2.0, {}, {}, {}}};
  for (const GapRule rule : {GapRule::leave_out_year, GapRule::nearest_year}) {
    const Weather weather = cut(ends, rule);
    CHECK(weather.years() == 0);
    CHECK(weather.years_left_out.size() == 350);
    CHECK(isSound(weather));
  }
}

TEST_CASE("the kind of climate decides what weather years are made of") {
  Climate climate;
  CHECK_FALSE(core::water::isClimateKnown(climate));
  climate.kind = core::ClimateKind::daily;
  CHECK_FALSE(core::water::isClimateKnown(climate));
  CHECK(core::water::weatherYears(climate, kPlace).years() == 0);
  climate.daily = core::DailyRecord(days(date(2001, 7, 1), date(2003, 6, 30)));
  CHECK(core::water::isClimateKnown(climate));
  CHECK(core::water::weatherYears(climate, kPlace).years() == 2);
  climate.kind = core::ClimateKind::monthly;
  CHECK_FALSE(core::water::isClimateKnown(climate));
}
