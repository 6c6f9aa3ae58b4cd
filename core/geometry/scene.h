#pragma once

#include "core/geometry/built.h"
#include "core/geometry/tank_geometry.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace core::geometry {

/// What a part of the picture is; the viewer gives it its colour.
enum class Role {
  ground,
  cut,   ///< ground that was cut down
  fill,  ///< ground that was filled up
  heap,  ///< spoil
  arrow,
  marker,
  excavation,
  stone_bed,
  coat,
  cove,
  rim,
  water,
  person,
  peg,  ///< pegs and strings
  sack  ///< wet sacks over a fresh coat
};

/// Ground about a tank that is not level, all in the tank's frame: x, y of the tank, z above its finished
/// floor.
struct Relief {
  std::function<double(const Eigen::Vector2d&)> natural_m;  ///< height of the natural ground, anywhere
  double platform_offset_m = 0;              ///< edge of the level platform, from the clear floor outline
  double cut_batter = 1, fill_batter = 1.5;  ///< horizontal run per unit height of the faces outside it
  double topsoil_m = 0;                      ///< stripped first
  double reach_m = 3;                        ///< how far beyond the platform's edge ground is drawn
  std::optional<Eigen::Vector2d> downhill;   ///< unit; absent on level ground
  struct Heap {
    Eigen::Vector2d centre = Eigen::Vector2d::Zero();
    double base_radius_m = 0, top_radius_m = 0, height_m = 0;
  };
  std::optional<Heap> heap;
};

/// One part of the picture: a mesh that can be shown or hidden by its id.
struct Part {
  std::string id;  ///< ground, cut, fill, heap, fall_arrow, marker, excavation, stone_bed, coat_1, ..., cove,
                   ///< rim, water, person, pegs, sacks; with relief also cut_pattern and fill_pattern
  Role role;
  int coat = 0;  ///< coat number from 1 when the role is coat
  Mesh mesh;
  std::size_t first_section_triangle =
      0;  ///< triangles from here on are the face of the section; triangles.size() when uncut
};

/// A dimension: a measured line between two points, standing off the thing measured. Clear sizes are at the
/// finished floor, pit sizes at the ground.
struct Dimension {
  std::string id;  ///< clear_length, clear_width, clear_diameter, clear_depth, pit_length, pit_width,
                   ///< pit_diameter, pit_depth
  Eigen::Vector3d from, to;            ///< ends of the dimension line [m]
  Eigen::Vector3d from_foot, to_foot;  ///< feet of the two extension lines on the thing [m]
  double length_m;
};

/// How the picture is asked for.
struct SceneOptions {
  std::optional<CutPlane> cut;
  double water_level_m = 0;  ///< above the finished floor; 0: no water
  int facets_per_circle = 96;
  double ground_margin_m = 1.5;
  std::optional<Relief> relief = {};           ///< absent: level ground
  std::optional<Eigen::Vector3d> marker = {};  ///< a place to point at
  Built built = {};                            ///< what stands of it; its water level is not used
};

/// The picture of a tank as plain meshes, origin under the middle of the floor, z up [m]. Dimensions that
/// reach into what was cut away are left out.
struct Scene {
  std::vector<Part> parts;
  std::vector<Dimension> dimensions;
  Eigen::Vector3d least, most;  ///< corners of the box around all parts
};

Scene scene(const TankGeometry& tank, const SceneOptions& options);

/// Whether all coats are on.
bool isLined(const TankGeometry& tank, const Built& built);
/// Whether a layer is there; cove and rim collar come with the last coat.
bool stands(const Layer& layer, const TankGeometry& tank, const Built& built);

/// Points that a view of the tank must show: a box around pit, cut and fill with 1.5 m of ground about them,
/// and the person. Ground and heap may reach beyond.
std::vector<Eigen::Vector3d> framePoints(const Scene& scene);

/// Pegs at the corners of a pit (about the edge of a round one) and 1 m clear of them on the sides' lines, 40
/// cm tall, and the strings between them. `ground_m` is the height of the ground at a place.
Mesh pegsAndStrings(const TankGeometry& tank, const std::function<double(const Eigen::Vector2d&)>& ground_m);

/// A standing person 1.65 m tall with feet at `foot`, for scale.
Mesh person(const Eigen::Vector3d& foot);

}  // namespace core::geometry
