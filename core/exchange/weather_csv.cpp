#include "core/exchange/weather_csv.h"

#include "core/exchange/csv_rows.h"
#include "core/exchange/utf8.h"
#include "core/exchange/weather_columns.h"
#include "core/exchange/weather_values.h"
#include "core/project/field_access.h"
#include "core/project/fields.h"

#include <algorithm>
#include <utility>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;

constexpr std::size_t kMostProblems = 100;
constexpr string_view kDate = "date";

std::string lowerCase(std::string text) {
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  return text;
}

std::string pathOf(std::size_t line, string_view column = {}) {
  return column.empty() ? fmt::format("row:{}", line) : fmt::format("row:{}:{}", line, column);
}

Problem problemOf(string_view code, std::string path, string_view value, string_view allowed = {}) {
  Problem problem;
  problem.code = code;
  problem.path = std::move(path);
  problem.value = shortened(value);
  problem.allowed = allowed;
  return problem;
}

Problem countProblem(string_view code, std::string path, std::size_t found, double least, double most) {
  Problem problem = problemOf(code, std::move(path), std::to_string(found));
  problem.least = least;
  problem.most = most;
  return problem;
}

/// Where the columns stand.
struct Header {
  static constexpr std::size_t kAbsent = static_cast<std::size_t>(-1);
  std::size_t cells = 0;
  std::size_t date = kAbsent;
  std::array<std::size_t, kWeatherColumns.size()> column = [] {
    std::array<std::size_t, kWeatherColumns.size()> all{};
    all.fill(kAbsent);
    return all;
  }();

  /// The place of a known column, null for any other name.
  std::size_t* placeOf(string_view name) {
    if (name == kDate) return &date;
    for (std::size_t k = 0; k < kWeatherColumns.size(); ++k) {
      if (kWeatherColumns[k].name == name) return &column[k];
    }
    return nullptr;
  }
};

class TableReader {
public:
  explicit TableReader(string_view text) : csv_(text) {}

  tl::expected<ReadWeather, Problems> read() {
    CsvRow row;
    if (!csv_.next(row)) return tl::unexpected(Problems{problemOf("csv_no_header", "row:1", "")});
    readHeader(row);
    if (problems_.empty()) readRows(row);
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    return std::move(read_);
  }

private:
  void readHeader(const CsvRow& row) {
    header_.cells = row.cells.size();
    if (!row.is_well_quoted) addQuoteProblem(row);
    bool is_any_known = false;
    for (std::size_t k = 0; k < row.cells.size(); ++k) is_any_known |= readName(row, k);
    if (!is_any_known) {
      problems_ = {problemOf("csv_no_header", pathOf(row.line), row.cells.front())};
      return;
    }
    requireColumn(row, header_.date, kDate);
    for (std::size_t k = 0; k < kWeatherColumns.size(); ++k) {
      if (kWeatherColumns[k].required) requireColumn(row, header_.column[k], kWeatherColumns[k].name);
    }
  }

  /// Takes in the name of one column. @return true when it is known
  bool readName(const CsvRow& row, std::size_t cell) {
    const std::string name = lowerCase(row.cells[cell]);
    std::size_t* const place = header_.placeOf(name);
    if (!place) {
      if (!name.empty()) note(problemOf("unknown_key", pathOf(row.line), row.cells[cell]));
      return false;
    }
    if (*place != Header::kAbsent) add(problemOf("duplicate_key", pathOf(row.line, name), row.cells[cell]));
    *place = cell;
    return true;
  }

  void requireColumn(const CsvRow& row, std::size_t place, string_view name) {
    if (place == Header::kAbsent) add(problemOf("csv_column_missing", pathOf(row.line, name), ""));
  }

  void readRows(CsvRow& row) {
    std::size_t rows = 0;
    while (problems_.size() < kMostProblems && csv_.next(row)) {
      if (++rows > kMostWeatherDays) {
        add(countProblem("too_many", "", rows, 1, static_cast<double>(kMostWeatherDays)));
        return;
      }
      readRow(row);
    }
    if (rows == 0) add(countProblem("too_few", "", 0, 1, static_cast<double>(kMostWeatherDays)));
  }

  void readRow(const CsvRow& row) {
    if (!row.is_well_quoted) {
      addQuoteProblem(row);
      return;
    }
    if (row.cells.size() != header_.cells) {
      const auto wanted = static_cast<double>(header_.cells);
      add(countProblem("csv_row_cells", pathOf(row.line), row.cells.size(), wanted, wanted));
      return;
    }
    DailyWeather day{};
    const bool is_dated = readDate(row, day);
    for (std::size_t k = 0; k < kWeatherColumns.size(); ++k) {
      if (header_.column[k] != Header::kAbsent) readValue(row, k, day);
    }
    checkRange(row, day);
    if (is_dated) read_.days.push_back(day);
  }

  void readValue(const CsvRow& row, std::size_t k, DailyWeather& day) {
    const WeatherColumn& column = kWeatherColumns[k];
    const std::string& cell = row.cells[header_.column[k]];
    const CellValue read = valueOf(cell, csv_.separator() != ',', column);
    day.*column.value = read.value;
    if (read.code.empty()) return;
    Problem problem = problemOf(read.code, pathOf(row.line, column.name), cell, "number");
    problem.least = column.range.least;
    problem.most = column.range.most;
    problem.unit = column.unit;
    add(std::move(problem));
  }

  bool readDate(const CsvRow& row, DailyWeather& day) {
    const std::string& cell = row.cells[header_.date];
    const auto date = access::dateFrom(cell, 0, 9999);
    if (!date) {
      add(problemOf(isNotMeasured(cell) ? "missing" : "bad_date", pathOf(row.line, kDate), cell,
                    "YYYY-MM-DD"));
      return false;
    }
    day.date = *date;
    const int year = static_cast<int>(date->year());
    if (year < water::kFirstRecordYear || year > water::kLastRecordYear) {
      Problem problem = problemOf("out_of_range", pathOf(row.line, kDate), cell, "YYYY-MM-DD");
      problem.least = water::kFirstRecordYear;
      problem.most = water::kLastRecordYear;
      problem.unit = Unit::year;
      add(std::move(problem));
      return false;
    }
    checkOrder(row, *date);
    return true;
  }

  /// Compares a date with that of the row before.
  void checkOrder(const CsvRow& row, std::chrono::year_month_day date) {
    if (read_.days.empty()) return;
    const std::chrono::sys_days next = std::chrono::sys_days(read_.days.back().date) + std::chrono::days(1);
    const std::chrono::sys_days here = date;
    if (here > next) {
      const auto missing = [](std::chrono::sys_days day) { return access::dateText(day); };
      note(problemOf("csv_days_missing", pathOf(row.line),
                     missing(next) + '/' + missing(here - std::chrono::days(1))));  // ISO 8601 interval
    }
    if (here >= next) return;
    const bool is_same = here + std::chrono::days(1) == next;
    add(problemOf(is_same ? "csv_date_repeated" : "csv_date_backwards", pathOf(row.line, kDate),
                  row.cells[header_.date]));
  }

  void checkRange(const CsvRow& row, const DailyWeather& day) {
    if (!day.t_min_c || !day.t_max_c || *day.t_max_c >= *day.t_min_c) return;
    Problem problem = problemOf("csv_max_below_min", pathOf(row.line, "t_max_c"),
                                row.cells[*header_.placeOf("t_max_c")], "number");
    problem.least = *day.t_min_c;
    problem.most = water::kTemperature_c.most;
    problem.unit = Unit::celsius;
    add(std::move(problem));
  }

  void addQuoteProblem(const CsvRow& row) {
    add(problemOf("wrong_type", pathOf(row.line), row.cells.back(), "RFC 4180"));
  }

  void add(Problem problem) {
    if (problems_.size() < kMostProblems) problems_.push_back(std::move(problem));
  }

  void note(Problem problem) {
    if (read_.notes.size() < kMostProblems) read_.notes.push_back(std::move(problem));
  }

  CsvReader csv_;
  Header header_;
  ReadWeather read_;
  Problems problems_;
};

}  // namespace

tl::expected<ReadWeather, Problems> parseWeatherCsv(string_view text) {
  if (text.size() > kMostCsvBytes) {
    return tl::unexpected(
        Problems{countProblem("too_large", "", text.size(), 0, static_cast<double>(kMostCsvBytes))});
  }
  if (const auto bad = notUtf8At(text)) {
    return tl::unexpected(Problems{problemOf("not_utf8", "", placeOf(text, *bad))});
  }
  return TableReader(text).read();
}

std::string weatherCsvText(const std::vector<DailyWeather>& days) {
  std::string text(kDate);
  for (const WeatherColumn& column : kWeatherColumns) text.append(",").append(column.name);
  text += "\r\n";
  for (const DailyWeather& day : days) {
    text += access::dateText(day.date);
    for (const WeatherColumn& column : kWeatherColumns) text.append(",").append(valueText(day.*column.value));
    text += "\r\n";
  }
  return text;
}

}  // namespace core::exchange
