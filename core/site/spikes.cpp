#include "core/site/spikes.h"

#include "core/site/neighbours.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include <Eigen/Dense>

namespace core::site {
namespace {

using Eigen::Vector3d;
using Index = std::uint32_t;

constexpr std::size_t kInPlane = 8;  // neighbours that make the plane
constexpr std::size_t kKnown = 14;   // neighbours kept, for when some are taken out
constexpr std::size_t kFewest = 5;

double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

class Planes {
public:
  explicit Planes(const std::vector<Vector3d>& points) : points_(points), is_out_(points.size(), false) {
    const Neighbours near(points);
    for (Index k = 0; k < points.size(); ++k) known_.push_back(near.nearest(k, kKnown));
  }

  /// Height of the plane through a point's neighbours; nothing when they are too few or in one line.
  std::optional<double> heightAt(Index k) const {
    const Vector3d about = points_[k];
    Eigen::Matrix3d normal = Eigen::Matrix3d::Zero();
    Vector3d right = Vector3d::Zero();
    double reach = 0;
    std::size_t used = 0;
    for (const Index n : known_[k]) {
      if (is_out_[n] || used == kInPlane) continue;
      const Vector3d d = points_[n] - about;
      const Vector3d row(1, d.x(), d.y());
      normal += row * row.transpose();
      right += d.z() * row;
      reach = std::max(reach, d.head<2>().norm());
      ++used;
    }
    if (used < kFewest || !(reach > 0)) return std::nullopt;
    const Vector3d scale(1, 1 / reach, 1 / reach);
    const Eigen::Matrix3d scaled = scale.asDiagonal() * normal * scale.asDiagonal();
    if (scaled.determinant() < 1e-6 * std::pow(static_cast<double>(used), 3)) return std::nullopt;
    return about.z() + scaled.ldlt().solve(scale.asDiagonal() * right)[0];
  }

  void takeOut(Index k) { is_out_[k] = true; }
  bool isOut(Index k) const { return is_out_[k]; }
  bool knows(Index k, Index other) const {
    return std::find(known_[k].begin(), known_[k].end(), other) != known_[k].end();
  }

private:
  const std::vector<Vector3d>& points_;
  std::vector<bool> is_out_;
  std::vector<std::vector<Index>> known_;
};

}  // namespace

std::vector<Spike> spikes(const std::vector<Vector3d>& points_m, const SurveyLimits& limits, std::size_t most,
                          const std::atomic<bool>* cancel) {
  const auto isCancelled = [&] { return cancel && cancel->load(std::memory_order_relaxed); };
  if (points_m.size() <= kFewest || isCancelled()) return {};
  Planes planes(points_m);
  std::vector<double> plane(points_m.size());
  const auto residual = [&](Index k) { return points_m[k].z() - plane[k]; };
  const auto fit = [&](Index k) { plane[k] = planes.heightAt(k).value_or(points_m[k].z()); };
  std::vector<double> residuals;
  for (Index k = 0; k < points_m.size(); ++k) {
    if (k % 1024 == 0 && isCancelled()) return {};
    fit(k);
    residuals.push_back(residual(k));
  }
  const double middle = median(residuals);
  for (double& r : residuals) r = std::abs(r - middle);
  // modified z-score 0.6745 |r - median| / MAD (Iglewicz, Hoaglin 1993)
  const double tolerance = std::max(limits.spike_score * median(residuals) / 0.6745, limits.least_spike_m);

  std::vector<Spike> found;
  while (found.size() < most && !isCancelled()) {
    Index worst = 0;
    double farthest = 0;
    for (Index k = 0; k < points_m.size(); ++k) {
      if (planes.isOut(k) || std::abs(residual(k) - middle) <= farthest) continue;
      farthest = std::abs(residual(k) - middle);
      worst = k;
    }
    if (farthest <= tolerance) break;
    found.push_back({worst, plane[worst] + middle, tolerance});
    planes.takeOut(worst);
    for (Index k = 0; k < points_m.size(); ++k) {
      if (planes.knows(k, worst)) fit(k);
    }
  }
  return found;
}

}  // namespace core::site
