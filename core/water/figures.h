#pragma once

#include "core/base/figure.h"
#include "core/project/water.h"

#include <string_view>
#include <vector>

namespace core::water {

/// Runoff, losses and needs with low, typical, high, unit and source. Keys: runoff.roof_sheet,
/// runoff.roof_tile, runoff.roof_thatch, runoff.ground_bare, runoff.ground_pasture, runoff.ground_cultivated,
/// first_flush.roof, first_flush.ground, open_water_kc, cover.shade_cloth_single, cover.shade_cloth_double,
/// seepage, soil_water.<soil>, efficiency.<method>, animal.<kind>, person.
const std::vector<Figure>& figures();

/// The figure with `key`. @throws std::logic_error when there is none.
const Figure& figure(std::string_view key);

/// Share of the water applied that stays in the root zone, typical for a method [%].
const Figure& efficiency(IrrigationMethod method);

/// Water an animal drinks, typical [L/day].
const Figure& need(Animal kind);

}  // namespace core::water
