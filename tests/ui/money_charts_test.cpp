#include "ui/drawings/money_charts.h"

#include "tests/support/recorder.h"
#include "tests/ui/money_charts_support.h"
#include "tests/ui/water_charts_support.h"
#include "tests/ui/works_charts_support.h"
#include "ui/drawings/chart_colours.h"
#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

using core::compare::Candidate;
using core::compare::SearchResult;
using core::cost::CostPlan;
using core::cost::Spread;
using support::english;
using support::faultsOnScreen;
using support::kPane;
using support::kSheet;
using support::readers;
using support::Recorder;
using support::sampleOptions;
using support::screen;
using ui::Formatter;
namespace drawings = ui::drawings;

namespace {

const QRectF kTall(15, 20, 182, 190);  // most of an A4 sheet

struct Sample {
  core::Project project = support::moneyProject();
  CostPlan cost = support::sampleCost();
  Spread spread = support::sampleSpread();
  SearchResult search = support::sampleSearch();
  std::optional<Candidate> present = support::presentTank();
  std::vector<core::OptionResult> options = sampleOptions(3);
  std::optional<int> marked = {};
};

using Draw =
    std::function<void(QPainter&, const QRectF&, const Sample&, const Formatter&, const drawings::Style&)>;

const std::vector<std::pair<std::string, Draw>>& all() {
  using drawings::Style;
  static const std::vector<std::pair<std::string, Draw>> list{
      {"days",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const Style& style) {
         drawings::drawMoneyDays(p, box, s.project, s.cost, f, style, s.marked);
       }},
      {"linings",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const Style& style) {
         drawings::drawLinings(p, box, s.project, s.cost, f, style, s.marked);
       }},
      {"spread",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const Style& style) {
         drawings::drawSpread(p, box, s.project, s.spread, f, style, s.marked);
       }},
      {"frontier",
       [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f, const Style& style) {
         drawings::drawFrontier(p, box, s.project, s.search, s.present, f, style, s.marked);
       }},
      {"options", [](QPainter& p, const QRectF& box, const Sample& s, const Formatter& f,
                     const Style& style) { drawings::drawOptions(p, box, s.options, f, style); }}};
  return list;
}

struct Drawn : Recorder {
  Drawn(const std::string& name, const QRectF& box, const Sample& sample, const drawings::Style& style = {},
        const Formatter& format = english())
      : Recorder(QSizeF(260, 297)) {
    QPainter painter(this);
    std::ranges::find(all(), name, &std::pair<std::string, Draw>::first)
        ->second(painter, box, sample, format, style);
    std::erase_if(strokes, [](const auto& stroke) { return stroke.path.isEmpty(); });  // wholly under a text
  }
};

std::vector<Sample> samples() {
  std::vector<Sample> list(1);
  Sample small;  // one day, one lining, everything fixed, one size
  small.project.currency.clear();
  small.cost = support::sampleCost(1);
  small.cost.linings.resize(1);
  small.spread.p10 = small.spread.p50 = small.spread.p90 = small.spread.least = small.spread.most =
      small.spread.typical;
  small.search.frontier.resize(1);
  small.search.cheapest.reset();
  small.search.largest = small.search.frontier[0];
  small.present.reset();
  small.options = sampleOptions(1);
  list.push_back(small);
  Sample large;  // millions, a year, no water asked, no prices for the search
  large.cost = support::sampleCost(366);
  for (auto& day : large.cost.days) {
    day.goods *= 1000;
    day.wages *= 1000;
    day.together *= 1000;
  }
  large.spread.outcome = "person_days";
  large.search.by_cost = false;
  large.search.cheapest.reset();
  for (Candidate& candidate : large.search.frontier) {
    candidate.years_in_ten.reset();
    candidate.cost.reset();
  }
  large.options = sampleOptions(4);
  large.options[1].geometry.reset();
  list.push_back(large);
  return list;
}

QRectF frameOf(const Recorder& drawn) {
  for (const auto& stroke : drawn.strokes) {
    if (stroke.ink == drawings::chartColours(false).marked) return stroke.path.boundingRect();
  }
  return {};
}

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

TEST_CASE("no chart of money on paper has text on text or on a line, or anything outside its box") {
  for (const Sample& sample : samples()) {
    for (const Formatter& format : readers()) {
      for (const QRectF& box : {kSheet, kTall, QRectF(10, 10, 140, 100)}) {
        for (const auto& [name, how] : all()) {
          const Drawn drawn(name, box, sample, {}, format);
          const QStringList faults = support::faultsOnPaper(drawn, box);
          INFO(name << " in " << format.locale().name().toStdString() << ", box " << box.width() << " by "
                    << box.height() << "\n"
                    << faults.join(u'\n').toStdString());
          CHECK(faults.isEmpty());
          CHECK(drawn.strokes.size() > 4);
          CHECK(drawn.texts.size() > 3);
        }
      }
    }
  }
}

TEST_CASE("on a screen charts of money keep texts apart and in their box, marked or not") {
  for (Sample sample : samples()) {
    for (const std::optional<int> marked :
         {std::optional<int>(), std::optional<int>(0), std::optional<int>(5)}) {
      sample.marked = marked;
      for (const QRectF& box : {kPane, QRectF(2, 2, 181, 75), QRectF(2, 2, 100, 65)}) {
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

TEST_CASE("long names and names from right to left are fitted into charts of money") {
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

TEST_CASE("without money a sentence stands where its chart would, and too small a box stays empty") {
  Sample empty;
  empty.cost = {};
  empty.spread = {};
  empty.search = {};
  empty.options.clear();
  for (const auto& [name, how] : all()) {
    const Drawn drawn(name, kSheet, empty);
    INFO(name);
    CHECK(drawn.strokes.empty());
    CHECK_FALSE(drawn.texts.empty());
    CHECK(faultsOnScreen(drawn, kSheet).isEmpty());
    for (const QRectF& tiny : {QRectF(0, 0, 30, 14), QRectF(0, 0, 3, 2), QRectF()}) {
      for (const drawings::Style& style : {drawings::Style{}, screen()}) {
        const Drawn none(name, tiny, {}, style);
        CHECK(none.strokes.empty());
        CHECK(none.texts.empty());
      }
    }
  }
  empty.search.tried = 20;
  CHECK(Drawn("frontier", kSheet, empty).says(QStringLiteral("No size is within the limits")));
  empty.options = sampleOptions(1);
  empty.options[0].geometry.reset();
  CHECK(Drawn("options", kSheet, empty).says(QStringLiteral("None of the options")));
  const Sample sample;
  const Formatter f = english();
  for (const auto& [box, s] : {std::pair(QRectF(0, 0, 30, 14), sample), std::pair(kPane, empty)}) {
    CHECK_FALSE(drawings::moneyDayAt(box, box.center(), s.project, s.cost, f, screen()));
    CHECK_FALSE(drawings::liningAt(box, box.center(), s.project, s.cost, f, screen()));
    CHECK_FALSE(drawings::driverAt(box, box.center(), s.project, s.spread, f, screen()));
    CHECK_FALSE(drawings::frontierAt(box, box.center(), s.project, s.search, s.present, f, screen()));
  }
}

TEST_CASE("the place of a mark leads back to its day, lining, driver and size") {
  Sample sample;
  const Formatter f = english();
  for (const drawings::Style& style : {screen()}) {
    for (const int k : {0, 3, 11, 25}) {
      sample.marked = k;
      const QPointF at = frameOf(Drawn("days", kPane, sample, style)).center();
      CHECK(drawings::moneyDayAt(kPane, at, sample.project, sample.cost, f, style) == std::optional<int>(k));
    }
    for (const int k : {0, 1, 3}) {
      sample.marked = k;
      const QPointF at = frameOf(Drawn("linings", kPane, sample, style)).center();
      CHECK(drawings::liningAt(kPane, at, sample.project, sample.cost, f, style) == std::optional<int>(k));
    }
    for (const int k : {0, 4, 6}) {
      sample.marked = k;
      const QPointF at = frameOf(Drawn("spread", kPane, sample, style)).center();
      CHECK(drawings::driverAt(kPane, at, sample.project, sample.spread, f, style) == std::optional<int>(k));
    }
  }
  CHECK_FALSE(drawings::moneyDayAt(kPane, kPane.topLeft(), sample.project, sample.cost, f, screen()));
  CHECK_FALSE(drawings::liningAt(kPane, kPane.topLeft(), sample.project, sample.cost, f, screen()));
  CHECK_FALSE(drawings::driverAt(kPane, kPane.topLeft(), sample.project, sample.spread, f, screen()));
}

TEST_CASE("each dot of the frontier is the size found under it, and prices lie on one even scale") {
  const Sample sample;
  const Drawn drawn("frontier", kPane, sample, screen());
  std::vector<QPointF> dots;
  for (const auto& fill : drawn.fills) {
    if (fill.ink != drawings::chartColours(false).middle) continue;
    for (const QPolygonF& dot : fill.path.toSubpathPolygons()) dots.push_back(dot.boundingRect().center());
  }
  const auto& frontier = sample.search.frontier;
  REQUIRE(dots.size() == frontier.size());
  const double per_rupee =
      (dots.back().x() - dots.front().x()) / (*frontier.back().cost - *frontier.front().cost);
  const double per_year =
      (dots.front().y() - dots.back().y()) / (*frontier.back().years_in_ten - *frontier.front().years_in_ten);
  CHECK(per_rupee > 0);
  CHECK(per_year > 0);
  for (std::size_t k = 0; k < dots.size(); ++k) {
    CHECK(dots[k].x() - dots[0].x() ==
          Approx(per_rupee * (*frontier[k].cost - *frontier[0].cost)).margin(0.01));
    CHECK(dots[0].y() - dots[k].y() ==
          Approx(per_year * (*frontier[k].years_in_ten - *frontier[0].years_in_ten)).margin(0.01));
    CHECK(drawings::frontierAt(kPane, dots[k], sample.project, sample.search, sample.present, english(),
                               screen()) == std::optional<int>(static_cast<int>(k)));
  }
  CHECK(drawn.says(QStringLiteral("this tank")));
  CHECK(drawn.says(QStringLiteral("cheapest that meets the target")));
  CHECK(drawn.says(QStringLiteral("target 8")));
  CHECK(drawn.says(QStringLiteral("(Rs)")));
}

TEST_CASE("a frontier without prices or water is one of bags and water held") {
  const Drawn drawn("frontier", kSheet, samples()[2]);
  CHECK(drawn.says(QStringLiteral("Bags of cement")));
  CHECK(drawn.says(QStringLiteral("Water when the tank is full")));
  CHECK_FALSE(drawn.says(QStringLiteral("target")));
  CHECK_FALSE(drawn.says(QStringLiteral("Rs")));
}

TEST_CASE("money of a day is as high as its amount, and the line ends at all of it") {
  const Sample sample;
  const Drawn drawn("days", kPane, sample, screen());
  const auto goods = filled(drawn, drawings::chartColours(false).runoff);
  const auto wages = filled(drawn, drawings::chartColours(false).source);
  REQUIRE(goods.size() == 1 + 4);  // one in the legend; days 2, 11, 20 and 29
  const auto on_it = std::ranges::find_if(
      wages, [&](const QRectF& bar) { return std::abs(bar.bottom() - goods[1].top()) < 1e-6; });
  REQUIRE(on_it != wages.end());
  CHECK(on_it->height() / goods[1].height() == Approx(1800. / 9000));
  QPainterPath line;
  for (const auto& stroke : drawn.strokes) {
    if (std::abs(stroke.width_mm - 0.9) < 1e-9) line = stroke.path;
  }
  REQUIRE(line.elementCount() > 20);
  const double foot = line.elementAt(0).y, top = line.currentPosition().y();
  const auto& days = sample.cost.days;
  double after_first = foot;  // the first level that is not the foot
  for (int k = 0; k < line.elementCount() && after_first == foot; ++k) after_first = line.elementAt(k).y;
  CHECK((foot - after_first) / (foot - top) == Approx(days.front().together / days.back().together));
}

TEST_CASE("bars of linings are as long as what they cost a year, an unknown cost is said") {
  const Sample sample;
  const Drawn drawn("linings", kPane, sample, screen());
  const auto capital = filled(drawn, drawings::chartColours(false).source);
  const auto upkeep = filled(drawn, drawings::chartColours(false).animals);
  REQUIRE(capital.size() == 4);  // one in the legend
  REQUIRE(upkeep.size() == 4);
  const double first = capital[1].width() + upkeep[1].width(), third = capital[3].width() + upkeep[3].width();
  CHECK(first / third == Approx(7258. / 13429));
  CHECK(upkeep[1].width() / first == Approx(480. / 7258));
  CHECK(drawn.says(QStringLiteral("cost not known")));
}

TEST_CASE("the bar of a spread goes from P10 to P90, and what lowers it is hatched") {
  const Sample sample;
  const Drawn drawn("spread", kPane, sample, screen());
  const auto bands = filled(drawn, drawings::chartColours(false).band);
  REQUIRE(bands.size() == 2);  // one in the legend
  const auto ends = [&] {
    QRectF all;
    for (const auto& stroke : drawn.strokes) {
      const QRectF box = stroke.path.boundingRect();
      if (stroke.path.elementCount() == 8 && box.width() > bands[1].width()) all = box;
    }
    return all;
  }();
  REQUIRE(ends.width() > 0);  // from the least to the most
  const double per_rupee = ends.width() / (67400 - 38500);
  CHECK(bands[1].left() - ends.left() == Approx(per_rupee * (43100 - 38500)));
  CHECK(bands[1].width() == Approx(per_rupee * (56200 - 43100)));
  CHECK(drawn.says(QStringLiteral("46")));
  CHECK(drawn.says(QStringLiteral("lowers the outcome")));
  Sample rising = sample;
  for (auto& driver : rising.spread.drivers) driver.correlation = std::abs(driver.correlation);
  CHECK_FALSE(Drawn("spread", kPane, rising, screen()).says(QStringLiteral("lowers the outcome")));
}

TEST_CASE("options stand side by side at one scale, ground and plans in line") {
  Sample sample;
  for (const drawings::Style& style : {drawings::Style{}, screen()}) {
    const Drawn drawn("options", kTall, sample, style);
    std::vector<QRectF> plans, grounds;
    for (const auto& stroke : drawn.strokes) {
      const QRectF box = stroke.path.boundingRect();
      if (std::abs(stroke.width_mm - 0.7) > 1e-9) continue;
      (box.height() < 0.01 ? grounds : plans).push_back(box);
    }
    REQUIRE(plans.size() == 3);
    REQUIRE(grounds.size() == 6);
    for (const QRectF& ground : grounds) CHECK(ground.top() == Approx(grounds[0].top()));
    // rims: 6.3 by 3.8 m, 6.7 + 0.36 by 3.5 + 0.36 m, 4.3 m across, at one scale and one way round
    const double scale =
        plans[0].width() > plans[0].height() ? plans[0].width() / 6.3 : plans[0].height() / 6.3;
    CHECK(std::max(plans[1].width(), plans[1].height()) == Approx(scale * 7.06));
    CHECK(std::min(plans[1].width(), plans[1].height()) == Approx(scale * 3.86));
    CHECK(plans[2].width() == Approx(scale * 4.3).epsilon(0.001));
    for (const char* title : {"A", "B – deeper", "The person is"})
      CHECK(drawn.says(QString::fromUtf8(title)));
  }
  sample.options[1].geometry.reset();
  CHECK(Drawn("options", kTall, sample).says(QString::fromUtf8("B – deeper cannot be built")));
}

TEST_CASE("readings of money say the plan's numbers") {
  const Sample sample;
  const Formatter f = english();
  const QString day = plain(drawings::moneyDayReading(sample.project, sample.cost, 2, f));
  CHECK(day.startsWith("Wed 17 Feb 2027: "));
  CHECK(day.contains("9,000"));
  CHECK(day.contains("1,800"));
  CHECK(day.contains("together up to then Rs 14,400"));
  CHECK(drawings::moneyDayReading(sample.project, sample.cost, -1, f).isEmpty());
  CHECK(drawings::moneyDayReading(sample.project, sample.cost, 99, f).isEmpty());
  const auto lining = [&](int k) {
    return plain(drawings::liningReading(sample.project, sample.cost, k, f));
  };
  CHECK(lining(0).contains("Rs 7,258 a year (building it Rs 6,778, upkeep Rs 480), lasts 7 years"));
  CHECK(lining(3).endsWith("cost not known"));
  CHECK(lining(4).isEmpty());
  const auto driver = [&](int k) { return plain(drawings::driverReading(sample.spread, k, f)); };
  CHECK(driver(0).contains("46 % of the spread; when it rises, the outcome rises"));
  CHECK(driver(5).contains("the outcome falls"));
  CHECK(driver(6).endsWith("of the spread"));
  CHECK(driver(7).isEmpty());
}
