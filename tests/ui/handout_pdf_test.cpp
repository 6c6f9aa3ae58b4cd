#include "tests/support/water_project.h"
#include "tests/ui/handout_support.h"
#include "tests/ui/pdf_support.h"
#include "ui/handouts/export.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QFile>
#include <QRegularExpression>
#include <vector>

#include <catch2/catch.hpp>

using core::Unit;
using support::contentOf;
using support::english;
using support::PageRecord;
using support::tool;
using support::WrittenHandout;
using ui::handouts::Content;
using ui::handouts::Handout;

namespace {

core::Project usual() {
  return support::sheetProjects().front().second;
}

/// Without and with the sheets of the water.
std::vector<core::Project> bothKinds() {
  return {usual(), support::waterProject()};
}

/// Number of the first page with a code, from 0.
int pageWith(const Handout& handout, const QString& code) {
  for (int page = 0; page < handout.pageCount(); ++page) {
    if (handout.pageTitle(page).startsWith(code)) return page;
  }
  FAIL("no page " << code.toStdString());
  return 0;
}

/// A page as text, as it is set.
QString textOn(const WrittenHandout& written, int page) {
  return support::simplified(support::pageText(written.file, page, support::Order::layout));
}

}  // namespace

TEST_CASE("the PDF reads back with the plan's numbers, whole and with all its pages") {
  const WrittenHandout written(contentOf(usual(), english()));
  CHECK(tool("qpdf", {"--check", written.file}).ok);
  const auto info = tool("pdfinfo", {written.file});
  REQUIRE(info.ok);
  CHECK(QRegularExpression(QStringLiteral("Pages:\\s+%1\\n").arg(written.handout.pageCount()))
            .match(info.out)
            .hasMatch());
  CHECK(info.out.contains("(A4)"));

  const auto& [project, plan, format] = written.content;
  const QString cover = textOn(written, 0);
  CHECK(cover.contains(support::simplified(format.litres(plan.tank.full_volume_m3))));
  CHECK(cover.contains(support::simplified(format.quantity(plan.tank.clear_floor_length_m, Unit::metre, 2))));
  CHECK(cover.contains(support::simplified(format.quantity(plan.earthwork.pit_top_width_m, Unit::metre, 2))));
  CHECK(cover.contains(support::simplified(format.date(plan.works->schedule.front().start))));
}

TEST_CASE("the sheets of the water read back with the plan's numbers, in local digits too") {
  for (const char* language : {"en", "ne"}) {
    const WrittenHandout written(
        contentOf(support::waterProject(), ui::Formatter(QLocale(QString::fromLatin1(language)))));
    const auto& format = written.content.format;
    const auto& water = *written.content.plan.water;
    const auto has = [&](const char* code, const QString& part) {
      const QString text = textOn(written, pageWith(written.handout, QString::fromLatin1(code)));
      INFO(code << ": " << part.toStdString() << "\n" << text.toStdString());
      CHECK(text.contains(support::simplified(part)));
    };
    const QString first = ui::words::waterHeadline(water, format).section(u' ', 0, 3);  // one line of it
    has("F1", first);
    has("F4", first);
    has("F4", format.litres(water.curve.full_m3));
    has("P4", format.quantity(1000 * water.year.evaporation, Unit::litre, 0));
    has("P4", format.quantity(1000 * water.year.unmet, Unit::litre, 0));
    has("P5", ui::words::litresWorth(water.smallest_full_m3.value(), format, ui::words::Rounding::up));
    has("P5", ui::words::areaWorth(water.largest_bed_area_m2.value(), format, ui::words::Rounding::down));
    has("P6", format.quantity(1000 * water.beds.at(0).gross_m3, Unit::litre, 0));
  }
}

TEST_CASE("all fonts are embedded and no page is made of pixels") {
  const auto kind = GENERATE(0U, 1U);
  for (const char* language : {"en", "ne"}) {
    const WrittenHandout written(
        contentOf(bothKinds()[kind], ui::Formatter(QLocale(QString::fromLatin1(language)))));
    const auto fonts = tool("pdffonts", {written.file});
    REQUIRE(fonts.ok);
    const QStringList lines = fonts.out.split(u'\n', Qt::SkipEmptyParts).mid(2);
    REQUIRE_FALSE(lines.isEmpty());
    // columns from the right: object number and generation, unicode map, subset, embedded
    for (const QString& line : lines)
      CHECK(line.simplified().split(u' ').value(line.simplified().split(u' ').size() - 5) == "yes");
    const auto images = tool("pdfimages", {"-list", written.file});
    REQUIRE(images.ok);
    CHECK(images.out.split(u'\n', Qt::SkipEmptyParts).size() == 2);  // the head of the list alone
  }
}

TEST_CASE("the check bar measures 100.0 mm on the printed page") {
  const WrittenHandout written(contentOf(usual(), english()));
  const QImage page = support::pageCopy(written, 0, 254);  // ten dots to a millimetre
  bool found = false;
  for (int y = page.height() * 4 / 5; y < page.height(); ++y) {
    // the end strokes are 0.35 mm wide and stand half outside the length they mark
    const double length_mm = support::longestRun(page, y) / 10. - 0.35;
    found = found || std::abs(length_mm - 100.0) <= 0.15;  // one and a half dots
  }
  CHECK(found);
}

TEST_CASE("every text still shows when a page is copied in pure black and white") {
  const WrittenHandout written(contentOf(bothKinds()[GENERATE(0U, 1U)], english()));
  constexpr int kDpi = 150;
  for (int number = 0; number < written.handout.pageCount(); ++number) {
    const QImage page = support::pageCopy(written, number, kDpi);
    const PageRecord record(written.handout, number);
    for (const auto& text : record.recorder.texts) {
      if (text.text.trimmed().isEmpty()) continue;
      const QRectF box = text.room.boundingRect();
      const double dots = kDpi / 25.4;
      const QRect area = QRectF(box.topLeft() * dots, box.size() * dots).toRect();
      const int ink = support::inkIn(page, area);
      INFO("page " << number + 1 << ": " << text.text.toStdString());
      CHECK(ink > area.width() * area.height() / 100);
    }
  }
}

TEST_CASE("a page in Nepali digits carries them into the PDF") {
  const Content content = contentOf(usual(), ui::Formatter(QLocale("ne")));
  const WrittenHandout written(content);
  const QString litres = support::simplified(content.format.litres(content.plan.tank.full_volume_m3));
  REQUIRE(litres.contains(QRegularExpression(QStringLiteral("[\\x{0966}-\\x{096F}]"))));
  CHECK(textOn(written, 0).contains(litres));
}

TEST_CASE("the same design gives the same bytes") {
  const Content content = contentOf(bothKinds()[GENERATE(0U, 1U)], english());
  CHECK(Handout(content, {}).pdf() == Handout(content, {}).pdf());
  CHECK(ui::handouts::svg(content) == ui::handouts::svg(content));
}

TEST_CASE("a PDF or SVG that cannot be written says why and leaves what was there") {
  const support::TemporaryFolder folder;
  const Content content = contentOf(usual(), english());
  std::filesystem::create_directory(folder.file("taken"));
  support::put(folder.file("taken") / "old", "old bytes");
  const QString taken = QString::fromStdString(folder.file("taken").string());
  CHECK_FALSE(Handout(content, {}).writePdf(taken).isEmpty());
  CHECK_FALSE(ui::handouts::exportSvg(taken, content).isEmpty());
  CHECK_FALSE(Handout(content, {}).writePdf(taken + "/no/such/folder.pdf").isEmpty());
  CHECK(support::bytesOf(folder.file("taken") / "old") == "old bytes");
  CHECK(folder.count() == 1);
}
