#include "core/exchange/field_json.h"
#include "core/exchange/options_json.h"
#include "core/exchange/point_list.h"
#include "core/exchange/project_json.h"
#include "core/exchange/project_keys.h"
#include "core/exchange/short_form.h"
#include "core/exchange/unknown_keys.h"
#include "core/exchange/weather_days.h"
#include "core/geometry/outline.h"
#include "core/plan.h"
#include "core/project/option_fields.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace core::exchange {
namespace {

using std::string_view;

/// Objects that must be there; others that hold fields may be absent or null.
constexpr std::array<string_view, 3> kRequiredSections{"site", "tank", "lining"};

constexpr std::size_t kMostProblems = 100;
constexpr Axis kPlanAxis{-kMostCoordinate_m, kMostCoordinate_m};

/// True when the field is used whatever the shape of the tank and the kind of ground.
bool appliesToEvery(const Field& field) {
  Project project;
  for (const Shape shape : {Shape::rectangle, Shape::round, Shape::polygon}) {
    for (const GroundKind kind : {GroundKind::level, GroundKind::slope, GroundKind::spot_heights}) {
      project.tank.shape = shape;
      project.site.ground.kind = kind;
      if (!field.applies(project)) return false;
    }
  }
  return true;
}

class Reader {
public:
  explicit Reader(const Json& root) : root_(root) {}

  tl::expected<ReadProject, Problems> read() {
    problems_ = checkFormat(root_, kFormat, "not_a_project");
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    readSections();
    for (const List& list : lists()) readRows(list);
    readWeatherDays();
    for (const Field& field : fields()) {
      for (std::size_t row = 0; row < rowCount(field, project_); ++row) readField(field, row);
    }
    readOutline();
    readSpotHeights();
    readChangedFields();
    UnknownKeys unknown = unknownKeys(root_);
    project_.kept = std::move(unknown.kept);
    if (problems_.empty()) problems_ = check(project_);
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    return ReadProject{std::move(project_), std::move(unknown.notes)};
  }

private:
  void add(Problem problem) {
    if (problems_.size() < kMostProblems) problems_.push_back(std::move(problem));
  }

  void add(string_view code, std::string path, const Json* found, string_view allowed) {
    add(problemAt(code, std::move(path), found, allowed));
  }

  void addAll(const Problems& problems) {
    for (const Problem& problem : problems) add(problem);
  }

  /// Value at a field's or section's place; nothing when it or what should hold it is not there.
  const Json* found(string_view id, std::size_t row = 0) const {
    const Json::json_pointer pointer(pointerText(id, row));
    return root_.contains(pointer) ? &root_.at(pointer) : nullptr;
  }

  bool holderIsThere(string_view id, std::size_t row) const {
    const Json* holder = &root_;
    if (const std::size_t dot = id.rfind('.'); dot != string_view::npos)
      holder = found(id.substr(0, dot), row);
    return holder && holder->is_object();
  }

  void readSections() {
    for (const string_view id : sections()) {
      const Json* value = found(id);
      const bool is_required =
          std::find(kRequiredSections.begin(), kRequiredSections.end(), id) != kRequiredSections.end();
      if (!value && is_required) add("missing", std::string(id), nullptr, "object");
      const bool is_allowed_null = value && value->is_null() && !is_required;
      if (value && !value->is_object() && !is_allowed_null)
        add("wrong_type", std::string(id), value, "object");
    }
    if (!isObject("works")) project_.works.reset();
    if (isObject("water")) project_.water.emplace();
    if (isObject("delivery")) project_.delivery.emplace();
    if (isObject("prices")) project_.prices.emplace();
  }

  bool isObject(string_view id) const {
    const Json* value = found(id);
    return value && value->is_object();
  }

  /// Elements of a list that has neither too few nor too many of them.
  const Json* readList(string_view id, std::size_t least, std::size_t most, Need need) {
    const Json* list = found(id);
    if (!list) {
      if (need == Need::required && holderIsThere(id, 0)) add("missing", std::string(id), nullptr, "list");
      return nullptr;
    }
    if (!list->is_array()) {
      add("wrong_type", std::string(id), list, "list");
      return nullptr;
    }
    if (list->size() >= least && list->size() <= most) return list;
    const Json count = list->size();
    Problem problem =
        problemAt(list->size() < least ? "too_few" : "too_many", std::string(id), &count, "list");
    problem.least = static_cast<double>(least);
    problem.most = static_cast<double>(most);
    problem.unit = Unit::piece;
    add(std::move(problem));
    return nullptr;
  }

  /// Makes the rows of a list, all blank; their fields are read later.
  void readRows(const List& list) {
    if (!list.applies(project_)) return;
    const Json* rows =
        readList(list.id, list.least, list.most, list.required ? Need::required : Need::optional);
    if (!rows) return;
    list.resize(project_, 0);
    list.resize(project_, rows->size());
    for (std::size_t row = 0; row < rows->size(); ++row) {
      if (!(*rows)[row].is_object())
        add("wrong_type", std::string(list.id) + "[" + std::to_string(row) + "]", &(*rows)[row], "object");
    }
  }

  void readWeatherDays() {
    if (!project_.water) return;
    const Json* list = readList(kWeatherDays, 0, kMostWeatherDays, Need::optional);
    if (!list) return;
    auto days = daysFromJson(*list);
    if (!days) return addAll(days.error());
    project_.water->climate.daily = DailyRecord(std::move(*days));
  }

  void readField(const Field& field, std::size_t row) {
    const std::size_t before = problems_.size();
    const Json* json = found(field.id, row);
    if (!json) {
      reportMissing(field, row);
    } else if (json->is_structured()) {
      add("wrong_type", pathOf(field, row), json, allowedText(field));
    } else {
      take(field, row, fieldValueOf(*json));
    }
    const bool decides_others = field.id == "tank.shape" || field.id == "site.ground.kind";
    if (decides_others && problems_.size() != before) choice_is_bad_ = true;
  }

  void take(const Field& field, std::size_t row, const FieldValue& value) {
    const Problems wrong = checkValue(field, row, value);
    addAll(wrong);
    if (wrong.empty()) field.set(project_, row, value);
  }

  void reportMissing(const Field& field, std::size_t row) {
    if (!field.required || !field.applies(project_) || !holderIsThere(field.id, row)) return;
    if (choice_is_bad_ && !appliesToEvery(field)) return;
    Problems missing = checkValue(field, row, FieldValue{});
    for (Problem& problem : missing) problem.value.clear();
    addAll(missing);
  }

  void readOutline() {
    const bool is_used = project_.tank.shape == Shape::polygon;
    const Json* list =
        readList(kOutline, kLeastCorners, kMostCorners, is_used ? Need::required : Need::optional);
    if (!list) return;
    const auto coordinates = readPoints(kOutline, *list, std::array{kPlanAxis, kPlanAxis});
    if (!coordinates) return addAll(coordinates.error());
    project_.tank.outline_m.clear();
    for (std::size_t k = 0; k < coordinates->size(); k += 2) {
      project_.tank.outline_m.emplace_back((*coordinates)[k], (*coordinates)[k + 1]);
    }
    if (is_used) addAll(geometry::checkOutline(project_.tank.outline_m));
  }

  void readSpotHeights() {
    const bool is_used = project_.site.ground.kind == GroundKind::spot_heights;
    const Json* list = readList(kSpotHeights, is_used ? kLeastSpotHeights : 0, kMostSpotHeights,
                                is_used ? Need::required : Need::optional);
    if (!list) return;
    const Field& height = field("site.elevation_m");
    const auto coordinates =
        readPoints(kSpotHeights, *list, std::array{kPlanAxis, kPlanAxis, Axis{height.least, height.most}});
    if (!coordinates) return addAll(coordinates.error());
    SpotHeights::List points;
    points.reserve(coordinates->size() / 3);
    for (std::size_t k = 0; k < coordinates->size(); k += 3)
      points.emplace_back((*coordinates)[k], (*coordinates)[k + 1], (*coordinates)[k + 2]);
    if (!points.empty()) project_.site.ground.points_m = std::move(points);
  }

  void readChangedFields() {
    const Json* list = readList(kOptions, 0, kMostOptions, Need::optional);
    if (!list) return;
    ReadOptions read = readOptions(*list);
    addAll(read.problems);
    project_.options = std::move(read.options);
    addAll(checkOptions(project_));
  }

  const Json& root_;
  Project project_;
  Problems problems_;
  bool choice_is_bad_ = false;  // a choice that decides which other fields apply could not be read
};

}  // namespace

Problems checkFormat(const Json& root, string_view format, string_view code) {
  if (!root.is_object()) return {problemAt(code, "", &root, "object")};
  const auto found = [&](const char* key) { return root.contains(key) ? &root.at(key) : nullptr; };
  const Json* is = found("format");
  const Json* version = found("version");
  if (!is || *is != format) return {problemAt(code, "format", is, format)};
  if (!version) return {problemAt("missing", "version", nullptr, kVersionText)};
  if (version->is_number() && *version == kVersion) return {};
  return {problemAt("unknown_version", "version", version, kVersionText)};
}

tl::expected<ReadProject, Problems> projectFrom(const Json& root) {
  return Reader(root).read();
}

tl::expected<ReadProject, Problems> parseProject(string_view json) {
  if (beginsAsShortForm(json)) {
    auto project = fromShortForm(json, Project{});
    if (!project) return tl::unexpected(std::move(project.error()));
    return ReadProject{std::move(*project), {}};
  }
  const auto root = parseJson(json);
  if (!root) return tl::unexpected(root.error());
  return projectFrom(*root);
}

}  // namespace core::exchange
