#include "core/exchange/project_file.h"
#include "core/plan.h"
#include "core/project/fields.h"

#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using core::exchange::parseProject;
using core::exchange::projectText;
using nlohmann::json;

json blank() {
  return json::parse(projectText(core::Project{}));
}

json withOptions(const json& options) {
  json project = blank();
  project["options"] = options;
  return project;
}

core::Project read(const json& project) {
  const auto result = parseProject(project.dump());
  REQUIRE(result.has_value());
  CHECK(result->notes.empty());
  return result->project;
}

core::Problems problemsOf(const json& project) {
  const auto result = parseProject(project.dump());
  REQUIRE_FALSE(result.has_value());
  return result.error();
}

core::Problem problemOf(const json& project) {
  const core::Problems problems = problemsOf(project);
  REQUIRE(problems.size() == 1);
  return problems.front();
}

core::Problem problemOfChange(const char* field, const json& value) {
  return problemOf(withOptions({{{"name", "B"}, {"changes", {{field, value}}}}}));
}

}  // namespace

TEST_CASE("options are read and written with every kind of value, in their order") {
  core::Project project;
  project.prices.emplace();
  project.options = {{"deeper",
                      {{"tank.depth_m", 1.8},
                       {"lining.coats[1].thickness_m", 0.05},
                       {"site.soil", std::string("sandy")},
                       {"records.in_force", false},
                       {"site.clay_percent", core::FieldValue{}},
                       {"works.start_date", std::string("2028-02-29")},
                       {"title", std::string("B, \"deep\"")},
                       {"prices.items[0].price", 900.0}}},
                     {"", {}}};
  const std::string text = projectText(project);
  const auto result = parseProject(text);
  REQUIRE(result.has_value());
  CHECK(result->notes.empty());
  CHECK(result->project == project);
  CHECK(projectText(result->project) == text);
  const json written = json::parse(text);
  CHECK(written["options"][0]["changes"]["tank.depth_m"] == 1.8);
  CHECK(written["options"][0]["changes"]["site.clay_percent"].is_null());
}

TEST_CASE("a project without options has none, with an empty list or without one") {
  CHECK(read(blank()).options.empty());
  CHECK(read(withOptions(json::array())).options.empty());
  CHECK_FALSE(blank().contains("options"));
  const core::Project named = read(withOptions({{{"name", "x"}}, json::object()}));
  REQUIRE(named.options.size() == 2);
  CHECK(named.options[0] == core::Option{"x", {}});
  CHECK(named.options[1] == core::Option{});
}

TEST_CASE("what a field does not take in an option is said with path, value and what is allowed") {
  const core::Problem text = problemOfChange("tank.depth_m", "deep");
  CHECK(text.code == "wrong_type");
  CHECK(text.path == "options[0].changes.tank.depth_m");
  CHECK(text.value == "\"deep\"");
  CHECK(text.allowed == "number");
  const core::Problem list = problemOfChange("tank.depth_m", {1, 2});
  CHECK(list.code == "wrong_type");
  CHECK(list.value == "[1,2]");
  CHECK(list.allowed == "number");
  const core::Problem deep = problemOfChange("tank.depth_m", 99);
  CHECK(deep.code == "out_of_range");
  CHECK(deep.most == core::field("tank.depth_m").most);
  CHECK(deep.unit == core::Unit::metre);
  CHECK(problemOfChange("site.soil", "cheese").code == "unknown_choice");
  CHECK(problemOfChange("works.start_date", "2027-02-29").code == "bad_date");
  CHECK(problemOfChange("tank.depth_m", nullptr).code == "missing");
}

TEST_CASE("an option that changes what is no field is refused") {
  for (const char* path :
       {"tank.colour", "tank", "", "lining.coats[].soil", "lining.coats[x].soil", "options"}) {
    INFO(path);
    const core::Problem problem = problemOfChange(path, 1);
    CHECK(problem.code == "unknown_field");
    CHECK(problem.path == std::string("options[0].changes.") + path);
  }
  CHECK(problemOfChange("tank.colour", json::object()).code == "unknown_field");
}

TEST_CASE("a field that an option changes twice is refused, however it is written") {
  const std::string head = blank().dump();
  const std::string twice = head.substr(0, head.size() - 1) +
                            R"(,"options":[{"changes":{"tank.depth_m":1.5,"tank.depth_m":1.6}}]})";
  const auto same = parseProject(twice);
  REQUIRE_FALSE(same.has_value());
  CHECK(same.error().front().code == "duplicate_key");
  const core::Problem problem =
      problemOf(withOptions({{{"changes", {{"lining.coats[1].soil", 5}, {"lining.coats[01].soil", 6}}}}}));
  CHECK(problem.code == "duplicate_key");
}

TEST_CASE("the shape of options is checked, and all that is wrong is said at once") {
  CHECK(problemOf(withOptions("none")).path == "options");
  CHECK(problemOf(withOptions(nullptr)).code == "wrong_type");
  const core::Problems problems =
      problemsOf(withOptions({1,
                              {{"name", 5}, {"changes", {1}}},
                              {{"name", std::string(201, 'x')}, {"changes", {{"tank.depth_m", -1}}}}}));
  std::vector<std::string> found;
  for (const core::Problem& p : problems) found.push_back(p.code + " " + p.path);
  CHECK(found == std::vector<std::string>{"wrong_type options[0]", "wrong_type options[1].name",
                                          "wrong_type options[1].changes", "too_long options[2].name",
                                          "out_of_range options[2].changes.tank.depth_m"});
  CHECK(read(withOptions({{{"name", std::string(200, 'x')}}})).options[0].name.size() == 200);
}

TEST_CASE("there are no more options and changes than the limits") {
  json options = json::array();
  for (std::size_t k = 0; k < core::kMostOptions; ++k) options.push_back(json::object());
  CHECK(read(withOptions(options)).options.size() == core::kMostOptions);
  options.push_back(json::object());
  const core::Problem many = problemOf(withOptions(options));
  CHECK(many.code == "too_many");
  CHECK(many.most == static_cast<double>(core::kMostOptions));
  json changes = json::object();
  for (const core::Field& field : core::fields()) {
    if (changes.size() == core::kMostChanges) break;
    if (core::listOf(field) || field.kind != core::FieldKind::number) continue;
    changes[std::string(field.id)] = field.least;
  }
  REQUIRE(changes.size() == core::kMostChanges);
  CHECK(read(withOptions({{{"changes", changes}}})).options[0].changes.size() == core::kMostChanges);
  changes["title"] = "one more";
  CHECK(problemOf(withOptions({{{"changes", changes}}})).code == "too_many");
}

TEST_CASE("an absent list keeps what is usual, an empty one stays empty") {
  json project = blank();
  project["prices"] = json::object();
  project.erase("ranges");
  core::Project usual = read(project);
  REQUIRE(usual.prices.has_value());
  CHECK(usual.prices->items == core::usualItems());
  CHECK(usual.prices->linings == core::usualLinings());
  CHECK(usual.ranges == core::Ranges{});
  project["prices"] = {{"items", json::array()}, {"linings", json::array()}};
  project["ranges"] = {{"inputs", json::array()}};
  const core::Project empty = read(project);
  CHECK(empty.prices->items.empty());
  CHECK(empty.prices->linings.empty());
  CHECK(empty.ranges.inputs.empty());
  CHECK(read(json::parse(projectText(empty))) == empty);
}

TEST_CASE("prices that are null or not there are not asked for") {
  json project = blank();
  CHECK_FALSE(read(project).prices.has_value());
  project["prices"] = nullptr;
  CHECK_FALSE(read(project).prices.has_value());
  for (const char* part : {"records", "ranges", "search"}) project[part] = nullptr;
  CHECK(read(project) == core::Project{});
  project["prices"] = 3;
  CHECK(problemOf(project).path == "prices");
}

TEST_CASE("prices, records, ranges and limits of the search come back as they were") {
  core::Project project;
  project.prices.emplace();
  project.prices->items = {{"sand", 1200.5, 3.0, 40, core::Carrier::mule, 1500.0},
                           {"own thing", {}, {}, 0, {}, {}}};
  project.prices->mule.price_per_trip = 250;
  project.prices->linings.pop_back();
  project.records = {false, {{2, 1.5, 6.25, 0.045}}, {{core::RecordedWork::mixing, 4, 3}}};
  project.ranges.inputs = {{core::RangedInput::wages, -1, 2}};
  project.ranges.seed = 77;
  project.search.most_cost = 90000;
  project.works->closed = {{}};
  project.works->wishes = {{"coat_1", {}, 9}};
  project.works->rates = {{"carrying.10", 0.1, 0.2, 0.3}};
  const auto result = parseProject(projectText(project));
  REQUIRE(result.has_value());
  CHECK(result->project == project);
}
