#pragma once

#include "tests/support/cgal_mesh.h"
#include "tests/support/random_tank.h"

#include <string>

namespace support {

/// A tank put together from convex hulls alone, straight from what the user entered. No cove.
/// Sharp corners, or a circle drawn as a regular polygon with its corners on the circle.
class HullTank {
public:
  HullTank(const TankAndLining& from, int facets_per_circle);

  struct Part {
    double volume_m3 = 0;
    double surface_m2 = 0;  ///< of the closed solid, all sides
    double face_m2 = 0;     ///< the side that is worked: inner face of a coat, top of the bed and the rim
  };

  Part coat(std::size_t index) const;  ///< 0: against the earth
  Part stoneBed() const;
  Part rim() const;
  Part pit() const;
  Part water(double level_m) const;
  Part ground(double margin_m, double below_m) const;
  /// stone_bed, coat_1, ..., rim, as in TankGeometry::layers()
  Part layer(const std::string& id) const;

private:
  TankAndLining from_;
  cgal::Polygon floor_;  // empty for a circle
  double floor_radius_m_ = 0;
  int facets_;
  double coats_m_ = 0;

  double depth() const { return from_.tank.depth_m; }
  double pitBottom() const { return -coats_m_ - from_.lining.stone_bed_m; }
  bool hasRim() const { return from_.lining.rim_width_m > 0 && from_.lining.rim_thickness_m > 0; }
  double rimEdge() const;
  cgal::Polygon at(double offset_m) const;
  /// Wall face with `behind_m` of plaster between it and the clear inside, at level z.
  cgal::Polygon wall(double behind_m, double z_m) const;
  cgal::Hull between(double behind_m, double low_m, double high_m) const;
  double prismSide(double offset_m, double height_m) const;
};

}  // namespace support
