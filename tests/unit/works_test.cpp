#include "core/plan.h"
#include "core/works/calendar.h"

#include <algorithm>
#include <string>

#include <catch2/catch.hpp>

namespace {

using core::RestDay;
using core::works::Day;

Day day(int y, unsigned m, unsigned d) {
  return {std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

core::Plan planned(const core::Project& p) {
  auto plan = core::plan(p);
  REQUIRE(plan);
  return *plan;
}

const core::works::Task& task(const core::Plan& plan, const std::string& id) {
  const auto& all = plan.works->schedule;
  const auto it = std::find_if(all.begin(), all.end(), [&](const auto& t) { return t.id == id; });
  REQUIRE(it != all.end());
  return *it;
}

}  // namespace

TEST_CASE("calendar: weekdays, leap days and year ends") {
  // Gregorian calendar: 29 February 2028 is a Tuesday, 1 January 2028 a Saturday; 2100 is no leap year
  CHECK(core::works::addDays(day(2028, 2, 28), 1) == day(2028, 2, 29));
  CHECK(core::works::addDays(day(2100, 2, 28), 1) == day(2100, 3, 1));
  CHECK(core::works::addDays(day(2027, 12, 31), 1) == day(2028, 1, 1));
  CHECK_FALSE(core::works::isWorkingDay(day(2028, 2, 29), RestDay::tuesday));
  CHECK(core::works::isWorkingDay(day(2028, 2, 29), RestDay::saturday));
  CHECK_FALSE(core::works::isWorkingDay(day(2028, 1, 1), RestDay::saturday));
  CHECK(core::works::isWorkingDay(day(2028, 1, 1), RestDay::none));
  CHECK(core::works::onOrAfter(day(2028, 1, 1), RestDay::saturday) == day(2028, 1, 2));
}

TEST_CASE("calendar: working days skip the rest day, also across the year's end") {
  // Thursday 30 Dec 2027 + 3 working days, Saturday closed: Thu, Fri, Sun 2 Jan
  CHECK(core::works::finishOf(day(2027, 12, 30), 3, RestDay::saturday) == day(2028, 1, 2));
  CHECK(core::works::finishOf(day(2027, 12, 30), 3, RestDay::none) == day(2028, 1, 1));
  CHECK(core::works::finishOf(day(2028, 1, 1), 1, RestDay::saturday) == day(2028, 1, 2));
  // 60 working days of six in a week are ten weeks
  CHECK(core::works::finishOf(day(2027, 2, 14), 60, RestDay::saturday) ==
        core::works::addDays(day(2027, 2, 14), 10 * 7 - 2));
}

TEST_CASE("schedule: order of work, curing in calendar days, filling from coat 2") {
  core::Project p;
  p.works->start_date = day(2028, 2, 24);  // a Thursday, so that the curing crosses the leap day
  p.works->rest_day = RestDay::saturday;
  const core::Plan plan = planned(p);
  CHECK(task(plan, "excavate").start == day(2028, 2, 24));
  const std::vector<std::string> order{"excavate", "stone_bed", "coat_1", "cure_1",
                                       "coat_2",   "cure_2",    "fill_by"};
  REQUIRE(plan.works->schedule.size() == order.size());
  for (std::size_t k = 0; k < order.size(); ++k) CHECK(plan.works->schedule[k].id == order[k]);

  for (const char* coat : {"1", "2"}) {
    const auto& plaster = task(plan, std::string("coat_") + coat);
    const auto& cure = task(plan, std::string("cure_") + coat);
    CHECK(plaster.start == plaster.finish);  // one go
    CHECK(cure.start == core::works::addDays(plaster.finish, 1));
    CHECK(cure.finish == core::works::addDays(plaster.finish, cure.days));
    CHECK(core::works::isWorkingDay(plaster.start, RestDay::saturday));
  }
  CHECK(task(plan, "cure_1").days == 3);  // common practice, no source
  CHECK(task(plan, "cure_2").days == 4);  // common practice, no source
  CHECK(task(plan, "fill_by").start ==
        core::works::addDays(task(plan, "coat_2").finish, 4));  // common practice, no source
  CHECK(task(plan, "coat_2").start > task(plan, "cure_1").finish);
}

TEST_CASE("schedule: more diggers finish sooner, never in no time") {
  core::Project p;
  p.works->diggers = 1;
  const int alone = task(planned(p), "excavate").days;
  p.works->diggers = 2;
  const int two = task(planned(p), "excavate").days;
  p.works->diggers = 100;
  CHECK(two < alone);
  CHECK(two * 2 >= alone);
  CHECK(task(planned(p), "excavate").days == 1);
}

TEST_CASE("labour: quantities times published rates") {
  core::Project p;
  p.site.soil = core::Soil::stiff_clay;
  const core::Plan plan = planned(p);
  const auto& labour = plan.works->labour;
  // district rate norms, mid-hill district, FY 2073/74: hard soil 0.8 person-day/m3; dry stone soling 1
  // skilled + 3.5 unskilled
  CHECK(labour[0].days == Approx(0.8 * plan.earthwork.pit_volume_m3));
  CHECK(labour[1].days == Approx(4.5 * plan.quantities.stone_net_m3));
  // Central Public Works Department coefficients (second-hand): 0.074 + 0.093 + 0.093 = 0.26 day/m2; IS 7272:
  // mixing 0.75 day/m3
  CHECK(labour[2].days ==
        Approx(0.26 * plan.quantities.coats[0].face_m2 + 0.75 * plan.quantities.coats[0].placed_m3));
  for (const auto& l : labour) {
    CHECK(l.low_days <= l.days);
    CHECK(l.days <= l.high_days);
  }
  p.works->digging_person_day_per_m3 = 2;
  CHECK(planned(p).works->labour[0].days == Approx(2 * plan.earthwork.pit_volume_m3));
}

TEST_CASE("the one-go check asks for as many people as the coat has person-days") {
  core::Project p;
  const core::Plan plan = planned(p);
  for (const auto& c : plan.works->coat_crews) {
    const double days = plan.works->labour[static_cast<std::size_t>(c.coat) + 1].days;
    CHECK(c.needed >= days);
    CHECK(c.needed < days + 1);
  }
}

TEST_CASE("without works there is no labour and no schedule, and the plan says so") {
  core::Project p;
  p.works.reset();
  const core::Plan plan = planned(p);
  CHECK_FALSE(plan.works);
  CHECK(std::any_of(plan.findings.begin(), plan.findings.end(),
                    [](const auto& f) { return f.code == "part_absent" && f.values[0].token == "works"; }));
}
