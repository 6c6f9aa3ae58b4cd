#include "ui/drawings/chart.h"

#include "ui/drawings/hatch.h"
#include "ui/drawings/line_cuts.h"
#include "ui/drawings/wrap_lines.h"

#include <algorithm>

namespace ui::drawings {
namespace {

constexpr double kAround_mm = 0.4;      // free room about a text
constexpr double kReadingPad_mm = 1.2;  // from the frame of a reading to its text
constexpr double kMostHidden = 0.25;    // share of the plot that a reading may cover
constexpr double kFromMark_mm = 1.5;    // from the marked place to the frame

QPen penOf(const Stroke& stroke, const QColor& colour) {
  QPen pen(colour, stroke.width_mm, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
  if (stroke.dash_mm > 0)
    pen.setDashPattern({stroke.dash_mm / stroke.width_mm, stroke.gap_mm / stroke.width_mm});
  return pen;
}

}  // namespace

QPainterPath rectangle(const QRectF& box) {
  QPainterPath path;
  path.addRect(box);
  return path;
}

QPainterPath straight(QPointF from, QPointF to) {
  QPainterPath path(from);
  path.lineTo(to);
  return path;
}

Type::Type(const Style& style, const Formatter& format)
    : lettering{style.text_mm},
      ascent(ascent_mm(lettering, format.monthName(1))),
      descent(descent_mm(lettering, format.monthName(1))) {}

Chart::Chart(const Style& style, const Formatter& format)
    : on_paper_(style.fixed_scale), colours_(chartColours(style.dark)), type_(style, format) {}

void Chart::fill(const QPainterPath& path, const QColor& colour) {
  if (!on_paper_) marks_.push_back({path, colour, {}, Mark::Kind::area});
}

void Chart::solid(const QPainterPath& path, const QColor& colour) {
  marks_.push_back({path, inked(colour), {}, Mark::Kind::area});
}

void Chart::line(const QPainterPath& path, const Stroke& stroke, const QColor& colour) {
  if (!path.isEmpty()) marks_.push_back({path, inked(colour), stroke, Mark::Kind::broken_line});
}

void Chart::line(QPointF from, QPointF to, const Stroke& stroke, const QColor& colour) {
  line(straight(from, to), stroke, colour);
}

void Chart::dataLine(const QPainterPath& path, const Stroke& stroke, const QColor& colour) {
  line(path, stroke, colour);
  kept_clear_.addPath(path);
}

void Chart::halo(const QPainterPath& path, double width_mm) {
  if (!on_paper_) line(path, {width_mm}, colours_.ground);
}

void Chart::hatch(const QPainterPath& region, double angle_deg, double spacing_mm) {
  line(lineHatch(region, angle_deg, {spacing_mm}), kHatchLine, colours_.ink);
}

void Chart::sign(const QPainterPath& path, const Stroke& stroke, const QRectF& patch) {
  fill(rectangle(patch), colours_.ground);
  patches_.push_back(patch);
  kept_clear_.addRect(patch);
  marks_.push_back({path, colours_.ink, stroke, Mark::Kind::whole_line});
}

void Chart::text(const QString& text, QPointF baseline, Align align) {
  if (text.isEmpty()) return;
  const double width = width_mm(text, lettering());
  const double left = baseline.x() - (align == Align::left ? 0 : align == Align::centre ? width / 2 : width);
  const QRectF room(left, baseline.y() - ascent_mm(lettering(), text), width, height_mm(lettering(), text));
  notes_.push_back({text, {left, baseline.y()}, room, false});
}

bool Chart::isFree(const QRectF& room) const {
  const auto meets = [&](const QRectF& other) { return other.intersects(room); };
  return std::ranges::none_of(patches_, meets) && std::ranges::none_of(notes_, meets, &Note::room);
}

void Chart::label(const QString& text, const std::vector<QPointF>& middles, const QRectF& within) {
  const auto place = [&](bool clear) {
    for (const QPointF middle : middles) {
      const QRectF room = Figure::roomAbout(text, middle, lettering());
      if (!within.contains(room) || !isFree(room) || (clear && crosses(kept_clear_, room))) continue;
      notes_.push_back({text, room.topLeft() + QPointF(0, ascent_mm(lettering(), text)), room, true});
      return true;
    }
    return false;
  };
  if (!place(true)) place(false);
}

void Chart::clear(const QRectF& room) {
  const QRectF near = room.adjusted(-kAround_mm, 0, kAround_mm, 0);
  std::erase_if(notes_, [&](const Note& note) { return note.patch && note.room.intersects(near); });
}

QRectF Chart::frameBeside(const QRectF& marked, QSizeF size, const QRectF& within) const {
  const double right = marked.right() + kFromMark_mm, left = marked.left() - kFromMark_mm - size.width();
  const double top = within.top() + kReadingPad_mm;
  const double bottom = within.bottom() - kReadingPad_mm - size.height();
  QRectF found;
  for (const QPointF corner :
       {QPointF(right, top), QPointF(left, top), QPointF(right, bottom), QPointF(left, bottom)}) {
    const QRectF frame(corner, size);
    const auto hides = [&](const QRectF& sign) { return sign.intersects(frame); };
    if (!within.contains(frame) || std::ranges::any_of(patches_, hides)) continue;
    if (!crosses(kept_clear_, frame)) return frame;
    if (found.isEmpty()) found = frame;
  }
  return found;
}

void Chart::reading(const QString& text, const QRectF& marked, const QRectF& within) {
  const QStringList lines = wrapLines(text, lettering(), within.width() * 0.45);
  double height = 0;
  for (const QString& line : lines) height += height_mm(lettering(), line);
  const QRectF frame = frameBeside(
      marked, QSizeF(widest(lines, lettering()), height) + 2 * QSizeF(kReadingPad_mm, kReadingPad_mm),
      within);
  const double share = frame.width() * frame.height() / (within.width() * within.height());
  if (frame.isEmpty() || share > kMostHidden) return;
  clear(frame);
  patches_.push_back(frame);
  frames_.push_back({rectangle(frame), colours_.ink, kAxisLine, Mark::Kind::whole_line});
  double top = frame.top() + kReadingPad_mm;
  for (const QString& line : lines) {
    this->text(line, {frame.left() + kReadingPad_mm, top + ascent_mm(lettering(), line)});
    top += height_mm(lettering(), line);
  }
}

std::vector<QRectF> Chart::rooms() const {
  std::vector<QRectF> rooms = patches_;
  for (const Note& note : notes_) rooms.push_back(note.room.adjusted(-kAround_mm, 0, kAround_mm, 0));
  return rooms;
}

void Chart::paintMark(QPainter& painter, const Mark& mark, const std::vector<QRectF>& rooms) const {
  const bool area = mark.kind == Mark::Kind::area;
  painter.setPen(area ? QPen(Qt::NoPen) : penOf(mark.stroke, mark.colour));
  painter.setBrush(area ? QBrush(mark.colour) : QBrush(Qt::NoBrush));
  painter.drawPath(mark.kind == Mark::Kind::broken_line ? outside(mark.path, rooms) : mark.path);
}

void Chart::paint(QPainter& painter) const {
  painter.save();
  const std::vector<QRectF> around = rooms();
  for (const Mark& mark : marks_) paintMark(painter, mark, around);
  for (const Note& note : notes_) {
    if (note.patch && !on_paper_) painter.fillRect(note.room, colours_.ground);
  }
  for (const Mark& frame : frames_) {
    if (!on_paper_) painter.fillRect(frame.path.boundingRect(), colours_.ground);
    paintMark(painter, frame, {});
  }
  painter.setPen(colours_.ink);
  for (const Note& note : notes_) drawText(painter, note.baseline, note.text, lettering());
  painter.restore();
}

}  // namespace ui::drawings
