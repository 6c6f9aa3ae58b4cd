#include "core/cost/cost_plan.h"
#include "core/cost/ranges.h"
#include "core/project/fields.h"
#include "core/works/calendar.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"

#include <QRegularExpression>
#include <algorithm>
#include <array>
#include <chrono>
#include <map>
#include <set>
#include <stdexcept>
#include <string>

#include <catch2/catch.hpp>

namespace words = ui::words;
using core::Carrier;
using core::FindingValue;
using core::LiningKind;
using core::OptionResult;
using core::Project;
using core::RangedInput;
using core::Unit;
using core::compare::Candidate;
using core::compare::SearchResult;
using core::cost::CostLine;
using core::cost::CostPlan;
using core::cost::LiningCost;
using core::cost::RangesPlan;
using core::cost::Spread;

namespace {

const ui::Formatter kMetric{QLocale("en_GB"), ui::UnitSystem::metric};
const ui::Formatter kFeet{QLocale("en_GB"), ui::UnitSystem::feet_inches};

QString spaced(QString text) {
  return text.replace(QChar::Nbsp, u' ');
}

QString all(QStringList told) {
  return told.replaceInStrings(QString(QChar::Nbsp), " ").join(u'\n');
}

core::works::Day day(int month, int day) {
  return std::chrono::year(2027) / month / day;
}

Project rupees() {
  Project project;
  project.currency = "Rs";
  return project;
}

FindingValue value(std::string name, double number, Unit unit = Unit::none) {
  return {std::move(name), number, unit, {}};
}

FindingValue token(std::string name, std::string text) {
  return {std::move(name), 0, Unit::none, std::move(text)};
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

void checkSentences(const QStringList& told) {
  CHECK_FALSE(told.isEmpty());
  for (const QString& sentence : told) checkSentence(sentence);
}

struct Wanted {
  std::vector<FindingValue> values;
  QStringList quoted;
};

/// Every code with the values that core/base/finding.h gives it, and what its sentence must say.
std::multimap<std::string, Wanted> moneyFindings() {
  return {
      {"cost_prices_missing",
       {{value("count", 1), token("item", "sand")}, {"a price is missing", ": Sand."}}},
      {"cost_prices_missing", {{value("count", 4), token("item", "mule")}, {"missing: 4.", ": Mules."}}},
      {"cost_prices_missing", {{value("count", 2), token("item", "gate")}, {": gate."}}},
      {"cost_bag_split",
       {{value("bag_kg", 50, Unit::kilogram), value("load_kg", 30, Unit::kilogram),
         token("carrier", "porter")},
        {"50 kg", "30 kg", "(porter)"}}},
      {"option_not_buildable", {{token("option", "B")}, {"Option B cannot be built"}}},
  };
}

CostLine carriedLine(std::string item, Carrier by, int loads, double days, int loads_per_piece = 1) {
  CostLine line;
  line.item = std::move(item);
  line.carriage = core::cost::Carriage{by, 0, loads, loads_per_piece, days, {}};
  return line;
}

CostPlan bill() {
  CostPlan plan;
  plan.bill.total = 31249.6;
  plan.bill.own = 8200;
  plan.bill.cash = 23049.6;
  plan.bill.materials = 15000;
  plan.bill.labour = 9400;
  plan.bill.carriage = 4000;
  plan.bill.contingency = 2849.6;
  plan.bill.missing = {"sand", "porter"};
  plan.bill.lines = {carriedLine("cement_bags", Carrier::porter, 34, 8.5, 2),
                     carriedLine("stone", Carrier::porter, 60, 15),
                     carriedLine("source_pipe", Carrier::mule, 1, 0.3)};
  plan.per_m3_stored = 1388.9;
  plan.delivered_m3 = 14.26;
  plan.dry_months = {0, 1, 2, 3, 10, 11};
  plan.annual = 5085;
  plan.per_m3_delivered = 356.6;
  plan.days = {{day(2, 15), 100, 900, 1000}, {day(2, 24), 15000, 0, 16000}};
  return plan;
}

LiningCost lining(LiningKind kind, double capital, double annual, double life_years) {
  LiningCost cost;
  cost.lining = kind;
  cost.capital = capital;
  cost.life_years = life_years;
  cost.upkeep_year = capital / 50;
  cost.annual = annual;
  cost.annual_per_m3 = annual / 22.5;
  return cost;
}

Spread spread(std::string outcome, double typical, double p10, double p50, double p90) {
  Spread spread;
  spread.outcome = std::move(outcome);
  spread.typical = typical;
  spread.p10 = p10;
  spread.p50 = p50;
  spread.p90 = p90;
  return spread;
}

Candidate candidate() {
  return {6.2, 3.4, 1.5, 28.3, 17, 11, 31042.0, 9.04};
}

SearchResult searched() {
  SearchResult result;
  result.tried = 37851;
  result.within = 20412;
  result.by_cost = true;
  result.cheapest = candidate();
  result.largest = Candidate{10, 6, 2, 104.7, 51, 30, 98700.0, 10.0};
  result.frontier = {candidate(), *result.largest};
  result.target_years_in_ten = 8;
  return result;
}

/// A, a deeper B and a C that cannot be built.
std::vector<OptionResult> options() {
  OptionResult a, b, c;
  a.letter = "A";
  a.length_m = 6;
  a.width_m = 3.5;
  a.depth_m = 1.5;
  a.full_volume_m3 = 22.5;
  a.cost = 31249.6;
  a.cement_bags = 14;
  a.start = day(2, 15);
  a.years_in_ten = 7.96;
  a.cautions = 3;
  b = a;
  b.letter = "B";
  b.name = "deeper";
  b.depth_m = 1.8;
  b.full_volume_m3 = 28.2;
  b.cost.reset();
  b.changes = {{"tank.depth_m", 1.8}, {"site.soil", std::string("sandy")}, {"site.fence_planned", true}};
  c.letter = "C";
  c.changes = {{"tank.depth_m", 4.0},
               {"lining.coats[1].thickness_m", 0.045},
               {"lining.coats[5].soil", 2.0},
               {"works.start_date", std::string("2028-02-29")}};
  core::Problem problem;
  problem.code = "pit_floor_vanishes";
  problem.path = "tank";
  c.problems = {problem};
  return {a, b, c};
}

const words::OptionRow& rowNamed(const std::vector<words::OptionRow>& rows, const QString& name) {
  const auto row = std::ranges::find(rows, name, &words::OptionRow::name);
  INFO(name.toStdString());
  REQUIRE(row != rows.end());
  return *row;
}

}  // namespace

TEST_CASE("every finding of money and options quotes its numbers, in both unit systems") {
  const auto wanted = moneyFindings();
  for (const std::string_view code : core::findingCodes()) {
    if (!code.starts_with("cost_") && !code.starts_with("option_")) continue;
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
}

TEST_CASE("money is whole from a hundred on and keeps to its currency") {
  const auto money = [](double amount, const Project& project) {
    return words::money(amount, project, kMetric);
  };
  CHECK(money(12400.4, rupees()) == "Rs" + QString(QChar::Nbsp) + "12,400");
  CHECK(spaced(money(99.5, rupees())) == "Rs 99.50");
  CHECK(spaced(money(100.4, rupees())) == "Rs 100");
  CHECK(spaced(money(12, rupees())) == "Rs 12");
  CHECK(spaced(money(0, rupees())) == "Rs 0");
  CHECK(money(12400, Project{}) == "12,400");
}

TEST_CASE("every choice of money has its name, and an item of one's own keeps it") {
  std::set<QString> names;
  for (const Carrier carrier : {Carrier::none, Carrier::porter, Carrier::mule, Carrier::trolley})
    CHECK(names.insert(words::carrierName(carrier)).second);
  for (int k = 0; k < 5; ++k) CHECK(names.insert(words::liningName(LiningKind(k))).second);
  for (int k = 0; k < 9; ++k) CHECK(names.insert(words::rangedInputName(RangedInput(k))).second);
  CHECK(words::liningName(LiningKind::moulded_tank) == "moulded plastic tank");
  CHECK(words::rangedInputName(RangedInput::flow) == "flow of the source");
  for (const core::PriceItem& item : core::usualItems()) {
    INFO(item.item);
    const QString name = words::priceItemName(item.item);
    CHECK(name[0].isUpper());
    CHECK(names.insert(name).second);
  }
  CHECK(words::priceItemName("iron gate") == "iron gate");
  for (const char* unit : {"bag", "m3", "piece", "person_day", "m", "job"})
    CHECK_FALSE(words::costUnitName(unit).isEmpty());
  CHECK_THROWS_AS(words::costUnitName("ounce"), std::logic_error);
}

TEST_CASE("every weight of the table says what it is for") {
  std::set<QString> names;
  for (const core::Figure& figure : core::cost::figures()) {
    INFO(figure.key);
    CHECK(names.insert(words::figureName(figure.key)).second);
  }
  CHECK_THROWS_AS(words::figureName("weight.moon"), std::logic_error);
}

TEST_CASE("an outcome is told in its unit") {
  const auto told = [](double number, const char* outcome) {
    return spaced(words::outcomeAmount(number, outcome, rupees(), kMetric));
  };
  CHECK(told(14.4, "cement_bags") == "14 bags");
  CHECK(told(1, "cement_bags") == "1 bag");
  CHECK(told(6.25, "cement_bags") == "6.3 bags");
  CHECK(told(61.34, "person_days") == "61 person-days");
  CHECK(told(8.26, "person_days") == "8.3 person-days");
  CHECK(told(31249.6, "money") == "Rs 31,250");
  CHECK(told(19.4, "fill_days") == "19 days");
  for (const char* outcome : {"cement_bags", "person_days", "money", "fill_days"})
    CHECK_FALSE(words::outcomeName(outcome).isEmpty());
  CHECK_THROWS_AS(told(1, "joy"), std::logic_error);
}

TEST_CASE("the bill tells the total first, then water stored and water of the dry months apart") {
  checkSentences(words::billAnswers(rupees(), bill(), kMetric));
  const QString told = all(words::billAnswers(rupees(), bill(), kMetric));
  INFO(told.toStdString());
  CHECK(
      told.startsWith("The tank costs about Rs 31,250: Rs 23,050 in money, Rs 8,200 given by the household"));
  CHECK(told.contains("is not known: Sand, Porters."));
  CHECK(told.contains("For each m³ (1,000 L) that the full tank stores, building costs Rs 1,389."));
  CHECK(told.contains("delivers in the dry months (November to April), the tank costs Rs 357 over its life"));
  CHECK(told.contains("it delivers 14,300 L then."));
  CHECK(
      told.contains("Of that, Rs 15,000 for materials, Rs 9,400 for work, Rs 4,000 for carrying and Rs 2,850 "
                    "kept for what nobody foresees."));
  CHECK(told.contains("first on Mon 15 Feb 2027; most on one day is Rs 15,000, on Wed 24 Feb 2027."));
  CHECK(told.contains("porter: 94 (24 days for a single one); mule: 1 (1 day for a single one)."));
  CHECK(told.contains("split even: Cement (into 2)."));
}

TEST_CASE("what is not known of the money is said") {
  CostPlan plan = bill();
  plan.bill.own = 0;
  plan.bill.missing.clear();
  plan.bill.lines.clear();
  plan.days.clear();
  plan.delivered_m3.reset();
  QString told = all(words::billAnswers(rupees(), plan, kMetric));
  CHECK(told.startsWith("The tank costs about Rs 31,250.\n"));
  CHECK(told.contains("cannot be told before the water balance"));
  for (const char* absent : {"not known", "Loads", "split", "needed first"}) {
    INFO(absent);
    CHECK_FALSE(told.contains(absent));
  }
  plan.delivered_m3 = 3;
  plan.dry_months = {4, 6, 7};
  plan.per_m3_delivered.reset();
  told = all(words::billAnswers(rupees(), plan, kMetric));
  CHECK(told.contains("(May and July to August) of a mean year 3,000 L are drawn"));
  plan.dry_months.clear();
  CHECK(all(words::billAnswers(rupees(), plan, kMetric)).contains("No month counts as dry"));
  plan.dry_months = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11};
  CHECK(all(words::billAnswers(rupees(), plan, kMetric)).contains("(all months)"));
  CostPlan none;
  none.bill.missing = {"sand"};
  CHECK(all(words::billAnswers(rupees(), none, kMetric)).startsWith("No price is entered yet"));
}

TEST_CASE("linings are set side by side by the year, unknown ones named") {
  CostPlan plan;
  CHECK(all(words::liningAnswers(rupees(), plan, kMetric)).startsWith("No lining can be compared yet"));
  plan.linings = {lining(LiningKind::soil_cement, 31250, 5085, 10), {}};
  plan.linings[1].lining = LiningKind::ferrocement;
  CHECK(all(words::liningAnswers(rupees(), plan, kMetric)).startsWith("Only one lining can be reckoned"));
  plan.linings.insert(plan.linings.begin(), lining(LiningKind::plastic_sheet, 9000, 2554, 4.5));
  checkSentences(words::liningAnswers(rupees(), plan, kMetric));
  const QString told = all(words::liningAnswers(rupees(), plan, kMetric));
  INFO(told.toStdString());
  CHECK(told.startsWith(
      "Over the years plastic sheet costs least: Rs 2,554 a year, interest and upkeep counted. "
      "That is Rs 114 a year for each m³ (1,000 L) stored.\n"));
  CHECK(told.contains(
      "Plastic sheet: Rs 2,554 a year; Rs 9,000 to build with its digging, lasts about 4.5 years, "
      "upkeep Rs 180 a year."));
  CHECK(told.contains("Soil-cement plaster: Rs 5,085 a year"));
  CHECK(told.contains("lasts about 10 years"));
  CHECK(told.contains("is not known: ferrocement."));
  CHECK(told.contains("left out of all of them: pipes, fence"));
  CHECK(told.contains("ask people who have such a lining"));
}

TEST_CASE("a range tells its middle, one case of ten either side, and what moves it") {
  RangesPlan plan;
  CHECK(all(words::rangesAnswers(rupees(), plan, kMetric)).startsWith("Nothing has been drawn yet"));
  plan.draws = 10000;
  plan.spreads = {spread("cement_bags", 13, 12.6, 14.2, 16.4), spread("money", 31250, 31250, 31250, 31250)};
  plan.spreads[0].drivers = {{RangedInput::thickness, 0.62, 0.8},
                             {RangedInput::dry_to_wet, 0.251, 0.5},
                             {RangedInput::flow, 0.04, -0.2}};
  checkSentences(words::rangesAnswers(rupees(), plan, kMetric));
  const QString told = all(words::rangesAnswers(rupees(), plan, kMetric));
  INFO(told.toStdString());
  CHECK(told.startsWith(
      "Bags of cement: 14 bags in the middle; in one of ten cases more than 16 bags, in one of "
      "ten less than 13 bags. With the figures as entered it is 13 bags. What moves it most: "
      "thickness of the coats (62 %) and loose ingredients per placed plaster (25 %).\n"));
  CHECK(told.contains("Money: Rs 31,250, hardly more or less.\n"));
  CHECK(told.contains("From 10,000 draws"));
  CHECK(told.contains("no promise"));
}

TEST_CASE("a size that was tried is told in one line") {
  CHECK(spaced(words::candidateText(rupees(), candidate(), kMetric)) ==
        "6.2 m × 3.4 m × 1.5 m, 28 m³, 17 bags, Rs 31,042, 9 of 10 years");
  Project round = rupees();
  round.tank.shape = core::Shape::round;
  Candidate small{4.05, 4.05, 1, 8.94, 6.5, 6, {}, {}};
  CHECK(spaced(words::candidateText(round, small, kMetric)) == "4.05 m across, 1.0 m deep, 8.9 m³, 6.5 bags");
  CHECK(
      spaced(words::candidateText(rupees(), candidate(), kFeet))
          .startsWith("20' 4\" × 11' 1 3/4\" × 4' 11\", 999 ft³"));  // 244.1, 133.9, 59.06 in; 28.3/0.0283168
}

TEST_CASE("the search tells the cheapest, the largest, and what was left out and why") {
  SearchResult result = searched();
  result.left_out = {1, 2, 3, 4, 5, 6, 17418};
  checkSentences(words::searchAnswers(rupees(), result, kMetric));
  QString told = all(words::searchAnswers(rupees(), result, kMetric));
  INFO(told.toStdString());
  CHECK(told.startsWith(
      "The cheapest size with water all year in 8 of 10 years: 6.2 m × 3.4 m × 1.5 m, 28 m³"));
  CHECK(told.contains(
      "holds most within the limits: 10.0 m × 6.0 m × 2.0 m, 105 m³, 51 bags, Rs 98,700, 10 of 10 "
      "years."));
  CHECK(told.contains("better than all cheaper ones: 2."));
  CHECK(told.contains("Sizes tried: 37,851; within all limits: 20,412."));
  for (const char* reason : {"fit into them (1)", "by hand (2)", "soil bears (3)", "for them (4)",
                             "can come (5)", "can be had (6)", "than is there (17,418)."}) {
    INFO(reason);
    CHECK(told.contains(reason));
  }
  result.left_out = {};
  result.by_cost = false;
  told = all(words::searchAnswers(rupees(), result, kMetric));
  CHECK_FALSE(told.contains("left out"));
  CHECK(told.startsWith("The size with least cement and with water all year in 8 of 10 years"));
  CHECK(told.contains("better than all that take less cement: 2."));
}

TEST_CASE("a search without an answer says what is in the way") {
  SearchResult result = searched();
  result.cheapest.reset();
  CHECK(all(words::searchAnswers(rupees(), result, kMetric))
            .startsWith("No size within the limits gives water all year in 8 of 10 years."));
  for (Candidate& size : result.frontier) size.years_in_ten.reset();
  result.largest.reset();
  CHECK(all(words::searchAnswers(rupees(), result, kMetric))
            .startsWith("Whether the water lasts is not known"));
  result.within = 0;
  CHECK(all(words::searchAnswers(rupees(), result, kMetric)).startsWith("No size keeps to all limits"));
  result.tried = 0;
  CHECK(words::searchAnswers(rupees(), result, kMetric).size() == 1);
}

TEST_CASE("an option is called by its letter and its name") {
  const auto all_options = options();
  CHECK(words::optionTitle(all_options[0]) == "A");
  CHECK(words::optionTitle(all_options[1]) == QString::fromUtf8("B – deeper"));
}

TEST_CASE("the table of options marks what differs and tells what cannot be built") {
  const Project project = rupees();
  const auto rows = words::optionRows(project, options(), kMetric);
  const QString none = QString::fromUtf8("–");
  for (const words::OptionRow& row : rows) {
    INFO(row.name.toStdString());
    CHECK(row.values.size() == 3);
    CHECK(row.differs.size() == 3);
    CHECK_FALSE(row.differs[0]);
  }
  const auto values = [&](const char* name) { return all(rowNamed(rows, name).values).replace(u'\n', u'|'); };
  const words::OptionRow& depth = rows.front();
  CHECK(depth.name == "Clear depth, floor to rim");
  CHECK(depth.is_change);
  CHECK(all(depth.values) == "1.50 m\n1.80 m\n4.00 m");
  CHECK(depth.differs == std::vector<bool>{false, true, true});
  CHECK(values("Soil of the pit") == "not entered|sandy|not entered");
  CHECK(values("Fence, gate and ladder planned") == "not entered|yes|not entered");
  CHECK(values("Coat 2: Thickness") == "0.060 m|0.060 m|0.045 m");
  CHECK(values("First day of the works") == "Mon 15 Feb 2027|Mon 15 Feb 2027|Tue 29 Feb 2028");
  CHECK(values("Coat 6: Soil") == none + "|" + none + "|" + none);  // a row that this project does not have
  CHECK(rowNamed(rows, "Cannot be built").values[2].contains("leaves no pit floor"));
  CHECK(values("Clear floor and depth") == "6.00 m × 3.50 m × 1.50 m|6.00 m × 3.50 m × 1.80 m|" + none);
  CHECK(values("Holds when full") == "22,500 L|28,200 L|" + none);
  CHECK(values("Cost") == "Rs 31,250|" + none + "|" + none);
  CHECK(values("Years in ten with water all year") == "7.9|7.9|" + none);
  CHECK(rowNamed(rows, "Years in ten with water all year").differs == std::vector<bool>{false, false, true});
  CHECK(values("Findings that ask for caution") == "3|3|" + none);
  CHECK_FALSE(rowNamed(rows, "Cost").is_change);
  CHECK(std::ranges::find(rows, QString("Sand"), &words::OptionRow::name) == rows.end());
}

TEST_CASE("a table of options that change nothing has no row of changes") {
  std::vector<OptionResult> one{options().front()};
  for (const words::OptionRow& row : words::optionRows(rupees(), one, kMetric)) CHECK_FALSE(row.is_change);
}
