#include "core/compare/refine.h"
#include "core/site/thresholds.h"
#include "tests/ui/handout_site_support.h"
#include "ui/text/words.h"

#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

using core::Unit;
using support::contentOf;
using support::english;
using support::PageRecord;
using support::pagesWith;
using support::ReadPages;
using ui::Formatter;
using ui::handouts::Content;
using ui::handouts::Handout;

namespace words = ui::words;

namespace {

const QStringList kAlways{"M8", "F6", "E1", "E2"};
const QStringList kOfDelivery{"P7", "P8"};

Content searched(const core::Project& project, const Formatter& format) {
  Content content = contentOf(project, format);
  core::compare::refine(project, content.plan);
  return content;
}

}  // namespace

TEST_CASE("sheets of ground, pipes and engineer come when they apply") {
  for (const auto& [name, project] : support::siteProjects()) {
    const Content content = contentOf(project, english());
    const Handout handout(content, {});
    INFO(name);
    for (const QString& code : kAlways) CHECK_FALSE(pagesWith(handout, code).empty());
    for (const QString& code : kOfDelivery)
      CHECK(pagesWith(handout, code).empty() == !content.plan.delivery.has_value());
  }
}

TEST_CASE("sheets of ground, pipes and engineer are clean on paper") {
  struct Way {
    Formatter format;
    QPageSize::PageSizeId page;
  };
  const std::vector<Way> ways{
      {english(), QPageSize::A4},
      {Formatter(QLocale(QLocale::English), ui::UnitSystem::feet_inches), QPageSize::Letter},
      {Formatter(QLocale("ne")), QPageSize::A4},
      {Formatter(QLocale("de")), QPageSize::Letter}};
  for (const auto& [name, project] : support::siteProjects()) {
    for (const Way& way : ways) {
      const Handout handout(searched(project, way.format), {way.page});
      const QRectF allowed = QRectF(QPointF(0, 0), handout.pageSize_mm()).adjusted(12, 12, -12, -12);
      for (const QString& code : kAlways + kOfDelivery) {
        for (const int page : pagesWith(handout, code)) {
          const QStringList faults = support::faultsOnPaper(PageRecord(handout, page).recorder, allowed);
          INFO(name << ", " << handout.pageTitle(page).toStdString() << "\n"
                    << faults.join(u'\n').toStdString());
          CHECK(faults.isEmpty());
        }
      }
    }
  }
}

TEST_CASE("the ground sheet gives the mason the pegs, the levels to choose from and how to fill") {
  core::Project project = support::slopeProject();
  project.site.platform.level_by = core::PlatformLevel::balanced;  // with corners to dig and to fill
  const Content content = contentOf(project, english());
  const auto& site = content.plan.site;
  const ReadPages page(content, "M8");
  page.hasAll(words::groundAnswers(content.project, content.plan, content.format));
  REQUIRE_FALSE(site.pegs.empty());
  for (const auto& peg : site.pegs) {
    const QString name = QString::fromStdString(peg.id), height = page.metres(std::abs(peg.dig_m));
    const QString out = page.metres(peg.from_corner_m) + " out";
    if (peg.kind == "daylight_cut") page.has(name + ": cut, " + out);
    if (peg.kind == "daylight_fill") page.has(name + ": fill, " + out);
    if (peg.kind != "platform_corner") continue;
    REQUIRE(std::abs(peg.dig_m) > 0.005);  // else there is nothing to do
    if (peg.dig_m > 0) page.hasRow({name, height, "above the platform dig down", height});
    if (peg.dig_m < 0) page.hasRow({name, height, "below the platform fill up", height});
  }
  REQUIRE_FALSE(site.choices.empty());
  for (const auto& choice : site.choices)
    page.hasRow({content.format.quantity(choice.cut_m3, Unit::cubic_metre, 1),
                 content.format.quantity(choice.fill_m3, Unit::cubic_metre, 1), page.metres(choice.cover_m)});
  page.has("cut and fill balanced (chosen)");
  page.has("Topsoil is kept apart");
  page.has("0.6");  // 29 CFR 1926.651(j)(2): 2 ft
  page.has("29 CFR 1926.651(j)(2)");
}

TEST_CASE("fill is told to be rammed in layers only where there is fill") {
  const Content balanced = contentOf(support::balancedRoundProject(), english());
  REQUIRE(balanced.plan.site.bench);
  REQUIRE(balanced.plan.site.bench->fill_m3 > 0);
  const ReadPages page(balanced, "M8");
  page.has("layers of about 0.15 m");
  page.has("common practice, no source");
  const ReadPages flat(contentOf(support::levelProject(), english()), "M8");
  CHECK_FALSE(flat.text.contains("in layers"));
  CHECK_FALSE(flat.text.contains("Pegs of the platform"));
  flat.has("Topsoil is kept apart");
  flat.has("29 CFR 1926.651(j)(2)");
}

TEST_CASE("a stop marks the ground sheet, not the engineer's") {
  Content content = contentOf(support::slopeProject(), english());
  content.plan.findings.push_back({"site_slope_too_steep", core::Severity::stop, {}, "own", ""});
  content.plan.findings.back().values = {{"slope_deg", 30, Unit::degree, ""},
                                         {"from_deg", 25, Unit::degree, ""}};
  const Handout handout(content, {});
  for (const int page : pagesWith(handout, "M8"))
    CHECK(PageRecord(handout, page).recorder.says("NOT FOR CONSTRUCTION"));
  for (const int page : pagesWith(handout, "E1"))
    CHECK_FALSE(PageRecord(handout, page).recorder.says("NOT FOR CONSTRUCTION"));
}

TEST_CASE("the engineer's sheet prints what each strength lets the cut stand") {
  const Content content = contentOf(support::levelProject(), english());
  const auto& stability = content.plan.site.stability;
  const ReadPages page(content, "E1");
  page.has("It is not a promise");
  REQUIRE(stability.cuts.size() == 3);
  // firm loam, low: 4 c / gamma tan(45 + phi / 2) = 4 * 5 / 16 * tan(54) (Culmann)
  page.has("Height of a vertical cut " + page.metres(4. * 5 / 16 * std::tan(54 * M_PI / 180)));
  const auto shown = [&](const auto& value, auto text) { return value ? text(*value) : QStringLiteral("–"); };
  QStringList culmann{"This face, Culmann, just stands"}, safe{"factor 1.50"}, number{"H)"},
      height{"This face by that number"}, left{"Factor of this cut by it"};
  for (const auto& cut : stability.cuts) {
    const auto metres = [&](double value) { return page.metres(value); };
    culmann << shown(cut.culmann_m, metres);
    safe << shown(cut.culmann_safe_m, metres);
    number << shown(cut.taylor_number, [](double n) { return QString::number(n, 'f', 3); });
    height << shown(cut.taylor_m, metres);
    left << shown(cut.taylor_factor, [](double f) { return QString::number(f, 'f', 2); });
  }
  for (const QStringList& row : {culmann, safe, number, height, left}) page.hasRow(row);
  for (const char* key : {"culmann", "taylor_1937", "soil_strength"}) page.has(words::sourceText(key));
  for (const char* name : {"Checked by:", "Licence:", "Date:", "Signature:"}) page.has(name);
}

TEST_CASE("the engineer's sheet prints both states of the downhill side, or why there is none") {
  const Content content = searched(support::slopeProject(), english());
  const auto& stability = content.plan.site.stability;
  const ReadPages page(content, "E1");
  REQUIRE(stability.slips.size() == 2);
  for (const auto& slip : stability.slips) {
    REQUIRE(slip.critical);
    const auto& circle = slip.critical->slip.circle;
    page.has(QString::number(slip.critical->slip.factor, 'f', 2) + "; 1.50");
    page.hasRow({page.metres(circle.centre_m.x()) + ",", page.metres(circle.centre_m.y())});
    page.has(page.metres(circle.radius_m));
    page.hasRow({page.metres(slip.critical->slip.from_x_m) + ",", page.metres(slip.critical->slip.to_x_m)});
    page.has(content.format.integer(static_cast<int>(slip.critical->tried)) + ";");
  }
  page.has(words::sourceText("bishop_1955"));
  page.has("No earthquake");
  CHECK_FALSE(page.text.contains("terrace edge is taken"));
  ReadPages(searched(support::edgeProject(), english()), "E1")
      .has("The terrace edge is taken to run out 1.0 for each 1 that it falls");

  ReadPages(contentOf(support::slopeProject(), english()), "E1").has("were not searched for");
  ReadPages(contentOf(support::levelProject(), english()), "E1").has("there is nothing to slip");
  const ReadPages unknown(contentOf(support::unknownSoilProject(), english()), "E1");
  unknown.has("The soil is not known, so no height is reckoned.");
  unknown.has("Not reckoned: the soil is not known.");
}

TEST_CASE("the sheet of thresholds prints each with its value, its tag and its source") {
  const Content content = contentOf(support::levelProject(), english());
  const ReadPages page(content, "E2");
  for (const auto& threshold : core::site::thresholds()) {
    page.has(words::thresholdName(threshold.key));
    page.has(words::sourceText(threshold.source));
    page.has(words::tagName(threshold.tag));
  }
  // 29 CFR 1926.651(c)(2): a ladder from 4 ft; 1926.652(a)(1): held from 5 ft
  page.has(words::thresholdName("pit.ladder_from") + " 1.2 m");
  page.has(words::thresholdName("pit.cave_in_from") + " 1.5 m");
  page.has("0.33");  // a third
}
