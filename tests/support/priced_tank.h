#pragma once

#include "core/cost/cost_plan.h"
#include "core/cost/ranges.h"
#include "core/works/schedule.h"
#include "tests/support/water_project.h"

#include <optional>

namespace support {

/// The tank of waterProject with every price known; the prices are invented.
inline core::Project pricedProject() {
  core::Project project = waterProject();
  project.works->fill_inflow_l_per_day = 2500;
  core::Prices& prices = project.prices.emplace();
  constexpr double kPrices[]{850, 2400, 300, 1800, 35, 900, 1400, 60, 60, 450};
  for (std::size_t k = 0; k < prices.items.size(); ++k) prices.items[k].price = kPrices[k];
  prices.items[0].carried_by = core::Carrier::porter;
  prices.items[1].carried_by = core::Carrier::mule;
  prices.items[3].carried_by = core::Carrier::trolley;
  prices.items[4].carried_by = core::Carrier::porter;
  prices.items[5].own_percent = 40;
  prices.porter.price_per_trip = 120;
  prices.mule.price_per_trip = 300;
  prices.trolley.price_per_trip = 1500;
  return project;
}

/// A project planned as far as money goes. It holds references to itself: not to be moved.
class PricedTank {
public:
  explicit PricedTank(const core::Project& from)
      : project(from),
        geometry(project.tank, project.lining),
        quantities(core::lining::quantities(geometry, project)) {
    platform.spoil_bank_m3 = geometry.pitVolume();
    if (project.water) water = core::water::waterPlan(geometry, project.site, *project.water, nullptr);
    if (project.works)
      works = core::works::worksPlan({{geometry, project, quantities, platform}, waterOrNone()});
    if (project.prices) cost = core::cost::costPlan({bill(), worksOrNone(), waterOrNone(), full_m3()});
  }
  PricedTank(const PricedTank&) = delete;
  PricedTank& operator=(const PricedTank&) = delete;

  core::cost::BillInput bill() const {
    const double masons = works ? works->mason_days : 0;
    return {geometry, project, quantities, works ? works->person_days - masons : 0, masons};
  }
  core::cost::RangesInput ranges() const {
    return {project, geometry, quantities, worksOrNone(), cost ? &*cost : nullptr, waterOrNone()};
  }
  const core::works::Works* worksOrNone() const { return works ? &*works : nullptr; }
  const core::water::WaterPlan* waterOrNone() const { return water ? &*water : nullptr; }
  double full_m3() const { return geometry.volumeToLevel(geometry.fullLevel()); }

  core::Project project;
  core::geometry::TankGeometry geometry;
  core::lining::Quantities quantities;
  core::works::Platform platform;
  std::optional<core::water::WaterPlan> water;
  std::optional<core::works::Works> works;
  std::optional<core::cost::CostPlan> cost;
};

}  // namespace support
