#include "ui/panels/stage_bar.h"

#include "ui/document/document.h"
#include "ui/text/works_words.h"
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
  const core::Plan& plan = document_.plan();
  const bool at_end = slider_->value() == slider_->maximum();
  std::vector<core::works::BuildDay> days;
  if (plan.works) days = core::works::buildDays(plan.geometry, *plan.works);
  if (days.empty()) days = core::works::buildStages(plan.geometry, plan.site.bench.has_value());
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
  int at = slider_->value();
  const auto stage = [&](int k) {
    return k < int(days_.size()) ? days_[std::size_t(k)].stage : std::string();
  };
  const auto startOf = [&](int k) {
    while (k > 0 && stage(k - 1) == stage(k)) --k;
    return k;
  };
  for (; stages > 0 && at < slider_->maximum(); --stages) {
    const std::string now = stage(at);
    while (at < slider_->maximum() && stage(at) == now) ++at;
  }
  for (; stages < 0 && at > 0; ++stages) at = startOf(at - 1);
  slider_->setValue(at);
}

void StageBar::show() {
  const auto shown = day();
  text_->setText(!shown         ? tr("finished tank")
                 : !shown->date ? words::stageName(shown->stage)
                                : QStringLiteral("%1: %2").arg(format_.date(*shown->date),
                                                               words::stageName(shown->stage)));
  before_->setEnabled(slider_->value() > 0);
  next_->setEnabled(slider_->value() < slider_->maximum());
}

}  // namespace ui
