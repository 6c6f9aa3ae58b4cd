#pragma once

#include "core/base/figure.h"
#include "core/hydraulics/result.h"
#include "core/water/balance.h"

#include <optional>

namespace core::hydraulics {

/// Two readings of the tank and of a light bucket that floats deep in it
/// and shaded like it: what the bucket loses is evaporation.
struct LeakReading {
  double tank_drop_mm = 0;
  double bucket_drop_mm = 0;  ///< under 0 it rained: the test does not count
  double hours = 24;
  double reading_error_mm = 1;  ///< of one drop, either way
};

enum class LeakVerdict {
  gains,   ///< rises against the bucket: water comes in, or a reading is wrong
  unsure,  ///< not more than the readings' error
  tight,
  watch,
  repair,
  empty_and_mend,  ///< more than the last band
};

/// A published mark and how the tank stands to it.
struct LeakRule {
  double allowed_mm_day = 0;
  bool kept = false;
  std::string_view source;
};

struct LeakTest {
  double tank_mm_day = 0, evaporation_mm_day = 0;
  double leak_mm_day = 0;        ///< under 0 when it gains
  double error_mm_day = 0;       ///< of the leak: both drops' errors together, root of squares
  double leak_l_day = 0;         ///< from the surface at the mean level
  double share_percent_day = 0;  ///< of the volume at the mean level
  LeakVerdict verdict = LeakVerdict::unsure;
  std::optional<Figure> band;  ///< leak.<band> that the verdict rests on
  LeakRule by_drop;            ///< 10 mm in 7 days
  LeakRule by_volume;          ///< 0.1 % of the volume a day
};

/// Leak of a tank that stood at `level_m` (its mean in the test) over the finished floor.
/// Codes: reading_ (not finite, tank drop over the level, error under 0), time_ (under 1 hour),
/// level_out_of_range (not over 0 or over the rim; or so low that only the cove is wet), bucket_gained_water.
Result<LeakTest> leakTest(const water::TankCurve& tank, double level_m, const LeakReading& reading);

}  // namespace core::hydraulics
