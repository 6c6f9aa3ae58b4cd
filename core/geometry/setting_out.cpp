#include "core/geometry/setting_out.h"

#include "core/geometry/polygon.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <utility>

#include <fmt/format.h>

namespace core::geometry {
namespace {

using Eigen::Vector2d;

constexpr double kPegClear_m = 1.0;  // offset pegs beyond the pit edge (and the rim collar)
constexpr double kBatterMarkEvery_m = 0.5;
constexpr std::size_t kAllDiagonalsUpTo = 5;  // corners; more are tied from the first two only

/// A, B, ..., Z, AA, AB, ...
std::string letter(std::size_t k) {
  const std::string last(1, static_cast<char>('A' + k % 26));
  return k < 26 ? last : letter(k / 26 - 1) + last;
}

std::string lower(std::string text) {
  for (char& c : text) c = static_cast<char>(c - 'A' + 'a');
  return text;
}

/// Points seen from the first corner with the first side along x.
class Frame {
public:
  Frame(const Vector2d& origin, const Vector2d& along) : origin_(origin), x_(along.normalized()) {}
  Eigen::Vector3d at(const Vector2d& p, double z) const {
    const Vector2d d = p - origin_;
    return {x_.dot(d), x_.x() * d.y() - x_.y() * d.x(), z};
  }

private:
  Vector2d origin_, x_;
};

void addTie(SettingOut& out, const Peg& a, const Peg& b, const char* kind) {
  out.ties.push_back({a.id, b.id, kind, (a.at_m - b.at_m).head<2>().norm()});
}

/// Marks m and n on the two sides from the first corner: the largest 3-4-5 triangle (3-4-5, half or quarter
/// of it) that fits.
void addRightAngle(SettingOut& out, const Peg& corner, const Peg& along, const Peg& across) {
  const double l = (along.at_m - corner.at_m).head<2>().norm();
  const double w = (across.at_m - corner.at_m).head<2>().norm();
  double unit = 0.25;
  for (const double u : {0.5, 1.0}) {
    if (std::max(l, w) >= 4 * u && std::min(l, w) >= 3 * u) unit = u;
  }
  const double on_along = (l >= w ? 4 : 3) * unit;
  const double on_across = 7 * unit - on_along;
  const Peg m{"m", "square_mark", corner.at_m + (along.at_m - corner.at_m) * (on_along / l)};
  const Peg n{"n", "square_mark", corner.at_m + (across.at_m - corner.at_m) * (on_across / w)};
  for (const auto& [a, b] : {std::pair(corner, m), std::pair(corner, n), std::pair(m, n)}) {
    addTie(out, a, b, "triangle_3_4_5");
  }
  out.pegs.push_back(m);
  out.pegs.push_back(n);
}

void addOffsetPegs(SettingOut& out, const Frame& frame, const std::vector<Vector2d>& edge, double clear_m) {
  const std::size_t n = edge.size();
  for (std::size_t k = 0; k < n; ++k) {
    const Vector2d before = (edge[k] - edge[(k + n - 1) % n]).normalized();
    const Vector2d after = (edge[(k + 1) % n] - edge[k]).normalized();
    out.pegs.push_back({letter(k) + "1", "offset_peg", frame.at(edge[k] - clear_m * after, 0)});
    out.pegs.push_back({letter(k) + "2", "offset_peg", frame.at(edge[k] + clear_m * before, 0)});
  }
}

void addCornerTies(SettingOut& out, std::size_t n) {
  for (std::size_t k = 0; k < n; ++k) addTie(out, out.pegs[k], out.pegs[(k + 1) % n], "side");
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t k = i + 2; k < n; ++k) {
      const bool beside = i == 0 && k == n - 1;
      if (!beside && (n <= kAllDiagonalsUpTo || i < 2)) addTie(out, out.pegs[i], out.pegs[k], "diagonal");
    }
  }
}

/// Centre of each round corner with the two points where its arc leaves the sides.
void addRoundCorners(SettingOut& out, const TankGeometry& tank, const Frame& frame,
                     const std::vector<Vector2d>& edge) {
  const std::vector<Vector2d> centres = tank.outline().corners(-tank.outline().radius());
  const double radius = tank.outline().radius() + tank.pitOffset(tank.depth());
  const std::size_t n = edge.size();
  for (std::size_t k = 0; k < n; ++k) {
    const Vector2d before = outwardNormal(edge[k] - edge[(k + n - 1) % n]);
    const Vector2d after = outwardNormal(edge[(k + 1) % n] - edge[k]);
    const Peg centre{letter(k) + "0", "arc_centre", frame.at(centres[k], 0)};
    const Peg first{letter(k) + "3", "arc_end", frame.at(centres[k] + radius * before, 0)};
    const Peg last{letter(k) + "4", "arc_end", frame.at(centres[k] + radius * after, 0)};
    out.pegs.insert(out.pegs.end(), {centre, first, last});
    addTie(out, centre, first, "radius");
    addTie(out, centre, last, "radius");
  }
}

void addPolygon(SettingOut& out, const TankGeometry& tank, double clear_m) {
  const std::vector<Vector2d> edge = tank.outline().corners(tank.pitOffset(tank.depth()));
  const double floor = tank.depth() - tank.pitDepth();
  const std::vector<Vector2d> foot = tank.outline().corners(tank.pitOffset(floor));
  const std::size_t n = edge.size();
  const Frame frame(edge[0], edge[1] - edge[0]);
  for (std::size_t k = 0; k < n; ++k) out.pegs.push_back({letter(k), "pit_corner", frame.at(edge[k], 0)});
  addCornerTies(out, n);
  const bool square = n == 4 && std::abs((edge[1] - edge[0]).dot(edge[3] - edge[0])) < 1e-9;
  if (square) addRightAngle(out, Peg(out.pegs[0]), Peg(out.pegs[1]), Peg(out.pegs[3]));
  for (std::size_t k = 0; k < n; ++k) {
    out.pegs.push_back({lower(letter(k)), "pit_floor_corner", frame.at(foot[k], -tank.pitDepth())});
  }
  addOffsetPegs(out, frame, edge, clear_m);
  if (tank.outline().radius() > 0) addRoundCorners(out, tank, frame, edge);
}

void addCircle(SettingOut& out, const TankGeometry& tank, double clear_m) {
  const double edge = tank.outline().radius() + tank.pitOffset(tank.depth());
  const double foot = tank.outline().radius() + tank.pitOffset(tank.depth() - tank.pitDepth());
  out.pegs.push_back({"O", "centre", Eigen::Vector3d::Zero()});
  const std::array<Vector2d, 4> directions{Vector2d(1, 0), Vector2d(0, 1), Vector2d(-1, 0), Vector2d(0, -1)};
  for (std::size_t k = 0; k < directions.size(); ++k) {
    const auto at = [&](double r, double z) {
      return Eigen::Vector3d(r * directions[k].x(), r * directions[k].y(), z);
    };
    out.pegs.push_back({letter(k), "pit_corner", at(edge, 0)});
    out.pegs.push_back({lower(letter(k)), "pit_floor_corner", at(foot, -tank.pitDepth())});
    out.pegs.push_back({letter(k) + "1", "offset_peg", at(edge + clear_m, 0)});
    out.ties.push_back({"O", letter(k), "radius", edge});
    out.ties.push_back({"O", lower(letter(k)), "radius", foot});
  }
  out.ties.push_back({"A1", "C1", "diagonal", 2 * (edge + clear_m)});
  out.ties.push_back({"B1", "D1", "diagonal", 2 * (edge + clear_m)});
  out.ties.push_back({"A1", "B1", "side", std::sqrt(2.0) * (edge + clear_m)});
}

void addLevels(SettingOut& out, const TankGeometry& tank) {
  double below = tank.pitDepth();
  out.levels.push_back({"pit_floor", below});
  for (const Layer& layer : tank.layers()) {
    if (layer.id == "cove" || layer.id == "rim") continue;
    below -= layer.thickness_m;
    out.levels.push_back({layer.id + "_top", below});
  }
  out.levels.push_back({"overflow", tank.depth() - tank.fullLevel()});
  out.levels.push_back({"rim", 0});
}

void addBatter(SettingOut& out, const TankGeometry& tank) {
  for (int k = 1; k * kBatterMarkEvery_m < tank.pitDepth() - 1e-9; ++k) {
    out.batter.push_back({k * kBatterMarkEvery_m, tank.batter() * k * kBatterMarkEvery_m});
  }
  out.batter.push_back({tank.pitDepth(), tank.batter() * tank.pitDepth()});
}

}  // namespace

const LevelMark& SettingOut::mark(const std::string& id) const {
  return *std::ranges::find(levels, id, &LevelMark::id);
}

const LevelMark& SettingOut::clearFloor() const {
  return *std::prev(std::ranges::find(levels, "overflow", &LevelMark::id));
}

SettingOut settingOut(const TankGeometry& tank) {
  SettingOut out;
  const double rim = tank.pitProfile().points.back().offset_m - tank.pitOffset(tank.depth());
  if (tank.outline().isCircle()) {
    addCircle(out, tank, kPegClear_m + rim);
  } else {
    addPolygon(out, tank, kPegClear_m + rim);
  }
  addLevels(out, tank);
  addBatter(out, tank);
  return out;
}

}  // namespace core::geometry
