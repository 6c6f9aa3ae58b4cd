#pragma once

#include "core/works/schedule.h"

#include <string>
#include <vector>

#include <catch2/catch.hpp>

namespace support {

inline core::works::Day day(int y, unsigned m, unsigned d) {
  return {std::chrono::year(y), std::chrono::month(m), std::chrono::day(d)};
}

/// A tank on level ground, all that is dug carried away, and what follows for its works.
struct Site {
  explicit Site(const core::Project& p)
      : project(p),
        tank(p.tank, p.lining),
        quantities(core::lining::quantities(tank, p)),
        platform{0, 0, 6, tank.pitVolume()} {}

  core::works::LabourInput input() const { return {tank, project, quantities, platform}; }
  core::works::Works works() const { return core::works::worksPlan({input(), nullptr}); }

  core::Project project;
  core::geometry::TankGeometry tank;
  core::lining::Quantities quantities;
  core::works::Platform platform;
};

inline const core::works::Labour* findLine(const std::vector<core::works::Labour>& labour,
                                           const std::string& task) {
  for (const core::works::Labour& line : labour) {
    if (line.task == task) return &line;
  }
  return nullptr;
}

inline const core::works::Labour& line(const std::vector<core::works::Labour>& labour,
                                       const std::string& task) {
  const core::works::Labour* found = findLine(labour, task);
  INFO(task);
  REQUIRE(found != nullptr);
  return *found;
}

inline const core::works::Task& task(const core::works::Works& works, const std::string& id) {
  const core::works::Task* found = core::works::findTask(works, id);
  INFO(id);
  REQUIRE(found != nullptr);
  return *found;
}

}  // namespace support
