// What the records of a district say, and the project in force.
#include "core/works/rates.h"
#include "core/works/records.h"

#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::RecordedWork;
using core::works::calibration;
using core::works::inForce;
using core::works::rateInForce;

core::Project withWork(RecordedWork work, std::vector<double> days_for_ten) {
  core::Project project;
  for (const double days : days_for_ten) project.records.work.push_back({work, 10, days});
  return project;
}

core::Project applied(const core::Project& project) {
  return inForce(project, calibration(project));
}

}  // namespace

TEST_CASE("records: a bag that covered 3 m2 at 6 cm says 1.35 loose for one placed") {
  core::Project project;
  project.records.batches = {{1, 1, 3, 0.06}};
  const auto c = calibration(project);
  REQUIRE(c.dry_to_wet);
  // 50 kg / 1440 kg/m3 = 34.72 L; 3 : 3 : 1 makes 243.06 L loose; 180 L on the wall
  CHECK(c.dry_to_wet->median == Approx(1.3503).epsilon(1e-4));
  CHECK(c.dry_to_wet->entered == 1.30);
  CHECK(c.dry_to_wet->count == 1);
  // coat 2, 2 : 2 : 1 with half a bag: 86.81 L loose over 1.1 m2 of 6 cm
  project.records.batches = {{2, 0.5, 1.1, 0.06}};
  CHECK(calibration(project).dry_to_wet->median == Approx(86.8056 / 66).epsilon(1e-5));
  project.lining.coats[1] = {0.06, 4, 4, 2, 4};  // the same mix by other parts
  CHECK(calibration(project).dry_to_wet->median == Approx(86.8056 / 66).epsilon(1e-5));
}

TEST_CASE("records: the median of an odd and of an even count, with least and most") {
  const auto odd = calibration(withWork(RecordedWork::digging, {9, 5, 6})).digging;
  REQUIRE(odd);
  CHECK(odd->count == 3);
  CHECK(odd->median == Approx(0.6));
  CHECK(odd->least == Approx(0.5));
  CHECK(odd->most == Approx(0.9));
  CHECK(calibration(withWork(RecordedWork::digging, {9, 5, 6, 8})).digging->median == Approx(0.7));
}

TEST_CASE("records: a batch of a coat that the lining does not have is left out") {
  core::Project project;
  project.records.batches = {{3, 1, 3, 0.06}};
  CHECK_FALSE(calibration(project).dry_to_wet);
  CHECK_FALSE(calibration(project).in_force);
  project.lining.coats.push_back({0.02, 1, 2, 1, 7});
  CHECK(calibration(project).dry_to_wet);
}

TEST_CASE("records: each kind of work goes to its own rate and to no other") {
  core::Project project;
  project.records.work = {{RecordedWork::digging, 10, 7},   {RecordedWork::stone_bed, 2, 10},
                          {RecordedWork::spreading, 20, 6}, {RecordedWork::mixing, 2, 1.2},
                          {RecordedWork::ramming, 4, 3},    {RecordedWork::ramming, 4, 2}};
  project.works->mixing_person_day_per_m3 = 0.8;
  const auto c = calibration(project);
  CHECK(c.stone_bed->entered == Approx(4.5));  // defaults of the fields, and of the table
  CHECK(c.spreading->entered == Approx(0.26));
  CHECK(c.mixing->entered == Approx(0.8));
  CHECK(c.ramming->entered == Approx(0.5));
  const core::Project in_force = applied(project);
  CHECK(in_force.works->digging_person_day_per_m3 == Approx(0.7));
  CHECK(in_force.works->bed_person_day_per_m3 == Approx(5));
  CHECK(in_force.works->plaster_person_day_per_m2 == Approx(0.3));
  CHECK(in_force.works->mixing_person_day_per_m3 == Approx(0.6));
  REQUIRE(in_force.works->rates.size() == 1);
  CHECK(in_force.works->rates[0].work == "ramming");
  // the table's 0.25 to 0.50 to 0.75 moved by 0.625 / 0.50
  CHECK(in_force.works->rates[0].low == Approx(0.3125));
  CHECK(in_force.works->rates[0].typical == Approx(0.625));
  CHECK(in_force.works->rates[0].high == Approx(0.9375));
  CHECK(rateInForce("ramming", in_force).typical == Approx(0.625));
  CHECK(in_force.lining == project.lining);
  CHECK(in_force.tank == project.tank);
}

TEST_CASE("records: a rate for ramming that was entered gives way to the measured one") {
  core::Project project = withWork(RecordedWork::ramming, {6});
  project.works->rates = {{"carrying.10", 0.1, 0.2, 0.3}, {"ramming", 0.4, 0.5, 0.6}};
  CHECK(calibration(project).ramming->entered == Approx(0.5));
  const core::Project in_force = applied(project);
  const std::vector<core::OwnRate>& rates = in_force.works->rates;
  REQUIRE(rates.size() == 2);
  CHECK(rates[0].work == "carrying.10");
  CHECK(rates[1].typical == Approx(0.6));
}

TEST_CASE("records: a measured rate that happens to be the table's still goes before the district's own") {
  core::Project project = withWork(RecordedWork::spreading, {2.6});
  project.works->rates = {{"plaster", 0.3, 0.4, 0.5}};
  CHECK(calibration(project).spreading->entered == Approx(0.4));
  CHECK(rateInForce("plaster", applied(project)).typical == Approx(0.26));
}

TEST_CASE("records: entered for digging is the table's rate of the soil until one is entered") {
  core::Project project = withWork(RecordedWork::digging, {6});
  project.site.soil = core::Soil::stiff_clay;
  // district rate norms, mid-hill district, FY 2073/74: hard soil 0.8 person-day/m3
  CHECK(calibration(project).digging->entered == Approx(0.8));
  project.works->digging_person_day_per_m3 = 1.1;
  CHECK(calibration(project).digging->entered == Approx(1.1));
}

TEST_CASE("records: not in force, they are shown and change nothing") {
  core::Project project = withWork(RecordedWork::spreading, {2, 3});
  project.records.batches = {{1, 1, 3, 0.06}};
  project.records.in_force = false;
  const auto c = calibration(project);
  CHECK(c.spreading);
  CHECK_FALSE(c.in_force);
  CHECK(inForce(project, c) == project);
  project.records.in_force = true;
  CHECK(applied(project).lining.dry_to_wet == Approx(1.3503).epsilon(1e-4));
  CHECK(applied(project).works->plaster_person_day_per_m2 == Approx(0.25));
}

TEST_CASE("records: a median that the field cannot hold is left out, the others count") {
  core::Project project = withWork(RecordedWork::mixing, {9});
  project.records.batches = {{1, 1, 1, 0.06}};  // 4.05 loose for one placed; the field ends at 2
  const auto c = calibration(project);
  CHECK(c.dry_to_wet->median > 4);
  const core::Project in_force = inForce(project, c);
  CHECK(in_force.lining.dry_to_wet == project.lining.dry_to_wet);
  CHECK(in_force.works->mixing_person_day_per_m3 == Approx(0.9));
}

TEST_CASE("records: without works the mix alone is put in force") {
  core::Project project = withWork(RecordedWork::stone_bed, {40});
  project.records.batches = {{1, 1, 3, 0.06}};
  project.works.reset();
  CHECK(calibration(project).stone_bed->entered == Approx(4.5));
  CHECK(applied(project).lining.dry_to_wet > 1.34);
  CHECK_FALSE(applied(project).works);
}
