#include "core/geometry/mesh.h"

#include <Eigen/Geometry>

namespace core::geometry {
namespace {

using Index = std::uint32_t;

void addRing(Mesh& mesh, const Ring& ring, const ProfilePoint& at) {
  for (Eigen::Index k = 0; k < ring.size(); ++k) {
    const Eigen::Vector2d p = ring.at(k, at.offset_m);
    mesh.points.emplace_back(p.x(), p.y(), at.z_m);
  }
}

/// Strip from ring a to ring b (first point indices), seen from the right of the path from a to b.
void addStrip(Mesh& mesh, Index a, Index b, Index n) {
  for (Index k = 0; k < n; ++k) {
    const Index next = (k + 1) % n;
    mesh.triangles.push_back({a + k, a + next, b + next});
    mesh.triangles.push_back({a + k, b + next, b + k});
  }
}

enum class Facing { up, down };

void addCap(Mesh& mesh, Index first, Index n, Facing facing) {
  for (Index k = 1; k + 1 < n; ++k) {
    if (facing == Facing::up) {
      mesh.triangles.push_back({first, first + k, first + k + 1});
    } else {
      mesh.triangles.push_back({first, first + k + 1, first + k});
    }
  }
}

}  // namespace

double volume(const Outline& outline, const Profile& profile) {
  double sum = 0;
  const std::size_t n = profile.points.size();
  const std::size_t segments = profile.ends == Profile::Ends::joined ? n : n - 1;
  for (std::size_t i = 0; i < segments; ++i) {
    const ProfilePoint& a = profile.points[i];
    const ProfilePoint& b = profile.points[(i + 1) % n];
    sum += outline.volume(a.offset_m, b.offset_m, b.z_m - a.z_m);
  }
  return sum;
}

Mesh solid(const Ring& ring, const Profile& profile) {
  Mesh mesh;
  const Index n = static_cast<Index>(ring.size());
  const Index rows = static_cast<Index>(profile.points.size());
  if (rows < 2) return mesh;
  mesh.points.reserve(static_cast<std::size_t>(n) * rows);
  mesh.triangles.reserve(static_cast<std::size_t>(2) * n * (rows + 1));
  for (const ProfilePoint& p : profile.points) addRing(mesh, ring, p);
  for (Index row = 0; row + 1 < rows; ++row) addStrip(mesh, row * n, (row + 1) * n, n);
  if (profile.ends == Profile::Ends::joined) {
    addStrip(mesh, (rows - 1) * n, 0, n);
    return mesh;
  }
  addCap(mesh, 0, n, Facing::down);
  addCap(mesh, (rows - 1) * n, n, Facing::up);
  return mesh;
}

double volume(const Mesh& mesh) {
  if (mesh.points.empty()) return 0;
  const Eigen::Vector3d origin = mesh.points.front();
  double sixfold = 0;
  for (const auto& t : mesh.triangles) {
    const Eigen::Vector3d a = mesh.points[t[0]] - origin;
    const Eigen::Vector3d b = mesh.points[t[1]] - origin;
    const Eigen::Vector3d c = mesh.points[t[2]] - origin;
    sixfold += a.dot(b.cross(c));
  }
  return sixfold / 6;
}

double area(const Mesh& mesh) {
  double twice = 0;
  for (const auto& t : mesh.triangles) {
    const Eigen::Vector3d ab = mesh.points[t[1]] - mesh.points[t[0]];
    const Eigen::Vector3d ac = mesh.points[t[2]] - mesh.points[t[0]];
    twice += ab.cross(ac).norm();
  }
  return twice / 2;
}

}  // namespace core::geometry
