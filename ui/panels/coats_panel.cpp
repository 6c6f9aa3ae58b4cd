#include "ui/panels/coats_panel.h"

#include "ui/document/document.h"
#include "ui/text/words.h"
#include "ui/widgets/explained.h"
#include "ui/widgets/number_row.h"
#include "ui/widgets/theme.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr std::string_view kRow = "lining.coats[]";
constexpr QChar kMinus(0x2212);
constexpr double kThinSlider_m = 0.01;
constexpr double kThickSlider_m = 0.15;

QLabel* heading(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  QFont bold = label->font();
  bold.setBold(true);
  label->setFont(bold);
  return label;
}

}  // namespace

CoatsPanel::CoatsPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      coats_(new QVBoxLayout),
      add_(new QPushButton(tr("Add a coat"), this)),
      problem_(new QLabel(this)),
      explained_(new Explained(document, "lining", this)) {
  add_->setObjectName(QStringLiteral("coats.add"));
  add_->setToolTip(tr("Adds a coat on the water side, like the last one"));
  problem_->setObjectName(QStringLiteral("coats.problem"));
  setTone(problem_, Tone::problem);
  problem_->setWordWrap(true);
  problem_->hide();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addLayout(coats_);
  layout->addWidget(problem_);
  layout->addWidget(add_, 0, Qt::AlignLeft);
  layout->addWidget(explained_);
  connect(add_, &QPushButton::clicked, this, &CoatsPanel::addCoat);
  connect(&document_, &Document::projectChanged, this, &CoatsPanel::refresh);
  rebuild();
}

void CoatsPanel::setFormatter(const Formatter& format) {
  format_ = format;
  for (FieldRow* row : rows_) row->setFormatter(format);
  explained_->setFormatter(format);
}

void CoatsPanel::refresh() {
  if (groups_.size() != document_.project().lining.coats.size()) rebuild();
  say(QString());
}

void CoatsPanel::rebuild() {
  for (QWidget* group : groups_) {
    group->hide();
    group->setParent(nullptr);
    group->deleteLater();
  }
  groups_.clear();
  rows_.clear();
  for (std::size_t coat = 0; coat < document_.project().lining.coats.size(); ++coat) {
    groups_.push_back(makeCoat(coat));
    coats_->addWidget(groups_.back());
  }
  add_->setEnabled(groups_.size() < core::kMostCoats);
}

QWidget* CoatsPanel::makeCoat(std::size_t coat) {
  auto* group = new QWidget(this);
  auto* layout = new QVBoxLayout(group);
  layout->setContentsMargins(0, 4, 0, 2);
  layout->setSpacing(5);
  auto* top = new QHBoxLayout;
  const QString name = words::layerName("coat_" + std::to_string(coat + 1));
  top->addWidget(heading(coat == 0 ? tr("%1, against the earth").arg(name) : name, group), 1);
  auto* remove = new QToolButton(group);
  remove->setObjectName(QStringLiteral("coats.remove[%1]").arg(coat));
  remove->setText(QString(kMinus));
  remove->setAutoRaise(true);
  remove->setToolTip(tr("Take out %1").arg(name));
  remove->setAccessibleName(remove->toolTip());
  remove->setEnabled(document_.project().lining.coats.size() > 1);
  connect(remove, &QToolButton::clicked, this, [this, coat] { removeCoat(coat); });
  top->addWidget(remove);
  layout->addLayout(top);
  for (const core::Field& field : core::fields()) {
    if (!field.id.starts_with(kRow)) continue;
    FieldRow* row = makeFieldRow(document_, field, coat, group);
    if (auto* number = qobject_cast<NumberRow*>(row); number != nullptr && field.unit == core::Unit::metre)
      number->addSlider(kThinSlider_m, kThickSlider_m);
    row->setFormatter(format_);
    layout->addWidget(row);
    rows_.push_back(row);
  }
  return group;
}

void CoatsPanel::addCoat() {
  const core::Problems problems = document_.change(tr("Add a coat"), [](core::Project& project) {
    project.lining.coats.push_back(project.lining.coats.back());
  });
  if (!problems.empty()) say(words::problemText(problems.front(), format_));
}

void CoatsPanel::removeCoat(std::size_t coat) {
  const core::Problems problems = document_.change(tr("Take out a coat"), [coat](core::Project& project) {
    project.lining.coats.erase(project.lining.coats.begin() + std::ptrdiff_t(coat));
  });
  if (!problems.empty()) say(words::problemText(problems.front(), format_));
}

void CoatsPanel::say(const QString& text) {
  problem_->setText(text);
  problem_->setVisible(!text.isEmpty());
}

}  // namespace ui
