#include "ui/widgets/message_bar.h"

#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <QToolButton>

namespace ui {

namespace {

constexpr int kShown_ms = 6000;

}  // namespace

MessageBar::MessageBar(QWidget* parent)
    : QFrame(parent), text_(new QLabel(this)), buttons_(new QHBoxLayout), hide_(this) {
  setObjectName(QStringLiteral("message_bar"));
  setFrameShape(QFrame::StyledPanel);
  setAutoFillBackground(true);
  setBackgroundRole(QPalette::AlternateBase);
  text_->setObjectName(QStringLiteral("message_text"));
  text_->setWordWrap(true);
  text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
  auto* close = new QToolButton(this);
  close->setObjectName(QStringLiteral("message_close"));
  close->setAutoRaise(true);
  close->setIcon(style()->standardIcon(QStyle::SP_TitleBarCloseButton));
  close->setToolTip(tr("Close this message"));
  close->setAccessibleName(close->toolTip());
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(10, 4, 6, 4);
  layout->addWidget(text_, 1);
  layout->addLayout(buttons_);
  layout->addWidget(close, 0, Qt::AlignTop);
  connect(close, &QToolButton::clicked, this, &QWidget::hide);
  hide_.setSingleShot(true);
  hide_.setInterval(kShown_ms);
  connect(&hide_, &QTimer::timeout, this, &QWidget::hide);
  hide();
}

void MessageBar::say(Kind kind, const QString& text, const std::vector<Choice>& choices) {
  for (QPushButton* button : choices_) button->deleteLater();
  choices_.clear();
  text_->setText(text);
  text_->setAccessibleName(text);
  setTone(text_, kind == Kind::problem ? Tone::problem : Tone::plain);
  for (const Choice& choice : choices) {
    auto* button = new QPushButton(choice.text, this);
    button->setObjectName(choice.id);
    buttons_->addWidget(button);
    connect(button, &QPushButton::clicked, this, &QWidget::hide);
    connect(button, &QPushButton::clicked, this, choice.chosen);
    choices_.push_back(button);
  }
  show();
  if (kind == Kind::done) {
    hide_.start();
  } else {
    hide_.stop();
  }
}

QString MessageBar::text() const {
  return text_->text();
}

}  // namespace ui
