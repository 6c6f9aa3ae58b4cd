#pragma once

#include "core/exchange/json_reader.h"
#include "core/hydraulics/delivery_plan.h"

namespace core::exchange {

/// The answers about pipes, siphon, overflow, spill path, silt trap and leak test as JSON. What could not be
/// reckoned is {"fault": code}, a lone number null; what was not asked is null.
Json deliveryJson(const hydraulics::DeliveryPlan& plan);

}  // namespace core::exchange
