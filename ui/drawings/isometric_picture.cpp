#include "ui/drawings/isometric_picture.h"

#include "core/geometry/inside_so_far.h"
#include "core/geometry/pegs.h"
#include "core/geometry/scene.h"
#include "ui/drawings/paper.h"

#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

using core::geometry::Built;
using core::geometry::ProfilePoint;
using core::geometry::TankGeometry;
using Eigen::Vector2d;

constexpr double kAround_m = 0.3, kBelow_m = 0.3;        // ground beyond the pegs and below the pit
constexpr double kSmooth_rad = 0.2;                      // a turn of the profile below this is no edge
constexpr double kOneLine_mm = 0.7, kThinLine_mm = 1.4;  // nearer rings have one line, or a thin one

}  // namespace

Block::Block(const TankGeometry& tank)
    : top_m(tank.depth()), bottom_m(tank.depth() - tank.pitDepth() - kBelow_m) {
  const Vector2d half = tank.outline().size(tank.pitProfile().points.back().offset_m) / 2;
  plan.extend(tank.outline().centre() - half);
  plan.extend(tank.outline().centre() + half);
  for (const Vector2d& peg : core::geometry::pegPlaces(tank).pegs) plan.extend(peg);
  plan = {plan.min().array() - kAround_m, plan.max().array() + kAround_m};
}

Vector2d Block::corner(int k) const {
  return {k == 1 || k == 2 ? plan.max().x() : plan.min().x(), k >= 2 ? plan.max().y() : plan.min().y()};
}

Picture::Picture(const TankGeometry& of, const Built& so_far, double n)
    : tank(of), built(so_far), view(n), ring(of.outline()), block(of) {
  points = core::geometry::insideSoFar(of, so_far);
  if (hasWater() && isDug()) fill(so_far.water_level_m);
  for (std::size_t k = 1; k < points.size(); ++k)
    points[k].offset_m = std::max(points[k].offset_m, points[k - 1].offset_m);
  choose();
}

/// The surface of the water takes the place of what it covers.
void Picture::fill(double level_m) {
  std::size_t above = 1;
  while (above + 1 < points.size() && points[above].z_m < level_m - 1e-9) ++above;
  const ProfilePoint low = points[above - 1], high = points[above];
  const double share = std::clamp((level_m - low.z_m) / (high.z_m - low.z_m), 0., 1.);
  points.erase(points.begin(), points.begin() + static_cast<std::ptrdiff_t>(above) - 1);
  points.front() = {std::lerp(low.offset_m, high.offset_m, share), std::lerp(low.z_m, high.z_m, share)};
}

bool Picture::hasBed() const {
  return tank.stoneBed() > 0 && built.has_stone_bed && built.dug_m >= tank.pitDepth();
}

int Picture::coats() const {
  return static_cast<int>(std::ranges::count_if(tank.layers(), [&](const core::geometry::Layer& layer) {
    return core::geometry::isCoat(layer) && core::geometry::stands(layer, tank, built);
  }));
}

bool Picture::isPlaster(const Strip& strip) const {
  if (coats() == 0) return false;
  return core::geometry::isLined(tank, built) ||
         strip.outer.offset_m <= tank.pitOffset(strip.outer.z_m) + 1e-9;
}

bool Picture::hasSacks(const Strip& strip) const {
  const bool is_wall = !strip.isLevel() && !strip.goesDown() && strip.outer.z_m > tank.depth() - 1e-9;
  return built.has_sacks && is_wall && isPlaster(strip);
}

QPainterPath Picture::seenFloor() const {
  QPolygonF seen = ring.outline(view, points.front());
  for (std::size_t k = 1; k < points.size(); ++k) seen = convexCut(seen, ring.outline(view, points[k]));
  return polygonPath(seen);
}

double Picture::turnAt(std::size_t k) const {
  const auto way = [](const Strip& s) {
    return std::atan2(s.outer.z_m - s.inner.z_m, s.outer.offset_m - s.inner.offset_m);
  };
  return std::abs(way(strip(k)) - way(strip(k - 1)));
}

bool Picture::goesOnSmoothly(std::size_t k) const {
  return k > 0 && k + 1 < points.size() && turnAt(k) < kSmooth_rad;
}

std::optional<Line> Picture::lineByShape(std::size_t k) const {
  if (k + 1 == points.size()) return Line::outline;
  if (k == 0) return goesOnSmoothly(1) && !strip(0).isLevel() ? Line::thin : Line::edge;
  if (!goesOnSmoothly(k)) return Line::edge;
  if (strip(k).isLevel() || !goesOnSmoothly(k + 1)) return Line::thin;
  return std::nullopt;
}

double Picture::apart_mm(std::size_t one, std::size_t other) const {
  return view.mm(
      std::hypot(points[one].offset_m - points[other].offset_m, points[one].z_m - points[other].z_m));
}

/// From the floor outward a ring too near to the last one drawn goes without a line; the edge always has one.
void Picture::choose() {
  std::size_t last = 0;
  for (std::size_t k = 0; k < points.size(); ++k) {
    lines.push_back(lineByShape(k));
    if (k == 0 || !lines[k]) continue;
    const double apart = apart_mm(k, last);
    const bool is_edge = k + 1 == points.size();
    const bool is_rounding = !is_edge && *lines[k] == Line::thin && !strip(k).isLevel();
    std::optional<Line>& lighter = lines[is_edge ? last : k];
    if (apart < kThinLine_mm) lighter = Line::thin;
    if (apart < kOneLine_mm && !is_rounding) lighter.reset();
    if (lines[k]) last = k;
  }
}

}  // namespace ui::drawings
