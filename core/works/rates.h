#pragma once

#include "core/base/figure.h"
#include "core/project/project.h"

#include <string_view>
#include <vector>

namespace core::works {

/// The table of rates, person-days for each unit of work. Keys: digging.<soil>, digging.practice,
/// digging.norm, clearing (m2), set_out (the job), topsoil (m3), ramming (m3), carrying.10, carrying.20,
/// carrying.50 (m3 as it lies, over a lead of up to so many metres), trimming (m2), pipe_laying (m),
/// stone_bed (m3), plaster (m2), mixing (m3), wetting (a day), filling (a day), leak_test (the job),
/// fence (m), silt_trap, overflow (the job), planting (m2).
const std::vector<Figure>& rates();

/// @throws std::logic_error when there is none
const Figure& rate(std::string_view key);

/// A rate with the district's own figures in place of the table's where there are some; its source is then
/// "user". The rates that are fields of their own (digging, bed, plaster, mixing) keep their low and high as
/// shares of the typical one.
Figure rateInForce(std::string_view key, const Project& project);

/// Key of the digging rate for a soil; not known counts as firm loam.
std::string_view diggingKey(const std::optional<Soil>& soil);

/// Lead that the digging rate for a soil includes [m]: 10 for the district norm, else 0.
/// @source rate_norms_2073
double leadIncluded_m(std::string_view digging_key);

}  // namespace core::works
