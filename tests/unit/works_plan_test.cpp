#include "core/plan.h"
#include "tests/unit/works_support.h"

#include <algorithm>

#include <catch2/catch.hpp>

namespace {

core::Plan planned(const core::Project& p) {
  auto plan = core::plan(p);
  REQUIRE(plan);
  return *plan;
}

}  // namespace

TEST_CASE("without works there is no labour and no schedule, and the plan says so") {
  core::Project p;
  p.works.reset();
  const core::Plan plan = planned(p);
  CHECK_FALSE(plan.works);
  CHECK(std::any_of(plan.findings.begin(), plan.findings.end(),
                    [](const auto& f) { return f.code == "part_absent" && f.values[0].token == "works"; }));
}

TEST_CASE("the labour of a plan is for the pit and the platform of that plan") {
  core::Project p;
  p.site.ground.kind = core::GroundKind::slope;
  p.site.ground.fall_percent = 12;
  const core::Plan plan = planned(p);
  REQUIRE(plan.works);
  const auto& labour = plan.works->labour;
  CHECK(support::line(labour, "excavate").quantity + support::line(labour, "excavate_deep").quantity ==
        Approx(plan.earthwork.pit_volume_m3));
  CHECK(support::line(labour, "platform_cut").quantity == Approx(plan.earthwork.bench_cut_m3.value()));
  CHECK(support::line(labour, "strip_topsoil").quantity == Approx(plan.earthwork.topsoil_m3.value()));
  CHECK(support::line(labour, "carry_spoil").quantity == Approx(plan.earthwork.spoil_bank_m3.value()));
}

TEST_CASE("a calendar without a working day is refused, not laid out for ever") {
  core::Project p;
  for (int k = 0; k < 10; ++k)
    p.works->closed.push_back({core::works::addDays(p.works->start_date, 40 * k), 60, ""});
  const core::Problems problems = core::check(p);
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].code == "no_working_day");
}
