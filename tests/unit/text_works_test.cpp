#include "core/plan.h"
#include "core/works/rates.h"
#include "ui/text/words.h"
#include "ui/text/works_words.h"
#include "ui/text/worth.h"

#include <QRegularExpression>
#include <chrono>
#include <map>
#include <set>
#include <stdexcept>
#include <string>

#include <catch2/catch.hpp>

namespace words = ui::words;
using core::FindingValue;
using core::Unit;
using core::works::CoatCheck;
using core::works::Day;
using core::works::Filling;
using core::works::Task;
using core::works::WeatherWindow;
using core::works::Works;

namespace {

const ui::Formatter kMetric{QLocale("en_GB"), ui::UnitSystem::metric};
const ui::Formatter kFeet{QLocale("en_GB"), ui::UnitSystem::feet_inches};

QString spaced(QString text) {
  return text.replace(QChar::Nbsp, u' ');
}

QString all(QStringList told) {
  return told.replaceInStrings(QString(QChar::Nbsp), " ").join(u'\n');
}

Day day(int month, unsigned day) {
  return std::chrono::year(2027) / month / static_cast<int>(day);
}

FindingValue value(std::string name, double number, Unit unit = Unit::none) {
  return {std::move(name), number, unit, {}};
}

FindingValue token(std::string name, std::string text) {
  return {std::move(name), 0, Unit::none, std::move(text)};
}

FindingValue people(std::string name, double number) {
  return value(std::move(name), number, Unit::person);
}

FindingValue share(std::string name, double percent) {
  return value(std::move(name), percent, Unit::percent);
}

QString text(std::string_view code, std::vector<FindingValue> values, const ui::Formatter& format = kMetric) {
  core::Finding finding;
  finding.code = code;
  finding.values = std::move(values);
  return spaced(words::findingText(finding, format));
}

void checkSentence(const QString& told) {
  INFO(told.toStdString());
  CHECK(told[0].isUpper());
  CHECK(told.endsWith(u'.'));
  CHECK_FALSE(told.contains(QRegularExpression("%\\d")));
  CHECK_FALSE(told.contains("nan"));
  CHECK_FALSE(told.contains("  "));
}

struct Wanted {
  std::vector<FindingValue> values;
  QStringList quoted;
};

/// Every code with the values that core/base/finding.h gives it, and what its sentence must say.
std::multimap<std::string, Wanted> crewFindings() {
  const FindingValue coat = value("coat", 2), whole = value("minutes", 75, Unit::minute);
  const FindingValue limit = value("limit_minutes", 60, Unit::minute);
  return {
      {"coat_crew_small",
       {{coat, people("people", 8), people("needed", 12)}, {"Coat 2", ": 8;", "needed: 12."}}},
      {"coat_crew_small",
       {{coat, people("people", 8), people("needed", 12), value("length_m", 4.217, Unit::metre),
         value("width_m", 2.46, Unit::metre), value("full_m3", 11.49, Unit::cubic_metre)},
        {"4.21 m long and 2.46 m wide", "about 11,000 L"}}},
      {"coat_crew_small",
       {{coat, people("people", 8), people("needed", 12), value("length_m", 3.309, Unit::metre),
         value("width_m", 3.309, Unit::metre), value("full_m3", 9.99, Unit::cubic_metre)},
        {"3.30 m across", "about 9,900 L"}}},
      {"works_masons_few",
       {{coat, people("masons", 3), people("needed", 5)}, {"Coat 2", "entered: 3", "go: 5."}}},
      {"works_batches_slow",
       {{coat, value("needed_per_hour", 8.24), value("possible_per_hour", 6),
         value("places", 3, Unit::piece)},
        {"Coat 2", "8.2 batches an hour", "bring 6.0", "needed: 3."}}},
      {"works_batch_sets",
       {{coat, whole, value("half_minutes", 38, Unit::minute), limit},
        {"Coat 2", "75 min", "after 60 min", "half a bag at a time: that is on the wall in 38 min"}}},
      {"works_batch_sets",
       {{coat, whole, value("half_minutes", 66, Unit::minute), limit}, {"takes 66 min and stiffens too"}}},
      {"works_people_short",
       {{token("date", "2028-02-29"), people("needed", 21), people("there", 12)},
        {"On Tue 29 Feb 2028", "21 needed", "12 there"}}},
      {"works_wish_unused", {{token("task", "cure_3")}, {"Keep coat 3 wet"}}},
      {"works_masons_few",
       {{coat, people("masons", 3), people("needed", 5), value("length_m", 4.217, Unit::metre),
         value("width_m", 2.46, Unit::metre), value("full_m3", 11.49, Unit::cubic_metre)},
        {"4.21 m long and 2.46 m wide"}}},
      {"works_coat_waits", {{coat, value("days", 9, Unit::day)}, {"Coat 2 waits 9 days"}}},
      {"works_nobody_wets", {{}, {"rest days too"}}},
      {"records_out_of_range",
       {{token("work", "dry_to_wet"), value("measured", 0.98), value("least", 1), value("most", 2)},
        {"0.98", "(1.00 to 2.00)"}}},
      {"works_wish_unused", {{token("task", "harvest")}, {"harvest"}}},
      {"works_coat_dries_fast",
       {{coat, value("kg_m2_h", 0.826, Unit::kg_per_m2_h), value("limit", 0.5, Unit::kg_per_m2_h)},
        {"Coat 2", "0.83 kg/m² per hour", "0.50 kg/m² per hour", "wet sacks"}}},
  };
}

std::multimap<std::string, Wanted> waterFindings() {
  const FindingValue start = token("best_start", "2027-10-04");
  return {
      {"works_fill_inflow_unknown", {{}, {"not known", "flow of the source"}}},
      {"works_fill_late",
       {{token("start", "2027-03-15"), token("latest", "2027-03-11")},
        {"Mon 15 Mar 2027", "Thu 11 Mar 2027"}}},
      {"works_fill_never_full",
       {{value("level_m", 0.82, Unit::metre), value("full_m", 1.35, Unit::metre)}, {"0.82 m", "1.35 m"}}},
      {"works_walls_wet_long",
       {{value("days", 1, Unit::day), token("until", "2027-04-02"),
         value("l_per_day", 140, Unit::litre_per_day), value("carried_m3", 3.41, Unit::cubic_metre)},
        {"for 1 day more", "Fri 2 Apr 2027", "140 L per day", "about 3,500 L of water by hand"}}},
      {"works_walls_wet_long",
       {{value("days", 12, Unit::day), token("until", "2027-04-02"),
         value("l_per_day", 140, Unit::litre_per_day), value("carried_m3", 0, Unit::cubic_metre)},
        {"for 12 days more"}}},
      {"works_weather_risk",
       {{share("undisturbed_percent", 48), share("best_percent", 91), share("rain_percent", 44),
         share("frost_percent", 0), share("heat_percent", 11.6), start},
        {"4 times in 10", "heavy rain (44 %) and a day too hot or too cold (12 %)", "Mon 4 Oct 2027",
         "9 times in 10"}}},
      {"works_weather_risk",
       {{share("undisturbed_percent", 7), share("best_percent", 100), share("rain_percent", 0),
         share("frost_percent", 93), share("heat_percent", 0), start},
        {"less than once in 10 times", "them: frost (93 %).", "undisturbed every time"}}},
      {"records_few",
       {{token("work", "dry_to_wet"), value("count", 2), value("wanted", 3)},
        {"Loose ingredients per placed plaster: 2 so far", "from 3 on"}}},
      {"records_differ",
       {{token("work", "digging"), value("measured", 0.914), value("entered", 0.62)},
        {"Digging", "0.91 person-days per m³", "0.62 person-days per m³ entered"}}},
      {"records_differ",
       {{token("work", "spreading"), value("measured", 0.31), value("entered", 0.26)},
        {"Spreading plaster", "0.31 person-days per m²"}}},
  };
}

CoatCheck enough() {
  CoatCheck check{};
  check.coat = 1;
  check.hours = 7.5;
  check.people = 12;
  check.needed = 11;
  check.masons = 3;
  check.masons_needed = 1;
  check.batches = 18;
  check.batches_per_hour_needed = 2.41;
  check.batches_per_hour_possible = 6;
  check.mixing_places_needed = 1;
  check.minutes_to_place_batch = 24.6;
  check.placing_minutes = 60;
  check.bags = 17.2;
  check.water_l = 1043;
  check.sacks = 52;
  return check;
}

Task task(std::string id, Day start, Day finish, bool is_critical = false) {
  Task task{};
  task.id = std::move(id);
  task.start = start;
  task.finish = finish;
  task.is_critical = is_critical;
  return task;
}

Works works() {
  Works works;
  works.schedule = {task("clear", day(2, 15), day(2, 15), true), task("coat_1", day(2, 25), day(2, 25), true),
                    task("coat_2", day(3, 1), day(3, 1)),        task("leak_test", day(3, 20), day(3, 20)),
                    task("planting", day(6, 1), day(6, 3)),      task("fill_by", day(3, 5), day(3, 5), true)};
  works.schedule.back().is_mark = true;
  works.days = {{day(2, 15), 4, 0, 0, 0, true},
                {day(2, 25), 9, 3, 0, 0, true},
                {day(2, 27), 0, 0, 1, 340, false},
                {day(2, 28), 0, 0, 1, 352, true}};
  works.person_days = 61.34;
  works.mason_days = 9.5;
  works.digging_days_by_norm = 24.6;
  works.digging_days_by_practice = 19.07;
  return works;
}

Filling filling() {
  Filling filling;
  filling.inflow_from = "source";
  filling.inflow_m3_day = 1.44;
  filling.start = day(3, 5);
  filling.latest_start = day(3, 5);
  filling.full_on = day(3, 24);
  filling.bands = {{0, 0.25, 5, day(3, 2), day(3, 6), day(3, 5), 4},
                   {0.25, 0.5, 5, day(3, 2), day(3, 8), day(3, 7), 6},
                   {0.5, 0.75, 5, day(3, 2), day(3, 8), day(3, 7), 6},
                   {0.75, 1.0, 5, day(3, 2), {}, day(3, 5), 4}};
  filling.wetting_after_cure_l = 4130;
  filling.carried_m3 = 2.31;
  return filling;
}

QString told(const Filling& filling, const ui::Formatter& format = kMetric) {
  Works works;
  works.filling = filling;
  return all(words::fillingAnswers(works, format));
}

WeatherWindow window() {
  WeatherWindow window;
  window.years = 50;
  window.weeks.resize(core::works::kWeeks, {1, 1, 0.3, 0.7, 0, 0});
  window.weeks[8] = {2, 26, 0.79, 0.18, 0.026, 0};
  window.weeks[40] = {10, 8, 0.98, 0, 0, 0};
  window.chosen = 8;
  window.best = 40;
  window.best_start = day(8, 20);
  window.drying = {{1, 20, 50, 8, 0.614}};
  return window;
}

QString told(const WeatherWindow& window, const ui::Formatter& format = kMetric) {
  Works works;
  works.window = window;
  return all(words::windowAnswers(works, format));
}

core::Plan planWith(const core::works::Calibration& calibration) {
  core::Plan plan = core::plan(core::Project{}).value();
  plan.calibration = calibration;
  return plan;
}

}  // namespace

TEST_CASE("every finding of works and records quotes its numbers, in both unit systems") {
  auto wanted = crewFindings();
  wanted.merge(waterFindings());
  for (const std::string_view code : core::findingCodes()) {
    if (!code.starts_with("works_") && !code.starts_with("records_")) continue;
    INFO(code);
    CHECK(wanted.count(std::string(code)) > 0);
  }
  for (const auto& [code, one] : wanted) {
    const QString metric = text(code, one.values);
    checkSentence(metric);
    checkSentence(text(code, one.values, kFeet));
    for (const QString& quoted : one.quoted) {
      INFO(metric.toStdString() << " : " << quoted.toStdString());
      CHECK(metric.contains(quoted));
    }
  }
  CHECK(text("works_fill_never_full",
             {value("level_m", 0.82, Unit::metre), value("full_m", 1.35, Unit::metre)}, kFeet)
            .contains("2' 8 1/4\""));  // 32.28 in
}

TEST_CASE("what does not happen is left out of a finding") {
  CHECK_FALSE(text("works_walls_wet_long",
                   {value("days", 12, Unit::day), token("until", "2027-04-02"),
                    value("l_per_day", 140, Unit::litre_per_day), value("carried_m3", 0, Unit::cubic_metre)})
                  .contains("by hand"));
  const QString risk =
      text("works_weather_risk",
           {share("undisturbed_percent", 48), share("best_percent", 91), share("rain_percent", 44),
            share("frost_percent", 0), share("heat_percent", 0.2), token("best_start", "2027-10-04")});
  CHECK_FALSE(risk.contains("frost"));
  CHECK_FALSE(risk.contains("too hot"));
}

TEST_CASE("a finding with a date that is none is a fault of the program") {
  CHECK_THROWS_AS(text("works_fill_late", {token("start", "2027-02-29"), token("latest", "2027-03-11")}),
                  std::logic_error);
}

TEST_CASE("every rate of the works has its own name") {
  std::set<QString> names;
  for (const core::Figure& rate : core::works::rates()) {
    INFO(rate.key);
    CHECK(names.insert(words::rateName(rate.key)).second);
  }
  CHECK(words::rateName("digging.sandy") == "digging, sandy");
  CHECK_THROWS_AS(words::rateName("digging.butter"), std::logic_error);
  CHECK_THROWS_AS(words::rateName("singing"), std::logic_error);
}

TEST_CASE("every task of the schedule has its own name, and only those have one") {
  std::set<QString> names;
  for (const char* id :
       {"clear",         "set_out",     "strip_topsoil", "platform_cut", "platform_fill", "excavate",
        "excavate_deep", "carry_spoil", "trim",          "pipes",        "stone_bed",     "coat_1",
        "coat_2",        "cure_1",      "cure_2",        "fill",         "leak_test",     "silt_trap",
        "overflow",      "fence",       "planting",      "fill_by",      "curing"}) {
    INFO(id);
    CHECK(words::hasTaskName(id));
    CHECK(names.insert(words::taskName(id)).second);
  }
  CHECK_FALSE(words::hasTaskName("harvest"));
  CHECK_FALSE(words::hasTaskName("coat_x"));
  CHECK_THROWS_AS(words::taskName("harvest"), std::logic_error);
}

TEST_CASE("days are told in quarters, amounts of work in their unit") {
  const auto days = [](double count) { return spaced(words::dayCount(count, kMetric)); };
  CHECK(days(0) == "0 days");
  CHECK(days(0.25) == "a quarter of a day");
  CHECK(days(0.5) == "half a day");
  CHECK(days(0.75) == "three quarters of a day");
  CHECK(days(1) == "1 day");
  CHECK(days(1.25) == QString::fromUtf8("1¼ days"));
  CHECK(days(2.5) == QString::fromUtf8("2½ days"));
  CHECK(days(12.74) == QString::fromUtf8("12¾ days"));
  CHECK(days(3) == "3 days");
  const auto amount = [](double quantity, const char* unit, const ui::Formatter& format = kMetric) {
    return spaced(words::workAmount(quantity, unit, format));
  };
  CHECK(amount(12.44, "m3") == "12.4 m³");
  CHECK(amount(40.06, "m2") == "40.1 m²");
  CHECK(amount(38, "m") == "38.0 m");
  CHECK(amount(7, "day") == "7 days");
  CHECK(amount(1, "job") == "1 job");
  CHECK(amount(2, "job") == "2 jobs");
  CHECK(amount(12.44, "m3", kFeet) == "439 ft³");  // 12.44 / 0.0283168 = 439.3
  CHECK_THROWS_AS(amount(1, "ounce"), std::logic_error);
}

TEST_CASE("a chance is told out of ten and never rounded up") {
  const auto times = [](double share) { return words::timesInTen(share, kMetric); };
  CHECK(times(1) == "every time");
  CHECK(times(0.999) == "9 times in 10");
  CHECK(times(0.8) == "8 times in 10");
  CHECK(times(0.79) == "7 times in 10");
  CHECK(times(0.1) == "once in 10 times");
  CHECK(times(0.09) == "less than once in 10 times");
  CHECK(times(0) == "never");
}

TEST_CASE("the dates tell the coats first, then what leaves no room, and both rules for digging") {
  const QStringList answers = words::datesAnswers(works(), kMetric);
  for (const QString& answer : answers) checkSentence(answer);
  const QString told = all(answers);
  INFO(told.toStdString());
  CHECK(told.startsWith("The works begin on Mon 15 Feb 2027 and end on Sat 20 Mar 2027: 34 days in all"));
  CHECK(told.contains("coat 1 on Thu 25 Feb 2027 and coat 2 on Mon 1 Mar 2027."));
  CHECK(told.contains("let in by Fri 5 Mar 2027."));
  CHECK(told.contains("leave no room: Clear the ground; Place coat 1."));
  CHECK(told.contains("on Thu 25 Feb 2027: 12 people, 3 of them masons."));
  CHECK(told.contains("61.3 person-days; 9.5 person-days"));
  CHECK(told.contains("a published norm makes it 24.6 person-days"));
  CHECK(told.contains("without a source, 19.1 person-days"));
  CHECK(told.contains("days of rest too: 1 day."));
  CHECK(told.contains("on Sun 28 Feb 2027: 352 L."));
  CHECK(told.contains("planted from Tue 1 Jun 2027 on."));
  CHECK(words::datesAnswers(Works{}, kMetric) == QStringList{"There is nothing to do yet."});
}

TEST_CASE("a mason alone, or none, is told as such") {
  CHECK(words::masonsAmong(1, kMetric) == "one of them a mason");
  CHECK(words::masonsAmong(0, kMetric) == "none of them a mason");
  CHECK(words::masonsAmong(4, kMetric) == "4 of them masons");
}

TEST_CASE("a coat that can be put on in one go says with whom and what to have ready") {
  Works works;
  works.coat_checks = {enough()};
  const QStringList answers = words::oneGoAnswers(works, kMetric);
  for (const QString& answer : answers) checkSentence(answer);
  const QString told = all(answers);
  INFO(told.toStdString());
  CHECK(
      told.startsWith("Coat 1 can be put on in one go: within 7.5 hours it takes 11 people (one of them a "
                      "mason), and 12 people are there (3 of them masons).\n"));
  CHECK(told.contains("a whole bag each: 18, which is 2.4 an hour; the mixing places bring 6.0 an hour."));
  CHECK_FALSE(told.contains("too slow"));
  CHECK(told.contains("a batch is on the wall in 25 min; it may take 60 min"));
  CHECK(told.contains("have ready 18 bags of cement, 1,040 L of water for mixing and 52 sacks"));
}

TEST_CASE("a coat that cannot says what size could, or that none can") {
  Works works;
  CoatCheck small = enough();
  small.coat = 2;
  small.people = 9;
  small.size = core::works::SizeForCrew{0.8, 4.876, 2.8, 14.26};
  small.batches_per_hour_possible = 2;
  small.mixing_places_needed = 3;
  small.minutes_to_place_batch = 80;
  small.minutes_to_place_half_batch = 40;
  works.coat_checks = {enough(), small};
  QString told = all(words::oneGoAnswers(works, kMetric));
  INFO(told.toStdString());
  CHECK(told.contains("mason), and 12 people are there"));
  CHECK(told.contains("Coat 2 cannot be put on in one go"));
  CHECK(told.contains("9 people are there"));
  CHECK(told.contains("4.87 m long and 2.80 m wide and holds about 14,000 L."));
  CHECK(told.contains("too slow; mixing places needed: 3."));
  CHECK(told.contains("Mix half a bag at a time, which is on the wall in 40 min."));
  CHECK(told.indexOf("Coat 2 cannot") < told.indexOf("Coat 1: batches"));
  CHECK(all(words::oneGoAnswers(works, kFeet)).contains("15' 11 3/4\" long"));  // 191.97 in, rounded down
  works.coat_checks[1].size.reset();
  works.coat_checks[1].minutes_to_place_half_batch = 70;
  told = all(words::oneGoAnswers(works, kMetric));
  CHECK(told.contains("No smaller tank of this depth"));
  CHECK(told.contains("even half a bag takes 70 min."));
}

TEST_CASE("the first filling tells start, end and the walls from the floor up") {
  Works works;
  works.filling = filling();
  for (const QString& answer : words::fillingAnswers(works, kMetric)) checkSentence(answer);
  const QString text = told(filling());
  INFO(text.toStdString());
  CHECK(
      text.startsWith("Filling starts on Fri 5 Mar 2027; it should start by Fri 5 Mar 2027 at the latest.\n"
                      "The tank is full on Wed 24 Mar 2027, with 1,440 L a day from the source at first.\n"
                      "Wall from 0.00 m to 0.25 m over the floor: wet sacks until Fri 5 Mar 2027.\n"
                      "Wall from 0.25 m to 0.75 m over the floor: wet sacks until Sun 7 Mar 2027.\n"
                      "Wall from 0.75 m to 1.00 m over the floor, which the water does not cover: "));
  CHECK(text.contains("about 4,200 L of water after the last coat has cured."));
  CHECK(text.contains("about 2,400 L would have to be brought by hand."));
  CHECK_FALSE(text.contains("less is let in"));
  CHECK(told(filling(), kFeet).contains("Wall from 0\" to 9 13/16\""));  // 9.84 in
}

TEST_CASE("a filling that is late, held back, endless or without known inflow says so") {
  Filling late = filling();
  late.start = day(3, 9);
  late.inflow_from = "entered";
  late.is_held_back = true;
  late.carried_m3 = 0;
  late.wetting_after_cure_l = 0;
  const QString text = told(late);
  CHECK(text.startsWith("Filling starts on Tue 9 Mar 2027, later than Fri 5 Mar 2027, by which it should"));
  CHECK(text.contains("1,440 L a day let in, as entered."));
  CHECK(text.contains("less is let in than could be"));
  CHECK_FALSE(text.contains("by hand"));
  CHECK_FALSE(text.contains("after the last coat has cured"));
  Filling endless = filling();
  endless.full_on.reset();
  endless.days = {{day(3, 5), 1.4, 0.1, 20, 0.874, 10, 60}};
  CHECK(
      told(endless).contains("does not fill within a year, with 1,440 L a day from the source at first: the "
                             "water comes to 0.87 m over the floor."));
  Filling unknown = filling();
  unknown.inflow_from = "none";
  unknown.full_on.reset();
  CHECK(told(unknown).contains("nobody can say when the tank is full"));
  CHECK_FALSE(told(unknown).contains("does not cover"));
  CHECK(all(words::fillingAnswers(Works{}, kMetric)).startsWith("There is no coat yet"));
}

TEST_CASE("the weather window tells a chance, what disturbs it and a better week") {
  const QString text = told(window());
  INFO(text.toStdString());
  CHECK(
      text.startsWith("With the first coat in the week from 26 February, as planned, the coats stay "
                      "undisturbed 7 times in 10, by 50 years of weather.\n"));
  CHECK(
      text.contains("10 mm or more of rain on the day of a coat or the day after (18 %); a night of frost in "
                    "the week after a coat (3 %)."));
  CHECK_FALSE(text.contains("too hot"));
  CHECK(
      text.contains("begins on 8 October: undisturbed 9 times in 10. For that the works start on Fri 20 Aug "
                    "2027."));
  CHECK(text.contains("not a forecast"));
  CHECK(text.contains(
      "Coat 1: in the mean weather of its day fresh plaster loses 0.61 kg/m² per hour of water."));
  WeatherWindow hot = window();
  hot.best = hot.chosen;
  hot.weeks[8].heat = 0.4;
  CHECK(told(hot).contains("No other week of the year is better."));
  CHECK(told(hot).contains("a day too hot or too cold for plaster (40 %)"));
  CHECK(told(hot, kFeet).contains("0.057 kg/ft² per hour"));  // 0.614 x 0.09290304
  CHECK(all(words::windowAnswers(Works{}, kMetric)).startsWith("The weather of the place is not known"));
}

TEST_CASE("records tell their middle, how many there are and how far they lie apart") {
  CHECK(all(words::recordAnswers(planWith({}), kMetric)).startsWith("No records yet."));
  core::works::Calibration calibration;
  calibration.dry_to_wet = core::works::Measured{3, 1.384, 1.31, 1.42, 1.3};
  calibration.mixing = core::works::Measured{1, 0.914, 0.914, 0.914, 0.75};
  const QString beside = all(words::recordAnswers(planWith(calibration), kMetric));
  INFO(beside.toStdString());
  CHECK(beside.startsWith("The plan is reckoned with the figures entered"));
  CHECK(beside.contains(
      "Loose ingredients per placed plaster: 3 records, the middle one 1.38, from 1.31 to 1.42; "
      "entered is 1.30."));
  CHECK(beside.contains(
      "Mixing mortar: one record, 0.91 person-days per m³; entered is 0.75 person-days per m³."));
  calibration.in_force = true;
  CHECK(all(words::recordAnswers(planWith(calibration), kMetric))
            .startsWith("The plan is reckoned with the middle values of the records"));
  CHECK(all(words::recordAnswers(planWith(calibration), kFeet)).contains("2.59 person-days per 100 ft³"));
}

TEST_CASE("minutes and drying are shown and typed in their units") {
  CHECK(spaced(kMetric.quantity(20, Unit::minute, 0)) == "20 min");
  CHECK(*kMetric.parse("90 s", Unit::minute) == Approx(1.5));
  CHECK(*kMetric.parse("2 hours", Unit::minute) == Approx(120));
  CHECK(*kMetric.parse("1 kg/m²/h", Unit::kg_per_m2_h) == Approx(1));
  CHECK(*kFeet.parse("0.1", Unit::kg_per_m2_h) == Approx(0.1 / 0.09290304));
  CHECK(kMetric.quantity(1250, Unit::money, 0) == "1,250");
  CHECK(kFeet.quantity(12.5, Unit::money, 2) == "12.50");
}
