#include "ui/drawings/works_charts.h"

#include "tests/support/recorder.h"
#include "tests/ui/water_charts_support.h"
#include "tests/ui/works_charts_support.h"
#include "ui/drawings/chart_colours.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <functional>
#include <set>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

using core::works::addDays;
using core::works::Filling;
using core::works::Task;
using core::works::WeatherWindow;
using core::works::Works;
using support::english;
using support::faultsOnScreen;
using support::kPane;
using support::kSheet;
using support::readers;
using support::Recorder;
using support::sampleFilling;
using support::sampleWindow;
using support::sampleWorks;
using support::screen;
using ui::Formatter;
namespace drawings = ui::drawings;

namespace {

const QRectF kTall(15, 20, 182, 190);  // most of an A4 sheet

struct Sample {
  Works works = sampleWorks();
  Filling filling = sampleFilling(9);
  WeatherWindow window = sampleWindow();
  std::optional<int> marked = {};
  int shifted_days = 0;
};

using Draw =
    std::function<void(QPainter&, const QRectF&, const Sample&, const Formatter&, const drawings::Style&)>;

const std::vector<std::pair<std::string, Draw>>& all() {
  using drawings::Style;
  static const std::vector<std::pair<std::string, Draw>> list{
      {"bars",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const Style& style) {
         drawings::drawWorkBars(p, box, s.works, f, style, s.marked, s.shifted_days);
       }},
      {"people", [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f,
                    const Style& style) { drawings::drawPeople(p, box, s.works, f, style, s.marked); }},
      {"filling", [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f,
                     const Style& style) { drawings::drawFilling(p, box, s.filling, f, style, s.marked); }},
      {"window", [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const Style& style) {
         drawings::drawWeatherWindow(p, box, s.window, f, style, s.marked);
       }}};
  return list;
}

const Draw& draw(const std::string& name) {
  return std::ranges::find(all(), name, &std::pair<std::string, Draw>::first)->second;
}

struct Drawn : Recorder {
  Drawn(const std::string& name, const QRectF& box, const Sample& sample, const drawings::Style& style = {},
        const Formatter& format = english())
      : Recorder(QSizeF(260, 297)) {
    QPainter painter(this);
    draw(name)(painter, box, sample, format, style);
    std::erase_if(strokes, [](const auto& stroke) { return stroke.path.isEmpty(); });  // wholly under a text
  }
};

std::vector<Sample> samples() {
  std::vector<Sample> list(1);
  Sample slow;  // filling takes most of a year
  slow.works = sampleWorks(250);
  slow.filling = sampleFilling(340);
  slow.window.best = slow.window.chosen;
  list.push_back(slow);
  Sample quick;
  quick.works = sampleWorks(1);
  quick.filling = sampleFilling(1);
  quick.filling.full_on.reset();
  quick.window.chosen = 0;
  quick.window.best = 51;
  list.push_back(quick);
  return list;
}

/// Frame of a mark: the only broken line, 0.5 mm wide, that bounds a column or a bar.
QRectF frameOf(const Recorder& drawn, double width_mm) {
  const QColor marked = drawings::chartColours(false).marked;
  for (const auto& stroke : drawn.strokes) {
    if (stroke.ink == marked && std::abs(stroke.width_mm - width_mm) < 1e-9)
      return stroke.path.boundingRect();
  }
  return {};
}

/// Where the bars of a colour stand on a screen.
std::vector<QRectF> filled(const Recorder& drawn, const QColor& colour) {
  std::vector<QRectF> rooms;
  for (const auto& fill : drawn.fills) {
    if (fill.ink == colour) rooms.push_back(fill.path.boundingRect());
  }
  return rooms;
}

QString plain(QString text) {
  return text.replace(QChar::Nbsp, QLatin1Char(' '));
}

}  // namespace

TEST_CASE("no chart of the works on paper has text on text or on a line, or anything outside its box") {
  for (const Sample& sample : samples()) {
    for (const Formatter& format : readers()) {
      for (const QRectF& box : {kSheet, kTall, QRectF(15, 20, 182, 80), QRectF(10, 10, 130, 120)}) {
        for (const auto& [name, how] : all()) {
          const Drawn drawn(name, box, sample, {}, format);
          const QStringList faults = support::faultsOnPaper(drawn, box);
          INFO(name << " in " << format.locale().name().toStdString() << ", box " << box.width() << " by "
                    << box.height() << "\n"
                    << faults.join(u'\n').toStdString());
          CHECK(faults.isEmpty());
          CHECK(drawn.strokes.size() > 4);
          CHECK(drawn.texts.size() > 5);
        }
      }
    }
  }
}

TEST_CASE("on a screen charts of the works keep texts apart and in their box, marked or dragged") {
  for (Sample sample : samples()) {
    for (const int shift : {0, 4, -40, 400}) {
      for (const std::optional<int> marked :
           {std::optional<int>(), std::optional<int>(0), std::optional<int>(12)}) {
        sample.marked = marked;
        sample.shifted_days = shift;
        for (const QRectF& box : {kPane, QRectF(2, 2, 181, 75), QRectF(2, 2, 100, 60)}) {
          for (const bool dark : {false, true}) {
            for (const auto& [name, how] : all()) {
              const Drawn drawn(name, box, sample, screen(dark));
              const QStringList faults = faultsOnScreen(drawn, box);
              INFO(name << ", box " << box.width() << " by " << box.height() << "\n"
                        << faults.join(u'\n').toStdString());
              CHECK(faults.isEmpty());
              for (const auto& text : drawn.texts)
                CHECK(support::contrast(text.ink, drawings::chartColours(dark).ground) >= 4.5);
            }
          }
        }
      }
    }
  }
}

TEST_CASE("long names and names from right to left are fitted into charts of the works") {
  for (const bool right_to_left : {false, true}) {
    support::Wordy wordy(right_to_left);
    const Formatter format(QLocale(right_to_left ? QLocale::Hebrew : QLocale::Spanish));
    QCoreApplication::installTranslator(&wordy);
    QStringList faults;
    bool shortened = false;
    for (const QRectF& box : {kTall, QRectF(15, 20, 150, 120)}) {
      for (const auto& [name, how] : all()) {
        const Drawn drawn(name, box, {}, {}, format);
        faults << support::faultsOnPaper(drawn, box);
        shortened = shortened || drawn.says(QStringLiteral("…"));
      }
    }
    QCoreApplication::removeTranslator(&wordy);
    INFO(faults.join(u'\n').toStdString());
    CHECK(faults.isEmpty());
    if (!right_to_left) CHECK(shortened);
  }
}

TEST_CASE("without works a sentence stands where their chart would, and too small a box stays empty") {
  Sample empty;
  empty.works = {};
  empty.filling = {};
  empty.window = {};
  for (const auto& [name, how] : all()) {
    const Drawn drawn(name, kSheet, empty);
    INFO(name);
    CHECK(drawn.strokes.empty());
    CHECK(drawn.says(QStringLiteral("Enter")));
    CHECK(faultsOnScreen(drawn, kSheet).isEmpty());
    for (const QRectF& tiny : {QRectF(0, 0, 30, 14), QRectF(0, 0, 3, 2), QRectF()}) {
      for (const drawings::Style& style : {drawings::Style{}, screen()}) {
        const Drawn none(name, tiny, {}, style);
        CHECK(none.strokes.empty());
        CHECK(none.texts.empty());
      }
    }
  }
  const QRectF tiny(0, 0, 30, 14);
  const Sample sample;
  const Formatter f = english();
  for (const auto& [box, s] : {std::pair(tiny, sample), std::pair(kPane, empty)}) {
    CHECK_FALSE(drawings::workBarAt(box, box.center(), s.works, f, screen()));
    CHECK(drawings::workBarDayWidth(box, s.works, f, screen()) == 0);
    CHECK_FALSE(drawings::peopleDayAt(box, box.center(), s.works, f, screen()));
    CHECK_FALSE(drawings::fillingDayAt(box, box.center(), s.filling, f, screen()));
    CHECK_FALSE(drawings::weekAt(box, box.center(), s.window, f, screen()));
  }
}

TEST_CASE("the row under a bar's name or bar is its task's") {
  Sample sample;
  const int count = static_cast<int>(sample.works.schedule.size());
  for (const drawings::Style& style : {drawings::Style{}, screen()}) {
    const Drawn drawn("bars", kPane, sample, style);
    int found = 0;
    for (int k = 0; k < count; ++k) {
      const QString name = ui::words::taskName(sample.works.schedule[static_cast<std::size_t>(k)].id);
      const auto text = std::ranges::find(drawn.texts, name, &support::RecordedText::text);
      if (text == drawn.texts.end()) continue;
      ++found;
      const QPointF at = text->room.boundingRect().center();
      CHECK(drawings::workBarAt(kPane, at, sample.works, english(), style) == std::optional<int>(k));
      CHECK(drawings::workBarAt(kPane, {kPane.right() - 5, at.y()}, sample.works, english(), style) ==
            std::optional<int>(k));
    }
    CHECK(found == count);
    CHECK_FALSE(drawings::workBarAt(kPane, kPane.topLeft(), sample.works, english(), style));
  }
}

TEST_CASE("bars stand on their days, and a drag of so many days moves the outline as far") {
  Sample sample;
  const double day = drawings::workBarDayWidth(kPane, sample.works, english(), screen());
  REQUIRE(day > 2);
  sample.marked = 7;  // coat 1, day 11, alone on it
  REQUIRE(sample.works.schedule[7].id == "coat_1");
  const QRectF at_rest = frameOf(Drawn("bars", kPane, sample, screen()), 0.5);
  REQUIRE(at_rest.width() > day);
  for (const int shift : {1, 5, -3}) {
    sample.shifted_days = shift;
    const Drawn dragged("bars", kPane, sample, screen());
    const QRectF ghost = frameOf(dragged, 0.7);
    CHECK(ghost.center().x() - at_rest.center().x() == Approx(shift * day).margin(1e-6));
    CHECK(dragged.says(english().date(addDays(sample.works.schedule[7].start, shift))));
  }
  // work on the day itself: from the start of the plot eleven days on, one day wide
  const auto bars = filled(Drawn("bars", kPane, Sample{}, screen()), drawings::chartColours(false).source);
  const auto coat = std::ranges::find_if(
      bars, [&](const QRectF& bar) { return std::abs(bar.center().x() - at_rest.center().x()) < 1e-6; });
  REQUIRE(coat != bars.end());
  CHECK(coat->width() == Approx(day));
}

TEST_CASE("a bar that rests is filled on its worked days alone") {
  Sample sample;
  sample.works.schedule = {sample.works.schedule[3]};  // digging, days 2 to 7, the fifth a Saturday
  REQUIRE(sample.works.schedule[0].id == "excavate");
  const double day = drawings::workBarDayWidth(kPane, sample.works, english(), screen());
  const auto parts = filled(Drawn("bars", kPane, sample, screen()), drawings::chartColours(false).source);
  REQUIRE(parts.size() == 3);  // one in the legend
  CHECK(parts[1].width() == Approx(3 * day));
  CHECK(parts[2].width() == Approx(2 * day));
  CHECK(parts[2].left() - parts[1].right() == Approx(day));
}

TEST_CASE("critical bars have a heavier edge, wetting a hatch, the last day a triangle") {
  const Sample sample;
  const Drawn drawn("bars", kTall, sample);
  int heavy = 0, light = 0;
  for (const auto& stroke : drawn.strokes) {
    const bool bar = stroke.path.elementCount() == 5 && stroke.path.boundingRect().height() > 1;
    if (bar && stroke.width_mm > 0.5) ++heavy;
    if (bar && std::abs(stroke.width_mm - 0.25) < 1e-9) ++light;
  }
  const auto critical = [](const Task& task) { return task.is_critical && !task.is_mark; };
  CHECK(heavy == 1 + std::ranges::count_if(sample.works.schedule, critical));  // one in the legend
  CHECK(light >= 2);
  for (const char* name : {"no room to slip", "room to slip", "kept wet", "filling", "last day"})
    CHECK(drawn.says(QLatin1String(name)));
  Works calm = sample.works;
  std::erase_if(calm.schedule, [](const Task& task) { return task.is_critical || task.is_mark; });
  Sample other;
  other.works = calm;
  const Drawn without("bars", kTall, other);
  CHECK_FALSE(without.says(QStringLiteral("no room to slip")));
  CHECK_FALSE(without.says(QStringLiteral("kept wet")));
  CHECK_FALSE(without.says(QStringLiteral("last day")));
}

TEST_CASE("however long filling takes, the weeks of building fill most of the chart of bars") {
  for (const int fill_days : {9, 60, 366}) {
    Sample sample;
    sample.works = sampleWorks(fill_days);
    const double day = drawings::workBarDayWidth(kTall, sample.works, english(), {});
    CHECK(20 * day > 0.5 * 0.6 * kTall.width());  // twenty days of building, names take a third
    const Drawn drawn("bars", kTall, sample);
    CHECK(drawn.says(QStringLiteral("until")) == (fill_days > 20));
    if (fill_days > 20) {
      const Task& fill = sample.works.schedule[12];
      REQUIRE(fill.id == "fill");
      CHECK(drawn.says(QStringLiteral("until ") + english().shortDate(fill.finish)));
      CHECK(Drawn("people", kSheet, sample).says(QStringLiteral("goes on until")));
    }
  }
}

TEST_CASE("all names have room at the height that the bars ask for") {
  for (const drawings::Style& style : {drawings::Style{}, screen()}) {
    const Sample sample;
    const QRectF box(4, 4, 182, drawings::workBarsHeight(sample.works, english(), style));
    const Drawn drawn("bars", box, sample, style);
    for (const Task& task : sample.works.schedule) CHECK(drawn.says(ui::words::taskName(task.id)));
  }
}

TEST_CASE("the place of a marked day leads back to it, for people, filling and weather") {
  for (Sample sample : samples()) {
    const int shown = 20;
    for (const int k : {0, 1, 7, shown - 1}) {
      sample.marked = k;
      const QRectF people = frameOf(Drawn("people", kPane, sample, screen()), 0.5);
      if (k < static_cast<int>(sample.works.days.size()))
        CHECK(drawings::peopleDayAt(kPane, people.center(), sample.works, english(), screen()) ==
              std::optional<int>(k));
      const QRectF week = frameOf(Drawn("window", kPane, sample, screen()), 0.5);
      CHECK(drawings::weekAt(kPane, week.center(), sample.window, english(), screen()) ==
            std::optional<int>(k));
      if (k >= static_cast<int>(sample.filling.days.size())) continue;
      const QRectF day = frameOf(Drawn("filling", kPane, sample, screen()), 0.5);  // at the end of the day
      CHECK(drawings::fillingDayAt(kPane, day.center() - QPointF(0.01, 0), sample.filling, english(),
                                   screen()) == std::optional<int>(k));
    }
    CHECK_FALSE(drawings::peopleDayAt(kPane, kPane.topLeft(), sample.works, english(), screen()));
    CHECK_FALSE(drawings::fillingDayAt(kPane, kPane.topLeft(), sample.filling, english(), screen()));
    CHECK_FALSE(drawings::weekAt(kPane, kPane.topLeft(), sample.window, english(), screen()));
  }
}

TEST_CASE("people of a day stand one on the other, as high as their number on the axis") {
  const Sample sample;
  const Drawn drawn("people", kPane, sample, screen());
  const auto& colours = drawings::chartColours(false);
  const auto labourers = filled(drawn, colours.band), masons = filled(drawn, colours.source);
  const auto tall = std::ranges::max_element(labourers, {}, &QRectF::height);
  const auto on_it = std::ranges::find_if(masons, [&](const QRectF& bar) {
    return std::abs(bar.left() - tall->left()) < 1e-6 && std::abs(bar.bottom() - tall->top()) < 1e-6;
  });
  REQUIRE(on_it != masons.end());
  CHECK(on_it->height() / tall->height() == Approx(3. / 11));  // coat 1: 11 labourers and 3 masons
}

TEST_CASE("bands of wall are wet until the day before the water covers them") {
  Sample sample;
  sample.filling.bands = {sample.filling.bands.back()};  // wet from 16 to 21 March, over the water
  sample.filling.bands[0].wet_until = addDays(sample.filling.start, 1);
  const Drawn drawn("filling", kPane, sample, screen());
  const auto sacks = filled(drawn, drawings::chartColours(false).runoff);
  REQUIRE(sacks.size() == 2);  // one in the legend
  const auto water = filled(drawn, drawings::chartColours(false).band);
  REQUIRE(water.size() == 1);
  const double day = water[0].width() / 9;
  CHECK(sacks[1].width() == Approx(6 * day));
  CHECK(water[0].left() - sacks[1].left() == Approx(4 * day));
  CHECK(drawn.says(QStringLiteral("full on")));
  sample.filling.full_on.reset();
  CHECK(Drawn("filling", kPane, sample, screen()).says(QStringLiteral("not full within a year")));
}

TEST_CASE("readings of the works say the plan's numbers") {
  const Sample sample;
  const auto bar = [&](int k) { return plain(drawings::workBarReading(sample.works, k, english())); };
  CHECK(bar(7) == "Place coat 1: 26 Feb, 1 day, 14 people (3 masons); no room to slip");
  CHECK(bar(4).startsWith("Carry the spoil to its heap: 17 Feb to 23 Feb"));
  CHECK(bar(4).contains("2 people; room to slip: 6"));
  CHECK(bar(8).contains("27 Feb to 1 Mar, 3 days, 1 person wetting"));
  CHECK(bar(14).endsWith("Wed 10 Mar 2027"));
  CHECK(bar(-1).isEmpty());
  CHECK(bar(15).isEmpty());
  const auto people = [&](int k) { return plain(drawings::peopleReading(sample.works, k, english())); };
  CHECK(people(11) == "Fri 26 Feb 2027: 11 labourers, 3 masons");
  CHECK(people(12) == "Sat 27 Feb 2027: 1 person wetting, 340 L for wetting, no work on this day");
  CHECK(people(5) == "Sat 20 Feb 2027: no work on this day");
  CHECK(people(-1).isEmpty());
  CHECK(people(100).isEmpty());
  const QString filling = plain(drawings::fillingReading(sample.filling, 8, english()));
  CHECK(filling.contains("Sun 28 Mar 2027: 2,500 L flow in, 100 L are lost"));
  CHECK(filling.contains("1.35 m over the floor, 24,300 L"));  // 18 m2 times 1.35 m
  CHECK(drawings::fillingReading(sample.filling, 9, english()).isEmpty());
  WeatherWindow window = sample.window;
  window.weeks[9] = {3, 5, 0.8, 0.12, 0, 0.08};
  CHECK(plain(drawings::weekReading(window, 9, english())) ==
        "Week from March 5: undisturbed 8 times of 10; heavy rain 12 %, frost 0 %, heat or cold 8 %");
  CHECK(drawings::weekReading(window, 52, english()).isEmpty());
}
