#include "ui/text/water_fields.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kWaterHelp{
    Entry{"water.source.months[].flow_l_per_min",
          QT_TRANSLATE_NOOP("ui::words",
                            "What the tap or spring gives while it runs; time how long a vessel of known "
                            "size takes to fill.")},
    Entry{"water.source.months[].hours_per_day",
          QT_TRANSLATE_NOOP("ui::words",
                            "How long in a day the water runs into the tank; a spring led in day and night "
                            "runs 24 hours.")},
    Entry{"water.source.readings[].month",
          QT_TRANSLATE_NOOP("ui::words", "Month in which this reading was taken.")},
    Entry{"water.source.readings[].vessel_l",
          QT_TRANSLATE_NOOP("ui::words",
                            "What the vessel holds up to the mark to which it was filled; take one that "
                            "fills in 3 seconds or more.")},
    Entry{"water.source.readings[].seconds",
          QT_TRANSLATE_NOOP("ui::words",
                            "Time from putting the empty vessel under the flow until it is full, by watch.")},
    Entry{"water.roof.area_m2",
          QT_TRANSLATE_NOOP("ui::words",
                            "Roof whose gutters lead to the tank, as seen from above: length times width of "
                            "its level shadow.")},
    Entry{"water.roof.runoff",
          QT_TRANSLATE_NOOP("ui::words",
                            "Part of the rain on the roof that reaches the tank: 0.80 is 80 litres of 100.")},
    Entry{"water.roof.first_flush_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "Rain at the start of a wet spell that is let run off to wash the roof; 0 when "
                            "nothing is turned away.")},
    Entry{"water.ground.area_m2",
          QT_TRANSLATE_NOOP("ui::words",
                            "Ground uphill whose runoff a ditch leads to the tank; pace its length and width "
                            "along the level.")},
    Entry{"water.ground.runoff",
          QT_TRANSLATE_NOOP("ui::words",
                            "Part of the rain on this ground that reaches the tank; bare and steep ground "
                            "sheds more than grass.")},
    Entry{"water.ground.first_flush_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "Rain at the start of a wet spell that only wets the ground or is let run past "
                            "with its mud.")},
    Entry{"water.losses.open_water_kc",
          QT_TRANSLATE_NOOP("ui::words",
                            "Evaporation of open water for each unit of reference evapotranspiration; 1.05 "
                            "for shallow water.")},
    Entry{"water.losses.cover_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Share of the evaporation that a roof, a shade cloth or a floating cover keeps "
                            "back; 0 for open water.")},
    Entry{"water.losses.seepage_mm_day",
          QT_TRANSLATE_NOOP("ui::words",
                            "Depth of water lost through the wetted plaster in a day; measure on a covered "
                            "tank how far the level falls over several days without inflow or drawing.")},
    Entry{"water.beds[].crop",
          QT_TRANSLATE_NOOP("ui::words", "Crop of this bed, from the table or one of your own.")},
    Entry{"water.beds[].area_m2",
          QT_TRANSLATE_NOOP("ui::words", "Planted area that is watered from the tank, paths left out.")},
    Entry{"water.beds[].plant_month",
          QT_TRANSLATE_NOOP("ui::words", "Month in which the crop is sown or planted out each year.")},
    Entry{"water.beds[].plant_day",
          QT_TRANSLATE_NOOP("ui::words", "Day of that month; the first or the middle is near enough.")},
    Entry{"water.beds[].method", QT_TRANSLATE_NOOP("ui::words", "How the water is given to the bed.")},
    Entry{"water.beds[].efficiency_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Share of the water drawn that stays where the roots can use it; leave empty to "
                            "take it from the way of watering.")},
    Entry{"water.animals[].kind", QT_TRANSLATE_NOOP("ui::words", "Animals that drink from the tank.")},
    Entry{"water.animals[].head", QT_TRANSLATE_NOOP("ui::words", "Number of these animals, on average.")},
    Entry{"water.animals[].l_per_head_day",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water one animal drinks in a day; count the buckets, or leave empty to take the "
                            "usual for its kind.")},
    Entry{
        "water.people",
        QT_TRANSLATE_NOOP("ui::words", "People whose water for washing and the house comes from the tank.")},
    Entry{"water.l_per_person_day",
          QT_TRANSLATE_NOOP(
              "ui::words", "Water one person takes from the tank in a day; count the vessels carried home.")},
    Entry{"water.crops[].name",
          QT_TRANSLATE_NOOP("ui::words", "Name by which the beds call this crop; each one only once.")},
    Entry{"water.crops[].kc_ini",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water use over reference evapotranspiration from planting until a tenth of the "
                            "ground is covered.")},
    Entry{"water.crops[].kc_mid",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water use over reference evapotranspiration while the crop covers the ground "
                            "fully.")},
    Entry{"water.crops[].kc_end",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water use over reference evapotranspiration on the day of harvest or when the "
                            "leaves die.")},
    Entry{"water.crops[].height_m",
          QT_TRANSLATE_NOOP("ui::words", "Height of the full-grown crop, or to the top of its stakes.")},
    Entry{"water.crops[].ini_days",
          QT_TRANSLATE_NOOP("ui::words", "Days from planting until a tenth of the ground is covered.")},
    Entry{"water.crops[].dev_days",
          QT_TRANSLATE_NOOP("ui::words", "Days from then until the leaves cover the ground.")},
    Entry{"water.crops[].mid_days",
          QT_TRANSLATE_NOOP("ui::words",
                            "Days from full cover until the leaves begin to yellow or fruit ripens.")},
    Entry{"water.crops[].late_days",
          QT_TRANSLATE_NOOP("ui::words", "Days from then until harvest or until watering stops.")},
    Entry{"water.crops[].root_depth_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Depth from which most roots draw; dig beside a grown plant and look.")},
    Entry{"water.crops[].depletion",
          QT_TRANSLATE_NOOP("ui::words",
                            "Part of the water held by the soil that the crop may use up before it suffers: "
                            "0.40 is 40 litres of 100.")},
    Entry{"water.soil_water_mm_per_m",
          QT_TRANSLATE_NOOP("ui::words",
                            "Water the soil keeps for roots after it has drained, down to wilting: sand "
                            "little, loam and clay much.")},
    Entry{
        "water.climate.kind",
        QT_TRANSLATE_NOOP("ui::words",
                          "Whether twelve monthly means or a table of single days from a weather station is "
                          "at hand.")},
    Entry{"water.climate.months[].rain_mm",
          QT_TRANSLATE_NOOP("ui::words",
                            "Rain of this month, mean of many years, from the nearest weather station.")},
    Entry{"water.climate.months[].wet_days",
          QT_TRANSLATE_NOOP("ui::words",
                            "Days of this month on which it rains 0.1 mm or more, mean of many years.")},
    Entry{"water.climate.months[].t_min_c",
          QT_TRANSLATE_NOOP("ui::words", "Mean of the lowest temperatures of each day, in the shade.")},
    Entry{"water.climate.months[].t_max_c",
          QT_TRANSLATE_NOOP("ui::words", "Mean of the highest temperatures of each day, in the shade.")},
    Entry{"water.climate.months[].humidity_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Mean relative humidity of the air; leave empty when not known, then it is "
                            "estimated from the temperature.")},
    Entry{
        "water.climate.months[].wind_m_s",
        QT_TRANSLATE_NOOP("ui::words",
                          "Mean wind 2 m above the ground; leave empty when not known, then a light wind is "
                          "reckoned with.")},
    Entry{"water.climate.months[].sun_hours",
          QT_TRANSLATE_NOOP("ui::words",
                            "Mean hours of bright sunshine a day; leave empty when not known, then it is "
                            "estimated from the temperatures.")},
    Entry{"water.climate.rain_cv_percent",
          QT_TRANSLATE_NOOP("ui::words",
                            "Standard deviation of the yearly rain over its mean, from the weather station. "
                            "Leave empty if not known.")},
    Entry{
        "water.climate.years",
        QT_TRANSLATE_NOOP("ui::words",
                          "How many years of daily weather are made from the monthly means; more years show "
                          "rare droughts better and take longer.")},
    Entry{"water.climate.seed",
          QT_TRANSLATE_NOOP("ui::words",
                            "The same number gives the same years; another one shows how much the answer "
                            "depends on chance.")},
    Entry{"water.climate.et0_method",
          QT_TRANSLATE_NOOP("ui::words",
                            "Penman-Monteith is the standard and estimates what was not measured; Hargreaves "
                            "uses temperatures alone.")},
    Entry{
        "water.climate.radiation_factor",
        QT_TRANSLATE_NOOP("ui::words",
                          "Turns the day's range of temperature into sunshine where none was measured: 0.16 "
                          "inland, 0.19 at a coast.")},
    Entry{"water.climate.gaps",
          QT_TRANSLATE_NOOP("ui::words",
                            "What to do with years in which days or values of the record are missing.")},
    Entry{"water.target_years_in_ten",
          QT_TRANSLATE_NOOP("ui::words",
                            "In how many of ten years there shall be water on every day; ask those who live "
                            "from the beds.")},
};

}  // namespace

std::span<const Entry> waterHelp() {
  return kWaterHelp;
}

}  // namespace ui::words
