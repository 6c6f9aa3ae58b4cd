#include "core/base/source.h"
#include "core/cost/cost_plan.h"
#include "tests/support/free_items.h"
#include "tests/support/priced_tank.h"

#include <algorithm>
#include <string>

#include <catch2/catch.hpp>

namespace {

using namespace core::cost;
using core::Carrier;
using support::PricedTank;

core::Project plainProject() {
  core::Project project;
  project.prices.emplace();
  project.prices->items.clear();
  project.prices->contingency_percent = 0;
  return project;
}

const CostLine* find(const Bill& bill, const std::string& item) {
  const auto it =
      std::find_if(bill.lines.begin(), bill.lines.end(), [&](const CostLine& l) { return l.item == item; });
  return it == bill.lines.end() ? nullptr : &*it;
}

const CostLine& line(const Bill& bill, const std::string& item) {
  const CostLine* found = find(bill, item);
  REQUIRE(found);
  return *found;
}

double order(const PricedTank& tank, const std::string& id) {
  for (const auto& material : tank.quantities.materials) {
    if (material.id == id) return material.order;
  }
  FAIL("no such material");
  return 0;
}

core::PriceItem priced(const std::string& item, double price) {
  return {item, price, {}, 0, Carrier::none, {}};
}

core::works::Day startOf(const PricedTank& tank, const char* task) {
  const core::works::Task* found = core::works::findTask(*tank.works, task);
  REQUIRE(found);
  return found->start;
}

const DayMoney& moneyOn(const PricedTank& tank, core::works::Day date) {
  const auto& days = tank.cost->days;
  const auto it = std::find_if(days.begin(), days.end(), [&](const DayMoney& d) { return d.date == date; });
  REQUIRE(it != days.end());
  return *it;
}

}  // namespace

TEST_CASE("bill: what is ordered times its price, in the unit of the price") {
  core::Project project = plainProject();
  for (const char* item : {"cement_bags", "soil", "sand", "stone", "water", "sacks"})
    project.prices->items.push_back(priced(item, 10));
  const PricedTank tank(project);
  const Bill& bill = tank.cost->bill;
  double sum = 0;
  for (const char* item : {"cement_bags", "soil", "sand", "stone", "sacks"}) {
    CHECK(line(bill, item).quantity == order(tank, item));
    CHECK(line(bill, item).group == "materials");
    sum += 10 * order(tank, item);
  }
  CHECK(line(bill, "water").quantity == Approx(order(tank, "water") / 1000));  // litres to m3
  sum += 10 * order(tank, "water") / 1000;
  CHECK(bill.materials == Approx(sum));
  CHECK(bill.total == Approx(sum));
  CHECK(line(bill, "cement_bags").unit == "bag");
  CHECK(line(bill, "sand").unit == "m3");
  CHECK(line(bill, "sacks").unit == "piece");
}

TEST_CASE("bill: labourers and masons share the person-days") {
  core::Project project = plainProject();
  project.prices->items = {priced("labourer", 900), priced("mason", 1400)};
  const PricedTank tank(project);
  const Bill& bill = tank.cost->bill;
  REQUIRE(tank.works->mason_days > 0);
  CHECK(line(bill, "mason").quantity == tank.works->mason_days);
  CHECK(line(bill, "labourer").quantity + line(bill, "mason").quantity == Approx(tank.works->person_days));
  CHECK(bill.labour ==
        Approx(900 * (tank.works->person_days - tank.works->mason_days) + 1400 * tank.works->mason_days));
  CHECK(line(bill, "mason").unit == "person_day");
  CHECK(bill.materials == 0);
}

TEST_CASE("bill: pipes are as long as their way, the fence stands a metre outside the opening") {
  core::Project project = plainProject();
  project.tank.corner_radius_m = 0;
  project.site.fence_planned = true;
  core::Delivery& delivery = project.delivery.emplace();
  delivery.source.route = {{0, 3}, {40, 2}, {85.5, 0.1}};
  delivery.field.route = {{0, 0}};  // one point: no line
  project.prices->items = {priced("source_pipe", 60), priced("field_pipe", 60), priced("fence", 450)};
  const PricedTank tank(project);
  const Bill& bill = tank.cost->bill;
  CHECK(line(bill, "source_pipe").quantity == 85.5);
  CHECK_FALSE(find(bill, "field_pipe"));
  // 6 x 3.5 m floor, walls 1 : 0.1 over 1.5 m: an opening of 6.3 x 3.8 m, fenced at 8.3 x 5.8 m
  CHECK(line(bill, "fence").quantity == Approx(2 * (8.3 + 5.8)));

  project.site.fence_planned = false;
  const PricedTank without(project);
  CHECK_FALSE(find(without.cost->bill, "fence"));
}

TEST_CASE("bill: a quantity entered stands in place of the plan's; own items are jobs or pieces") {
  core::Project project = plainProject();
  project.prices->items = {priced("cement_bags", 850), priced("ladder", 700), priced("nails", 3)};
  project.prices->items[0].quantity = 12;
  project.prices->items[2].quantity = 100;
  const PricedTank tank(project);
  const Bill& bill = tank.cost->bill;
  CHECK(line(bill, "cement_bags").quantity == 12);
  CHECK(bill.materials == 12 * 850);
  CHECK(line(bill, "ladder").quantity == 1);
  CHECK(line(bill, "ladder").unit == "job");
  CHECK(line(bill, "nails").unit == "piece");
  CHECK(bill.other == 700 + 300);
}

TEST_CASE("bill: own share, contingency and cash") {
  core::Project project = plainProject();
  project.prices->items = {priced("a", 1000), priced("b", 500)};
  project.prices->items[0].own_percent = 30;
  project.prices->contingency_percent = 10;
  const Bill bill = PricedTank(project).cost->bill;
  CHECK(bill.own == 300);
  CHECK(bill.contingency == 150);  // on the whole, what is given included
  CHECK(bill.total == 1650);
  CHECK(bill.cash == 1350);
  CHECK(bill.lines[0].own == 300);
  CHECK(bill.lines[0].cash == 700);
}

TEST_CASE("bill: an unknown price is missing, not nothing") {
  core::Project project = plainProject();
  project.prices->items = {priced("cement_bags", 850), priced("sand", 0), priced("stone", 0),
                           priced("fence", 0)};
  project.prices->items[2].price.reset();
  project.prices->items[3].price.reset();  // none is planned, so none is missing
  support::addRestFree(project);
  const PricedTank tank(project);
  const Bill& bill = tank.cost->bill;
  CHECK(bill.missing == std::vector<std::string>{"stone"});
  CHECK_FALSE(line(bill, "stone").amount);
  CHECK(line(bill, "sand").amount == 0);  // free is a price
  CHECK_FALSE(tank.cost->per_m3_stored);
  project.prices->items[2].price = 100;
  const PricedTank known(project);
  CHECK(known.cost->bill.missing.empty());
  CHECK(*known.cost->per_m3_stored == Approx(known.cost->bill.total / known.full_m3()));
}

TEST_CASE("bill: what the tank needs and the list does not name is missing, water but for a line of it") {
  core::Project project = support::pricedProject();
  project.site.fence_planned = true;
  core::Delivery& delivery = project.delivery.emplace();
  delivery.source.route = {{0, 3}, {40, 2}};
  delivery.field.route = {{0, 0}, {25, -1}};
  REQUIRE(PricedTank(project).cost->bill.missing.empty());  // no line of water
  for (std::size_t k = 0; k < project.prices->items.size(); ++k) {
    core::Project without = project;
    auto& items = without.prices->items;
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(k));
    const PricedTank tank(without);
    CHECK(tank.cost->bill.missing == std::vector<std::string>{project.prices->items[k].item});
    CHECK_FALSE(tank.cost->per_m3_stored);
    CHECK_FALSE(tank.cost->annual);
  }
  project.prices->items.push_back({"water", {}, {}, 0, Carrier::none, {}});
  CHECK(PricedTank(project).cost->bill.missing == std::vector<std::string>{"water"});
}

TEST_CASE("bill: what the tank does not need may be left off the list") {
  core::Project project = support::pricedProject();
  project.site.fence_planned = false;
  project.delivery.reset();
  auto& items = project.prices->items;
  items.resize(7);  // up to the mason: no pipes, no fence
  REQUIRE(items.back().item == "mason");
  CHECK(PricedTank(project).cost->bill.missing.empty());
}

TEST_CASE("bill: without works nobody knows the labour, unless its days are given or cost nothing") {
  const std::vector<std::string> both{"labourer", "mason"};
  core::Project project = support::pricedProject();
  project.works.reset();
  const PricedTank tank(project);
  CHECK(tank.cost->bill.labour == 0);
  CHECK(tank.cost->days.empty());
  CHECK_FALSE(find(tank.cost->bill, "labourer"));
  CHECK(tank.cost->bill.missing == both);
  CHECK_FALSE(tank.cost->per_m3_stored);

  core::Project unnamed = project;
  auto& items = unnamed.prices->items;
  items.erase(items.begin() + 5, items.begin() + 7);
  CHECK(PricedTank(unnamed).cost->bill.missing == both);

  REQUIRE(project.prices->items[5].item == "labourer");
  project.prices->items[5].quantity = 20;
  CHECK(PricedTank(project).cost->bill.missing == std::vector<std::string>{"mason"});
  project.prices->items[6].quantity = 4;
  const Bill given = PricedTank(project).cost->bill;
  CHECK(given.missing.empty());
  CHECK(given.labour == 20 * 900 + 4 * 1400);

  for (const std::size_t k : {5U, 6U}) project.prices->items[k].quantity.reset();
  for (const std::size_t k : {5U, 6U}) project.prices->items[k].price = 0;
  CHECK(PricedTank(project).cost->bill.missing.empty());
}

TEST_CASE("price list: an item stands in it once") {
  core::Prices prices;
  CHECK(check(prices).empty());
  prices.items.push_back(priced("", 5));
  prices.items.push_back(priced("", 6));
  CHECK(check(prices).empty());  // no name yet
  prices.items = {priced("sand", 1), priced("gate", 2), priced("sand", 3), priced("gate", 4),
                  priced("sand", 5)};
  const core::Problems problems = check(prices);
  REQUIRE(problems.size() == 3);
  for (std::size_t k = 0; k < 3; ++k) {
    CHECK(problems[k].code == "name_repeated");
    CHECK(problems[k].path == "prices.items[" + std::to_string(k + 2) + "].item");
    CHECK(problems[k].value == (k == 1 ? "\"gate\"" : "\"sand\""));
  }
}

TEST_CASE("money of the days: all cash but the contingency, goods when they are first used") {
  core::Project project = support::pricedProject();
  project.prices->items[0].own_percent = 25;
  project.prices->items.push_back(priced("ladder", 700));
  const PricedTank tank(project);
  const Bill& bill = tank.cost->bill;
  const auto& days = tank.cost->days;
  REQUIRE(days.size() > 3);
  double goods = 0, wages = 0;
  for (std::size_t k = 0; k < days.size(); ++k) {
    goods += days[k].goods;
    wages += days[k].wages;
    CHECK(days[k].together == Approx(goods + wages));
    if (k > 0) CHECK(days[k - 1].date < days[k].date);
  }
  CHECK(goods + wages == Approx(bill.cash - bill.contingency));
  CHECK(wages == Approx(line(bill, "labourer").cash + line(bill, "mason").cash));

  const CostLine& stone = line(bill, "stone");
  CHECK(moneyOn(tank, startOf(tank, "stone_bed")).goods == Approx(stone.cash + *stone.carriage->amount));
  double for_coat = 0;
  for (const char* item : {"cement_bags", "sand", "soil", "sacks"}) {
    const CostLine& l = line(bill, item);
    for_coat += l.cash + (l.carriage ? *l.carriage->amount : 0);
  }
  CHECK(moneyOn(tank, startOf(tank, "coat_1")).goods == Approx(for_coat));
  CHECK(moneyOn(tank, tank.works->days.front().date).goods == 700);
}

TEST_CASE("money of the days: wages of a task are spread over the days on which it is done") {
  core::Project project = support::pricedProject();
  const PricedTank tank(project);
  // masons work on the stone bed, the coats and what else asks for them; on no other day are they paid
  for (core::PriceItem& item : project.prices->items) item.price = item.item == "mason" ? 1000 : 0;
  for (core::CarrierTerms* terms : {&project.prices->porter, &project.prices->mule, &project.prices->trolley})
    terms->price_per_trip = 0;
  const PricedTank masons(project);
  for (const DayMoney& day : masons.cost->days) {
    const bool is_masons_day =
        std::any_of(masons.works->labour.begin(), masons.works->labour.end(), [&](const auto& l) {
          const core::works::Task* task = core::works::findTask(*masons.works, l.task);
          return l.mason_days > 0 && task && task->start <= day.date && day.date <= task->finish;
        });
    CHECK(is_masons_day);
  }
  double coat_days = 0;
  for (const auto& l : masons.works->labour) {
    if (l.task == "coat_2") coat_days = l.mason_days;
  }
  CHECK(moneyOn(masons, startOf(masons, "coat_2")).wages == Approx(1000 * coat_days));
}

TEST_CASE("delivered water: what is drawn in months with rain below half of ET0") {
  const PricedTank tank(support::pricedProject());
  REQUIRE(tank.water);
  const auto& months = tank.cost->dry_months;
  const auto isDry = [&](int month) {
    return std::find(months.begin(), months.end(), month) != months.end();
  };
  // 8, 12, 20 and 25 mm from November to February, 400 mm in July, where ET0 is 60 to 150 mm a month
  for (const int month : {0, 1, 10, 11}) CHECK(isDry(month));
  for (const int month : {5, 6, 7, 8}) CHECK_FALSE(isDry(month));
  double drawn = 0;
  for (const int month : months) drawn += tank.water->months[static_cast<std::size_t>(month)].drawn;
  CHECK(drawn > 0);
  CHECK(*tank.cost->delivered_m3 == Approx(drawn));
  CHECK(*tank.cost->per_m3_delivered == Approx(*tank.cost->annual / drawn));
}

TEST_CASE("table of weights: in order, with sources") {
  for (const core::Figure& f : figures()) {
    CHECK(f.low <= f.typical);
    CHECK(f.typical <= f.high);
    CHECK_NOTHROW(core::source(f.source));
    CHECK(&figure(f.key) == &f);
  }
  CHECK_THROWS_AS(figure("weight.gold"), std::logic_error);
}
