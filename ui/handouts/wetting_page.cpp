#include "core/works/schedule.h"
#include "ui/handouts/calendar_bars.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <optional>
#include <string>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::works::Day;
using core::works::Task;
using core::works::WallBand;
using core::works::Works;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kBoxes = 0.44;  // share of the width for boxes to tick
constexpr int kMostBoxes = 6, kWeek = 7;

QStringList timesOfDay(int wettings, const Formatter& format) {
  if (wettings == 1) return {Text::tr("wetted")};
  if (wettings == 2) return {Text::tr("morning"), Text::tr("evening")};
  if (wettings == 3) return {Text::tr("morning"), Text::tr("noon"), Text::tr("evening")};
  if (wettings > kMostBoxes) return {Text::tr("all %1 times").arg(format.integer(wettings))};
  QStringList numbers;
  for (int k = 1; k <= wettings; ++k) numbers << format.integer(k);
  return numbers;
}

/// A column for each wetting of a day.
std::vector<Column> wettingColumns(const Content& content) {
  const QStringList names = timesOfDay(content.project.works->wettings_per_day, content.format);
  std::vector<Column> columns;
  for (const QString& name : names)
    columns.push_back({name, kBoxes / static_cast<double>(names.size()), CellAlign::centre});
  return columns;
}

void addBoxes(std::vector<Cell>& row, std::size_t count) {
  for (std::size_t k = 0; k < count; ++k) row.push_back(Cell::box());
}

/// Water for all wetting on a day [L].
double wettingOn(const Works& works, Day day) {
  const auto found = std::ranges::find(works.days, day, &core::works::DayLoad::date);
  return found == works.days.end() ? 0 : found->wetting_l;
}

QString litres(double value, const Formatter& format) {
  return format.quantity(value, core::Unit::litre, 0);
}

/// Last day of the curing of all coats.
std::optional<Day> lastCure(const Works& works) {
  std::optional<Day> last;
  for (const Task& task : works.schedule) {
    if (isWetting(task) && (!last || task.finish > *last)) last = task.finish;
  }
  return last;
}

/// A day outside the curing on which walls are kept wet, and from which height up; absent: all of the coat.
struct BareDay {
  Day date;
  std::optional<double> from_m;
};

std::vector<BareDay> bareDays(const Works& works, Day after) {
  std::vector<BareDay> days;
  const auto& bands = works.filling->bands;
  if (bands.empty()) return days;
  const Day last = std::ranges::max_element(bands, {}, &WallBand::wet_until)->wet_until;
  for (Day day = core::works::addDays(after, 1); day <= last; day = core::works::addDays(day, 1)) {
    const auto is_wet = [&](const WallBand& band) { return band.wet_from <= day && day <= band.wet_until; };
    const auto lowest = std::ranges::find_if(bands, is_wet);  // from the floor up
    if (lowest != bands.end()) days.push_back({day, lowest->from_m});
  }
  return days;
}

void addBands(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  Rows rows;
  for (const WallBand& band : content.plan.works->filling->bands) {
    rows.push_back({Text::tr("%1 to %2")
                        .arg(format.quantity(band.from_m, core::Unit::metre, 2),
                             format.quantity(band.to_m, core::Unit::metre, 2)),
                    format.date(band.wet_until), band.covered_on ? format.date(*band.covered_on) : none(),
                    Cell::box()});
    rows.back()[1].strong = true;
  }
  sheet.table({{Text::tr("Height above the finished floor"), 0.34},
               {Text::tr("Keep wet until"), 0.25},
               {Text::tr("Water covers it on"), 0.25},
               {Text::tr("Covered"), 0.16, CellAlign::centre}},
              rows);
}

QString above(const std::optional<double>& height_m, const Formatter& format) {
  return height_m ? Text::tr("from %1 up").arg(format.quantity(*height_m, core::Unit::metre, 2))
                  : Text::tr("all of the coat");
}

void addSingleDays(Sheet& sheet, const Content& content, const std::vector<BareDay>& days) {
  const auto& format = content.format;
  std::vector<Column> columns{{Text::tr("Day"), 0.22},
                              {Text::tr("Wet the walls"), 0.21},
                              {Text::tr("Water"), 0.13, CellAlign::right}};
  const auto boxes = wettingColumns(content);
  columns.insert(columns.end(), boxes.begin(), boxes.end());
  Rows rows;
  for (std::size_t k = 0; k < std::min(days.size(), kDaysOneByOne); ++k) {
    rows.push_back({format.date(days[k].date), above(days[k].from_m, format),
                    litres(wettingOn(*content.plan.works, days[k].date), format)});
    addBoxes(rows.back(), boxes.size());
  }
  sheet.table(columns, rows);
}

std::vector<Day> datesOf(const std::vector<BareDay>& days) {
  std::vector<Day> dates;
  for (const BareDay& day : days) dates.push_back(day.date);
  return dates;
}

/// Weeks, with a box for each day and the water of the day that takes most.
void addWeeks(Sheet& sheet, const Content& content, const std::vector<BareDay>& days) {
  if (days.size() <= kDaysOneByOne) return;
  const auto& format = content.format;
  std::vector<Column> columns{{Text::tr("Week"), 0.2},
                              {Text::tr("Wet the walls"), 0.21},
                              {Text::tr("Water a day, at most"), 0.15, CellAlign::right}};
  for (int k = 1; k <= kWeek; ++k) columns.push_back({format.integer(k), kBoxes / kWeek, CellAlign::centre});
  Rows rows;
  for (const DaySpan& span : daysThenWeeks(datesOf(days))) {
    if (span.first < kDaysOneByOne) continue;
    double most = 0;
    for (std::size_t k = span.first; k <= span.last; ++k)
      most = std::max(most, wettingOn(*content.plan.works, days[k].date));
    rows.push_back({spanText(days[span.first].date, days[span.last].date, format),
                    above(days[span.first].from_m, format), litres(most, format)});
    addBoxes(rows.back(), span.last - span.first + 1);
    while (rows.back().size() < columns.size()) rows.back().emplace_back(QString());
  }
  sheet.heading(Text::tr("Later weeks: a box for each day"));
  sheet.table(columns, rows);
}

/// Days between the curing of a coat and the next coat.
std::vector<BareDay> waitingDays(const Works& works, const Task& cure) {
  std::vector<BareDay> days;
  const int coat = words::numberIn(cure.id, "cure_");
  const Task* const next = core::works::findTask(works, "coat_" + std::to_string(coat + 1));
  if (!next) return days;
  for (Day day = core::works::addDays(cure.finish, 1); day < next->start; day = core::works::addDays(day, 1))
    if (wettingOn(works, day) > 0) days.push_back({day, {}});
  return days;
}

void addCuring(Sheet& sheet, const Task& task, const Content& content) {
  const auto& format = content.format;
  std::vector<Column> columns{{Text::tr("Day"), 0.36}, {Text::tr("Water"), 0.2, CellAlign::right}};
  const auto boxes = wettingColumns(content);
  columns.insert(columns.end(), boxes.begin(), boxes.end());
  Rows rows;
  for (Day day = task.start; day <= task.finish; day = core::works::addDays(day, 1)) {
    rows.push_back({format.date(day), litres(wettingOn(*content.plan.works, day), format)});
    addBoxes(rows.back(), boxes.size());
  }
  sheet.heading(words::taskName(task.id));
  sheet.table(columns, rows);
  const std::vector<BareDay> waiting = waitingDays(*content.plan.works, task);
  if (waiting.empty()) return;
  sheet.heading(Text::tr("Until the next coat goes on"));
  addSingleDays(sheet, content, waiting);
  addWeeks(sheet, content, waiting);
}

void addFilling(Sheet& sheet, const Content& content) {
  const Works& works = *content.plan.works;
  if (!works.filling || works.filling->bands.empty()) return;
  sheet.heading(Text::tr("While the tank fills: walls that the water has not reached"));
  if (!works.filling->full_on)
    sheet.paragraph(Text::tr("When the water covers the walls is not known, or takes more than a year. Sacks "
                             "stay wet on every wall up to the overflow until water covers it."),
                    kStrong);
  addBands(sheet, content);
  const auto cured = lastCure(works);
  const std::vector<BareDay> days = cured ? bareDays(works, *cured) : std::vector<BareDay>{};
  if (days.empty()) return;
  sheet.heading(Text::tr("After the curing days"));
  addSingleDays(sheet, content, days);
  addWeeks(sheet, content, days);
}

void addDeadline(Sheet& sheet, const Content& content) {
  const Task* const fill = core::works::findTask(*content.plan.works, "fill_by");
  if (!fill) return;
  sheet.space(2);
  const std::size_t first = sheet.blocks().size();
  sheet.paragraph(Text::tr("Start filling no later than %1.").arg(content.format.date(fill->finish)),
                  kHeading);
  sheet.task(Text::tr("Filling begun. Until water covers a wall, its sacks stay on and stay wet."));
  sheet.keepTogether(first);
}

}  // namespace

void buildWettingCalendar(Sheet& sheet, const Content& content) {
  sheet.paragraph(Text::tr(
      "Cover the fresh coat with sacks and keep them wet day and night, rest days too. Tick each wetting. "
      "Plaster that dries early cracks and leaks."));
  sheet.paragraph(Text::tr("Water: for all wetting on that day."));
  for (const Task& task : content.plan.works->schedule) {
    if (isWetting(task)) addCuring(sheet, task, content);
  }
  addDeadline(sheet, content);
  addFilling(sheet, content);
}

}  // namespace ui::handouts
