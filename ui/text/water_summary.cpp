#include "ui/text/finding_sentences.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <QStringList>

namespace ui::words {
namespace {

QString monthLine(const core::water::MonthReadings& month, const Formatter& format) {
  const auto flow = [&](double l_per_min) {
    return format.quantity(l_per_min, core::Unit::litre_per_minute, 2);
  };
  QString line = QCoreApplication::translate("ui::words", "%1: median %2 of %3, from %4 to %5.")
                     .arg(format.monthName(month.month), flow(month.median_l_per_min),
                          readingCount(int(month.rows.size()), format), flow(month.least_l_per_min),
                          flow(month.most_l_per_min));
  QStringList rows;
  for (const std::size_t row : month.outliers) rows << format.integer(int(row) + 1);
  if (rows.isEmpty()) return line;
  return line + u' ' +
         QCoreApplication::translate("ui::words", "Apart from the others: row %1.")
             .arg(rows.join(QStringLiteral(", ")));
}

}  // namespace

QString readingCount(int readings, const Formatter& format) {
  const QString pattern = readings == 1
                              ? QCoreApplication::translate("ui::words", "%1 reading")
                              : QCoreApplication::translate("ui::words", "%1 readings", nullptr, readings);
  return QString(pattern).replace(u' ', QChar::Nbsp).arg(format.integer(readings));
}

QString readingsSummary(const core::Project& project, const Formatter& format) {
  if (!project.water) return {};
  QStringList lines;
  for (const auto& month : core::water::readingsByMonth(project.water->source.readings))
    lines << monthLine(month, format);
  return lines.join(u'\n');
}

QString noWholeYearText() {
  return QCoreApplication::translate(
      "ui::words",
      "The record holds no whole year without gaps, counted from its wettest month. Add days, or have gaps "
      "filled in.");
}

QString noWholeYear(const core::Project& project, const core::Plan& plan) {
  const bool is_asked = project.water && project.site.latitude_deg;
  if (!is_asked || plan.water || !core::water::isClimateKnown(project.water->climate)) return {};
  return noWholeYearText();
}

QString recordSummary(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  if (!project.water || project.water->climate.daily.empty())
    return QCoreApplication::translate(
        "ui::words",
        "A daily record is a table with the columns date (year-month-day), rain_mm, t_min_c, t_max_c and, "
        "where "
        "measured, wind_m_s, humidity_percent, sun_hours. Gaps are reported and never filled silently.");
  const auto& days = project.water->climate.daily.days();
  QString text =
      QCoreApplication::translate("ui::words", "The project holds a daily record from %1 to %2, %3.")
          .arg(format.date(days.front().date), format.date(days.back().date),
               format.quantity(double(days.size()), core::Unit::day, 0));
  if (project.water->climate.kind == core::ClimateKind::monthly)
    return text + u' ' +
           QCoreApplication::translate("ui::words",
                                       "It is not used now: the weather comes from monthly means.");
  if (plan.water)
    return text + u' ' +
           QCoreApplication::translate("ui::words", "Reckoned with: %1.")
               .arg(format.quantity(double(plan.water->years), core::Unit::year, 0));
  const QString no_year = noWholeYear(project, plan);
  return no_year.isEmpty() ? text : text + u' ' + no_year;
}

}  // namespace ui::words
