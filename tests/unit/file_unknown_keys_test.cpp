#include "core/exchange/project_file.h"
#include "core/plan.h"
#include "tests/support/random_project.h"

#include <algorithm>
#include <string>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using core::exchange::parseProject;
using core::exchange::projectText;
using nlohmann::json;

json blank() {
  core::Project project;
  return json::parse(projectText(project));
}

core::exchange::ReadProject read(const json& project) {
  auto result = parseProject(project.dump());
  REQUIRE(result.has_value());
  return *result;
}

std::vector<std::string> pathsOf(const core::Problems& notes) {
  std::vector<std::string> paths;
  for (const core::Problem& note : notes) {
    CHECK(note.code == "unknown_key");
    paths.push_back(note.path);
  }
  std::sort(paths.begin(), paths.end());
  return paths;
}

}  // namespace

TEST_CASE("unknown keys at every level are kept, reported and written back") {
  json project = blank();
  project["colour"] = "blue";
  project["site"]["ground"]["turf"] = {{"thick_m", 0.1}, {"kinds", {1, 2.5, nullptr, "x"}}};
  project["tank"]["a/b~c"] = true;
  project["lining"]["coats"][1]["brand"] = "grey";
  project["lining"]["customary_bill"]["lime_kg"] = 20;
  project["works"]["feast_days"] = {"2027-03-01"};
  project["tank"]["tank.depth_m"] = 99;
  project["tank.depth_m"] = 98;
  project[""] = 0;
  const auto first = read(project);
  CHECK(pathsOf(first.notes) == std::vector<std::string>{"", "colour", "lining.coats[1].brand",
                                                         "lining.customary_bill.lime_kg", "site.ground.turf",
                                                         "tank.a/b~c", "tank.depth_m", "tank.tank.depth_m",
                                                         "works.feast_days"});
  CHECK(json::parse(projectText(first.project)) == project);
  CHECK(parseProject(projectText(first.project))->project == first.project);
  CHECK(first.project.tank.depth_m == core::Tank{}.depth_m);
}

TEST_CASE("unknown keys of prices, records and options are kept, reported and written back") {
  json project = blank();
  project["prices"] = {{"tax_percent", 13}, {"items", {{{"item", "sand"}, {"grain", "coarse"}}}}};
  project["records"]["by"] = "field officer";
  project["ranges"]["inputs"][0]["why"] = "seen";
  project["options"] = {{{"name", "B"}, {"changes", {{"tank.depth_m", 1.5}}}, {"drawn_by", {"x", 1}}}};
  const auto first = read(project);
  CHECK(pathsOf(first.notes) == std::vector<std::string>{"options[0].drawn_by", "prices.items[0].grain",
                                                         "prices.tax_percent", "ranges.inputs[0].why",
                                                         "records.by"});
  const json written = json::parse(projectText(first.project));
  CHECK(written["prices"]["tax_percent"] == 13);
  CHECK(written["prices"]["items"][0]["grain"] == "coarse");
  CHECK(written["records"]["by"] == "field officer");
  CHECK(written["ranges"]["inputs"][0]["why"] == "seen");
  CHECK(written["options"] == project["options"]);
  CHECK(parseProject(projectText(first.project))->project == first.project);
}

TEST_CASE("an unknown key goes with the coat or the works that held it") {
  json project = blank();
  project["lining"]["coats"][1]["brand"] = "grey";
  project["works"]["foreman"] = "none";
  project["note"] = "stays";
  core::Project changed = read(project).project;
  changed.lining.coats.pop_back();
  changed.works.reset();
  const json written = json::parse(projectText(changed));
  CHECK(written.at("lining").at("coats").size() == 1);
  CHECK_FALSE(written.contains("works"));
  CHECK(written.at("note") == "stays");
}

TEST_CASE("keys that cannot be put back do not harm the file") {
  core::Project project;
  project.kept = {{"no pointer", "1"}, {"", "1"},         {"/tank/depth_m", "7"},
                  {"/tank/x", "{"},    {"/tank/~2", "1"}, {"/a/b", "1"}};
  const auto result = parseProject(projectText(project));
  REQUIRE(result.has_value());
  CHECK(result->project.kept.empty());
  CHECK(result->project.tank == project.tank);
}

TEST_CASE("what may be absent takes its default") {
  json project = blank();
  for (const char* key : {"title", "place", "prepared_by", "currency", "works"}) project.erase(key);
  project["site"] = json::object();
  for (const char* key : {"sieving_loss_percent", "pan_l", "customary_bill", "stone_loose_factor"})
    project["lining"].erase(key);
  json coat = project["lining"]["coats"][0];
  coat.erase("cure_days");
  project["lining"]["coats"] = {coat, coat, coat};
  const core::Project result = read(project).project;
  CHECK(result.site == core::Site{});
  CHECK_FALSE(result.works.has_value());
  CHECK(result.lining.sieving_loss_percent == core::Lining{}.sieving_loss_percent);
  CHECK(result.lining.customary == core::CustomaryBill{});
  // 3 days of wet sacks after coat 1 and 4 after the next: common practice, no source
  CHECK(result.lining.coats[0].cure_days == 3);
  CHECK(result.lining.coats[1].cure_days == 4);
  CHECK(result.lining.coats[2].cure_days == 4);
}

TEST_CASE("null stands for not known and for an absent part") {
  json project = blank();
  project["works"] = nullptr;
  project["site"]["ground"] = nullptr;
  project["site"]["edge"] = nullptr;
  project["site"]["soil"] = nullptr;
  project["lining"]["customary_bill"] = nullptr;
  const core::Project result = read(project).project;
  CHECK_FALSE(result.works.has_value());
  CHECK(result.site.ground == core::Ground{});
  CHECK_FALSE(result.site.edge_distance_m.has_value());
}

TEST_CASE("dimensions of a shape that is not in use are kept") {
  core::Project project;
  project.tank.shape = core::Shape::round;
  project.tank.length_m = 9.25;
  project.tank.outline_m = {{0, 0}, {3, 0}, {0, 3}};
  project.site.ground.fall_percent = 12;
  project.site.ground.points_m = {{0, 0, 1}, {1, 0, 1}, {0, 1, 2}};
  const auto result = parseProject(projectText(project));
  REQUIRE(result.has_value());
  CHECK(result->project == project);
}

TEST_CASE("numbers keep all their digits and whole ones have no decimal point") {
  core::Project project;
  project.tank.length_m = 6.1000000000000005;
  project.tank.width_m = 3;
  project.tank.dead_depth_m = 1.0 / 3;
  const std::string text = projectText(project);
  CHECK(text.find("\"length_m\": 6.1000000000000005,") != std::string::npos);
  CHECK(text.find("\"width_m\": 3,") != std::string::npos);
  CHECK(parseProject(text)->project == project);
  CHECK(text.back() == '\n');
}
