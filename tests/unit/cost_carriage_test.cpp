#include "core/cost/carriage.h"
#include "tests/support/free_items.h"
#include "tests/support/priced_tank.h"

#include <algorithm>

#include <catch2/catch.hpp>

namespace {

using namespace core::cost;
using core::Carrier;

constexpr bool kPieces = true;
constexpr bool kBulk = false;

Carriage carried(double quantity, double kg_each, double load_kg, bool in_pieces) {
  const core::CarrierTerms terms{load_kg, 4, 100};
  const auto c = carriage(loading(Carrier::porter, terms, kg_each, in_pieces), quantity);
  REQUIRE(c);
  return *c;
}

core::Project carrying(const core::PriceItem& item) {
  core::Project project;
  project.prices.emplace();
  project.prices->items = {item};
  project.prices->contingency_percent = 0;
  return project;
}

}  // namespace

TEST_CASE("carriage: a 50 kg bag over a porter's 30 kg is split into two loads") {
  const Carriage c = carried(26, 50, 30, kPieces);
  CHECK(c.loads_per_piece == 2);
  CHECK(c.loads == 52);
  CHECK(c.kg == 1300);
  CHECK(c.days == 13);  // four trips a day
  CHECK(*c.amount == 5200);
}

TEST_CASE("carriage: pieces are split evenly, whole when they just fit, and several go to a load") {
  CHECK(carried(10, 90, 30, kPieces).loads == 30);
  CHECK(carried(10, 91, 30, kPieces).loads == 40);
  CHECK(carried(10, 30, 30, kPieces).loads == 10);
  CHECK(carried(10, 30, 30, kPieces).loads_per_piece == 1);
  CHECK(carried(10, 20, 30, kPieces).loads == 10);  // two do not fit
  CHECK(carried(10, 15, 30, kPieces).loads == 5);
  CHECK(carried(11, 15, 30, kPieces).loads == 6);
  CHECK(carried(40, 0.7, 30, kPieces).loads == 1);  // 42 to a load
  CHECK(carried(43, 0.7, 30, kPieces).loads == 2);
  CHECK(carried(10, 0.1, 0.3, kPieces).loads == 4);  // three, though 0.3 / 0.1 falls short of it
}

TEST_CASE("carriage: what comes in bulk goes by weight") {
  CHECK(carried(1.5, 1550, 60, kBulk).loads == 39);  // 2325 kg, 38.75 loads
  CHECK(carried(1.5, 1550, 2325, kBulk).loads == 1);
  CHECK(carried(120, 0.26, 30, kBulk).loads == 2);
  CHECK(carried(0, 1550, 60, kBulk).loads == 0);
  CHECK(carried(10, 0, 30, kPieces).loads == 0);
  CHECK(carried(1.5, 1550, 60, kBulk).loads_per_piece == 1);
}

TEST_CASE("carriage: more loads than can be counted are not reckoned") {
  const core::CarrierTerms terms{1, 1, 1};
  CHECK_FALSE(carriage(loading(Carrier::mule, terms, 10000, kBulk), 1e7));
}

TEST_CASE("carriage in the bill: by the table of weights, the bag's own weight, or the one entered") {
  core::Project project = carrying({"sand", 2000, 2, 0, Carrier::mule, {}});
  project.prices->mule.price_per_trip = 300;
  const Bill sand = support::PricedTank(project).cost->bill;
  CHECK(sand.lines[0].carriage->kg == Approx(2 * figure("weight.sand").typical));
  CHECK(sand.lines[0].carriage->by == Carrier::mule);
  CHECK(sand.carriage == 300.0 * sand.lines[0].carriage->loads);
  CHECK(sand.total == Approx(sand.materials + sand.carriage));

  project.prices->items[0] = {"cement_bags", 850, 10, 0, Carrier::porter, {}};
  project.prices->porter.price_per_trip = 100;
  CHECK(support::PricedTank(project).cost->bill.carriage == 2000);
  project.lining.cement_bag_kg = 25;
  CHECK(support::PricedTank(project).cost->bill.carriage == 1000);
  project.prices->items[0].kg_each = 10;
  CHECK(support::PricedTank(project).cost->bill.carriage == 400);  // three to a load
}

TEST_CASE("carriage in the bill: given goods are carried for cash, people walk") {
  core::Project project = carrying({"sand", 2000, 2, 100, Carrier::mule, {}});
  project.prices->items.push_back({"labourer", 900, 1, 0, Carrier::mule, 70});
  project.prices->mule.price_per_trip = 300;
  const Bill bill = support::PricedTank(project).cost->bill;
  CHECK(bill.own == 4000);
  CHECK(bill.cash == Approx(bill.carriage + 900));
  CHECK_FALSE(bill.lines[1].carriage);
}

TEST_CASE("carriage in the bill: a trip without a price and goods without a weight are missing") {
  core::Project project = carrying({"sand", 2000, 2, 0, Carrier::trolley, {}});
  project.prices->items.push_back({"gate", 5000, {}, 0, Carrier::porter, {}});
  support::addRestFree(project);
  Bill bill = support::PricedTank(project).cost->bill;
  CHECK(bill.missing == std::vector<std::string>{"gate", "trolley"});
  CHECK(bill.lines[0].carriage->loads == 4);
  CHECK_FALSE(bill.lines[0].carriage->amount);
  CHECK_FALSE(bill.lines[1].carriage);

  project.prices->items[1].kg_each = 45;
  project.prices->trolley.price_per_trip = 1500;
  bill = support::PricedTank(project).cost->bill;
  CHECK(bill.missing == std::vector<std::string>{"porter"});
  CHECK(bill.lines[1].carriage->loads == 2);
}
