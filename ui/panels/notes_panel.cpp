#include "ui/panels/notes_panel.h"

#include "core/project/fields.h"
#include "core/site/field_tests.h"
#include "ui/document/document.h"
#include "ui/text/notes_words.h"
#include "ui/text/words.h"
#include "ui/widgets/field_row.h"
#include "ui/widgets/row_table.h"

#include <QVBoxLayout>

namespace ui {

namespace {

constexpr int kRows = 6;
constexpr double kNextLayer_m = 0.5;

/// Another editor of the same field stands elsewhere in the window and keeps the plain name.
void renameParts(QWidget* parts) {
  for (QObject* part : parts->findChildren<QObject*>()) {
    const QString name = part->objectName();
    if (name.startsWith(QLatin1String("water.")) || name.startsWith(QLatin1String("delivery.")))
      part->setObjectName(QStringLiteral("notes.") + name);
  }
}

/// A new layer goes on from the last one, in the same test pit, as far as there is room.
void goOnDown(core::Project& project, std::size_t row) {
  auto& layers = project.notes.pit_layers;
  if (row == 0) return;
  const core::PitLayer& last = layers[row - 1];
  const double deepest = core::field("notes.pit_layers[].to_m").most;
  if (last.to_m + kNextLayer_m > deepest) return;
  layers[row].pit = last.pit;
  layers[row].from_m = last.to_m;
  layers[row].to_m = last.to_m + kNextLayer_m;
}

}  // namespace

NotesPanel::NotesPanel(Document& document, QWidget* parent)
    : PagedPanel(document, QStringLiteral("notes_panel"), parent) {
  makeShortPage();
  makeFlowPage();
  makeSoilPages();
  makeSlopePage();
  makeLeakPage();
  refresh();
}

const core::Plan& NotesPanel::plan() const {
  return document().plan();
}

void NotesPanel::makeShortPage() {
  QVBoxLayout* layout = addPage(tr("In short"));
  addAnswers(QStringLiteral("short"),
             [this] { return words::notesAnswers(document().project(), plan(), format()); });
  addButton(
      QStringLiteral("adopt"), tr("Put these in place of what was entered"), [this] { return wouldChange(); },
      [this] { putInPlace(); });
  layout->addStretch();
}

bool NotesPanel::wouldChange() const {
  return core::site::adopted(document().project()) != document().project();
}

void NotesPanel::putInPlace() {
  document().change(tr("Put the notes in place"),
                    [](core::Project& project) { project = core::site::adopted(project); });
}

void NotesPanel::makeFlowPage() {
  QVBoxLayout* layout = addPage(tr("Flow"));
  addAnswers(QStringLiteral("flow"), [this] {
    if (!document().project().water) return QStringList{tr("Ask in the tab Water whether the water lasts.")};
    const QString summary = words::readingsSummary(document().project(), format());
    return QStringList{summary.isEmpty() ? tr("No flow measured yet.") : summary};
  });
  renameParts(addTable("water.source.readings",
                       tr("Bucket and watch: time how long a vessel takes to fill, more than three times"),
                       kRows));
  layout->addStretch();
}

void NotesPanel::makeSoilPages() {
  QVBoxLayout* layout = addPage(tr("Jar"));
  addAnswers(
      QStringLiteral("jars"), [this] { return words::jarAnswers(plan(), format()); }, "notes");
  addTable("notes.jars", tr("Layers of soil settled in a jar, read with a ruler"), kRows);
  layout->addStretch();
  layout = addPage(tr("Ball and ribbon"));
  addAnswers(QStringLiteral("feel"), [this] { return words::feelAnswers(plan(), format()); });
  addTable("notes.feel", tr("Moist soil squeezed to a ball and pushed to a ribbon"), kRows);
  layout->addStretch();
  layout = addPage(tr("Test pits"));
  addAnswers(QStringLiteral("pits"), [this] { return words::pitAnswers(plan(), format()); });
  addTable("notes.pit_layers", tr("Layers of the test pits, from the ground down"), kRows)
      ->setNewRow(goOnDown);
  layout->addStretch();
}

void NotesPanel::makeSlopePage() {
  QVBoxLayout* layout = addPage(tr("Slope"));
  addAnswers(QStringLiteral("slope"),
             [this] { return words::slopeAnswers(document().project(), plan(), format()); });
  addTable("notes.slope", tr("Settings of the hose level, one after the other down the fall"), kRows);
  layout->addStretch();
}

void NotesPanel::makeLeakPage() {
  QVBoxLayout* layout = addPage(tr("Leak"));
  addAnswers(QStringLiteral("leak"), [this] {
    if (!plan().delivery) return QStringList{tr("Plan pipes and overflow in the tab Pipes first.")};
    return words::leakAnswers(*plan().delivery, format());
  });
  addLeakRows(layout);
  layout->addStretch();
}

void NotesPanel::addLeakRows(QVBoxLayout* layout) {
  for (const core::Field& field : core::fields()) {
    if (!field.id.starts_with("delivery.leak_test.")) continue;
    FieldRow* row = makeFieldRow(document(), field, 0, this);
    renameParts(row);
    layout->addWidget(row);
    leak_rows_.push_back(row);
  }
}

void NotesPanel::setFormatter(const Formatter& format) {
  for (FieldRow* row : leak_rows_) row->setFormatter(format);
  PagedPanel::setFormatter(format);
}

}  // namespace ui
