#include "core/water/figures.h"
#include "tests/support/water_project.h"
#include "tests/ui/handout_support.h"
#include "ui/handouts/export.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/words.h"

#include <QPainter>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <algorithm>
#include <chrono>
#include <cmath>

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
    const QString own =
        handout.pageTitle(page).section(QLatin1Char(' '), 0, 0).section(QLatin1Char('.'), 0, 0);
    if (own == code) pages.push_back(page);
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

/// Seven years of days with hot, wet summers; the third one has a gap.
core::DailyRecord record() {
  using namespace std::chrono;
  std::vector<core::DailyWeather> days;
  for (sys_days day = year(2001) / 1 / 1; day < sys_days(year(2008) / 1 / 1); day += std::chrono::days(1)) {
    const auto since_july = static_cast<double>((day - sys_days(year(2001) / 7 / 15)).count());
    const double season = std::cos(since_july / 365.25 * 2 * M_PI);
    const bool is_wet = day.time_since_epoch().count() % 3 == 0;
    core::DailyWeather weather;
    weather.date = day;
    weather.t_min_c = 10 + 8 * season;
    weather.t_max_c = 22 + 8 * season;
    if (day != sys_days(year(2003) / 10 / 5)) weather.rain_mm = is_wet ? std::max(0.0, 25 * season) : 0;
    days.push_back(weather);
  }
  return core::DailyRecord(std::move(days));
}

core::Project withRecord() {
  core::Project project = support::waterProject();
  project.water->climate.kind = core::ClimateKind::daily;
  project.water->climate.daily = record();
  return project;
}

core::Project householdOnly() {
  core::Project project = support::waterProject();
  project.water->beds.clear();
  project.water->people = 12;
  project.water->roof.area_m2 = 40;
  project.water->ground.area_m2 = 900;
  project.water->losses.cover_percent = 75;
  return project;
}

core::Project nothingNeeded() {
  core::Project project = support::waterProject();
  project.water->beds.clear();
  project.water->animals.clear();
  return project;
}

/// As many beds, herds, own crops and readings as the file may hold, with long names.
core::Project crowded() {
  core::Project project = support::waterProject();
  core::Water& water = *project.water;
  water.crops.clear();
  water.beds.clear();
  for (int k = 0; k < 24; ++k) {
    core::OwnCrop crop;
    crop.name = "a crop of the upper terraces with a long name " + std::to_string(k);
    water.crops.push_back(crop);
    water.beds.push_back({crop.name, 800.5 * k, k % 12 + 1, 15, core::IrrigationMethod(k % 5), {}});
  }
  water.animals.clear();
  for (int k = 0; k < 16; ++k) water.animals.push_back({core::Animal(k % 8), 300.0 * k, 0.05 + k});
  for (int k = 0; k < 60; ++k) water.source.readings.push_back({k % 12 + 1, 15, 20.0 + k});
  for (auto& month : water.source.months) month = {123.45, 13.5};
  for (auto& month : water.climate.months) {
    month.humidity_percent = 61.5;
    month.wind_m_s = 2.25;
    month.sun_hours = 7.5;
  }
  return project;
}

std::vector<std::pair<std::string, core::Project>> waterProjects() {
  std::vector<std::pair<std::string, core::Project>> projects{{"with water", support::waterProject()},
                                                              {"with a daily record", withRecord()},
                                                              {"household only", householdOnly()},
                                                              {"nothing needed", nothingNeeded()},
                                                              {"as many rows as there may be", crowded()}};
  for (auto& [name, project] : support::sheetProjects()) {
    project.site.latitude_deg = 27.5;
    project.water = support::waterProject().water;
    if (name == "round" || name == "60 m by 20 m" || name == "1 m by 1 m" || name == "long names")
      projects.emplace_back(name + " with water", project);
  }
  return projects;
}

const QStringList kWaterPages{"F4", "P4", "P5", "P6"};

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
  auto projects = support::sheetProjects();
  for (auto& with_water : waterProjects()) projects.push_back(std::move(with_water));
  for (const auto& [name, project] : projects) {
    for (const Way& way : ways) {
      const ui::handouts::Content content = contentOf(project, way.format);
      ui::handouts::Options options{way.page};
      for (const auto& kind : ui::handouts::sheetKinds(content, options.language)) {
        if (kind.code != "E3")
          options.codes << kind.code;  // handout_calculation_test looks at its many pages
      }
      const Handout handout(content, options);
      CHECK(pagesWith(handout, "F1").size() == 1);
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
  // and one for the filling begun, one for each band of wall that the water covers
  CHECK(boxes == 3 * days + 1 + std::ptrdiff_t(content.plan.works->filling->bands.size()));
}

TEST_CASE("without crew and dates the calendars are left out and the cover says so") {
  core::Project project = usual();
  project.works.reset();
  const Handout handout(contentOf(project, english()), {});
  CHECK(pagesWith(handout, "M6").empty());
  CHECK(pagesWith(handout, "M7").empty());
  CHECK(textOf(handout, "F1").contains("no work calendar"));
}

TEST_CASE("a recorded override takes NOT FOR CONSTRUCTION away and is printed on every construction sheet") {
  Content content = withStop();
  content.project.site.stop_override = {"A. Tesh", "CE 1", "drained", std::chrono::year{2027} / 1 / 5};
  const Handout overridden(content, {});
  for (const ui::handouts::PageKind& kind : ui::handouts::pageKinds()) {
    for (const int page : pagesWith(overridden, QString::fromLatin1(kind.code))) {
      const QString text = support::simplified(PageRecord(overridden, page).recorder.allText());
      INFO(kind.code);
      CHECK_FALSE(text.contains("NOT FOR CONSTRUCTION"));
      CHECK((!kind.construction || text.contains("A. Tesh")));
    }
  }
  content.project.site.stop_override.licence.clear();
  CHECK(ui::handouts::isStopped(content));
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
  REQUIRE_FALSE(ui::handouts::isStopped(free));
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

TEST_CASE("the water sheets are printed when the water is reckoned and only then; the flow log always") {
  core::Project unknown = support::waterProject();
  unknown.site.latitude_deg.reset();
  for (const core::Project& without : {usual(), unknown}) {
    const Handout handout(contentOf(without, english()), {});
    for (const QString& code : kWaterPages) CHECK(pagesWith(handout, code).empty());
    CHECK(pagesWith(handout, "F5").size() == 1);
    CHECK_FALSE(textOf(handout, "F1").contains("years"));
  }
  const Handout handout(contentOf(support::waterProject(), english()), {});
  for (const QString& code : kWaterPages) CHECK_FALSE(pagesWith(handout, code).empty());
  CHECK(pagesWith(handout, "F5").size() == 1);
}

TEST_CASE("the farmer's water sheet says how it goes, month by month, and that it is not for drinking") {
  const Content content = contentOf(support::waterProject(), english());
  const auto& water = *content.plan.water;
  const auto& format = content.format;
  const Handout handout(content, {});
  const QString text = textOf(handout, "F4");
  const QString headline = support::simplified(ui::words::waterHeadline(water, format));
  CHECK(text.contains(headline));
  CHECK(textOf(handout, "F1").contains(headline));
  for (const QString& answer : ui::words::waterAnswers(water, format))
    CHECK(text.contains(support::simplified(answer)));
  for (const int page : pagesWith(handout, "F4"))
    CHECK(PageRecord(handout, page).recorder.says("It is not drinking water."));
  constexpr int kDays[]{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  qsizetype at = text.indexOf("Month by month");
  for (std::size_t k = 0; k < core::kMonths; ++k) {  // in the order of the weather year
    const std::size_t m = (static_cast<std::size_t>(water.weather->first_month) + k) % core::kMonths;
    const auto& flows = water.months[m];
    const double dry = flows.dry_days;
    const QString row =
        support::simplified(QStringList{format.monthName(static_cast<int>(m) + 1, QLocale::LongFormat),
                                        format.litres(flows.source + flows.roof + flows.ground + flows.rain),
                                        format.litres((flows.beds + flows.animals + flows.people) / kDays[m]),
                                        dry == 0    ? "0"
                                        : dry < 0.1 ? "under 0.1"
                                                    : format.number(dry, Unit::day, 1)}
                                .join(u' '));
    const qsizetype found = text.indexOf(row, at);
    INFO(row.toStdString() << "\n" << text.toStdString());
    REQUIRE(found > at);
    at = found;
  }
}

TEST_CASE("the balance sheet prints the mean year, what goes out equal to what comes in") {
  core::Project project = householdOnly();
  project.water->beds = support::waterProject().water->beds;
  const Content content = contentOf(project, english());
  const auto& year = content.plan.water->year;
  const QString text = textOf(Handout(content, {}), "P4");
  const auto has = [&](const char* what, double volume_m3) {
    INFO(what << " " << volume_m3);
    CHECK(text.contains(what + QStringLiteral(" ") +
                        support::simplified(content.format.quantity(1000 * volume_m3, Unit::litre, 0))));
  };
  has("Tap or spring", year.source);
  has("Runoff of the roof", year.roof);
  has("Runoff of the ground", year.ground);
  has("Rain on the tank", year.rain);
  has("Evaporation", year.evaporation);
  has("Seepage", year.seepage);
  has("Runs over", year.spill);
  has("Drawn", year.drawn);
  has("Beds", year.beds);
  has("Animals", year.animals);
  has("People", year.people);
  has("Missing", year.unmet);
  has("Together", year.source + year.roof + year.ground + year.rain);
  has("Together", year.evaporation + year.seepage + year.spill + year.drawn);
  REQUIRE(content.plan.water->closure < 1e-8);
  CHECK(text.contains("what goes out within 0.000001 %."));
}

TEST_CASE("the sheet of sizes prints the smallest tank and the largest beds, or that there are none") {
  Content content = contentOf(support::waterProject(), english());
  const auto& format = content.format;
  auto& water = *content.plan.water;
  REQUIRE(water.smallest_full_m3);
  REQUIRE(water.largest_bed_area_m2);
  const auto answer = [&](const char* question) {
    const QString text = textOf(Handout(content, {}), "P5");
    return text.mid(text.indexOf(question) + static_cast<qsizetype>(std::string_view(question).size()) + 1,
                    25);
  };
  const char* const kTank = "Smallest tank for the years wanted, same depth";
  const char* const kBeds = "Largest beds for the years wanted, this tank";
  CHECK(answer("when full").startsWith(support::simplified(format.litres(water.curve.full_m3))));
  water.smallest_full_m3 = 30.1;
  water.largest_bed_area_m2 = 159.9;
  CHECK(answer(kTank).startsWith("31,000 L"));
  CHECK(answer(kBeds).startsWith("150 m²"));
  water.largest_bed_area_m2 = water.most_tried_area_m2;
  CHECK(answer(kBeds).contains("or more"));
  water.smallest_full_m3.reset();
  water.most_tried_m3 = 200;
  water.largest_bed_area_m2.reset();
  CHECK(answer(kTank).startsWith("none up to 200,000 L"));
  CHECK(answer(kBeds).startsWith("none "));
  content = contentOf(householdOnly(), english());
  for (const char* bed_text : {"Beds as entered", "Largest beds", "Find the size"})
    CHECK_FALSE(textOf(Handout(content, {}), "P5").contains(bed_text));
  content.plan.water->smallest_full_m3 = content.plan.water->curve.full_m3 / 1000;
  CHECK(textOf(Handout(content, {}), "P5").contains("same depth almost any"));
}

TEST_CASE("the sheet of figures prints what was entered, with where each is from") {
  core::Project project = householdOnly();
  project.water->beds = support::waterProject().water->beds;
  project.water->losses.seepage_mm_day = 2.25;
  const Content content = contentOf(project, english());
  const auto& format = content.format;
  const auto& water = *content.plan.water;
  const QString text = textOf(Handout(content, {}), "P6");
  CHECK(text.contains("Seepage through the plaster 2.25 mm per day entered"));
  CHECK(text.contains("Ground area 900 m² entered"));
  CHECK(text.contains("Number that starts the draw 1 ["));
  CHECK(text.contains("goat or sheep 4 5 L per day ["));
  for (const double mm : {water.beds[0].use_mm, water.beds[0].net_mm, water.rain_mm, water.et0_penman_mm,
                          water.et0_hargreaves_mm})
    CHECK(text.contains(support::simplified(format.quantity(mm, Unit::millimetre, 0))));
  CHECK(text.contains(support::simplified(format.quantity(1000 * water.beds[0].gross_m3, Unit::litre, 0))));
  CHECK(text.contains(support::simplified(format.quantity(water.beds[0].peak_l_day, Unit::litre, 0))));
  for (const char* key : {"runoff.roof_tile", "runoff.ground_bare", "seepage", "person"}) {
    const core::Figure& figure = core::water::figure(key);
    const QString range = QStringLiteral("%1 %2 %3 [").arg(figure.low).arg(figure.typical).arg(figure.high);
    QString shown = text;
    INFO(range.toStdString());
    CHECK(shown.replace(QRegularExpression("(\\.\\d*[1-9])0+ |\\.0+ "), "\\1 ").contains(range));
  }
  for (const char* key : {"fao56", "fao56_table_12", "roof_runoff", "sphere_water", "geng_1986"})
    CHECK(text.contains(support::simplified(ui::words::sourceText(key))));
}

TEST_CASE("the season of a bed stands in the reader's order") {
  const core::Project project = support::waterProject();  // planted on 15 February
  CHECK(textOf(Handout(contentOf(project, english()), {}), "P6").contains("Feb 15 to"));
  const Formatter british(QLocale(QStringLiteral("en_GB")));
  CHECK(textOf(Handout(contentOf(project, british), {}), "P6").contains("15 Feb to"));
}

TEST_CASE("a day on which some water could be drawn is not called a day without water") {
  const QString text = textOf(Handout(contentOf(support::waterProject(), english()), {}), "F4");
  CHECK(text.contains("Days short of water"));
  CHECK_FALSE(text.contains("Days without water"));
}

TEST_CASE("the sheet of figures says what is not known and what was taken for it") {
  core::Project project = support::waterProject();
  project.site.elevation_m.reset();
  project.water->climate.rain_cv_percent.reset();
  const QString text = textOf(Handout(contentOf(project, english()), {}), "P6");
  CHECK(text.contains("Height above sea level not known, 0 m taken"));
  CHECK(text.contains("Spread of yearly rain not known"));
}

TEST_CASE("a project with a daily record prints what is used of it in place of the draw") {
  const Content content = contentOf(withRecord(), english());
  const QString text = textOf(Handout(content, {}), "P6");
  CHECK(text.contains(
      support::simplified(ui::words::recordSummary(content.project, content.plan, content.format))));
  REQUIRE(content.plan.water->weather->years_left_out.size() == 1);
  CHECK(text.contains("years that begin in: 2003."));
  CHECK_FALSE(text.contains("Number that starts the draw"));
}

TEST_CASE("the flow log has room for readings and tells how to take them") {
  for (const auto page : {QPageSize::A4, QPageSize::Letter}) {
    const Handout handout(contentOf(usual(), english()), {page});
    const QString text = textOf(handout, "F5");
    for (const char* part :
         {"Date", "Vessel, litres", "Seconds", "tally", "Remarks", "3 s or longer", "more than 3 readings"})
      CHECK(text.contains(part));
    const PageRecord record(handout, pagesWith(handout, "F5").front());
    const auto rules = std::ranges::count_if(record.recorder.strokes, [](const auto& stroke) {
      const QRectF box = stroke.path.boundingRect();
      return box.height() < 1e-9 && box.width() > 180 && std::abs(stroke.width_mm - 0.35) < 1e-6;
    });
    CHECK(rules >= 10);
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

TEST_CASE("the white between blocks shrinks where that saves a page that would be nearly bare") {
  using ui::handouts::Block;
  const auto blocks = [](int count) {
    std::vector<Block> all;
    for (int k = 0; k < count; ++k) {
      all.push_back({10, [](QPainter&, QPointF) {}});
      all.back().white_mm = 2;
    }
    return all;
  };
  const std::vector<Block> fits = blocks(10), spills = blocks(11), needs_two = blocks(14);
  CHECK(ui::handouts::paginate(fits, 100).front().back().y_mm == Approx(90));
  const auto saved = ui::handouts::paginate(spills, 100);
  REQUIRE(saved.size() == 1);
  for (std::size_t k = 1; k < saved[0].size(); ++k)
    CHECK(saved[0][k].y_mm - saved[0][k - 1].y_mm >= 8);  // what a block paints stays whole
  CHECK(saved[0].back().y_mm + 8 <= 100);
  const auto two = ui::handouts::paginate(needs_two, 100);
  REQUIRE(two.size() == 2);
  CHECK(two[0][1].y_mm == Approx(10));  // nothing was to be saved
}
