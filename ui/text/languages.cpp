#include "ui/text/languages.h"

#include <QCoreApplication>
#include <QDir>
#include <QHash>
#include <QLibraryInfo>
#include <QMutex>
#include <QThread>
#include <QTranslator>
#include <algorithm>
#include <array>
#include <atomic>
#include <memory>
#include <tuple>
#include <utility>
#include <vector>

namespace ui {
namespace {

const auto kFolder = QStringLiteral(":/translations");
const auto kPrefix = QStringLiteral("tankwright_");
const auto kEnglish = QStringLiteral("en");

/// Languages that no speaker has checked yet.
const QStringList kDrafts{QStringLiteral("es"), QStringLiteral("hi"), QStringLiteral("ne"),
                          QStringLiteral("ur")};

/// Where a language is read most among mountain farmers; a desktop in another country of it goes first.
struct Home {
  const char* language;
  const char* locale;
  const char* name;  ///< of the language in itself
};
constexpr std::array kHomes{Home{"en", "en_GB", "English"}, Home{"es", "es_BO", "Español"},
                            Home{"hi", "hi_IN", "हिन्दी"}, Home{"ne", "ne_NP", "नेपाली"},
                            Home{"ur", "ur_PK", "اردو"}};

const Home* homeOf(const QString& language) {
  const auto found =
      std::ranges::find(kHomes, language, [](const Home& h) { return QLatin1String(h.language); });
  return found == kHomes.end() ? nullptr : &*found;
}

thread_local QString here;  // NOLINT: the language of an InLanguage; empty: the one in use

using Texts = std::vector<std::unique_ptr<QTranslator>>;

/// All languages at once; answers in the one that the calling thread is in. The application owns the one
/// that there is.
class Tongues : public QTranslator {
public:
  explicit Tongues(QObject* parent) : QTranslator(parent) { only = this; }
  ~Tongues() override { only = nullptr; }

  static inline std::atomic<Tongues*> only = nullptr;  // NOLINT: lives with the application

  bool isEmpty() const override { return false; }

  QString translate(const char* context, const char* source, const char* note, int count) const override {
    for (const auto& texts : textsOf(ui::language())) {
      const QString found = texts->translate(context, source, note, count);
      if (!found.isEmpty()) return found;
    }
    return {};
  }

  void use(const QString& language) {
    const QMutexLocker lock(&mutex_);
    in_use_ = language;
  }
  QString inUse() const {
    const QMutexLocker lock(&mutex_);
    return in_use_;
  }
  /// Texts of a language, ours first; read once and kept.
  const Texts& textsOf(const QString& language) const {
    const QMutexLocker lock(&mutex_);
    auto& texts = read_[language];
    if (!texts) texts = std::make_shared<Texts>(read(language));
    return *texts;
  }

private:
  mutable QMutex mutex_;
  mutable QHash<QString, std::shared_ptr<Texts>> read_;
  QString in_use_ = kEnglish;

  static Texts read(const QString& language) {
    Texts texts;
    if (language == kEnglish) return texts;
    for (const auto& [prefix, folder] :
         {std::pair{kPrefix, kFolder},
          std::pair{QStringLiteral("qtbase_"), QLibraryInfo::path(QLibraryInfo::TranslationsPath)}}) {
      // kept even when there is no such file: a translator must not die while one is being asked
      std::ignore = texts.emplace_back(std::make_unique<QTranslator>())->load(prefix + language, folder);
    }
    return texts;
  }
};

void installTongues() {
  const bool can = qApp != nullptr && QThread::currentThread() == qApp->thread();
  if (can && Tongues::only == nullptr) QCoreApplication::installTranslator(new Tongues(qApp));
}

QString shortName(const QLocale& locale) {
  return locale.language() == QLocale::C ? kEnglish : locale.name().section(u'_', 0, 0);
}

}  // namespace

QStringList languages() {
  QStringList names{kEnglish};
  for (const QString& file :
       QDir(kFolder).entryList({kPrefix + QStringLiteral("*.qm")}, QDir::Files, QDir::Name)) {
    names << file.mid(kPrefix.size()).chopped(3);
  }
  return names;
}

bool isDraft(const QString& language) {
  return kDrafts.contains(language);
}

QString languageName(const QString& language) {
  const Home* home = homeOf(language);
  const QString name =
      home == nullptr ? QLocale(language).nativeLanguageName() : QString::fromUtf8(home->name);
  if (!isDraft(language)) return name;
  return QCoreApplication::translate("ui::words", "%1 (draft)").arg(name);
}

QString draftMark() {
  return QCoreApplication::translate("ui::words", "Draft translation, to be checked by a speaker.");
}

QLocale localeOf(const QString& language) {
  const QLocale desktop = QLocale::system();
  if (shortName(desktop) == language) return desktop;
  const Home* home = homeOf(language);
  return home == nullptr ? QLocale(language) : QLocale(QLatin1String(home->locale));
}

bool useLanguage(const QLocale& locale) {
  QLocale::setDefault(locale);
  installTongues();
  const QString wanted = shortName(locale);
  const bool is_known = languages().contains(wanted);
  Tongues::only.load()->use(is_known ? wanted : kEnglish);
  return is_known;
}

QString language() {
  if (!here.isEmpty()) return here;
  const Tongues* all = Tongues::only;
  return all == nullptr ? kEnglish : all->inUse();
}

Qt::LayoutDirection textDirection() {
  thread_local QString known;  // NOLINT: asked for each text
  thread_local Qt::LayoutDirection direction = Qt::LeftToRight;
  const QString now = language();
  if (now != known) {
    known = now;
    direction = QLocale(now).textDirection();
  }
  return direction;
}

InLanguage::InLanguage(const QString& language) : before_(std::exchange(here, language)) {
  installTongues();
}

InLanguage::~InLanguage() {
  here = before_;
}

}  // namespace ui
