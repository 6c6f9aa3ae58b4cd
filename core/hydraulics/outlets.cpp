#include "core/hydraulics/outlets.h"

#include "core/hydraulics/figures.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <string>

namespace core::hydraulics {
namespace {

constexpr std::array kKinds{OutletKind::open_pipe,     OutletKind::tap,           OutletKind::hose,
                            OutletKind::drip_low_cost, OutletKind::drip_standard, OutletKind::micro_sprinkler,
                            OutletKind::sprinkler};
constexpr std::array<std::string_view, kKinds.size()> kKeys{
    "open_pipe", "tap", "hose", "drip_low_cost", "drip_standard", "micro_sprinkler", "sprinkler"};

Figure figureOf(OutletKind kind, std::string_view what) {
  return *figure("outlet." + std::string(outletKey(kind)) + "." + std::string(what));
}

OutletVerdict verdictOf(const Figure& head, double full_m, double low_m) {
  if (full_m < head.low) return OutletVerdict::too_low;
  if (low_m < head.low) return OutletVerdict::works_full;
  return low_m < head.typical ? OutletVerdict::works_poorly : OutletVerdict::works;
}

}  // namespace

std::span<const OutletKind> outletKinds() {
  return kKinds;
}

std::string_view outletKey(OutletKind kind) {
  return kKeys[static_cast<std::size_t>(kind)];
}

Figure requiredHead(OutletKind kind) {
  return figureOf(kind, "head");
}

Figure outletFlow(OutletKind kind) {
  return figureOf(kind, "flow");
}

Result<OutletCheck> checkOutlet(OutletKind kind, double head_full_m, double head_low_m) {
  if (!std::isfinite(head_full_m) || !std::isfinite(head_low_m) || head_low_m > head_full_m)
    return fault("head_out_of_range");
  const Figure head = requiredHead(kind);
  return OutletCheck{verdictOf(head, head_full_m, head_low_m), head_full_m - head.typical,
                     head_low_m - head.typical, head};
}

}  // namespace core::hydraulics
