#include "ui/group/group_view.h"

#include "core/geometry/camera.h"
#include "ui/document/document.h"
#include "ui/group/big_number.h"
#include "ui/group/group_scenes.h"
#include "ui/group/options_strip.h"
#include "ui/panels/figures.h"
#include "ui/text/words.h"
#include "ui/view3d/pit_view.h"
#include "ui/widgets/theme.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QStackedWidget>
#include <QUndoStack>
#include <QVBoxLayout>
#include <algorithm>

namespace ui::group {

namespace {

using core::geometry::Scene;

constexpr int kDay_ms = 150;       // of building
constexpr int kDayOfYear_ms = 60;  // of the water
constexpr std::size_t kNumbers = 4;

/// The month of a day of the weather year.
int monthOf(const core::water::WaterPlan& water, int day) {
  return water.band[std::size_t(day)].month;
}

}  // namespace

GroupView::GroupView(Document& document, const Formatter& format, QWidget* parent)
    : QWidget(parent, Qt::Window), document_(document), format_(format) {
  setObjectName(QStringLiteral("group_view"));
  setWindowTitle(tr("Group view – Tankwright"));
  setPalette(ui::palette(false));  // dark on light, whatever the window's colours
  setAutoFillBackground(true);
  QFont big = font();
  big.setPointSizeF(kLeast_pt);
  setFont(big);
  arrange();
  addKeys();
  draw_.setSingleShot(true);
  connect(&draw_, &QTimer::timeout, this, &GroupView::draw);
  connect(&play_, &QTimer::timeout, this, &GroupView::advance);
  connect(&document_, &Document::projectChanged, this, &GroupView::refresh);
  connect(&document_, &Document::planRefined, this, &GroupView::refresh);
  setMode(Mode::size);
}

bool GroupView::has(Mode mode) const {
  return mode != Mode::year || document_.plan().water.has_value();
}

void GroupView::setMode(Mode mode) {
  play_.stop();
  mode_ = has(mode) ? mode : Mode::size;
  for (std::size_t k = 0; k < modes_.size(); ++k) modes_[k]->setChecked(k == std::size_t(mode_));
  sliders_box_->setVisible(mode_ == Mode::size);
  options_->setVisible(mode_ == Mode::options);
  time_box_->setVisible(mode_ == Mode::building || mode_ == Mode::year);
  looked_ = false;
  refresh();
  const QSignalBlocker quiet(time_);
  time_->setValue(0);
  tellTime();
  draw_.start();
}

void GroupView::refresh() {
  for (std::size_t k = 0; k < modes_.size(); ++k) modes_[k]->setEnabled(has(Mode(k)));
  showNumbers();
  for (BigSlider* slider : sliders_) slider->refresh(format_);
  if (mode_ == Mode::options) options_->show(document_.project(), document_.plan(), format_);
  showTime();
  draw_.start();
}

void GroupView::showNumbers() {
  const std::vector<Figure> all = figures(document_.project(), document_.plan(), format_);
  const auto value = [&](const char* id) {
    const auto found = std::ranges::find(all, QLatin1String(id), &Figure::id);
    return found == all.end() ? QString() : found->value;
  };
  const auto& plan = document_.plan();
  const QString lasts = plan.water ? tr("%1 of 10", "years").arg(value("lasting")) : value("usable");
  const std::array<QString, kNumbers> values{value("holds"), lasts, value("cement"),
                                             value(plan.cost ? "cost" : "work")};
  for (std::size_t k = 0; k < kNumbers; ++k) numbers_[k]->setValue(values[k]);
}

void GroupView::showTime() {
  if (mode_ != Mode::building && mode_ != Mode::year) return tellTime();  // a drag of a size needs no days
  if (mode_ == Mode::building) days_ = core::buildTimeline(document_.plan());
  const auto& water = document_.plan().water;
  const int last = mode_ == Mode::year && water ? int(water->band.size()) - 1 : int(days_.size()) - 1;
  const QSignalBlocker quiet(time_);
  time_->setRange(0, std::max(0, last));
  tellTime();
}

void GroupView::tellTime() {
  const auto at = std::size_t(time_->value());
  QString told;
  if (mode_ == Mode::building && at < days_.size()) told = words::dayAndStage(days_[at], format_);
  if (mode_ == Mode::year && document_.plan().water) {
    const core::water::BandDay& day = document_.plan().water->band.at(at);
    told = tr("%1, in a dry year: %2 in the tank")
               .arg(format_.dayOfYear(day.month + 1, day.day, QLocale::LongFormat), format_.litres(day.p10));
  }
  told_->setText(told);
  told_->setVisible(!told.isEmpty());
  time_->setAccessibleDescription(told);
  play_button_->setText(isPlaying() ? tr("Stop") : tr("Play"));
}

void GroupView::draw() {
  const core::Plan& plan = document_.plan();
  const auto at = std::size_t(time_->value());
  switch (mode_) {
    case Mode::options:
      view_->setScene(optionsScene(plan));
      break;
    case Mode::building:
      view_->setScene(tankScene(document_.project(), plan, days_.at(at).built));
      break;
    case Mode::year:
      view_->setScene(
          waterScene(document_.project(), plan, plan.geometry.levelForVolume(plan.water->band.at(at).p10)));
      break;
    default:
      view_->setScene(waterScene(document_.project(), plan, plan.tank.full_level_m));
  }
  if (!looked_) look();
}

void GroupView::look() {
  using namespace core::geometry;
  looked_ = true;
  const double aspect = double(std::max(1, view_->width())) / std::max(1, view_->height());
  if (mode_ == Mode::options) {
    const Scene scene = optionsScene(document_.plan());
    view_->setCamera(presetFor(ViewPreset::oblique, scene.least, scene.most, aspect));
  } else {
    const Scene scene = waterScene(document_.project(), document_.plan(), 0);
    view_->setCamera(presetFor(ViewPreset::oblique, framePoints(scene), aspect));
  }
}

int GroupView::stepFrom(int at, int by) const {
  if (mode_ == Mode::building) {
    const auto place = std::size_t(at);
    return int(by > 0 ? core::nextStage(days_, place) : core::stageBefore(days_, place));
  }
  const core::water::WaterPlan& water = *document_.plan().water;
  const int last = int(water.band.size()) - 1;
  int next = std::clamp(at + by, 0, last);
  while (next > 0 && next < last && monthOf(water, next) == monthOf(water, next - 1)) next += by;
  return next == last && by > 0 ? last + (at == last ? 1 : 0) : next;
}

void GroupView::goOn() {
  const bool in_time = mode_ == Mode::building || mode_ == Mode::year;
  const int next = in_time ? stepFrom(time_->value(), 1) : time_->maximum() + 1;
  if (in_time && next <= time_->maximum()) return time_->setValue(next);
  int mode = int(mode_);
  do {
    mode = (mode + 1) % int(modes_.size());
  } while (!has(Mode(mode)));
  setMode(Mode(mode));
}

void GroupView::goBack() {
  const bool in_time = mode_ == Mode::building || mode_ == Mode::year;
  if (in_time && time_->value() > 0) return time_->setValue(stepFrom(time_->value(), -1));
  int mode = int(mode_);
  do {
    mode = (mode + int(modes_.size()) - 1) % int(modes_.size());
  } while (!has(Mode(mode)));
  setMode(Mode(mode));
}

void GroupView::togglePlay() {
  if (mode_ != Mode::building && mode_ != Mode::year) setMode(Mode::building);
  if (isPlaying()) {
    play_.stop();
  } else {
    if (time_->value() == time_->maximum()) time_->setValue(0);
    play_.start(mode_ == Mode::year ? kDayOfYear_ms : kDay_ms);
  }
  tellTime();
}

void GroupView::advance() {
  if (time_->value() >= time_->maximum()) play_.stop();
  time_->setValue(time_->value() + 1);
  tellTime();
}

void GroupView::toggleBlank() {
  screen_->setCurrentIndex(1 - screen_->currentIndex());
}

void GroupView::choose(int by) {
  if (mode_ != Mode::size || sliders_.empty()) return;
  slider_ = (slider_ + sliders_.size() + std::size_t(int(sliders_.size()) + by)) % sliders_.size();
  for (std::size_t k = 0; k < sliders_.size(); ++k) sliders_[k]->setMarked(k == slider_);
}

void GroupView::move(int steps) {
  if (mode_ == Mode::size) {
    sliders_.at(slider_)->step(steps);
  } else if (mode_ != Mode::options) {
    time_->setValue(time_->value() + steps);
  }
}

void GroupView::closeEvent(QCloseEvent* event) {
  play_.stop();
  QWidget::closeEvent(event);
}

void GroupView::resizeEvent(QResizeEvent* event) {
  looked_ = false;
  draw_.start();
  QWidget::resizeEvent(event);
}

void GroupView::showEvent(QShowEvent* event) {
  looked_ = false;
  draw_.start();
  QWidget::showEvent(event);
}

}  // namespace ui::group
