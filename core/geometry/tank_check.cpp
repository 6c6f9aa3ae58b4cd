#include "core/geometry/polygon.h"
#include "core/geometry/tank_geometry.h"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace core::geometry {
namespace {

using Eigen::Vector2d;

constexpr double kLeastFloor_m = 0.05;  // flat floor that must be left between two walls
constexpr double kLeastEdge_m = 0.01;   // straight edge that must be left between two round corners

Problem across(std::string code, std::string path, double value, std::optional<double> least,
               std::optional<double> most, Unit unit) {
  return {std::move(code), std::move(path), fmt::format("{}", value), least, most, unit, {}};
}

Problem outlineProblem(std::string code, std::size_t corner, const Vector2d& at) {
  return {std::move(code),
          fmt::format("tank.outline_m[{}]", corner),
          fmt::format("[{}, {}]", at.x(), at.y()),
          {},
          {},
          Unit::metre,
          "convex|anticlockwise|not self-touching"};
}

/// Sum of all turns is one full turn for a simple convex polygon and more for a star.
double totalTurn(const std::vector<Vector2d>& c) {
  double sum = 0;
  for (std::size_t k = 0; k < c.size(); ++k) {
    const Vector2d a = c[(k + 1) % c.size()] - c[k];
    const Vector2d b = c[(k + 2) % c.size()] - c[(k + 1) % c.size()];
    sum += std::atan2(cross(a, b), a.dot(b));
  }
  return sum;
}

std::vector<Vector2d> centred(std::vector<Vector2d> corners) {
  Vector2d least = corners.front();
  Vector2d most = least;
  for (const Vector2d& c : corners) {
    least = least.cwiseMin(c);
    most = most.cwiseMax(c);
  }
  const Vector2d middle = (least + most) / 2;
  for (Vector2d& c : corners) c -= middle;
  return corners;
}

/// The outline as given, sharp, at the level where it was measured.
Outline givenOutline(const Tank& tank) {
  switch (tank.shape) {
    case Shape::round:
      return Outline::circle(tank.diameter_m / 2);
    case Shape::polygon:
      return Outline::polygon(centred(tank.outline_m), 0);
    case Shape::rectangle:
      break;
  }
  return Outline::rectangle(tank.length_m, tank.width_m, 0);
}

double riseOfGivenOutline(const Tank& tank) {
  return tank.measured_at == MeasuredAt::rim ? tank.batter * tank.depth_m : 0;
}

void checkLevels(const Tank& tank, Problems& problems) {
  if (tank.freeboard_m >= tank.depth_m) {
    problems.push_back(across("freeboard_not_below_rim", "tank.freeboard_m", tank.freeboard_m, 0.0,
                              tank.depth_m, Unit::metre));
  } else if (tank.dead_depth_m >= tank.depth_m - tank.freeboard_m) {
    problems.push_back(across("dead_depth_not_below_full", "tank.dead_depth_m", tank.dead_depth_m, 0.0,
                              tank.depth_m - tank.freeboard_m, Unit::metre));
  }
}

void checkCoats(const Tank& tank, const Lining& lining, const Outline& floor, Problems& problems) {
  double sum = 0;
  for (std::size_t k = 0; k < lining.coats.size(); ++k) {
    const Coat& coat = lining.coats[k];
    sum += coat.thickness_m;
    if (coat.soil + coat.sand <= 0) {
      problems.push_back(across("mix_without_filler", fmt::format("lining.coats[{}].soil", k), coat.soil, {},
                                {}, Unit::part));
    }
  }
  const double most = std::min(tank.depth_m, floor.size(0).minCoeff() / 2);
  if (sum >= most)
    problems.push_back(across("coats_thicker_than_tank", "lining.coats", sum, 0.0, most, Unit::metre));
}

/// Every face inside the clear outline must still have its edges and round corners.
void checkInsets(const Tank& tank, const Lining& lining, const Outline& floor, Problems& problems) {
  const double slant = std::hypot(1.0, tank.batter);
  double coats = 0;
  for (const Coat& coat : lining.coats) coats += coat.thickness_m;
  const double pit_inset = tank.batter * lining.stone_bed_m - coats * (slant - tank.batter);
  const double cove_per_radius = slant - tank.batter;
  const bool rounded = tank.shape != Shape::round && tank.corner_radius_m > 0;
  const double room = -floor.leastOffset() - (rounded ? 0 : kLeastFloor_m);
  if (pit_inset > room) {
    if (rounded) {
      problems.push_back(across("corner_radius_too_small", "tank.corner_radius_m", tank.corner_radius_m,
                                pit_inset, {}, Unit::metre));
    } else {
      problems.push_back(across("pit_floor_vanishes", "lining.stone_bed_m", lining.stone_bed_m, 0.0,
                                (room + coats * cove_per_radius) / tank.batter, Unit::metre));
    }
  }
  const double cove_most = std::min(room / cove_per_radius, tank.depth_m / (1 - tank.batter / slant));
  if (lining.cove_radius_m > 0 && lining.cove_radius_m >= cove_most) {
    problems.push_back(
        across("cove_too_large", "lining.cove_radius_m", lining.cove_radius_m, 0.0, cove_most, Unit::metre));
  }
}

}  // namespace

Problems checkOutline(const std::vector<Vector2d>& c) {
  Problems problems;
  const std::size_t n = c.size();
  if (n < 3) {
    problems.push_back({"too_few", "tank.outline_m", fmt::format("{}", n), 3.0, 32.0, Unit::piece, {}});
    return problems;
  }
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = i + 1; k < n; ++k) {
      if ((c[i] - c[k]).norm() < kLeastEdge_m)
        problems.push_back(outlineProblem("outline_self_touching", k, c[k]));
    }
  }
  if (!problems.empty()) return problems;
  if (signedArea(c) <= 0 && std::abs(totalTurn(c) + 2 * std::numbers::pi) < 0.1) {
    problems.push_back(outlineProblem("outline_clockwise", 0, c[0]));
    return problems;
  }
  for (std::size_t k = 0; k < n; ++k) {
    const Vector2d before = (c[k] - c[(k + n - 1) % n]).normalized();
    const Vector2d after = (c[(k + 1) % n] - c[k]).normalized();
    // strictly convex: each corner turns left by at least half a degree and leaves a corner sharper than 10
    // degrees out
    const double turn = std::atan2(cross(before, after), before.dot(after));
    if (turn < 0.5 * std::numbers::pi / 180 || turn > 170 * std::numbers::pi / 180) {
      problems.push_back(outlineProblem("outline_not_convex", k, c[k]));
    }
  }
  if (problems.empty() && std::abs(totalTurn(c) - 2 * std::numbers::pi) > 0.1) {
    problems.push_back(outlineProblem("outline_self_touching", 0, c[0]));
  }
  return problems;
}

Outline floorOutline(const Tank& tank) {
  const Outline given = givenOutline(tank);
  const double rise = riseOfGivenOutline(tank);
  if (tank.shape == Shape::round) return Outline::circle(tank.diameter_m / 2 - rise);
  return Outline::polygon(given.corners(-rise), tank.corner_radius_m);
}

Problems check(const Tank& tank, const Lining& lining) {
  Problems problems;
  if (tank.shape == Shape::polygon) problems = checkOutline(tank.outline_m);
  checkLevels(tank, problems);
  if (!problems.empty()) return problems;

  const Outline given = givenOutline(tank);
  const double rise = riseOfGivenOutline(tank);
  const double room = -given.leastOffset() - kLeastFloor_m;
  if (rise > room) {
    problems.push_back(across("rim_outline_vanishes", "tank.batter", tank.batter, 0.0,
                              std::max(0.0, room / tank.depth_m), Unit::batter));
    return problems;
  }
  const double radius_most = -given.leastOffset() - rise - kLeastEdge_m;
  if (tank.shape != Shape::round && tank.corner_radius_m > 0 && tank.corner_radius_m > radius_most) {
    problems.push_back(across("corner_radius_too_large", "tank.corner_radius_m", tank.corner_radius_m, 0.0,
                              std::max(0.0, radius_most), Unit::metre));
    return problems;
  }
  const Outline floor = floorOutline(tank);
  checkCoats(tank, lining, floor, problems);
  checkInsets(tank, lining, floor, problems);
  return problems;
}

}  // namespace core::geometry
