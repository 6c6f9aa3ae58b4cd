#include "core/geometry/relief.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace core::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using Polygon = std::vector<Vector3d>;

constexpr double kRaised_m = 0.008;
constexpr double kStripe_m = 0.12;
constexpr double kStripePitch_m = 0.5;
constexpr double kDashRowPitch_m = 0.35;
constexpr double kDash_m = 0.4, kDashPitch_m = 0.7;
constexpr double kLeastArea_m2 = 1e-8;

CutMesh opened(Mesh mesh, const std::optional<CutPlane>& plane) {
  if (plane) return cut(mesh, *plane);
  CutMesh whole;
  whole.first_section_triangle = mesh.triangles.size();
  whole.origin.resize(mesh.triangles.size());
  for (std::uint32_t k = 0; k < whole.origin.size(); ++k) whole.origin[k] = k;
  whole.mesh = std::move(mesh);
  return whole;
}

/// What is left of a convex polygon where `along` . (x, y) is at most a limit.
Polygon upTo(const Polygon& polygon, const Vector2d& along, double limit) {
  Polygon kept;
  for (std::size_t k = 0; k < polygon.size(); ++k) {
    const Vector3d& a = polygon[k];
    const Vector3d& b = polygon[(k + 1) % polygon.size()];
    const double da = along.dot(a.head<2>()) - limit;
    const double db = along.dot(b.head<2>()) - limit;
    if (da <= 0) kept.push_back(a);
    if (da * db < 0) kept.push_back(a + da / (da - db) * (b - a));
  }
  return kept;
}

/// Parallel stripes in plan: along . p from a whole number of pitches, plus a shift, over a width.
struct Stripes {
  Vector2d along;
  double pitch_m, width_m, shift_m = 0;

  /// Hands each stripe's piece of a polygon to a function, with the stripe's number.
  template <typename Use>
  void cross(const Polygon& polygon, Use use) const {
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    for (const Vector3d& p : polygon) {
      least = std::min(least, along.dot(p.head<2>()));
      most = std::max(most, along.dot(p.head<2>()));
    }
    const auto last = static_cast<int>(std::floor((most - shift_m) / pitch_m));
    for (int k = static_cast<int>(std::floor((least - shift_m) / pitch_m)); k <= last; ++k) {
      const double from = k * pitch_m + shift_m;
      const Polygon piece = upTo(upTo(polygon, along, from + width_m), -along, -from);
      if (piece.size() > 2) use(piece, k);
    }
  }
};

void addRaised(Mesh& mesh, const Polygon& piece) {
  const auto first = static_cast<std::uint32_t>(mesh.points.size());
  for (const Vector3d& p : piece) mesh.points.push_back(p + kRaised_m * Vector3d::UnitZ());
  for (std::uint32_t k = 1; k + 1 < piece.size(); ++k) {
    const Vector2d ab = (piece[k] - piece[0]).head<2>(), ac = (piece[k + 1] - piece[0]).head<2>();
    if (ab.x() * ac.y() - ab.y() * ac.x() > kLeastArea_m2)
      mesh.triangles.push_back({first, first + k, first + k + 1});
  }
}

}  // namespace

std::vector<Part> zoneParts(ZonedBlock block, const std::optional<CutPlane>& plane) {
  const CutMesh c = opened(std::move(block.mesh), plane);
  std::vector<Part> parts{{"ground", Role::ground, 0, {c.mesh.points, {}}, 0},
                          {"excavation", Role::excavation, 0, {c.mesh.points, {}}, 0},
                          {"cut", Role::cut, 0, {c.mesh.points, {}}, 0},
                          {"fill", Role::fill, 0, {c.mesh.points, {}}, 0}};
  const auto partOf = [&](Zone zone) -> Part& {
    return parts[zone == Zone::ground ? 0 : zone == Zone::pit ? 1 : zone == Zone::cut ? 2 : 3];
  };
  for (std::size_t k = 0; k < c.first_section_triangle; ++k)
    partOf(block.zone[c.origin[k]]).mesh.triangles.push_back(c.mesh.triangles[k]);
  for (Part& part : parts) part.first_section_triangle = part.mesh.triangles.size();
  for (std::size_t k = c.first_section_triangle; k < c.mesh.triangles.size(); ++k)
    parts[0].mesh.triangles.push_back(c.mesh.triangles[k]);
  std::erase_if(parts, [](const Part& part) { return part.mesh.empty() && part.role != Role::ground; });
  return parts;
}

Part pattern(const Part& zone, const std::optional<Vector2d>& downhill) {
  const Vector2d down = downhill.value_or(Vector2d::UnitX());
  const Vector2d across(-down.y(), down.x());
  const Stripes stripes{across, kStripePitch_m, kStripe_m};
  const Stripes rows{down, kDashRowPitch_m, kStripe_m};
  Part part{zone.id + "_pattern", zone.role, 0, {}, 0};
  for (const auto& t : zone.mesh.triangles) {
    const Polygon triangle{zone.mesh.points[t[0]], zone.mesh.points[t[1]], zone.mesh.points[t[2]]};
    if (zone.role == Role::cut) {
      stripes.cross(triangle, [&](const Polygon& piece, int) { addRaised(part.mesh, piece); });
      continue;
    }
    rows.cross(triangle, [&](const Polygon& row, int number) {
      const double shift = number % 2 == 0 ? 0 : kDashPitch_m / 2;
      Stripes{across, kDashPitch_m, kDash_m, shift}.cross(
          row, [&](const Polygon& piece, int) { addRaised(part.mesh, piece); });
    });
  }
  part.first_section_triangle = part.mesh.triangles.size();
  return part;
}

}  // namespace core::geometry
