#include "core/exchange/weather_columns.h"
#include "core/exchange/weather_csv.h"
#include "core/water/crops.h"
#include "core/water/figures.h"
#include "tests/support/water_project.h"
#include "ui/text/water_sizes.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <map>
#include <stdexcept>
#include <string>

#include <catch2/catch.hpp>

namespace words = ui::words;
using core::FindingValue;
using core::Unit;
using core::water::WaterPlan;

namespace {

const ui::Formatter kMetric{QLocale("en_GB"), ui::UnitSystem::metric};
const ui::Formatter kFeet{QLocale("en_GB"), ui::UnitSystem::feet_inches};
const ui::Formatter kNepali{QLocale("ne_NP"), ui::UnitSystem::metric};

QString spaced(QString text) {
  return text.replace(QChar::Nbsp, u' ');
}

QString headline(const WaterPlan& plan, const ui::Formatter& format = kMetric) {
  return spaced(words::waterHeadline(plan, format));
}

QStringList answers(const WaterPlan& plan, const ui::Formatter& format = kMetric) {
  return words::waterAnswers(plan, format).replaceInStrings(QString(QChar::Nbsp), " ");
}

void count(WaterPlan& plan) {
  plan.years = plan.each_year.size();
  plan.years_without_dry_day = 0;
  for (const auto& year : plan.each_year) plan.years_without_dry_day += year.dry_days == 0 ? 1 : 0;
  plan.years_in_ten = 10.0 * plan.years_without_dry_day / static_cast<double>(plan.years);
}

/// Years of which some have dry days, for beds alone.
WaterPlan plan(std::vector<core::water::YearResult> years) {
  WaterPlan out;
  out.each_year = std::move(years);
  count(out);
  out.year.beds = 60;
  out.bed_area_m2 = 100;
  out.most_tried_area_m2 = 1000;
  out.most_tried_m3 = 200;
  out.curve.full_m3 = 22.5;
  return out;
}

std::vector<core::water::YearResult> good(std::size_t years) {
  return std::vector<core::water::YearResult>(years);
}

WaterPlan mostlyGood() {
  auto years = good(50);
  for (std::size_t k = 0; k < 10; ++k) years[k] = {static_cast<int>(k) + 14, 1 + 0.35 * double(k), 0};
  return plan(years);
}

/// A dry season from November to May, a wet one from June to October.
WaterPlan seasons() {
  WaterPlan out = mostlyGood();
  for (std::size_t m = 0; m < core::kMonths; ++m) {
    const bool wet = m >= 5 && m <= 9;
    out.months[m].source = wet ? 20 : 1;
    out.months[m].beds = wet ? 0 : 6;
    out.lasts.push_back({static_cast<int>(m), wet ? std::nullopt : std::optional(40 + static_cast<int>(m))});
    out.fills.push_back({static_cast<int>(m), wet ? std::optional(30 + static_cast<int>(m)) : std::nullopt});
  }
  out.months[2].dry_days = 1;
  out.months[3].dry_days = 3;
  out.months[4].dry_days = 2;
  return out;
}

bool any(const QStringList& texts, const QString& part) {
  return !texts.filter(part).isEmpty();
}

core::Finding finding(std::string code, std::vector<FindingValue> values) {
  core::Finding out;
  out.code = std::move(code);
  out.values = std::move(values);
  return out;
}

FindingValue value(std::string name, double number, Unit unit = Unit::none) {
  return {std::move(name), number, unit, {}};
}

QString text(const core::Finding& found, const ui::Formatter& format = kMetric) {
  return spaced(words::findingText(found, format));
}

struct Told {
  std::vector<FindingValue> values;
  QStringList parts;  ///< what the sentence must quote
};

/// Every code with the values that core/base/finding.h gives it.
std::map<std::string, Told> toldFindings() {
  const Unit flow = Unit::litre_per_minute;
  const auto none = std::vector<FindingValue>{};
  return {
      {"water_latitude_unknown", {none, {"latitude", "map"}}},
      {"water_climate_unknown", {none, {"Enter rain, wet days"}}},
      {"water_elevation_unknown", {none, {"sea level"}}},
      {"water_no_supply", {none, {"source", "roof"}}},
      {"water_no_need", {none, {"beds, animals or people"}}},
      {"water_not_for_drinking", {{value("people", 6, Unit::person)}, {"People counted: 6."}}},
      {"water_target_missed",
       {{value("years_in_ten", 7.96), value("target", 8), value("most_tried_m3", 200, Unit::cubic_metre),
         value("smallest_full_m3", 30.1, Unit::cubic_metre),
         value("largest_bed_area_m2", 79, Unit::square_metre)},
        {"7.9 of 10", "8 of 10 are wanted", "about 31,000 L", "about 79 m²"}}},
      {"water_never_full",
       {{value("full_m3", 22.5, Unit::cubic_metre), value("most_m3", 14.19, Unit::cubic_metre)},
        {"22,500 L", "about 14,000 L"}}},
      {"water_rain_spread_unknown", {{value("rain_cv_percent", 11.6, Unit::percent)}, {"12 %"}}},
      {"water_years_few", {{value("years", 6), value("wanted", 10)}, {"monthly means: 6.", "at least 10"}}},
      {"water_record_no_whole_year", {none, {"no whole year", "wettest month"}}},
      {"water_rain_spread_differs",
       {{value("rain_cv_percent", 18, Unit::percent), value("made_percent", 25.4, Unit::percent)},
        {"differs by 25 %", "spread of 18 %"}}},
      {"water_record_short", {{value("years", 6), value("wanted", 10)}, {": 6.", "At least 10"}}},
      {"water_record_years_left_out", {{value("years", 3), value("first", 2004)}, {": 3,", "in 2004."}}},
      {"water_record_filled", {{value("values", 1204)}, {"1,204"}}},
      {"water_readings_few", {{value("month", 4), value("count", 2)}, {"in April: 2."}}},
      {"water_reading_outlier",
       {{value("row", 2), value("flow_l_per_min", 31.26, flow), value("median_l_per_min", 12, flow)},
        {"Reading 3", "31.3 L/min", "12.0 L/min"}}},
      {"water_reading_too_quick",
       {{value("row", 0), value("seconds", 2.4, Unit::second)}, {"Reading 1:", "2.4 s", "3 seconds"}}},
      {"water_flow_differs_from_readings",
       {{value("month", 12), value("flow_l_per_min", 8, flow), value("median_l_per_min", 6.5, flow)},
        {"For December", "8.0 L/min", "6.5 L/min"}}},
      {"water_et0_methods_differ",
       {{value("penman_monteith_mm", 1390.4, Unit::millimetre),
         value("hargreaves_mm", 1502, Unit::millimetre)},
        {"1,390 mm by Penman-Monteith", "1,502 mm by Hargreaves", "Enter or check"}}},
  };
}

}  // namespace

TEST_CASE("every water finding quotes its numbers") {
  const auto told = toldFindings();
  for (const std::string_view code : core::findingCodes()) {
    if (!code.starts_with("water_")) continue;
    INFO(code);
    REQUIRE(told.contains(std::string(code)));
    const Told& wanted = told.at(std::string(code));
    const QString sentence = text(finding(std::string(code), wanted.values));
    INFO(sentence.toStdString());
    for (const QString& part : wanted.parts) CHECK(sentence.contains(part));
    CHECK(sentence.endsWith(u'.'));
    CHECK_FALSE(sentence.contains(QStringLiteral("%1")));
  }
}

TEST_CASE("a missed target names what would reach it, or up to what size nothing does, and no absent beds") {
  core::Finding missed = finding("water_target_missed", {value("years_in_ten", 0), value("target", 8.5),
                                                         value("most_tried_m3", 200, Unit::cubic_metre)});
  CHECK(text(missed) ==
        "The water lasts in 0 of 10 years; 8.5 of 10 are wanted. No tank of this depth and batter, up to "
        "200,000 L, would reach it: "
        "lead in more water, or need less.");
  missed.values.push_back(value("largest_bed_area_m2", 79, Unit::square_metre));
  CHECK(text(missed).endsWith("wanted. Beds of about 79 m² in all would reach it."));
  CHECK(text(missed, kFeet).contains("about 850 ft²"));  // 79 m2 are 850.3 ft2
  missed.values.back().number = 0.4;
  CHECK_FALSE(text(missed).contains("Beds"));
}

TEST_CASE("years in ten are rounded down, and neither all nor none is claimed") {
  const auto years = [](double value) { return words::yearsInTenText(value, kMetric); };
  CHECK(years(8) == "8");
  CHECK(years(7.6) == "7.6");
  CHECK(years(7.95) == "7.9");
  CHECK(years(9.95) == "9.9");
  CHECK(years(10) == "10");
  CHECK(years(0.05) == "0.1");
  CHECK(years(0) == "0");
}

TEST_CASE("years in ten in single precision are not told a tenth too low") {
  for (int tenths = 0; tenths <= 100; ++tenths) {
    const auto single = static_cast<float>(tenths) / 10.0F;
    INFO(tenths);
    CHECK(words::yearsInTenText(double(single), kMetric) ==
          kMetric.number(tenths / 10.0, Unit::none, tenths % 10 == 0 ? 0 : 1));
  }
}

TEST_CASE("litres and areas are told in two digits") {
  const auto litres = [](double m3) { return spaced(words::litresWorth(m3, kMetric)); };
  CHECK(litres(4.14) == "4,100 L");
  CHECK(litres(4.16) == "4,200 L");
  CHECK(litres(0.0234) == "23 L");
  CHECK(litres(0.0034) == "3 L");
  CHECK(litres(0.0002) == "1 L");
  CHECK(litres(0) == "0 L");
  CHECK(spaced(words::litresWorth(30.1, kMetric, words::Rounding::up)) == "31,000 L");
  CHECK(spaced(words::litresWorth(30, kMetric, words::Rounding::up)) == "30,000 L");
  CHECK(spaced(words::areaWorth(149.9, kMetric, words::Rounding::down)) == "140 m²");
}

TEST_CASE("the headline says how many years are good and how bad the worst is") {
  CHECK(headline(mostlyGood()) ==
        "In 8 of 10 years the beds stay watered all year. In the worst of 50 years water is missing on 23 "
        "days, about 4,200 L in all.");  // 1 + 0.35 x 9 = 4.15 m3
}

TEST_CASE("a good year is never rounded up to all years, and a short record is told by its count") {
  auto years = good(200);
  years[7] = {1, 0.2, 0};
  CHECK(headline(plan(years)) ==
        "In 9 of 10 years the beds stay watered all year. In the worst of 200 years water is missing on 1 "
        "day, about 200 L in all.");
  CHECK(headline(plan({{}, {}, {12, 3, 0}})).startsWith("In 2 of 3 years the beds stay watered all year."));
}

TEST_CASE("the headline of all years good and of none") {
  CHECK(headline(plan(good(50))) == "In every year reckoned (50 years) the beds stay watered.");
  CHECK(headline(plan(good(1))) == "In every year reckoned (1 year) the beds stay watered.");
  CHECK(headline(plan({{3, 0.5, 0}, {30, 9, 0}, {8, 1, 0}})) ==
        "In no year reckoned (3 years) do the beds stay watered all year. In the worst of 3 years water is "
        "missing on 30 days, about 9,000 L in all. In a middling year it is missing on 8 days.");
  CHECK(
      headline(plan({{1, 0.5, 0}})) ==
      "In no year reckoned (1 year) do the beds stay watered all year. Water is missing on 1 day, about 500 "
      "L in all.");
}

TEST_CASE("the headline names those who need the water") {
  WaterPlan herd = mostlyGood();
  herd.year.animals = 10;
  CHECK(headline(herd).startsWith("In 8 of 10 years there is water all year for the beds and the animals."));
  herd.year.people = 5;
  CHECK(headline(herd).contains("for the beds, the animals and the people."));
  herd.year.beds = 0;
  herd.bed_area_m2 = 0;
  herd.each_year = good(20);
  count(herd);
  CHECK(headline(herd) == "In every year reckoned (20 years) there is water for the animals and the people.");
  CHECK_FALSE(any(answers(herd), "beds"));
}

TEST_CASE("without a need there is nothing to last, and the rain may do it all") {
  WaterPlan idle = plan(good(50));
  idle.year.beds = 0;
  CHECK(headline(idle) == "Rain alone waters the beds; nothing has to be drawn from the tank.");
  idle.bed_area_m2 = 0;
  CHECK(headline(idle).startsWith("Nothing is drawn from the tank yet."));
  CHECK(answers(idle).isEmpty());
}

TEST_CASE("answers name dry months, how long a full tank lasts and how fast it fills") {
  const QStringList told = answers(seasons());
  CHECK(any(told, "it is in March to May; most often in April."));
  CHECK(any(told,
            "Full at the start of January, when it is used up fastest, and with nothing more flowing in, the "
            "tank lasts 40 days."));
  CHECK(any(told, "fills quickest from the start of June on: in 35 days."));
}

TEST_CASE("dry months run over the end of the year and stand apart where others lie between") {
  WaterPlan plan = seasons();
  plan.months[11].dry_days = plan.months[0].dry_days = 2;
  plan.months[2].dry_days = plan.months[3].dry_days = 0;
  CHECK(any(answers(plan), "it is in May and December to January; most often in January."));
  plan.months[11].dry_days = plan.months[0].dry_days = 0;
  CHECK(any(answers(plan), "Where water is missing, it is in May."));
  for (auto& month : plan.months) month.dry_days = 1;
  CHECK(any(answers(plan), "Water is missing all year round; most often in "));
}

TEST_CASE("what does not end within a year is told so") {
  WaterPlan plan = seasons();
  for (auto& spell : plan.lasts) spell.days.reset();
  for (auto& spell : plan.fills) spell.days.reset();
  CHECK(any(answers(plan), "the tank lasts a year or longer."));
  CHECK(any(answers(plan), "does not fill within a year."));
  for (auto& spell : plan.fills) spell.days = 1;
  CHECK(any(answers(plan), "With nothing drawn, an empty tank fills in 1 day."));
}

TEST_CASE("sizes that meet the target are rounded to the safe side") {
  WaterPlan plan = mostlyGood();
  plan.smallest_full_m3 = 30.1;
  plan.largest_bed_area_m2 = 79.6;
  CHECK(any(answers(plan), "a tank of this depth has to hold about 31,000 L."));
  CHECK(any(answers(plan), "beds of up to about 79 m² have"));
  CHECK(any(answers(plan), "entered: 100 m²."));
  plan.smallest_full_m3 = 15;
  plan.largest_bed_area_m2 = 1000;
  CHECK(any(answers(plan), "A tank that holds about 15,000 L already gives"));
  CHECK(any(answers(plan), "even beds of 1,000 m² have"));
  plan.smallest_full_m3 = 0.05;
  CHECK(any(answers(plan), "Almost any tank"));
  plan.smallest_full_m3.reset();
  plan.largest_bed_area_m2.reset();
  CHECK(any(answers(plan), "No tank of this depth and batter, up to 200,000 L, gives"));
  CHECK(any(answers(plan), "beds of no size"));
}

TEST_CASE("beds smaller than one unit are not rounded up to it") {
  WaterPlan plan = mostlyGood();
  plan.largest_bed_area_m2 = 0.6;
  CHECK(words::largestBeds(plan, kMetric).kind == words::MetSize::Kind::none);
  CHECK(any(answers(plan), "beds of no size"));
  CHECK(spaced(words::largestBeds(plan, kFeet).text) == "6 ft²");  // 0.6 m2 are 6.46 ft2
  plan.largest_bed_area_m2 = 1.9;
  CHECK(spaced(words::largestBeds(plan, kMetric).text) == "1 m²");
}

TEST_CASE("spill is told when there is any") {
  WaterPlan plan = mostlyGood();
  CHECK_FALSE(any(answers(plan), "unused"));
  plan.spill_mean_m3 = 123.4;
  CHECK(any(answers(plan), "In a mean year about 120,000 L run over unused."));
}

TEST_CASE("answers come in the reader's digits and month names") {
  CHECK(headline(mostlyGood(), kNepali).contains(QString::fromUtf8("In ८ of १० years")));
  CHECK(headline(mostlyGood(), kNepali).contains(QString::fromUtf8("२३ days, about ४,२०० L")));
  CHECK(any(answers(seasons(), kNepali), QLocale("ne_NP").standaloneMonthName(1)));
  CHECK(text(finding("water_record_years_left_out", {value("years", 3), value("first", 2004)}), kNepali)
            .contains(QString::fromUtf8("२००४")));
}

TEST_CASE("crops of the table have names; any other name is the user's own") {
  for (const core::water::CropFigures& crop : core::water::crops()) {
    INFO(crop.id);
    CHECK(words::cropName(crop.id)[0].isUpper());
    CHECK(words::cropName(crop.id) != QString::fromLatin1(crop.id.data(), qsizetype(crop.id.size())));
  }
  CHECK(words::cropName("rayo sag") == "rayo sag");
}

TEST_CASE("every figure of the table says what it is for") {
  for (const core::Figure& figure : core::water::figures()) {
    INFO(figure.key);
    CHECK_FALSE(words::figureName(figure.key).isEmpty());
  }
  CHECK(words::figureName("animal.pig") == words::choiceLabel("water.animals[].kind", "pig"));
  CHECK_THROWS_AS(words::figureName("runoff.moon"), std::logic_error);
}

TEST_CASE("a place in the weather table is its line and column") {
  CHECK(words::placeText("row:17:rain_mm", kMetric) == "Line 17 of the table, rain");
  CHECK(words::placeText("row:17:date", kMetric) == "Line 17 of the table, date");
  CHECK(words::placeText("row:1204", kMetric) == "Line 1,204 of the table");
  CHECK(words::placeText("row:2:snow", kMetric) == "Line 2 of the table, snow");
  CHECK(words::placeText("row:x", kMetric) == "row:x");
  for (const auto& column : core::exchange::kWeatherColumns) {
    const std::string path = "row:2:" + std::string(column.name);
    INFO(path);
    CHECK_FALSE(words::placeText(path, kMetric).contains(u'_'));
  }
}

TEST_CASE("faults of the weather table say where they are and what to do") {
  core::Problem problem;
  problem.code = "out_of_range";
  problem.path = "row:17:t_max_c";
  problem.value = "99";
  problem.least = -60;
  problem.most = 60;
  problem.unit = Unit::celsius;
  CHECK(spaced(words::problemText(problem, kMetric)) ==
        "Line 17 of the table, highest temperature is outside the allowed range: found 99; allowed -60 °C to "
        "60 °C.");
}

TEST_CASE("days, columns and whole tables that are wrong are told from the table as it is read") {
  const QString head = "date,rain_mm,t_min_c,t_max_c,snow\n";
  const auto read = [](const QString& table) { return core::exchange::parseWeatherCsv(table.toStdString()); };
  const auto notes = read(head + "2001-03-01,0,2,9,0\n2001-03-05,0,2,9,0\n2001-03-07,0,2,9,0\n");
  REQUIRE(notes.has_value());
  QStringList told;
  for (const core::Problem& note : notes->notes) told << words::tableProblemText(note, kMetric);
  CHECK(told ==
        QStringList{
            "Line 1 of the table names a column that is not used: found snow.",
            "Line 3 of the table comes after days that are left out, which count as gaps of the record: "
            "2001-03-02 to 2001-03-04.",
            "Line 4 of the table comes after days that are left out, which count as gaps of the record: "
            "2001-03-06."});
  const auto empty = read(head);
  REQUIRE_FALSE(empty.has_value());
  CHECK(words::tableProblemText(empty.error().front(), kMetric)
            .startsWith("The weather table has too few entries: found 0;"));
  const auto dateless = read("rain_mm,t_min_c,t_max_c\n0,1,2\n");
  REQUIRE_FALSE(dateless.has_value());
  CHECK(words::tableProblemText(dateless.error().front(), kMetric).startsWith("Line 1 of the table"));
}

TEST_CASE("faults of beds and months show the value and what is allowed") {
  core::Problem day;
  day.code = "bad_day_of_month";
  day.path = "water.beds[0].plant_day";
  day.value = "31";
  day.least = 1;
  day.most = 30;
  day.allowed = "number";
  CHECK(words::problemText(day, kMetric) ==
        "Bed 1: Planted, day (water.beds[0].plant_day) is a day that this month does not have; choose an "
        "earlier one: found 31; allowed 1 to 30.");
  core::Problem crop;
  crop.code = "unknown_crop";
  crop.path = "water.beds[2].crop";
  crop.value = "\"quinoa\"";
  CHECK(words::problemText(crop, kMetric).endsWith("among your own crops: found \"quinoa\"."));
}

TEST_CASE("the years reckoned with are told without a verb that has to agree, also when it is one") {
  core::Project project = support::waterProject();
  core::DailyWeather day{};
  day.date = std::chrono::year{2001} / 1 / 1;
  project.water->climate.daily = core::DailyRecord({day});
  project.water->climate.kind = core::ClimateKind::daily;
  core::Plan plan = core::plan(core::Project{}).value();
  plan.water.emplace().years = 1;
  CHECK(spaced(words::recordSummary(project, plan, kMetric)).endsWith(" Reckoned with: 1 year."));
}

TEST_CASE("a record without a whole year is told as such and not as missing weather") {
  core::Project project = support::waterProject();
  core::DailyWeather day{};
  day.date = std::chrono::year{2001} / 1 / 1;
  project.water->climate.daily = core::DailyRecord({day});
  project.water->climate.kind = core::ClimateKind::daily;
  core::Plan plan = core::plan(core::Project{}).value();
  const QString told = words::noWholeYear(project, plan);
  CHECK(told.startsWith("The record holds no whole year without gaps"));
  CHECK(words::recordSummary(project, plan, kMetric).endsWith(told));
  plan.water.emplace();
  CHECK(words::noWholeYear(project, plan).isEmpty());
  plan.water.reset();
  project.site.latitude_deg.reset();
  CHECK(words::noWholeYear(project, plan).isEmpty());
  CHECK(words::noWholeYear(core::Project{}, plan).isEmpty());
}
