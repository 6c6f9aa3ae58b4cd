#include "tests/ui/handout_support.h"
#include "ui/handouts/export.h"
#include "ui/handouts/page_table.h"
#include "ui/text/words.h"

#include <QPainter>
#include <QXmlStreamReader>
#include <algorithm>
#include <chrono>

#include <catch2/catch.hpp>

using core::Unit;
using support::contentOf;
using support::english;
using support::PageRecord;
using ui::Formatter;
using ui::handouts::Content;
using ui::handouts::Handout;

namespace {

core::Project usual() {
  return support::sheetProjects().front().second;
}

std::vector<int> pagesWith(const Handout& handout, const QString& code) {
  std::vector<int> pages;
  for (int page = 0; page < handout.pageCount(); ++page) {
    if (handout.pageTitle(page).startsWith(code)) pages.push_back(page);
  }
  return pages;
}

/// Text of all pages whose code starts so.
QString textOf(const Handout& handout, const QString& code) {
  QString all;
  for (const int page : pagesWith(handout, code)) all += PageRecord(handout, page).recorder.allText() + u'\n';
  return support::simplified(all);
}

Content withStop() {
  Content content = contentOf(usual(), english());
  content.plan.findings.push_back({"pit_too_deep_by_hand",
                                   core::Severity::stop,
                                   {{"pit_depth_m", 2.7, Unit::metre, ""}, {"most_m", 2.5, Unit::metre, ""}},
                                   "own",
                                   ""});
  return content;
}

}  // namespace

TEST_CASE("every sheet is clean on paper: inside the margins, 12 point, black, nothing on anything") {
  struct Way {
    Formatter format;
    QPageSize::PageSizeId page;
  };
  const std::vector<Way> ways{
      {english(), QPageSize::A4},
      {Formatter(QLocale(QLocale::English), ui::UnitSystem::feet_inches), QPageSize::Letter},
      {Formatter(QLocale("ne")), QPageSize::A4},
      {Formatter(QLocale("de")), QPageSize::Letter}};
  for (const auto& [name, project] : support::sheetProjects()) {
    for (const Way& way : ways) {
      const Handout handout(contentOf(project, way.format), {way.page});
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

TEST_CASE(
    "each page works alone: code, title, project, place, mark, page count, check bar and the local codes "
    "line") {
  const Handout handout(contentOf(usual(), english()), {});
  for (int page = 0; page < handout.pageCount(); ++page) {
    const PageRecord record(handout, page);
    const auto& paper = record.recorder;
    INFO(handout.pageTitle(page).toStdString());
    CHECK(paper.says("Terrace tank above the upper field, Halvarn ridge"));
    CHECK(paper.says("Design mark"));
    CHECK(paper.says(QStringLiteral("Page %1 of %2").arg(page + 1).arg(handout.pageCount())));
    CHECK(paper.says("Local codes and licensed practice come first."));
    const auto bars = std::ranges::count_if(paper.strokes, [](const auto& stroke) {
      const QRectF box = stroke.path.boundingRect();
      return box.height() < 1e-9 && std::abs(box.width() - 100.0) < 1e-6 && box.top() > 250;
    });
    CHECK(bars == 1);
  }
}

TEST_CASE("the cover gives the plan's own numbers") {
  const Content content = contentOf(usual(), english());
  const Handout handout(content, {});
  const QString cover = textOf(handout, "F1");
  const auto& format = content.format;
  const auto has = [&](const QString& part) { return cover.contains(support::simplified(part)); };
  CHECK(has(format.litres(content.plan.tank.full_volume_m3)));
  CHECK(has(format.quantity(content.plan.earthwork.pit_top_length_m, Unit::metre, 2)));
  CHECK(has(format.quantity(content.plan.earthwork.pit_depth_m, Unit::metre, 2)));
  CHECK(has(format.date(content.plan.works->schedule.front().start)));
  CHECK(has(format.date(content.plan.works->schedule.back().finish)));
  for (const auto& m : content.plan.quantities.materials) {
    if (m.id == "cement_bags") CHECK(has(ui::words::amount(m.order, m.unit, format)));
  }
}

TEST_CASE("the materials sheet lists every material with net and order") {
  const Content content = contentOf(usual(), english());
  const QString text = textOf(Handout(content, {}), "P1");
  for (const auto& m : content.plan.quantities.materials) {
    CHECK(text.contains(support::simplified(ui::words::amount(m.net, m.unit, content.format))));
    CHECK(text.contains(support::simplified(ui::words::amount(m.order, m.unit, content.format))));
  }
}

TEST_CASE("the customary bill is printed only when there is one, with both reckonings and their ratios") {
  core::Project without = usual();
  without.lining.customary = {};
  CHECK(pagesWith(Handout(contentOf(without, english()), {}), "P2").empty());

  const Content content = contentOf(usual(), english());
  const QString text = textOf(Handout(content, {}), "P2");
  CHECK(text.contains("Exact shells"));
  CHECK(text.contains("Area × thickness"));
  for (const auto& line : content.plan.quantities.customary->lines) {
    CHECK(text.contains("× " + content.format.number(line.shell_ratio, Unit::factor, 2)));
    CHECK(text.contains("× " + content.format.number(line.by_area_ratio, Unit::factor, 2)));
  }
  const auto& answers = *content.plan.quantities.customary->cement;
  CHECK(text.contains(support::simplified(content.format.quantity(answers.cement_kg, Unit::kilogram, 0))));
  CHECK(text.contains(
      support::simplified(content.format.quantity(answers.cement_by_area_kg, Unit::kilogram, 0))));
}

TEST_CASE("there is one mix card a coat, with as many boxes to tick as batches") {
  const Content content = contentOf(usual(), english());
  const Handout handout(content, {});
  const auto pages = pagesWith(handout, "M1");
  REQUIRE(pages.size() == content.plan.quantities.coats.size());
  for (std::size_t k = 0; k < pages.size(); ++k) {
    const PageRecord record(handout, pages[k]);
    const auto boxes = std::ranges::count_if(record.recorder.strokes, [](const auto& stroke) {
      const QSizeF size = stroke.path.boundingRect().size();
      return std::abs(size.width() - 6) < 1e-6 && std::abs(size.height() - 6) < 1e-6;
    });
    for (const auto& batch : content.plan.quantities.batches) {
      if (batch.coat == static_cast<int>(k) + 1 && batch.bags == 1) CHECK(boxes == batch.count);
    }
  }
}

TEST_CASE("the wetting calendar has every day of every curing with three boxes") {
  const Content content = contentOf(usual(), english());
  const Handout handout(content, {});
  const QString text = textOf(handout, "M7");
  int days = 0;
  for (const auto& task : content.plan.works->schedule) {
    if (!task.id.starts_with("cure_")) continue;
    for (std::chrono::sys_days day = task.start; day <= std::chrono::sys_days(task.finish);
         day += std::chrono::days(1), ++days) {
      CHECK(text.contains(support::simplified(content.format.date(day))));
    }
  }
  REQUIRE(days > 0);
  std::ptrdiff_t boxes = 0;
  for (const int page : pagesWith(handout, "M7")) {
    const PageRecord record(handout, page);
    boxes += std::ranges::count_if(record.recorder.strokes, [](const auto& stroke) {
      const QSizeF size = stroke.path.boundingRect().size();
      return std::abs(size.width() - 5) < 1e-6 && std::abs(size.height() - 5) < 1e-6;
    });
  }
  CHECK(boxes == 3 * days + 1);  // and one for the filling begun
}

TEST_CASE("without crew and dates the calendars are left out and the cover says so") {
  core::Project project = usual();
  project.works.reset();
  const Handout handout(contentOf(project, english()), {});
  CHECK(pagesWith(handout, "M6").empty());
  CHECK(pagesWith(handout, "M7").empty());
  CHECK(textOf(handout, "F1").contains("no work calendar"));
}

TEST_CASE("a stop finding puts NOT FOR CONSTRUCTION on every construction sheet and nowhere without one") {
  const Handout stopped(withStop(), {});
  for (const auto& kind : ui::handouts::pageKinds()) {
    for (const int page : pagesWith(stopped, QString::fromLatin1(kind.code))) {
      const PageRecord record(stopped, page);
      const bool banner = std::ranges::any_of(record.recorder.texts, [](const auto& text) {
        return text.text == "NOT FOR CONSTRUCTION" && text.body_mm > 8;
      });
      INFO(kind.code);
      CHECK(banner == kind.construction);
    }
  }
  core::Project shallow = usual();
  shallow.tank.depth_m = 0.8;
  const Content free = contentOf(shallow, english());
  REQUIRE_FALSE(ui::handouts::hasStop(free));
  const Handout handout(free, {});
  for (int page = 0; page < handout.pageCount(); ++page)
    CHECK_FALSE(PageRecord(handout, page).recorder.says("NOT FOR CONSTRUCTION"));
}

TEST_CASE("construction sheets carry the usual cautions") {
  const Handout handout(contentOf(usual(), english()), {});
  for (const auto& kind : ui::handouts::pageKinds()) {
    if (!kind.construction) continue;
    for (const int page : pagesWith(handout, QString::fromLatin1(kind.code))) {
      const QString text = support::simplified(PageRecord(handout, page).recorder.allText());
      for (const char* word : {"fall in", "0.6 m", "ladder", "Cement burns", "dust", "drown"})
        CHECK(text.contains(word));
    }
  }
}

TEST_CASE("sheets of different designs carry different marks, those of the same design the same") {
  const auto mark = [](const core::Project& project) {
    const QString text = textOf(Handout(contentOf(project, english()), {}), "F1");
    return text.mid(text.indexOf("Design mark"), 21);
  };
  core::Project other = usual();
  other.lining.waste_percent += 1;
  CHECK(mark(usual()) == mark(usual()));
  CHECK(mark(usual()) != mark(other));
}

TEST_CASE("the findings sheet prints each finding with its source") {
  const Content content = contentOf(usual(), english());
  REQUIRE_FALSE(content.plan.findings.empty());
  const QString text = textOf(Handout(content, {}), "P3");
  for (const auto& finding : content.plan.findings) {
    CHECK(text.contains(support::simplified(ui::words::findingText(finding, content.format)).left(30)));
  }
}

TEST_CASE("the SVG sheet is well-formed, in millimetres, and carries the dimensions as text") {
  const Content content = contentOf(usual(), english());
  const QByteArray bytes = ui::handouts::svg(content);
  QXmlStreamReader reader(bytes);
  QString text, width, height;
  while (!reader.atEnd()) {
    reader.readNext();
    if (reader.isStartElement() && reader.name() == u"svg") {
      width = reader.attributes().value("width").toString();
      height = reader.attributes().value("height").toString();
    }
    if (reader.isCharacters()) text += reader.text();
  }
  CHECK_FALSE(reader.hasError());
  CHECK(width == "297mm");
  CHECK(height == "420mm");
  CHECK(text.contains("pit top length"));
  CHECK(text.contains("clear depth"));
}
