#pragma once

#include "core/base/problem.h"
#include "core/project/project.h"

#include <string>
#include <string_view>

#include <tl/expected.hpp>

namespace core::exchange {

/// The design on one line that a person can read, type and check: "TW1 S:RE L7.2 W3.6 D1.4 B0.1 *9C05".
///
/// Parts stand between blanks: the version, then a token of kShortFields with its value in SI units (a choice
/// is a ':' and the first letters of its word), and last a '*' with the check group. Coats are one part each,
/// "C0.06/3/3/1/3", and so are the corners of a polygon, "P6/3.5". Numbers have the fewest digits that read
/// back the same. Shape and sizes are always there, other fields when they are in use and differ from a
/// Project as it is made. Only capitals, digits, blanks and : . / - * are used, which a QR code packs
/// tightest. Spot heights, the outline of other shapes than polygons, and works that are absent are not told.
/// @pre check(project) is empty
std::string shortForm(const Project& project);

/// Project of a short form, what it does not hold being as in `base`, or everything wrong with it:
/// short_form_version, short_form_check, short_form_token, too_large, values against the field table, and
/// rules across fields. Never throws.
///
/// Small letters, more blanks and line ends, a comma for the point, Arabic and Devanagari digits, and in
/// numbers O for 0 and I or L for 1 read as what they stand for.
tl::expected<Project, Problems> fromShortForm(std::string_view text, const Project& base);

/// True when a text begins as a short form does, whatever its version.
bool beginsAsShortForm(std::string_view text);

/// Longest short form that is read [bytes].
inline constexpr std::size_t kMostShortBytes = 20'000;

}  // namespace core::exchange
