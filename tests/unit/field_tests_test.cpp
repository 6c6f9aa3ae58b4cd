// What the field notes say of the site, and the project that takes it up.
#include "core/site/field_tests.h"

#include "core/exchange/plan_json.h"
#include "core/exchange/project_file.h"
#include "core/plan.h"

#include <algorithm>
#include <optional>
#include <string>

#include <catch2/catch.hpp>

namespace {

using core::BallTest;
using core::FieldNotes;
using core::Grit;
using core::GroundKind;
using core::PitLayer;
using core::Project;
using core::Soil;
using core::site::adopted;
using core::site::FieldTests;
using core::site::fieldTests;
using core::site::soilOf;
using core::site::Texture;

constexpr double kPit_m = 1.7;

FieldTests testsOf(const FieldNotes& notes) {
  return fieldTests(notes, kPit_m);
}

/// A pit in three layers, the middle one of `soil`.
FieldNotes pitWith(std::optional<Soil> soil) {
  FieldNotes notes;
  notes.pit_layers = {{"A", 0, 0.4, Soil::firm_loam, false},
                      {"A", 0.4, 1.2, soil, false},
                      {"A", 1.2, 2, Soil::stiff_clay, true}};
  return notes;
}

bool raises(const Project& project, const std::string& code) {
  const auto plan = core::plan(project);
  REQUIRE(plan.has_value());
  return std::any_of(plan->findings.begin(), plan->findings.end(),
                     [&](const core::Finding& f) { return f.code == code; });
}

}  // namespace

TEST_CASE("field notes: layers of jars are shares of all layers, and the middle jar counts") {
  FieldNotes notes;
  notes.jars = {{"north", 40, 30, 30}, {"south", 60, 20, 20}, {"", 0, 0, 0}, {"east", 10, 30, 10}};
  const FieldTests tests = testsOf(notes);
  REQUIRE(tests.jars.size() == 3);  // the jar that was not read is left out
  CHECK(tests.jars[0].shares.sand_percent == Approx(40));
  CHECK(tests.jars[0].texture == Texture::clay_loam);  // 40, 30, 30
  CHECK(tests.jars[2].row == 3);
  CHECK(tests.jars[2].shares.silt_percent == Approx(60));
  CHECK(tests.clay_percent == Approx(20));  // of 20, 20, 30
  notes.jars = {{"", 40, 30, 30}, {"", 60, 20, 20}};
  CHECK(testsOf(notes).clay_percent == Approx(25));
  CHECK_FALSE(testsOf({}).clay_percent.has_value());
  CHECK(testsOf({}).isEmpty());
}

TEST_CASE("field notes: the weakest sample counts, and clay says nothing of its stiffness") {
  CHECK(soilOf(Texture::sandy_loam) == Soil::sandy);
  CHECK(soilOf(Texture::silt_loam) == Soil::firm_loam);
  CHECK_FALSE(soilOf(Texture::clay_loam).has_value());
  FieldNotes notes;
  notes.feel = {{"", BallTest::holds, 15, Grit::even}, {"", BallTest::holds, 15, Grit::gritty}, {}};
  CHECK(testsOf(notes).feel.size() == 2);
  CHECK(testsOf(notes).texture_soil == Soil::sandy);
  notes.feel = {{"", BallTest::holds, 15, Grit::even}, {"", BallTest::holds, 70, Grit::even}};
  CHECK_FALSE(testsOf(notes).texture_soil.has_value());  // loam, and clay of which nobody knows more
  CHECK(testsOf(notes).has_clay_sample);
  notes.feel.push_back({"", BallTest::falls_apart, 0, Grit::even});
  CHECK(testsOf(notes).texture_soil == Soil::sandy);
}

TEST_CASE("field notes: jars tell the texture only where no ball was tried") {
  FieldNotes notes;
  notes.jars = {{"", 95, 3, 2}};
  CHECK(testsOf(notes).texture_soil == Soil::sandy);
  notes.feel = {{"", BallTest::holds, 15, Grit::even}};
  CHECK(testsOf(notes).texture_soil == Soil::firm_loam);
}

TEST_CASE("field notes: the weakest layer above the floor of the pit, and the least depth of water") {
  CHECK(testsOf(pitWith(Soil::sandy)).soil == Soil::sandy);
  CHECK(testsOf(pitWith(Soil::rock)).soil == Soil::firm_loam);
  CHECK(testsOf(pitWith(Soil::soft_wet)).soil == Soil::soft_wet);
  CHECK(testsOf(pitWith(Soil::sandy)).water_depth_m == 1.2);
  CHECK(testsOf(pitWith(Soil::sandy)).pits->down_to_m == 2);
  FieldNotes notes = pitWith(Soil::firm_loam);
  notes.pit_layers.push_back({"A", kPit_m, 3, Soil::loose_fill, false});  // begins where the pit ends
  CHECK(testsOf(notes).soil == Soil::firm_loam);
  notes.pit_layers.back().from_m = kPit_m - 0.01;
  CHECK(testsOf(notes).soil == Soil::loose_fill);
}

TEST_CASE("field notes: a layer whose soil is not known never counts as safe") {
  FieldNotes notes = pitWith(std::nullopt);
  notes.feel = {{"", BallTest::holds, 15, Grit::even}};
  const FieldTests tests = testsOf(notes);
  CHECK(tests.pits->unknown == 1);
  CHECK(tests.pits->weakest == Soil::firm_loam);
  CHECK_FALSE(tests.soil.has_value());
}

TEST_CASE("field notes: the order from the weakest soil to the strongest") {
  // own proposal, in this order
  const std::vector<Soil> order{Soil::loose_fill, Soil::soft_wet,   Soil::sandy,
                                Soil::firm_loam,  Soil::stiff_clay, Soil::rock};
  for (std::size_t k = 0; k < order.size(); ++k)
    CHECK(core::site::strengthOrder(order[k]) == static_cast<int>(k));
}

TEST_CASE("field notes: the fall is all drops over all runs, not the mean of the settings") {
  FieldNotes notes;
  notes.slope = {{6, 0.9}, {2, -0.1}, {0, 0.5}, {4, 0.4}};
  const FieldTests tests = testsOf(notes);
  REQUIRE(tests.slope.size() == 3);  // a setting without run is left out
  CHECK(tests.slope[0].fall_percent == Approx(15));
  CHECK(tests.slope[1].fall_percent == Approx(-5));
  CHECK(tests.run_m == Approx(12));
  CHECK(tests.fall_percent == Approx(10));  // 1.2 m over 12 m
}

TEST_CASE("field notes: adopted, they stand in place of what was entered, and nothing else changes") {
  Project before;
  before.site.soil = Soil::firm_loam;
  before.site.clay_percent = 40;
  before.site.ground.downhill_azimuth_deg = 135;
  CHECK(adopted(before) == before);  // nothing noted, nothing changed
  before.notes = pitWith(Soil::sandy);
  before.notes.jars = {{"", 50, 32, 18}};
  before.notes.slope = {{10, 1.2}};
  const Project after = adopted(before);
  Project expected = before;
  expected.site.soil = Soil::sandy;
  expected.site.clay_percent = 18;
  expected.site.water_table_depth_m = 1.2;
  expected.site.ground.kind = GroundKind::slope;
  expected.site.ground.fall_percent = 12;
  CHECK(after.site.ground.downhill_azimuth_deg == 135);
  CHECK(after.site.clay_percent == Approx(18));
  CHECK(after.site.ground.fall_percent == Approx(12));
  expected.site.clay_percent = after.site.clay_percent;
  expected.site.ground.fall_percent = after.site.ground.fall_percent;
  CHECK(after == expected);
  CHECK(core::plan(after).has_value());
  CHECK(adopted(after) == after);
}

TEST_CASE("field notes: adopted, clay is left as entered, surveyed ground too, and a line walked uphill") {
  Project before;
  before.site.soil = Soil::stiff_clay;
  before.notes.feel = {{"", BallTest::holds, 70, Grit::even}};
  CHECK(adopted(before) == before);
  before.notes.slope = {{10, -1.2}};
  CHECK(adopted(before) == before);
  before.notes.slope = {{10, 1.2}};
  before.site.ground.kind = GroundKind::spot_heights;
  before.site.ground.points_m = {{-30, -30, 0}, {30, -30, 0}, {30, 30, 4}};
  CHECK(adopted(before) == before);
  before.site.ground = {};
  before.notes.slope = {{1, 1.01}};  // 101 %, more than the field takes
  CHECK(adopted(before) == before);
  before.notes.slope = {{10, 0}};
  before.site.ground = {GroundKind::slope, 7, 90, {}};
  CHECK(adopted(before).site.ground.kind == GroundKind::level);
}

TEST_CASE("field notes: a layer must end below its top") {
  Project project;
  project.notes.pit_layers = {{"A", 0, 0.5, {}, false}, {"A", 0.5, 0.5, {}, false}};
  const core::Problems problems = core::check(project);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].code == "layer_not_below_its_top");
  CHECK(problems[0].path == "notes.pit_layers[1].to_m");
  CHECK(problems[0].value == "0.5");
  CHECK(problems[0].least == 0.5);
  CHECK(problems[0].most == 10);
  project.notes.pit_layers[1].to_m = 0.51;
  CHECK(core::check(project).empty());
}

TEST_CASE("field notes: written only when there are some, and read back as they were") {
  using core::exchange::parseProject;
  using core::exchange::projectText;
  Project project;
  const std::string without = projectText(project);
  CHECK(without.find("\"notes\"") == std::string::npos);
  CHECK(core::exchange::planText(*core::plan(project)).find("field_tests") == std::string::npos);
  project.notes = pitWith(std::nullopt);
  project.notes.jars = {{"Öl", 40, 30, 12.5}};
  project.notes.feel = {{"", {}, 0, Grit::even}, {"x", BallTest::falls_apart, 35, Grit::smooth}};
  project.notes.slope = {{4.5, -0.12}};
  const auto read = parseProject(projectText(project));
  REQUIRE(read.has_value());
  CHECK(read->notes.empty());
  CHECK(read->project == project);
  CHECK(core::exchange::planText(*core::plan(project)).find("\"field_tests\"") != std::string::npos);
  project.notes = {};
  CHECK(projectText(project) == without);
  project.kept = {{"/notes/by", "\"officer\""}};  // a later version's key keeps the part
  CHECK(parseProject(projectText(project))->project == project);
}

TEST_CASE("field notes: a test pit that shows worse than what is entered raises a caution") {
  Project project;
  project.site.soil = Soil::firm_loam;
  project.site.water_table_depth_m = 1.2;
  project.notes = pitWith(Soil::firm_loam);
  CHECK_FALSE(raises(project, "site_soil_weaker_in_pit"));
  CHECK_FALSE(raises(project, "site_water_higher_in_pit"));  // water at 1.2 m as entered
  project.notes = pitWith(Soil::sandy);
  project.site.water_table_depth_m = 1.21;
  CHECK(raises(project, "site_soil_weaker_in_pit"));
  CHECK(raises(project, "site_water_higher_in_pit"));
  project.notes.pit_layers[0].soil.reset();  // what is known is weaker all the same
  CHECK(raises(project, "site_soil_weaker_in_pit"));
  CHECK_FALSE(raises(adopted(project), "site_water_higher_in_pit"));
}
