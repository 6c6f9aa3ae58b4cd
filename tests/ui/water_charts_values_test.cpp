#include "tests/ui/water_charts_support.h"
#include "ui/drawings/chart_colours.h"
#include "ui/drawings/water_charts.h"
#include "ui/text/worth.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include <catch2/catch.hpp>

using core::Unit;
using core::water::BandDay;
using support::chart;
using support::DrawnChart;
using support::english;
using support::kFirstMonth;
using support::kPane;
using support::readers;
using support::Recorder;
using support::screen;
using support::Subject;
using ui::Formatter;
namespace drawings = ui::drawings;

namespace {

const support::RecordedText* textOf(const Recorder& recorder, const QString& text) {
  const auto found = std::ranges::find(recorder.texts, text, &support::RecordedText::text);
  return found == recorder.texts.end() ? nullptr : &*found;
}

/// Height on paper of the tick that is numbered `text`: the middle of its capitals.
double tickHeight(const Recorder& recorder, const QString& text) {
  const auto* found = textOf(recorder, text);
  REQUIRE(found);
  const QRectF room = found->room.boundingRect();
  double nearest = 1e9;
  for (const auto& stroke : recorder.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (box.height() > 1e-9 || box.width() > 2 || box.left() < room.right()) continue;
    if (std::abs(box.top() - room.center().y()) < std::abs(nearest - room.center().y())) nearest = box.top();
  }
  REQUIRE(std::abs(nearest - room.center().y()) < 2);
  return nearest;
}

/// Value of the height `y`, read off against two numbered ticks of the drawing.
double readOff(const Recorder& recorder, double y, double zero_at, double value, double value_at) {
  REQUIRE(recorder.texts.size() > 2);
  return (y - zero_at) / (value_at - zero_at) * value;
}

/// Upright lines in the colour of a mark.
std::vector<QRectF> marked(const Recorder& recorder, bool dark = false) {
  std::vector<QRectF> found;
  for (const auto& stroke : recorder.strokes) {
    if (stroke.ink == drawings::chartColours(dark).marked && std::abs(stroke.width_mm - 0.5) < 1e-6)
      found.push_back(stroke.path.boundingRect());
  }
  return found;
}

}  // namespace

TEST_CASE("the day drawn at a place is the day hit there") {
  Subject subject;
  for (const Formatter& format : readers()) {
    for (int day = 0; day < 365; day += 14) {
      subject.marks.day = day;
      const auto lines = marked(DrawnChart(chart("level"), kPane, subject, format, screen()));
      REQUIRE(!lines.empty());
      CHECK(drawings::dayAt(kPane, lines[0].center(), subject.plan, format, screen()) == day);
    }
  }
  CHECK_FALSE(drawings::dayAt(kPane, kPane.topLeft(), subject.plan, english(), screen()));
}

TEST_CASE("the month drawn at a place is the month hit there, from the weather year's first on") {
  Subject subject;
  double last = 0;
  for (int k = 0; k < 12; ++k) {
    const int month = (kFirstMonth + k) % 12;
    subject.marks.month = month;
    const auto frames = marked(DrawnChart(chart("flows"), kPane, subject, english(), screen()));
    REQUIRE(!frames.empty());
    QRectF reach;
    for (const QRectF& frame : frames) reach |= frame;
    CHECK(drawings::monthAt(kPane, reach.center(), subject.plan, english(), screen()) == month);
    CHECK(reach.center().x() > last);
    last = reach.center().x();
  }
  CHECK_FALSE(drawings::monthAt(kPane, kPane.bottomRight(), subject.plan, english(), screen()));
}

TEST_CASE("the cell drawn at a place is the cell hit there") {
  Subject subject;
  subject.plan.curve.full_m3 = 1000;  // no cross in the way
  for (int column = 1; column < 63; column += 7) {
    for (int row = 1; row < 63; row += 7) {
      subject.marks.cell = QPoint(column, row);
      const DrawnChart drawn(chart("map"), kPane, subject, english(), screen());
      const auto isCell = [](const support::RecordedStroke& stroke) {  // the only rectangle in such a line
        return std::abs(stroke.width_mm - 0.7) < 1e-6 && stroke.path.elementCount() == 5;
      };
      const auto cell = std::ranges::find_if(drawn.strokes, isCell);
      INFO(column << ", " << row);
      REQUIRE(cell != drawn.strokes.end());
      const auto hit =
          drawings::cellAt(kPane, cell->path.boundingRect().center(), subject.map, english(), screen());
      CHECK(hit == QPoint(column, row));
    }
  }
}

TEST_CASE("the point of the storage curve drawn at a place is the point hit there") {
  Subject subject;
  for (int point = 0; point < static_cast<int>(subject.plan.storage.size()); ++point) {
    subject.marks.point = point;
    const auto lines = marked(DrawnChart(chart("storage"), kPane, subject, english(), screen()));
    REQUIRE(!lines.empty());
    CHECK(drawings::storagePointAt(kPane, lines[0].center(), subject.plan, english(), screen()) == point);
  }
}

TEST_CASE("levels read off the drawing are the plan's") {
  const Subject subject;
  const DrawnChart drawn(chart("level"), kPane, subject, english(), screen());
  const auto bold = std::ranges::max(drawn.strokes, {}, [](const support::RecordedStroke& stroke) {
    return std::abs(stroke.width_mm - 0.9) < 1e-6 ? stroke.path.boundingRect().width() : 0;
  });
  const double zero = tickHeight(drawn, "0"), high = tickHeight(drawn, "20,000");
  REQUIRE(bold.path.elementCount() > 360);
  const QRectF reach = bold.path.boundingRect();
  double highest = 0, lowest = 1e9;
  for (const BandDay& day : subject.plan.band) {
    highest = std::max(highest, day.p50);
    lowest = std::min(lowest, day.p50);
  }
  CHECK(readOff(drawn, reach.top(), zero, 20, high) == Approx(highest).epsilon(1e-6));
  CHECK(readOff(drawn, reach.bottom(), zero, 20, high) == Approx(lowest).epsilon(1e-6));
}

TEST_CASE("bars read off the drawing are the plan's, and what is missing is marked on the need") {
  const Subject subject;
  const DrawnChart drawn(chart("flows"), kPane, subject, english(), screen());
  const double zero = tickHeight(drawn, "0"), high = tickHeight(drawn, "8,000");
  double tallest = zero;
  std::vector<QRectF> missing;
  for (const auto& fill : drawn.fills) {
    const QRectF box = fill.path.boundingRect();
    if (box.top() > 25 && box.width() < 30) tallest = std::min(tallest, box.top());
  }
  for (const auto& stroke : drawn.strokes) {
    if (stroke.ink == drawings::chartColours(false).unmet && stroke.path.boundingRect().top() > 25)
      missing.push_back(stroke.path.boundingRect());
  }
  CHECK(readOff(drawn, tallest, zero, 8, high) == Approx(subject.plan.months[6].supply()).epsilon(1e-6));
  REQUIRE(missing.size() == 3);  // March to May, at the end of the chart
  for (std::size_t k = 0; k < 3; ++k) {
    const auto& flows = subject.plan.months[2 + k];
    // the frame's line is 0.6 mm wide and lies inside the bar
    CHECK(readOff(drawn, missing[k].top() - 0.3, zero, 8, high) == Approx(flows.need()).epsilon(1e-6));
    CHECK(readOff(drawn, missing[k].bottom(), zero, 8, high) == Approx(flows.drawn).epsilon(1e-6));
  }
}

TEST_CASE("cells of the map have the colour of their class") {
  const Subject subject;
  for (const bool dark : {false, true}) {
    const DrawnChart drawn(chart("map"), kPane, subject, english(), screen(dark));
    const std::vector<QColor> colours = drawings::ramp(6, dark);
    const double levels[] = {5, 7, 8, 9, 10};
    int compared = 0;
    for (double x = 20; x < 230; x += 3) {
      for (double y = 35; y < 120; y += 3) {
        const auto cell = drawings::cellAt(kPane, {x, y}, subject.map, english(), screen(dark));
        if (!cell || cell->x() < 1 || cell->y() < 1 || cell->x() > 62 || cell->y() > 62) continue;
        const auto classAt = [&](int dx, int dy) {
          const double years = subject.map.at(static_cast<std::size_t>(cell->x() + dx),
                                              static_cast<std::size_t>(cell->y() + dy));
          return std::ranges::upper_bound(levels, years + 1e-3) - std::begin(levels);
        };
        const auto own = classAt(0, 0);
        if (own != classAt(-1, 1) || own != classAt(1, -1)) continue;  // the least and the most of the nine
        QColor seen;
        for (const auto& fill : drawn.fills) {
          const bool patch = fill.ink == drawings::chartColours(dark).ground;
          if (!patch && fill.path.contains(QPointF(x, y))) seen = fill.ink;
        }
        CHECK(seen == colours[static_cast<std::size_t>(own)]);
        ++compared;
      }
    }
    CHECK(compared > 800);
  }
}

TEST_CASE("readings say the plan's numbers") {
  Subject subject;
  const Formatter format = english();
  BandDay& day = subject.plan.band[286];
  REQUIRE(day.month == 2);
  REQUIRE(day.day == 14);
  day.p50 = 12.3;
  day.p10 = 4.1;
  CHECK(drawings::levelReading(subject.plan, 286, format) ==
        "March 14: half of the years hold 12,300\u00a0L or more; one year in ten less than 4,100\u00a0L");
  auto& march = subject.plan.months[2];
  march = {};
  march.source = 8;
  march.rain = 0.25;
  march.beds = 10;
  march.people = 0.9;
  march.unmet = 2.65;
  march.dry_days = 4;
  CHECK(drawings::flowsReading(subject.plan, 2, format) ==
        "March: 8,250\u00a0L come in (source 8,000\u00a0L and rain on the tank 250\u00a0L).\n"
        "10,900\u00a0L are needed (beds 10,000\u00a0L and people 900\u00a0L). 2,650\u00a0L of it are "
        "missing, on "
        "4\u00a0days.");
  march = {};
  CHECK(drawings::flowsReading(subject.plan, 2, format) == "March: no water comes in.\nNothing is needed.");
  const QString cell = drawings::mapReading(subject.map, {40, 30}, format);
  CHECK(cell.contains(format.litres(subject.map.full_m3[40])));
  CHECK(cell.contains(format.quantity(subject.map.bed_area_m2[30], Unit::square_metre, 0)));
  CHECK(cell.contains(ui::words::yearsInTenText(subject.map.at(40, 30), format) + " of 10 years"));
  const QString point = drawings::storageReading(subject.plan, 12, format);
  CHECK(point.contains(format.litres(subject.plan.storage[12].full_m3)));
  CHECK(point.contains("in 9 of 10 years"));  // 10 (1 - exp(-2.4)) is 9.09, told rounded down
  CHECK(drawings::levelReading(subject.plan, 365, format).isEmpty());
  CHECK(drawings::flowsReading(subject.plan, 12, format).isEmpty());
  CHECK(drawings::mapReading(subject.map, {64, 0}, format).isEmpty());
  CHECK(drawings::storageReading(subject.plan, 21, format).isEmpty());
}

TEST_CASE("the smallest tank has no ring on the axis where almost any tank is enough") {
  Subject subject;
  subject.plan.smallest_full_m3 = 30.1;
  const auto says = [&](const char* text) {
    return DrawnChart(chart("storage"), kPane, subject, english(), screen()).says(QString::fromUtf8(text));
  };
  CHECK(says("enough: 31,000\u00a0L"));
  subject.plan.smallest_full_m3 = 0.009 * subject.plan.curve.full_m3;
  CHECK_FALSE(says("enough"));
}

TEST_CASE("the box of a reading never hides the place that it reads, nor at the right edge") {
  for (const Formatter& format : readers()) {
    for (const double share : {0., 0.03, 0.5, 0.97, 1.}) {
      Subject subject;
      const auto of = [&](std::size_t places) { return int(std::lround(share * double(places - 1))); };
      subject.marks.day = of(subject.plan.band.size());
      subject.marks.month = of(core::kMonths);
      subject.marks.point = of(subject.plan.storage.size());
      for (const char* name : {"level", "flows", "storage"}) {
        const DrawnChart drawn(chart(name), kPane, subject, format, screen());
        const auto mark = marked(drawn);
        const QRectF frame = drawn.strokes.back().path.boundingRect();
        INFO(name << " at " << share << " in " << format.locale().name().toStdString());
        REQUIRE_FALSE(mark.empty());
        REQUIRE(frame.height() > 3);  // not an axis
        for (const QRectF& line : mark) CHECK((frame.left() > line.right() || frame.right() < line.left()));
      }
      const QPoint cell(of(subject.map.full_m3.size()), of(subject.map.bed_area_m2.size()));
      subject.marks.cell = cell;
      const DrawnChart drawn(chart("map"), kPane, subject, format, screen());
      const QRectF frame = drawn.strokes.back().path.boundingRect();
      REQUIRE(frame.height() > 3);
      for (double x = frame.left(); x < frame.right(); x += 0.4) {
        for (double y = frame.top(); y < frame.bottom(); y += 0.4)
          REQUIRE(drawings::cellAt(kPane, {x, y}, subject.map, format, screen()) != cell);
      }
    }
  }
}
