// The button that unfolds how the numbers of a group were reckoned.
#include "ui/widgets/explained.h"

#include "core/exchange/project_file.h"
#include "ui/document/document.h"
#include "ui/text/reckonings.h"

#include <QLabel>
#include <QTest>
#include <QToolButton>

#include <catch2/catch.hpp>

namespace {

core::Project demo() {
  return core::exchange::readProject(TANKWRIGHT_SOURCE_DIR "/resources/demo/terrace.tankwright")->project;
}

struct Shown {
  ui::Document document;
  ui::Explained explained{document, "tank"};
  QToolButton* button = explained.findChild<QToolButton*>();
  QLabel* text = explained.findChild<QLabel*>();

  Shown() {
    document.load(demo());
    explained.setFormatter(ui::Formatter(QLocale(QLocale::English)));
    explained.show();
  }
};

}  // namespace

TEST_CASE("folded at first, unfolded by the keyboard, folded again by a second press") {
  Shown shown;
  CHECK_FALSE(shown.text->isVisible());
  CHECK(shown.text->text().isEmpty());
  CHECK((shown.button->focusPolicy() & Qt::TabFocus) != 0);
  CHECK_FALSE(shown.button->accessibleName().isEmpty());
  QTest::keyClick(shown.button, Qt::Key_Space);
  CHECK(shown.text->isVisible());
  CHECK(shown.explained.isUnfolded());
  QTest::keyClick(shown.button, Qt::Key_Space);
  CHECK_FALSE(shown.text->isVisible());
}

TEST_CASE("unfolded it tells all reckonings of its group, and follows the document") {
  Shown shown;
  shown.button->click();
  const auto all = ui::words::reckoningsOf("tank", shown.document.project(), shown.document.plan(),
                                           ui::Formatter(QLocale(QLocale::English)));
  REQUIRE_FALSE(all.empty());
  for (const auto& reckoning : all) {
    CHECK(shown.text->text().contains(reckoning.name.toHtmlEscaped()));
    CHECK(shown.text->text().contains(reckoning.formula.toHtmlEscaped()));
    CHECK(shown.text->text().contains(reckoning.inputs.toHtmlEscaped()));
  }
  const QString before = shown.text->text();
  shown.document.change("deeper", [](core::Project& project) { project.tank.depth_m = 1.3; });
  CHECK(shown.text->text() != before);
  shown.button->click();
  const QString folded = shown.text->text();
  shown.document.change("deeper", [](core::Project& project) { project.tank.depth_m = 1.2; });
  CHECK(shown.text->text() == folded);
  shown.button->click();
  CHECK(shown.text->text() != folded);
}
