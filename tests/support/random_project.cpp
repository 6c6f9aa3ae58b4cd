#include "tests/support/random_project.h"

#include "core/plan.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <numbers>
#include <stdexcept>
#include <string_view>

namespace support {
namespace {

using core::Project;
using Points = std::vector<Eigen::Vector2d>;

constexpr std::array<std::string_view, 6> kTexts = {"",
                                                    "Upper terrace",
                                                    "Quote \" backslash \\ slash /",
                                                    "line\nbreak\ttab",
                                                    "\u0915\u094d\u0937\u0947\u0924\u094d\u0930 \u0967",
                                                    "\u6c34\u69fd \U0001F4A7 \u00e9"};

std::string text(Random& random) {
  return std::string(kTexts[static_cast<std::size_t>(random.whole(0, static_cast<int>(kTexts.size()) - 1))]);
}

/// A value with all its digits, or rounded to centimetres as people enter it.
double length(Random& random, double least, double most) {
  const double value = random.between(least, most);
  return random.chance(0.5) ? value : std::clamp(std::round(value * 100) / 100, least, most);
}

std::optional<double> maybe(Random& random, double least, double most) {
  if (random.chance(0.3)) return std::nullopt;
  return random.between(least, most);
}

std::optional<bool> maybeFlag(Random& random) {
  if (random.chance(0.3)) return std::nullopt;
  return random.chance(0.5);
}

double zeroOr(Random& random, double least, double most) {
  return random.chance(0.5) ? 0 : random.between(least, most);
}

double turn(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& c) {
  const Eigen::Vector2d u = b - a;
  const Eigen::Vector2d v = c - b;
  return u.x() * v.y() - u.y() * v.x();
}

/// Convex hull by the monotone chain, anticlockwise.
Points hull(Points points) {
  std::sort(points.begin(), points.end(),
            [](const auto& a, const auto& b) { return a.x() != b.x() ? a.x() < b.x() : a.y() < b.y(); });
  Points chain;
  const auto addAll = [&chain](auto first, auto last) {
    const std::size_t base = chain.size();
    for (; first != last; ++first) {
      while (chain.size() >= base + 2 && turn(chain[chain.size() - 2], chain.back(), *first) <= 0)
        chain.pop_back();
      chain.push_back(*first);
    }
    chain.pop_back();
  };
  addAll(points.begin(), points.end());
  addAll(points.rbegin(), points.rend());
  return chain;
}

/// True when no edge is short and no corner is nearly straight or very sharp.
bool isBuildable(const Points& corners, double size_m) {
  const std::size_t n = corners.size();
  for (std::size_t k = 0; k < n; ++k) {
    const Eigen::Vector2d in = corners[(k + 1) % n] - corners[k];
    const Eigen::Vector2d out = corners[(k + 2) % n] - corners[(k + 1) % n];
    if (in.norm() < 0.1 * size_m || in.norm() * out.norm() <= 0) return false;
    const double sine = (in.x() * out.y() - in.y() * out.x()) / (in.norm() * out.norm());
    if (sine < 0.05 || (in.dot(out) < 0 && sine < 0.5)) return false;
  }
  return n >= 3 && n <= 12;
}

core::Ground randomGround(Random& random) {
  core::Ground ground;
  ground.kind = static_cast<core::GroundKind>(random.whole(0, 2));
  if (ground.kind == core::GroundKind::slope) {
    ground.fall_percent = random.between(0, 60);
    ground.downhill_azimuth_deg = random.between(0, 360);
  }
  if (ground.kind == core::GroundKind::spot_heights) {
    for (int k = random.whole(3, 12); k > 0; --k) {
      ground.points_m.emplace_back(random.between(-20, 20), random.between(-20, 20),
                                   random.between(1000, 1005));
    }
  }
  return ground;
}

core::Platform randomPlatform(Random& random) {
  core::Platform platform;
  platform.level_by = static_cast<core::PlatformLevel>(random.whole(0, 2));
  platform.level_m = random.between(-1, 1);
  platform.walkway_m = zeroOr(random, 0.3, 1.2);
  platform.cut_batter = random.between(0.3, 2);
  platform.fill_batter = random.between(1, 2.5);
  platform.topsoil_m = zeroOr(random, 0.05, 0.3);
  platform.compacted_per_bank = random.between(0.8, 1);
  return platform;
}

core::Site randomSite(Random& random) {
  core::Site site;
  site.latitude_deg = maybe(random, -60, 60);
  site.elevation_m = maybe(random, 0, 4000);
  site.ground = randomGround(random);
  if (random.chance(0.8)) site.soil = static_cast<core::Soil>(random.whole(0, 5));
  site.clay_percent = maybe(random, 0, 60);
  site.water_table_depth_m = maybe(random, 0, 30);
  site.edge_distance_m = maybe(random, 0, 50);
  site.edge_height_m = maybe(random, 0, 20);
  site.rock_floor = maybeFlag(random);
  site.house_downhill_m = maybe(random, 0, 500);
  site.toddlers_within_20_m = maybeFlag(random);
  site.position = {random.between(-5, 5), random.between(-5, 5), random.between(-90, 90)};
  site.platform = randomPlatform(random);
  site.spoil_azimuth_deg = maybe(random, 0, 360);
  return site;
}

std::vector<core::RoutePoint> randomRoute(Random& random) {
  std::vector<core::RoutePoint> route;
  double distance_m = 0;
  for (int k = random.whole(0, 6); k > 0; --k) {
    route.push_back({distance_m, random.between(-30, 30)});
    distance_m += random.between(0.5, 40);
  }
  return route;
}

core::Pipe randomPipe(Random& random) {
  core::Pipe pipe;
  pipe.grade = static_cast<core::PipeGrade>(random.whole(0, 1));
  pipe.outside_mm = random.chance(0.5) ? 32 : 63;
  pipe.class_bar = random.chance(0.5) ? 10 : 12.5;
  if (random.chance(0.3)) {
    pipe.bore_mm = random.between(15, 80);
    pipe.class_bar = random.between(5, 20);
  } else if (pipe.outside_mm == 32 && pipe.grade == core::PipeGrade::pe100) {
    pipe.class_bar = 12.5;
  }
  pipe.elbows = random.whole(0, 8);
  pipe.valves = random.whole(0, 3);
  return pipe;
}

std::optional<core::Delivery> randomDelivery(Random& random) {
  if (random.chance(0.4)) return std::nullopt;
  core::Delivery d;
  d.water_temperature_c = random.between(4, 30);
  d.source = {randomRoute(random), random.between(0, 1), maybe(random, 1, 60), randomPipe(random)};
  d.field = {randomRoute(random),    random.chance(0.6),
             random.between(0, 0.5), static_cast<core::OutletKind>(random.whole(0, 6)),
             random.whole(1, 20),    randomPipe(random)};
  d.overflow.kind = static_cast<core::OverflowKind>(random.whole(0, 1));
  d.overflow.width_m = random.between(0.1, 1);
  d.overflow.pipe_mm = random.between(40, 200);
  d.overflow.storm_mm_h = maybe(random, 20, 200);
  d.overflow.lip_length_m = zeroOr(random, 0.3, 2);
  d.overflow.lip_drop_m = zeroOr(random, 0.01, 0.1);
  d.spill.cover = static_cast<core::SpillCover>(random.whole(0, 3));
  d.spill.fall_percent = random.between(0.5, 20);
  d.silt_trap.grain_mm = random.between(0.05, 0.5);
  d.silt_trap.flow_l_per_min = maybe(random, 1, 200);
  d.silt_trap.length_m = maybe(random, 0.5, 3);
  d.silt_trap.width_m = maybe(random, 0.3, 1);
  d.silt_trap.depth_m = maybe(random, 0.2, 1);
  d.leak_test.level_m = maybe(random, 0.1, 2);
  d.leak_test.tank_drop_mm = maybe(random, 0, 30);
  d.leak_test.bucket_drop_mm = maybe(random, 0, 8);
  return d;
}

core::Tank randomTank(Random& random, core::Shape shape) {
  core::Tank tank;
  tank.shape = shape;
  tank.measured_at = random.chance(0.5) ? core::MeasuredAt::floor : core::MeasuredAt::rim;
  const double size_m = random.between(3, 14);
  if (shape == core::Shape::rectangle) {
    tank.length_m = length(random, size_m, 16);
    tank.width_m = length(random, 2, size_m);
  } else if (shape == core::Shape::round) {
    tank.diameter_m = length(random, 2, size_m);
  } else {
    tank.outline_m = randomOutline(random, size_m);
  }
  tank.depth_m = length(random, 0.8, 2.5);
  tank.batter = zeroOr(random, 0.02, 0.6);
  if (shape != core::Shape::round) tank.corner_radius_m = zeroOr(random, 0.05, 0.6);
  tank.freeboard_m = length(random, 0, 0.3);
  tank.dead_depth_m = length(random, 0, 0.2);
  return tank;
}

core::CustomaryBill randomBill(Random& random) {
  core::CustomaryBill bill;
  if (random.chance(0.4)) return bill;
  bill.soil_m3 = maybe(random, 0.5, 6);
  bill.sand_m3 = maybe(random, 0.5, 6);
  bill.stone_m3 = maybe(random, 0.5, 6);
  bill.cement_kg = maybe(random, 100, 2000);
  return bill;
}

std::vector<core::Coat> randomCoats(Random& random) {
  std::vector<core::Coat> coats(static_cast<std::size_t>(random.whole(1, 6)));
  for (core::Coat& coat : coats) {
    coat.thickness_m = length(random, 0.01, 0.07);
    coat.soil = zeroOr(random, 0.5, 6);
    coat.sand = random.between(0.5, 6);
    coat.cement = random.chance(0.5) ? 1 : random.between(0.5, 2);
    coat.cure_days = random.whole(0, 14);
  }
  return coats;
}

core::Lining randomLining(Random& random) {
  core::Lining lining;
  lining.stone_bed_m = zeroOr(random, 0.03, 0.15);
  lining.dry_to_wet = random.between(1.1, 1.5);
  lining.waste_percent = random.between(0, 15);
  lining.unevenness_percent = random.between(0, 30);
  lining.cement_bag_kg = random.chance(0.7) ? 50 : random.between(20, 60);
  lining.cement_loose_kg_m3 = random.between(1200, 1600);
  lining.coats = randomCoats(random);
  lining.cove_radius_m = zeroOr(random, 0.03, 0.2);
  lining.rim_width_m = zeroOr(random, 0.1, 0.5);
  lining.rim_thickness_m = lining.rim_width_m > 0 ? random.between(0.03, 0.1) : 0;
  lining.sieving_loss_percent = random.between(0, 20);
  lining.sand_bulking_percent = random.between(0, 30);
  lining.stone_loose_factor = random.between(1, 1.4);
  lining.gauge_box_l = random.between(20, 50);
  lining.customary = randomBill(random);
  return lining;
}

std::optional<core::Works> randomWorks(Random& random) {
  if (random.chance(0.15)) return std::nullopt;
  core::Works works;
  works.start_date =
      std::chrono::sys_days(std::chrono::year{2025} / 1 / 1) + std::chrono::days(random.whole(0, 3000));
  works.diggers = random.whole(1, 12);
  works.plasterers = random.whole(2, 40);
  works.rest_day = static_cast<core::RestDay>(random.whole(0, 7));
  works.fill_within_days = random.whole(1, 10);
  works.digging_person_day_per_m3 = maybe(random, 0.3, 2);
  works.bed_person_day_per_m3 = random.between(2, 6);
  works.plaster_person_day_per_m2 = random.between(0.1, 0.6);
  works.masons = random.whole(0, 6);
  works.hours_per_day = random.between(6, 10);
  works.coat_hours = random.between(6, 12);
  works.mixing_places = random.whole(1, 4);
  works.minutes_per_batch = random.between(8, 40);
  works.placing_minutes = random.between(20, 120);
  works.wetting_people = random.whole(0, 3);
  works.wettings_per_day = random.whole(1, 5);
  works.spoil_lead_m = random.between(0, 50);
  works.deep_digging_factor = random.between(1, 2);
  works.fill_inflow_l_per_day = maybe(random, 0, 20000);
  works.fill_most_rise_m_per_day = random.between(0.1, 1);
  works.wall_band_m = random.between(0.1, 0.5);
  works.heavy_rain_mm = random.between(2, 30);
  for (int k = random.whole(0, 2); k > 0; --k)
    works.closed.push_back({works.start_date, random.whole(1, 9), text(random)});
  for (const char* task : {"coat_1", "excavate", "fence"}) {
    if (!random.chance(0.2)) continue;
    works.wishes.push_back({task, {}, {}});
    if (random.chance(0.5)) works.wishes.back().not_before = works.start_date;
    if (random.chance(0.5)) works.wishes.back().people = random.whole(1, 30);
  }
  if (random.chance(0.3)) {
    const double low = random.between(0.1, 0.5);
    works.rates.push_back({"ramming", low, low + 0.2, low + 0.5});
  }
  return works;
}

core::Records randomRecords(Random& random) {
  core::Records records;
  records.in_force = random.chance(0.5);
  for (int k = random.whole(0, 2); k > 0; --k)
    records.batches.push_back({random.whole(1, 3), random.between(0.5, 3), random.between(2, 6), 0.05});
  for (int k = random.whole(0, 3); k > 0; --k)
    records.work.push_back(
        {static_cast<core::RecordedWork>(random.whole(0, 4)), random.between(5, 30), random.between(3, 20)});
  return records;
}

core::FieldNotes randomNotes(Random& random) {
  core::FieldNotes notes;
  for (int k = random.whole(0, 2); k > 0; --k)
    notes.jars.push_back(
        {text(random), zeroOr(random, 5, 120), random.between(5, 60), random.between(0, 40)});
  for (int k = random.whole(0, 2); k > 0; --k) {
    notes.feel.push_back({text(random), {}, zeroOr(random, 5, 90), {}});
    if (random.chance(0.8)) notes.feel.back().ball = static_cast<core::BallTest>(random.whole(0, 1));
    notes.feel.back().grit = static_cast<core::Grit>(random.whole(0, 2));
  }
  for (int k = random.whole(0, 3); k > 0; --k) {
    const double from_m = random.between(0, 2);
    notes.pit_layers.push_back(
        {text(random), from_m, from_m + random.between(0.1, 1), {}, random.chance(0.3)});
    if (random.chance(0.7)) notes.pit_layers.back().soil = static_cast<core::Soil>(random.whole(0, 5));
  }
  for (int k = random.whole(0, 3); k > 0; --k)
    notes.slope.push_back({random.between(1, 8), random.between(-0.5, 2)});
  return notes;
}

std::optional<core::Prices> randomPrices(Random& random) {
  if (random.chance(0.3)) return std::nullopt;
  core::Prices prices;
  for (core::PriceItem& item : prices.items) {
    item.price = maybe(random, 1, 2000);
    item.own_percent = zeroOr(random, 5, 100);
    item.carried_by = static_cast<core::Carrier>(random.whole(0, 3));
    item.kg_each = maybe(random, 1, 2000);
  }
  if (random.chance(0.3)) prices.items.push_back({text(random) + "x", 12.5, 3, 0, core::Carrier::none, {}});
  prices.porter = {random.between(15, 60), random.between(1, 8), maybe(random, 10, 500)};
  prices.mule.price_per_trip = maybe(random, 10, 500);
  prices.contingency_percent = random.between(0, 20);
  prices.discount_percent = zeroOr(random, 1, 15);
  for (core::LiningOffer& offer : prices.linings) offer.price = maybe(random, 5, 5000);
  if (random.chance(0.2)) prices.linings.clear();
  return prices;
}

core::Ranges randomRanges(Random& random) {
  core::Ranges ranges;
  if (random.chance(0.3)) ranges.inputs.resize(static_cast<std::size_t>(random.whole(0, 8)));
  for (core::InputRange& range : ranges.inputs) range.high_percent = random.between(0, 60);
  ranges.draws = random.whole(1000, 2000);
  ranges.seed = random.whole(1, 99999);
  return ranges;
}

core::SearchLimits randomLimits(Random& random) {
  core::SearchLimits limits;
  limits.least_length_m = random.between(1, 3);
  limits.most_length_m = random.between(4, 12);
  limits.most_cost = maybe(random, 1000, 90000);
  limits.most_bags = maybe(random, 5, 60);
  if (random.chance(0.4)) limits.most_people = random.whole(3, 30);
  return limits;
}

std::vector<core::Option> randomOptions(Random& random) {
  std::vector<core::Option> options(static_cast<std::size_t>(random.whole(0, 2)));
  for (core::Option& option : options) {
    option.name = text(random);
    option.changes = {{"tank.depth_m", random.between(0.8, 2)}};
    if (random.chance(0.5)) option.changes.push_back({"site.soil", std::string("sandy")});
    if (random.chance(0.5)) option.changes.push_back({"site.rock_floor", core::FieldValue{}});
    if (random.chance(0.5)) option.changes.push_back({"lining.coats[0].thickness_m", 0.05});
  }
  return options;
}

core::Catchment randomCatchment(Random& random) {
  return {zeroOr(random, 5, 200), random.between(0, 1), random.between(0, 8)};
}

core::Bed randomBed(Random& random, const std::vector<core::OwnCrop>& own) {
  constexpr std::array<std::string_view, 4> kCrops{"tomato", "cabbage", "onion_dry", "maize_grain"};
  core::Bed bed;
  bed.crop = !own.empty() && random.chance(0.4)
                 ? own[static_cast<std::size_t>(random.whole(0, static_cast<int>(own.size()) - 1))].name
                 : std::string(kCrops[static_cast<std::size_t>(random.whole(0, 3))]);
  bed.area_m2 = random.between(0, 400);
  bed.plant_month = random.whole(1, 12);
  bed.plant_day = random.whole(1, 28);
  bed.method = static_cast<core::IrrigationMethod>(random.whole(0, 4));
  bed.efficiency_percent = maybe(random, 40, 95);
  return bed;
}

core::ClimateMonth randomMonth(Random& random) {
  core::ClimateMonth month;
  month.wet_days = zeroOr(random, 1, 28);
  month.rain_mm = *month.wet_days * random.between(1, 30);
  month.t_min_c = random.between(-5, 20);
  month.t_max_c = *month.t_min_c + random.between(2, 18);
  month.humidity_percent = maybe(random, 20, 95);
  month.wind_m_s = maybe(random, 0.2, 6);
  month.sun_hours = maybe(random, 1, 10);
  return month;
}

/// A short record with gaps and things not measured.
core::DailyRecord randomRecord(Random& random) {
  std::vector<core::DailyWeather> days;
  std::chrono::sys_days date = std::chrono::year{2001} / 1 / random.whole(1, 28);
  for (int k = random.whole(0, 900); k > 0; --k) {
    date += std::chrono::days(random.chance(0.99) ? 1 : 5);
    core::DailyWeather day{};
    day.date = date;
    day.rain_mm = maybe(random, 0, 40);
    day.t_min_c = maybe(random, -5, 15);
    day.t_max_c = maybe(random, 16, 38);
    if (random.chance(0.2)) day.sun_hours = random.between(0, 12);
    days.push_back(day);
  }
  return core::DailyRecord(std::move(days));
}

core::Climate randomClimate(Random& random) {
  core::Climate climate;
  climate.kind = random.chance(0.7) ? core::ClimateKind::monthly : core::ClimateKind::daily;
  for (core::ClimateMonth& month : climate.months) month = randomMonth(random);
  if (random.chance(0.2)) climate.months[static_cast<std::size_t>(random.whole(0, 11))] = {};
  climate.rain_cv_percent = maybe(random, 5, 45);
  climate.years = random.whole(5, 20);
  climate.seed = random.whole(1, 1000);
  climate.et0_method = random.chance(0.5) ? core::Et0Method::penman_monteith : core::Et0Method::hargreaves;
  climate.radiation_factor = random.between(0.15, 0.2);
  climate.gaps = random.chance(0.5) ? core::GapRule::leave_out_year : core::GapRule::nearest_year;
  if (random.chance(0.4)) climate.daily = randomRecord(random);
  return climate;
}

std::vector<core::OwnCrop> randomCrops(Random& random) {
  std::vector<core::OwnCrop> crops(static_cast<std::size_t>(random.whole(0, 3)));
  for (std::size_t k = 0; k < crops.size(); ++k) {
    crops[k].name = "crop " + std::to_string(k) + text(random);
    crops[k].kc_mid = random.between(0.8, 1.2);
    crops[k].mid_days = random.whole(10, 90);
  }
  return crops;
}

std::optional<core::Water> randomWater(Random& random) {
  if (random.chance(0.3)) return std::nullopt;
  core::Water water;
  for (core::SourceMonth& month : water.source.months)
    month = {zeroOr(random, 0.1, 20), random.between(0, 24)};
  for (int k = random.whole(0, 5); k > 0; --k)
    water.source.readings.push_back({random.whole(1, 12), random.between(5, 20), random.between(2, 300)});
  water.roof = randomCatchment(random);
  water.ground = randomCatchment(random);
  water.losses = {random.between(0.6, 1.2), random.between(0, 90), random.between(0, 6)};
  water.crops = randomCrops(random);
  for (int k = random.whole(0, 4); k > 0; --k) water.beds.push_back(randomBed(random, water.crops));
  for (int k = random.whole(0, 3); k > 0; --k)
    water.animals.push_back(
        {static_cast<core::Animal>(random.whole(0, 7)), double(random.whole(0, 9)), maybe(random, 1, 50)});
  water.people = random.whole(0, 12);
  water.soil_water_mm_per_m = random.between(50, 200);
  water.climate = randomClimate(random);
  water.target_years_in_ten = random.whole(1, 10);
  return water;
}

/// Keys of a later version, in the order of their pointers.
std::vector<core::KeptKey> randomKept(Random& random) {
  std::vector<core::KeptKey> kept;
  if (random.chance(0.3)) kept.push_back({"/lining/coats/0/brand", "\"grey\""});
  if (random.chance(0.3)) kept.push_back({"/moon", "{\"z\":1,\"a\":[[1,2],[3,4.25]]}"});
  if (random.chance(0.3)) kept.push_back({"/notes/by", "\"field officer\""});
  if (random.chance(0.3)) kept.push_back({"/site/surveyed~1by", "[\"A. B.\",null,1.5,{\"x\":-3}]"});
  if (random.chance(0.3)) kept.push_back({"/tank/note", "{}"});
  return kept;
}

Project candidate(Random& random, core::Shape shape) {
  Project project;
  project.title = text(random);
  project.place = text(random);
  project.prepared_by = text(random);
  project.currency = random.chance(0.5) ? "" : "Rs";
  project.site = randomSite(random);
  project.tank = randomTank(random, shape);
  project.lining = randomLining(random);
  project.works = randomWorks(random);
  project.water = randomWater(random);
  project.delivery = randomDelivery(random);
  project.prices = randomPrices(random);
  project.records = randomRecords(random);
  project.notes = randomNotes(random);
  project.ranges = randomRanges(random);
  project.search = randomLimits(random);
  project.options = randomOptions(random);
  project.kept = randomKept(random);
  return project;
}

}  // namespace

double Random::between(double least, double most) {
  const double unit = static_cast<double>(engine_() >> 11) * 0x1p-53;
  return least + (most - least) * unit;
}

int Random::whole(int least, int most) {
  return least + static_cast<int>(between(0, 1) * (most - least + 1));
}

bool Random::chance(double probability) {
  return between(0, 1) < probability;
}

Points randomOutline(Random& random, double size_m) {
  for (int attempt = 0; attempt < 10000; ++attempt) {
    Points points;
    for (int k = random.whole(3, 14); k > 0; --k) {
      const double radius_m = size_m / 2 * std::sqrt(random.between(0.2, 1));
      const double angle = random.between(0, 2 * std::numbers::pi);
      points.emplace_back(radius_m * std::cos(angle), radius_m * std::sin(angle));
    }
    const Points corners = hull(points);
    if (isBuildable(corners, size_m)) return corners;
  }
  throw std::logic_error("no buildable outline found");
}

Project randomProject(std::uint64_t seed, core::Shape shape) {
  Random random(seed);
  for (int attempt = 0; attempt < 1000; ++attempt) {
    const Project project = candidate(random, shape);
    if (core::check(project).empty()) return project;
  }
  throw std::logic_error("no project found that can be planned");
}

Project randomProject(std::uint64_t seed) {
  return randomProject(seed, static_cast<core::Shape>(seed % 3));
}

}  // namespace support
