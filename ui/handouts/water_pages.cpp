#include "core/water/check.h"
#include "ui/drawings/water_charts.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::water::MonthFlows;
using core::water::WaterPlan;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kLitresPerM3 = 1000;
constexpr double kLeastShown = 0.1;  // of a dry day
constexpr double kLeastKept_l = 0.5;

QString dryDays(double days, const Formatter& format) {
  if (days <= 0) return format.integer(0);
  if (days < kLeastShown) return Text::tr("under %1").arg(format.number(kLeastShown, Unit::day, 1));
  return format.number(days, Unit::day, 1);
}

std::vector<Cell> monthRow(const WaterPlan& water, std::size_t month, const Formatter& format) {
  const MonthFlows& m = water.months.at(month);
  const int number = static_cast<int>(month) + 1;
  return {format.monthName(number, QLocale::LongFormat),
          format.litres(m.supply()),
          format.litres(m.need() / core::water::daysInMonth(number)),
          dryDays(m.dry_days, format),
          QString(),
          Cell::box()};
}

void addMonths(Sheet& sheet, const WaterPlan& water, const Formatter& format) {
  Rows rows;
  for (std::size_t k = 0; k < core::kMonths; ++k) {
    const auto first = static_cast<std::size_t>(water.weather->first_month);
    rows.push_back(monthRow(water, (first + k) % core::kMonths, format));
  }
  sheet.heading(Text::tr("Month by month"));
  sheet.paragraph(
      Text::tr("Means of all years reckoned: good years bring more than this, bad years less. Read the stick "
               "on the first of each month and write it down; tick the months in which the water lasted."));
  sheet.table({{Text::tr("Month"), 0.19},
               {Text::tr("Comes in, in the month"), 0.18, CellAlign::right},
               {Text::tr("Needed each day"), 0.16, CellAlign::right},
               {Text::tr("Days short of water"), 0.17, CellAlign::right},
               {Text::tr("Read on the stick"), 0.17, CellAlign::right},
               {Text::tr("Lasted"), 0.13, CellAlign::centre}},
              rows);
}

void addNotForDrinking(Sheet& sheet) {
  sheet.paragraph(Text::tr("The water is for fields and animals. It is not drinking water."), kStrong);
}

QString wholeLitres(double volume_m3, const Formatter& format) {
  return format.quantity(volume_m3 * kLitresPerM3, Unit::litre, 0);
}

struct Part {
  QString what;
  double volume_m3;
};

/// Two lists side by side, sums in the last row; the right one may be shorter.
void addPair(Sheet& sheet, const QString& left, const std::vector<Part>& left_parts, const QString& right,
             const std::vector<Part>& right_parts, const Formatter& format) {
  Rows rows;
  for (std::size_t k = 0; k < left_parts.size(); ++k) {
    rows.push_back({left_parts[k].what, wholeLitres(left_parts[k].volume_m3, format), QString()});
    const bool has_right = k < right_parts.size();
    rows.back().emplace_back(has_right ? right_parts[k].what : QString());
    rows.back().emplace_back(has_right ? wholeLitres(right_parts[k].volume_m3, format) : QString());
  }
  for (Cell& cell : rows.back()) cell.strong = true;
  const QString year = Text::tr("a year");
  sheet.table({{left, 0.29},
               {year, 0.19, CellAlign::right},
               {QString(), 0.04},
               {right, 0.29},
               {year, 0.19, CellAlign::right}},
              rows);
}

double goesOut(const MonthFlows& year) {
  return year.evaporation + year.seepage + year.spill + year.drawn;
}

/// A power of ten that a share does not pass, in percent: "0.01 %" for 0.00002.
QString plainBound(double share, const Formatter& format) {
  int decimals = 6;
  double bound = 1e-6;
  for (; bound < 100 * share; --decimals) bound *= 10;
  return format.quantity(bound, Unit::percent, std::max(0, decimals));
}

void addBalance(Sheet& sheet, const WaterPlan& water, const Formatter& format) {
  const MonthFlows& y = water.year;
  addPair(sheet, Text::tr("Comes in"),
          {{Text::tr("Tap or spring"), y.source},
           {Text::tr("Runoff of the roof"), y.roof},
           {Text::tr("Runoff of the ground"), y.ground},
           {Text::tr("Rain on the tank"), y.rain},
           {Text::tr("Together"), y.supply()}},
          Text::tr("Goes out"),
          {{Text::tr("Evaporation"), y.evaporation},
           {Text::tr("Seepage"), y.seepage},
           {Text::tr("Runs over"), y.spill},
           {Text::tr("Drawn"), y.drawn},
           {Text::tr("Together"), goesOut(y)}},
          format);
  addPair(sheet, Text::tr("Is needed for"),
          {{Text::tr("Beds"), y.beds},
           {Text::tr("Animals"), y.animals},
           {Text::tr("People"), y.people},
           {Text::tr("Together"), y.need()}},
          Text::tr("Of this"), {{Text::tr("Drawn"), y.drawn}, {Text::tr("Missing"), y.unmet}}, format);
}

/// How the two sums are the same.
void addClosure(Sheet& sheet, const WaterPlan& water, const Formatter& format) {
  const double kept_l = (water.year.supply() - goesOut(water.year)) * kLitresPerM3;
  const QString within = plainBound(water.closure, format);
  const QString years = format.quantity(static_cast<double>(water.years), Unit::year, 0);
  if (std::abs(kept_l) < kLeastKept_l)
    return sheet.paragraph(
        Text::tr("Means of %1. What comes in equals what goes out within %2.").arg(years, within));
  const QString sentence =
      kept_l > 0 ? Text::tr(
                       "Means of %1. The tank ends a mean year with %2 more than it began with; with this "
                       "counted, what comes in equals what goes out within %3.")
                 : Text::tr(
                       "Means of %1. The tank ends a mean year with %2 less than it began with; with this "
                       "counted, what comes in equals what goes out within %3.");
  sheet.paragraph(sentence.arg(years, format.quantity(std::abs(kept_l), Unit::litre, 0), within));
}

}  // namespace

void buildWaterYear(Sheet& sheet, const Content& content) {
  const WaterPlan& water = *content.plan.water;
  sheet.paragraph(words::waterHeadline(water, content.format), kHeading);
  Sheet below({sheet.width(), sheet.height()});
  below.space(3);
  for (const QString& answer : words::waterAnswers(water, content.format)) below.paragraph(answer);
  addNotForDrinking(below);
  addAbove(sheet, below, {}, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawLevelChart(painter, box, *content.plan.water, content.format, {});
  });
  sheet.breakPage();
  addMonths(sheet, water, content.format);
  addNotForDrinking(sheet);
}

void buildWaterBalance(Sheet& sheet, const Content& content) {
  Sheet below({sheet.width(), sheet.height()});
  below.space(3);
  addBalance(below, *content.plan.water, content.format);
  addClosure(below, *content.plan.water, content.format);
  addAbove(sheet, below, {}, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawFlowsChart(painter, box, *content.plan.water, content.format, {});
  });
}

}  // namespace ui::handouts
