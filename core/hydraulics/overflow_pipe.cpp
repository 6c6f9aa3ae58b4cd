// The pipe's part of overflow.h.
#include "core/hydraulics/channel.h"
#include "core/hydraulics/overflow.h"
#include "core/hydraulics/pipe_friction.h"
#include "core/hydraulics/root.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace core::hydraulics {
namespace {

constexpr double kLeastHead = 1e-4;  // of the diameter: less than a film of water

std::string_view pipeFault(const OverflowPipe& p) {
  if (!(p.diameter_m > 0 && p.diameter_m <= 2)) return "bore_out_of_range";
  if (!(p.length_m > 0 && std::isfinite(p.length_m))) return "length_out_of_range";
  if (!(p.fall_m > 0)) return "pipe_without_fall";
  if (!(p.fall_m < p.length_m)) return "slope_out_of_range";
  if (!(p.entrance_k >= 0 && p.entrance_k <= 5)) return "loss_out_of_range";
  return p.orifice_coefficient >= 0.5 && p.orifice_coefficient <= 1 ? "" : "coefficient_out_of_range";
}

RoundChannel channelOf(const OverflowPipe& p) {
  return {p.diameter_m, p.fall_m / p.length_m, p.manning_n};
}

double area(const OverflowPipe& p) {
  return std::numbers::pi / 4 * p.diameter_m * p.diameter_m;
}

/// Depth, velocity head and entrance loss.
double energyWithLoss(const OverflowPipe& p, double depth_m, double velocity_m_s) {
  return depth_m + (1 + p.entrance_k) * velocityHead(velocity_m_s);
}

double wetArea(const OverflowPipe& p, double depth_m) {
  return flowAtDepth(RoundChannel{p.diameter_m, 1, 0.01}, depth_m)->area_m2;
}

double drownedHead(const OverflowPipe& p, double flow_m3_s) {
  return p.diameter_m / 2 + velocityHead(flow_m3_s / (p.orifice_coefficient * area(p)));
}

/// fhwa_hds5: entrance, wall by Manning and outflow; the head line leaves halfway between critical depth and
/// crown
double fullPipeHead(const OverflowPipe& p, double flow_m3_s, double critical_m) {
  const double radius = p.diameter_m / 4;
  const double wall =
      2 * kGravity_m_s2 * p.manning_n * p.manning_n * p.length_m / (radius * std::cbrt(radius));
  return (1 + p.entrance_k + wall) * velocityHead(flow_m3_s / area(p)) + (critical_m + p.diameter_m) / 2 -
         p.fall_m;
}

struct Barrel {
  double head_m;
  PipeControl control;
};

/// Head by even flow; 0 on a steep slope, where the pipe takes more than its inlet lets in.
double evenHead(const OverflowPipe& p, const ChannelFlow& even) {
  return even.froude < 1 ? energyWithLoss(p, even.depth_m, even.velocity_m_s) : 0;
}

Barrel barrelOf(const OverflowPipe& p, double flow_m3_s, double critical_m, const ChannelFlow& most) {
  if (flow_m3_s <= most.flow_m3_s)
    return {evenHead(p, *evenFlow(channelOf(p), flow_m3_s)), PipeControl::barrel};
  const double full = fullPipeHead(p, flow_m3_s, critical_m);
  return {std::max(full, evenHead(p, most)), PipeControl::full_pipe};
}

}  // namespace

Result<PipeHead> pipeHead(const OverflowPipe& pipe, double flow_m3_s) {
  const std::string_view wrong = pipeFault(pipe);
  if (!wrong.empty()) return fault(wrong);
  const Result<ChannelFlow> most = mostFlow(channelOf(pipe));
  if (!most) return fault(most.error());
  const Result<double> critical = criticalDepth(pipe.diameter_m, flow_m3_s);
  if (!critical) return fault(critical.error());
  const double free = energyWithLoss(pipe, *critical, flow_m3_s / wetArea(pipe, *critical));
  const double drowned = drownedHead(pipe, flow_m3_s);
  const bool is_drowned = drowned >= pipe.diameter_m && drowned > free;
  const Barrel barrel = barrelOf(pipe, flow_m3_s, *critical, *most);
  PipeHead head;
  head.entrance_head_m = is_drowned ? drowned : free;
  head.barrel_head_m = std::max(0.0, barrel.head_m);
  head.head_m = std::max(head.entrance_head_m, head.barrel_head_m);
  head.control = head.barrel_head_m > head.entrance_head_m ? barrel.control
                 : is_drowned                              ? PipeControl::orifice
                                                           : PipeControl::entrance;
  return head;
}

Result<double> pipeCapacity(const OverflowPipe& pipe, double head_m) {
  if (!(head_m >= kLeastHead * pipe.diameter_m && std::isfinite(head_m))) return fault("head_out_of_range");
  const double most = area(pipe) * std::sqrt(2 * kGravity_m_s2 * head_m);  // less than velocity head alone
  const Result<PipeHead> at_most = pipeHead(pipe, most);
  if (!at_most) return fault(at_most.error());
  return rootBetween([&](double q) { return pipeHead(pipe, q)->head_m - head_m; }, most * 1e-12, most);
}

}  // namespace core::hydraulics
