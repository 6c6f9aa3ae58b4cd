#include "ui/window/settings.h"

#include "ui/text/languages.h"

#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace ui {

namespace {

constexpr QLatin1String kTheme("window/theme");
constexpr QLatin1String kUnits("window/units");
constexpr QLatin1String kLanguage("language/texts");
constexpr QLatin1String kLocale("language/locale");
constexpr QLatin1String kRecent("files/recent");
constexpr QLatin1String kGeometry("window/geometry");
constexpr int kMostRecent = 10;

}  // namespace

Theme Settings::theme() {
  const QString name = QSettings().value(kTheme).toString();
  if (name == QLatin1String("light")) return Theme::light;
  return name == QLatin1String("dark") ? Theme::dark : Theme::system;
}

void Settings::setTheme(Theme theme) {
  const char* const name = theme == Theme::light ? "light" : theme == Theme::dark ? "dark" : "system";
  QSettings().setValue(kTheme, QLatin1String(name));
}

UnitSystem Settings::units() {
  const QString wanted = qEnvironmentVariable("TANKWRIGHT_UNITS", QSettings().value(kUnits).toString());
  return wanted == QLatin1String("feet_inches") ? UnitSystem::feet_inches : UnitSystem::metric;
}

void Settings::setUnits(UnitSystem units) {
  QSettings().setValue(kUnits, QLatin1String(units == UnitSystem::metric ? "metric" : "feet_inches"));
}

QLocale Settings::language() {
  const QString asked = qEnvironmentVariable("TANKWRIGHT_LOCALE");
  if (!asked.isEmpty()) return QLocale(asked);
  return languageName().isEmpty() ? QLocale::system() : localeOf(languageName());
}

QString Settings::languageName() {
  return QSettings().value(kLanguage).toString();
}

void Settings::setLanguageName(const QString& name) {
  QSettings().setValue(kLanguage, name);
  qunsetenv("TANKWRIGHT_LOCALE");  // a choice of now goes before what the start was told
}

QLocale Settings::locale() {
  const QString asked = qEnvironmentVariable("TANKWRIGHT_LOCALE");
  if (!asked.isEmpty()) return QLocale(asked);
  return localeName().isEmpty() ? language() : QLocale(localeName());
}

QString Settings::localeName() {
  return QSettings().value(kLocale).toString();
}

void Settings::setLocaleName(const QString& name) {
  QSettings().setValue(kLocale, name);
  qunsetenv("TANKWRIGHT_LOCALE");
}

QStringList Settings::recentFiles() {
  return QSettings().value(kRecent).toStringList();
}

void Settings::addRecentFile(const QString& path) {
  QStringList files = recentFiles();
  files.removeAll(path);
  files.prepend(path);
  QSettings().setValue(kRecent, QStringList(files.mid(0, kMostRecent)));
}

void Settings::forgetRecentFile(const QString& path) {
  QStringList files = recentFiles();
  files.removeAll(path);
  QSettings().setValue(kRecent, files);
}

QByteArray Settings::geometry() {
  return QSettings().value(kGeometry).toByteArray();
}

void Settings::setGeometry(const QByteArray& geometry) {
  QSettings().setValue(kGeometry, geometry);
}

QString Settings::folder() {
  const QStringList files = recentFiles();
  if (!files.isEmpty()) return QFileInfo(files.front()).absolutePath();
  return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

}  // namespace ui
