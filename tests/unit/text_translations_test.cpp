#include "ui/text/languages.h"

#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace {

namespace fs = std::filesystem;

struct Message {
  QString context;
  QString source;
  QStringList forms;  ///< one, or one for each plural form
  bool plural = false;
  bool unfinished = false;
};

struct LanguageFile {
  QString language;
  std::vector<Message> messages;
};

void readTranslation(QXmlStreamReader& xml, Message& message) {
  message.unfinished = xml.attributes().value("type") == QLatin1String("unfinished");
  if (!message.plural) {
    message.forms << xml.readElementText();
    return;
  }
  while (xml.readNextStartElement()) message.forms << xml.readElementText();
}

Message readMessage(QXmlStreamReader& xml, const QString& context) {
  Message message;
  message.context = context;
  message.plural = xml.attributes().value("numerus") == QLatin1String("yes");
  while (xml.readNextStartElement()) {
    if (xml.name() == QLatin1String("source")) {
      message.source = xml.readElementText();
    } else if (xml.name() == QLatin1String("translation")) {
      readTranslation(xml, message);
    } else {
      xml.skipCurrentElement();
    }
  }
  return message;
}

void readContext(QXmlStreamReader& xml, std::vector<Message>& messages) {
  QString context;
  while (xml.readNextStartElement()) {
    if (xml.name() == QLatin1String("name")) {
      context = xml.readElementText();
    } else if (xml.name() == QLatin1String("message")) {
      messages.push_back(readMessage(xml, context));
    } else {
      xml.skipCurrentElement();
    }
  }
}

LanguageFile read(const fs::path& path) {
  QFile file(QString::fromStdString(path.string()));
  REQUIRE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  LanguageFile found;
  REQUIRE(xml.readNextStartElement());
  found.language = xml.attributes().value("language").toString();
  while (xml.readNextStartElement()) readContext(xml, found.messages);
  INFO(path.filename().string() << ": " << xml.errorString().toStdString());
  REQUIRE_FALSE(xml.hasError());
  return found;
}

std::vector<LanguageFile> shipped() {
  std::vector<LanguageFile> files;
  for (const auto& entry : fs::directory_iterator(std::string(TANKWRIGHT_SOURCE_DIR) + "/translations")) {
    if (entry.path().extension() == ".ts") files.push_back(read(entry.path()));
  }
  REQUIRE_FALSE(files.empty());
  return files;
}

QStringList parts(const QString& text, const QString& pattern) {
  QStringList found;
  auto match = QRegularExpression(pattern).globalMatch(text);
  while (match.hasNext()) found << match.next().captured();
  found.sort();
  return found;
}

QStringList places(const QString& text) {
  QStringList found = parts(text, "%L?([0-9]{1,2}|n)");
  found.removeDuplicates();
  return found;
}

/// Calls check(message, form) for each translated text of each language.
template <typename Check>
void forEachForm(const Check& check) {
  for (const LanguageFile& file : shipped()) {
    for (const Message& message : file.messages) {
      for (const QString& form : message.forms) {
        INFO(file.language.toStdString() << ", " << message.context.toStdString() << ": "
                                         << message.source.toStdString() << " -> " << form.toStdString());
        check(message, form);
      }
    }
  }
}

}  // namespace

TEST_CASE("no text of a shipped language is left untranslated") {
  for (const LanguageFile& file : shipped()) {
    CHECK(file.messages.size() > 600);
    for (const Message& message : file.messages) {
      INFO(file.language.toStdString()
           << ", " << message.context.toStdString() << ": " << message.source.toStdString());
      CHECK_FALSE(message.forms.isEmpty());
      CHECK(
          std::ranges::none_of(message.forms, [](const QString& form) { return form.trimmed().isEmpty(); }));
    }
  }
}

TEST_CASE("a translation has the same places for numbers and names as its source") {
  forEachForm(
      [](const Message& message, const QString& form) { CHECK(places(form) == places(message.source)); });
}

TEST_CASE("a translation keeps marks, file endings, line ends and outer spaces") {
  // Bold and paragraph marks, the place of the unsaved mark in a title, and file dialog patterns.
  const QString kept = QStringLiteral("</?[a-z]+>|\\[\\*\\]|\\(\\*[^)]*\\)|;;|\n|^ +| +$");
  forEachForm([&](const Message& message, const QString& form) {
    CHECK(parts(form, kept) == parts(message.source, kept));
  });
}

TEST_CASE("a translation has one access key where its source has one") {
  const QString key = QStringLiteral("&(?=[^\\s&])");
  forEachForm([&](const Message& message, const QString& form) {
    CHECK(parts(form, key).size() == parts(message.source, key).size());
  });
}

TEST_CASE("no shipped language has an unfinished text") {
  for (const LanguageFile& file : shipped()) {
    for (const Message& message : file.messages) {
      INFO(file.language.toStdString()
           << ", " << message.context.toStdString() << ": " << message.source.toStdString());
      CHECK_FALSE(message.unfinished);
    }
  }
}

TEST_CASE("a plural text has every form of its language") {
  // Qt's plural rules: two forms each in Spanish, Hindi, Nepali and Urdu
  for (const LanguageFile& file : shipped()) {
    for (const Message& message : file.messages) {
      INFO(file.language.toStdString() << ": " << message.source.toStdString());
      CHECK(message.forms.size() == (message.plural ? 2 : 1));
    }
  }
}

TEST_CASE("a draft has a table of its trade words, and every name tells drafts from checked languages") {
  for (const LanguageFile& file : shipped()) {
    INFO(file.language.toStdString());
    const bool marked = ui::languageName(file.language).contains(u'(');
    CHECK(marked == ui::isDraft(file.language));
    const fs::path table = fs::path(TANKWRIGHT_SOURCE_DIR) / "translations" /
                           ("glossary_" + file.language.toStdString() + ".md");
    CHECK(fs::exists(table));
  }
}
