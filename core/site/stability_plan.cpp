#include "core/site/stability_plan.h"

#include "core/site/thresholds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <utility>

namespace core::site {
namespace {

using Eigen::Vector2d;

// Assumptions of the section; the calculation page tells them.
constexpr double kBeyondEdge_depths = 4;
constexpr double kLeastEdge_m = 0.01;  // a lower terrace edge is none
constexpr std::array<std::string_view, 3> kStrengths{"low", "typical", "high"};

std::optional<double> value(const StabilityNumber& number) {
  return number ? std::optional(*number) : std::nullopt;
}

CutHeights cutHeights(std::string_view strength, const SoilStrength& soil, double face_deg, double depth_m,
                      double wanted) {
  CutHeights cut{strength, soil, {}, {}, {}, {}, {}, {}};
  cut.vertical_m = value(verticalCutHeight(soil, 1));
  if (face_deg > soil.friction_deg) {
    cut.culmann_m = value(culmannHeight(soil, face_deg, 1));
    cut.culmann_safe_m = value(culmannHeight(soil, face_deg, wanted));
  }
  cut.taylor_m = value(taylorHeight(soil, face_deg, 1));
  cut.taylor_number = value(taylorNumber(face_deg, soil.friction_deg));
  cut.taylor_factor = value(taylorFactor(soil, face_deg, depth_m));
  return cut;
}

/// The part of a line from x on, which begins at the level of the platform.
GroundLine from(GroundLine line, double x_m, double platform_m) {
  std::erase_if(line, [&](const Vector2d& p) { return p.x() <= x_m; });
  line.insert(line.begin(), Vector2d(x_m, platform_m));
  return line;
}

/// Finished ground down the fall; where a terrace edge was entered, it drops there by its height at 45
/// degrees and goes on as before.
GroundLine withEdge(const GroundLine& line, double edge_x_m, double height_m) {
  GroundLine out;
  const double foot_x = edge_x_m + height_m * kEdgeBatter;
  const double edge_z = heightAt(line, edge_x_m);
  for (const Vector2d& p : line) {
    if (p.x() < edge_x_m) out.push_back(p);
  }
  out.emplace_back(edge_x_m, edge_z);
  out.emplace_back(foot_x, edge_z - height_m);
  for (const Vector2d& p : line) {
    if (p.x() > foot_x) out.emplace_back(p.x(), p.y() - height_m);
  }
  return out;
}

/// Level at which water that leaves the full tank comes out below it: the first place downhill where the
/// ground lies as deep as the pit floor, else the end of the section.
double exitOf(const GroundLine& ground, double from_x_m, double floor_z_m) {
  for (std::size_t k = 1; k < ground.size(); ++k) {
    const Vector2d& a = ground[k - 1];
    const Vector2d& b = ground[k];
    if (b.x() <= from_x_m || b.y() > floor_z_m) continue;
    const double share = a.y() > floor_z_m ? (a.y() - floor_z_m) / (a.y() - b.y()) : 0;
    return std::max(from_x_m, a.x() + share * (b.x() - a.x()));
  }
  return ground.back().x();
}

/// Water in the ground below a full tank that leaks: level with its water up to the pit edge, from there
/// straight to where it comes out, beyond that in the face of the ground; never above the ground.
std::vector<Vector2d> seepageLine(const GroundLine& ground, double pit_edge_m, double full_m,
                                  double floor_z_m) {
  const double exit_x = exitOf(ground, pit_edge_m, floor_z_m);
  const double exit_z = heightAt(ground, exit_x);
  std::vector<double> at{ground.front().x(), pit_edge_m, exit_x, ground.back().x()};
  for (const Vector2d& p : ground) at.push_back(p.x());
  constexpr int kPieces = 24;
  for (int k = 1; k < kPieces; ++k) at.push_back(pit_edge_m + (exit_x - pit_edge_m) * k / kPieces);
  std::sort(at.begin(), at.end());
  std::vector<Vector2d> line;
  for (const double x : at) {
    if (!line.empty() && x - line.back().x() < 1e-9) continue;
    const double share =
        exit_x > pit_edge_m ? std::clamp((x - pit_edge_m) / (exit_x - pit_edge_m), 0.0, 1.0) : 1;
    const double straight = x >= exit_x ? heightAt(ground, x) : full_m + share * (exit_z - full_m);
    line.emplace_back(x, std::min(straight, heightAt(ground, x)));
  }
  return line;
}

/// Depth of the tank's own hole as a crack: that of the pit, no deeper than the ground falls away in front.
double crackDepth(const SlopeSection& section, double pit_depth_m) {
  double lowest = section.ground_m.front().y();
  for (const Vector2d& p : section.ground_m) lowest = std::min(lowest, p.y());
  return std::clamp(section.ground_m.front().y() - lowest, 0.0, pit_depth_m);
}

/// The ground with its water, once as it is and once parted by the tank's own hole, taken as a crack; the
/// worse counts. Behind a crack only slips that come out no higher than its foot: the method's numbers mean
/// nothing for ground that is pushed up a hill.
EdgeSlip edgeSlip(std::string_view state, const SlopeSection& plain, const Stability& s,
                  const std::atomic<bool>* cancel) {
  SlopeSection cracked = plain;
  const double depth_m = crackDepth(plain, s.pit_depth_m);
  const double dry_m = s.pit_depth_m * (1 - s.crack_full_share);
  const bool is_full = state == "full_leaking";
  cracked.crack = TensionCrack{depth_m, is_full && depth_m > dry_m ? 1 - dry_m / depth_m : 0};
  EdgeSlip worst{state, plain, {}, {}};
  for (const SlopeSection& section : {plain, cracked}) {
    SlipSearch search;
    search.least_depth_m = kLeastSlip_m;
    search.upper_end_most_x_m = s.upper_end_most_m;
    if (section.crack) search.lower_end_most_z_m = section.ground_m.front().y() - depth_m;
    const auto found = criticalSlip(section, search, cancel);
    if (!found) {
      if (!worst.critical) worst.fault = found.error();
      continue;
    }
    if (worst.critical && worst.critical->slip.factor <= found->slip.factor) continue;
    worst = {state, section, *found, {}};
  }
  return worst;
}

SectionLayer layerOf(const SoilStrength& soil, GroundLine top) {
  return {std::move(top), soil.cohesion_kpa, soil.friction_deg, soil.unit_weight_kn_m3, 0};
}

/// Ground water at one level, in the face of the ground where that lies lower.
std::vector<Vector2d> flatWater(const GroundLine& ground, double water_z_m) {
  std::vector<Vector2d> line;
  for (std::size_t k = 0; k < ground.size(); ++k) {
    line.emplace_back(ground[k].x(), std::min(ground[k].y(), water_z_m));
    if (k + 1 == ground.size()) continue;
    const double a = ground[k].y() - water_z_m;
    const double b = ground[k + 1].y() - water_z_m;
    if ((a > 0) == (b > 0) || a == b) continue;
    const double x = ground[k].x() + a / (a - b) * (ground[k + 1].x() - ground[k].x());
    if (x > ground[k].x() + 1e-9 && x < ground[k + 1].x() - 1e-9) line.emplace_back(x, water_z_m);
  }
  return line;
}

/// A ground line made into one of the section: from the uphill pit edge on, with the terrace edge.
GroundLine sectionLine(GroundLine line, const DownhillSide& side, const geometry::TankGeometry& tank,
                       const core::Site& site, const Stability& s) {
  const double depth = tank.depth();
  if (line.empty()) line = {{-side.uphill_pit_edge_m, depth}, {side.pit_edge_m, depth}};
  line = from(std::move(line), -side.uphill_pit_edge_m, depth);
  if (s.edge != EdgeGround::with_edge) return line;
  const double edge_x = side.pit_edge_m + *site.edge_distance_m;
  const double end =
      edge_x + *site.edge_height_m * kEdgeBatter + kBeyondEdge_depths * (s.pit_depth_m + *site.edge_height_m);
  if (line.back().x() < end) line.emplace_back(end, line.back().y());
  return withEdge(line, edge_x, *site.edge_height_m);
}

}  // namespace

std::optional<double> Stability::leastFactor() const {
  std::optional<double> least;
  for (const EdgeSlip& slip : slips) {
    if (slip.critical)
      least = std::min(least.value_or(slip.critical->slip.factor), slip.critical->slip.factor);
  }
  return least;
}

Stability stability(const geometry::TankGeometry& tank, const core::Site& site, const DownhillSide& side) {
  Stability s;
  s.face_deg = std::atan2(1, tank.batter()) * 180 / std::numbers::pi;
  s.pit_depth_m = tank.pitDepth();
  s.wanted_cut = threshold("cut.least_factor").value;
  s.wanted_slope = threshold("slope.least_factor").value;
  if (!site.soil) return s;
  const SoilStrengthRange& range = soilStrength(*site.soil);
  const std::array soils{range.low, range.typical, range.high};
  for (std::size_t k = 0; k < soils.size(); ++k)
    s.cuts.push_back(cutHeights(kStrengths.at(k), soils.at(k), s.face_deg, s.pit_depth_m, s.wanted_cut));
  const bool has_edge = site.edge_distance_m && site.edge_height_m && *site.edge_height_m >= kLeastEdge_m;
  if (side.finished.empty() && !has_edge) return s;
  s.edge = has_edge ? EdgeGround::with_edge : EdgeGround::natural;
  s.upper_end_most_m = side.pit_edge_m + site.platform.walkway_m;
  s.edge_soil = range.low;
  SlopeSection empty;
  empty.ground_m = sectionLine(side.finished, side, tank, site, s);
  empty.layers = {layerOf(range.low, {})};
  if (!side.under_fill.empty()) {
    s.fill_soil = soilStrength(Soil::loose_fill).low;
    empty.layers = {layerOf(*s.fill_soil, {}),
                    layerOf(range.low, sectionLine(side.under_fill, side, tank, site, s))};
  }
  SlopeSection full = empty;
  full.phreatic_m =
      seepageLine(empty.ground_m, side.pit_edge_m, tank.fullLevel(), tank.depth() - s.pit_depth_m);
  if (side.water_z_m) {
    empty.phreatic_m = flatWater(empty.ground_m, *side.water_z_m);
    for (Vector2d& p : full.phreatic_m) p.y() = std::max(p.y(), heightAt(empty.phreatic_m, p.x()));
  }
  s.slips.push_back({"empty", empty, {}, {}});
  s.slips.push_back({"full_leaking", full, {}, {}});
  s.crack_full_share = (tank.fullLevel() + s.pit_depth_m - tank.depth()) / s.pit_depth_m;
  return s;
}

void searchSlips(Stability& s, const std::atomic<bool>* cancel) {
  for (EdgeSlip& slip : s.slips) slip = edgeSlip(slip.state, slip.section, s, cancel);
  s.is_searched = cancel == nullptr || !*cancel;
}

}  // namespace core::site
