#include "core/exchange/sites_csv.h"

#include "core/compare/refine.h"
#include "core/plan.h"
#include "core/project/fields.h"
#include "tests/support/water_project.h"

#include <algorithm>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::exchange::readSites;
using core::exchange::SiteRow;

std::vector<SiteRow> read(const std::string& text, const core::Project& base = {}) {
  const auto rows = readSites(text, base);
  REQUIRE(rows.has_value());
  return *rows;
}

std::vector<std::string> faultsOf(const std::string& text, const core::Project& base = {}) {
  const auto rows = readSites(text, base);
  REQUIRE_FALSE(rows.has_value());
  std::vector<std::string> faults;
  for (const core::Problem& p : rows.error()) faults.push_back(p.code + " " + p.path);
  return faults;
}

using Faults = std::vector<std::string>;

}  // namespace

TEST_CASE("each row of a table of sites is the template with its fields changed") {
  core::Project base = support::waterProject();
  base.options = {{"B", {}}};
  const auto rows = read(
      "id,title,site.soil,tank.length_m,water.source.months[0].flow_l_per_min,works.start_date,records.in_"
      "force\r\n"
      "ward 3,\"Upper, by the spring\",sandy,6.5,2.25,2028-02-29,false\r\n"
      ",,,,,,\r\n"
      "w4,,-,,0,,true\r\n",
      base);
  REQUIRE(rows.size() == 2);
  core::Project first = base;
  first.options.clear();
  core::Project second = first;
  first.title = "Upper, by the spring";
  first.site.soil = core::Soil::sandy;
  first.tank.length_m = 6.5;
  first.water->source.months[0].flow_l_per_min = 2.25;
  first.works->start_date = std::chrono::year{2028} / 2 / 29;
  first.records.in_force = false;
  second.site.soil.reset();
  second.water->source.months[0].flow_l_per_min = 0;
  CHECK(rows[0].id == "ward 3");
  CHECK(rows[0].project == first);
  CHECK(rows[1].id == "w4");
  CHECK(rows[1].line == 4);
  CHECK(rows[1].project == second);
}

TEST_CASE("without a column of ids the rows are counted, and a decimal comma is read between semicolons") {
  const auto rows = read("tank.depth_m;place\n1,45;A\n1.5;B\n");
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].id == "1");
  CHECK(rows[0].project.tank.depth_m == 1.45);
  CHECK(rows[1].id == "2");
  CHECK(rows[1].project.place == "B");
}

TEST_CASE("a header with what is no field, or a field twice, is refused") {
  CHECK(faultsOf("") == Faults{"csv_no_header "});
  CHECK(faultsOf("id,tank.lenght_m,tank.depth_m\n1,2,3\n") == Faults{"unknown_field row:1"});
  CHECK(faultsOf("tank.depth_m,id\n1.5,a\n") == Faults{"unknown_field row:1"});
  CHECK(faultsOf("tank.depth_m,tank.depth_m\n1,1\n") == Faults{"duplicate_key row:1"});
  CHECK(faultsOf("lining.coats[1].soil,lining.coats[01].soil\n1,1\n") == Faults{"duplicate_key row:1"});
  CHECK(faultsOf("lining.coats[2].soil\n1\n") == Faults{"unknown_field row:1"});  // the template has two
  CHECK(faultsOf("water.source.months[0].flow_l_per_min\n1\n") == Faults{"unknown_field row:1"});
  CHECK(faultsOf("id\n") == Faults{"too_few "});
}

TEST_CASE("what is wrong in a table of sites is said with row and column, all at once") {
  CHECK(faultsOf("id,tank.depth_m,site.soil,works.diggers\n"
                 "a,deep,sandy,3\n"
                 "b,99,cheese,2.5\n"
                 "c,NA,sandy,4\n"
                 "d,1.5,sandy\n"
                 "e,1.5,\"sandy\"x,1\n") ==
        Faults{"wrong_type row:2:tank.depth_m", "out_of_range row:3:tank.depth_m",
               "unknown_choice row:3:site.soil", "wrong_type row:3:works.diggers",
               "missing row:4:tank.depth_m", "csv_row_cells row:5", "wrong_type row:6"});
  const auto rows = readSites("tank.depth_m\n99\n", core::Project{});
  const core::Problem& problem = rows.error().front();
  CHECK(problem.value == "99");
  CHECK(problem.most == core::field("tank.depth_m").most);
  CHECK(problem.unit == core::Unit::metre);
  CHECK(faultsOf("tank.depth_m,\n1.5,\n1.5,x\n") == Faults{"unknown_field row:3"});
  CHECK(faultsOf("title\n\xFF\n") == Faults{"not_utf8 "});
}

TEST_CASE("the result of a site is what its plan says") {
  core::Project base = support::waterProject();
  base.prices.emplace();
  for (core::PriceItem& item : base.prices->items) item.price = 10;
  const auto rows = read("id,title,tank.depth_m\na,one,1.4\nb,two,0.3\n", base);
  const core::exchange::SiteResult result = core::exchange::siteResult(rows[0]);
  auto plan = core::plan(rows[0].project);
  REQUIRE(plan.has_value());
  core::compare::refine(rows[0].project, *plan);
  CHECK(result.problems.empty());
  CHECK(result.id == "a");
  CHECK(result.title == "one");
  CHECK(result.full_volume_m3 == plan->tank.full_volume_m3);
  CHECK(result.usable_volume_m3 == plan->tank.usable_volume_m3);
  CHECK(result.person_days == plan->works->person_days);
  CHECK(result.cost == plan->cost->bill.total);
  CHECK(result.per_m3_stored == plan->cost->per_m3_stored);
  CHECK(result.years_in_ten == plan->water->years_in_ten);
  const auto& materials = plan->quantities.materials;
  const auto bags =
      std::find_if(materials.begin(), materials.end(), [](const auto& m) { return m.id == "cement_bags"; });
  CHECK(result.cement_bags == bags->order);
  const auto count = [&](core::Severity severity) {
    return std::count_if(plan->findings.begin(), plan->findings.end(),
                         [&](const core::Finding& f) { return f.severity == severity; });
  };
  CHECK(*result.stops == count(core::Severity::stop));
  CHECK(*result.cautions == count(core::Severity::caution));
}

TEST_CASE("a site that cannot be planned has its problems and no figures") {
  const auto rows = read("tank.depth_m,tank.freeboard_m\n0.5,0.9\n");
  const core::exchange::SiteResult result = core::exchange::siteResult(rows[0]);
  REQUIRE(result.problems.size() == 1);
  CHECK_FALSE(result.full_volume_m3.has_value());
  CHECK_FALSE(result.stops.has_value());
  CHECK(core::exchange::resultsCsv({result}) ==
        "id,problems,title,place,full_volume_m3,usable_volume_m3,cement_bags,person_days,cost,per_m3_stored,"
        "years_in_ten,stops,cautions\r\n1," +
            result.problems[0].code + " " + result.problems[0].path + ",,,,,,,,,,,\r\n");
}

TEST_CASE("no cost is given when a price is not known") {
  core::Project base;
  base.prices.emplace();
  const core::exchange::SiteResult result = core::exchange::siteResult(read("title\nx\n", base)[0]);
  CHECK_FALSE(result.cost.has_value());
  CHECK_FALSE(result.per_m3_stored.has_value());
  CHECK(result.cement_bags.has_value());
}

TEST_CASE("results are a table by RFC 4180") {
  core::exchange::SiteResult result;
  result.id = "a\"b";
  result.title = "x, y";
  result.place = "two\nlines";
  result.full_volume_m3 = 22.5;
  result.cement_bags = 31;
  result.cost = 0.1;
  result.stops = 0;
  const std::string text = core::exchange::resultsCsv({result});
  CHECK(text.substr(text.find("\r\n") + 2) == "\"a\"\"b\",,\"x, y\",\"two\nlines\",22.5,,31,,0.1,,,0,\r\n");
}
