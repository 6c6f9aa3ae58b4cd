#pragma once

#include "core/base/problem.h"
#include "core/project/project.h"
#include "core/site/texture.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace core::site {

/// What one jar shows. Heights of layers are shares of the settled volume, not of the mass: clay settles
/// loosely, so its share by mass is smaller than the one here.
struct JarReading {
  std::size_t row = 0;  ///< of FieldNotes::jars
  std::string place;
  SoilShares shares;
  Texture texture = Texture::loam;
};

struct FeelReading {
  std::size_t row = 0;  ///< of FieldNotes::feel
  std::string place;
  Texture texture = Texture::loam;
};

struct SlopeReading {
  std::size_t row = 0;  ///< of FieldNotes::slope
  double fall_percent = 0;
};

/// The layers of all test pits that begin above the floor of the tank's pit.
struct PitSoils {
  std::optional<Soil> weakest;  ///< of the layers whose soil is known
  int layers = 0;
  int unknown = 0;       ///< layers whose soil is not known
  double down_to_m = 0;  ///< bottom of the deepest pit
};

/// What the field notes say of the site.
struct FieldTests {
  std::vector<JarReading> jars;
  std::optional<double> clay_percent;  ///< median of the jars
  std::vector<FeelReading> feel;
  /// By ball and ribbon, or by the jars where no ball was tried: the weakest; nothing when a sample is a clay
  /// or clay loam and no other one is sandy, for then nobody has seen how stiff it is.
  std::optional<Soil> texture_soil;
  bool has_clay_sample = false;  ///< among those samples
  std::optional<PitSoils> pits;
  double pit_depth_m = 0;               ///< of the tank's pit, below the rim
  std::optional<double> water_depth_m;  ///< least depth at which water was met, below the ground
  std::vector<SlopeReading> slope;
  double run_m = 0, drop_m = 0;        ///< together
  std::optional<double> fall_percent;  ///< all drops over all runs; under 0 where it was walked uphill
  /// Of the pits, when every layer down to the tank's pit is known; of the texture where there are no pits.
  std::optional<Soil> soil;

  bool isEmpty() const { return jars.empty() && feel.empty() && !pits && slope.empty(); }
};

/// Problems across the fields of the notes. Codes: layer_not_below_its_top.
Problems check(const FieldNotes& notes);

/// What the notes say. Rows in which nothing was measured yet are left out: a jar without layers, a ball not
/// tried, a setting without run. Test pits count from the ground; where a platform is cut, the tank's pit
/// goes deeper below it by the cut. @param pit_depth_m of the tank's pit [m]
FieldTests fieldTests(const FieldNotes& notes, double pit_depth_m);

/// The project with what its notes say in place of what was entered: site.clay_percent, site.soil,
/// site.water_table_depth_m, and site.ground as an even slope (its direction is left; level where there is no
/// fall). Left as it is: what the notes do not say, ground that was surveyed, a fall that the field does not
/// take.
Project adopted(const Project& project);

}  // namespace core::site
