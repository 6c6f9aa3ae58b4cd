#include "ui/widgets/figure_tile.h"

#include "ui/widgets/theme.h"

#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QStyle>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr double kBigger = 1.6;

QLabel* addLabel(FigureTile* tile, const QString& name, Tone tone) {
  auto* label = new QLabel(tile);
  label->setObjectName(name);
  label->setWordWrap(true);
  // a number alone would stand at the left whatever the direction of the window
  if (tile->isRightToLeft()) label->setAlignment(Qt::AlignRight | Qt::AlignAbsolute | Qt::AlignVCenter);
  setTone(label, tone);
  tile->layout()->addWidget(label);
  return label;
}

}  // namespace

FigureTile::FigureTile(const QString& id, const QString& name, QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("figure.") + id);
  setFocusPolicy(Qt::TabFocus);
  setCursor(Qt::PointingHandCursor);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 4, 8, 4);
  layout->setSpacing(0);
  name_ = addLabel(this, objectName() + QStringLiteral(".name"), Tone::quiet);
  value_ = addLabel(this, objectName() + QStringLiteral(".value"), Tone::plain);
  rest_ = addLabel(this, objectName() + QStringLiteral(".rest"), Tone::plain);
  reckoning_ = addLabel(this, objectName() + QStringLiteral(".reckoning"), Tone::quiet);
  name_->setText(name);
  QFont big = value_->font();
  big.setPointSizeF(big.pointSizeF() * kBigger);
  big.setBold(true);
  value_->setFont(big);
  reckoning_->hide();
}

void FigureTile::setValue(const QString& value, const QString& rest) {
  value_->setText(value);
  value_->setVisible(!value.isEmpty());
  rest_->setText(rest);
  rest_->setVisible(!rest.isEmpty());
  setAccessibleName(QStringLiteral("%1: %2 %3").arg(name_->text(), value, rest));
}

void FigureTile::setReckoning(const QString& text) {
  reckoning_->setText(text);
  setToolTip(text);
  setAccessibleDescription(text);
}

void FigureTile::toggle() {
  reckoning_->setVisible(reckoning_->isHidden());
}

void FigureTile::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) toggle();
}

void FigureTile::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter) {
    toggle();
  } else {
    QFrame::keyPressEvent(event);
  }
}

void FigureTile::focusInEvent(QFocusEvent* event) {
  update();
  QFrame::focusInEvent(event);
}

void FigureTile::focusOutEvent(QFocusEvent* event) {
  update();
  QFrame::focusOutEvent(event);
}

void FigureTile::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QColor edge = palette().color(hasFocus() ? QPalette::Highlight : QPalette::AlternateBase);
  painter.setPen(QPen(edge, hasFocus() ? 2 : 1));
  painter.setBrush(palette().color(QPalette::Base));
  painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 5, 5);
}

}  // namespace ui
