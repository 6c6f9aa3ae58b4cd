#include "ui/text/water_fields.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kWaterLabels{
    Entry{"water.source.months[].flow_l_per_min", QT_TRANSLATE_NOOP("ui::words", "Flow")},
    Entry{"water.source.months[].hours_per_day", QT_TRANSLATE_NOOP("ui::words", "Runs each day")},
    Entry{"water.source.readings[].month", QT_TRANSLATE_NOOP("ui::words", "Month")},
    Entry{"water.source.readings[].vessel_l", QT_TRANSLATE_NOOP("ui::words", "Vessel holds")},
    Entry{"water.source.readings[].seconds", QT_TRANSLATE_NOOP("ui::words", "Time to fill")},
    Entry{"water.roof.area_m2", QT_TRANSLATE_NOOP("ui::words", "Roof area")},
    Entry{"water.roof.runoff", QT_TRANSLATE_NOOP("ui::words", "Share of rain off the roof")},
    Entry{"water.roof.first_flush_mm", QT_TRANSLATE_NOOP("ui::words", "First flush off the roof")},
    Entry{"water.ground.area_m2", QT_TRANSLATE_NOOP("ui::words", "Ground area")},
    Entry{"water.ground.runoff", QT_TRANSLATE_NOOP("ui::words", "Share of rain off the ground")},
    Entry{"water.ground.first_flush_mm", QT_TRANSLATE_NOOP("ui::words", "First flush off the ground")},
    Entry{"water.losses.open_water_kc", QT_TRANSLATE_NOOP("ui::words", "Evaporation factor of open water")},
    Entry{"water.losses.cover_percent", QT_TRANSLATE_NOOP("ui::words", "Evaporation stopped by a cover")},
    Entry{"water.losses.seepage_mm_day", QT_TRANSLATE_NOOP("ui::words", "Seepage through the plaster")},
    Entry{"water.beds[].crop", QT_TRANSLATE_NOOP("ui::words", "Crop")},
    Entry{"water.beds[].area_m2", QT_TRANSLATE_NOOP("ui::words", "Area")},
    Entry{"water.beds[].plant_month", QT_TRANSLATE_NOOP("ui::words", "Planted, month")},
    Entry{"water.beds[].plant_day", QT_TRANSLATE_NOOP("ui::words", "Planted, day")},
    Entry{"water.beds[].method", QT_TRANSLATE_NOOP("ui::words", "Watered by")},
    Entry{"water.beds[].efficiency_percent", QT_TRANSLATE_NOOP("ui::words", "Reaches the roots")},
    Entry{"water.animals[].kind", QT_TRANSLATE_NOOP("ui::words", "Animal")},
    Entry{"water.animals[].head", QT_TRANSLATE_NOOP("ui::words", "How many")},
    Entry{"water.animals[].l_per_head_day", QT_TRANSLATE_NOOP("ui::words", "Each drinks")},
    Entry{"water.people", QT_TRANSLATE_NOOP("ui::words", "People who use the water")},
    Entry{"water.l_per_person_day", QT_TRANSLATE_NOOP("ui::words", "Water for each person")},
    Entry{"water.crops[].name", QT_TRANSLATE_NOOP("ui::words", "Name")},
    Entry{"water.crops[].kc_ini", QT_TRANSLATE_NOOP("ui::words", "Kc, first stage")},
    Entry{"water.crops[].kc_mid", QT_TRANSLATE_NOOP("ui::words", "Kc, mid season")},
    Entry{"water.crops[].kc_end", QT_TRANSLATE_NOOP("ui::words", "Kc, last day")},
    Entry{"water.crops[].height_m", QT_TRANSLATE_NOOP("ui::words", "Height")},
    Entry{"water.crops[].ini_days", QT_TRANSLATE_NOOP("ui::words", "First stage")},
    Entry{"water.crops[].dev_days", QT_TRANSLATE_NOOP("ui::words", "Growing stage")},
    Entry{"water.crops[].mid_days", QT_TRANSLATE_NOOP("ui::words", "Mid season")},
    Entry{"water.crops[].late_days", QT_TRANSLATE_NOOP("ui::words", "Late season")},
    Entry{"water.crops[].root_depth_m", QT_TRANSLATE_NOOP("ui::words", "Root depth")},
    Entry{"water.crops[].depletion", QT_TRANSLATE_NOOP("ui::words", "Share used before stress")},
    Entry{"water.soil_water_mm_per_m", QT_TRANSLATE_NOOP("ui::words", "Water the soil of the beds holds")},
    Entry{"water.climate.kind", QT_TRANSLATE_NOOP("ui::words", "Weather known as")},
    Entry{"water.climate.months[].rain_mm", QT_TRANSLATE_NOOP("ui::words", "Rain")},
    Entry{"water.climate.months[].wet_days", QT_TRANSLATE_NOOP("ui::words", "Wet days")},
    Entry{"water.climate.months[].t_min_c", QT_TRANSLATE_NOOP("ui::words", "Mean daily lowest")},
    Entry{"water.climate.months[].t_max_c", QT_TRANSLATE_NOOP("ui::words", "Mean daily highest")},
    Entry{"water.climate.months[].humidity_percent", QT_TRANSLATE_NOOP("ui::words", "Humidity")},
    Entry{"water.climate.months[].wind_m_s", QT_TRANSLATE_NOOP("ui::words", "Wind")},
    Entry{"water.climate.months[].sun_hours", QT_TRANSLATE_NOOP("ui::words", "Sunshine")},
    Entry{"water.climate.rain_cv_percent", QT_TRANSLATE_NOOP("ui::words", "Spread of yearly rain")},
    Entry{"water.climate.years", QT_TRANSLATE_NOOP("ui::words", "Weather years to make")},
    Entry{"water.climate.seed", QT_TRANSLATE_NOOP("ui::words", "Number that starts the draw")},
    Entry{"water.climate.et0_method", QT_TRANSLATE_NOOP("ui::words", "Reference evapotranspiration by")},
    Entry{"water.climate.radiation_factor", QT_TRANSLATE_NOOP("ui::words", "Radiation factor kRs")},
    Entry{"water.climate.gaps", QT_TRANSLATE_NOOP("ui::words", "Gaps in the record")},
    Entry{"water.target_years_in_ten", QT_TRANSLATE_NOOP("ui::words", "Good years wanted in ten")},
};

}  // namespace

std::span<const Entry> waterLabels() {
  return kWaterLabels;
}

}  // namespace ui::words
