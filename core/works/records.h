#pragma once

#include "core/project/project.h"

#include <optional>

namespace core::works {

/// What the records of a district say of one figure.
struct Measured {
  int count = 0;
  double median = 0, least = 0, most = 0;
  double entered = 0;   ///< what stands in the project (for digging the table's, when nothing is entered)
  bool is_used = true;  ///< when in force: the median lies within what the field takes
};

struct Calibration {
  std::optional<Measured> dry_to_wet;  ///< loose parts of a batch over area times thickness
  std::optional<Measured> digging, ramming, stone_bed, spreading, mixing;  ///< person-days for each m3 or m2
  bool in_force = false;  ///< the medians stand in place of the figures entered
};

/// Medians of the records. Left out: a trial batch of a coat that the lining does not have, digging in
/// another soil than the site's.
Calibration calibration(const Project& project);

/// The project with the medians of its records in place of the figures entered, when they are in force:
/// lining.dry_to_wet and the rates of the works. A median outside the field's range is left out.
Project inForce(const Project& project, const Calibration& calibration);

}  // namespace core::works
