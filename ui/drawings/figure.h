#pragma once

#include "ui/drawings/lettering.h"

#include <QColor>
#include <QPainter>
#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <functional>
#include <vector>

namespace ui::drawings {

/// Kinds of line after ISO 128, with their width on paper.
enum class Line {
  outline,  ///< visible outline, 0.7 mm
  edge,     ///< less weighty outline, 0.5 mm
  thin,     ///< dimensions, leaders, 0.35 mm
  hatch,    ///< 0.25 mm
  hidden,   ///< dashed, 0.35 mm
  centre,   ///< chain, 0.35 mm
};

double width_mm(Line line);
QPen pen(Line line, const QColor& ink);

enum class Align { left, centre, right };

/// A drawing on paper before it is painted: lines, solid shapes and texts in millimetres, y downward.
class Figure {
public:
  void add(const QPainterPath& path, Line line);
  void add(QPointF from, QPointF to, Line line);
  void addSolid(const QPainterPath& path);
  /// An area of bare paper that hides what was added before it.
  void addBlank(const QPainterPath& path);
  /// Something worked out only when it is painted, such as a hatch, that stays inside the bounds.
  void addLater(const QRectF& bounds, std::function<void(Figure&)> draw);
  /// Text turned anticlockwise about `baseline`, which is its left end, middle or right end.
  void addText(const QString& text, QPointF baseline, const Lettering& lettering, Align align = Align::left,
               double angle_deg = 0);
  /// Level lines of text below each other, the first one's baseline as in addText.
  void addLines(const QStringList& lines, QPointF baseline, const Lettering& lettering,
                Align align = Align::left);
  /// Text level, centred about a point both ways.
  void addTextAbout(const QString& text, QPointF middle, const Lettering& lettering);

  /// Room the text of addTextAbout would take.
  static QRectF roomAbout(const QString& text, QPointF middle, const Lettering& lettering);
  /// True when no text, line or solid touches the room.
  bool isFree(const QRectF& room) const;

  /// True when a straight line would touch a text.
  bool meetsText(QPointF from, QPointF to) const;

  QRectF bounds() const { return bounds_; }
  /// @param widen times the width of each line, where the painter makes it narrower
  void paint(QPainter& painter, const QColor& ink, double widen = 1) const;

private:
  enum class Ink { line, solid, blank };
  struct Stroke {
    QPainterPath path;
    Line line;
    Ink kind;
    std::function<void(Figure&)> later = nullptr;
  };
  struct Note {
    QString text;
    QPointF baseline;  // left end
    Lettering lettering;
    double angle_deg;
    QRectF room;
  };
  std::vector<Stroke> strokes_;
  std::vector<Note> notes_;
  QRectF bounds_;

  void grow(const QRectF& box);
};

}  // namespace ui::drawings
