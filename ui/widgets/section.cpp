#include "ui/widgets/section.h"

#include <QToolButton>
#include <QVBoxLayout>

namespace ui {

Section::Section(const QString& id, const QString& title, QWidget* parent)
    : QWidget(parent),
      heading_(new QToolButton(this)),
      body_(new QWidget(this)),
      rows_(new QVBoxLayout(body_)) {
  heading_->setObjectName(QStringLiteral("section.") + id);
  heading_->setText(title);
  heading_->setCheckable(true);
  heading_->setAutoRaise(true);
  heading_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  heading_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  QFont bold = heading_->font();
  bold.setBold(true);
  heading_->setFont(bold);
  rows_->setContentsMargins(4, 2, 0, 8);
  rows_->setSpacing(5);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(heading_);
  layout->addWidget(body_);
  connect(heading_, &QToolButton::toggled, this, &Section::setOpen);
  setOpen(false);
}

void Section::setOpen(bool open) {
  heading_->setChecked(open);
  heading_->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
  body_->setVisible(open);
}

bool Section::isOpen() const {
  return heading_->isChecked();
}

}  // namespace ui
