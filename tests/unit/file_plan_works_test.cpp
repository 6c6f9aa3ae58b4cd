#include "core/compare/refine.h"
#include "core/exchange/plan_json.h"
#include "core/exchange/project_file.h"
#include "core/plan.h"

#include <map>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;

core::Project priced() {
  core::Project project =
      core::exchange::readProject(TANKWRIGHT_SOURCE_DIR "/resources/demo/terrace.tankwright")->project;
  project.prices.emplace();
  for (core::PriceItem& item : project.prices->items) item.price = 10;
  project.prices->items.push_back(project.prices->items[1]);
  project.prices->items.back().item = "river sand";  // sand from two places
  project.prices->items.front().carried_by = core::Carrier::porter;
  project.prices->porter.price_per_trip = 5;
  project.records.batches = {{1, 1, 3.5, 0.06}};
  project.records.work = {{core::RecordedWork::spreading, 12, 9}};
  project.options = {{"shallower", {{"tank.depth_m", 1.3}}},
                     {"no room", {{"tank.depth_m", 0.5}, {"tank.freeboard_m", 0.6}}}};
  return project;
}

const core::Plan& refined() {
  static const core::Plan plan = [] {
    const core::Project project = priced();
    auto made = core::plan(project);
    REQUIRE(made.has_value());
    core::compare::refine(project, *made);
    return *made;
  }();
  return plan;
}

json root() {
  return json::parse(core::exchange::planText(refined()));
}

void hasKeys(const json& object, const std::vector<std::string>& keys) {
  for (const std::string& key : keys) {
    INFO(key);
    CHECK(object.contains(key));
  }
}

}  // namespace

TEST_CASE("works in the plan's JSON: crews, float, links, people by day, coats, filling, weather") {
  const json plan = root();
  for (const json& line : plan["labour"]) hasKeys(line, {"task", "days", "skill", "mason_days", "unit"});
  for (const json& task : plan["schedule"])
    hasKeys(task, {"id", "start", "finish", "days", "crew", "work_days", "clock", "start_in_day",
                   "float_days", "free_float_days", "critical", "labourers", "masons", "wetters", "mark"});
  for (const json& link : plan["links"]) hasKeys(link, {"from", "to", "kind", "lag_days", "lag_clock"});
  for (const json& day : plan["people_by_day"])
    hasKeys(day, {"date", "labourers", "masons", "wetters", "wetting_l", "worked"});
  const core::works::Works& works = *refined().works;
  REQUIRE(plan["people_by_day"].size() == works.days.size());
  for (std::size_t k = 0; k < works.days.size(); ++k)
    CHECK(plan["people_by_day"][k]["wetting_l"] == works.days[k].wetting_l);
  REQUIRE(plan["coat_crews"].size() == works.coat_checks.size());
  CHECK(plan["coat_crews"][0]["batches_per_hour_needed"] == works.coat_checks[0].batches_per_hour_needed);
  CHECK(plan["coat_crews"][0]["size"].is_null() != works.coat_checks[0].size.has_value());
  CHECK(plan["filling"]["days"].size() == works.filling->days.size());
  CHECK(plan["filling"]["bands"].size() == works.filling->bands.size());
  CHECK(plan["weather_window"]["weeks"].size() == 52);
  CHECK(plan["weather_window"]["weeks"][0]["id"] == "01-01");
  CHECK(plan["records"]["spreading"]["median"] == 0.75);
  CHECK_FALSE(plan["records"].contains("digging"));
}

TEST_CASE("money, ranges and options in the plan's JSON") {
  const json plan = root();
  const core::cost::CostPlan& cost = *refined().cost;
  hasKeys(plan["cost"],
          {"lines", "materials", "labour", "other", "carriage", "contingency", "total", "own", "cash",
           "missing", "linings", "days", "per_m3_stored", "per_m3_delivered", "delivered_m3"});
  CHECK(plan["cost"]["total"] == cost.bill.total);
  REQUIRE(plan["cost"]["lines"].size() == cost.bill.lines.size());
  CHECK(plan["cost"]["lines"][0]["carriage"]["by"] == "porter");
  CHECK(plan["cost"]["linings"][0]["lining"] == "soil_cement");
  REQUIRE(plan["cost"]["dry_months"].size() == cost.dry_months.size());
  for (std::size_t k = 0; k < cost.dry_months.size(); ++k)
    CHECK(plan["cost"]["dry_months"][k] == cost.dry_months[k] + 1);
  CHECK(plan["ranges"]["spreads"][0]["p90"] == refined().ranges->spreads[0].p90);
  REQUIRE(plan["options"].size() == 3);
  CHECK(plan["options"][0]["letter"] == "A");
  CHECK(plan["options"][1]["changes"]["tank.depth_m"] == 1.3);
  CHECK(plan["options"][1]["full_volume_m3"] == *refined().options[1].full_volume_m3);
  CHECK_FALSE(plan["options"][1].contains("problems"));
  REQUIRE(refined().options[2].problems.size() == 1);
  CHECK(plan["options"][2]["problems"][0]["code"] == refined().options[2].problems[0].code);
  CHECK(plan["options"][2]["problems"][0]["path"] == refined().options[2].problems[0].path);
  CHECK_FALSE(plan["options"][2].contains("full_volume_m3"));
}

TEST_CASE("works and money in the plan's CSV have their units, and no item stands twice") {
  std::map<std::string, std::string> unit;
  const std::string csv = core::exchange::planCsv(refined());
  std::size_t from = 0;
  for (std::size_t end = csv.find("\r\n"); end != std::string::npos; end = csv.find("\r\n", from)) {
    const std::string row = csv.substr(from, end - from);
    from = end + 2;
    if (row.find('"') != std::string::npos) continue;
    const std::size_t item = row.find(',', row.find(',') + 1);
    CHECK(unit.emplace(row.substr(0, item), row.substr(row.rfind(',') + 1)).second);
  }
  CHECK(unit.at("mason_days,") == "person_day");
  CHECK(unit.at("labour,clear.rate") == "person_day/m2");
  CHECK(unit.at("labour,clear.quantity") == "m2");
  CHECK(unit.at("schedule,coat_1.masons") == "person");
  CHECK(unit.at("schedule,coat_1.float_days") == "day");
  CHECK(unit.at("coat_crews,1.water_l") == "L");
  CHECK(unit.at("coat_crews,1.batches_per_hour_needed") == "1/h");
  CHECK(unit.at("records,spreading.median") == "person_day/m2");
  CHECK(unit.at("records,spreading.count") == "");
  CHECK(unit.at("cost,total") == "money");
  CHECK(unit.at("cost,per_m3_stored") == "money/m3");
  CHECK(unit.at("cost,lines.sand.quantity") == "m3");
  CHECK(unit.at("cost,lines.sand.amount") == "money");
  CHECK(unit.at("cost,lines.river sand.amount") == "money");
  CHECK(unit.at("cost,lines.cement_bags.carriage.loads") == "piece");
  CHECK(unit.at("ranges,spreads.cement_bags.p90") == "bag");
  CHECK(unit.at("ranges,spreads.money.p90") == "money");
  CHECK(unit.at("options,B.cost") == "money");
  CHECK(unit.at("options,B.changes.tank.depth_m") == "m");
}
