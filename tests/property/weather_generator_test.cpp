// Weather made from monthly means against what the means and the published model say: wet and dry days and
// gamma scale, Geng, Penning de Vries, Supit (1986); variance of a chain-dependent sum, Katz (1977, from
// memory); gamma distribution, Boost.Math. Bounds are standard errors of the sample.
#include "core/water/evapotranspiration.h"
#include "core/water/gamma_quantile.h"
#include "core/water/rain_month.h"
#include "core/water/weather.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include <boost/math/distributions/gamma.hpp>
#include <catch2/catch.hpp>

namespace {

using core::Climate;
using core::kMonths;
using core::water::generate;
using core::water::Weather;

constexpr int kYears = 2000;
constexpr double kErrors = 4;  // standard errors: one check in 16,000 fails by chance, none with these seeds
constexpr std::array<int, kMonths> kDays{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
const core::water::WeatherPlace kHill{27.7, 1400};

using Twelve = std::array<double, kMonths>;

struct Place {
  std::string name;
  Twelve rain_mm, wet_days, t_min_c, t_max_c;
};

const std::vector<Place>& places() {
  static const Twelve hill_min{3, 5, 9, 12, 16, 19, 20, 20, 18, 13, 8, 4};
  static const Twelve hill_max{19, 21, 25, 28, 29, 29, 28, 28, 27, 26, 23, 20};
  static const Twelve warm_min{14, 14, 15, 15, 14, 13, 12, 12, 13, 14, 14, 14};
  static const Twelve warm_max{26, 27, 27, 25, 24, 23, 22, 23, 25, 26, 24, 25};
  static const std::vector<Place> all{
      {"monsoon hill",
       {14, 19, 34, 61, 124, 236, 363, 331, 200, 51, 8, 13},
       {1.5, 2.2, 3.4, 5.2, 9.7, 15.6, 22.9, 21.3, 13.4, 3.4, 0.6, 1.1},
       hill_min,
       hill_max},
      {"two rainy seasons",
       {64, 50, 93, 219, 177, 35, 18, 24, 28, 55, 154, 101},
       {5, 4, 9, 16, 13, 5, 4, 5, 4, 7, 15, 8},
       warm_min,
       warm_max},
      {"dry",
       {2, 1.5, 3, 1, 0.4, 0.1, 12, 20, 5, 0, 0.2, 1},
       {0.5, 0.5, 0.8, 0.4, 0.2, 0.1, 2, 3, 1, 0, 0.1, 0.4},
       hill_min,
       hill_max},
      {"wet all year",
       {310, 280, 330, 360, 300, 270, 250, 260, 300, 340, 380, 350},
       {28, 24, 30, 30, 29, 27, 31, 26, 28, 31, 30, 31},
       warm_min,
       warm_max},
      {"months without rain",
       {0, 0, 0, 12, 60, 150, 210, 190, 90, 20, 0, 0},
       {0, 0, 0, 2, 8, 14, 18, 17, 10, 3, 0, 0},
       hill_min,
       hill_max},
  };
  return all;
}

Climate climateOf(const Place& place) {
  Climate climate;
  for (std::size_t k = 0; k < kMonths; ++k) {
    climate.months[k].rain_mm = place.rain_mm[k];
    climate.months[k].wet_days = place.wet_days[k];
    climate.months[k].t_min_c = place.t_min_c[k];
    climate.months[k].t_max_c = place.t_max_c[k];
  }
  return climate;
}

/// 2,000 years of each place, made once.
const std::vector<Weather>& longRuns() {
  static const std::vector<Weather> all = [] {
    std::vector<Weather> runs;
    for (const Place& place : places()) runs.push_back(generate(climateOf(place), kHill, kYears));
    return runs;
  }();
  return all;
}

template <class Check>
void forEachMonth(Check check) {
  for (std::size_t p = 0; p < places().size(); ++p) {
    for (std::size_t k = 0; k < kMonths; ++k) {
      INFO(places()[p].name << ", month " << k + 1);
      check(places()[p], longRuns()[p], k);
    }
  }
}

double wetShare(const Place& place, std::size_t k) {
  return place.wet_days[k] / kDays[k];
}

/// The gamma part of a wet day's rain, as the header of core/water/weather.h states it.
struct Gamma {
  double shape = 1, scale = 0;
  double variance() const { return shape * scale * scale; }
};

Gamma gammaOf(const Place& place, std::size_t k) {
  const double wet_mean = place.rain_mm[k] / place.wet_days[k];
  const double geng = -2.16 + 1.83 * wet_mean;  // Geng et al. 1986
  const double shape = geng > 0 ? std::clamp((wet_mean - 0.1) / geng, 0.3, 5.0) : 5.0;
  return {shape, (wet_mean - 0.1) / shape};
}

/// Variance of the sum over a month of a two-state chain with correlation 0.25 from day to day.
double sumVariance(double days, double f, double mean, double variance) {
  return days * f * variance + mean * mean * days * f * (1 - f) * 1.25 / 0.75;
}

struct Moments {
  double mean = 0, variance = 0;
};

/// Of the yearly rain that the chain alone brings.
Moments chainYear(const Place& place) {
  Moments year;
  for (std::size_t k = 0; k < kMonths; ++k) {
    year.mean += place.rain_mm[k];
    if (place.wet_days[k] <= 0) continue;
    year.variance += sumVariance(kDays[k], wetShare(place, k), place.rain_mm[k] / place.wet_days[k],
                                 gammaOf(place, k).variance());
  }
  return year;
}

std::vector<double> wetAmounts(const Weather& weather, std::size_t month) {
  std::vector<double> amounts;
  for (std::size_t t = 0; t < weather.days(); ++t) {
    if (weather.month[t] == month && weather.rain_mm[t] > 0) amounts.push_back(weather.rain_mm[t]);
  }
  return amounts;
}

struct Sample {
  double n = 0, sum = 0, squares = 0;
  void add(double x) {
    ++n;
    sum += x;
    squares += x * x;
  }
  double mean() const { return sum / n; }
  double variance() const { return (squares - sum * sum / n) / (n - 1); }
};

Sample sampleOf(const std::vector<double>& values) {
  Sample sample;
  for (const double value : values) sample.add(value);
  return sample;
}

Sample sampleOf(const Weather& weather, const std::vector<float>& column, std::size_t month) {
  Sample sample;
  for (std::size_t t = 0; t < weather.days(); ++t) {
    if (weather.month[t] == month) sample.add(column[t]);
  }
  return sample;
}

Sample yearlyRain(const Weather& weather) {
  Sample sample;
  for (std::size_t y = 0; y < weather.years(); ++y) {
    double sum = 0;
    for (std::size_t t = weather.year_start[y]; t < weather.year_start[y + 1]; ++t) sum += weather.rain_mm[t];
    sample.add(sum);
  }
  return sample;
}

bool sameBytes(const Weather& a, const Weather& b) {
  return a.rain_mm == b.rain_mm && a.t_min_c == b.t_min_c && a.t_max_c == b.t_max_c && a.et0_mm == b.et0_mm &&
         a.et0_other_mm == b.et0_other_mm && a.humidity_percent == b.humidity_percent &&
         a.wind_m_s == b.wind_m_s && a.month == b.month && a.day == b.day && a.year_start == b.year_start;
}

}  // namespace

TEST_CASE("2,000 years: the rain of each month comes back") {
  forEachMonth([](const Place& place, const Weather& weather, std::size_t k) {
    const Sample rain = sampleOf(weather, weather.rain_mm, k);
    const double total = rain.sum / kYears;
    if (place.wet_days[k] <= 0) {
      CHECK(total == 0);
      return;
    }
    const double variance = sumVariance(kDays[k], wetShare(place, k), place.rain_mm[k] / place.wet_days[k],
                                        gammaOf(place, k).variance());
    CHECK(std::abs(total - place.rain_mm[k]) <= kErrors * std::sqrt(variance / kYears) + 1e-4);
  });
}

TEST_CASE("2,000 years: the wet days of each month come back, also where months differ much") {
  forEachMonth([](const Place& place, const Weather& weather, std::size_t k) {
    const double days = static_cast<double>(wetAmounts(weather, k).size()) / kYears;
    const double error = std::sqrt(sumVariance(kDays[k], wetShare(place, k), 1, 0) / kYears);
    CHECK(std::abs(days - place.wet_days[k]) <= kErrors * error);
  });
}

TEST_CASE("2,000 years: the first day of a month is as often wet as the others") {
  forEachMonth([](const Place& place, const Weather& weather, std::size_t k) {
    double wet = 0, n = 0;
    for (std::size_t t = 0; t < weather.days(); ++t) {
      if (weather.month[t] != k || weather.day[t] != 1) continue;
      ++n;
      if (weather.rain_mm[t] > 0) ++wet;
    }
    const double f = wetShare(place, k);
    CHECK(std::abs(wet / n - f) <= kErrors * std::sqrt(f * (1 - f) / n));
  });
}

TEST_CASE("2,000 years: a wet day follows a dry and a wet one as often as Geng et al. say") {
  forEachMonth([](const Place& place, const Weather& weather, std::size_t k) {
    std::array<double, 2> wet{}, n{};
    for (std::size_t t = 1; t < weather.days(); ++t) {
      if (weather.month[t] != k || weather.day[t] == 1) continue;
      const std::size_t before = weather.rain_mm[t - 1] > 0 ? 1 : 0;
      ++n[before];
      if (weather.rain_mm[t] > 0) ++wet[before];
    }
    const double f = wetShare(place, k);
    const std::array<double, 2> p{0.75 * f, 0.25 + 0.75 * f};
    for (const std::size_t before : {0U, 1U}) {
      if (n[before] <= 0) continue;
      const double error = std::sqrt(p[before] * (1 - p[before]) / n[before]);
      CHECK(std::abs(wet[before] / n[before] - p[before]) <= kErrors * error + 1e-12);
    }
  });
}

TEST_CASE("2,000 years: mean and variance of wet days are those of the gamma distribution") {
  forEachMonth([](const Place& place, const Weather& weather, std::size_t k) {
    if (place.wet_days[k] <= 0) return;
    const Gamma gamma = gammaOf(place, k);
    const Sample amounts = sampleOf(wetAmounts(weather, k));
    const double variance = gamma.variance();
    CHECK(std::abs(amounts.mean() - place.rain_mm[k] / place.wet_days[k]) <=
          kErrors * std::sqrt(variance / amounts.n) + 1e-6);
    // variance of a sample's variance: sigma^4 (2 + 6 / shape) / n
    const double error = variance * std::sqrt((2 + 6 / gamma.shape) / amounts.n);
    CHECK(std::abs(amounts.variance() - variance) <= kErrors * error + 1e-6);
  });
}

TEST_CASE("2,000 years: amounts of wet days are distributed as Boost.Math's gamma") {
  forEachMonth([](const Place& place, const Weather& weather, std::size_t k) {
    const Gamma gamma = gammaOf(place, k);
    if (place.wet_days[k] <= 0 || gamma.scale * gamma.shape < 0.05) return;
    std::vector<double> amounts = wetAmounts(weather, k);
    std::sort(amounts.begin(), amounts.end());
    const boost::math::gamma_distribution<> distribution(gamma.shape, gamma.scale);
    const auto n = static_cast<double>(amounts.size());
    double distance = 0;
    for (std::size_t i = 0; i < amounts.size(); ++i) {
      const double p = boost::math::cdf(distribution, std::max(0.0, amounts[i] - 0.1));
      const auto rank = static_cast<double>(i);
      distance = std::max({distance, p - rank / n, (rank + 1) / n - p});
    }
    // Kolmogorov-Smirnov: over 2.2 / sqrt(n) once in 8,000 samples
    CHECK(distance * std::sqrt(n) < 2.2);
  });
}

TEST_CASE("2,000 years: both temperatures come back, with their spread, and dry days are warmer") {
  forEachMonth([](const Place& place, const Weather& weather, std::size_t k) {
    const Sample low = sampleOf(weather, weather.t_min_c, k);
    const Sample high = sampleOf(weather, weather.t_max_c, k);
    const double runs = (1 + 0.65) / (1 - 0.65);  // days that resemble the day before count less
    CHECK(std::abs(low.mean() - place.t_min_c[k]) <= kErrors * std::sqrt(low.variance() * runs / low.n));
    CHECK(std::abs(high.mean() - place.t_max_c[k]) <= kErrors * std::sqrt(high.variance() * runs / high.n));
    CHECK(std::abs(low.mean() - place.t_min_c[k]) < 0.1);
    CHECK(std::abs(high.mean() - place.t_max_c[k]) < 0.1);
    CHECK(std::sqrt(low.variance()) == Approx(1.5).epsilon(0.03));
    const double f = wetShare(place, k);
    CHECK(std::sqrt(high.variance()) == Approx(std::sqrt(1.5 * 1.5 + 4 * f * (1 - f))).epsilon(0.03));
    Sample wet, dry;
    for (std::size_t t = 0; t < weather.days(); ++t) {
      if (weather.month[t] == k) (weather.rain_mm[t] > 0 ? wet : dry).add(weather.t_max_c[t]);
    }
    if (wet.n > 1000 && dry.n > 1000) {
      const double error = 1.5 * std::sqrt(runs * (1 / wet.n + 1 / dry.n));
      CHECK(std::abs(dry.mean() - wet.mean() - 2) <= kErrors * error);
    }
  });
}

TEST_CASE("minima stay half a degree under maxima and the means stay, however small the range") {
  for (const double range : {0.0, 0.3, 0.5, 1.0, 2.0, 4.0}) {
    Climate climate = climateOf(places()[0]);
    for (auto& month : climate.months) month.t_max_c = *month.t_min_c + range;
    const Weather weather = generate(climate, kHill, kYears);
    const double least = std::min(0.5, range) - 1e-5;  // single precision
    for (std::size_t t = 0; t < weather.days(); ++t) {
      if (weather.t_max_c[t] - weather.t_min_c[t] < least) FAIL("day " << t << ", range " << range);
    }
    for (std::size_t k = 0; k < kMonths; ++k) {
      INFO("range " << range << ", month " << k + 1);
      CHECK(std::abs(sampleOf(weather, weather.t_min_c, k).mean() - *climate.months[k].t_min_c) < 0.1);
      CHECK(std::abs(sampleOf(weather, weather.t_max_c, k).mean() - *climate.months[k].t_max_c) < 0.1);
    }
  }
}

TEST_CASE("2,000 years: yearly rain varies by itself as a chain-dependent sum does") {
  for (std::size_t p = 0; p < places().size(); ++p) {
    const Place& place = places()[p];
    INFO(place.name);
    const auto [mean, variance] = chainYear(place);
    const Sample rain = yearlyRain(longRuns()[p]);
    // a deviation's error is 1 / sqrt(2 n) of it for sums near the normal; the dry place's are skewed
    CHECK(std::sqrt(rain.variance()) ==
          Approx(std::sqrt(variance)).epsilon(kErrors * std::sqrt(1.5 / (2 * kYears))));
    CHECK(std::abs(rain.mean() - mean) <= kErrors * std::sqrt(variance / kYears));
  }
}

TEST_CASE("2,000 years: yearly rain varies as much as asked for and its mean stays") {
  for (const double percent : {15.0, 25.0, 40.0, 60.0}) {
    for (const std::size_t p : {0U, 1U, 3U}) {
      INFO(places()[p].name << ", " << percent << " %");
      Climate climate = climateOf(places()[p]);
      climate.rain_cv_percent = percent;
      const Sample rain = yearlyRain(generate(climate, kHill, kYears));
      const auto [total, variance] = chainYear(places()[p]);
      const double cv = std::max(percent / 100, std::sqrt(variance) / total);  // never less than the chain's
      CHECK(std::abs(rain.mean() - total) <= kErrors * cv * total / std::sqrt(kYears));
      // excess kurtosis of a log-normal distribution: about 16 cv^2 + 15 cv^4 + 6 cv^6 + cv^8
      const double kurtosis =
          16 * std::pow(cv, 2) + 15 * std::pow(cv, 4) + 6 * std::pow(cv, 6) + std::pow(cv, 8);
      const double error = cv * std::sqrt((2 + kurtosis) / (4 * kYears));
      CHECK(std::abs(std::sqrt(rain.variance()) / rain.mean() - cv) <= kErrors * error);
    }
  }
}

TEST_CASE("a variation below the chain's own changes nothing") {
  const Climate plain = climateOf(places()[2]);
  Climate little = plain;
  little.rain_cv_percent = 1;
  CHECK(sameBytes(generate(plain, kHill, 20), generate(little, kHill, 20)));
  CHECK(core::water::factorVariance(0.1, 0.2) == 0);
  // (1 + v)(1 + c^2) = 1 + cv^2 for the product of two independent factors
  CHECK((1 + core::water::factorVariance(0.3, 0.2)) * (1 + 0.04) == Approx(1.09).epsilon(1e-14));
}

TEST_CASE("a yearly factor does not touch wet days, temperatures and other years") {
  Climate climate = climateOf(places()[0]);
  const Weather plain = generate(climate, kHill, 30);
  climate.rain_cv_percent = 40;
  const Weather varied = generate(climate, kHill, 30);
  CHECK(plain.t_max_c == varied.t_max_c);
  CHECK(plain.et0_mm == varied.et0_mm);
  // one factor a year, and one a month that brings the means back
  std::map<std::pair<std::size_t, int>, double> factor;
  for (std::size_t y = 0; y < plain.years(); ++y) {
    for (std::size_t t = plain.year_start[y]; t < plain.year_start[y + 1]; ++t) {
      REQUIRE((plain.rain_mm[t] > 0) == (varied.rain_mm[t] > 0));
      if (plain.rain_mm[t] <= 0) continue;
      const double ratio = varied.rain_mm[t] / plain.rain_mm[t];
      const auto [first, is_new] = factor.try_emplace({y, plain.month[t]}, ratio);
      if (!is_new) CHECK(ratio == Approx(first->second).epsilon(1e-4));
    }
  }
  const auto inYear = [&](std::size_t y, int month) { return factor.at({y, month}) / factor.at({0, month}); };
  for (std::size_t y = 1; y < plain.years(); ++y) CHECK(inYear(y, 6) == Approx(inYear(y, 7)).epsilon(1e-4));
}

TEST_CASE("few years bring the means of the months as many do") {
  for (const Place& place : places()) {
    Climate climate = climateOf(place);
    for (const std::optional<double> cv : {std::optional<double>(), std::optional<double>(40)}) {
      climate.rain_cv_percent = cv;
      const Weather weather = generate(climate, kHill, 10);
      std::array<double, core::kMonths> sums{};
      for (std::size_t t = 0; t < weather.days(); ++t) sums[weather.month[t]] += weather.rain_mm[t] / 10.0;
      for (std::size_t k = 0; k < core::kMonths; ++k) {
        INFO("month " << k);
        if (sums[k] > 0) CHECK(sums[k] == Approx(*climate.months[k].rain_mm).epsilon(1e-4));
      }
    }
  }
}

TEST_CASE("the same seed gives the same bytes, another seed other ones") {
  for (const Place& place : places()) {
    Climate climate = climateOf(place);
    climate.rain_cv_percent = 30;
    const Weather first = generate(climate, kHill, 50);
    CHECK(sameBytes(first, generate(climate, kHill, 50)));
    climate.seed = 2;
    const Weather second = generate(climate, kHill, 50);
    CHECK_FALSE(first.rain_mm == second.rain_mm);
    CHECK_FALSE(first.t_min_c == second.t_min_c);
  }
}

TEST_CASE("fewer years are the first of more years, but for the factor that brings a month's mean back") {
  Climate climate = climateOf(places()[1]);
  climate.rain_cv_percent = 30;
  const Weather few = generate(climate, kHill, 10);
  const Weather many = generate(climate, kHill, 40);
  CHECK(few.years() == 10);
  std::array<double, core::kMonths> factor{};
  for (std::size_t t = 0; t < few.days(); ++t) {
    REQUIRE((few.rain_mm[t] > 0) == (many.rain_mm[t] > 0));
    if (few.rain_mm[t] <= 0) continue;
    double& of_month = factor[few.month[t]];
    if (of_month == 0) of_month = few.rain_mm[t] / many.rain_mm[t];
    CHECK(few.rain_mm[t] / many.rain_mm[t] == Approx(of_month).epsilon(1e-4));
  }
  CHECK(std::equal(few.et0_mm.begin(), few.et0_mm.end(), many.et0_mm.begin()));
}

TEST_CASE("a small change of one month's rain moves that month a little and no other") {
  for (const Place& place : places()) {
    INFO(place.name);
    const Climate climate = climateOf(place);
    Climate changed = climate;
    *changed.months[6].rain_mm *= 1.01;
    const Weather before = generate(climate, kHill, 50);
    const Weather after = generate(changed, kHill, 50);
    REQUIRE(before.first_month == after.first_month);
    CHECK(before.t_min_c == after.t_min_c);
    CHECK(before.t_max_c == after.t_max_c);
    CHECK(before.et0_mm == after.et0_mm);
    for (std::size_t t = 0; t < before.days(); ++t) {
      if (before.month[t] != 6 && before.rain_mm[t] != after.rain_mm[t]) FAIL_CHECK("day " << t);
      if ((before.rain_mm[t] > 0) != (after.rain_mm[t] > 0)) FAIL_CHECK("wet or dry, day " << t);
      if (std::abs(before.rain_mm[t] - after.rain_mm[t]) > 0.03 * before.rain_mm[t] + 0.03F)
        FAIL_CHECK("day " << t << ": " << before.rain_mm[t] << " to " << after.rain_mm[t]);
    }
  }
}

TEST_CASE("a small change of one month's wet days leaves nearly all days of the others") {
  const Climate climate = climateOf(places()[0]);
  Climate changed = climate;
  *changed.months[4].wet_days += 0.3;
  const Weather before = generate(climate, kHill, 50);
  const Weather after = generate(changed, kHill, 50);
  std::size_t others = 0;
  for (std::size_t t = 0; t < before.days(); ++t) {
    if (before.month[t] != 4 && (before.rain_mm[t] > 0) != (after.rain_mm[t] > 0)) ++others;
  }
  CHECK(others < 50);  // at most a day or so a year, where June starts after another 31 May
}

TEST_CASE("another wettest month only cuts the same days elsewhere") {
  Climate climate = climateOf(places()[0]);
  const Weather before = generate(climate, kHill, 20);
  *climate.months[7].rain_mm = 364;  // August over July
  const Weather after = generate(climate, kHill, 20);
  CHECK(before.first_month == 6);
  CHECK(after.first_month == 7);
  for (std::size_t t = 31; t < before.days(); ++t) {
    if (before.month[t] != 7 && (before.rain_mm[t] > 0) != (after.rain_mm[t - 31] > 0))
      FAIL_CHECK("day " << t);
    if (before.t_min_c[t] != after.t_min_c[t - 31]) FAIL_CHECK("day " << t);
  }
}

TEST_CASE("weather years have 365 days and start with the wettest month") {
  const std::array<int, 5> first{6, 3, 7, 10, 6};
  for (std::size_t p = 0; p < places().size(); ++p) {
    INFO(places()[p].name);
    const Weather& weather = longRuns()[p];
    CHECK(weather.first_month == first[p]);
    CHECK(weather.years() == kYears);
    REQUIRE(weather.days() == kYears * 365U);
    for (std::size_t y = 0; y <= kYears; ++y) REQUIRE(weather.year_start[y] == y * 365);
    CHECK(weather.month[0] == first[p]);
    CHECK(weather.day[0] == 1);
    for (std::size_t t = 1; t < 365; ++t) {
      const bool is_new_month = weather.day[t] == 1;
      const int expected = is_new_month ? (weather.month[t - 1] + 1) % 12 : weather.month[t - 1];
      REQUIRE(weather.month[t] == expected);
      if (is_new_month) REQUIRE(weather.day[t - 1] == kDays[weather.month[t - 1]]);
      REQUIRE(weather.day_of_year[t] == weather.day_of_year[t - 1] % 365 + 1);
      if (weather.month[t] == 0 && is_new_month) REQUIRE(weather.day_of_year[t] == 1);
    }
  }
}

TEST_CASE("of several wettest months the first after the driest starts the year") {
  Climate climate = climateOf(places()[0]);
  const auto firstMonth = [&](const Twelve& rain) {
    for (std::size_t k = 0; k < kMonths; ++k) {
      climate.months[k].rain_mm = rain[k];
      climate.months[k].wet_days = rain[k] > 0 ? 1 : 0;
    }
    return generate(climate, kHill, 1).first_month;
  };
  CHECK(firstMonth({9, 5, 5, 5, 5, 1, 5, 5, 5, 9, 9, 9}) == 9);
  CHECK(firstMonth({9, 5, 5, 5, 5, 9, 5, 5, 5, 5, 5, 1}) == 0);
  CHECK(firstMonth({5, 5, 1, 9, 5, 9, 5, 5, 5, 5, 5, 5}) == 3);
  CHECK(firstMonth({0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}) == 0);
}

namespace {

namespace fao56 = core::water::fao56;

/// Means with humidity from 40 %, wind from 0.3 m/s and sun from 2 h upwards.
Climate withOthers(Climate climate) {
  for (std::size_t k = 0; k < kMonths; ++k) {
    climate.months[k].humidity_percent = 40 + 4.0 * static_cast<double>(k);
    climate.months[k].wind_m_s = 0.3 + 0.4 * static_cast<double>(k);
    climate.months[k].sun_hours = 2 + static_cast<double>(k);
  }
  return climate;
}

Climate withRange(Climate climate, double range_c) {
  for (auto& month : climate.months) month.t_max_c = *month.t_min_c + range_c;
  return climate;
}

void checkDay(const Climate& climate, const core::water::WeatherPlace& place, const Weather& weather,
              std::size_t t) {
  const fao56::Place at{place.latitude_deg * std::numbers::pi / 180, place.elevation_m, 0.16};
  const auto& means = climate.months[weather.month[t]];
  const fao56::DayInput day{weather.t_min_c[t], weather.t_max_c[t], means.humidity_percent, means.wind_m_s,
                            means.sun_hours};
  const int number = weather.day_of_year[t];
  INFO("latitude " << place.latitude_deg << ", day " << number);
  REQUIRE(weather.et0_mm[t] == Approx(fao56::et0PenmanMonteith(day, at, number)).margin(1e-4));
  REQUIRE(weather.et0_other_mm[t] == Approx(fao56::et0Hargreaves(day, at, number)).margin(1e-4));
  // estimated where absent: dew point at the minimum (FAO-56 eq. 48), wind 2 m/s
  const double humidity =
      100 * fao56::saturationPressure(day.t_min_c) / fao56::meanSaturationPressure(day.t_min_c, day.t_max_c);
  REQUIRE(weather.humidity_percent[t] == Approx(means.humidity_percent.value_or(humidity)).margin(1e-3));
  REQUIRE(weather.wind_m_s[t] == Approx(means.wind_m_s.value_or(2)));
}

}  // namespace

TEST_CASE("ET0 is that of the published equations on each day, by both methods") {
  // a small range stands for an overcast sky, a large one for more than a clear one
  const Climate plain = climateOf(places()[1]);
  for (const Climate& climate : {plain, withOthers(plain), withRange(plain, 1), withRange(plain, 32)}) {
    for (const auto& place : {kHill, core::water::WeatherPlace{-1, 0}, {69.6, 10}, {-35, 3000}}) {
      const Weather weather = generate(climate, place, 2);
      for (std::size_t t = 0; t < weather.days(); ++t) checkDay(climate, place, weather, t);
    }
  }
}

TEST_CASE("the method asked for comes first") {
  Climate climate = climateOf(places()[0]);
  const Weather penman = generate(climate, kHill, 2);
  climate.et0_method = core::Et0Method::hargreaves;
  const Weather hargreaves = generate(climate, kHill, 2);
  CHECK(penman.et0_mm == hargreaves.et0_other_mm);
  CHECK(penman.et0_other_mm == hargreaves.et0_mm);
  CHECK_FALSE(penman.et0_mm == hargreaves.et0_mm);
}

TEST_CASE("months that are always or never wet, drizzle, and what a check should have refused") {
  Climate climate = climateOf(places()[0]);
  const auto set = [&](std::size_t k, double rain, double wet) {
    climate.months[k].rain_mm = rain;
    climate.months[k].wet_days = wet;
  };
  set(0, 62, 31);   // rain on every day
  set(1, 0, 0);     // none
  set(2, 3.1, 31);  // the least a wet day can bring
  set(3, 0.1, 1);
  set(4, 50, 0);    // rain but no wet day: stays dry
  set(5, 0, 10);    // wet days but no rain
  set(8, 0.1, 30);  // less than a wet day's least
  set(9, 100, 60);  // more wet days than days
  const Weather weather = generate(climate, kHill, 100);
  Twelve rain{}, wet{};
  for (std::size_t t = 0; t < weather.days(); ++t) {
    REQUIRE(std::isfinite(weather.rain_mm[t]));
    REQUIRE(std::isfinite(weather.et0_mm[t]));
    rain[weather.month[t]] += weather.rain_mm[t] / 100;
    wet[weather.month[t]] += weather.rain_mm[t] > 0 ? 0.01 : 0;
  }
  CHECK(wet[0] == Approx(31));
  CHECK(rain[0] == Approx(62).epsilon(1e-4));
  CHECK((wet[1] == 0 && rain[1] == 0));
  CHECK(rain[2] == Approx(3.1).epsilon(1e-5));
  CHECK(rain[3] == Approx(0.1).epsilon(1e-5));
  CHECK(rain[4] == 0);
  CHECK(rain[5] == 0);
  CHECK(rain[8] == Approx(0.1).epsilon(1e-5));
  CHECK(wet[9] == Approx(31));
  CHECK(rain[9] == Approx(100).epsilon(0.05));
}

TEST_CASE("nothing is made of means that are not known") {
  Climate climate = climateOf(places()[0]);
  CHECK(core::water::isClimateKnown(climate));
  CHECK(core::water::weatherYears(climate, kHill).years() == 50);
  CHECK(generate(climate, kHill, 0).years() == 0);
  CHECK(generate(climate, kHill, -5).years() == 0);
  using Month = core::ClimateMonth;
  for (const auto value : {&Month::rain_mm, &Month::wet_days, &Month::t_min_c, &Month::t_max_c}) {
    Climate lacking = climate;
    lacking.months[11].*value = std::nullopt;
    CHECK_FALSE(core::water::isClimateKnown(lacking));
    CHECK(core::water::weatherYears(lacking, kHill).days() == 0);
    CHECK(generate(lacking, kHill, 5).days() == 0);
  }
  for (const auto value : {&Month::humidity_percent, &Month::wind_m_s, &Month::sun_hours}) {
    Climate other = climate;
    other.months[3].*value = 5;
    CHECK(core::water::isClimateKnown(other));
  }
  climate.months.pop_back();
  CHECK_FALSE(core::water::isClimateKnown(climate));
}

TEST_CASE("scale and shape of wet days by Geng et al., held where their line ends") {
  const core::water::WetAmount ten = core::water::wetAmount(10);
  CHECK(ten.scale_mm == Approx(-2.16 + 1.83 * 10).epsilon(1e-12));
  CHECK(ten.mean() == Approx(10).epsilon(1e-14));
  CHECK(core::water::wetAmount(2).scale_mm == Approx(-2.16 + 1.83 * 2).epsilon(1e-12));
  // (m - 0.1) / (-2.16 + 1.83 m) = 5 at m = 10.7 / 8.15
  CHECK(core::water::wetAmount(1.33).scale_mm == Approx(-2.16 + 1.83 * 1.33).epsilon(1e-12));
  for (const double mean : {0.2, 1.0, 1.18, 1.31}) {
    CHECK(core::water::wetAmount(mean).shape == 5);
    CHECK(core::water::wetAmount(mean).mean() == Approx(mean).epsilon(1e-14));
  }
}

TEST_CASE("chances of the first day keep its share of wet days and stay chances") {
  for (int a = 0; a <= 20; ++a) {
    for (int b = 0; b <= 20; ++b) {
      const double before = a / 20.0, f = b / 20.0;
      const core::water::WetChances chances = core::water::firstDayChances(before, f);
      CAPTURE(before, f);
      CHECK(before * chances.after_wet + (1 - before) * chances.after_dry == Approx(f).margin(1e-14));
      CHECK(chances.after_dry > -1e-14);
      CHECK(chances.after_wet < 1 + 1e-14);
      CHECK(chances.after_wet - chances.after_dry > -1e-14);
      CHECK(chances.after_wet - chances.after_dry < 0.25 + 1e-14);
    }
  }
}

TEST_CASE("the gamma quantile is Boost.Math's") {
  for (const double shape : {0.3, 0.45, 0.55, 0.7, 1.0, 1.8, 3.0, 5.0}) {
    const core::water::GammaQuantile quantile(shape);
    const boost::math::gamma_distribution<> distribution(shape, 1);
    CAPTURE(shape);
    CHECK(quantile(0) == 0);
    double last = 0, mean = 0;
    constexpr int kSteps = 20000;
    for (int k = 0; k < kSteps; ++k) {
      const double u = (k + 0.5) / kSteps;
      const double x = quantile(u);
      REQUIRE(x == Approx(boost::math::quantile(distribution, u)).epsilon(1e-5));
      REQUIRE(x > last);
      last = x;
      mean += x / kSteps;
    }
    for (const double u : {1e-15, 1e-9, 1e-6, 8.3e-7, 1 - 8.3e-7, 1 - 1e-9, 1 - 0x1p-53}) {
      CHECK(quantile(u) == Approx(boost::math::quantile(distribution, u)).epsilon(1e-5));
    }
    CHECK(mean == Approx(shape).epsilon(1e-3));  // midpoint rule: the last cell lacks some of the tail
  }
}
