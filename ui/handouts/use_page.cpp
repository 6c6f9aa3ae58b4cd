#include "core/water/use_by_month.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/steps.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::water::MonthUse;

std::vector<Cell> monthRow(const MonthUse& use, const Formatter& format) {
  const auto level = [&](double value) { return format.quantity(value, Unit::metre, 2); };
  std::vector<Cell> row{format.monthName(use.month, QLocale::LongFormat),
                        format.litres(use.wanted_m3),
                        format.litres(use.drawn_m3),
                        format.litres(use.drawn_a_day_m3),
                        level(use.usual_level_m),
                        level(use.low_level_m),
                        QString()};
  row[3].strong = true;
  return row;
}

void addTable(Sheet& sheet, const Content& content) {
  std::vector<std::vector<Cell>> rows;
  for (const MonthUse& use : core::water::useByMonth(*content.plan.water))
    rows.push_back(monthRow(use, content.format));
  sheet.table({{Text::tr("Month"), 0.18},
               {Text::tr("Wanted in the month"), 0.145, CellAlign::right},
               {Text::tr("There to use in the month"), 0.145, CellAlign::right},
               {Text::tr("There to use each day"), 0.135, CellAlign::right},
               {Text::tr("Stick, usual year"), 0.13, CellAlign::right},
               {Text::tr("Stick, bad year"), 0.13, CellAlign::right},
               {Text::tr("Used each day"), 0.135, CellAlign::right}},
              rows);
}

}  // namespace

void buildUse(Sheet& sheet, const Content& content) {
  addSteps(
      sheet,
      {{{"calendar"}, Text::tr("On the first of each month read the dip-stick and look at the row.")},
       {{"full_tank"},
        Text::tr("As much as in a usual year, or more: use what the row says for each day. Less than in a "
                 "bad year: use less from this day on, and water the beds that matter most. Between: use "
                 "with care.")},
       {{"bucket"},
        Text::tr("A bucket of the mix cards holds %1. Count the buckets of one day and write down what was "
                 "used.")
            .arg(content.format.quantity(content.project.lining.bucket_l, Unit::litre, 0))}});
  sheet.space(2);
  addTable(sheet, content);
  sheet.paragraph(
      Text::tr("Wanted and there to use: means of all years reckoned. Usual year: half of the years had more "
               "in the tank on that day. Bad year: one year in ten had less."));
  addStep(sheet, {{"no_drinking"},
                  Text::tr("The water is for fields and animals. It is not drinking water."),
                  false,
                  true});
}

}  // namespace ui::handouts
