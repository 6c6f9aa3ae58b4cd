// Capital recovery and equivalent annual cost against printed tables and worked examples.
#include "tests/support/priced_tank.h"

#include <catch2/catch.hpp>

namespace {

using core::cost::capitalRecovery;

struct Row {
  double percent, years, printed;
};

/// A year of something bought for `price`, with upkeep, reckoned as a lining.
double annual(double price, double upkeep, double years, double percent) {
  core::Project project;
  project.prices.emplace();
  project.prices->discount_percent = percent;
  project.prices->linings = {
      {core::LiningKind::moulded_tank, price, core::PricePer::job, years, 100 * upkeep / price}};
  return *support::PricedTank(project).cost->linings.at(0).annual;
}

}  // namespace

TEST_CASE("capital recovery factors: a printed table of compound interest factors, column A/P") {
  // Discrete cash flow: compound interest factors, tables 1 (0.25 %) and 8 (3 %), as in textbooks of
  // engineering economy; five decimals
  for (const Row& row :
       {Row{0.25, 1, 1.00250}, Row{0.25, 2, 0.50188}, Row{0.25, 5, 0.20150}, Row{0.25, 10, 0.10138},
        Row{0.25, 20, 0.05132}, Row{0.25, 25, 0.04131}, Row{3, 1, 1.03000}, Row{3, 2, 0.52261},
        Row{3, 3, 0.35353}, Row{3, 5, 0.21835}, Row{3, 8, 0.14246}, Row{3, 10, 0.11723}, Row{3, 12, 0.10046},
        Row{3, 15, 0.08377}, Row{3, 20, 0.06722}, Row{3, 25, 0.05743}})
    CHECK(capitalRecovery(row.percent, row.years) == Approx(row.printed).margin(0.000005));
}

TEST_CASE("capital recovery factors at 10 %") {
  // three decimals, as in tables of engineering economy (second-hand)
  for (const Row& row : {Row{10, 3, 0.402}, Row{10, 5, 0.264}, Row{10, 8, 0.187}, Row{10, 10, 0.163},
                         Row{10, 15, 0.131}, Row{10, 20, 0.117}})
    CHECK(capitalRecovery(row.percent, row.years) == Approx(row.printed).margin(0.0005));
}

TEST_CASE("capital recovery: without interest the price is shared out; a little interest changes little") {
  CHECK(capitalRecovery(0, 8) == 0.125);
  CHECK(capitalRecovery(1e-9, 8) == Approx(0.125).epsilon(1e-9));
  CHECK(capitalRecovery(10, 1) == Approx(1.1));
  CHECK(capitalRecovery(10, 1000) == Approx(0.1));
}

TEST_CASE("capital recovery: payments at the factor pay a loan off") {
  // year by year, as a bank keeps it
  for (const Row& row : {Row{10, 10, 0}, Row{2.5, 25, 0}, Row{50, 3, 0}}) {
    double owed = 1;
    for (int year = 0; year < static_cast<int>(row.years); ++year)
      owed = owed * (1 + row.percent / 100) - capitalRecovery(row.percent, row.years);
    CHECK(owed == Approx(0).margin(1e-9));
  }
}

TEST_CASE("equivalent annual cost: worked examples") {
  // Two machines at 5 %, encyclopedia article "Equivalent annual cost": 50,000 and 13,000 a year for 3 years
  // is 31,360. (Its second one prints 30,780 for 150,000 and 7,500 a year over 8 years; the factors give
  // 30,708.)
  CHECK(annual(50000, 13000, 3, 5) == Approx(31360).margin(0.5));
  CHECK(annual(150000, 7500, 8, 5) == Approx(30708).margin(0.5));  // computed
  // Worked textbook problem at 11 %: 85 and 130 a year for 2 years is 179.63, 155 and 105 a year for 3 years
  // is 168.42, from present values printed to the cent
  CHECK(annual(85, 130, 2, 11) == Approx(179.63).margin(0.01));
  CHECK(annual(155, 105, 3, 11) == Approx(168.42).margin(0.01));
  // Another at 7 %: 54,000 and 18,000 a year for 3 years is 38,576.79
  CHECK(annual(54000, 18000, 3, 7) == Approx(38576.79).margin(0.005));
}
