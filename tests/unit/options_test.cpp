// Other ways to build: changes put into a project and found again, and their numbers side by side.
#include "core/compare/refine.h"
#include "core/findings.h"
#include "core/plan.h"
#include "core/project/option_fields.h"
#include "tests/support/water_project.h"

#include <algorithm>
#include <chrono>
#include <string>

#include <catch2/catch.hpp>

namespace {

using core::FieldChange;
using core::FieldValue;
using core::Option;
using core::OptionResult;
using core::Project;
using core::compare::compareOptions;

Project withMoneyAndWater() {
  Project p = support::waterProject();
  p.water->climate.years = 6;
  p.site.soil = core::Soil::stiff_clay;
  p.prices.emplace();
  for (core::PriceItem& item : p.prices->items) item.price = 50;
  return p;
}

/// Another value that the field takes; nothing for one that takes no other.
FieldValue otherValue(const core::Field& field, const FieldValue& value) {
  const double* number = std::get_if<double>(&value);
  switch (field.kind) {
    case core::FieldKind::number:
    case core::FieldKind::whole:
      return number && *number == field.most ? field.least : field.most;
    case core::FieldKind::flag:
      return value != FieldValue(true);
    case core::FieldKind::choice:
      return std::string(field.choices[value == FieldValue(std::string(field.choices[0])) ? 1 : 0]);
    case core::FieldKind::date:
      return std::string("2031-08-05");
    case core::FieldKind::text:
      break;
  }
  return std::string("another");
}

double orderOf(const core::Plan& plan, const std::string& id) {
  const auto& all = plan.quantities.materials;
  return std::find_if(all.begin(), all.end(), [&](const auto& m) { return m.id == id; })->order;
}

auto countOf(const std::vector<core::Finding>& findings, core::Severity severity) {
  return std::count_if(findings.begin(), findings.end(),
                       [&](const core::Finding& f) { return f.severity == severity; });
}

void checkSizes(const OptionResult& result, const core::Plan& plan) {
  CHECK(result.full_volume_m3 == plan.tank.full_volume_m3);
  CHECK(result.usable_volume_m3 == plan.tank.usable_volume_m3);
  CHECK(result.pit_volume_m3 == plan.earthwork.pit_volume_m3);
  CHECK(result.length_m == plan.tank.clear_floor_length_m);
  CHECK(result.width_m == plan.tank.clear_floor_width_m);
  CHECK(result.depth_m == plan.tank.depth_m);
  CHECK(result.cement_bags == orderOf(plan, "cement_bags"));
  CHECK(result.sand_m3 == orderOf(plan, "sand"));
  CHECK(result.soil_m3 == orderOf(plan, "soil"));
  CHECK(result.stone_m3 == orderOf(plan, "stone"));
  REQUIRE(result.geometry.has_value());
  CHECK(result.geometry->pitVolume() == plan.geometry.pitVolume());
}

void checkNumbers(const OptionResult& result, const core::Plan& plan) {
  CHECK(result.problems.empty());
  checkSizes(result, plan);
  CHECK(result.person_days == plan.works->person_days);
  CHECK(result.cost == plan.cost->bill.total);
  CHECK(result.cash == plan.cost->bill.cash);
  CHECK(result.per_m3_stored == plan.cost->per_m3_stored);
  CHECK(result.delivered_m3 == plan.cost->delivered_m3);
  CHECK(result.years_in_ten == plan.water->years_in_ten);
  CHECK(result.dry_days_mean == plan.water->dry_days_mean);
}

Option deeper() {
  return {"deeper", {{"tank.depth_m", 1.8}, {"works.plasterers", 20.0}}};
}

}  // namespace

TEST_CASE("changes put into a project are found again, field by field") {
  const Project base = withMoneyAndWater();
  int tried = 0;
  for (const core::Field& field : core::fields()) {
    if (!field.applies(base)) continue;
    for (std::size_t row = 0; row < core::rowCount(field, base); ++row) {
      const FieldChange change{core::pathOf(field, row), otherValue(field, field.get(base, row))};
      REQUIRE(core::checkValue(field, row, change.value).empty());
      const Project changed = core::withChanges(base, {"", {change}});
      CAPTURE(change.path);
      CHECK(field.get(changed, row) == change.value);
      const std::vector<FieldChange> found = core::changesBetween(base, changed);
      CHECK(std::count(found.begin(), found.end(), change) == 1);
      CHECK(core::withChanges(base, {"", found}) == changed);
      ++tried;
    }
  }
  CHECK(tried > 150);
}

TEST_CASE("many changes at once turn one project into the other") {
  const Project base = withMoneyAndWater();
  Project other = base;
  other.tank.shape = core::Shape::round;
  other.tank.diameter_m = 5.5;
  other.site.soil.reset();
  other.lining.coats[1].thickness_m = 0.04;
  other.works->rest_day = core::RestDay::none;
  other.water->animals[0].head = 9;
  other.prices->items[2].price.reset();
  CHECK(core::changesBetween(base, base).empty());
  const std::vector<FieldChange> changes = core::changesBetween(base, other);
  CHECK(changes.size() == 7);
  CHECK(core::withChanges(base, {"", changes}) == other);
}

TEST_CASE("an option has no options, and leaves out rows that are not there") {
  Project p = withMoneyAndWater();
  p.options = {deeper()};
  const Project changed = core::withChanges(p, {"", {{"lining.coats[4].soil", 2.0}, {"tank.depth_m", 1.2}}});
  CHECK(changed.options.empty());
  CHECK(changed.lining == p.lining);
  CHECK(changed.tank.depth_m == 1.2);
}

TEST_CASE("options stand beside the plan with the numbers of their own plans") {
  Project p = withMoneyAndWater();
  p.options = {deeper(), {"round", {{"tank.shape", std::string("round")}, {"tank.diameter_m", 4.5}}}};
  const core::Plan plan = core::plan(p).value();
  const std::vector<OptionResult> all = compareOptions(p, plan);
  REQUIRE(all.size() == 3);
  checkNumbers(all[0], plan);
  for (std::size_t k = 0; k < p.options.size(); ++k) {
    checkNumbers(all[k + 1], core::plan(core::withChanges(p, p.options[k])).value());
    CHECK(all[k + 1].name == p.options[k].name);
    CHECK(all[k + 1].changes == p.options[k].changes);
  }
  CHECK(all[0].letter == "A");
  CHECK(all[1].letter == "B");
  CHECK(all[2].letter == "C");
  CHECK(all[0].changes.empty());
  CHECK(*all[1].full_volume_m3 > *all[0].full_volume_m3);
  CHECK(all[2].length_m == 4.5);
}

TEST_CASE(
    "people of an option are those of its hardest coat, its dates those of the works without planting") {
  using namespace std::chrono;
  Project p = withMoneyAndWater();
  p.works->start_date = year(2028) / February / 28;
  p.lining.coats[1].thickness_m = 0.02;
  const core::Plan plan = core::plan(p).value();
  const OptionResult a = compareOptions(p, plan).front();
  REQUIRE(plan.works->coat_checks.size() == 2);
  CHECK(plan.works->coat_checks[0].needed > plan.works->coat_checks[1].needed);
  CHECK(a.people_on_coat == plan.works->coat_checks[0].needed);
  CHECK(a.start == p.works->start_date);
  const core::works::Task* planting = core::works::findTask(*plan.works, "planting");
  REQUIRE(planting != nullptr);
  auto last = plan.works->schedule.front().finish;
  for (const core::works::Task& task : plan.works->schedule) {
    if (task.id != "planting" && task.id != "fill_by") last = std::max(last, task.finish);
  }
  CHECK(a.finish == last);
}

TEST_CASE("an option that cannot be built keeps its problems and has no numbers") {
  Project p = withMoneyAndWater();
  p.options = {deeper(), {"no room", {{"tank.freeboard_m", 0.9}, {"tank.depth_m", 0.8}}}};
  core::Plan plan = core::plan(p).value();
  core::compare::refine(p, plan);
  REQUIRE(plan.options.size() == 3);
  const OptionResult& none = plan.options[2];
  REQUIRE_FALSE(none.problems.empty());
  CHECK(none.problems.front().code == "freeboard_not_below_rim");
  CHECK(none.letter == "C");
  CHECK_FALSE(none.full_volume_m3.has_value());
  CHECK_FALSE(none.cost.has_value());
  CHECK_FALSE(none.geometry.has_value());
  CHECK(plan.options[1].problems.empty());
  const auto told = std::find_if(plan.findings.begin(), plan.findings.end(),
                                 [](const core::Finding& f) { return f.code == "option_not_buildable"; });
  REQUIRE(told != plan.findings.end());
  CHECK(told->values.front().token == "C");
}

TEST_CASE("stops and cautions of options count the slips that were searched") {
  Project p = withMoneyAndWater();
  p.site.soil = core::Soil::firm_loam;
  p.site.edge_distance_m = 0.5;
  p.site.edge_height_m = 3;
  p.options = {{"far from the edge", {{"site.edge.distance_m", 30.0}}}};
  core::Plan plan = core::plan(p).value();
  core::compare::refine(p, plan);
  REQUIRE(plan.site.stability.is_searched);
  const auto slips = [](const core::Finding& f) {
    return f.code == "site_slip_likely" || f.code == "site_slip_near";
  };
  REQUIRE(std::count_if(plan.findings.begin(), plan.findings.end(), slips) == 1);
  CHECK(plan.options[0].stops == countOf(plan.findings, core::Severity::stop));
  CHECK(plan.options[0].cautions == countOf(plan.findings, core::Severity::caution));
  CHECK(plan.options[1].stops < plan.options[0].stops);
}

TEST_CASE("a refined plan has its spreads, and its options only when there are some") {
  Project p = withMoneyAndWater();
  p.ranges.draws = 1000;
  core::Plan plan = core::plan(p).value();
  CHECK_FALSE(plan.ranges.has_value());
  core::compare::refine(p, plan);
  REQUIRE(plan.ranges.has_value());
  CHECK(plan.ranges->draws == 1000);
  CHECK(plan.options.empty());

  p.works.reset();
  p.prices.reset();
  core::Plan bare = core::plan(p).value();
  core::compare::refine(p, bare);
  CHECK_FALSE(bare.ranges.has_value());
}

TEST_CASE("comparing that was given up has no answer and leaves the plan as it was") {
  Project p = withMoneyAndWater();
  p.options = {deeper()};
  core::Plan plan = core::plan(p).value();
  const std::atomic<bool> stopped = true;
  CHECK(compareOptions(p, plan, &stopped).empty());
  core::compare::refine(p, plan, &stopped);
  CHECK(plan.options.empty());
  CHECK_FALSE(plan.ranges.has_value());
}
