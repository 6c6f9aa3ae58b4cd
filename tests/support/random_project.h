#pragma once

#include "core/project/project.h"

#include <cstdint>
#include <random>
#include <vector>

#include <Eigen/Core>

namespace support {

/// Random numbers that are the same with every standard library.
class Random {
public:
  explicit Random(std::uint64_t seed) : engine_(seed) {}

  double between(double least, double most);  ///< uniform in [least, most)
  int whole(int least, int most);             ///< uniform, both ends included
  bool chance(double probability);
  std::uint64_t bits() { return engine_(); }

private:
  std::mt19937_64 engine_;
};

/// A project that can be planned (core::check finds nothing), the same for the same seed. All three shapes,
/// measured at the floor or the rim, 1 to 6 coats, with and without cove, rim, site, works, customary bill
/// and unknown keys.
core::Project randomProject(std::uint64_t seed);
core::Project randomProject(std::uint64_t seed, core::Shape shape);

/// Strictly convex, anticlockwise polygon of 3 to 12 corners, about `size_m` across.
std::vector<Eigen::Vector2d> randomOutline(Random& random, double size_m);

}  // namespace support
