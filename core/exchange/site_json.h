#pragma once

#include "core/exchange/json_reader.h"
#include "core/site/site_plan.h"

namespace core::exchange {

/// Ground, platform, pegs, spoil and stability of a plan.
Json siteJson(const site::SitePlan& plan);

}  // namespace core::exchange
