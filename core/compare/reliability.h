#pragma once

#include "core/water/balance.h"

#include <atomic>
#include <memory>
#include <span>
#include <vector>

namespace core::compare {

/// Between which numbers the years in ten of a tank lie.
struct YearsBounds {
  double least, most;
};

/// Years in ten without a dry day of many tanks on the same weather years.
class Reliability {
public:
  explicit Reliability(std::shared_ptr<const water::DaySeries> series) : series_(std::move(series)) {}

  /// Quick, and sure to hold exact() between them: tanks side by side in single precision, once with less and
  /// once with more dead water by as much as their days may be off. Empty when cancelled.
  std::vector<YearsBounds> bounds(std::span<const water::TankCurve> tanks,
                                  const std::atomic<bool>& cancel) const;

  /// As the plan reckons it.
  double exact(const water::TankCurve& tank) const;

private:
  std::shared_ptr<const water::DaySeries> series_;

  double yearsInTen(int years) const;
};

}  // namespace core::compare
