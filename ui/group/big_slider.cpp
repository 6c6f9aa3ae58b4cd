#include "ui/group/big_slider.h"

#include "ui/document/document.h"
#include "ui/group/big_number.h"
#include "ui/text/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace ui::group {

BigSlider::BigSlider(Document& document, const core::Field& field, double least, double most, QWidget* parent)
    : QWidget(parent), document_(document), field_(field), least_(least), most_(most) {
  const QString id =
      QStringLiteral("group.") + QString::fromLatin1(field.id.data(), qsizetype(field.id.size()));
  setObjectName(id);
  name_ = bigLabel(id + QStringLiteral(".name"), kLeast_pt, this);
  value_ = bigLabel(id + QStringLiteral(".value"), kLeast_pt + 4, this);
  value_->setWordWrap(false);
  slider_ = new QSlider(Qt::Horizontal, this);
  slider_->setObjectName(id + QStringLiteral(".slider"));
  makeBig(slider_);
  slider_->setFocusPolicy(Qt::NoFocus);  // the view's own keys move it
  name_->setText(words::fieldLabel(field.id));
  slider_->setAccessibleName(name_->text());
  slider_->setRange(0, int(std::lround((most - least) / field.step)));
  auto* row = new QHBoxLayout;
  row->setSpacing(10);
  row->addWidget(slider_, 1);
  row->addWidget(value_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(9, 4, 9, 4);
  layout->setSpacing(0);
  layout->addWidget(name_);
  layout->addLayout(row);
  connect(slider_, &QSlider::sliderPressed, this, [this] { drag_ = document_.newDrag(); });
  connect(slider_, &QSlider::valueChanged, this, [this](int steps) { take(least_ + steps * field_.step); });
}

double BigSlider::value() const {
  const core::FieldValue held = field_.get(document_.project(), 0);
  const double* number = std::get_if<double>(&held);
  return number == nullptr ? least_ : *number;
}

void BigSlider::refresh(const Formatter& format) {
  format_ = format;
  const QSignalBlocker quiet(slider_);
  slider_->setValue(int(std::lround((std::clamp(value(), least_, most_) - least_) / field_.step)));
  value_->setText(format.quantity(value(), field_.unit, field_.decimals));
  slider_->setAccessibleDescription(value_->text());
}

void BigSlider::step(int steps) {
  drag_ = 0;
  const double on_grid = std::round(value() / field_.step) + steps;
  take(std::clamp(on_grid * field_.step, field_.least, field_.most));
}

void BigSlider::take(double value) {
  const double scale = std::pow(10, field_.decimals);
  const core::Problems problems =
      document_.edit(field_, 0, core::FieldValue(std::round(value * scale) / scale), drag_);
  emit refused(problems.empty() ? QString() : words::problemText(problems.front(), format_));
  refresh(format_);
}

void BigSlider::setMarked(bool marked) {
  marked_ = marked;
  update();
}

void BigSlider::paintEvent(QPaintEvent*) {
  if (!marked_) return;
  QPainter painter(this);
  painter.setPen(QPen(palette().color(QPalette::Highlight), 4));
  painter.drawRoundedRect(rect().adjusted(2, 2, -2, -2), 8, 8);
}

}  // namespace ui::group
