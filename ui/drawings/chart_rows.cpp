#include "ui/drawings/chart_rows.h"

#include "ui/drawings/chart_axes.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

constexpr double kPixelsPerMm = 100;  // of font()
constexpr double kMostNames = 0.36;   // share of the width
constexpr double kLeastPitch_mm = 1.2;
constexpr double kLeastPlot_mm = 30;
constexpr double kBarShare = 0.66;  // of the row's height
constexpr double kLetters = 0.84;   // share of a line's height that its letters take
constexpr double kOverhang = 0.3;   // share of a line that the last name may reach under a low row
constexpr double kSpare_mm = 0.1;

}  // namespace

QString shortened(const QString& text, const Lettering& lettering, double width_mm) {
  if (drawings::width_mm(text, lettering) <= width_mm) return text;
  return QFontMetricsF(font(lettering, text)).elidedText(text, Qt::ElideMiddle, width_mm * kPixelsPerMm);
}

QString fittedTitle(const QString& title, const QRectF& box_mm, const Type& type) {
  return shortened(title, type.lettering, box_mm.width() - 2 * kSpare_mm);
}

QRectF Rows::row(int k) const {
  return {plot.left(), plot.top() + k * pitch(), plot.width(), pitch()};
}

QRectF Rows::bar(int k, double from_mm, double to_mm) const {
  const double high = std::min(kBarShare * pitch(), most_bar_mm);
  return {from_mm, row(k).center().y() - high / 2, to_mm - from_mm, high};
}

std::optional<int> Rows::at(QPointF place) const {
  if (isEmpty() || (!plot.contains(place) && !names.contains(place))) return std::nullopt;
  return std::clamp(static_cast<int>(std::floor((place.y() - plot.top()) / pitch())), 0, count - 1);
}

bool Rows::holdsText(const Type& type) const {
  return pitch() >= kLetters * type.line();
}

double bestPitch(const Type& type) {
  return 1.15 * type.line();
}

Rows rowsIn(const QRectF& room, const QStringList& names, double right_mm, const Type& type, double stretch) {
  double widest_mm = 0;
  for (const QString& name : names) widest_mm = std::max(widest_mm, width_mm(name, type.lettering));
  const double wide = std::min(widest_mm, kMostNames * room.width()) + kSpare_mm;
  Rows rows;
  rows.count = static_cast<int>(names.size());
  const double even = room.height() / std::max(1, rows.count);
  const double over = even < type.line() ? kOverhang * type.line() : 0;
  const double pitch = std::min((room.height() - over) / std::max(1, rows.count), stretch * bestPitch(type));
  const double plot_wide = room.width() - wide - kGap_mm - right_mm;
  if (rows.count == 0 || pitch < kLeastPitch_mm || plot_wide < kLeastPlot_mm) return {};
  const double high = pitch * rows.count;
  rows.names = QRectF(room.left(), room.top(), wide, high);
  rows.most_bar_mm *= stretch;
  rows.plot = QRectF(rows.names.right() + kGap_mm, room.top(), plot_wide, high);
  return rows;
}

void addNames(Chart& chart, const Rows& rows, const QStringList& names, const Formatter& format) {
  const Type& type = chart.type();
  const bool leftward = format.locale().textDirection() == Qt::RightToLeft;
  const int every = static_cast<int>(std::ceil(kLetters * type.line() / rows.pitch() - 1e-9));
  for (int k = 0; k < rows.count; k += every) {
    const QString name = shortened(names[k], type.lettering, rows.names.width());
    const double baseline = rows.row(k).center().y() + type.lettering.cap_mm / 2;
    chart.text(name, {leftward ? rows.names.right() : rows.names.left(), baseline},
               leftward ? Align::right : Align::left);
  }
}

}  // namespace ui::drawings
