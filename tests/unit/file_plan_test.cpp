#include "core/exchange/plan_json.h"
#include "core/exchange/project_file.h"
#include "core/plan.h"
#include "tests/support/random_project.h"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;

core::Plan planOf(const core::Project& project) {
  auto plan = core::plan(project);
  REQUIRE(plan.has_value());
  return *plan;
}

core::Project demo() {
  return core::exchange::readProject(TANKWRIGHT_SOURCE_DIR "/resources/demo/terrace.tankwright")->project;
}

void hasKeys(const json& object, const std::vector<std::string>& keys) {
  for (const std::string& key : keys) {
    INFO(key);
    CHECK(object.contains(key));
  }
}

bool isIsoDate(const std::string& text) {
  const std::string pattern = "dddd-dd-dd";
  if (text.size() != pattern.size()) return false;
  for (std::size_t k = 0; k < text.size(); ++k) {
    const bool is_digit = text[k] >= '0' && text[k] <= '9';
    if (pattern[k] == 'd' ? !is_digit : text[k] != '-') return false;
  }
  return true;
}

/// Fields of a CSV text by RFC 4180, written here anew for the test.
std::vector<std::vector<std::string>> rowsOf(const std::string& csv) {
  std::vector<std::vector<std::string>> rows = {{""}};
  bool quoted = false;
  for (std::size_t k = 0; k < csv.size(); ++k) {
    const char c = csv[k];
    if (quoted) {
      if (c != '"')
        rows.back().back() += c;
      else if (k + 1 < csv.size() && csv[k + 1] == '"')
        rows.back().back() += csv[++k];
      else
        quoted = false;
    } else if (c == '"') {
      quoted = true;
    } else if (c == ',') {
      rows.back().emplace_back();
    } else if (c == '\r' && csv.at(k + 1) == '\n') {
      ++k;
      rows.push_back({""});
    } else {
      rows.back().back() += c;
    }
  }
  REQUIRE(rows.back() == std::vector<std::string>{""});  // the text ends with a line break
  rows.pop_back();
  return rows;
}

}  // namespace

TEST_CASE("the plan as JSON has every key of the contract") {
  const json root = json::parse(core::exchange::planText(planOf(demo())));
  CHECK(root["format"] == "tankwright-plan");
  CHECK(root["version"] == 1);
  hasKeys(root["tank"], {"brim_volume_m3", "full_volume_m3", "usable_volume_m3", "full_surface_m2",
                         "floor_m2", "wall_m2", "rim_length_m", "brim_area_m2"});
  hasKeys(root["earthwork"], {"pit_volume_m3", "pit_top_length_m", "pit_top_width_m", "pit_depth_m",
                              "bench_cut_m3", "bench_fill_m3", "spoil_loose_m3"});
  for (const json& layer : root["layers"]) hasKeys(layer, {"id", "volume_m3", "area_m2"});
  for (const json& material : root["materials"]) hasKeys(material, {"id", "net", "order", "unit"});
  for (const json& batch : root["batches"])
    hasKeys(batch, {"coat", "soil_m3", "sand_m3", "cement_kg", "yield_m3", "covers_m2", "count"});
  for (const json& labour : root["labour"]) hasKeys(labour, {"task", "days", "skill"});
  for (const json& task : root["schedule"]) hasKeys(task, {"id", "start", "finish", "days", "crew"});
  for (const json& finding : root["findings"]) hasKeys(finding, {"code", "severity", "values"});
  for (const char* list :
       {"layers", "materials", "batches", "labour", "schedule", "findings", "dip_stick", "coats"}) {
    INFO(list);
    CHECK_FALSE(root[list].empty());
  }
}

TEST_CASE("the numbers of the JSON are those of the plan, digit for digit") {
  const core::Plan plan = planOf(demo());
  const json root = json::parse(core::exchange::planText(plan));
  CHECK(root["tank"]["brim_volume_m3"] == plan.tank.brim_volume_m3);
  CHECK(root["tank"]["usable_volume_m3"] == plan.tank.usable_volume_m3);
  CHECK(root["tank"]["full_surface_m2"] == plan.tank.full_surface_m2);
  CHECK(root["tank"]["wall_m2"] == plan.tank.wall_m2);
  CHECK(root["earthwork"]["pit_volume_m3"] == plan.earthwork.pit_volume_m3);
  CHECK(root["earthwork"]["spoil_loose_m3"] == *plan.earthwork.spoil_loose_m3);
  REQUIRE(root["layers"].size() == plan.layers.size());
  for (std::size_t k = 0; k < plan.layers.size(); ++k) {
    CHECK(root["layers"][k]["id"] == plan.layers[k].id);
    CHECK(root["layers"][k]["volume_m3"] == plan.layers[k].volume_m3);
    CHECK(root["layers"][k]["area_m2"] == plan.layers[k].area_m2);
  }
  REQUIRE(root["materials"].size() == plan.quantities.materials.size());
  for (std::size_t k = 0; k < root["materials"].size(); ++k) {
    CHECK(root["materials"][k]["net"] == plan.quantities.materials[k].net);
    CHECK(root["materials"][k]["order"] == plan.quantities.materials[k].order);
  }
  CHECK(root["dip_stick"].size() == plan.dip_stick.size());
  CHECK(root["findings"].size() == plan.findings.size());
  CHECK(root["customary"]["cement"]["cement_kg"] == plan.quantities.customary->cement->cement_kg);
}

TEST_CASE("there is one whole-bag batch for each coat and dates are ISO 8601") {
  const core::Project project = demo();
  const json root = json::parse(core::exchange::planText(planOf(project)));
  REQUIRE(root["batches"].size() == project.lining.coats.size());
  for (std::size_t k = 0; k < root["batches"].size(); ++k) {
    CHECK(root["batches"][k]["coat"] == k + 1);
    CHECK(root["batches"][k]["cement_kg"] == project.lining.cement_bag_kg);
  }
  CHECK(root["schedule"][0]["start"] == "2026-10-12");
  for (const json& task : root["schedule"]) {
    CHECK(isIsoDate(task["start"]));
    CHECK(isIsoDate(task["finish"]));
    CHECK(task["start"] <= task["finish"]);
  }
}

TEST_CASE("without works there is neither labour nor schedule, and a finding says so") {
  core::Project project = demo();
  project.works.reset();
  const json root = json::parse(core::exchange::planText(planOf(project)));
  CHECK_FALSE(root.contains("labour"));
  CHECK_FALSE(root.contains("schedule"));
  const auto& findings = root["findings"];
  CHECK(std::any_of(findings.begin(), findings.end(), [](const json& f) {
    return f["code"] == "part_absent" && f["values"]["part"] == "works";
  }));
}

TEST_CASE("what is not known is null") {
  core::Project project = demo();
  project.site.soil.reset();
  project.site.clay_percent.reset();
  project.lining.customary = {};
  const json root = json::parse(core::exchange::planText(planOf(project)));
  CHECK(root["earthwork"]["spoil_loose_m3"].is_null());
  CHECK(root["coats"][0]["clay_percent"].is_null());
  CHECK(root["customary"].is_null());
}

TEST_CASE("no number of a random plan is lost as not finite") {
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    const json root = json::parse(core::exchange::planText(planOf(support::randomProject(seed))));
    INFO("seed " << seed);
    for (const char* part :
         {"tank", "layers", "materials", "batches", "dip_stick", "setting_out", "labour", "schedule"}) {
      if (root.contains(part)) CHECK(root[part].dump().find("null") == std::string::npos);
    }
  }
}

TEST_CASE("the plan as CSV has four columns and the same figures") {
  const core::Plan plan = planOf(demo());
  const auto rows = rowsOf(core::exchange::planCsv(plan));
  CHECK(rows.front() == std::vector<std::string>{"section", "item", "value", "unit"});
  std::map<std::string, std::vector<std::string>> by_item;
  for (const auto& row : rows) {
    REQUIRE(row.size() == 4);
    CHECK(by_item.emplace(row[0] + " " + row[1], row).second);
  }
  CHECK(std::stod(by_item.at("tank brim_volume_m3")[2]) == plan.tank.brim_volume_m3);
  CHECK(by_item.at("tank brim_volume_m3")[3] == "m3");
  CHECK(by_item.at("tank floor_m2")[3] == "m2");
  CHECK(std::stod(by_item.at("layers stone_bed.volume_m3")[2]) == plan.layers.front().volume_m3);
  CHECK(by_item.at("materials cement.order")[3] == "kg");
  CHECK(by_item.at("materials sacks.order")[3] == "piece");
  CHECK(by_item.at("schedule clear.start")[2] == "2026-10-12");
  CHECK(by_item.at("labour excavate.days")[3] == "person_day");
  CHECK(by_item.at("schedule excavate.days")[3] == "day");
  CHECK(by_item.at("person_days ")[3] == "person_day");
  CHECK(by_item.at("coats 1.net.cement_kg")[3] == "kg");
  CHECK(by_item.at("coats 1.net.cement_m3")[3] == "m3");
  CHECK(by_item.at("customary lines.cement.shell")[3] == "kg");
  CHECK(by_item.at("customary lines.cement.shell_ratio")[3] == "1");
  CHECK(by_item.at("customary cement.thickness_m.1")[3] == "m");
}

TEST_CASE("a comma, a quote or a line break in a CSV field is quoted") {
  core::Plan plan = planOf(demo());
  plan.layers.front().id = "a,\"b\"\r\nc";
  const std::string csv = core::exchange::planCsv(plan);
  CHECK(csv.find("\"a,\"\"b\"\"\r\nc.volume_m3\"") != std::string::npos);
  CHECK(rowsOf(csv).back().size() == 4);
}
