#include "tests/ui/handout_support.h"
#include "tests/ui/pdf_support.h"
#include "ui/handouts/pdf_text.h"
#include "ui/text/languages.h"

#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QTransform>
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <map>

#include <catch2/catch.hpp>

// The whole set in every language, read back with poppler and qpdf.

using support::demoPlan;
using support::PageRecord;
using support::tool;

namespace {

namespace fs = std::filesystem;

/// A handout of the demonstration in a language, on paper of a size.
struct Written : support::WrittenHandout {
  explicit Written(const QString& language, QPageSize::PageSizeId size = QPageSize::A4,
                   const QStringList& codes = {})
      : Written(language, {size, language, codes}, ui::useLanguage(QLocale(QStringLiteral("en_GB")))) {}

private:
  /// Other languages than the one in use can be had only when one is.
  Written(const QString& language, const ui::handouts::Options& options, bool /*in_use*/)
      : WrittenHandout(support::demoContent(language), options) {}
};

/// A text without spaces, which poppler sets as it sees fit, and with the ligatures of Latin as letters, for
/// the PDF names the ligature.
QString bare(QString text) {
  const QStringList ligatures{"ff", "fi", "fl", "ffi", "ffl"};  // U+FB00 and following
  for (qsizetype k = 0; k < ligatures.size(); ++k)
    text.replace(QChar(static_cast<char16_t>(0xFB00 + k)), ligatures[k]);
  return text.removeIf([](QChar c) { return c.isSpace(); });
}

/// The same, without a hyphen at its end: poppler takes it for one of a word that goes on in the next line.
QString bareLine(const QString& text) {
  const QString all = bare(text);
  return all.endsWith(u'-') ? all.chopped(1) : all;
}

/// Characters sorted, without hyphens.
std::string sorted(const QString& text) {
  QString all = bare(text).remove(u'-');
  std::ranges::sort(all);
  return all.toStdString();
}

/// Letters of a text, counted. Poppler gives words of right-to-left scripts in the order in which they are
/// painted, so the order within a text is forgiven, but no letter may be missing. The forms that letters of
/// Arabic take in a word are told by compatibility decomposition.
std::map<char32_t, int> letters(const QString& text) {
  std::map<char32_t, int> counted;
  for (const char32_t c : text.normalized(QString::NormalizationForm_KC).toUcs4()) {
    if (QChar::isLetterOrNumber(c)) ++counted[c];
  }
  return counted;
}

/// Share of the letters of a text that a page has.
double shareRead(const QString& text, const QString& page) {
  const std::map<char32_t, int> on_page = letters(page);
  int all = 0, read = 0;
  for (const auto& [letter, count] : letters(text)) {
    all += count;
    const auto found = on_page.find(letter);
    read += found == on_page.end() ? 0 : std::min(count, found->second);
  }
  return all == 0 ? 1 : static_cast<double>(read) / all;
}

}  // namespace

TEST_CASE("in every language the PDF is sound, its fonts are embedded and nothing is made of pixels") {
  for (const QString& language : ui::languages()) {
    const Written written(language);
    INFO(language.toStdString());
    CHECK(tool("qpdf", {"--check", written.file}).ok);
    const auto fonts = tool("pdffonts", {written.file});
    REQUIRE(fonts.ok);
    const QStringList lines = fonts.out.split(u'\n', Qt::SkipEmptyParts).mid(2);
    CHECK(lines.size() >= 2);
    const QRegularExpression embedded(
        QStringLiteral("\\s(yes|no)\\s+(yes|no)\\s+(yes|no)\\s+\\d+\\s+\\d+\\s*$"));
    for (const QString& line : lines) {
      const auto match = embedded.match(line);
      INFO(line.toStdString());
      REQUIRE(match.hasMatch());
      CHECK(match.captured(1) == "yes");  // embedded
      CHECK(match.captured(3) == "yes");  // with the letters behind the glyphs
    }
    CHECK(tool("pdfimages", {"-list", written.file}).out.split(u'\n', Qt::SkipEmptyParts).size() <= 2);
  }
}

TEST_CASE("written from the left, every text comes out of the PDF as it was drawn, sign by sign") {
  for (const char* language : {"en", "es", "hi", "ne"}) {
    const Written written(QString::fromLatin1(language));
    const QStringList pages = support::pageTexts(written.file);
    REQUIRE(pages.size() == written.handout.pageCount());
    int joined = 0;
    for (int page = 0; page < pages.size(); ++page) {
      const QString read = bare(pages[page]);
      const QStringList drawn = support::drawnTexts(written.handout, page);
      INFO(language << ", " << written.handout.pageTitle(page).toStdString());
      CHECK(drawn.size() > 5);
      CHECK(sorted(drawn.join(u' ')) == sorted(pages[page]));
      for (const QString& text : drawn) {
        INFO(text.toStdString());
        CHECK(read.contains(bareLine(text)));
        joined += ui::handouts::hasJoinedLetters(text) ? 1 : 0;
      }
    }
    if (ui::localeOf(language).script() == QLocale::DevanagariScript) CHECK(joined > 5000);
    const QString cover = support::simplified(pages[0]);
    const auto& format = written.content.format;
    CHECK(cover.contains(support::simplified(format.litres(demoPlan().tank.full_volume_m3))));
    CHECK(cover.contains(support::simplified(format.date(demoPlan().works->schedule.front().start))));
  }
}

TEST_CASE("written from the right, the letters of each page come out of the PDF, titles and numbers too") {
  constexpr double kLeast = 0.995;
  const Written written(QStringLiteral("ur"));
  const QStringList pages = support::pageTexts(written.file);
  REQUIRE(pages.size() == written.handout.pageCount());
  for (int page = 0; page < pages.size(); ++page) {
    const QString drawn = support::drawnTexts(written.handout, page).join(u' ');
    INFO(written.handout.pageTitle(page).toStdString());
    CHECK(shareRead(written.handout.pageTitle(page), pages[page]) == 1);
    CHECK(shareRead(drawn, pages[page]) == 1);
    const QString missing = QStringLiteral(" ӜӜӜӜӜӜӜӜӜӜ").repeated(1 + drawn.size() / 100);
    CHECK(shareRead(drawn + missing, pages[page]) < kLeast);
  }
  const auto& format = written.content.format;
  CHECK(shareRead(format.litres(demoPlan().tank.full_volume_m3), pages[0]) == 1);
  CHECK(shareRead(format.date(demoPlan().works->schedule.front().start), pages[0]) == 1);
}

TEST_CASE("copied in pure black and white every text of masons and farmers still shows, in three scripts") {
  constexpr int kDpi = 150;
  for (const char* name : {"en", "ne", "ur"}) {
    const QString language = QString::fromLatin1(name);
    const Written written(language);
    int looked = 0;
    for (int page = 0; page < written.handout.pageCount(); ++page) {
      const QString code = written.handout.pageCode(page);
      if (code[0] != u'M' && code[0] != u'F') continue;
      const PageRecord record(written.handout, page);
      const QImage image = support::pageCopy(written, page, kDpi);
      for (const auto& text : record.recorder.texts) {
        const bool is_blank = std::ranges::none_of(text.text, [](QChar c) { return c.isLetterOrNumber(); });
        if (is_blank) continue;
        INFO(name << ", " << code.toStdString() << ": " << text.text.toStdString());
        CHECK(text.body_mm >= 12 * 25.4 / 72);
        const QRectF room = text.room.boundingRect();
        CHECK(support::inkIn(
                  image, QTransform::fromScale(kDpi / 25.4, kDpi / 25.4).mapRect(room).toAlignedRect()) > 0);
      }
      for (const auto& stroke : record.recorder.strokes) CHECK(stroke.width_mm >= 0.25 - 1e-6);
      ++looked;
    }
    CHECK(looked > 40);
  }
}

TEST_CASE("the check bar measures 100.0 mm on every kind of sheet, mirrored or not") {
  constexpr int kDpi = 300;
  for (const char* name : {"en", "ur"}) {
    const Written written(QString::fromLatin1(name), QPageSize::A4, {"F1", "M5", "P1", "E2"});
    for (int page = 0; page < written.handout.pageCount(); ++page) {
      const QImage image = support::pagePicture(written, page, kDpi);
      double bar_mm = 0;
      for (int y = image.height() * 4 / 5; y < image.height(); ++y) {
        const double run = support::longestRun(image, y) * 25.4 / kDpi;
        if (run < 120) bar_mm = std::max(bar_mm, run);  // longer ones are the frame's
      }
      INFO(name << ", " << written.handout.pageTitle(page).toStdString());
      constexpr double kEndStroke_mm = 0.35;  // the bar is measured between the middles of its end strokes
      CHECK(bar_mm - kEndStroke_mm == Approx(100.0).margin(0.1));  // a pixel is 0.085 mm
    }
  }
}

TEST_CASE("a sheet in another language leaves the thread in its own and is mirrored where it is written so") {
  ui::useLanguage(QLocale(QStringLiteral("en_GB")));
  const Written urdu(QStringLiteral("ur"), QPageSize::Letter, {"F1", "M1"});
  CHECK(ui::language() == "en");
  CHECK(tool("pdfinfo", {urdu.file}).out.contains("(letter)"));
  const PageRecord record(urdu.handout, 0);
  const auto& texts = record.recorder.texts;
  const auto code = std::ranges::find_if(texts, [](const auto& t) { return t.text.contains("F1"); });
  REQUIRE(code != texts.end());
  CHECK(code->room.boundingRect().left() > urdu.handout.pageSize_mm().width() / 2);
  for (const auto& text : texts) {  // letters themselves are never mirrored
    const QLineF top(text.room[0], text.room[1]);
    CHECK(top.dx() >= -1e-6);
  }
}

TEST_CASE("pages look as they did, in three languages") {
  // our own earlier pages: a regression check. TANKWRIGHT_UPDATE_GOLDENS=1 writes them anew.
  constexpr int kDpi = 45;
  const fs::path goldens = fs::path(TANKWRIGHT_SOURCE_DIR) / "tests" / "ui" / "golden";
  const bool update = qEnvironmentVariableIsSet("TANKWRIGHT_UPDATE_GOLDENS");
  if (update) fs::create_directories(goldens);
  for (const char* name : {"en", "ne", "ur"}) {
    const Written written(QString::fromLatin1(name), QPageSize::A4, {"F1", "M1", "M5", "M12", "F10", "F3"});
    for (int page = 0; page < written.handout.pageCount(); ++page) {
      const QImage image = support::pagePicture(written, page, kDpi);
      const QString code = written.handout.pageTitle(page).section(u' ', 0, 0);
      const QString file =
          QString::fromStdString(goldens.string()) + QStringLiteral("/%1_%2.png").arg(name, code);
      if (update) {
        REQUIRE(image.save(file));
        continue;
      }
      const QImage golden = QImage(file).convertToFormat(QImage::Format_Grayscale8);
      INFO(file.toStdString());
      REQUIRE(golden.size() == image.size());
      QImage difference(image.size(), QImage::Format_Grayscale8);
      int other = 0;
      for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
          const int apart = std::abs(image.constScanLine(y)[x] - golden.constScanLine(y)[x]);
          difference.scanLine(y)[x] = static_cast<uchar>(255 - apart);
          other += apart > 100 ? 1 : 0;
        }
      }
      const double share = static_cast<double>(other) / (image.width() * image.height());
      const QString shown =
          QString::fromStdString((fs::temp_directory_path() / "tankwright_difference_").string()) +
          QStringLiteral("%1_%2.png").arg(name, code);
      if (share > 0.004) difference.save(shown);
      INFO("difference picture: " << shown.toStdString());
      CHECK(share <= 0.004);
    }
  }
}
