#pragma once

#include "core/project/project.h"

#include <cstdint>
#include <random>
#include <vector>

#include <Eigen/Core>

namespace support {

/// Even numbers from a seed, the same on every machine.
class Dice {
public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}

  double between(double least, double most);
  int whole(int least, int most);  ///< both ends included
  bool chance(double share) { return between(0, 1) < share; }

private:
  std::mt19937_64 engine_;
};

/// What core::geometry::TankGeometry is made from.
struct TankAndLining {
  core::Tank tank;
  core::Lining lining;
};

enum class Corners { any, sharp };
enum class Cove { any, none, always };

/// Tanks of every kind for which core::geometry::check finds no problem.
class RandomTanks {
public:
  explicit RandomTanks(std::uint64_t seed) : dice_(seed) {}

  TankAndLining next(core::Shape shape, Corners corners = Corners::any, Cove cove = Cove::any);
  /// Share of the tanks thrown so far that had problems and were thrown again.
  double rejectedShare() const {
    return tried_ > 0 ? static_cast<double>(rejected_) / static_cast<double>(tried_) : 0;
  }
  Dice& dice() { return dice_; }

private:
  Dice dice_;
  int tried_ = 0;
  int rejected_ = 0;

  TankAndLining throwOne(core::Shape shape, Corners corners, Cove cove);
  core::Lining throwLining(Cove cove);
  std::vector<Eigen::Vector2d> throwOutline(double grow_m);
};

}  // namespace support
