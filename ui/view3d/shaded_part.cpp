#include "ui/view3d/shaded_part.h"

#include "ui/view3d/palette.h"

#include <algorithm>
#include <unordered_map>

#include <Eigen/Geometry>

namespace ui::view3d {
namespace {

using core::geometry::Part;
using core::geometry::Role;
using Eigen::Vector3d;
using Triangle = std::array<std::uint32_t, 3>;

constexpr double kLeastArea_m2 = 1e-12;
constexpr double kSharp = 0.87;  // cosine of the least angle between faces that shows as an edge, 30 degrees

std::array<float, 3> floats(const Vector3d& v) {
  const Eigen::Vector3f f = v.cast<float>();
  return {f.x(), f.y(), f.z()};
}

std::array<float, 4> floats(const QColor& colour) {
  return {colour.redF(), colour.greenF(), colour.blueF(), colour.alphaF()};
}

Vector3d areaVector(const Part& part, const Triangle& t) {
  const std::vector<Vector3d>& p = part.mesh.points;
  return (p[t[1]] - p[t[0]]).cross(p[t[2]] - p[t[0]]) / 2;
}

void addFace(std::vector<FaceVertex>& faces, const Part& part, const Triangle& triangle,
             const QColor& colour) {
  const Vector3d area = areaVector(part, triangle);
  if (area.norm() < kLeastArea_m2) return;
  const std::array<float, 3> normal = floats(area.normalized());
  for (const std::uint32_t corner : triangle)
    faces.push_back({floats(part.mesh.points[corner]), normal, floats(colour)});
}

/// The faces on both sides of every edge, to tell which edges are sharp.
class EdgeFinder {
public:
  explicit EdgeFinder(const Part& part) : part_(part) {
    const std::vector<Triangle>& triangles = part.mesh.triangles;
    for (std::size_t k = 0; k < triangles.size(); ++k) {
      const Vector3d area = areaVector(part, triangles[k]);
      if (area.norm() < kLeastArea_m2) continue;
      const Side side{area.normalized(), k >= part.first_section_triangle};
      for (std::size_t corner = 0; corner < 3; ++corner)
        add(triangles[k][corner], triangles[k][(corner + 1) % 3], side);
    }
  }

  std::vector<EdgeLine> sharpEdges() const {
    const std::array<float, 4> plain = floats(edgeColour(faceColour(part_)));
    const std::array<float, 4> strong = floats(edgeColour(sectionColour(part_)));
    std::vector<EdgeLine> lines;
    for (const auto& [key, edge] : edges_) {
      if (!isSharp(edge)) continue;
      const auto from = static_cast<std::uint32_t>(key >> 32), to = static_cast<std::uint32_t>(key);
      const std::vector<Vector3d>& p = part_.mesh.points;
      lines.push_back({floats(p[from]), floats(p[to]), edge.cut ? strong : plain});
    }
    return lines;
  }

private:
  struct Side {
    Vector3d normal;
    bool cut;
  };
  struct Edge {
    Vector3d normal;
    bool cut;
    int faces = 1;
    bool sharp = false;
  };

  void add(std::uint32_t a, std::uint32_t b, const Side& side) {
    const std::uint64_t key = (std::uint64_t{std::min(a, b)} << 32) | std::max(a, b);
    const auto [at, fresh] = edges_.try_emplace(key, Edge{side.normal, side.cut});
    if (fresh) return;
    Edge& edge = at->second;
    ++edge.faces;
    edge.sharp = edge.sharp || edge.cut != side.cut || edge.normal.dot(side.normal) < kSharp;
    edge.cut = edge.cut || side.cut;
  }

  static bool isSharp(const Edge& edge) { return edge.sharp || edge.faces == 1; }

  const Part& part_;
  std::unordered_map<std::uint64_t, Edge> edges_;
};

}  // namespace

ShadedPart shaded(const Part& part) {
  ShadedPart ready{part.id, part.role, {}, {}};
  const std::vector<Triangle>& triangles = part.mesh.triangles;
  ready.faces.reserve(3 * triangles.size());
  for (std::size_t k = 0; k < triangles.size(); ++k)
    addFace(ready.faces, part, triangles[k],
            k < part.first_section_triangle ? faceColour(part) : sectionColour(part));
  const bool outlined = part.role != Role::person && part.role != Role::water && !isPattern(part);
  if (outlined) ready.edges = EdgeFinder(part).sharpEdges();
  return ready;
}

}  // namespace ui::view3d
