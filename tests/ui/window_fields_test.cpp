#include "core/exchange/project_file.h"
#include "ui/panels/editor_panel.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"
#include "window_support.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSlider>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>
#include <functional>
#include <set>

#include <catch2/catch.hpp>

using namespace window_test;
using core::Field;
using core::FieldKind;
using core::FieldValue;

namespace {

QString pathText(const Field& field, std::size_t row) {
  return QString::fromStdString(core::pathOf(field, row));
}

const Field& fieldAt(const char* id) {
  return core::field(id);
}

/// A value near the present one that the document would take, other than the present one.
std::optional<double> otherNumber(const ui::Document& document, const Field& field, std::size_t row) {
  const FieldValue now = field.get(document.project(), row);
  const double start =
      std::holds_alternative<double>(now) ? std::get<double>(now) : std::max(0.0, field.least);
  for (const double steps : {1.0, -1.0, 2.0, -2.0, 5.0}) {
    const double number = start + steps * field.step;
    if (FieldValue(number) != now && document.problemsOf(field, row, number).empty()) return number;
  }
  return std::nullopt;
}

void typeNumber(ui::MainWindow& window, const Field& field, std::size_t row) {
  const std::optional<double> number = otherNumber(window.document(), field, row);
  REQUIRE(number.has_value());
  const ui::Formatter format(QLocale(QStringLiteral("en_GB")));
  type(control(window, pathText(field, row)), format.number(*number, field.unit, field.decimals));
  const FieldValue taken = field.get(window.document().project(), row);
  REQUIRE(std::holds_alternative<double>(taken));
  CHECK(std::abs(std::get<double>(taken) - *number) <=
        format.shownStep(*number, field.unit, field.decimals) / 2 + 1e-12);
}

void chooseAnother(ui::MainWindow& window, const Field& field, std::size_t row) {
  auto& box = control<QComboBox>(window, pathText(field, row));
  QTest::keyClick(&box, box.currentIndex() + 1 < box.count() ? Qt::Key_Down : Qt::Key_Up);
}

/// A short text with a letter outside of ASCII, other than the present one.
QString otherText(const FieldValue& now) {
  const QString text = QStringLiteral("Öl");
  return now == FieldValue(text.toStdString()) ? QStringLiteral("Rú") : text;
}

bool standsInTable(const Field& field) {
  const core::List* list = core::listOf(field);
  return list != nullptr && list->id != "lining.coats";
}

int columnOf(const Field& field) {
  int column = 0;
  for (const Field& other : core::fields()) {
    if (&other == &field) return column;
    column += core::listOf(other) == core::listOf(field) ? 1 : 0;
  }
  return -1;
}

QTableWidget& tableOf(ui::MainWindow& window, const Field& field) {
  const std::string_view id = core::listOf(field)->id;
  return control<QTableWidget>(window, QString::fromUtf8(id.data(), qsizetype(id.size())));
}

/// A text for a cell of a table, other than the present one.
QString otherCellText(const ui::Document& document, const Field& field, std::size_t row) {
  const FieldValue now = field.get(document.project(), row);
  if (field.id == "water.beds[].crop")
    return ui::words::cropName(now == FieldValue("garlic") ? "potato" : "garlic");
  if (field.id == "works.rates[].work")
    return ui::words::rateName(now == FieldValue("ramming") ? "fence" : "ramming");
  if (field.id == "prices.items[].item") return otherText(now) + QString::number(row);  // each its own
  if (field.kind == FieldKind::text) return otherText(now);
  if (field.kind == FieldKind::date)
    return now == FieldValue("2027-03-04") ? QStringLiteral("2028-02-29") : QStringLiteral("2027-03-04");
  if (field.kind == FieldKind::choice) {
    const bool is_first = now == FieldValue(std::string(field.choices[0]));
    return ui::words::choiceLabel(field.id, field.choices[is_first ? 1 : 0]);
  }
  if (field.kind == FieldKind::flag)
    return now == FieldValue(true) ? QStringLiteral("no") : QStringLiteral("yes");
  const ui::Formatter format(QLocale(QStringLiteral("en_GB")));
  return format.number(otherNumber(document, field, row).value(), field.unit, field.decimals);
}

void editThroughWidget(ui::MainWindow& window, const Field& field, std::size_t row) {
  if (standsInTable(field)) {
    tableOf(window, field)
        .item(int(row), columnOf(field))
        ->setText(otherCellText(window.document(), field, row));
    return;
  }
  switch (field.kind) {
    case FieldKind::number:
    case FieldKind::whole:
      return typeNumber(window, field, row);
    case FieldKind::choice:
      return chooseAnother(window, field, row);
    case FieldKind::flag:
      QTest::keyClick(&control(window, pathText(field, row)), Qt::Key_Space);
      return;
    case FieldKind::date:
      if (field.nullable) return type(control(window, pathText(field, row)), QStringLiteral("2027-03-04"));
      QTest::keyClick(&control(window, pathText(field, row)), Qt::Key_Up);
      return;
    case FieldKind::text:
      type(control(window, pathText(field, row)), otherText(field.get(window.document().project(), row)));
  }
}

/// Edits every field that the present shape uses and that was not edited before, but what decides which
/// fields are used.
void walk(ui::MainWindow& window, std::set<std::string>& edited) {
  for (const Field& field : core::fields()) {
    if (edited.contains(std::string(field.id)) || !field.applies(window.document().project())) continue;
    for (std::size_t row = 0; row < core::rowCount(field, window.document().project()); ++row) {
      INFO(core::pathOf(field, row));
      const FieldValue before = field.get(window.document().project(), row);
      editThroughWidget(window, field, row);
      CHECK(field.get(window.document().project(), row) != before);
      edited.insert(std::string(field.id));
    }
  }
}

/// What else decides which fields are used.
std::vector<std::function<void(core::Project&)>> otherChoices() {
  return {[](core::Project& p) { p.site.platform.level_by = core::PlatformLevel::given; },
          [](core::Project& p) { p.delivery->overflow.kind = core::OverflowKind::notch; },
          [](core::Project& p) {
            p.site.ground.kind = core::GroundKind::spot_heights;
            p.site.ground.points_m = {{-30, -30, 0}, {30, -30, 0}, {30, 30, 4}, {-30, 30, 4}};
          }};
}

}  // namespace

TEST_CASE(
    "Every field can be edited through its widget, undone and redone to the byte, saved and opened again") {
  const auto window = makeWindow();
  window->editor().openAll();
  const std::string at_first = bytes(*window);
  control<QAbstractButton>(*window, QStringLiteral("water.crops.add")).click();
  window->document().change(QStringLiteral("measured"), [](core::Project& p) {
    for (core::Pipe* pipe : {&p.delivery->source.pipe, &p.delivery->field.pipe}) pipe->bore_mm = 27;
    p.works->closed.resize(1);
    p.works->wishes = {{"fence", {}, 3}};
    p.works->rates = {{"clearing", 0.1, 0.2, 0.9}};
    p.records.batches.resize(1);
    p.records.work.resize(1);
    p.ranges.inputs.resize(1);
    p.notes.jars.resize(1);
    p.notes.feel.resize(1);
    p.notes.pit_layers.resize(1);
    p.notes.slope.resize(1);
  });
  std::set<std::string> edited{"tank.shape", "site.ground.kind"};
  walk(*window, edited);
  auto& shape = control<QComboBox>(*window, QStringLiteral("tank.shape"));
  for (int k = 1; k < shape.count(); ++k) {
    QTest::keyClick(&shape, Qt::Key_Down);
    INFO(shape.currentText().toStdString());
    CHECK(int(window->document().project().tank.shape) == k);
    walk(*window, edited);
  }
  for (const auto& choose : otherChoices()) {
    REQUIRE(window->document().change(QStringLiteral("another choice"), choose).empty());
    walk(*window, edited);
  }
  CHECK(edited.size() == core::fields().size());
  const std::string at_last = bytes(*window);
  CHECK(at_last != at_first);

  undoAll(*window);
  CHECK(bytes(*window) == at_first);
  redoAll(*window);
  CHECK(bytes(*window) == at_last);

  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("walk.tankwright"));
  REQUIRE(window->saveFile(path));
  CHECK_FALSE(window->isWindowModified());
  const core::Project saved = window->document().project();
  REQUIRE(window->openFile(path));
  CHECK(window->document().project() == saved);
}

TEST_CASE("Every field has one editor with a name for screen readers and a tip with its range") {
  const auto window = makeWindow();
  for (const Field& field : core::fields()) {
    const QString path = pathText(field, 0);
    INFO(path.toStdString());
    if (standsInTable(field)) {
      const QTableWidget& table = tableOf(*window, field);
      CHECK_FALSE(table.accessibleName().isEmpty());
      CHECK_FALSE(table.horizontalHeaderItem(columnOf(field))->toolTip().isEmpty());
      continue;
    }
    REQUIRE(window->findChildren<QWidget*>(path).size() == 1);
    const QWidget& editor = control(*window, path);
    CHECK_FALSE(editor.accessibleName().isEmpty());
    CHECK_FALSE(editor.toolTip().isEmpty());
  }
}

TEST_CASE("Wrong text shows a message, leaves the project as it was, and Escape brings the good value back") {
  const auto window = makeWindow();
  auto& depth = control<QLineEdit>(*window, QStringLiteral("tank.depth_m"));
  auto& problem = control<QLabel>(*window, QStringLiteral("tank.depth_m.problem"));
  const QString good = depth.text();
  const std::string before = bytes(*window);
  for (const char* wrong : {"", "deep", "29", "-1", "0", "1.5 or so"}) {
    INFO(wrong);
    type(depth, QString::fromLatin1(wrong));
    CHECK(depth.text() == QLatin1String(wrong));
    CHECK_FALSE(problem.isHidden());
    CHECK_FALSE(problem.text().isEmpty());
    CHECK(bytes(*window) == before);
    CHECK_FALSE(window->document().undoStack()->canUndo());
  }
  type(depth, QStringLiteral("99"));
  QTest::keyClick(&depth, Qt::Key_Escape);
  CHECK(depth.text() == good);
  CHECK(problem.isHidden());
}

TEST_CASE(
    "A value that clashes with another field is refused beside its own editor and taken once the other is "
    "mended") {
  const auto window = makeWindow();
  auto& freeboard = control<QLineEdit>(*window, QStringLiteral("tank.freeboard_m"));
  auto& problem = control<QLabel>(*window, QStringLiteral("tank.freeboard_m.problem"));
  type(control(*window, QStringLiteral("tank.depth_m")), QStringLiteral("0.6"));
  REQUIRE(window->document().project().tank.depth_m == 0.6);
  const double before = window->document().project().tank.freeboard_m;
  type(freeboard, QStringLiteral("0.9"));
  CHECK(window->document().project().tank.freeboard_m == before);
  CHECK_FALSE(problem.isHidden());
  type(control(*window, QStringLiteral("tank.depth_m")), QStringLiteral("2"));
  CHECK(freeboard.text() == QStringLiteral("0.9"));
  QTest::keyClick(&freeboard, Qt::Key_Return);
  CHECK(window->document().project().tank.freeboard_m == 0.9);
  CHECK(problem.isHidden());
}

TEST_CASE("A burst of typing and a drag of a slider are each one undo step that names the field") {
  const auto window = makeWindow();
  QUndoStack& undo = *window->document().undoStack();
  type(control(*window, QStringLiteral("tank.length_m")), QStringLiteral("12.5"));
  CHECK(window->document().project().tank.length_m == 12.5);
  CHECK(undo.count() == 1);
  CHECK(undo.undoText() == control<QLineEdit>(*window, QStringLiteral("tank.length_m")).accessibleName());
  auto& slider = control<QSlider>(*window, QStringLiteral("tank.width_m.slider"));
  slider.setSliderDown(true);
  for (int k = 0; k < 5; ++k) slider.setSliderPosition(slider.value() + 1);
  slider.setSliderDown(false);
  CHECK(undo.count() == 2);
  undo.undo();
  undo.undo();
  CHECK_FALSE(undo.canUndo());
}

TEST_CASE("Control and Z undo the document while a text editor has the focus") {
  const auto window = makeWindow();
  window->activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(window.get()));
  const std::string before = bytes(*window);
  auto& length = control<QLineEdit>(*window, QStringLiteral("tank.length_m"));
  const QString good = length.text();
  length.setFocus();
  type(length, QStringLiteral("8.25"));
  REQUIRE(window->document().project().tank.length_m == 8.25);
  window->document().edit(fieldAt("tank.depth_m"), 0, 1.9);
  QTest::keyClick(&length, Qt::Key_Z, Qt::ControlModifier);
  CHECK(window->document().project().tank.depth_m != 1.9);
  CHECK(window->document().project().tank.length_m == 8.25);
  QTest::keyClick(&length, Qt::Key_Z, Qt::ControlModifier);
  CHECK(bytes(*window) == before);
  CHECK(length.text() == good);
  QTest::keyClick(&length, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  CHECK(window->document().project().tank.length_m == 8.25);
}

TEST_CASE("Arrow keys step a number and dragging its name scrubs it") {
  const auto window = makeWindow();
  const double before = window->document().project().tank.depth_m;
  QTest::keyClick(&control(*window, QStringLiteral("tank.depth_m")), Qt::Key_Up);
  CHECK(window->document().project().tank.depth_m == Approx(before + fieldAt("tank.depth_m").step));
  auto& label = control(*window, QStringLiteral("tank.depth_m.label"));
  const QPoint from(5, 5);
  QTest::mousePress(&label, Qt::LeftButton, {}, from);
  QTest::mouseMove(&label, from + QPoint(40, 0));
  QTest::mouseRelease(&label, Qt::LeftButton, {}, from + QPoint(40, 0));
  CHECK(window->document().project().tank.depth_m > before + 2 * fieldAt("tank.depth_m").step);
}

TEST_CASE(
    "Changing units, digits and colours and looking at every tab keeps the project's bytes and the saved "
    "state") {
  const auto window = makeWindow();
  const std::string before = bytes(*window);
  for (const ui::UnitSystem units : {ui::UnitSystem::feet_inches, ui::UnitSystem::metric}) {
    window->setUnits(units);
    for (const char* locale : {"de_DE", "ne_NP", "en_GB"}) {
      window->setNumbers(QLocale(QLatin1String(locale)));
      for (const char* name : {"tank.length_m", "lining.stone_bed_m", "site.clay_percent"}) {
        auto& editor = control<QLineEdit>(*window, QLatin1String(name));
        editor.setFocus();
        QTest::keyClick(&editor, Qt::Key_Return);
        editor.clearFocus();
      }
    }
  }
  for (const ui::Theme theme : {ui::Theme::dark, ui::Theme::light}) window->setTheme(theme);
  CHECK(bytes(*window) == before);
  CHECK_FALSE(window->isWindowModified());
}

TEST_CASE("Typed feet and inches and local digits mean the same length") {
  const auto window = makeWindow();
  auto& length = control<QLineEdit>(*window, QStringLiteral("tank.length_m"));
  window->setUnits(ui::UnitSystem::feet_inches);
  type(length, QStringLiteral("20' 6\""));
  // the international foot is 0.3048 m exactly (NIST Special Publication 811, appendix B)
  CHECK(window->document().project().tank.length_m == Approx(20.5 * 0.3048));
  window->setUnits(ui::UnitSystem::metric);
  window->setNumbers(QLocale(QStringLiteral("ne_NP")));
  type(length, QString::fromUtf8("७.५"));
  CHECK(window->document().project().tank.length_m == 7.5);
  window->setNumbers(QLocale(QStringLiteral("de_DE")));
  type(length, QStringLiteral("6,25"));
  CHECK(window->document().project().tank.length_m == 6.25);
}

TEST_CASE("Coats can be added and taken out, each a step of undo") {
  const auto window = makeWindow();
  const std::string before = bytes(*window);
  const std::size_t coats = window->document().project().lining.coats.size();
  QTest::mouseClick(&control(*window, QStringLiteral("coats.add")), Qt::LeftButton);
  REQUIRE(window->document().project().lining.coats.size() == coats + 1);
  type(control(*window, QStringLiteral("lining.coats[%1].thickness_m").arg(coats)), QStringLiteral("0.02"));
  CHECK(window->document().project().lining.coats.back().thickness_m == 0.02);
  QTest::mouseClick(&control(*window, QStringLiteral("coats.remove[0]")), Qt::LeftButton);
  CHECK(window->document().project().lining.coats.size() == coats);
  undoAll(*window);
  CHECK(bytes(*window) == before);
}

TEST_CASE("A polygon's corners can be typed; a list that is not convex stays to be seen and is not taken") {
  const auto window = makeWindow();
  window->document().edit(fieldAt("tank.shape"), 0, std::string("polygon"));
  auto& table = control<QTableWidget>(*window, QStringLiteral("tank.outline_m"));
  auto& problem = control<QLabel>(*window, QStringLiteral("tank.outline_m.problem"));
  REQUIRE(table.rowCount() == int(window->document().project().tank.outline_m.size()));
  const double x = window->document().project().tank.outline_m[1].x();
  table.item(1, 0)->setText(QString::number(x + 0.5));
  CHECK(window->document().project().tank.outline_m[1].x() == x + 0.5);
  const std::string good = bytes(*window);
  table.item(1, 0)->setText(QStringLiteral("-50"));
  CHECK(bytes(*window) == good);
  CHECK_FALSE(problem.isHidden());
  CHECK(table.item(1, 0)->text() == QStringLiteral("-50"));
  QTest::keyClick(&table, Qt::Key_Escape);
  CHECK(problem.isHidden());
  CHECK(bytes(*window) == good);
  table.item(1, 0)->setText(QStringLiteral("900000"));  // farther than a project file may say
  CHECK(bytes(*window) == good);
  CHECK_FALSE(problem.isHidden());
}

TEST_CASE("The answers to the customary bill change the project only when their buttons are pressed") {
  const auto window = makeWindow();
  window->document().change(QStringLiteral("bill"),
                            [](core::Project& project) { project.lining.customary.cement_kg = 500; });
  const auto& comparison = window->document().plan().quantities.customary;
  REQUIRE(comparison.has_value());
  REQUIRE(comparison->cement.has_value());
  const std::vector<double> wanted = comparison->cement->thickness_m;
  REQUIRE_FALSE(wanted.empty());
  const std::string before = bytes(*window);
  control<QAbstractButton>(*window, QStringLiteral("bill.use_thickness")).click();
  for (std::size_t k = 0; k < wanted.size(); ++k)
    CHECK(window->document().project().lining.coats[k].thickness_m == wanted[k]);
  window->document().undoStack()->undo();
  CHECK(bytes(*window) == before);
}
