// Daily weather as a table. Form of the table: RFC 4180 (October 2005); dates ISO 8601; text RFC 3629.
#include "core/exchange/weather_csv.h"

#include "core/exchange/csv_rows.h"
#include "core/exchange/utf8.h"
#include "tests/support/random_project.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <catch2/catch.hpp>

namespace {

using core::DailyWeather;
using core::Problem;
using core::Problems;
using core::Unit;
using core::exchange::parseWeatherCsv;
using core::exchange::ReadWeather;
using core::exchange::weatherCsvText;

std::chrono::year_month_day day(int y, unsigned m, unsigned d) {
  return {std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

ReadWeather good(const std::string& text) {
  const auto read = parseWeatherCsv(text);
  if (!read) {
    INFO(read.error().front().code << " at " << read.error().front().path);
    FAIL("not read");
  }
  return *read;
}

Problems bad(const std::string& text) {
  const auto read = parseWeatherCsv(text);
  REQUIRE_FALSE(read.has_value());
  REQUIRE_FALSE(read.error().empty());
  return read.error();
}

const std::string kHeader = "date,rain_mm,t_min_c,t_max_c,wind_m_s,humidity_percent,sun_hours\n";
const std::string kFirst = "2001-06-01,5.5,12,24.25,1.5,80,6\n";

std::string replaced(std::string text, const std::string& what, const std::string& by) {
  for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size())) {
    text.replace(at, what.size(), by);
  }
  return text;
}

/// A table whose third line is `row`.
std::string withRow(const std::string& row) {
  return kHeader + kFirst + row + "\n";
}

struct Bad {
  std::string name;
  std::string text;
  std::string code;
  std::string path;
  std::string value = {};  ///< expected when not empty
};

const std::vector<Bad>& badTables() {
  static const std::vector<Bad> all{
      {"empty", "", "csv_no_header", "row:1"},
      {"only a byte order mark", "\xEF\xBB\xBF", "csv_no_header", "row:1"},
      {"only blank lines", "\n \r\n,,,\n", "csv_no_header", "row:1"},
      {"no header", kFirst, "csv_no_header", "row:1", "2001-06-01"},
      {"header in other words", "day,rain,min,max\n", "csv_no_header", "row:1", "day"},
      {"header after blank lines", "\n\nday,rain\n", "csv_no_header", "row:3", "day"},
      {"space as separator", "date rain_mm t_min_c t_max_c\n", "csv_no_header", "row:1"},
      {"no date column", "rain_mm,t_min_c,t_max_c\n1,2,3\n", "csv_column_missing", "row:1:date"},
      {"no rain column", "date,t_min_c,t_max_c\n2001-01-01,2,3\n", "csv_column_missing", "row:1:rain_mm"},
      {"no minimum column", "date,rain_mm,t_max_c\n2001-01-01,2,3\n", "csv_column_missing", "row:1:t_min_c"},
      {"no maximum column", "date,rain_mm,t_min_c\n2001-01-01,2,3\n", "csv_column_missing", "row:1:t_max_c"},
      {"a column twice", "date,rain_mm,t_min_c,t_max_c,RAIN_MM\n2001-01-01,1,2,3,4\n", "duplicate_key",
       "row:1:rain_mm", "RAIN_MM"},
      {"the date twice", "date,date,rain_mm,t_min_c,t_max_c\n2001-01-01,2001-01-01,1,2,3\n", "duplicate_key",
       "row:1:date"},
      {"header only", kHeader, "too_few", "", "0"},
      {"header and blank lines", kHeader + "\n,,,,,,\n", "too_few", "", "0"},
      {"a cell too few", withRow("2001-06-02,1,2,3,4,5"), "csv_row_cells", "row:3", "6"},
      {"a cell too many", withRow("2001-06-02,1,2,3,4,5,6,7"), "csv_row_cells", "row:3", "8"},
      {"another separator in a row", withRow("2001-06-02;1;2;3;4;5;6"), "csv_row_cells", "row:3", "1"},
      {"decimal commas between commas", withRow("2001-06-02,1,5,2,3,4,5,6"), "csv_row_cells", "row:3", "8"},
      {"date missing", withRow(",1,2,3,4,5,6"), "missing", "row:3:date"},
      {"date not known", withRow("NA,1,2,3,4,5,6"), "missing", "row:3:date", "NA"},
      {"day first", withRow("02-06-2001,1,2,3,4,5,6"), "bad_date", "row:3:date", "02-06-2001"},
      {"slashes", withRow("2001/06/02,1,2,3,4,5,6"), "bad_date", "row:3:date", "2001/06/02"},
      {"month of one digit", withRow("2001-6-02,1,2,3,4,5,6"), "bad_date", "row:3:date", "2001-6-02"},
      {"month 13", withRow("2001-13-02,1,2,3,4,5,6"), "bad_date", "row:3:date", "2001-13-02"},
      {"31 June", withRow("2001-06-31,1,2,3,4,5,6"), "bad_date", "row:3:date", "2001-06-31"},
      {"29 February 2001", withRow("2001-02-29,1,2,3,4,5,6"), "bad_date", "row:3:date", "2001-02-29"},
      {"date and time", withRow("2001-06-02T00:00,1,2,3,4,5,6"), "bad_date", "row:3:date"},
      {"number of a date", withRow("37044,1,2,3,4,5,6"), "bad_date", "row:3:date", "37044"},
      {"year 1849", kHeader + "1849-12-31,1,2,3,4,5,6\n", "out_of_range", "row:2:date", "1849-12-31"},
      {"year 2200", withRow("2200-01-01,1,2,3,4,5,6"), "out_of_range", "row:3:date", "2200-01-01"},
      {"date repeated", withRow("2001-06-01,1,2,3,4,5,6"), "csv_date_repeated", "row:3:date", "2001-06-01"},
      {"date backwards", withRow("2001-05-31,1,2,3,4,5,6"), "csv_date_backwards", "row:3:date", "2001-05-31"},
      {"rain below zero", withRow("2001-06-02,-0.1,2,3,4,5,6"), "out_of_range", "row:3:rain_mm", "-0.1"},
      {"rain over 2000", withRow("2001-06-02,2000.5,2,3,4,5,6"), "out_of_range", "row:3:rain_mm", "2000.5"},
      {"missing as -99.9", withRow("2001-06-02,-99.9,2,3,4,5,6"), "out_of_range", "row:3:rain_mm", "-99.9"},
      {"minimum below -60", withRow("2001-06-02,1,-60.1,3,4,5,6"), "out_of_range", "row:3:t_min_c", "-60.1"},
      {"maximum in Fahrenheit", withRow("2001-06-02,1,2,75,4,5,6"), "out_of_range", "row:3:t_max_c", "75"},
      {"wind over 60", withRow("2001-06-02,1,2,3,61,5,6"), "out_of_range", "row:3:wind_m_s", "61"},
      {"humidity over 100", withRow("2001-06-02,1,2,3,4,101,6"), "out_of_range", "row:3:humidity_percent",
       "101"},
      {"sun over 24", withRow("2001-06-02,1,2,3,4,5,24.1"), "out_of_range", "row:3:sun_hours", "24.1"},
      {"a number of 400 digits", withRow("2001-06-02," + std::string(400, '9') + ",2,3,4,5,6"),
       "out_of_range", "row:3:rain_mm", std::string(60, '9') + "..."},
      {"maximum below minimum", withRow("2001-06-02,1,12.5,12,4,5,6"), "csv_max_below_min", "row:3:t_max_c",
       "12"},
      {"a word for a number", withRow("2001-06-02,trace,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "trace"},
      {"not a number", withRow("2001-06-02,nan,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "nan"},
      {"infinite", withRow("2001-06-02,1,2,inf,4,5,6"), "wrong_type", "row:3:t_max_c", "inf"},
      {"with unit", withRow("2001-06-02,1mm,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "1mm"},
      {"with percent sign", withRow("2001-06-02,1,2,3,4,80%,6"), "wrong_type", "row:3:humidity_percent",
       "80%"},
      {"exponent", withRow("2001-06-02,1e1,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "1e1"},
      {"hexadecimal", withRow("2001-06-02,0x1p3,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "0x1p3"},
      {"two points", withRow("2001-06-02,1.2.3,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "1.2.3"},
      {"two signs", withRow("2001-06-02,1,--2,3,4,5,6"), "wrong_type", "row:3:t_min_c", "--2"},
      {"plus and minus", withRow("2001-06-02,1,+-2,3,4,5,6"), "wrong_type", "row:3:t_min_c", "+-2"},
      {"only a point", withRow("2001-06-02,.,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "."},
      {"a space in a number", withRow("2001-06-02,1 5,2,3,4,5,6"), "wrong_type", "row:3:rain_mm", "1 5"},
      {"quoted decimal comma between commas", withRow("2001-06-02,\"1,5\",2,3,4,5,6"), "wrong_type",
       "row:3:rain_mm", "1,5"},
      {"thousands and decimals", replaced(kHeader, ",", ";") + "2001-06-01;1.234,5;2;3;4;5;6\n", "wrong_type",
       "row:2:rain_mm", "1.234,5"},
      {"quote not closed", withRow("2001-06-02,\"1,2,3,4,5,6"), "wrong_type", "row:3"},
      {"quote not closed in a column not used",
       "date,rain_mm,t_min_c,t_max_c,remark\n2001-06-01,1,2,3,\"a\n"
       "2001-06-02,1,2,3,b\n",
       "wrong_type", "row:2"},
      {"text after a quote", withRow("2001-06-02,\"1\"5,2,3,4,5,6"), "wrong_type", "row:3"},
      {"quote not closed in the header", "date,rain_mm,t_min_c,\"t_max_c\n", "wrong_type", "row:1"},
      {"NUL in a number", withRow(std::string("2001-06-02,1\0,2,3,4,5,6", 23)), "wrong_type",
       "row:3:rain_mm"},
      {"lines that end with CR alone", "date,rain_mm,t_min_c,t_max_c\r2001-06-01,1,2,3\r",
       "csv_column_missing", "row:1:t_max_c"},
      {"Latin-1", withRow("2001-06-02,1\xB0,2,3,4,5,6"), "not_utf8", "", "3:13"},
      {"UTF-16",
       std::string("\xFF\xFE"
                   "d\0a\0t\0e\0",
                   10),
       "not_utf8", "", "1:1"},
      {"overlong UTF-8", withRow("\xC0\xAF"), "not_utf8", "", "3:1"},
      {"half a character at the end", kHeader + kFirst + "\xE2\x82", "not_utf8", "", "3:1"},
  };
  return all;
}

const Problem* find(const Problems& problems, const Bad& wanted) {
  const auto at = std::find_if(problems.begin(), problems.end(), [&](const Problem& p) {
    return p.code == wanted.code && p.path == wanted.path &&
           (wanted.value.empty() || p.value == wanted.value);
  });
  return at == problems.end() ? nullptr : &*at;
}

}  // namespace

TEST_CASE("tables that cannot be read are refused with code, row and column") {
  CHECK(badTables().size() >= 60);
  for (const Bad& table : badTables()) {
    INFO(table.name);
    const auto read = parseWeatherCsv(table.text);
    CHECK_FALSE(read.has_value());
    if (read) continue;
    const Problems& problems = read.error();
    INFO("first: " << problems.front().code << " " << problems.front().path << " " << problems.front().value);
    CHECK(find(problems, table) != nullptr);
  }
}

TEST_CASE("a table with one fault is refused for that fault alone") {
  for (const Bad& table : badTables()) {
    if (table.text.rfind(kHeader + kFirst, 0) != 0) continue;
    INFO(table.name);
    CHECK(bad(table.text).size() == 1);
  }
}

TEST_CASE("ranges, units and counts stand in the problem") {
  const Problem rain = bad(withRow("2001-06-02,2001,2,3,4,5,6")).front();
  CHECK(rain.least == 0.0);
  CHECK(rain.most == 2000.0);
  CHECK(rain.unit == Unit::millimetre);
  const Problem t = bad(withRow("2001-06-02,1,2,61,4,5,6")).front();
  CHECK((t.least == -60.0 && t.most == 60.0 && t.unit == Unit::celsius));
  const Problem wind = bad(withRow("2001-06-02,1,2,3,-1,5,6")).front();
  CHECK((wind.least == 0.0 && wind.most == 60.0 && wind.unit == Unit::metre_per_second));
  const Problem humidity = bad(withRow("2001-06-02,1,2,3,4,-1,6")).front();
  CHECK((humidity.least == 0.0 && humidity.most == 100.0 && humidity.unit == Unit::percent));
  const Problem sun = bad(withRow("2001-06-02,1,2,3,4,5,25")).front();
  CHECK((sun.least == 0.0 && sun.most == 24.0 && sun.unit == Unit::hour));
  const Problem year = bad(withRow("2200-01-01,1,2,3,4,5,6")).front();
  CHECK((year.least == 1850.0 && year.most == 2199.0 && year.unit == Unit::year));
  const Problem cells = bad(withRow("2001-06-02,1")).front();
  CHECK((cells.least == 7.0 && cells.most == 7.0));
  const Problem below = bad(withRow("2001-06-02,1,12.5,12,4,5,6")).front();
  CHECK((below.least == 12.5 && below.unit == Unit::celsius));
}

TEST_CASE("values at the ends of their ranges are taken") {
  const ReadWeather read = good(kHeader + "1850-01-01,0,-60,-60,0,0,0\n2199-12-31,2000,60,60,60,100,24\n");
  REQUIRE(read.days.size() == 2);
  CHECK(read.days[0] == DailyWeather{day(1850, 1, 1), 0.0, -60.0, -60.0, 0.0, 0.0, 0.0});
  CHECK(read.days[1] == DailyWeather{day(2199, 12, 31), 2000.0, 60.0, 60.0, 60.0, 100.0, 24.0});
}

TEST_CASE("many faults give a hundred problems") {
  std::string text = kHeader;
  for (int k = 0; k < 300; ++k) text += "x,x,x,x,x,x,x\n";
  CHECK(bad(text).size() == 100);
}

TEST_CASE("a table of more than 80,000 rows or 16 MiB is refused, one of 80,000 is read") {
  std::string text = "date,rain_mm,t_min_c,t_max_c\n";
  std::chrono::sys_days date = day(1900, 1, 1);
  for (int k = 0; k < 80000; ++k, date += std::chrono::days(1)) {
    const std::chrono::year_month_day d = date;
    std::string row = std::to_string(static_cast<int>(d.year())) + "-00-00,1,2,3\n";
    const auto digits = [&](std::size_t at, unsigned value) {
      row[at] = static_cast<char>('0' + value / 10);
      row[at + 1] = static_cast<char>('0' + value % 10);
    };
    digits(5, static_cast<unsigned>(d.month()));
    digits(8, static_cast<unsigned>(d.day()));
    text += row;
  }
  CHECK(good(text).days.size() == 80000);
  const Problem many = bad(text + "2190-01-01,1,2,3\n").front();
  CHECK(many.code == "too_many");
  CHECK(many.most == 80000.0);
  const Problem large = bad(std::string((std::size_t{16} << 20) + 1, '\n')).front();
  CHECK(large.code == "too_large");
  CHECK(large.most == 16777216.0);
  CHECK(bad(std::string(std::size_t{16} << 20, '\n')).front().code == "csv_no_header");
}

namespace {

const std::vector<DailyWeather> kTwoDays{{day(2001, 6, 1), 5.5, 12.0, 24.25, 1.5, 80.0, 6.0},
                                         {day(2001, 6, 2), 0.0, -1.5, 20.0, {}, {}, {}}};

}  // namespace

TEST_CASE("the same days are read from every dialect") {
  const std::string text = kHeader + kFirst + "2001-06-02,0,-1.5,20,,-,NA\n";
  const std::string columns = "sun_hours,t_max_c,date,t_min_c,humidity_percent,wind_m_s,rain_mm\n";
  const std::vector<std::pair<std::string, std::string>> dialects{
      {"comma, LF", text},
      {"CRLF", replaced(text, "\n", "\r\n")},
      {"byte order mark", "\xEF\xBB\xBF" + text},
      {"byte order mark, CRLF, semicolon", "\xEF\xBB\xBF" + replaced(replaced(text, ",", ";"), "\n", "\r\n")},
      {"semicolon", replaced(text, ",", ";")},
      {"tab", replaced(text, ",", "\t")},
      {"semicolon, decimal comma", replaced(replaced(text, ",", ";"), ".", ",")},
      {"tab, decimal comma", replaced(replaced(text, ",", "\t"), ".", ",")},
      {"no line end at the end", text.substr(0, text.size() - 1)},
      {"blank lines", "\n\r\n" + replaced(text, "\n", "\n\n") + ",,,,,,\n \n"},
      {"capital letters", replaced(replaced(text, "date", "DATE"), "rain_mm", "Rain_mm")},
      {"spaces about cells", replaced(text, ",", " , ")},
      {"all quoted",
       "\"" + replaced(replaced(text.substr(0, text.size() - 1), ",", "\",\""), "\n", "\"\n\"") + "\"\n"},
      {"plus sign", replaced(text, "5.5", "+5.5")},
      {"zeros", replaced(text, "5.5", "005.500")},
      {"another order", columns + "6,24.25,2001-06-01,12,80,1.5,5.5\n,20,2001-06-02,-1.5,,,0\n"},
      {"negative zero", replaced(text, ",0,", ",-0,")},
  };
  for (const auto& [name, table] : dialects) {
    INFO(name);
    const ReadWeather read = good(table);
    CHECK(read.days == kTwoDays);
    CHECK(read.notes.empty());
  }
  CHECK_FALSE(std::signbit(*good(replaced(text, ",0,", ",-0,")).days[1].rain_mm));
  CHECK(*good(replaced(text, "5.5", ".5")).days[0].rain_mm == 0.5);
  CHECK(*good(replaced(text, "5.5", "5.")).days[0].rain_mm == 5.0);
}

TEST_CASE("columns that are not used are noted, also with separators and line ends in their cells") {
  const ReadWeather read = good(
      "station,date,rain_mm,t_min_c,t_max_c,\"remark, of \"\"observer\"\"\",\n"
      "A,2001-06-01,1,2,3,\"hail, wind;\nroof \"\"gone\"\"\",\n"
      "A,2001-06-04,1,2,3,,\n");
  CHECK(read.days.size() == 2);
  REQUIRE(read.notes.size() == 3);
  CHECK(read.notes[0].code == "unknown_key");
  CHECK(read.notes[0].path == "row:1");
  CHECK(read.notes[0].value == "station");
  CHECK(read.notes[1].value == "remark, of \"observer\"");
  CHECK(read.notes[2].path == "row:4");  // the second row starts on line 2 and ends on line 3
}

TEST_CASE("a cell's text is what RFC 4180 says") {
  core::exchange::CsvReader reader("aaa,\"b\r\nbb\",\"c \"\"c\"\" c\"\r\n\"\",zz,y\"y");
  core::exchange::CsvRow row;
  REQUIRE(reader.next(row));
  CHECK(row.cells == std::vector<std::string>{"aaa", "b\r\nbb", "c \"c\" c"});
  CHECK(row.line == 1);
  REQUIRE(reader.next(row));
  CHECK(row.cells == std::vector<std::string>{"", "zz", "y\"y"});
  CHECK(row.line == 3);
  CHECK_FALSE(reader.next(row));
}

TEST_CASE("days that are not there are noted with the first and the last, and not filled") {
  const ReadWeather read = good(
      "date,rain_mm,t_min_c,t_max_c\n2004-02-28,1,2,3\n2004-03-01,1,2,3\n2004-03-02,1,2,3\n"
      "2005-01-01,1,2,3\n");
  CHECK(read.days.size() == 4);
  REQUIRE(read.notes.size() == 2);
  CHECK(read.notes[0].code == "csv_days_missing");
  CHECK(read.notes[0].path == "row:3");
  CHECK(read.notes[0].value == "2004-02-29/2004-02-29");
  CHECK(read.notes[1].path == "row:5");
  CHECK(read.notes[1].value == "2004-03-03/2004-12-31");
}

TEST_CASE("a record of many gaps gives a hundred notes") {
  std::string text = "date,rain_mm,t_min_c,t_max_c\n";
  for (int year = 1850; year < 2100; ++year) text += std::to_string(year) + "-01-01,1,2,3\n";
  const ReadWeather read = good(text);
  CHECK(read.days.size() == 250);
  CHECK(read.notes.size() == 100);
}

TEST_CASE("a table that was written reads back the same") {
  support::Random random(5);
  const auto any = [&](double least, double most) {
    return random.chance(0.2) ? std::optional<double>() : std::optional<double>(random.between(least, most));
  };
  std::vector<DailyWeather> days;
  std::chrono::sys_days date = day(1999, 12, 1);
  for (int k = 0; k < 2000; ++k, date += std::chrono::days(random.whole(1, 2))) {
    DailyWeather one{date, any(0, 200), any(-60, 0), any(0, 60), any(0, 60), any(0, 100), any(0, 24)};
    if (random.chance(0.1)) one.rain_mm = random.between(0, 1e-9);
    days.push_back(one);
  }
  const std::string text = weatherCsvText(days);
  CHECK(good(text).days == days);
  CHECK(weatherCsvText(good(text).days) == text);
}

TEST_CASE("a table is written with all columns and CRLF") {
  CHECK(weatherCsvText(kTwoDays) ==
        "date,rain_mm,t_min_c,t_max_c,wind_m_s,humidity_percent,sun_hours\r\n"
        "2001-06-01,5.5,12,24.25,1.5,80,6\r\n2001-06-02,0,-1.5,20,,,\r\n");
  CHECK(weatherCsvText({}) == "date,rain_mm,t_min_c,t_max_c,wind_m_s,humidity_percent,sun_hours\r\n");
}

TEST_CASE("UTF-8 is told from other bytes") {
  // Unicode Standard, table 3-7: well-formed and ill-formed sequences at the edges
  for (const std::string_view text : {"", "a", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF",
                                      "\xEE\x80\x80", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
    CHECK_FALSE(core::exchange::notUtf8At(text).has_value());
  }
  for (const std::string_view text :
       {"\x80", "\xC1\xBF", "\xC2", "\xC2\x41", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xE2\x82", "\xE2\x82\x41",
        "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xF1\x80\x80", "\xFF"}) {
    CHECK(core::exchange::notUtf8At(text) == std::size_t{0});
  }
  CHECK(core::exchange::notUtf8At("ab\xC3") == std::size_t{2});
  CHECK(core::exchange::placeOf("a\nbc\xFF", 4) == "2:3");
}

TEST_CASE("5,000 mutations of a table are read and written whole or refused with a known code") {
  constexpr std::array<std::string_view, 16> kPieces{
      ",",     ";", "\t",         "\"",           "\n",   "\r\n", "-",    "NA",
      "1e999", ".", "2001-06-01", "\xEF\xBB\xBF", "\xff", "999",  ",,,,", "\r"};
  std::string whole = kHeader;
  for (int k = 1; k <= 30; ++k) {
    whole += "2001-06-" + std::string(k < 10 ? "0" : "") + std::to_string(k) + ",5.5,12,24.25,,80,\"6\"\n";
  }
  support::Random random(41);
  const auto place = [&](const std::string& text) {
    return static_cast<std::size_t>(random.whole(0, static_cast<int>(text.size()) - 1));
  };
  int read = 0;
  std::set<std::string> codes;
  for (int k = 0; k < 5000; ++k) {
    std::string text = whole;
    for (int times = random.whole(1, 3); times > 0 && !text.empty(); --times) {
      const std::size_t at = place(text);
      switch (random.whole(0, 5)) {
        case 0:
          text[at] = static_cast<char>(random.whole(0, 255));
          break;
        case 1:
          text[at] = static_cast<char>(text[at] ^ (1 << random.whole(0, 7)));
          break;
        case 2:
          text.insert(at, kPieces[static_cast<std::size_t>(random.whole(0, 15))]);
          break;
        case 3:
          text.erase(at, static_cast<std::size_t>(random.whole(1, 40)));
          break;
        case 4:
          text.insert(place(text), text.substr(at, static_cast<std::size_t>(random.whole(1, 200))));
          break;
        default:
          if (random.chance(0.2)) text.resize(at);
      }
    }
    INFO("mutation " << k);
    const auto result = parseWeatherCsv(text);
    if (result) {
      ++read;
      REQUIRE(good(weatherCsvText(result->days)).days == result->days);
      continue;
    }
    REQUIRE_FALSE(result.error().empty());
    REQUIRE(result.error().size() <= 100);
    for (const Problem& problem : result.error()) codes.insert(problem.code);
  }
  CHECK(read > 300);
  CHECK(codes.size() >= 10);
  const auto known = core::problemCodes();
  for (const std::string& code : codes) {
    INFO(code);
    CHECK(std::find(known.begin(), known.end(), code) != known.end());
  }
}
