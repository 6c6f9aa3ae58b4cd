#include "ui/panels/stage_bar.h"

#include "ui/document/document.h"
#include "ui/text/words.h"
#include "ui/widgets/icons.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <QToolButton>
#include <algorithm>

namespace ui {

namespace {

constexpr int kPage_days = 7;

}  // namespace

StageBar::StageBar(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      slider_(new QSlider(Qt::Horizontal, this)),
      text_(new QLabel(this)),
      before_(makeStep(QStringLiteral("stage.before"), tr("To the stage before"), -1)),
      next_(makeStep(QStringLiteral("stage.next"), tr("To the next stage"), 1)) {
  setObjectName(QStringLiteral("stage_bar"));
  slider_->setObjectName(QStringLiteral("stage.day"));
  slider_->setAccessibleName(tr("Day of the works"));
  slider_->setToolTip(tr("Shows the pit as it stands on that day; at the far end the tank is finished"));
  slider_->setPageStep(kPage_days);
  text_->setObjectName(QStringLiteral("stage.text"));
  text_->setMinimumWidth(text_->fontMetrics().averageCharWidth() * 38);
  auto* name = new QLabel(tr("&Building"), this);
  name->setBuddy(slider_);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(8, 2, 8, 2);
  layout->addWidget(name);
  layout->addWidget(before_);
  layout->addWidget(slider_, 1);
  layout->addWidget(next_);
  layout->addWidget(text_);
  reckon_.setSingleShot(true);
  connect(&reckon_, &QTimer::timeout, this, &StageBar::reckon);
  connect(&document_, &Document::projectChanged, &reckon_, qOverload<>(&QTimer::start));
  connect(slider_, &QSlider::valueChanged, this, [this] {
    show();
    emit changed();
  });
  reckon();
}

QToolButton* StageBar::makeStep(const QString& id, const QString& name, int by) {
  auto* button = new QToolButton(this);
  button->setObjectName(id);
  button->setToolTip(name);
  button->setAccessibleName(name);
  connect(button, &QToolButton::clicked, this, [this, by] { step(by); });
  return button;
}

void StageBar::setFormatter(const Formatter& format) {
  format_ = format;
  show();
}

void StageBar::refreshIcons() {
  before_->setIcon(icon(QStringLiteral("previous")));
  next_->setIcon(icon(QStringLiteral("next")));
}

void StageBar::reckon() {
  const bool at_end = slider_->value() == slider_->maximum();
  std::vector<core::works::BuildDay> days = core::buildTimeline(document_.plan());
  const bool is_shown = !at_end && !days_.empty();
  days_ = std::move(days);
  const int last = int(days_.size());
  {
    const QSignalBlocker quiet(slider_);
    slider_->setRange(0, last);
    slider_->setValue(is_shown ? std::min(slider_->value(), last) : last);
  }
  show();
  if (is_shown) emit changed();
}

std::optional<core::works::BuildDay> StageBar::day() const {
  const auto at = std::size_t(slider_->value());
  return at < days_.size() ? std::optional(days_[at]) : std::nullopt;
}

void StageBar::step(int stages) {
  auto at = std::size_t(slider_->value());
  for (; stages > 0 && at < days_.size(); --stages) at = core::nextStage(days_, at);
  for (; stages < 0; ++stages) at = core::stageBefore(days_, at);
  slider_->setValue(int(at));
}

void StageBar::show() {
  const auto shown = day();
  text_->setText(shown ? words::dayAndStage(*shown, format_) : tr("finished tank"));
  before_->setEnabled(slider_->value() > 0);
  next_->setEnabled(slider_->value() < slider_->maximum());
}

}  // namespace ui
