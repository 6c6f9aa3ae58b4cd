#include "core/base/source.h"

#include <array>
#include <stdexcept>
#include <string>

namespace core {
namespace {

constexpr std::array kSources{
    Source{"user", Tag::data, "measured or chosen on site"},
    Source{"exact", Tag::data,
           "plane and solid geometry; prismoidal (Simpson) formula, exact for a straight batter"},
    Source{"common_practice", Tag::cp, "common practice, no source"},
    Source{"own", Tag::own, "Tankwright's proposal; change it to suit the district"},
    Source{"memory", Tag::mem, "from memory, to be verified"},
    Source{
        "ah590", Tag::pub,
        "USDA NRCS, Agriculture Handbook 590: Ponds - Planning, Design, Construction, 1997, excavated ponds, "
        "prismoidal formula"},
    Source{"cpwd_density", Tag::pub,
           "Analyses of rates after the Central Public Works Department, India: loose cement 1440 kg/m3 "
           "(second-hand)"},
    Source{"dry_to_wet", Tag::pub,
           "Published worked rate analyses, loose to placed mortar 1.22 to 1.43 (second-hand)"},
    Source{"earth_plaster_clay", Tag::pub,
           "Practical Action, technical brief: Mud plasters and renders, 10 to 15 % clay"},
    Source{"sand_bulking", Tag::pub,
           "Trade handbooks: sand bulks 15 to 30 % at 2 to 5 % moisture (second-hand)"},
    Source{"rate_norms_2073", Tag::pub,
           "District rate norms, mid-hill district, fiscal year 2073/74, items 2-2 and 6-1: hard soil by "
           "hand 0.8 "
           "person-day/m3; dry stone soling 1 skilled and 3.5 unskilled person-days and 1.1 m3 stone per m3"},
    Source{"is7272", Tag::pub,
           "IS 7272 (Part 1), labour output constants: excavation 0.62 day/m3 hard or dense soil, 0.50 "
           "day/m3 soft "
           "soil; hand mixing of mortar 0.75 day/m3 (second-hand)"},
    Source{"cpwd_plaster", Tag::pub,
           "Plaster per m2 and layer of about 12 mm: mason 0.074, helper 0.093, water carrier 0.093 day, "
           "after the "
           "Central Public Works Department, India, analysis of rates (second-hand)"},
    Source{"merritt_swell", Tag::pub,
           "Merritt, Standard Handbook for Civil Engineers: swell of excavated soils (second-hand)"},
    Source{"wocat_5684", Tag::pub,
           "WOCAT SLM database, technology 5684: wet sacks 3 to 4 days after each coat; fill 4 to 5 days "
           "after coat 2"},
    Source{"is456_curing", Tag::pub,
           "IS 456:2000, clause 13.5.1: at least 7 days of moist curing (second-hand)"},
    Source{
        "fao56", Tag::pub,
        "Allen, Pereira, Raes, Smith: Crop evapotranspiration, FAO Irrigation and Drainage Paper 56, 1998"},
    Source{"fao56_table_11", Tag::pub,
           "FAO Irrigation and Drainage Paper 56, table 11, lengths of crop stages"},
    Source{"fao56_table_12", Tag::pub,
           "FAO Irrigation and Drainage Paper 56, table 12, single crop coefficients and heights"},
    Source{"fao56_table_22", Tag::pub,
           "FAO Irrigation and Drainage Paper 56, table 22, root depth and depletion"},
    Source{"fao56_table_19", Tag::pub, "FAO Irrigation and Drainage Paper 56, table 19, soil water"},
    Source{"hargreaves_1985", Tag::pub,
           "Hargreaves, Samani: Reference crop evapotranspiration from temperature, Applied Engineering in "
           "Agriculture 1(2), 1985"},
    Source{"richardson_1981", Tag::pub,
           "Richardson: Stochastic simulation of daily precipitation, temperature and solar radiation, Water "
           "Resources Research 17, 1981"},
    Source{"geng_1986", Tag::pub,
           "Geng, Penning de Vries, Supit: A simple method for generating daily rainfall data, Agricultural "
           "and Forest Meteorology 36, 1986"},
    Source{"volumetric_method", Tag::pub,
           "Volumetric flow method, Australian groundwater guidance: a vessel that takes 3 s or more, more "
           "than three readings"},
    Source{"iglewicz_hoaglin", Tag::pub,
           "Iglewicz, Hoaglin: How to Detect and Handle Outliers, 1993: modified z-score over 3.5"},
    Source{"roof_runoff", Tag::pub,
           "Roof runoff coefficient 0.5 to 0.9, DTU Warwick; corrugated iron 0.80 to 0.85, roof catchment "
           "training modules"},
    Source{"ground_runoff", Tag::pub,
           "Runoff of small catchments 0.10 to 0.50, after Critchley and Siegert, FAO, 1991; rural "
           "coefficients after Schwab et al., Soil and Water Conservation Engineering"},
    Source{"shade_cloth", Tag::pub,
           "Martinez-Alvarez et al., Spanish Journal of Agricultural Research 4 (2006) 280-288: black shade "
           "cloth cuts evaporation by 75 % single, 83 % double"},
    Source{"livestock_needs", Tag::pub,
           "USAID Field Operations Guide and extension planning figures; sources differ by two for cattle"},
    Source{"sphere_water", Tag::pub, "Sphere Handbook 2011: 7.5 to 15 litres a person and day"},
    Source{"osha_1926p", Tag::pub,
           "29 CFR 1926 Subpart P, Excavations: ladder from 4 ft (1.2 m), protection from cave-in from 5 ft "
           "(1.5 m)"},
};

}  // namespace

std::span<const Source> sources() {
  return kSources;
}

const Source& source(std::string_view key) {
  for (const Source& s : kSources) {
    if (s.key == key) return s;
  }
  throw std::logic_error("no source with key " + std::string(key));
}

}  // namespace core
