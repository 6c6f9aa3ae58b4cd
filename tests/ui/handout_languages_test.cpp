#include "tests/ui/handout_support.h"
#include "tests/ui/pdf_support.h"
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
using support::pageText;
using support::tool;

namespace {

namespace fs = std::filesystem;

/// A handout of the demonstration in a language, on paper of a size.
struct Written : support::WrittenHandout {
  explicit Written(const QString& language, QPageSize::PageSizeId size = QPageSize::A4,
                   const QStringList& codes = {})
      : WrittenHandout(support::demoContent(language), {size, language, codes}) {}
};

/// Letters of a text, sorted. Poppler gives words of right-to-left scripts in the order in which they are
/// painted, and takes vowel signs of Devanagari that stand before their consonant for what they look like; so
/// the order within a text is forgiven, but no letter may be missing. Letters that a ligature or a conjunct
/// joins are told apart by compatibility decomposition.
std::map<char32_t, int> letters(const QString& text) {
  std::map<char32_t, int> counted;
  for (const char32_t c : text.normalized(QString::NormalizationForm_KC).toUcs4()) {
    if (QChar::isLetterOrNumber(c)) ++counted[c];
  }
  return counted;
}

/// Of a conjunct of Devanagari that is drawn as one glyph the PDF names only some of the letters, for it
/// keeps one for each glyph.
double leastRead(const QString& language) {
  return language == "hi" || language == "ne" ? 0.93 : 0.995;
}

/// Share of the letters of a text that a page has.
double shareRead(const QString& text, const std::map<char32_t, int>& page) {
  int all = 0, read = 0;
  for (const auto& [letter, count] : letters(text)) {
    all += count;
    const auto found = page.find(letter);
    read += found == page.end() ? 0 : std::min(count, found->second);
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

TEST_CASE("in every script the letters of each page come back, titles and numbers too") {
  for (const QString& language : ui::languages()) {
    const Written written(language);
    int pages = 0;
    for (int page = 0; page < written.handout.pageCount(); page += page < 12 ? 1 : 9) {
      const std::map<char32_t, int> read = letters(pageText(written.file, page));
      QString painted;
      for (const auto& text : PageRecord(written.handout, page).recorder.texts) painted += text.text + u' ';
      INFO(language.toStdString() << ", " << written.handout.pageTitle(page).toStdString());
      CHECK(shareRead(written.handout.pageTitle(page), read) == 1);
      CHECK(shareRead(painted, read) > leastRead(language));
      const QString missing = QStringLiteral(" ӜӜӜӜӜӜӜӜӜӜ").repeated(1 + painted.size() / 100);
      CHECK(shareRead(painted + missing, read) < leastRead(language));
      ++pages;
    }
    CHECK(pages > 15);
    const std::map<char32_t, int> cover = letters(pageText(written.file, 0));
    const auto& format = written.content.format;
    for (const QString& number : {format.litres(demoPlan().tank.full_volume_m3),
                                  format.date(demoPlan().works->schedule.front().start)})
      CHECK(shareRead(number, cover) > (language == "hi" || language == "ne" ? 0.9 : 0.999));
  }
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
      if (page % 3 != 0) continue;  // each third page of the set
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
    CHECK(looked > 8);
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
