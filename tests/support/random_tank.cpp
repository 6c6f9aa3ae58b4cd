#include "tests/support/random_tank.h"

#include "core/geometry/tank_geometry.h"

#include <algorithm>

namespace support {
namespace {

using Eigen::Vector2d;

double turn(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
  const Vector2d u = b - a, v = c - a;
  return u.x() * v.y() - u.y() * v.x();
}

void addToChain(std::vector<Vector2d>& chain, std::size_t from, const Vector2d& p) {
  while (chain.size() >= from + 2 && turn(chain[chain.size() - 2], chain.back(), p) <= 0) chain.pop_back();
  chain.push_back(p);
}

/// Convex hull, anticlockwise, by the monotone chain.
std::vector<Vector2d> hull(std::vector<Vector2d> points) {
  std::sort(points.begin(), points.end(), [](const Vector2d& a, const Vector2d& b) {
    return std::pair(a.x(), a.y()) < std::pair(b.x(), b.y());
  });
  std::vector<Vector2d> chain;
  for (const Vector2d& p : points) addToChain(chain, 0, p);
  const std::size_t upper = chain.size() - 1;
  for (auto p = points.rbegin() + 1; p != points.rend(); ++p) addToChain(chain, upper, *p);
  chain.pop_back();
  return chain;
}

}  // namespace

double Dice::between(double least, double most) {
  return least + (most - least) * (double(engine_() >> 11) * 0x1p-53);
}

int Dice::whole(int least, int most) {
  return least + static_cast<int>(engine_() % static_cast<std::uint64_t>(most - least + 1));
}

TankAndLining RandomTanks::next(core::Shape shape, Corners corners, Cove cove) {
  for (;;) {
    const TankAndLining result = throwOne(shape, corners, cove);
    ++tried_;
    if (core::geometry::check(result.tank, result.lining).empty()) return result;
    ++rejected_;
  }
}

TankAndLining RandomTanks::throwOne(core::Shape shape, Corners corners, Cove cove) {
  core::Tank tank;
  tank.shape = shape;
  tank.measured_at = dice_.chance(0.5) ? core::MeasuredAt::floor : core::MeasuredAt::rim;
  tank.depth_m = dice_.between(0.5, 3);
  tank.batter = dice_.chance(0.2) ? 0 : dice_.between(0, 1.2);
  tank.freeboard_m = dice_.between(0, 0.3);
  tank.dead_depth_m = dice_.between(0, 0.15);
  const double grow = tank.measured_at == core::MeasuredAt::rim ? 2 * tank.batter * tank.depth_m : 0;
  tank.length_m = dice_.between(1.2, 15) + grow;
  tank.width_m = dice_.between(1.2, 8) + grow;
  tank.diameter_m = dice_.between(1.5, 12) + grow;
  tank.outline_m = throwOutline(grow);
  const bool round = corners == Corners::any && shape != core::Shape::round && dice_.chance(0.5);
  tank.corner_radius_m = round ? dice_.between(0.05, 0.8) : 0;
  return {tank, throwLining(cove)};
}

core::Lining RandomTanks::throwLining(Cove cove) {
  core::Lining lining;
  lining.stone_bed_m = dice_.chance(0.2) ? 0 : dice_.between(0.02, 0.3);
  lining.coats.resize(static_cast<std::size_t>(dice_.whole(1, 6)));
  for (core::Coat& coat : lining.coats) coat.thickness_m = dice_.between(0.005, 0.08);
  const bool with_cove = cove == Cove::always || (cove == Cove::any && dice_.chance(0.5));
  lining.cove_radius_m = with_cove ? dice_.between(0.02, 0.3) : 0;
  if (dice_.chance(0.5)) {
    lining.rim_width_m = dice_.between(0.1, 0.6);
    lining.rim_thickness_m = dice_.between(0.03, 0.2);
  }
  return lining;
}

std::vector<Vector2d> RandomTanks::throwOutline(double grow_m) {
  const double x = dice_.between(2, 14) + 1.5 * grow_m;
  const double y = dice_.between(2, 9) + 1.5 * grow_m;
  std::vector<Vector2d> points(static_cast<std::size_t>(dice_.whole(4, 14)));
  for (Vector2d& p : points) p = {dice_.between(-1, x), dice_.between(-3, y)};
  return hull(std::move(points));
}

}  // namespace support
