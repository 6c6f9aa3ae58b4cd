#include "core/geometry/tank_geometry.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include <fmt/format.h>

namespace core::geometry {

bool isCoat(const Layer& layer) {
  return layer.id.starts_with("coat_");
}

TankGeometry::TankGeometry(const Tank& tank, const Lining& lining)
    : outline_(floorOutline(tank)),
      depth_m_(tank.depth_m),
      batter_(tank.batter),
      slant_(std::hypot(1.0, tank.batter)),
      stone_bed_m_(lining.stone_bed_m),
      full_level_m_(tank.depth_m - tank.freeboard_m),
      dead_level_m_(tank.dead_depth_m),
      cove_radius_m_(lining.cove_radius_m),
      rim_width_m_(lining.rim_thickness_m > 0 ? lining.rim_width_m : 0),
      rim_thickness_m_(lining.rim_width_m > 0 ? lining.rim_thickness_m : 0) {
  for (const Coat& coat : lining.coats) {
    coats_m_.push_back(coat.thickness_m);
    lining_m_ += coat.thickness_m;
  }
  cove_top_m_ = cove_radius_m_ * (1 - batter_ / slant_);
  pit_volume_m3_ = volume(outline_, pitProfile());
  addLayers();
}

void TankGeometry::addLayers() {
  if (stone_bed_m_ > 0) {
    const double top_m2 = outline_.area(pitOffset(-lining_m_));
    layers_.push_back({"stone_bed", stone_bed_m_, volume(outline_, layerProfile("stone_bed", 1)), top_m2});
  }
  for (std::size_t k = 0; k < coats_m_.size(); ++k) {
    const std::string id = fmt::format("coat_{}", k + 1);
    layers_.push_back({id, coats_m_[k], volume(outline_, layerProfile(id, 1)), faceArea(insideThickness(k))});
  }
  if (cove_radius_m_ > 0)
    layers_.push_back({"cove", cove_radius_m_, coveVolumeToLevel(depth_m_), coveArea()});
  if (rim_width_m_ > 0) {
    const double edge = pitOffset(depth_m_);
    const double top_m2 = outline_.area(edge + rim_width_m_) - outline_.area(edge);
    layers_.push_back({"rim", rim_thickness_m_, volume(outline_, layerProfile("rim", 1)), top_m2});
  }
}

int TankGeometry::coatCount() const {
  return static_cast<int>(std::ranges::count_if(layers_, isCoat));
}

double TankGeometry::insideThickness(std::size_t coat) const {
  double sum = 0;
  for (std::size_t k = coat + 1; k < coats_m_.size(); ++k) sum += coats_m_[k];
  return sum;
}

double TankGeometry::faceArea(double behind_m) const {
  const double low = wallOffset(behind_m, -behind_m);
  const double high = wallOffset(behind_m, depth_m_);
  const double height = depth_m_ + behind_m;
  return outline_.area(low) + slant_ * height * (outline_.perimeter(low) + outline_.perimeter(high)) / 2;
}

double TankGeometry::coveArea() const {
  const double turn = std::acos(batter_ / slant_);
  const double c = outline_.cornerCoefficient();
  return cove_radius_m_ *
         (outline_.perimeter(coveCentre()) * turn + 2 * c * cove_radius_m_ * (1 - std::cos(turn)));
}

double TankGeometry::coveVolumeToLevel(double level_m) const {
  const double r = cove_radius_m_;
  const double h = std::min(level_m, cove_top_m_);
  if (r <= 0 || h <= 0) return 0;
  const double centre = coveCentre();
  // integrals over z of the arc's offset d = centre + sqrt(r^2 - (z - r)^2) and of its square
  const auto root = [&](double u) {
    return u / 2 * std::sqrt(std::max(0.0, r * r - u * u)) + r * r / 2 * std::asin(u / r);
  };
  const double arc = root(h - r) - root(-r);
  const double arc_squared = r * r * h - (std::pow(h - r, 3) + r * r * r) / 3;
  const double d = centre * h + arc;
  const double d_squared = centre * centre * h + 2 * centre * arc + arc_squared;
  const double inside =
      outline_.area(0) * h + outline_.perimeter(0) * d + outline_.cornerCoefficient() * d_squared;
  return outline_.volume(0, clearOffset(h), h) - inside;
}

double TankGeometry::coveOffset(double z_m) const {
  const double u = z_m - cove_radius_m_;
  return coveCentre() + std::sqrt(std::max(0.0, cove_radius_m_ * cove_radius_m_ - u * u));
}

double TankGeometry::volumeToLevel(double level_m) const {
  const double h = std::clamp(level_m, 0.0, depth_m_);
  return outline_.volume(0, clearOffset(h), h) - coveVolumeToLevel(h);
}

double TankGeometry::levelForVolume(double volume_m3) const {
  double low = 0;
  double high = depth_m_;
  if (volume_m3 <= 0) return low;
  if (volume_m3 >= volumeToLevel(high)) return high;
  double z = depth_m_ / 2;
  for (int i = 0; i < 100 && high - low > 1e-13 * depth_m_; ++i) {  // Newton, kept within the bracket
    const double excess = volumeToLevel(z) - volume_m3;
    (excess > 0 ? high : low) = z;
    const double next = z - excess / surfaceAt(z);
    if (std::abs(next - z) < 1e-14 * depth_m_) break;
    z = next > low && next < high ? next : (low + high) / 2;
  }
  return z;
}

double TankGeometry::surfaceAt(double level_m) const {
  const double h = std::clamp(level_m, 0.0, depth_m_);
  return outline_.area(h < cove_top_m_ ? coveOffset(h) : clearOffset(h));
}

double TankGeometry::wettedArea(double level_m) const {
  const double h = std::clamp(level_m, 0.0, depth_m_);
  return outline_.area(0) + slant_ * h * (outline_.perimeter(0) + outline_.perimeter(clearOffset(h))) / 2;
}

double TankGeometry::rimLength() const {
  return outline_.perimeter(clearOffset(depth_m_));
}

double TankGeometry::areaTimesThickness(std::size_t coat) const {
  return wettedArea(depth_m_) * coats_m_.at(coat);
}

std::vector<ProfilePoint> TankGeometry::coveArc(double to_level_m, int steps) const {
  std::vector<ProfilePoint> arc;
  const double turn = std::acos(1 - std::min(to_level_m, cove_top_m_) / cove_radius_m_);
  for (int i = 0; i <= steps; ++i) {
    const double a = turn * i / steps;
    arc.push_back({coveCentre() + cove_radius_m_ * std::sin(a), cove_radius_m_ * (1 - std::cos(a))});
  }
  return arc;
}

Profile TankGeometry::shellProfile(double outer_m, double inner_m) const {
  return {{{wallOffset(outer_m, -outer_m), -outer_m},
           {wallOffset(outer_m, depth_m_), depth_m_},
           {wallOffset(inner_m, depth_m_), depth_m_},
           {wallOffset(inner_m, -inner_m), -inner_m}}};
}

Profile TankGeometry::pitProfile(double dug_m) const {
  const double floor = depth_m_ - std::min(dug_m, pitDepth());
  if (rim_width_m_ <= 0) return {{{pitOffset(floor), floor}, {pitOffset(depth_m_), depth_m_}}};
  const double ledge = depth_m_ - rim_thickness_m_;
  const double edge = pitOffset(depth_m_) + rim_width_m_;
  if (floor >= ledge) return {{{edge, floor}, {edge, depth_m_}}};
  return {{{pitOffset(floor), floor}, {pitOffset(ledge), ledge}, {edge, ledge}, {edge, depth_m_}}};
}

Profile TankGeometry::coveProfile(int arc_steps) const {
  Profile p{{}, Profile::Ends::joined};
  p.points = coveArc(cove_top_m_, arc_steps);
  p.points.push_back({0, 0});
  std::reverse(p.points.begin(), p.points.end());  // corner, up the wall, back down the arc
  return p;
}

Profile TankGeometry::rimProfile() const {
  const double ledge = depth_m_ - rim_thickness_m_;
  const double edge = pitOffset(depth_m_) + rim_width_m_;
  return {{{pitOffset(ledge), ledge}, {edge, ledge}, {edge, depth_m_}, {pitOffset(depth_m_), depth_m_}},
          Profile::Ends::joined};
}

Profile TankGeometry::layerProfile(const std::string& id, int arc_steps) const {
  if (id == "stone_bed") {
    const double floor = -lining_m_ - stone_bed_m_;
    return {{{pitOffset(floor), floor}, {pitOffset(-lining_m_), -lining_m_}}};
  }
  if (id == "cove") return coveProfile(arc_steps);
  if (id == "rim") return rimProfile();
  for (std::size_t k = 0; k < coats_m_.size(); ++k) {
    if (id == fmt::format("coat_{}", k + 1)) {
      return shellProfile(insideThickness(k) + coats_m_[k], insideThickness(k));
    }
  }
  throw std::logic_error("no layer with id " + id);
}

Profile TankGeometry::waterProfile(double level_m, int arc_steps) const {
  const double h = std::clamp(level_m, 0.0, depth_m_);
  if (cove_radius_m_ <= 0) return {{{0, 0}, {clearOffset(h), h}}};
  Profile p{coveArc(h, arc_steps)};
  if (h > cove_top_m_) p.points.push_back({clearOffset(h), h});
  return p;
}

Profile TankGeometry::sackProfile(int coats) const {
  constexpr double kSack_m = 0.015;
  const auto last =
      static_cast<std::size_t>(std::clamp<int>(coats, 1, static_cast<int>(coats_m_.size()))) - 1;
  const double behind = insideThickness(last);
  const double low = -behind + kSack_m;
  return {{{wallOffset(behind, low), low},
           {wallOffset(behind, depth_m_), depth_m_},
           {wallOffset(behind - kSack_m, depth_m_), depth_m_},
           {wallOffset(behind - kSack_m, low), low}},
          Profile::Ends::joined};
}

Profile TankGeometry::groundProfile(double margin_m, double below_m, double dug_m) const {
  Profile p = pitProfile(std::max(dug_m, 0.0));
  if (dug_m <= 0) p.points.erase(p.points.begin());
  const double outer = p.points.back().offset_m + margin_m;
  std::reverse(p.points.begin(), p.points.end());
  p.points.insert(p.points.begin(), {{outer, depth_m_ - pitDepth() - below_m}, {outer, depth_m_}});
  return p;
}

}  // namespace core::geometry
