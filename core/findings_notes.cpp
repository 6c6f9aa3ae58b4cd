#include "core/finding_list.h"
#include "core/project/fields.h"

#include <string>

namespace core {
namespace {

std::string nameOf(Soil soil) {
  return std::string(field("site.soil").choices[static_cast<std::size_t>(soil)]);
}

void weakerSoil(const Site& site, const site::PitSoils& pits, FindingList& out) {
  if (!site.soil || !pits.weakest) return;
  if (site::strengthOrder(*pits.weakest) >= site::strengthOrder(*site.soil)) return;
  out.caution("site_soil_weaker_in_pit",
              {token("soil", nameOf(*pits.weakest)), token("entered", nameOf(*site.soil))}, "texture_soil",
              "site.soil");
}

void higherWater(const Site& site, double depth_m, FindingList& out) {
  if (!site.water_table_depth_m || depth_m >= *site.water_table_depth_m) return;
  out.caution(
      "site_water_higher_in_pit",
      {value("depth_m", depth_m, Unit::metre), value("entered_m", *site.water_table_depth_m, Unit::metre)},
      "user", "site.water_table_depth_m");
}

}  // namespace

void notesFindings(const Project& project, const Plan& plan, FindingList& out) {
  const site::FieldTests& tests = plan.field_tests;
  if (tests.pits) weakerSoil(project.site, *tests.pits, out);
  if (tests.water_depth_m) higherWater(project.site, *tests.water_depth_m, out);
}

}  // namespace core
