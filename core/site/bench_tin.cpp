#include "core/site/bench_parts.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace core::site {
namespace {

using Eigen::Vector3d;

/// Outer edge of a piece of ground that was kept where it stands out of a face: the side on which both meet.
template <typename Lines>
void addDaylight(const Patch& piece, const Patch& face, const Linear& standing_out, Lines& lines) {
  constexpr double kMeets_m = 1e-9;
  for (std::size_t k = 0; k < piece.size(); ++k) {
    const std::size_t next = (k + 1) % piece.size();
    const bool meets =
        std::abs(standing_out.at(piece[k])) <= kMeets_m && std::abs(standing_out.at(piece[next])) <= kMeets_m;
    if (meets && (piece[k] - piece[next]).head<2>().norm() > kMeets_m) lines.push_back({face[k], face[next]});
  }
}

/// One bench laid over ground patch by patch.
class Cutter {
public:
  Cutter(const BenchShape& shape, const BenchEdges& edges, double level_m, Pieces pieces)
      : shape_(shape), edges_(edges), level_m_(level_m), pieces_(pieces) {
    for (const Linear& outward : edges.outward) {
      cut_plane_.push_back({outward.per_m / shape.cut_batter, outward.constant / shape.cut_batter + level_m});
      fill_plane_.push_back(
          {-outward.per_m / shape.fill_batter, -outward.constant / shape.fill_batter + level_m});
    }
  }

  void add(const Patch& ground) {
    Patch inside = ground;
    for (const Linear& outward : edges_.outward) {
      inside = keep(inside, -outward);
      if (inside.empty()) break;
    }
    if (!inside.empty()) addPlatform(inside, level_m_, shape_.topsoil_m, pieces_, parts_);
    for (std::size_t k = 0; k < edges_.size(); ++k) addSector(ground, k);
  }

  BenchParts take() { return std::move(parts_); }

private:
  void addSector(const Patch& ground, std::size_t k) {
    Patch outside = ground;
    for (const Linear& bound : edges_.sector[k]) {
      outside = keep(outside, bound);
      if (outside.empty()) return;
    }
    addCut(outside, cut_plane_[k]);
    addFill(outside, fill_plane_[k]);
  }

  void addCut(const Patch& outside, const Linear& plane) {
    const Linear above = Linear{Vector3d::UnitZ(), 0} - plane;
    const Patch piece = keep(outside, above);
    if (piece.empty()) return;
    const Linear under_topsoil = above + (-shape_.topsoil_m);
    const Patch deep = keep(piece, under_topsoil);
    const double cut_m3 = integral(deep, under_topsoil);
    parts_.cut_m3 += cut_m3;
    parts_.strip_m3 += integral(piece, above) - cut_m3;
    parts_.cut_face_m2 += planArea(piece);
    parts_.cut_m2 += planArea(deep);
    if (pieces_ == Pieces::left_out) return;
    parts_.cut_face.push_back(moved(piece, plane));
    addDaylight(piece, parts_.cut_face.back(), above, parts_.cut_daylight);
  }

  void addFill(const Patch& outside, const Linear& plane) {
    const Linear below = plane - Linear{Vector3d::UnitZ(), 0};
    const Patch piece = keep(outside, below);
    if (piece.empty()) return;
    const double area = planArea(piece);
    parts_.fill_m3 += integral(piece, below) + area * shape_.topsoil_m;
    parts_.strip_m3 += area * shape_.topsoil_m;
    parts_.fill_face_m2 += area;
    parts_.fill_m2 += area;
    if (pieces_ == Pieces::left_out) return;
    parts_.fill_face.push_back(moved(piece, plane));
    addDaylight(piece, parts_.fill_face.back(), below, parts_.fill_daylight);
  }

  const BenchShape& shape_;
  const BenchEdges& edges_;
  double level_m_;
  Pieces pieces_;
  std::vector<Linear> cut_plane_, fill_plane_;
  BenchParts parts_;
};

/// How far outside the outline a point lies, by the edge it is farthest out of; below 0 inside.
double outside(const BenchEdges& edges, const Vector3d& p) {
  double most = -std::numeric_limits<double>::infinity();
  for (const Linear& outward : edges.outward) most = std::max(most, outward.at(p));
  return most;
}

/// Least that any place of a triangle can lie outside the outline.
double leastOutside(const BenchEdges& edges, const std::array<Vector3d, 3>& c) {
  double most = 0;
  for (const Linear& outward : edges.outward)
    most = std::max(most, std::min({outward.at(c[0]), outward.at(c[1]), outward.at(c[2])}));
  return most;
}

/// Highest value along a straight line of a function that bends downward only.
template <typename Function>
double highest(const Vector3d& from, const Vector3d& to, Function f) {
  double low = 0;
  double high = 1;
  const auto at = [&](double share) { return f(from + share * (to - from)); };
  for (int i = 0; i < 60; ++i) {
    const double a = low + (high - low) / 3;
    const double b = high - (high - low) / 3;
    if (at(a) < at(b)) {
      low = a;
    } else {
      high = b;
    }
  }
  return at((low + high) / 2);
}

}  // namespace

std::vector<Tin::Triangle> trianglesNear(const Tin& tin, const BenchShape& shape, const BenchEdges& edges,
                                         double least_level_m, double most_level_m) {
  std::vector<Tin::Triangle> near;
  for (const Tin::Triangle& t : tin.triangles) {
    const std::array<Vector3d, 3> c = tin.corners(t);
    const double out = leastOutside(edges, c);
    const double high = std::max({c[0].z(), c[1].z(), c[2].z()});
    const double low = std::min({c[0].z(), c[1].z(), c[2].z()});
    if (out <= 0 || high >= least_level_m + out / shape.cut_batter ||
        low <= most_level_m - out / shape.fill_batter)
      near.push_back(t);
  }
  return near;
}

BenchParts tinBench(const Tin& tin, const std::vector<Tin::Triangle>& triangles, const BenchShape& shape,
                    const BenchEdges& edges, double level_m, Pieces pieces) {
  Cutter cutter(shape, edges, level_m, pieces);
  for (const Tin::Triangle& t : triangles) {
    const std::array<Vector3d, 3> c = tin.corners(t);
    cutter.add({c.begin(), c.end()});
  }
  return cutter.take();
}

bool leavesSurvey(const Tin& tin, const BenchShape& shape, const BenchEdges& edges, double level_m) {
  constexpr double kTouches_m = 1e-9;
  for (const auto& [a, b] : tin.rim) {
    const Vector3d& from = tin.points_m[a];
    const Vector3d& to = tin.points_m[b];
    const auto cut = [&](const Vector3d& p) {
      return p.z() - level_m - std::max(0.0, outside(edges, p)) / shape.cut_batter;
    };
    const auto fill = [&](const Vector3d& p) {
      return level_m - std::max(0.0, outside(edges, p)) / shape.fill_batter - p.z();
    };
    if (highest(from, to, cut) > kTouches_m || highest(from, to, fill) > kTouches_m) return true;
  }
  return false;
}

}  // namespace core::site
