#include "core/project/fields.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/water_inputs.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::ClimateMonth;
using core::Unit;
using core::water::WaterPlan;
using Rows = std::vector<std::vector<Cell>>;

void addSource(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  const auto& months = content.project.water->source.months;
  constexpr std::size_t kHalf = core::kMonths / 2;
  std::vector<std::optional<double>> flows, hours;
  for (const core::SourceMonth& month : months) {
    flows.emplace_back(month.flow_l_per_min);
    hours.emplace_back(month.hours_per_day);
  }
  Rows rows(kHalf);
  for (std::size_t k = 0; k < core::kMonths; ++k) {
    auto& row = rows[k % kHalf];
    row.emplace_back(format.monthName(static_cast<int>(k) + 1));
    row.emplace_back(format.number(months[k].flow_l_per_min, Unit::litre_per_minute, decimalsOf(flows)));
    row.emplace_back(format.number(months[k].hours_per_day, Unit::hour, decimalsOf(hours)));
    if (k < kHalf) row.emplace_back(QString());
  }
  const QString flow = Text::tr("Flow,\n%1").arg(format.unit(Unit::litre_per_minute)),
                runs = Text::tr("Hours a day");
  const Column month{Text::tr("Month"), 0.14};
  const Column flow_column{flow, 0.17, CellAlign::right}, hours_column{runs, 0.16, CellAlign::right};
  sheet.heading(Text::tr("Tap or spring"));
  sheet.table({month, flow_column, hours_column, {QString(), 0.06}, month, flow_column, hours_column}, rows);
  const QString readings = words::readingsSummary(content.project, format);
  if (!readings.isEmpty()) sheet.paragraph(Text::tr("Readings with bucket and watch:") + u'\n' + readings);
}

struct ClimateColumn {
  const char* title;
  const char* field_id;
  std::optional<double> ClimateMonth::*value;
};

constexpr std::array kClimate{
    ClimateColumn{QT_TRANSLATE_NOOP("Handouts", "Rain"), "water.climate.months[].rain_mm",
                  &ClimateMonth::rain_mm},
    ClimateColumn{QT_TRANSLATE_NOOP("Handouts", "Wet days"), "water.climate.months[].wet_days",
                  &ClimateMonth::wet_days},
    ClimateColumn{QT_TRANSLATE_NOOP("Handouts", "Lowest"), "water.climate.months[].t_min_c",
                  &ClimateMonth::t_min_c},
    ClimateColumn{QT_TRANSLATE_NOOP("Handouts", "Highest"), "water.climate.months[].t_max_c",
                  &ClimateMonth::t_max_c},
    ClimateColumn{QT_TRANSLATE_NOOP("Handouts", "Humidity"), "water.climate.months[].humidity_percent",
                  &ClimateMonth::humidity_percent},
    ClimateColumn{QT_TRANSLATE_NOOP("Handouts", "Wind"), "water.climate.months[].wind_m_s",
                  &ClimateMonth::wind_m_s},
    ClimateColumn{QT_TRANSLATE_NOOP("Handouts", "Sun"), "water.climate.months[].sun_hours",
                  &ClimateMonth::sun_hours},
};

/// Columns of which at least one month is known.
std::vector<ClimateColumn> knownColumns(const std::vector<ClimateMonth>& months) {
  std::vector<ClimateColumn> known;
  for (const ClimateColumn& column : kClimate) {
    const auto is_known = [&](const ClimateMonth& month) { return (month.*column.value).has_value(); };
    if (std::ranges::any_of(months, is_known)) known.push_back(column);
  }
  return known;
}

QString titleOf(const ClimateColumn& column, const Formatter& format) {
  const Unit unit = core::field(column.field_id).unit;
  const QString title = QCoreApplication::translate("Handouts", column.title);
  return unit == Unit::day ? title : title + u'\n' + format.unit(unit);
}

std::vector<std::optional<double>> valuesOf(const ClimateColumn& column,
                                            const std::vector<ClimateMonth>& months) {
  std::vector<std::optional<double>> values;
  for (const ClimateMonth& month : months) values.push_back(month.*column.value);
  return values;
}

void addColumn(Rows& rows, const ClimateColumn& column, const std::vector<ClimateMonth>& months,
               const Formatter& format) {
  const auto values = valuesOf(column, months);
  const Unit unit = core::field(column.field_id).unit;
  for (std::size_t m = 0; m < core::kMonths; ++m) {
    rows[m].emplace_back(values[m] ? format.number(*values[m], unit, decimalsOf(values))
                                   : QStringLiteral("–"));
  }
}

void addClimate(Sheet& sheet, const Content& content) {
  const core::Climate& climate = content.project.water->climate;
  if (climate.kind == core::ClimateKind::daily) return;  // the record is reckoned with, not these means
  const auto& months = climate.months;
  const std::vector<ClimateColumn> shown = knownColumns(months);
  if (shown.empty()) return;
  std::vector<Column> columns{{Text::tr("Month"), 0.14}};
  Rows rows;
  for (int m = 1; m <= static_cast<int>(core::kMonths); ++m) rows.push_back({content.format.monthName(m)});
  for (const ClimateColumn& column : shown) {
    const double share = 0.86 / static_cast<double>(shown.size());
    columns.push_back({titleOf(column, content.format), share, CellAlign::right});
    addColumn(rows, column, months, content.format);
  }
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Weather, means of many years"));
  sheet.table(columns, rows);
  sheet.keepTogether(first);
}

QString mm(double value, const Formatter& format) {
  return format.quantity(value, Unit::millimetre, 0);
}

QString yearsLeftOut(const core::water::Weather& weather, const Formatter& format) {
  QStringList years;
  for (const int year : weather.years_left_out) years << format.year(year);
  return years.join(QStringLiteral(", "));
}

void addRecord(Sheet& sheet, const Content& content) {
  const core::water::Weather& weather = *content.plan.water->weather;
  sheet.paragraph(words::recordSummary(content.project, content.plan, content.format));
  if (!weather.years_left_out.empty())
    sheet.paragraph(Text::tr("Left out because of gaps, years that begin in: %1.")
                        .arg(yearsLeftOut(weather, content.format)));
  if (weather.values_filled > 0)
    sheet.paragraph(Text::tr("Values put in for gaps: %1.")
                        .arg(content.format.integer(static_cast<int>(weather.values_filled))));
}

void addMadeYears(Sheet& sheet, const Content& content, SourceList& sources) {
  const core::Climate& climate = content.project.water->climate;
  sheet.paragraph(
      Text::tr("%1 of daily weather are made from the monthly means, by a chain of wet and dry days with "
               "gamma amounts, %2. The draw starts with the number %3: the same number gives the same "
               "weather.")
          .arg(content.format.quantity(static_cast<double>(content.plan.water->years), Unit::year, 0),
               sources.marks({"richardson_1981", "geng_1986"}), content.format.integer(climate.seed)));
}

void addWeather(Sheet& sheet, const Content& content, SourceList& sources) {
  const WaterPlan& water = *content.plan.water;
  const auto& format = content.format;
  sheet.heading(Text::tr("Weather years"));
  if (content.project.water->climate.kind == core::ClimateKind::daily)
    addRecord(sheet, content);
  else
    addMadeYears(sheet, content, sources);
  sheet.paragraph(
      Text::tr("Rain in a mean year: %1; spread from year to year (standard deviation over "
               "mean): %2.")
          .arg(mm(water.rain_mm, format), format.quantity(water.rain_cv_percent, Unit::percent, 0)));
  const bool is_penman = content.project.water->climate.et0_method == core::Et0Method::penman_monteith;
  const double penman = water.et0_penman_mm;
  const double hargreaves = water.et0_hargreaves_mm;
  sheet.paragraph(
      Text::tr("Reference evapotranspiration ET0 in a mean year: Penman-Monteith %1 %2, Hargreaves %3 %4. "
               "Reckoned with: %5.")
          .arg(mm(penman, format), sources.mark("fao56"), mm(hargreaves, format),
               sources.mark("hargreaves_1985"),
               words::choiceLabel("water.climate.et0_method", is_penman ? "penman_monteith" : "hargreaves")));
}

void addFormula(Sheet& sheet, SourceList& sources) {
  sheet.paragraph(Text::tr("Water at the end of a day = water at its start + tap or spring + runoff led in + "
                           "rain on the tank − evaporation − seepage − drawn."),
                  kStrong);
  sheet.paragraph(
      Text::tr("It is never less than none and never more than full: what is more runs over. No water is "
               "drawn from below the outlet. Evaporation is ET0 × the factor of open water × the water's "
               "surface; seepage goes through the wetted plaster. A bed needs what its crop uses and rain "
               "does not bring, over the share that reaches the roots, %1.")
          .arg(sources.mark("fao56")));
}

}  // namespace

void buildWaterFigures(Sheet& sheet, const Content& content) {
  SourceList sources(content.format);
  addFormula(sheet, sources);
  addBeds(sheet, content, sources);
  addCrops(sheet, content, sources);
  addAnimals(sheet, content, sources);
  addSingleInputs(sheet, content, sources);
  addSource(sheet, content);
  addClimate(sheet, content);
  addWeather(sheet, content, sources);
  addUsualFigures(sheet, content, sources);
  sources.print(sheet);
}

}  // namespace ui::handouts
