#include "ui/drawings/works_charts.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"
#include "ui/text/works_words.h"
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
using core::works::DayLoad;
using core::works::FillDay;
using core::works::Task;
using core::works::WeekChance;
using core::works::Works;

constexpr double kLeast_m3 = 0.0005;  // what rounds to no litre
constexpr double kTen = 10, kPercent = 100;

QString counted(const QString& one, const QString& several, int count, const Formatter& format) {
  return QString(count == 1 ? one : several).replace(u' ', QChar::Nbsp).arg(format.integer(count));
}

QString labourers(int count, const Formatter& format) {
  return counted(Text::tr("%1 labourer"), Text::tr("%1 labourers", nullptr, count), count, format);
}

QString masons(int count, const Formatter& format) {
  return counted(Text::tr("%1 mason"), Text::tr("%1 masons", nullptr, count), count, format);
}

QString wetters(int count, const Formatter& format) {
  return counted(Text::tr("%1 person wetting"), Text::tr("%1 people wetting", nullptr, count), count, format);
}

QString litresText(double litres, const Formatter& format) {
  return format.quantity(std::round(litres), Unit::litre, 0);
}

QString datesOf(const Task& task, const Formatter& format) {
  if (task.start == task.finish) return format.shortDate(task.start);
  return Text::tr("%1 to %2").arg(format.shortDate(task.start), format.shortDate(task.finish));
}

QString peopleOf(const Task& task, const Formatter& format) {
  const QString people = format.quantity(task.crew, Unit::person, 0);
  const int skilled = task.by_skill.masons;
  if (skilled == 0) return people;
  return Text::tr("%1 (%2)", "people (so many of them masons)").arg(people, masons(skilled, format));
}

QString slackOf(const Task& task, const Formatter& format) {
  if (task.is_critical || task.float_days <= 0) return Text::tr("no room to slip");
  return Text::tr("room to slip: %1").arg(words::dayCount(task.float_days, format));
}

bool has(int index, std::size_t size) {
  return index >= 0 && index < static_cast<int>(size);
}

QString percent(double share, const Formatter& format) {
  return format.quantity(kPercent * share, Unit::percent, 0);
}

}  // namespace

QString workBarReading(const Works& works, int task, const Formatter& format) {
  if (!has(task, works.schedule.size())) return {};
  const Task& bar = works.schedule[static_cast<std::size_t>(task)];
  const QString name = words::taskName(bar.id);
  if (bar.is_mark) return Text::tr("%1: %2", "last day of something").arg(name, format.date(bar.start));
  const bool runs_on = bar.clock == core::works::Clock::calendar;
  QStringList parts{datesOf(bar, format), runs_on ? format.quantity(bar.days, Unit::day, 0)
                                                  : words::dayCount(bar.work_days, format)};
  if (bar.crew > 0) parts << peopleOf(bar, format);
  if (bar.by_skill.wetters > 0) parts << wetters(bar.by_skill.wetters, format);
  return Text::tr("%1: %2; %3", "task: when and who; how far it may slip")
      .arg(name, parts.join(QStringLiteral(", ")), slackOf(bar, format));
}

QString peopleReading(const Works& works, int day, const Formatter& format) {
  if (!has(day, works.days.size())) return {};
  const DayLoad& load = works.days[static_cast<std::size_t>(day)];
  QStringList parts;
  if (load.labourers > 0) parts << labourers(load.labourers, format);
  if (load.masons > 0) parts << masons(load.masons, format);
  if (load.wetters > 0) parts << wetters(load.wetters, format);
  if (std::round(load.wetting_l) > 0)
    parts << Text::tr("%1 for wetting", "litres of water").arg(litresText(load.wetting_l, format));
  if (!load.is_worked) parts << Text::tr("no work on this day");
  if (parts.isEmpty()) parts << Text::tr("nobody");
  return Text::tr("%1: %2", "date: people").arg(format.date(load.date), parts.join(QStringLiteral(", ")));
}

QString fillingReading(const core::works::Filling& filling, int day, const Formatter& format) {
  if (!has(day, filling.days.size())) return {};
  const FillDay& at = filling.days[static_cast<std::size_t>(day)];
  QStringList parts{Text::tr("%1 flow in", "litres").arg(format.litres(at.inflow_m3))};
  if (at.lost_m3 >= kLeast_m3) parts << Text::tr("%1 are lost", "litres").arg(format.litres(at.lost_m3));
  QString text = Text::tr("%1: %2. In the evening %3 over the floor, %4.", "date: flows; level, volume")
                     .arg(format.date(at.date), parts.join(QStringLiteral(", ")),
                          format.quantity(at.level_m, Unit::metre, 2), format.litres(at.volume_m3));
  if (std::round(at.wetting_l) > 0)
    text += QLatin1Char(' ') + Text::tr("%1 to keep the %2 of wall above the water wet.")
                                   .arg(litresText(at.wetting_l, format),
                                        format.quantity(at.bare_wall_m2, Unit::square_metre, 0));
  return text;
}

QString weekReading(const core::works::WeatherWindow& window, int week, const Formatter& format) {
  if (!has(week, window.weeks.size())) return {};
  const WeekChance& chance = window.weeks[static_cast<std::size_t>(week)];
  return Text::tr("Week from %1: undisturbed %2 times of %3; heavy rain %4, frost %5, heat or cold %6")
      .arg(format.dayOfYear(chance.month, chance.day, QLocale::LongFormat),
           words::yearsInTenText(kTen * chance.undisturbed, format), format.integer(10),
           percent(chance.rain, format), percent(chance.frost, format), percent(chance.heat, format));
}

}  // namespace ui::drawings
