// The triangular distribution and its draws against closed forms and Boost.Math.
#include "core/cost/triangular.h"

#include "core/cost/factor_draws.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <boost/math/distributions/triangular.hpp>
#include <catch2/catch.hpp>

namespace {

using core::cost::Triangular;

constexpr std::size_t kDraws = 200'000;

std::vector<double> draws(const Triangular& t, int seed, core::RangedInput input) {
  std::vector<double> all;
  std::array<double, core::cost::kBlock> block{};
  const core::cost::FactorDraws from(t, seed, input);
  for (std::uint64_t first = 0; all.size() < kDraws; first += core::cost::kBlock) {
    from.fill(first, block);
    all.insert(all.end(), block.begin(), block.end());
  }
  all.resize(kDraws);
  return all;
}

const std::vector<Triangular> kShapes{{0.9, 1, 1.25}, {0.5, 1, 2}, {0.6, 1, 1.2}, {1, 1, 1.4}, {0.75, 1, 1}};

boost::math::triangular_distribution<> boosted(const Triangular& t) {
  return {t.low, t.mode, t.high};
}

}  // namespace

TEST_CASE("triangular: mean, variance and quantiles as Boost.Math has them") {
  for (const Triangular& t : kShapes) {
    const auto other = boosted(t);
    CHECK(t.mean() == Approx(mean(other)).epsilon(1e-14));
    CHECK(t.variance() == Approx(variance(other)).epsilon(1e-12));
    for (int percent = 0; percent <= 100; percent += 5)
      CHECK(t.quantile(percent / 100.0) == Approx(quantile(other, percent / 100.0)).epsilon(1e-13));
  }
}

TEST_CASE("triangular: the sum of two even numbers from 0 to 1") {
  // convolution of two boxes: P(sum < s) = s^2 / 2 up to 1
  const Triangular t{0, 1, 2};
  CHECK(t.quantile(0.125) == Approx(0.5));
  CHECK(t.quantile(0.5) == Approx(1));
  CHECK(t.quantile(0.875) == Approx(1.5));
  CHECK(t.variance() == Approx(2.0 / 12));
}

TEST_CASE("triangular: equal ends are a fixed value") {
  const Triangular t{1, 1, 1};
  CHECK(t.quantile(0.3) == 1);
  for (const double x : draws(t, 1, core::RangedInput::flow)) REQUIRE(x == 1);
}

TEST_CASE("draws: mean, variance and quantiles in closed form") {
  for (const Triangular& t : kShapes) {
    std::vector<double> x = draws(t, 7, core::RangedInput::digging);
    double sum = 0, squares = 0;
    for (const double v : x) {
      sum += v - t.mean();
      squares += (v - t.mean()) * (v - t.mean());
    }
    const double n = kDraws;
    const double deviation = std::sqrt(t.variance());
    CHECK(std::abs(sum / n) < 4 * deviation / std::sqrt(n));
    // variance of a sample variance: (kurtosis - 1) variance^2 / n, kurtosis of every triangle 12/5
    CHECK(std::abs(squares / n - t.variance()) < 4 * t.variance() * std::sqrt(1.4 / n));
    std::sort(x.begin(), x.end());
    for (const double p : {0.1, 0.5, 0.9}) {
      const double expected = t.quantile(p);
      const double density = pdf(boosted(t), expected);
      const double at = x[static_cast<std::size_t>(p * n) - 1];
      CHECK(std::abs(at - expected) < 4 * std::sqrt(p * (1 - p) / n) / density);
    }
    CHECK(x.front() >= t.low);
    CHECK(x.back() <= t.high);
  }
}

TEST_CASE("draws: no gap from the distribution function that chance would not make") {
  // Kolmogorov: the largest gap exceeds 1.95 / sqrt(n) once in a thousand times
  for (const int seed : {1, 2, 999'999}) {
    for (const Triangular& t : kShapes) {
      std::vector<double> x = draws(t, seed, core::RangedInput::prices);
      std::sort(x.begin(), x.end());
      double gap = 0;
      for (std::size_t k = 0; k < x.size(); ++k) {
        const double share = cdf(boosted(t), x[k]) * kDraws;
        gap = std::max(
            {gap, std::abs(share - static_cast<double>(k)), std::abs(share - static_cast<double>(k + 1))});
      }
      CHECK(gap / kDraws < 1.95 / std::sqrt(static_cast<double>(kDraws)));
    }
  }
}

TEST_CASE("draws: inputs and seeds do not go together") {
  const Triangular t{0, 1, 2};
  const std::vector<double> first = draws(t, 1, core::RangedInput::thickness);
  const auto correlation = [&](const std::vector<double>& other) {
    double sum = 0;
    for (std::size_t k = 0; k < kDraws; ++k) sum += (first[k] - 1) * (other[k] - 1);
    return sum / kDraws / t.variance();
  };
  const double chance = 4 / std::sqrt(static_cast<double>(kDraws));
  for (int input = 1; input < static_cast<int>(core::cost::kInputs); ++input)
    CHECK(std::abs(correlation(draws(t, 1, static_cast<core::RangedInput>(input)))) < chance);
  for (int seed = 2; seed < 6; ++seed)
    CHECK(std::abs(correlation(draws(t, seed, core::RangedInput::thickness))) < chance);
  std::vector<double> next(first.begin() + 1, first.end());
  next.push_back(1);
  CHECK(std::abs(correlation(next)) < chance);
}

TEST_CASE("draws: each one is the quantile of the same even number, whatever the shape") {
  const std::vector<double> from = draws(kShapes[0], 3, core::RangedInput::wages);
  const std::vector<double> to = draws(kShapes[2], 3, core::RangedInput::wages);
  double apart = 0;
  for (std::size_t k = 0; k < kDraws; ++k)
    apart =
        std::max(apart, std::abs(to[k] - quantile(boosted(kShapes[2]), cdf(boosted(kShapes[0]), from[k]))));
  CHECK(apart < 1e-9);
}
