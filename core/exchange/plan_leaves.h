#pragma once

#include "core/base/field_value.h"
#include "core/plan.h"

#include <string>
#include <vector>

namespace core::exchange {

/// One value of a place in the plan's JSON.
struct PlanRow {
  std::vector<std::string>
      names;         ///< of the list rows that it stands in, outermost first: the row's own name
                     ///< ("coat_1", "cement"; "A>B" from one to another), else its number from 1
  FieldValue value;  ///< absent: null
};

/// A place in the plan's JSON with its values, in order; "[]" stands for the rows of a list:
/// "tank.full_volume_m3", "coats[].net.soil_m3". An empty list has no places.
struct PlanLeaf {
  std::string path;
  std::vector<PlanRow> rows;
};

/// All places of planText() in the order in which they first come up. Left out: "water.map", which is
/// reckoned when the file is written.
std::vector<PlanLeaf> planLeaves(const Plan& plan);

}  // namespace core::exchange
