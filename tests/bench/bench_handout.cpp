#include "tests/support/recorder.h"
#include "tests/ui/pdf_support.h"
#include "ui/handouts/handout.h"
#include "ui/text/languages.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QPdfWriter>
#include <algorithm>
#include <cmath>
#include <ctime>
#include <optional>
#include <thread>
#include <vector>

#include <fmt/format.h>

// How long the whole set of sheets takes as a PDF, beside a PDF of plain tables: as many pages, with the same
// texts on each, drawn straight into cells. Processor time; medians of runs taken in turn,
// each in a thread that has painted nothing yet.

namespace {

constexpr int kRuns = 9;
constexpr int kDotsPerInch = 1200;
constexpr double kDotsPerMm = kDotsPerInch / 25.4;
constexpr double kMargin_mm = 14;
constexpr int kColumns = 4;

using ui::handouts::Content;
using ui::handouts::Handout;

struct Text {
  QString text;
  double body_mm;
};
using PageTexts = std::vector<Text>;

/// What each page says, piece by piece.
std::vector<PageTexts> textsOf(const Handout& handout) {
  std::vector<PageTexts> pages;
  for (int page = 0; page < handout.pageCount(); ++page) {
    support::Recorder recorder(handout.pageSize_mm());
    QPainter painter(&recorder);
    handout.paint(painter, page);
    painter.end();
    PageTexts& texts = pages.emplace_back();
    for (const auto& text : recorder.texts) texts.push_back({text.text, text.body_mm});
  }
  return pages;
}

QFont fontOf(double body_mm) {
  QFont font(QStringLiteral("Noto Sans"));
  font.setPixelSize(static_cast<int>(std::lround(body_mm * kDotsPerMm)));
  return font;
}

/// A table with a text in each cell and a line round it, set in one font.
void paintTable(QPainter& painter, const QSizeF& page_mm, const PageTexts& texts) {
  if (texts.empty()) return;
  const QRectF area =
      QRectF(QPointF(0, 0), page_mm).adjusted(kMargin_mm, kMargin_mm, -kMargin_mm, -kMargin_mm);
  const auto rows = static_cast<int>((texts.size() + kColumns - 1) / kColumns);
  const QSizeF cell(area.width() / kColumns * kDotsPerMm, area.height() / rows * kDotsPerMm);
  painter.setFont(fontOf(texts.front().body_mm));
  painter.setPen(QPen(Qt::black, 0.35 * kDotsPerMm));
  for (std::size_t k = 0; k < texts.size(); ++k) {
    const auto column = static_cast<int>(k) % kColumns, row = static_cast<int>(k) / kColumns;
    const QPointF at(area.left() * kDotsPerMm + column * cell.width(),
                     area.top() * kDotsPerMm + row * cell.height());
    painter.drawText(at + QPointF(0, cell.height()), texts[k].text);
    painter.drawRect(QRectF(at, cell));
  }
}

QByteArray plainTables(const QSizeF& page_mm, const std::vector<PageTexts>& pages) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kDotsPerInch);
  writer.setPageSize(QPageSize(page_mm, QPageSize::Millimeter));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
  QPainter painter(&writer);
  for (const PageTexts& texts : pages) {
    if (&texts != &pages.front()) writer.newPage();
    paintTable(painter, page_mm, texts);
  }
  painter.end();
  return bytes;
}

template <typename Work>
double milliseconds(const Work& work) {
  const std::clock_t start = std::clock();
  work();
  return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

/// In a thread of its own, which knows no font yet: as the first export of a run of the program.
template <typename Work>
void afresh(const Work& work) {
  std::thread(work).join();
}

double median(std::vector<double> values) {
  std::ranges::sort(values);
  return values[values.size() / 2];
}

struct Times {
  std::vector<double> build, paint, whole, plain;
};

void measure(const QString& language) {
  const Content content = support::demoContent(language);
  const ui::handouts::Options options{QPageSize::A4, language};
  const Handout first(content, options);
  const std::vector<PageTexts> texts = textsOf(first);
  Times times;
  qsizetype size = 0, plain_size = 0;
  for (int run = 0; run < kRuns; ++run) {
    afresh([&] {
      std::optional<Handout> handout;
      times.build.push_back(milliseconds([&] { handout.emplace(content, options); }));
      times.paint.push_back(milliseconds([&] { size = handout->pdf().size(); }));
      times.whole.push_back(times.build.back() + times.paint.back());
    });
    afresh([&] {
      times.plain.push_back(
          milliseconds([&] { plain_size = plainTables(first.pageSize_mm(), texts).size(); }));
    });
  }
  std::size_t count = 0;
  for (const PageTexts& page : texts) count += page.size();
  const double whole = median(times.whole), plain = median(times.plain), pages = first.pageCount();
  fmt::print(
      "{}: {} pages, {} texts: {:.0f} ms, {:.2f} ms a page (build {:.2f}, painting {:.2f}), {} kB; "
      "plain tables {:.0f} ms, {} kB; ratio {:.2f}\n",
      language.toStdString(), first.pageCount(), count, whole, whole / pages, median(times.build) / pages,
      median(times.paint) / pages, size / 1000, plain, plain_size / 1000, whole / plain);
}

}  // namespace

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(argc, argv);
  ui::useLanguage(QLocale(QStringLiteral("en_GB")));
  const QStringList chosen = application.arguments().mid(1);
  for (const QString& language : chosen.isEmpty() ? ui::languages() : chosen) measure(language);
  return 0;
}
