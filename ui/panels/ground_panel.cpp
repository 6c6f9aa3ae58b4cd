#include "ui/panels/ground_panel.h"

#include "ui/document/document.h"
#include "ui/drawings/ground_drawings.h"
#include "ui/panels/screen_style.h"
#include "ui/text/words.h"
#include "ui/widgets/canvas.h"
#include "ui/widgets/explained.h"
#include "ui/widgets/survey_table.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui {

namespace {

using core::PlatformLevel;

constexpr double kMargin_mm = 3;
constexpr int kMillimetres = 1000;
constexpr int kStep_mm = 10;
constexpr int kPage_mm = 100;
constexpr int kSurveyPage = 1;

constexpr std::array kLevels{PlatformLevel::natural_ground, PlatformLevel::balanced, PlatformLevel::given};
constexpr std::array<const char*, 3> kTokens{"natural_ground", "balanced", "given"};

const core::site::PlatformChoice* choiceOf(const core::site::SitePlan& plan, PlatformLevel level_by) {
  const auto found = std::ranges::find(plan.choices, level_by, &core::site::PlatformChoice::level_by);
  return found == plan.choices.end() ? nullptr : &*found;
}

}  // namespace

GroundPanel::GroundPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      answers_(new QLabel(this)),
      level_text_(new QLabel(this)),
      level_(new QSlider(Qt::Horizontal, this)),
      pages_(new QTabBar(this)),
      stack_(new QStackedWidget(this)),
      drawing_(new Canvas(this)),
      survey_(new SurveyTable(document, this)),
      explained_(new Explained(document, "site", this, Explained::Room::scrolled)),
      stability_(new Explained(document, "stability", this, Explained::Room::scrolled)) {
  setObjectName(QStringLiteral("ground_panel"));
  answers_->setObjectName(QStringLiteral("ground.answers"));
  answers_->setWordWrap(true);
  drawing_->setObjectName(QStringLiteral("ground.drawing"));
  drawing_->setAccessibleName(tr("The ground seen from above"));
  drawing_->setPaint([this](QPainter& painter, const QRectF& box_mm) {
    drawings::drawGroundPlan(painter, box_mm.adjusted(kMargin_mm, kMargin_mm, -kMargin_mm, -kMargin_mm),
                             document_.plan(), format_, screenStyle(dark_));
  });
  pages_->setObjectName(QStringLiteral("ground.pages"));
  pages_->setDrawBase(false);
  pages_->setExpanding(false);
  pages_->addTab(tr("From above"));
  pages_->addTab(tr("Spot heights"));
  stack_->addWidget(drawing_);
  stack_->addWidget(survey_);
  level_bar_ = makeLevelBar();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(2, 4, 2, 4);
  layout->setSpacing(6);
  layout->addWidget(level_bar_);  // above the words, whose lines come and go
  layout->addWidget(answers_);
  layout->addWidget(explained_);
  layout->addWidget(stability_);
  layout->addWidget(pages_);
  layout->addWidget(stack_, 1);
  connect(pages_, &QTabBar::currentChanged, stack_, &QStackedWidget::setCurrentIndex);
  connect(&document_, &Document::projectChanged, this, &GroundPanel::refresh);
  refresh();
}

QWidget* GroundPanel::makeLevelBar() {
  auto* bar = new QWidget(this);
  auto* layout = new QHBoxLayout(bar);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* name = new QLabel(tr("Platform &level"), bar);
  name->setBuddy(level_);
  level_->setObjectName(QStringLiteral("platform.level"));
  level_->setAccessibleName(tr("Level of the platform over the ground at the middle of the tank"));
  const core::Field& field = core::field("site.platform.level_m");
  level_->setRange(int(field.least * kMillimetres), int(field.most * kMillimetres));
  level_->setSingleStep(kStep_mm);
  level_->setPageStep(kPage_mm);
  level_text_->setObjectName(QStringLiteral("platform.level.text"));
  layout->addWidget(name);
  layout->addWidget(level_, 1);
  layout->addWidget(level_text_);
  for (std::size_t k = 0; k < kLevels.size(); ++k) {
    auto* button = new QRadioButton(words::choiceLabel("site.platform.level_by", kTokens.at(k)), bar);
    button->setObjectName(QStringLiteral("platform.") + QString::fromLatin1(kTokens.at(k)));
    connect(button, &QRadioButton::clicked, this, [this, level_by = kLevels.at(k)] { choose(level_by); });
    layout->addWidget(button);
    choices_.push_back(button);
  }
  connect(level_, &QSlider::sliderPressed, this, [this] { drag_ = document_.newDrag(); });
  connect(level_, &QSlider::sliderReleased, this, [this] { drag_ = 0; });
  connect(level_, &QSlider::valueChanged, this, &GroundPanel::dragTo);
  return bar;
}

void GroundPanel::dragTo(int value) {
  document_.change(
      tr("Level of the platform"),
      [value](core::Project& project) {
        project.site.platform.level_by = PlatformLevel::given;
        project.site.platform.level_m = double(value) / kMillimetres;
      },
      drag_);
}

void GroundPanel::choose(PlatformLevel level_by) {
  const auto& bench = document_.plan().site.bench;
  const double level_m = bench ? bench->level_m - document_.plan().site.middle_level_m : 0;
  document_.change(words::choiceLabel("site.platform.level_by", kTokens.at(std::size_t(level_by))),
                   [&](core::Project& project) {
                     core::Platform& platform = project.site.platform;
                     // by hand it goes on from where it is, unless that is beyond what can be set
                     const double level = std::round(level_m * kMillimetres) / kMillimetres;
                     const core::Field& field = core::field("site.platform.level_m");
                     const bool can_be_set = level >= field.least && level <= field.most;
                     if (level_by == PlatformLevel::given && platform.level_by != level_by && can_be_set)
                       platform.level_m = level;
                     platform.level_by = level_by;
                   });
  refresh();
}

void GroundPanel::setFormatter(const Formatter& format) {
  format_ = format;
  survey_->setFormatter(format);
  explained_->setFormatter(format);
  stability_->setFormatter(format);
  refresh();
}

void GroundPanel::setDark(bool dark) {
  dark_ = dark;
  drawing_->update();
}

bool GroundPanel::goTo(const QString& path) {
  if (!path.startsWith(QLatin1String("site.ground.points_m"))) return false;
  showSurvey();
  return survey_->goTo(path);
}

void GroundPanel::showSurvey() {
  pages_->setCurrentIndex(kSurveyPage);
}

void GroundPanel::refresh() {
  answers_->setText(
      words::groundAnswers(document_.project(), document_.plan(), format_).join(QLatin1Char(' ')));
  showLevel();
  drawing_->update();
}

void GroundPanel::showLevel() {
  const core::site::SitePlan& plan = document_.plan().site;
  level_bar_->setVisible(plan.has_relief);
  if (!plan.has_relief) return;
  const PlatformLevel level_by = document_.project().site.platform.level_by;
  const QSignalBlocker quiet(level_);
  const double over_m =
      plan.bench ? plan.bench->level_m - plan.middle_level_m : document_.project().site.platform.level_m;
  level_->setValue(int(std::lround(over_m * kMillimetres)));
  level_text_->setText(plan.bench ? format_.quantity(over_m, core::Unit::metre, 2) : tr("no platform"));
  for (std::size_t k = 0; k < choices_.size(); ++k) {
    choices_[k]->setChecked(kLevels.at(k) == level_by);
    const core::site::PlatformChoice* choice = choiceOf(plan, kLevels.at(k));
    choices_[k]->setToolTip(choice ? tr("Cut %1, fill %2")
                                         .arg(format_.quantity(choice->cut_m3, core::Unit::cubic_metre, 1),
                                              format_.quantity(choice->fill_m3, core::Unit::cubic_metre, 1))
                                   : tr("Not possible on this ground"));
  }
}

}  // namespace ui
