#include "core/project/option_fields.h"

#include <algorithm>

#include <fmt/format.h>

namespace core {
namespace {

std::string pathOfChange(std::size_t option, const std::string& path) {
  return fmt::format("options[{}].changes.{}", option, path);
}

Problem unknownField(std::size_t option, const FieldChange& change) {
  Problem problem;
  problem.code = "unknown_field";
  problem.path = pathOfChange(option, change.path);
  problem.value = jsonText(change.value);
  return problem;
}

/// Steps from the least to the most, both tried; a problem when they are the wrong way round.
double steps(const char* least_id, const char* most_id, const Project& project, Problems& problems) {
  const double least = std::get<double>(field(least_id).get(project, 0));
  const double most = std::get<double>(field(most_id).get(project, 0));
  if (least > most) {
    Problem problem;
    problem.code = "range_crossed";
    problem.path = least_id;
    problem.value = jsonText(least);
    problem.most = most;
    problem.unit = Unit::metre;
    problems.push_back(std::move(problem));
  }
  return (most - least) / project.search.step_m + 1;
}

}  // namespace

Problems checkSearch(const Project& project) {
  Problems problems;
  double count = steps("search.least_length_m", "search.most_length_m", project, problems) *
                 steps("search.least_depth_m", "search.most_depth_m", project, problems);
  if (project.tank.shape == Shape::rectangle)
    count *= steps("search.least_width_m", "search.most_width_m", project, problems);
  if (problems.empty() && count > kMostCandidates) {
    Problem problem;
    problem.code = "too_many";
    problem.path = "search.step_m";
    problem.value = fmt::format("{:.0f}", count);
    problem.most = kMostCandidates;
    problem.unit = Unit::piece;
    problems.push_back(std::move(problem));
  }
  return problems;
}

Problems checkOptions(const Project& project) {
  Problems problems;
  for (std::size_t k = 0; k < project.options.size(); ++k) {
    for (const FieldChange& change : project.options[k].changes) {
      const auto place = placeOfPath(change.path);
      if (!place) {
        problems.push_back(unknownField(k, change));
        continue;
      }
      for (Problem& problem : checkValue(*place->field, place->row, change.value)) {
        problem.path = pathOfChange(k, change.path);
        problems.push_back(std::move(problem));
      }
    }
  }
  return problems;
}

Project withChanges(const Project& project, const Option& option) {
  Project changed = project;
  changed.options.clear();
  for (const FieldChange& change : option.changes) {
    const auto place = placeOfPath(change.path);
    if (place && place->row < rowCount(*place->field, changed))
      place->field->set(changed, place->row, change.value);
  }
  return changed;
}

std::vector<FieldChange> changesBetween(const Project& base, const Project& other) {
  std::vector<FieldChange> changes;
  for (const Field& field : fields()) {
    if (!field.applies(other)) continue;
    const std::size_t rows = std::min(rowCount(field, base), rowCount(field, other));
    for (std::size_t row = 0; row < rows; ++row) {
      FieldValue value = field.get(other, row);
      if (value != field.get(base, row)) changes.push_back({pathOf(field, row), std::move(value)});
    }
  }
  return changes;
}

std::string optionLetter(std::size_t index) {
  return std::string(1, static_cast<char>('A' + index));
}

}  // namespace core
