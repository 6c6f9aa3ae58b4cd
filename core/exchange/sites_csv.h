#pragma once

#include "core/base/problem.h"
#include "core/project/project.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

namespace core::exchange {

inline constexpr std::size_t kMostSites = 20000;

/// One row of a table of sites.
struct SiteRow {
  std::string id;        ///< of the column "id"; without one the number of the row, from 1
  std::size_t line = 0;  ///< of the text, from 1
  Project project;       ///< the template with the row's fields changed
};

/// Sites of a table as in csv_rows.h: a header of field paths ("site.soil", "tank.length_m",
/// "water.source.months[0].flow_l_per_min"), before them a column "id" if wanted; one row a site. An empty
/// cell leaves what the template has, "-" or "NA" stands for not known; a decimal comma where cells are not
/// parted by commas. Options of the template are left out.
/// @return at most 100 problems, path "row:3:tank.length_m" or "row:3", counting lines of the text from 1:
/// too_large, not_utf8, csv_no_header, csv_row_cells, too_few (no rows), too_many, duplicate_key (a column
/// twice), unknown_field (a column, or a cell under none), and what a cell's field does not take. Never
/// throws.
tl::expected<std::vector<SiteRow>, Problems> readSites(std::string_view text, const Project& base);

/// What comes of one site.
struct SiteResult {
  std::string id, title, place;
  Problems problems;  ///< why it cannot be planned; then nothing below stands
  std::optional<double> full_volume_m3, usable_volume_m3, cement_bags, person_days;
  std::optional<double> cost, per_m3_stored;  ///< absent without prices, or when one is not known
  std::optional<double> years_in_ten;
  std::optional<int> stops, cautions;
};

/// Plans a site, with all that takes longer than a drag. Rows may be planned side by side.
SiteResult siteResult(const SiteRow& row);

/// Results as a table (RFC 4180): id, problems (code and path of each, parted by "; "), title, place,
/// full_volume_m3, usable_volume_m3, cement_bags, person_days, cost, per_m3_stored, years_in_ten, stops,
/// cautions. What is not known is empty.
std::string resultsCsv(const std::vector<SiteResult>& results);

}  // namespace core::exchange
