#include "ui/panels/editor_panel.h"

#include "ui/document/document.h"
#include "ui/panels/coats_panel.h"
#include "ui/panels/editor_sections.h"
#include "ui/panels/point_lists.h"
#include "ui/widgets/number_row.h"
#include "ui/widgets/point_table.h"
#include "ui/widgets/section.h"

#include <QComboBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

namespace ui {

namespace {

constexpr int kWidth = 312;
constexpr int kMargin = 60;

}  // namespace

EditorPanel::EditorPanel(Document& document, QWidget* parent) : QScrollArea(parent), document_(document) {
  setObjectName(QStringLiteral("editor_panel"));
  setFrameShape(QFrame::NoFrame);
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFixedWidth(kWidth);
  auto* inside = new QWidget(this);
  folds_ = new QVBoxLayout(inside);
  folds_->setContentsMargins(6, 6, 8, 6);
  folds_->setSpacing(4);
  for (const EditorSection& section : editorSections()) addSection(section);
  connect(&document_, &Document::projectChanged, this, &EditorPanel::hideEmptySections);
  hideEmptySections();
  folds_->addStretch();
  setWidget(inside);
}

void EditorPanel::addSection(const EditorSection& section) {
  const QString id = QString::fromLatin1(section.id);
  auto* fold = new Section(id, titleOf(section), this);
  sections_.push_back(fold);
  folds_->addWidget(fold);
  for (const EditorField& field : section.fields)
    addRow(fold, core::field(field.id), field.slider.least, field.slider.most);
  addLists(fold, id);
  fold->setOpen(section.open);
}

void EditorPanel::addRow(Section* section, const core::Field& field, double slider_least,
                         double slider_most) {
  FieldRow* row = makeFieldRow(document_, field, 0, section);
  if (auto* number = qobject_cast<NumberRow*>(row); number != nullptr && slider_most > slider_least)
    number->addSlider(slider_least, slider_most);
  section->rows()->addWidget(row);
  rows_.push_back(row);
}

/// A fold whose fields are all of a part that the project does not have is not shown, unless it holds the
/// button that adds the part.
void EditorPanel::hideEmptySections() {
  for (Section* section : sections_) {
    const auto is_used = [&](const FieldRow* row) {
      return section->isAncestorOf(row) && row->field().applies(document_.project());
    };
    section->setVisible(section->isAncestorOf(plan_works_) || std::ranges::any_of(rows_, is_used));
  }
}

void EditorPanel::addLists(Section* section, const QString& id) {
  if (id == QLatin1String("tank")) tables_.push_back(makeOutlineTable(document_, section));
  if (id == QLatin1String("tank")) section->rows()->addWidget(tables_.back());
  if (id == QLatin1String("ground")) askForSurveyWhenChosen();
  if (id == QLatin1String("works")) addWorksButton(section);
  if (id != QLatin1String("lining")) return;
  coats_ = new CoatsPanel(document_, section);
  section->rows()->addWidget(coats_);
}

void EditorPanel::askForSurveyWhenChosen() {
  const auto* box = findChild<QComboBox*>(QStringLiteral("site.ground.kind"));
  connect(box, &QComboBox::activated, this, [this, box] {
    const bool has_survey = document_.project().site.ground.points_m.size() >= core::kLeastSpotHeights;
    if (box->currentData() == QStringLiteral("spot_heights") && !has_survey) emit surveyWanted();
  });
}

void EditorPanel::addWorksButton(Section* section) {
  plan_works_ = new QPushButton(tr("Plan people and dates"), section);
  plan_works_->setObjectName(QStringLiteral("works.add"));
  section->rows()->addWidget(plan_works_);
  connect(plan_works_, &QPushButton::clicked, this, [this] {
    document_.change(plan_works_->text(), [](core::Project& project) { project.works.emplace(); });
  });
  const auto refresh = [this] { plan_works_->setVisible(!document_.project().works.has_value()); };
  connect(&document_, &Document::projectChanged, this, refresh);
  refresh();
}

void EditorPanel::setFormatter(const Formatter& format) {
  for (FieldRow* row : rows_) {
    row->setFormatter(format);
    row->refresh();
  }
  for (PointTable* table : tables_) table->setFormatter(format);
  coats_->setFormatter(format);
}

void EditorPanel::openAll() {
  for (Section* section : sections_) section->setOpen(true);
}

FieldRow* EditorPanel::find(const QString& field) const {
  std::vector<FieldRow*> all = rows_;
  all.insert(all.end(), coats_->rows().begin(), coats_->rows().end());
  for (FieldRow* row : all) {
    const std::string_view id = row->field().id;
    if (row->path() == field || QString::fromUtf8(id.data(), qsizetype(id.size())) == field) return row;
  }
  return nullptr;
}

bool EditorPanel::goTo(const QString& field) {
  FieldRow* row = find(field);
  if (row == nullptr) return false;
  for (Section* section : sections_) {
    if (section->isAncestorOf(row)) section->setOpen(true);
  }
  ensureWidgetVisible(row, 0, kMargin);
  row->editor()->setFocus(Qt::OtherFocusReason);
  return true;
}

}  // namespace ui
