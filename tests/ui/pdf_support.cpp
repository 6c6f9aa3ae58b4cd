#include "tests/ui/pdf_support.h"

#include "core/compare/refine.h"
#include "core/exchange/project_file.h"
#include "tests/ui/handout_support.h"
#include "ui/drawings/text_log.h"

#include <algorithm>
#include <stdexcept>

namespace support {
namespace {

void require(bool is_so, const char* what) {
  if (!is_so) throw std::runtime_error(what);
}

QStringList only(int page) {
  const QString number = QString::number(page + 1);
  return {"-f", number, "-l", number};
}

QImage rendered(const WrittenHandout& written, int page, int dpi, const QString& mode,
                const QString& ending) {
  const QString stem = QString::fromStdString(written.folder.file("page").string());
  const QStringList how{mode, "-r", QString::number(dpi), "-singlefile", written.file, stem};
  require(tool("pdftoppm", only(page) + how).ok, "no picture of a page");
  const QImage image(stem + ending);
  require(!image.isNull(), "an empty picture of a page");
  return image.convertToFormat(QImage::Format_Grayscale8);
}

class LoggedImage : public QImage, public ui::drawings::TextLog {
public:
  using QImage::QImage;
};

}  // namespace

core::Project readDemo(const std::string& name) {
  return core::exchange::readProject(TANKWRIGHT_SOURCE_DIR "/resources/demo/" + name + ".tankwright")
      .value()
      .project;
}

const core::Project& demo() {
  static const core::Project project = readDemo("terrace");
  return project;
}

const core::Plan& demoPlan() {
  static const core::Plan plan = [] {
    core::Plan made = core::plan(demo()).value();
    core::compare::refine(demo(), made);
    return made;
  }();
  return plan;
}

ui::handouts::Content demoContent(const ui::Formatter& format) {
  return {demo(), demoPlan(), format};
}

ui::handouts::Content demoContent(const QString& language) {
  return demoContent(ui::Formatter(ui::localeOf(language)));
}

WrittenHandout::WrittenHandout(ui::handouts::Content of, const ui::handouts::Options& options)
    : content(std::move(of)),
      handout(content, options),
      file(QString::fromStdString(folder.file("sheets.pdf").string())) {
  require(handout.writePdf(file).isEmpty(), "the PDF cannot be written");
}

QStringList drawnTexts(const ui::handouts::Handout& handout, int page) {
  LoggedImage image(handout.pageSize_mm().toSize(), QImage::Format_Grayscale8);
  QPainter painter(&image);
  handout.paint(painter, page);
  QStringList texts;
  for (const auto& drawn : image.takeTexts()) texts << drawn.text;
  return texts;
}

QString pageText(const QString& file, int page, Order order) {
  const QStringList how = order == Order::layout ? QStringList{"-layout"} : QStringList{};
  const ToolRun run = tool("pdftotext", only(page) + how + QStringList{"-enc", "UTF-8", file, "-"});
  require(run.ok, "no text of a page");
  return run.out;
}

QStringList pageTexts(const QString& file) {
  const ToolRun run = tool("pdftotext", {"-enc", "UTF-8", file, "-"});
  require(run.ok, "no text of the pages");
  return run.out.chopped(1).split(u'\f');
}

QImage pagePicture(const WrittenHandout& written, int page, int dpi) {
  return rendered(written, page, dpi, "-gray", ".pgm");
}

QImage pageCopy(const WrittenHandout& written, int page, int dpi) {
  return rendered(written, page, dpi, "-mono", ".pbm");
}

bool isInk(const QImage& grey, int x, int y) {
  return grey.constScanLine(y)[x] < 128;
}

int longestRun(const QImage& grey, int y) {
  int longest = 0, run = 0;
  for (int x = 0; x < grey.width(); ++x) {
    run = isInk(grey, x, y) ? run + 1 : 0;
    longest = std::max(longest, run);
  }
  return longest;
}

int inkIn(const QImage& grey, const QRect& area) {
  const QRect on_page = area & grey.rect();
  int ink = 0;
  for (int y = on_page.top(); y <= on_page.bottom(); ++y) {
    for (int x = on_page.left(); x <= on_page.right(); ++x) ink += isInk(grey, x, y) ? 1 : 0;
  }
  return ink;
}

}  // namespace support
