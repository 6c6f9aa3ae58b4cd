#pragma once

#include "core/project/water.h"
#include "core/water/gamma_quantile.h"

#include <optional>
#include <vector>

namespace core::water {

inline constexpr double kWetDay_mm = 0.1;  ///< least rain of a wet day

/// Chance that a day is wet, by what the day before was.
struct WetChances {
  double after_dry = 0, after_wet = 0;
};

/// Wet and dry days inside a month. @param wet_share share of wet days. @source geng_1986
WetChances wetChances(double wet_share);

/// The same for the first day of a month, so that it is wet with probability `wet_share` when the day before
/// was with `wet_share_before`; keeps as much of the persistence as those two allow.
WetChances firstDayChances(double wet_share_before, double wet_share);

/// Gamma distribution of the rain of a wet day above its least amount.
struct WetAmount {
  double least_mm = 0;
  double shape = 1;
  double scale_mm = 0;  ///< 0: each wet day brings least_mm

  double mean() const { return least_mm + shape * scale_mm; }      ///< [mm]
  double variance() const { return shape * scale_mm * scale_mm; }  ///< [mm2]
};

/// Amounts of wet days from their mean [mm]. Scale -2.16 + 1.83 mean (Geng et al. 1986) where that gives a
/// shape of 0.3 to 5, else the nearer of those two shapes (own proposal: below a mean of 1.3 mm the scale
/// of Geng et al. vanishes). The mean is kept whatever the shape. @source geng_1986
WetAmount wetAmount(double mean_mm);

/// Rain of one month of the year as chances and amounts. A month without wet days stays dry, a wet month
/// without rain brings none.
struct RainMonth {
  RainMonth(const ClimateMonth& means, int days);

  int days;
  double wet_share;
  WetAmount amount;
  std::optional<GammaQuantile> quantile;  ///< absent: amounts do not vary

  /// Rain of a wet day at probability `u` [mm].
  double amountAt(double u) const;
};

/// Standard deviation over mean of the yearly rain that wet and dry days and their amounts give by
/// themselves; 0 without rain. Katz's variance of a chain-dependent sum.
double chainVariation(const std::vector<RainMonth>& months);

/// Variance of a yearly factor with mean 1 that brings the variation of the yearly rain up to `wanted`.
double factorVariance(double wanted, double chain);

}  // namespace core::water
