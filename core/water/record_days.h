#pragma once

#include "core/project/water.h"

#include <array>
#include <chrono>
#include <cstddef>
#include <optional>
#include <vector>

namespace core::water {

using RecordDays = std::vector<DailyWeather>;
using RecordValue = std::optional<double> DailyWeather::*;

/// Days with a date, in order, without values that cannot have been measured; of several on one date the
/// first that stands in the record.
RecordDays inOrder(const RecordDays& record);

/// Mean rain of each month of the year, from the days on which it was measured [mm].
std::array<double, kMonths> monthlyRain(const RecordDays& days);

/// Month of a date, 0 to 11.
std::size_t monthOf(const std::chrono::year_month_day& date);

/// Where the same calendar day stands in all years of a record, which must outlive it.
class SameDays {
public:
  explicit SameDays(const RecordDays& days);

  /// The value that `day` lacks, from the same calendar day (29 February: from the 28th) of the nearest year
  /// that has it, of two the earlier. A temperature that would put the day's minimum over its maximum is
  /// passed over.
  std::optional<double> nearest(DailyWeather day, RecordValue value) const;

private:
  std::vector<std::vector<const DailyWeather*>> by_day_;
};

}  // namespace core::water
