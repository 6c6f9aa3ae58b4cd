#pragma once

#include <optional>
#include <vector>

#include <Eigen/Core>

namespace core::site {

/// One soil of a section, from its top down to the top of the next.
struct SectionLayer {
  std::vector<Eigen::Vector2d>
      top_m;  ///< (x, z), x rising; not used for the first layer, whose top is the ground
  double cohesion_kpa = 0;
  double friction_deg = 0;
  double unit_weight_kn_m3 = 18;  ///< above and below water alike
  double ru = 0;                  ///< pore pressure over the weight of everything above
};

/// Strip of load on the ground, straight down: a full tank, a heap of spoil.
struct Surcharge {
  double from_x_m = 0, to_x_m = 0;
  double pressure_kpa = 0;
};

/// Vertical crack at the upper end of the slip: no strength in it.
struct TensionCrack {
  double depth_m = 0;
  double water_share = 0;  ///< of the depth that stands full of water, 0 to 1
};

/// Section down a slope, x along it and z up; it may fall to either side.
struct SlopeSection {
  std::vector<Eigen::Vector2d> ground_m;  ///< (x, z), x rising strictly; a steep face is a short step in x
  std::vector<SectionLayer> layers;       ///< from the ground down; at least one
  std::vector<Eigen::Vector2d>
      phreatic_m;  ///< water level (x, z), x rising, not above the ground; empty: none
  double water_kn_m3 = 9.81;
  std::vector<Surcharge> surcharges;
  std::optional<TensionCrack> crack;
  std::optional<double> firm_level_m;  ///< no slip reaches below

  double leastX() const { return ground_m.front().x(); }
  double mostX() const { return ground_m.back().x(); }
};

/// True when lines rise in x, weights are over 0, strengths not below 0 and there is ground to cut.
bool isSound(const SlopeSection& section);

/// Height of a line at x; level beyond its ends.
double heightAt(const std::vector<Eigen::Vector2d>& line, double x_m);

}  // namespace core::site
