// Can a coat be put on in one go: people, batches, time, and the size a crew could do.
#include "core/works/one_go.h"

#include <cmath>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::works::CoatCheck;
using core::works::Labour;

std::vector<CoatCheck> checksWith(const core::Project& project, const std::vector<Labour>* labour = nullptr) {
  const core::geometry::TankGeometry tank(project.tank, project.lining);
  const core::lining::Quantities quantities = core::lining::quantities(tank, project);
  const core::works::Platform none;
  const core::works::LabourInput input{tank, project, quantities, none};
  return coatChecks(input, labour ? *labour : core::works::labour(input));
}

std::vector<Labour> coatDays(double first, double second) {
  const auto line = [](const std::string& task, double days) {
    return Labour{task, days, days, days, "mason_and_helpers", 0, 1, "m2", days, "user"};
  };
  return {line("coat_1", first), line("coat_2", second)};
}

core::Project largeCrew() {
  core::Project project;
  project.works->plasterers = 100;
  project.works->masons = 100;
  return project;
}

/// The project on the tank of a size found.
core::Project shrunk(core::Project project, double factor) {
  project.tank.length_m *= factor;
  project.tank.width_m *= factor;
  project.tank.diameter_m *= factor;
  for (auto& corner : project.tank.outline_m) corner *= factor;
  return project;
}

/// The size found fits the crew, one a little larger does not, and it holds what it says.
void checkSize(const core::Project& project, std::size_t coat) {
  const CoatCheck check = checksWith(project).at(coat);
  REQUIRE_FALSE(check.is_enough());
  REQUIRE(check.size);
  const double factor = check.size->plan_factor;
  CHECK(factor < 1);
  const core::Project fits = shrunk(project, factor);
  CHECK(core::geometry::check(fits.tank, fits.lining).empty());
  CHECK(checksWith(fits).at(coat).is_enough());
  CHECK_FALSE(checksWith(shrunk(project, factor * (1 + 1e-5))).at(coat).is_enough());
  const core::geometry::TankGeometry tank(fits.tank, fits.lining);
  CHECK(check.size->length_m == Approx(tank.outline().size(0).x()));
  CHECK(check.size->width_m == Approx(tank.outline().size(0).y()));
  CHECK(check.size->full_volume_m3 == Approx(tank.volumeToLevel(tank.depth() - project.tank.freeboard_m)));
}

}  // namespace

TEST_CASE("one go: people needed are the person-days over the hours there are") {
  core::Project project = largeCrew();
  const std::vector<Labour> labour = coatDays(20, 12.25);
  const std::vector<CoatCheck> day = checksWith(project, &labour);
  REQUIRE(day.size() == 2);
  CHECK(day[0].needed == 20);  // 20 person-days of 8 h in 8 h
  CHECK(day[1].needed == 13);
  project.works->coat_hours = 10;
  CHECK(checksWith(project, &labour)[0].needed == 16);  // 160 h / 10 h
  CHECK(checksWith(project, &labour)[1].needed == 10);  // 9.8
  project.works->hours_per_day = 6;
  CHECK(checksWith(project, &labour)[0].needed == 12);  // 120 h / 10 h
  project.works->hours_per_day = 7.5;
  project.works->coat_hours = 1;
  const std::vector<Labour> whole = coatDays(33.2, 1);
  CHECK(checksWith(project, &whole)[0].needed == 249);  // 33.2 * 7.5, a little more in binary
}

TEST_CASE("one go: masons are 0.074 of every 0.260 people on a coat") {
  // Central Public Works Department, India, as quoted: mason 0.074, helper 0.093, water carrier 0.093
  core::Project project = largeCrew();
  const std::vector<Labour> labour = coatDays(20, 3.5);
  CHECK(checksWith(project, &labour)[0].masons_needed == 6);  // 20 * 0.2846 = 5.7
  CHECK(checksWith(project, &labour)[1].masons_needed == 2);  // 4 * 0.2846 = 1.1
}

TEST_CASE("one go: just enough people and masons are enough, one less of either is not") {
  core::Project project = largeCrew();
  const std::vector<Labour> labour = coatDays(20, 1);
  project.works->plasterers = 20;
  project.works->masons = 6;
  CHECK(checksWith(project, &labour)[0].is_enough());
  CHECK_FALSE(checksWith(project, &labour)[0].size);
  project.works->plasterers = 19;
  CHECK_FALSE(checksWith(project, &labour)[0].is_enough());
  project.works->plasterers = 20;
  project.works->masons = 5;
  CHECK_FALSE(checksWith(project, &labour)[0].is_enough());
}

TEST_CASE("one go: people wished for one coat count for that coat alone") {
  core::Project project;
  project.works->wishes = {{"coat_2", {}, 30}, {"coat_1", core::Works{}.start_date, {}}};
  const std::vector<CoatCheck> checks = checksWith(project);
  CHECK(checks[0].people == project.works->plasterers);
  CHECK(checks[1].people == 30);
  project.works->wishes[0].people = 2;
  CHECK(checksWith(project)[1].masons == 2);  // no more masons than people
}

TEST_CASE("one go: batches, mixing places and materials by hand") {
  core::Project project = largeCrew();
  project.lining.waste_percent = 0;
  project.lining.unevenness_percent = 0;
  const core::geometry::TankGeometry tank(project.tank, project.lining);
  const core::lining::CoatQuantities q = core::lining::quantities(tank, project).coats[0];
  const CoatCheck check = checksWith(project)[0];
  // 3 : 3 : 1 with a bag of 50 kg at 1440 kg/m3: 34.72 L * 7 = 243.06 L loose, over 1.30 = 186.97 L placed
  CHECK(check.batches == static_cast<int>(std::ceil(q.placed_m3 / 0.186966)));
  CHECK(check.bags == Approx(q.placed_m3 / 0.186966).epsilon(1e-5));
  CHECK(check.batches_per_hour_needed == Approx(check.batches / 8.0));
  CHECK(check.batches_per_hour_possible == Approx(6));  // 2 places, 20 minutes each
  CHECK(check.mixing_places_needed == static_cast<int>(std::ceil(check.batches / 8.0 / 3)));
  CHECK(check.water_l == Approx(300 * q.placed_m3));
  CHECK(check.sacks == static_cast<int>(std::ceil(q.face_m2 * 1.1)));
  CHECK(check.hours == 8);
  CHECK(check.placing_minutes == 60);
}

TEST_CASE("one go: the plaster that is wasted and fills hollows takes water and cement too") {
  const core::Project project = largeCrew();
  const core::geometry::TankGeometry tank(project.tank, project.lining);
  const core::lining::CoatQuantities q = core::lining::quantities(tank, project).coats[0];
  const CoatCheck check = checksWith(project)[0];
  CHECK(check.water_l == Approx(300 * q.shell_m3 * 1.15 * 1.05));
  CHECK(check.bags == Approx(q.shell_m3 * 1.15 * 1.05 / 0.186966).epsilon(1e-5));
}

TEST_CASE("one go: 12 mixing places at 60 minutes give the 12 batches an hour that are asked, not 13") {
  core::Project project = largeCrew();
  const int batches = checksWith(project)[0].batches;
  project.works->minutes_per_batch = 60;
  project.works->coat_hours = batches / 12.0;
  CHECK(checksWith(project)[0].mixing_places_needed == 12);
  project.works->mixing_places = 12;
  CHECK(checksWith(project)[0].batches_per_hour_possible == Approx(12));
}

TEST_CASE("one go: a batch of 3.116 m2 keeps two on the wall for 194 minutes") {
  core::Project project = largeCrew();
  const core::geometry::TankGeometry tank(project.tank, project.lining);
  const core::lining::CoatQuantities q = core::lining::quantities(tank, project).coats[0];
  // so many people that spreading takes 2 of them
  const double share = 0.26 * q.face_m2 / (0.26 * q.face_m2 + 0.75 * q.placed_m3);
  project.works->plasterers = 10;
  // 186.97 L at 60 mm; 0.26 person-day/m2 of 480 minutes
  const double alone_minutes = 3.1161 * 0.26 * 480;
  CHECK(alone_minutes / 2 == Approx(194.4).epsilon(1e-3));
  const CoatCheck check = checksWith(project)[0];
  CHECK(check.minutes_to_place_batch == Approx(alone_minutes / (10 * share)).epsilon(1e-4));
  CHECK(check.minutes_to_place_half_batch == Approx(check.minutes_to_place_batch / 2));
  project.works->plasterers = 20;
  CHECK(checksWith(project)[0].minutes_to_place_batch == Approx(check.minutes_to_place_batch / 2));
  CHECK(share < 0.9);  // some of them do mix
}

TEST_CASE("one go: the size a crew too small could do, for every shape") {
  core::Project project;
  project.works->plasterers = 8;
  checkSize(project, 0);
  checkSize(project, 1);
  project.tank.measured_at = core::MeasuredAt::rim;
  project.tank.corner_radius_m = 0.3;
  checkSize(project, 0);
  project.tank = core::Tank{};
  project.tank.shape = core::Shape::round;
  checkSize(project, 1);
  project.tank.shape = core::Shape::polygon;
  project.tank.outline_m = {{0, 0}, {6, 0}, {5, 4}, {1, 4}};
  checkSize(project, 0);
}

TEST_CASE("one go: too few masons ask for a smaller tank too") {
  core::Project project = largeCrew();
  project.works->masons = 2;
  checkSize(project, 0);
  CHECK(checksWith(project)[0].needed <= 100);
}

TEST_CASE("one go: where no tank is small enough for the crew there is no size") {
  core::Project project;
  project.works->plasterers = 1;
  const CoatCheck alone = checksWith(project)[0];
  CHECK_FALSE(alone.is_enough());
  CHECK_FALSE(alone.size);
  project = largeCrew();
  project.works->masons = 0;
  CHECK_FALSE(checksWith(project)[0].size);
}
