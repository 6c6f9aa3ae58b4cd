#include "core/geometry/inside_so_far.h"
#include "core/works/build_days.h"
#include "tests/support/recorder.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/isometric_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <optional>
#include <random>
#include <vector>

#include <Eigen/Core>
#include <catch2/catch.hpp>

// Hidden surfaces, held against a walk along the line of sight over the tank as a height above each place.

namespace {

using core::geometry::ProfilePoint;
using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kStep_m = 0.002;    // of the walk
constexpr double kUnsure_m = 0.015;  // places so near to an edge are not asked

core::Plan planOf(double batter, bool has_collar) {
  core::Project project;
  project.tank.length_m = 5;
  project.tank.width_m = 3.5;
  project.tank.depth_m = 1.2;
  project.tank.batter = batter;
  project.tank.corner_radius_m = 0;
  project.lining.cove_radius_m = 0;
  project.lining.rim_width_m = has_collar ? 0.4 : 0;
  project.lining.rim_thickness_m = has_collar ? 0.2 : 0;
  for (core::Coat& coat : project.lining.coats) coat.thickness_m = 0.1;
  auto plan = core::plan(project);
  REQUIRE(plan);
  return std::move(*plan);
}

/// A rectangular tank as heights: the profile over how far a place lies outside the clear floor.
struct Heights {
  Vector2d half;
  std::vector<ProfilePoint> points;

  Heights(const core::Plan& plan, const core::geometry::Built& built)
      : half(plan.geometry.outline().size(0) / 2), points(core::geometry::insideSoFar(plan.geometry, built)) {
    for (std::size_t k = 1; k < points.size(); ++k)
      points[k].offset_m = std::max(points[k].offset_m, points[k - 1].offset_m);
  }

  double offset(const Vector2d& p) const { return (p.cwiseAbs() - half).maxCoeff(); }
  bool isSure(const Vector2d& p) const {
    const Vector2d out = p.cwiseAbs() - half;
    return std::abs(out.x() - out.y()) > kUnsure_m || offset(p) < points.front().offset_m;
  }
  double at(const Vector2d& p) const {
    const double d = offset(p);
    if (d <= points.front().offset_m) return points.front().z_m;
    for (std::size_t k = 1; k < points.size(); ++k) {
      const ProfilePoint &a = points[k - 1], &b = points[k];
      if (d < b.offset_m) return std::lerp(a.z_m, b.z_m, (d - a.offset_m) / (b.offset_m - a.offset_m));
    }
    return points.back().z_m;
  }
  /// Step of the profile that a seen place lies on: 0 the floor, then outward; the ground after the last.
  std::optional<std::size_t> stepAt(const Vector3d& seen) const {
    const double d = offset(seen.head<2>());
    for (const ProfilePoint& p : points) {
      if (std::hypot(d - p.offset_m, seen.z() - p.z_m) < kUnsure_m) return std::nullopt;
    }
    if (d < points.front().offset_m - kUnsure_m) return 0;
    for (std::size_t k = 1; k < points.size(); ++k) {
      const ProfilePoint &a = points[k - 1], &b = points[k];
      const double out = b.offset_m - a.offset_m, up = b.z_m - a.z_m;
      const double along = ((d - a.offset_m) * out + (seen.z() - a.z_m) * up) / (out * out + up * up);
      const double away = std::hypot(d - a.offset_m - along * out, seen.z() - a.z_m - along * up);
      if (along > 0 && along < 1 && away < 3 * kStep_m) return k;
    }
    return d > points.back().offset_m ? std::optional(points.size()) : std::nullopt;
  }
};

/// The first place of the surface on a line of sight that comes down through a point of the ground's level.
Vector3d firstSeen(const Heights& heights, const Vector2d& over, double top_m) {
  const Vector3d down = Vector3d(-1, 1, -1).normalized() * kStep_m;
  Vector3d p(over.x(), over.y(), top_m);
  p -= down;
  while (p.z() > heights.at(p.head<2>())) p += down;
  return p;
}

/// The middle of the face that a seen place lies on.
std::vector<Vector3d> samplesOf(const Heights& heights, std::size_t step, const Vector3d& seen) {
  if (step == 0) return {Vector3d(0, 0, heights.points.front().z_m)};
  const double depth = heights.points.back().z_m;
  if (step == heights.points.size()) {
    const double reach = heights.points.back().offset_m + 0.2;
    return {Vector3d(heights.half.x() + reach, 0, depth), Vector3d(0, -heights.half.y() - reach, depth)};
  }
  const ProfilePoint &a = heights.points[step - 1], &b = heights.points[step];
  const double d = (a.offset_m + b.offset_m) / 2;
  const Vector2d out = seen.head<2>().cwiseAbs() - heights.half;
  const bool is_x = out.x() > out.y();
  const double sign = (is_x ? seen.x() : seen.y()) < 0 ? -1 : 1;
  const Vector2d middle =
      is_x ? Vector2d(sign * (heights.half.x() + d), 0) : Vector2d(0, sign * (heights.half.y() + d));
  return {Vector3d(middle.x(), middle.y(), (a.z_m + b.z_m) / 2)};
}

struct Painted {
  support::Recorder recorder{QSizeF(210, 297)};
  int n;
  QPointF shift;  // from the projection to the paper

  Painted(const core::Plan& plan, const core::geometry::Built& built) {
    {
      QPainter painter(&recorder);
      n = ui::drawings::drawIsometric(painter, QRectF(15, 30, 182, 170), plan, ui::Formatter(), {}, built);
    }
    QRectF edge;  // of the pit, the only line of 0.7 mm
    for (const auto& stroke : recorder.strokes) {
      if (std::abs(stroke.width_mm - 0.7) < 1e-9) edge |= stroke.path.boundingRect();
    }
    shift = edge.center() - ui::drawings::IsometricView(n).at({0, 0}, plan.geometry.depth());
  }

  QPointF at(const Vector3d& p) const {
    return ui::drawings::IsometricView(n).at(p.head<2>(), p.z()) + shift;
  }
  /// The area of bare paper that was painted last over a place.
  const QPainterPath* top(QPointF p) const {
    for (auto fill = recorder.fills.rbegin(); fill != recorder.fills.rend(); ++fill) {
      if (fill->ink == QColor(Qt::white) && fill->path.contains(p)) return &fill->path;
    }
    return nullptr;
  }
};

}  // namespace

TEST_CASE("each place of the isometric drawing shows the surface that the line of sight meets first") {
  std::mt19937_64 random(5);
  const auto unit = [&] { return static_cast<double>(random() >> 11) * 0x1p-53; };
  int asked = 0;
  std::vector<int> steps(8, 0);
  for (const double batter : {0., 0.2, 1., 2.}) {
    for (const bool has_collar : {false, true}) {
      const core::Plan plan = planOf(batter, has_collar);
      for (const core::works::BuildDay& day : core::works::buildStages(plan.geometry, false)) {
        if (day.built.dug_m <= 0 || day.built.water_level_m > 0) continue;
        const Heights heights(plan, day.built);
        const Painted painted(plan, day.built);
        const double reach = heights.points.back().offset_m + 0.25;
        for (int k = 0; k < 150; ++k) {
          const Vector2d over =
              Vector2d(2 * unit() - 1, 2 * unit() - 1).cwiseProduct(heights.half + Vector2d::Constant(reach));
          const Vector3d seen = firstSeen(heights, over, plan.geometry.depth());
          const auto step = heights.stepAt(seen);
          if (!step || !heights.isSure(seen.head<2>())) continue;
          ++asked;
          ++steps[*step];
          const QPainterPath* top = painted.top(painted.at(seen));
          INFO("batter " << batter << ", collar " << has_collar << ", " << day.stage << ", step " << *step
                         << " at " << seen.transpose());
          REQUIRE(top);
          for (const Vector3d& sample : samplesOf(heights, *step, seen))
            CHECK(top->contains(painted.at(sample)));
          // nothing in the pit reaches over the ground beyond it
          const Vector3d beyond(-heights.half.x() - reach + 0.05, 0, plan.geometry.depth());
          if (*step < heights.points.size()) CHECK_FALSE(top->contains(painted.at(beyond)));
        }
      }
    }
  }
  CHECK(asked > 3000);
  for (std::size_t step = 0; step < 6; ++step) CHECK(steps[step] > 20);
}
