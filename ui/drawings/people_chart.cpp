#include "ui/drawings/work_bars_layout.h"
#include "ui/drawings/works_charts.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::works::DayLoad;
using core::works::Works;

constexpr Stroke kPartLine{0.25};
constexpr double kWideDay_mm = 1.4;  // from here on there is a gap between days
constexpr double kBarShare = 0.8;
constexpr double kWettingHatch_mm = 1.2;
constexpr double kOver = 1.08;  // room over the most people

/// Who makes up a part of a day's bar, from the bottom up.
enum class Part { labourers, masons, wetters };
constexpr Part kParts[] = {Part::labourers, Part::masons, Part::wetters};

int countOf(const DayLoad& day, Part part) {
  return part == Part::labourers ? day.labourers : part == Part::masons ? day.masons : day.wetters;
}

int peopleOn(const DayLoad& day) {
  return day.labourers + day.masons + day.wetters;
}

QString nameOf(Part part) {
  return part == Part::labourers ? Text::tr("labourers")
         : part == Part::masons  ? Text::tr("masons")
                                 : Text::tr("people wetting");
}

void addPart(Chart& chart, const QRectF& bar, Part part) {
  const QPainterPath path = rectangle(bar);
  if (part == Part::labourers) chart.fill(path, chart.colours().band);
  if (part == Part::masons) chart.solid(path, chart.colours().source);
  if (part == Part::wetters) {
    chart.fill(path, chart.colours().runoff);
    chart.hatch(path, 45, kWettingHatch_mm);
  }
  chart.line(path, kPartLine, chart.colours().ink);
}

Legend legendOf(const Works& works) {
  Legend legend;
  for (const Part part : kParts) {
    if (std::ranges::any_of(works.days, [part](const DayLoad& day) { return countOf(day, part) > 0; }))
      legend.push_back(
          {nameOf(part), [part](Chart& chart, const QRectF& room) { addPart(chart, room, part); }});
  }
  return legend;
}

int mostPeople(const Works& works) {
  int most = 0;
  for (const DayLoad& day : works.days) most = std::max(most, peopleOn(day));
  return most;
}

/// Where everything of the chart stands.
struct Layout {
  Legend legend;
  QRectF plot;
  DayAxis days;
  Axis people;
  std::vector<Tick> ticks;

  Layout(const QRectF& box, const Works& works, const Formatter& format, const Type& type)
      : legend(legendOf(works)) {
    const int most = mostPeople(works);
    if (most == 0) return;
    const double high = plotHeight(box, legend, true, type);
    const int room = std::min(static_cast<int>(high / (1.6 * type.line())), most);
    ticks = plainTicks(0, kOver * most, std::clamp(room, 1, 8), yearsUnit(), format);
    plot = plotRoom(box, legend, {leftMargin(ticks, type.lettering), 1, true}, type);
    days = DayAxis(firstDay(works), shownCount(works), plot.left(), plot.right());
    people = Axis(0, kOver * most, plot.bottom(), plot.top());
  }

  static int shownCount(const Works& works) {
    return std::min(shownDays(works), static_cast<int>(works.days.size()));
  }
  QRectF bar(int day, int from, int to) const {
    const double wide = days.width() >= kWideDay_mm ? kBarShare * days.width() : days.width();
    return {QPointF(days.at(day + 0.5) - wide / 2, people.at(to)),
            QPointF(days.at(day + 0.5) + wide / 2, people.at(from))};
  }
};

void addDay(Chart& chart, const Layout& layout, const DayLoad& load, int k) {
  int sum = 0;
  for (const Part part : kParts) {
    const int count = countOf(load, part);
    if (count > 0) addPart(chart, layout.bar(k, sum, sum + count), part);
    sum += count;
  }
  if (sum > 0) chart.keepClear(rectangle(layout.bar(k, 0, sum)));
}

/// What goes on after the last day that is shown; empty when nothing does.
QString restText(const Layout& layout, const Works& works, const Formatter& format) {
  if (layout.days.count() >= static_cast<int>(works.days.size())) return {};
  return Text::tr("goes on until %1 \u2192").arg(format.shortDate(works.days.back().date));
}

/// The title of the axis, and at the right what goes on.
void addTitles(Chart& chart, const Layout& layout, const Works& works, const QRectF& box_mm,
               const Formatter& format) {
  const QString rest = restText(layout, works, format);
  const double taken = rest.isEmpty() ? 0 : width_mm(rest, chart.lettering()) + 3 * kGap_mm;
  addUprightAxis(chart, layout.plot, layout.people, layout.ticks,
                 fittedTitle(Text::tr("People on a day"), box_mm.adjusted(0, 0, -taken, 0), chart.type()));
  addTitle(chart, rest, layout.plot.topRight(), Align::right);
}

void addMarked(Chart& chart, const Layout& layout, const Works& works, int day, const Formatter& format) {
  if (day < 0 || day >= layout.days.count()) return;
  const QRectF column(QPointF(layout.days.at(day), layout.plot.top()),
                      QPointF(layout.days.at(day + 1), layout.plot.bottom()));
  chart.line(rectangle(column), kMarkLine, chart.colours().marked);
  chart.reading(peopleReading(works, day, format), column, layout.plot);
}

std::vector<QRectF> barRooms(const Layout& layout, const Works& works) {
  std::vector<QRectF> rooms;
  for (int k = 0; k < layout.days.count(); ++k) {
    const int people = peopleOn(works.days[static_cast<std::size_t>(k)]);
    if (people > 0) rooms.push_back(layout.bar(k, 0, people));
  }
  return rooms;
}

}  // namespace

void drawPeople(QPainter& painter, const QRectF& box_mm, const Works& works, const Formatter& format,
                const Style& style, std::optional<int> marked_day) {
  if (mostPeople(works) == 0)
    return drawSentence(
        painter, box_mm,
        Text::tr("Enter when the works start and who is there to see the people of each day."), style);
  Chart chart(style, format);
  const Layout layout(box_mm, works, format, chart.type());
  if (layout.plot.isEmpty()) return;
  addLegend(chart, layout.legend, box_mm);
  addGround(chart, layout.plot);
  addRestDays(chart, restColumns(works, layout.days, layout.plot), barRooms(layout, works));
  addGrid(chart, layout.plot, layout.people, layout.ticks);
  for (int k = 0; k < layout.days.count(); ++k)
    addDay(chart, layout, works.days[static_cast<std::size_t>(k)], k);
  addTitles(chart, layout, works, box_mm, format);
  addDayAxis(chart, layout.plot, layout.days, DayRows::below, format);
  if (marked_day) addMarked(chart, layout, works, *marked_day, format);
  chart.paint(painter);
}

std::optional<int> peopleDayAt(const QRectF& box_mm, QPointF at, const Works& works, const Formatter& format,
                               const Style& style) {
  const Layout layout(box_mm, works, format, Type(style, format));
  if (!layout.plot.contains(at)) return std::nullopt;
  return layout.days.dayAt(at.x());
}

}  // namespace ui::drawings
