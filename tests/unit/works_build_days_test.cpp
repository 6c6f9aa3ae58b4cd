#include "core/plan.h"
#include "core/works/build_days.h"
#include "tests/unit/works_support.h"

namespace {

using core::works::BuildDay;
using support::Site;

const BuildDay& on(const std::vector<BuildDay>& days, core::works::Day date) {
  for (const BuildDay& d : days) {
    if (d.date == date) return d;
  }
  throw std::logic_error("no such day");
}

}  // namespace

TEST_CASE("the pit only grows, the coats only come and the water only rises") {
  core::Project project;
  project.tank.depth_m = 1.8;  // deep enough for two tasks of digging
  project.works->fill_inflow_l_per_day = 4000;
  const Site site(project);
  const core::works::Works works = site.works();
  const std::vector<BuildDay> days = core::works::buildDays(site.tank, works);
  REQUIRE(days.size() > 10);
  CHECK(days.front().stage == "natural");
  CHECK(days.front().date == core::works::addDays(works.schedule.front().start, -1));
  CHECK(days.back().stage == "full");
  CHECK(days.back().built.water_level_m == Approx(site.tank.fullLevel()).margin(1e-6));
  for (std::size_t k = 1; k < days.size(); ++k) {
    const auto &before = days[k - 1].built, &now = days[k].built;
    CHECK(core::works::daysBetween(*days[k - 1].date, *days[k].date) == 1);
    CHECK(now.dug_m >= before.dug_m);
    CHECK(now.coats >= before.coats);
    CHECK(now.has_stone_bed >= before.has_stone_bed);
    CHECK(now.water_level_m >= before.water_level_m - 1e-12);
  }
}

TEST_CASE("on the last day of a task what it makes stands") {
  const Site site{core::Project{}};
  const core::works::Works works = site.works();
  const std::vector<BuildDay> days = core::works::buildDays(site.tank, works);
  CHECK(on(days, support::task(works, "set_out").finish).built.has_pegs);
  const auto dug = on(days, support::task(works, "excavate").finish);
  CHECK(dug.built.dug_m >= std::min(1.5, site.tank.pitDepth()) - 1e-9);
  CHECK(on(days, support::task(works, "stone_bed").finish).built.has_stone_bed);
  const core::works::Task& coat = support::task(works, "coat_1");
  CHECK(on(days, coat.finish).built.coats == 1);
  CHECK(on(days, core::works::addDays(coat.start, -1)).built.coats == 0);
  const core::works::Task& cure = support::task(works, "cure_1");
  CHECK(on(days, cure.start).built.has_sacks);
  CHECK_FALSE(on(days, cure.finish).built.has_sacks);
}

TEST_CASE("there are no days without tasks") {
  const Site site{core::Project{}};
  CHECK(core::works::buildDays(site.tank, {}).empty());
}
