// The calculation sheet E3: clean on paper, every reckoning once.
#include "tests/ui/handout_support.h"
#include "tests/ui/pdf_support.h"
#include "ui/text/reckonings.h"
#include "ui/text/words.h"

#include <map>

#include <catch2/catch.hpp>

using support::demoContent;
using support::english;
using support::PageRecord;
using ui::Formatter;
using ui::handouts::Content;
using ui::handouts::Handout;
using ui::words::Reckoning;

namespace {

Handout calculation(const Content& content, QPageSize::PageSizeId page) {
  ui::handouts::Options options;
  options.page = page;
  options.codes = {QStringLiteral("E3")};
  return Handout(content, options);
}

/// Lines are broken anywhere, so blanks do not count.
QString bare(const QString& text) {
  return support::simplified(text).remove(u' ');
}

QString textOf(const Handout& handout) {
  QString all;
  for (int page = 0; page < handout.pageCount(); ++page)
    all += PageRecord(handout, page).recorder.allText() + u'\n';
  return bare(all);
}

/// What the sheet says of a number: name and value, then how.
QString headOf(const Reckoning& reckoning) {
  return bare(QStringLiteral("%1: %2 %3.").arg(reckoning.name, reckoning.value, reckoning.formula));
}

}  // namespace

TEST_CASE("the calculation sheet is clean on paper in both units and paper sizes") {
  const Formatter feet(QLocale(QLocale::English), ui::UnitSystem::feet_inches);
  std::vector<std::pair<std::string, Content>> contents{
      {"terrace", demoContent(english())},
      {"in feet", demoContent(feet)},
      {"Nepali digits", demoContent(Formatter(QLocale("ne")))}};
  for (const auto& [name, project] : support::sheetProjects())
    contents.emplace_back(name, support::contentOf(project, english()));
  for (const auto& [name, content] : contents) {
    for (const auto size : {QPageSize::A4, QPageSize::Letter}) {
      const Handout handout = calculation(content, size);
      const QRectF allowed = QRectF(QPointF(0, 0), handout.pageSize_mm()).adjusted(12, 12, -12, -12);
      for (int page = 0; page < handout.pageCount(); ++page) {
        const PageRecord record(handout, page);
        const QStringList faults = support::faultsOnPaper(record.recorder, allowed);
        INFO(name << ", " << handout.pageTitle(page).toStdString() << "\n"
                  << faults.join(u'\n').toStdString());
        REQUIRE(faults.isEmpty());
      }
    }
  }
}

TEST_CASE("the calculation sheet tells every reckoning of the plan once") {
  const Content content = demoContent(english());
  const QString text = textOf(calculation(content, QPageSize::A4));
  std::map<QString, int> wanted;
  for (const Reckoning& r : ui::words::reckonings(content.project, content.plan, content.format))
    ++wanted[headOf(r)];
  REQUIRE(wanted.size() > 300);
  for (const auto& [head, count] : wanted) {
    INFO(head.toStdString());
    CHECK(text.count(head) == count);
  }
}

TEST_CASE("the calculation sheet names each source with its tag, and each group by a heading") {
  const Content content = demoContent(english());
  const QString text = textOf(calculation(content, QPageSize::A4));
  for (const Reckoning& r : ui::words::reckonings(content.project, content.plan, content.format)) {
    INFO(r.id << " " << r.source);
    if (r.source != "user") CHECK(text.contains(bare(ui::words::sourceText(r.source))));
    CHECK(text.contains(bare(ui::words::reckoningGroupName(r.group))));
  }
}
