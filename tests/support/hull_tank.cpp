#include "tests/support/hull_tank.h"

#include <cmath>
#include <numbers>

namespace support {
namespace {

cgal::Polygon rectangle(double length_m, double width_m) {
  return {{0, 0}, {length_m, 0}, {length_m, width_m}, {0, width_m}};
}

}  // namespace

HullTank::HullTank(const TankAndLining& from, int facets_per_circle)
    : from_(from), facets_(facets_per_circle) {
  const core::Tank& tank = from_.tank;
  const double rise = tank.measured_at == core::MeasuredAt::rim ? tank.batter * tank.depth_m : 0;
  floor_radius_m_ = tank.diameter_m / 2 - rise;
  if (tank.shape == core::Shape::rectangle) {
    floor_ = cgal::offset(rectangle(tank.length_m, tank.width_m), -rise);
  } else if (tank.shape == core::Shape::polygon) {
    floor_ = cgal::offset(tank.outline_m, -rise);
  }
  for (const core::Coat& coat : from_.lining.coats) coats_m_ += coat.thickness_m;
}

cgal::Polygon HullTank::at(double offset_m) const {
  if (!floor_.empty()) return cgal::offset(floor_, offset_m);
  cgal::Polygon points;
  for (int k = 0; k < facets_; ++k) {
    const double turn = 2 * std::numbers::pi * k / facets_;
    points.emplace_back((floor_radius_m_ + offset_m) * Eigen::Vector2d(std::cos(turn), std::sin(turn)));
  }
  return points;
}

cgal::Polygon HullTank::wall(double behind_m, double z_m) const {
  const double batter = from_.tank.batter;
  return at(batter * z_m + behind_m * std::sqrt(1 + batter * batter));
}

cgal::Hull HullTank::between(double behind_m, double low_m, double high_m) const {
  return cgal::frustum(wall(behind_m, low_m), low_m, wall(behind_m, high_m), high_m);
}

double HullTank::rimEdge() const {
  const double batter = from_.tank.batter;
  const double pit = batter * depth() + coats_m_ * std::sqrt(1 + batter * batter);
  return pit + (hasRim() ? from_.lining.rim_width_m : 0);
}

double HullTank::prismSide(double offset_m, double height_m) const {
  return cgal::perimeter(at(offset_m)) * height_m;
}

HullTank::Part HullTank::coat(std::size_t index) const {
  double behind = 0;
  for (std::size_t k = index + 1; k < from_.lining.coats.size(); ++k)
    behind += from_.lining.coats[k].thickness_m;
  const double outer = behind + from_.lining.coats[index].thickness_m;
  const cgal::Hull in = between(behind, -behind, depth());
  const cgal::Hull out = between(outer, -outer, depth());
  const double top = cgal::area(wall(behind, depth()));
  return {out.volume_m3 - in.volume_m3, out.area_m2 + in.area_m2 - 2 * top, in.area_m2 - top};
}

HullTank::Part HullTank::stoneBed() const {
  const cgal::Hull bed = between(coats_m_, pitBottom(), -coats_m_);
  return {bed.volume_m3, bed.area_m2, cgal::area(wall(coats_m_, -coats_m_))};
}

HullTank::Part HullTank::rim() const {
  if (!hasRim()) return {};
  const double thickness = from_.lining.rim_thickness_m;
  const double ledge = depth() - thickness;
  const cgal::Hull hole = between(coats_m_, ledge, depth());
  const double top = cgal::area(wall(coats_m_, depth()));
  const double bottom = cgal::area(wall(coats_m_, ledge));
  const double outer = cgal::area(at(rimEdge()));
  const double hole_side = hole.area_m2 - top - bottom;
  return {outer * thickness - hole.volume_m3,
          2 * outer - top - bottom + hole_side + prismSide(rimEdge(), thickness), outer - top};
}

HullTank::Part HullTank::pit() const {
  const cgal::Hull hull = between(coats_m_, pitBottom(), depth());
  const Part collar = rim();
  const double top = cgal::area(wall(coats_m_, depth()));
  Part pit{hull.volume_m3 + collar.volume_m3, hull.area_m2, hull.area_m2 - top};
  if (!hasRim()) return pit;
  // the collar's own faces, less the cone it shares with the pit (counted in both)
  const double ledge = depth() - from_.lining.rim_thickness_m;
  const double shared = between(coats_m_, ledge, depth()).area_m2 - top - cgal::area(wall(coats_m_, ledge));
  pit.surface_m2 += collar.surface_m2 - 2 * shared;
  return pit;
}

HullTank::Part HullTank::water(double level_m) const {
  const cgal::Hull hull = between(0, 0, level_m);
  return {hull.volume_m3, hull.area_m2, cgal::area(wall(0, level_m))};
}

HullTank::Part HullTank::ground(double margin_m, double below_m) const {
  const double outer = rimEdge() + margin_m;
  const double height = depth() - pitBottom() + below_m;
  const Part hole = pit();
  const double mouth = cgal::area(at(rimEdge()));
  const double block = cgal::area(at(outer));
  return {block * height - hole.volume_m3, 2 * block + prismSide(outer, height) + hole.surface_m2 - 2 * mouth,
          block - mouth};
}

HullTank::Part HullTank::layer(const std::string& id) const {
  if (id == "stone_bed") return stoneBed();
  if (id == "rim") return rim();
  return coat(static_cast<std::size_t>(std::stoi(id.substr(5))) - 1);
}

}  // namespace support
