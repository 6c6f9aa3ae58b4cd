#include "tests/support/priced_tank.h"

#include <algorithm>
#include <array>
#include <string>

#include <catch2/catch.hpp>

namespace {

using namespace core::cost;
using core::LiningKind;
using core::PricePer;
using support::PricedTank;

const LiningCost& of(const CostPlan& plan, LiningKind kind) {
  const auto it = std::find_if(plan.linings.begin(), plan.linings.end(),
                               [&](const LiningCost& c) { return c.lining == kind; });
  REQUIRE(it != plan.linings.end());
  return *it;
}

core::Project project(double sheet, double moulded) {
  core::Project p = support::pricedProject();
  p.prices->linings = {{LiningKind::moulded_tank, moulded, PricePer::cubic_metre, 15, 1},
                       {LiningKind::stone_masonry, {}, PricePer::square_metre, 25, 2},
                       {LiningKind::plastic_sheet, sheet, PricePer::square_metre, 5, 2},
                       {LiningKind::soil_cement, {}, PricePer::job, 10, 3}};
  return p;
}

double earthDays(const PricedTank& tank) {
  constexpr std::array<const char*, 4> tasks{"excavate", "excavate_deep", "carry_spoil", "trim"};
  double days = 0;
  for (const auto& l : tank.works->labour) {
    if (std::find(tasks.begin(), tasks.end(), l.task) != tasks.end()) days += l.days;
  }
  return days;
}

double ordered(const PricedTank& tank, const std::string& id) {
  for (const auto& material : tank.quantities.materials) {
    if (material.id == id) return material.order;
  }
  FAIL("no such material");
  return 0;
}

}  // namespace

TEST_CASE("linings: soil-cement without a price of its own is its materials, their carriage and its work") {
  core::Project p = project(300, 9000);
  p.site.fence_planned = true;
  p.delivery.emplace().source.route = {{0, 3}, {40, 2}};
  p.prices->contingency_percent = 20;
  p.prices->items.push_back({"water", 50, {}, 0, core::Carrier::none, {}});
  p.prices->items.push_back({"tools", 5000, {}, 0, core::Carrier::none, {}});
  const PricedTank tank(p);
  const Bill& bill = tank.cost->bill;
  const double materials = 850 * ordered(tank, "cement_bags") + 2400 * ordered(tank, "sand") +
                           300 * ordered(tank, "soil") + 1800 * ordered(tank, "stone") +
                           35 * ordered(tank, "sacks") + 50 * ordered(tank, "water") / 1000;
  double work = 0;
  for (const auto& l : tank.works->labour) {
    if (l.task == "stone_bed" || l.task == "coat_1" || l.task == "coat_2" || l.task == "coat_3" ||
        l.task == "curing")
      work += 900 * (l.days - l.mason_days) + 1400 * l.mason_days;
  }
  // all that is carried in this list is of the lining
  const LiningCost& soil_cement = of(*tank.cost, LiningKind::soil_cement);
  CHECK(*soil_cement.price == Approx(1.2 * (materials + bill.carriage + work)));
  CHECK(soil_cement.earth == Approx(1.2 * 900 * earthDays(tank)));
  CHECK(soil_cement.capital == Approx(*soil_cement.price + soil_cement.earth));
  CHECK(soil_cement.upkeep_year == Approx(0.03 * *soil_cement.price));
  CHECK(*soil_cement.annual ==
        Approx(soil_cement.capital * capitalRecovery(10, 10) + soil_cement.upkeep_year));
  CHECK(*soil_cement.annual_per_m3 == Approx(*soil_cement.annual / tank.full_m3()));
  // besides, the bill has fence, pipe, tools, and the work on what every tank needs
  CHECK(bill.total > soil_cement.capital + 1.2 * (450 * 20 + 60 * 40 + 5000));
}

TEST_CASE("linings: what every tank needs changes the whole tank's year, not the lining's") {
  core::Project p = project(300, 9000);
  const PricedTank before(p);
  p.prices->items.push_back({"tools", 5000, {}, 0, core::Carrier::none, {}});
  const PricedTank after(p);
  const LiningCost& lining = of(*after.cost, LiningKind::soil_cement);
  CHECK(lining.annual == of(*before.cost, LiningKind::soil_cement).annual);
  // 10 % contingency; ten years at 10 %: factor 0.16275 (a printed table of compound interest, A/P)
  CHECK(*after.cost->annual - *before.cost->annual == Approx(5500 * 0.16275).epsilon(1e-4));
  CHECK(*after.cost->annual ==
        Approx(after.cost->bill.total * capitalRecovery(10, 10) + 0.03 * *lining.price));
  CHECK(*after.cost->per_m3_delivered == Approx(*after.cost->annual / *after.cost->delivered_m3));
}

TEST_CASE("linings: a price offered for soil-cement stands as it is; the whole tank stays the bill") {
  core::Project p = project(300, 9000);
  p.prices->linings[3].price = 40000;
  const PricedTank tank(p);
  const LiningCost& lining = of(*tank.cost, LiningKind::soil_cement);
  CHECK(*lining.price == 40000);
  CHECK(lining.capital == Approx(40000 + 1.1 * 900 * earthDays(tank)));
  CHECK(*tank.cost->annual == Approx(tank.cost->bill.total * capitalRecovery(10, 10) + 0.03 * 40000));
}

TEST_CASE(
    "linings: a price is for the job, the lined face or the water held; the pit is dug for all but one") {
  const PricedTank tank(project(300, 9000));
  const LiningCost& sheet = of(*tank.cost, LiningKind::plastic_sheet);
  CHECK(*sheet.price == Approx(300 * (tank.geometry.floorArea() + tank.geometry.wallArea())));
  CHECK(sheet.capital == Approx(*sheet.price + 1.1 * 900 * earthDays(tank)));  // contingency 10 %
  const LiningCost& moulded = of(*tank.cost, LiningKind::moulded_tank);
  CHECK(*moulded.price == Approx(9000 * tank.full_m3()));
  CHECK(moulded.earth == 0);
  CHECK(moulded.capital == *moulded.price);

  core::Project job = project(300, 9000);
  job.prices->linings[2].per = PricePer::job;
  CHECK(*of(*PricedTank(job).cost, LiningKind::plastic_sheet).price == 300);
}

TEST_CASE("linings: the cheapest a year comes first, what is not known last") {
  for (const double sheet : {10.0, 300.0, 5000.0}) {
    const PricedTank tank(project(sheet, 9000));
    const auto& all = tank.cost->linings;
    REQUIRE(all.size() == 4);
    CHECK(all.back().lining == LiningKind::stone_masonry);
    CHECK_FALSE(all.back().annual);
    for (std::size_t k = 1; k < 3; ++k) CHECK(*all[k - 1].annual <= *all[k].annual);
  }
  CHECK(PricedTank(project(10, 9000)).cost->linings[0].lining == LiningKind::plastic_sheet);
  CHECK(PricedTank(project(5000, 10)).cost->linings[0].lining == LiningKind::moulded_tank);
}

TEST_CASE("linings: a bill that lacks prices does not make soil-cement cheap") {
  core::Project lacking = project(300, 9000);
  lacking.prices->items[0].price.reset();
  const PricedTank tank(lacking);
  CHECK_FALSE(of(*tank.cost, LiningKind::soil_cement).annual);
  CHECK_FALSE(tank.cost->annual);
  CHECK_FALSE(tank.cost->per_m3_delivered);
  CHECK(of(*tank.cost, LiningKind::plastic_sheet).annual);
}

TEST_CASE("linings: carriage, masons and pipes without a price") {
  core::Project lacking = project(300, 9000);
  lacking.prices->porter.price_per_trip.reset();  // of the cement
  CHECK_FALSE(of(*PricedTank(lacking).cost, LiningKind::soil_cement).price);
  lacking = project(300, 9000);
  lacking.prices->items[6].price.reset();
  REQUIRE(lacking.prices->items[6].item == "mason");
  CHECK_FALSE(of(*PricedTank(lacking).cost, LiningKind::soil_cement).price);
  lacking = project(300, 9000);
  lacking.delivery.emplace().source.route = {{0, 3}, {40, 2}};
  lacking.prices->items[7].price.reset();
  REQUIRE(lacking.prices->items[7].item == "source_pipe");
  const PricedTank tank(lacking);
  CHECK(of(*tank.cost, LiningKind::soil_cement).annual);  // no pipe is of the lining
  CHECK_FALSE(tank.cost->annual);
}

TEST_CASE("linings: without works the digging is not known") {
  core::Project idle = project(300, 9000);
  idle.works.reset();
  const PricedTank tank(idle);
  CHECK_FALSE(of(*tank.cost, LiningKind::soil_cement).price);
  CHECK(of(*tank.cost, LiningKind::plastic_sheet).price);
  CHECK_FALSE(of(*tank.cost, LiningKind::plastic_sheet).annual);
  CHECK(of(*tank.cost, LiningKind::moulded_tank).annual);
}

TEST_CASE("linings: without a labourer's price only the tank that needs no pit is known") {
  core::Project lacking = project(300, 9000);
  lacking.prices->items[5].price.reset();
  REQUIRE(lacking.prices->items[5].item == "labourer");
  const PricedTank tank(lacking);
  CHECK_FALSE(of(*tank.cost, LiningKind::plastic_sheet).annual);
  CHECK(of(*tank.cost, LiningKind::moulded_tank).annual);
}

TEST_CASE("linings: upkeep and interest raise, a longer life lowers what a year costs") {
  const auto annual = [](double discount, double life, double upkeep) {
    core::Project p = project(300, 9000);
    p.prices->discount_percent = discount;
    p.prices->linings[2].life_years = life;
    p.prices->linings[2].upkeep_percent = upkeep;
    return *of(*PricedTank(p).cost, LiningKind::plastic_sheet).annual;
  };
  CHECK(annual(10, 5, 2) > annual(5, 5, 2));
  CHECK(annual(10, 5, 2) > annual(10, 8, 2));
  CHECK(annual(10, 5, 4) > annual(10, 5, 2));
}
