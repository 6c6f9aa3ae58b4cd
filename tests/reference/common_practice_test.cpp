// Facts of the trade: common practice, no source. A tank of 5 x 3 x 1.5 m with upright walls and the bill
// people reckon for it.
#include "core/plan.h"

#include <algorithm>
#include <string>

#include <catch2/catch.hpp>

namespace {

core::Project smallTank(double coat_m) {
  core::Project p;
  p.tank.length_m = 5;
  p.tank.width_m = 3;
  p.tank.depth_m = 1.5;
  p.tank.batter = 0;
  p.lining.stone_bed_m = 0.0635;  // 2.5 in
  p.lining.dry_to_wet = 1.30;
  p.lining.cement_loose_kg_m3 = 1440;
  p.lining.coats = {{coat_m, 3, 3, 1, 3}, {coat_m, 2, 2, 1, 4}};
  p.lining.customary = {3, 2, 1, 500};
  return p;
}

core::Plan planned(const core::Project& p) {
  auto plan = core::plan(p);
  REQUIRE(plan);
  return *plan;
}

const core::lining::BillLine& line(const core::Plan& plan, const std::string& id) {
  const auto& lines = plan.quantities.customary->lines;
  const auto it = std::find_if(lines.begin(), lines.end(), [&](const auto& l) { return l.id == id; });
  REQUIRE(it != lines.end());
  return *it;
}

bool raises(const core::Plan& plan, const std::string& code) {
  return std::any_of(plan.findings.begin(), plan.findings.end(),
                     [&](const auto& f) { return f.code == code; });
}

}  // namespace

TEST_CASE("5 x 3 x 1.5 m with upright walls holds 22,500 L on 39 m2 of floor and wall") {
  const core::Plan plan = planned(smallTank(0.06));
  CHECK(plan.tank.brim_volume_m3 == Approx(22.5).epsilon(1e-12));  // common practice, no source
  CHECK(plan.tank.floor_m2 + plan.tank.wall_m2 == Approx(39).epsilon(1e-12));
}

TEST_CASE("a stone bed of 2.5 in on its floor is about 1 m3") {
  const core::Plan plan = planned(smallTank(0.06));
  CHECK(line(plan, "stone").by_area == Approx(0.9525).epsilon(1e-12));  // clear floor times thickness
  CHECK(line(plan, "stone").shell == Approx(1.0).margin(0.1));  // exact: it also reaches under the coats
  CHECK(line(plan, "stone").customary == 1);
}

TEST_CASE("the customary cement contradicts the coats, and the program says by how much") {
  // common practice, no source: 6 cm coats 3:3:1 and 2:2:1, yet 500 kg of cement.
  // By area times thickness at dry-to-wet 1.30: 39 m2 * 0.06 m * 1.30 * (1/7 + 1/5) * 1440 kg/m3 = 1,502 kg
  // (x 3.0).
  struct Row {
    double coat_m, by_area_kg, ratio;
  };
  for (const Row& row : {Row{0.06, 1501.9, 3.0}, Row{0.03, 750.9, 1.5}, Row{0.02, 500.6, 1.0}}) {
    const core::Plan plan = planned(smallTank(row.coat_m));
    const auto& cement = line(plan, "cement");
    CHECK(cement.customary == 500);
    CHECK(cement.by_area == Approx(row.by_area_kg).margin(0.1));
    CHECK(cement.by_area_ratio == Approx(row.ratio).margin(0.005));
    CHECK(cement.shell > cement.by_area);  // the shells turn corners and lie outside the clear face
    CHECK(cement.shell_ratio == Approx(cement.shell / 500));
  }
  CHECK(raises(planned(smallTank(0.06)), "customary_cement_differs"));
  CHECK_FALSE(raises(planned(smallTank(0.02)), "customary_cement_differs"));
}

TEST_CASE("the mixes need equal soil and sand, the customary bill does not") {
  for (const double coat_m : {0.06, 0.03, 0.02}) {
    const core::Plan plan = planned(smallTank(coat_m));
    CHECK(line(plan, "soil").shell == Approx(line(plan, "sand").shell).epsilon(1e-12));
    CHECK(line(plan, "soil").by_area == Approx(line(plan, "sand").by_area).epsilon(1e-12));
    CHECK(plan.quantities.customary->bill_soil_per_sand == Approx(1.5));
    CHECK(plan.quantities.customary->mix_soil_per_sand == Approx(1.0));
    CHECK(raises(plan, "customary_sand_soil_differs"));
  }
}

TEST_CASE("the three answers: each one put back into the project gives the customary cement") {
  const core::Project project = smallTank(0.06);
  const core::lining::BillAnswers answers = *planned(project).quantities.customary->cement;

  CHECK(answers.cement_by_area_kg == Approx(1501.9).margin(0.1));
  CHECK(*answers.thickness_by_area_factor == Approx(500 / 1501.88).epsilon(1e-4));  // 2 cm coats
  CHECK(answers.thickness_by_area_m[0] == Approx(0.02).margin(0.0001));

  core::Project thin = project;
  for (std::size_t k = 0; k < 2; ++k) thin.lining.coats[k].thickness_m = answers.thickness_m[k];
  CHECK(line(planned(thin), "cement").shell == Approx(500).epsilon(1e-9));

  core::Project lean = project;
  lean.lining.coats = answers.mix;
  CHECK(line(planned(lean), "cement").shell == Approx(500).epsilon(1e-9));
  CHECK(lean.lining.coats[0].soil / lean.lining.coats[0].sand ==
        Approx(1));  // the soil-to-sand ratio is left alone

  core::Project lean_by_area = project;
  lean_by_area.lining.coats = answers.mix_by_area;
  CHECK(line(planned(lean_by_area), "cement").by_area == Approx(500).epsilon(1e-9));
}

TEST_CASE("no computed figure bends toward the customary bill") {
  core::Project without = smallTank(0.06);
  without.lining.customary = {};
  const core::Plan plain = planned(without);
  for (const double cement_kg : {1.0, 500.0, 1500.0, 99999.0}) {
    core::Project with = without;
    with.lining.customary = {cement_kg / 200, 7, cement_kg / 150, cement_kg};
    const core::Plan plan = planned(with);
    REQUIRE(plan.quantities.materials.size() == plain.quantities.materials.size());
    for (std::size_t k = 0; k < plan.quantities.materials.size(); ++k) {
      CHECK(plan.quantities.materials[k].net == plain.quantities.materials[k].net);
      CHECK(plan.quantities.materials[k].order == plain.quantities.materials[k].order);
    }
    for (std::size_t k = 0; k < plan.quantities.batches.size(); ++k) {
      CHECK(plan.quantities.batches[k].cement_kg == plain.quantities.batches[k].cement_kg);
      CHECK(plan.quantities.batches[k].count == plain.quantities.batches[k].count);
    }
    CHECK(plan.layers[1].volume_m3 == plain.layers[1].volume_m3);
  }
}

TEST_CASE("defaults of the trade: smallest tank, wet sacks 3 and 4 days, fill within 4 days of coat 2") {
  // common practice, no source
  const core::Project p;
  CHECK(p.practice.smallest_length_m == 5);
  CHECK(p.practice.smallest_width_m == 3);
  CHECK(p.practice.smallest_depth_m == 1.5);
  CHECK(p.lining.coats[0].cure_days == 3);
  CHECK(p.lining.coats[1].cure_days == 4);
  CHECK(p.works->fill_within_days == 4);

  CHECK_FALSE(raises(planned(smallTank(0.06)), "smaller_than_recommended"));
  core::Project smaller = smallTank(0.06);
  smaller.tank.length_m = 4.9;
  CHECK(raises(planned(smaller), "smaller_than_recommended"));
}

TEST_CASE("digging 22.5 m3: about 14 labour-days by practice, 18 by the published norm, both shown") {
  // practice: common practice, no source; norm: 0.8 person-day/m3, district rate norms, mid-hill district, FY
  // 2073/74, item 2-2
  const core::Plan plan = planned(smallTank(0.06));
  const double pit = plan.earthwork.pit_volume_m3;
  CHECK(*plan.works->digging_days_by_practice * 22.5 / pit == Approx(14).margin(0.1));
  CHECK(*plan.works->digging_days_by_norm * 22.5 / pit == Approx(18).margin(1e-9));
  CHECK(raises(plan, "digging_norms_differ"));
}
