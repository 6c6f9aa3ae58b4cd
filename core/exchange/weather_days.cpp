#include "core/exchange/weather_days.h"

#include "core/exchange/point_list.h"
#include "core/exchange/project_keys.h"
#include "core/exchange/weather_columns.h"
#include "core/project/field_access.h"

#include <utility>

#include <fmt/format.h>

namespace core::exchange {
namespace {

constexpr std::size_t kMostProblems = 100;
constexpr std::string_view kRowForm = "[date, rain_mm, t_min_c, t_max_c, ...]";

class DayReader {
public:
  tl::expected<std::vector<DailyWeather>, Problems> read(const Json& rows) {
    days_.reserve(rows.size());
    for (std::size_t row = 0; row < rows.size() && problems_.size() < kMostProblems; ++row)
      readRow(fmt::format("{}[{}]", kWeatherDays, row), rows[row]);
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    return std::move(days_);
  }

private:
  void readRow(const std::string& path, const Json& row) {
    if (!row.is_array() || row.empty() || row.size() > kWeatherColumns.size() + 1) {
      problems_.push_back(problemAt("wrong_type", path, &row, kRowForm));
      return;
    }
    DailyWeather day{};
    if (!readDate(path + "[0]", row[0], day)) return;
    for (std::size_t k = 1; k < row.size(); ++k)
      readValue(fmt::format("{}[{}]", path, k), row[k], kWeatherColumns[k - 1], day);
    if (day.t_min_c && day.t_max_c && *day.t_max_c < *day.t_min_c)
      return refuseRange(path + "[3]", row[3], day);
    days_.push_back(day);
  }

  void refuseRange(std::string path, const Json& json, const DailyWeather& day) {
    Problem problem = problemAt("max_below_min", std::move(path), &json, "number");
    problem.least = *day.t_min_c;
    problem.most = water::kTemperature_c.most;
    problem.unit = Unit::celsius;
    problems_.push_back(std::move(problem));
  }

  bool readDate(std::string path, const Json& json, DailyWeather& day) {
    const auto date = json.is_string() ? access::dateFrom(json.get<std::string>(), water::kFirstRecordYear,
                                                          water::kLastRecordYear)
                                       : std::nullopt;
    const bool rises = date && (days_.empty() || days_.back().date < *date);
    if (date) day.date = *date;
    if (rises) return true;
    problems_.push_back(
        problemAt(date ? "date_not_later" : "bad_date", std::move(path), &json,
                  fmt::format("{}-01-01..{}-12-31", water::kFirstRecordYear, water::kLastRecordYear)));
    return false;
  }

  void readValue(std::string path, const Json& json, const WeatherColumn& column, DailyWeather& day) {
    if (json.is_null()) return;
    constexpr double kPositiveZero = 0.0;  // turns -0 into 0
    const double value = json.is_number() ? json.get<double>() + kPositiveZero : 0;
    if (json.is_number() && column.range.holds(value)) {
      day.*column.value = value;
      return;
    }
    Problem problem =
        problemAt(json.is_number() ? "out_of_range" : "wrong_type", std::move(path), &json, "number");
    problem.least = column.range.least;
    problem.most = column.range.most;
    problem.unit = column.unit;
    problems_.push_back(std::move(problem));
  }

  std::vector<DailyWeather> days_;
  Problems problems_;
};

}  // namespace

tl::expected<std::vector<DailyWeather>, Problems> daysFromJson(const Json& rows) {
  return DayReader().read(rows);
}

Json jsonFromDays(const std::vector<DailyWeather>& days) {
  Json rows = Json::array();
  for (const DailyWeather& day : days) {
    Json row = Json::array({access::dateText(day.date)});
    for (const WeatherColumn& column : kWeatherColumns)
      row.push_back(day.*column.value ? jsonNumber(*(day.*column.value)) : Json(nullptr));
    while (row.back().is_null()) row.erase(row.size() - 1);
    rows.push_back(std::move(row));
  }
  return rows;
}

}  // namespace core::exchange
