#include "core/works/build_days.h"
#include "tests/support/random_project.h"
#include "tests/support/random_tank.h"
#include "tests/support/recorder.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/isometric_view.h"
#include "ui/drawings/leaders.h"
#include "ui/text/words.h"

#include <QPainter>
#include <cmath>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

using core::Project;
using core::Unit;
using core::geometry::Built;
using support::Recorder;
using ui::Formatter;
using ui::UnitSystem;
namespace drawings = ui::drawings;

namespace {

const QRectF kBox(15, 30, 182, 170);  // room of a drawing on an A4 sheet

struct Made {
  Project project;
  core::Plan plan;
};

using Draw = std::function<int(QPainter&, const Made&, const Formatter&, const drawings::Style&)>;

struct Named {
  std::string name;
  Draw draw;
};

Draw isometricOf(const Built& built) {
  return [built](QPainter& p, const Made& made, const Formatter& f, const drawings::Style& s) {
    return drawings::drawIsometric(p, kBox, made.plan, f, s, built);
  };
}

const Named kBoard{"batter board",
                   [](QPainter& p, const Made& made, const Formatter& f, const drawings::Style& s) {
                     return drawings::drawBatterBoard(p, kBox, made.plan, f, s);
                   }};
const Named kRod{"depth rod",
                 [](QPainter& p, const Made& made, const Formatter& f, const drawings::Style& s) {
                   return drawings::drawDepthRod(p, kBox, made.plan, f, s);
                 }};
const Named kPipes{"pipes", [](QPainter& p, const Made& made, const Formatter& f, const drawings::Style& s) {
                     return drawings::drawPipeDetails(p, kBox, made.project, made.plan, f, s);
                   }};

struct Drawn {
  Recorder recorder{QSizeF(210, 297)};
  int n = 0;
};

void draw(Drawn& into, const Draw& how, const Made& made, const Formatter& format,
          const drawings::Style& style = {}) {
  QPainter painter(&into.recorder);
  into.n = how(painter, made, format, style);
}

Formatter english(UnitSystem system = UnitSystem::metric) {
  return Formatter(QLocale(QLocale::English), system);
}

Made madeOf(const Project& project) {
  auto plan = core::plan(project);
  REQUIRE(plan);
  return {project, std::move(*plan)};
}

/// The tank of geometry tests, as far as it can be planned.
std::optional<Made> madeOf(const support::TankAndLining& tank) {
  Project project;
  project.tank = tank.tank;
  project.lining.coats = tank.lining.coats;
  project.lining.stone_bed_m = tank.lining.stone_bed_m;
  project.lining.cove_radius_m = tank.lining.cove_radius_m;
  project.lining.rim_width_m = tank.lining.rim_width_m;
  project.lining.rim_thickness_m = tank.lining.rim_thickness_m;
  auto plan = core::plan(project);
  if (!plan) return std::nullopt;
  return Made{project, std::move(*plan)};
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

Project thick(double batter) {
  Project project = sized(8, 6, 1.2, batter);
  project.lining.coats.assign(6, core::Coat{0.02, 3, 3, 1, 3});
  project.lining.cove_radius_m = 0.2;
  project.lining.rim_width_m = 0.4;
  project.lining.rim_thickness_m = 0.2;
  return project;
}

std::vector<std::pair<std::string, Project>> extremes() {
  return {{"60 m by 20 m", sized(60, 20, 2.5, 1)},
          {"1 m by 1 m", sized(1, 1, 0.8, 0)},
          {"very flat walls", thick(2)},
          {"upright, six coats", thick(0)},
          {"0.3 m deep", sized(6, 4, 0.3, 0.5)},
          {"4 m deep", sized(30, 30, 4, 2)},
          {"60 m by 0.5 m", sized(60, 0.5, 1, 0.1)},
          {"32 sides", manySided(32)},
          {"triangle", manySided(3)}};
}

bool isBlank(const support::RecordedFill& fill) {
  return fill.ink == QColor(Qt::white);
}

/// Bare paper that hides what lies behind is no ink: it may not be solid black, and lies under no text, for
/// texts are painted last.
QStringList faults(const Recorder& recorder) {
  Recorder inked(QSizeF(210, 297));
  inked.texts = recorder.texts;
  inked.strokes = recorder.strokes;
  for (const auto& fill : recorder.fills) {
    if (!isBlank(fill)) inked.fills.push_back(fill);
  }
  return support::faultsOnPaper(inked, kBox);
}

void requireSound(const Named& drawing, const Made& made, const Formatter& format, const std::string& what) {
  Drawn drawn;
  draw(drawn, drawing.draw, made, format);
  const QStringList found = faults(drawn.recorder);
  INFO(drawing.name << " of " << what << " at 1:" << drawn.n << "\n" << found.join(u'\n').toStdString());
  REQUIRE(found.isEmpty());
  for (const auto& fill : drawn.recorder.fills)
    CHECK(kBox.adjusted(-0.5, -0.5, 0.5, 0.5).contains(fill.path.boundingRect()));
}

std::vector<Named> stagesOf(const Made& made) {
  std::vector<Named> list;
  for (const core::works::BuildDay& day : core::works::buildStages(made.plan.geometry, true))
    list.push_back({"isometric " + day.stage, isometricOf(day.built)});
  return list;
}

/// All that is painted, in words, to tell drawings apart.
QString trace(const Recorder& recorder) {
  QString all;
  const auto add = [&](const QPainterPath& path) {
    for (int k = 0; k < path.elementCount(); ++k)
      all += QStringLiteral("%1 %2,").arg(path.elementAt(k).x, 0, 'f', 3).arg(path.elementAt(k).y, 0, 'f', 3);
    all += u';';
  };
  for (const auto& stroke : recorder.strokes) add(stroke.path);
  for (const auto& fill : recorder.fills) add(fill.path);
  return all;
}

/// Longest straight strokes of a width, in a direction on paper [mm].
double longest(const Recorder& recorder, double width_mm, QPointF way) {
  double most = 0;
  for (const auto& stroke : recorder.strokes) {
    if (std::abs(stroke.width_mm - width_mm) > 1e-6) continue;
    for (int k = 1; k < stroke.path.elementCount(); ++k) {
      const QPointF step = QPointF(stroke.path.elementAt(k)) - QPointF(stroke.path.elementAt(k - 1));
      const double length = std::hypot(step.x(), step.y());
      if (std::abs(step.x() * way.y() - step.y() * way.x()) < 1e-6 * length) most = std::max(most, length);
    }
  }
  return most;
}

}  // namespace

TEST_CASE("details and stages of random tanks have no text on text and nothing outside their box") {
  for (std::uint64_t seed = 0; seed < 90; ++seed) {
    const Made made = madeOf(support::randomProject(seed));
    const Formatter format = english(seed % 5 == 4 ? UnitSystem::feet_inches : UnitSystem::metric);
    const std::string what = "seed " + std::to_string(seed);
    for (const Named& detail : {kBoard, kRod, kPipes}) requireSound(detail, made, format, what);
    const auto stages = stagesOf(made);
    requireSound(stages[seed % stages.size()], made, format, what);
  }
}

TEST_CASE("details and stages of tanks at the ends of their ranges are drawn cleanly") {
  for (const auto& [name, project] : extremes()) {
    const Made made = madeOf(project);
    for (const Named& detail : {kBoard, kRod, kPipes}) {
      requireSound(detail, made, english(), name);
      requireSound(detail, made, Formatter(QLocale("ne")), name);
    }
    for (const Named& stage : stagesOf(made)) requireSound(stage, made, english(), name);
  }
}

TEST_CASE("tanks of every kind that geometry allows are drawn cleanly") {
  support::RandomTanks tanks(52);
  int drawn = 0;
  for (int n = 0; n < 60; ++n) {
    const auto made = madeOf(tanks.next(static_cast<core::Shape>(n % 3)));
    if (!made) continue;
    ++drawn;
    for (const Named& detail : {kBoard, kRod, kPipes})
      requireSound(detail, *made, english(), std::to_string(n));
    const auto stages = stagesOf(*made);
    requireSound(stages[static_cast<std::size_t>(n) % stages.size()], *made, english(), std::to_string(n));
  }
  CHECK(drawn >= 30);
}

TEST_CASE("the isometric drawing changes from stage to stage, on the same block at the same scale") {
  for (const auto& [name, project] : extremes()) {
    const Made made = madeOf(project);
    std::set<int> scales;
    QString before;
    std::set<QString> blocks;
    for (const Named& stage : stagesOf(made)) {
      Drawn drawn;
      draw(drawn, stage.draw, made, english());
      scales.insert(drawn.n);
      const QString now = trace(drawn.recorder);
      INFO(name << ", " << stage.name);
      if (stage.name != "isometric platform")
        CHECK(now != before);  // the block is level ground from the start
      before = now;
      QRectF block;
      for (const auto& fill : drawn.recorder.fills) block |= fill.path.boundingRect();
      blocks.insert(QStringLiteral("%1 %2").arg(block.left(), 0, 'f', 6).arg(block.bottom(), 0, 'f', 6));
    }
    CHECK(scales.size() == 1);
    CHECK(blocks.size() == 1);
  }
}

TEST_CASE("the isometric drawing is to one scale along its three directions") {
  Project project = sized(6, 4, 1.5, 0);
  project.tank.corner_radius_m = 0;
  project.lining.rim_width_m = project.lining.rim_thickness_m = 0;
  const Made made = madeOf(project);
  Built dug;
  dug.has_stone_bed = false;
  dug.coats = 0;
  Drawn drawn;
  draw(drawn, isometricOf(dug), made, english());
  const double per_m = 1000. / drawn.n;
  // ISO 5456-3: axes at 30 degrees to the level, true lengths along them at one scale
  const QPointF x(std::sqrt(0.75), 0.5), y(std::sqrt(0.75), -0.5), up(0, 1);
  CHECK(longest(drawn.recorder, 0.7, x) ==
        Approx(made.plan.earthwork.pit_top_length_m * per_m).epsilon(1e-6));
  CHECK(longest(drawn.recorder, 0.7, y) == Approx(made.plan.earthwork.pit_top_width_m * per_m).epsilon(1e-6));
  // the corner of the pit, from the edge to its floor
  const double depth = made.plan.earthwork.pit_depth_m * per_m;
  CHECK(std::ranges::any_of(drawn.recorder.strokes, [&](const support::RecordedStroke& stroke) {
    const QRectF box = stroke.path.boundingRect();
    return box.width() < 1e-6 && std::abs(box.height() - depth) < 1e-5;
  }));
  const drawings::IsometricView view(drawn.n);
  const QPointF step = view.at({1, 0}, 0) - view.at({0, 0}, 0);
  CHECK(std::hypot(step.x(), step.y()) == Approx(per_m));
}

TEST_CASE("the floor of a deep pit is hidden by the ground before it") {
  const Made made = madeOf(sized(3, 2, 4, 0));
  Built dug;
  dug.has_stone_bed = true;
  dug.coats = 0;
  Drawn with, without;
  draw(with, isometricOf(dug), made, english());
  dug.has_stone_bed = false;
  draw(without, isometricOf(dug), made, english());
  const auto rounded = [](const Recorder& recorder) {
    return std::ranges::count_if(recorder.strokes, [](const support::RecordedStroke& stroke) {
      for (int k = 0; k < stroke.path.elementCount(); ++k)
        if (stroke.path.elementAt(k).isCurveTo()) return true;
      return false;
    });
  };
  CHECK(rounded(with.recorder) == 0);  // no stone of the bed can be seen
  CHECK(rounded(without.recorder) == 0);
  Drawn shallow;
  dug.has_stone_bed = true;
  draw(shallow, isometricOf(dug), madeOf(sized(6, 4, 1, 0.2)), english());
  CHECK(rounded(shallow.recorder) == 1);
}

TEST_CASE("the batter board has the lean of the pit wall over 1 m or the pit's depth") {
  const Formatter format = english();
  const auto metres = [&](double value) { return format.quantity(value, Unit::metre, 2); };
  Drawn deep, shallow, upright;
  draw(deep, kBoard.draw, madeOf(sized(6, 4, 1.5, 0.15)), format);
  CHECK(deep.recorder.says(metres(1) + " up"));
  CHECK(deep.recorder.says(metres(0.15) + " out"));
  const Made flat = madeOf(sized(6, 4, 0.5, 1));
  draw(shallow, kBoard.draw, flat, format);
  CHECK(shallow.recorder.says(metres(flat.plan.earthwork.pit_depth_m) + " up"));
  CHECK(shallow.recorder.says(metres(flat.plan.earthwork.pit_depth_m) + " out"));
  draw(upright, kBoard.draw, madeOf(sized(6, 4, 1.5, 0)), format);
  CHECK_FALSE(upright.recorder.says(" out"));
  CHECK(upright.recorder.says("upright"));
  // the slanting side at the scale: 1 m up and 0.15 m out
  const double side = std::hypot(1, 0.15) * 1000 / deep.n;
  CHECK(longest(deep.recorder, 0.5, {0.15, -1}) == Approx(side).epsilon(1e-6));
}

TEST_CASE("every mark of the depth rod is named with its distance below the string, at true scale") {
  for (const Project& project : {Project{}, thick(0.3)}) {
    const Made made = madeOf(project);
    const Formatter format = english();
    Drawn drawn;
    draw(drawn, kRod.draw, made, format);
    std::vector<double> tips;
    for (const auto& fill : drawn.recorder.fills) {
      const QRectF box = fill.path.boundingRect();
      if (std::abs(box.width() - 1.6) < 1e-6 && std::abs(box.height() - 1.6) < 1e-6)
        tips.push_back(box.center().y());
    }
    const auto& levels = made.plan.setting_out.levels;
    REQUIRE(tips.size() == levels.size());
    std::ranges::sort(tips);
    for (const auto& level : levels) {
      INFO(level.id);
      CHECK(drawn.recorder.says(ui::words::levelName(level.id)));
      if (level.id != "rim")
        CHECK(drawn.recorder.says(format.quantity(level.below_ground_m, Unit::metre, 3) + " down"));
      CHECK(std::ranges::any_of(tips, [&](double y) {
        return std::abs((y - tips.front()) * drawn.n / 1000 - level.below_ground_m) < 1e-6;
      }));
    }
    CHECK(drawn.recorder.says("the clear floor"));
    CHECK(
        drawn.recorder.says("pit depth " + format.quantity(made.plan.earthwork.pit_depth_m, Unit::metre, 3)));
    CHECK(drawn.recorder.says("clear depth " + format.quantity(made.plan.tank.depth_m, Unit::metre, 3)));
  }
}

TEST_CASE("the pipe is that of the field line, or an example and called so") {
  const Formatter format = english();
  Drawn example, entered;
  Project project;
  project.delivery.reset();
  draw(example, kPipes.draw, madeOf(project), format);
  CHECK(example.recorder.says("pipe, 32 mm outside as an example"));
  project.delivery.emplace();
  project.delivery->field.route = {{0, 0}, {20, -3}};
  project.delivery->field.pipe.outside_mm = 63;
  draw(entered, kPipes.draw, madeOf(project), format);
  CHECK(entered.recorder.says("pipe, 63 mm outside"));
  CHECK_FALSE(entered.recorder.says("example"));
  const Made made = madeOf(project);
  CHECK(entered.recorder.says(drawings::thicknessText(made.plan.geometry.liningThickness(), format)));
  CHECK(entered.recorder.says("clear face"));
  CHECK(entered.recorder.says("pit wall"));
}

TEST_CASE("a tank without dead depth has no dead level on its pipe detail") {
  Project project;
  project.tank.dead_depth_m = 0;
  Drawn drawn;
  draw(drawn, kPipes.draw, madeOf(project), english());
  CHECK_FALSE(drawn.recorder.says("over the clear floor"));
}

TEST_CASE("texts that are spread keep their order and pitch and stand no higher than wanted") {
  const std::vector<double> wanted{0, 1, 1.5, 20, 20, 21};
  const std::vector<double> heights = drawings::spread(wanted, 6);
  CHECK(heights == std::vector<double>{0, 6, 12, 20, 26, 32});
}

TEST_CASE("what two convex polygons have in common is found") {
  const QPolygonF square{{0, 0}, {2, 0}, {2, 2}, {0, 2}}, shifted{{1, 1}, {3, 1}, {3, 3}, {1, 3}};
  QPolygonF turned = shifted;
  std::reverse(turned.begin(), turned.end());
  for (const QPolygonF& other : {shifted, turned}) {
    const QRectF common = drawings::convexCut(square, other).boundingRect();
    CHECK(common == QRectF(1, 1, 1, 1));
  }
  CHECK(drawings::convexCut(square, square.translated(5, 0)).isEmpty());
}
