#include "core/works/schedule.h"
#include "ui/drawings/works_charts.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/works_tables.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <QCoreApplication>
#include <optional>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::works::Drying;
using core::works::WeatherWindow;
using core::works::WeekChance;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kChart_mm = 75, kPercent = 100;
constexpr int kHalf = core::works::kWeeks / 2;

QString percent(double share, const Formatter& format) {
  return format.quantity(kPercent * share, Unit::percent, 0);
}

/// The best and the planned week are marked by a sign and heavy type.
QString weekName(const WeatherWindow& window, int week, const Formatter& format) {
  const WeekChance& chance = window.weeks[static_cast<std::size_t>(week)];
  QString name = format.dayOfYear(chance.month, chance.day);
  if (week == window.chosen) name += QStringLiteral(" *");
  if (week == window.best) name += QStringLiteral(" +");
  return name;
}

void addWeek(std::vector<Cell>& row, const WeatherWindow& window, int week, const Formatter& format) {
  const WeekChance& chance = window.weeks[static_cast<std::size_t>(week)];
  const std::size_t first = row.size();
  row.emplace_back(weekName(window, week, format));
  for (const double share : {chance.undisturbed, chance.rain, chance.frost, chance.heat})
    row.emplace_back(percent(share, format));
  if (week != window.chosen && week != window.best) return;
  for (std::size_t k = first; k < row.size(); ++k) row[k].strong = true;
}

/// Half a year beside the other.
void addWeeks(Sheet& sheet, const WeatherWindow& window, const Formatter& format) {
  Rows rows(kHalf);
  for (int week = 0; week < core::works::kWeeks; ++week) {
    auto& row = rows[static_cast<std::size_t>(week % kHalf)];
    if (week >= kHalf) row.emplace_back(QString());
    addWeek(row, window, week, format);
  }
  std::vector<Column> columns;
  for (const bool second : {false, true}) {
    if (second) columns.push_back({QString(), 0.02});
    columns.push_back({Text::tr("Week from"), 0.142});
    for (const QString& title : {Text::tr("Good"), Text::tr("Rain"), Text::tr("Frost"), Text::tr("Heat")})
      columns.push_back({title, 0.087, CellAlign::right});
  }
  sheet.table(columns, rows);
}

void addDrying(Sheet& sheet, const WeatherWindow& window, const Formatter& format, SourceList& sources) {
  if (window.drying.empty())
    return sheet.paragraph(
        Text::tr("How fast fresh plaster dries is not reckoned: humidity or wind is not known."));
  Rows rows;
  for (const Drying& d : window.drying)
    rows.push_back({format.integer(d.coat), format.quantity(d.air_c, Unit::celsius, 1),
                    format.quantity(d.humidity_percent, Unit::percent, 0),
                    isolated(format.number(d.wind_km_h, Unit::none, 1) + QChar::Nbsp + Text::tr("km/h")),
                    format.quantity(d.kg_m2_h, Unit::kg_per_m2_h, 2)});
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("How fast fresh plaster dries"));
  sheet.table({{Text::tr("Coat"), 0.12},
               {Text::tr("Air"), 0.2, CellAlign::right},
               {Text::tr("Humidity"), 0.2, CellAlign::right},
               {Text::tr("Wind"), 0.2, CellAlign::right},
               {Text::tr("Water lost"), 0.28, CellAlign::right}},
              rows);
  sheet.paragraph(QStringLiteral("E = 5 ((Tc + 18)^2.5 − r (Ta + 18)^2.5) (V + 4) / 1000000 ") +
                  sources.mark("uno_1998"));
  sheet.paragraph(Text::tr(
      "E water lost in kg for each m² and hour, Tc and Ta plaster and air in °C, r humidity from 0 to "
      "1, V wind in km/h; the mean weather of the week, plaster as warm as the air."));
  sheet.keepTogether(first);
}

}  // namespace

void addWeatherWindow(Sheet& sheet, const Content& content, SourceList& sources) {
  if (!content.plan.works->window) return;
  const WeatherWindow& window = *content.plan.works->window;
  const auto& format = content.format;
  sheet.heading(Text::tr("Weather window: how often coats stay undisturbed, week by week"));
  addSentences(sheet, words::windowAnswers(*content.plan.works, format));
  sheet.drawing(kChart_mm, [&window, &format](QPainter& painter, const QRectF& box) {
    drawings::drawWeatherWindow(painter, box, window, format, {});
  });
  sheet.space(2);
  sheet.paragraph(
      Text::tr("Good: nothing disturbs, of all start days of the week and %1 of weather. Rain: %2 or more on "
               "the day of a coat or the day after. Frost: a night at or below 0 °C within 7 days of a coat. "
               "Heat: a day of a coat outside 5 to 35 °C. * week of the first coat as planned; + best week.")
          .arg(format.quantity(static_cast<double>(window.years), Unit::year, 0),
               format.quantity(window.heavy_rain_mm, Unit::millimetre, 0)));
  addWeeks(sheet, window, format);
  addDrying(sheet, window, format, sources);
}

}  // namespace ui::handouts
