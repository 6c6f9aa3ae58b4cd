#include "tests/ui/money_charts_support.h"

#include <chrono>
#include <cmath>

using core::LiningKind;
using core::RangedInput;
using core::compare::Candidate;
using core::cost::CostPlan;

namespace support {

core::Project moneyProject() {
  core::Project project;
  project.currency = "Rs";
  project.prices.emplace();
  return project;
}

CostPlan sampleCost(int days) {
  CostPlan plan;
  plan.linings = {{LiningKind::plastic_sheet, 24000, 9000, 33000, 7, 0.2054, 480, 7258, 322},
                  {LiningKind::soil_cement, 38000, 9000, 47000, 10, 0.1627, 760, 8409, 374},
                  {LiningKind::ferrocement, 90000, 9000, 99000, 20, 0.1175, 1800, 13429, 597},
                  {LiningKind::stone_masonry, {}, 12000, 0, 25, 0.1102, 0, {}, {}}};
  const auto first = std::chrono::year{2027} / std::chrono::February / 15;
  double together = 0;
  for (int k = 0; k < days; ++k) {
    if (k % 7 == 5) continue;
    const double goods = k % 9 == 2 ? 9000 : 0, wages = k == 10 || k == 14 ? 6600 : 1800;
    together += goods + wages;
    plan.days.push_back({core::works::addDays(first, k), goods, wages, together});
  }
  return plan;
}

core::cost::Spread sampleSpread() {
  core::cost::Spread spread;
  spread.outcome = "money";
  spread.typical = 47000;
  spread.p10 = 43100;
  spread.p50 = 48900;
  spread.p90 = 56200;
  spread.mean = 49300;
  spread.least = 38500;
  spread.most = 67400;
  spread.drivers = {{RangedInput::prices, 0.46, 0.67},  {RangedInput::thickness, 0.24, 0.48},
                    {RangedInput::wages, 0.15, 0.38},   {RangedInput::dry_to_wet, 0.09, 0.3},
                    {RangedInput::digging, 0.04, 0.2},  {RangedInput::cement_density, 0.015, -0.12},
                    {RangedInput::plastering, 0.005, 0}};
  return spread;
}

namespace {

Candidate candidateOf(double length_m) {
  const double volume = 4.2 * length_m, years = 10 * (1 - std::exp(-0.035 * volume * volume / 10));
  return {length_m, 3.4, 1.5, volume, 0.7 * volume, 14, 9000 + 1600 * volume, years};
}

}  // namespace

core::compare::SearchResult sampleSearch() {
  core::compare::SearchResult result;
  result.tried = 17000;
  result.within = 9000;
  result.by_cost = true;
  result.target_years_in_ten = 8;
  for (int k = 0; k < 18; ++k) result.frontier.push_back(candidateOf(2 + 0.2 * k));
  result.cheapest = result.frontier[16];
  result.largest = result.frontier.back();
  return result;
}

Candidate presentTank() {
  Candidate tank = candidateOf(4.4);
  *tank.cost += 6000;
  return tank;
}

std::vector<core::OptionResult> sampleOptions(int count) {
  std::vector<core::OptionResult> options;
  for (int k = 0; k < count; ++k) {
    core::Tank tank;
    tank.length_m = 6 + 0.7 * (k % 3);
    tank.depth_m = 1.5 + 0.3 * (k % 2);
    if (k % 3 == 2) tank.shape = core::Shape::round;
    core::Lining lining;
    core::OptionResult option;
    option.letter = std::string(1, static_cast<char>('A' + k));
    option.name = k == 0 ? "" : k == 1 ? "deeper" : "round, as the neighbours have it";
    option.geometry.emplace(tank, lining);
    option.full_volume_m3 = option.geometry->volumeToLevel(option.geometry->fullLevel());
    options.push_back(option);
  }
  return options;
}

}  // namespace support
