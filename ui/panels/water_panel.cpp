#include "ui/panels/water_panel.h"

#include "core/water/crops.h"
#include "ui/document/document.h"
#include "ui/panels/water_charts_view.h"
#include "ui/text/words.h"
#include "ui/widgets/explained.h"
#include "ui/widgets/row_table.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>
#include <algorithm>

namespace ui {

namespace {

constexpr double kHeadlineSize = 1.35;
constexpr int kMonthRows = 12;
constexpr int kFewRows = 5;
constexpr int kWeatherPage = 3;

QLabel* addText(QVBoxLayout* layout, const QString& id, double size = 1) {
  auto* label = new QLabel;
  label->setObjectName(id);
  label->setWordWrap(true);
  QFont font = label->font();
  font.setPointSizeF(font.pointSizeF() * size);
  font.setBold(size > 1);
  label->setFont(font);
  layout->addWidget(label);
  return label;
}

QVBoxLayout* pageLayout(QWidget* page) {
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(2, 4, 2, 4);
  layout->setSpacing(6);
  return layout;
}

QPushButton* button(const QString& id, const QString& text) {
  auto* made = new QPushButton(text);
  made->setObjectName(id);
  return made;
}

/// Crops of the table and the user's own, by name.
QList<QPair<QString, QString>> cropChoices(const core::Project& project) {
  QList<QPair<QString, QString>> all;
  if (project.water) {
    for (const core::OwnCrop& crop : project.water->crops)
      all << qMakePair(QString::fromStdString(crop.name), QString::fromStdString(crop.name));
  }
  for (const core::water::CropFigures& crop : core::water::crops())
    all << qMakePair(QString::fromUtf8(crop.id.data(), qsizetype(crop.id.size())), words::cropName(crop.id));
  std::sort(all.begin(), all.end(),
            [](const auto& a, const auto& b) { return a.second.localeAwareCompare(b.second) < 0; });
  return all;
}

/// What has to be entered before there is an answer.
QString missingText(const core::Project& project) {
  if (project.site.latitude_deg) return WaterPanel::tr("Enter the weather, and the answer stands here.");
  if (core::water::isClimateKnown(project.water->climate))
    return WaterPanel::tr("Enter the latitude, and the answer stands here.");
  return WaterPanel::tr("Enter the latitude and the weather, and the answer stands here.");
}

/// Gives a new crop a name that no other one has.
void nameCrop(core::Project& project, std::size_t row) {
  auto& crops = project.water->crops;
  const auto is_taken = [&](const std::string& name) {
    return std::ranges::any_of(crops, [&](const core::OwnCrop& crop) { return crop.name == name; });
  };
  std::size_t number = row + 1;
  std::string name;
  do {
    name = WaterPanel::tr("Crop %1").arg(number++).toStdString();
  } while (is_taken(name));
  crops[row].name = name;
}

/// Beds keep the crop that they have when it gets another name.
void renameInBeds(const core::Project& before, core::Project& after) {
  if (!before.water || !after.water) return;
  const auto& old = before.water->crops;
  const auto& now = after.water->crops;
  for (core::Bed& bed : after.water->beds) {
    const auto row = std::size_t(std::ranges::find(old, bed.crop, &core::OwnCrop::name) - old.begin());
    if (row < old.size() && row < now.size()) bed.crop = now[row].name;
  }
}

}  // namespace

WaterPanel::WaterPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      ask_(button(QStringLiteral("water.ask"), tr("Ask whether the water lasts"))),
      pages_(new QTabBar(this)),
      stack_(new QStackedWidget(this)),
      charts_(new WaterChartsView(document, this)),
      explained_(new Explained(document, "water", this, Explained::Room::scrolled)) {
  setObjectName(QStringLiteral("water_panel"));
  pages_->setObjectName(QStringLiteral("water.pages"));
  pages_->setDrawBase(false);
  pages_->setExpanding(false);
  auto* layout = pageLayout(this);
  headline_ = addText(layout, QStringLiteral("water.headline"), kHeadlineSize);
  answers_ = addText(layout, QStringLiteral("water.answers"));
  layout->addWidget(explained_);
  layout->addWidget(ask_, 0, Qt::AlignLeft);
  layout->addWidget(pages_);
  layout->addWidget(stack_, 1);
  addPage(tr("Charts"), charts_);
  addPage(tr("Source"), makeSourcePage());
  addPage(tr("Beds and animals"), makeNeedsPage());
  addPage(tr("Weather"), makeWeatherPage());
  connect(pages_, &QTabBar::currentChanged, stack_, &QStackedWidget::setCurrentIndex);
  connect(ask_, &QPushButton::clicked, this, [this] {
    document_.change(ask_->text(), [](core::Project& project) { project.water.emplace(); });
    pages_->setCurrentIndex(kWeatherPage);
  });
  connect(&document_, &Document::projectChanged, this, &WaterPanel::refresh);
  refresh();
}

void WaterPanel::addPage(const QString& name, QWidget* page) {
  pages_->addTab(name);
  if (page == charts_) {
    stack_->addWidget(page);
    return;
  }
  auto* scroll = new QScrollArea(stack_);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setWidgetResizable(true);
  scroll->setWidget(page);
  stack_->addWidget(scroll);
}

RowTable* WaterPanel::addTable(std::string_view list, QWidget* page, const QString& heading, int rows_shown) {
  auto* layout = static_cast<QVBoxLayout*>(page->layout());
  QLabel* label = addText(layout, QString());
  QFont bold = label->font();
  bold.setBold(true);
  label->setFont(bold);
  label->setText(heading);
  auto* table = new RowTable(document_, list, page);
  table->setRowsShown(rows_shown);
  table->setName(heading);
  layout->addWidget(table);
  tables_.push_back({table, stack_->count()});  // the page is added when it is made
  return table;
}

QWidget* WaterPanel::makeSourcePage() {
  auto* page = new QWidget;
  auto* layout = pageLayout(page);
  const auto month = [](int row, const Formatter& format) { return format.monthName(row + 1); };
  addTable("water.source.months", page, tr("What the tap or spring gives, month by month"), kMonthRows)
      ->setRowNames(month);
  RowTable* readings =
      addTable("water.source.readings", page,
               tr("Bucket and watch: time how long a vessel takes to fill, more than three times"), kFewRows);
  auto* use = button(QStringLiteral("water.readings.use"), tr("Use the medians as flows"));
  readings->buttons()->insertWidget(readings->buttons()->count() - 1, use);
  connect(use, &QPushButton::clicked, this, &WaterPanel::useMedians);
  readings_ = addText(layout, QStringLiteral("water.readings.summary"));
  source_explained_ = new Explained(document_, "source", page);
  layout->addWidget(source_explained_);
  layout->addStretch();
  return page;
}

QWidget* WaterPanel::makeNeedsPage() {
  auto* page = new QWidget;
  auto* layout = pageLayout(page);
  RowTable* beds = addTable("water.beds", page, tr("Beds"), kFewRows + 1);
  beds->setChoices("water.beds[].crop", [this] { return cropChoices(document_.project()); });
  addTable("water.animals", page, tr("Animals"), kFewRows - 1);
  RowTable* crops =
      addTable("water.crops", page, tr("Crops of your own, beside the table of crops"), kFewRows - 2);
  crops->setNewRow(nameCrop);
  crops->setFollowing(renameInBeds);
  layout->addStretch();
  return page;
}

QWidget* WaterPanel::makeWeatherPage() {
  auto* page = new QWidget;
  auto* layout = pageLayout(page);
  const auto month = [](int row, const Formatter& format) { return format.monthName(row + 1); };
  addTable("water.climate.months", page, tr("Means of many years, month by month"), kMonthRows)
      ->setRowNames(month);
  auto* record = new QHBoxLayout;
  auto* import = button(QStringLiteral("water.import"), tr("Read a daily record…"));
  auto* forget = button(QStringLiteral("water.forget"), tr("Take the record out"));
  record->addWidget(import);
  record->addWidget(forget);
  record->addStretch();
  layout->addLayout(record);
  record_ = addText(layout, QStringLiteral("water.record"));
  layout->addStretch();
  connect(import, &QPushButton::clicked, this, &WaterPanel::importWanted);
  const auto refresh_forget = [this, forget] {
    const auto& water = document_.project().water;
    forget->setEnabled(water && !water->climate.daily.empty());
  };
  connect(&document_, &Document::projectChanged, forget, refresh_forget);
  refresh_forget();
  connect(forget, &QPushButton::clicked, this, &WaterPanel::forgetRecord);
  return page;
}

void WaterPanel::setFormatter(const Formatter& format) {
  format_ = format;
  charts_->setFormatter(format);
  explained_->setFormatter(format);
  source_explained_->setFormatter(format);
  for (const PagedTable& paged : tables_) paged.table->setFormatter(format);
  refresh();
}

void WaterPanel::setDark(bool dark) {
  charts_->setDark(dark);
}

bool WaterPanel::goTo(const QString& path) {
  const auto holds = [&](const PagedTable& paged) { return paged.table->contains(path); };
  const auto found = std::ranges::find_if(tables_, holds);
  if (found == tables_.end()) return false;
  pages_->setCurrentIndex(found->page);
  return found->table->goTo(path);
}

void WaterPanel::refresh() {
  const bool asked = document_.project().water.has_value();
  const auto& plan = document_.plan().water;
  ask_->setVisible(!asked);
  pages_->setVisible(asked);
  stack_->setVisible(asked);
  answers_->setVisible(plan.has_value());
  explained_->setVisible(plan.has_value());
  if (plan) {
    headline_->setText(words::waterHeadline(*plan, format_));
    answers_->setText(words::waterAnswers(*plan, format_).join(QLatin1Char(' ')));
  } else {
    const QString no_year = words::noWholeYear(document_.project(), document_.plan());
    headline_->setText(!asked              ? tr("Will the water last the dry season?")
                       : no_year.isEmpty() ? missingText(document_.project())
                                           : no_year);
  }
  readings_->setText(words::readingsSummary(document_.project(), format_));
  record_->setText(words::recordSummary(document_.project(), document_.plan(), format_));
}

void WaterPanel::useMedians() {
  document_.change(tr("Use the medians as flows"), [](core::Project& project) {
    if (!project.water) return;
    core::WaterSource& source = project.water->source;
    for (const core::water::MonthReadings& month : core::water::readingsByMonth(source.readings))
      source.months.at(std::size_t(month.month - 1)).flow_l_per_min = month.median_l_per_min;
  });
}

void WaterPanel::forgetRecord() {
  document_.change(tr("Take the record out"), [](core::Project& project) {
    if (!project.water) return;
    project.water->climate.daily = {};
    project.water->climate.kind = core::ClimateKind::monthly;
  });
}

}  // namespace ui
