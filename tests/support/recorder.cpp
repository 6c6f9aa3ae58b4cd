#include "tests/support/recorder.h"

#include <QFontInfo>
#include <QLineF>
#include <QPaintEngine>
#include <QPainter>
#include <QPen>
#include <QTextItem>
#include <algorithm>
#include <cmath>

namespace support {
namespace {

/// Marks that say where a piece of text runs and show nothing themselves.
bool isDirectionMark(const QString& text) {
  return std::all_of(text.begin(), text.end(), [](QChar c) {
    return c == QChar(0x200E) || c == QChar(0x200F) || (c >= QChar(0x2066) && c <= QChar(0x2069));
  });
}

/// True when the box lies inside; unlike QRectF::contains also for a line without height or width.
bool holds(const QRectF& outer, const QRectF& box) {
  return box.left() >= outer.left() && box.right() <= outer.right() && box.top() >= outer.top() &&
         box.bottom() <= outer.bottom();
}

/// How much larger things get under a transform.
double growth(const QTransform& t) {
  return std::sqrt(std::abs(t.determinant()));
}

class Engine : public QPaintEngine {
public:
  explicit Engine(Recorder* into) : QPaintEngine(AllFeatures), into_(into) {}

  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  Type type() const override { return User; }
  void updateState(const QPaintEngineState&) override {}

  void drawPath(const QPainterPath& path) override {
    const QTransform t = painter()->combinedTransform();
    const QPen pen = painter()->pen();
    const QPainterPath onPaper = t.map(path);
    if (painter()->brush().style() != Qt::NoBrush)
      into_->fills.push_back({onPaper, painter()->brush().color()});
    if (pen.style() == Qt::NoPen) return;
    into_->strokes.push_back({onPaper, pen.widthF() * (pen.isCosmetic() ? 1 : growth(t)), pen.color()});
  }
  void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
    QPainterPath path(points[0]);
    for (int k = 1; k < count; ++k) path.lineTo(points[k]);
    if (mode != PolylineMode) path.closeSubpath();
    drawPath(path);
  }
  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    if (isDirectionMark(item.text())) return;
    const QTransform t = painter()->combinedTransform();
    // some fonts leave far more room than letters take: see kMostAscent in ui/drawings/lettering.cpp
    const double size = item.font().pixelSize();
    const double up = std::min(item.ascent(), 1.08 * size), down = std::min(item.descent(), 0.42 * size);
    const QRectF line(at.x(), at.y() - up, item.width(), up + down);
    into_->texts.push_back(
        {item.text(), t.map(QPolygonF(line)), item.font().pixelSize() * growth(t), painter()->pen().color()});
  }
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override { ++into_->images; }
  void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {
    ++into_->images;
  }

private:
  Recorder* into_;
};

/// Black, or white, which is no ink: it lets the paper show.
bool isBlackOrPaper(const QColor& ink) {
  return ink == QColor(Qt::black) || ink == QColor(Qt::white);
}

bool lineCrosses(const QRectF& room, QPointF a, QPointF b) {
  if (room.contains(a) || room.contains(b)) return true;
  const QPointF corners[] = {room.topLeft(), room.topRight(), room.bottomRight(), room.bottomLeft()};
  for (int k = 0; k < 4; ++k) {
    if (QLineF(a, b).intersects(QLineF(corners[k], corners[(k + 1) % 4]), nullptr) ==
        QLineF::BoundedIntersection)
      return true;
  }
  return false;
}

bool pathCrosses(const QRectF& room, const QPainterPath& path) {
  if (!path.boundingRect().adjusted(-1, -1, 1, 1).intersects(room)) return false;
  for (const QPolygonF& polygon : path.toSubpathPolygons()) {
    for (qsizetype k = 1; k < polygon.size(); ++k) {
      if (lineCrosses(room, polygon[k - 1], polygon[k])) return true;
    }
  }
  return false;
}

/// The part of a text's box where its letters stand: leaves out the room above capitals and the space round
/// it.
QRectF letters(const RecordedText& text) {
  const QRectF box = text.room.boundingRect();
  const double spare = 0.25 * text.body_mm;
  const QPointF along = text.room.at(1) - text.room.at(0);
  const bool upright = std::abs(along.y()) > std::abs(along.x());
  return upright ? box.adjusted(spare, 0.1, -0.02, -0.1) : box.adjusted(0.1, spare, -0.1, -0.02);
}

void checkText(const Recorder& recorder, std::size_t k, const QRectF& allowed, QStringList& faults) {
  const RecordedText& text = recorder.texts[k];
  if (text.body_mm < 12 * 25.4 / 72) faults << "type under 12 point: " + text.text;
  if (!allowed.contains(text.room.boundingRect())) faults << "outside: " + text.text;
  if (text.ink != QColor(Qt::black)) faults << "not black: " + text.text;
  for (std::size_t i = k + 1; i < recorder.texts.size(); ++i) {
    if (letters(text).intersects(letters(recorder.texts[i])))
      faults << "on each other: " + text.text + " / " + recorder.texts[i].text;
  }
  for (const RecordedStroke& stroke : recorder.strokes) {
    if (pathCrosses(letters(text), stroke.path)) faults << "line through text: " + text.text;
  }
  for (const RecordedFill& fill : recorder.fills) {
    if (fill.path.intersects(letters(text))) faults << "solid on text: " + text.text;
  }
}

}  // namespace

Recorder::Recorder(QSizeF size_mm) : size_mm_(size_mm), engine_(new Engine(this)) {}

Recorder::~Recorder() {
  delete engine_;
}

QPaintEngine* Recorder::paintEngine() const {
  return engine_;
}

bool Recorder::says(const QString& part) const {
  return allText().contains(part);
}

QString Recorder::allText() const {
  QStringList all;
  for (const RecordedText& text : texts) all << text.text;
  return all.join(u'\n');
}

int Recorder::metric(PaintDeviceMetric metric) const {
  switch (metric) {
    case PdmWidth:
    case PdmWidthMM:
      return static_cast<int>(std::ceil(size_mm_.width()));
    case PdmHeight:
    case PdmHeightMM:
      return static_cast<int>(std::ceil(size_mm_.height()));
    case PdmDpiX:
    case PdmDpiY:
    case PdmPhysicalDpiX:
    case PdmPhysicalDpiY:
      return 25;
    case PdmDepth:
      return 1;
    case PdmNumColors:
      return 2;
    default:
      return 1;
  }
}

QStringList faultsOnPaper(const Recorder& recorder, const QRectF& allowed) {
  QStringList faults;
  for (std::size_t k = 0; k < recorder.texts.size(); ++k) checkText(recorder, k, allowed, faults);
  for (const RecordedStroke& stroke : recorder.strokes) {
    if (stroke.width_mm < 0.25 - 1e-9) faults << QStringLiteral("thin line of %1 mm").arg(stroke.width_mm);
    if (!isBlackOrPaper(stroke.ink)) faults << QStringLiteral("line not black");
    if (!holds(allowed.adjusted(-0.5, -0.5, 0.5, 0.5), stroke.path.boundingRect()))
      faults << QStringLiteral("line outside");
  }
  for (const RecordedFill& fill : recorder.fills) {
    if (!isBlackOrPaper(fill.ink)) faults << QStringLiteral("solid not black");
  }
  if (recorder.images > 0) faults << QStringLiteral("picture made of pixels");
  return faults;
}

}  // namespace support
