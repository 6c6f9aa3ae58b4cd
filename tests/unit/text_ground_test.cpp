#include "core/plan.h"
#include "core/site/thresholds.h"
#include "ui/text/words.h"

#include <QRegularExpression>
#include <map>
#include <set>
#include <stdexcept>
#include <string>

#include <catch2/catch.hpp>

namespace words = ui::words;
using core::FindingValue;
using core::Unit;

namespace {

const ui::Formatter kMetric{QLocale("en_GB"), ui::UnitSystem::metric};
const ui::Formatter kFeet{QLocale("en_GB"), ui::UnitSystem::feet_inches};

QString spaced(QString text) {
  return text.replace(QChar::Nbsp, u' ');
}

FindingValue value(std::string name, double number, Unit unit = Unit::none) {
  return {std::move(name), number, unit, {}};
}

FindingValue token(std::string name, std::string text) {
  return {std::move(name), 0, Unit::none, std::move(text)};
}

QString text(std::string code, std::vector<FindingValue> values, const ui::Formatter& format = kMetric) {
  core::Finding finding;
  finding.code = std::move(code);
  finding.values = std::move(values);
  return spaced(words::findingText(finding, format));
}

/// A plan of a tank on a slope that falls to the south-east, with everything that can be told.
core::Plan onSlope() {
  core::Plan plan = core::plan(core::Project{}).value();
  core::site::SitePlan& site = plan.site;
  site = {};
  site.has_relief = true;
  site.fall = {12.3, 7.01, 135};
  site.bench.emplace();
  site.bench->cut_m3 = 31.26;
  site.bench->fill_m3 = 4.04;
  site.cover = core::site::PitCover{0.314, Eigen::Vector3d::Zero(), 0};
  site.choices = {{core::PlatformLevel::natural_ground, -0.427, 40, 1, 0},
                  {core::PlatformLevel::balanced, 0.154, 31.26, 4.04, -0.581}};
  site.topsoil_m3 = 9.5;
  site.spoil_bank_m3 = 60;
  site.heap = core::site::SpoilHeap{75, 1.5, 4.6, 3.1};
  site.heap_place = core::site::HeapPlace{Eigen::Vector2d(9, 0), 45, 1.2};
  site.setback_m = 0.6;
  return plan;
}

QStringList answers(const core::Plan& plan, core::PlatformLevel level = core::PlatformLevel::balanced,
                    const ui::Formatter& format = kMetric) {
  core::Project project;
  project.site.platform.level_by = level;
  return words::groundAnswers(project, plan, format).replaceInStrings(QString(QChar::Nbsp), " ");
}

QString all(const QStringList& told) {
  return told.join(u'\n');
}

}  // namespace

TEST_CASE("a survey or platform that cannot be used says why and what to do") {
  std::set<QString> told;
  for (const char* fault : {"too_few", "collinear", "failed"})
    told.insert(text("site_survey_unusable", {token("fault", fault)}));
  for (const char* fault : {"outside_survey", "leaves_survey", "never_daylights", "cannot_balance"})
    told.insert(text("site_platform_impossible", {token("fault", fault)}));
  CHECK(told.size() == 7);
  CHECK_THROWS_AS(text("site_survey_unusable", {token("fault", "moon")}), std::logic_error);
  CHECK(text("site_survey_doubtful", {value("count", 3), value("first_row", 6)})
            .startsWith("Spot heights that look doubtful: 3, the first in row 6."));
}

TEST_CASE("a tank on fill is told by how much, and the level that clears it is rounded down") {
  const std::vector<FindingValue> values{value("cover_m", -0.581, Unit::metre),
                                         value("over_middle_m", 0.154, Unit::metre),
                                         value("most_over_middle_m", -0.421, Unit::metre)};
  const QString told = text("site_tank_on_fill", values);
  INFO(told.toStdString());
  CHECK(told.contains("ends 0.58 m short"));
  CHECK(told.contains("The platform lies 0.15 m over the natural ground"));
  CHECK(told.contains("lay it 0.43 m below the natural ground"));
  // -0.421 m are -16.57 in: a quarter of an inch lower is -16 3/4 in
  CHECK(text("site_tank_on_fill", values, kFeet).contains("lay it 1' 4 3/4\" below the natural ground"));
}

TEST_CASE("a level at the ground is not called over or below it") {
  CHECK(text("site_tank_on_fill", {value("cover_m", -0.2, Unit::metre), value("over_middle_m", 0.003),
                                   value("most_over_middle_m", 0)})
            .contains("The platform lies as high as the natural ground"));
}

TEST_CASE("a slip is told without its factor and sends to an engineer") {
  for (const char* code : {"site_slip_near", "site_slip_likely"}) {
    const auto with = [&](const char* state) {
      return text(code, {value("factor", 1.37, Unit::factor), value("wanted", 1.5, Unit::factor),
                         token("state", state)});
    };
    const QString told = with("full_leaking");
    INFO(told.toStdString());
    CHECK(told.contains("may slip when the tank leaks"));
    CHECK(with("empty").contains("with the tank empty"));
    CHECK_FALSE(with("empty").contains("1.37"));
    CHECK(told.contains("licensed engineer"));
    CHECK(told.contains("E1"));
    CHECK_FALSE(told.contains("1.37"));
    CHECK_FALSE(told.contains("1.4"));
    CHECK_FALSE(told.contains("1.5"));
  }
}

TEST_CASE("a heap in the line of the fall is told where it should lie, a steep face how it should lean") {
  const std::vector<FindingValue> heap{value("azimuth_deg", 180, Unit::degree),
                                       value("proposed_deg", 90, Unit::degree)};
  CHECK(text("site_spoil_downhill", heap).contains("to the east of the tank"));
  CHECK(text("site_spoil_uphill", heap).contains("rain washes it in"));
  const std::vector<FindingValue> face{value("batter", 0.4, Unit::batter), value("wanted", 1.5, Unit::batter),
                                       value("height_m", 2.4, Unit::metre)};
  CHECK(text("site_cut_face_too_steep", face).contains("up to 2.40 m high and leans back 0.40"));
  CHECK(
      text("site_fill_lacking", {value("bank_m3", 12.34, Unit::cubic_metre)}).contains("12.3 m³ of ground"));
  CHECK(text("site_fill_face_too_steep", face).contains("Make it 1.50 or flatter"));
}

TEST_CASE("the answers on the ground quote the plan") {
  const QString told = all(answers(onSlope()));
  INFO(told.toStdString());
  CHECK(told.contains("The ground falls 12.3 % towards the south-east."));
  CHECK(told.contains("The platform lies 0.15 m over the natural ground at the middle of the tank"));
  CHECK(told.contains("31.3 m³ are cut and 4.0 m³ filled in"));
  CHECK(told.contains("The whole tank stands in natural ground; where it is least, 0.31 m"));
  CHECK(told.contains("strip 9.5 m³ of topsoil"));
  CHECK(told.contains("75.0 m³ of loose ground: a heap 1.5 m high and 9.2 m across."));
  CHECK(
      told.contains("to the north-east of the tank, its toe 1.20 m back from the pit edge; never nearer than "
                    "0.60 m."));
  CHECK(told.contains("Never heap it uphill of the pit"));
  CHECK_FALSE(told.contains("%1"));
  const QString natural = all(answers(onSlope(), core::PlatformLevel::natural_ground));
  CHECK(natural.contains("The platform lies 0.43 m below the natural ground"));
  const QString feet = all(answers(onSlope(), core::PlatformLevel::balanced, kFeet));
  CHECK(feet.contains("1,104 ft³ are cut"));               // 31.26 / 0.3048^3
  CHECK(feet.contains("never nearer than 1' 11 3/4\"."));  // 0.6 m are 23.62 in: up, for it is the least
}

TEST_CASE("a platform as high as the tank allows is told as that and not as a cover of nothing") {
  core::Plan plan = onSlope();
  plan.site.cover->least_m = 0;
  CHECK(all(answers(plan)).contains("The whole tank just stands in natural ground"));
  CHECK_FALSE(all(answers(plan)).contains("0.00 m"));
}

TEST_CASE("a tank on fill is told the level at which it is none") {
  core::Plan plan = onSlope();
  plan.site.cover->least_m = -0.581;
  CHECK(all(answers(plan)).contains("It would not with the platform 0.43 m below the natural ground"));
  plan.site.choices.clear();
  CHECK(all(answers(plan)).contains("natural ground ends 0.58 m short of the pit."));
  CHECK_FALSE(all(answers(plan)).contains("It would not"));
}

TEST_CASE("real plans of slopes and surveys are told without a gap, in both unit systems") {
  core::Project project;
  project.site.soil = core::Soil::firm_loam;
  project.site.ground.kind = core::GroundKind::slope;
  project.site.ground.fall_percent = 12;
  project.site.ground.downhill_azimuth_deg = 180;
  core::Project survey = project;
  survey.site.ground.kind = core::GroundKind::spot_heights;
  survey.site.ground.points_m = {{-30, -30, 97}, {30, -30, 97}, {30, 30, 103}, {-30, 30, 103}};
  for (const core::Project& one : {project, survey}) {
    for (const core::PlatformLevel level_by :
         {core::PlatformLevel::natural_ground, core::PlatformLevel::balanced}) {
      core::Project asked = one;
      asked.site.platform.level_by = level_by;
      const core::Plan plan = core::plan(asked).value();
      for (const ui::Formatter& format : {kMetric, kFeet}) {
        const QString told = all(words::groundAnswers(asked, plan, format));
        INFO(told.toStdString());
        CHECK(told.contains("towards the south."));
        CHECK(told.contains("The platform lies"));
        CHECK(told.contains("a heap"));
        CHECK_FALSE(told.contains(QRegularExpression("%[1-9]")));
        CHECK_FALSE(told.contains("nan"));
      }
    }
  }
}

// north 0, clockwise: an eighth of the circle about each name
TEST_CASE("directions are words of the compass") {
  const std::map<double, QString> names{
      {0, "north."},        {22, "north."},  {23, "north-east."},  {90, "east."},  {112, "east."},
      {113, "south-east."}, {180, "south."}, {225, "south-west."}, {270, "west."}, {315, "north-west."},
      {337, "north-west."}, {338, "north."}, {360, "north."}};
  core::Plan plan = onSlope();
  for (const auto& [azimuth_deg, name] : names) {
    plan.site.fall.azimuth_deg = azimuth_deg;
    INFO(azimuth_deg);
    CHECK(answers(plan).front().endsWith("towards the " + name));
  }
}

TEST_CASE("where there is no platform the answer is why, and no volumes are told") {
  core::Plan plan = onSlope();
  plan.site.bench.reset();
  plan.site.cover.reset();
  plan.site.fault = core::site::BenchFault::never_daylights;
  const QStringList told = answers(plan);
  CHECK(told.front().startsWith("The ground is as steep as a face of cut or fill"));
  CHECK_FALSE(all(told).contains("m³"));
}

TEST_CASE("level ground needs no cut, and spoil of unknown soil has no heap") {
  core::Plan plan = onSlope();
  plan.site.has_relief = false;
  plan.site.bench.reset();
  plan.site.cover.reset();
  plan.site.fall = {};
  plan.site.heap.reset();
  plan.site.heap_place.reset();
  const QString told = all(answers(plan));
  CHECK(told.startsWith("The ground is level."));
  CHECK_FALSE(told.contains("are cut"));
  CHECK(told.contains("60.0 m³ of ground are left over"));
  CHECK_FALSE(told.contains("uphill"));
  plan.site.spoil_bank_m3 = 0;
  CHECK(all(answers(plan)).contains("no spoil is left over"));
  CHECK_FALSE(all(answers(plan)).contains("spread it"));
}

TEST_CASE("thresholds, strengths, pegs and parts of the ground have names") {
  std::set<QString> names;
  for (const auto& threshold : core::site::thresholds()) {
    INFO(threshold.key);
    CHECK(names.insert(words::thresholdName(threshold.key)).second);
  }
  for (const char* strength : {"low", "typical", "high"}) CHECK(words::strengthName(strength) == strength);
  for (const char* kind : {"platform_corner", "daylight_cut", "daylight_fill"})
    CHECK(names.insert(words::pegKindName(kind)).second);
  for (const char* part : {"cut", "fill", "heap", "fall_arrow", "marker", "cut_pattern", "fill_pattern"})
    CHECK(names.insert(words::layerName(part)).second);
  CHECK_THROWS_AS(words::thresholdName("pit.moon"), std::logic_error);
  CHECK_THROWS_AS(words::strengthName("middling"), std::logic_error);
}
