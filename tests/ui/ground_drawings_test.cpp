#include "ui/drawings/ground_drawings.h"

#include "tests/ui/water_charts_support.h"
#include "ui/drawings/chart_colours.h"
#include "ui/drawings/ground_shapes.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

using core::Project;
using core::site::EdgeSlip;
using core::site::SearchFault;
using support::english;
using support::faultsOnScreen;
using support::readers;
using support::Recorder;
using support::screen;
using ui::Formatter;
namespace drawings = ui::drawings;

namespace {

const QRectF kBox(15, 30, 182, 170);  // room of a drawing on an A4 sheet

struct Drawn : Recorder {
  int n = 0;
  Drawn(const core::Plan& plan, const Formatter& format, const drawings::Style& style = {},
        const QRectF& box = kBox)
      : Recorder(QSizeF(260, 297)) {
    QPainter painter(this);
    n = drawings::drawGroundPlan(painter, box, plan, format, style);
  }
};

struct DrawnSlip : Recorder {
  DrawnSlip(const EdgeSlip& slip, const Formatter& format, const drawings::Style& style = {},
            const QRectF& box = kBox)
      : Recorder(QSizeF(260, 297)) {
    QPainter painter(this);
    drawings::drawSlip(painter, box, slip, format, style);
  }
};

struct DrawnSection : Recorder {
  int n = 0;
  explicit DrawnSection(const core::Plan& plan, const Formatter& format = english())
      : Recorder(QSizeF(260, 297)) {
    QPainter painter(this);
    n = drawings::drawSection(painter, kBox, plan, format, {});
  }
};

constexpr double kFall = 14;  // percent

Project onSlope(double downhill_azimuth_deg) {
  Project project;
  project.site.soil = core::Soil::firm_loam;
  project.site.ground.kind = core::GroundKind::slope;
  project.site.ground.fall_percent = kFall;
  project.site.ground.downhill_azimuth_deg = downhill_azimuth_deg;
  project.site.platform.level_by = core::PlatformLevel::balanced;
  return project;
}

Project onSurvey(core::Shape shape) {
  Project project = onSlope(0);
  project.tank.shape = shape;
  project.site.ground.kind = core::GroundKind::spot_heights;
  project.site.position.turn_deg = 25;
  core::SpotHeights::List points;
  for (int i = 0; i <= 10; ++i) {
    for (int k = 0; k <= 10; ++k) {
      const double x = -20 + 4 * i + 0.7 * std::sin(i * k), y = -20 + 4 * k + 0.6 * std::cos(3 * i + k);
      points.emplace_back(x, y, 104 + 0.09 * x - 0.04 * y + 0.5 * std::sin(0.25 * x));
    }
  }
  project.site.ground.points_m = points;
  return project;
}

Project onLevel() {
  Project project;
  project.site.soil = core::Soil::firm_loam;
  return project;
}

core::Plan planOf(const Project& project) {
  auto plan = core::plan(project);
  REQUIRE(plan);
  return std::move(*plan);
}

const std::vector<std::pair<std::string, core::Plan>>& plans() {
  static const std::vector<std::pair<std::string, core::Plan>> list = [] {
    std::vector<std::pair<std::string, core::Plan>> made;
    made.emplace_back("level", planOf(onLevel()));
    made.emplace_back("slope", planOf(onSlope(200)));
    made.emplace_back("survey", planOf(onSurvey(core::Shape::rectangle)));
    made.emplace_back("survey, round", planOf(onSurvey(core::Shape::round)));
    return made;
  }();
  return list;
}

/// The largest outline drawn with the widest line: the pit edge.
QRectF pitOf(const Recorder& drawn) {
  QRectF pit;
  for (const auto& stroke : drawn.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (std::abs(stroke.width_mm - 0.7) < 1e-9 && box.width() * box.height() > pit.width() * pit.height())
      pit = box;
  }
  return pit;
}

/// A slope of 1 in 1 with a slip whose numbers are made up.
EdgeSlip sampleSlip() {
  EdgeSlip slip;
  slip.state = "full_leaking";
  slip.section.ground_m = {{0, 4}, {6, 4}, {10, 0}, {16, 0}};
  slip.section.layers = {{}};
  slip.section.phreatic_m = {{0, 3}, {6, 2.5}, {10, 0}, {16, 0}};
  slip.section.surcharges = {{1, 3, 15}};
  core::site::CriticalSlip critical;
  critical.slip.factor = 1.234;
  critical.slip.circle = {{9, 6}, 6.25};
  critical.slip.from_x_m = 9 - std::sqrt(6.25 * 6.25 - 4);
  critical.slip.to_x_m = 9 + std::sqrt(6.25 * 6.25 - 36);
  const double width = (critical.slip.to_x_m - critical.slip.from_x_m) / 20;
  for (int k = 0; k < 20; ++k) {
    core::site::SlipSlice slice{};
    slice.x_m = critical.slip.from_x_m + (k + 0.5) * width;
    slice.width_m = width;
    critical.slip.slices.push_back(slice);
  }
  slip.critical = critical;
  return slip;
}

int scaleOn(const Recorder& drawn) {
  for (const int n : {2, 5, 10, 20, 25, 50, 75, 100, 200, 250, 500, 1000}) {
    for (const auto& text : drawn.texts) {
      if (text.text == QStringLiteral("Scale 1 : %1").arg(english().integer(n))) return n;
    }
  }
  return 0;
}

}  // namespace

TEST_CASE("no plan of the ground on paper has text on text, text on a line, or anything outside its box") {
  for (const auto& [name, plan] : plans()) {
    for (const Formatter& format : readers()) {
      for (const QRectF& box : {kBox, QRectF(15, 20, 182, 110), QRectF(15, 20, 182, 240)}) {
        const Drawn drawn(plan, format, {}, box);
        const QStringList faults = support::faultsOnPaper(drawn, box);
        INFO(name << " in " << format.locale().name().toStdString() << " at 1:" << drawn.n << "\n"
                  << faults.join(u'\n').toStdString());
        REQUIRE(faults.isEmpty());
        REQUIRE(drawn.n > 0);
      }
    }
  }
}

TEST_CASE("the scale of the plan of the ground is a round one and is written on it") {
  // ISO 5455:1979 reduction scales and their decimal multiples; 25, 75 and 250 are common practice, no source
  const std::set<int> series{2, 5, 10, 20, 25, 50, 75, 100, 200, 250, 500, 1000, 2000, 5000};
  for (const auto& [name, plan] : plans()) {
    const Drawn drawn(plan, english());
    INFO(name);
    CHECK(series.count(drawn.n) == 1);
    CHECK(scaleOn(drawn) == drawn.n);
  }
}

TEST_CASE("on a screen the plan of the ground keeps its texts apart, and they read at 4.5:1") {
  for (const auto& [name, plan] : plans()) {
    for (const bool dark : {false, true}) {
      const QRectF pane(4, 4, 230, 130);
      const Drawn drawn(plan, english(), screen(dark), pane);
      const QStringList faults = faultsOnScreen(drawn, pane);
      INFO(name << "\n" << faults.join(u'\n').toStdString());
      CHECK(faults.isEmpty());
      for (const auto& text : drawn.texts)
        CHECK(support::contrast(text.ink, drawings::chartColours(dark).ground) >= 4.5);
    }
  }
}

TEST_CASE("cut and fill differ by hatch on paper and by lightness on a screen") {
  for (const bool dark : {false, true}) {
    const auto colours = drawings::groundColours(dark);
    CHECK(std::abs(colours.cut.lightness() - colours.fill.lightness()) > 25);
  }
  const core::Plan plan = planOf(onSlope(200));
  REQUIRE(plan.site.bench);
  REQUIRE(plan.site.bench->cut_m3 > 0);
  REQUIRE(plan.site.bench->fill_m3 > 0);
  const Drawn drawn(plan, english());
  std::set<bool> ways;
  for (const auto& stroke : drawn.strokes) {
    if (std::abs(stroke.width_mm - 0.25) > 1e-9 || stroke.path.elementCount() < 2) continue;
    const QPointF step = QPointF(stroke.path.elementAt(1)) - QPointF(stroke.path.elementAt(0));
    ways.insert(step.x() * step.y() > 0);
  }
  CHECK(ways.size() == 2);
  CHECK(drawn.says("cut face"));
  CHECK(drawn.says("fill face"));
}

TEST_CASE("at its scale the plan of the ground has the pit's size, and every peg where it stands") {
  const core::Plan plan = planOf(onSlope(200));
  const Drawn drawn(plan, english());
  const QRectF pit = pitOf(drawn);
  CHECK(pit.width() * drawn.n / 1000 == Approx(plan.earthwork.pit_top_length_m).epsilon(1e-6));
  CHECK(pit.height() * drawn.n / 1000 == Approx(plan.earthwork.pit_top_width_m).epsilon(1e-6));
  REQUIRE(plan.site.pegs.size() == 8);
  for (const auto& peg : plan.site.pegs) {  // the tank stands at the origin, so the pit's middle does
    const QPointF at = pit.center() + QPointF(peg.at_m.x(), -peg.at_m.y()) * 1000 / drawn.n;
    bool found = false;
    for (const auto& stroke : drawn.strokes) {
      const QRectF box = stroke.path.boundingRect();
      const QPointF apart = box.center() - at;
      if (box.width() > 2 && box.width() < 4 && std::hypot(apart.x(), apart.y()) < 0.01) found = true;
    }
    INFO(peg.id);
    CHECK(found);
    CHECK(drawn.says(QString::fromStdString(peg.id)));
  }
}

TEST_CASE("every peg is named, of many corners the outer ones alone, and no name hides a peg") {
  for (const auto& [name, plan] : plans()) {
    const Drawn drawn(plan, english());
    INFO(name);
    for (const auto& peg : plan.site.pegs) {
      if (plan.site.pegs.size() > 16 && peg.kind == "platform_corner") continue;
      const auto isName = [&](const auto& text) { return text.text == QString::fromStdString(peg.id); };
      CHECK(std::ranges::count_if(drawn.texts, isName) == 1);
    }
    for (const auto& stroke : drawn.strokes) CHECK_FALSE(stroke.path.isEmpty());
  }
}

TEST_CASE("each level on a contour line is that of the slope there") {
  const double azimuth = 200 * M_PI / 180;
  const core::Plan plan = planOf(onSlope(200));
  const Drawn drawn(plan, english());
  const QPointF middle = pitOf(drawn).center();
  std::set<double> levels;
  for (const auto& text : drawn.texts) {
    bool number = false;
    const double level = text.text.toDouble(&number);
    const QPointF from = (text.room.boundingRect().center() - middle) * drawn.n / 1000;
    if (!number || text.room.boundingRect().bottom() > kBox.bottom() - 12) continue;  // the scale bar's
    // an even fall: height is less the fall times the way downhill
    const double height = -kFall / 100 * (std::sin(azimuth) * from.x() - std::cos(azimuth) * from.y());
    INFO(text.text.toStdString());
    CHECK(height == Approx(level).margin(0.05 * kFall / 100));
    levels.insert(level);
  }
  CHECK(levels.size() >= 3);
  CHECK(levels.size() <= 9);
}

TEST_CASE("on level ground the plan of the ground shows platform, pit and heap alone") {
  const core::Plan plan = planOf(onLevel());
  const Drawn drawn(plan, english());
  CHECK(drawn.says("pit edge"));
  CHECK(drawn.says("platform edge"));
  CHECK(drawn.says("spoil heap"));
  CHECK(drawn.says(english().quantity(plan.site.heap_place->toe_to_edge_m, core::Unit::metre, 2) +
                   " to the pit"));
  for (const char* absent : {"fall", "cut", "natural ground", "P1", "D1"}) CHECK_FALSE(drawn.says(absent));
}

TEST_CASE("a box too small for the ground stays empty") {
  const Drawn drawn(planOf(onLevel()), english(), {}, QRectF(0, 0, 40, 30));
  CHECK(drawn.n == 0);
  CHECK(drawn.texts.empty());
  CHECK(drawn.strokes.empty());
}

TEST_CASE("a slip is drawn to scale: all of its arc one radius from the centre, and its factor beside") {
  const EdgeSlip slip = sampleSlip();
  const DrawnSlip drawn(slip, english());
  CHECK(drawn.says("factor 1.23"));
  CHECK(drawn.says("tank full and leaking"));
  CHECK(drawn.says("water in the ground"));
  CHECK(drawn.says("load 15"));
  const int n = scaleOn(drawn);
  REQUIRE(n > 0);
  QPointF centre;
  QPainterPath arc;
  for (const auto& stroke : drawn.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (std::abs(stroke.width_mm - 0.9) < 1e-9) arc = stroke.path;
    if (std::abs(stroke.width_mm - 0.7) < 1e-9 && std::abs(box.width() - 4) < 1e-6) centre = box.center();
  }
  REQUIRE(arc.elementCount() > 20);
  for (int k = 0; k < arc.elementCount(); ++k) {
    const QPointF out = QPointF(arc.elementAt(k)) - centre;
    CHECK(std::hypot(out.x(), out.y()) * n / 1000 ==
          Approx(slip.critical->slip.circle.radius_m).epsilon(1e-6));
  }
}

TEST_CASE("slips have no text on text or on a line, on paper and on a screen") {
  for (const Formatter& format : readers()) {
    for (const QRectF& box : {kBox, QRectF(15, 20, 182, 100), QRectF(10, 10, 120, 120)}) {
      const EdgeSlip slip = sampleSlip();
      const QStringList faults = support::faultsOnPaper(DrawnSlip(slip, format, {}, box), box) +
                                 faultsOnScreen(DrawnSlip(slip, format, screen(true), box), box);
      INFO(format.locale().name().toStdString() << "\n" << faults.join(u'\n').toStdString());
      CHECK(faults.isEmpty());
    }
  }
}

TEST_CASE("where no slip was found a sentence of its own says why") {
  EdgeSlip slip;
  std::set<QString> sentences{DrawnSlip(slip, english()).allText()};
  for (const SearchFault fault : {SearchFault::bad_section, SearchFault::level_section,
                                  SearchFault::nothing_found, SearchFault::cancelled}) {
    slip.fault = fault;
    const DrawnSlip drawn(slip, english());
    CHECK(drawn.strokes.empty());
    CHECK(faultsOnScreen(drawn, kBox).isEmpty());
    sentences.insert(drawn.allText());
  }
  CHECK(sentences.size() == 5);
  CHECK(sentences.count(QString()) == 0);
}

TEST_CASE("the section of a tank on a slope shows the fall of the natural ground, on level ground none") {
  const DrawnSection level(planOf(onLevel()));
  CHECK(level.says("rim and ground: 0"));
  CHECK_FALSE(level.says("natural ground"));
  const core::Plan plan = planOf(onSlope(180));  // the section runs north, so the fall is all in it
  const DrawnSection drawn(plan);
  CHECK(drawn.says("rim and platform: 0"));
  CHECK(drawn.says("natural ground"));
  bool found = false;
  for (const auto& stroke : drawn.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (std::abs(stroke.width_mm - 0.35) > 1e-9 || box.width() * drawn.n / 1000 < 4) continue;
    if (std::abs(box.height() / box.width() - kFall / 100) < 1e-6) found = true;
  }
  CHECK(found);
}

TEST_CASE("sections on slopes and surveys have no text on text or on a line") {
  for (double azimuth = 0; azimuth < 360; azimuth += 45) {
    for (const Formatter& format : readers()) {
      const DrawnSection drawn(planOf(onSlope(azimuth)), format);
      const QStringList faults = support::faultsOnPaper(drawn, kBox);
      INFO(azimuth << " degrees at 1:" << drawn.n << "\n" << faults.join(u'\n').toStdString());
      CHECK(faults.isEmpty());
    }
  }
  for (const auto& [name, plan] : plans()) {
    const QStringList faults = support::faultsOnPaper(DrawnSection(plan), kBox);
    INFO(name << "\n" << faults.join(u'\n').toStdString());
    CHECK(faults.isEmpty());
  }
}
