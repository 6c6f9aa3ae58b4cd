#include "core/works/earthwork.h"

#include <array>

namespace core::works {

double swellPercent(Soil soil) {
  // Merritt: clay 40, earth and loam 25, sand 12; rock between well-blasted 65 and sandstone 54
  constexpr std::array percent{40.0, 25.0, 12.0, 25.0, 40.0, 65.0};
  return percent[static_cast<std::size_t>(soil)];
}

Earthwork earthwork(const geometry::TankGeometry& geometry, std::optional<Soil> soil,
                    const std::optional<Platform>& platform) {
  const Eigen::Vector2d top = geometry.outline().size(geometry.pitOffset(geometry.depth()));
  const double floor_level = geometry.depth() - geometry.pitDepth();
  const Eigen::Vector2d floor = geometry.outline().size(geometry.pitOffset(floor_level));
  Earthwork e{geometry.pitVolume(),
              top.x(),
              top.y(),
              floor.x(),
              floor.y(),
              geometry.pitDepth(),
              {},
              {},
              {},
              {},
              {},
              {}};
  if (soil) e.swell_percent = swellPercent(*soil);
  if (!platform) return e;
  e.bench_cut_m3 = platform->cut_m3;
  e.bench_fill_m3 = platform->fill_m3;
  e.topsoil_m3 = platform->topsoil_m3;
  e.spoil_bank_m3 = platform->spoil_bank_m3;
  if (soil) e.spoil_loose_m3 = platform->spoil_bank_m3 * (1 + *e.swell_percent / 100);
  return e;
}

}  // namespace core::works
