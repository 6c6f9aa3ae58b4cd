#include "core/base/problem.h"
#include "core/base/source.h"
#include "core/exchange/project_file.h"
#include "core/geometry/scene.h"
#include "core/plan.h"
#include "core/project/fields.h"
#include "tests/support/water_project.h"
#include "ui/text/words.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <stdexcept>
#include <string>

#include <catch2/catch.hpp>

namespace words = ui::words;

namespace {

const ui::Formatter kMetric{QLocale("en_GB"), ui::UnitSystem::metric};
const ui::Formatter kFeet{QLocale("en_GB"), ui::UnitSystem::feet_inches};

QString spaced(QString text) {
  return text.replace(QChar::Nbsp, u' ');
}

bool isSentence(const QString& text) {
  return text.size() > 10 && text[0].isUpper() && (text.endsWith(u'.') || text.contains(". "));
}

core::Project projectWithEverything() {
  core::Project project;
  project.lining.cove_radius_m = 0.1;
  project.lining.rim_width_m = 0.3;
  project.lining.rim_thickness_m = 0.05;
  project.lining.customary = {3, 2, 1, 500};
  return project;
}

core::Plan planned(const core::Project& project) {
  const auto plan = core::plan(project);
  REQUIRE(plan.has_value());
  return *plan;
}

std::vector<core::Project> variants() {
  std::vector<core::Project> all;
  for (const core::Shape shape : {core::Shape::rectangle, core::Shape::round, core::Shape::polygon}) {
    for (const double radius : {0.0, 0.4}) {
      core::Project project = projectWithEverything();
      project.tank.shape = shape;
      project.tank.corner_radius_m = shape == core::Shape::round ? 0 : radius;
      all.push_back(project);
    }
  }
  return all;
}

/// Projects that raise every finding between them.
std::vector<core::Project> troubledProjects() {
  core::Project none = projectWithEverything();
  none.works.reset();
  core::Project deep = projectWithEverything();
  deep.tank.depth_m = 2.6;
  deep.site.soil = core::Soil::firm_loam;
  deep.site.clay_percent = 60;
  deep.works->plasterers = 1;
  deep.works->fill_within_days = 2;
  deep.site.ground.kind = core::GroundKind::slope;
  deep.kept = {{"/colour", "1"}};
  core::Project small = projectWithEverything();
  small.tank.length_m = 2;
  small.tank.width_m = 2;
  small.site.clay_percent = 15;
  core::Project poor = small;
  poor.site.clay_percent = 5;
  return {none, deep, small, poor};
}

/// Projects that raise every finding of site and safety between them.
std::vector<core::Project> troubledSites() {
  core::Project fill = projectWithEverything();
  fill.tank.depth_m = 2;
  fill.site.soil = core::Soil::loose_fill;
  fill.site.clay_percent = 40;
  fill.site.rock_floor = true;
  fill.site.ground.kind = core::GroundKind::slope;
  fill.site.ground.fall_percent = 60;
  fill.site.edge_distance_m = 2;
  fill.site.edge_height_m = 3;
  fill.site.water_table_depth_m = 0;
  fill.site.house_downhill_m = 50;
  fill.site.toddlers_within_20_m = true;
  fill.water = support::waterProject().water;
  fill.water->roof.area_m2 = 20;
  fill.water->climate.months[0].t_min_c = -5;
  core::Project wet = fill;
  wet.site.soil = core::Soil::soft_wet;
  wet.site.ground.fall_percent = 30;
  wet.site.edge_distance_m = 0.2;
  core::Project loam = fill;
  loam.site.soil = core::Soil::firm_loam;
  loam.site.water_table_depth_m = 3;
  loam.notes.pit_layers = {{"upper", 0, 0.8, core::Soil::sandy, true}};
  loam.tank.depth_m = 2.4;
  std::vector<core::Project> all{fill, wet, loam};
  for (int cm = 0; cm < 600; cm += 2) {  // somewhere between lifted and held
    loam.site.water_table_depth_m = cm / 100.0;
    all.push_back(loam);
  }
  return all;
}

bool isOfGround(std::string_view code) {
  return code.starts_with("site_survey_") || code.starts_with("site_slip_") ||
         code.starts_with("site_spoil_") || code == "site_fill_lacking" ||
         code.ends_with("_face_too_steep") || code == "site_platform_impossible" ||
         code == "site_tank_on_fill";
}

bool isOfWorks(std::string_view code) {
  return code.starts_with("works_") || code.starts_with("records_");
}

bool isOfMoney(std::string_view code) {
  return code.starts_with("cost_") || code.starts_with("option_");
}

core::Problem problem(std::string code, std::string path) {
  core::Problem p;
  p.code = std::move(code);
  p.path = std::move(path);
  return p;
}

}  // namespace

TEST_CASE("every field has its own label, help and tip") {
  std::set<QString> helps;
  for (const core::Field& field : core::fields()) {
    INFO(field.id);
    CHECK_FALSE(words::fieldLabel(field.id).isEmpty());
    const QString help = words::fieldHelp(field.id);
    CHECK(isSentence(help));
    CHECK(helps.insert(help).second);
    CHECK(words::fieldTip(field, kMetric).contains(help));
  }
}

TEST_CASE("sizes of the inside are called clear in their labels") {
  for (const char* id :
       {"tank.length_m", "tank.width_m", "tank.diameter_m", "tank.depth_m", "tank.corner_radius_m"}) {
    CHECK(words::fieldLabel(id).contains("clear", Qt::CaseInsensitive));
  }
  for (const char* id : {"pit_length", "pit_width", "pit_diameter", "pit_depth"}) {
    CHECK(words::dimensionName(id).contains("pit"));
  }
}

TEST_CASE("the tip of a number states its range and the source of its default") {
  const QString tip = spaced(words::fieldTip(core::field("lining.cement_loose_kg_m3"), kMetric));
  CHECK(tip.contains("1,000 kg/m³ to 1,700 kg/m³"));
  CHECK(tip.contains("(published)"));
  CHECK(words::fieldTip(core::field("lining.stone_bed_m"), kMetric).contains("common practice, no source"));
}

TEST_CASE("a range shown to the reader can be typed and lies within the true range") {
  for (const core::Field& field : core::fields()) {
    if (field.kind != core::FieldKind::number) continue;
    for (const ui::Formatter& format : {kMetric, kFeet}) {
      const QStringList ends = words::fieldRange(field, format).split(" to ");
      INFO(field.id << " " << words::fieldRange(field, format).toStdString());
      REQUIRE(ends.size() == 2);
      CHECK(format.parse(ends[0], field.unit).value() >= field.least - 1e-9 * (1 + std::abs(field.least)));
      CHECK(format.parse(ends[1], field.unit).value() <= field.most + 1e-9 * (1 + std::abs(field.most)));
    }
  }
}

TEST_CASE("every choice has a label") {
  for (const core::Field& field : core::fields()) {
    for (const std::string_view token : field.choices) {
      INFO(field.id << " " << token);
      CHECK_FALSE(words::choiceLabel(field.id, token).isEmpty());
    }
  }
}

TEST_CASE("everything a plan can name has a name") {
  for (const core::Project& project : variants()) {
    const core::Plan plan = planned(project);
    for (const auto& layer : plan.layers) CHECK_FALSE(words::layerName(layer.id).isEmpty());
    for (const auto& material : plan.quantities.materials) {
      CHECK_FALSE(words::materialName(material.id).isEmpty());
      CHECK_FALSE(words::amount(material.order, material.unit, kMetric).isEmpty());
    }
    for (const auto& line : plan.quantities.customary->lines)
      CHECK_FALSE(words::materialName(line.id).isEmpty());
    for (const auto& task : plan.works->schedule) CHECK_FALSE(words::taskName(task.id).isEmpty());
    for (const auto& labour : plan.works->labour) {
      CHECK_FALSE(words::taskName(labour.task).isEmpty());
      CHECK_FALSE(words::skillName(labour.skill).isEmpty());
    }
    for (const auto& peg : plan.setting_out.pegs) CHECK_FALSE(words::pegKindName(peg.kind).isEmpty());
    for (const auto& tie : plan.setting_out.ties) CHECK_FALSE(words::tieKindName(tie.kind).isEmpty());
    for (const auto& level : plan.setting_out.levels) CHECK_FALSE(words::levelName(level.id).isEmpty());
    core::geometry::SceneOptions options;
    options.water_level_m = 1;
    const auto scene = core::geometry::scene(plan.geometry, options);
    for (const auto& part : scene.parts) CHECK_FALSE(words::layerName(part.id).isEmpty());
    for (const auto& dimension : scene.dimensions) CHECK_FALSE(words::dimensionName(dimension.id).isEmpty());
  }
}

TEST_CASE("every source is cited with how well it is founded") {
  for (const core::Source& source : core::sources()) {
    INFO(source.key);
    const QString text = words::sourceText(source.key);
    CHECK_FALSE(text.isEmpty());
    if (source.tag == core::Tag::pub) CHECK(text.endsWith("(published)"));
  }
}

TEST_CASE("every problem code makes a sentence with place, value and allowed range") {
  for (const std::string_view code : core::problemCodes()) {
    if (code == "cannot_read" || code == "cannot_write" || code == "csv_days_missing") continue;
    core::Problem p = problem(std::string(code), "tank.depth_m");
    p.value = "9";
    p.least = 0.3;
    p.most = 4;
    p.unit = core::Unit::metre;
    const QString text = spaced(words::problemText(p, kMetric));
    INFO(text.toStdString());
    CHECK(isSentence(text));
    CHECK(text.startsWith("Clear depth, floor to rim (tank.depth_m) "));
    CHECK(text.endsWith(": found 9; allowed 0.30 m to 4.00 m."));
  }
}

TEST_CASE("a file that cannot be read or written is told with its name and the system's reason") {
  core::Problem p = problem("cannot_read", "tank");
  p.value = "No such file or directory";
  CHECK(words::problemText(p, kMetric) == "tank cannot be read: No such file or directory.");
  p.code = "cannot_write";
  CHECK(words::problemText(p, kMetric) ==
        "tank cannot be written; what was there before is untouched: No such file or directory.");
}

TEST_CASE("what is wrong with a design on one line is told of the line, not of a project file") {
  core::Problem p = problem("short_form_version", "");
  p.value = "TW9";
  p.allowed = "TW1";
  CHECK(words::problemText(p, kMetric) ==
        "The design on one line does not begin with a mark that this program knows: found TW9; allowed TW1.");
  p = problem("short_form_token", "");
  p.value = "Q7";
  CHECK(words::problemText(p, kMetric) ==
        "The design on one line holds a part that this program does not know; compare it sign by sign: found "
        "Q7.");
  p = problem("short_form_check", "");
  CHECK(words::problemText(p, kMetric) ==
        "The design on one line was not copied as it stands, for its last four signs do not fit the rest; "
        "compare "
        "it sign by sign.");
}

TEST_CASE("a value out of range is told with its label, path and range") {
  core::Problem p = problem("out_of_range", "tank.depth_m");
  p.value = "9";
  p.least = 0.3;
  p.most = 4;
  p.unit = core::Unit::metre;
  CHECK(spaced(words::problemText(p, kMetric)) ==
        "Clear depth, floor to rim (tank.depth_m) is outside the allowed range: found 9; allowed 0.30 m to "
        "4.00 m.");
  CHECK(spaced(words::problemText(p, kFeet)).contains("found 9 in the file, 29' 6 1/4\""));
}

TEST_CASE("a problem in a row names the coat, bed, month or entry") {
  CHECK(words::placeText("lining.coats[1].soil", kMetric) == "Coat 2: Soil (lining.coats[1].soil)");
  CHECK(words::placeText("lining.coats[0]", kMetric) == "Coat 1 (lining.coats[0])");
  CHECK(words::placeText("tank.outline_m[3]", kMetric) == "Clear outline, entry 4 (tank.outline_m[3])");
  CHECK(words::placeText("site.ground.points_m[7][2]", kMetric) ==
        "Spot height, row 8 (site.ground.points_m[7][2])");
  CHECK(words::placeText("water.beds[1].plant_month", kMetric) ==
        "Bed 2: Planted, month (water.beds[1].plant_month)");
  CHECK(words::placeText("water.climate.months[3].rain_mm", kMetric) ==
        "Climate of April: Rain (water.climate.months[3].rain_mm)");
  CHECK(words::placeText("water.source.months[11].flow_l_per_min", kMetric) ==
        "Source in December: Flow (water.source.months[11].flow_l_per_min)");
  CHECK(words::placeText("water.source.months[12]", kMetric) ==
        "Months of the source, entry 13 (water.source.months[12])");
  CHECK(words::placeText("water.climate.daily[16][2]", kMetric) ==
        "Daily record, entry 17 (water.climate.daily[16][2])");
  CHECK(words::placeText("delivery.source.route[2].over_rim_m", kMetric) ==
        "Source line, point 3: Height over the rim (delivery.source.route[2].over_rim_m)");
  CHECK(words::placeText("delivery.field.route[0]", kMetric) ==
        "Field line, point 1 (delivery.field.route[0])");
  CHECK(words::placeText("works.wishes[0].not_before", kMetric) ==
        "Wish 1: Not before (works.wishes[0].not_before)");
  CHECK(words::placeText("prices.items[3]", kMetric) == "Price list, line 4 (prices.items[3])");
  CHECK(words::placeText("no.such[x].thing[", kMetric) == "no.such[x].thing[");
  CHECK(words::placeText("", kMetric) == "The project file");
}

TEST_CASE("a problem in an option names the option and the entry that it changes") {
  CHECK(words::placeText("options[0].changes.tank.depth_m", kMetric) ==
        "Option B: Clear depth, floor to rim (options[0].changes.tank.depth_m)");
  CHECK(words::placeText("options[1].changes.lining.coats[1].soil", kMetric) ==
        "Option C: Coat 2: Soil (options[1].changes.lining.coats[1].soil)");
  CHECK(words::placeText("options[1].changes.tank.colour", kMetric) ==
        "Option C (options[1].changes.tank.colour)");
  CHECK(words::placeText("options[0].name", kMetric) == "Option B: Name (options[0].name)");
  CHECK(words::placeText("options[0].changes", kMetric) == "Option B: Changes (options[0].changes)");
  CHECK(words::placeText("options[0]", kMetric) == "Option B (options[0])");
  CHECK(words::placeText("options", kMetric) == "Options (options)");
  CHECK(words::placeText("options[x].name", kMetric) == "options[x].name");
  core::Problem p = problem("out_of_range", "options[0].changes.tank.depth_m");
  p.value = "9";
  p.least = 0.3;
  p.most = 4;
  p.unit = core::Unit::metre;
  CHECK(spaced(words::problemText(p, kMetric)).endsWith("found 9; allowed 0.30 m to 4.00 m."));
}

TEST_CASE("every list of rows has a name, and so has each of its rows") {
  for (const core::List& list : core::lists()) {
    INFO(list.id);
    const std::string id(list.id);
    CHECK(words::placeText(id, kMetric) != QString::fromStdString(id));
    CHECK(words::placeText(id + "[0]", kMetric) != QString::fromStdString(id + "[0]"));
  }
}

TEST_CASE("choices are listed when a choice is not known") {
  const auto read = core::exchange::parseProject(
      R"({"format":"tankwright-project","version":1,"site":{"ground":{"kind":"level"}},"tank":{"shape":"star"},"lining":{}})");
  REQUIRE_FALSE(read.has_value());
  QStringList texts;
  for (const core::Problem& p : read.error()) texts << words::problemText(p, kMetric);
  CHECK(texts.filter("Shape (tank.shape)").filter("rectangle, round or polygon").size() == 1);
}

TEST_CASE("every finding code makes a sentence from a real plan, in both unit systems") {
  std::set<std::string> seen;
  std::vector<core::Project> projects = troubledProjects();
  std::ranges::copy(troubledSites(), std::back_inserter(projects));
  for (const core::Project& project : projects) {
    for (const core::Finding& finding : planned(project).findings) {
      INFO(finding.code);
      seen.insert(finding.code);
      for (const ui::Formatter& format : {kMetric, kFeet}) {
        const QString text = words::findingText(finding, format);
        INFO(text.toStdString());
        CHECK(isSentence(text));
        CHECK_FALSE(
            text.contains("%"
                          "1"));
        CHECK_FALSE(text.contains("nan"));
      }
      CHECK_FALSE(words::severityName(finding.severity).isEmpty());
      CHECK_FALSE(words::sourceText(finding.source).isEmpty());
    }
  }
  for (const std::string_view code : core::findingCodes()) {
    if (code.starts_with("water_")) continue;     // text_water_test.cpp
    if (code.starts_with("delivery_")) continue;  // text_delivery_test.cpp
    if (isOfWorks(code)) continue;                // text_works_test.cpp
    if (isOfMoney(code)) continue;                // text_money_test.cpp
    if (isOfGround(code)) continue;               // text_ground_test.cpp
    INFO(code);
    CHECK(seen.contains(std::string(code)));
  }
}

TEST_CASE("an id without words is a fault of the program") {
  CHECK_THROWS_AS(words::fieldLabel("tank.colour"), std::logic_error);
  CHECK_THROWS_AS(words::fieldHelp("tank.colour"), std::logic_error);
  CHECK_THROWS_AS(words::choiceLabel("tank.shape", "star"), std::logic_error);
  CHECK_THROWS_AS(words::layerName("coat_x"), std::logic_error);
  CHECK_THROWS_AS(words::materialName("gold"), std::logic_error);
  CHECK_THROWS_AS(words::amount(1, "ounce", kMetric), std::logic_error);
  CHECK_THROWS_AS(words::problemText(problem("no_such_code", ""), kMetric), std::logic_error);
  core::Finding finding;
  finding.code = "no_such_code";
  CHECK_THROWS_AS(words::findingText(finding, kMetric), std::logic_error);
  finding.code = "pit_ladder";  // known, but without its numbers
  CHECK_THROWS_AS(words::findingText(finding, kMetric), std::logic_error);
}

TEST_CASE("amounts are counted in words") {
  CHECK(spaced(words::amount(1, "bag", kMetric)) == "1 bag");
  CHECK(spaced(words::amount(12, "bag", kMetric)) == "12 bags");
  CHECK(spaced(words::amount(0.5, "bag", kMetric)) == "0.5 bags");
  CHECK(spaced(words::amount(1505, "kg", kMetric)) == "1,505 kg");
  CHECK(spaced(words::amount(3.4, "m3", kFeet)) == "120.1 ft³");  // 3.4 / 0.0283168 = 120.07
}
