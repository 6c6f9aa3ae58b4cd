// Every number and date of the plan's JSON has its reckoning: name, value, formula, inputs, source.
#include "core/compare/refine.h"
#include "core/exchange/plan_json.h"
#include "core/exchange/project_file.h"
#include "tests/support/priced_tank.h"
#include "ui/text/reckonings.h"
#include "ui/text/words.h"

#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

namespace {

using nlohmann::json;
using ui::Formatter;
using ui::words::Reckoning;

struct Case {
  std::string name;
  core::Project project;
  core::Plan plan;
};

core::Project demo(const std::string& name) {
  return core::exchange::readProject(TANKWRIGHT_SOURCE_DIR "/resources/demo/" + name + ".tankwright")
      ->project;
}

/// Much is asked and little fits: overflow by pipe, a crew too small, records, readings, a leak.
core::Project crowded() {
  core::Project project = demo("terrace");
  project.works->plasterers = 5;
  project.works->fill_inflow_l_per_day.reset();
  project.works->wishes = {{"excavate", project.works->start_date, 3}};
  project.lining.customary = {3, 2, 1, 500};
  project.lining.cove_radius_m = 0.1;
  project.lining.rim_width_m = 0.3;
  project.lining.rim_thickness_m = 0.06;
  project.site.clay_percent = 25;
  project.records.batches = {{1, 1, 4, 0.06}, {2, 1, 5, 0.05}};
  for (const auto work :
       {core::RecordedWork::digging, core::RecordedWork::ramming, core::RecordedWork::stone_bed,
        core::RecordedWork::spreading, core::RecordedWork::mixing})
    project.records.work.push_back({work, 10, 6, {}});
  core::Delivery& delivery = *project.delivery;
  delivery.overflow.kind = core::OverflowKind::pipe;
  delivery.silt_trap.length_m = 2;
  delivery.silt_trap.width_m = 0.6;
  delivery.silt_trap.depth_m = 0.4;
  delivery.leak_test.tank_drop_mm = 9;
  delivery.leak_test.bucket_drop_mm = 4;
  project.notes.jars = {{"upper field", 40, 35, 25}, {"lower field", 30, 30, 30}};
  project.notes.feel = {{"upper field", core::BallTest::holds, 40, core::Grit::even}};
  project.notes.pit_layers = {{"A", 0, 0.8, core::Soil::firm_loam, false}, {"A", 0.8, 1.4, {}, true}};
  project.notes.slope = {{10, 1.2}, {8, 0.7}};
  for (const double seconds : {50.0, 52.0, 51.0, 2.0, 300.0})
    project.water->source.readings.push_back({3, 15, seconds});
  return project;
}

/// A way that climbs and sucks, and a siphon that its crest throttles.
core::Project steep() {
  core::Project project = demo("terrace");
  core::Delivery& delivery = *project.delivery;
  delivery.source.route = {{0, 2}, {20, 1.9}, {40, 6}, {60, 0.5}, {80, 1.2}, {200, -3}};
  delivery.source.wanted_l_per_min = 5;
  delivery.field.over_rim = true;
  delivery.field.route = {{0, 0}, {10, -3}, {30, -25}};
  delivery.field.crest_over_rim_m = 1;
  project.site.elevation_m = 4000;
  return project;
}

/// Firm ground that falls steeply, so that a slip begins at a crack; wind is known.
core::Project onSteepClay() {
  core::Project project = demo("terrace");
  project.site.ground = {core::GroundKind::slope, 45, 200, {}};
  project.site.soil = core::Soil::stiff_clay;
  project.site.platform.cut_batter = 0.5;
  project.site.edge_distance_m = 2;
  project.site.edge_height_m = 3;
  for (core::ClimateMonth& month : project.water->climate.months) {
    month.humidity_percent = 55;
    month.wind_m_s = 2.5;
  }
  return project;
}

core::Project withGaps() {
  using namespace std::chrono;
  core::Project project = demo("terrace");
  std::vector<core::DailyWeather> days;
  for (sys_days day = year(2001) / 1 / 1; day < sys_days(year(2007) / 1 / 1); day += std::chrono::days(1)) {
    const auto number = static_cast<double>(day.time_since_epoch().count());
    const double season = std::cos(number / 365.25 * 2 * M_PI);
    core::DailyWeather weather;
    weather.date = day;
    weather.t_min_c = 9 - 7 * season;
    weather.t_max_c = 20 - 7 * season;
    if (day != sys_days(year(2003) / 10 / 5)) weather.rain_mm = std::max(0.0, -20 * season);
    days.push_back(weather);
  }
  project.water->climate.kind = core::ClimateKind::daily;
  project.water->climate.daily = core::DailyRecord(std::move(days));
  return project;
}

Case caseOf(std::string name, const core::Project& project) {
  core::Plan plan = core::plan(project).value();
  core::compare::refine(project, plan);
  return {std::move(name), project, std::move(plan)};
}

const std::vector<Case>& cases() {
  static const std::vector<Case> all{caseOf("terrace", demo("terrace")),
                                     caseOf("round", demo("round")),
                                     caseOf("five-sided", demo("five_sided")),
                                     caseOf("crowded", crowded()),
                                     caseOf("steep", steep()),
                                     caseOf("with gaps", withGaps()),
                                     caseOf("steep clay", onSteepClay()),
                                     caseOf("priced", support::pricedProject()),
                                     caseOf("new", core::Project{})};
  return all;
}

/// Places that need no reckoning, by how they begin, each with the reason.
constexpr std::array kNone{
    "version",              // of the format
    "findings[].",          // a finding carries its own sentence, numbers and source
    "options[].changes.",   // fields as entered; the table of options tells them
    "options[].problems[]"  // codes
};

bool needsNone(const std::string& path) {
  return std::ranges::any_of(kNone, [&](const char* start) { return path.starts_with(start); });
}

bool isDay(const std::string& text) {
  static const QRegularExpression day(QStringLiteral("^(\\d{4}-)?\\d\\d-\\d\\d$"));
  return day.match(QString::fromStdString(text)).hasMatch();
}

/// Numbers and days of a JSON by path, walked here anew for the test.
using Leaves = std::map<std::string, std::vector<json>>;
void walk(const json& value, const std::string& path, Leaves& leaves) {
  if (value.is_object()) {
    for (const auto& item : value.items())
      walk(item.value(), path.empty() ? item.key() : path + "." + item.key(), leaves);
  } else if (value.is_array()) {
    for (const json& row : value) walk(row, path + "[]", leaves);
  } else if (value.is_number() || (value.is_string() && isDay(value.get<std::string>()))) {
    leaves[path].push_back(value);
  }
}

Leaves leavesOf(const core::Plan& plan) {
  Leaves leaves;
  walk(json::parse(core::exchange::planText(plan)), "", leaves);
  return leaves;
}

Formatter english() {
  return Formatter(QLocale(QLocale::English));
}

/// The numbers that a text shows, each with half a unit of its last digit.
struct Shown {
  double value, half;
};
std::vector<Shown> numbersIn(const QString& text) {
  static const QRegularExpression number(QStringLiteral("-?\\d[\\d,]*(\\.\\d+)?([eE][-+]?\\d+)?"));
  std::vector<Shown> all;
  for (auto it = number.globalMatch(text); it.hasNext();) {
    const auto match = it.next();
    const double value = match.captured(0).remove(u',').toDouble();
    const auto decimals = static_cast<int>(std::max<qsizetype>(0, match.captured(1).size() - 1));
    const bool has_power = !match.captured(2).isEmpty();
    all.push_back({value, has_power ? 0.06 * std::abs(value) : 0.5001 * std::pow(10.0, -decimals)});
  }
  return all;
}

bool shows(const QString& text, double value) {
  return std::ranges::any_of(numbersIn(text), [&](const Shown& shown) {
    const double off = std::abs(shown.value - value);
    return off <= shown.half && off <= 0.006 * std::abs(value) + 1e-12;
  });
}

bool isAlone(const std::string& id) {
  return id.find("[]") == std::string::npos;
}

bool isMonth(const std::string& id) {
  return id.ends_with("first_month");
}

}  // namespace

TEST_CASE("every number and day of the plan has its reckoning") {
  for (const Case& each : cases()) {
    std::set<std::string> ids;
    for (const Reckoning& r : ui::words::reckonings(each.project, each.plan, english())) ids.insert(r.id);
    for (const auto& [path, values] : leavesOf(each.plan)) {
      INFO(each.name << ": " << path);
      CHECK((ids.contains(path) || needsNone(path)));
    }
  }
}

TEST_CASE("every reckoning is of a number that is there, and all that can be said is said by some plan") {
  std::set<std::string> seen;
  for (const Case& each : cases()) {
    const Leaves leaves = leavesOf(each.plan);
    for (const Reckoning& r : ui::words::reckonings(each.project, each.plan, english())) {
      INFO(each.name << ": " << r.id);
      CHECK(leaves.contains(r.id));
      CHECK_FALSE(r.name.isEmpty());
      CHECK_FALSE(r.formula.isEmpty());
      CHECK_FALSE(r.inputs.isEmpty());
      CHECK_FALSE(r.value.isEmpty());
      CHECK_NOTHROW(core::source(r.source));
      CHECK_FALSE(ui::words::sourceText(r.source).isEmpty());
      seen.insert(r.id);
    }
  }
  for (const std::string& id : ui::words::reckoningIds()) {
    INFO(id);
    CHECK(seen.contains(id));
  }
}

TEST_CASE("the value of a reckoning is the plan's own number") {
  for (const Case& each : cases()) {
    const Leaves leaves = leavesOf(each.plan);
    for (const Reckoning& r : ui::words::reckonings(each.project, each.plan, english())) {
      if (!isAlone(r.id) || r.id.starts_with("water.map.") || isMonth(r.id)) continue;
      const json& value = leaves.at(r.id).front();
      INFO(each.name << ": " << r.id << " " << value << " | " << r.value.toStdString());
      if (value.is_number()) CHECK(shows(r.value, value.get<double>()));
    }
  }
}

TEST_CASE("rows are listed whole where they are few") {
  const Case& terrace = cases().front();
  const Leaves leaves = leavesOf(terrace.plan);
  std::map<std::string, QString> texts;
  for (const Reckoning& r : ui::words::reckonings(terrace.project, terrace.plan, english()))
    texts[r.id] += r.value + u'\n';
  for (const char* id : {"materials[].net", "materials[].order", "layers[].volume_m3", "coats[].shell_m3",
                         "coats[].to_mix.cement_kg", "labour[].days", "labour[].quantity",
                         "coat_crews[].person_days", "cost.linings[].recovery_factor"}) {
    for (const json& value : leaves.at(id)) {
      INFO(id << " " << value << " | " << texts.at(id).toStdString());
      if (value.is_number()) CHECK(shows(texts.at(id), value.get<double>()));
    }
  }
}

TEST_CASE("a day is told as the reader writes days") {
  const Case& terrace = cases().front();
  const Formatter format = english();
  for (const Reckoning& r : ui::words::reckonings(terrace.project, terrace.plan, format)) {
    if (r.id == "filling.latest_start")
      CHECK(r.value == format.date(terrace.plan.works->filling->latest_start));
    if (r.id == "weather_window.chosen_week") CHECK_FALSE(r.value.contains(u'-'));
  }
}

TEST_CASE("a group has its own reckonings and no others, and the groups together have all") {
  const Case& terrace = cases().front();
  std::size_t count = 0;
  for (const std::string_view group : ui::words::reckoningGroups()) {
    CHECK_FALSE(ui::words::reckoningGroupName(group).isEmpty());
    for (const Reckoning& r : ui::words::reckoningsOf(group, terrace.project, terrace.plan, english())) {
      CHECK(r.group == group);
      ++count;
    }
  }
  CHECK(count == ui::words::reckonings(terrace.project, terrace.plan, english()).size());
}

TEST_CASE("a default keeps its source; what someone changed is the user's") {
  core::Project project = demo("terrace");
  project.records.in_force = false;
  project.lining.dry_to_wet = core::Lining{}.dry_to_wet;
  const auto sourceOf = [&](const char* id) {
    const core::Plan plan = core::plan(project).value();
    for (const Reckoning& r : ui::words::reckonings(project, plan, english())) {
      if (r.id == id) return std::string(r.source);
    }
    return std::string();
  };
  CHECK(sourceOf("coats[].net.soil_m3") == "dry_to_wet");
  project.lining.dry_to_wet = 1.4;
  CHECK(sourceOf("coats[].net.soil_m3") == "user");
  project.delivery->overflow.storm_mm_h.reset();
  CHECK(sourceOf("delivery.overflow.storm_mm_h") == "own");
  project.delivery->overflow.storm_mm_h = 80;
  CHECK(sourceOf("delivery.overflow.storm_mm_h") == "user");
}

TEST_CASE("less than all is not told as 100 %") {
  core::Plan plan = cases().front().plan;
  plan.water->days_met_percent = 99.98;
  for (const Reckoning& r : ui::words::reckoningsOf("water", cases().front().project, plan, english())) {
    if (r.id == "water.days_met_percent") CHECK(r.value.contains(QStringLiteral("99.98")));
  }
}

TEST_CASE("units of the reader: feet and inches") {
  const Case& terrace = cases().front();
  const Formatter feet(QLocale(QLocale::English), ui::UnitSystem::feet_inches);
  for (const Reckoning& r : ui::words::reckonings(terrace.project, terrace.plan, feet)) {
    if (r.id == "tank.depth_m") CHECK(r.value.contains(u'\''));
    if (r.id == "tank.floor_m2") CHECK(r.value.contains(QStringLiteral("ft²")));
  }
}
