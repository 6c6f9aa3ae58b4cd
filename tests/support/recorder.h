#pragma once

#include <QColor>
#include <QPaintDevice>
#include <QPainterPath>
#include <QPolygonF>
#include <QString>
#include <vector>

namespace support {

/// A text as it reached the paint device.
struct RecordedText {
  QString text;
  QPolygonF room;  ///< its line's box, turned as painted [mm]
  double body_mm;  ///< size of the type on paper
  QColor ink;
};

/// A line or the edge of a shape.
struct RecordedStroke {
  QPainterPath path;  ///< [mm]
  double width_mm;
  QColor ink;
};

struct RecordedFill {
  QPainterPath path;  ///< [mm]
  QColor ink;
};

/// Paint device that keeps what is painted on it, one unit to a millimetre.
class Recorder : public QPaintDevice {
public:
  explicit Recorder(QSizeF size_mm);
  ~Recorder() override;
  QPaintEngine* paintEngine() const override;

  std::vector<RecordedText> texts;
  std::vector<RecordedStroke> strokes;
  std::vector<RecordedFill> fills;
  int images = 0;

  bool says(const QString& part) const;  ///< some text contains the part
  QString allText() const;

protected:
  int metric(PaintDeviceMetric metric) const override;

private:
  QSizeF size_mm_;
  QPaintEngine* engine_;
};

/// What is wrong with a drawing or page on paper, in words; empty when nothing is: texts on each other or on
/// lines, texts outside `allowed`, lines under 0.25 mm, type under 12 point, ink that is not black (white is
/// the paper), pictures made of pixels.
QStringList faultsOnPaper(const Recorder& recorder, const QRectF& allowed);

}  // namespace support
