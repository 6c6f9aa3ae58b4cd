#include "tests/support/water_project.h"
#include "tests/ui/handout_site_support.h"
#include "ui/handouts/pictograms.h"
#include "ui/handouts/stage_pictures.h"
#include "ui/text/languages.h"
#include "ui/text/words.h"

#include <QDir>
#include <QFile>
#include <QSvgRenderer>
#include <algorithm>
#include <cmath>

#include <catch2/catch.hpp>

using core::Unit;
using support::contentOf;
using support::english;
using support::PageRecord;
using support::pagesWith;
using support::ReadPages;
using support::RecordedStroke;
using ui::Formatter;
using ui::handouts::Content;
using ui::handouts::Handout;

namespace words = ui::words;

namespace {

const QStringList kMason{"M11", "M12", "M13", "M14", "M15"};
const QStringList kFarmer{"F9", "F10", "F11", "F12", "F13"};

core::Project manyPeople() {
  core::Project project = support::levelProject();
  project.works->plasterers = 60;
  project.works->masons = 30;
  return project;
}

/// On a slope, with a tap that fills the tank in some weeks.
core::Project filledOnSlope() {
  core::Project project = support::slopeProject();
  project.works->fill_inflow_l_per_day = 700;
  return project;
}

core::Project upright() {
  core::Project project = support::levelProject();
  project.tank.batter = 0;
  return project;
}

core::Project noBed() {
  core::Project project = support::levelProject();
  project.lining.stone_bed_m = 0;
  return project;
}

core::Project stopped() {
  core::Project project = support::levelProject();
  project.tank.depth_m = 3;
  return project;
}

std::vector<std::pair<std::string, core::Project>> formProjects() {
  std::vector<std::pair<std::string, core::Project>> projects = support::sheetProjects();
  projects.emplace_back("with water and pipes", support::deliveryProject());
  projects.emplace_back("pipes through the lining", support::liningPipeProject());
  projects.emplace_back("upright walls", upright());
  projects.emplace_back("no stone bed", noBed());
  projects.emplace_back("round on a slope", support::balancedRoundProject());
  projects.emplace_back("a finding says stop", stopped());
  return projects;
}

QStringList wantedCodes() {
  return kMason + kFarmer + QStringList{"F8"};
}

struct Way {
  std::string name;
  Formatter format;
  ui::handouts::Options options;
};

std::vector<Way> ways() {
  const QStringList codes = wantedCodes();
  return {{"A4", english(), {QPageSize::A4, "en", codes}},
          {"Letter, feet",
           Formatter(QLocale(QLocale::English), ui::UnitSystem::feet_inches),
           {QPageSize::Letter, "en", codes}},
          {"Nepali", Formatter(QLocale("ne")), {QPageSize::A4, "ne", codes}},
          {"Spanish", Formatter(QLocale("es")), {QPageSize::Letter, "es", codes}},
          {"Urdu", Formatter(QLocale("ur")), {QPageSize::A4, "ur", codes}}};
}

/// Lengths of a page's lines that stand upright, each with its place across the page.
struct Upright {
  double x, top, length;
};

std::vector<Upright> uprights(const support::Recorder& paper) {
  std::vector<Upright> lines;
  for (const RecordedStroke& stroke : paper.strokes) {
    const QRectF box = stroke.path.boundingRect();
    if (box.width() < 1e-9 && box.height() > 1) lines.push_back({box.x(), box.top(), box.height()});
  }
  return lines;
}

/// The lines that hang from a level edge of a length; nothing when there is none of that length.
std::vector<Upright> rulerLines(const support::Recorder& paper, double length_mm) {
  std::vector<Upright> lines;
  for (const RecordedStroke& stroke : paper.strokes) {
    const QRectF edge = stroke.path.boundingRect();
    if (edge.height() > 1e-9 || std::abs(edge.width() - length_mm) > 1e-9 || edge.top() > 250) continue;
    for (const Upright& line : uprights(paper)) {
      if (std::abs(line.top - edge.top()) < 1e-9) lines.push_back(line);
    }
  }
  std::ranges::sort(lines, {}, &Upright::x);
  return lines;
}

std::ptrdiff_t boxesOn(const Handout& handout, const QString& code) {
  std::ptrdiff_t boxes = 0;
  for (const int page : pagesWith(handout, code)) {
    boxes += std::ranges::count_if(PageRecord(handout, page).recorder.strokes, [](const auto& stroke) {
      const QSizeF size = stroke.path.boundingRect().size();
      return std::abs(size.width() - 5) < 1e-6 && std::abs(size.height() - 5) < 1e-6;
    });
  }
  return boxes;
}

/// Where black falls in a box: the middle of all strokes and solids.
double middleX(const support::Recorder& paper) {
  QRectF all;
  for (const auto& stroke : paper.strokes) all |= stroke.path.boundingRect();
  for (const auto& fill : paper.fills) all |= fill.path.boundingRect();
  return all.center().x();
}

}  // namespace

TEST_CASE("every pictogram's file is named, loads and is square, and every named one has a file") {
  const QDir folder(QStringLiteral(TANKWRIGHT_SOURCE_DIR "/resources/pictograms"));
  QStringList files = folder.entryList({"*.svg"}, QDir::Files, QDir::Name);
  QStringList named;
  for (const std::string_view name : ui::handouts::kPictograms)
    named << QString::fromUtf8(name.data(), qsizetype(name.size())) + ".svg";
  named.sort();
  files.sort();
  CHECK(named == files);
  for (const QString& file : named) {
    QFile svg(":/pictograms/" + file);
    INFO(file.toStdString());
    REQUIRE(svg.open(QIODevice::ReadOnly));
    QSvgRenderer renderer(svg.readAll());
    CHECK(renderer.isValid());
    CHECK(renderer.viewBoxF() == QRectF(0, 0, 48, 48));
  }
}

TEST_CASE("pictograms are lines and solids of at least 0.25 mm inside their box, and never mirrored") {
  const QRectF box(10, 20, ui::handouts::kPictogram_mm, ui::handouts::kPictogram_mm);
  for (const std::string_view name : ui::handouts::kPictograms) {
    const QString id = QString::fromUtf8(name.data(), qsizetype(name.size()));
    support::Recorder paper(QSizeF(40, 60)), mirrored(QSizeF(40, 60));
    {
      QPainter painter(&paper);
      ui::handouts::drawPictogram(painter, box, id);
    }
    {
      QPainter painter(&mirrored);
      painter.translate(34, 0);  // the box is mirrored in its own middle
      painter.scale(-1, 1);
      ui::handouts::drawPictogram(painter, box, id);
    }
    const QStringList faults = support::faultsOnPaper(paper, box);
    INFO(name << "\n" << faults.join(u'\n').toStdString());
    CHECK(faults.isEmpty());
    CHECK(paper.strokes.size() + paper.fills.size() >= 1);  // the tally is one line of strokes
    CHECK(middleX(mirrored) == Approx(middleX(paper)).margin(1e-6));
  }
  support::Recorder paper(QSizeF(40, 60));
  QPainter painter(&paper);
  CHECK_THROWS_AS(ui::handouts::drawPictogram(painter, box, "unheard_of"), std::logic_error);
}

TEST_CASE("the new sheets are clean on paper in each size, unit, script and direction") {
  ui::useLanguage(QLocale(QLocale::English));  // so that pages can be in others
  for (const auto& [name, project] : formProjects()) {
    for (const Way& way : ways()) {
      const Handout handout(contentOf(project, way.format), way.options);
      const QRectF allowed = QRectF(QPointF(0, 0), handout.pageSize_mm()).adjusted(12, 12, -12, -12);
      for (int page = 0; page < handout.pageCount(); ++page) {
        const QStringList faults = support::faultsOnPaper(PageRecord(handout, page).recorder, allowed);
        INFO(name << ", " << way.name << ", " << handout.pageTitle(page).toStdString() << "\n"
                  << faults.join(u'\n').toStdString());
        CHECK(faults.isEmpty());
      }
    }
  }
}

TEST_CASE("forms and steps keep to their pages on A4 and Letter") {
  const Content content = contentOf(manyPeople(), english());
  for (const auto size : {QPageSize::A4, QPageSize::Letter}) {
    const Handout handout(content, {size, "en", wantedCodes()});
    for (const char* code : {"F10", "F12", "F13", "M12", "M15"}) {
      INFO(code);
      CHECK(pagesWith(handout, code).size() == 1);
    }
    CHECK(pagesWith(handout, "M11").size() == 3);
    for (const char* code : {"F9", "F11", "M14"}) {
      INFO(code);
      CHECK(pagesWith(handout, code).size() == 2);
    }
    CHECK(pagesWith(handout, "M13").size() == 2 + content.plan.quantities.coats.size());
  }
}

TEST_CASE("sheets that need something are printed when it is there and only then") {
  const Handout without(contentOf(noBed(), english()), {});
  CHECK(pagesWith(without, "M12").empty());
  CHECK(pagesWith(without, "F8").empty());
  const Handout with(contentOf(support::deliveryProject(), english()), {});
  for (const QString& code : wantedCodes()) CHECK_FALSE(pagesWith(with, code).empty());
}

TEST_CASE("the ruler is 150.0 mm long, a line each millimetre, longer every 5 and 10, and never mirrored") {
  const Content content = contentOf(support::levelProject(), english());
  for (const QString& language : {QString("en"), QString("ur")}) {
    const Handout handout(content, {QPageSize::A4, language, {"F10"}});
    const PageRecord record(handout, 0);
    const std::vector<Upright> lines = rulerLines(record.recorder, 150.0);
    INFO(language.toStdString());
    REQUIRE(lines.size() == 151);
    for (std::size_t mm = 0; mm < lines.size(); ++mm) {
      CHECK(lines[mm].x - lines[0].x == Approx(double(mm)).margin(1e-9));
      if (mm % 5 != 0) CHECK(lines[mm].length < lines[5].length);
      if (mm % 10 != 0) CHECK(lines[mm].length < lines[10].length);
    }
    const auto number = [&](const QString& text) {
      const auto found = std::ranges::find(record.recorder.texts, text, &support::RecordedText::text);
      REQUIRE(found != record.recorder.texts.end());
      return found->room.boundingRect().center().x();
    };
    CHECK(number("0") == Approx(lines[0].x).margin(0.2));
    CHECK(number("150") == Approx(lines[150].x).margin(0.2));
  }
}

TEST_CASE("the strip for the ribbon is 100.0 mm, and rulers are numbered in the reader's digits") {
  const Formatter nepali(QLocale("ne"));
  const Handout handout(contentOf(support::levelProject(), nepali), {QPageSize::A4, "ne", {"F13"}});
  const PageRecord record(handout, 0);
  CHECK(rulerLines(record.recorder, 100.0).size() == 101);
  CHECK(record.recorder.says(QLocale("ne").toString(70)));
}

TEST_CASE("each form says where its values are typed in") {
  const Content content = contentOf(support::levelProject(), english());
  for (const char* code : {"F10", "F11", "F12", "F13"}) ReadPages(content, code).has("on the tab Notes.");
}

TEST_CASE("the digging sheet has the plan's pit, the thresholds and tick boxes") {
  const Content content = contentOf(support::levelProject(), english());
  const auto& pit = content.plan.earthwork;
  const ReadPages page(content, "M11");
  page.hasRow(
      {"Pit at the ground", page.metres(pit.pit_top_length_m) + " × " + page.metres(pit.pit_top_width_m)});
  page.hasRow(
      {"Pit at its floor", page.metres(pit.pit_floor_length_m) + " × " + page.metres(pit.pit_floor_width_m)});
  page.hasRow({"Pit depth, ground to pit floor", page.metres(pit.pit_depth_m)});
  const auto volume = [&](double value) { return content.format.quantity(value, Unit::cubic_metre, 1); };
  page.hasRow({"as it lies", volume(pit.pit_volume_m3)});
  page.hasRow({"Loose spoil left over", volume(pit.spoil_loose_m3.value())});
  page.has(page.metres(content.plan.site.heap.value().height_m, 1) + " high");
  page.has("no more than 0.50 m at a time");
  page.has("From 1.2 m deep on a ladder");  // 29 CFR 1926.651(c)(2): 4 ft, rounded down
  page.has("spoil 0.6 m or more back");     // 29 CFR 1926.651(j)(2): 2 ft, rounded down
  CHECK(boxesOn(Handout(content, {}), "M11") == 3);
}

TEST_CASE("the digging sheet warns of a deep pit and only of a deep one") {
  core::Project shallow = support::levelProject();
  shallow.tank.depth_m = 0.8;
  CHECK_FALSE(ReadPages(contentOf(shallow, english()), "M11").text.contains("This pit gets deeper"));
  // 29 CFR 1926.652(a)(1): 5 ft, rounded down
  ReadPages(contentOf(support::levelProject(), english()), "M11").has("This pit gets deeper than 1.5 m");
}

TEST_CASE("the stone bed sheet has thickness, area, order and the mark below the string") {
  const Content content = contentOf(support::levelProject(), english());
  const auto& format = content.format;
  const auto bed = std::ranges::find(content.plan.layers, "stone_bed", &core::geometry::Layer::id);
  const ReadPages page(content, "M12");
  page.hasRow({"Area", format.quantity(bed->area_m2, Unit::square_metre, 1)});
  const auto stone =
      std::ranges::find(content.plan.quantities.materials, "stone", &core::lining::Material::id);
  page.hasRow({"Stone to bring, loose", format.quantity(stone->order, Unit::cubic_metre, 2)});
  const core::geometry::TankGeometry& tank = content.plan.geometry;
  const double below = tank.pitDepth() - tank.stoneBed();
  page.hasRow({"below the string at ground level", page.metres(below, 3)});
}

TEST_CASE("the sheet of coats has each coat's thickness, area, batches, people and days") {
  core::Project project = support::levelProject();
  project.works->plasterers = 5;
  const Content content = contentOf(project, english());
  const auto& format = content.format;
  const ReadPages page(content, "M13");
  for (const auto& coat : content.plan.quantities.coats) {
    page.has("Coat " + format.integer(coat.coat) + ": 60 mm thick on " +
             format.quantity(coat.face_m2, Unit::square_metre, 1));
    for (const auto& batch : content.plan.quantities.batches) {
      if (batch.coat == coat.coat && batch.bags == 1)
        page.hasRow({"Batches with a whole bag", format.integer(batch.count)});
    }
    const auto days = project.lining.coats.at(std::size_t(coat.coat - 1)).cure_days;
    page.hasRow({"Days under wet sacks", format.integer(days)});
  }
  for (const auto& check : content.plan.works->coat_checks) {
    REQUIRE_FALSE(check.is_enough());
    page.hasRow({"5, TOO FEW: " + format.integer(check.needed) + " needed"});
    page.hasRow({"Sacks to cover it", format.integer(check.sacks)});
  }
  CHECK_FALSE(ReadPages(contentOf(manyPeople(), english()), "M13").text.contains("TOO FEW"));
}

TEST_CASE("the sheet of coats says which pipes go through the lining") {
  ReadPages(contentOf(support::levelProject(), english()), "M13").has("does not say yet");
  ReadPages(contentOf(support::deliveryProject(), english()), "M13").has("no pipe goes through the lining");
  ReadPages(contentOf(support::liningPipeProject(), english()), "M13")
      .has("the pipe to the field and the overflow pipe");
}

TEST_CASE("the build stages come in order, with dates when there are works") {
  const Content content = contentOf(filledOnSlope(), english());
  const auto stages = core::works::buildStages(content.plan.geometry, true);
  const auto dated = ui::handouts::datedStages(content);
  REQUIRE(dated.size() == stages.size());
  const ReadPages page(content, "M14");
  qsizetype at = 0;
  for (std::size_t k = 0; k < stages.size(); ++k) {
    const QString name = content.format.integer(int(k) + 1) + ' ' + words::stageName(stages[k].stage);
    INFO(name.toStdString());
    at = page.text.indexOf(name, at);
    REQUIRE(at >= 0);
    REQUIRE(dated[k].date);
    page.has("first on " + content.format.date(*dated[k].date));
    if (k > 0) CHECK(*dated[k - 1].date <= *dated[k].date);
  }
  const auto days = core::works::buildDays(content.plan.geometry, *content.plan.works);
  for (const auto& stage : dated) {
    const auto day = std::ranges::find(days, *stage.date, &core::works::BuildDay::date);
    REQUIRE(day != days.end());
    CHECK(day->built.coats >= stage.built.coats);
  }
  core::Project without = filledOnSlope();
  without.works.reset();
  const ReadPages undated(contentOf(without, english()), "M14");
  CHECK_FALSE(undated.text.contains("first on"));
  undated.has(words::stageName("full"));
}

TEST_CASE("section B-B gives the lengths, and each of plan and sections names the others' sheets") {
  const Content content = contentOf(support::levelProject(), english());
  const auto& tank = content.plan.tank;
  const ReadPages along(content, "M15"), across(content, "M3"), plan(content, "M2");
  along.has("clear floor length " + along.metres(tank.clear_floor_length_m));
  across.has("clear floor width " + across.metres(tank.clear_floor_width_m));
  along.has("A-A: sheet M3");
  across.has("B-B: sheet M15");
  plan.has("A-A on sheet M3, B-B on sheet M15");
}

TEST_CASE("the sheet of use has each month's need, what is there to use, and the stick") {
  const Content content = contentOf(support::waterProject(), english());
  const auto& water = *content.plan.water;
  const auto& format = content.format;
  const ReadPages page(content, "F8");
  constexpr int kDays[]{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  double drawn = 0;
  for (std::size_t month = 0; month < core::kMonths; ++month) {
    const auto& flows = water.months[month];
    const auto first = std::ranges::find_if(
        water.band, [&](const auto& day) { return day.month == int(month) && day.day == 1; });
    page.hasRow({format.monthName(int(month) + 1, QLocale::LongFormat), format.litres(flows.need()),
                 format.litres(flows.drawn), format.litres(flows.drawn / kDays[month]),
                 page.metres(content.plan.geometry.levelForVolume(first->p50)),
                 page.metres(content.plan.geometry.levelForVolume(first->p10))});
    drawn += flows.drawn;
  }
  CHECK(drawn == Approx(water.year.drawn));
  page.has("It is not drinking water.");
}

TEST_CASE("the sheet of cleaning takes mix and days from the last coat") {
  core::Project project = support::levelProject();
  project.lining.coats.back() = {0.04, 1.5, 2, 1, 9};
  const ReadPages page(contentOf(project, english()), "F9");
  page.has("1.5 soil : 2 sand : 1 cement");
  page.has("Wet sacks over the place for 9 days");
  for (const char* part : {"Two people", "before the rains", "No spade", "manure", "licensed engineer"})
    page.has(part);
}

// S.J. Thien: A flow diagram for teaching texture by feel analysis, Journal of Agronomic Education 8, 1979,
// p. 54-55
TEST_CASE("the form for ball and ribbon decides as Thien's flow diagram does") {
  const ReadPages page(contentOf(support::levelProject(), english()), "F13");
  page.hasRow({"no ball holds", "sand", "sand", "sand"});
  page.hasRow({"ball, but no ribbon", "loamy sand", "loamy sand", "loamy sand"});
  page.hasRow({"shorter than 25 mm", "sandy loam", "loam", "silt loam"});
  page.hasRow({"25 mm to 50 mm", "sandy clay loam", "clay loam", "silty clay loam"});
  page.hasRow({"50 mm or longer", "sandy clay", "clay", "silty clay"});
  page.has("Thien");
}

TEST_CASE("the log of test pits tells the pit's depth and warns of caving in") {
  const Content content = contentOf(support::levelProject(), english());
  const ReadPages page(content, "F11");
  page.has("will be " + page.metres(content.plan.earthwork.pit_depth_m) + " deep");
  page.has("Nobody climbs into one deeper than the waist");
  page.has(words::choiceLabel("site.soil", "firm_loam"));
  for (const char* column : {"Pit", "From, m", "To, m", "Soil", "Hard, firm or soft", "Water at, m"})
    page.has(column);
}
