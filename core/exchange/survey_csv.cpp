#include "core/exchange/survey_csv.h"

#include "core/exchange/csv_rows.h"
#include "core/exchange/survey_text.h"
#include "core/exchange/utf8.h"
#include "core/exchange/weather_csv.h"
#include "core/exchange/weather_values.h"
#include "core/project/fields.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;

constexpr std::size_t kMostProblems = 100;
constexpr double kMostGrid_m = 1e8;  // grid coordinates before they are moved

struct Column {
  string_view name;
  std::array<string_view, 5> others;
  double least, most;  ///< [m]
};

constexpr std::array kColumns{
    Column{"x", {"e", "east", "easting"}, -kMostGrid_m, kMostGrid_m},
    Column{"y", {"n", "north", "northing"}, -kMostGrid_m, kMostGrid_m},
    Column{"z", {"level", "height", "elevation", "rl"}, -500, 9000},  // as of site.elevation_m
};

std::string lowerCase(std::string text) {
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return text;
}

/// Number of the column that a header cell names.
std::optional<std::size_t> columnOf(const std::string& cell) {
  std::string name = lowerCase(cell);
  if (name.ends_with("_m")) name.resize(name.size() - 2);
  for (std::size_t k = 0; k < kColumns.size(); ++k) {
    const auto& others = kColumns[k].others;
    if (!name.empty() &&
        (name == kColumns[k].name || std::find(others.begin(), others.end(), name) != others.end()))
      return k;
  }
  return std::nullopt;
}

class TableReader {
public:
  explicit TableReader(const HeadedText& table) : csv_(table.text), lines_before_(table.lines_before) {}

  tl::expected<ReadSurvey, Problems> read() {
    CsvRow row;
    if (csv_.next(row)) readHeader(row);
    if (problems_.empty()) readRows();
    if (problems_.empty()) moveToOrigin();
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    return std::move(read_);
  }

private:
  CsvReader csv_;
  std::size_t lines_before_;
  std::size_t cells_ = 0;
  std::array<std::optional<std::size_t>, kColumns.size()> place_;
  ReadSurvey read_;
  Problems problems_;

  std::string pathOf(std::size_t line, string_view column = {}) const {
    line -= std::min(line, lines_before_);
    return column.empty() ? fmt::format("row:{}", line) : fmt::format("row:{}:{}", line, column);
  }

  Problem problemOf(string_view code, std::string path, string_view value) const {
    Problem problem;
    problem.code = code;
    problem.path = std::move(path);
    problem.value = shortened(value);
    return problem;
  }

  void add(Problem problem) {
    if (problems_.size() < kMostProblems) problems_.push_back(std::move(problem));
  }

  void readHeader(const CsvRow& row) {
    cells_ = row.cells.size();
    for (std::size_t k = 0; k < cells_; ++k) {
      const std::optional<std::size_t> column = columnOf(row.cells[k]);
      if (!column) {
        if (!row.cells[k].empty() && read_.notes.size() < kMostProblems)
          read_.notes.push_back(problemOf("unknown_key", pathOf(row.line), row.cells[k]));
        continue;
      }
      if (place_[*column])
        add(problemOf("duplicate_key", pathOf(row.line, kColumns[*column].name), row.cells[k]));
      place_[*column] = k;
    }
    for (std::size_t k = 0; k < kColumns.size(); ++k) {
      if (!place_[k]) add(problemOf("csv_column_missing", pathOf(row.line, kColumns[k].name), ""));
    }
  }

  void readRows() {
    CsvRow row;
    std::size_t rows = 0;
    while (problems_.size() < kMostProblems && csv_.next(row)) {
      if (++rows > kMostSpotHeights) {
        Problem many = problemOf("too_many", "", std::to_string(rows));
        many.most = static_cast<double>(kMostSpotHeights);
        return add(std::move(many));
      }
      readRow(row);
    }
    if (rows > 0) return;
    Problem none = problemOf("too_few", "", "0");
    none.least = 1;
    add(std::move(none));
  }

  void readRow(const CsvRow& row) {
    if (!row.is_well_quoted) return add(problemOf("wrong_type", pathOf(row.line), row.cells.back()));
    if (row.cells.size() != cells_) {
      Problem problem = problemOf("csv_row_cells", pathOf(row.line), std::to_string(row.cells.size()));
      problem.least = problem.most = static_cast<double>(cells_);
      return add(std::move(problem));
    }
    Eigen::Vector3d point;
    bool is_whole = true;
    for (std::size_t k = 0; k < kColumns.size(); ++k) {
      const auto value = readCell(row, k);
      is_whole = is_whole && value;
      point[static_cast<Eigen::Index>(k)] = value.value_or(0);
    }
    if (!is_whole) return;
    read_.points_m.push_back(point);
    read_.line.push_back(row.line - lines_before_);
  }

  std::optional<double> readCell(const CsvRow& row, std::size_t k) {
    const std::string& cell = row.cells[*place_[k]];
    const Column& column = kColumns[k];
    const CellValue read = valueOf(cell, csv_.separator() != ',',
                                   {column.name, column.least, column.most, Unit::metre, true, nullptr});
    if (read.value) return read.value;
    Problem problem =
        problemOf(read.code.empty() ? "missing" : read.code, pathOf(row.line, column.name), cell);
    problem.allowed = "number";
    problem.least = column.least;
    problem.most = column.most;
    problem.unit = Unit::metre;
    add(std::move(problem));
    return std::nullopt;
  }

  /// Moves grid coordinates to the middle of the survey; reports points too far from it.
  void moveToOrigin() {
    Eigen::Vector2d least = read_.points_m.front().head<2>();
    Eigen::Vector2d most = least;
    for (const Eigen::Vector3d& p : read_.points_m) {
      least = least.cwiseMin(p.head<2>());
      most = most.cwiseMax(p.head<2>());
    }
    if (std::max(most.maxCoeff(), -least.minCoeff()) <= kMostCoordinate_m) return;
    read_.taken_off_m = ((least + most) / 2).array().round();
    for (std::size_t i = 0; i < read_.points_m.size(); ++i) {
      read_.points_m[i].head<2>() -= read_.taken_off_m;
      for (std::size_t k = 0; k < 2; ++k) {
        const double value = read_.points_m[i][static_cast<Eigen::Index>(k)];
        if (std::abs(value) <= kMostCoordinate_m) continue;
        Problem problem =
            problemOf("out_of_range", fmt::format("row:{}:{}", read_.line[i], kColumns[k].name),
                      fmt::format("{}", value + read_.taken_off_m[static_cast<Eigen::Index>(k)]));
        problem.least = read_.taken_off_m[static_cast<Eigen::Index>(k)] - kMostCoordinate_m;
        problem.most = read_.taken_off_m[static_cast<Eigen::Index>(k)] + kMostCoordinate_m;
        problem.unit = Unit::metre;
        add(std::move(problem));
      }
    }
  }
};

}  // namespace

tl::expected<ReadSurvey, Problems> parseSurveyCsv(string_view text) {
  Problem problem;
  if (text.size() > kMostCsvBytes) {
    problem.code = "too_large";
    problem.value = std::to_string(text.size());
    problem.most = static_cast<double>(kMostCsvBytes);
    return tl::unexpected(Problems{problem});
  }
  if (const auto bad = notUtf8At(text)) {
    problem.code = "not_utf8";
    problem.value = placeOf(text, *bad);
    return tl::unexpected(Problems{problem});
  }
  const HeadedText table = headedText(text);
  return TableReader(table).read();
}

std::string surveyCsvText(const std::vector<Eigen::Vector3d>& points_m) {
  std::string text = "x_m,y_m,z_m\r\n";
  for (const Eigen::Vector3d& p : points_m)
    text += fmt::format("{},{},{}\r\n", valueText(p.x()), valueText(p.y()), valueText(p.z()));
  return text;
}

}  // namespace core::exchange
