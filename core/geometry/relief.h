#pragma once

#include "core/geometry/scene.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace core::geometry {

/// Heights of the ground at one place [m].
struct GroundHeights {
  double natural_m;
  double above_cut_m;   ///< natural ground over the plane of cut; over 0 it is cut
  double below_fill_m;  ///< plane of fill over the natural ground; over 0 it is filled

  double finished() const { return natural_m - std::max(0.0, above_cut_m) + std::max(0.0, below_fill_m); }
};

/// Natural and finished ground about a tank, in the tank's frame [m].
/// Finished ground: level with the rim on the platform; outside it the natural ground held between two
/// planes that start at the platform's edge, d outside it: cut at rim + d / cut_batter, fill at
/// rim - d / fill_batter. d is the offset of the outline, so corners are mitred. The faces meet the natural
/// ground as it lies, topsoil on it, and ground between them is left alone: Relief::topsoil_m takes no part.
/// @pre both batters are over 0
class FinishedGround {
public:
  /// @param built before the platform is made the finished ground is the natural one
  FinishedGround(const TankGeometry& tank, Relief relief, int facets_per_circle, const Built& built = {});

  const Relief& relief() const { return relief_; }
  const Ring& ring() const { return ring_; }
  Eigen::Vector2d middle() const { return middle_; }
  double pitEdge() const { return pit_edge_m_; }     ///< offset of the edge of the pit
  double platform() const { return platform_m_; }    ///< offset of the platform's edge, not inside the pit's
  double dug() const { return dug_m_; }              ///< depth of the pit so far
  double outermost() const { return outermost_m_; }  ///< offset of the edge of the ground that is drawn

  /// Offset at which the facetted outline runs through a place.
  double offset(const Eigen::Vector2d& at) const;
  double natural(const Eigen::Vector2d& at) const { return relief_.natural_m(at); }
  double finished(const Eigen::Vector2d& at) const { return heights(at, offset(at)).finished(); }
  /// @param offset_m that of the place, where it is known
  GroundHeights heights(const Eigen::Vector2d& at, double offset_m) const;

private:
  Relief relief_;
  Ring ring_;
  Eigen::Vector2d middle_;
  double rim_m_, pit_edge_m_, platform_m_, outermost_m_, dug_m_;
  bool is_platform_made_;
};

enum class Zone { ground, cut, fill, pit };

/// Closed block of ground, and of each of its triangles what it is the surface of.
struct ZonedBlock {
  Mesh mesh;
  std::vector<Zone> zone;
};

/// How fine a block is drawn; coarser where the block is so wide that it would have too many triangles.
struct BlockSteps {
  double inward_m = 0.25;  ///< between rings parallel to the outline
  double along_m = 0.4;    ///< along the outermost ring
};

/// The ground around a tank and its pit. Triangles are split where cut and fill begin, so that the zones have
/// clean borders. On the platform the ground is cut where it stood over the rim or within 1 mm of it, filled
/// where it lay under; when nowhere more than 1 mm is cut or filled there are no such zones at all.
ZonedBlock reliefBlock(const TankGeometry& tank, const FinishedGround& ground, const BlockSteps& steps = {});

/// The parts of a block, cut open when there is a plane: ground with the section face, excavation, and cut
/// and fill where there are any. They share their points.
std::vector<Part> zoneParts(ZonedBlock block, const std::optional<CutPlane>& plane);

/// Stripes on cut or filled ground, which tell them apart without colour: down the fall on cut, short
/// dashes across it on fill. An open surface 8 mm over the part's own. Without a fall they run along y or x.
Part pattern(const Part& zone, const std::optional<Eigen::Vector2d>& downhill);

/// Heap of spoil on the natural ground, its height measured upright from it. Closed; its volume is that of
/// the heap on level ground.
Mesh heap(const FinishedGround& ground, const Relief::Heap& heap);

/// Flat arrow 1.2 m long down the fall, on undisturbed ground uphill of the tank, or else to a side of it,
/// where the section leaves it standing and neither person nor heap does; on the finished ground when there
/// is no such place. Nothing when there is no place at all, or no fall.
std::optional<Mesh> fallArrow(const FinishedGround& ground, const std::optional<CutPlane>& plane,
                              const Eigen::Vector2d& person);

/// Slim upright double cone, 0.9 m tall, its lower tip at a place.
Mesh marker(const Eigen::Vector3d& at);

}  // namespace core::geometry
