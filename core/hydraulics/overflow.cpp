#include "core/hydraulics/overflow.h"

#include "core/hydraulics/root.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace core::hydraulics {
namespace {

constexpr double kMmPerHour = 1e-3 / 3600;  // [m/s]

std::string_view notchFault(const Notch& notch) {
  if (!(notch.width_m > 0 && std::isfinite(notch.width_m))) return "width_out_of_range";
  return notch.share > 0 && notch.share <= 1 ? "" : "coefficient_out_of_range";
}

double weirFlow(double width_m, double share, double head_m) {
  return share * broadCrest() * width_m * head_m * std::sqrt(head_m);
}

Result<PipeHead> headOf(const Notch& notch, double flow_m3_s) {
  const Result<double> head = notchHead(notch, flow_m3_s);
  if (!head) return fault(head.error());
  return PipeHead{*head, PipeControl::entrance, *head, 0};
}

Result<PipeHead> headOf(const OverflowPipe& pipe, double flow_m3_s) {
  return pipeHead(pipe, flow_m3_s);
}

Result<double> capacityOf(const Notch& notch, double head_m) {
  return notchFlow(notch, head_m);
}

Result<double> capacityOf(const OverflowPipe& pipe, double head_m) {
  return pipeCapacity(pipe, head_m);
}

std::string_view rimFault(std::span<const RimPart> rim) {
  if (rim.empty()) return "no_rim";
  for (const RimPart& part : rim) {
    if (!(part.length_m > 0 && std::isfinite(part.length_m))) return "length_out_of_range";
    if (!std::isfinite(part.level_m)) return "level_out_of_range";
  }
  return "";
}

double depthOver(const RimPart& part, double level_m) {
  return std::max(0.0, level_m - part.level_m);
}

double flowOver(std::span<const RimPart> rim, double level_m, double share) {
  double sum = 0;
  for (const RimPart& part : rim) sum += weirFlow(part.length_m, share, depthOver(part, level_m));
  return sum;
}

const RimPart& lowestOf(std::span<const RimPart> rim) {
  return *std::min_element(rim.begin(), rim.end(),
                           [](const RimPart& a, const RimPart& b) { return a.level_m < b.level_m; });
}

}  // namespace

Result<double> stormPeak(std::span<const StormArea> areas, double intensity_mm_h) {
  if (!(intensity_mm_h >= 0 && std::isfinite(intensity_mm_h))) return fault("intensity_out_of_range");
  double sum = 0;
  for (const StormArea& a : areas) {
    if (!(a.runoff_coefficient >= 0 && a.runoff_coefficient <= 1)) return fault("coefficient_out_of_range");
    if (!(a.area_m2 >= 0 && std::isfinite(a.area_m2))) return fault("area_out_of_range");
    sum += a.runoff_coefficient * a.area_m2;
  }
  return intensity_mm_h * kMmPerHour * sum;  // rational method
}

double broadCrest() {
  return std::pow(2.0 / 3, 1.5) * std::sqrt(kGravity_m_s2);
}

Result<double> notchFlow(const Notch& notch, double head_m) {
  const std::string_view wrong = notchFault(notch);
  if (!wrong.empty()) return fault(wrong);
  if (!(head_m >= 0)) return fault("head_out_of_range");
  return weirFlow(notch.width_m, notch.share, head_m);
}

Result<double> notchHead(const Notch& notch, double flow_m3_s) {
  const std::string_view wrong = notchFault(notch);
  if (!wrong.empty()) return fault(wrong);
  if (!(flow_m3_s >= 0)) return fault("flow_out_of_range");
  const double root = std::cbrt(flow_m3_s / (notch.share * broadCrest() * notch.width_m));
  return root * root;
}

Result<OverflowState> overflowState(const Overflow& overflow, double flow_m3_s) {
  if (!(overflow.rim_level_m > overflow.sill_level_m)) return fault("level_out_of_range");
  if (!(flow_m3_s > 0 && std::isfinite(flow_m3_s))) return fault("flow_out_of_range");
  const double to_rim = overflow.rim_level_m - overflow.sill_level_m;
  const auto head = std::visit([&](const auto& way) { return headOf(way, flow_m3_s); }, overflow.way);
  if (!head) return fault(head.error());
  const auto capacity = std::visit([&](const auto& way) { return capacityOf(way, to_rim); }, overflow.way);
  if (!capacity) return fault(capacity.error());
  return OverflowState{head->head_m, overflow.sill_level_m + head->head_m, to_rim - head->head_m, *capacity,
                       head->control};
}

Result<BlockedState> overRim(std::span<const RimPart> rim, double flow_m3_s, double share) {
  const std::string_view wrong = rimFault(rim);
  if (!wrong.empty()) return fault(wrong);
  if (!(flow_m3_s > 0 && std::isfinite(flow_m3_s))) return fault("flow_out_of_range");
  const RimPart& lowest = lowestOf(rim);
  const Result<double> alone = notchHead({lowest.length_m, share}, flow_m3_s);  // it cannot stand higher
  if (!alone) return fault(alone.error());
  const double high = lowest.level_m + *alone * (1 + 1e-9);
  BlockedState state;
  state.water_level_m =
      rootBetween([&](double z) { return flowOver(rim, z, share) - flow_m3_s; }, lowest.level_m, high);
  state.deepest_m = state.water_level_m - lowest.level_m;
  for (const RimPart& part : rim) {
    const double depth = depthOver(part, state.water_level_m);
    state.parts.push_back({part.key, depth, weirFlow(part.length_m, share, depth)});
  }
  return state;
}

}  // namespace core::hydraulics
