#include "ui/panels/options_panel.h"

#include "core/geometry/side_by_side.h"
#include "core/project/option_fields.h"
#include "ui/document/document.h"
#include "ui/drawings/money_charts.h"
#include "ui/panels/options_table.h"
#include "ui/panels/screen_style.h"
#include "ui/text/money_words.h"
#include "ui/view3d/pit_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

namespace ui {

namespace {

using core::compare::Candidate;
using core::compare::SearchResult;

constexpr double kGap_m = 2.5;
constexpr int kLeastView_px = 220;
constexpr int kLeastChart_px = 260;
constexpr int kPercent = 100;

std::vector<core::geometry::TankGeometry> tanksOf(const core::Plan& plan) {
  std::vector<core::geometry::TankGeometry> tanks;
  for (const core::OptionResult& option : plan.options) {
    if (option.geometry) tanks.push_back(*option.geometry);
  }
  if (tanks.empty()) tanks.push_back(plan.geometry);
  return tanks;
}

/// What the search depends on besides its own limits is compared as a whole; names and options do not count.
core::Project searchedPart(core::Project project) {
  project.title.clear();
  project.place.clear();
  project.prepared_by.clear();
  project.options.clear();
  project.kept.clear();
  return project;
}

/// Limits that cannot be used.
QStringList limitsUnused(const core::Project& project, const core::Plan& plan) {
  QStringList sentences;
  if (project.search.most_people && !plan.works)
    sentences << OptionsPanel::tr(
        "The limit on people is not used: people and dates are not part of this project.");
  const bool is_priced = plan.cost && plan.cost->bill.missing.empty();
  if (project.search.most_cost && !is_priced)
    sentences << OptionsPanel::tr("The limit on money is not used: prices are missing.");
  return sentences;
}

}  // namespace

OptionsPanel::OptionsPanel(Document& document, QWidget* parent)
    : PagedPanel(document, QStringLiteral("options_panel"), parent) {
  makeComparePage();
  makeSearchPage();
  redraw_.setSingleShot(true);
  connect(&redraw_, &QTimer::timeout, this, &OptionsPanel::drawSideBySide);
  connect(&worker_, &SearchWorker::progress, this,
          [this](double share) { progress_->setValue(int(share * kPercent)); });
  connect(&worker_, &SearchWorker::ready, this, &OptionsPanel::takeResult);
  refresh();
}

void OptionsPanel::makeComparePage() {
  QVBoxLayout* layout = addPage(tr("Side by side"));
  table_ = new OptionsTable(document(), this);
  parts_ = new QSplitter(Qt::Vertical, this);
  parts_->setChildrenCollapsible(false);
  parts_->addWidget(table_);
  layout->addWidget(parts_, 1);
  addExplained("options");
}

void OptionsPanel::makeView() {
  view_ = makePitView(this);
  view_->setObjectName(QStringLiteral("options.view"));
  view_->setAccessibleName(tr("The options side by side at one scale"));
  view_->setMinimumHeight(kLeastView_px);
  view_->setDark(isDark());
  parts_->insertWidget(0, view_);
  parts_->setSizes({1000, 1100});  // shared out by what there is
  showNames();
}

void OptionsPanel::makeSearchPage() {
  QVBoxLayout* layout = addPage(tr("Find a size"));
  addAnswers(QStringLiteral("search"), [this] { return searchText(); });
  auto* bar = new QHBoxLayout;
  search_ = new QPushButton(tr("Try all sizes"), this);
  search_->setObjectName(QStringLiteral("options.search_start"));
  stop_ = new QPushButton(tr("Stop"), this);
  stop_->setObjectName(QStringLiteral("options.search_stop"));
  progress_ = new QProgressBar(this);
  progress_->setObjectName(QStringLiteral("options.progress"));
  progress_->setAccessibleName(tr("Share of the sizes tried"));
  bar->addWidget(search_);
  bar->addWidget(progress_, 1);
  bar->addWidget(stop_);
  bar->addStretch();
  layout->addLayout(bar);
  connect(search_, &QPushButton::clicked, this, &OptionsPanel::startSearch);
  connect(stop_, &QPushButton::clicked, this, [this] {
    worker_.cancel();
    endSearch();
  });
  Chart chart;
  chart.name = tr("Money against years without a dry day");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> place) {
    drawings::drawFrontier(painter, box, document().project(), result_, present(), format(),
                           screenStyle(isDark()), place);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::frontierAt(box, at, document().project(), result_, present(), format(),
                                screenStyle(isDark()));
  };
  chart.reading = [this](int place) {
    return tr("%1. Click, or press Enter, to take this size.")
        .arg(words::candidateText(document().project(), result_.frontier.at(std::size_t(place)), format()));
  };
  chart.places = [this] { return int(result_.frontier.size()); };
  chart.picked = [this](int place) { adopt(result_.frontier.at(std::size_t(place))); };
  frontier_ = addChart(QStringLiteral("frontier"), std::move(chart), kLeastChart_px);
  const auto has = [this](const std::optional<Candidate> SearchResult::*which) {
    return [this, which] { return (result_.*which).has_value(); };
  };
  addButton(QStringLiteral("take_cheapest"), tr("Take the cheapest that meets the target"),
            has(&SearchResult::cheapest), [this] { adopt(Candidate(*result_.cheapest)); });
  addButton(QStringLiteral("take_largest"), tr("Take the largest within the limits"),
            has(&SearchResult::largest), [this] { adopt(Candidate(*result_.largest)); });
  endSearch();
}

QStringList OptionsPanel::searchText() const {
  if (result_.tried == 0) {
    const auto count = core::compare::candidateCount(document().project());
    return {tr("Sizes within the limits of footprint and depth: %1.").arg(format().integer(int(count))),
            tr("The limits stand at the left under “Limits of the search”: with ten bags as the limit, this "
               "answers what ten bags can build.")};
  }
  QStringList sentences = words::searchAnswers(document().project(), result_, format());
  sentences += limitsUnused(document().project(), document().plan());
  if (searchedPart(document().project()) != searched_)
    sentences.prepend(tr("The project has changed since: try again."));
  return sentences;
}

void OptionsPanel::startSearch() {
  searched_ = searchedPart(document().project());
  progress_->setValue(0);
  worker_.start(document().project(), document().plan());
  endSearch();
}

/// Buttons and bar as they are while a search runs, or not.
void OptionsPanel::endSearch() {
  const bool runs = worker_.isRunning();
  search_->setEnabled(!runs);
  stop_->setVisible(runs);
  progress_->setVisible(runs);
}

void OptionsPanel::takeResult(const SearchResult& result) {
  result_ = result;
  endSearch();
  frontier_->mark({});
  refresh();
}

void OptionsPanel::adopt(const Candidate& candidate) {
  document().change(tr("Take a size"), [&](core::Project& project) {
    project = core::compare::withSize(std::move(project), candidate);
  });
}

Candidate OptionsPanel::present() const {
  return core::compare::presentSize(document().project(), document().plan());
}

void OptionsPanel::setFormatter(const Formatter& format) {
  table_->setFormatter(format);
  if (view_ != nullptr) showNames();
  PagedPanel::setFormatter(format);
}

/// The name of each tank stands before it.
void OptionsPanel::showNames() {
  view_->setDimensionText([this](const core::geometry::Dimension& dimension) {
    const std::size_t number = QString::fromStdString(dimension.id).section(QLatin1Char('_'), -1).toUInt();
    std::size_t seen = 0;
    for (const core::OptionResult& option : document().plan().options) {
      if (option.geometry && ++seen == number) return words::optionTitle(option);
    }
    return QString::fromStdString(core::optionLetter(std::max<std::size_t>(number, 1) - 1));
  });
}

void OptionsPanel::showEvent(QShowEvent* event) {
  PagedPanel::showEvent(event);
  if (view_ == nullptr) makeView();
  redraw_.start();
}

void OptionsPanel::refreshMore() {
  if (table_ != nullptr) table_->refresh();
  if (view_ == nullptr) return;
  view_->setDark(isDark());
  if (isVisible()) redraw_.start();
}

void OptionsPanel::drawSideBySide() {
  // the last picture stays until the options have been reckoned
  if (!document().project().options.empty() && document().plan().options.empty()) return;
  const core::geometry::Scene scene = core::geometry::sideBySide(tanksOf(document().plan()), kGap_m);
  view_->setScene(scene);
  const double aspect = double(std::max(view_->width(), 1)) / std::max(view_->height(), 1);
  view_->setCamera(
      core::geometry::presetFor(core::geometry::ViewPreset::oblique, scene.least, scene.most, aspect));
}

}  // namespace ui
