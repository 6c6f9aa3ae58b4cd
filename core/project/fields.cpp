#include "core/project/fields.h"

#include "core/project/field_access.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <stdexcept>
#include <system_error>

#include <fmt/format.h>

namespace core {
namespace {

using namespace access;

constexpr string_view kRowMark = "[]";

bool always(const Project&) {
  return true;
}
bool isRectangle(const Project& p) {
  return p.tank.shape == Shape::rectangle;
}
bool isRound(const Project& p) {
  return p.tank.shape == Shape::round;
}
bool hasCorners(const Project& p) {
  return p.tank.shape != Shape::round;
}
bool isSlope(const Project& p) {
  return p.site.ground.kind == GroundKind::slope;
}
bool hasRelief(const Project& p) {
  return p.site.ground.kind != GroundKind::level;
}
bool hasSurvey(const Project& p) {
  return p.site.ground.kind == GroundKind::spot_heights;
}
bool hasGivenPlatform(const Project& p) {
  return hasRelief(p) && p.site.platform.level_by == PlatformLevel::given;
}
bool hasWorks(const Project& p) {
  return p.works.has_value();
}

bool hasWater(const Project& p) {
  return p.water.has_value();
}

bool hasPrices(const Project& p) {
  return p.prices.has_value();
}

bool hasDelivery(const Project& p) {
  return p.delivery.has_value();
}
bool hasNotch(const Project& p) {
  return p.delivery && p.delivery->overflow.kind == OverflowKind::notch;
}
bool hasOverflowPipe(const Project& p) {
  return p.delivery && p.delivery->overflow.kind == OverflowKind::pipe;
}

struct Range {
  double least = 0, most = 0, step = 0;
  int decimals = 0;
};
constexpr Range kNoRange{};
constexpr Range kTextLength{0, 200, 0, 0};

enum class Need { required, optional };
constexpr Need kMust = Need::required;
constexpr Need kMay = Need::optional;

template <class Place>
constexpr Field row(string_view id, Unit unit, Range range, string_view source, Need need,
                    bool (*applies)(const Project&) = always) {
  using Held = TypeAt<Place>;
  return {id,
          Kind<Held>::kind,
          unit,
          range.least,
          range.most,
          range.step,
          range.decimals,
          source,
          need == kMust,
          kIsOptional<Held>,
          Kind<Held>::choices,
          getAt<Place>,
          setAt<Place>,
          applies};
}

using P = Project;
using S = Site;
using V = StopOverride;
using G = Ground;
using Ps = Position;
using Pf = Platform;
using D = Delivery;
using Sl = SourceLine;
using Fl = FieldLine;
using Pp = Pipe;
using Ov = OverflowWay;
using Sp = SpillPath;
using St = SiltTrapWish;
using Lt = LeakReadings;
using Rp = RoutePoint;
using T = Tank;
using L = Lining;
using C = Coat;
using B = CustomaryBill;
using W = Works;
using Wt = Water;
using K = Catchment;
using Cl = Climate;
using M = ClimateMonth;
using O = OwnCrop;
using Pr = Prices;
using Ct = CarrierTerms;
using Se = SearchLimits;
using U = Unit;
constexpr auto kSite = &P::site;
constexpr auto kTank = &P::tank;
constexpr auto kLining = &P::lining;
using Coats = At<kLining, &L::coats>;
using SourceMonths = InWater<&Wt::source, &WaterSource::months>;
using Readings = InWater<&Wt::source, &WaterSource::readings>;
using Beds = InWater<&Wt::beds>;
using Herds = InWater<&Wt::animals>;
using OwnCrops = InWater<&Wt::crops>;
using ClimateMonths = InWater<&Wt::climate, &Cl::months>;
using Closed = InWorks<&W::closed>;
using Wishes = InWorks<&W::wishes>;
using OwnRates = InWorks<&W::rates>;
using Batches = At<&P::records, &Records::batches>;
using WorkDone = At<&P::records, &Records::work>;
using Jars = At<&P::notes, &FieldNotes::jars>;
using Feel = At<&P::notes, &FieldNotes::feel>;
using PitLayers = At<&P::notes, &FieldNotes::pit_layers>;
using SlopeRows = At<&P::notes, &FieldNotes::slope>;
using Items = InPrices<&Pr::items>;
using Linings = InPrices<&Pr::linings>;
using Spreads = At<&P::ranges, &Ranges::inputs>;
using SourceRoute = InDelivery<&D::source, &Sl::route>;
using FieldRoute = InDelivery<&D::field, &Fl::route>;
constexpr auto kSource = &D::source;
constexpr auto kField = &D::field;
constexpr auto kOverflow = &D::overflow;
constexpr auto kSpill = &D::spill;
constexpr auto kTrap = &D::silt_trap;
constexpr auto kLeak = &D::leak_test;
constexpr auto kSourcePipe = &Sl::pipe;
constexpr auto kFieldPipe = &Fl::pipe;
constexpr auto kClimate = &Wt::climate;
constexpr auto kSearch = &P::search;

// clang-format off
constexpr auto kFields = std::to_array<Field>({
  row<At<&P::title>>("title", U::none, kTextLength, "user", kMay),
  row<At<&P::place>>("place", U::none, kTextLength, "user", kMay),
  row<At<&P::prepared_by>>("prepared_by", U::none, kTextLength, "user", kMay),
  row<At<&P::currency>>("currency", U::none, {0, 8, 0, 0}, "user", kMay),

  row<At<kSite, &S::latitude_deg>>("site.latitude_deg", U::degree, {-90, 90, 0.1, 4}, "user", kMay),
  row<At<kSite, &S::elevation_m>>("site.elevation_m", U::metre, {-500, 9000, 10, 0}, "user", kMay),
  row<At<kSite, &S::ground, &G::kind>>("site.ground.kind", U::none, kNoRange, "user", kMust),
  row<At<kSite, &S::ground, &G::fall_percent>>("site.ground.fall_percent", U::percent, {0, 100, 1, 1}, "user", kMust, isSlope),
  row<At<kSite, &S::ground, &G::downhill_azimuth_deg>>("site.ground.downhill_azimuth_deg", U::degree, {0, 360, 5, 0}, "user", kMust, isSlope),
  row<At<kSite, &S::position, &Ps::east_m>>("site.position.east_m", U::metre, {-1000, 1000, 0.5, 2}, "user", kMay, hasSurvey),
  row<At<kSite, &S::position, &Ps::north_m>>("site.position.north_m", U::metre, {-1000, 1000, 0.5, 2}, "user", kMay, hasSurvey),
  row<At<kSite, &S::position, &Ps::turn_deg>>("site.position.turn_deg", U::degree, {-180, 180, 5, 0}, "user", kMay, hasRelief),
  row<At<kSite, &S::platform, &Pf::level_by>>("site.platform.level_by", U::none, kNoRange, "own", kMay, hasRelief),
  row<At<kSite, &S::platform, &Pf::level_m>>("site.platform.level_m", U::metre, {-5, 5, 0.05, 2}, "user", kMay, hasGivenPlatform),
  row<At<kSite, &S::platform, &Pf::walkway_m>>("site.platform.walkway_m", U::metre, {0, 5, 0.1, 2}, "own", kMay),
  row<At<kSite, &S::platform, &Pf::cut_batter>>("site.platform.cut_batter", U::batter, {0.05, 5, 0.05, 2}, "own", kMay, hasRelief),
  row<At<kSite, &S::platform, &Pf::fill_batter>>("site.platform.fill_batter", U::batter, {0.5, 5, 0.05, 2}, "common_practice", kMay, hasRelief),
  row<At<kSite, &S::platform, &Pf::topsoil_m>>("site.platform.topsoil_m", U::metre, {0, 0.6, 0.05, 2}, "common_practice", kMay),
  row<At<kSite, &S::platform, &Pf::compacted_per_bank>>("site.platform.compacted_per_bank", U::factor, {0.6, 1.2, 0.05, 2}, "own", kMay, hasRelief),
  row<At<kSite, &S::spoil_azimuth_deg>>("site.spoil_azimuth_deg", U::degree, {0, 360, 5, 0}, "own", kMay),
  row<At<kSite, &S::soil>>("site.soil", U::none, kNoRange, "user", kMay),
  row<At<kSite, &S::clay_percent>>("site.clay_percent", U::percent, {0, 100, 1, 0}, "user", kMay),
  row<At<kSite, &S::water_table_depth_m>>("site.water_table_depth_m", U::metre, {0, 200, 0.1, 1}, "user", kMay),
  row<At<kSite, &S::edge_distance_m>>("site.edge.distance_m", U::metre, {0, 1000, 0.5, 1}, "user", kMay),
  row<At<kSite, &S::edge_height_m>>("site.edge.height_m", U::metre, {0, 500, 0.5, 1}, "user", kMay),
  row<At<kSite, &S::rock_floor>>("site.rock_floor", U::none, kNoRange, "user", kMay),
  row<At<kSite, &S::house_downhill_m>>("site.house_downhill_m", U::metre, {0, 5000, 1, 0}, "user", kMay),
  row<At<kSite, &S::toddlers_within_20_m>>("site.toddlers_within_20_m", U::none, kNoRange, "user", kMay),
  row<At<kSite, &S::fence_planned>>("site.fence_planned", U::none, kNoRange, "user", kMay),
  row<At<kSite, &S::silt_trap_planned>>("site.silt_trap_planned", U::none, kNoRange, "user", kMay),
  row<At<kSite, &S::stop_override, &V::engineer>>("site.override.engineer", U::none, kTextLength, "user", kMay),
  row<At<kSite, &S::stop_override, &V::licence>>("site.override.licence", U::none, kTextLength, "user", kMay),
  row<At<kSite, &S::stop_override, &V::reason>>("site.override.reason", U::none, kTextLength, "user", kMay),
  row<At<kSite, &S::stop_override, &V::date>>("site.override.date", U::none, kNoRange, "user", kMay),

  row<At<kTank, &T::shape>>("tank.shape", U::none, kNoRange, "user", kMust),
  row<At<kTank, &T::measured_at>>("tank.measured_at", U::none, kNoRange, "user", kMust),
  row<At<kTank, &T::length_m>>("tank.length_m", U::metre, {0.5, 60, 0.1, 2}, "user", kMust, isRectangle),
  row<At<kTank, &T::width_m>>("tank.width_m", U::metre, {0.5, 60, 0.1, 2}, "user", kMust, isRectangle),
  row<At<kTank, &T::diameter_m>>("tank.diameter_m", U::metre, {0.5, 40, 0.1, 2}, "user", kMust, isRound),
  row<At<kTank, &T::depth_m>>("tank.depth_m", U::metre, {0.3, 4, 0.05, 2}, "user", kMust),
  row<At<kTank, &T::batter>>("tank.batter", U::batter, {0, 2, 0.05, 2}, "user", kMust),
  row<At<kTank, &T::corner_radius_m>>("tank.corner_radius_m", U::metre, {0, 20, 0.05, 2}, "user", kMust, hasCorners),
  row<At<kTank, &T::freeboard_m>>("tank.freeboard_m", U::metre, {0, 1, 0.05, 2}, "own", kMust),
  row<At<kTank, &T::dead_depth_m>>("tank.dead_depth_m", U::metre, {0, 2, 0.05, 2}, "own", kMust),

  row<At<kLining, &L::stone_bed_m>>("lining.stone_bed_m", U::metre, {0, 0.5, 0.005, 4}, "common_practice", kMust),
  row<At<kLining, &L::dry_to_wet>>("lining.dry_to_wet", U::factor, {1, 2, 0.01, 2}, "dry_to_wet", kMust),
  row<At<kLining, &L::waste_percent>>("lining.waste_percent", U::percent, {0, 50, 1, 0}, "own", kMust),
  row<At<kLining, &L::unevenness_percent>>("lining.unevenness_percent", U::percent, {0, 100, 1, 0}, "own", kMust),
  row<At<kLining, &L::cement_bag_kg>>("lining.cement_bag_kg", U::kilogram, {5, 100, 1, 1}, "user", kMust),
  row<At<kLining, &L::cement_loose_kg_m3>>("lining.cement_loose_kg_m3", U::kg_per_m3, {1000, 1700, 10, 0}, "cpwd_density", kMust),
  row<InRow<Coats, &C::thickness_m>>("lining.coats[].thickness_m", U::metre, {0.005, 0.3, 0.005, 3}, "common_practice", kMust),
  row<InRow<Coats, &C::soil>>("lining.coats[].soil", U::part, {0, 30, 0.5, 1}, "common_practice", kMust),
  row<InRow<Coats, &C::sand>>("lining.coats[].sand", U::part, {0, 30, 0.5, 1}, "common_practice", kMust),
  row<InRow<Coats, &C::cement>>("lining.coats[].cement", U::part, {0.1, 10, 0.5, 1}, "common_practice", kMust),
  row<InRow<Coats, &C::cure_days>>("lining.coats[].cure_days", U::day, {0, 60, 1, 0}, "wocat_5684", kMay),
  row<At<kLining, &L::cove_radius_m>>("lining.cove_radius_m", U::metre, {0, 0.5, 0.01, 2}, "user", kMust),
  row<At<kLining, &L::rim_width_m>>("lining.rim_width_m", U::metre, {0, 1.5, 0.05, 2}, "user", kMust),
  row<At<kLining, &L::rim_thickness_m>>("lining.rim_thickness_m", U::metre, {0, 0.3, 0.005, 3}, "user", kMust),
  row<At<kLining, &L::sieving_loss_percent>>("lining.sieving_loss_percent", U::percent, {0, 50, 1, 0}, "own", kMay),
  row<At<kLining, &L::sand_bulking_percent>>("lining.sand_bulking_percent", U::percent, {0, 50, 1, 0}, "sand_bulking", kMay),
  row<At<kLining, &L::stone_loose_factor>>("lining.stone_loose_factor", U::factor, {1, 2, 0.05, 2}, "rate_norms_2073", kMay),
  row<At<kLining, &L::mixing_water_l_per_m3>>("lining.mixing_water_l_per_m3", U::litre_per_m3, {100, 600, 10, 0}, "own", kMay),
  row<At<kLining, &L::curing_water_l_per_m2_day>>("lining.curing_water_l_per_m2_day", U::litre_per_m2_day, {0, 30, 1, 0}, "own", kMay),
  row<At<kLining, &L::sack_covers_m2>>("lining.sack_covers_m2", U::square_metre, {0.1, 5, 0.1, 1}, "memory", kMay),
  row<At<kLining, &L::sack_spare_percent>>("lining.sack_spare_percent", U::percent, {0, 100, 5, 0}, "own", kMay),
  row<At<kLining, &L::gauge_box_l>>("lining.gauge_box_l", U::litre, {5, 200, 1, 0}, "own", kMay),
  row<At<kLining, &L::pan_l>>("lining.pan_l", U::litre, {2, 50, 1, 0}, "own", kMay),
  row<At<kLining, &L::bucket_l>>("lining.bucket_l", U::litre, {2, 50, 1, 0}, "own", kMay),
  row<At<kLining, &L::customary, &B::soil_m3>>("lining.customary_bill.soil_m3", U::cubic_metre, {0, 1000, 0.1, 1}, "user", kMay),
  row<At<kLining, &L::customary, &B::sand_m3>>("lining.customary_bill.sand_m3", U::cubic_metre, {0, 1000, 0.1, 1}, "user", kMay),
  row<At<kLining, &L::customary, &B::stone_m3>>("lining.customary_bill.stone_m3", U::cubic_metre, {0, 1000, 0.1, 1}, "user", kMay),
  row<At<kLining, &L::customary, &B::cement_kg>>("lining.customary_bill.cement_kg", U::kilogram, {0, 100000, 50, 0}, "user", kMay),

  row<At<&P::practice, &Practice::smallest_length_m>>("practice.smallest_length_m", U::metre, {0, 60, 0.1, 2}, "common_practice", kMay),
  row<At<&P::practice, &Practice::smallest_width_m>>("practice.smallest_width_m", U::metre, {0, 60, 0.1, 2}, "common_practice", kMay),
  row<At<&P::practice, &Practice::smallest_depth_m>>("practice.smallest_depth_m", U::metre, {0, 4, 0.1, 2}, "common_practice", kMay),

  row<InWorks<&W::start_date>>("works.start_date", U::none, kNoRange, "user", kMay, hasWorks),
  row<InWorks<&W::diggers>>("works.diggers", U::person, {1, 100, 1, 0}, "user", kMay, hasWorks),
  row<InWorks<&W::plasterers>>("works.plasterers", U::person, {1, 200, 1, 0}, "user", kMay, hasWorks),
  row<InWorks<&W::rest_day>>("works.rest_day", U::none, kNoRange, "user", kMay, hasWorks),
  row<InWorks<&W::fill_within_days>>("works.fill_within_days", U::day, {1, 30, 1, 0}, "wocat_5684", kMay, hasWorks),
  row<InWorks<&W::digging_person_day_per_m3>>("works.digging_person_day_per_m3", U::person_day_per_m3, {0.05, 10, 0.05, 2}, "rate_norms_2073", kMay, hasWorks),
  row<InWorks<&W::bed_person_day_per_m3>>("works.bed_person_day_per_m3", U::person_day_per_m3, {0.1, 30, 0.1, 2}, "rate_norms_2073", kMay, hasWorks),
  row<InWorks<&W::plaster_person_day_per_m2>>("works.plaster_person_day_per_m2", U::person_day_per_m2, {0.02, 5, 0.01, 2}, "cpwd_plaster", kMay, hasWorks),
  row<InWorks<&W::mixing_person_day_per_m3>>("works.mixing_person_day_per_m3", U::person_day_per_m3, {0.05, 10, 0.05, 2}, "is7272", kMay, hasWorks),

  row<InWorks<&W::masons>>("works.masons", U::person, {0, 100, 1, 0}, "user", kMay, hasWorks),
  row<InRow<Closed, &ClosedDays::from>>("works.closed[].from", U::none, kNoRange, "user", kMay, hasWorks),
  row<InRow<Closed, &ClosedDays::days>>("works.closed[].days", U::day, {1, 60, 1, 0}, "user", kMay, hasWorks),
  row<InRow<Closed, &ClosedDays::why>>("works.closed[].why", U::none, kTextLength, "user", kMay, hasWorks),
  row<InWorks<&W::hours_per_day>>("works.hours_per_day", U::hour, {2, 14, 0.5, 1}, "own", kMay, hasWorks),
  row<InWorks<&W::coat_hours>>("works.coat_hours", U::hour, {1, 16, 0.5, 1}, "own", kMay, hasWorks),
  row<InWorks<&W::mixing_places>>("works.mixing_places", U::piece, {1, 20, 1, 0}, "user", kMay, hasWorks),
  row<InWorks<&W::minutes_per_batch>>("works.minutes_per_batch", U::minute, {3, 120, 1, 0}, "own", kMay, hasWorks),
  row<InWorks<&W::placing_minutes>>("works.placing_minutes", U::minute, {10, 240, 5, 0}, "memory", kMay, hasWorks),
  row<InWorks<&W::wetting_people>>("works.wetting_people", U::person, {0, 20, 1, 0}, "own", kMay, hasWorks),
  row<InWorks<&W::wettings_per_day>>("works.wettings_per_day", U::piece, {1, 12, 1, 0}, "own", kMay, hasWorks),
  row<InWorks<&W::spoil_lead_m>>("works.spoil_lead_m", U::metre, {0, 50, 1, 0}, "user", kMay, hasWorks),
  row<InWorks<&W::deep_digging_factor>>("works.deep_digging_factor", U::factor, {1, 4, 0.1, 2}, "hand_output_tables", kMay, hasWorks),
  row<InWorks<&W::fill_inflow_l_per_day>>("works.fill_inflow_l_per_day", U::litre_per_day, {0, 2000000, 100, 0}, "user", kMay, hasWorks),
  row<InWorks<&W::fill_most_rise_m_per_day>>("works.fill_most_rise_m_per_day", U::metre, {0.05, 4, 0.05, 2}, "own", kMay, hasWorks),
  row<InWorks<&W::wall_band_m>>("works.wall_band_m", U::metre, {0.1, 2, 0.05, 2}, "own", kMay, hasWorks),
  row<InWorks<&W::heavy_rain_mm>>("works.heavy_rain_mm", U::millimetre, {1, 100, 1, 0}, "own", kMay, hasWorks),
  row<InRow<Wishes, &TaskWish::task>>("works.wishes[].task", U::none, {0, 60, 0, 0}, "user", kMay, hasWorks),
  row<InRow<Wishes, &TaskWish::not_before>>("works.wishes[].not_before", U::none, kNoRange, "user", kMay, hasWorks),
  row<InRow<Wishes, &TaskWish::people>>("works.wishes[].people", U::person, {1, 200, 1, 0}, "user", kMay, hasWorks),
  row<InRow<OwnRates, &OwnRate::work>>("works.rates[].work", U::none, {0, 60, 0, 0}, "user", kMust, hasWorks),
  row<InRow<OwnRates, &OwnRate::low>>("works.rates[].low", U::none, {0, 100, 0.1, 3}, "user", kMay, hasWorks),
  row<InRow<OwnRates, &OwnRate::typical>>("works.rates[].typical", U::none, {0, 100, 0.1, 3}, "user", kMay, hasWorks),
  row<InRow<OwnRates, &OwnRate::high>>("works.rates[].high", U::none, {0, 100, 0.1, 3}, "user", kMay, hasWorks),

  row<At<&P::records, &Records::in_force>>("records.in_force", U::none, kNoRange, "own", kMay),
  row<InRow<Batches, &TrialBatch::coat>>("records.batches[].coat", U::none, {1, 6, 1, 0}, "user", kMay),
  row<InRow<Batches, &TrialBatch::bags>>("records.batches[].bags", U::piece, {0.1, 50, 0.5, 2}, "user", kMay),
  row<InRow<Batches, &TrialBatch::area_m2>>("records.batches[].area_m2", U::square_metre, {0.05, 500, 0.1, 2}, "user", kMay),
  row<InRow<Batches, &TrialBatch::thickness_m>>("records.batches[].thickness_m", U::metre, {0.005, 0.3, 0.005, 3}, "user", kMay),
  row<InRow<WorkDone, &WorkRecord::work>>("records.work[].work", U::none, kNoRange, "user", kMay),
  row<InRow<WorkDone, &WorkRecord::quantity>>("records.work[].quantity", U::none, {0.01, 10000, 1, 2}, "user", kMay),
  row<InRow<WorkDone, &WorkRecord::person_days>>("records.work[].person_days", U::person_day, {0.05, 10000, 0.5, 2}, "user", kMay),
  row<InRow<WorkDone, &WorkRecord::soil>>("records.work[].soil", U::none, kNoRange, "user", kMay),

  row<InRow<Jars, &JarTest::place>>("notes.jars[].place", U::none, kTextLength, "user", kMay),
  row<InRow<Jars, &JarTest::sand_mm>>("notes.jars[].sand_mm", U::millimetre, {0, 300, 1, 0}, "user", kMay),
  row<InRow<Jars, &JarTest::silt_mm>>("notes.jars[].silt_mm", U::millimetre, {0, 300, 1, 0}, "user", kMay),
  row<InRow<Jars, &JarTest::clay_mm>>("notes.jars[].clay_mm", U::millimetre, {0, 300, 1, 0}, "user", kMay),
  row<InRow<Feel, &FeelTest::place>>("notes.feel[].place", U::none, kTextLength, "user", kMay),
  row<InRow<Feel, &FeelTest::ball>>("notes.feel[].ball", U::none, kNoRange, "user", kMay),
  row<InRow<Feel, &FeelTest::ribbon_mm>>("notes.feel[].ribbon_mm", U::millimetre, {0, 150, 5, 0}, "user", kMay),
  row<InRow<Feel, &FeelTest::grit>>("notes.feel[].grit", U::none, kNoRange, "user", kMay),
  row<InRow<PitLayers, &PitLayer::pit>>("notes.pit_layers[].pit", U::none, kTextLength, "user", kMay),
  row<InRow<PitLayers, &PitLayer::from_m>>("notes.pit_layers[].from_m", U::metre, {0, 10, 0.1, 2}, "user", kMay),
  row<InRow<PitLayers, &PitLayer::to_m>>("notes.pit_layers[].to_m", U::metre, {0, 10, 0.1, 2}, "user", kMay),
  row<InRow<PitLayers, &PitLayer::soil>>("notes.pit_layers[].soil", U::none, kNoRange, "user", kMay),
  row<InRow<PitLayers, &PitLayer::has_water>>("notes.pit_layers[].has_water", U::none, kNoRange, "user", kMay),
  row<InRow<SlopeRows, &SlopeSetting::run_m>>("notes.slope[].run_m", U::metre, {0, 100, 0.5, 2}, "user", kMay),
  row<InRow<SlopeRows, &SlopeSetting::drop_m>>("notes.slope[].drop_m", U::metre, {-10, 10, 0.01, 2}, "user", kMay),

  row<InRow<SourceMonths, &SourceMonth::flow_l_per_min>>("water.source.months[].flow_l_per_min", U::litre_per_minute, {0, 6000, 0.1, 2}, "user", kMay, hasWater),
  row<InRow<SourceMonths, &SourceMonth::hours_per_day>>("water.source.months[].hours_per_day", U::hour, {0, 24, 1, 1}, "user", kMay, hasWater),
  row<InRow<Readings, &FlowReading::month>>("water.source.readings[].month", U::none, {1, 12, 1, 0}, "user", kMay, hasWater),
  row<InRow<Readings, &FlowReading::vessel_l>>("water.source.readings[].vessel_l", U::litre, {0.1, 2000, 1, 1}, "user", kMay, hasWater),
  row<InRow<Readings, &FlowReading::seconds>>("water.source.readings[].seconds", U::second, {0.1, 86400, 1, 1}, "user", kMay, hasWater),
  row<InWater<&Wt::roof, &K::area_m2>>("water.roof.area_m2", U::square_metre, {0, 5000, 1, 0}, "user", kMay, hasWater),
  row<InWater<&Wt::roof, &K::runoff>>("water.roof.runoff", U::factor, {0, 1, 0.05, 2}, "roof_runoff", kMay, hasWater),
  row<InWater<&Wt::roof, &K::first_flush_mm>>("water.roof.first_flush_mm", U::millimetre, {0, 50, 0.5, 1}, "memory", kMay, hasWater),
  row<InWater<&Wt::ground, &K::area_m2>>("water.ground.area_m2", U::square_metre, {0, 100000, 10, 0}, "user", kMay, hasWater),
  row<InWater<&Wt::ground, &K::runoff>>("water.ground.runoff", U::factor, {0, 1, 0.05, 2}, "ground_runoff", kMay, hasWater),
  row<InWater<&Wt::ground, &K::first_flush_mm>>("water.ground.first_flush_mm", U::millimetre, {0, 50, 0.5, 1}, "own", kMay, hasWater),
  row<InWater<&Wt::losses, &Losses::open_water_kc>>("water.losses.open_water_kc", U::factor, {0.3, 1.5, 0.05, 2}, "fao56_table_12", kMay, hasWater),
  row<InWater<&Wt::losses, &Losses::cover_percent>>("water.losses.cover_percent", U::percent, {0, 100, 5, 0}, "shade_cloth", kMay, hasWater),
  row<InWater<&Wt::losses, &Losses::seepage_mm_day>>("water.losses.seepage_mm_day", U::mm_per_day, {0, 100, 0.5, 1}, "own", kMay, hasWater),
  row<InRow<Beds, &Bed::crop>>("water.beds[].crop", U::none, {0, 60, 0, 0}, "user", kMay, hasWater),
  row<InRow<Beds, &Bed::area_m2>>("water.beds[].area_m2", U::square_metre, {0, 20000, 5, 0}, "user", kMay, hasWater),
  row<InRow<Beds, &Bed::plant_month>>("water.beds[].plant_month", U::none, {1, 12, 1, 0}, "user", kMay, hasWater),
  row<InRow<Beds, &Bed::plant_day>>("water.beds[].plant_day", U::none, {1, 31, 1, 0}, "user", kMay, hasWater),
  row<InRow<Beds, &Bed::method>>("water.beds[].method", U::none, kNoRange, "user", kMay, hasWater),
  row<InRow<Beds, &Bed::efficiency_percent>>("water.beds[].efficiency_percent", U::percent, {10, 100, 5, 0}, "memory", kMay, hasWater),
  row<InRow<Herds, &Herd::kind>>("water.animals[].kind", U::none, kNoRange, "user", kMay, hasWater),
  row<InRow<Herds, &Herd::head>>("water.animals[].head", U::piece, {0, 5000, 1, 0}, "user", kMay, hasWater),
  row<InRow<Herds, &Herd::l_per_head_day>>("water.animals[].l_per_head_day", U::litre_per_day, {0.05, 200, 1, 1}, "livestock_needs", kMay, hasWater),
  row<InWater<&Wt::people>>("water.people", U::person, {0, 5000, 1, 0}, "user", kMay, hasWater),
  row<InWater<&Wt::l_per_person_day>>("water.l_per_person_day", U::litre_per_day, {0, 300, 1, 0}, "sphere_water", kMay, hasWater),
  row<InRow<OwnCrops, &O::name>>("water.crops[].name", U::none, {0, 60, 0, 0}, "user", kMust, hasWater),
  row<InRow<OwnCrops, &O::kc_ini>>("water.crops[].kc_ini", U::factor, {0, 1.5, 0.05, 2}, "fao56_table_12", kMay, hasWater),
  row<InRow<OwnCrops, &O::kc_mid>>("water.crops[].kc_mid", U::factor, {0, 1.5, 0.05, 2}, "fao56_table_12", kMay, hasWater),
  row<InRow<OwnCrops, &O::kc_end>>("water.crops[].kc_end", U::factor, {0, 1.5, 0.05, 2}, "fao56_table_12", kMay, hasWater),
  row<InRow<OwnCrops, &O::height_m>>("water.crops[].height_m", U::metre, {0.05, 15, 0.1, 2}, "fao56_table_12", kMay, hasWater),
  row<InRow<OwnCrops, &O::ini_days>>("water.crops[].ini_days", U::day, {1, 365, 5, 0}, "fao56_table_11", kMay, hasWater),
  row<InRow<OwnCrops, &O::dev_days>>("water.crops[].dev_days", U::day, {1, 365, 5, 0}, "fao56_table_11", kMay, hasWater),
  row<InRow<OwnCrops, &O::mid_days>>("water.crops[].mid_days", U::day, {1, 365, 5, 0}, "fao56_table_11", kMay, hasWater),
  row<InRow<OwnCrops, &O::late_days>>("water.crops[].late_days", U::day, {1, 365, 5, 0}, "fao56_table_11", kMay, hasWater),
  row<InRow<OwnCrops, &O::root_depth_m>>("water.crops[].root_depth_m", U::metre, {0.1, 3, 0.1, 2}, "fao56_table_22", kMay, hasWater),
  row<InRow<OwnCrops, &O::depletion>>("water.crops[].depletion", U::factor, {0.05, 0.9, 0.05, 2}, "fao56_table_22", kMay, hasWater),
  row<InWater<&Wt::soil_water_mm_per_m>>("water.soil_water_mm_per_m", U::mm_per_metre, {20, 300, 10, 0}, "fao56_table_19", kMay, hasWater),
  row<InWater<kClimate, &Cl::kind>>("water.climate.kind", U::none, kNoRange, "user", kMay, hasWater),
  row<InRow<ClimateMonths, &M::rain_mm>>("water.climate.months[].rain_mm", U::millimetre, {0, 3000, 5, 0}, "user", kMay, hasWater),
  row<InRow<ClimateMonths, &M::wet_days>>("water.climate.months[].wet_days", U::day, {0, 31, 1, 1}, "user", kMay, hasWater),
  row<InRow<ClimateMonths, &M::t_min_c>>("water.climate.months[].t_min_c", U::celsius, {-50, 50, 0.5, 1}, "user", kMay, hasWater),
  row<InRow<ClimateMonths, &M::t_max_c>>("water.climate.months[].t_max_c", U::celsius, {-50, 60, 0.5, 1}, "user", kMay, hasWater),
  row<InRow<ClimateMonths, &M::humidity_percent>>("water.climate.months[].humidity_percent", U::percent, {1, 100, 5, 0}, "user", kMay, hasWater),
  row<InRow<ClimateMonths, &M::wind_m_s>>("water.climate.months[].wind_m_s", U::metre_per_second, {0, 30, 0.5, 1}, "user", kMay, hasWater),
  row<InRow<ClimateMonths, &M::sun_hours>>("water.climate.months[].sun_hours", U::hour, {0, 24, 0.5, 1}, "user", kMay, hasWater),
  row<InWater<kClimate, &Cl::rain_cv_percent>>("water.climate.rain_cv_percent", U::percent, {0, 100, 1, 0}, "user", kMay, hasWater),
  row<InWater<kClimate, &Cl::years>>("water.climate.years", U::year, {5, 200, 5, 0}, "own", kMay, hasWater),
  row<InWater<kClimate, &Cl::seed>>("water.climate.seed", U::none, {1, 999999, 1, 0}, "own", kMay, hasWater),
  row<InWater<kClimate, &Cl::et0_method>>("water.climate.et0_method", U::none, kNoRange, "fao56", kMay, hasWater),
  row<InWater<kClimate, &Cl::radiation_factor>>("water.climate.radiation_factor", U::factor, {0.1, 0.25, 0.01, 2}, "fao56", kMay, hasWater),
  row<InWater<kClimate, &Cl::gaps>>("water.climate.gaps", U::none, kNoRange, "own", kMay, hasWater),
  row<InWater<&Wt::target_years_in_ten>>("water.target_years_in_ten", U::year, {1, 10, 0.5, 1}, "own", kMay, hasWater),

  row<InDelivery<&D::water_temperature_c>>("delivery.water_temperature_c", U::celsius, {1, 40, 1, 1}, "own", kMay, hasDelivery),
  row<InRow<SourceRoute, &Rp::distance_m>>("delivery.source.route[].distance_m", U::metre, {0, 5000, 1, 1}, "user", kMust, hasDelivery),
  row<InRow<SourceRoute, &Rp::over_rim_m>>("delivery.source.route[].over_rim_m", U::metre, {-300, 300, 0.5, 2}, "user", kMust, hasDelivery),
  row<InDelivery<kSource, &Sl::water_over_inlet_m>>("delivery.source.water_over_inlet_m", U::metre, {0, 10, 0.05, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kSource, &Sl::wanted_l_per_min>>("delivery.source.wanted_l_per_min", U::litre_per_minute, {0.1, 6000, 1, 1}, "user", kMay, hasDelivery),
  row<InDelivery<kSource, kSourcePipe, &Pp::grade>>("delivery.source.pipe.grade", U::none, kNoRange, "iso_4427", kMay, hasDelivery),
  row<InDelivery<kSource, kSourcePipe, &Pp::outside_mm>>("delivery.source.pipe.outside_mm", U::millimetre, {20, 110, 1, 0}, "iso_4427", kMay, hasDelivery),
  row<InDelivery<kSource, kSourcePipe, &Pp::class_bar>>("delivery.source.pipe.class_bar", U::bar, {5, 25, 0.5, 1}, "iso_4427", kMay, hasDelivery),
  row<InDelivery<kSource, kSourcePipe, &Pp::bore_mm>>("delivery.source.pipe.bore_mm", U::millimetre, {8, 300, 1, 1}, "user", kMay, hasDelivery),
  row<InDelivery<kSource, kSourcePipe, &Pp::elbows>>("delivery.source.pipe.elbows", U::piece, {0, 200, 1, 0}, "user", kMay, hasDelivery),
  row<InDelivery<kSource, kSourcePipe, &Pp::valves>>("delivery.source.pipe.valves", U::piece, {0, 50, 1, 0}, "user", kMay, hasDelivery),
  row<InRow<FieldRoute, &Rp::distance_m>>("delivery.field.route[].distance_m", U::metre, {0, 5000, 1, 1}, "user", kMust, hasDelivery),
  row<InRow<FieldRoute, &Rp::over_rim_m>>("delivery.field.route[].over_rim_m", U::metre, {-300, 300, 0.5, 2}, "user", kMust, hasDelivery),
  row<InDelivery<kField, &Fl::over_rim>>("delivery.field.over_rim", U::none, kNoRange, "own", kMay, hasDelivery),
  row<InDelivery<kField, &Fl::crest_over_rim_m>>("delivery.field.crest_over_rim_m", U::metre, {0, 3, 0.05, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kField, &Fl::outlet>>("delivery.field.outlet", U::none, kNoRange, "user", kMay, hasDelivery),
  row<InDelivery<kField, &Fl::outlets>>("delivery.field.outlets", U::piece, {1, 500, 1, 0}, "user", kMay, hasDelivery),
  row<InDelivery<kField, kFieldPipe, &Pp::grade>>("delivery.field.pipe.grade", U::none, kNoRange, "iso_4427", kMay, hasDelivery),
  row<InDelivery<kField, kFieldPipe, &Pp::outside_mm>>("delivery.field.pipe.outside_mm", U::millimetre, {20, 110, 1, 0}, "iso_4427", kMay, hasDelivery),
  row<InDelivery<kField, kFieldPipe, &Pp::class_bar>>("delivery.field.pipe.class_bar", U::bar, {5, 25, 0.5, 1}, "iso_4427", kMay, hasDelivery),
  row<InDelivery<kField, kFieldPipe, &Pp::bore_mm>>("delivery.field.pipe.bore_mm", U::millimetre, {8, 300, 1, 1}, "user", kMay, hasDelivery),
  row<InDelivery<kField, kFieldPipe, &Pp::elbows>>("delivery.field.pipe.elbows", U::piece, {0, 200, 1, 0}, "user", kMay, hasDelivery),
  row<InDelivery<kField, kFieldPipe, &Pp::valves>>("delivery.field.pipe.valves", U::piece, {0, 50, 1, 0}, "user", kMay, hasDelivery),
  row<InDelivery<kOverflow, &Ov::kind>>("delivery.overflow.kind", U::none, kNoRange, "user", kMay, hasDelivery),
  row<InDelivery<kOverflow, &Ov::width_m>>("delivery.overflow.width_m", U::metre, {0.05, 5, 0.05, 2}, "user", kMay, hasNotch),
  row<InDelivery<kOverflow, &Ov::pipe_mm>>("delivery.overflow.pipe_mm", U::millimetre, {20, 500, 5, 0}, "user", kMay, hasOverflowPipe),
  row<InDelivery<kOverflow, &Ov::pipe_length_m>>("delivery.overflow.pipe_length_m", U::metre, {0.2, 50, 0.5, 1}, "user", kMay, hasOverflowPipe),
  row<InDelivery<kOverflow, &Ov::pipe_fall_m>>("delivery.overflow.pipe_fall_m", U::metre, {0.005, 20, 0.05, 2}, "user", kMay, hasOverflowPipe),
  row<InDelivery<kOverflow, &Ov::storm_mm_h>>("delivery.overflow.storm_mm_h", U::mm_per_hour, {1, 500, 5, 0}, "user", kMay, hasDelivery),
  row<InDelivery<kOverflow, &Ov::lip_length_m>>("delivery.overflow.lip_length_m", U::metre, {0, 20, 0.1, 2}, "own", kMay, hasDelivery),
  row<InDelivery<kOverflow, &Ov::lip_drop_m>>("delivery.overflow.lip_drop_m", U::metre, {0, 0.3, 0.01, 2}, "own", kMay, hasDelivery),
  row<InDelivery<kSpill, &Sp::bottom_width_m>>("delivery.spill.bottom_width_m", U::metre, {0.05, 5, 0.05, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kSpill, &Sp::depth_m>>("delivery.spill.depth_m", U::metre, {0.02, 2, 0.05, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kSpill, &Sp::side_slope>>("delivery.spill.side_slope", U::batter, {0, 5, 0.1, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kSpill, &Sp::fall_percent>>("delivery.spill.fall_percent", U::percent, {0.1, 100, 0.5, 1}, "user", kMay, hasDelivery),
  row<InDelivery<kSpill, &Sp::cover>>("delivery.spill.cover", U::none, kNoRange, "user", kMay, hasDelivery),
  row<InDelivery<kTrap, &St::grain_mm>>("delivery.silt_trap.grain_mm", U::millimetre, {0.02, 2, 0.02, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kTrap, &St::flow_l_per_min>>("delivery.silt_trap.flow_l_per_min", U::litre_per_minute, {0.1, 6000, 1, 1}, "user", kMay, hasDelivery),
  row<InDelivery<kTrap, &St::silt_kg_m3>>("delivery.silt_trap.silt_kg_m3", U::kg_per_m3, {0, 20, 0.1, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kTrap, &St::cleaning_days>>("delivery.silt_trap.cleaning_days", U::day, {0.1, 365, 1, 0}, "user", kMay, hasDelivery),
  row<InDelivery<kTrap, &St::length_m>>("delivery.silt_trap.length_m", U::metre, {0.1, 20, 0.1, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kTrap, &St::width_m>>("delivery.silt_trap.width_m", U::metre, {0.1, 10, 0.1, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kTrap, &St::depth_m>>("delivery.silt_trap.depth_m", U::metre, {0.05, 3, 0.05, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kLeak, &Lt::level_m>>("delivery.leak_test.level_m", U::metre, {0.05, 4, 0.05, 2}, "user", kMay, hasDelivery),
  row<InDelivery<kLeak, &Lt::tank_drop_mm>>("delivery.leak_test.tank_drop_mm", U::millimetre, {-200, 2000, 1, 1}, "user", kMay, hasDelivery),
  row<InDelivery<kLeak, &Lt::bucket_drop_mm>>("delivery.leak_test.bucket_drop_mm", U::millimetre, {-200, 500, 1, 1}, "user", kMay, hasDelivery),
  row<InDelivery<kLeak, &Lt::hours>>("delivery.leak_test.hours", U::hour, {1, 720, 1, 0}, "user", kMay, hasDelivery),
  row<InDelivery<kLeak, &Lt::reading_error_mm>>("delivery.leak_test.reading_error_mm", U::millimetre, {0, 20, 0.5, 1}, "own", kMay, hasDelivery),

  row<InRow<Items, &PriceItem::item>>("prices.items[].item", U::none, {0, 60, 0, 0}, "user", kMay, hasPrices),
  row<InRow<Items, &PriceItem::price>>("prices.items[].price", U::money, {0, 1e8, 1, 2}, "user", kMay, hasPrices),
  row<InRow<Items, &PriceItem::quantity>>("prices.items[].quantity", U::none, {0, 1e7, 1, 2}, "user", kMay, hasPrices),
  row<InRow<Items, &PriceItem::own_percent>>("prices.items[].own_percent", U::percent, {0, 100, 5, 0}, "user", kMay, hasPrices),
  row<InRow<Items, &PriceItem::carried_by>>("prices.items[].carried_by", U::none, kNoRange, "user", kMay, hasPrices),
  row<InRow<Items, &PriceItem::kg_each>>("prices.items[].kg_each", U::kilogram, {0, 10000, 1, 1}, "user", kMay, hasPrices),
  row<InPrices<&Pr::porter, &Ct::load_kg>>("prices.porter.load_kg", U::kilogram, {1, 20000, 5, 0}, "head_load_study", kMay, hasPrices),
  row<InPrices<&Pr::porter, &Ct::trips_per_day>>("prices.porter.trips_per_day", U::piece, {0.1, 50, 1, 1}, "own", kMay, hasPrices),
  row<InPrices<&Pr::porter, &Ct::price_per_trip>>("prices.porter.price_per_trip", U::money, {0, 1e7, 10, 2}, "user", kMay, hasPrices),
  row<InPrices<&Pr::mule, &Ct::load_kg>>("prices.mule.load_kg", U::kilogram, {1, 20000, 5, 0}, "pack_animal", kMay, hasPrices),
  row<InPrices<&Pr::mule, &Ct::trips_per_day>>("prices.mule.trips_per_day", U::piece, {0.1, 50, 1, 1}, "own", kMay, hasPrices),
  row<InPrices<&Pr::mule, &Ct::price_per_trip>>("prices.mule.price_per_trip", U::money, {0, 1e7, 10, 2}, "user", kMay, hasPrices),
  row<InPrices<&Pr::trolley, &Ct::load_kg>>("prices.trolley.load_kg", U::kilogram, {1, 20000, 5, 0}, "own", kMay, hasPrices),
  row<InPrices<&Pr::trolley, &Ct::trips_per_day>>("prices.trolley.trips_per_day", U::piece, {0.1, 50, 1, 1}, "own", kMay, hasPrices),
  row<InPrices<&Pr::trolley, &Ct::price_per_trip>>("prices.trolley.price_per_trip", U::money, {0, 1e7, 10, 2}, "user", kMay, hasPrices),
  row<InPrices<&Pr::contingency_percent>>("prices.contingency_percent", U::percent, {0, 100, 1, 0}, "own", kMay, hasPrices),
  row<InPrices<&Pr::discount_percent>>("prices.discount_percent", U::percent, {0, 50, 1, 1}, "discount_rate", kMay, hasPrices),
  row<InRow<Linings, &LiningOffer::lining>>("prices.linings[].lining", U::none, kNoRange, "user", kMay, hasPrices),
  row<InRow<Linings, &LiningOffer::price>>("prices.linings[].price", U::money, {0, 1e9, 10, 2}, "user", kMay, hasPrices),
  row<InRow<Linings, &LiningOffer::per>>("prices.linings[].per", U::none, kNoRange, "user", kMay, hasPrices),
  row<InRow<Linings, &LiningOffer::life_years>>("prices.linings[].life_years", U::year, {0.5, 100, 1, 1}, "own", kMay, hasPrices),
  row<InRow<Linings, &LiningOffer::upkeep_percent>>("prices.linings[].upkeep_percent", U::percent, {0, 100, 0.5, 1}, "own", kMay, hasPrices),

  row<InRow<Spreads, &InputRange::input>>("ranges.inputs[].input", U::none, kNoRange, "user", kMust),
  row<InRow<Spreads, &InputRange::low_percent>>("ranges.inputs[].low_percent", U::percent, {-90, 0, 5, 0}, "own", kMay),
  row<InRow<Spreads, &InputRange::high_percent>>("ranges.inputs[].high_percent", U::percent, {0, 400, 5, 0}, "own", kMay),
  row<At<&P::ranges, &Ranges::draws>>("ranges.draws", U::piece, {1000, 1000000, 1000, 0}, "own", kMay),
  row<At<&P::ranges, &Ranges::seed>>("ranges.seed", U::none, {1, 999999, 1, 0}, "own", kMay),

  row<At<kSearch, &Se::least_length_m>>("search.least_length_m", U::metre, {0.5, 60, 0.1, 2}, "user", kMay),
  row<At<kSearch, &Se::most_length_m>>("search.most_length_m", U::metre, {0.5, 60, 0.1, 2}, "user", kMay),
  row<At<kSearch, &Se::least_width_m>>("search.least_width_m", U::metre, {0.5, 60, 0.1, 2}, "user", kMay, isRectangle),
  row<At<kSearch, &Se::most_width_m>>("search.most_width_m", U::metre, {0.5, 60, 0.1, 2}, "user", kMay, isRectangle),
  row<At<kSearch, &Se::least_depth_m>>("search.least_depth_m", U::metre, {0.3, 4, 0.1, 2}, "user", kMay),
  row<At<kSearch, &Se::most_depth_m>>("search.most_depth_m", U::metre, {0.3, 4, 0.1, 2}, "user", kMay),
  row<At<kSearch, &Se::step_m>>("search.step_m", U::metre, {0.05, 1, 0.05, 2}, "own", kMay),
  row<At<kSearch, &Se::most_cost>>("search.most_cost", U::money, {0, 1e9, 1000, 0}, "user", kMay),
  row<At<kSearch, &Se::most_bags>>("search.most_bags", U::piece, {0, 100000, 1, 0}, "user", kMay),
  row<At<kSearch, &Se::most_people>>("search.most_people", U::person, {1, 200, 1, 0}, "user", kMay),
});
// clang-format on

template <class Rows>
std::size_t sizeOf(const Project& project) {
  const auto* rows = Rows::find(project, 0);
  return rows ? rows->size() : 0;
}

template <class Rows>
void resizeTo(Project& project, std::size_t rows) {
  Rows::make(project, 0).resize(rows);
}

/// A blank coat after the first cures longer than a blank first one.
void resizeCoats(Project& project, std::size_t rows) {
  constexpr int kLaterCoatCures_days = 4;
  std::vector<Coat>& coats = project.lining.coats;
  const std::size_t before = coats.size();
  coats.resize(rows);
  for (std::size_t k = std::max<std::size_t>(before, 1); k < rows; ++k)
    coats[k].cure_days = kLaterCoatCures_days;
}

template <class Rows>
constexpr List waterList(string_view id, std::size_t least, std::size_t most) {
  return {id, least, most, false, sizeOf<Rows>, resizeTo<Rows>, hasWater};
}

template <class Rows>
constexpr List list(string_view id, std::size_t most, bool (*applies)(const Project&)) {
  return {id, 0, most, false, sizeOf<Rows>, resizeTo<Rows>, applies};
}

template <class Rows>
constexpr List notesList(string_view id) {
  return {id, 0, kMostNotes, false, sizeOf<Rows>, resizeTo<Rows>, always, true};
}

constexpr std::array kLists{
    List{"lining.coats", 1, kMostCoats, true, sizeOf<Coats>, resizeCoats, always},
    list<Closed>("works.closed", kMostClosedDays, hasWorks),
    list<Wishes>("works.wishes", kMostWishes, hasWorks),
    list<OwnRates>("works.rates", kMostOwnRates, hasWorks),
    list<Batches>("records.batches", kMostRecords, always),
    list<WorkDone>("records.work", kMostRecords, always),
    notesList<Jars>("notes.jars"),
    notesList<Feel>("notes.feel"),
    notesList<PitLayers>("notes.pit_layers"),
    notesList<SlopeRows>("notes.slope"),
    list<Items>("prices.items", kMostPriceItems, hasPrices),
    list<Linings>("prices.linings", kMostLinings, hasPrices),
    list<Spreads>("ranges.inputs", kMostRanges, always),
    waterList<SourceMonths>("water.source.months", kMonths, kMonths),
    waterList<Readings>("water.source.readings", 0, kMostReadings),
    waterList<Beds>("water.beds", 0, kMostBeds),
    waterList<Herds>("water.animals", 0, kMostHerds),
    waterList<OwnCrops>("water.crops", 0, kMostOwnCrops),
    waterList<ClimateMonths>("water.climate.months", kMonths, kMonths),
    list<SourceRoute>("delivery.source.route", kMostRoutePoints, hasDelivery),
    list<FieldRoute>("delivery.field.route", kMostRoutePoints, hasDelivery),
};

}  // namespace

std::span<const List> lists() {
  return kLists;
}

const List* listOf(const Field& field) {
  const std::size_t mark = field.id.find(kRowMark);
  if (mark == string_view::npos) return nullptr;
  for (const List& list : kLists) {
    if (list.id == field.id.substr(0, mark)) return &list;
  }
  throw std::logic_error("no list for field " + std::string(field.id));
}

std::span<const Field> fields() {
  return kFields;
}

const Field& field(string_view id) {
  for (const Field& f : kFields) {
    if (f.id == id) return f;
  }
  throw std::logic_error("no field with id " + std::string(id));
}

std::optional<FieldPlace> placeOfPath(string_view path) {
  const std::size_t open = path.find('[');
  const std::size_t close = path.find(']');
  std::size_t row = 0;
  std::string id(path);
  if (open != string_view::npos) {
    if (close == string_view::npos || close <= open + 1) return std::nullopt;
    const char* end = path.data() + close;
    const auto read = std::from_chars(path.data() + open + 1, end, row);
    if (read.ec != std::errc{} || read.ptr != end) return std::nullopt;
    id = std::string(path.substr(0, open)).append(kRowMark).append(path.substr(close + 1));
  }
  for (const Field& f : kFields) {
    if (f.id == id) return FieldPlace{&f, row};
  }
  return std::nullopt;
}

std::string pathOf(const Field& field, std::size_t row) {
  const std::size_t mark = field.id.find(kRowMark);
  if (mark == string_view::npos) return std::string(field.id);
  return fmt::format("{}[{}]{}", field.id.substr(0, mark), row, field.id.substr(mark + kRowMark.size()));
}

std::size_t rowCount(const Field& field, const Project& project) {
  const List* list = listOf(field);
  return list ? list->size(project) : 1;
}

}  // namespace core
