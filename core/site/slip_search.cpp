#include "core/site/slip_search.h"

#include "core/site/slip_slices.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <vector>

namespace core::site {
namespace {

using Eigen::Vector2d;

constexpr int kMostRounds = 40;  // while searching; circles that need more are passed over
constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kSteepest = 0.999 * std::numbers::pi / 2;  // of the slip at its upper end

bool isCancelled(const std::atomic<bool>* cancel) {
  return cancel && cancel->load(std::memory_order_relaxed);
}

/// A circle by its ends and its bulge.
struct Trial {
  double upper_x, lower_x;
  double bulge;  ///< 0 to 1 of the deepest that is allowed
};

struct Rated {
  Trial trial;
  double factor;
};

class Searcher {
public:
  Searcher(const SlopeSection& section, const SlipSearch& search, const std::atomic<bool>* cancel)
      : section_(section), search_(search), cancel_(cancel) {
    options_.slices = search.slices;
    options_.most_rounds = kMostRounds;
    span_ = section.mostX() - section.leastX();
  }

  tl::expected<CriticalSlip, SearchFault> run() {
    std::vector<Rated> best = grid();
    if (isCancelled(cancel_)) return tl::unexpected(SearchFault::cancelled);
    for (Rated& rated : best) {
      refine(rated);
      if (isCancelled(cancel_)) return tl::unexpected(SearchFault::cancelled);
    }
    std::stable_sort(best.begin(), best.end(),
                     [](const Rated& a, const Rated& b) { return a.factor < b.factor; });
    for (const Rated& rated : best) {
      auto slip = bishop(section_, *circleOf(rated.trial), search_.answer);
      if (slip) return answer(std::move(*slip));
    }
    return tl::unexpected(SearchFault::nothing_found);
  }

private:
  const SlopeSection& section_;
  const SlipSearch& search_;
  const std::atomic<bool>* cancel_;
  BishopOptions options_;
  double span_ = 0;
  std::size_t tried_ = 0, refused_ = 0;

  CriticalSlip answer(Slip slip) const {
    const double near = 1e-3 * span_;
    const bool is_at_end = slip.from_x_m < section_.leastX() + near || slip.to_x_m > section_.mostX() - near;
    return {std::move(slip), tried_, refused_, is_at_end};
  }

  std::vector<double> stations() const {
    std::vector<double> x;
    for (int k = 0; k <= search_.stations; ++k) x.push_back(section_.leastX() + span_ * k / search_.stations);
    for (const Vector2d& p : section_.ground_m) x.push_back(p.x());
    x.push_back(held(mostUpper()));
    std::sort(x.begin(), x.end());
    x.erase(std::unique(x.begin(), x.end()), x.end());
    return x;
  }

  /// Circle through the ends of a trial; `half` is half the angle of its arc.
  SlipCircle through(const Vector2d& upper, const Vector2d& lower, double half) const {
    const Vector2d chord = lower - upper;
    const double radius = chord.norm() / (2 * std::sin(half));
    Vector2d square(-chord.y(), chord.x());  // to the side of the centre: upward
    if (square.y() < 0) square = -square;
    return {(upper + lower) / 2 + radius * std::cos(half) * square.normalized(), radius};
  }

  double lowest(const SlipCircle& circle, const Vector2d& upper, const Vector2d& lower) const {
    const double x =
        std::clamp(circle.centre_m.x(), std::min(upper.x(), lower.x()), std::max(upper.x(), lower.x()));
    return slipLevel(circle, x);
  }

  std::optional<SlipCircle> circleOf(const Trial& trial) const {
    const Vector2d upper(trial.upper_x, heightAt(section_.ground_m, trial.upper_x));
    const Vector2d lower(trial.lower_x, heightAt(section_.ground_m, trial.lower_x));
    const double down = std::atan2(upper.y() - lower.y(), std::abs(upper.x() - lower.x()));
    if (!(down > 0)) return std::nullopt;
    double most = kSteepest - down;
    if (most <= 1e-6) return std::nullopt;
    if (section_.firm_level_m && lowest(through(upper, lower, most), upper, lower) < *section_.firm_level_m) {
      double least = 1e-6;
      for (int i = 0; i < 50; ++i) {
        const double half = (least + most) / 2;
        (lowest(through(upper, lower, half), upper, lower) < *section_.firm_level_m ? most : least) = half;
      }
      most = least;
    }
    return through(upper, lower, trial.bulge * most);
  }

  double rate(const Trial& trial) {
    const std::optional<SlipCircle> circle = circleOf(trial);
    if (!circle) return kInfinity;
    ++tried_;
    const auto slip = bishop(section_, *circle, options_);
    const bool is_deep = slip && slip->from_x_m <= mostUpper() && isLowEnough(trial.lower_x) &&
                         std::any_of(slip->slices.begin(), slip->slices.end(), [&](const SlipSlice& s) {
                           return s.ground_m - s.base_m >= search_.least_depth_m;
                         });
    if (is_deep) return slip->factor;
    ++refused_;
    return kInfinity;
  }

  /// The best trials of a coarse grid, no two of them neighbours.
  std::vector<Rated> grid() {
    std::vector<Rated> all;
    const std::vector<double> x = stations();
    for (const double upper : x) {
      if (isCancelled(cancel_)) return {};
      if (upper > mostUpper()) continue;
      for (const double lower : x) {
        if (heightAt(section_.ground_m, upper) <= heightAt(section_.ground_m, lower)) continue;
        if (!isLowEnough(lower)) continue;
        for (int k = 1; k <= search_.depths; ++k) {
          const Trial trial{upper, lower, static_cast<double>(k) / search_.depths};
          const double factor = rate(trial);
          if (factor < kInfinity) all.push_back({trial, factor});
        }
      }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Rated& a, const Rated& b) { return a.factor < b.factor; });
    std::vector<Rated> best;
    for (const Rated& rated : all) {
      if (best.size() == static_cast<std::size_t>(search_.starts)) break;
      const bool is_near =
          std::any_of(best.begin(), best.end(), [&](const Rated& b) { return near(b.trial, rated.trial); });
      if (!is_near) best.push_back(rated);
    }
    return best;
  }

  bool near(const Trial& a, const Trial& b) const {
    const double station = 1.5 * span_ / search_.stations;
    return std::abs(a.upper_x - b.upper_x) < station && std::abs(a.lower_x - b.lower_x) < station &&
           std::abs(a.bulge - b.bulge) < 1.5 / search_.depths;
  }

  /// Moves to the best of the 26 neighbours; halves the steps where none is better.
  void refine(Rated& rated) {
    double x_step = span_ / search_.stations / 2;
    double bulge_step = 0.5 / search_.depths;
    while (x_step > 1e-5 * span_ && !isCancelled(cancel_)) {
      const Rated from = rated;
      for (int k = 0; k < 27; ++k) {
        const std::array<int, 3> way{k % 3 - 1, k / 3 % 3 - 1, k / 9 - 1};
        const Trial trial{std::min(held(from.trial.upper_x + way[0] * x_step), mostUpper()),
                          held(from.trial.lower_x + way[1] * x_step),
                          std::clamp(from.trial.bulge + way[2] * bulge_step, 1e-3, 1.0)};
        const double factor = k == 13 ? kInfinity : rate(trial);
        if (factor < rated.factor * (1 - 1e-9)) rated = {trial, factor};
      }
      if (rated.factor == from.factor) {
        x_step /= 2;
        bulge_step /= 2;
      }
    }
  }

  double mostUpper() const { return search_.upper_end_most_x_m.value_or(section_.mostX()); }
  bool isLowEnough(double lower_x) const {
    return !search_.lower_end_most_z_m ||
           heightAt(section_.ground_m, lower_x) <= *search_.lower_end_most_z_m + 1e-9;
  }
  double held(double x) const { return std::clamp(x, section_.leastX(), section_.mostX()); }
};

}  // namespace

tl::expected<CriticalSlip, SearchFault> criticalSlip(const SlopeSection& section, const SlipSearch& search,
                                                     const std::atomic<bool>* cancel) {
  if (!isSound(section)) return tl::unexpected(SearchFault::bad_section);
  const auto [low, high] =
      std::minmax_element(section.ground_m.begin(), section.ground_m.end(),
                          [](const Vector2d& a, const Vector2d& b) { return a.y() < b.y(); });
  if (low->y() == high->y()) return tl::unexpected(SearchFault::level_section);
  return Searcher(section, search, cancel).run();
}

}  // namespace core::site
