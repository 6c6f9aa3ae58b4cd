#include "ui/drawings/delivery_charts.h"

#include "tests/ui/water_charts_support.h"
#include "ui/drawings/chart_colours.h"
#include "ui/text/words.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

using core::hydraulics::FieldPlan;
using core::hydraulics::LineFlow;
using core::hydraulics::LinePlan;
using core::hydraulics::OverflowPlan;
using support::english;
using support::faultsOnScreen;
using support::kPane;
using support::kSheet;
using support::readers;
using support::Recorder;
using support::screen;
using ui::Formatter;
namespace drawings = ui::drawings;
namespace hydraulics = core::hydraulics;

namespace {

constexpr double kRim_m = 1.5;

/// A line over a hump; heads made up, so that what is drawn can be told from what is computed.
LinePlan sampleLine() {
  LinePlan line;
  line.line.profile = {{0, 1.4}, {40, 2.5}, {100, -3}, {160, -6}};
  line.full_heads.upper_level_m = 1.35;
  line.low_heads.upper_level_m = 0.1;
  const auto flow = [&](double start_m) {
    LineFlow made;
    for (const auto& p : line.line.profile) {
      const double head = start_m + (-6 - start_m) * p.station_m / 160;
      made.points.push_back(
          {p.station_m, p.level_m, p.station_m, head + 0.1, head, head - p.level_m, 1.35 - p.level_m});
    }
    made.humps = {{40, 2.5, 1.1, 8.5, 2, -2.5}};
    made.above_head_line = {{0, 90, -2.5, 40}};
    return made;
  };
  line.full = flow(1.3);
  line.low = flow(0);
  return line;
}

FieldPlan sampleField() {
  FieldPlan field;
  field.empty_to_level_m = 0.1;
  hydraulics::Emptying emptying;
  emptying.seconds = 40000;
  for (int k = 0; k <= 20; ++k)
    emptying.curve.push_back({1.35 - 1.25 * k / 20, 40000 * std::pow(k / 20., 0.8)});
  field.emptying = emptying;
  return field;
}

OverflowPlan sampleOverflow(bool pipe = false) {
  OverflowPlan plan;
  if (pipe) plan.overflow.way = hydraulics::OverflowPipe{0.1, 2, 0.08};
  if (!pipe) plan.overflow.way = hydraulics::Notch{0.5};
  plan.overflow.sill_level_m = 1.3;
  plan.overflow.rim_level_m = plan.rim_level_m = kRim_m;
  plan.state = hydraulics::OverflowState{0.08, 1.38, 0.12, 0.05, hydraulics::PipeControl::entrance};
  plan.blocked = hydraulics::BlockedState{1.51, 0.04, {}};
  return plan;
}

struct Sample {
  LinePlan line = sampleLine();
  FieldPlan field = sampleField();
  OverflowPlan overflow = sampleOverflow();
  std::optional<int> marked;
};

using Draw =
    std::function<void(QPainter&, const QRectF&, const Sample&, const Formatter&, const drawings::Style&)>;

const std::vector<std::pair<std::string, Draw>>& all() {
  static const std::vector<std::pair<std::string, Draw>> list{
      {"head line",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const drawings::Style& style) {
         drawings::drawHeadLine(p, box, s.line, kRim_m, f, style, s.marked);
       }},
      {"emptying",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const drawings::Style& style) {
         drawings::drawEmptying(p, box, s.field, f, style, s.marked);
       }},
      {"overflow",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const drawings::Style& style) {
         drawings::drawOverflow(p, box, s.overflow, f, style);
       }}};
  return list;
}

struct Drawn : Recorder {
  Drawn(const Draw& draw, const QRectF& box, const Sample& sample, const drawings::Style& style = {},
        const Formatter& format = english())
      : Recorder(QSizeF(260, 297)) {
    QPainter painter(this);
    draw(painter, box, sample, format, style);
  }
};

std::vector<Sample> samples() {
  std::vector<Sample> list(1);
  Sample pipe;
  pipe.overflow = sampleOverflow(true);
  pipe.line.low = hydraulics::fault("inlet_dry");
  pipe.field.emptying->seconds = 400000;
  for (auto& p : pipe.field.emptying->curve) p.seconds *= 10;
  list.push_back(pipe);
  Sample over;  // the storm goes over the rim
  over.overflow.state = hydraulics::OverflowState{0.26, 1.56, -0.06, 0.05, hydraulics::PipeControl::entrance};
  over.line.full = over.line.low = hydraulics::fault("no_head");
  over.field.emptying->seconds = 4000;
  for (auto& p : over.field.emptying->curve) p.seconds /= 10;
  list.push_back(over);
  Sample blocked;
  blocked.overflow.blocked = hydraulics::fault("no_rim");
  blocked.overflow.state = hydraulics::fault("pipe_without_fall");
  blocked.line.full = hydraulics::fault("inlet_dry");
  list.push_back(blocked);
  return list;
}

/// The widest line that has the width and is the longest of its kind.
QPainterPath longest(const Recorder& drawn, double width_mm) {
  QPainterPath path;
  for (const auto& stroke : drawn.strokes) {
    if (std::abs(stroke.width_mm - width_mm) < 1e-9 && stroke.path.length() > path.length())
      path = stroke.path;
  }
  return path;
}

/// Where the mark stands: the only upright line of 0.5 mm.
double markOf(const Recorder& drawn) {
  for (const auto& stroke : drawn.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (std::abs(stroke.width_mm - 0.5) < 1e-9 && box.width() < 1e-9 && box.height() > 10) return box.left();
  }
  return -1;
}

}  // namespace

TEST_CASE("no chart of pipes and tank on paper has text on text or on a line, or anything outside its box") {
  for (const Sample& sample : samples()) {
    for (const Formatter& format : readers()) {
      for (const QRectF& box : {kSheet, QRectF(15, 20, 182, 90), QRectF(15, 20, 150, 150)}) {
        for (const auto& [name, draw] : all()) {
          const Drawn drawn(draw, box, sample, {}, format);
          const QStringList faults = support::faultsOnPaper(drawn, box);
          INFO(name << " in " << format.locale().name().toStdString() << ", box " << box.width() << " by "
                    << box.height() << "\n"
                    << faults.join(u'\n').toStdString());
          CHECK(faults.isEmpty());
          CHECK(drawn.strokes.size() > 4);
        }
      }
    }
  }
}

TEST_CASE("on a screen charts of pipes and tank keep texts apart and in their box, marked or not") {
  for (Sample sample : samples()) {
    for (const std::optional<int> marked : {std::optional<int>(), std::optional<int>(2)}) {
      sample.marked = marked;
      for (const bool dark : {false, true}) {
        for (const auto& [name, draw] : all()) {
          const Drawn drawn(draw, kPane, sample, screen(dark));
          const QStringList faults = faultsOnScreen(drawn, kPane);
          INFO(name << "\n" << faults.join(u'\n').toStdString());
          CHECK(faults.isEmpty());
          for (const auto& text : drawn.texts)
            CHECK(support::contrast(text.ink, drawings::chartColours(dark).ground) >= 4.5);
        }
      }
    }
  }
}

TEST_CASE("without data a sentence stands where a chart of pipes and tank would") {
  Sample empty;
  empty.line = {};
  empty.field = {};
  empty.overflow = {};
  for (const auto& [name, draw] : all()) {
    const Drawn drawn(draw, kSheet, empty);
    INFO(name);
    CHECK(drawn.strokes.empty());
    CHECK_FALSE(drawn.texts.empty());
    CHECK(faultsOnScreen(drawn, kSheet).isEmpty());
  }
  CHECK(Drawn(all()[0].second, kSheet, empty).says("Enter the way"));
  CHECK(Drawn(all()[1].second, kSheet, empty).says("not emptied"));
  CHECK(Drawn(all()[2].second, kSheet, empty).says("no room"));
  empty.field.emptying = hydraulics::fault("does_not_empty");
  CHECK(Drawn(all()[1].second, kSheet, empty).says("How the tank empties"));
}

TEST_CASE("a line that does not flow is drawn with the reason in words") {
  Sample sample;
  sample.line.full = sample.line.low = hydraulics::fault("no_head");
  const Drawn both(all()[0].second, kSheet, sample);
  CHECK(both.says("No flow"));
  CHECK(both.says(ui::words::hydraulicsFault("no_head").left(12)));
  CHECK(longest(both, 0.9).elementCount() == 4);  // the pipe's four points
  Sample half;
  half.line.full = hydraulics::fault("no_head");
  const Drawn full_only(all()[0].second, kSheet, half);
  CHECK(full_only.says("Tank full, no flow"));
  CHECK(full_only.says("head, nearly empty"));
  CHECK_FALSE(full_only.says("Tank nearly empty"));
  CHECK_FALSE(drawings::headPointAt(kSheet, kSheet.center(), sample.line, kRim_m, english(), {}));
}

TEST_CASE("pipe and head line share one even scale along and up") {
  const Sample sample;
  const Drawn drawn(all()[0].second, kSheet, sample);
  const QPainterPath pipe = longest(drawn, 0.9);
  const auto& profile = sample.line.line.profile;
  REQUIRE(pipe.elementCount() == static_cast<int>(profile.size()));
  const QPointF first = pipe.elementAt(0), last = pipe.elementAt(3);
  const double across = (last.x() - first.x()) / 160;      // mm per metre
  const double up = (last.y() - first.y()) / (-6. - 1.4);  // mm per metre, y downward
  CHECK(across > 0);
  CHECK(up < 0);
  for (int k = 0; k < 4; ++k) {
    const auto& p = profile[static_cast<std::size_t>(k)];
    CHECK(pipe.elementAt(k).x == Approx(first.x() + across * p.station_m));
    CHECK(pipe.elementAt(k).y == Approx(first.y() + up * (p.level_m - 1.4)));
  }
  std::set<int> starts;  // both head lines start where they should
  for (const auto& stroke : drawn.strokes) {
    if (std::abs(stroke.width_mm - 0.5) > 1e-9 || stroke.path.elementCount() < 4) continue;
    for (const double start : {1.3, 0.}) {
      if (std::abs(stroke.path.elementAt(0).y - (first.y() + up * (start - 1.4))) < 1e-6)
        starts.insert(static_cast<int>(10 * start));
    }
  }
  CHECK(starts.size() == 2);
}

TEST_CASE("only where the pipe sucks is there a hatch, and a high point has its sign") {
  Sample sample;
  const Drawn drawn(all()[0].second, kSheet, sample);
  CHECK(drawn.says("suction"));
  CHECK(drawn.says("high point"));
  const QPainterPath pipe = longest(drawn, 0.9);
  const double to = pipe.elementAt(0).x + (pipe.elementAt(3).x - pipe.elementAt(0).x) * 90 / 160;
  bool hatched = false;
  for (const auto& stroke : drawn.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (std::abs(stroke.width_mm - 0.25) > 1e-9 || box.height() < 5) continue;
    hatched = true;
    CHECK(box.left() >= pipe.elementAt(0).x - 1e-6);
    CHECK(box.right() <= to + 1e-6);
  }
  CHECK(hatched);
  for (auto* flow : {&sample.line.full, &sample.line.low}) {
    (*flow)->above_head_line.clear();
    (*flow)->humps.clear();
  }
  const Drawn calm(all()[0].second, kSheet, sample);
  CHECK_FALSE(calm.says("suction"));
  CHECK_FALSE(calm.says("high point"));
}

TEST_CASE("the place of a mark leads back to its point, in head diagram and emptying") {
  Sample sample;
  for (const drawings::Style& style : {drawings::Style{}, screen()}) {
    for (int k = 0; k < 4; ++k) {
      sample.marked = k;
      const double x = markOf(Drawn(all()[0].second, kPane, sample, style));
      REQUIRE(x > 0);
      for (const double nudge : {-0.5, 0.5}) {
        const double at = std::clamp(x + nudge, k == 0 ? x : 0, k == 3 ? x : 1e9);
        CHECK(drawings::headPointAt(kPane, {at, kPane.center().y()}, sample.line, kRim_m, english(), style) ==
              std::optional<int>(k));
      }
    }
    for (int k = 0; k <= 20; k += 5) {
      sample.marked = k;
      const double x = markOf(Drawn(all()[1].second, kPane, sample, style));
      REQUIRE(x > 0);
      CHECK(drawings::emptyingPointAt(kPane, {x, kPane.center().y()}, sample.field, english(), style) ==
            std::optional<int>(k));
    }
  }
  CHECK_FALSE(drawings::headPointAt(kPane, kPane.topLeft(), sample.line, kRim_m, english(), {}));
  CHECK_FALSE(drawings::emptyingPointAt(kPane, kPane.topLeft(), sample.field, english(), {}));
}

TEST_CASE("readings say where the pipe lies, what head or suction is in it, and how far the tank is down") {
  const Sample sample;
  const auto head = [&](int k) { return drawings::headReading(sample.line, kRim_m, k, english()); };
  const auto has = [](const QString& text, const char* part) {
    return QString(text).replace(QChar::Nbsp, QLatin1Char(' ')).contains(QLatin1String(part));
  };
  CHECK(has(head(1), "40.0 m along"));
  CHECK(has(head(1), "pipe 1.00 m over the rim"));  // 2.5 - 1.5
  CHECK(has(head(1), "suction 3.03 m"));            // 1.3 - 7.3 * 40 / 160 - 2.5
  CHECK(has(head(2), "pipe 4.50 m under the rim"));
  CHECK(has(head(2), "suction 0.26 m"));  // 1.3 - 7.3 * 100 / 160 + 3
  CHECK(head(-1).isEmpty());
  CHECK(head(4).isEmpty());
  const QString half = drawings::emptyingReading(sample.field, 20, english());
  CHECK(has(half, "11.1 hours"));  // 40,000 s
  CHECK(has(half, "0.10 m over the floor"));
  CHECK(drawings::emptyingReading(sample.field, 21, english()).isEmpty());
}

TEST_CASE("the emptying curve falls from full to the lowest level across all of the plot") {
  const Sample sample;
  const Drawn drawn(all()[1].second, kSheet, sample);
  const QPainterPath curve = longest(drawn, 0.9);
  REQUIRE(curve.elementCount() == 21);
  const QPointF first = curve.elementAt(0), last = curve.elementAt(20);
  for (int k = 0; k <= 20; ++k) {
    const auto& p = sample.field.emptying->curve[static_cast<std::size_t>(k)];
    CHECK(curve.elementAt(k).x == Approx(first.x() + (last.x() - first.x()) * p.seconds / 40000));
    CHECK(curve.elementAt(k).y ==
          Approx(first.y() + (last.y() - first.y()) * (1.35 - p.level_m) / 1.25).margin(1e-6));
  }
  CHECK(drawn.says("draws no lower"));
}

TEST_CASE("levels at the overflow stand in proportion, and all are named") {
  const Sample sample;
  const Drawn drawn(all()[2].second, kSheet, sample);
  for (const char* name : {"rim: 0", "sill: ", "lip: ", "in a storm: ", "when blocked: ", "freeboard left"})
    CHECK(drawn.says(name));
  QRectF beyond;  // the rim seen beyond the notch, from rim to sill
  for (const auto& stroke : drawn.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (std::abs(stroke.width_mm - 0.5) < 1e-9 && box.height() > 5 && box.width() > 5) beyond = box;
  }
  REQUIRE(beyond.height() > 5);
  const double up = beyond.height() / 0.2;  // mm per metre: the sill lies 0.2 m under the rim
  std::set<int> found;
  for (const auto& stroke : drawn.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (box.height() > 1e-9 || box.width() < 10) continue;
    // 0.12 m of freeboard; blocked 0.01 m over the rim and 0.04 m over the lip
    for (const double down : {0.12, -0.01, 0.03}) {
      if (std::abs(box.top() - (beyond.top() + up * down)) < 1e-6)
        found.insert(static_cast<int>(std::lround(100 * down)));
    }
  }
  CHECK(found == std::set<int>{-1, 3, 12});
}

TEST_CASE("a box too small for a chart of pipes and tank stays empty") {
  const QRectF box(0, 0, 30, 14);
  for (const auto& [name, draw] : all()) {
    const Drawn drawn(draw, box, {}, screen());
    INFO(name);
    CHECK(drawn.texts.empty());
    CHECK(drawn.strokes.empty());
  }
}
