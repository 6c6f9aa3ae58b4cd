#include "ui/handouts/works_tables.h"

#include "core/works/labour.h"
#include "core/works/rates.h"
#include "core/works/records.h"
#include "core/works/schedule.h"
#include "ui/handouts/day_rows.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <optional>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Figure;
using core::Unit;
using core::works::Calibration;
using core::works::Labour;
using core::works::Measured;
using core::works::Works;
using Rows = std::vector<std::vector<Cell>>;

QString personDays(double value, const Formatter& format) {
  return format.number(value, Unit::person_day, 1);
}

void addLabour(Sheet& sheet, const Works& works, const Formatter& format, SourceList& sources) {
  Rows rows;
  for (const Labour& l : works.labour)
    rows.push_back({words::taskName(l.task), words::workAmount(l.quantity, l.unit, format),
                    personDays(l.low_days, format), personDays(l.days, format),
                    personDays(l.high_days, format), personDays(l.mason_days, format),
                    sources.mark(l.source)});
  rows.push_back({Text::tr("Together"), QString(), QString(), personDays(works.person_days, format),
                  QString(), personDays(works.mason_days, format), QString()});
  for (Cell& cell : rows.back()) cell.strong = true;
  sheet.heading(Text::tr("Person-days of each task"));
  sheet.table({{Text::tr("Task"), 0.31},
               {Text::tr("Amount"), 0.15, CellAlign::right},
               {Text::tr("Low"), 0.1, CellAlign::right},
               {Text::tr("Used"), 0.11, CellAlign::right},
               {Text::tr("High"), 0.1, CellAlign::right},
               {Text::tr("Masons"), 0.11, CellAlign::right},
               {Text::tr("Source"), 0.12, CellAlign::right}},
              rows);
  if (works.digging_days_by_norm && works.digging_days_by_practice)
    sheet.paragraph(
        Text::tr("Digging the pit by the published norm: %1; by what is told of earlier tanks: %2.")
            .arg(format.quantity(*works.digging_days_by_norm, Unit::person_day, 1),
                 format.quantity(*works.digging_days_by_practice, Unit::person_day, 1)));
}

/// Of the digging rates, only that of this soil and the two rules of thumb.
bool hasToDoWith(const Figure& rate, const core::Project& project) {
  if (!rate.key.starts_with("digging.")) return true;
  return rate.key == core::works::diggingKey(project.site.soil) || rate.key == "digging.norm" ||
         rate.key == "digging.practice";
}

std::vector<Cell> rateRow(const Figure& rate, const Formatter& format, SourceList& sources) {
  std::vector<Cell> row{QStringLiteral("%1 (%2)").arg(words::rateName(rate.key), format.unit(rate.unit))};
  const std::vector<std::optional<double>> values{rate.low, rate.typical, rate.high};
  for (const auto& value : values) row.emplace_back(format.number(*value, rate.unit, decimalsOf(values)));
  row.emplace_back(sources.mark(rate.source));
  return row;
}

struct RecordRow {
  const char* work;
  std::optional<Measured> measured;
  Unit unit;
};

std::vector<RecordRow> recordsOf(const Calibration& c) {
  return {{"dry_to_wet", c.dry_to_wet, Unit::factor},
          {"digging", c.digging, Unit::person_day_per_m3},
          {"ramming", c.ramming, Unit::person_day_per_m3},
          {"stone_bed", c.stone_bed, Unit::person_day_per_m3},
          {"spreading", c.spreading, Unit::person_day_per_m2},
          {"mixing", c.mixing, Unit::person_day_per_m3}};
}

std::vector<Cell> recordCells(const RecordRow& record, const Formatter& format) {
  const Measured& m = *record.measured;
  const QString name = words::recordedName(record.work), unit = format.unit(record.unit);
  const auto number = [&](double value) { return format.number(value, record.unit, 2); };
  return {unit.isEmpty() ? name : QStringLiteral("%1 (%2)").arg(name, unit),
          format.integer(m.count),
          number(m.least),
          number(m.median),
          number(m.most),
          number(m.entered)};
}

}  // namespace

void addRates(Sheet& sheet, const Content& content, SourceList& sources) {
  addLabour(sheet, *content.plan.works, content.format, sources);
  const core::Project project = core::works::inForce(content.project, content.plan.calibration);
  Rows rows;
  for (const Figure& rate : core::works::rates()) {
    if (!hasToDoWith(rate, project)) continue;
    rows.push_back(rateRow(core::works::rateInForce(rate.key, project), content.format, sources));
  }
  sheet.heading(Text::tr("Rates in force"));
  sheet.table({{Text::tr("Work"), 0.5},
               {Text::tr("Low"), 0.12, CellAlign::right},
               {Text::tr("Typical"), 0.14, CellAlign::right},
               {Text::tr("High"), 0.12, CellAlign::right},
               {Text::tr("Source"), 0.12, CellAlign::right}},
              rows);
}

void addRecords(Sheet& sheet, const Content& content) {
  const Calibration& calibration = content.plan.calibration;
  Rows rows;
  for (const RecordRow& record : recordsOf(calibration))
    if (record.measured) rows.push_back(recordCells(record, content.format));
  if (rows.empty()) return;
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Measured on site"));
  addSentences(sheet, words::recordAnswers(content.plan, content.format));
  sheet.table({{Text::tr("What"), 0.4},
               {Text::tr("Records"), 0.12, CellAlign::right},
               {Text::tr("Least"), 0.11, CellAlign::right},
               {Text::tr("Median"), 0.12, CellAlign::right},
               {Text::tr("Most"), 0.11, CellAlign::right},
               {Text::tr("Entered"), 0.14, CellAlign::right}},
              rows);
  sheet.keepTogether(first);
}

}  // namespace ui::handouts
