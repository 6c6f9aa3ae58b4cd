#pragma once

#include "core/hydraulics/result.h"
#include "core/project/delivery.h"

#include <span>
#include <string_view>
#include <vector>

namespace core::hydraulics {

using core::PipeGrade;

/// One size of plastic pressure pipe.
struct PipeSize {
  PipeGrade grade;
  double outside_mm;    ///< nominal outside diameter, what a shop calls the size
  double wall_mm;       ///< least wall
  double sdr;           ///< outside diameter over wall, nominal
  double pressure_bar;  ///< nominal pressure PN at 20 C
  std::string_view source;

  /// Bore with the least wall [mm]. A wall may be up to about 10 % + 0.1 mm thicker, so a pipe can be that
  /// much narrower.
  double insideMm() const { return outside_mm - 2 * wall_mm; }
};

/// All sizes of a grade from 20 to 110 mm, by outside diameter, then by class. @source iso_4427
std::span<const PipeSize> pipeSizes(PipeGrade grade);

/// Sizes of one outside diameter and grade; empty when there is none.
std::vector<PipeSize> pipeSizes(PipeGrade grade, double outside_mm);

/// Pressure class that a wall gives [bar], 20 MRS / (C (SDR - 1)), C = 1.25; makers round it to PN.
double pressureFromWall(PipeGrade grade, double sdr);

/// Share of the class that holds at a water temperature from 0 to 40 C; 1 up to 20 C. @source iso_4427_heat
Result<double> pressureShare(double temperature_c);

}  // namespace core::hydraulics
