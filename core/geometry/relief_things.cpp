#include "core/geometry/relief.h"
#include "core/geometry/triangulate.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include <Eigen/Geometry>

namespace core::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using Index = std::uint32_t;

constexpr Index kHeapSides = 48, kHeapRings = 6;
constexpr Index kMarkerSides = 16;
constexpr double kMarkerHeight_m = 0.9, kMarkerRadius_m = 0.12;
constexpr double kArrowLength_m = 1.2, kArrowThickness_m = 0.08;
constexpr double kOverGround_m = 0.01;  // gap under the arrow
constexpr double kClear_m = 0.15;       // between the arrow and edges of the ground

Vector2d onCircle(const Vector2d& centre, double radius_m, Index side, Index sides) {
  const double turn = 2 * std::numbers::pi * side / sides;
  return centre + radius_m * Vector2d(std::cos(turn), std::sin(turn));
}

/// Rings about a middle, the outermost first, then the middle itself; seen from above or from below.
class Dome {
public:
  Dome(Index sides, Index rings) : sides_(sides), rings_(rings) {}

  /// @param number gives the index of a point in the mesh; ring `rings` is the middle
  template <typename Number>
  void addTriangles(Mesh& mesh, bool upward, Number number) const {
    const auto add = [&](Index a, Index b, Index c) {
      mesh.triangles.push_back(upward ? std::array{a, b, c} : std::array{a, c, b});
    };
    for (Index side = 0; side < sides_; ++side) {
      const Index next = (side + 1) % sides_;
      for (Index ring = 0; ring + 1 < rings_; ++ring) {
        add(number(ring, side), number(ring, next), number(ring + 1, next));
        add(number(ring, side), number(ring + 1, next), number(ring + 1, side));
      }
      add(number(rings_ - 1, side), number(rings_ - 1, next), number(rings_, 0));
    }
  }

private:
  Index sides_, rings_;
};

/// Outline of the arrow, tip at (length / 2, 0), anticlockwise.
std::vector<Vector2d> arrowOutline() {
  const double l = kArrowLength_m / 2, neck = l - 0.45;
  return {{l, 0}, {neck, 0.25}, {neck, 0.09}, {-l, 0.09}, {-l, -0.09}, {neck, -0.09}, {neck, -0.25}};
}

/// Arrow laid out in plan at a place.
std::vector<Vector2d> arrowAt(const Vector2d& middle, const Vector2d& along) {
  std::vector<Vector2d> placed = arrowOutline();
  const Vector2d left(-along.y(), along.x());
  for (Vector2d& p : placed) p = middle + p.x() * along + p.y() * left;
  return placed;
}

/// Prism of an outline that lies tilted on the ground, touching none of it.
Mesh laidOn(const FinishedGround& ground, const std::vector<Vector2d>& outline, const Vector2d& middle,
            const Vector2d& along) {
  const Vector2d left(-along.y(), along.x());
  const auto rise = [&](const Vector2d& way, double half) {
    return (ground.finished(middle + half * way) - ground.finished(middle - half * way)) / (2 * half);
  };
  const Vector2d gradient = rise(along, kArrowLength_m / 2) * along + rise(left, 0.25) * left;
  double lift = -std::numeric_limits<double>::infinity();
  for (const Vector2d& p : outline)
    lift = std::max(lift, ground.finished(p) - gradient.dot(p - middle) + kOverGround_m);
  Mesh mesh;
  for (const double up : {0.0, kArrowThickness_m})
    for (const Vector2d& p : outline)
      mesh.points.emplace_back(p.x(), p.y(), lift + up + gradient.dot(p - middle));
  const auto n = static_cast<Index>(outline.size());
  for (const auto& t : triangulate(outline)) {
    mesh.triangles.push_back({t[0], t[2], t[1]});
    mesh.triangles.push_back({n + t[0], n + t[1], n + t[2]});
  }
  for (Index k = 0; k < n; ++k) {
    const Index next = (k + 1) % n;
    mesh.triangles.push_back({k, next, n + next});
    mesh.triangles.push_back({k, n + next, n + k});
  }
  return mesh;
}

bool isDisturbed(const GroundHeights& at) {
  return at.above_cut_m > 0 || at.below_fill_m > 0;
}

/// Whether an arrow may lie at a place.
struct Room {
  const FinishedGround& ground;
  const std::optional<CutPlane>& plane;
  Vector2d person;
  bool undisturbed;

  bool holds(const std::vector<Vector2d>& outline) const {
    return std::all_of(outline.begin(), outline.end(), [&](const Vector2d& p) { return holds(p); });
  }

  bool holds(const Vector2d& p) const {
    constexpr double kFromPerson_m = 0.6;
    if (plane && plane->normal.normalized().dot(p - plane->point) > -kClear_m) return false;
    const double offset = ground.offset(p);
    const double inner = (undisturbed ? ground.platform() : ground.pitEdge()) + kClear_m;
    if (offset < inner || offset > ground.outermost() - kClear_m) return false;
    if (undisturbed && isDisturbed(ground.heights(p, offset))) return false;
    if ((p - person).norm() < kFromPerson_m) return false;
    const std::optional<Relief::Heap>& heap = ground.relief().heap;
    return !heap || (p - heap->centre).norm() > heap->base_radius_m + kClear_m;
  }
};

/// Place for the middle of the arrow: straight uphill of the tank, else turned more and more to the sides.
std::optional<Vector2d> placeForArrow(const Room& room, const Vector2d& downhill) {
  constexpr double kStep_m = 0.1, kTurn = std::numbers::pi / 12;
  for (int turn = 0; turn <= 12; ++turn) {
    for (const double sign : {1.0, -1.0}) {
      const Vector2d way = Eigen::Rotation2Dd(sign * turn * kTurn) * -downhill;
      for (double far = 0;; far += kStep_m) {
        const Vector2d middle = room.ground.middle() + far * way;
        if (room.ground.offset(middle) > room.ground.outermost()) break;
        if (room.holds(arrowAt(middle, downhill))) return middle;
      }
    }
  }
  return std::nullopt;
}

}  // namespace

Mesh heap(const FinishedGround& ground, const Relief::Heap& heap) {
  Mesh mesh;
  // rings from the base inward, evenly up the side; the last one is the edge of the top
  const auto add = [&](const Vector2d& p, double over) {
    mesh.points.emplace_back(p.x(), p.y(), ground.natural(p) + over);
  };
  const auto radius = [&](Index ring) {
    return heap.base_radius_m + (heap.top_radius_m - heap.base_radius_m) * ring / kHeapRings;
  };
  const bool pointed = heap.top_radius_m <= 0;
  const Index rings = pointed ? kHeapRings : kHeapRings + 1;
  for (const double share : {1.0, 0.0}) {
    for (Index ring = 0; ring < rings; ++ring)
      for (Index side = 0; side < kHeapSides; ++side)
        add(onCircle(heap.centre, radius(ring), side, kHeapSides), share * heap.height_m * ring / kHeapRings);
    add(heap.centre, share * heap.height_m);
  }
  const Dome dome(kHeapSides, rings);
  const Index underside = rings * kHeapSides + 1;
  dome.addTriangles(mesh, true, [&](Index ring, Index side) { return ring * kHeapSides + side; });
  dome.addTriangles(mesh, false, [&](Index ring, Index side) {
    return (ring == 0 ? 0 : underside) + ring * kHeapSides + side;  // the edge of the base is shared
  });
  return mesh;
}

std::optional<Mesh> fallArrow(const FinishedGround& ground, const std::optional<CutPlane>& plane,
                              const Vector2d& person) {
  if (!ground.relief().downhill) return std::nullopt;
  const Vector2d downhill = ground.relief().downhill->normalized();
  for (const bool undisturbed : {true, false}) {
    const Room room{ground, plane, person, undisturbed};
    if (const std::optional<Vector2d> middle = placeForArrow(room, downhill))
      return laidOn(ground, arrowAt(*middle, downhill), *middle, downhill);
  }
  return std::nullopt;
}

Mesh marker(const Vector3d& at) {
  Mesh mesh;
  mesh.points.push_back(at);
  mesh.points.push_back(at + kMarkerHeight_m * Vector3d::UnitZ());
  for (Index side = 0; side < kMarkerSides; ++side) {
    const Vector2d p = onCircle(at.head<2>(), kMarkerRadius_m, side, kMarkerSides);
    mesh.points.emplace_back(p.x(), p.y(), at.z() + kMarkerHeight_m / 2);
  }
  for (Index side = 0; side < kMarkerSides; ++side) {
    const Index here = 2 + side, next = 2 + (side + 1) % kMarkerSides;
    mesh.triangles.push_back({here, next, 1});
    mesh.triangles.push_back({next, here, 0});
  }
  return mesh;
}

}  // namespace core::geometry
