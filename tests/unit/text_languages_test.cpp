#include "core/project/fields.h"
#include "ui/text/languages.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <string>
#include <thread>

#include <catch2/catch.hpp>

namespace {

namespace fs = std::filesystem;

/// A core application for the length of a test; English comes back at the end.
struct Application {
  int argc = 1;
  char name[5] = "test";
  char* argv[2] = {name, nullptr};
  QCoreApplication application{argc, argv};
  ~Application() { ui::useLanguage(QLocale::c()); }
};

}  // namespace

TEST_CASE("every language file is part of the program") {
  const Application application;
  QStringList expected{"en"};
  for (const auto& entry : fs::directory_iterator(std::string(TANKWRIGHT_SOURCE_DIR) + "/translations")) {
    const QString stem = QString::fromStdString(entry.path().stem().string());
    if (entry.path().extension() == ".ts") expected << stem.mid(QString("tankwright_").size());
  }
  QStringList found = ui::languages();
  CHECK(found.front() == "en");
  std::ranges::sort(found);
  std::ranges::sort(expected);
  CHECK(found == expected);
  for (const QString& language : found) CHECK_FALSE(ui::languageName(language).isEmpty());
}

TEST_CASE("texts follow the language while the program runs") {
  const Application application;
  const QString english = ui::words::fieldLabel("tank.depth_m");
  REQUIRE(ui::useLanguage(QLocale("es_BO")));
  CHECK(ui::words::fieldLabel("tank.depth_m") != english);
  const ui::Formatter spanish{QLocale("es_BO")};
  CHECK(spanish.quantity(1, core::Unit::day, 0).endsWith("día"));
  CHECK(spanish.quantity(3, core::Unit::day, 0).endsWith("días"));
  REQUIRE(ui::useLanguage(QLocale("en_GB")));
  CHECK(ui::words::fieldLabel("tank.depth_m") == english);
  CHECK_FALSE(ui::useLanguage(QLocale("is_IS")));
  CHECK(ui::words::fieldLabel("tank.depth_m") == english);
}

TEST_CASE("one thread can write in another language while the others stay in theirs") {
  const Application application;
  ui::useLanguage(QLocale("en_GB"));
  const QString english = ui::words::fieldLabel("tank.depth_m");
  QString elsewhere, inside;
  {
    const ui::InLanguage scope("es");
    inside = ui::words::fieldLabel("tank.depth_m");
    CHECK(ui::language() == "es");
    std::thread([&] { elsewhere = ui::words::fieldLabel("tank.depth_m"); }).join();
    {
      const ui::InLanguage back("en");
      CHECK(ui::words::fieldLabel("tank.depth_m") == english);
    }
    CHECK(ui::words::fieldLabel("tank.depth_m") == inside);
  }
  CHECK(inside != english);
  CHECK(elsewhere == english);
  CHECK(ui::words::fieldLabel("tank.depth_m") == english);
}

TEST_CASE("a quantity keeps its own direction within a text that is written from the right") {
  const Application application;
  REQUIRE(ui::useLanguage(QLocale("ur_PK")));
  CHECK(ui::textDirection() == Qt::RightToLeft);
  const ui::Formatter format{QLocale("ur_PK")};
  const QString text = format.quantity(7.2, core::Unit::metre, 2);
  CHECK(text.startsWith(QString::fromUtf8("\u200f\u2068")));
  CHECK(text.isRightToLeft());
  CHECK(text.back() == QChar(0x2069));
  CHECK(format.parse(text, core::Unit::metre) == 7.2);
  ui::useLanguage(QLocale("en_GB"));
  CHECK(ui::textDirection() == Qt::LeftToRight);
}

TEST_CASE("numbers come back from their text with the units of every language") {
  const Application application;
  for (const QString& language : ui::languages()) {
    ui::useLanguage(QLocale(language));
    for (const ui::UnitSystem system : {ui::UnitSystem::metric, ui::UnitSystem::feet_inches}) {
      const ui::Formatter format{QLocale(language), system};
      for (const core::Field& field : core::fields()) {
        if (field.kind != core::FieldKind::number && field.kind != core::FieldKind::whole) continue;
        for (const double value : {field.least, field.most, (field.least + field.most) / 2}) {
          const QString text = format.quantity(value, field.unit, field.decimals);
          INFO(field.id << " " << text.toStdString());
          const auto back = format.parse(text, field.unit);
          REQUIRE(back.has_value());
          CHECK(std::abs(*back - value) <=
                format.shownStep(value, field.unit, field.decimals) * 0.5 * (1 + 1e-9));
        }
      }
    }
  }
}
