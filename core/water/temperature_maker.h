#pragma once

#include "core/water/random_numbers.h"

namespace core::water {

struct TemperatureRange {
  double min_c = 0, max_c = 0;
};

// Own proposals; a practitioner with a record should use it instead.
inline constexpr double kNoise_c = 1.5;         ///< standard deviation of both temperatures about their means
inline constexpr double kNoiseCarried = 0.65;   ///< correlation of a day with the day before
inline constexpr double kMinMaxTogether = 0.6;  ///< correlation of the two
inline constexpr double kDryWarmer_c = 2;       ///< maxima of dry days over those of wet days
inline constexpr double kLeastRange_c = 0.5;    ///< between minimum and maximum, where the means leave it

/// Minimum and maximum of each day as their middle and half their range, each with noise of its own. The
/// noise of the range is held to the same reach on both sides, so that the monthly means stay. Where the
/// range is small, wet and dry days differ less and the noise has less room.
class TemperatureMaker {
public:
  explicit TemperatureMaker(Uniform& uniform);

  /// The next day of a month with such means. @param wet_share share of wet days in the month
  TemperatureRange next(const TemperatureRange& means, double wet_share, bool is_wet);

private:
  void carryNoise();

  Uniform* uniform_;
  TwoNormals noise_;
};

}  // namespace core::water
