#include "ui/panels/water_charts_view.h"

#include "ui/document/document.h"
#include "ui/drawings/water_charts.h"
#include "ui/panels/chart_view.h"
#include "ui/panels/screen_style.h"

#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

using core::water::ReliabilityMap;
using core::water::WaterPlan;

std::size_t nearest(const std::vector<double>& values, double value) {
  const auto away = [value](double v) { return std::abs(v - value); };
  return std::size_t(std::ranges::min_element(values, {}, away) - values.begin());
}

/// The place in another map whose tank and beds are nearest to those of a place in this one.
std::optional<int> samePlace(const ReliabilityMap& from, const ReliabilityMap& to, int place) {
  if (from.empty() || to.empty()) return std::nullopt;
  const std::size_t columns = from.full_m3.size();
  const std::size_t column = nearest(to.full_m3, from.full_m3.at(std::size_t(place) % columns));
  const std::size_t row = nearest(to.bed_area_m2, from.bed_area_m2.at(std::size_t(place) / columns));
  return int(row * to.full_m3.size() + column);
}

}  // namespace

WaterChartsView::WaterChartsView(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), kinds_(new QTabBar(this)), stack_(new QStackedWidget(this)) {
  setObjectName(QStringLiteral("water_charts"));
  kinds_->setObjectName(QStringLiteral("chart.kind"));
  kinds_->setDrawBase(false);
  kinds_->setExpanding(false);
  for (const QString& name :
       {tr("Level through the year"), tr("Supply and need"), tr("Tank size and beds"), tr("Storage")})
    kinds_->addTab(name);
  addLevel();
  addFlows();
  addMap();
  addStorage();
  for (ChartView* view : views_) stack_->addWidget(view);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(kinds_);
  layout->addWidget(stack_, 1);
  connect(kinds_, &QTabBar::currentChanged, this, [this](int kind) {
    stack_->setCurrentIndex(kind);
    startMap();
  });
  connect(&document_, &Document::projectChanged, this, &WaterChartsView::projectChanged);
  connect(&worker_, &MapWorker::ready, this, &WaterChartsView::takeMap);
}

const WaterPlan& WaterChartsView::plan() const {
  static const WaterPlan none;
  return document_.plan().water ? *document_.plan().water : none;
}

void WaterChartsView::addLevel() {
  Chart chart;
  chart.name = tr("Water in the tank through the year");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> day) {
    drawings::drawLevelChart(painter, box, plan(), format_, screenStyle(dark_), day);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::dayAt(box, at, plan(), format_, screenStyle(dark_));
  };
  chart.reading = [this](int day) { return drawings::levelReading(plan(), day, format_); };
  chart.places = [this] { return int(plan().band.size()); };
  views_.push_back(new ChartView(QStringLiteral("chart.level"), std::move(chart), this));
}

void WaterChartsView::addFlows() {
  Chart chart;
  chart.name = tr("Supply and need by month");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> month) {
    drawings::drawFlowsChart(painter, box, plan(), format_, screenStyle(dark_), month);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::monthAt(box, at, plan(), format_, screenStyle(dark_));
  };
  chart.reading = [this](int month) { return drawings::flowsReading(plan(), month, format_); };
  chart.places = [this] { return plan().years > 0 ? int(core::kMonths) : 0; };
  views_.push_back(new ChartView(QStringLiteral("chart.flows"), std::move(chart), this));
}

void WaterChartsView::addMap() {
  Chart chart;
  chart.name = tr("Years in ten with water all year, by size of the tank and area of the beds");
  const auto columns = [this] { return int(map_.full_m3.size()); };
  const auto cell = [columns](int place) { return QPoint(place % columns(), place / columns()); };
  chart.draw = [this, cell](QPainter& painter, const QRectF& box, std::optional<int> place) {
    drawings::MapView view;
    view.target_years_in_ten = document_.project().water ? document_.project().water->target_years_in_ten : 0;
    if (place) view.marked_cell = cell(*place);
    view.refining = refining_ ? drawings::Refining::yes : drawings::Refining::no;
    drawings::drawReliabilityMap(painter, box, map_, plan(), format_, screenStyle(dark_), view);
  };
  chart.at = [this, columns](const QRectF& box, QPointF at) -> std::optional<int> {
    const auto found = drawings::cellAt(box, at, map_, format_, screenStyle(dark_));
    return found ? std::optional(found->y() * columns() + found->x()) : std::nullopt;
  };
  chart.reading = [this, cell](int place) { return drawings::mapReading(map_, cell(place), format_); };
  chart.places = [this] { return int(map_.years_in_ten.size()); };
  chart.columns = columns;
  views_.push_back(new ChartView(QStringLiteral("chart.map"), std::move(chart), this));
}

void WaterChartsView::addStorage() {
  Chart chart;
  chart.name = tr("Years in ten with water all year, by size of the tank");
  const auto target = [this] {
    return document_.project().water ? document_.project().water->target_years_in_ten : 0;
  };
  chart.draw = [this, target](QPainter& painter, const QRectF& box, std::optional<int> point) {
    drawings::drawStorageChart(painter, box, plan(), format_, screenStyle(dark_), target(), point);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::storagePointAt(box, at, plan(), format_, screenStyle(dark_));
  };
  chart.reading = [this](int point) { return drawings::storageReading(plan(), point, format_); };
  chart.places = [this] { return int(plan().storage.size()); };
  views_.push_back(new ChartView(QStringLiteral("chart.storage"), std::move(chart), this));
}

void WaterChartsView::setFormatter(const Formatter& format) {
  format_ = format;
  repaintAll();
}

void WaterChartsView::setDark(bool dark) {
  dark_ = dark;
  repaintAll();
}

void WaterChartsView::repaintAll() {
  for (ChartView* view : views_) view->changed();
}

void WaterChartsView::projectChanged() {
  map_is_old_ = true;
  startMap();
  repaintAll();
}

/// The map is reckoned only while it is looked at.
void WaterChartsView::startMap() {
  if (!map_is_old_ || !isVisible() || stack_->currentIndex() != map_of_sizes) return;
  map_is_old_ = false;
  if (!document_.plan().water) {
    worker_.cancel();
    return takeMap({}, true);
  }
  refining_ = true;
  worker_.start(plan());
}

void WaterChartsView::takeMap(const core::water::ReliabilityMap& map, bool is_final) {
  ChartView* view = views_[map_of_sizes];
  const std::optional<int> marked = view->marked();
  const std::optional<int> place = marked ? samePlace(map_, map, *marked) : std::nullopt;
  map_ = map;
  refining_ = !is_final;
  view->mark(place);
}

void WaterChartsView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  startMap();
}

}  // namespace ui
