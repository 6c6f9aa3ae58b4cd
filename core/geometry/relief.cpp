#include "core/geometry/relief.h"

#include "core/geometry/polygon.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

namespace core::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using Index = std::uint32_t;
using Triangle = std::array<Index, 3>;

constexpr double kBelow_m = 0.5;      // ground drawn below the pit and the lowest ground
constexpr double kMostRows = 60;      // rings outside the platform
constexpr double kMostColumns = 480;  // points along a ring
constexpr double kOnLine_m = 1e-5;    // points so near to a border are on it
constexpr double kSame_m = 1e-3;      // ground so near to the rim is level with it
constexpr double kNone = std::numeric_limits<double>::quiet_NaN();

/// A ring with points put in along its edges, so that at an offset no edge is longer than a step.
Ring divided(const Ring& ring, double offset_m, double step_m) {
  const Eigen::Index n = ring.size();
  double perimeter = 0;
  for (Eigen::Index k = 0; k < n; ++k)
    perimeter += (ring.at((k + 1) % n, offset_m) - ring.at(k, offset_m)).norm();
  const double longest = std::max(step_m, perimeter / kMostColumns);
  std::vector<Vector2d> base, direction;
  for (Eigen::Index k = 0; k < n; ++k) {
    const Eigen::Index next = (k + 1) % n;
    const double length = (ring.at(next, offset_m) - ring.at(k, offset_m)).norm();
    const int pieces = std::max(1, static_cast<int>(std::ceil(length / longest - 1e-9)));
    for (int i = 0; i < pieces; ++i) {
      const double share = double(i) / pieces;
      base.emplace_back(ring.base.col(k) + share * (ring.base.col(next) - ring.base.col(k)));
      direction.emplace_back(ring.direction.col(k) +
                             share * (ring.direction.col(next) - ring.direction.col(k)));
    }
  }
  Ring fine{Eigen::Matrix2Xd(2, base.size()), Eigen::Matrix2Xd(2, base.size())};
  for (std::size_t k = 0; k < base.size(); ++k) {
    fine.base.col(static_cast<Eigen::Index>(k)) = base[k];
    fine.direction.col(static_cast<Eigen::Index>(k)) = direction[k];
  }
  return fine;
}

/// Offsets from one to another in even steps, without the first.
void addOffsets(std::vector<double>& offsets, double from, double to, double step) {
  const int steps = static_cast<int>(std::ceil(std::abs(to - from) / step - 1e-9));
  for (int i = 1; i <= steps; ++i) offsets.push_back(i == steps ? to : from + (to - from) * i / steps);
}

enum class Side { outer, top, platform, pit };

/// A block under construction. Points of the finished surface know where natural ground meets its planes.
struct Draft {
  Mesh mesh;
  std::vector<Side> side;         // of every triangle
  std::vector<double> offset;     // of every point
  std::vector<double> above_cut;  // likewise; kNone off the finished surface
  std::vector<double> below_fill;

  Index addPoint(const Vector3d& at, double offset_m, double cut, double fill) {
    const auto settled = [](double value) { return std::abs(value) < kOnLine_m ? 0 : value; };
    mesh.points.push_back(at);
    offset.push_back(offset_m);
    above_cut.push_back(settled(cut));
    below_fill.push_back(settled(fill));
    return static_cast<Index>(mesh.points.size() - 1);
  }

  void add(const Triangle& triangle, Side of) {
    mesh.triangles.push_back(triangle);
    side.push_back(of);
  }
};

class Builder {
public:
  Builder(const FinishedGround& ground, Ring ring)
      : ground_(ground), ring_(std::move(ring)), n_(static_cast<Index>(ring_.size())) {}

  /// Ring at one level, joined to the ring before it.
  void addLevel(double offset_m, double z_m, Side joined_as) {
    for (Eigen::Index k = 0; k < ring_.size(); ++k) {
      const Vector2d p = ring_.at(k, offset_m);
      draft_.addPoint({p.x(), p.y(), z_m}, offset_m, kNone, kNone);
    }
    join(joined_as);
  }

  /// Ring of the finished surface.
  void addSurface(double offset_m, Side joined_as) {
    for (Eigen::Index k = 0; k < ring_.size(); ++k) {
      const Vector2d p = ring_.at(k, offset_m);
      const GroundHeights at = ground_.heights(p, offset_m);
      lowest_m_ = std::min(lowest_m_, at.finished());
      draft_.addPoint({p.x(), p.y(), at.finished()}, offset_m, at.above_cut_m, at.below_fill_m);
    }
    join(joined_as);
  }

  /// Lowers the first ring to below a level and all ground, and puts caps on it and on the last.
  Draft finish(double pit_floor_m, Side last) {
    for (Index k = 0; k < n_; ++k) draft_.mesh.points[k].z() = std::min(pit_floor_m, lowest_m_) - kBelow_m;
    cap(0, Side::outer);
    cap((rings_ - 1) * n_, last);
    return std::move(draft_);
  }

private:
  void join(Side side) {
    if (++rings_ == 1) return;
    const Index b = (rings_ - 1) * n_;
    const Index a = b - n_;
    for (Index k = 0; k < n_; ++k) {
      const Index next = (k + 1) % n_;
      draft_.add({a + k, a + next, b + next}, side);
      draft_.add({a + k, b + next, b + k}, side);
    }
  }

  void cap(Index first, Side side) {
    Vector3d middle = Vector3d::Zero();
    for (Index k = 0; k < n_; ++k) middle += draft_.mesh.points[first + k] / n_;
    const GroundHeights at =
        side == Side::platform ? ground_.heights(middle.head<2>(), 0) : GroundHeights{0, kNone, kNone};
    if (side == Side::platform) middle.z() = at.finished();
    const Index centre = draft_.addPoint(middle, 0, at.above_cut_m, at.below_fill_m);
    for (Index k = 0; k < n_; ++k) {
      const Index here = first + k, next = first + (k + 1) % n_;
      draft_.add(side == Side::outer ? Triangle{next, here, centre} : Triangle{here, next, centre}, side);
    }
  }

  const FinishedGround& ground_;
  Ring ring_;
  Index n_, rings_ = 0;
  double lowest_m_ = std::numeric_limits<double>::infinity();  // finished ground
  Draft draft_;
};

Draft draftOf(const TankGeometry& tank, const FinishedGround& ground, const BlockSteps& steps) {
  const double reach = ground.outermost() - ground.platform();
  std::vector<double> offsets{ground.outermost()};
  addOffsets(offsets, ground.outermost(), ground.platform(), std::max(steps.inward_m, reach / kMostRows));
  const std::size_t outside = offsets.size();
  addOffsets(offsets, ground.platform(), ground.pitEdge(), steps.inward_m);

  Builder builder(ground, divided(ground.ring(), ground.outermost(), steps.along_m));
  builder.addLevel(ground.outermost(), 0, Side::outer);
  for (std::size_t k = 0; k < offsets.size(); ++k)
    builder.addSurface(offsets[k], k == 0 ? Side::outer : k < outside ? Side::top : Side::platform);
  const double pit_floor = tank.depth() - tank.pitDepth();
  if (ground.dug() <= 0) {
    std::vector<double> inside;
    addOffsets(inside, ground.pitEdge(), 0, steps.inward_m);
    for (const double offset : inside) builder.addSurface(offset, Side::platform);
    return builder.finish(pit_floor, Side::platform);
  }
  const std::vector<ProfilePoint> pit = tank.pitProfile(ground.dug()).points;
  for (auto at = pit.rbegin() + 1; at != pit.rend(); ++at) builder.addLevel(at->offset_m, at->z_m, Side::pit);
  return builder.finish(pit_floor, Side::pit);
}

/// Splits the triangles of a draft along the line on which a value of its points is 0.
class Splitter {
public:
  Splitter(Draft& draft, std::vector<double> Draft::*value, const FinishedGround& ground)
      : draft_(draft), value_(value), ground_(ground) {}

  void run() {
    const std::vector<Triangle> triangles = std::exchange(draft_.mesh.triangles, {});
    const std::vector<Side> side = std::exchange(draft_.side, {});
    for (std::size_t k = 0; k < triangles.size(); ++k) split(triangles[k], side[k]);
  }

private:
  /// Never for a point off the finished surface, whose value is no number.
  bool crosses(Index u, Index v) const { return (draft_.*value_)[u] * (draft_.*value_)[v] < 0; }

  void split(const Triangle& t, Side side) {
    const std::array<bool, 3> over{crosses(t[0], t[1]), crosses(t[1], t[2]), crosses(t[2], t[0])};
    const auto count = std::count(over.begin(), over.end(), true);
    if (count == 0) {
      draft_.add(t, side);
    } else if (count == 1) {
      bisect(t, static_cast<std::size_t>(std::find(over.begin(), over.end(), true) - over.begin()), side);
    } else {
      cutOff(t, static_cast<std::size_t>(std::find(over.begin(), over.end(), false) - over.begin()), side);
    }
  }

  void bisect(const Triangle& t, std::size_t crossed, Side side) {
    const Index a = t[crossed], b = t[(crossed + 1) % 3], c = t[(crossed + 2) % 3];
    const Index ab = between(a, b);
    draft_.add({a, ab, c}, side);
    draft_.add({ab, b, c}, side);
  }

  void cutOff(const Triangle& t, std::size_t uncrossed, Side side) {
    const Index b = t[uncrossed], c = t[(uncrossed + 1) % 3], a = t[(uncrossed + 2) % 3];
    const Index ab = between(a, b), ac = between(a, c);
    draft_.add({a, ab, ac}, side);
    draft_.add({ab, b, c}, side);
    draft_.add({ab, c, ac}, side);
  }

  Index between(Index u, Index v) {
    const std::pair<Index, Index> edge = std::minmax(u, v);
    const auto [at, fresh] = between_.try_emplace(edge, 0);
    if (fresh) at->second = addBetween(edge.first, edge.second);
    return at->second;
  }

  Index addBetween(Index u, Index v) {
    const std::vector<double>& value = draft_.*value_;
    const double share = value[u] / (value[u] - value[v]);
    const auto mixed = [&](const auto& of) { return of[u] + share * (of[v] - of[u]); };
    const Vector3d p = draft_.mesh.points[u] + share * (draft_.mesh.points[v] - draft_.mesh.points[u]);
    const double offset = mixed(draft_.offset);
    const Index k = draft_.addPoint({p.x(), p.y(), ground_.heights(p.head<2>(), offset).finished()}, offset,
                                    mixed(draft_.above_cut), mixed(draft_.below_fill));
    (draft_.*value_)[k] = 0;
    return k;
  }

  Draft& draft_;
  std::vector<double> Draft::*value_;
  const FinishedGround& ground_;
  std::map<std::pair<Index, Index>, Index> between_;
};

double most(const std::vector<double>& value, const Triangle& t) {
  return std::max({value[t[0]], value[t[1]], value[t[2]]});
}

bool isLevel(const Draft& draft) {
  const auto little = [](double x) { return !(x > kSame_m); };
  return std::all_of(draft.above_cut.begin(), draft.above_cut.end(), little) &&
         std::all_of(draft.below_fill.begin(), draft.below_fill.end(), little);
}

Zone zoneOf(const Draft& draft, std::size_t k, bool level) {
  const Triangle& t = draft.mesh.triangles[k];
  if (draft.side[k] == Side::pit) return Zone::pit;
  if (draft.side[k] == Side::outer || level) return Zone::ground;
  if (draft.side[k] == Side::platform) return most(draft.below_fill, t) > kSame_m ? Zone::fill : Zone::cut;
  if (most(draft.above_cut, t) > 0) return Zone::cut;
  return most(draft.below_fill, t) > 0 ? Zone::fill : Zone::ground;
}

}  // namespace

ZonedBlock reliefBlock(const TankGeometry& tank, const FinishedGround& ground, const BlockSteps& steps) {
  Draft draft = draftOf(tank, ground, steps);
  const bool level = isLevel(draft);
  if (!level) {
    Splitter(draft, &Draft::above_cut, ground).run();
    Splitter(draft, &Draft::below_fill, ground).run();
  }
  ZonedBlock block;
  block.zone.reserve(draft.side.size());
  for (std::size_t k = 0; k < draft.side.size(); ++k) block.zone.push_back(zoneOf(draft, k, level));
  block.mesh = std::move(draft.mesh);
  return block;
}

}  // namespace core::geometry
