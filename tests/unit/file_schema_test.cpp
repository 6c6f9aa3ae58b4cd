#include "core/exchange/project_file.h"
#include "core/exchange/weather_columns.h"
#include "core/project/fields.h"
#include "tests/support/random_project.h"
#include "tests/support/temporary_folder.h"

#include <filesystem>
#include <fstream>
#include <set>
#include <string>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

namespace {

using nlohmann::json;
using Adapter = valijson::adapters::NlohmannJsonAdapter;

const json& schemaText() {
  static const json text =
      json::parse(support::bytesOf(TANKWRIGHT_SOURCE_DIR "/resources/schema/tankwright-project.schema.json"));
  return text;
}

const valijson::Schema& schema() {
  static valijson::Schema parsed;
  static const bool once = [] {
    valijson::SchemaParser(valijson::SchemaParser::kDraft7).populateSchema(Adapter(schemaText()), parsed);
    return true;
  }();
  static_cast<void>(once);
  return parsed;
}

bool fits(const json& project) {
  valijson::Validator validator;
  const Adapter adapter(project);
  return validator.validate(schema(), adapter, nullptr);
}

bool isRead(const json& project) {
  return core::exchange::parseProject(project.dump()).has_value();
}

json demo(const std::string& name) {
  return json::parse(support::bytesOf(TANKWRIGHT_SOURCE_DIR "/resources/demo/" + name + ".tankwright"));
}

/// What the schema says of one field.
const json& rule(const core::Field& field) {
  std::string pointer;
  std::string part;
  for (const char c : std::string(field.id) + ".") {
    if (c != '.') {
      part += c;
      continue;
    }
    const bool is_rows = part.ends_with("[]");
    if (is_rows) part.resize(part.size() - 2);
    pointer += "/properties/" + part + (is_rows ? "/items" : "");
    part.clear();
  }
  return schemaText().at(json::json_pointer(pointer));
}

std::string typeOf(core::FieldKind kind) {
  switch (kind) {
    case core::FieldKind::number:
      return "number";
    case core::FieldKind::whole:
      return "integer";
    case core::FieldKind::flag:
      return "boolean";
    default:
      return "string";
  }
}

/// Keys named below "properties" of a schema, with dots between and "[]" for rows.
void collect(const json& node, const std::string& prefix, std::set<std::string>& ids) {
  for (const auto& [key, value] : node.at("properties").items()) {
    const std::string id = prefix + key;
    if (value.contains("properties")) {
      collect(value, id + ".", ids);
    } else if (value.contains("items") && value["items"].contains("properties")) {
      collect(value["items"], id + "[].", ids);
    } else {
      ids.insert(id);
    }
  }
}

std::vector<json::json_pointer> leavesOf(const json& project) {
  std::vector<json::json_pointer> leaves;
  const json flat = project.flatten();
  for (const auto& [pointer, value] : flat.items()) leaves.emplace_back(pointer);
  return leaves;
}

}  // namespace

TEST_CASE("every field stands in the schema with the range, type and choices of the field table") {
  for (const core::Field& field : core::fields()) {
    INFO(field.id);
    const json& found = rule(field);
    const json type = typeOf(field.kind);
    CHECK(found.at("type") == (field.nullable ? json{type, "null"} : type));
    const bool is_number = field.kind == core::FieldKind::number || field.kind == core::FieldKind::whole;
    CHECK(found.contains("minimum") == is_number);
    if (is_number) CHECK(found.at("minimum") == field.least);
    if (is_number) CHECK(found.at("maximum") == field.most);
    if (field.kind == core::FieldKind::text) CHECK(found.at("maxLength") == field.most);
    CHECK_FALSE(found.at("description").get<std::string>().empty());
    json choices = json::array();
    for (const std::string_view choice : field.choices) choices.push_back(choice);
    if (field.nullable) choices.push_back(nullptr);
    if (field.kind == core::FieldKind::choice) CHECK(found.at("enum") == choices);
  }
}

TEST_CASE("the schema names no key that the field table does not") {
  std::set<std::string> ids;
  collect(schemaText(), "", ids);
  for (const char* other : {"format", "version", "tank.outline_m", "site.ground.points_m",
                            "water.climate.daily", "options[].name", "options[].changes"}) {
    CHECK(ids.erase(other) == 1);
  }
  for (const core::Field& field : core::fields()) CHECK(ids.erase(std::string(field.id)) == 1);
  CHECK(ids.empty());
}

TEST_CASE("the list limits of the schema are those of the reader") {
  const json& properties = schemaText().at("properties");
  const json& outline = properties["tank"]["properties"]["outline_m"];
  CHECK(outline["minItems"] == core::kLeastCorners);
  CHECK(outline["maxItems"] == core::kMostCorners);
  CHECK(outline["items"]["items"]["maximum"] == core::kMostCoordinate_m);
  CHECK(outline["items"]["items"]["minimum"] == -core::kMostCoordinate_m);
  for (const core::List& list : core::lists()) {
    std::string pointer = "/" + std::string(list.id);
    for (std::size_t dot = pointer.find('.'); dot != std::string::npos; dot = pointer.find('.'))
      pointer.replace(dot, 1, "/properties/");
    INFO(list.id);
    CHECK(properties.at(json::json_pointer(pointer))["minItems"] == list.least);
    CHECK(properties.at(json::json_pointer(pointer))["maxItems"] == list.most);
  }
  const json& days = properties["water"]["properties"]["climate"]["properties"]["daily"];
  CHECK(days["maxItems"] == core::kMostWeatherDays);
  CHECK(days["items"]["maxItems"] == core::exchange::kWeatherColumns.size() + 1);
  for (std::size_t k = 0; k < core::exchange::kWeatherColumns.size(); ++k) {
    CHECK(days["items"]["items"][k + 1]["minimum"] == core::exchange::kWeatherColumns[k].range.least);
    CHECK(days["items"]["items"][k + 1]["maximum"] == core::exchange::kWeatherColumns[k].range.most);
  }
  CHECK(properties["site"]["properties"]["ground"]["properties"]["points_m"]["maxItems"] ==
        core::kMostSpotHeights);
}

TEST_CASE("demo and random projects fit the schema") {
  for (const char* name : {"terrace", "round", "five_sided"}) CHECK(fits(demo(name)));
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    INFO("seed " << seed);
    CHECK(fits(json::parse(core::exchange::projectText(support::randomProject(seed)))));
  }
}

TEST_CASE("each required key is required by the schema and by the reader, no other one is") {
  for (const char* name : {"terrace", "round", "five_sided"}) {
    const json good = demo(name);
    std::vector<json::json_pointer> keys = leavesOf(good);
    for (const char* section :
         {"/site", "/tank", "/lining", "/works", "/lining/coats", "/site/ground", "/site/edge"})
      keys.emplace_back(section);
    for (const json::json_pointer& key : keys) {
      if (!good.at(key.parent_pointer()).is_object()) continue;  // a number of a list
      INFO(name << " " << key.to_string());
      json changed = good;
      changed[key.parent_pointer()].erase(key.back());
      CHECK(fits(changed) == isRead(changed));
    }
  }
}

TEST_CASE("what the schema refuses the reader refuses, whatever value stands in whatever place") {
  const std::vector<json> values = {nullptr,
                                    true,
                                    -1,
                                    0,
                                    0.5,
                                    3,
                                    70,
                                    2.5,
                                    1e300,
                                    "",
                                    "round",
                                    "2027-02-15",
                                    "2027-13-01",
                                    json::array(),
                                    json::object(),
                                    json{1, 2},
                                    std::string(201, 'x')};
  int refused = 0;
  for (const char* name : {"terrace", "round", "five_sided"}) {
    const json good = demo(name);
    for (const json::json_pointer& leaf : leavesOf(good)) {
      for (const json& value : values) {
        json changed = good;
        changed[leaf] = value;
        if (fits(changed)) continue;
        INFO(name << " " << leaf.to_string() << " = " << value.dump());
        CHECK_FALSE(isRead(changed));
        ++refused;
      }
    }
  }
  CHECK(refused > 1000);
}

TEST_CASE("what the reader refuses for one value alone the schema refuses") {
  const std::set<std::string> by_value = {"missing",        "wrong_type", "out_of_range",
                                          "unknown_choice", "too_few",    "too_many"};
  const std::vector<json> values = {nullptr, true, -1, 0.5, 70, 1e300, "x", json::array(), json::object()};
  const json good = demo("terrace");
  for (const json::json_pointer& leaf : leavesOf(good)) {
    if (leaf.to_string().starts_with("/options/")) continue;  // what a change may be, the field table says
    for (const json& value : values) {
      json changed = good;
      changed[leaf] = value;
      const auto read = core::exchange::parseProject(changed.dump());
      if (read || by_value.count(read.error().front().code) == 0) continue;
      INFO(leaf.to_string() << " = " << value.dump());
      CHECK_FALSE(fits(changed));
    }
  }
}
