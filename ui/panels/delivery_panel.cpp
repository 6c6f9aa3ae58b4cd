#include "ui/panels/delivery_panel.h"

#include "ui/document/document.h"
#include "ui/drawings/delivery_charts.h"
#include "ui/panels/chart_view.h"
#include "ui/panels/screen_style.h"
#include "ui/text/words.h"
#include "ui/widgets/canvas.h"
#include "ui/widgets/explained.h"
#include "ui/widgets/row_table.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

namespace ui {

namespace {

using core::hydraulics::DeliveryPlan;
using core::hydraulics::LinePlan;

constexpr double kHeadlineSize = 1.35;
constexpr double kMargin_mm = 2;
constexpr int kRouteRows = 4;
constexpr double kNextPoint_m = 10;
constexpr int kLeastChart_px = 170;

enum Page { source_page, field_page, overflow_page, trap_page, leak_page };

struct Beginning {
  const char* path;
  Page page;
};
constexpr std::array kPages{
    Beginning{"delivery.source", source_page},     Beginning{"delivery.field", field_page},
    Beginning{"delivery.overflow", overflow_page}, Beginning{"delivery.spill", overflow_page},
    Beginning{"delivery.silt_trap", trap_page},    Beginning{"delivery.leak_test", leak_page}};

/// A new point goes on from the last one.
void goOn(std::vector<core::RoutePoint>& route, std::size_t row) {
  if (row == 0) return;
  route[row] = {route[row - 1].distance_m + kNextPoint_m, route[row - 1].over_rim_m};
}

}  // namespace

DeliveryPanel::DeliveryPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      headline_(new QLabel(this)),
      ask_(new QPushButton(tr("Plan pipes and overflow"), this)),
      pages_(new QTabBar(this)),
      stack_(new QStackedWidget(this)) {
  setObjectName(QStringLiteral("delivery_panel"));
  headline_->setObjectName(QStringLiteral("delivery.headline"));
  headline_->setWordWrap(true);
  QFont font = headline_->font();
  font.setPointSizeF(font.pointSizeF() * kHeadlineSize);
  font.setBold(true);
  headline_->setFont(font);
  headline_->setText(tr("How does the water come, and where does too much of it go?"));
  ask_->setObjectName(QStringLiteral("delivery.ask"));
  pages_->setObjectName(QStringLiteral("delivery.pages"));
  pages_->setDrawBase(false);
  pages_->setExpanding(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(2, 4, 2, 4);
  layout->setSpacing(6);
  layout->addWidget(headline_);
  layout->addWidget(ask_, 0, Qt::AlignLeft);
  layout->addWidget(pages_);
  layout->addWidget(stack_, 1);
  layout->addStretch();
  makeSourcePage();
  makeFieldPage();
  makeOverflowPage();
  makeTrapPage();
  makeLeakPage();
  connect(pages_, &QTabBar::currentChanged, stack_, &QStackedWidget::setCurrentIndex);
  connect(ask_, &QPushButton::clicked, this, [this] {
    document_.change(ask_->text(), [](core::Project& project) { project.delivery.emplace(); });
  });
  connect(&document_, &Document::projectChanged, this, &DeliveryPanel::refresh);
  refresh();
}

QVBoxLayout* DeliveryPanel::addPage(const QString& name) {
  pages_->addTab(name);
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(2, 4, 2, 4);
  layout->setSpacing(6);
  auto* scroll = new QScrollArea(stack_);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setWidget(page);
  stack_->addWidget(scroll);
  return layout;
}

void DeliveryPanel::addAnswers(QVBoxLayout* layout, const QString& id, Answers answers,
                               std::initializer_list<std::string_view> groups) {
  auto* label = new QLabel;
  label->setObjectName(id);
  label->setWordWrap(true);
  layout->addWidget(label);
  answered_.push_back({label, answers});
  for (const std::string_view group : groups) {
    explained_.push_back(new Explained(document_, group, this));
    layout->addWidget(explained_.back());
  }
}

void DeliveryPanel::addHeads(QVBoxLayout* layout, const QString& id, std::function<const LinePlan*()> line) {
  Chart chart;
  chart.name = tr("Heads along the line");
  const auto rim = [this] { return document_.plan().delivery->rim_level_m; };
  chart.draw = [this, line, rim](QPainter& painter, const QRectF& box, std::optional<int> marked) {
    if (const LinePlan* shown = line())
      drawings::drawHeadLine(painter, box, *shown, rim(), format_, screenStyle(dark_), marked);
  };
  chart.at = [this, line, rim](const QRectF& box, QPointF at) -> std::optional<int> {
    const LinePlan* shown = line();
    if (shown == nullptr) return std::nullopt;
    return drawings::headPointAt(box, at, *shown, rim(), format_, screenStyle(dark_));
  };
  chart.reading = [this, line, rim](int point) {
    const LinePlan* shown = line();
    return shown != nullptr ? drawings::headReading(*shown, rim(), point, format_) : QString();
  };
  chart.places = [line] {
    const LinePlan* shown = line();
    return shown != nullptr && shown->full ? int(shown->full->points.size()) : 0;
  };
  charts_.push_back(new ChartView(id, std::move(chart), this));
  charts_.back()->setMinimumHeight(kLeastChart_px);
  layout->addWidget(charts_.back(), 1);
}

void DeliveryPanel::addEmptying(QVBoxLayout* layout) {
  const auto field = [this]() -> const core::hydraulics::FieldPlan* {
    const auto& plan = document_.plan().delivery;
    return plan && plan->field ? &*plan->field : nullptr;
  };
  Chart chart;
  chart.name = tr("Water level while the line runs wide open");
  chart.draw = [this, field](QPainter& painter, const QRectF& box, std::optional<int> marked) {
    if (const auto* shown = field())
      drawings::drawEmptying(painter, box, *shown, format_, screenStyle(dark_), marked);
  };
  chart.at = [this, field](const QRectF& box, QPointF at) -> std::optional<int> {
    const auto* shown = field();
    if (shown == nullptr) return std::nullopt;
    return drawings::emptyingPointAt(box, at, *shown, format_, screenStyle(dark_));
  };
  chart.reading = [this, field](int point) {
    const auto* shown = field();
    return shown != nullptr ? drawings::emptyingReading(*shown, point, format_) : QString();
  };
  chart.places = [field] {
    const auto* shown = field();
    return shown != nullptr && shown->emptying ? int(shown->emptying->curve.size()) : 0;
  };
  charts_.push_back(new ChartView(QStringLiteral("chart.emptying"), std::move(chart), this));
  charts_.back()->setMinimumHeight(kLeastChart_px);
  layout->addWidget(charts_.back(), 1);
}

void DeliveryPanel::addRoute(QVBoxLayout* layout, std::string_view list, const QString& heading) {
  auto* label = new QLabel(heading);
  label->setWordWrap(true);
  layout->addWidget(label);
  auto* table = new RowTable(document_, list, this);
  table->setRowsShown(kRouteRows);
  table->setName(heading);
  const bool is_source = list == "delivery.source.route";
  table->setNewRow([is_source](core::Project& project, std::size_t row) {
    goOn(is_source ? project.delivery->source.route : project.delivery->field.route, row);
  });
  layout->addWidget(table);
  tables_.push_back({table, stack_->count() - 1});
}

void DeliveryPanel::makeSourcePage() {
  QVBoxLayout* layout = addPage(tr("From the source"));
  addAnswers(layout, QStringLiteral("delivery.source.answers"), words::sourceLineAnswers, {"source"});
  addHeads(layout, QStringLiteral("chart.source"), [this]() -> const LinePlan* {
    const auto& plan = document_.plan().delivery;
    return plan && plan->source ? &*plan->source : nullptr;
  });
  addRoute(layout, "delivery.source.route",
           tr("The way of the pipe, from its inlet at the source to its end at the tank"));
}

void DeliveryPanel::makeFieldPage() {
  QVBoxLayout* layout = addPage(tr("To the field"));
  addAnswers(layout, QStringLiteral("delivery.field.answers"), words::fieldLineAnswers,
             {"pipes", "emptying"});
  auto* side_by_side = new QHBoxLayout;
  auto* left = new QVBoxLayout;
  auto* right = new QVBoxLayout;
  side_by_side->addLayout(left, 3);
  side_by_side->addLayout(right, 2);
  layout->addLayout(side_by_side, 1);
  addHeads(left, QStringLiteral("chart.field"), [this]() -> const LinePlan* {
    const auto& plan = document_.plan().delivery;
    return plan && plan->field ? &plan->field->pipe : nullptr;
  });
  addEmptying(right);
  addRoute(layout, "delivery.field.route",
           tr("The way of the pipe, from the rim of the tank to the outlets"));
}

void DeliveryPanel::makeOverflowPage() {
  QVBoxLayout* layout = addPage(tr("Overflow"));
  addAnswers(layout, QStringLiteral("delivery.overflow.answers"), words::overflowAnswers, {"overflow"});
  auto* canvas = new Canvas(this);
  canvas->setObjectName(QStringLiteral("overflow.drawing"));
  canvas->setAccessibleName(tr("Water at the rim in a storm"));
  canvas->setPaint([this](QPainter& painter, const QRectF& box_mm) {
    if (!document_.plan().delivery) return;
    drawings::drawOverflow(painter, box_mm.adjusted(kMargin_mm, kMargin_mm, -kMargin_mm, -kMargin_mm),
                           document_.plan().delivery->overflow, format_, screenStyle(dark_));
  });
  drawings_.push_back(canvas);
  layout->addWidget(canvas, 1);
}

void DeliveryPanel::makeTrapPage() {
  QVBoxLayout* layout = addPage(tr("Silt trap"));
  addAnswers(layout, QStringLiteral("delivery.silt_trap.answers"), words::siltTrapAnswers, {"trap"});
  layout->addStretch();
}

void DeliveryPanel::makeLeakPage() {
  QVBoxLayout* layout = addPage(tr("Leak test"));
  addAnswers(layout, QStringLiteral("delivery.leak_test.answers"), words::leakAnswers, {"leak"});
  layout->addStretch();
}

void DeliveryPanel::setFormatter(const Formatter& format) {
  format_ = format;
  for (const PagedTable& paged : tables_) paged.table->setFormatter(format);
  for (Explained* explained : explained_) explained->setFormatter(format);
  refresh();
}

void DeliveryPanel::setDark(bool dark) {
  dark_ = dark;
  for (ChartView* chart : charts_) chart->changed();
  for (Canvas* canvas : drawings_) canvas->update();
}

bool DeliveryPanel::goTo(const QString& path) {
  const auto holds = [&](const PagedTable& paged) {
    const auto& id = paged.table->list().id;
    return paged.table->contains(path) || path == QString::fromLatin1(id.data(), qsizetype(id.size()));
  };
  const auto found = std::ranges::find_if(tables_, holds);
  if (found == tables_.end()) return false;
  pages_->setCurrentIndex(found->page);
  if (found->table->contains(path)) return found->table->goTo(path);
  return true;
}

void DeliveryPanel::showPageOf(const QString& path) {
  for (const Beginning& entry : kPages) {
    if (path.startsWith(QLatin1String(entry.path))) pages_->setCurrentIndex(entry.page);
  }
}

void DeliveryPanel::refresh() {
  const auto& plan = document_.plan().delivery;
  headline_->setVisible(!plan);
  ask_->setVisible(!plan);
  pages_->setVisible(plan.has_value());
  stack_->setVisible(plan.has_value());
  for (const Answered& part : answered_)
    part.label->setText(plan ? part.answers(*plan, format_).join(QLatin1Char(' ')) : QString());
  for (ChartView* chart : charts_) chart->changed();
  for (Canvas* canvas : drawings_) canvas->update();
}

}  // namespace ui
