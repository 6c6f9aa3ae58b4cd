// The search of sizes against the plan made for each of them, one by one.
#include "core/compare/search.h"

#include "core/compare/frontier.h"
#include "core/compare/reliability.h"
#include "core/plan.h"
#include "core/site/stability.h"
#include "tests/support/random_days.h"
#include "tests/support/random_tank.h"
#include "tests/support/water_project.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <catch2/catch.hpp>

namespace {

using core::GroundKind;
using core::PlatformLevel;
using core::Project;
using core::Shape;
using namespace core::compare;

const std::atomic<bool> kGoOn = false;

SearchResult searched(const Project& p, unsigned threads = 2) {
  return searchSizes(p, core::plan(p).value(), threads, {}, kGoOn);
}

Project priced(Project p) {
  p.prices.emplace();
  double price = 40;
  for (core::PriceItem& item : p.prices->items) item.price = price += 30;
  p.prices->items.front().carried_by = core::Carrier::porter;
  p.prices->porter.price_per_trip = 12;
  return p;
}

/// A few coarse steps, so that the plan can be made for every size.
Project coarse(Project p) {
  p.search = {.least_length_m = 2,
              .most_length_m = 8,
              .least_width_m = 1.5,
              .most_width_m = 5.3,
              .least_depth_m = 0.5,
              .most_depth_m = 2.6,
              .step_m = 0.7,
              .most_cost = {},
              .most_bags = {},
              .most_people = {}};
  return p;
}

Project withWater() {
  Project p = support::waterProject();
  p.water->climate.years = 6;
  p.water->target_years_in_ten = 5;
  return coarse(priced(p));
}

Project withoutWater() {
  Project p;
  p.site.soil = core::Soil::firm_loam;
  return coarse(p);
}

Project onSlope(Project p, PlatformLevel level_by) {
  p.site.ground = {GroundKind::slope, 9, 200, {}};
  p.site.position.turn_deg = 25;
  p.site.platform.level_by = level_by;
  p.site.platform.level_m = -0.4;
  return p;
}

/// Narrow tanks along the contour, on a wide platform whose fill takes up much of the cut: with both in
/// balance others stand on fill.
Project balanced(Project p) {
  p = onSlope(std::move(p), PlatformLevel::balanced);
  p.site.ground.fall_percent = 4;
  p.site.ground.downhill_azimuth_deg = 180;
  p.site.position.turn_deg = 0;
  p.site.platform.walkway_m = 4;
  p.site.platform.compacted_per_bank = 0.6;
  p.tank.batter = 0.05;
  p.search.least_width_m = 0.5;
  return p;
}

/// Wavy ground with the same fall, so far to all sides.
Project surveyed(Project p, double reach_m) {
  const double fall = p.site.ground.fall_percent / 100;
  p.site.ground.kind = GroundKind::spot_heights;
  core::SpotHeights::List points;
  constexpr int kSteps = 4;
  for (int i = -kSteps; i <= kSteps; ++i) {
    for (int k = -kSteps; k <= kSteps; ++k) {
      const double x = reach_m * i / kSteps, y = reach_m * k / kSteps;
      points.emplace_back(x, y, 800 + fall * y + 0.02 * std::sin(0.5 * x) * std::cos(0.4 * y));
    }
  }
  p.site.ground.points_m = points;
  p.site.position.east_m = 0.6;
  p.site.position.north_m = 0.3;
  return p;
}

/// Every size of the limits, by plain counting.
std::vector<Candidate> allSizes(const Project& p) {
  const core::SearchLimits& s = p.search;
  const bool has_width = p.tank.shape == Shape::rectangle;
  const double most_width_m = has_width ? s.most_width_m : s.least_width_m;
  std::vector<Candidate> sizes;
  const auto nth = [&](double least, int k) { return std::round((least + k * s.step_m) * 1e6) / 1e6; };
  for (int i = 0; nth(s.least_length_m, i) <= s.most_length_m; ++i) {
    for (int j = 0; nth(s.least_width_m, j) <= most_width_m; ++j) {
      for (int k = 0; nth(s.least_depth_m, k) <= s.most_depth_m; ++k) {
        Candidate size;
        size.length_m = nth(s.least_length_m, i);
        size.width_m = has_width ? nth(s.least_width_m, j) : size.length_m;
        size.depth_m = nth(s.least_depth_m, k);
        sizes.push_back(size);
      }
    }
  }
  return sizes;
}

bool has(const core::Plan& plan, const char* code) {
  return std::any_of(plan.findings.begin(), plan.findings.end(),
                     [&](const core::Finding& f) { return f.code == code; });
}

/// Higher than just stands in the weakest soil of the class, by Culmann.
bool isCutTooHigh(const Project& p, const core::Plan& plan) {
  if (!p.site.soil) return false;
  const double face_deg = 90 - std::atan(p.tank.batter) * 180 / std::numbers::pi;
  const auto height = core::site::culmannHeight(core::site::soilStrength(*p.site.soil).low, face_deg, 1);
  return height && plan.earthwork.pit_depth_m > *height;
}

double bagsOf(const core::Plan& plan) {
  const auto& all = plan.quantities.materials;
  return std::find_if(all.begin(), all.end(), [](const auto& m) { return m.id == "cement_bags"; })->order;
}

int peopleOf(const core::Plan& plan) {
  int most = 0;
  if (!plan.works) return most;
  for (const core::works::CoatCheck& coat : plan.works->coat_checks) most = std::max(most, coat.needed);
  return most;
}

/// Counts what falls out, and puts the numbers of the plan into the size. False when it falls out.
bool isWithin(const Project& p, const core::Plan& before, Candidate& size, LeftOut& out) {
  const core::SearchLimits& s = p.search;
  const Project sized = withSize(p, size);
  const auto plan = core::plan(sized, &before);
  const auto falls = [](std::size_t& number) { return ++number == 0; };
  if (!plan) return falls(out.geometry);
  if (has(*plan, "pit_too_deep_by_hand")) return falls(out.pit_depth);
  if (isCutTooHigh(sized, *plan)) return falls(out.cut);
  if (has(*plan, "site_platform_impossible") || has(*plan, "site_tank_on_fill")) return falls(out.platform);
  size.full_volume_m3 = plan->tank.full_volume_m3;
  size.cement_bags = bagsOf(*plan);
  size.people_on_coat = peopleOf(*plan);
  if (plan->cost && plan->cost->bill.missing.empty()) size.cost = plan->cost->bill.total;
  if (plan->water) size.years_in_ten = plan->water->years_in_ten;
  if (s.most_people && size.people_on_coat > *s.most_people) return falls(out.people);
  if (s.most_bags && size.cement_bags > *s.most_bags) return falls(out.bags);
  if (s.most_cost && *size.cost > *s.most_cost) return falls(out.cost);
  return true;
}

/// The same answers from the plan of every size.
struct Brute {
  std::vector<Candidate> within;
  LeftOut left_out;
  std::vector<Candidate> frontier;
};

double priceOf(const Candidate& c) {
  return c.cost ? *c.cost : c.cement_bags;
}

double gainOf(const Candidate& c) {
  return c.years_in_ten ? *c.years_in_ten : c.full_volume_m3;
}

/// As good in price and gain, and better in one of the two; alike in both, the larger one.
bool beats(const Candidate& a, const Candidate& b) {
  if (priceOf(a) > priceOf(b) || gainOf(a) < gainOf(b)) return false;
  if (priceOf(a) < priceOf(b) || gainOf(a) > gainOf(b)) return true;
  return a.full_volume_m3 > b.full_volume_m3;
}

Brute brute(const Project& p) {
  Brute result;
  const core::Plan before = core::plan(p).value();
  for (Candidate size : allSizes(p)) {
    if (isWithin(p, before, size, result.left_out)) result.within.push_back(size);
  }
  for (const Candidate& one : result.within) {
    const bool is_beaten = std::any_of(result.within.begin(), result.within.end(),
                                       [&](const Candidate& other) { return beats(other, one); });
    if (!is_beaten) result.frontier.push_back(one);
  }
  std::sort(result.frontier.begin(), result.frontier.end(),
            [](const auto& a, const auto& b) { return priceOf(a) < priceOf(b); });
  return result;
}

void checkSame(const Candidate& found, const Candidate& wanted) {
  CAPTURE(wanted.length_m, wanted.width_m, wanted.depth_m);
  CHECK(found.length_m == wanted.length_m);
  CHECK(found.width_m == Approx(wanted.width_m).epsilon(1e-12));
  CHECK(found.depth_m == wanted.depth_m);
  CHECK(found.full_volume_m3 == Approx(wanted.full_volume_m3).epsilon(1e-12));
  CHECK(found.cement_bags == wanted.cement_bags);
  CHECK(found.people_on_coat == wanted.people_on_coat);
  REQUIRE(found.cost.has_value() == wanted.cost.has_value());
  if (wanted.cost) CHECK(*found.cost == Approx(*wanted.cost).epsilon(1e-12));
  CHECK(found.years_in_ten == wanted.years_in_ten);
}

void checkLeftOut(const LeftOut& found, const LeftOut& wanted) {
  CHECK(found.geometry == wanted.geometry);
  CHECK(found.pit_depth == wanted.pit_depth);
  CHECK(found.cut == wanted.cut);
  CHECK(found.platform == wanted.platform);
  CHECK(found.people == wanted.people);
  CHECK(found.bags == wanted.bags);
  CHECK(found.cost == wanted.cost);
}

/// Returns the brute force's answer, so that a test can say what it wants to see in it.
Brute checkAgainstPlans(const Project& p) {
  const Brute wanted = brute(p);
  const SearchResult found = searched(p);
  CHECK(found.tried == allSizes(p).size());
  CHECK(found.within == wanted.within.size());
  checkLeftOut(found.left_out, wanted.left_out);
  REQUIRE(found.frontier.size() == wanted.frontier.size());
  for (std::size_t k = 0; k < wanted.frontier.size(); ++k) checkSame(found.frontier[k], wanted.frontier[k]);
  REQUIRE(found.largest.has_value() == !wanted.within.empty());
  for (const Candidate& c : wanted.within) {
    CHECK(c.full_volume_m3 <= found.largest->full_volume_m3 * (1 + 1e-12));
    if (!found.cheapest) {
      CHECK((!c.years_in_ten || *c.years_in_ten < p.water->target_years_in_ten));
    } else if (*c.years_in_ten >= p.water->target_years_in_ten) {
      CHECK(*c.cost >= *found.cheapest->cost * (1 - 1e-12));
    }
  }
  if (found.cheapest) CHECK(*found.cheapest->years_in_ten >= p.water->target_years_in_ten);
  return wanted;
}

bool isSame(const SearchResult& a, const SearchResult& b) {
  return a.tried == b.tried && a.within == b.within && a.frontier == b.frontier && a.cheapest == b.cheapest &&
         a.largest == b.largest && a.left_out.platform == b.left_out.platform &&
         a.left_out.pit_depth == b.left_out.pit_depth;
}

}  // namespace

TEST_CASE("search on level ground says what the plan of each size says") {
  const Brute all = checkAgainstPlans(withWater());
  CHECK(all.frontier.size() > 4);
  CHECK(all.left_out.pit_depth > 0);
  CHECK(searched(withWater()).by_cost);
  CHECK(searched(withWater()).cheapest.has_value());
}

TEST_CASE("search on an even slope says what the plan of each size says") {
  const Brute natural = checkAgainstPlans(onSlope(withWater(), PlatformLevel::natural_ground));
  CHECK(natural.within.size() > 20);
  CHECK(natural.left_out.platform == 0);
  for (const Project& p : {onSlope(withWater(), PlatformLevel::given), balanced(withWater())}) {
    const Brute some = checkAgainstPlans(p);  // others would stand on fill
    CHECK(some.within.size() > 5);
    CHECK(some.left_out.platform > 5);
  }
}

TEST_CASE("search on a small survey says what the plan of each size says") {
  const Brute natural = checkAgainstPlans(surveyed(onSlope(withWater(), PlatformLevel::natural_ground), 6));
  CHECK(natural.within.size() > 20);
  CHECK(natural.left_out.platform > 5);  // they reach beyond the survey
  for (const Project& p :
       {surveyed(onSlope(withWater(), PlatformLevel::given), 6), surveyed(balanced(withWater()), 20)}) {
    const Brute some = checkAgainstPlans(p);
    CHECK(some.within.size() > 5);
    CHECK(some.left_out.platform > 5);
  }
}

TEST_CASE("search on ground steeper than the batter finds no place for any size") {
  Project p = onSlope(withWater(), PlatformLevel::natural_ground);
  p.site.ground.fall_percent = 90;  // the fill face falls by 67 %
  const Brute none = checkAgainstPlans(p);
  CHECK(none.within.empty());
  CHECK(none.left_out.platform > 50);
}

TEST_CASE("search without water and prices goes by bags of cement and full volume") {
  const Brute all = checkAgainstPlans(withoutWater());
  const SearchResult found = searched(withoutWater());
  CHECK(all.left_out.cut > 0);
  CHECK(all.left_out.pit_depth > 0);
  CHECK_FALSE(found.by_cost);
  CHECK_FALSE(found.cheapest.has_value());
  REQUIRE(found.frontier.size() > 3);
  for (std::size_t k = 1; k < found.frontier.size(); ++k) {
    CHECK(found.frontier[k].cement_bags > found.frontier[k - 1].cement_bags);
    CHECK(found.frontier[k].full_volume_m3 > found.frontier[k - 1].full_volume_m3);
  }
}

TEST_CASE("search tries round tanks by diameter and polygons scaled whole") {
  for (const Shape shape : {Shape::round, Shape::polygon}) {
    for (const auto& ground : {withWater(), onSlope(withWater(), PlatformLevel::given)}) {
      Project p = ground;
      p.tank.shape = shape;
      p.tank.outline_m = {{3, 2}, {8, 1}, {10, 4}, {7, 7}, {3.5, 6}};
      p.search.step_m = 0.4;
      const Brute all = brute(p);
      const SearchResult found = searched(p);
      CHECK(found.tried == allSizes(p).size());
      CHECK(found.within == all.within.size());
      CHECK(found.within > 10);
      REQUIRE(found.frontier.size() == all.frontier.size());
      for (std::size_t k = 0; k < all.frontier.size(); ++k) {
        CHECK(found.frontier[k].length_m == all.frontier[k].length_m);
        CHECK(found.frontier[k].years_in_ten == all.frontier[k].years_in_ten);
        CHECK(*found.frontier[k].cost == Approx(*all.frontier[k].cost).epsilon(1e-12));
      }
    }
  }
}

TEST_CASE("a polygon's width follows its length") {
  Project p = withoutWater();
  p.tank.shape = Shape::polygon;
  p.tank.outline_m = {{3, 2}, {8, 1}, {10, 4}, {7, 7}, {3.5, 6}};  // 7 m by 6 m
  p.tank.measured_at = core::MeasuredAt::floor;
  const Candidate found = searched(p).largest.value();
  CHECK(found.width_m == Approx(found.length_m * 6 / 7));
  const core::Plan plan = core::plan(withSize(p, found)).value();
  CHECK(plan.tank.clear_floor_length_m == Approx(found.length_m));
  CHECK(plan.tank.clear_floor_width_m == Approx(found.width_m));
}

TEST_CASE("search counts a size at the first limit it breaks") {
  Project p = withWater();
  p.tank.measured_at = core::MeasuredAt::rim;  // small deep tanks lose their floor
  p.tank.batter = 0.5;
  p.search.least_length_m = 1;
  p.search.least_width_m = 0.8;
  p.search.most_people = 14;
  p.search.most_bags = 26;
  p.search.most_cost = 5000;
  const LeftOut out = checkAgainstPlans(p).left_out;
  CHECK(out.geometry > 0);
  CHECK(out.pit_depth > 0);
  CHECK(out.people > 0);
  CHECK(out.bags > 0);
  CHECK(out.cost > 0);
}

TEST_CASE("what was measured on site is in force in the search too") {
  Project p = withWater();
  const SearchResult before = searched(p);
  p.records.batches.push_back({1, 1, 3, 0.06});
  p.records.work.push_back({core::RecordedWork::digging, 10, 30});
  checkAgainstPlans(p);
  CHECK(searched(p).largest->cement_bags != before.largest->cement_bags);
}

TEST_CASE("a customary bill, a small crew and wishes change nothing in the search") {
  Project p = withWater();
  const SearchResult before = searched(p);
  p.lining.customary.cement_kg = 800;
  p.works->plasterers = 3;
  p.works->masons = 1;
  p.works->wishes.push_back({"coat_1", {}, 2});
  CHECK(isSame(searched(p), before));
}

TEST_CASE("prices of which none is known give a frontier by bags") {
  Project p = withWater();
  p.prices = core::Prices{};
  const SearchResult found = searched(p);
  CHECK_FALSE(found.by_cost);
  REQUIRE_FALSE(found.frontier.empty());
  CHECK_FALSE(found.frontier.front().cost.has_value());
}

TEST_CASE("search without works knows no people") {
  Project p = withWater();
  p.works.reset();
  p.search.most_people = 1;
  CHECK(checkAgainstPlans(p).left_out.people == 0);
}

TEST_CASE("search gives the same answer on any number of threads") {
  Project p = onSlope(withWater(), PlatformLevel::given);
  p.search.step_m = 0.2;
  const SearchResult one = searched(p, 1);
  CHECK(one.tried > 3 * 512);
  CHECK(one.within > 512);
  for (const unsigned threads : {0U, 2U, 3U, 8U}) CHECK(isSame(searched(p, threads), one));
}

TEST_CASE("sizes go up to the most in whole steps and are plain decimals") {
  Project p = withoutWater();
  p.search.least_length_m = 2;
  p.search.most_length_m = 2.95;
  p.search.least_width_m = p.search.most_width_m = 2.3;
  p.search.least_depth_m = 1;
  p.search.most_depth_m = 1.3;
  p.search.step_m = 0.1;
  CHECK(candidateCount(p) == 10 * 1 * 4);
  CHECK(searched(p).largest->length_m == 2.9);
  CHECK(searched(p).largest->depth_m == 1.3);
  p.tank.shape = Shape::round;
  CHECK(candidateCount(p) == 10 * 4);
  p.search.most_depth_m = 0.9;
  CHECK(core::check(p).front().code == "range_crossed");
  CHECK(core::check(p).front().path == "search.least_depth_m");
  p.search = {};
  p.search.step_m = 0.05;
  p.search.least_length_m = p.search.least_depth_m = 0.5;
  p.search.most_length_m = 60;
  CHECK(core::check(p).empty());
  p.tank.shape = Shape::rectangle;
  p.search.most_width_m = 60;
  CHECK(core::check(p).front().code == "too_many");
}

TEST_CASE("a size put into a project changes nothing but the size") {
  const Project before = withWater();
  Candidate size;
  size.length_m = 4.4;
  size.width_m = 2.2;
  size.depth_m = 1.3;
  Project after = withSize(before, size);
  CHECK(after.tank.length_m == 4.4);
  CHECK(after.tank.width_m == 2.2);
  CHECK(after.tank.depth_m == 1.3);
  after.tank = before.tank;
  CHECK(after == before);
}

TEST_CASE("search tells how far it is and gives up at once") {
  Project p = withWater();
  p.search.step_m = 0.15;
  const core::Plan plan = core::plan(p).value();
  std::vector<double> shares;
  searchSizes(
      p, plan, 3, [&](double share) { shares.push_back(share); }, kGoOn);
  CHECK(shares.size() > 3);
  CHECK(std::is_sorted(shares.begin(), shares.end()));
  CHECK(shares.back() == 1.0);

  const std::atomic<bool> stopped = true;
  CHECK(searchSizes(p, plan, 2, {}, stopped).tried == 0);
  std::atomic<bool> stop = false;
  const SearchResult given_up = searchSizes(
      p, plan, 2, [&](double) { stop = true; }, stop);
  CHECK(given_up.tried == 0);
  CHECK(given_up.frontier.empty());
}

TEST_CASE("a frontier of offers with open bounds is that of the exact ones") {
  support::Dice dice(71);
  for (int round = 0; round < 200; ++round) {
    std::vector<Offer> offers;
    std::vector<Candidate> exact;
    for (int k = 0; k < 60; ++k) {
      Candidate c;
      c.length_m = k;
      c.full_volume_m3 = dice.whole(1, 30);
      c.cement_bags = dice.whole(1, 15);
      c.years_in_ten = dice.whole(0, 10);
      const double below = dice.whole(0, 1), above = dice.whole(0, 1);
      offers.push_back({c, c.cement_bags, *c.years_in_ten - below, *c.years_in_ten + above});
      exact.push_back(c);
    }
    const auto years = [&](const Candidate& c) {
      return *exact[static_cast<std::size_t>(c.length_m)].years_in_ten;
    };
    std::vector<Offer> halves(offers.begin(), offers.begin() + 30), rest(offers.begin() + 30, offers.end());
    thin(halves);
    thin(rest);
    halves.insert(halves.end(), rest.begin(), rest.end());
    thin(halves);
    std::vector<std::pair<double, double>> found, wanted;
    for (const Offer& offer : frontierOf(halves, years)) {
      found.emplace_back(offer.price, offer.most_gain);
      const bool is_beaten =
          std::any_of(exact.begin(), exact.end(), [&](const Candidate& c) { return beats(c, offer.size); });
      CHECK_FALSE(is_beaten);
    }
    for (const Candidate& c : exact) {
      const bool is_beaten =
          std::any_of(exact.begin(), exact.end(), [&](const Candidate& other) { return beats(other, c); });
      if (!is_beaten) wanted.emplace_back(c.cement_bags, *c.years_in_ten);
    }
    std::sort(wanted.begin(), wanted.end());
    wanted.erase(std::unique(wanted.begin(), wanted.end()), wanted.end());
    CHECK(found == wanted);
  }
}

TEST_CASE("the years of a tank lie within their quick bounds") {
  support::RandomTanks tanks(5);
  int open = 0;
  for (int k = 0; k < 60; ++k) {
    const auto made = tanks.next(k % 2 ? Shape::rectangle : Shape::round);
    const auto curve = core::water::curveOf(core::geometry::TankGeometry(made.tank, made.lining));
    auto series =
        std::make_shared<core::water::DaySeries>(support::randomDays(tanks.dice(), curve.full_m3, 10 * 365));
    const Reliability reliability(series);
    const std::vector<YearsBounds> bounds = reliability.bounds(std::vector{curve}, kGoOn);
    REQUIRE(bounds.size() == 1);
    CHECK(bounds[0].least <= reliability.exact(curve));
    CHECK(bounds[0].most >= reliability.exact(curve));
    open += bounds[0].least < bounds[0].most ? 1 : 0;
  }
  CHECK(open < 30);  // most are sure without a run
}
