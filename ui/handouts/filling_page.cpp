#include "core/works/filling.h"
#include "ui/drawings/works_charts.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::works::Day;
using core::works::FillDay;
using core::works::Filling;
using core::works::WallBand;
using Rows = std::vector<std::vector<Cell>>;

constexpr DrawingHeight kFilling{70, 110};

QString metres(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre, 2);
}

QString litres(double value, const Formatter& format) {
  return format.quantity(value, Unit::litre, 0);
}

QString inflowText(const Filling& filling, const Formatter& format) {
  if (filling.inflow_from == "none") return Text::tr("not known");
  const QString flow = Text::tr("%1 a day").arg(format.litres(filling.inflow_m3_day));
  return filling.inflow_from == "source" ? Text::tr("%1, what the source gives").arg(flow)
                                         : Text::tr("%1, as entered").arg(flow);
}

void addTerms(Sheet& sheet, const Content& content) {
  const Filling& filling = *content.plan.works->filling;
  const auto& format = content.format;
  Rows rows{
      {Text::tr("Filling starts"), format.date(filling.start)},
      {Text::tr("It must start no later than"), format.date(filling.latest_start)},
      {Text::tr("The tank is full on"),
       filling.full_on ? format.date(*filling.full_on) : Text::tr("not within a year")},
      {Text::tr("Flows in on the first day"), inflowText(filling, format)},
      {Text::tr("The water may rise in a day by at most"),
       metres(content.project.works->fill_most_rise_m_per_day, format)},
      {Text::tr("Water for sacks after the last curing day"), litres(filling.wetting_after_cure_l, format)}};
  if (filling.carried_m3 > 0)
    rows.push_back(
        {Text::tr("Water to bring by hand, to cover all walls in time"), format.litres(filling.carried_m3)});
  if (filling.inflow_from == "none") rows[2][1].text = Text::tr("not known");
  for (auto& row : rows) row[1].strong = true;
  sheet.table({{Text::tr("Filling"), 0.55}, {QString(), 0.45, CellAlign::right}}, rows);
}

void addBands(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  Rows rows;
  for (const WallBand& band : content.plan.works->filling->bands) {
    rows.push_back({Text::tr("%1 to %2").arg(metres(band.from_m, format), metres(band.to_m, format)),
                    format.quantity(band.area_m2, Unit::square_metre, 1), format.date(band.wet_until),
                    format.quantity(band.days, Unit::day, 0)});
    rows.back()[2].strong = true;
  }
  if (rows.empty()) return;
  sheet.heading(Text::tr("Walls that stay under wet sacks until the water covers them"));
  sheet.table({{Text::tr("Height above the finished floor"), 0.34},
               {Text::tr("Wall"), 0.18, CellAlign::right},
               {Text::tr("Keep wet until"), 0.28},
               {Text::tr("Wet for"), 0.2, CellAlign::right}},
              rows);
}

std::vector<Day> datesOf(const std::vector<FillDay>& days) {
  std::vector<Day> dates;
  for (const FillDay& day : days) dates.push_back(day.date);
  return dates;
}

/// What comes together in neighbouring days; the level is that of the last evening.
std::vector<Cell> dayRow(const std::vector<FillDay>& days, const DaySpan& span, const Formatter& format) {
  double inflow_m3 = 0, wetting_l = 0;
  for (std::size_t k = span.first; k <= span.last; ++k) {
    inflow_m3 += days[k].inflow_m3;
    wetting_l += days[k].wetting_l;
  }
  return {spanText(days[span.first].date, days[span.last].date, format), format.litres(inflow_m3),
          metres(days[span.last].level_m, format), litres(wetting_l, format), QString()};
}

void addDays(Sheet& sheet, const Content& content) {
  const auto& days = content.plan.works->filling->days;
  if (days.empty()) return;
  Rows rows;
  for (const DaySpan& span : daysThenWeeks(datesOf(days))) rows.push_back(dayRow(days, span, content.format));
  sheet.heading(days.size() > kDaysOneByOne ? Text::tr("The water rises, first by days, then by weeks")
                                            : Text::tr("The water rises day by day"));
  addLeadIn(sheet,
            Text::tr("Level: above the finished floor, in the evening of the day, or of the week's last "
                     "day. Write beside it what the rod shows."));
  sheet.table({{Text::tr("Day or week"), 0.26},
               {Text::tr("Runs in"), 0.18, CellAlign::right},
               {Text::tr("Level"), 0.16, CellAlign::right},
               {Text::tr("To wet sacks"), 0.18, CellAlign::right},
               {Text::tr("Level measured"), 0.22}},
              rows);
}

void addDrawing(Sheet& sheet, const Content& content) {
  Sheet below({sheet.width(), sheet.height()});
  below.space(2);
  addBands(below, content);
  addAbove(sheet, below, kFilling, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawFilling(painter, box, *content.plan.works->filling, content.format, {});
  });
}

}  // namespace

void buildFirstFilling(Sheet& sheet, const Content& content) {
  addSentences(sheet, words::fillingAnswers(*content.plan.works, content.format));
  addTerms(sheet, content);
  addDrawing(sheet, content);
  addDays(sheet, content);
  sheet.task(
      Text::tr("No one enters the tank while it fills. The fence stands, ladder and rope hang inside."));
  addWriteLine(sheet, {Text::tr("Filling begun on:"), Text::tr("Full on:")});
}

}  // namespace ui::handouts
