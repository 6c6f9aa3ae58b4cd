#include "core/cost/bill_lines.h"
#include "core/cost/drawn_materials.h"
#include "core/cost/drawn_works.h"
#include "core/cost/fill_table.h"
#include "core/cost/ranges.h"
#include "core/works/labour.h"
#include "tests/support/priced_tank.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using namespace core::cost;
using core::RangedInput;
using support::PricedTank;

const Spread& of(const RangesPlan& plan, const std::string& outcome) {
  const auto it = std::find_if(plan.spreads.begin(), plan.spreads.end(),
                               [&](const Spread& s) { return s.outcome == outcome; });
  REQUIRE(it != plan.spreads.end());
  return *it;
}

bool has(const RangesPlan& plan, const std::string& outcome) {
  return std::any_of(plan.spreads.begin(), plan.spreads.end(),
                     [&](const Spread& s) { return s.outcome == outcome; });
}

core::Project withInputs(std::vector<core::InputRange> inputs, int draws = 20000) {
  core::Project project = support::pricedProject();
  project.ranges.inputs = std::move(inputs);
  project.ranges.draws = draws;
  return project;
}

RangesPlan rangesOf(const core::Project& project) {
  return ranges(PricedTank(project).ranges());
}

/// Tanks of every shape, with and without cove, rim, stone bed and round corners.
std::vector<core::Project> shapes() {
  std::vector<core::Project> all(4, support::pricedProject());
  all[1].tank.shape = core::Shape::round;
  all[1].lining.rim_width_m = 0.2;
  all[1].lining.rim_thickness_m = 0.05;
  all[2].tank.corner_radius_m = 0.4;
  all[2].lining.cove_radius_m = 0.15;
  all[2].lining.stone_bed_m = 0;
  all[3].tank.shape = core::Shape::polygon;
  all[3].tank.outline_m = {{0, 0}, {6, 0}, {7, 3}, {3, 5}, {0, 3}};
  all[3].lining.coats = {{0.05, 3, 3, 1, 3}, {0.03, 2, 2, 1, 3}, {0.01, 0, 2, 1, 4}};
  return all;
}

/// Factors between 0.7 and 1.5.
Factors someFactors(std::mt19937_64& engine) {
  Factors factors;
  for (double& f : factors) f = 0.7 + 0.8 * static_cast<double>(engine() >> 11) * 0x1p-53;
  return factors;
}

double factor(const Factors& factors, RangedInput input) {
  return factors[static_cast<std::size_t>(input)];
}

/// The project with the factors put in where its fields are.
core::Project put(core::Project project, const Factors& factors) {
  for (core::Coat& coat : project.lining.coats) coat.thickness_m *= factor(factors, RangedInput::thickness);
  project.lining.unevenness_percent *= factor(factors, RangedInput::unevenness);
  project.lining.dry_to_wet *= factor(factors, RangedInput::dry_to_wet);
  project.lining.cement_loose_kg_m3 *= factor(factors, RangedInput::cement_density);
  return project;
}

}  // namespace

TEST_CASE("ranges: with every input as entered they are the plan's own numbers") {
  for (const core::Project& project : shapes()) {
    const PricedTank tank(project);
    const RangesPlan plan = ranges(tank.ranges());
    CHECK(of(plan, "money").typical == tank.cost->bill.total);
    CHECK(of(plan, "person_days").typical == tank.works->person_days);
    CHECK(of(plan, "cement_bags").typical == tank.quantities.materials[1].order);
    const auto days =
        core::works::daysToFill(tank.geometry, tank.project, &*tank.water, tank.works->filling->start);
    CHECK(of(plan, "fill_days").typical == days.value());
  }
}

TEST_CASE("ranges: without any spread every draw is the plan") {
  core::Project project = withInputs({}, 1000);
  const PricedTank tank(project);
  const RangesPlan plan = ranges(tank.ranges());
  for (const Spread& s : plan.spreads) {
    CHECK(s.least == s.typical);
    CHECK(s.most == s.typical);
    CHECK(s.p10 == s.typical);
    CHECK(s.mean == s.typical);
    CHECK(s.drivers.empty());
  }
  CHECK(plan.draws == 1000);
}

TEST_CASE("ranges: drawn materials are those of the tank planned anew") {
  std::mt19937_64 engine(11);
  for (const core::Project& project : shapes()) {
    const PricedTank tank(project);
    DrawnMaterials drawn(tank.ranges(), atThicknesses(project));
    for (int round = 0; round < 40; ++round) {
      const Factors factors = someFactors(engine);
      KnownQuantities known;
      drawn.put(factors, known);
      const core::Project anew = put(project, factors);
      const core::geometry::TankGeometry geometry(anew.tank, anew.lining);
      const core::lining::Quantities quantities = core::lining::quantities(geometry, anew);
      const KnownQuantities expected = knownQuantities({geometry, anew, quantities});
      for (const Known k :
           {Known::cement_bags, Known::soil, Known::sand, Known::stone, Known::water, Known::sacks})
        CHECK(known[k] == expected[k]);  // rounded up to bags, tenths, litres and sacks alike
    }
  }
}

TEST_CASE("ranges: drawn labour is that of the tank planned anew") {
  std::mt19937_64 engine(12);
  for (const core::Project& project : shapes()) {
    const PricedTank tank(project);
    const DrawnLabour drawn(tank.ranges(), atThicknesses(project));
    const double waiting = tank.works->person_days - [&] {
      double days = 0;
      for (const auto& l : core::works::labour({tank.geometry, project, tank.quantities, tank.platform}))
        days += l.days;
      return days;
    }();  // wetting and watching beyond the table, which the dates add
    for (int round = 0; round < 40; ++round) {
      const Factors factors = someFactors(engine);
      const core::Project anew = put(project, factors);
      const core::geometry::TankGeometry geometry(anew.tank, anew.lining);
      const core::lining::Quantities quantities = core::lining::quantities(geometry, anew);
      core::works::Platform platform;
      platform.spoil_bank_m3 = geometry.pitVolume();
      double person = waiting, mason = 0;
      for (const auto& l : core::works::labour({geometry, anew, quantities, platform})) {
        const bool is_coat = l.task.starts_with("coat_"), is_pit = l.task.starts_with("excavate");
        const double rate = is_coat ? factor(factors, RangedInput::plastering)
                                    : (is_pit ? factor(factors, RangedInput::digging) : 1);
        person += rate * l.days;
        mason += rate * l.mason_days;
      }
      CHECK(drawn(factors).person == Approx(person).epsilon(1e-10));
      CHECK(drawn(factors).mason == Approx(mason).epsilon(1e-10));
    }
  }
}

TEST_CASE("ranges: the table of filling days lies within a day of the filling itself") {
  const PricedTank tank(withInputs({{RangedInput::flow, -40, 20}}));
  const auto table = FillTable::make(tank.ranges(), {0.6, 1, 1.2});
  REQUIRE(table);
  for (int k = 0; k <= 100; ++k) {
    const double f = 0.6 + 0.006 * k;
    core::Project project = tank.project;
    *project.works->fill_inflow_l_per_day *= f;
    const auto days =
        core::works::daysToFill(tank.geometry, project, &*tank.water, tank.works->filling->start);
    CHECK(std::abs((*table)(f) - *days) <= 1);
  }
}

TEST_CASE("ranges: the flow of the source moves the filling where no inflow is entered") {
  core::Project project = withInputs({{RangedInput::flow, -30, 30}});
  project.works->fill_inflow_l_per_day.reset();
  for (core::SourceMonth& month : project.water->source.months) month.flow_l_per_min = 2;
  const RangesPlan ranges = rangesOf(project);
  const Spread& s = of(ranges, "fill_days");
  CHECK(s.p10 < s.typical);
  CHECK(s.p90 > s.typical);
  CHECK(s.drivers.at(0).correlation < -0.9);  // more water, fewer days
}

TEST_CASE("ranges: the same seed draws the same, another one nearly") {
  core::Project project = support::pricedProject();
  const RangesPlan first = rangesOf(project);
  const RangesPlan again = rangesOf(project);
  project.ranges.seed = 2;
  const RangesPlan other = rangesOf(project);
  REQUIRE(first.spreads.size() == 4);
  for (std::size_t k = 0; k < first.spreads.size(); ++k) {
    CHECK(first.spreads[k].mean == again.spreads[k].mean);
    CHECK(first.spreads[k].p90 == again.spreads[k].p90);
    CHECK(first.spreads[k].mean != other.spreads[k].mean);
    CHECK(first.spreads[k].mean == Approx(other.spreads[k].mean).epsilon(0.02));
  }
}

TEST_CASE("ranges: draws of one input stay when others are added, whatever their order") {
  const core::InputRange thickness{RangedInput::thickness, -10, 25}, wages{RangedInput::wages, -5, 15};
  const Spread alone = of(rangesOf(withInputs({thickness})), "cement_bags");
  const Spread together = of(rangesOf(withInputs({wages, thickness})), "cement_bags");
  CHECK(alone.mean == together.mean);
  CHECK(alone.p10 == together.p10);
  CHECK(alone.p90 == together.p90);
}

TEST_CASE("ranges: bags are whole, and more of them where coats are thicker") {
  const RangesPlan plan = rangesOf(withInputs({{RangedInput::thickness, -10, 25}}));
  const Spread& bags = of(plan, "cement_bags");
  for (const double value : {bags.least, bags.p10, bags.p50, bags.p90, bags.most})
    CHECK(value == std::floor(value));
  CHECK(bags.least < bags.typical);
  CHECK(bags.p50 > bags.typical);  // the range leans to thicker coats
  CHECK(bags.drivers.size() == 1);
  CHECK(bags.drivers[0].share == 1);
  CHECK(bags.drivers[0].correlation > 0.99);
}

TEST_CASE("ranges: what an outcome does not depend on is no driver of it") {
  const RangesPlan plan = rangesOf(support::pricedProject());
  const auto isDriver = [&](const char* outcome, RangedInput input) {
    const auto& all = of(plan, outcome).drivers;
    return std::any_of(all.begin(), all.end(), [&](const Driver& d) { return d.input == input; });
  };
  CHECK_FALSE(isDriver("cement_bags", RangedInput::wages));
  CHECK_FALSE(isDriver("person_days", RangedInput::prices));
  CHECK_FALSE(isDriver("money", RangedInput::flow));
  CHECK(isDriver("money", RangedInput::thickness));
  CHECK(of(plan, "fill_days").drivers.size() == 1);
  for (const Spread& s : plan.spreads) {
    double sum = 0;
    for (std::size_t k = 0; k < s.drivers.size(); ++k) {
      sum += s.drivers[k].share;
      if (k > 0) CHECK(s.drivers[k].share <= s.drivers[k - 1].share);
    }
    CHECK(sum == Approx(1));
  }
}

TEST_CASE("ranges: money under prices and wages alone, in closed form") {
  // money = fixed + goods * a + labour * b with a, b triangular and independent
  const std::vector<core::InputRange> inputs{{RangedInput::prices, -20, 40}, {RangedInput::wages, -30, 30}};
  const core::Project project = withInputs(inputs, 200000);
  const PricedTank tank(project);
  const Spread money = of(ranges(tank.ranges()), "money");
  const Bill& bill = tank.cost->bill;
  const double with_contingency = 1 + project.prices->contingency_percent / 100;
  const Triangular a{0.8, 1, 1.4}, b{0.7, 1, 1.3};
  const double goods = bill.materials * with_contingency, labour = bill.labour * with_contingency;
  const double n = project.ranges.draws;
  const double variance = goods * goods * a.variance() + labour * labour * b.variance();
  const double expected = bill.total + goods * (a.mean() - 1) + labour * (b.mean() - 1);
  CHECK(std::abs(money.mean - expected) < 4 * std::sqrt(variance / n));
  const double share = goods * goods * a.variance() / variance;
  for (const Driver& d : money.drivers)
    CHECK(d.share == Approx(d.input == RangedInput::prices ? share : 1 - share).margin(0.01));
  CHECK(money.least >= bill.total - 0.2 * goods - 0.3 * labour);
  CHECK(money.most <= bill.total + 0.4 * goods + 0.3 * labour);
}

TEST_CASE("ranges: P10, P50 and P90 of money under prices alone, in closed form") {
  const PricedTank tank(withInputs({{RangedInput::prices, -20, 40}}, 200000));
  const Spread money = of(ranges(tank.ranges()), "money");
  const double goods = tank.cost->bill.materials * (1 + tank.project.prices->contingency_percent / 100);
  const Triangular a{0.8, 1, 1.4};
  const auto expected = [&](double p) { return tank.cost->bill.total + goods * (a.quantile(p) - 1); };
  CHECK(money.p10 == Approx(expected(0.1)).margin(0.003 * goods));
  CHECK(money.p50 == Approx(expected(0.5)).margin(0.003 * goods));
  CHECK(money.p90 == Approx(expected(0.9)).margin(0.003 * goods));
}

TEST_CASE("ranges: only what is known has a spread") {
  core::Project project = support::pricedProject();
  project.ranges.draws = 1000;
  project.prices->items[0].price.reset();
  CHECK_FALSE(has(rangesOf(project), "money"));
  project.prices.reset();
  CHECK_FALSE(has(rangesOf(project), "money"));
  CHECK(has(rangesOf(project), "fill_days"));
  project.works->fill_inflow_l_per_day = 70;  // not within a year
  CHECK_FALSE(has(rangesOf(project), "fill_days"));
  project.works.reset();
  CHECK_FALSE(has(rangesOf(project), "person_days"));
  CHECK(has(rangesOf(project), "cement_bags"));
}

TEST_CASE("ranges: given up") {
  const PricedTank tank(support::pricedProject());
  const std::atomic<bool> cancel = true;
  const RangesPlan plan = ranges(tank.ranges(), &cancel);
  CHECK(plan.draws == 0);
  CHECK(plan.spreads.empty());
}

TEST_CASE("ranges: problems of the inputs") {
  core::Ranges ranges;
  CHECK(check(ranges).empty());
  ranges.inputs = {{RangedInput::flow, -10, 10}, {RangedInput::wages, 5, 10}, {RangedInput::flow, -10, -5}};
  const core::Problems problems = check(ranges);
  REQUIRE(problems.size() == 3);
  CHECK(problems[0].code == "out_of_range");
  CHECK(problems[0].path == "ranges.inputs[1].low_percent");
  CHECK(problems[1].code == "name_repeated");
  CHECK(problems[1].path == "ranges.inputs[2].input");
  CHECK(problems[1].value == "\"flow\"");
  CHECK(problems[2].path == "ranges.inputs[2].high_percent");
}
