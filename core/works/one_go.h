#pragma once

#include "core/geometry/tank_geometry.h"
#include "core/lining/quantities.h"
#include "core/project/project.h"
#include "core/works/labour.h"

#include <optional>
#include <vector>

namespace core::works {

/// The tank, same depth, batter and lining, its plan made smaller, that a crew can plaster in one go.
struct SizeForCrew {
  double plan_factor;        ///< on length and width
  double length_m, width_m;  ///< clear floor; both the diameter for a round tank
  double full_volume_m3;
};

/// Can this coat be put on in one go? People, masons, mixing places and the time a batch may take.
struct CoatCheck {
  int coat;
  double person_days;
  double hours;  ///< in which the coat must be on
  int people;    ///< as entered, or as wished for this coat
  int needed;    ///< ceil(person-days * hours of a person-day / hours)
  int masons, masons_needed;
  int batches;  ///< with a whole bag
  double batches_per_hour_needed;
  double batches_per_hour_possible;  ///< mixing places * 60 / minutes per batch
  int mixing_places_needed;
  double minutes_to_place_batch;  ///< spreading only, by the people who are there
  double minutes_to_place_half_batch;
  double placing_minutes;  ///< in which it must be on the wall
  double bags;             ///< of cement, not rounded up
  double water_l;          ///< for mixing
  int sacks;               ///< to cover it
  bool is_enough() const { return people >= needed && masons >= masons_needed; }
  std::optional<SizeForCrew> size;  ///< when the crew is too small and there is such a size
};

std::vector<CoatCheck> coatChecks(const LabourInput& input, const std::vector<Labour>& labour);

}  // namespace core::works
