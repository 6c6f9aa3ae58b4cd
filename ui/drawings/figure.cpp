#include "ui/drawings/figure.h"

#include "ui/drawings/chart_colours.h"

#include <QLineF>
#include <QTransform>
#include <algorithm>
#include <stdexcept>

namespace ui::drawings {
namespace {

QRectF turnedRoom(const QString& text, QPointF baseline, double width, const Lettering& lettering,
                  double angle_deg) {
  const QRectF level(0, -ascent_mm(lettering, text), width, height_mm(lettering, text));
  return QTransform().translate(baseline.x(), baseline.y()).rotate(-angle_deg).mapRect(level);
}

bool segmentMeets(const QRectF& room, QPointF a, QPointF b) {
  if (room.contains(a) || room.contains(b)) return true;
  const QLineF line(a, b);
  const QPointF corners[] = {room.topLeft(), room.topRight(), room.bottomRight(), room.bottomLeft()};
  for (int k = 0; k < 4; ++k) {
    if (line.intersects(QLineF(corners[k], corners[(k + 1) % 4]), nullptr) == QLineF::BoundedIntersection)
      return true;
  }
  return false;
}

bool outlineMeets(const QRectF& room, const QPainterPath& path) {
  for (const QPolygonF& polygon : path.toSubpathPolygons()) {
    for (qsizetype k = 1; k < polygon.size(); ++k) {
      if (segmentMeets(room, polygon[k - 1], polygon[k])) return true;
    }
  }
  return false;
}

double shiftFor(Align align, double width) {
  switch (align) {
    case Align::left:
      return 0;
    case Align::centre:
      return -width / 2;
    case Align::right:
      return -width;
  }
  throw std::logic_error("alignment");
}

}  // namespace

double width_mm(Line line) {
  switch (line) {
    case Line::outline:
      return 0.7;
    case Line::edge:
      return 0.5;
    case Line::hatch:
      return 0.25;
    case Line::thin:
    case Line::hidden:
    case Line::centre:
      return 0.35;
  }
  throw std::logic_error("line kind");
}

QPen pen(Line line, const QColor& ink) {
  QPen p(ink, width_mm(line), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
  if (line == Line::hidden) p.setDashPattern({9, 4});
  if (line == Line::centre) p.setDashPattern({24, 4, 2, 4});
  return p;
}

void Figure::add(const QPainterPath& path, Line line) {
  if (path.isEmpty()) return;
  const double w = width_mm(line) / 2;
  grow(path.boundingRect().adjusted(-w, -w, w, w));
  strokes_.push_back({path, line, Ink::line});
}

void Figure::add(QPointF from, QPointF to, Line line) {
  QPainterPath path(from);
  path.lineTo(to);
  add(path, line);
}

void Figure::addSolid(const QPainterPath& path) {
  if (path.isEmpty()) return;
  grow(path.boundingRect());
  strokes_.push_back({path, Line::thin, Ink::solid});
}

void Figure::addBlank(const QPainterPath& path) {
  if (path.isEmpty()) return;
  grow(path.boundingRect());
  strokes_.push_back({path, Line::thin, Ink::blank});
}

void Figure::addLater(const QRectF& bounds, std::function<void(Figure&)> draw) {
  grow(bounds);
  strokes_.push_back({{}, Line::thin, Ink::line, std::move(draw)});
}

void Figure::addText(const QString& text, QPointF baseline, const Lettering& lettering, Align align,
                     double angle_deg) {
  if (text.isEmpty()) return;
  const double width = width_mm(text, lettering);
  const QPointF along = QTransform().rotate(-angle_deg).map(QPointF(1, 0));
  const QPointF start = baseline + along * shiftFor(align, width);
  const QRectF room = turnedRoom(text, start, width, lettering, angle_deg);
  grow(room);
  notes_.push_back({text, start, lettering, angle_deg, room});
}

QRectF Figure::roomAbout(const QString& text, QPointF middle, const Lettering& lettering) {
  QRectF room(0, 0, width_mm(text, lettering), height_mm(lettering, text));
  room.moveCenter(middle);
  return room;
}

void Figure::addLines(const QStringList& lines, QPointF baseline, const Lettering& lettering, Align align) {
  for (const QString& line : lines) {
    addText(line, baseline, lettering, align);
    baseline.ry() += height_mm(lettering);
  }
}

void Figure::addTextAbout(const QString& text, QPointF middle, const Lettering& lettering) {
  const QRectF room = roomAbout(text, middle, lettering);
  addText(text, room.topLeft() + QPointF(0, ascent_mm(lettering, text)), lettering);
}

bool Figure::isFree(const QRectF& room) const {
  const auto inNote = [&](const Note& note) { return note.room.intersects(room); };
  const auto onStroke = [&](const Stroke& stroke) { return outlineMeets(room, stroke.path); };
  return std::ranges::none_of(notes_, inNote) && std::ranges::none_of(strokes_, onStroke);
}

bool Figure::meetsText(QPointF from, QPointF to) const {
  return std::ranges::any_of(notes_, [&](const Note& note) { return segmentMeets(note.room, from, to); });
}

void Figure::paint(QPainter& painter, const QColor& ink, double widen) const {
  const QColor paper = chartColours(ink.lightness() > 127).ground;
  painter.save();
  for (const Stroke& stroke : strokes_) {
    if (stroke.later) {
      Figure part;
      stroke.later(part);
      part.paint(painter, ink, widen);
      continue;
    }
    const bool is_line = stroke.kind == Ink::line;
    QPen line = pen(stroke.line, ink);
    line.setWidthF(line.widthF() * widen);
    painter.setPen(is_line ? line : QPen(Qt::NoPen));
    painter.setBrush(is_line ? QBrush(Qt::NoBrush) : QBrush(stroke.kind == Ink::solid ? ink : paper));
    painter.drawPath(stroke.path);
  }
  painter.setPen(ink);
  for (const Note& note : notes_) drawText(painter, note.baseline, note.text, note.lettering, note.angle_deg);
  painter.restore();
}

void Figure::grow(const QRectF& box) {
  bounds_ = bounds_.isNull() ? box : bounds_.united(box);
}

}  // namespace ui::drawings
