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

}  // namespace

TEST_CASE("linings: soil-cement without a price of its own is the whole bill") {
  const PricedTank tank(project(300, 9000));
  const LiningCost& soil_cement = of(*tank.cost, LiningKind::soil_cement);
  CHECK(soil_cement.capital == Approx(tank.cost->bill.total));
  CHECK(soil_cement.earth == Approx(900 * earthDays(tank)));
  CHECK(*soil_cement.price == Approx(tank.cost->bill.total - soil_cement.earth));
  CHECK(soil_cement.upkeep_year == Approx(0.03 * *soil_cement.price));
  CHECK(*soil_cement.annual ==
        Approx(soil_cement.capital * capitalRecovery(10, 10) + soil_cement.upkeep_year));
  CHECK(*soil_cement.annual_per_m3 == Approx(*soil_cement.annual / tank.full_m3()));
  CHECK(tank.cost->annual == soil_cement.annual);
}

TEST_CASE(
    "linings: a price is for the job, the lined face or the water held; the pit is dug for all but one") {
  const PricedTank tank(project(300, 9000));
  const LiningCost& sheet = of(*tank.cost, LiningKind::plastic_sheet);
  CHECK(*sheet.price == Approx(300 * (tank.geometry.floorArea() + tank.geometry.wallArea())));
  CHECK(sheet.capital == Approx(*sheet.price + 900 * earthDays(tank)));
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
