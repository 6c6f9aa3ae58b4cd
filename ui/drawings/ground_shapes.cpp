#include "ui/drawings/ground_shapes.h"

#include "ui/drawings/chart_colours.h"
#include "ui/drawings/paper.h"

#include <algorithm>
#include <map>
#include <utility>

namespace ui::drawings {
namespace {

using core::geometry::Mesh;

constexpr int kSamples = 16;             // of the natural ground along each side of the view
constexpr double kWeld_m = 1e-6;         // points nearer than this are one
constexpr double kLeastRange_m = 0.001;  // ground that differs less is level
constexpr double kAround_m = 1.5;        // natural ground shown beyond the works

using Place = std::pair<std::int64_t, std::int64_t>;

Place placeOf(const Eigen::Vector3d& p) {
  return {std::llround(p.x() / kWeld_m), std::llround(p.y() / kWeld_m)};
}

/// Ways from corner to corner along the edge of a surface, each with its end.
using EdgeWays = std::multimap<Place, Eigen::Vector3d>;

EdgeWays edgeWays(const Mesh& mesh) {
  std::map<std::pair<Place, Place>, int> count;
  for (const auto& t : mesh.triangles) {
    for (std::size_t k = 0; k < 3; ++k)
      ++count[{placeOf(mesh.points[t[k]]), placeOf(mesh.points[t[(k + 1) % 3]])}];
  }
  EdgeWays ways;
  for (const auto& t : mesh.triangles) {
    for (std::size_t k = 0; k < 3; ++k) {
      const Eigen::Vector3d& to = mesh.points[t[(k + 1) % 3]];
      const Place a = placeOf(mesh.points[t[k]]), b = placeOf(to);
      if (a != b && !count.contains({b, a})) ways.emplace(a, to);
    }
  }
  return ways;
}

void addAll(Eigen::AlignedBox2d& box, const std::vector<Eigen::Vector2d>& points) {
  for (const Eigen::Vector2d& p : points) box.extend(p);
}

void addAll(Eigen::AlignedBox2d& box, const std::vector<Eigen::Vector3d>& points) {
  for (const Eigen::Vector3d& p : points) box.extend(Eigen::Vector2d(p.head<2>()));
}

}  // namespace

GroundShapes::GroundShapes(const core::Plan& plan) {
  const auto& g = plan.geometry;
  const auto outline = [&](double offset_m) {
    return core::site::siteOutline(g.outline(), offset_m, plan.site.placement, kFacets).points_m;
  };
  pit = outline(g.pitOffset(g.depth()));
  rim = outline(g.clearOffset(g.depth()));
  platform = plan.site.shape.outline_m;
  addAll(extent, pit);
  addAll(extent, platform);
  if (plan.site.bench) {
    for (const auto& line : plan.site.bench->daylight) addAll(extent, line.line);
  }
  for (const auto& peg : plan.site.pegs) extent.extend(Eigen::Vector2d(peg.at_m.head<2>()));
  if (plan.site.has_relief) {
    extent.min().array() -= kAround_m;
    extent.max().array() += kAround_m;
  }
  if (plan.site.heap && plan.site.heap_place) {
    const Eigen::Vector2d reach = Eigen::Vector2d::Constant(plan.site.heap->base_radius_m);
    extent.extend(plan.site.heap_place->centre_m - reach);
    extent.extend(plan.site.heap_place->centre_m + reach);
  }
}

QPainterPath outlineOf(const Mesh& mesh, const ScaledView& view) {
  EdgeWays ways = edgeWays(mesh);
  QPainterPath path;
  while (!ways.empty()) {
    auto way = ways.begin();
    const Place start = way->first;
    bool first = true;
    while (way != ways.end()) {
      const Eigen::Vector3d to = way->second;
      if (first) path.moveTo(view.at(to));
      if (!first) path.lineTo(view.at(to));
      first = false;
      ways.erase(way);
      way = placeOf(to) == start ? ways.end() : ways.find(placeOf(to));
    }
    path.closeSubpath();
  }
  return path;
}

DrawnContours contoursIn(const core::Plan& plan, const ScaledView& view, int most) {
  if (!plan.site.has_relief || !plan.site.ground || !plan.site.ground->surface) return {};
  const core::site::GroundSurface& ground = *plan.site.ground->surface;
  const Eigen::AlignedBox2d shown = view.shown();
  Eigen::AlignedBox<double, 1> levels;
  for (int i = 0; i <= kSamples; ++i) {
    for (int k = 0; k <= kSamples; ++k) {
      const Eigen::Vector2d share(static_cast<double>(i) / kSamples, static_cast<double>(k) / kSamples);
      const auto level = ground.heightAt(shown.min() + shown.sizes().cwiseProduct(share));
      if (level) levels.extend(Eigen::Matrix<double, 1, 1>(*level));
    }
  }
  if (levels.isEmpty() || levels.sizes().x() < kLeastRange_m) return {};
  DrawnContours drawn{core::site::contourStep(levels.sizes().x(), most), {}};
  for (const auto& contour : core::site::contours(ground, drawn.step_m, shown.min(), shown.max())) {
    const QPainterPath line = inside(view.path(contour.line), view.room());
    if (!line.isEmpty()) drawn.lines.push_back({contour.level_m, line});
  }
  return drawn;
}

GroundColours groundColours(bool dark) {
  if (dark) return {fromLab(46, 14, 26), fromLab(27, 2, 12)};
  return {fromLab(70, 12, 32), fromLab(89, 2, 20)};
}

}  // namespace ui::drawings
