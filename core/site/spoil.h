#pragma once

#include <optional>
#include <vector>

#include <Eigen/Core>

namespace core::site {

struct SpoilInput {
  double bank_m3 = 0;  ///< ground left over, as it lies: pit and bench cut less what goes into the fill
  double swell_percent = 25;  ///< loose over bank volume less one
  double repose_deg = 35;     ///< steepest side of loose ground, over 0 and under 90
  double most_height_m = 1.5;
  double setback_m = 0.6;  ///< toe of the heap at least so far from the pit edge (29 CFR 1926.651(j)(2))
};

/// Heap of loose ground: a cone, cut off level where it would be too high.
struct SpoilHeap {
  double loose_m3 = 0;
  double height_m = 0;
  double base_radius_m = 0;
  double top_radius_m = 0;  ///< 0 for a whole cone
};

/// Size of the heap on level ground.
SpoilHeap spoilHeap(const SpoilInput& input);

struct HeapPlace {
  Eigen::Vector2d centre_m;
  double azimuth_deg;    ///< from the middle of the pit, clockwise from north
  double toe_to_edge_m;  ///< least distance in plan from the heap's toe to the pit edge
};

/// Place of the heap beside the pit in one direction: its toe clears the pit edge by the setback and stands
/// outside everything that must stay clear, both measured to their outermost point in that direction.
/// @param pit_edge_m pit outline at the rim
/// @param keep_clear_m points of platform and batters that the heap must not cover; may be empty
HeapPlace heapPlace(const std::vector<Eigen::Vector2d>& pit_edge_m,
                    const std::vector<Eigen::Vector2d>& keep_clear_m, const SpoilHeap& heap, double setback_m,
                    double azimuth_deg);

/// Direction proposed for the heap [degrees clockwise from north]: across the fall, where it neither washes
/// into the tank nor loads the fill below it; east on level ground. Own proposal.
double heapAzimuth(std::optional<double> downhill_azimuth_deg);

}  // namespace core::site
