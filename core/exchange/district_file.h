#pragma once

#include "core/base/problem.h"
#include "core/exchange/project_file.h"
#include "core/project/project.h"

#include <string>
#include <string_view>

#include <tl/expected.hpp>

namespace core::exchange {

inline constexpr std::string_view kDistrictEnding = ".district";

/// What a district knows of itself, for the next tank: prices with their currency, what was measured on site,
/// rates of work. JSON, "format":"tankwright-district", with "prices", "records" and "works" as in a project
/// file; of the works the rates and the hours of a person-day only.
std::string districtText(const Project& project, std::string_view name);

/// The project with a district's prices, currency, records and rates put in, or everything wrong with the
/// file (not_a_district: it is no such file); then nothing is put in. What the file does not name stays as it
/// is; a list takes the place of a list, but records are added to those that are there. To a project without
/// works the rates are not added (note part_absent). Notes: keys that are not known here; those within
/// prices, records and rows are kept, others are not. Never throws.
tl::expected<ReadProject, Problems> withDistrict(const Project& project, std::string_view json);

}  // namespace core::exchange
