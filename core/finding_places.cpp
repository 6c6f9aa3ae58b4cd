#include "core/finding_list.h"

#include <array>
#include <cmath>
#include <numbers>
#include <string_view>

namespace core {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

enum class Place {
  floor,
  inner_wall,
  pit_wall,
  rim,
  downhill_rim,
  downhill_ground,  ///< beyond the platform
  uphill_rim,
  overflow,
  least_cover,
  heap,
};

struct Entry {
  std::string_view code;  ///< beginning of the code
  Place place;
};

/// The first entry that a code begins with counts.
constexpr std::array kPlaces{
    Entry{"pit_", Place::pit_wall},
    Entry{"clay_share", Place::inner_wall},
    Entry{"curing_", Place::inner_wall},
    Entry{"coat_", Place::inner_wall},
    Entry{"site_cut_face", Place::uphill_rim},
    Entry{"site_fill_face", Place::downhill_ground},
    Entry{"site_cut", Place::pit_wall},
    Entry{"site_tank_on_fill", Place::least_cover},
    Entry{"site_slope", Place::downhill_ground},
    Entry{"site_slip", Place::downhill_ground},
    Entry{"site_spoil", Place::heap},
    Entry{"site_edge", Place::downhill_ground},
    Entry{"site_house", Place::downhill_ground},
    Entry{"site_toddlers", Place::rim},
    Entry{"site_runoff", Place::uphill_rim},
    Entry{"site_survey", Place::uphill_rim},
    Entry{"site_platform", Place::downhill_rim},
    Entry{"site_frost", Place::rim},
    Entry{"site_", Place::floor},
    Entry{"delivery_line", Place::downhill_rim},
    Entry{"delivery_through_lining", Place::downhill_rim},
    Entry{"delivery_siphon", Place::downhill_rim},
    Entry{"delivery_outlet", Place::downhill_ground},
    Entry{"delivery_storm", Place::overflow},
    Entry{"delivery_overflow", Place::overflow},
    Entry{"delivery_rim", Place::overflow},
    Entry{"delivery_blocked", Place::overflow},
    Entry{"delivery_spill", Place::downhill_ground},
    Entry{"delivery_trap", Place::uphill_rim},
    Entry{"delivery_leak", Place::floor},
    Entry{"delivery_", Place::downhill_rim},
    Entry{"works_fill", Place::inner_wall},
    Entry{"works_walls", Place::inner_wall},
    Entry{"works_batch", Place::inner_wall},
    Entry{"works_masons", Place::inner_wall},
    Entry{"works_coat", Place::inner_wall},
};

/// Down the fall, in the tank's frame; toward the viewer on level ground.
Vector2d downhill(const Plan& plan) {
  if (!plan.site.fall.azimuth_deg) return -Vector2d::UnitY();
  const double azimuth = *plan.site.fall.azimuth_deg * std::numbers::pi / 180;
  return plan.site.placement.turnedBack({std::sin(azimuth), std::cos(azimuth)});
}

/// Point of the outline at an offset that lies farthest in a direction.
Vector2d farthest(const geometry::TankGeometry& tank, double offset_m, const Vector2d& direction) {
  constexpr int kFacets = 96;
  const geometry::Ring ring = tank.outline().ring(kFacets);
  // sides square to the direction have two ends: their middle is meant
  double reach = -1e300;
  for (Eigen::Index k = 0; k < ring.size(); ++k) reach = std::max(reach, direction.dot(ring.at(k, offset_m)));
  Vector2d sum = Vector2d::Zero();
  int count = 0;
  for (Eigen::Index k = 0; k < ring.size(); ++k) {
    if (direction.dot(ring.at(k, offset_m)) < reach - 1e-3) continue;
    sum += ring.at(k, offset_m);
    ++count;
  }
  return sum / count;
}

Vector3d at(const Vector2d& p, double z_m) {
  return {p.x(), p.y(), z_m};
}

Vector3d pointOf(Place place, const Plan& plan) {
  constexpr double kBeyond_m = 1.5;
  const geometry::TankGeometry& tank = plan.geometry;
  const double rim = tank.depth();
  const Vector2d down = downhill(plan);
  switch (place) {
    case Place::floor:
      return at(tank.outline().centre(), 0);
    case Place::inner_wall:
      return at(farthest(tank, tank.clearOffset(rim / 2), -down), rim / 2);
    case Place::pit_wall:
      return at(farthest(tank, tank.pitOffset(rim / 2), -down), rim / 2);
    case Place::rim:
      return at(farthest(tank, tank.clearOffset(rim), Vector2d::UnitX()), rim);
    case Place::uphill_rim:
      return at(farthest(tank, tank.clearOffset(rim), -down), rim);
    case Place::overflow:
      return at(farthest(tank, tank.clearOffset(rim), down), tank.fullLevel());
    case Place::downhill_ground:
      return at(farthest(tank, tank.pitOffset(rim) + kBeyond_m, down), rim);
    case Place::least_cover:
      if (plan.site.cover) return site::inTankFrame(plan.site, tank, plan.site.cover->at_m);
      break;
    case Place::heap:
      if (plan.site.heap_place) {
        const Vector2d& middle = plan.site.heap_place->centre_m;
        return site::inTankFrame(plan.site, tank,
                                 at(middle, plan.site.rimLevel() + plan.site.heap->height_m));
      }
      break;
    case Place::downhill_rim:
      break;
  }
  return at(farthest(tank, tank.clearOffset(rim), down), rim);
}

}  // namespace

std::optional<Vector3d> placeOf(const Finding& finding, const Plan& plan) {
  for (const Entry& entry : kPlaces) {
    if (finding.code.starts_with(entry.code)) return pointOf(entry.place, plan);
  }
  return std::nullopt;
}

}  // namespace core
