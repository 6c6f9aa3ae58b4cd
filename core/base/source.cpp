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
    Source{"sums", Tag::data, "plain sums and products of numbers of the plan"},
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
    Source{
        "rate_norms_2073", Tag::pub,
        "District rate norms, mid-hill district, fiscal year 2073/74, items 2-2, 2-25 and 6-1: hard soil by "
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
    Source{
        "hand_output_tables", Tag::pub,
        "Hand excavation output tables: pits 1.5 to 3 m deep a third less than to 1.5 m; hand carrying 6.25, "
        "3.23, 2.13 m3/h to 10, 20, 50 m (second-hand)"},
    Source{"head_load_study", Tag::pub,
           "Head-load field study, eastern India: 30 kg recommended on level ground (second-hand)"},
    Source{"pack_animal", Tag::pub,
           "Pack-animal guides: a load of about 20 % of the animal's body weight (second-hand)"},
    Source{
        "discount_rate", Tag::pub,
        "Federal Reserve, note of 9 October 2014: real discount rates of 10 to 12 % usual among development "
        "banks"},
    Source{"capital_recovery", Tag::pub,
           "Engineering economy: capital recovery factor i(1+i)^n / ((1+i)^n - 1)"},
    Source{"uno_1998", Tag::pub,
           "Uno: Plastic shrinkage cracking and evaporation formulas, ACI Materials Journal 95-M34, 1998"},
    Source{"aci_305", Tag::pub,
           "ACI 305/308: take precautions where fresh concrete loses 1.0 kg/m2/h of water (second-hand)"},
    Source{"kelley_walker_1959", Tag::pub,
           "Kelley, Walker: Critical-path planning and scheduling, Eastern Joint Computer Conference, 1959"},
    Source{
        "fao_growing_period", Tag::pub,
        "FAO, Report on the agro-ecological zones project, World Soil Resources Report 48, 1978: the growing "
        "period begins when rain exceeds half of the potential evapotranspiration (from memory)"},
    Source{"rfc_5545", Tag::pub, "RFC 5545, Internet Calendaring and Scheduling (iCalendar), 2009"},
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
           "(1.5 m), spoil 2 ft (0.6 m) back; appendices A and B, table B-1"},
    Source{
        "handbook_pipe_tables", Tag::pub,
        "Tables of pipe roughness, Hazen-Williams coefficients and minor losses in hydraulic handbooks, as "
        "collected by LMNO Engineering (second-hand)"},
    Source{
        "sanks_minor_losses", Tag::pub,
        "Sanks, Pumping Station Design, tables B-6 and B-7: energy losses of flanged fittings (second-hand)"},
    Source{
        "sanks_air", Tag::pub,
        "Sanks, Pumping Station Design: velocity that clears air from a falling pipe, V = sqrt(gD) (0.825 + "
        "0.25 sqrt(sin a)) (second-hand)"},
    Source{
        "kell_1975", Tag::pub,
        "Kell: Density, thermal expansivity, and compressibility of liquid water from 0 to 150 C, Journal of "
        "Chemical and Engineering Data 20 (1975) 97-105"},
    Source{"huber_2009", Tag::pub,
           "Huber et al.: New international formulation for the viscosity of H2O, Journal of Physical and "
           "Chemical Reference Data 38 (2009) 101-125; liquid water at 0.1 MPa"},
    Source{"wagner_pruss_2002", Tag::pub,
           "Wagner, Pruss: The IAPWS formulation 1995 for the thermodynamic properties of ordinary water "
           "substance, Journal of Physical and Chemical Reference Data 31 (2002) 387-535"},
    Source{
        "colebrook_1939", Tag::pub,
        "Colebrook: Turbulent flow in pipes, with particular reference to the transition region between the "
        "smooth and rough pipe laws, Journal of the Institution of Civil Engineers 11 (1939) 133-156"},
    Source{"swamee_jain_1976", Tag::pub,
           "Swamee, Jain: Explicit equations for pipe-flow problems, Journal of the Hydraulics Division 102 "
           "(1976) 657-664"},
    Source{"hazen_williams", Tag::pub,
           "Williams, Hazen: Hydraulic Tables, 1905; SI form hf = 10.67 L Q^1.852 / (C^1.852 D^4.87)"},
    Source{"iso_4427", Tag::pub,
           "ISO 4427-2:2007, polyethylene pipes for water supply: outside diameters, least walls, nominal "
           "pressures with C = 1.25, as reprinted by pipe makers (second-hand)"},
    Source{"iso_4427_heat", Tag::mem,
           "ISO 4427-1, annex A: pressure reduction 1.00 at 20 C, 0.87 at 30 C, 0.74 at 40 C (from memory)"},
    Source{"broad_crest", Tag::pub,
           "Broad-crested weir, Q = (2/3)^1.5 g^0.5 b H^1.5: open-channel texts; Ponce, San Diego State "
           "University, CIVE 530"},
    Source{
        "manning", Tag::pub,
        "Manning's equation, V = R^(2/3) S^(1/2) / n: open-channel texts, as Chow, Open-Channel Hydraulics, "
        "1959"},
    Source{"fhwa_hds5", Tag::mem,
           "FHWA, Hydraulic Design Series 5, Hydraulic Design of Highway Culverts: outlet control (from "
           "memory)"},
    Source{"rational_method", Tag::pub,
           "Rational method, Q = C i A / 360 with mm/h and ha: Ponce, San Diego State University, CIVE 445"},
    Source{"storm_runoff", Tag::pub,
           "Runoff coefficients for flood peaks: ASCE list; Schwab et al., Soil and Water Conservation "
           "Engineering, 4th edition; bare packed soil: Illinois TSM 352"},
    Source{"chow_ditch_speeds", Tag::pub,
           "Greatest design velocities of ditches, after Chow, Open-Channel Hydraulics (second-hand)"},
    Source{"fortier_scobey_1926", Tag::mem,
           "Fortier, Scobey: Permissible canal velocities, Transactions of the American Society of Civil "
           "Engineers 89, 1926 (from memory)"},
    Source{"micro_hydro_civil_works", Tag::pub,
           "Civil works guidelines for micro-hydropower in Nepal, Practical Action, chapter 5: settling "
           "basin L B "
           "= 2Q/w, forward speed 0.44 sqrt(d), sediment storage; example 5.1"},
    Source{"clift_1978", Tag::pub,
           "Clift, Grace, Weber: Bubbles, Drops, and Particles, 1978, table 5.2: drag of a sphere "
           "(second-hand)"},
    Source{
        "ferguson_church_2004", Tag::pub,
        "Ferguson, Church: A simple universal equation for grain settling velocity, Journal of Sedimentary "
        "Research 74 (2004) 933-937; natural sand C1 = 18, C2 = 1.0 (constants from memory)"},
    Source{"water_tightness_drop", Tag::pub,
           "Water-tightness of concrete tanks: 10 mm in 7 days, BS 5337 as quoted (second-hand)"},
    Source{
        "water_tightness_share", Tag::pub,
        "Water-tightness of concrete tanks: 0.1 % of the volume a day, AWWA and ACI summaries (second-hand)"},
    Source{"iwmi_low_cost_drip", Tag::pub,
           "IWMI multiple-use water study: low-cost drip needs 1.0 to 1.5 m of head"},
    Source{"culmann", Tag::pub,
           "Culmann, plane slip through the toe, as in Univ. of Florida CEG 4012 lecture notes, 2011, and "
           "Das, Principles of Geotechnical Engineering"},
    Source{"taylor_1937", Tag::mem,
           "Taylor: Stability of earth slopes, Journal of the Boston Society of Civil Engineers 24, 1937; "
           "table as in textbooks, from memory"},
    Source{"infinite_slope", Tag::pub,
           "Infinite slope with and without seepage, as in Univ. of Florida CEG 4012 lecture notes, 2011"},
    Source{
        "bishop_1955", Tag::pub,
        "Bishop: The use of the slip circle in the stability analysis of slopes, Geotechnique 5, 1955, 7-17"},
    Source{"whitman_bailey_1967", Tag::mem,
           "Whitman, Bailey: Use of computers for slope stability analysis, Journal of the Soil Mechanics "
           "and Foundations Division, ASCE, 1967 (from memory)"},
    Source{"usda_texture", Tag::pub,
           "USDA, Soil Survey Manual, Agriculture Handbook 18: texture classes and their borders "
           "(second-hand)"},
    Source{"texture_soil", Tag::own,
           "Tankwright's proposal: the soil that a texture stands for, and which soil is the weaker one; no "
           "substitute for a test pit"},
    Source{"soil_strength", Tag::own,
           "Tankwright's proposal from textbook ranges of cohesion, friction and unit weight; no substitute "
           "for tests"},
    Source{"ibc_1808_7", Tag::mem,
           "International Building Code, section 1808.7: setback of footings above a slope, a third of its "
           "height, at most 40 ft (from memory)"},
    Source{"nssh_shrink_swell", Tag::pub,
           "USDA NRCS, National Soil Survey Handbook, title 430-VI: shrink-swell classes by linear "
           "extensibility 3, 6, 9 %"},
    Source{"stefan_frost", Tag::mem, "Stefan's formula for the depth of frost (from memory)"},
    Source{"qhull_1996", Tag::pub,
           "Barber, Dobkin, Huhdanpaa: The Quickhull algorithm for convex hulls, ACM Transactions on "
           "Mathematical Software 22(4), 1996"},
    Source{"thien_1979", Tag::pub,
           "S.J. Thien: A flow diagram for teaching texture by feel analysis, Journal of Agronomic Education "
           "8, 1979, p. 54-55"},
    Source{"iec_61966_2_1", Tag::pub, "IEC 61966-2-1:1999, sRGB"},
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
