#pragma once

#include "core/base/figure.h"
#include "core/hydraulics/result.h"
#include "core/project/delivery.h"

#include <span>
#include <string_view>

namespace core::hydraulics {

using core::OutletKind;

/// All kinds, in the order of the table.
std::span<const OutletKind> outletKinds();

std::string_view outletKey(OutletKind kind);  ///< "drip_low_cost"
Figure requiredHead(OutletKind kind);         ///< [m]
Figure outletFlow(OutletKind kind);           ///< of one [L/min]

enum class OutletVerdict {
  works,         ///< full and nearly empty
  works_poorly,  ///< always over the least head, not always over the usual one
  works_full,    ///< over the least head with the tank full, under it nearly empty
  too_low,       ///< under the least head even with the tank full
};

struct OutletCheck {
  OutletVerdict verdict = OutletVerdict::too_low;
  double left_full_m = 0, left_low_m = 0;  ///< head over the usual need; under 0 it lacks
  Figure head;
};

/// Heads at the outlet while its flow runs, with the tank full and nearly empty, against what the kind needs.
/// Codes: head_out_of_range (not finite, or more head when nearly empty).
Result<OutletCheck> checkOutlet(OutletKind kind, double head_full_m, double head_low_m);

}  // namespace core::hydraulics
