#include "ui/document/document.h"
#include "ui/group/big_number.h"
#include "ui/group/group_view.h"
#include "ui/group/options_strip.h"
#include "ui/view3d/pit_view.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QSlider>
#include <QStackedWidget>
#include <QUndoStack>
#include <QVBoxLayout>

namespace ui::group {

namespace {

constexpr int kSliders_px = 360;
constexpr int kMonth_days = 30;

/// A field with the range that its slider covers.
struct Slid {
  const char* field;
  double least, most;
};

/// What makes the size of a tank of a shape, three of them.
std::vector<Slid> slidersOf(core::Shape shape) {
  switch (shape) {
    case core::Shape::round:
      return {{"tank.diameter_m", 2, 12}, {"tank.depth_m", 0.5, 2.5}, {"tank.batter", 0, 1}};
    case core::Shape::polygon:
      return {{"tank.depth_m", 0.5, 2.5}, {"tank.batter", 0, 1}, {"tank.freeboard_m", 0.05, 0.5}};
    default:
      return {{"tank.length_m", 2, 15}, {"tank.width_m", 1.5, 10}, {"tank.depth_m", 0.5, 2.5}};
  }
}

}  // namespace

void GroupView::arrange() {
  auto* all = new QWidget(this);
  auto* blank = new QWidget(this);
  blank->setAccessibleName(tr("Blank"));
  screen_ = new QStackedWidget(this);
  screen_->addWidget(all);
  screen_->addWidget(blank);
  view_ = makePitView(all);
  view_->setObjectName(QStringLiteral("group.view"));
  view_->setAccessibleName(tr("The pit in three dimensions"));
  view_->setMinimumSize(320, 240);
  view_->setDark(false);
  view_->setDimensionsShown(false);
  options_ = new OptionsStrip(all);
  told_ = bigLabel(QStringLiteral("group.told"), kLeast_pt + 4, all);
  message_ = bigLabel(QStringLiteral("group.message"), kLeast_pt, all);
  setTone(message_, Tone::problem);
  message_->hide();
  auto* middle = new QHBoxLayout;
  middle->addWidget(view_, 1);
  middle->addWidget(makeSliders());
  auto* rows = new QVBoxLayout(all);
  rows->setContentsMargins(12, 6, 12, 8);
  rows->addWidget(makeNumbers());
  rows->addLayout(middle, 1);
  rows->addWidget(message_);
  rows->addWidget(options_);
  rows->addWidget(told_);
  rows->addWidget(makeTime());
  rows->addWidget(makeModes());
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(screen_);
}

QWidget* GroupView::makeNumbers() {
  constexpr int kApart_px = 20;  // so that two numbers do not read as one
  const core::Plan& plan = document_.plan();
  auto* box = new QWidget(this);
  auto* row = new QHBoxLayout(box);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kApart_px);
  for (const auto& [id, name] :
       {std::pair{QStringLiteral("group.holds"), tr("Holds")},
        std::pair{QStringLiteral("group.lasts"), plan.water ? tr("Water all year") : tr("Usable")},
        std::pair{QStringLiteral("group.cement"), tr("Cement")},
        std::pair{QStringLiteral("group.cost"), plan.cost ? tr("Cost") : tr("Work")}}) {
    numbers_.push_back(new BigNumber(id, name, box));
    row->addWidget(numbers_.back(), 1);
  }
  return box;
}

QWidget* GroupView::makeSliders() {
  sliders_box_ = new QWidget(this);
  sliders_box_->setFixedWidth(kSliders_px);
  auto* column = new QVBoxLayout(sliders_box_);
  column->setContentsMargins(0, 0, 0, 0);
  for (const Slid& slid : slidersOf(document_.project().tank.shape)) {
    auto* slider = new BigSlider(document_, core::field(slid.field), slid.least, slid.most, sliders_box_);
    slider->setMarked(sliders_.empty());
    sliders_.push_back(slider);
    column->addWidget(slider);
    connect(slider, &BigSlider::refused, this, [this](const QString& sentence) {
      message_->setText(sentence);
      message_->setVisible(!sentence.isEmpty());
    });
  }
  column->addStretch();
  return sliders_box_;
}

QWidget* GroupView::makeTime() {
  time_box_ = new QWidget(this);
  play_button_ = new QPushButton(tr("Play"), time_box_);
  play_button_->setObjectName(QStringLiteral("group.play"));
  play_button_->setFocusPolicy(Qt::NoFocus);
  time_ = new QSlider(Qt::Horizontal, time_box_);
  time_->setObjectName(QStringLiteral("group.time"));
  time_->setAccessibleName(tr("Day"));
  time_->setFocusPolicy(Qt::NoFocus);
  makeBig(time_);
  auto* row = new QHBoxLayout(time_box_);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(play_button_);
  row->addWidget(time_, 1);
  connect(play_button_, &QPushButton::clicked, this, &GroupView::togglePlay);
  connect(time_, &QSlider::valueChanged, this, [this] {
    tellTime();
    draw_.start();
  });
  return time_box_;
}

QWidget* GroupView::makeModes() {
  auto* box = new QWidget(this);
  auto* row = new QHBoxLayout(box);
  row->setContentsMargins(0, 0, 0, 0);
  const std::array<QString, 4> names{tr("1 Size"), tr("2 Options"), tr("3 Building"), tr("4 Water")};
  for (std::size_t k = 0; k < names.size(); ++k) {
    modes_[k] = new QPushButton(names[k], box);
    modes_[k]->setObjectName(QStringLiteral("group.mode%1").arg(k + 1));
    modes_[k]->setCheckable(true);
    modes_[k]->setFocusPolicy(Qt::NoFocus);
    row->addWidget(modes_[k], 1);
    connect(modes_[k], &QPushButton::clicked, this, [this, k] { setMode(Mode(k)); });
  }
  auto* leave = new QPushButton(tr("Leave"), box);
  leave->setObjectName(QStringLiteral("group.leave"));
  leave->setFocusPolicy(Qt::NoFocus);
  row->addWidget(leave);
  connect(leave, &QPushButton::clicked, this, &GroupView::close);
  return box;
}

void GroupView::addKey(const QKeySequence& key, const std::function<void()>& run) {
  connect(new QShortcut(key, this), &QShortcut::activated, this, run);
}

void GroupView::addKeys() {
  for (const Qt::Key key : {Qt::Key_PageDown, Qt::Key_N}) addKey(key, [this] { goOn(); });
  for (const Qt::Key key : {Qt::Key_PageUp, Qt::Key_P}) addKey(key, [this] { goBack(); });
  for (int k = 0; k < int(modes_.size()); ++k)
    addKey(QKeySequence(Qt::Key(Qt::Key_1 + k)), [this, k] { setMode(Mode(k)); });
  addKey(Qt::Key_Space, [this] { togglePlay(); });
  for (const Qt::Key key : {Qt::Key_B, Qt::Key_Period}) addKey(key, [this] { toggleBlank(); });
  for (const Qt::Key key : {Qt::Key_Escape, Qt::Key_F5}) addKey(key, [this] { close(); });
  addKey(Qt::Key_Up, [this] { choose(-1); });
  addKey(Qt::Key_Down, [this] { choose(1); });
  addKey(Qt::Key_Left, [this] { move(-1); });
  addKey(Qt::Key_Right, [this] { move(1); });
  addKey(QKeySequence(Qt::CTRL | Qt::Key_Left), [this] { move(-kMonth_days); });
  addKey(QKeySequence(Qt::CTRL | Qt::Key_Right), [this] { move(kMonth_days); });
  addKey(QKeySequence::Undo, [this] { document_.undoStack()->undo(); });
  addKey(QKeySequence::Redo, [this] { document_.undoStack()->redo(); });
}

}  // namespace ui::group
