#include "core/exchange/point_list.h"
#include "core/exchange/short_form.h"
#include "core/exchange/short_form_fields.h"
#include "core/exchange/short_form_text.h"
#include "core/plan.h"

#include <array>
#include <map>
#include <utility>
#include <vector>

namespace core::exchange {
namespace {

using std::string_view;
using Parts = std::vector<std::string>;

constexpr std::size_t kMostProblems = 100;
constexpr string_view kOutline = "tank.outline_m";

Problem problemOf(string_view code, string_view found, string_view allowed = {}) {
  Problem problem;
  problem.code = code;
  problem.value = shortened(found);
  problem.allowed = allowed;
  return problem;
}

Parts valuesIn(string_view text) {
  Parts values;
  for (std::size_t slash = text.find('/'); slash != string_view::npos; slash = text.find('/')) {
    values.emplace_back(text.substr(0, slash));
    text.remove_prefix(slash + 1);
  }
  values.emplace_back(text);
  return values;
}

class FormReader {
public:
  explicit FormReader(const Project& base) : project_(base) {}

  tl::expected<Project, Problems> read(const TypedForm& form) {
    if (form.check != checkGroup(joinedParts(form.parts))) add(problemOf("short_form_check", form.check));
    for (std::size_t k = 1; k < form.parts.size(); ++k) readPart(form.parts[k]);
    readCorners();
    for (const ShortField& item : kShortFields) reportMissing(item);
    if (problems_.empty()) problems_ = check(project_);
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    return std::move(project_);
  }

private:
  void add(Problem problem) {
    if (problems_.size() < kMostProblems) problems_.push_back(std::move(problem));
  }

  void readPart(const std::string& text) {
    const string_view token = tokenOf(text);
    const Parts values = valuesIn(string_view(text).substr(token.size()));
    if (token == kCornerToken) return addCorner(values);
    const std::span<const ShortField> part = shortFieldsOf(token);
    if (part.empty()) return add(problemOf("short_form_token", text));
    const std::size_t row = seen_[part.front().token]++;
    if (values.size() != part.size()) return add(problemOf("short_form_token", text));
    const List* const list = listOf(field(part.front().id));
    if (list) {
      if (row == 0) list->resize(project_, 0);
      list->resize(project_, row + 1);
    } else if (row > 0) {
      Problem problem = problemOf("duplicate_key", text);
      problem.path = part.front().id;
      return add(std::move(problem));
    }
    for (std::size_t k = 0; k < part.size(); ++k) take(field(part[k].id), row, values[k]);
  }

  void take(const Field& field, std::size_t row, string_view text) {
    const FieldValue value = valueOfShort(field, text);
    const Problems wrong = checkValue(field, row, value);
    for (const Problem& problem : wrong) add(problem);
    if (wrong.empty()) field.set(project_, row, value);
  }

  void addCorner(const Parts& values) {
    Json point = Json::array();
    for (const std::string& text : values) {
      const FieldValue value = numberOfShort(text);
      const double* const number = std::get_if<double>(&value);
      point.push_back(number ? Json(*number) : Json(text));
    }
    corners_.push_back(std::move(point));
  }

  void readCorners() {
    if (corners_.empty()) {
      if (project_.tank.shape == Shape::polygon)
        add(problemAt("missing", std::string(kOutline), nullptr, "list"));
      return;
    }
    constexpr Axis kPlanAxis{-kMostCoordinate_m, kMostCoordinate_m};
    const auto read = readPoints(kOutline, corners_, std::array{kPlanAxis, kPlanAxis});
    if (!read) {
      for (const Problem& problem : read.error()) add(problem);
      return;
    }
    project_.tank.outline_m.clear();
    for (std::size_t k = 0; k < read->size(); k += 2)
      project_.tank.outline_m.emplace_back((*read)[k], (*read)[k + 1]);
  }

  void reportMissing(const ShortField& item) {
    const Field& field = core::field(item.id);
    if (item.written != Written::always || !field.applies(project_) || seen_.contains(item.token)) return;
    for (Problem& problem : checkValue(field, 0, FieldValue{})) {
      problem.value.clear();
      add(std::move(problem));
    }
  }

  Project project_;
  Problems problems_;
  Json corners_ = Json::array();
  std::map<string_view, std::size_t> seen_;  // parts by token
};

}  // namespace

tl::expected<Project, Problems> fromShortForm(string_view text, const Project& base) {
  if (text.size() > kMostShortBytes) {
    Problem problem = problemOf("too_large", std::to_string(text.size()));
    problem.most = static_cast<double>(kMostShortBytes);
    return tl::unexpected(Problems{std::move(problem)});
  }
  const TypedForm form = typedForm(text);
  const std::string version = form.parts.empty() ? "" : form.parts.front();
  if (version != kShortVersion)
    return tl::unexpected(Problems{problemOf("short_form_version", version, kShortVersion)});
  return FormReader(base).read(form);
}

}  // namespace core::exchange
