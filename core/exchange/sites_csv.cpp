#include "core/exchange/sites_csv.h"

#include "core/exchange/csv_rows.h"
#include "core/exchange/json_reader.h"
#include "core/exchange/utf8.h"
#include "core/exchange/weather_values.h"
#include "core/project/fields.h"

#include <limits>
#include <set>
#include <utility>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;

constexpr std::size_t kMostProblems = 100;
constexpr string_view kId = "id";
constexpr double kAny = std::numeric_limits<double>::max();

Problem problemOf(string_view code, std::string path, std::string value) {
  Problem problem;
  problem.code = code;
  problem.path = std::move(path);
  problem.value = std::move(value);
  return problem;
}

/// What a cell holds, for the check of its field; text where the field wants something else.
FieldValue valueOfCell(const Field& field, const std::string& cell, bool may_have_comma) {
  if (field.kind == FieldKind::text) return cell;
  if (isNotMeasured(cell)) return {};
  if (field.kind == FieldKind::flag && (cell == "true" || cell == "false")) return cell == "true";
  if (field.kind != FieldKind::number && field.kind != FieldKind::whole) return cell;
  const CellValue read = valueOf(cell, may_have_comma, {field.id, {-kAny, kAny}, field.unit, true, nullptr});
  return read.value ? FieldValue(*read.value) : FieldValue(cell);
}

class SitesReader {
public:
  SitesReader(string_view text, const Project& base) : csv_(text), base_(base) { base_.options.clear(); }

  tl::expected<std::vector<SiteRow>, Problems> read() {
    CsvRow row;
    if (!csv_.next(row)) add(problemOf("csv_no_header", "", ""));
    if (problems_.empty()) readHeader(row);
    if (problems_.empty()) readRows();
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    return std::move(sites_);
  }

private:
  struct Column {
    std::string path;
    std::optional<FieldPlace> place;  ///< absent: the column has no name, or is the first one, "id"
  };

  CsvReader csv_;
  Project base_;
  bool has_id_ = false;
  std::vector<Column> columns_;
  std::vector<SiteRow> sites_;
  Problems problems_;

  void add(Problem problem) {
    if (problems_.size() < kMostProblems) problems_.push_back(std::move(problem));
  }

  static std::string rowPath(const CsvRow& row) { return fmt::format("row:{}", row.line); }
  static std::string cellPath(const CsvRow& row, string_view column) {
    return fmt::format("row:{}:{}", row.line, column);
  }

  void readHeader(const CsvRow& row) {
    if (!row.is_well_quoted) return add(problemOf("wrong_type", rowPath(row), shortened(row.cells.back())));
    has_id_ = row.cells.front() == kId;
    std::set<std::pair<string_view, std::size_t>> seen;
    for (std::size_t k = 0; k < row.cells.size(); ++k) {
      Column& column = columns_.emplace_back(Column{row.cells[k], std::nullopt});
      if (column.path.empty() || (k == 0 && has_id_)) continue;
      column.place = placeIn(column.path);
      if (!column.place) {
        add(problemOf("unknown_field", rowPath(row), shortened(column.path)));
      } else if (!seen.emplace(column.place->field->id, column.place->row).second) {
        add(problemOf("duplicate_key", rowPath(row), shortened(column.path)));
      }
    }
  }

  /// The place that a path names, if the template has it.
  std::optional<FieldPlace> placeIn(const std::string& path) const {
    const auto place = placeOfPath(path);
    return place && place->row < rowCount(*place->field, base_) ? place : std::nullopt;
  }

  void readRows() {
    CsvRow row;
    while (problems_.size() < kMostProblems && csv_.next(row)) {
      if (sites_.size() == kMostSites) return addCount("too_many", kMostSites + 1);
      readRow(row);
    }
    if (sites_.empty() && problems_.empty()) addCount("too_few", 0);
  }

  void addCount(string_view code, std::size_t count) {
    Problem problem = problemOf(code, "", std::to_string(count));
    problem.least = 1;
    problem.most = static_cast<double>(kMostSites);
    add(std::move(problem));
  }

  void readRow(const CsvRow& row) {
    if (!row.is_well_quoted) return add(problemOf("wrong_type", rowPath(row), shortened(row.cells.back())));
    if (row.cells.size() != columns_.size()) {
      Problem problem = problemOf("csv_row_cells", rowPath(row), std::to_string(row.cells.size()));
      problem.least = problem.most = static_cast<double>(columns_.size());
      return add(std::move(problem));
    }
    SiteRow site{std::to_string(sites_.size() + 1), row.line, base_};
    if (has_id_ && !row.cells.front().empty()) site.id = row.cells.front();
    for (std::size_t k = has_id_ ? 1 : 0; k < columns_.size(); ++k)
      if (!row.cells[k].empty()) readCell(row, k, site.project);
    sites_.push_back(std::move(site));
  }

  void readCell(const CsvRow& row, std::size_t k, Project& project) {
    const Column& column = columns_[k];
    if (!column.place) return add(problemOf("unknown_field", rowPath(row), shortened(row.cells[k])));
    const auto& [field, at] = *column.place;
    const FieldValue value = valueOfCell(*field, row.cells[k], csv_.separator() != ',');
    Problems wrong = checkValue(*field, at, value);
    if (wrong.empty()) field->set(project, at, value);
    for (Problem& problem : wrong) {
      problem.path = cellPath(row, column.path);
      add(std::move(problem));
    }
  }
};

}  // namespace

tl::expected<std::vector<SiteRow>, Problems> readSites(string_view text, const Project& base) {
  if (text.size() > kMostBytes) {
    Problem problem = problemOf("too_large", "", std::to_string(text.size()));
    problem.most = static_cast<double>(kMostBytes);
    return tl::unexpected(Problems{problem});
  }
  if (const auto bad = notUtf8At(text))
    return tl::unexpected(Problems{problemOf("not_utf8", "", placeOf(text, *bad))});
  return SitesReader(text, base).read();
}

}  // namespace core::exchange
