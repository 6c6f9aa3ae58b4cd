#include "core/hydraulics/delivery_plan.h"
#include "ui/text/words.h"

#include <catch2/catch.hpp>

namespace words = ui::words;
using core::Unit;
using core::hydraulics::DeliveryPlan;
using core::hydraulics::fault;

namespace {

const ui::Formatter kMetric{QLocale("en_GB"), ui::UnitSystem::metric};

QString spaced(QString text) {
  return text.replace(QChar::Nbsp, u' ');
}

QString all(QStringList told) {
  return told.replaceInStrings(QString(QChar::Nbsp), " ").join(u'\n');
}

/// Lines, siphon and leak test that all work.
DeliveryPlan working() {
  DeliveryPlan plan;
  plan.source.emplace();
  plan.source->full->flow_m3_s = 18.2 / 60000;  // L/min
  plan.source->full->static_bar = 2.46;
  plan.source->low = plan.source->full;
  plan.source->line.pressure_class_bar = 6;
  plan.field.emplace();
  core::hydraulics::FieldPlan& field = *plan.field;
  field.pipe.full->flow_m3_s = 30.4 / 60000;
  field.pipe.low->flow_m3_s = 24.6 / 60000;
  field.siphon_full.emplace();
  (*field.siphon_full)->state = core::hydraulics::SiphonState::runs;
  (*field.siphon_full)->primed_with_m3 = 0.0124;
  field.siphon_low = field.siphon_full;
  field.head_full_m = 2.4;
  field.head_low_m = 1.2;
  field.check->verdict = core::hydraulics::OutletVerdict::works;
  field.check->head = {"outlet.tap.head", 0.5, 1, 2, Unit::metre, "memory"};
  field.empty_to_level_m = 0.1;
  field.emptying->seconds = 20.6 * 3600;
  return plan;
}

}  // namespace

TEST_CASE("the line from the source is told by its flow first") {
  DeliveryPlan plan = working();
  CHECK(all(words::sourceLineAnswers(plan, kMetric)) ==
        "The line brings 18 L/min.\n"
        "With its end shut, the lowest point of the pipe has to bear 2.5 bar; it is good for 6.0 bar.");
  plan.source->wanted_m3_s = 30.0 / 60000;
  plan.source->smallest.emplace();
  (*plan.source->smallest)->size = {core::PipeGrade::pe80, 40, 3, 13.6, 10, "iso_4427"};
  CHECK(all(words::sourceLineAnswers(plan, kMetric))
            .contains("The smallest pipe that brings the 30 L/min wanted has 40 mm outside diameter, class "
                      "10.0 bar."));
  *plan.source->smallest = fault("no_pipe_large_enough");
  CHECK(
      all(words::sourceLineAnswers(plan, kMetric)).contains("Wanted are 30 L/min, but no pipe of the table"));
  plan.source->full->humps = {{50, 2, 1, 1, 1, 1}, {80, 2, 1, 1, 1, 1}};
  CHECK(all(words::sourceLineAnswers(plan, kMetric)).contains("gathers: 2, the first at 50 m."));
}

TEST_CASE("a line that does not flow says why") {
  DeliveryPlan plan = working();
  plan.source->full = fault("no_head");
  plan.source->low = fault("no_head");
  CHECK(all(words::sourceLineAnswers(plan, kMetric))
            .startsWith("Nothing flows: there is no fall from the water at its inlet to its outlet"));
  plan.field->pipe.low = fault("inlet_dry");
  CHECK(words::fieldLineAnswers(plan, kMetric)
            .front()
            .contains("when it is nearly empty, its inlet does not lie"));
  plan.field->pipe.full = fault("inlet_dry");
  CHECK(words::fieldLineAnswers(plan, kMetric).size() == 1);
  const DeliveryPlan none;
  CHECK(all(words::sourceLineAnswers(none, kMetric)).startsWith("No way is entered"));
  CHECK(all(words::fieldLineAnswers(none, kMetric)).startsWith("No way is entered"));
}

TEST_CASE("a flow at which the column of water parts is not promised") {
  DeliveryPlan plan = working();
  CHECK_FALSE(all(words::sourceLineAnswers(plan, kMetric)).contains("parts"));
  plan.source->full->near_vapour.push_back({10, 20, -9, 15});
  CHECK(words::sourceLineAnswers(plan, kMetric)[1].contains("will not bring that much"));
}

TEST_CASE("the line to the field tells flow, outlet, emptying and how to start the siphon") {
  DeliveryPlan plan = working();
  const QString told = all(words::fieldLineAnswers(plan, kMetric));
  INFO(told.toStdString());
  CHECK(told.startsWith("The line brings 30 L/min with the tank full and 25 L/min when it is nearly empty."));
  CHECK(
      told.contains("Outlet, tap: a head of 2.4 m is left with the tank full and 1.2 m when it is nearly "
                    "empty, 1.0 m is wanted; it works."));
  CHECK(told.contains("Wide open, it draws the full tank down to 0.10 m over the floor in 21 hours."));
  CHECK(told.contains("fill it with 12.4 L of water."));
  plan.field->emptying->seconds = 40 * 60;
  CHECK(all(words::fieldLineAnswers(plan, kMetric)).contains("over the floor in 40 min."));
  plan.field->emptying = fault("does_not_empty");
  CHECK(all(words::fieldLineAnswers(plan, kMetric)).contains("cannot be told: the outflow dies away"));
  auto& siphon = **plan.field->siphon_low;
  siphon.state = core::hydraulics::SiphonState::parts_when_open;
  siphon.throttled_m3_s = 8.04 / 60000;
  CHECK(
      all(words::fieldLineAnswers(plan, kMetric)).contains("let no more than 8.0 L/min through its valve."));
}

TEST_CASE("the top of a siphon is not told as a high point to look for air") {
  DeliveryPlan plan = working();
  plan.field->pipe.line.profile = {{0, 0.1}, {0.2, 1.6}, {30, -2}};
  plan.field->pipe.full->humps = {{0.2, 1.6, 1.5, 3.6, 1.5, -1}};
  CHECK_FALSE(all(words::fieldLineAnswers(plan, kMetric)).contains("High points"));
  plan.field->over_rim = false;
  CHECK(all(words::fieldLineAnswers(plan, kMetric)).contains("High points on the way, where air gathers: 1"));
}

TEST_CASE("the overflow tells whether it passes the storm and where water goes when it is blocked") {
  DeliveryPlan plan;
  core::hydraulics::OverflowPlan& way = plan.overflow;
  way.storm_mm_h = 100;
  way.flow_m3_s = 120.0 / 60000;
  way.storm_m3_s = 100.0 / 60000;
  way.source_m3_s = 20.0 / 60000;
  way.wanted_freeboard_m = 0.05;
  way.state->freeboard_left_m = 0.12;
  way.blocked->deepest_m = 0.024;
  way.blocked->parts = {{"lip", 0.024, 0.002}, {"rim", 0, 0}};
  way.channel_depth_m = 0.2;
  way.spill->depth_m = 0.06;
  way.spill->velocity_m_s = 0.83;
  way.scour = {core::hydraulics::Scour::safe,
               {"erosion.grass", 0.9, 1.2, 1.8, Unit::metre_per_second, "memory"}};
  const QString told = all(words::overflowAnswers(plan, kMetric));
  INFO(told.toStdString());
  CHECK(told.startsWith("Taken is a storm of 100 mm per hour"));
  CHECK(told.contains("120 L/min run in"));
  CHECK(told.contains("100 L/min are rain and 20 L/min come from the source"));
  CHECK(told.contains("stays 0.12 m below the lowest part of the rim, wanted are 0.05 m"));
  CHECK(told.contains("leaves over the low part of the rim, 0.024 m deep."));
  CHECK(told.contains("0.20 m deep, the water runs 0.06 m deep at 0.8 m/s."));
  CHECK(told.contains("bears that speed (grass)"));
  way.is_storm_known = true;
  way.state->freeboard_left_m = -0.01;
  way.state->capacity_m3_s = 90.0 / 60000;
  way.width_that_would_m = 0.612;
  way.blocked->parts = {{"rim", 0.01, 0.002}};
  const QString small = all(words::overflowAnswers(plan, kMetric));
  CHECK(small.startsWith("In a storm of 100 mm per hour"));
  CHECK(small.contains("passes 90 L/min at most, so water runs over the rim."));
  CHECK(small.contains("A notch 0.62 m wide would be enough."));
  CHECK(small.contains("over the rim anywhere"));
}

TEST_CASE("the silt trap tells its size and what it holds back as it is") {
  DeliveryPlan plan;
  plan.trap.flow_m3_s = 40.0 / 60000;
  plan.trap.grain.diameter_mm = 0.1;
  plan.trap.trap->length_m = 1.004;
  plan.trap.trap->width_m = 0.3;
  plan.trap.trap->depth_m = 0.451;
  plan.trap.trap->deposit_m3 = 0.152;
  plan.trap.trap->deposit_depth_m = 0.21;
  QString told = all(words::siltTrapAnswers(plan, kMetric));
  INFO(told.toStdString());
  CHECK(
      told.contains("grains of 0.10 mm at a flow of 40 L/min, the trap is made 1.01 m long, 0.30 m wide and "
                    "0.46 m deep"));
  CHECK(told.contains("about 150 L of mud settle in it, 0.21 m deep."));
  plan.trap.check.emplace();
  (*plan.trap.check)->kept_mm = 0.25;
  CHECK(words::siltTrapAnswers(plan, kMetric).front().contains("carries them on"));
  (*plan.trap.check)->slow_enough = true;
  CHECK(spaced(words::siltTrapAnswers(plan, kMetric).front()) ==
        "The trap as it is holds back grains of 0.25 mm and larger.");
}

TEST_CASE("the leak test says how to do it, or what it found") {
  DeliveryPlan plan;
  CHECK(
      all(words::leakAnswers(plan, kMetric)).startsWith("No leak test is entered. Let a light bucket float"));
  plan.leak.emplace();
  core::hydraulics::LeakTest& test = **plan.leak;
  test.leak_mm_day = 3.04;
  test.leak_l_day = 74.6;
  test.error_mm_day = 1.41;
  test.verdict = core::hydraulics::LeakVerdict::watch;
  test.by_drop = {10.0 / 7, false, "water_tightness_drop"};
  test.by_volume = {1.1, true, "water_tightness_share"};
  const QString told = all(words::leakAnswers(plan, kMetric));
  INFO(told.toStdString());
  CHECK(told.startsWith("The tank loses 3.0 mm per day through its lining, about 75 L per day."));
  CHECK(told.contains("It does not keep to a mark for concrete tanks, 1.4 mm per day: "));
  CHECK(told.contains("It keeps to a mark for concrete tanks, 1.1 mm per day: "));
  test.verdict = core::hydraulics::LeakVerdict::unsure;
  CHECK(all(words::leakAnswers(plan, kMetric)).contains("the readings' error of 1.4 mm per day"));
  *plan.leak = fault("bucket_gained_water");
  CHECK(all(words::leakAnswers(plan, kMetric)) ==
        "The leak test tells nothing: water rose in the bucket: it rained; test again in dry weather.");
}
