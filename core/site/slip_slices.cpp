#include "core/site/slip_slices.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace core::site {
namespace {

using Eigen::Vector2d;
using Line = std::vector<Vector2d>;

constexpr double kDegree = std::numbers::pi / 180;

bool rises(const Line& line) {
  for (std::size_t k = 0; k + 1 < line.size(); ++k) {
    if (!(line[k].x() < line[k + 1].x())) return false;
  }
  return true;
}

bool isSound(const SectionLayer& layer) {
  return layer.unit_weight_kn_m3 > 0 && layer.cohesion_kpa >= 0 && layer.friction_deg >= 0 &&
         layer.friction_deg < 90 && layer.ru >= 0 && rises(layer.top_m);
}

/// x at which the circle's lower half meets the steps of a line.
void addMeetings(const Line& line, const SlipCircle& circle, std::vector<double>& out) {
  for (std::size_t k = 0; k + 1 < line.size(); ++k) {
    const Vector2d from = line[k] - circle.centre_m;
    const Vector2d step = line[k + 1] - line[k];
    const double a = step.squaredNorm();
    const double b = from.dot(step);
    const double root = b * b - a * (from.squaredNorm() - circle.radius_m * circle.radius_m);
    if (root <= 0) continue;
    for (const double sign : {-1.0, 1.0}) {
      const double share = (-b + sign * std::sqrt(root)) / a;
      if (share < -1e-12 || share > 1 + 1e-12) continue;
      if (from.y() + share * step.y() <= 0) out.push_back(line[k].x() + share * step.x());
    }
  }
}

/// Level of the top of a layer; never above the tops over it.
double topOf(const SlopeSection& section, std::size_t layer, double x, double above) {
  return layer == 0 ? above : std::min(above, heightAt(section.layers[layer].top_m, x));
}

/// Weight of the ground down to the base and the layer that the base lies in.
struct Column {
  double weight_kpa = 0;
  const SectionLayer* base = nullptr;
};

Column columnAt(const SlopeSection& section, double x, double ground, double base) {
  Column column;
  double top = ground;
  for (std::size_t k = 0; k < section.layers.size(); ++k) {
    top = topOf(section, k, x, top);
    if (column.base && top <= base) break;
    column.base = &section.layers[k];
    const double bottom = k + 1 < section.layers.size() ? topOf(section, k + 1, x, top) : base;
    column.weight_kpa += std::max(0.0, top - std::max(bottom, base)) * column.base->unit_weight_kn_m3;
  }
  return column;
}

double load(const SlopeSection& section, double x) {
  double sum = 0;
  for (const Surcharge& s : section.surcharges) {
    if (x > s.from_x_m && x < s.to_x_m) sum += s.pressure_kpa;
  }
  return sum;
}

/// Places where a slice must end: breaks of lines, ends of loads, the slip passing from one layer to another.
std::vector<double> breaks(const SlopeSection& section, const SlipCircle& circle, double from, double to) {
  std::vector<double> all{from, to};
  const auto add = [&](const Line& line) {
    for (const Vector2d& p : line) all.push_back(p.x());
  };
  add(section.ground_m);
  add(section.phreatic_m);
  for (std::size_t k = 1; k < section.layers.size(); ++k) {
    add(section.layers[k].top_m);
    addMeetings(section.layers[k].top_m, circle, all);
  }
  addMeetings(section.phreatic_m, circle, all);
  for (const Surcharge& s : section.surcharges) all.insert(all.end(), {s.from_x_m, s.to_x_m});
  std::erase_if(all, [&](double x) { return x < from || x > to; });
  std::sort(all.begin(), all.end());
  const double same = 1e-9 * (to - from);
  all.erase(std::unique(all.begin(), all.end(), [&](double a, double b) { return b - a < same; }), all.end());
  return all;
}

}  // namespace

bool isSound(const SlopeSection& section) {
  return section.ground_m.size() >= 2 && rises(section.ground_m) && rises(section.phreatic_m) &&
         !section.layers.empty() &&
         std::all_of(section.layers.begin(), section.layers.end(),
                     [](const SectionLayer& layer) { return isSound(layer); });
}

double heightAt(const Line& line, double x_m) {
  if (x_m <= line.front().x()) return line.front().y();
  if (x_m >= line.back().x()) return line.back().y();
  const auto after =
      std::upper_bound(line.begin(), line.end(), x_m, [](double x, const Vector2d& p) { return x < p.x(); });
  const Vector2d& b = *after;
  const Vector2d& a = *(after - 1);
  return a.y() + (x_m - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
}

double slipLevel(const SlipCircle& circle, double x_m) {
  const double x = x_m - circle.centre_m.x();
  return circle.centre_m.y() - std::sqrt(std::max(0.0, circle.radius_m * circle.radius_m - x * x));
}

tl::expected<std::pair<double, double>, SlipFault> slipEnds(const SlopeSection& section,
                                                            const SlipCircle& circle) {
  std::vector<double> meetings;
  addMeetings(section.ground_m, circle, meetings);
  std::sort(meetings.begin(), meetings.end());
  std::pair<double, double> widest{0, 0};
  for (std::size_t k = 0; k + 1 < meetings.size(); ++k) {
    const double middle = (meetings[k] + meetings[k + 1]) / 2;
    const bool cuts_off = slipLevel(circle, middle) < heightAt(section.ground_m, middle);
    if (cuts_off && meetings[k + 1] - meetings[k] > widest.second - widest.first)
      widest = {meetings[k], meetings[k + 1]};
  }
  if (widest.second > widest.first) return widest;
  // a single meeting of the lower half: the other end lies on the upper half or outside the section
  const double left = circle.centre_m.x() - circle.radius_m;
  const double right = circle.centre_m.x() + circle.radius_m;
  const bool is_inside = left >= section.leastX() && right <= section.mostX();
  return tl::unexpected(meetings.size() == 1 && is_inside ? SlipFault::overhangs : SlipFault::misses_ground);
}

tl::expected<std::vector<SlipSlice>, SlipFault> slipSlices(const SlopeSection& section,
                                                           const SlipCircle& circle, double from_x_m,
                                                           double to_x_m, int wanted) {
  std::vector<SlipSlice> slices;
  const std::vector<double> ends = breaks(section, circle, from_x_m, to_x_m);
  for (std::size_t k = 0; k + 1 < ends.size(); ++k) {
    const double part = (ends[k + 1] - ends[k]) / (to_x_m - from_x_m);
    const int count = std::max(1, static_cast<int>(std::lround(wanted * part)));
    const double width = (ends[k + 1] - ends[k]) / count;
    for (int i = 0; i < count; ++i) {
      const double x = ends[k] + (i + 0.5) * width;
      const double ground = heightAt(section.ground_m, x);
      const double base = std::min(ground, slipLevel(circle, x));
      const Column column = columnAt(section, x, ground, base);
      double pore = column.base->ru * column.weight_kpa;
      if (!section.phreatic_m.empty()) {
        const double water = heightAt(section.phreatic_m, x);
        if (water > ground + 1e-6) return tl::unexpected(SlipFault::water_above_ground);
        pore = std::max(pore, section.water_kn_m3 * (water - base));
      }
      const double sine = std::clamp((x - circle.centre_m.x()) / circle.radius_m, -1.0, 1.0);
      slices.push_back({x, width, ground, base, (column.weight_kpa + load(section, x)) * width,
                        std::asin(sine) / kDegree, pore, 0, column.base->cohesion_kpa,
                        column.base->friction_deg});
    }
  }
  return slices;
}

}  // namespace core::site
