#include "core/works/one_go.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/hour_tally.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::works::CoatCheck;
using Rows = std::vector<std::vector<Cell>>;

/// A row whose need is not met is heavy, and its answer a warning.
std::vector<Cell> needRow(const QString& what, const QString& needed, const QString& there, bool is_met) {
  std::vector<Cell> row{what, needed, there, is_met ? Text::tr("enough") : Text::tr("TOO FEW")};
  for (Cell& cell : row) cell.strong = !is_met;
  return row;
}

QString minutes(double value, const Formatter& format) {
  return format.quantity(value, Unit::minute, 0);
}

QString perHour(double batches, const Formatter& format) {
  return format.number(batches, Unit::none, 1);
}

Rows needRows(const CoatCheck& check, const Content& content) {
  const auto& format = content.format;
  const int places = content.project.works->mixing_places;
  return {needRow(Text::tr("People on the coat"), format.integer(check.needed), format.integer(check.people),
                  check.people >= check.needed),
          needRow(Text::tr("Masons among them"), format.integer(check.masons_needed),
                  format.integer(check.masons), check.masons >= check.masons_needed),
          needRow(Text::tr("Batches an hour"), perHour(check.batches_per_hour_needed, format),
                  perHour(check.batches_per_hour_possible, format),
                  check.batches_per_hour_possible >= check.batches_per_hour_needed),
          needRow(Text::tr("Mixing places"), format.integer(check.mixing_places_needed),
                  format.integer(places), places >= check.mixing_places_needed)};
}

void addNeeds(Sheet& sheet, const CoatCheck& check, const Content& content) {
  sheet.table({{Text::tr("In one go"), 0.4},
               {Text::tr("Needed"), 0.18, CellAlign::right},
               {Text::tr("There"), 0.18, CellAlign::right},
               {QString(), 0.24}},
              needRows(check, content));
}

/// A batch must be on the wall before it sets.
void addWindow(Sheet& sheet, const CoatCheck& check, const Formatter& format) {
  const auto row = [&](const QString& batch, double takes) {
    const bool in_time = takes <= check.placing_minutes;
    std::vector<Cell> cells{batch, minutes(takes, format), minutes(check.placing_minutes, format),
                            in_time ? Text::tr("in time") : Text::tr("TOO LATE")};
    for (Cell& cell : cells) cell.strong = !in_time;
    return cells;
  };
  sheet.table({{Text::tr("Putting on a batch"), 0.4},
               {Text::tr("takes"), 0.18, CellAlign::right},
               {Text::tr("may take"), 0.18, CellAlign::right},
               {QString(), 0.24}},
              {row(Text::tr("with a whole bag"), check.minutes_to_place_batch),
               row(Text::tr("with half a bag"), check.minutes_to_place_half_batch)});
}

void addReady(Sheet& sheet, const CoatCheck& check, const Formatter& format) {
  const QString bags = format.number(check.bags, Unit::none, 1);
  sheet.table({{Text::tr("Ready beside the pit before the first batch"), 0.6},
               {QString(), 0.26, CellAlign::right},
               {Text::tr("Ready"), 0.14, CellAlign::centre}},
              {{Text::tr("Bags of cement"), bags, Cell::box()},
               {Text::tr("Water for mixing"), format.quantity(check.water_l, Unit::litre, 0), Cell::box()},
               {Text::tr("Sacks to cover the coat"), format.integer(check.sacks), Cell::box()}});
}

void addHours(Sheet& sheet, const CoatCheck& check, const Formatter& format) {
  const HourTally tally = hourTally(check.batches, check.hours, sheet.width());
  addLeadIn(sheet,
            tally.each == 1
                ? Text::tr("Batches with a whole bag: %1. Tick a box for each; by the end of an hour its "
                           "row must be full.")
                      .arg(format.integer(check.batches))
                : Text::tr("Batches with a whole bag: %1. Tick a box for every %2; by the end of an hour "
                           "its row must be full.")
                      .arg(format.integer(check.batches), format.integer(tally.each)));
  addHourTally(sheet, tally, format);
}

void addCoat(Sheet& sheet, const CoatCheck& check, const Content& content) {
  const auto& format = content.format;
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Coat %1, within %2: %3 of work")
                    .arg(format.integer(check.coat), format.quantity(check.hours, Unit::hour, 1),
                         format.quantity(check.person_days, Unit::person_day, 1)));
  addNeeds(sheet, check, content);
  addWindow(sheet, check, format);
  addReady(sheet, check, format);
  addHours(sheet, check, format);
  keepWhole(sheet, first);
}

}  // namespace

void buildOneGo(Sheet& sheet, const Content& content) {
  sheet.paragraph(
      Text::tr("A coat that is begun is finished the same day: plaster put beside plaster that has "
               "set does not hold water."),
      kStrong);
  addSentences(sheet, words::oneGoAnswers(*content.plan.works, content.format));
  for (const CoatCheck& check : content.plan.works->coat_checks) addCoat(sheet, check, content);
}

}  // namespace ui::handouts
