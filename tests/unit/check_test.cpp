#include "core/plan.h"

#include <algorithm>
#include <limits>
#include <string>

#include <catch2/catch.hpp>

namespace {

bool refuses(const core::Project& p, const std::string& code, const std::string& path) {
  const core::Problems problems = core::check(p);
  return std::any_of(problems.begin(), problems.end(),
                     [&](const auto& x) { return x.code == code && x.path == path; });
}

}  // namespace

TEST_CASE("what the reader would refuse is refused before it can be saved: spot heights") {
  core::Project p;
  p.site.ground.kind = core::GroundKind::spot_heights;
  CHECK(refuses(p, "too_few", "site.ground.points_m"));
  p.site.ground.points_m = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}};
  CHECK(core::check(p).empty());
  p.site.ground.points_m = {{0, 0, 0}, {1000.1, 0, 0}, {0, 1, 0}};
  CHECK(refuses(p, "out_of_range", "site.ground.points_m[1][0]"));
}

TEST_CASE("what the reader would refuse is refused before it can be saved: outline coordinates") {
  core::Project p;
  p.tank.shape = core::Shape::polygon;
  p.tank.outline_m = {{0, 0}, {6, 0}, {6, 1001}};
  CHECK(refuses(p, "out_of_range", "tank.outline_m[2][1]"));
  p.tank.outline_m[2].y() = std::numeric_limits<double>::quiet_NaN();
  CHECK(refuses(p, "not_finite", "tank.outline_m[2][1]"));
  p.tank.outline_m[2].y() = 5;
  CHECK(core::check(p).empty());
}
