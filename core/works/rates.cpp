#include "core/works/schedule.h"

namespace core::works {

const std::vector<Rate>& rates() {
  // low and high: spread of the published norms and of reported practice; rock: memory, to be verified
  static const std::vector<Rate> table{
      {"digging.stiff_clay", 0.62, 0.80, 1.00, Unit::person_day_per_m3, "rate_norms_2073"},
      {"digging.firm_loam", 0.50, 0.62, 0.80, Unit::person_day_per_m3, "is7272"},
      {"digging.sandy", 0.40, 0.50, 0.62, Unit::person_day_per_m3, "is7272"},
      {"digging.loose_fill", 0.40, 0.50, 0.62, Unit::person_day_per_m3, "is7272"},
      {"digging.soft_wet", 0.50, 0.80, 1.20, Unit::person_day_per_m3, "own"},
      {"digging.rock", 1.25, 2.50, 5.00, Unit::person_day_per_m3, "memory"},
      {"digging.practice", 0.62, 0.62, 0.62, Unit::person_day_per_m3, "common_practice"},
      {"digging.norm", 0.80, 0.80, 0.80, Unit::person_day_per_m3, "rate_norms_2073"},
      {"stone_bed", 3.00, 4.50, 6.00, Unit::person_day_per_m3, "rate_norms_2073"},
      {"plaster", 0.17, 0.26, 0.40, Unit::person_day_per_m2, "cpwd_plaster"},
      {"mixing", 0.60, 0.75, 1.00, Unit::person_day_per_m3, "is7272"},
  };
  return table;
}

}  // namespace core::works
