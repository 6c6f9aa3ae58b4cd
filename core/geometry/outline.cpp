#include "core/geometry/outline.h"

#include "core/geometry/polygon.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace core::geometry {
namespace {

using Eigen::Vector2d;

/// Move of the corner between two edges for a unit outward move of both.
Vector2d mitre(const Vector2d& before, const Vector2d& after) {
  const Vector2d n0 = outwardNormal(before);
  const Vector2d n1 = outwardNormal(after);
  return (n0 + n1) / (1 + n0.dot(n1));
}

/// cot(interior angle / 2), which is tan(turn / 2).
double cornerCot(const Vector2d& before, const Vector2d& after) {
  const Vector2d a = before.normalized();
  const Vector2d b = after.normalized();
  return cross(a, b) / (1 + a.dot(b));
}

}  // namespace

Outline Outline::polygon(std::vector<Vector2d> corners_m, double radius_m) {
  Outline o;
  const std::size_t n = corners_m.size();
  std::vector<double> cot(n);
  std::vector<double> length(n);  // of the edge from corner k to k + 1
  double sharp_c = 0;
  double sharp_p = 0;
  for (std::size_t k = 0; k < n; ++k) {
    const Vector2d before = corners_m[k] - corners_m[(k + n - 1) % n];
    const Vector2d after = corners_m[(k + 1) % n] - corners_m[k];
    cot[k] = cornerCot(before, after);
    length[k] = after.norm();
    o.mitres_.push_back(mitre(before, after));
    sharp_c += cot[k];
    sharp_p += length[k];
  }
  double inset = std::numeric_limits<double>::infinity();  // at which the first edge vanishes
  for (std::size_t k = 0; k < n; ++k) inset = std::min(inset, length[k] / (cot[k] + cot[(k + 1) % n]));

  const double round = radius_m > 0 ? sharp_c - std::numbers::pi : 0;
  o.a0_ = signedArea(corners_m) - round * radius_m * radius_m;
  o.p0_ = sharp_p - 2 * round * radius_m;
  o.c_ = sharp_c - round;
  o.radius_m_ = radius_m;
  o.least_offset_m_ = radius_m > 0 ? -std::min(radius_m, inset) : -inset;
  o.corners_ = std::move(corners_m);
  Vector2d least = o.corners_.front();
  Vector2d most = least;
  for (const Vector2d& c : o.corners_) {
    least = least.cwiseMin(c);
    most = most.cwiseMax(c);
  }
  o.centre_ = (least + most) / 2;
  return o;
}

Outline Outline::circle(double radius_m) {
  Outline o;
  o.radius_m_ = radius_m;
  o.a0_ = std::numbers::pi * radius_m * radius_m;
  o.p0_ = 2 * std::numbers::pi * radius_m;
  o.c_ = std::numbers::pi;
  o.least_offset_m_ = -radius_m;
  return o;
}

Outline Outline::rectangle(double length_m, double width_m, double radius_m) {
  const double x = length_m / 2;
  const double y = width_m / 2;
  return polygon({{-x, -y}, {x, -y}, {x, y}, {-x, y}}, radius_m);
}

double Outline::area(double offset_m) const {
  return a0_ + offset_m * (p0_ + offset_m * c_);
}

double Outline::perimeter(double offset_m) const {
  return p0_ + 2 * c_ * offset_m;
}

double Outline::volume(double from_m, double to_m, double height_m) const {
  // Simpson's rule, exact for the cubic (AH-590 prismoidal formula)
  return height_m / 6 * (area(from_m) + 4 * area((from_m + to_m) / 2) + area(to_m));
}

std::vector<Vector2d> Outline::corners(double offset_m) const {
  std::vector<Vector2d> moved;
  moved.reserve(corners_.size());
  for (std::size_t k = 0; k < corners_.size(); ++k) moved.emplace_back(corners_[k] + offset_m * mitres_[k]);
  return moved;
}

Vector2d Outline::size(double offset_m) const {
  if (isCircle()) return Vector2d::Constant(2 * (radius_m_ + offset_m));
  Vector2d least = Vector2d::Constant(std::numeric_limits<double>::infinity());
  Vector2d most = -least;
  const auto reach = [&](const Vector2d& p, double round) {
    least = least.cwiseMin((p.array() - round).matrix());
    most = most.cwiseMax((p.array() + round).matrix());
  };
  if (radius_m_ > 0) {
    for (const Vector2d& c : corners(-radius_m_)) reach(c, radius_m_ + offset_m);
  } else {
    for (const Vector2d& c : corners(offset_m)) reach(c, 0);
  }
  return most - least;
}

Ring Outline::ring(int facets_per_circle) const {
  std::vector<Vector2d> base;
  std::vector<Vector2d> direction;
  const auto arc = [&](const Vector2d& centre, double from, double turn, int steps) {
    for (int i = 0; i <= steps; ++i) {
      const double a = from + turn * i / steps;
      direction.emplace_back(std::cos(a), std::sin(a));
      base.emplace_back(centre + radius_m_ * direction.back());
    }
  };
  if (isCircle()) {
    arc(Vector2d::Zero(), 0, 2 * std::numbers::pi, facets_per_circle);
    base.pop_back();
    direction.pop_back();
  } else if (radius_m_ > 0) {
    const std::vector<Vector2d> centres = corners(-radius_m_);
    const std::size_t n = centres.size();
    for (std::size_t k = 0; k < n; ++k) {
      const Vector2d n0 = outwardNormal(corners_[k] - corners_[(k + n - 1) % n]);
      const Vector2d n1 = outwardNormal(corners_[(k + 1) % n] - corners_[k]);
      const double turn = std::atan2(cross(n0, n1), n0.dot(n1));
      const int steps =
          std::max(1, static_cast<int>(std::lround(facets_per_circle * turn / (2 * std::numbers::pi))));
      arc(centres[k], std::atan2(n0.y(), n0.x()), turn, steps);
    }
  } else {
    base = corners_;
    direction = mitres_;
  }
  Ring ring{Eigen::Matrix2Xd(2, base.size()), Eigen::Matrix2Xd(2, base.size())};
  for (std::size_t k = 0; k < base.size(); ++k) {
    ring.base.col(static_cast<Eigen::Index>(k)) = base[k];
    ring.direction.col(static_cast<Eigen::Index>(k)) = direction[k];
  }
  return ring;
}

}  // namespace core::geometry
