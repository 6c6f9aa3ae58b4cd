#include "ui/panels/paged_panel.h"

#include "ui/document/document.h"
#include "ui/widgets/explained.h"
#include "ui/widgets/row_table.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

namespace ui {

namespace {

constexpr double kHeadlineSize = 1.35;

void spaced(QVBoxLayout* layout) {
  layout->setContentsMargins(2, 4, 2, 4);
  layout->setSpacing(6);
}

}  // namespace

PagedPanel::PagedPanel(Document& document, const QString& id, QWidget* parent)
    : QWidget(parent),
      document_(document),
      headline_(new QLabel(this)),
      ask_(new QPushButton(this)),
      pages_(new QTabBar(this)),
      stack_(new QStackedWidget(this)) {
  setObjectName(id);
  headline_->setObjectName(idOf(QStringLiteral("headline")));
  headline_->setWordWrap(true);
  QFont font = headline_->font();
  font.setPointSizeF(font.pointSizeF() * kHeadlineSize);
  font.setBold(true);
  headline_->setFont(font);
  ask_->setObjectName(idOf(QStringLiteral("ask")));
  pages_->setObjectName(idOf(QStringLiteral("pages")));
  pages_->setDrawBase(false);
  pages_->setExpanding(false);
  auto* layout = new QVBoxLayout(this);
  spaced(layout);
  layout->addWidget(headline_);
  layout->addWidget(ask_, 0, Qt::AlignLeft);
  layout->addWidget(pages_);
  layout->addWidget(stack_, 1);
  layout->addStretch();
  connect(pages_, &QTabBar::currentChanged, stack_, &QStackedWidget::setCurrentIndex);
  connect(ask_, &QPushButton::clicked, this, [this] { document_.change(ask_->text(), put_in_place_); });
  connect(&document_, &Document::projectChanged, this, &PagedPanel::refreshWhenSeen);
  connect(&document_, &Document::planRefined, this, &PagedPanel::refreshWhenSeen);
}

QString PagedPanel::idOf(const QString& name) const {
  return QString(objectName()).remove(QStringLiteral("_panel")) + QLatin1Char('.') + name;
}

void PagedPanel::setQuestion(const QString& headline, const QString& button, std::function<bool()> is_asked,
                             std::function<void(core::Project&)> ask) {
  headline_->setText(headline);
  ask_->setText(button);
  is_asked_ = std::move(is_asked);
  put_in_place_ = std::move(ask);
}

QVBoxLayout* PagedPanel::addPage(const QString& name) {
  pages_->addTab(name);
  auto* page = new QWidget;
  page_ = new QVBoxLayout(page);
  spaced(page_);
  auto* scroll = new QScrollArea(stack_);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setWidget(page);
  stack_->addWidget(scroll);
  return page_;
}

QLabel* PagedPanel::addAnswers(const QString& name, Sentences sentences, std::string_view group) {
  auto* label = new QLabel;
  label->setObjectName(idOf(name));
  label->setWordWrap(true);
  page_->addWidget(label);
  answered_.push_back({label, std::move(sentences)});
  if (!group.empty()) addExplained(group);
  return label;
}

void PagedPanel::addExplained(std::string_view group) {
  explained_.push_back(new Explained(document_, group, this));
  page_->addWidget(explained_.back());
}

ChartView* PagedPanel::addChart(const QString& name, Chart chart, int least_height_px) {
  auto* view = new ChartView(QStringLiteral("chart.") + name, std::move(chart), this);
  view->setMinimumHeight(least_height_px);
  page_->addWidget(view, 1);
  charts_.push_back(view);
  return view;
}

RowTable* PagedPanel::addTable(std::string_view list, const QString& heading, int rows_shown) {
  auto* label = new QLabel(heading);
  label->setWordWrap(true);
  page_->addWidget(label);
  auto* table = new RowTable(document_, list, this);
  table->setRowsShown(rows_shown);
  table->setName(heading);
  page_->addWidget(table);
  tables_.push_back({table, stack_->count() - 1});
  return table;
}

QPushButton* PagedPanel::addButton(const QString& name, const QString& text, std::function<void()> pressed) {
  return addButton(
      name, text, [] { return true; }, std::move(pressed));
}

QPushButton* PagedPanel::addButton(const QString& name, const QString& text, std::function<bool()> may,
                                   std::function<void()> pressed) {
  auto* button = new QPushButton(text, this);
  button->setObjectName(idOf(name));
  page_->addWidget(button, 0, Qt::AlignLeft);
  connect(button, &QPushButton::clicked, this, pressed);
  guarded_.push_back({button, std::move(may)});
  return button;
}

void PagedPanel::setFormatter(const Formatter& format) {
  format_ = format;
  for (const PagedTable& paged : tables_) paged.table->setFormatter(format);
  for (Explained* explained : explained_) explained->setFormatter(format);
  refresh();
}

void PagedPanel::setDark(bool dark) {
  dark_ = dark;
  for (ChartView* chart : charts_) chart->changed();
  refreshMore();
}

bool PagedPanel::goTo(const QString& path) {
  const auto holds = [&](const PagedTable& paged) {
    const auto& id = paged.table->list().id;
    return paged.table->contains(path) || path == QString::fromLatin1(id.data(), qsizetype(id.size()));
  };
  const auto found = std::ranges::find_if(tables_, holds);
  if (found == tables_.end()) return false;
  showPage(found->page);
  return !found->table->contains(path) || found->table->goTo(path);
}

void PagedPanel::showPage(int page) {
  pages_->setCurrentIndex(page);
}

/// A tab that nobody looks at does not hold up a drag.
void PagedPanel::refreshWhenSeen() {
  if (isVisible()) return refresh();
  is_stale_ = true;
}

void PagedPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (is_stale_) refresh();
}

void PagedPanel::refresh() {
  is_stale_ = false;
  const bool is_asked = is_asked_();
  headline_->setVisible(!is_asked);
  ask_->setVisible(!is_asked);
  pages_->setVisible(is_asked);
  stack_->setVisible(is_asked);
  for (const Answered& part : answered_)
    part.label->setText(is_asked ? part.sentences().join(QLatin1Char('\n')) : QString());
  for (const Guarded& part : guarded_) part.button->setEnabled(is_asked && part.may());
  for (ChartView* chart : charts_) chart->changed();
  refreshMore();
}

}  // namespace ui
