#pragma once

#include "core/base/problem.h"

#include <string>
#include <string_view>
#include <vector>

#include <Eigen/Core>
#include <tl/expected.hpp>

namespace core::exchange {

/// Spot heights of a table.
struct ReadSurvey {
  std::vector<Eigen::Vector3d> points_m;  ///< x east, y north, z up, in the order of the rows
  std::vector<std::size_t> line;          ///< of the text, from 1, for each point
  /// Taken off every point, whole metres: grid coordinates in thousands are moved so that the middle of the
  /// survey is the origin. 0 when all coordinates were within 1000 m already.
  Eigen::Vector2d taken_off_m = Eigen::Vector2d::Zero();
  Problems notes;  ///< unknown_key: a column that is not used; at most 100
};

/// Spot heights from typed or pasted text or a CSV file. With a header row, columns in any order, capital or
/// small letters: x, e, east, easting; y, n, north, northing; z, level, height, elevation, rl; each also with
/// "_m". Without a header three cells to a row: x, y, z. Comma, semicolon or tab between cells, or blanks
/// where none of these is in the first row; a decimal comma where cells are not parted by commas; quotes as
/// in RFC 4180; UTF-8.
/// @return at most 100 problems: too_large, not_utf8, csv_column_missing, duplicate_key, csv_row_cells,
/// missing, wrong_type (also of quotes not closed), out_of_range, too_few (no rows), too_many. Their path is
/// "row:17:z" or "row:17", counting lines of the text from 1. Never throws.
tl::expected<ReadSurvey, Problems> parseSurveyCsv(std::string_view text);

/// Points as a table: header x_m,y_m,z_m, comma between cells, lines ending with CRLF (RFC 4180).
std::string surveyCsvText(const std::vector<Eigen::Vector3d>& points_m);

}  // namespace core::exchange
