#include "ui/panels/editor_sections.h"

#include <QCoreApplication>
#include <array>

namespace ui {

namespace {

constexpr std::array kTank{
    EditorField{"tank.shape"},
    EditorField{"tank.measured_at"},
    EditorField{"tank.length_m", {1, 15}},
    EditorField{"tank.width_m", {1, 10}},
    EditorField{"tank.diameter_m", {1, 12}},
    EditorField{"tank.depth_m", {0.5, 3}},
    EditorField{"tank.batter", {0, 1}},
    EditorField{"tank.corner_radius_m"},
    EditorField{"tank.freeboard_m"},
    EditorField{"tank.dead_depth_m"},
};

constexpr std::array kPlace{
    EditorField{"title"},
    EditorField{"place"},
    EditorField{"prepared_by"},
    EditorField{"currency"},
    EditorField{"site.latitude_deg"},
    EditorField{"site.elevation_m"},
    EditorField{"site.soil"},
    EditorField{"site.clay_percent"},
    EditorField{"site.water_table_depth_m"},
    EditorField{"site.edge.distance_m"},
    EditorField{"site.edge.height_m"},
    EditorField{"site.rock_floor"},
    EditorField{"site.house_downhill_m"},
    EditorField{"site.toddlers_within_20_m"},
    EditorField{"site.fence_planned"},
    EditorField{"site.silt_trap_planned"},
};

constexpr std::array kGround{
    EditorField{"site.ground.kind"},
    EditorField{"site.ground.fall_percent", {0, 60}},
    EditorField{"site.ground.downhill_azimuth_deg"},
    EditorField{"site.position.east_m"},
    EditorField{"site.position.north_m"},
    EditorField{"site.position.turn_deg", {-90, 90}},
    EditorField{"site.platform.level_by"},
    EditorField{"site.platform.level_m", {-2, 2}},
    EditorField{"site.platform.walkway_m"},
    EditorField{"site.platform.cut_batter"},
    EditorField{"site.platform.fill_batter"},
    EditorField{"site.platform.topsoil_m"},
    EditorField{"site.platform.compacted_per_bank"},
    EditorField{"site.spoil_azimuth_deg", {0, 360}},
};

constexpr std::array kSourceLine{
    EditorField{"delivery.source.water_over_inlet_m"}, EditorField{"delivery.source.wanted_l_per_min"},
    EditorField{"delivery.source.pipe.grade"},         EditorField{"delivery.source.pipe.outside_mm"},
    EditorField{"delivery.source.pipe.class_bar"},     EditorField{"delivery.source.pipe.bore_mm"},
    EditorField{"delivery.source.pipe.elbows"},        EditorField{"delivery.source.pipe.valves"},
    EditorField{"delivery.water_temperature_c"},
};

constexpr std::array kFieldLine{
    EditorField{"delivery.field.over_rim"},       EditorField{"delivery.field.crest_over_rim_m"},
    EditorField{"delivery.field.outlet"},         EditorField{"delivery.field.outlets"},
    EditorField{"delivery.field.pipe.grade"},     EditorField{"delivery.field.pipe.outside_mm"},
    EditorField{"delivery.field.pipe.class_bar"}, EditorField{"delivery.field.pipe.bore_mm"},
    EditorField{"delivery.field.pipe.elbows"},    EditorField{"delivery.field.pipe.valves"},
};

constexpr std::array kOverflow{
    EditorField{"delivery.overflow.storm_mm_h", {20, 200}},
    EditorField{"delivery.overflow.kind"},
    EditorField{"delivery.overflow.width_m", {0.1, 2}},
    EditorField{"delivery.overflow.pipe_mm", {50, 250}},
    EditorField{"delivery.overflow.pipe_length_m"},
    EditorField{"delivery.overflow.pipe_fall_m"},
    EditorField{"delivery.overflow.lip_length_m"},
    EditorField{"delivery.overflow.lip_drop_m"},
    EditorField{"delivery.spill.bottom_width_m"},
    EditorField{"delivery.spill.depth_m"},
    EditorField{"delivery.spill.side_slope"},
    EditorField{"delivery.spill.fall_percent"},
    EditorField{"delivery.spill.cover"},
};

constexpr std::array kSiltTrap{
    EditorField{"delivery.silt_trap.grain_mm"},   EditorField{"delivery.silt_trap.flow_l_per_min"},
    EditorField{"delivery.silt_trap.silt_kg_m3"}, EditorField{"delivery.silt_trap.cleaning_days"},
    EditorField{"delivery.silt_trap.length_m"},   EditorField{"delivery.silt_trap.width_m"},
    EditorField{"delivery.silt_trap.depth_m"},
};

constexpr std::array kLeakTest{
    EditorField{"delivery.leak_test.level_m"},          EditorField{"delivery.leak_test.tank_drop_mm"},
    EditorField{"delivery.leak_test.bucket_drop_mm"},   EditorField{"delivery.leak_test.hours"},
    EditorField{"delivery.leak_test.reading_error_mm"},
};

constexpr std::array kOverride{
    EditorField{"site.override.engineer"},
    EditorField{"site.override.licence"},
    EditorField{"site.override.reason"},
    EditorField{"site.override.date"},
};

constexpr std::array kLining{
    EditorField{"lining.stone_bed_m"},
    EditorField{"lining.cove_radius_m"},
    EditorField{"lining.rim_width_m"},
    EditorField{"lining.rim_thickness_m"},
};

constexpr std::array kQuantities{
    EditorField{"lining.dry_to_wet"},
    EditorField{"lining.waste_percent"},
    EditorField{"lining.unevenness_percent"},
    EditorField{"lining.cement_bag_kg"},
    EditorField{"lining.cement_loose_kg_m3"},
    EditorField{"lining.sieving_loss_percent"},
    EditorField{"lining.sand_bulking_percent"},
    EditorField{"lining.stone_loose_factor"},
    EditorField{"lining.mixing_water_l_per_m3"},
    EditorField{"lining.curing_water_l_per_m2_day"},
    EditorField{"lining.sack_covers_m2"},
    EditorField{"lining.sack_spare_percent"},
    EditorField{"lining.gauge_box_l"},
    EditorField{"lining.pan_l"},
    EditorField{"lining.bucket_l"},
};

constexpr std::array kBill{
    EditorField{"lining.customary_bill.soil_m3"},
    EditorField{"lining.customary_bill.sand_m3"},
    EditorField{"lining.customary_bill.stone_m3"},
    EditorField{"lining.customary_bill.cement_kg"},
};

constexpr std::array kWorks{
    EditorField{"works.start_date"},
    EditorField{"works.diggers"},
    EditorField{"works.plasterers"},
    EditorField{"works.masons"},
    EditorField{"works.rest_day"},
    EditorField{"works.hours_per_day"},
    EditorField{"works.coat_hours"},
    EditorField{"works.mixing_places"},
    EditorField{"works.minutes_per_batch"},
    EditorField{"works.placing_minutes"},
    EditorField{"works.wetting_people"},
    EditorField{"works.wettings_per_day"},
    EditorField{"works.heavy_rain_mm"},
    EditorField{"works.digging_person_day_per_m3"},
    EditorField{"works.bed_person_day_per_m3"},
    EditorField{"works.plaster_person_day_per_m2"},
    EditorField{"works.mixing_person_day_per_m3"},
    EditorField{"works.deep_digging_factor"},
    EditorField{"works.spoil_lead_m"},
    EditorField{"records.in_force"},
};

constexpr std::array kFilling{
    EditorField{"works.fill_within_days"},
    EditorField{"works.fill_inflow_l_per_day"},
    EditorField{"works.fill_most_rise_m_per_day"},
    EditorField{"works.wall_band_m"},
};

constexpr std::array kPrices{
    EditorField{"prices.contingency_percent"},
    EditorField{"prices.discount_percent"},
    EditorField{"prices.porter.load_kg"},
    EditorField{"prices.porter.trips_per_day"},
    EditorField{"prices.porter.price_per_trip"},
    EditorField{"prices.mule.load_kg"},
    EditorField{"prices.mule.trips_per_day"},
    EditorField{"prices.mule.price_per_trip"},
    EditorField{"prices.trolley.load_kg"},
    EditorField{"prices.trolley.trips_per_day"},
    EditorField{"prices.trolley.price_per_trip"},
    EditorField{"ranges.draws"},
    EditorField{"ranges.seed"},
};

constexpr std::array kSearch{
    EditorField{"search.most_cost"},     EditorField{"search.most_bags"},
    EditorField{"search.most_people"},   EditorField{"search.least_length_m"},
    EditorField{"search.most_length_m"}, EditorField{"search.least_width_m"},
    EditorField{"search.most_width_m"},  EditorField{"search.least_depth_m"},
    EditorField{"search.most_depth_m"},  EditorField{"search.step_m"},
};

constexpr std::array kCatchments{
    EditorField{"water.roof.area_m2", {0, 200}},
    EditorField{"water.roof.runoff"},
    EditorField{"water.roof.first_flush_mm"},
    EditorField{"water.ground.area_m2", {0, 1000}},
    EditorField{"water.ground.runoff"},
    EditorField{"water.ground.first_flush_mm"},
    EditorField{"water.losses.open_water_kc"},
    EditorField{"water.losses.cover_percent", {0, 100}},
    EditorField{"water.losses.seepage_mm_day", {0, 10}},
};

constexpr std::array kNeeds{
    EditorField{"water.target_years_in_ten", {1, 10}},
    EditorField{"water.soil_water_mm_per_m"},
    EditorField{"water.people"},
    EditorField{"water.l_per_person_day"},
};

constexpr std::array kWeather{
    EditorField{"water.climate.kind"},       EditorField{"water.climate.rain_cv_percent"},
    EditorField{"water.climate.et0_method"}, EditorField{"water.climate.radiation_factor"},
    EditorField{"water.climate.years"},      EditorField{"water.climate.seed"},
    EditorField{"water.climate.gaps"},
};

constexpr std::array kPractice{
    EditorField{"practice.smallest_length_m"},
    EditorField{"practice.smallest_width_m"},
    EditorField{"practice.smallest_depth_m"},
};

constexpr std::array kSections{
    EditorSection{"place", QT_TRANSLATE_NOOP("ui::EditorPanel", "Place and soil"), kPlace, false},
    EditorSection{"ground", QT_TRANSLATE_NOOP("ui::EditorPanel", "Ground and platform"), kGround, false},
    EditorSection{"tank", QT_TRANSLATE_NOOP("ui::EditorPanel", "Tank, finished inside"), kTank, true},
    EditorSection{"lining", QT_TRANSLATE_NOOP("ui::EditorPanel", "Stone bed and coats"), kLining, true},
    EditorSection{"catchments", QT_TRANSLATE_NOOP("ui::EditorPanel", "Roof, ground and losses"), kCatchments,
                  false},
    EditorSection{"needs", QT_TRANSLATE_NOOP("ui::EditorPanel", "Needs and target"), kNeeds, false},
    EditorSection{"weather", QT_TRANSLATE_NOOP("ui::EditorPanel", "Weather"), kWeather, false},
    EditorSection{"source_line", QT_TRANSLATE_NOOP("ui::EditorPanel", "Pipe from the source"), kSourceLine,
                  false},
    EditorSection{"field_line", QT_TRANSLATE_NOOP("ui::EditorPanel", "Pipe to the field"), kFieldLine, false},
    EditorSection{"overflow", QT_TRANSLATE_NOOP("ui::EditorPanel", "Overflow and spill path"), kOverflow,
                  false},
    EditorSection{"silt_trap", QT_TRANSLATE_NOOP("ui::EditorPanel", "Silt trap"), kSiltTrap, false},
    EditorSection{"leak_test", QT_TRANSLATE_NOOP("ui::EditorPanel", "Leak test"), kLeakTest, false},
    EditorSection{"quantities", QT_TRANSLATE_NOOP("ui::EditorPanel", "Materials and measures"), kQuantities,
                  false},
    EditorSection{"bill", QT_TRANSLATE_NOOP("ui::EditorPanel", "Customary bill"), kBill, false},
    EditorSection{"works", QT_TRANSLATE_NOOP("ui::EditorPanel", "People and dates"), kWorks, false},
    EditorSection{"filling", QT_TRANSLATE_NOOP("ui::EditorPanel", "First filling"), kFilling, false},
    EditorSection{"prices", QT_TRANSLATE_NOOP("ui::EditorPanel", "Loads and money"), kPrices, false},
    EditorSection{"search", QT_TRANSLATE_NOOP("ui::EditorPanel", "Limits of the search"), kSearch, false},
    EditorSection{"override", QT_TRANSLATE_NOOP("ui::EditorPanel", "Override by a licensed engineer"),
                  kOverride, false},
    EditorSection{"practice", QT_TRANSLATE_NOOP("ui::EditorPanel", "Smallest tank recommended"), kPractice,
                  false},
};

}  // namespace

std::span<const EditorSection> editorSections() {
  return kSections;
}

QString titleOf(const EditorSection& section) {
  return QCoreApplication::translate("ui::EditorPanel", section.title);
}

}  // namespace ui
