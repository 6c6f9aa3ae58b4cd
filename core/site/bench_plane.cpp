#include "core/site/bench_parts.h"

#include <optional>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// The wedges between even ground and the faces of a bench, on the side of cut or of fill. Over corner k of
/// the platform the wedge is `deep_[k]` high; moving outward along the mitre by an offset d it thins by
/// d (1 / batter - slope . mitre) and ends at daylight. Outside an edge it is a prism cut by three planes:
/// over a triangle or a quadrangle of its plan the height is linear, so its volume is area times mean height.
class Wedges {
public:
  Wedges(const Plane& ground, const BenchEdges& edges, double level_m, double batter, DaylightLine::Of of)
      : edges_(edges),
        level_m_(level_m),
        of_(of),
        rise_(of == DaylightLine::Of::cut ? 1 / batter : -1 / batter) {
    const double sign = of == DaylightLine::Of::cut ? 1 : -1;
    for (std::size_t k = 0; k < edges.size(); ++k) {
      deep_.push_back(sign * (ground.at(edges.corner[k]) - level_m));
      const double thins = 1 / batter - sign * ground.gradient.dot(edges.mitre[k]);
      if (deep_[k] > 0 && thins <= 1e-9) daylights_ = false;
      reach_.push_back(deep_[k] > 0 ? deep_[k] / thins : 0);
    }
  }

  bool daylights() const { return daylights_; }

  struct Wedge {
    double volume_m3 = 0, plan_m2 = 0;
    Patch face;                          ///< the plan lifted to the batter
    std::array<Vector3d, 2> daylight{};  ///< its outer edge
  };

  /// The wedge outside the edge from corner k; nothing when there is none.
  std::optional<Wedge> at(std::size_t k) const {
    const std::size_t next = edges_.after(k);
    if (deep_[k] <= 0 && deep_[next] <= 0) return std::nullopt;
    const Vector3d from = deep_[k] > 0 ? daylight(k) : end(k, next);
    const Vector3d to = deep_[next] > 0 ? daylight(next) : end(k, next);
    std::vector<Vector3d> plan{from, to};  // z: height of the wedge
    if (deep_[next] > 0) plan.emplace_back(edges_.corner[next].x(), edges_.corner[next].y(), deep_[next]);
    if (deep_[k] > 0) plan.emplace_back(edges_.corner[k].x(), edges_.corner[k].y(), deep_[k]);
    Wedge wedge;
    wedge.volume_m3 = integral(plan, {Vector3d::UnitZ(), 0});
    wedge.plan_m2 = planArea(plan);
    const Linear face{rise_ * edges_.outward[k].per_m, rise_ * edges_.outward[k].constant + level_m_};
    wedge.face = moved(plan, face);
    wedge.daylight = {wedge.face[0], wedge.face[1]};
    return wedge;
  }

private:
  const BenchEdges& edges_;
  double level_m_;
  DaylightLine::Of of_;
  double rise_;  // of the face per unit outward offset
  std::vector<double> deep_, reach_;
  bool daylights_ = true;

  Vector3d daylight(std::size_t k) const {
    const Vector2d p = edges_.corner[k] + reach_[k] * edges_.mitre[k];
    return {p.x(), p.y(), 0};
  }

  /// Where ground and platform are level with each other on an edge.
  Vector3d end(std::size_t k, std::size_t next) const {
    const double share = deep_[k] / (deep_[k] - deep_[next]);
    const Vector2d p = edges_.corner[k] + share * (edges_.corner[next] - edges_.corner[k]);
    return {p.x(), p.y(), 0};
  }
};

Plane lowered(const Plane& plane, double by_m) {
  return {plane.gradient, plane.level_m - by_m};
}

}  // namespace

std::optional<BenchParts> planeBench(const Plane& ground, const BenchShape& shape, const BenchEdges& edges,
                                     double level_m, Pieces pieces) {
  const double t = shape.topsoil_m;
  const Wedges cut(ground, edges, level_m, shape.cut_batter, DaylightLine::Of::cut);
  const Wedges under(lowered(ground, t), edges, level_m, shape.cut_batter, DaylightLine::Of::cut);
  const Wedges fill(ground, edges, level_m, shape.fill_batter, DaylightLine::Of::fill);
  if (!cut.daylights() || !under.daylights() || !fill.daylights()) return std::nullopt;

  BenchParts parts;
  Patch over;
  for (const Vector2d& p : edges.corner) over.emplace_back(p.x(), p.y(), ground.at(p));
  addPlatform(over, level_m, t, pieces, parts);
  for (std::size_t k = 0; k < edges.size(); ++k) {
    if (const auto wedge = cut.at(k)) {
      const auto below = under.at(k);  // what is left of it under the topsoil
      const double cut_m3 = below ? below->volume_m3 : 0;
      parts.cut_m3 += cut_m3;
      parts.strip_m3 += wedge->volume_m3 - cut_m3;
      parts.cut_face_m2 += wedge->plan_m2;
      parts.cut_m2 += below ? below->plan_m2 : 0;
      if (pieces == Pieces::kept) {
        parts.cut_face.push_back(wedge->face);
        parts.cut_daylight.push_back(wedge->daylight);
      }
    }
    if (const auto wedge = fill.at(k)) {
      parts.fill_m3 += wedge->volume_m3 + t * wedge->plan_m2;
      parts.strip_m3 += t * wedge->plan_m2;
      parts.fill_face_m2 += wedge->plan_m2;
      parts.fill_m2 += wedge->plan_m2;
      if (pieces == Pieces::kept) {
        parts.fill_face.push_back(wedge->face);
        parts.fill_daylight.push_back(wedge->daylight);
      }
    }
  }
  return parts;
}

}  // namespace core::site
