#include "ui/widgets/number_row.h"

#include "ui/text/words.h"
#include "ui/widgets/scrub_label.h"
#include "ui/widgets/theme.h"
#include "ui/widgets/wheel_guard.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QSlider>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

constexpr double kInch_m = 0.0254;
constexpr int kPage = 10;
constexpr int kShortUnit = 6;  // letters that fit beside the editor

int stepsOfKey(int key) {
  switch (key) {
    case Qt::Key_Up:
      return 1;
    case Qt::Key_Down:
      return -1;
    case Qt::Key_PageUp:
      return kPage;
    case Qt::Key_PageDown:
      return -kPage;
    default:
      return 0;
  }
}

}  // namespace

NumberRow::NumberRow(Document& document, const core::Field& field, std::size_t row, QWidget* parent)
    : FieldRow(document, field, row, parent),
      label_(new ScrubLabel(QString(), this)),
      edit_(new QLineEdit(this)),
      unit_(new QLabel(this)) {
  edit_->setAlignment(Qt::AlignRight);
  setTone(unit_, Tone::quiet);
  arrange(label_, edit_, unit_);
  connect(edit_, &QLineEdit::textEdited, this, &NumberRow::takeText);
  connect(edit_, &QLineEdit::editingFinished, this, &NumberRow::tryAgain);
  connect(label_, &ScrubLabel::scrubStarted, this, [this] {
    endBurst();
    scrub_start_ = number();
  });
  connect(label_, &ScrubLabel::scrubbed, this, [this](int steps) { stepFrom(scrub_start_, steps); });
  connect(label_, &ScrubLabel::scrubFinished, this, [this] { endBurst(); });
}

QWidget* NumberRow::editor() const {
  return edit_;
}

void NumberRow::addSlider(double least, double most) {
  slider_least_ = std::max(least, field().least);
  slider_most_ = std::min(most, field().most);
  slider_ = new QSlider(Qt::Horizontal, this);
  slider_->setObjectName(path() + QStringLiteral(".slider"));
  slider_->setAccessibleName(words::fieldLabel(field().id));
  ignoreWheel(slider_);
  grid()->addWidget(slider_, 1, 0, 1, 3);
  connectSlider();
}

void NumberRow::connectSlider() {
  connect(slider_, &QSlider::sliderPressed, this, [this] { endBurst(); });
  connect(slider_, &QSlider::sliderReleased, this, [this] { endBurst(); });
  connect(slider_, &QSlider::valueChanged, this,
          [this](int steps) { takeNumber(std::clamp(steps * step(), slider_least_, slider_most_)); });
}

double NumberRow::step() const {
  if (format().system() == UnitSystem::metric || field().unit != core::Unit::metre) return field().step;
  return field().step >= 0.01 ? kInch_m : kInch_m / 4;
}

double NumberRow::number() const {
  const core::FieldValue now = value();
  const double* number = std::get_if<double>(&now);
  return number != nullptr ? *number : std::clamp(0.0, field().least, field().most);
}

void NumberRow::takeText(const QString& text) {
  if (text.trimmed().isEmpty() && field().nullable) {
    take(std::monostate{});
  } else if (const std::optional<double> number = format().parse(text, field().unit)) {
    take(*number);
  } else {
    refuse({.code = text.trimmed().isEmpty() ? "missing" : "wrong_type",
            .path = path().toStdString(),
            .value = text.toStdString(),
            .least = field().least,
            .most = field().most,
            .unit = field().unit,
            .allowed = "number"});
  }
  showSlider(value());
}

void NumberRow::takeNumber(double number) {
  take(number, Way::dragged);
  showText(isWrong() ? core::FieldValue(number) : value());
}

void NumberRow::stepFrom(double number, int steps) {
  const double stepped = (std::round(number / step()) + steps) * step();
  takeNumber(std::clamp(stepped, field().least, field().most));
  showSlider(value());
}

void NumberRow::showValue(const core::FieldValue& value) {
  showText(value);
  showSlider(value);
}

void NumberRow::showText(const core::FieldValue& value) {
  const double* number = std::get_if<double>(&value);
  edit_->setText(number != nullptr ? format().number(*number, field().unit, field().decimals) : QString());
}

void NumberRow::showSlider(const core::FieldValue& value) {
  const double* number = std::get_if<double>(&value);
  if (slider_ == nullptr || number == nullptr) return;
  const QSignalBlocker quiet(slider_);
  slider_->setRange(int(std::ceil(slider_least_ / step())), int(std::floor(slider_most_ / step())));
  slider_->setValue(int(std::lround(*number / step())));
}

void NumberRow::showUnits() {
  const bool written_with_unit =
      field().unit == core::Unit::metre && format().system() == UnitSystem::feet_inches;
  const QString unit = written_with_unit ? QString() : format().unit(field().unit);
  const QString name = words::fieldLabel(field().id);
  const bool is_long = unit.size() > kShortUnit;
  unit_->setText(is_long ? QString() : unit);
  label_->setText(is_long ? tr("%1, %2").arg(name, unit) : name);
  const bool by_table = field().nullable && field().id.starts_with("works.");
  edit_->setPlaceholderText(by_table ? tr("by soil") : field().nullable ? tr("not known") : QString());
}

bool NumberRow::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::KeyPress) {
    const int steps = stepsOfKey(static_cast<QKeyEvent*>(event)->key());
    if (steps != 0) {
      stepFrom(number(), steps);
      return true;
    }
  }
  return FieldRow::eventFilter(watched, event);
}

}  // namespace ui
