#pragma once

#include "core/base/problem.h"
#include "core/geometry/mesh.h"
#include "core/geometry/outline.h"
#include "core/project/project.h"

#include <limits>
#include <string>
#include <vector>

namespace core::geometry {

/// Reach of one layer. Coats are numbered from the earth inward: coat 1 first.
struct Layer {
  std::string id;      ///< stone_bed, coat_1, coat_2, ..., cove, rim
  double thickness_m;  ///< square to the face; the cove's radius for the cove
  double volume_m3;
  double area_m2;  ///< face that is worked: for a coat its finished (inner) face, for bed and rim the top
};

bool isCoat(const Layer& layer);

/// The solid geometry of one tank. z = 0 is the finished floor, z = depth the rim and the ground beside it.
class TankGeometry {
public:
  /// @pre check(tank, lining) is empty
  TankGeometry(const Tank& tank, const Lining& lining);

  const Outline& outline() const { return outline_; }  ///< clear floor outline
  double depth() const { return depth_m_; }
  double batter() const { return batter_; }
  double slant() const { return slant_; }               ///< wall length per unit height, sqrt(1 + batter^2)
  double liningThickness() const { return lining_m_; }  ///< all coats together, square to the face [m]
  double stoneBed() const { return stone_bed_m_; }
  double fullLevel() const { return full_level_m_; }
  double deadLevel() const { return dead_level_m_; }
  double pitDepth() const { return depth_m_ + lining_m_ + stone_bed_m_; }

  /// Offset of the clear wall at level z >= 0 [m], without the cove.
  double clearOffset(double z_m) const { return batter_ * z_m; }
  /// Offset of the pit wall at level z [m].
  double pitOffset(double z_m) const { return batter_ * z_m + lining_m_ * slant_; }

  /// Water held up to `level_m` above the finished floor [m3]; the cove takes its share. 0 below the floor;
  /// level is held at the rim.
  double volumeToLevel(double level_m) const;
  /// Level above the finished floor at which the tank holds `volume_m3` [m]; inverse of volumeToLevel within
  /// 1e-10 m. Held to 0..depth.
  double levelForVolume(double volume_m3) const;
  /// Free water surface at a level [m2].
  double surfaceAt(double level_m) const;
  /// Plaster in touch with water filled to a level: floor and wall [m2], without the cove's rounding.
  double wettedArea(double level_m) const;

  double floorArea() const { return outline_.area(0); }  ///< finished clear floor, cove left out [m2]
  double wallArea() const {
    return wettedArea(depth_m_) - floorArea();
  }                          ///< finished clear wall, along the slope [m2]
  double rimLength() const;  ///< around the clear top [m]
  double brimArea() const { return outline_.area(clearOffset(depth_m_)); }  ///< clear opening at the rim [m2]
  double pitVolume() const {
    return pit_volume_m3_;
  }  ///< dug from ground beside the tank, rim ledge included [m3]
  double clearVolume() const { return volumeToLevel(depth_m_); }  ///< clear inside to the rim [m3]
  double areaTimesThickness(std::size_t coat) const;  ///< clear inside face times the coat's thickness [m3]

  const std::vector<Layer>& layers() const { return layers_; }
  int coatCount() const;

  /// Closed profiles of the solids: the pit (what is dug), each layer, the water to a level, and a block of
  /// ground around the pit. A cove's arc is drawn with `arc_steps` chords.
  /// @param dug_m depth dug so far below the ground beside the tank, over 0; held to the depth of the pit
  Profile pitProfile(double dug_m = std::numeric_limits<double>::infinity()) const;
  Profile layerProfile(const std::string& id, int arc_steps) const;
  Profile waterProfile(double level_m, int arc_steps) const;
  Profile groundProfile(double margin_m, double below_m,
                        double dug_m = std::numeric_limits<double>::infinity()) const;
  /// Wet sacks over the walls of the last of `coats` coats that were put on, `kSack_m` thick.
  Profile sackProfile(int coats) const;

private:
  Outline outline_;
  double depth_m_, batter_, slant_, stone_bed_m_, full_level_m_, dead_level_m_;
  std::vector<double> coats_m_;
  double lining_m_ = 0;
  double cove_radius_m_, cove_top_m_ = 0;
  double rim_width_m_, rim_thickness_m_;
  double pit_volume_m3_ = 0;
  std::vector<Layer> layers_;

  void addLayers();
  double insideThickness(std::size_t coat) const;  // of the coats that lie inside of a coat
  /// Offset of a face that lies `behind_m` behind the clear face, square to it.
  double wallOffset(double behind_m, double z_m) const { return batter_ * z_m + behind_m * slant_; }
  double faceArea(double behind_m) const;
  double coveCentre() const { return cove_radius_m_ * (batter_ - slant_); }  // offset of the arc's centre
  double coveOffset(double z_m) const;
  double coveArea() const;
  double coveVolumeToLevel(double level_m) const;
  std::vector<ProfilePoint> coveArc(double to_level_m, int steps) const;
  Profile shellProfile(double outer_m, double inner_m) const;
  Profile coveProfile(int arc_steps) const;
  Profile rimProfile() const;
};

/// Problems across the fields of tank and lining that would leave no sound geometry (codes in problem.h).
Problems check(const Tank& tank, const Lining& lining);

/// Clear floor outline from the dimensions as given at floor or rim. @pre check(...) is empty
Outline floorOutline(const Tank& tank);

}  // namespace core::geometry
