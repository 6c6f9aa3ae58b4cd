#pragma once

#include "core/finding_list.h"

namespace core {

/// The part of deliveryFindings about the two lines, the siphon and the outlets.
void deliveryLineFindings(const Delivery& delivery, const hydraulics::DeliveryPlan& plan, FindingList& out);

}  // namespace core
