#include "ui/handouts/pdf_text.h"

#include "tests/ui/handout_support.h"
#include "tests/ui/pdf_support.h"
#include "ui/drawings/lettering.h"

#include <QBuffer>
#include <QPdfWriter>

#include <catch2/catch.hpp>

// Letters beside glyphs: ISO 32000-1, 14.9.4 (ActualText) and 14.6 (marked content); the table of
// places: 7.5.4. Outside readers: poppler for the text, qpdf for the form.

using support::tool;
using ui::handouts::contentWithTexts;
using ui::handouts::PageTexts;
using ui::handouts::pdfWithTexts;

namespace {

/// A conjunct, a sign before its consonant, one above it; a text in two scripts; a text in Latin.
const QStringList kTexts{QStringLiteral("अक्टोबर देखि फेब्रुअरी"), QStringLiteral("५० kgका ४३ बोरा"), "plain"};
const QString kUrdu = QStringLiteral("ٹینکی ایک نظر میں");

class Writer : public QPdfWriter, public ui::drawings::TextLog {
public:
  using QPdfWriter::QPdfWriter;
};

struct Made {
  QByteArray pdf;
  std::vector<PageTexts> pages;
};

/// A PDF with the same texts on each page, level and turned.
Made made(const QStringList& texts, int pages = 2) {
  Made all;
  QBuffer buffer(&all.pdf);
  buffer.open(QIODevice::WriteOnly);
  Writer writer(&buffer);
  writer.setResolution(1200);
  QPainter painter(&writer);
  painter.scale(1200 / 25.4, 1200 / 25.4);
  for (int page = 0; page < pages; ++page) {
    if (page > 0) writer.newPage();
    double down = 20;
    for (const QString& text : texts) {
      ui::drawings::drawText(painter, {20, down}, text, {});
      ui::drawings::drawText(painter, {120, down + 60}, text, {5, true}, 30);
      painter.drawLine(QPointF(10, down), QPointF(90, down));
      down += 20;
    }
    all.pages.push_back(writer.takeTexts());
  }
  painter.end();
  return all;
}

struct File {
  explicit File(const QByteArray& pdf) : name(QString::fromStdString(folder.file("a.pdf").string())) {
    support::put(folder.file("a.pdf"), {pdf.constData(), static_cast<std::size_t>(pdf.size())});
  }
  support::TemporaryFolder folder;
  QString name;
};

QString said(const QByteArray& pdf) {
  return tool("pdftotext", {"-enc", "UTF-8", File(pdf).name, "-"}).out;
}

bool isSound(const QByteArray& pdf) {
  return tool("qpdf", {"--check", File(pdf).name}).ok;  // a warning too ends with a code that is not 0
}

QByteArray pictureOf(const QByteArray& pdf) {
  const File file(pdf);
  const QString stem = QString::fromStdString(file.folder.file("page").string());
  REQUIRE(tool("pdftoppm", {"-r", "150", "-singlefile", file.name, stem}).ok);
  const std::string bytes = support::bytesOf(file.folder.file("page.ppm"));
  return {bytes.data(), static_cast<qsizetype>(bytes.size())};
}

/// What QPdfWriter writes for a text at a place, in as many pieces as there are fonts in it.
QByteArray written(const QByteArray& place, int pieces = 1) {
  const QByteArray piece = "q\n/CSp cs 0 0 0 scn\nBT\n/F7 435 Tf 1 0 0 -1 0 0 Tm\n0 0 Td <0001> Tj\nET\nQ\n";
  return "q\n0.47 0 0 0.47 " + place + " cm\n0 0 0 SCN\n" + piece.repeated(pieces) + "Q\n";
}

const QByteArray kMark = "/Span <</ActualText <FEFF0915>>> BDC\n";  // the letter ka

}  // namespace

TEST_CASE("texts in Devanagari come out of the PDF as they were drawn, and did not before") {
  const Made before = made(kTexts);
  const QByteArray after = pdfWithTexts(before.pdf, before.pages);
  for (const QString& text : kTexts) {
    INFO(text.toStdString());
    // level and turned, on two pages; poppler takes a turned text apart that is not marked
    CHECK(said(after).count(text) == (ui::handouts::hasJoinedLetters(text) ? 4 : 2));
  }
  CHECK_FALSE(said(before.pdf).contains(kTexts[0]));
  CHECK(isSound(before.pdf));
  CHECK(isSound(after));
  CHECK(pictureOf(after) == pictureOf(before.pdf));
  CHECK(pictureOf(after) != pictureOf(made({kTexts[0]}).pdf));
}

TEST_CASE("a PDF without joined letters, or written from the right, keeps its bytes") {
  for (const QString& text : {kTexts[2], kUrdu}) {
    const Made as_it_was = made({text});
    CHECK(pdfWithTexts(as_it_was.pdf, as_it_was.pages) == as_it_was.pdf);
  }
  const Made mixed = made({kTexts[0], kUrdu});
  const Made urdu = made({kUrdu});
  CHECK(said(pdfWithTexts(mixed.pdf, mixed.pages)).contains(said(urdu.pdf).section(u'\n', 0, 0)));
}

TEST_CASE("a PDF in a form that is not known comes back as it is") {
  const Made good = made(kTexts);
  const auto stays = [&](const QByteArray& pdf) { return pdfWithTexts(pdf, good.pages) == pdf; };
  CHECK_FALSE(stays(good.pdf));
  CHECK(stays({}));
  CHECK(stays("%PDF-1.4\n%%EOF\n"));
  CHECK(pdfWithTexts(good.pdf, {good.pages[0]}) == good.pdf);  // other pages than it has
  for (qsizetype size = 0; size < good.pdf.size() - 20; size += 97) CHECK(stays(good.pdf.left(size)));
  const File file(good.pdf);
  for (const char* how : {"--object-streams=generate", "--stream-data=uncompress", "--linearize", "--qdf"}) {
    const QString other = QString::fromStdString(file.folder.file("other.pdf").string());
    REQUIRE(tool("qpdf", {QLatin1String(how), file.name, other}).ok);
    const std::string bytes = support::bytesOf(file.folder.file("other.pdf"));
    INFO(how);
    CHECK(stays({bytes.data(), static_cast<qsizetype>(bytes.size())}));
  }
}

TEST_CASE("a PDF with a word of its form changed comes back as it is") {
  const Made good = made(kTexts);
  for (const char* word : {"startxref\n", "xref\n0 ", "trailer\n", "/Type /Pages\n", "/Type /Page\n", "/Kids",
                           "/Contents ", "/Length ", "/Filter /FlateDecode", "stream\n", "endstream\n",
                           "endobj\n", " 0 obj\n", " 00000 n \n"}) {
    QByteArray bad = good.pdf;
    bad.replace(word, QByteArray(word).toUpper() + '7');
    INFO(word);
    CHECK(pdfWithTexts(bad, good.pages) == bad);
  }
}

TEST_CASE("a text is found by its place, and its mark stands inside what sets its letters") {
  const PageTexts one{{QStringLiteral("क"), {10, 20}}};
  CHECK(contentWithTexts(written("10 20"), one) ==
        written("10 20").replace("BT\n", kMark + "BT\n").replace("ET\n", "ET\nEMC\n"));
  const QByteArray two = contentWithTexts(written("10 20", 2), one);
  CHECK(two.count(kMark) == 1);
  CHECK(two.count("EMC\n") == 1);
  CHECK(two.indexOf(kMark) < two.indexOf("BT\n"));
  CHECK(two.indexOf("EMC\n") > two.lastIndexOf("ET\n"));
  CHECK(contentWithTexts(written("10 20.1"), one) == written("10 20.1"));
  CHECK(contentWithTexts(written("10 20").replace(" cm\n", " dm\n"), one).count("BDC") == 0);
  CHECK(contentWithTexts(written("10 20").replace("ET\n", ""), one).count("BDC") == 0);
  const QByteArray after_restore =
      "q\n1 0 0 1 10 20 cm\nQ\n" + written("30 40").split('\n').mid(2).join('\n');
  CHECK(contentWithTexts(after_restore, one) == after_restore);
}

TEST_CASE("one text that is not found does not move the others") {
  const PageTexts texts{{QStringLiteral("ख"), {1, 1}}, {"plain", {2, 2}}, {QStringLiteral("क"), {10, 20}}};
  const QByteArray content = written("5 5") + written("2 2", 2) + written("10 20");
  const QByteArray marked = contentWithTexts(content, texts);
  CHECK(marked.count("BDC\n") == 1);
  CHECK(marked.indexOf(kMark) > marked.indexOf("10 20 cm"));
  CHECK(QByteArray(marked).replace(kMark, "").replace("EMC\n", "") == content);
}
