#pragma once

#include <QLocale>
#include <QStringList>

namespace ui {

/// Languages the program speaks, by their short names; English first.
QStringList languages();

/// A language's name in itself, with a mark when its texts are a draft that no speaker has checked yet.
QString languageName(const QString& language);

/// Takes up the locale's language for all texts, Qt's own too, in place of the one used before, and makes the
/// locale the default for numbers and dates. @pre a QCoreApplication lives
/// @return false when there is no translation, so that texts are in English
bool useLanguage(const QLocale& locale);

}  // namespace ui
