#include "core/geometry/scene.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <span>

namespace core::geometry {
namespace {

constexpr std::uint32_t kSides = 16;

/// Ring of a body: an ellipse about a point, level.
struct Section {
  double z_m, half_width_m, half_depth_m;
  double x_m = 0;
};

Eigen::Vector3d pointOn(const Section& section, std::uint32_t side) {
  const double turn = 2 * std::numbers::pi * side / kSides;
  return {section.x_m + section.half_width_m * std::cos(turn), section.half_depth_m * std::sin(turn),
          section.z_m};
}

void addQuad(Mesh& mesh, std::array<std::uint32_t, 4> corner) {
  mesh.triangles.push_back({corner[0], corner[1], corner[2]});
  mesh.triangles.push_back({corner[0], corner[2], corner[3]});
}

void addCap(Mesh& mesh, std::uint32_t ring, std::uint32_t middle, bool upward) {
  for (std::uint32_t side = 0; side < kSides; ++side) {
    const std::uint32_t here = ring + side, next = ring + (side + 1) % kSides;
    mesh.triangles.push_back(upward ? std::array{here, next, middle} : std::array{next, here, middle});
  }
}

/// Adds a closed body whose rings stand over one another from the lowest up.
void addBody(Mesh& mesh, std::span<const Section> sections) {
  const auto first = static_cast<std::uint32_t>(mesh.points.size());
  for (const Section& section : sections)
    for (std::uint32_t side = 0; side < kSides; ++side) mesh.points.push_back(pointOn(section, side));
  const auto rings = static_cast<std::uint32_t>(sections.size());
  for (std::uint32_t ring = 0; ring + 1 < rings; ++ring)
    for (std::uint32_t side = 0; side < kSides; ++side) {
      const std::uint32_t low = first + ring * kSides, next = (side + 1) % kSides;
      addQuad(mesh, {low + side, low + next, low + kSides + next, low + kSides + side});
    }
  const auto middle = static_cast<std::uint32_t>(mesh.points.size());
  mesh.points.emplace_back(sections.front().x_m, 0, sections.front().z_m);
  mesh.points.emplace_back(sections.back().x_m, 0, sections.back().z_m);
  addCap(mesh, first, middle, false);
  addCap(mesh, first + (rings - 1) * kSides, middle + 1, true);
}

void addLimbs(Mesh& mesh) {
  for (const double side : {-1.0, 1.0}) {
    const std::array leg{Section{0, 0.055, 0.11, side * 0.10}, Section{0.06, 0.05, 0.07, side * 0.10},
                         Section{0.45, 0.06, 0.065, side * 0.095}, Section{0.80, 0.085, 0.09, side * 0.09}};
    const std::array arm{Section{0.70, 0.03, 0.04, side * 0.275}, Section{0.80, 0.035, 0.045, side * 0.27},
                         Section{1.32, 0.045, 0.055, side * 0.225}, Section{1.37, 0.025, 0.03, side * 0.205}};
    addBody(mesh, leg);
    addBody(mesh, arm);
  }
}

void addTrunkAndHead(Mesh& mesh) {
  constexpr std::array trunk{Section{0.78, 0.15, 0.09},  Section{0.88, 0.175, 0.115},
                             Section{1.05, 0.145, 0.10}, Section{1.30, 0.19, 0.115},
                             Section{1.38, 0.16, 0.085}, Section{1.41, 0.065, 0.06}};
  constexpr std::array head{Section{1.405, 0.05, 0.055}, Section{1.45, 0.07, 0.08},
                            Section{1.53, 0.082, 0.098}, Section{1.60, 0.07, 0.085},
                            Section{1.65, 0.025, 0.03}};
  addBody(mesh, trunk);
  addBody(mesh, head);
}

}  // namespace

Mesh person(const Eigen::Vector3d& foot) {
  Mesh mesh;
  addLimbs(mesh);
  addTrunkAndHead(mesh);
  for (Eigen::Vector3d& point : mesh.points) point += foot;
  return mesh;
}

}  // namespace core::geometry
