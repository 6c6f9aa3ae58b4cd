#include "ui/panels/chart_view.h"

#include "ui/widgets/theme.h"

#include <QAccessible>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QVBoxLayout>
#include <cmath>
#include <utility>

namespace ui {

namespace {

constexpr double kInch_mm = 25.4;
constexpr double kMargin_mm = 2;
constexpr int kReadingLines = 2;

}  // namespace

ChartView::ChartView(const QString& id, Chart chart, QWidget* parent)
    : QWidget(parent), chart_(std::move(chart)), area_(new QWidget(this)), reading_(new QLabel(this)) {
  setObjectName(id);
  area_->setObjectName(id + QStringLiteral(".area"));
  area_->setFocusPolicy(Qt::StrongFocus);
  area_->setMouseTracking(true);
  area_->setMinimumSize(320, 220);
  area_->setAccessibleName(chart_.name);
  area_->installEventFilter(this);
  reading_->setObjectName(id + QStringLiteral(".reading"));
  reading_->setWordWrap(true);
  reading_->setMinimumHeight(kReadingLines * reading_->fontMetrics().lineSpacing());
  reading_->setAlignment(Qt::AlignTop);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(area_, 1);
  layout->addWidget(reading_);
  mark({});
}

double ChartView::pixelsPerMm() const {
  return area_->logicalDpiX() / kInch_mm;
}

QRectF ChartView::box() const {
  const double scale = pixelsPerMm();
  return QRectF(0, 0, area_->width() / scale, area_->height() / scale)
      .adjusted(kMargin_mm, kMargin_mm, -kMargin_mm, -kMargin_mm);
}

void ChartView::mark(std::optional<int> place) {
  if (place && *place >= chart_.places()) place.reset();
  marked_ = place;
  const QString text =
      place ? chart_.reading(*place) : tr("Point at the chart, or walk through it with the arrow keys.");
  setTone(reading_, place ? Tone::plain : Tone::quiet);
  if (reading_->text() != text) {
    reading_->setText(text);
    area_->setAccessibleDescription(text);
    QAccessibleEvent event(area_, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
  }
  area_->update();
}

void ChartView::changed() {
  if (chart_.height_mm)
    area_->setMinimumHeight(int(std::ceil((chart_.height_mm() + 2 * kMargin_mm) * pixelsPerMm())));
  mark(marked_);
}

void ChartView::paintArea() {
  QPainter painter(area_);
  painter.setRenderHint(QPainter::Antialiasing);
  if (area_->hasFocus()) {
    painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
    painter.drawRect(area_->rect().adjusted(1, 1, -1, -1));
  }
  painter.scale(pixelsPerMm(), pixelsPerMm());
  chart_.draw(painter, box(), marked_);
}

bool ChartView::walk(int key) {
  if (chart_.pressed && chart_.pressed(marked_, key)) return true;
  const int places = chart_.places();
  const int row = chart_.columns();
  if (places == 0) return false;
  const auto step = [&](int by) {
    if (!marked_) return mark(by > 0 ? 0 : places - 1), true;
    return mark((*marked_ + by + places) % places), true;
  };
  switch (key) {
    case Qt::Key_Right:
      return step(1);
    case Qt::Key_Left:
      return step(-1);
    case Qt::Key_Up:
      return row > 0 && step(row);
    case Qt::Key_Down:
      return row > 0 && step(-row);
    case Qt::Key_Home:
      return mark(0), true;
    case Qt::Key_End:
      return mark(places - 1), true;
    case Qt::Key_Escape:
      return mark({}), true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
      return marked_ && chart_.picked && (chart_.picked(*marked_), true);
    default:
      return false;
  }
}

void ChartView::pointerMoved(QPointF at_mm) {
  if (!grip_) return mark(chart_.at(box(), at_mm));
  constexpr double kStill_mm = 1;
  grip_->moved = grip_->moved || std::abs(at_mm.x() - grip_->x_mm) > kStill_mm;
  if (grip_->moved && chart_.dragged) chart_.dragged(grip_->place, at_mm.x() - grip_->x_mm, false);
  area_->update();
}

void ChartView::grip(QPointF at_mm) {
  const auto place = chart_.at(box(), at_mm);
  if (!place || (!chart_.picked && !chart_.dragged)) return;
  mark(place);
  grip_ = Grip{*place, at_mm.x()};
}

void ChartView::letGo(QPointF at_mm) {
  const auto grip = std::exchange(grip_, std::nullopt);
  if (!grip) return;
  if (grip->moved && chart_.dragged) return chart_.dragged(grip->place, at_mm.x() - grip->x_mm, true);
  if (!grip->moved && chart_.picked) chart_.picked(grip->place);
}

bool ChartView::eventFilter(QObject*, QEvent* event) {
  const auto at_mm = [&] { return static_cast<QMouseEvent*>(event)->position() / pixelsPerMm(); };
  switch (event->type()) {
    case QEvent::Paint:
      return paintArea(), true;
    case QEvent::MouseMove:
      return pointerMoved(at_mm()), false;
    case QEvent::MouseButtonPress:
      if (static_cast<QMouseEvent*>(event)->button() == Qt::LeftButton) grip(at_mm());
      return false;
    case QEvent::MouseButtonRelease:
      return letGo(at_mm()), false;
    case QEvent::Leave:
      if (!grip_) mark({});
      return false;
    case QEvent::FocusIn:
    case QEvent::FocusOut:
      return area_->update(), false;
    case QEvent::KeyPress:
      return walk(static_cast<QKeyEvent*>(event)->key());
    default:
      return false;
  }
}

}  // namespace ui
