#include "core/water/check.h"
#include "core/water/rain_month.h"
#include "core/water/random_numbers.h"
#include "core/water/temperature_maker.h"
#include "core/water/weather.h"
#include "core/water/weather_builder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace core::water {
namespace {

constexpr std::size_t kYear = 365;
constexpr std::uint64_t kYearStream = 0x9E3779B97F4A7C15;  // sets the seed of the yearly factors apart

/// Wet and dry days and what the wet ones bring.
class RainMaker {
public:
  RainMaker(const Climate& climate, Uniform& uniform) : uniform_(&uniform) {
    for (std::size_t k = 0; k < kMonths; ++k) {
      months_.emplace_back(climate.months[k], daysInMonth(static_cast<int>(k) + 1));
    }
    is_wet_ = uniform() < months_.back().wet_share;
  }

  const std::vector<RainMonth>& months() const { return months_; }
  bool isWet() const { return is_wet_; }

  /// Rain of the next day [mm].
  double next(const DayOfYear& date) {
    const auto k = static_cast<std::size_t>(date.month);
    const RainMonth& month = months_[k];
    const WetChances chances =
        date.day == 1 ? firstDayChances(months_[(k + kMonths - 1) % kMonths].wet_share, month.wet_share)
                      : wetChances(month.wet_share);
    const double turn = (*uniform_)();
    const double amount = (*uniform_)();
    is_wet_ = turn < (is_wet_ ? chances.after_wet : chances.after_dry);
    return is_wet_ ? month.amountAt(amount) : 0;
  }

private:
  std::vector<RainMonth> months_;
  Uniform* uniform_;
  bool is_wet_ = false;
};

/// Log-normal factors with mean 1, one for each year.
class YearFactor {
public:
  YearFactor(const Climate& climate, const std::vector<RainMonth>& months)
      : uniform_(static_cast<std::uint64_t>(climate.seed) + kYearStream) {
    if (!climate.rain_cv_percent) return;
    const double variance = factorVariance(*climate.rain_cv_percent / 100, chainVariation(months));
    log_variance_ = std::log1p(variance);
  }

  double next() {
    return std::exp(std::sqrt(log_variance_) * twoNormals(uniform_).first - log_variance_ / 2);
  }

private:
  Uniform uniform_;
  double log_variance_ = 0;
};

struct Made {
  double rain_mm;
  fao56::DayInput day;
};

/// Makes one day after another. Draws the same number of random numbers for each.
class DayMaker {
public:
  explicit DayMaker(const Climate& climate)
      : means_(climate.months),
        uniform_(static_cast<std::uint64_t>(climate.seed)),
        rain_(climate, uniform_),
        temperature_(uniform_),
        year_factor_(climate, rain_.months()) {}

  void startYear() { factor_ = year_factor_.next(); }

  Made next(const DayOfYear& date) {
    const auto month = static_cast<std::size_t>(date.month);
    const ClimateMonth& means = means_[month];
    const double rain_mm = factor_ * rain_.next(date);
    const double wet_share = rain_.months()[month].wet_share;
    const TemperatureRange t = temperature_.next({*means.t_min_c, *means.t_max_c}, wet_share, rain_.isWet());
    return {rain_mm, {t.min_c, t.max_c, means.humidity_percent, means.wind_m_s, means.sun_hours}};
  }

private:
  const std::vector<ClimateMonth>& means_;
  Uniform uniform_;
  RainMaker rain_;
  TemperatureMaker temperature_;
  YearFactor year_factor_;
  double factor_ = 1;
};

/// Days of whole years whose rain is brought, month by month, to the means that were entered.
class MadeDays {
public:
  MadeDays(const Climate& climate, std::size_t years) : climate_(climate), years_(years) {}

  void add(const DayOfYear& date, const Made& made) {
    days_.push_back({date, made});
    sums_[static_cast<std::size_t>(date.month)] += made.rain_mm;
  }

  void build(WeatherBuilder& builder) const {
    for (std::size_t k = 0; k < days_.size(); ++k) {
      const auto& [date, made] = days_[k];
      if (k % kYear == 0) builder.startYear();
      builder.add(date, made.rain_mm * share(static_cast<std::size_t>(date.month)), made.day);
    }
  }

private:
  const Climate& climate_;
  std::size_t years_;
  std::vector<std::pair<DayOfYear, Made>> days_;
  std::array<double, kMonths> sums_{};

  double share(std::size_t month) const {
    const double wanted = *climate_.months[month].rain_mm * static_cast<double>(years_);
    return sums_[month] > 0 ? wanted / sums_[month] : 1;
  }
};

std::vector<DayOfYear> commonYear() {
  std::vector<DayOfYear> days;
  for (int month = 0; month < static_cast<int>(kMonths); ++month) {
    for (int day = 1; day <= daysInMonth(month + 1); ++day) {
      days.push_back({month, day, static_cast<int>(days.size()) + 1});
    }
  }
  return days;
}

int firstMonth(const Climate& climate) {
  std::array<double, kMonths> rain{};
  for (std::size_t k = 0; k < kMonths; ++k) rain[k] = *climate.months[k].rain_mm;
  return wettestMonth(rain);
}

std::size_t daysBefore(int month, const std::vector<DayOfYear>& year) {
  const auto at =
      std::find_if(year.begin(), year.end(), [=](const DayOfYear& d) { return d.month == month; });
  return static_cast<std::size_t>(at - year.begin());
}

}  // namespace

Weather generate(const Climate& climate, const WeatherPlace& place, int years) {
  Climate monthly = climate;
  monthly.kind = ClimateKind::monthly;
  if (!isClimateKnown(monthly) || years <= 0) return {};
  const int first_month = firstMonth(climate);
  const std::vector<DayOfYear> year = commonYear();
  const std::size_t start = daysBefore(first_month, year);
  const std::size_t count = static_cast<std::size_t>(years) * kYear;
  DayMaker maker(climate);
  MadeDays days(climate, static_cast<std::size_t>(years));
  // It runs from a first of January on, so that another first month only cuts the same days elsewhere.
  for (std::size_t k = 0; k < start + count; ++k) {
    const DayOfYear& date = year[k % kYear];
    const bool is_new_year = k >= start && (k - start) % kYear == 0;
    if (is_new_year) maker.startYear();
    const Made made = maker.next(date);
    if (k >= start) days.add(date, made);
  }
  WeatherBuilder builder(climate, place, count);
  days.build(builder);
  return builder.take(first_month);
}

}  // namespace core::water
