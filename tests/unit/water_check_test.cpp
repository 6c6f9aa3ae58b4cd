#include "core/plan.h"
#include "core/project/fields.h"
#include "tests/support/water_project.h"

#include <catch2/catch.hpp>

using core::Project;

namespace {

std::string firstOf(const Project& project) {
  const core::Problems problems = core::check(project);
  return problems.empty() ? "" : problems.front().code + " " + problems.front().path;
}

}  // namespace

TEST_CASE("a sound water part has no problems") {
  CHECK(firstOf(support::waterProject()).empty());
}

TEST_CASE("beds name a crop that is there and a day that the month has") {
  Project p = support::waterProject();
  p.water->beds[0].crop = "moonflower";
  CHECK(firstOf(p) == "unknown_crop water.beds[0].crop");
  p.water->crops.push_back({.name = "moonflower"});
  CHECK(firstOf(p).empty());
  p.water->beds[0].plant_month = 2;
  p.water->beds[0].plant_day = 29;
  CHECK(firstOf(p) == "bad_day_of_month water.beds[0].plant_day");
  p.water->beds[0].plant_day = 28;
  CHECK(firstOf(p).empty());
}

TEST_CASE("own crops have a name of their own and a season within a year") {
  Project p = support::waterProject();
  p.water->crops.push_back({.name = ""});
  CHECK(firstOf(p) == "missing water.crops[0].name");
  p.water->crops[0].name = "taro";
  p.water->crops.push_back({.name = "taro"});
  CHECK(firstOf(p) == "name_repeated water.crops[1].name");
  p.water->crops[1].name = "tomato";  // one of the table
  CHECK(firstOf(p) == "name_repeated water.crops[1].name");
  p.water->crops.pop_back();
  p.water->crops[0].mid_days = 285;  // 25 + 35 + 285 + 20 = 365
  CHECK(firstOf(p).empty());
  p.water->crops[0].mid_days = 286;
  CHECK(firstOf(p) == "season_too_long water.crops[0].late_days");
}

TEST_CASE("months hang together") {
  Project p = support::waterProject();
  auto& february = p.water->climate.months[1];
  february.wet_days = 28.5;
  CHECK(firstOf(p) == "more_wet_days_than_days water.climate.months[1].wet_days");
  february.wet_days = 0;
  CHECK(firstOf(p) == "rain_without_wet_days water.climate.months[1].wet_days");
  february.rain_mm = 0;
  CHECK(firstOf(p).empty());
  february.wet_days = 10;
  CHECK(firstOf(p) == "less_rain_than_wet_days water.climate.months[1].rain_mm");
  february.rain_mm = 1;  // a wet day has 0.1 mm at least
  CHECK(firstOf(p).empty());
  february.t_max_c = *february.t_min_c - 0.1;
  CHECK(firstOf(p) == "max_below_min water.climate.months[1].t_max_c");
  february.t_max_c = *february.t_min_c;
  CHECK(firstOf(p).empty());
}

TEST_CASE("lists of months have twelve rows") {
  Project p = support::waterProject();
  p.water->climate.months.pop_back();
  CHECK(firstOf(p) == "too_few water.climate.months");
  p = support::waterProject();
  p.water->source.months.push_back({});
  CHECK(firstOf(p) == "too_many water.source.months");
  p = support::waterProject();
  p.water->beds.resize(core::kMostBeds + 1, p.water->beds[0]);
  CHECK(firstOf(p) == "too_many water.beds");
}
