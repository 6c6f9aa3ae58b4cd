#pragma once

#include <QLocale>
#include <QStringList>

namespace ui {

/// Languages the program speaks, by their short names; English first.
QStringList languages();

/// Whether no speaker has checked a language's texts yet.
bool isDraft(const QString& language);
/// A language's name in itself, with a mark when its texts are a draft.
QString languageName(const QString& language);
/// What a page in a draft says of itself, in the language in use.
QString draftMark();

/// The locale whose numbers and dates go with a language: the desktop's own where it is of that language.
QLocale localeOf(const QString& language);

/// Takes up the locale's language for all texts, Qt's own too, in place of the one used before, and makes the
/// locale the default for numbers and dates. Widgets that stand keep their texts. @pre a QCoreApplication
/// lives
/// @return false when there is no translation, so that texts are in English
bool useLanguage(const QLocale& locale);

/// The language of the calling thread's texts: the one in use, or that of an InLanguage.
QString language();
/// The direction in which it is written.
Qt::LayoutDirection textDirection();

/// While it lives, texts that the calling thread asks for are in another language. They nest.
class InLanguage {
public:
  explicit InLanguage(const QString& language);
  ~InLanguage();
  InLanguage(const InLanguage&) = delete;
  InLanguage& operator=(const InLanguage&) = delete;

private:
  QString before_;
};

}  // namespace ui
