#include "ui/drawings/water_charts.h"
#include "ui/text/words_table.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::Unit;
using core::water::MonthFlows;
using core::water::WaterPlan;

constexpr double kLeast_m3 = 0.0005;  // what rounds to no litre

QString daysText(double days, const Formatter& format) {
  const bool whole = std::abs(days - std::round(days)) < 0.05;
  return format.quantity(days, Unit::day, whole ? 0 : 1);
}

QString lasts(double years_in_ten, const Formatter& format) {
  return Text::tr("the water lasts in %1 of %2 years")
      .arg(words::yearsInTenText(years_in_ten, format), format.integer(10));
}

struct Part {
  QString name;
  double water_m3;
};

/// "source 8,000 L and roof 200 L"
QString partsText(const std::vector<Part>& parts, const Formatter& format) {
  QStringList list;
  for (const Part& part : parts) {
    if (part.water_m3 >= kLeast_m3)
      list << Text::tr("%1 %2", "part of an amount").arg(part.name, format.litres(part.water_m3));
  }
  return words::andList(list);
}

QString suppliedText(const MonthFlows& flows, const QString& month, const Formatter& format) {
  if (flows.supply() < kLeast_m3) return Text::tr("%1: no water comes in.").arg(month);
  const QString parts = partsText({{Text::tr("source"), flows.source},
                                   {Text::tr("roof"), flows.roof},
                                   {Text::tr("ground"), flows.ground},
                                   {Text::tr("rain on the tank"), flows.rain}},
                                  format);
  return Text::tr("%1: %2 come in (%3).").arg(month, format.litres(flows.supply()), parts);
}

QString neededText(const MonthFlows& flows, const Formatter& format) {
  if (flows.need() < kLeast_m3) return Text::tr("Nothing is needed.");
  const QString parts = partsText({{Text::tr("beds"), flows.beds},
                                   {Text::tr("animals"), flows.animals},
                                   {Text::tr("people"), flows.people}},
                                  format);
  return Text::tr("%1 are needed (%2).").arg(format.litres(flows.need()), parts);
}

QString unmetText(const MonthFlows& flows, const Formatter& format) {
  if (flows.unmet < kLeast_m3) return {};
  return QLatin1Char(' ') + Text::tr("%1 of it are missing, on %2.")
                                .arg(format.litres(flows.unmet), daysText(flows.dry_days, format));
}

}  // namespace

QString levelReading(const WaterPlan& plan, int day, const Formatter& format) {
  if (day < 0 || day >= static_cast<int>(plan.band.size())) return {};
  const core::water::BandDay& band = plan.band[static_cast<std::size_t>(day)];
  return Text::tr("%1: half of the years hold %2 or more; one year in ten less than %3")
      .arg(format.dayOfYear(band.month + 1, band.day, QLocale::LongFormat), format.litres(band.p50),
           format.litres(band.p10));
}

QString flowsReading(const WaterPlan& plan, int month, const Formatter& format) {
  if (month < 0 || month >= static_cast<int>(plan.months.size())) return {};
  const MonthFlows& flows = plan.months[static_cast<std::size_t>(month)];
  const QString name = format.monthName(month + 1, QLocale::LongFormat);
  return suppliedText(flows, name, format) + QLatin1Char('\n') + neededText(flows, format) +
         unmetText(flows, format);
}

QString mapReading(const core::water::ReliabilityMap& map, QPoint cell, const Formatter& format) {
  const auto column = static_cast<std::size_t>(cell.x()), row = static_cast<std::size_t>(cell.y());
  if (cell.x() < 0 || cell.y() < 0 || column >= map.full_m3.size() || row >= map.bed_area_m2.size())
    return {};
  return Text::tr("Tank of %1, beds of %2: %3")
      .arg(format.litres(map.full_m3[column]), format.quantity(map.bed_area_m2[row], Unit::square_metre, 0),
           lasts(map.at(column, row), format));
}

QString storageReading(const WaterPlan& plan, int point, const Formatter& format) {
  if (point < 0 || point >= static_cast<int>(plan.storage.size())) return {};
  const core::water::StoragePoint& at = plan.storage[static_cast<std::size_t>(point)];
  return Text::tr("Tank of %1: %2").arg(format.litres(at.full_m3), lasts(at.years_in_ten, format));
}

}  // namespace ui::drawings
