#pragma once

#include "ui/drawings/chart_colours.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/lettering.h"

#include <QPainterPath>
#include <QRectF>
#include <QString>
#include <QStringList>
#include <vector>

namespace ui::drawings {

/// Width and dashes of a line in a chart [mm]; dash 0: unbroken.
struct Stroke {
  double width_mm = 0.35;
  double dash_mm = 0, gap_mm = 0;
};

inline constexpr Stroke kAxisLine{0.35};
inline constexpr Stroke kGridLine{0.25, 0.3, 1.2};
inline constexpr Stroke kHatchLine{0.25};
inline constexpr Stroke kMarkLine{0.5, 2, 1};

/// Lettering of a chart with the room its lines take in the reader's script [mm].
struct Type {
  Lettering lettering;
  double ascent, descent;

  Type(const Style& style, const Formatter& format);
  double line() const { return ascent + descent; }
};

/// A chart before it is painted. Lines and hatches break where a text stands.
class Chart {
public:
  Chart(const Style& style, const Formatter& format);

  bool onPaper() const { return on_paper_; }
  const ChartColours& colours() const { return colours_; }
  const Type& type() const { return type_; }
  const Lettering& lettering() const { return type_.lettering; }

  /// An even colour; on paper nothing.
  void fill(const QPainterPath& path, const QColor& colour);
  /// An even colour; on paper black.
  void solid(const QPainterPath& path, const QColor& colour);
  /// A line; on paper black.
  void line(const QPainterPath& path, const Stroke& stroke, const QColor& colour);
  void line(QPointF from, QPointF to, const Stroke& stroke, const QColor& colour);
  /// A line as above that labels are kept away from where there is room.
  void dataLine(const QPainterPath& path, const Stroke& stroke, const QColor& colour);
  /// A wide line in the colour of the ground for another line to stand on; on paper nothing.
  void halo(const QPainterPath& path, double width_mm);
  /// Keeps labels and readings away from the lines of a path where there is room.
  void keepClear(const QPainterPath& path) { kept_clear_.addPath(path); }
  /// Parallel lines inside a region.
  void hatch(const QPainterPath& region, double angle_deg, double spacing_mm);
  /// A sign in an empty patch.
  void sign(const QPainterPath& path, const Stroke& stroke, const QRectF& patch);

  void text(const QString& text, QPointF baseline, Align align = Align::left);
  /// Text centred about the first of the places that is inside `within` and free; none may be.
  void label(const QString& text, const std::vector<QPointF>& middles, const QRectF& within);
  /// Takes away the labels in a room.
  void clear(const QRectF& room);
  /// Lines of text in a frame beside the marked room; labels under it give way. Left out where it would cover
  /// much of the plot.
  void reading(const QString& text, const QRectF& marked, const QRectF& within);

  void paint(QPainter& painter) const;

private:
  struct Mark {
    QPainterPath path;
    QColor colour;
    Stroke stroke;
    enum class Kind { area, broken_line, whole_line } kind;
  };
  struct Note {
    QString text;
    QPointF baseline;
    QRectF room;
    bool patch;  // stands on the plot
  };
  bool on_paper_;
  ChartColours colours_;
  Type type_;
  std::vector<Mark> marks_;
  std::vector<Note> notes_;
  std::vector<QRectF> patches_;
  QPainterPath kept_clear_;
  std::vector<Mark> frames_;

  QColor inked(const QColor& colour) const { return on_paper_ ? colours_.ink : colour; }
  bool isFree(const QRectF& room) const;
  QRectF frameBeside(const QRectF& marked, QSizeF size, const QRectF& within) const;
  std::vector<QRectF> rooms() const;
  void paintMark(QPainter& painter, const Mark& mark, const std::vector<QRectF>& rooms) const;
};

/// Rectangle, and straight line, as a path.
QPainterPath rectangle(const QRectF& box);
QPainterPath straight(QPointF from, QPointF to);

inline constexpr Stroke kSignLine{0.7};

/// A cross in an empty patch: what the plan has now. The patch stays within the plot.
void addPresentSign(Chart& chart, QPointF at, const QRectF& plot);
QPainterPath presentCross(QPointF at, const QRectF& within);

/// Draws a sentence in the middle of the box, in as many lines as it takes.
void drawSentence(QPainter& painter, const QRectF& box_mm, const QString& sentence, const Style& style);

}  // namespace ui::drawings
