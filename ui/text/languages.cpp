#include "ui/text/languages.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QTranslator>

namespace ui {
namespace {

const auto kFolder = QStringLiteral(":/translations");
const auto kPrefix = QStringLiteral("tankwright_");

/// Languages that no speaker has checked yet.
const QStringList kDrafts{QStringLiteral("es")};

void dropTranslators() {
  for (QTranslator* const old : qApp->findChildren<QTranslator*>(Qt::FindDirectChildrenOnly)) delete old;
}

bool load(const QLocale& locale, const QString& name, const QString& folder) {
  auto* const translator = new QTranslator(qApp);
  if (translator->load(locale, name, QString(), folder))
    return QCoreApplication::installTranslator(translator);
  delete translator;
  return false;
}

bool isEnglish(const QLocale& locale) {
  return locale.language() == QLocale::English || locale.language() == QLocale::C;
}

}  // namespace

QStringList languages() {
  QStringList names{QStringLiteral("en")};
  for (const QString& file :
       QDir(kFolder).entryList({kPrefix + QStringLiteral("*.qm")}, QDir::Files, QDir::Name)) {
    names << file.mid(kPrefix.size()).chopped(3);
  }
  return names;
}

QString languageName(const QString& language) {
  const QString name = QLocale(language).nativeLanguageName();
  if (!kDrafts.contains(language)) return name;
  return QCoreApplication::translate("ui::words", "%1 (draft)").arg(name);
}

bool useLanguage(const QLocale& locale) {
  dropTranslators();
  QLocale::setDefault(locale);
  if (isEnglish(locale)) return true;
  load(locale, QStringLiteral("qtbase_"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  return load(locale, kPrefix, kFolder);
}

}  // namespace ui
