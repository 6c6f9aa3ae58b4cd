#include "core/site/clip.h"

#include "core/geometry/polygon.h"

#include <cstddef>

namespace core::site {
namespace {

using Eigen::Vector3d;

double fanArea(const Patch& patch, std::size_t k) {
  return geometry::cross((patch[k] - patch[0]).head<2>(), (patch[k + 1] - patch[0]).head<2>()) / 2;
}

}  // namespace

Patch keep(const Patch& patch, const Linear& f) {
  Patch kept;
  kept.reserve(patch.size() + 1);
  for (std::size_t k = 0; k < patch.size(); ++k) {
    const Vector3d& here = patch[k];
    const Vector3d& next = patch[(k + 1) % patch.size()];
    const double a = f.at(here);
    const double b = f.at(next);
    if (a >= 0) kept.push_back(here);
    if ((a > 0 && b < 0) || (a < 0 && b > 0)) kept.emplace_back(here + a / (a - b) * (next - here));
  }
  if (kept.size() < 3) kept.clear();
  return kept;
}

double planArea(const Patch& patch) {
  double sum = 0;
  for (std::size_t k = 1; k + 1 < patch.size(); ++k) sum += fanArea(patch, k);
  return sum;
}

double integral(const Patch& patch, const Linear& f) {
  double sum = 0;
  for (std::size_t k = 1; k + 1 < patch.size(); ++k)
    sum += fanArea(patch, k) * (f.at(patch[0]) + f.at(patch[k]) + f.at(patch[k + 1])) / 3;
  return sum;
}

Patch moved(const Patch& patch, const Linear& height) {
  Patch result = patch;
  for (Vector3d& p : result) p.z() = height.at(p);
  return result;
}

}  // namespace core::site
