#include "ui/panels/task_controls.h"

#include "ui/document/document.h"
#include "ui/text/words.h"

#include <QDateEdit>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <algorithm>

namespace ui {

namespace {

using core::TaskWish;
using core::works::Day;

QDate qDate(Day day) {
  return {int(day.year()), int(unsigned(day.month())), int(unsigned(day.day()))};
}

Day dayFrom(QDate date) {
  return {std::chrono::year(date.year()), std::chrono::month(unsigned(date.month())),
          std::chrono::day(unsigned(date.day()))};
}

/// The wish for a task, made when there is none.
TaskWish& wishFor(core::Works& works, const std::string& task) {
  const auto found = std::ranges::find(works.wishes, task, &TaskWish::task);
  if (found != works.wishes.end()) return *found;
  works.wishes.push_back({task, {}, {}});
  return works.wishes.back();
}

int leastPeople() {
  return int(core::field("works.wishes[].people").least);
}
int mostPeople() {
  return int(core::field("works.wishes[].people").most);
}

}  // namespace

TaskControls::TaskControls(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      name_(new QLabel(this)),
      wishes_(new QWidget(this)),
      date_(new QDateEdit(this)),
      people_(new QSpinBox(this)),
      usual_(new QPushButton(tr("As usual"), this)) {
  name_->setObjectName(QStringLiteral("task.name"));
  date_->setObjectName(QStringLiteral("task.not_before"));
  date_->setCalendarPopup(true);
  date_->setAccessibleName(tr("The task starts on this day or later"));
  date_->setDateRange(QDate(2000, 1, 1), QDate(2199, 12, 31));
  people_->setObjectName(QStringLiteral("task.people"));
  people_->setAccessibleName(tr("People on the task"));
  people_->setRange(leastPeople(), mostPeople());
  people_->setKeyboardTracking(false);
  usual_->setObjectName(QStringLiteral("task.usual"));
  usual_->setToolTip(tr("Forget what was wished for this task"));
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* wishes = new QHBoxLayout(wishes_);
  wishes->setContentsMargins(0, 0, 0, 0);
  wishes->addWidget(new QLabel(tr("not before"), this));
  wishes->addWidget(date_);
  wishes->addWidget(new QLabel(tr("people"), this));
  wishes->addWidget(people_);
  wishes->addWidget(usual_);
  layout->addWidget(name_, 1);
  layout->addWidget(wishes_);
  connect(date_, &QDateEdit::dateChanged, this, [this](QDate date) {
    document_.change(tr("Not before"), [&](core::Project& project) {
      if (project.works) wishFor(*project.works, task_).not_before = dayFrom(date);
    });
  });
  connect(people_, &QSpinBox::valueChanged, this, [this](int people) {
    document_.change(tr("People on a task"), [&](core::Project& project) {
      if (project.works) wishFor(*project.works, task_).people = people;
    });
  });
  connect(usual_, &QPushButton::clicked, this, [this] { asUsual(document_, task_); });
  connect(&document_, &Document::projectChanged, this, &TaskControls::refresh);
  refresh();
}

void TaskControls::shift(Document& document, const core::works::Task& task, int days) {
  const Day wanted = core::works::addDays(task.start, days);
  document.change(tr("Move %1").arg(words::taskName(task.id)), [&](core::Project& project) {
    if (project.works) wishFor(*project.works, task.id).not_before = wanted;
  });
}

void TaskControls::addPeople(Document& document, const core::works::Task& task, int more) {
  const int people = std::clamp(task.crew + more, leastPeople(), mostPeople());
  if (task.crew == 0) return;
  document.change(tr("People on a task"), [&](core::Project& project) {
    if (project.works) wishFor(*project.works, task.id).people = people;
  });
}

void TaskControls::asUsual(Document& document, const std::string& task) {
  document.change(tr("Task as usual"), [&](core::Project& project) {
    if (project.works)
      std::erase_if(project.works->wishes, [&](const TaskWish& w) { return w.task == task; });
  });
}

void TaskControls::choose(const std::string& task) {
  task_ = task;
  refresh();
}

void TaskControls::setFormatter(const Formatter& format) {
  setLocale(format.locale());
  date_->setLocale(format.locale());
  people_->setLocale(format.locale());
  refresh();
}

void TaskControls::refresh() {
  const auto& works = document_.plan().works;
  const core::works::Task* task = works ? core::works::findTask(*works, task_) : nullptr;
  const bool can = task != nullptr && !task->is_mark;
  date_->setEnabled(can);
  people_->setEnabled(can && task->crew > 0);
  usual_->setEnabled(can && std::ranges::any_of(document_.project().works->wishes,
                                                [&](const TaskWish& w) { return w.task == task_; }));
  name_->setText(can ? words::taskName(task_) : tr("Choose a bar to move it or to give it more people."));
  wishes_->setVisible(can);
  if (!can) return;
  const QSignalBlocker quiet_date(date_);
  const QSignalBlocker quiet_people(people_);
  date_->setDate(qDate(task->not_before.value_or(task->start)));
  if (task->crew > 0) people_->setValue(task->crew);
}

}  // namespace ui
