#pragma once

#include "core/lining/quantities.h"

#include <optional>

namespace core::lining {

/// The customary bill beside the computed one; absent when the project holds no customary figure.
/// Nothing in the computed bill depends on the customary one.
std::optional<BillComparison> compareBill(const geometry::TankGeometry& geometry, const Quantities& computed,
                                          const Project& project);

}  // namespace core::lining
