#pragma once

#include "core/site/bench.h"
#include "core/site/clip.h"

#include <array>
#include <vector>

namespace core::site {

/// Outline with what the faces need of it.
struct BenchEdges {
  explicit BenchEdges(const std::vector<Eigen::Vector2d>& outline);

  std::vector<Eigen::Vector2d> corner;
  std::vector<Eigen::Vector2d> mitre;  ///< move of each corner per unit outward offset
  std::vector<Linear> outward;         ///< distance outside the line of the edge from corner k to k + 1
  std::vector<std::array<Linear, 3>>
      sector;  ///< plan of the face outside edge k: where all three are positive

  std::size_t size() const { return corner.size(); }
  std::size_t after(std::size_t k) const { return k + 1 == size() ? 0 : k + 1; }
};

/// Volumes and, when wanted, pieces of a bench.
struct BenchParts {
  double cut_m3 = 0, fill_m3 = 0, strip_m3 = 0;
  double platform_m2 = 0, cut_face_m2 = 0, fill_face_m2 = 0;
  double cut_m2 = 0,
         fill_m2 = 0;  ///< plan over which there is cut or fill: how the volumes change with level
  std::vector<Patch> platform, cut_face, fill_face;  ///< on the finished surface
  std::vector<std::array<Eigen::Vector3d, 2>> cut_daylight, fill_daylight;
};

enum class Pieces { left_out, kept };

/// What one convex patch of ground on the platform comes to.
void addPlatform(const Patch& ground, double level_m, double topsoil_m, Pieces pieces, BenchParts& parts);

/// Bench on an even slope, in closed form. Nothing when a face never meets the ground.
std::optional<BenchParts> planeBench(const Plane& ground, const BenchShape& shape, const BenchEdges& edges,
                                     double level_m, Pieces pieces);

/// Triangles that a bench with its platform between two levels can touch.
std::vector<Tin::Triangle> trianglesNear(const Tin& tin, const BenchShape& shape, const BenchEdges& edges,
                                         double least_level_m, double most_level_m);

/// Bench on a survey, over the triangles given.
BenchParts tinBench(const Tin& tin, const std::vector<Tin::Triangle>& triangles, const BenchShape& shape,
                    const BenchEdges& edges, double level_m, Pieces pieces);

/// True when a face reaches the edge of the survey.
bool leavesSurvey(const Tin& tin, const BenchShape& shape, const BenchEdges& edges, double level_m);

}  // namespace core::site
