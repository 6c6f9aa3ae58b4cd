#include "ui/drawings/chart_axes.h"
#include "ui/drawings/chart_rows.h"
#include "ui/drawings/money_charts.h"
#include "ui/drawings/option_picture.h"
#include "ui/drawings/scaled_view.h"
#include "ui/drawings/wrap_lines.h"
#include "ui/text/money_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::OptionResult;
using core::geometry::TankGeometry;

constexpr double kBetween_mm = 3;  // free room between options
constexpr double kToPlan_mm = 4;   // from the lowest floor to the plans
constexpr double kInset_mm = 0.2;  // so that rounding puts nothing outside
constexpr double kOverPerson_m = 0.05;
constexpr double kLeastCell_mm = 24;
constexpr double kLeastPicture_mm = 20;

std::vector<const OptionResult*> buildable(const std::vector<OptionResult>& options) {
  std::vector<const OptionResult*> list;
  for (const OptionResult& option : options) {
    if (option.geometry) list.push_back(&option);
  }
  return list;
}

QString sizeText(const TankGeometry& tank, const Formatter& format) {
  const auto metres = [&](double length) { return format.quantity(length, core::Unit::metre, 2); };
  const Eigen::Vector2d size = tank.outline().size(0);
  if (tank.outline().isCircle())
    return Text::tr("%1 across, %2 deep", "diameter, depth").arg(metres(size.x()), metres(tank.depth()));
  const auto number = [&](double length) { return format.number(length, core::Unit::metre, 2); };
  return Text::tr("%1 × %2 × %3", "length, width, depth")
      .arg(number(size.x()), number(size.y()), metres(tank.depth()));
}

/// Lines broken at blanks alone: Qt's breaks of text may part the digits of "6.00 × 3.50".
QStringList brokenAtBlanks(const QString& text, const Lettering& lettering, double width) {
  QStringList lines;
  for (const QString& word : text.split(u' ')) {
    const QString longer = lines.isEmpty() ? word : lines.back() + u' ' + word;
    if (lines.isEmpty() || width_mm(longer, lettering) > width) {
      lines << word;
    } else {
      lines.back() = longer;
    }
  }
  return lines;
}

/// Title, size and water of an option in lines that fit its cell.
QStringList headOf(const OptionResult& option, const Formatter& format, const Type& type, double width) {
  QStringList lines = wrapLines(words::optionTitle(option), type.lettering, width);
  lines << brokenAtBlanks(sizeText(*option.geometry, format), type.lettering, width);
  if (option.full_volume_m3)
    lines << brokenAtBlanks(Text::tr("full: %1").arg(format.litres(*option.full_volume_m3)), type.lettering,
                            width);
  for (QString& line : lines) line = shortened(line, type.lettering, width);
  return lines;
}

/// What the person is for, and which options are missing.
QStringList footOf(const std::vector<OptionResult>& options, const Formatter& format, const Type& type,
                   double width) {
  QStringList texts{Text::tr("The person is %1 tall.").arg(format.quantity(kPerson_m, core::Unit::metre, 2))};
  for (const OptionResult& option : options) {
    if (!option.geometry) texts << Text::tr("%1 cannot be built.").arg(words::optionTitle(option));
  }
  QStringList lines;
  for (const QString& text : texts) {
    for (const QString& line : wrapLines(text, type.lettering, width))
      lines << shortened(line, type.lettering, width);
  }
  return lines;
}

/// What the pictures take at full size [m].
struct Extent {
  PlanLies lies;
  double width = 0, above = kPerson_m + kOverPerson_m, pit = 0, plan = 0;

  Extent(const std::vector<const OptionResult*>& options, PlanLies plan_lies) : lies(plan_lies) {
    for (const OptionResult* option : options) {
      const Eigen::Vector2d size = planSize(*option->geometry, lies);
      width = std::max({width, sectionWidth(*option->geometry), size.x()});
      pit = std::max(pit, option->geometry->pitDepth());
      plan = std::max(plan, size.y());
    }
  }
  double height() const { return above + pit + plan; }
};

/// All options in one row of cells, or in several, plans one way or the other: the way that shows them
/// largest.
struct Layout {
  std::vector<const OptionResult*> options;
  std::vector<QStringList> heads;
  QStringList foot;
  Extent extent;
  int columns = 0, rows = 0;
  double n = 0;  // of the scale 1:n
  double head_mm = 0;
  QRectF room;  // of all cells

  Layout(const QRectF& box, const std::vector<OptionResult>& all, const Formatter& format, const Style& style,
         const Type& type)
      : options(buildable(all)),
        foot(footOf(all, format, type, box.width())),
        extent(options, PlanLies::as_cut) {
    const double below =
        scaleRowHeight(type) + static_cast<double>(foot.size()) * type.line() + kGap_mm + kInset_mm;
    room = box.adjusted(0, 0, 0, -below);
    const int count = static_cast<int>(options.size());
    for (int tried = 1; tried <= count; ++tried) {
      for (const PlanLies lies : {PlanLies::as_cut, PlanLies::lengthwise})
        tryRows(tried, Extent(options, lies), format, style, type);
    }
    room.setHeight(rows * cellHeight());
  }

  double cellHeight() const { return head_mm + mm(extent.height()) + kToPlan_mm + kBetween_mm; }
  QRectF cell(int k) const {
    const double wide = room.width() / columns, high = room.height() / rows;
    return {room.left() + k % columns * wide, room.top() + k / columns * high, wide, high};
  }
  double mm(double length_m) const { return n > 0 ? length_m * 1000 / n : 0; }

private:
  std::vector<QStringList> headsIn(double width_mm, const Formatter& format, const Type& type) const {
    std::vector<QStringList> list;
    for (const OptionResult* option : options) list.push_back(headOf(*option, format, type, width_mm));
    return list;
  }
  void tryRows(int tried, const Extent& size, const Formatter& format, const Style& style, const Type& type) {
    const int across = (static_cast<int>(options.size()) + tried - 1) / tried;
    const double wide = room.width() / across - kBetween_mm;
    if (wide < kLeastCell_mm) return;
    const std::vector<QStringList> lines = headsIn(wide, format, type);
    const auto most = std::ranges::max_element(lines, {}, &QStringList::size)->size();
    const double head = static_cast<double>(most) * type.line() + kGap_mm;
    const double high = room.height() / tried - head - kToPlan_mm - kBetween_mm;
    if (high < kLeastPicture_mm) return;
    const Eigen::AlignedBox2d whole(Eigen::Vector2d(0, 0), Eigen::Vector2d(size.width, size.height()));
    const double found = ScaledView(QRectF(0, 0, wide, high), whole, 0, style).n();
    if (n > 0 && found >= n) return;
    n = found;
    extent = size;
    rows = tried;
    columns = across;
    heads = lines;
    head_mm = head;
  }
};

void addOption(Chart& chart, const Layout& layout, int k) {
  const auto at = static_cast<std::size_t>(k);
  const QRectF cell = layout.cell(k);
  const TankGeometry& tank = *layout.options[at]->geometry;
  const double x = cell.center().x();
  double baseline = cell.top() + chart.type().ascent;
  for (const QString& line : layout.heads[at]) {
    chart.text(line, {x, baseline}, Align::centre);
    baseline += chart.type().line();
  }
  const double rim = cell.top() + layout.head_mm + layout.mm(layout.extent.above);
  addOptionSection(chart, tank, layout.n, {x, rim});
  addOptionPlan(chart, tank, layout.n, {x, rim + layout.mm(layout.extent.pit) + kToPlan_mm},
                layout.extent.lies);
  if (k % layout.columns == 0)
    addPerson(chart, {x - layout.mm(sectionWidth(tank) - kBeside_m) / 2, rim}, layout.n);
}

void addFoot(Chart& chart, const Layout& layout, const QRectF& box, const Formatter& format) {
  const double top = layout.room.bottom() + kGap_mm;
  addScaleRow(chart, {box.left(), top}, layout.n, format);
  double baseline = top + scaleRowHeight(chart.type()) + chart.type().ascent;
  for (const QString& line : layout.foot) {
    chart.text(line, {box.left(), baseline});
    baseline += chart.type().line();
  }
}

}  // namespace

void drawOptions(QPainter& painter, const QRectF& box_mm, const std::vector<OptionResult>& options,
                 const Formatter& format, const Style& style) {
  if (buildable(options).empty())
    return drawSentence(painter, box_mm,
                        options.empty() ? Text::tr("Add an option to see the tanks side by side.")
                                        : Text::tr("None of the options can be built."),
                        style);
  Chart chart(style, format);
  const Layout layout(box_mm, options, format, style, chart.type());
  if (layout.n <= 0) return;
  for (int k = 0; k < static_cast<int>(layout.options.size()); ++k) addOption(chart, layout, k);
  addFoot(chart, layout, box_mm, format);
  chart.paint(painter);
}

}  // namespace ui::drawings
