#include "core/exchange/point_list.h"

#include "core/project/fields.h"

#include <utility>

#include <fmt/format.h>

namespace core::exchange {
namespace {

constexpr double kPositiveZero = 0.0;  // added to a number it turns -0 into 0

/// Reads one coordinate into `out`. @return its problem, or none
Problems readCoordinate(std::string path, const Json& json, const Axis& axis, std::vector<double>& out) {
  const double value = json.is_number() ? json.get<double>() + kPositiveZero : 0;
  const bool is_within = value >= axis.least && value <= axis.most;
  if (json.is_number() && is_within) {
    out.push_back(value);
    return {};
  }
  Problem problem =
      problemAt(json.is_number() ? "out_of_range" : "wrong_type", std::move(path), &json, "number");
  problem.least = axis.least;
  problem.most = axis.most;
  problem.unit = Unit::metre;
  return {problem};
}

Problems readPoint(const std::string& path, const Json& json, std::span<const Axis> axes,
                   std::vector<double>& out) {
  if (!json.is_array() || json.size() != axes.size()) {
    return {problemAt("wrong_type", path, &json, axes.size() == 2 ? "[x, y]" : "[x, y, z]")};
  }
  Problems problems;
  for (std::size_t k = 0; k < axes.size(); ++k) {
    const Problems wrong = readCoordinate(fmt::format("{}[{}]", path, k), json[k], axes[k], out);
    problems.insert(problems.end(), wrong.begin(), wrong.end());
  }
  return problems;
}

}  // namespace

Problem problemAt(std::string_view code, std::string path, const Json* found, std::string_view allowed) {
  Problem problem;
  problem.code = code;
  problem.path = std::move(path);
  if (found) problem.value = shortened(compactText(*found));
  problem.allowed = allowed;
  return problem;
}

tl::expected<std::vector<double>, Problems> readPoints(std::string_view id, const Json& list,
                                                       std::span<const Axis> axes) {
  std::vector<double> coordinates;
  Problems problems;
  for (std::size_t row = 0; row < list.size(); ++row) {
    const Problems wrong = readPoint(fmt::format("{}[{}]", id, row), list[row], axes, coordinates);
    problems.insert(problems.end(), wrong.begin(), wrong.end());
  }
  if (!problems.empty()) return tl::unexpected(std::move(problems));
  return coordinates;
}

}  // namespace core::exchange
