#include "core/exchange/project_file.h"
#include "core/project/fields.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;

const char* const kRectangle = R"({
  "format": "tankwright-project", "version": 1,
  "title": "t", "site": {"ground": {"kind": "slope", "fall_percent": 5, "downhill_azimuth_deg": 10}, "clay_percent": 20},
  "tank": {"shape": "rectangle", "measured_at": "floor", "length_m": 6.4, "width_m": 3.2, "depth_m": 1.4, "batter": 0.1,
           "corner_radius_m": 0, "freeboard_m": 0.15, "dead_depth_m": 0.1},
  "lining": {"stone_bed_m": 0.06, "dry_to_wet": 1.3, "waste_percent": 5, "unevenness_percent": 15, "cement_bag_kg": 50,
             "cement_loose_kg_m3": 1440,
             "coats": [{"thickness_m": 0.05, "soil": 3, "sand": 3, "cement": 1},
                       {"thickness_m": 0.04, "soil": 2, "sand": 2, "cement": 1}],
             "cove_radius_m": 0, "rim_width_m": 0, "rim_thickness_m": 0},
  "works": {"start_date": "2027-02-15", "diggers": 4}})";

json rectangle() {
  return json::parse(kRectangle);
}

json polygon(const json& outline) {
  json project = rectangle();
  project["tank"]["shape"] = "polygon";
  project["tank"].erase("length_m");
  project["tank"].erase("width_m");
  project["tank"]["outline_m"] = outline;
  return project;
}

json spotHeights(const json& points) {
  json project = rectangle();
  project["site"]["ground"] = {{"kind", "spot_heights"}, {"points_m", points}};
  return project;
}

std::string with(const std::string& pointer, const json& value) {
  json project = rectangle();
  project[json::json_pointer(pointer)] = value;
  return project.dump();
}

std::string without(const std::string& pointer) {
  json project = rectangle();
  const json::json_pointer place(pointer);
  project[place.parent_pointer()].erase(place.back());
  return project.dump();
}

/// The good text with one piece of it replaced.
std::string replaced(const std::string& piece, const std::string& by) {
  std::string text = kRectangle;
  const std::size_t at = text.find(piece);
  REQUIRE(at != std::string::npos);
  return text.replace(at, piece.size(), by);
}

json rows(std::size_t count, const json& row) {
  json list = json::array();
  for (std::size_t k = 0; k < count; ++k) list.push_back(row);
  return list;
}

std::string nested(std::size_t depth) {
  return R"({"format":"tankwright-project","version":1,"x":)" + std::string(depth, '[') +
         std::string(depth, ']') + "}";
}

struct Bad {
  std::string name;
  std::string text;
  std::string code;
  std::string path;
  std::string value = {};    ///< expected when not empty
  std::string allowed = {};  ///< expected when not empty
};

const json kCoat = {{"thickness_m", 0.05}, {"soil", 3}, {"sand", 3}, {"cement", 1}};

std::vector<Bad> brokenFiles() {
  std::string many_keys = "{";
  for (int k = 0; k < 2000; ++k) many_keys += (k ? ",\"k" : "\"k") + std::to_string(k) + "\":0";
  many_keys += '}';
  const std::string good = kRectangle;
  return {
      {"empty", "", "not_json", ""},
      {"blank", " \n\t ", "not_json", ""},
      {"a word", "tank", "not_json", "", "1:2"},
      {"cut in a string", good.substr(0, 20), "not_json", "format"},
      {"cut after a number", good.substr(0, good.find("3.2,") + 3), "not_json", "tank.width_m"},
      {"cut at the last bracket", good.substr(0, good.size() - 1), "not_json", "works"},
      {"something after the end", good + "}", "not_json", ""},
      {"two projects", good + good, "not_json", ""},
      {"trailing comma", replaced("\"diggers\": 4", "\"diggers\": 4,"), "not_json", "works.diggers"},
      {"comment", replaced("\"title\"", "/* x */ \"title\""), "not_json", "version"},
      {"single quotes", replaced("\"title\"", "'title'"), "not_json", "version"},
      {"raw line break in a text", replaced("\"t\"", "\"t\n\""), "not_json", "title"},
      {"decimal comma", replaced("1.4,", "1,4,"), "not_json", "tank.depth_m"},
      {"leading zeros", replaced("1.4", "01.4"), "not_json", "tank.depth_m"},
      {"NaN", replaced("1.4", "NaN"), "not_finite", "tank.depth_m", "NaN"},
      {"Infinity", replaced("1.4", "Infinity"), "not_finite", "tank.depth_m", "Infinity"},
      {"minus Infinity", replaced("1.4", "-Infinity"), "not_finite", "tank.depth_m", "-Infinity"},
      {"1e400", replaced("1.4", "1e400"), "not_finite", "tank.depth_m", "1e400"},
      {"1e400 in a coat", replaced("0.04", "-1e999"), "not_finite", "lining.coats[1].thickness_m", "-1e999"},
      {"deep nesting", nested(100000), "too_deep", ""},
      {"nesting one too deep", nested(64), "too_deep", ""},
      {"nested objects",
       [] {
         std::string t;
         for (int k = 0; k < 70; ++k) t += "{\"a\":";
         return t;
       }(),
       "too_deep", ""},
      {"invalid UTF-8", replaced("\"t\"", "\"\xff\""), "not_utf8", ""},
      {"overlong UTF-8", replaced("\"t\"", "\"\xc0\xaf\""), "not_utf8", ""},
      {"surrogate in UTF-8", replaced("\"t\"", "\"\xed\xa0\x80\""), "not_utf8", ""},
      {"beyond U+10FFFF", replaced("\"t\"", "\"\xf4\x90\x80\x80\""), "not_utf8", ""},
      {"cut inside a character", replaced("\"t\"", "\"\xe2\x82\""), "not_utf8", ""},
      {"lone surrogate escape", replaced("\"t\"", "\"\\ud800\""), "not_json", "title"},
      {"UTF-16", std::string("\xff\xfe{\0}\0", 6), "not_utf8", ""},
      {"zero byte", std::string("{\0}", 3), "not_json", ""},
      {"too large", std::string(std::size_t{17} << 20, ' '), "too_large", ""},
      {"repeated key", replaced("\"title\": \"t\"", "\"title\": \"t\", \"title\": \"u\""), "duplicate_key",
       "title"},
      {"repeated key deep down", replaced("\"soil\": 2", "\"soil\": 2, \"soil\": 3"), "duplicate_key",
       "lining.coats[1].soil"},
      {"too many keys", replaced("\"title\": \"t\"", "\"more\": " + many_keys), "too_many", "more"},
      {"a list", "[]", "not_a_project", ""},
      {"null", "null", "not_a_project", ""},
      {"a number", "3", "not_a_project", ""},
      {"empty object", "{}", "not_a_project", "format"},
      {"another format", with("/format", "tankwright-plan"), "not_a_project", "format", "\"tankwright-plan\"",
       "tankwright-project"},
      {"format of another type", with("/format", 1), "not_a_project", "format"},
      {"no version", without("/version"), "missing", "version", "", "1"},
      {"later version", with("/version", 2), "unknown_version", "version", "2", "1"},
      {"version 0", with("/version", 0), "unknown_version", "version", "0", "1"},
      {"version as text", with("/version", "1"), "unknown_version", "version", "\"1\"", "1"},
      {"version true", with("/version", true), "unknown_version", "version", "true", "1"},
      {"version 1.5", with("/version", 1.5), "unknown_version", "version", "1.5", "1"},
  };
}

std::vector<Bad> wrongTypes() {
  return {
      {"no site", without("/site"), "missing", "site", "", "object"},
      {"no tank", without("/tank"), "missing", "tank", "", "object"},
      {"no lining", without("/lining"), "missing", "lining", "", "object"},
      {"site null", with("/site", nullptr), "wrong_type", "site", "null", "object"},
      {"tank a list", with("/tank", json::array()), "wrong_type", "tank", "[]", "object"},
      {"lining a text", with("/lining", "none"), "wrong_type", "lining", "\"none\"", "object"},
      {"works a number", with("/works", 3), "wrong_type", "works", "3", "object"},
      {"ground a text", with("/site/ground", "level"), "wrong_type", "site.ground", "\"level\"", "object"},
      {"edge a number", with("/site/edge", 4), "wrong_type", "site.edge", "4", "object"},
      {"bill a list", with("/lining/customary_bill", json::array()), "wrong_type", "lining.customary_bill",
       "[]", "object"},
      {"number as text", with("/tank/depth_m", "1.4"), "wrong_type", "tank.depth_m", "\"1.4\"", "number"},
      {"number as flag", with("/tank/depth_m", true), "wrong_type", "tank.depth_m", "true", "number"},
      {"number as list", with("/tank/depth_m", {1.4}), "wrong_type", "tank.depth_m", "[1.4]", "number"},
      {"number null", with("/tank/depth_m", nullptr), "missing", "tank.depth_m", "null", "number"},
      {"title as number", with("/title", 7), "wrong_type", "title", "7", "text"},
      {"flag as number", with("/site/rock_floor", 1), "wrong_type", "site.rock_floor", "1", "true|false"},
      {"flag as text", with("/site/rock_floor", "no"), "wrong_type", "site.rock_floor", "\"no\"",
       "true|false"},
      {"shape as number", with("/tank/shape", 1), "wrong_type", "tank.shape", "1", "rectangle|round|polygon"},
      {"unknown shape", with("/tank/shape", "oval"), "unknown_choice", "tank.shape", "\"oval\"",
       "rectangle|round|polygon"},
      {"shape in capitals", with("/tank/shape", "Round"), "unknown_choice", "tank.shape", "\"Round\""},
      {"unknown soil", with("/site/soil", "mud"), "unknown_choice", "site.soil", "\"mud\""},
      {"unknown ground", with("/site/ground/kind", "hill"), "unknown_choice", "site.ground.kind", "\"hill\"",
       "level|slope|spot_heights"},
      {"half a digger", with("/works/diggers", 3.5), "wrong_type", "works.diggers", "3.5", "whole number"},
      {"half a curing day", with("/lining/coats/0/cure_days", 2.5), "wrong_type", "lining.coats[0].cure_days",
       "2.5", "whole number"},
      {"long title", with("/title", std::string(201, 'x')), "too_long", "title"},
      {"long currency", with("/currency", "abcdefghi"), "too_long", "currency", "\"abcdefghi\""},
      {"no such day", with("/works/start_date", "2027-02-29"), "bad_date", "works.start_date",
       "\"2027-02-29\"", "2000-01-01..2199-12-31"},
      {"day first", with("/works/start_date", "15-02-2027"), "bad_date", "works.start_date"},
      {"date with time", with("/works/start_date", "2027-02-15T00:00"), "bad_date", "works.start_date"},
      {"date in another century", with("/works/start_date", "1999-12-31"), "bad_date", "works.start_date"},
      {"date with a sign", with("/works/start_date", "2027-+2-15"), "bad_date", "works.start_date"},
      {"date as number", with("/works/start_date", 20270215), "wrong_type", "works.start_date", "20270215"},
      {"coats an object", with("/lining/coats", kCoat), "wrong_type", "lining.coats", "", "list"},
      {"coats null", with("/lining/coats", nullptr), "wrong_type", "lining.coats", "null", "list"},
      {"no coats key", without("/lining/coats"), "missing", "lining.coats", "", "list"},
      {"no coats", with("/lining/coats", json::array()), "too_few", "lining.coats", "0"},
      {"seven coats", with("/lining/coats", rows(7, kCoat)), "too_many", "lining.coats", "7"},
      {"huge list of coats", with("/lining/coats", rows(100000, 1)), "too_many", "lining.coats", "100000"},
      {"coat a number", with("/lining/coats/1", 0.05), "wrong_type", "lining.coats[1]", "0.05", "object"},
      {"slope without fall", without("/site/ground/fall_percent"), "missing", "site.ground.fall_percent"},
      {"slope without direction", without("/site/ground/downhill_azimuth_deg"), "missing",
       "site.ground.downhill_azimuth_deg"},
      {"ground without kind", without("/site/ground/kind"), "missing", "site.ground.kind"},
  };
}

std::vector<Bad> badOutlines() {
  json huge = rows(100000, {0, 0});
  return {
      {"no outline", polygon(json::array()).dump(), "too_few", "tank.outline_m", "0"},
      {"two corners", polygon({{0, 0}, {4, 0}}).dump(), "too_few", "tank.outline_m", "2"},
      {"33 corners", polygon(rows(33, {0, 0})).dump(), "too_many", "tank.outline_m", "33"},
      {"huge outline", polygon(huge).dump(), "too_many", "tank.outline_m", "100000"},
      {"outline a text", polygon("square").dump(), "wrong_type", "tank.outline_m", "\"square\"", "list"},
      {"corner of one number", polygon({{0, 0}, {4, 0}, {4}}).dump(), "wrong_type", "tank.outline_m[2]",
       "[4]", "[x, y]"},
      {"corner of three numbers", polygon({{0, 0}, {4, 0, 1}, {4, 4}}).dump(), "wrong_type",
       "tank.outline_m[1]", "[4,0,1]"},
      {"corner as object", polygon({{0, 0}, {4, 0}, {{"x", 4}, {"y", 4}}}).dump(), "wrong_type",
       "tank.outline_m[2]"},
      {"coordinate a text", polygon({{0, 0}, {4, "0"}, {4, 4}}).dump(), "wrong_type", "tank.outline_m[1][1]",
       "\"0\"", "number"},
      {"coordinate null", polygon({{0, 0}, {4, nullptr}, {4, 4}}).dump(), "wrong_type",
       "tank.outline_m[1][1]", "null"},
      {"corner far off", polygon({{0, 0}, {1e308, 0}, {4, 4}}).dump(), "out_of_range", "tank.outline_m[1][0]",
       "1e+308"},
      {"clockwise", polygon({{0, 0}, {0, 4}, {5, 4}, {5, 0}}).dump(), "outline_clockwise",
       "tank.outline_m[0]"},
      {"bow-tie", polygon({{0, 0}, {5, 4}, {5, 0}, {0, 4}}).dump(), "outline_not_convex",
       "tank.outline_m[1]"},
      {"star", polygon({{0, 5}, {-3, -4}, {5, 2}, {-5, 2}, {3, -4}}).dump(), "outline_self_touching",
       "tank.outline_m[0]"},
      {"corner used twice", polygon({{0, 0}, {5, 0}, {5, 4}, {5, 0}}).dump(), "outline_self_touching",
       "tank.outline_m[3]"},
      {"one point", polygon(rows(4, {1, 1})).dump(), "outline_self_touching", "tank.outline_m[1]"},
      {"dented", polygon({{0, 0}, {5, 0}, {2, 1}, {0, 4}}).dump(), "outline_not_convex", "tank.outline_m[2]"},
      {"straight corner", polygon({{0, 0}, {2, 0}, {5, 0}, {5, 4}}).dump(), "outline_not_convex",
       "tank.outline_m[1]"},
      {"polygon without outline",
       [] {
         json p = polygon({});
         p["tank"].erase("outline_m");
         return p.dump();
       }(),
       "missing", "tank.outline_m", "", "list"},
      {"two spot heights", spotHeights({{0, 0, 0}, {1, 0, 0}}).dump(), "too_few", "site.ground.points_m",
       "2"},
      {"too many spot heights", spotHeights(rows(100001, {0, 0, 0})).dump(), "too_many",
       "site.ground.points_m", "100001"},
      {"flat spot height", spotHeights({{0, 0, 0}, {1, 0, 0}, {1, 1}}).dump(), "wrong_type",
       "site.ground.points_m[2]", "[1,1]", "[x, y, z]"},
      {"spot height in space", spotHeights({{0, 0, 0}, {1, 0, 0}, {1, 1, 1e5}}).dump(), "out_of_range",
       "site.ground.points_m[2][2]"},
      {"spot heights without points",
       [] {
         json p = spotHeights({});
         p["site"]["ground"].erase("points_m");
         return p.dump();
       }(),
       "missing", "site.ground.points_m"},
  };
}

std::vector<Bad> badTogether() {
  json thick = rectangle();
  thick["lining"]["coats"] = rows(6, {{"thickness_m", 0.29}, {"soil", 3}, {"sand", 3}, {"cement", 1}});
  json rim = rectangle();
  rim["tank"]["measured_at"] = "rim";
  rim["tank"]["batter"] = 1.5;
  json no_filler = rectangle();
  no_filler["lining"]["coats"][1]["soil"] = 0;
  no_filler["lining"]["coats"][1]["sand"] = 0;
  return {
      {"coats thicker than the tank", thick.dump(), "coats_thicker_than_tank", "lining.coats"},
      {"freeboard up to the floor",
       [] {
         json p = rectangle();
         p["tank"]["depth_m"] = 0.5;
         p["tank"]["freeboard_m"] = 0.5;
         return p.dump();
       }(),
       "freeboard_not_below_rim", "tank.freeboard_m", "0.5"},
      {"dead depth above the overflow", with("/tank/dead_depth_m", 1.3), "dead_depth_not_below_full",
       "tank.dead_depth_m", "1.3"},
      {"floor vanishes below the rim outline", rim.dump(), "rim_outline_vanishes", ""},
      {"corner radius wider than the tank", with("/tank/corner_radius_m", 5), "corner_radius_too_large",
       "tank.corner_radius_m", "5"},
      {"mix without soil and sand", no_filler.dump(), "mix_without_filler", "lining.coats[1].soil"},
  };
}

/// Reads a bad text from a file and checks that it is refused as expected and nothing is written.
void refuse(const support::TemporaryFolder& folder, const Bad& bad) {
  INFO(bad.name);
  const auto file = folder.file("bad.tankwright");
  support::put(file, bad.text);
  const auto read = core::exchange::readProject(file);
  REQUIRE_FALSE(read.has_value());
  REQUIRE(read.error().size() >= 1);
  const core::Problem& first = read.error().front();
  CHECK(first.code == bad.code);
  if (bad.code != "rim_outline_vanishes") CHECK(first.path == bad.path);
  if (!bad.value.empty()) CHECK(first.value == bad.value);
  if (!bad.allowed.empty()) CHECK(first.allowed == bad.allowed);
  CHECK(first.value.size() <= 63);
  CHECK(support::bytesOf(file) == bad.text);
  CHECK(folder.count() == 1);
}

void refuseAll(const std::vector<Bad>& all) {
  const support::TemporaryFolder folder;
  for (const Bad& bad : all) refuse(folder, bad);
}

/// Water with rows in each of its lists.
json waterRows() {
  const json row = json::object();
  return {{"source", {{"months", rows(12, row)}, {"readings", rows(2, row)}}},
          {"beds", rows(2, row)},
          {"animals", rows(2, row)},
          {"crops", {{{"name", "taro"}}, {{"name", "yam"}}}},
          {"climate", {{"months", rows(12, row)}}}};
}

/// A project in which every field is used.
/// Two good points for each way of a pipe.
json deliveryRows() {
  const json route = {{{"distance_m", 0}, {"over_rim_m", 2}}, {{"distance_m", 30}, {"over_rim_m", 1}}};
  return {{"source", {{"route", route}}}, {"field", {{"route", route}}}};
}

/// Two good rows for each list of works, records, money and ranges.
json workRows() {
  const json empty = json::object();
  return {{"works",
           {{"closed", {empty, empty}},
            {"wishes", {empty, empty}},
            {"rates", {{{"work", "ramming"}}, {{"work", "fence"}}}}}},
          {"records", {{"batches", {empty, empty}}, {"work", {empty, empty}}}},
          {"notes",
           {{"jars", {empty, empty}},
            {"feel", {empty, empty}},
            {"pit_layers", {empty, empty}},
            {"slope", {empty, empty}}}},
          {"prices", {{"items", {empty, empty}}, {"linings", {empty, empty}}}},
          {"ranges", {{"inputs", {{{"input", "thickness"}}, {{"input", "flow"}}}}}}};
}

json everyField(const core::Field& field) {
  json project = rectangle();
  if (field.id == "tank.diameter_m")
    project["tank"] = {{"shape", "round"}, {"measured_at", "floor"}, {"diameter_m", 4},    {"depth_m", 1.4},
                       {"batter", 0.1},    {"freeboard_m", 0.15},    {"dead_depth_m", 0.1}};
  if (field.id.starts_with("water.")) project["water"] = waterRows();
  if (field.id.starts_with("delivery.")) project["delivery"] = deliveryRows();
  const json parts = workRows();
  for (const auto& [part, rows] : parts.items()) {
    if (field.id.starts_with(part + ".")) project[part].update(rows);
  }
  return project;
}

std::string pointerOf(const core::Field& field) {
  std::string pointer = "/" + core::pathOf(field, 1);
  for (char& c : pointer) c = c == '.' || c == '[' ? '/' : c;
  std::erase(pointer, ']');
  return pointer;
}

core::Problems problemsOf(const core::Field& field, const json& value) {
  json project = everyField(field);
  project[json::json_pointer(pointerOf(field))] = value;
  const auto read = core::exchange::parseProject(project.dump());
  return read ? core::Problems{} : read.error();
}

bool isNumber(const core::Field& field) {
  return field.kind == core::FieldKind::number || field.kind == core::FieldKind::whole;
}

}  // namespace

TEST_CASE("the good text that the bad ones are made from is read") {
  const auto read = core::exchange::parseProject(kRectangle);
  REQUIRE(read.has_value());
  CHECK(read->notes.empty());
  CHECK(read->project.tank.length_m == 6.4);
  CHECK(core::exchange::parseProject(polygon({{0, 0}, {5, 0}, {5, 4}, {0, 4}}).dump()).has_value());
  CHECK(core::exchange::parseProject(spotHeights({{0, 0, 1400}, {1, 0, 1401}, {1, 1, 1402}}).dump())
            .has_value());
  CHECK(core::exchange::parseProject(nested(62)).error().front().code == "missing");
}

TEST_CASE("files that are not a project are refused with place and reason") {
  refuseAll(brokenFiles());
}

TEST_CASE("values of a wrong type are refused with place, value and what is allowed") {
  refuseAll(wrongTypes());
}

TEST_CASE("outlines and spot heights that cannot be are refused") {
  refuseAll(badOutlines());
}

TEST_CASE("fields that contradict each other are refused") {
  refuseAll(badTogether());
}

TEST_CASE("at least sixty malformed projects are refused") {
  std::set<std::string> names;
  for (const auto& all : {brokenFiles(), wrongTypes(), badOutlines(), badTogether()}) {
    for (const Bad& bad : all) names.insert(bad.name);
  }
  CHECK(names.size() >= 60);
}

TEST_CASE("every number is refused outside its range, with the value and the range") {
  for (const core::Field& field : core::fields()) {
    if (!isNumber(field)) continue;
    INFO(field.id);
    const double span = field.most - field.least;
    for (const double value : {field.least - 1, field.most + 1, field.most + span + 0.5, -1e308, 1e308}) {
      const core::Problems problems = problemsOf(field, value);
      REQUIRE(problems.size() == 1);
      const bool is_part = field.kind == core::FieldKind::whole && value != std::floor(value);
      CHECK(problems[0].code == (is_part ? "wrong_type" : "out_of_range"));
      CHECK(problems[0].path == core::pathOf(field, 1));
      CHECK(std::stod(problems[0].value) == value);
      CHECK(problems[0].least == field.least);
      CHECK(problems[0].most == field.most);
      CHECK(problems[0].unit == field.unit);
    }
  }
}

TEST_CASE("every field refuses a value of another type") {
  for (const core::Field& field : core::fields()) {
    INFO(field.id);
    for (const json& value :
         {json::object(), json::array({1}), json(isNumber(field) ? json("1") : json(1))}) {
      const core::Problems problems = problemsOf(field, value);
      REQUIRE_FALSE(problems.empty());
      CHECK(problems[0].code == "wrong_type");
      CHECK(problems[0].path == core::pathOf(field, 1));
      CHECK(problems[0].allowed == core::allowedText(field));
    }
  }
}

TEST_CASE("every required key is missed when it is not there, every other one is not") {
  for (const core::Field& field : core::fields()) {
    INFO(field.id);
    json project = everyField(field);
    const json::json_pointer place(pointerOf(field));
    if (!project.contains(place)) continue;
    project[place.parent_pointer()].erase(place.back());
    const auto read = core::exchange::parseProject(project.dump());
    REQUIRE(read.has_value() == !field.required);
    if (read) continue;
    CHECK(read.error().front().code == "missing");
    CHECK(read.error().front().path == core::pathOf(field, 1));
  }
}

TEST_CASE("all problems of a file are named, not only the first") {
  json project = rectangle();
  project["tank"]["depth_m"] = 9;
  project["tank"].erase("batter");
  project["lining"]["coats"][1]["soil"] = "three";
  project["works"]["start_date"] = "soon";
  const auto read = core::exchange::parseProject(project.dump());
  REQUIRE_FALSE(read.has_value());
  std::vector<std::string> found;
  for (const core::Problem& problem : read.error()) found.push_back(problem.code + " " + problem.path);
  CHECK(found == std::vector<std::string>{"out_of_range tank.depth_m", "missing tank.batter",
                                          "wrong_type lining.coats[1].soil", "bad_date works.start_date"});
}

TEST_CASE("an unknown shape does not make the keys of another shape missing") {
  json project = rectangle();
  project["tank"]["shape"] = "oval";
  project["tank"].erase("length_m");
  const auto read = core::exchange::parseProject(project.dump());
  REQUIRE_FALSE(read.has_value());
  CHECK(read.error().size() == 1);
}

TEST_CASE("a byte order mark before the text does no harm") {
  CHECK(core::exchange::parseProject("\xef\xbb\xbf" + std::string(kRectangle)).has_value());
}

TEST_CASE("a file that is not there or is a folder cannot be read") {
  const support::TemporaryFolder folder;
  const auto absent = core::exchange::readProject(folder.file("absent.tankwright"));
  REQUIRE_FALSE(absent.has_value());
  CHECK(absent.error().front().code == "cannot_read");
  CHECK(absent.error().front().path == folder.file("absent.tankwright").string());
  CHECK_FALSE(absent.error().front().value.empty());
  const auto directory = core::exchange::readProject(folder.path());
  REQUIRE_FALSE(directory.has_value());
  CHECK(directory.error().front().code == "cannot_read");
}
