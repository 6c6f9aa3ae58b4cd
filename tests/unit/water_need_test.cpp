#include "core/water/crop_water.h"
#include "core/water/evapotranspiration.h"
#include "core/water/flow.h"

#include <array>
#include <numeric>

#include <catch2/catch.hpp>

using namespace core::water;
using core::Catchment;
using core::FlowReading;

namespace {

constexpr std::array<int, 12> kMonthDays{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

/// Years of 365 days from the first of a month (0 to 11) on, every day alike: 5 mm of ET0, no rain, 10 to 30
/// C, 60 %, 2 m/s.
Weather steady(int years, int first_month) {
  Weather w;
  w.first_month = first_month;
  for (int year = 0; year < years; ++year) {
    w.year_start.push_back(w.month.size());
    for (int m = 0; m < 12; ++m) {
      const auto month = static_cast<std::size_t>((first_month + m) % 12);
      for (int day = 1; day <= kMonthDays[month]; ++day) {
        w.month.push_back(static_cast<std::uint8_t>(month));
        w.day.push_back(static_cast<std::uint8_t>(day));
      }
    }
  }
  w.year_start.push_back(w.month.size());
  const std::size_t days = w.month.size();
  w.rain_mm.assign(days, 0);
  w.et0_mm.assign(days, 5);
  w.t_min_c.assign(days, 10);
  w.t_max_c.assign(days, 30);
  w.humidity_percent.assign(days, 60);
  w.wind_m_s.assign(days, 2);
  return w;
}

std::size_t indexOf(const Weather& w, int month, int day, std::size_t from = 0) {
  for (std::size_t i = from; i < w.month.size(); ++i) {
    if (w.month[i] == month - 1 && w.day[i] == day) return i;
  }
  FAIL("no such day");
  return 0;
}

/// 100 days, Kc 0.5, 1.0 and 0.8; 30 mm readily available.
const Crop kCrop{"crop", 0.5, 1.0, 0.8, 0.4, {20, 30, 30, 20}, 0.5, 0.4};

BedInput bed(int month, int day) {
  return {kCrop, month, day, 150};
}

double sum(const std::vector<float>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0);
}

}  // namespace

TEST_CASE("bed without rain: each day's need is Kc ET0, whatever the soil") {
  const Weather w = steady(1, 2);
  for (const double soil : {20.0, 150.0}) {
    BedInput b = bed(4, 10);
    b.soil_water_mm_per_m = soil;
    const std::vector<float> need = netIrrigation_mm(b, w);
    const std::vector<float> use = cropUse_mm(b, w);
    const std::size_t first = indexOf(w, 4, 10);
    for (std::size_t i = 0; i < w.days(); ++i) {
      INFO(i);
      const auto kc = kcOnDay(kCrop, static_cast<int>(i) - static_cast<int>(first) + 1);
      CHECK(need[i] == Approx(kc ? *kc * 5 : 0).margin(1e-5));
      CHECK(use[i] == Approx(kc ? *kc * 5 : 0).margin(1e-5));
    }
  }
  // the closed form: 20 x 0.5 + the slope's 30 days (mean 0.75 + half a step) + 30 x 1 + 20 days down to 0.8
  const double kc_days = 20 * 0.5 + (30 * 0.75 + 0.25) + 30 * 1.0 + (20 * 0.9 - 0.1);
  CHECK(sum(cropUse_mm(bed(4, 10), w)) == Approx(5 * kc_days));
}

TEST_CASE("bed after heavy rain: no need until the readily available water is used") {
  Weather w = steady(1, 2);
  const std::size_t first = indexOf(w, 4, 10);
  w.rain_mm[first + 50] = 300;  // first day of mid-season, Kc 1: 5 mm a day out of 30 mm
  const std::vector<float> need = netIrrigation_mm(bed(4, 10), w);
  CHECK(need[first + 49] == Approx(5));
  for (std::size_t i = 50; i <= 56; ++i) {
    INFO(i);
    CHECK(need[first + i] == Approx(0).margin(1e-5));
  }
  CHECK(need[first + 57] == Approx(5));
  // what overfills the root zone drains: ten times the rain helps no longer
  w.rain_mm[first + 50] = 3000;
  CHECK(netIrrigation_mm(bed(4, 10), w) == need);
}

TEST_CASE("bed with light rain: it takes its own depth off the need") {
  Weather w = steady(1, 2);
  const double dry = sum(netIrrigation_mm(bed(4, 10), w));
  w.rain_mm[indexOf(w, 5, 5)] = 12;
  w.rain_mm[indexOf(w, 6, 1)] = 3;
  CHECK(sum(netIrrigation_mm(bed(4, 10), w)) == Approx(dry - 15));
  w.rain_mm[indexOf(w, 4, 9)] = 200;  // the day before planting is not counted
  CHECK(sum(netIrrigation_mm(bed(4, 10), w)) == Approx(dry - 15));
}

TEST_CASE("bed: rain left from one season is not carried to the next planting") {
  Weather w = steady(2, 2);
  const std::size_t last = indexOf(w, 4, 10) + 99;
  w.rain_mm[last] = 300;
  const std::vector<float> need = netIrrigation_mm(bed(4, 10), w);
  CHECK(need[last] == 0);
  CHECK(need[indexOf(w, 4, 10, 365)] == Approx(2.5));
}

TEST_CASE("season over the end of the year: it goes on into the next, and from the last into the first") {
  const Weather w = steady(3, 2);  // years from 1 March on
  const std::vector<float> use = cropUse_mm(bed(2, 1), w);
  const auto countIn = [&](std::size_t year) {
    std::size_t n = 0;
    for (std::size_t i = w.year_start[year]; i < w.year_start[year + 1]; ++i) n += use[i] > 0 ? 1U : 0U;
    return n;
  };
  CHECK(use[0] == Approx(5 * *kcOnDay(kCrop, 29)));  // as the last year leaves it
  CHECK(countIn(0) == 100);
  CHECK(countIn(1) == 100);  // 72 from the season before, 28 of the next
  CHECK(countIn(2) == 100);
  CHECK(use[365] == Approx(5 * *kcOnDay(kCrop, 29)));
  CHECK(use[365 + 71] == Approx(5 * 0.8));
  CHECK(use[365 + 72] == 0);
}

TEST_CASE("season longer than a year: the next planting cuts it") {
  BedInput b = bed(7, 1);
  b.crop.stage_days = {100, 100, 100, 100};
  const Weather w = steady(3, 0);
  const std::vector<float> use = cropUse_mm(b, w);
  const std::size_t first = indexOf(w, 7, 1);
  CHECK(use[first + 364] > 2.5);
  CHECK(use[first + 365] == Approx(2.5));  // day 1 again
  CHECK(use[first + 365 + 99] == Approx(2.5));
}

TEST_CASE("planting on a day that a month lacks: its last day") {
  const Weather w = steady(1, 0);
  const std::vector<float> use = cropUse_mm(bed(4, 31), w);
  CHECK(use[indexOf(w, 4, 29)] == 0);
  CHECK(use[indexOf(w, 4, 30)] == Approx(2.5));
  CHECK(use[indexOf(w, 5, 1)] == Approx(2.5));
  CHECK(cropUse_mm(bed(2, 29), w)[indexOf(w, 2, 28)] == Approx(2.5));
}

TEST_CASE("Kc fitted to the weather of its stage") {
  Weather w = steady(2, 2);
  // mean humidity 60 %: ea = 0.6 (e0(10) + e0(30)) / 2, over e0(30). FAO-56 table 2.3: 1.228 and 4.243 kPa
  const double rh_min = 100 * 0.6 * (1.228 + 4.243) / 2 / 4.243;
  const Crop even = adjusted(kCrop, w, 4, 10);
  CHECK(even.kc_ini == kCrop.kc_ini);
  CHECK(even.kc_mid == Approx(adjustedKc(1.0, 2, rh_min, 0.4)).margin(1e-4));
  CHECK(even.kc_end == Approx(adjustedKc(0.8, 2, rh_min, 0.4)).margin(1e-4));
  // wind of 5 m/s on the days of mid-season, and nowhere else, moves Kc mid alone
  for (const std::size_t from : {std::size_t{0}, std::size_t{365}}) {
    const std::size_t first = indexOf(w, 4, 10, from);
    for (std::size_t i = 50; i < 80; ++i) w.wind_m_s[first + i] = 5;
  }
  const Crop windy = adjusted(kCrop, w, 4, 10);
  CHECK(windy.kc_mid == Approx(adjustedKc(1.0, 5, rh_min, 0.4)).margin(1e-4));
  CHECK(windy.kc_end == even.kc_end);
}

TEST_CASE("Kc end of a crop left to dry in the field is not fitted") {
  Weather w = steady(1, 0);
  w.wind_m_s.assign(w.days(), 5);
  Crop dry = kCrop;
  dry.kc_end = 0.45;
  CHECK(adjusted(dry, w, 4, 10).kc_end == 0.45);
  dry.kc_end = 0.46;
  CHECK(adjusted(dry, w, 4, 10).kc_end > 0.46);
  CHECK(adjusted(dry, Weather{}, 4, 10) == dry);
}

TEST_CASE("FAO-56 eq. 63 and 64: dew at Tmin gives RHmin from the two temperatures") {
  // The paper's example 20: Tmin 14.8, Tmax 26.6, dew at Tmin: RHmin 48 %. Mean humidity with ea 1.68 over
  // es 2.58 is 65.2 %
  Weather w = steady(1, 0);
  w.t_min_c.assign(w.days(), 14.8F);
  w.t_max_c.assign(w.days(), 26.6F);
  w.humidity_percent.assign(w.days(), 100 * 1.6835F / 2.5830F);
  CHECK(adjusted(kCrop, w, 4, 10).kc_mid == Approx(adjustedKc(1.0, 2, 48.3, 0.4)).margin(0.0005));
}

TEST_CASE("runoff: published yields of roofs") {
  Weather w = steady(1, 0);
  // UNICEF manual page for highland emergencies: roof 5 m x 8 m, 750 mm a year, 0.8: 24,000 L
  for (std::size_t i = 0; i < 75; ++i) w.rain_mm[i * 4] = 10;
  CHECK(1000 * sum(runoff_m3({40, 0.8, 0}, w)) == Approx(24000).epsilon(1e-5));
  // Victoria DPI, Managing Farm Water Supplies 2011: shed 15 m x 9 m, 400 mm, 0.95: 51,300 L
  w = steady(1, 0);
  for (std::size_t i = 0; i < 40; ++i) w.rain_mm[i * 9] = 10;
  CHECK(1000 * sum(runoff_m3({135, 0.95, 0}, w)) == Approx(51300).epsilon(1e-5));
}

TEST_CASE("runoff: the first flush is let go on the first day of a wet spell") {
  Weather w = steady(1, 0);
  w.rain_mm[0] = 5;   // the day before the record is taken as dry
  w.rain_mm[10] = 8;  // a spell of three days
  w.rain_mm[11] = 1;
  w.rain_mm[12] = 4;
  w.rain_mm[20] = 1.5;    // less than the flush
  w.rain_mm[21] = 0.05F;  // no wet day
  w.rain_mm[22] = 6;
  const std::vector<float> q = runoff_m3({100, 0.8, 2}, w);
  CHECK(q[0] == Approx(0.8 * 100 * 3 / 1000));
  CHECK(q[10] == Approx(0.8 * 100 * 6 / 1000));
  CHECK(q[11] == Approx(0.8 * 100 * 1 / 1000));
  CHECK(q[12] == Approx(0.8 * 100 * 4 / 1000));
  CHECK(q[20] == 0);
  CHECK(q[22] == Approx(0.8 * 100 * 4 / 1000));
  CHECK(sum(q) == Approx(0.8 * 100 * (3 + 6 + 1 + 4 + 0.05 + 4) / 1000));
}

TEST_CASE("flow readings: by month, middle, least and most") {
  CHECK(flowOf({3, 15, 60}) == 15);
  CHECK(flowOf({3, 20, 40}) == 30);
  const std::vector<FlowReading> readings{
      {11, 15, 60}, {3, 15, 90}, {11, 15, 50}, {11, 15, 75}, {3, 15, 100}};
  const auto months = readingsByMonth(readings);
  REQUIRE(months.size() == 2);
  CHECK(months[0].month == 3);
  CHECK(months[0].rows == std::vector<std::size_t>{1, 4});
  CHECK(months[0].median_l_per_min == Approx(9.5));
  CHECK_FALSE(months[0].enough);
  CHECK(months[1].rows == std::vector<std::size_t>{0, 2, 3});
  CHECK(months[1].median_l_per_min == Approx(15));
  CHECK(months[1].least_l_per_min == Approx(12));
  CHECK(months[1].most_l_per_min == Approx(18));
  CHECK(months[1].spread_percent == Approx(40));
  CHECK(months[1].outliers.empty());
  CHECK(readingsByMonth({}).empty());
}

TEST_CASE("flow readings: the volumetric method's vessel of 3 s and more than three readings") {
  // Volumetric flow method, Australian groundwater guidance
  const auto three = readingsByMonth({{5, 15, 3}, {5, 15, 2.9}, {5, 15, 3.2}});
  CHECK(three[0].too_quick == std::vector<std::size_t>{1});
  CHECK_FALSE(three[0].enough);
  CHECK(readingsByMonth({{5, 15, 3}, {5, 15, 3.1}, {5, 15, 3.2}, {5, 15, 3.3}})[0].enough);
}

TEST_CASE("flow readings: a worked example names its outlier") {
  // Leys, Ley, Klein, Bernard, Licata, J. Exp. Social Psychology 49 (2013) 764-766, as others quote
  // it: 1, 3, 3, 6, 8, 10, 10, 1000 have the median 7 and the scaled median deviation 1.4826 x 3.5
  // = 5.1891; 1000 stands out
  std::vector<FlowReading> readings;
  for (const double v : {1.0, 3.0, 3.0, 6.0, 8.0, 10.0, 10.0, 1000.0}) readings.push_back({4, v, 60});
  const MonthReadings m = readingsByMonth(readings)[0];
  CHECK(m.median_l_per_min == Approx(7));
  CHECK(m.outliers == std::vector<std::size_t>{7});
  CHECK(m.least_l_per_min == Approx(1));
  CHECK(m.most_l_per_min == Approx(10));
  CHECK(m.spread_percent == Approx(100 * 9 / 7.0));
  // the border of 3.5: 7 + 3.5 x 3.5 / 0.6745 = 25.16
  readings[7].vessel_l = 25.1;
  CHECK(readingsByMonth(readings)[0].outliers.empty());
  readings[7].vessel_l = 25.3;
  CHECK(readingsByMonth(readings)[0].outliers.size() == 1);
}

TEST_CASE("flow readings: outliers need three readings, and readings that are alike have none") {
  CHECK(readingsByMonth({{4, 15, 60}, {4, 15, 6}})[0].outliers.empty());
  const auto alike = readingsByMonth({{4, 15, 60}, {4, 15, 60}, {4, 15, 60}, {4, 15, 60}})[0];
  CHECK(alike.outliers.empty());
  CHECK(alike.spread_percent == 0);
  // alike to the second but for one: bucket and watch are read to 2 % at best
  std::vector<FlowReading> readings(3, FlowReading{4, 5, 62});
  readings.push_back({4, 5, 20});
  CHECK(readingsByMonth(readings)[0].outliers == std::vector<std::size_t>{3});
  readings[3].seconds = 60;
  CHECK(readingsByMonth(readings)[0].outliers.empty());
}
