// High points of a profile and the choice of a pipe: the parts of gravity_line.h that need no head line.
#include "core/hydraulics/gravity_line.h"

#include <algorithm>

namespace core::hydraulics {
namespace {

/// The profile without points that lie level with the one before.
std::vector<PipePoint> withoutLevels(const std::vector<PipePoint>& profile) {
  std::vector<PipePoint> bent;
  for (const PipePoint& p : profile) {
    if (bent.empty() || p.level_m != bent.back().level_m) bent.push_back(p);
  }
  return bent;
}

double lowest(const std::vector<PipePoint>& points, std::size_t from, std::size_t to) {
  double level = points[from].level_m;
  for (std::size_t i = from; i <= to; ++i) level = std::min(level, points[i].level_m);
  return level;
}

std::vector<std::size_t> topsOf(const std::vector<PipePoint>& points) {
  std::vector<std::size_t> tops;
  for (std::size_t i = 1; i + 1 < points.size(); ++i) {
    if (points[i].level_m > points[i - 1].level_m && points[i].level_m > points[i + 1].level_m)
      tops.push_back(i);
  }
  return tops;
}

double straightAt(const PipePoint& a, const PipePoint& b, double station_m) {
  return a.level_m + (station_m - a.station_m) / (b.station_m - a.station_m) * (b.level_m - a.level_m);
}

bool bears(const PipeSize& size, double share, double static_bar) {
  return size.pressure_bar * share >= static_bar;
}

}  // namespace

std::vector<Hump> humpsOf(const std::vector<PipePoint>& profile) {
  if (profile.size() < 3) return {};
  const std::vector<PipePoint> points = withoutLevels(profile);
  const std::vector<std::size_t> tops = topsOf(points);
  std::vector<Hump> humps;
  for (std::size_t k = 0; k < tops.size(); ++k) {
    const PipePoint& top = points[tops[k]];
    const double before = lowest(points, k == 0 ? 0 : tops[k - 1], tops[k]);
    const double after = lowest(points, tops[k], k + 1 == tops.size() ? points.size() - 1 : tops[k + 1]);
    humps.push_back({top.station_m, top.level_m, top.level_m - before, top.level_m - after,
                     top.level_m - straightAt(profile.front(), profile.back(), top.station_m), 0});
  }
  return humps;
}

Result<PipeChoice> smallestPipe(const Line& line, const LineHeads& heads, const LineClimate& climate,
                                double wanted_m3_s, std::span<const PipeSize> sizes, double share) {
  if (!(wanted_m3_s > 0)) return fault("flow_out_of_range");
  if (!(share > 0 && share <= 1)) return fault("pressure_out_of_range");
  std::vector<PipeSize> order(sizes.begin(), sizes.end());
  std::stable_sort(order.begin(), order.end(), [](const PipeSize& a, const PipeSize& b) {
    return a.outside_mm != b.outside_mm ? a.outside_mm < b.outside_mm : a.pressure_bar < b.pressure_bar;
  });
  bool strong = false;
  for (const PipeSize& size : order) {
    Line sized = line;
    sized.bore.diameter_m = size.insideMm() / 1000;
    sized.pressure_class_bar = size.pressure_bar * share;
    const Result<LineFlow> flow = solveLine(sized, heads, climate);
    if (!flow) return fault(flow.error());
    if (!bears(size, share, flow->static_bar)) continue;
    strong = true;
    if (flow->flow_m3_s >= wanted_m3_s) return PipeChoice{size, *flow};
  }
  return fault(strong ? "no_pipe_large_enough" : "no_pipe_strong_enough");
}

}  // namespace core::hydraulics
