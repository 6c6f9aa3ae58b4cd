#pragma once

#include <vector>

#include <Eigen/Core>

namespace core::site {

/// Linear function of a point: per_m . (x, y, z) + constant.
struct Linear {
  Eigen::Vector3d per_m = Eigen::Vector3d::Zero();
  double constant = 0;

  double at(const Eigen::Vector3d& p) const { return per_m.dot(p) + constant; }
  Linear operator-(const Linear& other) const { return {per_m - other.per_m, constant - other.constant}; }
  Linear operator-() const { return {-per_m, -constant}; }
  Linear operator+(double more) const { return {per_m, constant + more}; }
};

/// Plane polygon in space, convex and anticlockwise in plan.
using Patch = std::vector<Eigen::Vector3d>;

/// Part of a patch where `f` is not negative; empty when nothing is left (Sutherland, Hodgman 1974).
Patch keep(const Patch& patch, const Linear& f);

/// Area in plan [m2].
double planArea(const Patch& patch);

/// Integral over the plan of a function that is linear on the patch [its unit times m2]; exact.
double integral(const Patch& patch, const Linear& f);

/// A patch with its points moved up or down to a height that depends on x and y only.
Patch moved(const Patch& patch, const Linear& height);

}  // namespace core::site
