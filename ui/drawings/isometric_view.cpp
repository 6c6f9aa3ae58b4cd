#include "ui/drawings/isometric_view.h"

#include "core/geometry/polygon.h"
#include "ui/drawings/paper.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ui::drawings {
namespace {

using core::geometry::ProfilePoint;

constexpr double kWide_m = 1000;  // an offset at which every side of a ring has a length
const Eigen::Vector3d kToViewer(1, -1, 1);

/// Sides from `first` on, in order round the ring, for which the answer stays yes.
template <typename Is>
Chain chainFrom(Eigen::Index first, Eigen::Index count, const Is& is) {
  Chain chain{first};
  for (Eigen::Index k = first; is(k % count) && k < first + count; ++k) chain.push_back((k + 1) % count);
  return chain;
}

double crossOf(QPointF a, QPointF b) {
  return a.x() * b.y() - a.y() * b.x();
}

double areaTwice(const QPolygonF& polygon) {
  double sum = 0;
  for (qsizetype k = 0; k < polygon.size(); ++k)
    sum += crossOf(polygon[k] - polygon[0], polygon[(k + 1) % polygon.size()] - polygon[0]);
  return sum;
}

/// The part of a polygon where `side` is not below 0 (Sutherland and Hodgman).
template <typename Side>
QPolygonF cutBy(const QPolygonF& polygon, const Side& side) {
  QPolygonF kept;
  for (qsizetype k = 0; k < polygon.size(); ++k) {
    const QPointF a = polygon[k], b = polygon[(k + 1) % polygon.size()];
    const double at_a = side(a), at_b = side(b);
    if (at_a >= 0) kept << a;
    if ((at_a < 0) != (at_b < 0)) kept << a + (b - a) * (at_a / (at_a - at_b));
  }
  return kept;
}

}  // namespace

QPointF IsometricView::at(const Eigen::Vector2d& p_m, double z_m) const {
  constexpr double kCos30 = std::numbers::sqrt3 / 2;
  return {mm((p_m.x() + p_m.y()) * kCos30), mm((p_m.x() - p_m.y()) / 2 - z_m)};
}

bool Strip::isLevel() const {
  return std::abs(outer.z_m - inner.z_m) < 1e-9;
}

SeenRing::SeenRing(const core::geometry::Outline& outline)
    : ring_(outline.ring(kFacets)), has_corners_(outline.radius() <= 0) {
  const auto is_far = [&](Eigen::Index side) { return outward(side).dot(kToViewer.head<2>()) < -1e-9; };
  const Eigen::Index n = ring_.size();
  Eigen::Index first = 0;
  while (!is_far(first) || is_far((first + n - 1) % n)) ++first;
  far_ = chainFrom(first, n, is_far);
  near_ = chainFrom(far_.back(), n, [&](Eigen::Index side) { return !is_far(side); });
}

Eigen::Vector2d SeenRing::outward(Eigen::Index side) const {
  return core::geometry::outwardNormal(ring_.at((side + 1) % ring_.size(), kWide_m) -
                                       ring_.at(side, kWide_m));
}

std::vector<Chain> SeenRing::seen(const Chain& chain, const Strip& strip) const {
  const double out = strip.outer.offset_m - strip.inner.offset_m, up = strip.outer.z_m - strip.inner.z_m;
  std::vector<Chain> parts;
  bool goes_on = false;
  for (std::size_t k = 0; k + 1 < chain.size(); ++k) {
    const Eigen::Vector2d away = outward(chain[k]);
    const bool is_seen = Eigen::Vector3d(-up * away.x(), -up * away.y(), out).dot(kToViewer) > 1e-9;
    if (is_seen && !goes_on) parts.push_back({chain[k]});
    if (is_seen) parts.back().push_back(chain[k + 1]);
    goes_on = is_seen;
  }
  return parts;
}

QPointF SeenRing::at(const IsometricView& view, Eigen::Index k, ProfilePoint p) const {
  return view.at(ring_.at(k, p.offset_m), p.z_m);
}

QPolygonF SeenRing::line(const IsometricView& view, const Chain& chain, ProfilePoint p) const {
  QPolygonF line;
  for (const Eigen::Index k : chain) line << at(view, k, p);
  return line;
}

QPolygonF SeenRing::outline(const IsometricView& view, ProfilePoint p) const {
  QPolygonF polygon;
  for (Eigen::Index k = 0; k < ring_.size(); ++k) polygon << at(view, k, p);
  return polygon;
}

QPainterPath SeenRing::face(const IsometricView& view, const Chain& chain, const Strip& strip) const {
  QPolygonF inner = line(view, chain, strip.inner);
  std::reverse(inner.begin(), inner.end());
  return polygonPath(line(view, chain, strip.outer) + inner);
}

QPolygonF convexCut(const QPolygonF& one, const QPolygonF& other) {
  QPolygonF cut = one;
  const double turn = areaTwice(other) < 0 ? -1 : 1;
  for (qsizetype k = 0; k < other.size() && !cut.isEmpty(); ++k) {
    const QPointF from = other[k], to = other[(k + 1) % other.size()];
    cut = cutBy(cut, [&](QPointF p) { return turn * crossOf(to - from, p - from); });
  }
  return cut;
}

}  // namespace ui::drawings
