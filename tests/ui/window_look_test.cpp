#include "ui/panels/sheets_panel.h"
#include "ui/view3d/pit_view.h"
#include "ui/widgets/theme.h"
#include "window_support.h"

#include <QAction>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPalette>
#include <QProcess>
#include <QSlider>
#include <QTabWidget>
#include <QTest>
#include <cmath>

#include <catch2/catch.hpp>

using namespace window_test;

namespace {

double linear(int channel) {
  const double c = channel / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

/// Relative luminance and contrast ratio as defined by WCAG 2.1.
double luminance(const QColor& colour) {
  return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
}

double contrast(const QColor& a, const QColor& b) {
  const double x = luminance(a) + 0.05;
  const double y = luminance(b) + 0.05;
  return std::max(x, y) / std::min(x, y);
}

}  // namespace

TEST_CASE("The window fits a screen of 1280 by 720 with every tab and message") {
  const auto window = makeWindow();
  window->saveFile(QStringLiteral("/no_such_folder/a.tankwright"));
  auto& tabs = control<QTabWidget>(*window, QStringLiteral("tabs"));
  for (int k = 0; k < tabs.count(); ++k) {
    tabs.setCurrentIndex(k);
    INFO(k);
    CHECK(window->minimumSizeHint().width() <= 1280);
    CHECK(window->minimumSizeHint().height() <= 690);  // a title bar of 30 pixels
  }
}

TEST_CASE("Every text stands out from its ground by at least 4.5 to 1 in light and dark") {
  // threshold: Web Content Accessibility Guidelines 2.1, success criterion 1.4.3
  for (const bool dark : {false, true}) {
    const QPalette palette = ui::palette(dark);
    for (const auto ground : {QPalette::Window, QPalette::Base, QPalette::Button, QPalette::AlternateBase}) {
      INFO("dark " << dark << " ground " << int(ground));
      CHECK(contrast(palette.color(QPalette::WindowText), palette.color(ground)) >= 4.5);
      CHECK(contrast(ui::quietColour(palette), palette.color(ground)) >= 4.5);
      CHECK(contrast(ui::problemColour(palette), palette.color(ground)) >= 4.5);
    }
    for (const auto severity : {core::Severity::note, core::Severity::caution, core::Severity::stop})
      CHECK(contrast(ui::severityColour(severity, palette), palette.color(QPalette::Window)) >= 4.5);
    CHECK(contrast(palette.color(QPalette::HighlightedText), palette.color(QPalette::Highlight)) >= 4.5);
  }
}

TEST_CASE("Figures follow an edit at once") {
  const auto window = makeWindow();
  auto& holds = control<QLabel>(*window, QStringLiteral("figure.holds.value"));
  auto& cement = control<QLabel>(*window, QStringLiteral("figure.cement.value"));
  const QString litres = holds.text();
  const QString bags = cement.text();
  type(control(*window, QStringLiteral("tank.length_m")), QStringLiteral("12"));
  CHECK(holds.text() != litres);
  CHECK(cement.text() != bags);
  CHECK(
      holds.text() ==
      ui::Formatter(QLocale(QStringLiteral("en_GB"))).litres(window->document().plan().tank.full_volume_m3));
}

TEST_CASE("Every figure explains itself with its source when it is asked") {
  const auto window = makeWindow();
  for (const char* id : {"holds", "usable", "cement", "fillers", "work", "fill_by", "pit", "inside"}) {
    INFO(id);
    const QString name = QStringLiteral("figure.") + QLatin1String(id);
    auto& reckoning = control<QLabel>(*window, name + QStringLiteral(".reckoning"));
    CHECK(reckoning.isHidden());
    CHECK(reckoning.text().contains(QStringLiteral("Source")));
    QTest::keyClick(&control(*window, name), Qt::Key_Space);
    CHECK_FALSE(reckoning.isHidden());
  }
}

TEST_CASE("The water slider says how much the tank holds to its level") {
  const auto window = makeWindow();
  auto& slider = control<QSlider>(*window, QStringLiteral("water.level"));
  auto& text = control<QLabel>(*window, QStringLiteral("water.text"));
  slider.setValue(500);
  const ui::Formatter format(QLocale(QStringLiteral("en_GB")));
  CHECK(text.text().contains(format.litres(window->document().plan().geometry.volumeToLevel(0.5))));
}

TEST_CASE("The sheets show every page in turn") {
  const auto window = makeWindow();
  auto& sheets = control<ui::SheetsPanel>(*window, QStringLiteral("sheets_panel"));
  control<QTabWidget>(*window, QStringLiteral("tabs")).setCurrentWidget(&sheets);
  REQUIRE(waitFor([&] { return sheets.pageCount() > 0; }));
  auto& sheet = control(*window, QStringLiteral("sheet"));
  for (int page = 0; page < sheets.pageCount(); ++page) {
    sheets.showPage(page);
    CHECK(sheets.page() == page);
    const QImage image = sheet.grab().toImage();
    int dark = 0;
    for (int y = 0; y < image.height(); y += 2)
      for (int x = 0; x < image.width(); x += 2) dark += qGray(image.pixel(x, y)) < 128;
    INFO(page);
    CHECK(dark > 50);
  }
}

TEST_CASE("window that opens, is looked at and closed", "[.child]") {
  auto window = makeWindow();
  CHECK(window->findChild<ui::PitView*>()->kind() == qEnvironmentVariable("TANKWRIGHT_TEST_KIND"));
  auto& tabs = control<QTabWidget>(*window, QStringLiteral("tabs"));
  for (const int k : {1, 2, 0}) {
    tabs.setCurrentIndex(k);
    REQUIRE(waitFor([&] { return tabs.currentWidget()->isVisible(); }));
  }
  type(control(*window, QStringLiteral("tank.length_m")), QStringLiteral("9"));
  bool pictured = false;
  window->findChild<ui::PitView*>()->grabImage([&](const QImage& image) { pictured = !image.isNull(); });
  CHECK(waitFor([&] { return pictured; }, 20000));
}

TEST_CASE("The program ends in order with Qt 3D and with the software view") {
  for (const bool software : {true, false}) {
    if (!software && !ui::openGlIsUsable()) continue;
    INFO("software " << software);
    QProcess child;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("TANKWRIGHT_SOFTWARE_VIEW"),
                       software ? QStringLiteral("1") : QString());
    if (!software) environment.remove(QStringLiteral("TANKWRIGHT_SOFTWARE_VIEW"));
    environment.insert(QStringLiteral("TANKWRIGHT_TEST_KIND"),
                       software ? QStringLiteral("software") : QStringLiteral("qt3d"));
    child.setProcessEnvironment(environment);
    child.start(QCoreApplication::applicationFilePath(), {QStringLiteral("[.child]")});
    REQUIRE(child.waitForFinished(60000));
    INFO(child.readAllStandardOutput().toStdString());
    CHECK(child.exitStatus() == QProcess::NormalExit);
    CHECK(child.exitCode() == 0);
  }
}
