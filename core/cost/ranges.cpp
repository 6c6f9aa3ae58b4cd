#include "core/cost/ranges.h"

#include "core/cost/bill_lines.h"
#include "core/cost/drawn_materials.h"
#include "core/cost/drawn_works.h"
#include "core/cost/fill_table.h"
#include "core/cost/spread.h"
#include "core/project/fields.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include <fmt/format.h>

namespace core::cost {
namespace {

constexpr std::array<std::string_view, kOutcomes> kNames{"cement_bags", "person_days", "money", "fill_days"};

double factor(const Factors& factors, RangedInput input) {
  return factors[static_cast<std::size_t>(input)];
}

Factors allTypical() {
  Factors factors;
  factors.fill(1);
  return factors;
}

/// Inputs that an outcome depends on at all.
bool isMovedBy(Outcome outcome, RangedInput input) {
  using I = RangedInput;
  switch (outcome) {
    case Outcome::cement_bags:
      return input == I::thickness || input == I::unevenness || input == I::dry_to_wet ||
             input == I::cement_density;
    case Outcome::person_days:
      return input == I::thickness || input == I::unevenness || input == I::digging || input == I::plastering;
    case Outcome::money:
      return input != I::flow;
    case Outcome::fill_days:
      return input == I::flow;
  }
  return false;
}

Triangular flowSpread(const Ranges& ranges) {
  for (const InputRange& range : ranges.inputs) {
    if (range.input == RangedInput::flow) return factorSpread(range);
  }
  return {1, 1, 1};
}

/// Everything that is drawn, as a function of the factors.
class DrawnPlan {
public:
  DrawnPlan(const RangesInput& input, const std::vector<Thicker>& thicker)
      : materials_(input, thicker),
        labour_(input, thicker),
        fill_(FillTable::make(input, flowSpread(input.project.ranges))),
        known_(knownQuantities({input.geometry, input.project, input.quantities})) {
    has_labour_ = input.works && input.project.works;
    has_money_ = input.cost && input.project.prices && input.cost->bill.missing.empty();
    if (!has_money_) return;
    lines_ = lineTerms(input.project);
    contingency_percent_ = input.project.prices->contingency_percent;
  }

  bool has(Outcome outcome) const {
    if (outcome == Outcome::person_days) return has_labour_;
    if (outcome == Outcome::money) return has_money_;
    return outcome == Outcome::cement_bags || fill_;
  }

  Outcomes operator()(const Factors& factors) {
    materials_.put(factors, known_);
    const DrawnDays days = labour_(factors);
    known_[Known::labourer] = days.person - days.mason;
    known_[Known::mason] = days.mason;
    return {known_[Known::cement_bags], days.person, money(factors),
            fill_ ? (*fill_)(factor(factors, RangedInput::flow)) : 0};
  }

private:
  DrawnMaterials materials_;
  DrawnLabour labour_;
  std::optional<FillTable> fill_;
  bool has_labour_ = false, has_money_ = false;
  KnownQuantities known_;
  std::vector<LineTerms> lines_;
  double contingency_percent_ = 0;

  /// As the bill reckons it. Carriers' prices stay: they are neither prices of goods nor wages.
  double money(const Factors& factors) const {
    const double goods = factor(factors, RangedInput::prices);
    const double wages = factor(factors, RangedInput::wages);
    Sums sums;
    for (const LineTerms& line : lines_) {
      const double quantity = line.quantity(known_);
      sums[line.group] +=
          quantity * line.item->price.value_or(0) * (line.group == Group::labour ? wages : goods);
      if (line.loading)
        sums.carriage += loadsFor(*line.loading, quantity) * line.loading->price_per_trip.value_or(0);
    }
    return sums.total(contingency_percent_);
  }
};

/// Factors of all inputs for a block of draws.
class FactorBlocks {
public:
  explicit FactorBlocks(const Ranges& ranges) {
    for (Column& column : columns_) column.fill(1);
    for (const InputRange& range : ranges.inputs)
      draws_.emplace_back(range.input, FactorDraws(factorSpread(range), ranges.seed, range.input));
  }

  void drawFrom(std::uint64_t first) {
    for (const auto& [input, draws] : draws_) draws.fill(first, columns_[static_cast<std::size_t>(input)]);
  }
  Factors at(std::size_t k) const {
    Factors factors;
    for (std::size_t i = 0; i < kInputs; ++i) factors[i] = columns_[i][k];
    return factors;
  }

private:
  using Column = std::array<double, kBlock>;
  std::array<Column, kInputs> columns_;
  std::vector<std::pair<RangedInput, FactorDraws>> draws_;
};

std::vector<Driver> drivers(Outcome outcome, const Ranges& ranges, const Correlations& correlations) {
  std::vector<Driver> found;
  double sum = 0;
  for (const InputRange& range : ranges.inputs) {
    if (!isMovedBy(outcome, range.input)) continue;
    const double r = correlations.of(outcome, range.input);
    found.push_back({range.input, r * r, r});
    sum += r * r;
  }
  for (Driver& driver : found) driver.share = sum > 0 ? driver.share / sum : 0;
  std::stable_sort(found.begin(), found.end(),
                   [](const Driver& a, const Driver& b) { return a.share > b.share; });
  return found;
}

Spread spreadOf(Outcome outcome, double typical, std::vector<double>& draws, const Ranges& ranges,
                const Correlations& correlations) {
  Spread spread;
  spread.outcome = kNames[static_cast<std::size_t>(outcome)];
  spread.typical = typical;
  const Quantiles q = quantiles(draws);
  spread.p10 = q.p10;
  spread.p50 = q.p50;
  spread.p90 = q.p90;
  spread.least = q.least;
  spread.most = q.most;
  spread.mean = correlations.mean(outcome);
  spread.drivers = drivers(outcome, ranges, correlations);
  return spread;
}

void checkRange(const Ranges& ranges, std::size_t row, Problems& problems) {
  const InputRange& range = ranges.inputs[row];
  const std::string path = fmt::format("ranges.inputs[{}].", row);
  const Field& input = field("ranges.inputs[].input");
  const auto earlier = std::span(ranges.inputs).first(row);
  if (std::any_of(earlier.begin(), earlier.end(),
                  [&](const InputRange& r) { return r.input == range.input; }))
    problems.push_back({"name_repeated",
                        path + "input",
                        fmt::format("\"{}\"", input.choices[static_cast<std::size_t>(range.input)]),
                        {},
                        {},
                        Unit::none,
                        {}});
  const auto checkPercent = [&](const char* id, double percent, double least, double most) {
    if (percent >= least && percent <= most) return;
    problems.push_back({"out_of_range", path + id, jsonText(percent), least, most, Unit::percent, "number"});
  };
  checkPercent("low_percent", range.low_percent, field("ranges.inputs[].low_percent").least, 0);
  checkPercent("high_percent", range.high_percent, 0, field("ranges.inputs[].high_percent").most);
}

}  // namespace

Problems check(const Ranges& ranges) {
  Problems problems;
  for (std::size_t row = 0; row < ranges.inputs.size(); ++row) checkRange(ranges, row, problems);
  return problems;
}

RangesPlan ranges(const RangesInput& input, const std::atomic<bool>* cancel) {
  const Ranges& asked = input.project.ranges;
  const auto count = static_cast<std::size_t>(asked.draws);
  DrawnPlan plan(input, atThicknesses(input.project));
  const Outcomes typical = plan(allTypical());
  Correlations correlations(typical);
  std::array<std::vector<double>, kOutcomes> draws;
  for (std::vector<double>& column : draws) column.reserve(count);
  FactorBlocks blocks(asked);
  for (std::size_t first = 0; first < count; first += kBlock) {
    if (cancel && *cancel) return {};
    blocks.drawFrom(first);
    for (std::size_t k = 0; k < std::min(kBlock, count - first); ++k) {
      const Factors factors = blocks.at(k);
      const Outcomes outcomes = plan(factors);
      correlations.add(factors, outcomes);
      for (std::size_t o = 0; o < kOutcomes; ++o) draws[o].push_back(outcomes[o]);
    }
  }
  RangesPlan result;
  result.draws = asked.draws;
  for (std::size_t o = 0; count > 0 && o < kOutcomes; ++o) {
    const auto outcome = static_cast<Outcome>(o);
    if (plan.has(outcome))
      result.spreads.push_back(spreadOf(outcome, typical[o], draws[o], asked, correlations));
  }
  return result;
}

}  // namespace core::cost
