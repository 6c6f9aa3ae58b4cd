#include "core/works/rates.h"
#include "core/works/schedule.h"
#include "tests/unit/works_support.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::RestDay;
using core::works::addDays;
using core::works::Calendar;
using core::works::Clock;
using core::works::DayLoad;
using core::works::findTask;
using core::works::Task;
using core::works::Works;
using support::day;
using support::line;
using support::Site;
using support::task;

Works planned(const core::Project& p) {
  return Site(p).works();
}

/// Fence, trap, overflow, pipes and beds: all that can be planned.
core::Project withAll() {
  core::Project p;
  p.site.fence_planned = true;
  p.site.silt_trap_planned = true;
  p.delivery = core::Delivery{};
  p.delivery->source.route = {{0, 5}, {60, 0.5}};
  p.water = core::Water{};
  p.water->beds = {{"tomato", 100, 11, 1, {}, {}}};
  p.works->fill_inflow_l_per_day = 8000;
  return p;
}

bool overlap(const Task& a, const Task& b) {
  return a.start <= b.finish && b.start <= a.finish;
}

const DayLoad& load(const Works& works, core::works::Day date) {
  const auto found =
      std::find_if(works.days.begin(), works.days.end(), [&](const DayLoad& d) { return d.date == date; });
  REQUIRE(found != works.days.end());
  return *found;
}

std::vector<std::string> ids(const Works& works) {
  std::vector<std::string> all;
  for (const Task& t : works.schedule) all.push_back(t.id);
  return all;
}

}  // namespace

TEST_CASE("schedule: order of work, curing in calendar days, filling from the last coat") {
  core::Project p;
  p.works->start_date = day(2028, 2, 20);  // a Sunday, so that the works cross the leap day
  p.works->rest_day = RestDay::saturday;
  const Works works = planned(p);
  CHECK(ids(works) == std::vector<std::string>{"clear", "set_out", "strip_topsoil", "excavate", "carry_spoil",
                                               "excavate_deep", "trim", "stone_bed", "coat_1", "cure_1",
                                               "coat_2", "cure_2", "fill", "fill_by"});
  CHECK(task(works, "clear").start == day(2028, 2, 20));
  for (const char* coat : {"1", "2"}) {
    const Task& plaster = task(works, std::string("coat_") + coat);
    const Task& cure = task(works, std::string("cure_") + coat);
    CHECK(plaster.start == plaster.finish);  // one go
    CHECK(plaster.start_in_day == 0);
    CHECK(cure.start == addDays(plaster.finish, 1));
    CHECK(cure.finish == addDays(plaster.finish, cure.days));
    CHECK(cure.crew == 0);
    CHECK(cure.by_skill.wetters == 1);
  }
  CHECK(task(works, "cure_1").days == 3);  // common practice, no source
  CHECK(task(works, "cure_2").days == 4);  // common practice, no source
  const core::works::Day last_coat = task(works, "coat_2").finish;
  CHECK(task(works, "fill_by").start == addDays(last_coat, 4));  // common practice, no source
  CHECK(task(works, "fill_by").is_mark);
  CHECK(task(works, "fill").start == addDays(last_coat, 4));
  CHECK(task(works, "coat_2").start > task(works, "cure_1").finish);
  REQUIRE(works.filling);
  CHECK(works.filling->start == task(works, "fill").start);
}

TEST_CASE("schedule: working tasks touch worked days only, whatever day the works begin") {
  core::Project p = withAll();
  p.works->rest_day = RestDay::tuesday;
  p.works->closed = {{day(2028, 2, 28), 3, ""}, {day(2027, 12, 31), 2, ""}, {day(2028, 3, 4), 1, ""}};
  const Calendar calendar(p.works->rest_day, p.works->closed);
  for (int shift = 0; shift < 90; ++shift) {
    p.works->start_date = addDays(day(2027, 12, 15), shift);  // over the year's end and the leap day
    const Works works = planned(p);
    INFO(shift);
    for (const Task& t : works.schedule) {
      if (t.clock == Clock::calendar) continue;
      INFO(t.id);
      CHECK(calendar.isWorked(t.start));
      CHECK(calendar.isWorked(t.finish));
      CHECK(t.start >= p.works->start_date);
      CHECK(t.days >= t.work_days);
      CHECK(t.days <= t.work_days + 2);
    }
    const Task& cure = task(works, "cure_1");
    CHECK(cure.start == addDays(task(works, "coat_1").finish, 1));
    CHECK(task(works, "coat_2").start > cure.finish);
    // the first worked day after the curing, no later
    for (auto between = addDays(cure.finish, 1); between < task(works, "coat_2").start;
         between = addDays(between, 1))
      CHECK_FALSE(calendar.isWorked(between));
    CHECK(task(works, "fill").start > task(works, "fence").finish);
    for (const DayLoad& d : works.days) {
      CHECK(d.is_worked == calendar.isWorked(d.date));
      if (!d.is_worked) CHECK(d.labourers + d.masons == 0);
    }
  }
}

TEST_CASE("schedule: durations are person-days over people in quarters of a day, rounded up") {
  core::Project p = withAll();
  for (const int diggers : {1, 3, 4, 100}) {
    p.works->diggers = diggers;
    const Site site(p);
    const Works works = site.works();
    for (const char* id : {"excavate", "excavate_deep", "trim", "pipes", "stone_bed", "fence"}) {
      const double need = line(works.labour, id).days / diggers;
      INFO(id << " by " << diggers);
      CHECK(task(works, id).work_days >= need - 1e-9);
      CHECK(task(works, id).work_days < need + 0.25);
      CHECK(task(works, id).work_days * 4 == Approx(std::round(task(works, id).work_days * 4)));
      CHECK(task(works, id).work_days >= 0.25);
      CHECK(task(works, id).crew == diggers);
    }
  }
}

TEST_CASE("schedule: spoil is carried while the pit is dug and is away before the first coat") {
  core::Project p;
  p.works->spoil_lead_m = 50;
  const Works works = planned(p);
  const Task& carry = task(works, "carry_spoil");
  CHECK(carry.crew == 1);  // one person keeps pace with the digging
  CHECK(carry.start == task(works, "excavate").start);
  CHECK(carry.finish >= task(works, "excavate_deep").finish);
  CHECK(carry.finish < task(works, "coat_1").start);
  CHECK(overlap(carry, task(works, "excavate")));
}

TEST_CASE("schedule: trap, overflow and fence are made while coats cure, water comes after them") {
  for (const int diggers : {1, 2, 4}) {
    core::Project p = withAll();
    p.works->diggers = diggers;
    const Works works = planned(p);
    INFO(diggers);
    CHECK(task(works, "silt_trap").start > task(works, "coat_1").finish);
    CHECK(task(works, "overflow").start >= task(works, "silt_trap").finish);
    CHECK(task(works, "fence").start >= task(works, "overflow").finish);
    CHECK(task(works, "fill").start > task(works, "fence").finish);
    for (const char* beside : {"silt_trap", "overflow", "fence"})
      CHECK_FALSE(overlap(task(works, beside), task(works, "coat_2")));  // the same hands
  }
}

TEST_CASE("schedule: filling starts on the last day of curing or of the window, never on the coat's day") {
  struct Row {
    int cure, within, after;
  };
  for (const Row& row : {Row{4, 4, 4}, Row{7, 4, 4}, Row{2, 5, 2}, Row{0, 4, 1}, Row{10, 30, 10}}) {
    core::Project p;
    p.lining.coats.back().cure_days = row.cure;
    p.works->fill_within_days = row.within;
    const Works works = planned(p);
    INFO(row.cure << " " << row.within);
    CHECK(core::works::daysBetween(task(works, "coat_2").finish, task(works, "fill").start) == row.after);
    CHECK(task(works, "fill").start <= task(works, "fill_by").start);
    CHECK((findTask(works, "cure_2") != nullptr) == (row.cure > 0));
  }
}

TEST_CASE("schedule: the bar of filling is as long as the rise takes, then comes the leak test") {
  core::Project p = withAll();
  const Works works = planned(p);
  REQUIRE(works.filling);
  REQUIRE(works.filling->full_on);
  CHECK(task(works, "fill").finish == *works.filling->full_on);
  CHECK(task(works, "fill").days == static_cast<int>(works.filling->days.size()));
  CHECK(task(works, "leak_test").start == addDays(task(works, "fill").finish, 1));
  CHECK(task(works, "leak_test").days == 1);
  CHECK(task(works, "planting").start >= task(works, "fill").start);
  CHECK(line(works.labour, "fill").quantity == task(works, "fill").days);

  p.works->fill_inflow_l_per_day.reset();  // and no source
  const Works unknown = planned(p);
  CHECK(task(unknown, "fill").days == 1);
  CHECK(findTask(unknown, "leak_test") == nullptr);
}

TEST_CASE("schedule: a coat takes one day however many people it needs") {
  core::Project p;
  p.works->plasterers = 2;
  p.works->masons = 1;
  const Works works = planned(p);
  CHECK(task(works, "coat_1").days == 1);
  CHECK(task(works, "coat_1").crew == 2);
  CHECK(task(works, "coat_1").by_skill.masons == 1);
  CHECK(task(works, "coat_1").by_skill.labourers == 1);
  REQUIRE(works.coat_checks.size() == 2);
  CHECK_FALSE(works.coat_checks[0].is_enough());
}

TEST_CASE("schedule: wishes change crew and start of their task, unknown ones are said") {
  core::Project p;
  p.works->start_date = day(2028, 2, 20);
  p.works->rest_day = RestDay::saturday;
  const Works before = planned(p);
  p.works->wishes = {{"excavate", {}, 8},
                     {"stone_bed", day(2028, 3, 4), {}},
                     {"coat_3", {}, 5},
                     {"cure_1", day(2028, 3, 20), {}}};
  const Works works = planned(p);
  CHECK(task(works, "excavate").crew == 8);
  CHECK(task(works, "excavate").work_days <= task(before, "excavate").work_days / 2 + 0.25);
  CHECK(task(works, "stone_bed").start == day(2028, 3, 5));  // the 4th is a Saturday
  CHECK(task(works, "stone_bed").not_before == day(2028, 3, 4));
  CHECK(task(works, "coat_1").start > day(2028, 3, 4));
  CHECK(task(works, "cure_1").start == addDays(task(works, "coat_1").finish, 1));  // curing does not wait
  CHECK(works.wishes_unused == std::vector<std::string>{"coat_3", "cure_1"});
  // a bar moved back to where it stood before leaves the plan as it was
  p.works->wishes = {{"stone_bed", task(before, "stone_bed").start, {}}};
  CHECK(task(planned(p), "coat_2").start == task(before, "coat_2").start);
}

TEST_CASE("schedule: critical tasks put off by a day put off the end, floats are borne") {
  core::Project p = withAll();
  p.works->rest_day = RestDay::none;
  const Works works = planned(p);
  const auto end = [](const Works& w) {
    core::works::Day last = w.schedule.front().finish;
    for (const Task& t : w.schedule) last = t.is_mark ? last : std::max(last, t.finish);
    return last;
  };
  CHECK(task(works, "excavate").is_critical);
  CHECK(task(works, "coat_1").is_critical);
  CHECK(task(works, "coat_2").is_critical);
  CHECK_FALSE(task(works, "carry_spoil").is_critical);
  for (const Task& t : works.schedule) {
    if (t.is_mark || t.id.starts_with("cure_")) continue;
    CHECK(t.free_float_days <= t.float_days);
    CHECK(t.is_critical == (t.float_days < 1));
    for (int days = 1; days < 12; ++days) {
      INFO(t.id << " from the " << days << ". day after");
      p.works->wishes = {{t.id, addDays(t.start, days), {}}};
      const bool is_borne = days - t.start_in_day <= t.float_days;
      CHECK((end(planned(p)) == end(works)) == is_borne);
    }
  }
}

TEST_CASE("people of a day: a crew that goes on to the next task counts once") {
  core::Project p;
  const Works works = planned(p);
  const DayLoad& first = works.days.front();
  CHECK(first.date == task(works, "clear").start);
  CHECK(first.labourers <= p.works->diggers + 2);  // with those who carry
  CHECK(first.labourers >= p.works->diggers);
  const DayLoad& coat = load(works, task(works, "coat_1").start);
  CHECK(coat.labourers == 9);
  CHECK(coat.masons == 3);
  CHECK(works.days.size() ==
        static_cast<std::size_t>(core::works::daysBetween(first.date, task(works, "fill").finish) + 1));
}

TEST_CASE("wetting of a day: face of the curing coat, then the wall above the water") {
  core::Project p = withAll();
  p.lining.curing_water_l_per_m2_day = 8;
  p.works->fill_inflow_l_per_day = 3000;  // slower than the curing
  const Site site(p);
  const Works works = site.works();
  const Task& cure = task(works, "cure_1");
  for (auto date = cure.start; date <= cure.finish; date = addDays(date, 1)) {
    CHECK(load(works, date).wetting_l == Approx(8 * site.quantities.coats[0].face_m2));
    CHECK(load(works, date).wetters == 1);
  }
  CHECK(load(works, task(works, "coat_1").start).wetting_l == 0);
  REQUIRE(works.filling);
  const core::works::FillDay& third = works.filling->days.at(2);
  CHECK(third.wetting_l > 0);
  CHECK(load(works, third.date).wetting_l == third.wetting_l);
  // hands for the days after the curing are in the labour
  int beyond = 0;
  for (const DayLoad& d : works.days)
    beyond += d.date > task(works, "cure_2").finish && d.wetting_l > 0 ? 1 : 0;
  CHECK(beyond > 0);
  // a coat that waits for the next one stays wet, too
  const int waits = core::works::daysBetween(task(works, "cure_1").finish, task(works, "coat_2").start) - 1;
  CHECK(waits == 1);
  beyond += waits;
  CHECK(line(works.labour, "curing").quantity == 7 + beyond);
}

TEST_CASE("labour adds up to the person-days and mason-days of the works") {
  const Works works = planned(withAll());
  double days = 0, masons = 0;
  for (const core::works::Labour& l : works.labour) {
    days += l.days;
    masons += l.mason_days;
    CHECK((l.task == "curing" || findTask(works, l.task) != nullptr));
  }
  CHECK(works.person_days == Approx(days));
  CHECK(works.mason_days == Approx(masons));
  CHECK(masons > 0);
}

TEST_CASE("two rules of thumb for digging stand side by side") {
  // 22.5 m3 in about 14 labour-days: common practice, no source; a published norm gives 0.8 person-day/m3
  // (district rate norms, FY 2073/74), 18 days
  core::Project p;
  p.lining = core::Lining{};
  p.tank.batter = 0;
  const double plan_m2 = 22.5 / 1.5;
  double low = 1, high = 6;
  while (high - low > 1e-12) {  // width of a pit of 22.5 m3
    p.tank.width_m = (low + high) / 2;
    p.tank.length_m = plan_m2 / 3;
    (Site(p).tank.pitVolume() < 22.5 ? low : high) = p.tank.width_m;
  }
  const Works works = planned(p);
  REQUIRE(works.digging_days_by_practice);
  REQUIRE(works.digging_days_by_norm);
  CHECK(*works.digging_days_by_practice == Approx(14).epsilon(0.01));
  CHECK(*works.digging_days_by_norm == Approx(18));
}

TEST_CASE("works that nobody could do are refused") {
  core::Works works;
  CHECK(core::works::check(works).empty());
  works.closed.assign(8, {works.start_date, 60, ""});
  for (int k = 0; k < 8; ++k)
    works.closed[static_cast<std::size_t>(k)].from = addDays(works.start_date, 50 * k);
  REQUIRE(core::works::check(works).size() == 1);
  CHECK(core::works::check(works)[0].code == "no_working_day");
  works.closed.pop_back();  // the 350th day is free again
  works.closed.pop_back();
  CHECK(core::works::check(works).empty());

  works.rates = {{"carrying.10", 0.2, 0.1, 0.3}, {"juggling", 1, 1, 1}};
  const core::Problems problems = core::works::check(works);
  REQUIRE(problems.size() == 2);
  CHECK(problems[0].code == "range_crossed");
  CHECK(problems[0].path == "works.rates[0].typical");
  CHECK(problems[1].code == "unknown_work");
  CHECK(problems[1].path == "works.rates[1].work");
}
