#include "core/water/rain_month.h"

#include <algorithm>
#include <cmath>

namespace core::water {
namespace {

constexpr double kPersistence = 0.25;  // p(wet|wet) - p(wet|dry), Geng et al. 1986
constexpr double kLeastShape = 0.3, kMostShape = 5;

double shapeOf(double mean_mm, double above_least_mm) {
  const double scale = -2.16 + 1.83 * mean_mm;  // Geng et al. 1986
  return scale > 0 ? std::clamp(above_least_mm / scale, kLeastShape, kMostShape) : kMostShape;
}

}  // namespace

WetChances wetChances(double wet_share) {
  const double after_dry = (1 - kPersistence) * wet_share;  // Geng et al. 1986: 0.75 f
  return {after_dry, kPersistence + after_dry};
}

WetChances firstDayChances(double wet_share_before, double wet_share) {
  double persistence = kPersistence;
  if (wet_share_before > 0) persistence = std::min(persistence, wet_share / wet_share_before);
  if (wet_share_before < 1) persistence = std::min(persistence, (1 - wet_share) / (1 - wet_share_before));
  const double after_dry = wet_share - persistence * wet_share_before;
  return {after_dry, after_dry + persistence};
}

WetAmount wetAmount(double mean_mm) {
  WetAmount amount;
  amount.least_mm = std::min(kWetDay_mm, mean_mm);
  const double above = mean_mm - amount.least_mm;
  amount.shape = shapeOf(mean_mm, above);
  amount.scale_mm = above / amount.shape;
  return amount;
}

RainMonth::RainMonth(const ClimateMonth& means, int month_days)
    : days(month_days), wet_share(std::clamp(*means.wet_days / month_days, 0.0, 1.0)) {
  if (wet_share > 0) amount = wetAmount(std::max(*means.rain_mm, 0.0) / (wet_share * month_days));
  if (amount.scale_mm > 0) quantile.emplace(amount.shape);
}

double RainMonth::amountAt(double u) const {
  return amount.least_mm + (quantile ? amount.scale_mm * (*quantile)(u) : 0);
}

double chainVariation(const std::vector<RainMonth>& months) {
  constexpr double kRuns = (1 + kPersistence) / (1 - kPersistence);
  double mean = 0, variance = 0;
  for (const RainMonth& month : months) {
    const double wet_days = month.days * month.wet_share;
    const double wet_mean = month.amount.mean();
    mean += wet_days * wet_mean;
    variance +=
        wet_days * month.amount.variance() + wet_mean * wet_mean * wet_days * (1 - month.wet_share) * kRuns;
  }
  return mean > 0 ? std::sqrt(variance) / mean : 0;
}

double factorVariance(double wanted, double chain) {
  return std::max(0.0, (wanted * wanted - chain * chain) / (1 + chain * chain));
}

}  // namespace core::water
