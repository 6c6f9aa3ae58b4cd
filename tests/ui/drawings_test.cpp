#include "ui/drawings/drawings.h"

#include "tests/support/random_project.h"
#include "tests/support/recorder.h"
#include "ui/drawings/hatch.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QPainter>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

using core::Project;
using core::Unit;
using support::Recorder;
using ui::Formatter;
using ui::UnitSystem;
namespace drawings = ui::drawings;

namespace {

const QRectF kBox(15, 30, 182, 170);  // room of a drawing on an A4 sheet

using Draw = std::function<int(QPainter&, const core::Plan&, const Formatter&, const drawings::Style&)>;

struct Named {
  std::string name;
  Draw draw;
};

const std::vector<Named>& all() {
  static const std::vector<Named> list{
      {"plan", [](QPainter& p, const core::Plan& plan, const Formatter& f,
                  const drawings::Style& s) { return drawings::drawPlan(p, kBox, plan, f, s); }},
      {"section", [](QPainter& p, const core::Plan& plan, const Formatter& f,
                     const drawings::Style& s) { return drawings::drawSection(p, kBox, plan, f, s); }},
      {"corner", [](QPainter& p, const core::Plan& plan, const Formatter& f,
                    const drawings::Style& s) { return drawings::drawCornerDetail(p, kBox, plan, f, s); }},
      {"setting out", [](QPainter& p, const core::Plan& plan, const Formatter& f, const drawings::Style& s) {
         return drawings::drawSettingOut(p, kBox, plan, f, s);
       }}};
  return list;
}

const Named& named(const std::string& name) {
  for (const Named& n : all()) {
    if (n.name == name) return n;
  }
  throw std::logic_error("no drawing " + name);
}

struct Drawn {
  Recorder recorder{QSizeF(210, 297)};
  int n = 0;
};

void draw(Drawn& into, const Draw& how, const core::Plan& plan, const Formatter& format,
          const drawings::Style& style = {}) {
  QPainter painter(&into.recorder);
  into.n = how(painter, plan, format, style);
}

Formatter english(UnitSystem system = UnitSystem::metric) {
  return Formatter(QLocale(QLocale::English), system);
}

core::Plan planOf(const Project& project) {
  auto plan = core::plan(project);
  REQUIRE(plan);
  return std::move(*plan);
}

Project sixCoats() {
  Project project;
  project.lining.coats.assign(6, core::Coat{0.02, 3, 3, 1, 3});
  project.tank.batter = 0.5;
  project.tank.corner_radius_m = 0.5;
  project.lining.cove_radius_m = 0.15;
  project.lining.rim_width_m = 0.3;
  project.lining.rim_thickness_m = 0.06;
  return project;
}

Project sized(double length, double width, double depth, double batter) {
  Project project;
  project.tank.length_m = length;
  project.tank.width_m = width;
  project.tank.depth_m = depth;
  project.tank.batter = batter;
  return project;
}

Project manySided(int corners) {
  Project project;
  project.tank.shape = core::Shape::polygon;
  project.tank.outline_m.clear();
  for (int k = 0; k < corners; ++k) {
    const double a = 2 * M_PI * k / corners;
    project.tank.outline_m.push_back({5 * std::cos(a), 4 * std::sin(a)});
  }
  return project;
}

void requireSound(const Named& drawing, const core::Plan& plan, const Formatter& format,
                  const std::string& what) {
  Drawn drawn;
  draw(drawn, drawing.draw, plan, format);
  const QStringList faults = support::faultsOnPaper(drawn.recorder, kBox);
  INFO(drawing.name << " of " << what << " at 1:" << drawn.n << "\n" << faults.join(u'\n').toStdString());
  REQUIRE(faults.isEmpty());
}

}  // namespace

TEST_CASE("no drawing of a random tank has text on text, text on a line, or anything outside its box") {
  const core::Shape shapes[] = {core::Shape::rectangle, core::Shape::round, core::Shape::polygon};
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const core::Plan plan = planOf(support::randomProject(seed, shapes[seed % 3]));
    const Formatter format = english(seed % 5 == 4 ? UnitSystem::feet_inches : UnitSystem::metric);
    requireSound(all()[(seed / 3) % all().size()], plan, format, "seed " + std::to_string(seed));
  }
}

TEST_CASE("the largest, the smallest, the many-layered and the many-sided tank are drawn cleanly") {
  const std::vector<std::pair<std::string, Project>> projects{{"60 m by 20 m", sized(60, 20, 2.5, 1)},
                                                              {"1 m by 1 m", sized(1, 1, 0.8, 0)},
                                                              {"six coats", sixCoats()},
                                                              {"60 m by 0.5 m", sized(60, 0.5, 1, 0.1)},
                                                              {"32 sides", manySided(32)},
                                                              {"triangle", manySided(3)}};
  for (const auto& [name, project] : projects) {
    const core::Plan plan = planOf(project);
    for (const Named& drawing : all()) requireSound(drawing, plan, english(), name);
    for (const Named& drawing : all()) requireSound(drawing, plan, Formatter(QLocale("ne")), name);
  }
}

TEST_CASE("scales come from the usual round series and are written on the drawing") {
  // ISO 5455:1979 reduction scales 1:2, 1:5, 1:10 and their decimal multiples; 25 and 75 are common practice,
  // no source
  const std::set<int> series{2, 5, 10, 20, 25, 50, 75, 100, 200, 500, 1000, 2000, 5000};
  for (std::uint64_t seed = 0; seed < 12; ++seed) {
    const core::Plan plan = planOf(support::randomProject(seed));
    for (const Named& drawing : all()) {
      Drawn drawn;
      draw(drawn, drawing.draw, plan, english());
      CHECK(series.count(drawn.n) == 1);
      CHECK(drawn.recorder.says(QStringLiteral("Scale 1 : %1").arg(english().integer(drawn.n))));
    }
  }
}

TEST_CASE("the outermost outline of the plan measures the pit at its scale") {
  for (std::uint64_t seed = 0; seed < 30; ++seed) {
    Project project = support::randomProject(seed);
    project.lining.rim_width_m = project.lining.rim_thickness_m = 0;
    const core::Plan plan = planOf(project);
    Drawn drawn;
    draw(drawn, named("plan").draw, plan, english());
    QRectF widest;
    for (const auto& stroke : drawn.recorder.strokes) {
      const QRectF box = stroke.path.boundingRect();
      if (std::abs(stroke.width_mm - 0.7) < 1e-9 && box.width() > widest.width()) widest = box;
    }
    INFO("seed " << seed);
    // arcs are drawn with 144 chords to a full turn, so a rounded outline may fall short by 1 - cos(180/144
    // deg)
    const double tolerance = plan.geometry.outline().radius() > 0 ? 2.4e-4 : 1e-6;
    CHECK(widest.width() * drawn.n / 1000 == Approx(plan.earthwork.pit_top_length_m).epsilon(tolerance));
    CHECK(widest.height() * drawn.n / 1000 == Approx(plan.earthwork.pit_top_width_m).epsilon(tolerance));
  }
}

TEST_CASE("the thick pit line of the section is as deep and as wide as the pit") {
  const core::Plan plan = planOf(sized(6, 3.5, 1.5, 0.1));
  Drawn drawn;
  draw(drawn, named("section").draw, plan, english());
  const QRectF pit = [&] {
    QRectF deepest;
    for (const auto& stroke : drawn.recorder.strokes) {
      if (stroke.width_mm == 0.7 && stroke.path.boundingRect().height() > deepest.height())
        deepest = stroke.path.boundingRect();
    }
    return deepest;
  }();
  CHECK(pit.height() * drawn.n / 1000 == Approx(plan.earthwork.pit_depth_m).epsilon(1e-6));
  CHECK(pit.width() * drawn.n / 1000 == Approx(plan.earthwork.pit_top_width_m).epsilon(1e-6));
}

/// Texts in the order painted; one in several lines reads as one.
QString inLines(const Recorder& recorder) {
  return recorder.allText().replace(u'\n', u' ');
}

TEST_CASE("dimensions say clear or pit and give the plan's numbers") {
  const core::Plan plan = planOf(sized(6, 3.5, 1.5, 0.1));
  const Formatter format = english();
  const auto metres = [&](double value) { return format.quantity(value, Unit::metre, 2); };
  Drawn above, cut;
  draw(above, named("plan").draw, plan, format);
  CHECK(inLines(above.recorder).contains("clear floor length " + metres(plan.tank.clear_floor_length_m)));
  CHECK(inLines(above.recorder).contains("clear rim length " + metres(plan.tank.clear_rim_length_m)));
  CHECK(inLines(above.recorder).contains("pit top length " + metres(plan.earthwork.pit_top_length_m)));
  CHECK(inLines(above.recorder).contains("clear floor width " + metres(plan.tank.clear_floor_width_m)));
  draw(cut, named("section").draw, plan, format);
  CHECK(inLines(cut.recorder).contains("clear depth " + metres(plan.tank.depth_m)));
  CHECK(inLines(cut.recorder).contains("pit depth " + metres(plan.earthwork.pit_depth_m)));
  CHECK(inLines(cut.recorder).contains("pit floor width " + metres(plan.earthwork.pit_floor_width_m)));
  CHECK(inLines(cut.recorder).contains("clear rim width " + metres(plan.tank.clear_rim_width_m)));
}

TEST_CASE("the corner detail names every layer with its thickness") {
  const core::Plan plan = planOf(sixCoats());
  Drawn drawn;
  draw(drawn, named("corner").draw, plan, english());
  for (const auto& layer : plan.layers) {
    if (layer.id == "rim") continue;
    CHECK(drawn.recorder.says(ui::words::layerName(layer.id) + ","));
    CHECK(drawn.recorder.says(drawings::thicknessText(layer.thickness_m, english())));
  }
  CHECK(drawn.n <= 20);
}

TEST_CASE("every peg at ground level is named on the setting-out, with many corners the corners alone") {
  for (const Project& project : {Project{}, manySided(5), manySided(32)}) {
    const core::Plan plan = planOf(project);
    Drawn drawn;
    draw(drawn, named("setting out").draw, plan, english());
    std::set<QString> names;
    for (const auto& text : drawn.recorder.texts) names.insert(text.text);
    for (const auto& peg : plan.setting_out.pegs) {
      if (peg.kind == "pit_floor_corner") continue;
      if (project.tank.outline_m.size() > 12 && peg.kind != "pit_corner") continue;
      INFO(peg.id);
      CHECK(names.count(QString::fromStdString(peg.id)) == 1);
    }
  }
}

TEST_CASE("on a screen a drawing fills its box and is light on dark when asked") {
  const core::Plan plan = planOf(Project{});
  drawings::Style style;
  style.fixed_scale = false;
  style.dark = true;
  for (const Named& drawing : all()) {
    Drawn drawn;
    draw(drawn, drawing.draw, plan, english(), style);
    QRectF reach;
    for (const auto& text : drawn.recorder.texts) reach |= text.room.boundingRect();
    for (const auto& stroke : drawn.recorder.strokes) {
      reach |= stroke.path.boundingRect();
      CHECK(stroke.ink.lightness() > 200);
    }
    INFO(drawing.name);
    CHECK(kBox.adjusted(-0.5, -0.5, 0.5, 0.5).contains(reach));
    CHECK(std::max(reach.width() / kBox.width(), reach.height() / kBox.height()) > 0.85);
  }
}

TEST_CASE("neighbouring coats have different hatches, and hatches stay inside their region") {
  QPainterPath region;
  region.addPolygon(QPolygonF{{0, 0}, {30, 2}, {25, 20}, {12, 9}, {3, 18}});
  region.closeSubpath();
  QPainterPathStroker edge;
  edge.setWidth(0.02);
  const QPainterPath allowed = region.united(edge.createStroke(region));
  for (int coat = 1; coat <= 6; ++coat) {
    const drawings::CoatHatch hatch = drawings::coatHatch(region, coat);
    CHECK(hatch.dots.isEmpty() == (coat % 2 == 0));
    CHECK(hatch.lines.isEmpty() == (coat % 2 == 1));
    for (const QPainterPath& path : {hatch.dots, hatch.lines}) {
      for (int k = 0; k < path.elementCount(); ++k) {
        const QPointF at = path.elementAt(k);
        CHECK(allowed.intersects(QRectF(at.x() - 0.01, at.y() - 0.01, 0.02, 0.02)));
      }
    }
  }
}
