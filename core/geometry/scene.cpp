#include "core/geometry/scene.h"

#include "core/geometry/relief.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

namespace core::geometry {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr int kArcSteps = 12;           // chords of the cove's arc
constexpr double kGroundBelow_m = 0.5;  // ground drawn below the pit

Part part(std::string id, Role role, Mesh mesh, const SceneOptions& options, int coat = 0) {
  Part p{std::move(id), role, coat, {}, 0};
  if (options.cut) {
    CutMesh c = cut(mesh, *options.cut);
    p.mesh = std::move(c.mesh);
    p.first_section_triangle = c.first_section_triangle;
  } else {
    p.mesh = std::move(mesh);
    p.first_section_triangle = p.mesh.triangles.size();
  }
  return p;
}

/// Level ground, with the faces of the pit told apart.
ZonedBlock levelBlock(const TankGeometry& tank, const Ring& ring, const SceneOptions& options) {
  const double dug = options.built.dug_m;
  const Profile profile = tank.groundProfile(options.ground_margin_m, kGroundBelow_m, dug);
  ZonedBlock block{solid(ring, profile), {}};
  const std::size_t n = static_cast<std::size_t>(ring.size());
  // in solid(): strips row by row (outer side, top, pit), then the caps (underside, pit floor)
  const std::size_t pit_walls = 2 * 2 * n;
  const std::size_t underside = 2 * n * (profile.points.size() - 1);
  const std::size_t pit_floor = underside + n - 2;
  for (std::size_t t = 0; t < block.mesh.triangles.size(); ++t) {
    const bool in_pit = (t >= pit_walls && t < underside) || t >= pit_floor;
    block.zone.push_back(in_pit && dug > 0 ? Zone::pit : Zone::ground);
  }
  return block;
}

void addGround(Scene& s, const TankGeometry& tank, const Ring& ring, const SceneOptions& options,
               const std::optional<FinishedGround>& relief) {
  s.parts = zoneParts(relief ? reliefBlock(tank, *relief) : levelBlock(tank, ring, options), options.cut);
  if (!relief) return;
  std::vector<Part> patterns;
  for (const Part& zone : s.parts) {
    if (zone.role == Role::cut || zone.role == Role::fill)
      patterns.push_back(pattern(zone, relief->relief().downhill));
  }
  for (Part& p : patterns) {
    if (!p.mesh.empty()) s.parts.push_back(std::move(p));
  }
}

/// Level frame of the picture: where the section runs, or through the middle when nothing is cut.
struct Frame {
  Vector2d point;  // on the section
  Vector2d away;   // horizontal, from the viewer into the picture
  Vector2d right;
};

Frame frameOf(const SceneOptions& options) {
  const CutPlane plane = options.cut.value_or(CutPlane{Vector2d::Zero(), -Vector2d::UnitY()});
  const Vector2d normal = plane.normal.normalized();
  return {normal * normal.dot(plane.point), -normal, {-normal.y(), normal.x()}};
}

Vector3d at(const Vector2d& xy, double z) {
  return {xy.x(), xy.y(), z};
}

Dimension across(std::string id, const Vector2d& middle, const Vector2d& along, double length, double line_z,
                 double foot_z, const Vector2d& foot_shift) {
  const Vector2d a = middle - along * length / 2;
  const Vector2d b = middle + along * length / 2;
  return {std::move(id), at(a, line_z), at(b, line_z), at(a + foot_shift, foot_z), at(b + foot_shift, foot_z),
          length};
}

Dimension upright(std::string id, const Vector2d& where, double from_z, double to_z,
                  const Vector2d& foot_shift) {
  return {std::move(id),
          at(where, from_z),
          at(where, to_z),
          at(where + foot_shift, from_z),
          at(where + foot_shift, to_z),
          to_z - from_z};
}

std::vector<Dimension> dimensions(const TankGeometry& tank, const SceneOptions& options) {
  const Frame frame = frameOf(options);
  const double h = tank.depth();
  const Vector2d clear = tank.outline().size(0);
  const Vector2d pit = tank.outline().size(tank.pitOffset(h));
  const bool section_along_x = std::abs(frame.right.x()) >= std::abs(frame.right.y());
  const Vector2d x = Vector2d::UnitX();
  const Vector2d y = Vector2d::UnitY();
  const bool round = tank.outline().isCircle();
  const double stand_off = 0.4;

  std::vector<Dimension> d;
  // clear sizes at the finished floor, pit sizes at the ground behind and beside the pit
  d.push_back(across(round ? "clear_diameter" : "clear_length",
                     section_along_x ? frame.point : Vector2d::Zero(), x, clear.x(), 0.3 * h, 0,
                     Vector2d::Zero()));
  const Vector2d behind = y * (pit.y() / 2 + stand_off) * (frame.away.y() < 0 ? -1 : 1);
  d.push_back(across(round ? "pit_diameter" : "pit_length", behind, x, pit.x(), h + 0.02, h,
                     -behind.normalized() * stand_off));
  if (!round) {
    d.push_back(across("clear_width", (section_along_x ? Vector2d(x * clear.x() / 4) : frame.point), y,
                       clear.y(), 0.15 * h, 0, Vector2d::Zero()));
    const Vector2d beside = x * (pit.x() / 2 + stand_off);
    d.push_back(across("pit_width", beside, y, pit.y(), h + 0.02, h, -x * stand_off));
  }
  const Vector2d extent = section_along_x ? clear : Vector2d(clear.y(), clear.x());
  const Vector2d pit_extent = section_along_x ? pit : Vector2d(pit.y(), pit.x());
  d.push_back(upright("clear_depth", frame.point - frame.right * extent.x() * 0.3, 0, h, Vector2d::Zero()));
  d.push_back(upright("pit_depth", frame.point - frame.right * (pit_extent.x() / 2 + stand_off),
                      h - tank.pitDepth(), h, frame.right * stand_off));
  return d;
}

/// Behind the farthest reach of the pit, a little left of its middle.
Vector3d footOfPerson(const TankGeometry& tank, const Ring& ring, const SceneOptions& options) {
  constexpr double kBehindEdge_m = 0.8;
  const Frame frame = frameOf(options);
  const double edge = tank.pitProfile().points.back().offset_m;
  double reach = -std::numeric_limits<double>::infinity();
  for (Eigen::Index k = 0; k < ring.size(); ++k) reach = std::max(reach, frame.away.dot(ring.at(k, edge)));
  double left = std::numeric_limits<double>::infinity();
  double right = -left;
  for (Eigen::Index k = 0; k < ring.size(); ++k) {
    if (frame.away.dot(ring.at(k, edge)) < reach - 1e-6) continue;
    left = std::min(left, frame.right.dot(ring.at(k, edge)));
    right = std::max(right, frame.right.dot(ring.at(k, edge)));
  }
  return at(frame.away * (reach + kBehindEdge_m) + frame.right * (0.75 * left + 0.25 * right), tank.depth());
}

/// The heap of what is dug so far, of the shape of the whole one.
std::optional<Relief::Heap> heapSoFar(std::optional<Relief::Heap> heap, const TankGeometry& tank,
                                      const Built& built) {
  if (!heap || built.dug_m >= tank.pitDepth()) return heap;
  if (built.dug_m <= 0) return std::nullopt;
  const double share = volume(tank.outline(), tank.pitProfile(built.dug_m)) / tank.pitVolume();
  const double size = std::cbrt(share);
  heap->base_radius_m *= size;
  heap->top_radius_m *= size;
  heap->height_m *= size;
  return heap;
}

/// What stands on the ground. The person, the arrow and the marker are never cut open.
void addThings(Scene& s, const TankGeometry& tank, const Ring& ring, const SceneOptions& options,
               const std::optional<FinishedGround>& relief) {
  SceneOptions uncut = options;
  uncut.cut.reset();
  Vector3d foot = footOfPerson(tank, ring, options);
  if (relief) {
    foot.z() = relief->finished(foot.head<2>());
    if (const auto spoil = heapSoFar(relief->relief().heap, tank, options.built))
      s.parts.push_back(part("heap", Role::heap, heap(*relief, *spoil), options));
    if (auto arrow = fallArrow(*relief, options.cut, foot.head<2>()))
      s.parts.push_back(part("fall_arrow", Role::arrow, std::move(*arrow), uncut));
  }
  if (options.built.has_pegs) {
    const auto ground = [&](const Vector2d& p) { return relief ? relief->finished(p) : tank.depth(); };
    s.parts.push_back(part("pegs", Role::peg, pegsAndStrings(tank, ground), uncut));
  }
  if (options.built.has_sacks)
    s.parts.push_back(part("sacks", Role::sack, solid(ring, tank.sackProfile(options.built.coats)), options));
  if (options.marker) s.parts.push_back(part("marker", Role::marker, marker(*options.marker), uncut));
  s.parts.push_back(part("person", Role::person, person(foot), uncut));
}

/// A line that runs out into what was cut away measures nothing that can be seen.
bool runsThrough(const CutPlane& plane, const Dimension& d) {
  const auto side = [&](const Vector3d& p) {
    return plane.normal.normalized().dot(p.head<2>() - plane.point);
  };
  return std::max(side(d.from), side(d.to)) > 0.01;
}

}  // namespace

bool isLined(const TankGeometry& tank, const Built& built) {
  return built.coats >= tank.coatCount();
}

bool stands(const Layer& layer, const TankGeometry& tank, const Built& built) {
  if (layer.id == "stone_bed") return built.has_stone_bed;
  if (!isCoat(layer)) return isLined(tank, built);
  return std::stoi(layer.id.substr(5)) <= built.coats;
}

namespace {

/// Whether what a dimension measures is there.
bool isThere(const Dimension& d, const TankGeometry& tank, const Built& built) {
  return d.id.starts_with("clear_") ? isLined(tank, built) : built.dug_m >= tank.pitDepth();
}

}  // namespace

Scene scene(const TankGeometry& tank, const SceneOptions& options) {
  Scene s;
  const Ring ring = tank.outline().ring(options.facets_per_circle);
  std::optional<FinishedGround> relief;
  if (options.relief) relief.emplace(tank, *options.relief, options.facets_per_circle, options.built);
  addGround(s, tank, ring, options, relief);
  int coat = 0;
  for (const Layer& layer : tank.layers()) {
    const Role role = layer.id == "stone_bed" ? Role::stone_bed
                      : layer.id == "cove"    ? Role::cove
                      : layer.id == "rim"     ? Role::rim
                                              : Role::coat;
    if (!stands(layer, tank, options.built)) continue;
    s.parts.push_back(part(layer.id, role, solid(ring, tank.layerProfile(layer.id, kArcSteps)), options,
                           role == Role::coat ? ++coat : 0));
  }
  if (options.water_level_m > 0) {
    s.parts.push_back(part("water", Role::water,
                           solid(ring, tank.waterProfile(options.water_level_m, kArcSteps)), options));
  }
  addThings(s, tank, ring, options, relief);
  s.dimensions = dimensions(tank, options);
  std::erase_if(s.dimensions, [&](const Dimension& d) { return !isThere(d, tank, options.built); });
  if (options.cut)
    std::erase_if(s.dimensions, [&](const Dimension& d) { return runsThrough(*options.cut, d); });

  s.least = Vector3d::Constant(std::numeric_limits<double>::infinity());
  s.most = -s.least;
  for (const Part& p : s.parts) {
    for (const Vector3d& v : p.mesh.points) {
      s.least = s.least.cwiseMin(v);
      s.most = s.most.cwiseMax(v);
    }
  }
  return s;
}

std::vector<Vector3d> framePoints(const Scene& scene) {
  constexpr double kAround_m = 1.5;
  Vector3d least = Vector3d::Constant(std::numeric_limits<double>::infinity());
  Vector3d most = -least;
  std::vector<Vector3d> points;
  for (const Part& p : scene.parts) {
    const bool is_worked = p.role == Role::cut || p.role == Role::fill || p.role == Role::excavation;
    if (p.role == Role::person) points.insert(points.end(), p.mesh.points.begin(), p.mesh.points.end());
    if (!is_worked) continue;
    for (const std::array<std::uint32_t, 3>& t : p.mesh.triangles) {  // parts share points with the ground
      for (const std::uint32_t k : t) {
        least = least.cwiseMin(p.mesh.points[k]);
        most = most.cwiseMax(p.mesh.points[k]);
      }
    }
  }
  if (least.x() > most.x()) return points;
  const Vector3d around(kAround_m, kAround_m, 0);
  for (int k = 0; k < 8; ++k) {
    const Vector3d side((k & 1) != 0 ? 1 : 0, (k & 2) != 0 ? 1 : 0, (k & 4) != 0 ? 1 : 0);
    points.emplace_back((least - around) + side.cwiseProduct(most - least + 2 * around));
  }
  return points;
}

}  // namespace core::geometry
