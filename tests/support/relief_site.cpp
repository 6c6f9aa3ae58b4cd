#include "tests/support/relief_site.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>
#include <utility>

namespace support {

using namespace core::geometry;
using core::Shape;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

core::Tank tankOf(Shape shape) {
  core::Tank tank;
  tank.shape = shape;
  tank.length_m = 7;
  tank.width_m = 4.2;
  tank.diameter_m = 6;
  tank.outline_m = {{0, 0}, {5, -1}, {7, 2}, {4, 5}, {0.5, 4}};
  tank.depth_m = 1.6;
  tank.batter = 0.2;
  return tank;
}

Vector2d direction(double azimuth_deg) {
  const double turn = azimuth_deg * std::numbers::pi / 180;
  return {std::cos(turn), std::sin(turn)};
}

}  // namespace

ReliefSite::ReliefSite(Shape shape, Height natural, const Vector2d& downhill)
    : from(tankOf(shape)), tank(from, lining) {
  relief.natural_m = std::move(natural);
  relief.cut_batter = kCutBatter;
  relief.fill_batter = kFillBatter;
  relief.topsoil_m = 0.15;
  relief.reach_m = kReach_m;
  relief.downhill = downhill;
  setPlatform(kPlatform_m);
}

void ReliefSite::setPlatform(double offset_m) {
  relief.platform_offset_m = offset_m;
  platform = outline(offset_m);
}

cgal::Polygon ReliefSite::outline(double offset_m) const {
  if (!round()) return cgal::offset(tank.outline().corners(0), offset_m);
  cgal::Polygon polygon;
  for (int k = 0; k < kFacets; ++k)
    polygon.push_back((from.diameter_m / 2 + offset_m) * direction(360.0 * k / kFacets));
  return polygon;
}

double ReliefSite::outside(const Vector2d& p) const {
  double most = -std::numeric_limits<double>::infinity();
  for (std::size_t k = 0; k < platform.size(); ++k) {
    const Vector2d along = (platform[(k + 1) % platform.size()] - platform[k]).normalized();
    most = std::max(most, Vector2d(along.y(), -along.x()).dot(p - platform[k]));
  }
  return round() ? most / std::cos(std::numbers::pi / kFacets) : most;
}

double ReliefSite::finished(const Vector2d& p) const {
  const double d = std::max(outside(p), 0.0);
  const double rim = from.depth_m;
  return std::clamp(relief.natural_m(p), rim - d / kFillBatter, rim + d / kCutBatter);
}

Scene ReliefSite::drawn(std::optional<CutPlane> plane) const {
  SceneOptions options;
  options.facets_per_circle = kFacets;
  options.cut = plane;
  options.relief = relief;
  return scene(tank, options);
}

ReliefSite evenSlope(Shape shape, double percent, double azimuth_deg, double over_rim_m) {
  const Vector2d down = direction(azimuth_deg);
  const double middle = tankOf(shape).depth_m + over_rim_m;
  return {shape, [=](const Vector2d& p) { return middle - percent / 100 * down.dot(p); }, down};
}

ReliefSite wavyGround(Shape shape, double azimuth_deg) {
  const Vector2d down = direction(azimuth_deg);
  const double middle = tankOf(shape).depth_m;
  const auto natural = [=](const Vector2d& p) {
    return middle - 0.1 * down.dot(p) + 0.35 * std::sin(0.8 * p.x() + 0.3) * std::cos(0.6 * p.y());
  };
  return {shape, natural, down};
}

std::vector<ReliefSite> reliefSites() {
  std::vector<ReliefSite> all;
  for (const Shape shape : {Shape::rectangle, Shape::round, Shape::polygon}) {
    for (const double percent : {4.0, 12.0, 30.0})
      for (const double azimuth : {0.0, 17.0, 90.0, 135.0, 201.0, 288.0})
        all.push_back(evenSlope(shape, percent, azimuth));
    for (const double azimuth : {0.0, 63.0, 210.0}) all.push_back(wavyGround(shape, azimuth));
  }
  return all;
}

std::optional<double> heightOn(const Mesh& mesh, std::size_t k, const Vector2d& p) {
  const auto& t = mesh.triangles[k];
  const Vector3d &a = mesh.points[t[0]], &b = mesh.points[t[1]], &c = mesh.points[t[2]];
  const auto twice = [](const Vector2d& u, const Vector2d& v) { return u.x() * v.y() - u.y() * v.x(); };
  const double whole = twice((b - a).head<2>(), (c - a).head<2>());
  if (whole < 1e-10) return std::nullopt;  // upright, from below, or no area
  const double v = twice(p - a.head<2>(), (c - a).head<2>()) / whole;
  const double w = twice((b - a).head<2>(), p - a.head<2>()) / whole;
  if (v < -1e-9 || w < -1e-9 || v + w > 1 + 1e-9) return std::nullopt;
  return a.z() + v * (b - a).z() + w * (c - a).z();
}

bool hasPart(const Scene& scene, const std::string& id) {
  return std::any_of(scene.parts.begin(), scene.parts.end(), [&](const Part& p) { return p.id == id; });
}

const Part& partOf(const Scene& scene, const std::string& id) {
  for (const Part& part : scene.parts) {
    if (part.id == id) return part;
  }
  throw std::logic_error("no part " + id);
}

Mesh wholeGround(const Scene& scene) {
  Mesh mesh = partOf(scene, "ground").mesh;
  for (const char* id : {"excavation", "cut", "fill"}) {
    if (!hasPart(scene, id)) continue;
    const Mesh& more = partOf(scene, id).mesh;
    if (more.points.size() != mesh.points.size()) throw std::logic_error("the points are not shared");
    mesh.triangles.insert(mesh.triangles.end(), more.triangles.begin(), more.triangles.end());
  }
  return mesh;
}

}  // namespace support
