#include "core/site/ground.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using Index = std::uint32_t;

struct Range {
  double least = std::numeric_limits<double>::infinity();
  double most = -least;

  void take(double z) {
    least = std::min(least, z);
    most = std::max(most, z);
  }
};

/// Contour lines of one level of a survey. A corner at the level counts as above it.
class Tracer {
public:
  Tracer(const Tin& tin, double level_m) : tin_(tin), level_m_(level_m) {}

  void add(const Tin::Triangle& t) {
    std::vector<Index> met;
    for (std::size_t k = 0; k < 3; ++k) {
      const Index a = t[k];
      const Index b = t[(k + 1) % 3];
      if (isAbove(a) != isAbove(b)) met.push_back(crossing(std::min(a, b), std::max(a, b)));
    }
    if (met.size() == 2) steps_.push_back({met[0], met[1]});
  }

  void finish(std::vector<Contour>& out) const {
    for (const std::vector<Index>& run : joined(steps_)) {
      Contour contour{level_m_, {}};
      for (const Index k : run) contour.line.push_back(points_[k]);
      if (!isPoint(contour.line)) out.push_back(std::move(contour));
    }
  }

private:
  const Tin& tin_;
  double level_m_;
  std::map<std::array<Index, 2>, Index> crossings_;
  std::vector<Vector3d> points_;
  std::vector<std::array<Index, 2>> steps_;

  /// True for what is left of a line around a summit at the level.
  static bool isPoint(const Polyline& line) {
    return std::all_of(line.begin(), line.end(), [&](const Vector3d& p) { return p == line.front(); });
  }

  bool isAbove(Index k) const { return tin_.points_m[k].z() >= level_m_; }

  Index crossing(Index a, Index b) {
    const auto [it, fresh] = crossings_.try_emplace({a, b}, static_cast<Index>(points_.size()));
    if (fresh) {
      const Vector3d& p = tin_.points_m[a];
      const Vector3d& q = tin_.points_m[b];
      points_.emplace_back(p + (level_m_ - p.z()) / (q.z() - p.z()) * (q - p));
      points_.back().z() = level_m_;
    }
    return it->second;
  }
};

void traceTin(const Tin& tin, double step_m, std::vector<Contour>& out) {
  // triangles by the contour levels that they meet
  std::map<std::int64_t, Tracer> tracers;
  for (const Tin::Triangle& t : tin.triangles) {
    Range range;
    for (const Index k : t) range.take(tin.points_m[k].z());
    const auto first = static_cast<std::int64_t>(std::ceil(range.least / step_m));
    const auto last = static_cast<std::int64_t>(std::floor(range.most / step_m));
    for (std::int64_t n = first; n <= last; ++n)
      tracers.try_emplace(n, tin, static_cast<double>(n) * step_m).first->second.add(t);
  }
  for (const auto& [n, tracer] : tracers) tracer.finish(out);
}

/// Straight contour of a plane within the box, if it crosses it.
void tracePlane(const Plane& plane, double level_m, const Patch& box, std::vector<Contour>& out) {
  const Linear over{{plane.gradient.x(), plane.gradient.y(), 0}, plane.level_m - level_m};
  Polyline line;
  for (std::size_t k = 0; k < box.size(); ++k) {
    const Vector3d& p = box[k];
    const Vector3d& q = box[(k + 1) % box.size()];
    const double a = over.at(p);
    const double b = over.at(q);
    if ((a < 0) != (b < 0)) line.emplace_back(p + a / (a - b) * (q - p));
  }
  for (Vector3d& p : line) p.z() = level_m;
  if (line.size() == 2) out.push_back({level_m, line});
}

}  // namespace

double contourStep(double range_m, int most) {
  const double wanted = std::max(range_m / std::max(most, 1), 1e-3);
  const double power = std::pow(10, std::floor(std::log10(wanted)));
  for (const double step : {1.0, 2.0, 5.0}) {
    if (step * power >= wanted * (1 - 1e-9)) return step * power;
  }
  return 10 * power;
}

std::vector<Contour> contours(const GroundSurface& ground, double step_m, const Vector2d& box_least_m,
                              const Vector2d& box_most_m) {
  std::vector<Contour> out;
  if (!(step_m > 0)) return out;
  if (const Tin* tin = ground.tin()) {
    traceTin(*tin, step_m, out);
    return out;
  }
  const Vector2d& a = box_least_m;
  const Vector2d& b = box_most_m;
  const Patch box{{a.x(), a.y(), 0}, {b.x(), a.y(), 0}, {b.x(), b.y(), 0}, {a.x(), b.y(), 0}};
  Range range;
  for (const Vector3d& p : box) range.take(ground.plane()->at(p.head<2>()));
  const auto last = static_cast<std::int64_t>(std::floor(range.most / step_m));
  for (auto n = static_cast<std::int64_t>(std::ceil(range.least / step_m)); n <= last; ++n)
    tracePlane(*ground.plane(), static_cast<double>(n) * step_m, box, out);
  return out;
}

}  // namespace core::site
