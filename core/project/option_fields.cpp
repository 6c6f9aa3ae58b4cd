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

}  // namespace

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
