#include "core/project/fields.h"
#include "ui/text/formatter.h"

#include <QLocale>
#include <array>
#include <cmath>
#include <random>

#include <catch2/catch.hpp>

namespace {

using core::Unit;
using ui::Formatter;
using ui::UnitSystem;

constexpr std::array kLocales{"C",     "en_GB", "de_DE", "fr_FR", "es",   "ne_NP",
                              "hi_IN", "ur_PK", "ar_EG", "bn_BD", "de_CH"};
constexpr std::array kSystems{UnitSystem::metric, UnitSystem::feet_inches};

Formatter metric(const char* locale = "C") {
  return Formatter(QLocale(locale), UnitSystem::metric);
}

Formatter feet(const char* locale = "C") {
  return Formatter(QLocale(locale), UnitSystem::feet_inches);
}

/// Text with ordinary spaces, as one would type it.
QString typed(QString text) {
  return text.replace(QChar::Nbsp, u' ').remove(QChar(0x2066)).remove(QChar(0x2069));
}

void checkRoundTrip(const Formatter& format, const core::Field& field, double value) {
  const double half_step = format.shownStep(value, field.unit, field.decimals) / 2;
  for (const QString& text : {format.number(value, field.unit, field.decimals),
                              format.quantity(value, field.unit, field.decimals)}) {
    INFO(field.id << " " << value << " shown as " << text.toStdString() << " in "
                  << format.locale().name().toStdString());
    const auto back = format.parse(text, field.unit);
    REQUIRE(back.has_value());
    CHECK(std::abs(*back - value) <= half_step * (1 + 1e-9));
  }
}

}  // namespace

TEST_CASE("a number of any field comes back from its text within half of the shown step") {
  std::mt19937 random(20270215);
  for (const char* name : kLocales) {
    for (const UnitSystem system : kSystems) {
      const Formatter format{QLocale(name), system};
      for (const core::Field& field : core::fields()) {
        if (field.kind != core::FieldKind::number) continue;
        std::uniform_real_distribution<double> anywhere(field.least, field.most);
        for (int k = 0; k < 20; ++k) checkRoundTrip(format, field, anywhere(random));
        checkRoundTrip(format, field, field.least);
        checkRoundTrip(format, field, field.most);
      }
    }
  }
}

TEST_CASE("the shown step of a field is never coarser than the metric step people set") {
  for (const core::Field& field : core::fields()) {
    if (field.kind != core::FieldKind::number || field.unit == Unit::metre) continue;
    INFO(field.id);
    CHECK(feet().shownStep(field.most, field.unit, field.decimals) <=
          std::pow(10.0, -field.decimals) * 1.0001);
  }
}

// One inch is 25.4 mm and one foot 304.8 mm exactly: international yard and pound agreement of 1959.
TEST_CASE("an inch is 25.4 mm and a foot 304.8 mm exactly") {
  CHECK(*metric().parse("1 in", Unit::metre) == Approx(0.0254).margin(1e-15));
  CHECK(*metric().parse("1 ft", Unit::metre) == Approx(0.3048).margin(1e-15));
  CHECK(*feet().parse("1", Unit::metre) == Approx(0.3048).margin(1e-15));
  CHECK(typed(feet().number(0.0254, Unit::metre, 2)) == "1\"");
  CHECK(typed(feet().number(0.3048, Unit::metre, 2)) == "1' 0\"");
  CHECK(typed(feet().number(0.9144, Unit::metre, 2)) == "3' 0\"");
}

// Square and cubic feet by the same agreement: 0.3048^2 = 0.09290304 m2, 0.3048^3 = 0.028316846592 m3.
TEST_CASE("square and cubic feet follow from the foot") {
  CHECK(*feet().parse("1", Unit::square_metre) == Approx(0.09290304).epsilon(1e-12));
  CHECK(*feet().parse("1", Unit::cubic_metre) == Approx(0.028316846592).epsilon(1e-12));
  CHECK(*metric().parse("100 cft", Unit::cubic_metre) == Approx(2.8316846592).epsilon(1e-12));
  CHECK(typed(feet().quantity(1, Unit::cubic_metre, 2)) == "35.3 ft³");
  CHECK(typed(feet().quantity(10, Unit::square_metre, 1)) == "108 ft²");
}

TEST_CASE("lengths are shown in feet, inches and quarter inches, and in sixteenths below a foot") {
  CHECK(typed(feet().number(6.0, Unit::metre, 2)) == "19' 8 1/4\"");    // 236.22 in
  CHECK(typed(feet().number(0.0635, Unit::metre, 4)) == "2 1/2\"");     // 2.5 in
  CHECK(typed(feet().number(0.06, Unit::metre, 3)) == "2 3/8\"");       // 2.362 in, nearest 1/16 is 6/16
  CHECK(typed(feet().number(0.005, Unit::metre, 3)) == "3/16\"");       // 0.197 in
  CHECK(typed(feet().number(0.30479, Unit::metre, 3)) == "1' 0\"");     // a hair below a foot
  CHECK(typed(feet().number(7.632, Unit::metre, 2)) == "25' 0 1/2\"");  // 300.47 in
  CHECK(typed(feet().number(0, Unit::metre, 2)) == "0\"");
  CHECK(typed(feet().number(-1.5, Unit::metre, 2)) == "-4' 11\"");  // 59.055 in
  CHECK(typed(feet().number(-1e-9, Unit::metre, 2)) == "0\"");
  CHECK(typed(feet().number(1350, Unit::metre, 0)) == "4,429'");  // 4429.13 ft
}

TEST_CASE("typed lengths are taken with any unit, fraction, comma or point") {
  const auto length = [](const char* text, const Formatter& format = metric()) {
    return format.parse(QString::fromUtf8(text), Unit::metre);
  };
  CHECK(*length("6") == Approx(6));
  CHECK(*length(" 6 m ") == Approx(6));
  CHECK(*length("6,5") == Approx(6.5));
  CHECK(*length("6.5m") == Approx(6.5));
  CHECK(*length("60 mm") == Approx(0.06));
  CHECK(*length("6 cm") == Approx(0.06));
  CHECK(*length("2.5 in") == Approx(0.0635));
  CHECK(*length("2 1/2\"") == Approx(0.0635));
  CHECK(*length("2½ in.") == Approx(0.0635));
  CHECK(*length("1 ft 6 in") == Approx(0.4572));
  CHECK(*length("1' 6 1/2\"") == Approx(0.4699));
  CHECK(*length("1′ 6″") == Approx(0.4572));
  CHECK(*length("1' 6''") == Approx(0.4572));
  CHECK(*length("1'6") == Approx(0.4572));
  CHECK(*length("-1' 6\"") == Approx(-0.4572));
  CHECK(*length("1 m 20 cm") == Approx(1.2));
  CHECK(*length("+0.3") == Approx(0.3));
  CHECK(*length("1/2 m") == Approx(0.5));
  CHECK(*length("6 m", feet()) == Approx(6));
  CHECK(*length("6 1/2", feet()) == Approx(6.5 * 0.3048));
}

TEST_CASE("what is not one length is refused") {
  for (const char* text :
       {"",   " ",   "abc", "m",   "6 kg",  "6 m 7", "1 in 6 ft", "1 ft 2 ft", "1.2.3", "1,2,3", "--6",
        "6-", "nan", "inf", "1e3", "1/0 m", "6 m3",  "½½",        ".",         ",",     "1 2",   "0x10"}) {
    INFO(text);
    CHECK_FALSE(metric().parse(QString::fromUtf8(text), Unit::metre).has_value());
  }
}

TEST_CASE("digits of any script are read whatever the locale") {
  for (const char* name : kLocales) {
    INFO(name);
    CHECK(*metric(name).parse(QString::fromUtf8("१२३४"), Unit::none) == 1234);
    CHECK(*metric(name).parse(QString::fromUtf8("٣٫٥"), Unit::none) == 3.5);
    CHECK(*metric(name).parse(QString::fromUtf8("۶٫۵"), Unit::none) == 6.5);
    CHECK(*metric(name).parse(QString::fromUtf8("৪২"), Unit::none) == 42);
    CHECK(*metric(name).parse(QString::fromUtf8("−१.५"), Unit::none) == -1.5);
  }
}

TEST_CASE("digits are shown in the reader's script") {
  CHECK(metric("ne_NP").number(1234.5, Unit::none, 1) == QString::fromUtf8("१,२३४.५"));
  CHECK(metric("ar_EG").number(6.5, Unit::none, 1) == QString::fromUtf8("٦٫٥"));
  CHECK(metric("de_DE").number(6.5, Unit::none, 1) == "6,5");
  CHECK(typed(feet("ne_NP").number(6.0, Unit::metre, 2)) == QString::fromUtf8("१९' ८ १/४\""));
}

TEST_CASE("a comma or point is the decimal mark unless the locale groups with it") {
  CHECK(*metric("en_GB").parse("1,440", Unit::none) == 1440);
  CHECK(*metric("en_GB").parse("1.440", Unit::none) == 1.44);
  CHECK(*metric("en_GB").parse("1,5", Unit::none) == 1.5);
  CHECK(*metric("en_GB").parse("0,150", Unit::none) == 0.15);
  CHECK(*metric("de_DE").parse("1.440", Unit::none) == 1440);
  CHECK(*metric("de_DE").parse("1.5", Unit::none) == 1.5);
  CHECK(*metric("de_DE").parse("1.440,25", Unit::none) == 1440.25);
  CHECK(*metric("en_GB").parse("1,234,567.5", Unit::none) == 1234567.5);
  CHECK(*metric("hi_IN").parse("12,34,567", Unit::none) == 1234567);
  CHECK(*metric("fr_FR").parse("22 500", Unit::none) == 22500);
  CHECK_FALSE(metric("en_GB").parse("1,23,4", Unit::none).has_value());
}

TEST_CASE("a number comes back where the locale leaves four digits before the first mark") {
  CHECK(*metric("es").parse(metric("es").number(1076391, Unit::none, 0), Unit::none) == 1076391);
  CHECK(*metric("es").parse("1076.391,5", Unit::none) == 1076391.5);
  CHECK(*metric("es").parse("1076.39", Unit::none) == 1076.39);
  CHECK(*metric("en_GB").parse("1076,391", Unit::none) == 1076.391);
}

TEST_CASE("a batter is typed as a number or as run in height") {
  CHECK(*metric().parse("0.1", Unit::batter) == Approx(0.1));
  CHECK(*metric().parse("1 in 10", Unit::batter) == Approx(0.1));
  CHECK(*metric().parse("1:4", Unit::batter) == Approx(0.25));
  CHECK(*metric().parse("1/4", Unit::batter) == Approx(0.25));
  CHECK_FALSE(metric().parse("1:0", Unit::batter).has_value());
  CHECK_FALSE(metric().parse("1 in", Unit::batter).has_value());
}

TEST_CASE("units may follow the number in either system") {
  CHECK(*metric().parse("1440 kg/m3", Unit::kg_per_m3) == Approx(1440));
  CHECK(*metric().parse("1,440 kg/m³", Unit::kg_per_m3) == Approx(1440));
  CHECK(*feet().parse("1440 kg/m3", Unit::kg_per_m3) == Approx(1440));
  CHECK(*metric().parse("3 days", Unit::day) == 3);
  CHECK(*metric().parse("1 day", Unit::day) == 1);
  CHECK(*metric().parse("15 %", Unit::percent) == 15);
  CHECK(*metric().parse("28.5°", Unit::degree) == 28.5);
  CHECK_FALSE(metric().parse("15 %", Unit::day).has_value());
}

// A minute has 60 s, an hour 3600 s, a day 24 h: SI brochure, 9th edition, table 8. One inch is 25.4 mm.
TEST_CASE("flows, rain, times and wind are typed in the units people have at hand") {
  CHECK(*metric().parse("1.5 l/s", Unit::litre_per_minute) == Approx(90));
  CHECK(*metric().parse("12 L/min", Unit::litre_per_minute) == Approx(12));
  CHECK(*metric().parse("600 l/h", Unit::litre_per_minute) == Approx(10));
  CHECK(*metric().parse("14400 L/day", Unit::litre_per_minute) == Approx(10));
  CHECK(*metric().parse("3 m³/h", Unit::litre_per_minute) == Approx(50));
  CHECK(*metric().parse("15 L", Unit::litre_per_day) == Approx(15));
  CHECK(*metric().parse("2 min", Unit::second) == Approx(120));
  CHECK(*metric().parse("7.5 s", Unit::second) == Approx(7.5));
  CHECK(*metric().parse("2 in", Unit::millimetre) == Approx(50.8));
  CHECK(*metric().parse("9 km/h", Unit::metre_per_second) == Approx(2.5));
  CHECK(*metric().parse("-3.5 °C", Unit::celsius) == Approx(-3.5));
  CHECK(*metric().parse("140 mm/m", Unit::mm_per_metre) == Approx(140));
  CHECK(*metric().parse("1.5 mm/day", Unit::mm_per_day) == Approx(1.5));
  CHECK_FALSE(metric().parse("3 °F", Unit::celsius).has_value());
  CHECK_FALSE(metric().parse("3 L", Unit::litre_per_minute).has_value());
}

TEST_CASE("rain, flow and temperature stay in millimetres, litres and degrees Celsius in feet and inches") {
  for (const Formatter& format : {metric(), feet()}) {
    CHECK(typed(format.quantity(12.5, Unit::millimetre, 1)) == "12.5 mm");
    CHECK(typed(format.quantity(-3, Unit::celsius, 0)) == "-3 °C");
    CHECK(typed(format.quantity(6, Unit::litre_per_minute, 1)) == "6.0 L/min");
    CHECK(typed(format.quantity(2, Unit::metre_per_second, 0)) == "2 m/s");
    CHECK(typed(format.quantity(1, Unit::year, 0)) == "1 year");
    CHECK(typed(format.quantity(50, Unit::year, 0)) == "50 years");
    CHECK(*format.parse("12", Unit::millimetre) == 12);
  }
}

// Inch, pound and standard gravity are exact; 1 psi = 6.894757e3 Pa and 1 kgf/cm2 = 9.80665e4 Pa as in NIST
// Special Publication 811, appendix B (from memory).
TEST_CASE("pressure, storm rain and weight of ground are typed in the units people have at hand") {
  CHECK(*metric().parse("10", Unit::bar) == 10);
  CHECK(*metric().parse("100 psi", Unit::bar) == Approx(6.894757).epsilon(1e-7));
  CHECK(*metric().parse("6 kgf/cm2", Unit::bar) == Approx(5.88399).epsilon(1e-12));
  CHECK(*feet().parse("6 kg/cm²", Unit::bar) == Approx(5.88399).epsilon(1e-12));
  CHECK(*metric().parse("250 kPa", Unit::bar) == Approx(2.5));
  CHECK(*metric().parse("80 mm/h", Unit::mm_per_hour) == Approx(80));
  CHECK(*feet().parse("4 in/hr", Unit::mm_per_hour) == Approx(101.6));
  CHECK(*metric().parse("15 kN/m²", Unit::kilopascal) == Approx(15));
  CHECK(*metric().parse("18 kN/m3", Unit::kn_per_m3) == Approx(18));
  CHECK_FALSE(metric().parse("10 m", Unit::bar).has_value());
  CHECK_FALSE(metric().parse("80 mm", Unit::mm_per_hour).has_value());
}

// The class is read off the pipe in bar, and rain gauges of the region read in millimetres (common practice,
// no source): psi or inches an hour would not come back to the class that the table of pipes holds.
TEST_CASE("pressure, storm rain and weight of ground stay in bar, millimetres and kilonewtons") {
  for (const Formatter& format : {metric(), feet()}) {
    CHECK(typed(format.quantity(12.5, Unit::bar, 1)) == "12.5 bar");
    CHECK(typed(format.quantity(100, Unit::mm_per_hour, 0)) == "100 mm per hour");
    CHECK(typed(format.quantity(40, Unit::kilopascal, 0)) == "40 kPa");
    CHECK(typed(format.quantity(18.5, Unit::kn_per_m3, 1)) == "18.5 kN/m³");
    CHECK(*format.parse("12.5", Unit::bar) == 12.5);
  }
}

TEST_CASE("months are named in the reader's language, short or long") {
  CHECK(metric("en_GB").monthName(2) == "Feb");
  CHECK(metric("en_GB").monthName(2, QLocale::LongFormat) == "February");
  CHECK(metric("es").monthName(11, QLocale::LongFormat) == "noviembre");
}

TEST_CASE("a day of the year stands in the reader's order, not in one order for all") {
  // orders as in the long dates of the Unicode CLDR
  CHECK(metric("en_GB").dayOfYear(2, 15) == "15 Feb");
  CHECK(metric("en_US").dayOfYear(2, 15) == "Feb 15");
  CHECK(metric("en_US").dayOfYear(2, 29, QLocale::LongFormat) == "February 29");
  CHECK(metric("es").dayOfYear(11, 1, QLocale::LongFormat) == "1 de noviembre");
  CHECK(metric("de").dayOfYear(3, 14, QLocale::LongFormat) == QString::fromUtf8("14. März"));
  CHECK(metric("hu").dayOfYear(3, 14, QLocale::LongFormat) == QString::fromUtf8("március 14."));
  CHECK(metric("ja").dayOfYear(3, 14, QLocale::LongFormat) == QString::fromUtf8("3月14日"));
  const QString nepali = metric("ne").dayOfYear(3, 14, QLocale::LongFormat);
  CHECK(nepali.indexOf(QLocale("ne").monthName(3)) < nepali.indexOf(QString::fromUtf8("१४")));
}

TEST_CASE("a year has no mark between its digits") {
  CHECK(metric("en_GB").year(2004) == "2004");
  CHECK(metric("de").year(2004) == "2004");
  CHECK(metric("ne").year(2004) == QString::fromUtf8("२००४"));
}

TEST_CASE("litres are rounded to a step a farmer uses") {
  CHECK(typed(metric().litres(22.5)) == "22,500 L");
  CHECK(typed(metric().litres(22.549)) == "22,500 L");
  CHECK(typed(metric().litres(22.551)) == "22,600 L");
  CHECK(typed(metric().litres(9.994)) == "9,990 L");
  CHECK(typed(metric().litres(1.234)) == "1,230 L");
  CHECK(typed(metric().litres(0.9994)) == "999 L");
  CHECK(typed(metric().litres(0)) == "0 L");
  CHECK(typed(feet().litres(22.5)) == "22,500 L");
}

TEST_CASE("one is singular and no zero is negative") {
  CHECK(typed(metric().quantity(1, Unit::day, 0)) == "1 day");
  CHECK(typed(metric().quantity(3, Unit::day, 0)) == "3 days");
  CHECK(typed(metric().quantity(1.4, Unit::person_day, 1)) == "1.4 person-days");
  CHECK(typed(metric().quantity(0.96, Unit::person_day, 1)) == "1.0 person-day");
  CHECK(metric().number(-0.001, Unit::metre, 2) == "0.00");
  CHECK(typed(metric().quantity(6, Unit::metre, 2)) == "6.00 m");
}

TEST_CASE("dates name the weekday") {
  using namespace std::chrono;
  const year_month_day day{year{2027}, February, std::chrono::day{15}};
  CHECK(metric("en_GB").date(day) == "Mon 15 Feb 2027");  // 1 January 2027 is a Friday
  CHECK(metric("en_GB").shortDate(day) == "15 Feb");
  CHECK(metric("es").date(day).startsWith("lun"));
}
