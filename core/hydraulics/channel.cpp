#include "core/hydraulics/channel.h"

#include "core/hydraulics/figures.h"
#include "core/hydraulics/root.h"

#include <cmath>
#include <numbers>
#include <string>

namespace core::hydraulics {
namespace {

constexpr double kFullest = 0.938181;  // depth over diameter of most flow by Manning

/// What a depth makes of a section.
struct Section {
  double area_m2, perimeter_m, top_m;
};

Section sectionOf(const Channel& c, double y) {
  return {y * (c.bottom_width_m + c.side_slope * y),
          c.bottom_width_m + 2 * y * std::sqrt(1 + c.side_slope * c.side_slope),
          c.bottom_width_m + 2 * c.side_slope * y};
}

Section sectionOf(const RoundChannel& c, double y) {
  const double angle = 2 * std::acos(1 - 2 * y / c.diameter_m);  // seen from the middle of the pipe
  const double square = c.diameter_m * c.diameter_m;
  return {square / 8 * (angle - std::sin(angle)), c.diameter_m * angle / 2,
          c.diameter_m * std::sin(angle / 2)};
}

std::string_view wallFault(double fall, double manning_n) {
  if (!(fall > 0 && fall <= 1)) return "slope_out_of_range";
  return manning_n >= 0.005 && manning_n <= 0.2 ? "" : "coefficient_out_of_range";
}

std::string_view faultOf(const Channel& c) {
  if (!(c.side_slope >= 0 && std::isfinite(c.side_slope))) return "slope_out_of_range";
  if (!(c.bottom_width_m >= 0 && c.bottom_width_m + c.side_slope > 0 && std::isfinite(c.bottom_width_m)))
    return "width_out_of_range";
  return wallFault(c.fall, c.manning_n);
}

std::string_view faultOf(const RoundChannel& c) {
  if (!(c.diameter_m > 0 && c.diameter_m <= 2)) return "bore_out_of_range";
  return wallFault(c.fall, c.manning_n);
}

template <typename Shape>
ChannelFlow at(const Shape& channel, double y) {
  const Section s = sectionOf(channel, y);
  ChannelFlow f;
  f.depth_m = y;
  f.area_m2 = s.area_m2;
  f.hydraulic_radius_m = s.area_m2 / s.perimeter_m;
  f.top_width_m = s.top_m;
  f.velocity_m_s = manningVelocity(f.hydraulic_radius_m, channel.fall, channel.manning_n);
  f.flow_m3_s = f.velocity_m_s * s.area_m2;
  f.froude = s.top_m > 0 ? f.velocity_m_s / std::sqrt(kGravity_m_s2 * s.area_m2 / s.top_m) : 0;
  return f;
}

template <typename Shape>
ChannelFlow evenBetween(const Shape& channel, double flow_m3_s, double high_m) {
  const double low = high_m * 1e-9;
  if (at(channel, low).flow_m3_s >= flow_m3_s) return at(channel, low);
  return at(channel,
            rootBetween([&](double y) { return at(channel, y).flow_m3_s - flow_m3_s; }, low, high_m));
}

}  // namespace

double manningVelocity(double hydraulic_radius_m, double fall, double manning_n) {
  return std::cbrt(hydraulic_radius_m * hydraulic_radius_m) * std::sqrt(fall) / manning_n;  // Manning
}

Result<ChannelFlow> flowAtDepth(const Channel& channel, double depth_m) {
  const std::string_view wrong = faultOf(channel);
  if (!wrong.empty()) return fault(wrong);
  if (!(depth_m > 0 && std::isfinite(depth_m))) return fault("depth_out_of_range");
  return at(channel, depth_m);
}

Result<ChannelFlow> evenFlow(const Channel& channel, double flow_m3_s) {
  const std::string_view wrong = faultOf(channel);
  if (!wrong.empty()) return fault(wrong);
  if (!(flow_m3_s > 0 && std::isfinite(flow_m3_s))) return fault("flow_out_of_range");
  double high = 0.1;
  while (at(channel, high).flow_m3_s < flow_m3_s) high *= 2;
  return evenBetween(channel, flow_m3_s, high);
}

Result<ChannelFlow> flowAtDepth(const RoundChannel& pipe, double depth_m) {
  const std::string_view wrong = faultOf(pipe);
  if (!wrong.empty()) return fault(wrong);
  if (!(depth_m > 0 && depth_m <= pipe.diameter_m)) return fault("depth_out_of_range");
  return at(pipe, depth_m);
}

Result<ChannelFlow> mostFlow(const RoundChannel& pipe) {
  return flowAtDepth(pipe, kFullest * pipe.diameter_m);
}

Result<ChannelFlow> evenFlow(const RoundChannel& pipe, double flow_m3_s) {
  const Result<ChannelFlow> most = mostFlow(pipe);
  if (!most) return most;
  if (!(flow_m3_s > 0 && flow_m3_s <= most->flow_m3_s)) return fault("flow_out_of_range");
  return evenBetween(pipe, flow_m3_s, most->depth_m);
}

Result<double> criticalDepth(double diameter_m, double flow_m3_s) {
  if (!(diameter_m > 0 && diameter_m <= 2)) return fault("bore_out_of_range");
  if (!(flow_m3_s > 0 && std::isfinite(flow_m3_s))) return fault("flow_out_of_range");
  const RoundChannel pipe{diameter_m, 1, 1};
  const auto excess = [&](double y) {
    const Section s = sectionOf(pipe, y);
    return kGravity_m_s2 * s.area_m2 * s.area_m2 * s.area_m2 - flow_m3_s * flow_m3_s * s.top_m;
  };
  const double low = diameter_m * 1e-9;
  if (excess(low) >= 0) return low;
  return rootBetween(excess, low, diameter_m);
}

Result<ScourCheck> checkScour(double velocity_m_s, std::string_view soil) {
  const Result<Figure> limit = figure("erosion." + std::string(soil));
  if (!limit) return fault(limit.error());
  const Scour verdict = velocity_m_s <= limit->low    ? Scour::safe
                        : velocity_m_s <= limit->high ? Scour::doubtful
                                                      : Scour::scours;
  return ScourCheck{verdict, *limit};
}

}  // namespace core::hydraulics
