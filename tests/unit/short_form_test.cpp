#include "core/exchange/short_form.h"

#include "core/exchange/project_file.h"
#include "core/exchange/short_form_text.h"
#include "core/plan.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>
#include <string>
#include <string_view>

#include <catch2/catch.hpp>

using core::Problems;
using core::Project;
using core::exchange::checkGroup;
using core::exchange::fromShortForm;
using core::exchange::shortForm;

namespace {

/// A design with something of every kind of part; all of its values are such as people enter.
Project sample() {
  Project p;
  p.site.latitude_deg = -27.35;
  p.site.elevation_m = 1450;
  p.site.ground = {core::GroundKind::slope, 12.5, 210, {}};
  p.site.platform.level_by = core::PlatformLevel::given;
  p.site.platform.level_m = -0.25;
  p.site.soil = core::Soil::firm_loam;
  p.site.clay_percent = 18;
  p.tank.measured_at = core::MeasuredAt::rim;
  p.tank.length_m = 7.2;
  p.tank.width_m = 3.6;
  p.tank.depth_m = 1.4;
  p.tank.dead_depth_m = 0.05;
  p.lining.coats = {{0.06, 3, 3, 1, 3}, {0.05, 2.5, 2, 1, 4}, {0.02, 0, 3, 1, 7}};
  p.lining.cove_radius_m = 0.1;
  p.works->start_date = std::chrono::year{2027} / 11 / 3;
  return p;
}

constexpr std::string_view kSample =
    "TW1 S:RE M:RI L7.2 W3.6 D1.4 B0.1 DD0.05 C0.06/3/3/1/3 C0.05/2.5/2/1/4 C0.02/0/3/1/7 CV0.1 LA-27.35 "
    "E1450 "
    "G:SL FA12.5 AZ210 PB:GI PH-0.25 GS:FI CY18 DA2027-11-03";

std::string checked(std::string_view text) {
  return std::string(text) + " *" + checkGroup(text);
}

std::string replaced(std::string text, std::string_view what, std::string_view with) {
  const std::size_t at = text.find(what);
  REQUIRE(at != std::string::npos);
  return text.replace(at, what.size(), with);
}

void checkReadsAs(const std::string& text, const Project& project) {
  INFO(text);
  const auto read = fromShortForm(text, Project{});
  REQUIRE(read.has_value());
  CHECK(*read == project);
}

Problems problemsOf(std::string_view text) {
  const auto read = fromShortForm(text, Project{});
  REQUIRE_FALSE(read.has_value());
  return read.error();
}

void checkRefused(std::string_view text, std::string_view code, std::string_view path,
                  std::string_view value) {
  INFO(text);
  const Problems problems = problemsOf(text);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].code == code);
  CHECK(problems[0].path == path);
  CHECK(problems[0].value == value);
}

std::string withoutBlanks(std::string text) {
  std::erase(text, ' ');
  return text;
}

/// A letter that the reader takes for a digit where a digit must stand.
bool standsFor(char typed, char digit) {
  return (typed == 'O' && digit == '0') || ((typed == 'I' || typed == 'L') && digit == '1');
}

}  // namespace

TEST_CASE("a design is written with what differs, shape and sizes always, and reads back the same") {
  CHECK(shortForm(sample()) == checked(kSample));
  checkReadsAs(shortForm(sample()), sample());
  CHECK(shortForm(Project{}) == checked("TW1 S:RE L6 W3.5 D1.5 B0.1"));
  checkReadsAs(shortForm(Project{}), Project{});
}

TEST_CASE("each shape is written with its own sizes") {
  Project round;
  round.tank.shape = core::Shape::round;
  round.tank.diameter_m = 4.5;
  CHECK(shortForm(round) == checked("TW1 S:RO DM4.5 D1.5 B0.1"));
  checkReadsAs(shortForm(round), round);

  Project polygon;
  polygon.tank.shape = core::Shape::polygon;
  polygon.tank.outline_m = {{-1.5, 0}, {6, 0}, {4, 3.5}};
  CHECK(shortForm(polygon) == checked("TW1 S:PO D1.5 B0.1 P-1.5/0 P6/0 P4/3.5"));
  checkReadsAs(shortForm(polygon), polygon);
}

TEST_CASE("spot heights and their ground are left out, the platform stays") {
  Project surveyed;
  surveyed.site.ground.kind = core::GroundKind::spot_heights;
  surveyed.site.ground.points_m = {{0, 0, 1400}, {9, 0, 1401}, {0, 9, 1402}};
  surveyed.site.platform.cut_batter = 0.75;
  CHECK(shortForm(surveyed) == checked("TW1 S:RE L6 W3.5 D1.5 B0.1 CB0.75"));
  Project level;
  level.site.platform.cut_batter = 0.75;
  checkReadsAs(shortForm(surveyed), level);
}

TEST_CASE("what is not in the text comes from the base, and lists of the text take the place of the base's") {
  Project base;
  base.title = "Base";
  base.tank.freeboard_m = 0.2;
  base.lining.coats.resize(5, base.lining.coats.front());
  base.works.reset();
  const auto plain = fromShortForm(checked("TW1 S:RE L6 W3.5 D1.5 B0.1"), base);
  REQUIRE(plain.has_value());
  CHECK(*plain == base);
  const auto read = fromShortForm(checked("TW1 S:RE L8 W3.5 D1.5 B0.1 C0.07/3/3/1/5"), base);
  REQUIRE(read.has_value());
  CHECK(read->title == "Base");
  CHECK(read->tank.length_m == 8);
  CHECK(read->tank.freeboard_m == 0.2);
  CHECK(read->lining.coats == std::vector<core::Coat>{{0.07, 3, 3, 1, 5}});
  CHECK_FALSE(read->works.has_value());
}

TEST_CASE("reading forgives small letters, blanks, line ends and commas") {
  const std::string text = checked(kSample);
  std::string small = text;
  std::ranges::transform(small, small.begin(),
                         [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  checkReadsAs(small, sample());
  std::string spread;
  for (const char c : text) spread += c == ' ' ? std::string(" \r\n\t ") : std::string(1, c);
  checkReadsAs(" \n" + spread + "\n\n", sample());
  checkReadsAs("\xEF\xBB\xBF" + replaced(text, "L7.2", "L 7 .2"), sample());
  checkReadsAs(replaced(replaced(text, "M:RI", "M: RI"), "C0.06/3/3", "C 0.06 /3/ 3"), sample());
  checkReadsAs(replaced(replaced(text, "L7.2", "L7,2"), " *", "*"), sample());
}

TEST_CASE("reading forgives Arabic and Devanagari digits") {
  const std::string text = checked(kSample);
  checkReadsAs(replaced(text, "L7.2", "L\u0667\u066B\u0662"), sample());
  checkReadsAs(replaced(text, "L7.2", "L\u06F7.\u06F2"), sample());
  checkReadsAs(replaced(text, "E1450", "E\u0967\u096A\u096B\u0966"), sample());
  checkReadsAs(replaced(text, "CY18", "CY\u0661\u0668"), sample());
  checkReadsAs(replaced(text, "AZ210", "AZ\u06F2\u06F1\u06F0"), sample());
  checkReadsAs(replaced(text, "TW1", "TW\u0967"), sample());
  checkReadsAs(replaced(text, "LA-27", "LA\u221227"), sample());
  checkReadsAs(replaced(text, " W3.6", "\u00A0W\u200E3.6"), sample());
  std::string ten = "0123456789";
  CHECK(core::exchange::typedForm("L\u0660\u0661\u0662\u0663\u0664\u0665\u0666\u0667\u0668\u0669").parts[0] ==
        "L" + ten);
  CHECK(core::exchange::typedForm("L\u06F0\u06F1\u06F2\u06F3\u06F4\u06F5\u06F6\u06F7\u06F8\u06F9").parts[0] ==
        "L" + ten);
  CHECK(core::exchange::typedForm("L\u0966\u0967\u0968\u0969\u096A\u096B\u096C\u096D\u096E\u096F").parts[0] ==
        "L" + ten);
}

TEST_CASE("O, I and L stand for digits inside numbers only") {
  const std::string text = checked(kSample);
  checkReadsAs(replaced(text, "DD0.05", "DDO.O5"), sample());
  checkReadsAs(replaced(text, "CY18", "CYl8"), sample());
  checkReadsAs(replaced(text, "D1.4", "DI.4"), sample());
  checkReadsAs(replaced(text, "AZ210", "AZ2lo"), sample());
  checkReadsAs(replaced(text, "C0.06", "CO.O6"), sample());
  checkReadsAs(replaced(text, "TW1", "TWI"), sample());
  CHECK_FALSE(fromShortForm(replaced(text, "L7.2", "17.2"), Project{}).has_value());
  CHECK_FALSE(fromShortForm(replaced(text, "G:SL", "G:S1"), Project{}).has_value());
  CHECK_FALSE(fromShortForm(replaced(text, "FA12.5", "FAS12.5"), Project{}).has_value());
}

TEST_CASE(
    "every single character put in the place of another is refused, but for letters that stand for digits") {
  constexpr std::string_view kAlphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ:./-+*$% ";
  const std::string text = checked(kSample);
  std::size_t refused = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    for (const char c : kAlphabet) {
      if (c == text[at]) continue;
      std::string changed = text;
      changed[at] = c;
      INFO(changed);
      const auto read = fromShortForm(changed, Project{});
      if (read.has_value()) {
        CHECK(standsFor(c, text[at]));
        CHECK(*read == sample());
      } else {
        ++refused;
      }
    }
  }
  CHECK(refused > text.size() * 42);
}

TEST_CASE("a character left out, put in, or changed about with the next is refused") {
  const std::string text = checked(kSample);
  for (std::size_t at = 0; at + 1 < text.size(); ++at) {
    std::string swapped = text, shorter = text, longer = text;
    std::swap(swapped[at], swapped[at + 1]);
    shorter.erase(at, 1);
    longer.insert(at, "5");
    for (const std::string& changed : {swapped, shorter, longer}) {
      INFO(changed);
      const auto read = fromShortForm(changed, Project{});
      if (withoutBlanks(changed) != withoutBlanks(text)) {
        CHECK_FALSE(read.has_value());
      } else if (read.has_value()) {
        CHECK(*read == sample());
      }
    }
  }
}

TEST_CASE("a wrong check group, none, and a version that is not known are refused") {
  const std::string text = checked(kSample);
  checkRefused(replaced(text, "*", "*A"), "short_form_check", "", "A" + checkGroup(kSample));
  checkRefused(kSample, "short_form_check", "", "");
  checkRefused(replaced(text, "W3.6", "W3.7"), "short_form_check", "", checkGroup(kSample));
  checkRefused(replaced(text, "TW1", "TW2"), "short_form_version", "", "TW2");
  checkRefused("", "short_form_version", "", "");
  checkRefused("{}", "short_form_version", "", "{}");
  CHECK(problemsOf("TW2")[0].allowed == "TW1");
}

TEST_CASE("parts that are none are named, each of them") {
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 Q7"), "short_form_token", "", "Q7");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 C0.06/3/3/1"), "short_form_token", "", "C0.06/3/3/1");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1/2"), "short_form_token", "", "B0.1/2");
  checkRefused(checked("TW1 S:RE L6 L6 W3.5 D1.5 B0.1"), "duplicate_key", "tank.length_m", "L6");
  const Problems both = problemsOf("TW1 S:RE L6 W3.5 X1.5 B0.1 Z:AB *0000");
  const std::vector<std::string> expected{"short_form_check", "short_form_token", "short_form_token",
                                          "missing"};
  std::vector<std::string> codes;
  for (const core::Problem& problem : both) codes.push_back(problem.code);
  CHECK(std::ranges::is_permutation(codes, expected));
}

TEST_CASE("values are checked as in a project file") {
  checkRefused(checked("TW1 S:RE L600 W3.5 D1.5 B0.1"), "out_of_range", "tank.length_m", "600");
  checkRefused(checked("TW1 S:RE L6..2 W3.5 D1.5 B0.1"), "wrong_type", "tank.length_m", "\"6..2\"");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 BG:AB"), "wrong_type", "lining.cement_bag_kg", "\":AB\"");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 C0.06/3/3/1/3.5"), "wrong_type",
               "lining.coats[0].cure_days", "3.5");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 DA2027-02-30"), "bad_date", "works.start_date",
               "\"2027-02-30\"");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 GS:S"), "unknown_choice", "site.soil", "\"s\"");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 LANAN"), "not_finite", "site.latitude_deg", "NaN");
  checkRefused(checked("TW1 S:PO D1.5 B0.1 P0/0 P6/0 P4/3500"), "out_of_range", "tank.outline_m[2][1]",
               "3500.0");
  checkRefused(checked("TW1 S:PO D1.5 B0.1 P0/0 P6 P4/3"), "wrong_type", "tank.outline_m[1]", "[6.0]");
  checkRefused(checked("TW1 S:PO D1.5 B0.1 P0/0 P6/A P4/3"), "wrong_type", "tank.outline_m[1][1]", "\"A\"");
}

TEST_CASE("what must be there and is not, and what does not go together, is told") {
  checkRefused(checked("TW1 S:RE L6 W3.5 B0.1"), "missing", "tank.depth_m", "");
  checkRefused(checked("TW1 S:PO D1.5 B0.1"), "missing", "tank.outline_m", "");
  checkRefused(checked("TW1 S:PO D1.5 B0.1 P0/0 P6/0"), "too_few", "tank.outline_m", "2");
  checkRefused(checked("TW1 S:PO D1.5 B0.1 P0/0 P4/3 P6/0"), "outline_clockwise", "tank.outline_m[0]",
               "[0, 0]");
  checkRefused(checked("TW1 S:RE L6 W3.5 D0.5 B0.1 F0.6"), "freeboard_not_below_rim", "tank.freeboard_m",
               "0.6");
  checkRefused(checked("TW1 S:RE L6 W3.5 D1.5 B0.1 G:SP"), "too_few", "site.ground.points_m", "0");
  std::string coats = "TW1 S:RE L6 W3.5 D1.5 B0.1";
  for (int k = 0; k < 7; ++k) coats += " C0.01/3/3/1/3";
  checkRefused(checked(coats), "too_many", "lining.coats", "7");
}

TEST_CASE("a text far too long is refused before it is read") {
  checkRefused("TW1 " + std::string(20'000, 'X'), "too_large", "", "20004");
}

TEST_CASE("a project file may hold a short form instead") {
  const support::TemporaryFolder folder;
  const auto file = folder.file("typed.txt");
  support::put(file, "\n  " + replaced(checked(kSample), "TW1", "tw1") + "\n");
  const auto read = core::exchange::readProject(file);
  REQUIRE(read.has_value());
  CHECK(read->project == sample());
  CHECK(read->notes.empty());

  const auto refused = core::exchange::parseProject("TW1 S:RE *0000");
  REQUIRE_FALSE(refused.has_value());
  CHECK(refused.error()[0].code == "short_form_check");
}

TEST_CASE("only what begins as a short form is read as one") {
  using core::exchange::beginsAsShortForm;
  for (const char* text :
       {"TW1 S:RE", " \r\n tw1", "TW2", "TW", "\xEF\xBB\xBFTW1", "TWI", "TW\u0967", "TW 1"})
    CHECK(beginsAsShortForm(text));
  for (const char* text : {"", "T", "{\"TW1\": 1}", "true", "TWENTY", "W1", "[TW1]"})
    CHECK_FALSE(beginsAsShortForm(text));
  CHECK(core::exchange::parseProject("true").error()[0].code == "not_a_project");
}
