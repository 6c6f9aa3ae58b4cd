#include "core/works/rates.h"
#include "tests/ui/handout_site_support.h"
#include "ui/handouts/day_rows.h"
#include "ui/handouts/hour_tally.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include <catch2/catch.hpp>

using core::Unit;
using core::works::Day;
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

const QStringList kSheets{"M1", "M6", "M7", "M9", "M10", "P9"};

/// Few people, a small tap and a rest day; numbers invented.
core::Project fewPeople() {
  core::Project project = support::deliveryProject();
  project.works->plasterers = 5;
  project.works->masons = 1;
  project.works->mixing_places = 1;
  project.works->minutes_per_batch = 30;
  project.works->wettings_per_day = 2;
  project.works->closed = {{std::chrono::year{2027} / 2 / 22, 2, "market"}};
  project.works->wishes = {{"coat_1", std::chrono::year{2027} / 3 / 20, {}}};
  return project;
}

/// A tap that does not fill the tank within a year.
core::Project slowTap() {
  core::Project project = support::levelProject();
  project.works->fill_inflow_l_per_day = 40;
  return project;
}

/// A tap that fills it in some weeks.
core::Project steadyTap() {
  core::Project project = support::levelProject();
  project.works->fill_inflow_l_per_day = 700;
  return project;
}

core::Project noInflow() {
  return support::levelProject();
}

core::Project withRecords() {
  core::Project project = fewPeople();
  project.records.work = {{core::RecordedWork::digging, 20, 14},
                          {core::RecordedWork::digging, 24, 19},
                          {core::RecordedWork::digging, 18, 16},
                          {core::RecordedWork::spreading, 30, 9}};
  project.records.batches = {{1, 1, 3.9, 0.06}, {1, 1, 4.2, 0.06}, {2, 1, 2.8, 0.06}};
  return project;
}

std::vector<std::pair<std::string, core::Project>> worksProjects() {
  return {{"few people", fewPeople()},     {"slow tap", slowTap()},
          {"steady tap", steadyTap()},     {"no inflow known", noInflow()},
          {"with records", withRecords()}, {"large", support::sheetProjects().at(4).second}};
}

/// Square boxes of a size on all sheets of a code.
std::ptrdiff_t boxesOn(const Content& content, const QString& code, double size_mm) {
  const Handout handout(content, {});
  std::ptrdiff_t boxes = 0;
  for (const int page : pagesWith(handout, code)) {
    boxes += std::ranges::count_if(PageRecord(handout, page).recorder.strokes, [&](const auto& stroke) {
      const QSizeF size = stroke.path.boundingRect().size();
      return std::abs(size.width() - size_mm) < 1e-6 && std::abs(size.height() - size_mm) < 1e-6;
    });
  }
  return boxes;
}

std::size_t pageCount(const Content& content, const QString& code) {
  return pagesWith(Handout(content, {}), code).size();
}

QString wetting(const Content& content, Day day) {
  const auto found = std::ranges::find(content.plan.works->days, day, &core::works::DayLoad::date);
  REQUIRE(found != content.plan.works->days.end());
  return content.format.quantity(found->wetting_l, Unit::litre, 0);
}

/// Days between the curing of coat 1 and coat 2.
int daysWaited(const Content& content) {
  const auto& works = *content.plan.works;
  const Day cured = core::works::findTask(works, "cure_1")->finish;
  return core::works::daysBetween(cured, core::works::findTask(works, "coat_2")->start) - 1;
}

QString percent(double share, const Formatter& format) {
  return format.quantity(100 * share, Unit::percent, 0);
}

}  // namespace

TEST_CASE("sheets of the works are printed when the works are reckoned and only then") {
  core::Project without = support::levelProject();
  without.works.reset();
  const Content none = contentOf(without, english());
  for (const QString& code : kSheets.mid(1)) CHECK(pageCount(none, code) == 0);
  Content content = contentOf(support::levelProject(), english());
  REQUIRE(content.plan.works->filling);
  for (const QString& code : kSheets) CHECK(pageCount(content, code) > 0);
  content.plan.works->filling.reset();
  CHECK(pageCount(content, "M10") == 0);
  CHECK(pageCount(content, "M7") > 0);
}

TEST_CASE("sheets of the works are clean on paper") {
  struct Way {
    Formatter format;
    QPageSize::PageSizeId page;
  };
  const std::vector<Way> ways{
      {english(), QPageSize::A4},
      {Formatter(QLocale(QLocale::English), ui::UnitSystem::feet_inches), QPageSize::Letter},
      {Formatter(QLocale("ne")), QPageSize::A4},
      {Formatter(QLocale("de")), QPageSize::Letter}};
  for (const auto& [name, project] : worksProjects()) {
    for (const Way& way : ways) {
      const Handout handout(contentOf(project, way.format), {way.page});
      const QRectF allowed = QRectF(QPointF(0, 0), handout.pageSize_mm()).adjusted(12, 12, -12, -12);
      for (const QString& code : kSheets) {
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

TEST_CASE("days come one by one, then in weeks of the calendar, gaps or not") {
  const Day first = std::chrono::year{2027} / 12 / 20;
  std::vector<Day> days;
  for (int k = 0; k < 366; ++k) days.push_back(core::works::addDays(first, k));
  const auto spans = ui::handouts::daysThenWeeks(days);
  REQUIRE(spans.size() == 14 + 51);  // (366 - 14) / 7 = 50.3
  CHECK(spans[13].last == 13);
  CHECK(spans[14].first == 14);
  CHECK(spans[14].last == 20);
  CHECK(spans.back().last == 365);
  const std::vector<Day> gaps{days[0], days[1], days[8], days[9], days[40]};
  const auto some = ui::handouts::daysThenWeeks(gaps, 1);
  REQUIRE(some.size() == 4);
  CHECK(some[1].first == 1);
  CHECK(some[1].last == 1);  // days[8] is the eighth day
  CHECK(some[2].last == 3);
  CHECK(ui::handouts::daysThenWeeks({}).empty());
}

TEST_CASE("the tally of a coat has a box for each batch, by hours, and fits the sheet") {
  const auto sum = [](const std::vector<int>& boxes) {
    return std::accumulate(boxes.begin(), boxes.end(), 0);
  };
  const auto whole = ui::handouts::hourTally(53, 8, 186);
  CHECK(whole.each == 1);
  CHECK(whole.boxes.size() == 8);
  CHECK(sum(whole.boxes) == 53);
  CHECK(std::ranges::max(whole.boxes) - std::ranges::min(whole.boxes) <= 1);
  const auto part = ui::handouts::hourTally(45, 4.5, 186);
  CHECK(part.boxes == std::vector<int>{10, 10, 10, 10, 5});
  const auto many = ui::handouts::hourTally(2000, 8, 186);
  CHECK(many.each > 1);
  CHECK(sum(many.boxes) == (2000 + many.each - 1) / many.each);
  CHECK(std::ranges::max(many.boxes) <= 18);  // 186 mm has no room for more
}

TEST_CASE("the sheet of coats gives people, batches an hour, minutes and what must be ready") {
  const Content content = contentOf(fewPeople(), english());
  const auto& format = content.format;
  const ReadPages page(content, "M9");
  page.hasAll(words::oneGoAnswers(*content.plan.works, format));
  REQUIRE(content.plan.works->coat_checks.size() == 2);
  int batches = 0;
  for (const auto& c : content.plan.works->coat_checks) {
    REQUIRE_FALSE(c.is_enough());
    page.hasRow({"People on the coat", format.integer(c.needed), format.integer(c.people), "TOO FEW"});
    page.hasRow({"Masons among them", format.integer(c.masons_needed), format.integer(c.masons)});
    page.hasRow({"Batches an hour", format.number(c.batches_per_hour_needed, Unit::none, 1),
                 format.number(c.batches_per_hour_possible, Unit::none, 1)});
    page.hasRow({"Mixing places", format.integer(c.mixing_places_needed), "1"});
    page.hasRow({"with a whole bag", format.quantity(c.minutes_to_place_batch, Unit::minute, 0),
                 format.quantity(c.placing_minutes, Unit::minute, 0)});
    page.hasRow({"with half a bag", format.quantity(c.minutes_to_place_half_batch, Unit::minute, 0)});
    page.hasRow({"Water for mixing", format.quantity(c.water_l, Unit::litre, 0)});
    page.hasRow({"Sacks to cover the coat", format.integer(c.sacks)});
    batches += c.batches;
  }
  CHECK(boxesOn(content, "M9", 6) == batches);
  core::Project many = fewPeople();
  many.works->plasterers = 60;
  many.works->masons = 30;
  many.works->mixing_places = 12;
  CHECK_FALSE(ReadPages(contentOf(many, english()), "M9").text.contains("TOO FEW"));
}

TEST_CASE("the mix card names the people that the coat needs") {
  const Content content = contentOf(fewPeople(), english());
  const ReadPages page(content, "M1");
  for (const auto& c : content.plan.works->coat_checks)
    page.has(content.format.integer(c.needed) + " people needed, 5 planned");
}

TEST_CASE("the work calendar has every task with its days, people and room to slip") {
  const Content content = contentOf(fewPeople(), english());
  const auto& format = content.format;
  const ReadPages page(content, "M6");
  bool any_critical = false, any_free = false;
  for (const auto& task : content.plan.works->schedule) {
    INFO(task.id);
    page.has(words::taskName(task.id));
    page.has(format.date(task.finish));
    if (task.is_mark) continue;
    page.has(format.date(task.start));
    page.has(words::dayCount(task.work_days, format));
    if (task.crew > 0) page.has(format.quantity(task.crew, Unit::person, 0));
    (task.is_critical ? any_critical : any_free) = true;
    page.has(task.is_critical ? QString("no room to slip")
                              : "may slip " + words::dayCount(task.float_days, format));
  }
  CHECK(any_critical);
  CHECK(any_free);
  page.hasRow({"Together", format.quantity(content.plan.works->person_days, Unit::person_day, 1)});
}

TEST_CASE("the wetting calendar gives each curing day its water and a box for each wetting") {
  const Content content = contentOf(fewPeople(), english());
  const ReadPages page(content, "M7");
  int days = 0;
  for (const auto& task : content.plan.works->schedule) {
    if (!task.id.starts_with("cure_")) continue;
    for (Day day = task.start; day <= task.finish; day = core::works::addDays(day, 1), ++days)
      page.hasRow({content.format.date(day), wetting(content, day)});
  }
  REQUIRE(days == 7);  // 3 and 4 days of curing
  page.hasRow({"Day", "Water", "morning", "evening"});
  Content unfilled = content;
  unfilled.plan.works->filling.reset();
  CHECK(boxesOn(unfilled, "M7", 5) == 2 * (days + daysWaited(content)) + 1);  // and one for the filling begun
}

TEST_CASE("a coat that waits for the next one after its curing is kept wet by the calendar too") {
  core::Project project = fewPeople();
  project.works->wishes.push_back({"coat_2", std::chrono::year{2027} / 4 / 20, {}});
  const Content content = contentOf(project, english());
  const int waited = daysWaited(content);
  REQUIRE(waited > 21);
  const ReadPages page(content, "M7");
  page.has("Until the next coat goes on");
  const Day cured = core::works::findTask(*content.plan.works, "cure_1")->finish;
  for (int k = 1; k <= 14; ++k) {
    const Day day = core::works::addDays(cured, k);
    page.hasRow({content.format.date(day), "all of the coat", wetting(content, day)});
  }
  page.hasRow({content.format.shortDate(core::works::addDays(cured, 15)) + " to " +
                   content.format.shortDate(core::works::addDays(cured, 21)),
               "all of the coat", wetting(content, core::works::addDays(cured, 15))});
}

TEST_CASE("the wetting calendar goes on, wall by wall, until the water covers them") {
  const Content content = contentOf(steadyTap(), english());
  const auto& filling = *content.plan.works->filling;
  const auto& format = content.format;
  const ReadPages page(content, "M7");
  REQUIRE(filling.full_on);
  for (const auto& band : filling.bands) {
    page.has(page.metres(band.from_m) + " to " + page.metres(band.to_m) + ' ' + format.date(band.wet_until));
    if (band.covered_on) page.has(format.date(*band.covered_on));
  }
  const Day last_cure = core::works::findTask(*content.plan.works, "cure_2")->finish;
  const Day last = std::ranges::max(filling.bands, {}, &core::works::WallBand::wet_until).wet_until;
  const int bare = core::works::daysBetween(last_cure, last);
  REQUIRE(bare > 14);
  for (int k = 1; k <= 14; ++k) {
    const Day day = core::works::addDays(last_cure, k);
    page.has(format.date(day) + " from ");
    page.has(wetting(content, day));
  }
  // 3 boxes on 7 curing and 14 bare days, one for each later day, one a band, one for the filling begun
  const auto bands = static_cast<std::ptrdiff_t>(filling.bands.size());
  CHECK(boxesOn(content, "M7", 5) == 3 * (7 + daysWaited(content) + 14) + (bare - 14) + bands + 1);
}

TEST_CASE("the sheet of the first filling gives the rise by days, then by weeks, and the walls to keep wet") {
  const Content content = contentOf(steadyTap(), english());
  const auto& filling = *content.plan.works->filling;
  const auto& format = content.format;
  const ReadPages page(content, "M10");
  page.hasAll(words::fillingAnswers(*content.plan.works, format));
  page.hasRow({"It must start no later than", format.date(filling.latest_start)});
  page.hasRow({"The tank is full on", format.date(*filling.full_on)});
  page.hasRow({"Flows in on the first day", format.litres(0.7) + " a day, as entered"});
  for (std::size_t k = 0; k < 14; ++k) {
    const auto& day = filling.days[k];
    page.hasRow({format.date(day.date), format.litres(day.inflow_m3), page.metres(day.level_m),
                 format.quantity(day.wetting_l, Unit::litre, 0)});
  }
  REQUIRE(filling.days.size() > 21);
  double inflow = 0, wetting_l = 0;
  for (std::size_t k = 14; k < 21; ++k) {
    inflow += filling.days[k].inflow_m3;
    wetting_l += filling.days[k].wetting_l;
  }
  page.hasRow({format.shortDate(filling.days[14].date) + " to " + format.shortDate(filling.days[20].date),
               format.litres(inflow), page.metres(filling.days[20].level_m),
               format.quantity(wetting_l, Unit::litre, 0)});
  for (const auto& band : filling.bands)
    page.hasRow({page.metres(band.from_m) + " to " + page.metres(band.to_m),
                 format.quantity(band.area_m2, Unit::square_metre, 1), format.date(band.wet_until),
                 format.quantity(band.days, Unit::day, 0)});
}

TEST_CASE("a filling of a year does not make a hundred pages") {
  const Content content = contentOf(slowTap(), english());
  const auto& filling = *content.plan.works->filling;
  REQUIRE(filling.days.size() == 366);
  REQUIRE_FALSE(filling.full_on);
  CHECK(pageCount(content, "M10") <= 6);
  CHECK(pageCount(content, "M7") <= 6);
  CHECK(pageCount(content, "M6") <= 4);
  const ReadPages page(content, "M10");
  page.has("not within a year");
  page.has(page.metres(filling.days.back().level_m));
  ReadPages(content, "M7").has("until water covers it");
}

TEST_CASE("a filling whose inflow is not known says so") {
  const Content content = contentOf(noInflow(), english());
  REQUIRE(content.plan.works->filling->inflow_from == "none");
  const ReadPages page(content, "M10");
  page.hasRow({"Flows in on the first day", "not known"});
  page.hasRow({"The tank is full on", "not known"});
}

TEST_CASE("the planner's sheet of works prints tasks, order, people and rates with their sources") {
  const Content content = contentOf(fewPeople(), english());
  const auto& works = *content.plan.works;
  const auto& format = content.format;
  const ReadPages page(content, "P9");
  page.hasAll(words::datesAnswers(works, format));
  for (const auto& task : works.schedule) {
    if (task.is_mark || task.not_before) continue;
    page.hasRow({words::taskName(task.id), format.date(task.start), format.date(task.finish),
                 format.number(task.work_days, Unit::day, words::decimalsFor(task.work_days, 0))});
  }
  page.has("not before " + format.date(std::chrono::year{2027} / 3 / 20));
  REQUIRE_FALSE(works.links.empty());
  for (const auto& link : works.links) page.has(words::taskName(link.from));
  page.has("starts after the end of: " + words::taskName("coat_1"));
  page.has("starts a quarter of a day after the start of: " + words::taskName("excavate"));
  const auto busiest = std::ranges::max_element(works.days, {}, &core::works::DayLoad::masons);
  page.hasRow({format.integer(busiest->labourers), format.integer(busiest->masons)});
  for (const auto& l : works.labour) {
    const auto days = [&](double value) { return format.number(value, Unit::person_day, 1); };
    page.hasRow({words::workAmount(l.quantity, l.unit, format), days(l.low_days), days(l.days),
                 days(l.high_days), days(l.mason_days)});
  }
  const auto& trimming = core::works::rate("trimming");
  page.has(words::rateName("trimming"));
  page.has(words::sourceText(trimming.source));
  page.has(words::rateName("digging.firm_loam"));
  CHECK_FALSE(page.text.contains(support::simplified(words::rateName("digging.rock"))));
}

TEST_CASE("rates of one's own stand in place of the table's and are marked as entered") {
  core::Project project = fewPeople();
  project.works->rates = {{"trimming", 0.123, 0.234, 0.345}};
  const ReadPages page(contentOf(project, english()), "P9");
  page.hasRow({"0.123", "0.234", "0.345", "entered"});
}

TEST_CASE("records are printed with count and spread") {
  const Content content = contentOf(withRecords(), english());
  const auto& format = content.format;
  const ReadPages page(content, "P9");
  page.hasAll(words::recordAnswers(content.plan, format));
  REQUIRE(content.plan.calibration.digging);
  // 14/20, 19/24, 16/18 person-days for a cubic metre
  page.hasRow({"3", "0.70", "0.79", "0.89"});
  CHECK_FALSE(ReadPages(contentOf(fewPeople(), english()), "P9").text.contains("Measured on site"));
}

TEST_CASE("the weather window prints all 52 weeks, the planned and the best one marked") {
  const Content content = contentOf(fewPeople(), english());
  const auto& format = content.format;
  const auto& window = content.plan.works->window.value();
  const ReadPages page(content, "P9");
  page.hasAll(words::windowAnswers(*content.plan.works, format));
  for (int week = 0; week < core::works::kWeeks; ++week) {
    const auto& chance = window.weeks[static_cast<std::size_t>(week)];
    QString name = format.dayOfYear(chance.month, chance.day);
    if (week == window.chosen) name += " *";
    if (week == window.best) name += " +";
    page.hasRow({name, percent(chance.undisturbed, format), percent(chance.rain, format),
                 percent(chance.frost, format), percent(chance.heat, format)});
  }
  CHECK_FALSE(ReadPages(contentOf(noInflow(), english()), "P9").text.contains("Weather window"));
}
