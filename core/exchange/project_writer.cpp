#include "core/exchange/field_json.h"
#include "core/exchange/options_json.h"
#include "core/exchange/project_file.h"
#include "core/exchange/project_json.h"
#include "core/exchange/project_keys.h"
#include "core/exchange/weather_days.h"
#include "core/project/fields.h"

#include <algorithm>
#include <optional>
#include <string>

namespace core::exchange {
namespace {

template <class Point>
Json jsonFrom(const std::vector<Point>& points) {
  Json list = Json::array();
  for (const Point& point : points) {
    Json row = Json::array();
    for (const double coordinate : point) row.push_back(jsonNumber(coordinate));
    list.push_back(std::move(row));
  }
  return list;
}

/// A value that is not used at present is still written when the user once entered it.
bool isWritten(const Field& field, const Project& project, const FieldValue& value) {
  if (field.applies(project)) return true;
  return !std::holds_alternative<std::monostate>(value) && value != field.get(Project{}, 0);
}

void put(Json& root, const Field& field, const Project& project) {
  for (std::size_t row = 0; row < rowCount(field, project); ++row) {
    const FieldValue value = field.get(project, row);
    if (isWritten(field, project, value))
      root[Json::json_pointer(pointerText(field.id, row))] = jsonOf(value);
  }
}

std::optional<Json::json_pointer> pointerFrom(const std::string& text) {
  try {
    return Json::json_pointer(text);
  } catch (const nlohmann::json::exception&) {
    return std::nullopt;
  }
}

/// Whether a key that this version does not know stands beside a list.
bool hasKeptBeside(const List& list, const Project& project) {
  const Json::json_pointer holder = Json::json_pointer(pointerText(list.id, 0)).parent_pointer();
  return std::ranges::any_of(project.kept, [&](const KeptKey& kept) {
    const auto pointer = pointerFrom(kept.pointer);
    return pointer && !pointer->empty() && pointer->parent_pointer() == holder;
  });
}

bool isLeftOut(const List& list, const Project& project) {
  return list.is_left_out_empty && list.size(project) == 0 && !hasKeptBeside(list, project);
}

/// Puts the rows of a list, still empty, in place before the first field that they hold.
void putRows(Json& root, const Field& field, const Project& project) {
  const List* list = listOf(field);
  if (!list || !list->applies(project) || isLeftOut(*list, project)) return;
  Json& rows = root[Json::json_pointer(pointerText(list->id, 0))];
  if (rows.is_null()) rows = Json(list->size(project), Json::object());
}

/// Puts a list in its place, just before the field that follows it.
void putListBefore(Json& root, const Field& field, const Project& project) {
  const Tank& tank = project.tank;
  const Ground& ground = project.site.ground;
  if (field.id == "tank.depth_m" && (tank.shape == Shape::polygon || tank.outline_m != Tank{}.outline_m)) {
    root["tank"]["outline_m"] = jsonFrom(tank.outline_m);
  }
  if (field.id == "site.soil" && (ground.kind == GroundKind::spot_heights || !ground.points_m.empty())) {
    root["site"]["ground"]["points_m"] = jsonFrom(ground.points_m.list());
  }
  if (field.id == "water.climate.rain_cv_percent" && project.water && !project.water->climate.daily.empty()) {
    root["water"]["climate"]["daily"] = jsonFromDays(project.water->climate.daily.days());
  }
  putRows(root, field, project);
}

/// Writes an unknown key back where what held it is still there and has no such key of its own.
void putBack(Json& root, const KeptKey& kept) {
  const auto pointer = pointerFrom(kept.pointer);
  if (!pointer || pointer->empty() || root.contains(*pointer) || !root.contains(pointer->parent_pointer()))
    return;
  Json& holder = root.at(pointer->parent_pointer());
  Json value = Json::parse(kept.json, nullptr, false);
  if (holder.is_object() && !value.is_discarded()) holder[pointer->back()] = std::move(value);
}

}  // namespace

Json projectJson(const Project& project) {
  Json root = {{"format", kFormat}, {"version", kVersion}};
  for (const Field& field : fields()) {
    putListBefore(root, field, project);
    put(root, field, project);
  }
  if (!project.options.empty()) root[std::string(kOptions)] = optionsJson(project.options);
  for (const KeptKey& kept : project.kept) putBack(root, kept);
  return root;
}

std::string projectText(const Project& project) {
  return prettyText(projectJson(project));
}

}  // namespace core::exchange
