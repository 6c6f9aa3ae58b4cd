#pragma once

#include "core/base/problem.h"
#include "core/project/fields.h"
#include "core/project/project.h"

#include <string>
#include <vector>

namespace core {

/// Problems of the options' entries: a path that names no field, a value it does not take. What an option
/// makes impossible across fields is no problem of the project: the option is then told to be unbuildable.
Problems checkOptions(const Project& project);

/// Problems of the limits of the search: a least size over the most (range_crossed), more than
/// kMostCandidates sizes (too_many).
Problems checkSearch(const Project& project);

/// Sizes that a search tries at most.
inline constexpr double kMostCandidates = 2'000'000;

/// The project with an option's changes put in, and without options of its own. A change of a row that the
/// project does not have is left out.
Project withChanges(const Project& project, const Option& option);

/// The fields in which two projects differ, as changes that turn `base` into `other`. Rows that only one of
/// them has, and lists of points, are left out.
std::vector<FieldChange> changesBetween(const Project& base, const Project& other);

/// Letter of an option: A is the project itself (index 0), B the first option.
std::string optionLetter(std::size_t index);

}  // namespace core
