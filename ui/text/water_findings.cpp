#include "ui/text/finding_sentences.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

QString latitudeUnknown(const Values&) {
  return QCoreApplication::translate(
      "ui::words",
      "The latitude of the site is not known, so whether the water lasts cannot be answered. Read it from a "
      "map or a phone.");
}

QString climateUnknown(const Values&) {
  return QCoreApplication::translate(
      "ui::words",
      "The climate is not known, so whether the water lasts cannot be answered. Enter rain, wet days, lowest "
      "and highest temperature of all twelve months, or take in a daily record.");
}

QString elevationUnknown(const Values&) {
  return QCoreApplication::translate("ui::words",
                                     "The height above sea level is not known; evaporation is reckoned as at "
                                     "sea level. Read it from a map or "
                                     "a phone.");
}

QString noSupply(const Values&) {
  return QCoreApplication::translate(
      "ui::words",
      "Only rain on the tank itself brings water. Enter what the source gives in each month, or a roof or "
      "ground that is led to the tank.");
}

QString noNeed(const Values&) {
  return QCoreApplication::translate(
      "ui::words", "Nothing is drawn from the tank. Enter beds, animals or people who use its water.");
}

QString notForDrinking(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "Water from an open tank is not safe to drink as it is. Use it for washing and the house, and "
             "treat what is drunk. People counted: %1.")
      .arg(v.format().number(v.number("people"), core::Unit::none, 0));
}

QString targetMissed(const Values& v) {
  QString text =
      QCoreApplication::translate("ui::words", "The water lasts in %1 of 10 years; %2 of 10 are wanted.")
          .arg(yearsInTenText(v.number("years_in_ten"), v.format()),
               yearsInTenText(v.number("target"), v.format()));
  constexpr double kLeastBeds_m2 = 1;
  const bool by_size = v.has("smallest_full_m3");
  const bool by_area = v.has("largest_bed_area_m2") && v.number("largest_bed_area_m2") >= kLeastBeds_m2;
  if (by_size) {
    text += u' ' + QCoreApplication::translate("ui::words", "A tank that holds about %1 would reach it.")
                       .arg(litresWorth(v.number("smallest_full_m3"), v.format(), Rounding::up));
  }
  if (by_area) {
    text += u' ' + QCoreApplication::translate("ui::words", "Beds of about %1 in all would reach it.")
                       .arg(areaWorth(v.number("largest_bed_area_m2"), v.format(), Rounding::down));
  }
  if (by_size || by_area) return text;
  return text + u' ' +
         QCoreApplication::translate(
             "ui::words",
             "No tank of this depth and batter, up to %1, would reach it: lead in more "
             "water, or need less.")
             .arg(litresWorth(v.number("most_tried_m3"), v.format(), Rounding::down));
}

QString neverFull(const Values& v) {
  return QCoreApplication::translate("ui::words",
                                     "The tank does not fill in any year: it holds %1, and the most that is "
                                     "ever in it is about %2. Lead in "
                                     "more water, or build it smaller.")
      .arg(v.format().litres(v.number("full_m3")),
           litresWorth(v.number("most_m3"), v.format(), Rounding::down));
}

QString rainSpreadUnknown(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "How much the rain differs from year to year is not known. The years made from monthly means "
             "differ by %1, real ones mostly by more. Ask the weather station for the spread of yearly rain.")
      .arg(v.format().quantity(v.number("rain_cv_percent"), core::Unit::percent, 0));
}

QString rainSpreadDiffers(const Values& v) {
  const auto percent = [&](std::string_view name) {
    return v.format().quantity(v.number(name), core::Unit::percent, 0);
  };
  return QCoreApplication::translate(
             "ui::words",
             "The yearly rain of the weather years made differs by %1; a spread of %2 is entered. Check the "
             "spread and the wet days, or have more years made.")
      .arg(percent("made_percent"), percent("rain_cv_percent"));
}

QString recordNoWholeYear(const Values&) {
  return noWholeYearText();
}

QString yearsFew(const Values& v) {
  return QCoreApplication::translate("ui::words",
                                     "Weather years made from the monthly means: %1. Have at least %2 made "
                                     "to see how often the water "
                                     "runs short.")
      .arg(v.whole("years"), v.whole("wanted"));
}

QString recordShort(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "The record has whole years: %1. At least %2 are wanted to see how often the water runs short.")
      .arg(v.whole("years"), v.whole("wanted"));
}

QString recordYearsLeftOut(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "Years of the record left out for their gaps: %1, the first one beginning in %2. Add what is "
             "missing, or have gaps filled in from the nearest year.")
      .arg(v.whole("years"), v.calendarYear("first"));
}

QString recordFilled(const Values& v) {
  return QCoreApplication::translate("ui::words",
                                     "Missing values of the record filled in from the nearest year: %1.")
      .arg(v.whole("values"));
}

QString readingsFew(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "Readings of the source in %1: %2. Take more than three, so that a wrong one shows.")
      .arg(v.month("month"), v.whole("count"));
}

QString flow(const Values& v, std::string_view name) {
  return v.format().quantity(v.number(name), core::Unit::litre_per_minute, 1);
}

QString readingOutlier(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "Reading %1 gives %2, far from the middle of its month, %3. Measure once more, and take the "
             "reading out if something went wrong.")
      .arg(v.row("row"), flow(v, "flow_l_per_min"), flow(v, "median_l_per_min"));
}

QString readingTooQuick(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "Reading %1: the vessel was full after %2. Below 3 seconds a watch is too coarse; take a larger "
             "vessel.")
      .arg(v.row("row"), v.format().quantity(v.number("seconds"), core::Unit::second, 1));
}

QString flowDiffers(const Values& v) {
  return QCoreApplication::translate(
             "ui::words",
             "For %1 a flow of %2 is entered; the middle of the readings is %3. Enter the one you trust.")
      .arg(v.month("month"), flow(v, "flow_l_per_min"), flow(v, "median_l_per_min"));
}

QString et0MethodsDiffer(const Values& v) {
  const auto year = [&](std::string_view name) {
    return v.format().quantity(v.number(name), core::Unit::millimetre, 0);
  };
  return QCoreApplication::translate("ui::words",
                                     "Reference evapotranspiration of a mean year is %1 by Penman-Monteith "
                                     "and %2 by Hargreaves. Enter or check "
                                     "humidity, wind and sunshine, which only the first one uses.")
      .arg(year("penman_monteith_mm"), year("hargreaves_mm"));
}

constexpr std::array kWaterSentences{
    SentenceOf{"water_latitude_unknown", latitudeUnknown},
    SentenceOf{"water_climate_unknown", climateUnknown},
    SentenceOf{"water_elevation_unknown", elevationUnknown},
    SentenceOf{"water_no_supply", noSupply},
    SentenceOf{"water_no_need", noNeed},
    SentenceOf{"water_not_for_drinking", notForDrinking},
    SentenceOf{"water_target_missed", targetMissed},
    SentenceOf{"water_never_full", neverFull},
    SentenceOf{"water_rain_spread_unknown", rainSpreadUnknown},
    SentenceOf{"water_rain_spread_differs", rainSpreadDiffers},
    SentenceOf{"water_years_few", yearsFew},
    SentenceOf{"water_record_no_whole_year", recordNoWholeYear},
    SentenceOf{"water_record_short", recordShort},
    SentenceOf{"water_record_years_left_out", recordYearsLeftOut},
    SentenceOf{"water_record_filled", recordFilled},
    SentenceOf{"water_readings_few", readingsFew},
    SentenceOf{"water_reading_outlier", readingOutlier},
    SentenceOf{"water_reading_too_quick", readingTooQuick},
    SentenceOf{"water_flow_differs_from_readings", flowDiffers},
    SentenceOf{"water_et0_methods_differ", et0MethodsDiffer},
};

}  // namespace

std::span<const SentenceOf> waterSentences() {
  return kWaterSentences;
}

}  // namespace ui::words
