#include "core/compare/search.h"

#include "core/compare/frontier.h"
#include "core/compare/reliability.h"
#include "core/compare/size_grid.h"
#include "core/compare/size_trial.h"

#include <algorithm>
#include <mutex>
#include <thread>
#include <utility>

namespace core::compare {
namespace {

constexpr std::size_t kBlock = 512;  // sizes that are tried before the next look at progress

/// What came of some of the sizes.
struct Found {
  std::size_t tried = 0, within = 0;
  LeftOut left_out;
  std::vector<Offer> offers;  ///< thinned
  std::optional<Offer> largest;
};

void count(Limit limit, LeftOut& out) {
  switch (limit) {
    case Limit::geometry:
      ++out.geometry;
      return;
    case Limit::pit_depth:
      ++out.pit_depth;
      return;
    case Limit::cut:
      ++out.cut;
      return;
    case Limit::platform:
      ++out.platform;
      return;
    case Limit::people:
      ++out.people;
      return;
    case Limit::bags:
      ++out.bags;
      return;
    case Limit::cost:
      ++out.cost;
  }
}

void add(LeftOut& to, const LeftOut& more) {
  for (std::size_t LeftOut::*number : {&LeftOut::geometry, &LeftOut::pit_depth, &LeftOut::cut,
                                       &LeftOut::platform, &LeftOut::people, &LeftOut::bags, &LeftOut::cost})
    to.*number += more.*number;
}

bool isLarger(const Offer& offer, const std::optional<Offer>& than) {
  if (!than || offer.size.full_volume_m3 > than->size.full_volume_m3) return true;
  return offer.size.full_volume_m3 == than->size.full_volume_m3 && comesBefore(offer, *than);
}

void merge(Found& to, Found&& more) {
  to.tried += more.tried;
  to.within += more.within;
  add(to.left_out, more.left_out);
  to.offers.insert(to.offers.end(), more.offers.begin(), more.offers.end());
  thin(to.offers);
  if (more.largest && isLarger(*more.largest, to.largest)) to.largest = more.largest;
}

/// All sizes, shared out block by block to whoever is free.
class Search {
public:
  Search(const Project& project, const Plan& plan, const std::function<void(double)>& progress,
         const std::atomic<bool>& cancel)
      : in_force_(works::inForce(project, plan.calibration)),
        plan_(plan),
        grid_(project),
        by_cost_(isByCost(plan)),
        progress_(progress),
        cancel_(cancel) {
    if (plan.water && plan.water->series) reliability_.emplace(plan.water->series);
  }

  std::size_t blocks() const { return (grid_.size() + kBlock - 1) / kBlock; }

  /// Tries blocks until none is left, and adds what came of them.
  void work() {
    SizeTrial trial(in_force_, plan_);
    Found found;
    while (!cancel_) {
      const std::size_t first = kBlock * next_block_++;
      if (first >= grid_.size()) break;
      const std::size_t end = std::min(first + kBlock, grid_.size());
      tryBlock(trial, first, end, found);
      report(end - first);
    }
    const std::lock_guard lock(mutex_);
    merge(found_, std::move(found));
  }

  SearchResult result() const {
    SearchResult result;
    SizeTrial trial(in_force_, plan_);
    result.by_cost = by_cost_;
    result.target_years_in_ten = in_force_.water ? in_force_.water->target_years_in_ten : 0;
    const auto years = [&](const Candidate& size) {
      return cancel_ ? 0 : reliability_->exact(trial.curveFor(size));
    };
    for (const Offer& offer : frontierOf(found_.offers, years)) {
      result.frontier.push_back(offer.size);
      if (reliability_) result.frontier.back().years_in_ten = offer.most_gain;
      const bool meets = reliability_ && offer.most_gain >= result.target_years_in_ten;
      if (meets && !result.cheapest) result.cheapest = result.frontier.back();
    }
    if (found_.largest) {
      result.largest = found_.largest->size;
      if (reliability_) result.largest->years_in_ten = years(*result.largest);
    }
    if (cancel_) return {};
    result.tried = found_.tried;
    result.within = found_.within;
    result.left_out = found_.left_out;
    return result;
  }

private:
  const Project in_force_;
  const Plan& plan_;
  const SizeGrid grid_;
  const bool by_cost_;
  const std::function<void(double)>& progress_;
  const std::atomic<bool>& cancel_;
  std::optional<Reliability> reliability_;
  std::atomic<std::size_t> next_block_ = 0;
  std::mutex mutex_;
  std::size_t done_ = 0;
  Found found_;

  void tryBlock(SizeTrial& trial, std::size_t first, std::size_t end, Found& found) const {
    std::vector<Offer> offers;
    std::vector<water::TankCurve> curves;
    for (std::size_t k = first; k < end && !cancel_; ++k) {
      Candidate size = grid_.at(k);
      ++found.tried;
      if (const std::optional<Limit> broken = trial.attempt(size)) {
        count(*broken, found.left_out);
        continue;
      }
      offers.push_back(offerOf(size));
      curves.push_back(trial.curve());
    }
    found.within += offers.size();
    if (!reliability_ || setYears(offers, curves)) keepBest(trial, std::move(offers), found);
  }

  /// With its price, or a lower one where that takes longer to find.
  Offer offerOf(const Candidate& size) const {
    return {size, by_cost_ ? *size.cost : size.cement_bags, size.full_volume_m3, size.full_volume_m3};
  }

  void keepBest(SizeTrial& trial, std::vector<Offer> offers, Found& found) const {
    std::sort(offers.begin(), offers.end(), comesBefore);
    for (Offer& offer : offers) {
      if (cancel_) return;
      const bool is_large = !found.largest || offer.size.full_volume_m3 >= found.largest->size.full_volume_m3;
      const bool is_good = !isMatched(offer, found.offers);
      if (!is_large && !is_good) continue;
      setPrice(trial, offer);
      if (is_large && isLarger(offer, found.largest)) found.largest = offer;
      if (!is_good) continue;
      insert(found.offers, offer);
    }
  }

  void setPrice(SizeTrial& trial, Offer& offer) const {
    if (!by_cost_) return;
    offer.price = trial.costOf(offer.size);
    offer.size.cost = offer.price;
  }

  /// False when cancelled.
  bool setYears(std::vector<Offer>& offers, const std::vector<water::TankCurve>& curves) const {
    const std::vector<YearsBounds> bounds = reliability_->bounds(curves, cancel_);
    if (bounds.size() != offers.size()) return false;
    for (std::size_t i = 0; i < offers.size(); ++i) {
      offers[i].least_gain = bounds[i].least;
      offers[i].most_gain = bounds[i].most;
    }
    return true;
  }

  void report(std::size_t more) {
    const std::lock_guard lock(mutex_);
    done_ += more;
    if (progress_) progress_(static_cast<double>(done_) / static_cast<double>(grid_.size()));
  }
};

}  // namespace

std::size_t candidateCount(const Project& project) {
  return SizeGrid(project).size();
}

SearchResult searchSizes(const Project& project, const Plan& plan, unsigned threads,
                         const std::function<void(double)>& progress, const std::atomic<bool>& cancel) {
  Search search(project, plan, progress, cancel);
  {
    const std::size_t spread = std::clamp<std::size_t>(search.blocks(), 1, std::max(threads, 1U));
    std::vector<std::jthread> others;
    for (std::size_t t = 1; t < spread; ++t) others.emplace_back([&search] { search.work(); });
    search.work();
  }
  return search.result();
}

Candidate presentSize(const Project& project, const Plan& plan) {
  const Tank& tank = project.tank;
  Candidate now;
  now.length_m = tank.shape == Shape::round ? tank.diameter_m : tank.length_m;
  now.width_m = tank.width_m;
  now.depth_m = tank.depth_m;
  now.full_volume_m3 = plan.tank.full_volume_m3;
  now.cement_bags = lining::orderOf(plan.quantities, "cement_bags");
  if (plan.cost) now.cost = plan.cost->bill.total;
  if (plan.water) now.years_in_ten = plan.water->years_in_ten;
  return now;
}

Project withSize(Project project, const Candidate& candidate) {
  const Tank entered = project.tank;
  setSize(project.tank, entered, candidate);
  return project;
}

}  // namespace core::compare
