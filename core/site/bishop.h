#pragma once

#include "core/site/slope_section.h"

#include <vector>

#include <tl/expected.hpp>

namespace core::site {

struct SlipCircle {
  Eigen::Vector2d centre_m = Eigen::Vector2d::Zero();  ///< (x, z)
  double radius_m = 0;
};

enum class SlipFault {
  bad_section,
  misses_ground,  ///< the circle's lower half does not cut the ground twice inside the section
  overhangs,      ///< the slip would start or end on the circle's upper half
  below_firm_level,
  within_crack,  ///< nowhere as deep as the tension crack
  water_above_ground,
  nothing_drives,  ///< the weights balance about the centre
  steep_toe,       ///< the slip rises so steeply at its lower end that the method's numbers mean nothing
  not_converged,
};

struct BishopOptions {
  int slices = 100;        ///< wanted; breaks of ground, layers, water and loads add some
  double accuracy = 1e-8;  ///< of the factor, between two rounds
  int most_rounds = 300;
};

/// One slice of the sliding ground, a metre thick across the section.
struct SlipSlice {
  double x_m, width_m;
  double ground_m, base_m;  ///< levels at its middle
  double weight_kn;         ///< with the load on it
  double base_deg;          ///< of the base, above 0 where it drives the slip
  double pore_kpa;          ///< on the base
  double normal_kpa;        ///< effective, on the base; below 0: the method asks soil to pull
  double cohesion_kpa, friction_deg;
};

struct Slip {
  double factor = 0;
  SlipCircle circle;
  double from_x_m = 0, to_x_m = 0;  ///< left and right end; at a tension crack the crack
  int rounds = 0;
  int pulling = 0;  ///< slices with effective normal stress below 0
  std::vector<SlipSlice> slices;
};

/// Factor of safety of one circle by Bishop's simplified method:
///   F = sum[(c b + (W - u b) tan(phi)) / m] / (sum W sin(a) + P e / R),  m = cos(a) + sin(a) tan(phi) / F
/// for slices of width b, weight W, base slope a; P the water thrust in a tension crack, e its depth below
/// the centre. Pore pressure u is the larger of water weight times depth below the phreatic line and ru times
/// the weight above. Where a circle cuts off several pieces the widest counts. Error by slicing about 1 /
/// slices^2 of the factor. m below 0.2 is refused (Whitman, Bailey 1967).
/// @source bishop_1955
tl::expected<Slip, SlipFault> bishop(const SlopeSection& section, const SlipCircle& circle,
                                     const BishopOptions& options = {});

}  // namespace core::site
