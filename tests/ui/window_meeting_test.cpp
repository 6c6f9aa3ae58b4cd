#include "ui/group/group_view.h"
#include "ui/panels/sheets_panel.h"
#include "ui/panels/stage_bar.h"
#include "ui/text/languages.h"
#include "ui/view3d/pit_view.h"
#include "window_support.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QListWidget>
#include <QMenuBar>
#include <QPushButton>
#include <QSlider>
#include <QTabWidget>
#include <QTest>
#include <QToolButton>
#include <QUndoStack>
#include <algorithm>

using namespace window_test;
using ui::group::GroupView;

namespace {

GroupView& openGroupView(ui::MainWindow& window) {
  window.findChild<QAction*>(QStringLiteral("view.group"))->trigger();
  auto& view = control<GroupView>(window, QStringLiteral("group_view"));
  REQUIRE(waitFor([&] { return view.isVisible(); }));
  view.resize(1024, 768);
  view.activateWindow();
  waitFor([&] { return view.isActiveWindow(); });
  return view;
}

QString told(GroupView& view) {
  return control<QLabel>(view, QStringLiteral("group.told")).text();
}

void backToEnglish() {
  ui::useLanguage(QLocale(QStringLiteral("en_GB")));
  QGuiApplication::setLayoutDirection(Qt::LeftToRight);
}

}  // namespace

TEST_CASE("The group view fits a borrowed projector and has no text under 24 point") {
  const auto window = makeWindow();
  GroupView& view = openGroupView(*window);
  for (const auto mode :
       {GroupView::Mode::size, GroupView::Mode::options, GroupView::Mode::building, GroupView::Mode::year}) {
    view.setMode(mode);
    INFO(int(mode));
    CHECK(view.mode() == mode);
    CHECK(view.minimumSizeHint().width() <= 1024);
    CHECK(view.minimumSizeHint().height() <= 768);
    int texts = 0;
    for (const QWidget* widget : view.findChildren<QWidget*>()) {
      const auto* label = qobject_cast<const QLabel*>(widget);
      const auto* button = qobject_cast<const QAbstractButton*>(widget);
      if ((label == nullptr || label->text().isEmpty()) && button == nullptr) continue;
      INFO(widget->objectName().toStdString());
      CHECK(widget->font().pointSizeF() >= 24);
      ++texts;
    }
    CHECK(texts > 10);
  }
}

TEST_CASE("The group view fits a borrowed projector in every language, and no text of it is cut off") {
  for (const QString& language : ui::languages()) {
    const auto window = makeWindow();
    window->setLanguage(ui::localeOf(language));
    GroupView& view = openGroupView(*window);
    INFO(language.toStdString());
    CHECK(view.minimumSizeHint().width() <= 1024);
    CHECK(view.minimumSizeHint().height() <= 768);
    for (const auto mode : {GroupView::Mode::size, GroupView::Mode::options, GroupView::Mode::building,
                            GroupView::Mode::year}) {
      view.setMode(mode);
      QCoreApplication::processEvents();
      for (const QLabel* label : view.findChildren<QLabel*>()) {
        if (!label->isVisible() || label->text().isEmpty()) continue;
        INFO(label->objectName().toStdString() << ", mode " << int(mode));
        const int needed =
            label->hasHeightForWidth() ? label->heightForWidth(label->width()) : label->sizeHint().height();
        CHECK(label->height() >= needed);
        if (!label->wordWrap()) CHECK(label->width() >= label->sizeHint().width());
      }
    }
  }
  backToEnglish();
}

TEST_CASE("Keys alone, also those of a remote clicker, lead through the whole meeting") {
  const auto window = makeWindow();
  GroupView& view = openGroupView(*window);
  CHECK(view.mode() == GroupView::Mode::size);
  const double before = window->document().project().tank.width_m;
  QTest::keyClick(&view, Qt::Key_Down);
  QTest::keyClick(&view, Qt::Key_Right);
  CHECK(window->document().project().tank.width_m == Approx(before + 0.1));
  QTest::keySequence(&view, QKeySequence::Undo);
  CHECK(window->document().project().tank.width_m == Approx(before));
  QTest::keyClick(&view, Qt::Key_PageDown);
  CHECK(view.mode() == GroupView::Mode::options);
  QTest::keyClick(&view, Qt::Key_PageDown);
  CHECK(view.mode() == GroupView::Mode::building);
  const QString first = told(view);
  QTest::keyClick(&view, Qt::Key_PageDown);
  CHECK(told(view) != first);
  QTest::keyClick(&view, Qt::Key_PageUp);
  CHECK(told(view) == first);
  QTest::keyClick(&view, Qt::Key_4);
  CHECK(view.mode() == GroupView::Mode::year);
  QStringList months;
  while (view.mode() == GroupView::Mode::year && months.size() < 20) {
    months << told(view).section(QLatin1Char(','), 0, 0);
    QTest::keyClick(&view, Qt::Key_PageDown);
  }
  CHECK(months.size() == 13);  // the first of each month, and the last day
  CHECK(view.mode() == GroupView::Mode::size);
  QTest::keyClick(&view, Qt::Key_Escape);
  CHECK(waitFor([&] { return window->findChild<GroupView*>() == nullptr; }));
}

TEST_CASE("Building and the water of a year play by themselves and stop at their end") {
  const auto window = makeWindow();
  GroupView& view = openGroupView(*window);
  view.setMode(GroupView::Mode::building);
  QTest::keyClick(&view, Qt::Key_Space);
  CHECK(view.isPlaying());
  auto& time = control<QSlider>(view, QStringLiteral("group.time"));
  CHECK(waitFor([&] { return time.value() >= 3; }));
  time.setValue(time.maximum() - 1);
  CHECK(waitFor([&] { return !view.isPlaying(); }));
  CHECK(time.value() == time.maximum());
}

TEST_CASE("A size that cannot be is refused in the group view with a sentence, not a dialog") {
  const auto window = makeWindow();
  auto project = window->document().project();
  project.tank.depth_m = 0.35;
  project.tank.freeboard_m = 0.2;
  project.tank.dead_depth_m = 0.12;  // less depth would leave no water that can be drawn
  REQUIRE(window->document().load(project).empty());
  GroupView& view = openGroupView(*window);
  QTest::keyClick(&view, Qt::Key_Down);
  QTest::keyClick(&view, Qt::Key_Down);
  for (int k = 0; k < 8; ++k) QTest::keyClick(&view, Qt::Key_Left);
  CHECK(window->document().project().tank.depth_m > 0.32);
  CHECK(QApplication::activeModalWidget() == nullptr);
  for (const QWidget* widget : QApplication::topLevelWidgets())
    CHECK((qobject_cast<const QDialog*>(widget) == nullptr || !widget->isVisible()));
  CHECK(control<QLabel>(view, QStringLiteral("group.message")).isVisible());
}

TEST_CASE("B blanks the screen and B shows it again") {
  const auto window = makeWindow();
  GroupView& view = openGroupView(*window);
  auto& button = control<QPushButton>(view, QStringLiteral("group.mode1"));
  CHECK(button.isVisible());
  QTest::keyClick(&view, Qt::Key_B);
  CHECK_FALSE(button.isVisible());
  QTest::keyClick(&view, Qt::Key_Period);
  CHECK(button.isVisible());
}

TEST_CASE("The slider along the bottom shows the pit on each day and goes by stages") {
  const auto window = makeWindow();
  auto& bar = control<ui::StageBar>(*window, QStringLiteral("stage_bar"));
  auto& slider = control<QSlider>(*window, QStringLiteral("stage.day"));
  auto& text = control<QLabel>(*window, QStringLiteral("stage.text"));
  CHECK(slider.value() == slider.maximum());
  CHECK_FALSE(bar.day().has_value());
  slider.setValue(0);
  REQUIRE(bar.day().has_value());
  CHECK(bar.day()->stage == "natural");
  CHECK_FALSE(control(*window, QStringLiteral("water.level")).isEnabled());
  QStringList stages;
  auto& next = control<QToolButton>(*window, QStringLiteral("stage.next"));
  while (next.isEnabled() && stages.size() < 40) {
    next.click();
    if (bar.day()) stages << QString::fromStdString(bar.day()->stage);
  }
  CHECK(stages.first() == QStringLiteral("pegs"));
  CHECK(stages.last() == QStringLiteral("full"));
  CHECK(stages.contains(QStringLiteral("coat_1")));
  CHECK(stages.removeDuplicates() == 0);
  CHECK(text.text() == QStringLiteral("finished tank"));
  CHECK(control(*window, QStringLiteral("water.level")).isEnabled());
}

TEST_CASE("The language changes while the program runs, and nothing of the work is lost") {
  const auto window = makeWindow();
  window->document().change(QStringLiteral("longer"), [](core::Project& p) { p.tank.length_m = 8.8; });
  const std::string before = bytes(*window);
  window->setLanguage(QLocale(QStringLiteral("es_BO")));
  CHECK(control<QTabWidget>(*window, QStringLiteral("tabs")).tabText(0) != QStringLiteral("Pit"));
  CHECK(bytes(*window) == before);
  CHECK(window->document().undoStack()->canUndo());
  window->setLanguage(QLocale(QStringLiteral("ur_PK")));
  CHECK(window->layoutDirection() == Qt::RightToLeft);
  window->document().undoStack()->undo();
  CHECK(bytes(*window) != before);
  CHECK(waitFor([&] { return window->findChild<ui::PitView*>()->isVisible(); }));
  window->setLanguage(QLocale(QStringLiteral("en_GB")));
  CHECK(window->layoutDirection() == Qt::LeftToRight);
  CHECK(control<QTabWidget>(*window, QStringLiteral("tabs")).tabText(0) == QStringLiteral("Pit"));
  backToEnglish();
}

TEST_CASE("Sheets are chosen one by one, and in another language than the window's") {
  const auto window = makeWindow();
  auto& sheets = control<ui::SheetsPanel>(*window, QStringLiteral("sheets_panel"));
  control<QTabWidget>(*window, QStringLiteral("tabs")).setCurrentWidget(&sheets);
  REQUIRE(waitFor([&] { return sheets.pageCount() > 0; }));
  const int all = sheets.pageCount();
  CHECK(sheets.options().codes.isEmpty());
  auto& kinds = control<QListWidget>(*window, QStringLiteral("sheet.kinds"));
  kinds.item(0)->setCheckState(Qt::Unchecked);
  REQUIRE(waitFor([&] { return sheets.pageCount() == all - 1; }));
  CHECK_FALSE(sheets.options().codes.contains(QStringLiteral("F1")));
  sheets.choose(QStringLiteral("M"));
  REQUIRE(waitFor([&] { return sheets.pageCount() > 0 && sheets.pageCount() < all - 1; }));
  for (const QString& code : sheets.options().codes) CHECK(code.startsWith(QLatin1Char('M')));
  for (int k = 0; k < kinds.count(); ++k) kinds.item(k)->setCheckState(Qt::Unchecked);
  CHECK(waitFor([&] { return !control(*window, QStringLiteral("sheet.export")).isEnabled(); }));
  CHECK(sheets.pageCount() == 0);
  sheets.choose(QString());
  auto& language = control<QComboBox>(*window, QStringLiteral("sheet.language"));
  language.setCurrentIndex(language.findData(QStringLiteral("ne")));
  REQUIRE(waitFor([&] { return sheets.pageCount() > 0; }));
  auto& pages = control<QComboBox>(*window, QStringLiteral("sheet.page"));
  const QString title = pages.itemText(0);
  CHECK(std::any_of(title.begin(), title.end(),
                    [](QChar c) { return c.script() == QChar::Script_Devanagari; }));
  CHECK(control<QTabWidget>(*window, QStringLiteral("tabs")).tabText(0) == QStringLiteral("Pit"));
}
