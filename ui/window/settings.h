#pragma once

#include "ui/text/formatter.h"
#include "ui/widgets/theme.h"

#include <QByteArray>
#include <QLocale>
#include <QStringList>

namespace ui {

/// What the program remembers from one start to the next; each value is read and written at once.
struct Settings {
  static Theme theme();
  static void setTheme(Theme theme);
  /// TANKWRIGHT_UNITS ("metric" or "feet_inches"), else the setting.
  /// TANKWRIGHT_UNITS (metric or feet_inches), else the setting, else metric.
  static UnitSystem units();
  static void setUnits(UnitSystem units);

  /// Language of texts: that of TANKWRIGHT_LOCALE, else the setting, else the desktop's own.
  static QLocale language();
  /// The setting alone; empty follows the desktop.
  static QString languageName();
  static void setLanguageName(const QString& name);
  /// Locale of numbers and dates: TANKWRIGHT_LOCALE, else the setting, else the one that goes with the
  /// language.
  static QLocale locale();
  /// The setting alone; empty follows the language.
  static QString localeName();
  static void setLocaleName(const QString& name);

  /// Paths of files that were opened or saved, the latest first, at most ten.
  static QStringList recentFiles();
  static void addRecentFile(const QString& path);
  static void forgetRecentFile(const QString& path);

  static QByteArray geometry();
  static void setGeometry(const QByteArray& geometry);
  /// Folder of the last file, for the next dialog.
  static QString folder();
};

}  // namespace ui
