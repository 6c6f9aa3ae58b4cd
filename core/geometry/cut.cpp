#include "core/geometry/mesh.h"
#include "core/geometry/polygon.h"
#include "core/geometry/triangulate.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <unordered_map>
#include <utility>

namespace core::geometry {
namespace {

using Index = std::uint32_t;
using Eigen::Vector2d;
using Eigen::Vector3d;

/// Distances of all points from the plane, positive on the side that is cut away; the plane is nudged clear
/// of vertices.
std::vector<double> distances(const Mesh& mesh, const CutPlane& plane) {
  const Vector2d normal = plane.normal.normalized();
  std::vector<double> d;
  d.reserve(mesh.points.size());
  for (const Vector3d& p : mesh.points) d.push_back(normal.dot(p.head<2>() - plane.point));
  double shift = 0;
  const auto touches = [&](double by) {
    return std::any_of(d.begin(), d.end(), [&](double x) { return std::abs(x - by) < 1e-7; });
  };
  for (int i = 1; i <= 10 && touches(shift); ++i) shift = (i % 2 ? 1 : -1) * i * 2e-7;
  for (double& x : d) x -= shift;
  return d;
}

/// Builds the kept part: old points renumbered, one new point on each edge that crosses the plane.
class Splitter {
public:
  Splitter(const Mesh& mesh, std::vector<double> distance) : mesh_(mesh), distance_(std::move(distance)) {}

  void add(Index number) {
    const std::array<Index, 3>& t = mesh_.triangles[number];
    int kept = 0;
    for (const Index v : t) kept += keeps(v);
    if (kept == 0) return;
    if (kept == 3) {
      keep({old(t[0]), old(t[1]), old(t[2])}, number);
      return;
    }
    // turn the triangle so that its lone corner comes first
    std::size_t lone = 0;
    while (keeps(t[lone]) != (kept == 1)) ++lone;
    const Index a = t[lone];
    const Index b = t[(lone + 1) % 3];
    const Index c = t[(lone + 2) % 3];
    const Index ab = crossing(a, b);
    const Index ac = crossing(a, c);
    if (kept == 1) {
      keep({old(a), ab, ac}, number);
      next_[ac] = ab;  // the section face runs against the kept triangle's edge ab -> ac
    } else {
      keep({ab, old(b), old(c)}, number);
      keep({ab, old(c), ac}, number);
      next_[ab] = ac;
    }
  }

  /// Closed runs of points around the section faces, anticlockwise seen from the side cut away.
  std::vector<std::vector<Index>> loops() {
    std::vector<std::vector<Index>> all;
    while (!next_.empty()) {
      std::vector<Index> loop;
      Index at = next_.begin()->first;
      for (auto it = next_.find(at); it != next_.end(); it = next_.find(at)) {
        loop.push_back(at);
        at = it->second;
        next_.erase(it);
      }
      all.push_back(std::move(loop));
    }
    return all;
  }

  Mesh& mesh() { return out_; }
  std::vector<Index>& origin() { return origin_; }

private:
  const Mesh& mesh_;
  std::vector<double> distance_;
  Mesh out_;
  std::vector<Index> origin_;
  std::unordered_map<Index, Index> kept_;
  std::map<std::pair<Index, Index>, Index> crossing_;
  std::map<Index, Index> next_;

  bool keeps(Index v) const { return distance_[v] < 0; }

  void keep(const std::array<Index, 3>& t, Index from) {
    out_.triangles.push_back(t);
    origin_.push_back(from);
  }

  Index addPoint(const Vector3d& p) {
    out_.points.push_back(p);
    return static_cast<Index>(out_.points.size() - 1);
  }

  Index old(Index v) {
    const auto [it, fresh] = kept_.try_emplace(v, 0);
    if (fresh) it->second = addPoint(mesh_.points[v]);
    return it->second;
  }

  Index crossing(Index u, Index v) {
    const std::pair<Index, Index> edge = std::minmax(u, v);
    const auto [it, fresh] = crossing_.try_emplace(edge, 0);
    if (fresh) {
      const double t = distance_[edge.first] / (distance_[edge.first] - distance_[edge.second]);
      it->second =
          addPoint(mesh_.points[edge.first] + t * (mesh_.points[edge.second] - mesh_.points[edge.first]));
    }
    return it->second;
  }
};

}  // namespace

CutMesh cut(const Mesh& mesh, const CutPlane& plane) {
  Splitter splitter(mesh, distances(mesh, plane));
  for (Index k = 0; k < mesh.triangles.size(); ++k) splitter.add(k);
  const std::vector<std::vector<Index>> loops = splitter.loops();

  CutMesh result;
  result.mesh = std::move(splitter.mesh());
  result.origin = std::move(splitter.origin());
  result.first_section_triangle = result.mesh.triangles.size();
  const Vector2d normal = plane.normal.normalized();
  const Vector2d right(-normal.y(), normal.x());  // seen from the side cut away
  for (const std::vector<Index>& loop : loops) {
    std::vector<Vector2d> flat;
    flat.reserve(loop.size());
    for (const Index v : loop) {
      const Vector3d& p = result.mesh.points[v];
      flat.emplace_back(right.dot(p.head<2>()), p.z());
    }
    for (const auto& t : triangulate(flat))
      result.mesh.triangles.push_back({loop[t[0]], loop[t[1]], loop[t[2]]});
  }
  return result;
}

}  // namespace core::geometry
