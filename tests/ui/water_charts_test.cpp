#include "ui/drawings/water_charts.h"

#include "tests/ui/water_charts_support.h"
#include "ui/drawings/chart_colours.h"

#include <catch2/catch.hpp>

using support::allCharts;
using support::chart;
using support::contrast;
using support::DrawnChart;
using support::english;
using support::faultsOnScreen;
using support::kPane;
using support::kSheet;
using support::Marks;
using support::NamedChart;
using support::readers;
using support::sampleMap;
using support::screen;
using support::Subject;
using support::subjects;
using ui::Formatter;
namespace drawings = ui::drawings;

TEST_CASE("no water chart on paper has text on text, text on a line, thin lines, small type or colours") {
  for (const Subject& subject : subjects()) {
    for (const Formatter& format : readers()) {
      for (const QRectF& box :
           {kSheet, QRectF(15, 20, 182, 80), QRectF(15, 20, 182, 240), QRectF(10, 10, 130, 90)}) {
        for (const NamedChart& named : allCharts()) {
          const DrawnChart drawn(named.draw, box, subject, format, {});
          const QStringList faults = support::faultsOnPaper(drawn, box);
          INFO(named.name << " of " << subject.plan.curve.full_m3 << " m3 in "
                          << format.locale().name().toStdString() << ", box " << box.width() << " by "
                          << box.height() << "\n"
                          << faults.join(u'\n').toStdString());
          REQUIRE(faults.isEmpty());
          REQUIRE(drawn.texts.size() > 8);
        }
      }
    }
  }
}

TEST_CASE("on a screen texts of water charts stay in their box and clear of each other, marked or not") {
  Marks marks;
  marks.day = 286;
  marks.month = 3;
  marks.point = 12;
  marks.cell = QPoint(40, 30);
  marks.refining = drawings::Refining::yes;
  for (Subject subject : subjects()) {
    for (const Formatter& format : readers()) {
      for (const QRectF& box : {kPane, QRectF(4, 4, 230, 60), QRectF(4, 4, 110, 62), QRectF(4, 4, 85, 70)}) {
        for (const NamedChart& named : allCharts()) {
          for (const Marks& mark : {Marks{}, marks}) {
            subject.marks = mark;
            const DrawnChart drawn(named.draw, box, subject, format, screen());
            const QStringList faults = faultsOnScreen(drawn, box);
            INFO(named.name << " of " << subject.plan.curve.full_m3 << " m3 in "
                            << format.locale().name().toStdString() << ", box " << box.width() << " by "
                            << box.height() << "\n"
                            << faults.join(u'\n').toStdString());
            REQUIRE(faults.isEmpty());
          }
        }
      }
    }
  }
}

TEST_CASE("a box too small for a water chart stays empty and hits nothing") {
  const QRectF box(0, 0, 30, 14);
  const Subject subject;
  for (const NamedChart& named : allCharts()) {
    const DrawnChart drawn(named.draw, box, subject, english(), screen());
    CHECK(drawn.texts.empty());
    CHECK(drawn.strokes.empty());
  }
  CHECK_FALSE(drawings::dayAt(box, box.center(), subject.plan, english(), screen()));
  CHECK_FALSE(drawings::monthAt(box, box.center(), subject.plan, english(), screen()));
  CHECK_FALSE(drawings::cellAt(box, box.center(), subject.map, english(), screen()));
  CHECK_FALSE(drawings::storagePointAt(box, box.center(), subject.plan, english(), screen()));
}

TEST_CASE("texts of water charts read at 4.5:1 on their ground, light and dark") {
  const QColor windows[] = {QColor(0xf3, 0xf1, 0xec), QColor(0x1f, 0x24, 0x26)};
  for (const bool dark : {false, true}) {
    for (const NamedChart& named : allCharts()) {
      const DrawnChart drawn(named.draw, kPane, {}, english(), screen(dark));
      REQUIRE(drawn.texts.size() > 8);
      for (const auto& text : drawn.texts) {
        INFO(named.name << " " << text.text.toStdString());
        CHECK(contrast(text.ink, windows[dark ? 1 : 0]) >= 4.5);
        CHECK(contrast(text.ink, drawings::chartColours(dark).ground) >= 4.5);
        // the last colour painted under the text is the ground, or none
        const QRectF room = text.room.boundingRect();
        QColor under = drawings::chartColours(dark).ground;
        for (const auto& fill : drawn.fills) {
          if (fill.path.contains(room.center())) under = fill.ink;
        }
        CHECK(contrast(text.ink, under) >= 4.5);
      }
    }
  }
}

TEST_CASE("without data a sentence stands where the chart would") {
  Subject empty;
  empty.plan = {};
  empty.map = {};
  for (const NamedChart& named : allCharts()) {
    for (const QRectF& box : {kSheet, kPane, QRectF(4, 4, 85, 40)}) {
      const DrawnChart drawn(named.draw, box, empty, english(), screen());
      INFO(named.name << drawn.allText().toStdString());
      CHECK(drawn.strokes.empty());
      CHECK(!drawn.texts.empty());
      CHECK(faultsOnScreen(drawn, box).isEmpty());
      CHECK(drawn.says(QStringLiteral("Enter")));
    }
  }
  empty.marks.refining = drawings::Refining::yes;
  CHECK(DrawnChart(chart("map"), kPane, empty, english(), screen()).says("being worked out"));
  empty.map = sampleMap(50, 100);
  empty.map.bed_area_m2 = {0};  // no beds: one row
  empty.map.years_in_ten.resize(empty.map.full_m3.size());
  CHECK(DrawnChart(chart("map"), kPane, empty, english(), screen()).says("Enter the beds"));
  CHECK_FALSE(drawings::cellAt(kPane, kPane.center(), empty.map, english(), screen()));
  CHECK_FALSE(drawings::dayAt(kPane, kPane.center(), empty.plan, english(), screen()));
  CHECK_FALSE(drawings::monthAt(kPane, kPane.center(), empty.plan, english(), screen()));
  CHECK_FALSE(drawings::storagePointAt(kPane, kPane.center(), empty.plan, english(), screen()));
}
