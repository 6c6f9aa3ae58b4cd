#include "ui/group/big_number.h"

#include <QLabel>
#include <QSlider>
#include <QVBoxLayout>

namespace ui::group {

QLabel* bigLabel(const QString& id, double points, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(id);
  label->setWordWrap(true);
  if (parent->isRightToLeft()) label->setAlignment(Qt::AlignRight | Qt::AlignAbsolute | Qt::AlignVCenter);
  QFont font = label->font();
  font.setPointSizeF(points);
  font.setBold(points > kLeast_pt);
  label->setFont(font);
  return label;
}

void makeBig(QSlider* slider) {
  constexpr int kHandle_px = 44, kGroove_px = 10;
  slider->setStyleSheet(
      QStringLiteral(
          "QSlider{min-height:%1px}"
          "QSlider::groove:horizontal{height:%2px;background:palette(mid);border-radius:5px}"
          "QSlider::sub-page:horizontal{height:%2px;background:palette(highlight);border-radius:5px}"
          "QSlider::handle:horizontal{width:%3px;margin:-%4px 0;border-radius:10px;"
          "background:palette(highlight);border:3px solid palette(window-text)}")
          .arg(kHandle_px + 4)
          .arg(kGroove_px)
          .arg(kHandle_px / 2)
          .arg((kHandle_px - kGroove_px) / 2));
}

BigNumber::BigNumber(const QString& id, const QString& name, QWidget* parent)
    : QWidget(parent),
      name_text_(name),
      name_(bigLabel(id + QStringLiteral(".name"), kLeast_pt, this)),
      value_(bigLabel(id + QStringLiteral(".value"), kValue_pt, this)) {
  setObjectName(id);
  name_->setText(name);
  name_->setWordWrap(false);
  value_->setWordWrap(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(name_);
  layout->addWidget(value_);
}

void BigNumber::setValue(const QString& value) {
  value_->setText(value);
  setAccessibleName(QStringLiteral("%1: %2").arg(name_text_, value));
}

}  // namespace ui::group
