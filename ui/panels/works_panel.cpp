#include "ui/panels/works_panel.h"

#include "core/works/rates.h"
#include "ui/document/document.h"
#include "ui/drawings/works_charts.h"
#include "ui/panels/screen_style.h"
#include "ui/panels/task_controls.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"
#include "ui/widgets/row_table.h"

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

namespace ui {

namespace {

using core::works::Filling;
using core::works::Works;

constexpr int kLeastBars_px = 360;
constexpr int kLeastChart_px = 230;
constexpr int kFewRows = 4;
constexpr int kFirst = 3;  // sentences about the dates that stand beside the bars

CellChoices rateChoices() {
  CellChoices all;
  for (const core::Figure& rate : core::works::rates())
    all << qMakePair(QString::fromStdString(rate.key), words::rateName(rate.key));
  return all;
}

}  // namespace

WorksPanel::WorksPanel(Document& document, QWidget* parent)
    : PagedPanel(document, QStringLiteral("works_panel"), parent) {
  setQuestion(
      tr("Who does what, when, and can each coat be finished in a day?"), tr("Plan labour and dates"),
      [this] { return this->document().plan().works.has_value(); },
      [](core::Project& project) { project.works.emplace(); });
  makeDatesPage();
  makePeoplePage();
  makeCoatsPage();
  makeFillingPage();
  makeWeatherPage();
  makeRecordsPage();
  refresh();
}

const Works& WorksPanel::works() const {
  static const Works none;
  return document().plan().works ? *document().plan().works : none;
}

Chart WorksPanel::barsChart() {
  Chart chart;
  chart.name = tr("Bars of all tasks over the days");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> task) {
    drawings::drawWorkBars(painter, box, works(), format(), screenStyle(isDark()), task, shifted_days_);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::workBarAt(box, at, works(), format(), screenStyle(isDark()));
  };
  chart.reading = [this](int task) { return drawings::workBarReading(works(), task, format()); };
  chart.places = [this] { return int(works().schedule.size()); };
  chart.picked = [this](int task) { controls_->choose(works().schedule.at(std::size_t(task)).id); };
  chart.dragged = [this](int task, double along_mm, bool is_done) { drag(task, along_mm, is_done); };
  chart.pressed = [this](std::optional<int> task, int key) { return press(task, key); };
  return chart;
}

void WorksPanel::makeDatesPage() {
  QVBoxLayout* layout = addPage(tr("Dates"));
  addAnswers(
      QStringLiteral("dates"), [this] { return words::datesAnswers(works(), format()).mid(0, kFirst); },
      "dates");
  controls_ = new TaskControls(document(), this);
  layout->addWidget(controls_);
  bars_ = addChart(QStringLiteral("bars"), barsChart(), kLeastBars_px);
}

void WorksPanel::drag(int task, double along_mm, bool is_done) {
  const auto& schedule = works().schedule;
  if (std::size_t(task) >= schedule.size() || schedule[std::size_t(task)].is_mark) return;
  const double day_mm = drawings::workBarDayWidth(bars_->box(), works(), format(), screenStyle(isDark()));
  shifted_days_ = day_mm > 0 ? int(std::lround(along_mm / day_mm)) : 0;
  if (!is_done) return;
  const core::works::Task moved = schedule[std::size_t(task)];
  const int days = std::exchange(shifted_days_, 0);
  controls_->choose(moved.id);
  if (days != 0) TaskControls::shift(document(), moved, days);
}

/// Up and down go from bar to bar, left and right move the marked one by a day, plus and minus its people.
bool WorksPanel::press(std::optional<int> task, int key) {
  const auto& schedule = works().schedule;
  const int count = int(schedule.size());
  if (count == 0) return false;
  if (key == Qt::Key_Down) return bars_->mark(task ? std::min(*task + 1, count - 1) : 0), true;
  if (key == Qt::Key_Up) return bars_->mark(task ? std::max(*task - 1, 0) : count - 1), true;
  if (!task || schedule[std::size_t(*task)].is_mark) return false;
  const core::works::Task chosen = schedule[std::size_t(*task)];
  const auto keep = [&] {  // the bar keeps its mark where it goes in the order
    const auto& now = works().schedule;
    for (std::size_t k = 0; k < now.size(); ++k) {
      if (now[k].id == chosen.id) bars_->mark(int(k));
    }
    controls_->choose(chosen.id);
    return true;
  };
  switch (key) {
    case Qt::Key_Left:
      return TaskControls::shift(document(), chosen, -1), keep();
    case Qt::Key_Right:
      return TaskControls::shift(document(), chosen, 1), keep();
    case Qt::Key_Plus:
      return TaskControls::addPeople(document(), chosen, 1), keep();
    case Qt::Key_Minus:
      return TaskControls::addPeople(document(), chosen, -1), keep();
    case Qt::Key_Delete:
      return TaskControls::asUsual(document(), chosen.id), keep();
    default:
      return false;
  }
}

void WorksPanel::makePeoplePage() {
  addPage(tr("People"));
  addAnswers(
      QStringLiteral("people"), [this] { return words::datesAnswers(works(), format()).mid(kFirst); },
      "labour");
  Chart chart;
  chart.name = tr("People on each day");
  chart.draw = [this](QPainter& painter, const QRectF& box, std::optional<int> day) {
    drawings::drawPeople(painter, box, works(), format(), screenStyle(isDark()), day);
  };
  chart.at = [this](const QRectF& box, QPointF at) {
    return drawings::peopleDayAt(box, at, works(), format(), screenStyle(isDark()));
  };
  chart.reading = [this](int day) { return drawings::peopleReading(works(), day, format()); };
  chart.places = [this] { return int(works().days.size()); };
  addChart(QStringLiteral("people"), std::move(chart), kLeastChart_px);
  addTable("works.closed", tr("Days on which nobody works, besides the rest day of the week"), kFewRows)
      ->setNewRow([](core::Project& project, std::size_t row) {
        project.works->closed[row].from = project.works->start_date;
      });
  addTable("works.wishes", tr("Wishes for single tasks: dragging a bar makes one"), kFewRows)
      ->setChoices("works.wishes[].task", [this] {
        CellChoices all;
        for (const core::works::Task& task : works().schedule) {
          if (!task.is_mark) all << qMakePair(QString::fromStdString(task.id), words::taskName(task.id));
        }
        return all;
      });
}

void WorksPanel::makeCoatsPage() {
  QVBoxLayout* layout = addPage(tr("Coats in one go"));
  addAnswers(
      QStringLiteral("one_go"), [this] { return words::oneGoAnswers(works(), format()); }, "one_go");
  layout->addStretch();
}

void WorksPanel::makeFillingPage() {
  addPage(tr("First filling"));
  addAnswers(
      QStringLiteral("filling"),
      [this] {
        if (!works().filling) return QStringList{tr("There is no coat to fill after.")};
        const QStringList all = words::fillingAnswers(works(), format());
        return all.mid(0, 2) +
               all.mid(std::max<qsizetype>(2, all.size() - 2));  // the bands stand in the chart
      },
      "filling");
  const auto filling = [this]() -> const Filling& {
    static const Filling none;
    return works().filling ? *works().filling : none;
  };
  Chart chart;
  chart.name = tr("Water level and wet walls, day by day");
  chart.draw = [this, filling](QPainter& painter, const QRectF& box, std::optional<int> day) {
    drawings::drawFilling(painter, box, filling(), format(), screenStyle(isDark()), day);
  };
  chart.at = [this, filling](const QRectF& box, QPointF at) {
    return drawings::fillingDayAt(box, at, filling(), format(), screenStyle(isDark()));
  };
  chart.reading = [this, filling](int day) { return drawings::fillingReading(filling(), day, format()); };
  chart.places = [filling] { return int(filling().days.size()); };
  addChart(QStringLiteral("filling"), std::move(chart), kLeastChart_px);
}

void WorksPanel::makeWeatherPage() {
  addPage(tr("Weather"));
  addAnswers(
      QStringLiteral("window"),
      [this] {
        return works().window
                   ? words::windowAnswers(works(), format())
                   : QStringList{tr("Enter the weather in the tab Water, and the weeks stand here.")};
      },
      "weather");
  const auto window = [this]() -> const core::works::WeatherWindow& {
    static const core::works::WeatherWindow none;
    return works().window ? *works().window : none;
  };
  Chart chart;
  chart.name = tr("Chance of undisturbed coats in each week of the year");
  chart.draw = [this, window](QPainter& painter, const QRectF& box, std::optional<int> week) {
    drawings::drawWeatherWindow(painter, box, window(), format(), screenStyle(isDark()), week);
  };
  chart.at = [this, window](const QRectF& box, QPointF at) {
    return drawings::weekAt(box, at, window(), format(), screenStyle(isDark()));
  };
  chart.reading = [this, window](int week) { return drawings::weekReading(window(), week, format()); };
  chart.places = [window] { return int(window().weeks.size()); };
  addChart(QStringLiteral("window"), std::move(chart), kLeastChart_px);
  addButton(
      QStringLiteral("best_start"), tr("Start so that the coats fall in the best week"),
      [this] {
        return works().window && works().window->best_start != this->document().project().works->start_date;
      },
      [this] { moveToBestStart(); });
}

void WorksPanel::moveToBestStart() {
  document().change(tr("Best start"), [&](core::Project& project) {
    project.works->start_date = works().window->best_start;
    // wishes for days belong to the earlier dates
    for (core::TaskWish& wish : project.works->wishes) wish.not_before.reset();
    std::erase_if(project.works->wishes, [](const core::TaskWish& wish) { return !wish.people; });
  });
}

void WorksPanel::makeRecordsPage() {
  addPage(tr("Measured on site"));
  addAnswers(
      QStringLiteral("records"), [this] { return words::recordAnswers(document().plan(), format()); },
      "records");
  addButton(QStringLiteral("use_records"), tr("Change between the records and what is entered"), [this] {
    document().change(tr("Records in force"),
                      [](core::Project& project) { project.records.in_force = !project.records.in_force; });
  });
  addTable("records.batches", tr("Trial batches: mix one, put it on, measure what it covers"), kFewRows);
  addTable("records.work", tr("Work done and the person-days it took"), kFewRows);
  addTable("works.rates", tr("The district's own rates, person-days for each unit of work"), kFewRows)
      ->setChoices("works.rates[].work", rateChoices);
}

void WorksPanel::setFormatter(const Formatter& format) {
  controls_->setFormatter(format);
  PagedPanel::setFormatter(format);
}

void WorksPanel::refreshMore() {
  shifted_days_ = 0;
}

}  // namespace ui
