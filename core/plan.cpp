#include "core/plan.h"

#include "core/findings.h"
#include "core/project/fields.h"
#include "core/project/option_fields.h"
#include "core/site/survey.h"
#include "core/water/check.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace core {
namespace {

constexpr double kDipStep_m = 0.05;

TankFigures figures(const geometry::TankGeometry& g) {
  const Eigen::Vector2d floor = g.outline().size(0);
  const Eigen::Vector2d rim = g.outline().size(g.clearOffset(g.depth()));
  const double full = g.volumeToLevel(g.fullLevel());
  const double dead = g.volumeToLevel(g.deadLevel());
  return {.brim_volume_m3 = g.clearVolume(),
          .full_volume_m3 = full,
          .usable_volume_m3 = full - dead,
          .dead_volume_m3 = dead,
          .full_surface_m2 = g.surfaceAt(g.fullLevel()),
          .floor_m2 = g.floorArea(),
          .wall_m2 = g.wallArea(),
          .rim_length_m = g.rimLength(),
          .brim_area_m2 = g.brimArea(),
          .clear_floor_length_m = floor.x(),
          .clear_floor_width_m = floor.y(),
          .clear_rim_length_m = rim.x(),
          .clear_rim_width_m = rim.y(),
          .depth_m = g.depth(),
          .full_level_m = g.fullLevel(),
          .dead_level_m = g.deadLevel()};
}

std::vector<DipMark> dipStick(const geometry::TankGeometry& g) {
  std::vector<double> levels;
  for (int k = 0; k * kDipStep_m < g.depth() - 1e-9; ++k) levels.push_back(k * kDipStep_m);
  levels.push_back(g.depth());
  const auto near_full = [&](double z) { return std::abs(z - g.fullLevel()) < 1e-9; };
  if (std::none_of(levels.begin(), levels.end(), near_full)) levels.push_back(g.fullLevel());
  std::sort(levels.begin(), levels.end());
  std::vector<DipMark> marks;
  marks.reserve(levels.size());
  for (const double z : levels) marks.push_back({z, g.volumeToLevel(z)});
  return marks;
}

void checkCount(const std::string& path, std::size_t count, std::size_t least, std::size_t most,
                Problems& problems) {
  if (count >= least && count <= most) return;
  problems.push_back({count < least ? "too_few" : "too_many",
                      path,
                      std::to_string(count),
                      static_cast<double>(least),
                      static_cast<double>(most),
                      Unit::piece,
                      {}});
}

/// Coordinates within the reach of a survey of one site.
template <class Point>
void checkReach(const std::string& path, const std::vector<Point>& points, Problems& problems) {
  for (std::size_t k = 0; k < points.size(); ++k) {
    for (Eigen::Index axis = 0; axis < 2; ++axis) {
      const double value = points[k][axis];
      if (std::abs(value) <= kMostCoordinate_m) continue;
      problems.push_back({std::isfinite(value) ? "out_of_range" : "not_finite",
                          path + "[" + std::to_string(k) + "][" + std::to_string(axis) + "]", jsonText(value),
                          -kMostCoordinate_m, kMostCoordinate_m, Unit::metre, "number"});
    }
  }
}

void checkGround(const Ground& ground, Problems& problems) {
  if (ground.kind != GroundKind::spot_heights) return;
  checkCount("site.ground.points_m", ground.points_m.size(), kLeastSpotHeights, kMostSpotHeights, problems);
  checkReach("site.ground.points_m", ground.points_m.list(), problems);
}

/// What the platform moves; nothing where none can be made.
std::optional<works::Platform> moved(const site::SitePlan& site) {
  if (site.has_relief && !site.bench) return std::nullopt;
  works::Platform platform{0, 0, site.topsoil_m3, site.spoil_bank_m3};
  if (site.bench) {
    platform.cut_m3 = site.bench->cut_m3;
    platform.fill_m3 = site.bench->fill_m3;
  }
  return platform;
}

Problems checkFields(const Project& project) {
  Problems problems;
  for (const Field& f : fields()) {
    if (!f.applies(project)) continue;
    for (std::size_t row = 0; row < rowCount(f, project); ++row) {
      Problems found = checkValue(f, row, f.get(project, row));
      std::move(found.begin(), found.end(), std::back_inserter(problems));
    }
  }
  for (const List& list : lists()) {
    if (list.applies(project))
      checkCount(std::string(list.id), list.size(project), list.least, list.most, problems);
  }
  checkGround(project.site.ground, problems);
  if (project.tank.shape == Shape::polygon) {
    checkReach("tank.outline_m", project.tank.outline_m, problems);
    checkCount("tank.outline_m", project.tank.outline_m.size(), kLeastCorners, kMostCorners, problems);
  }
  return problems;
}

}  // namespace

namespace {

enum class Survey { to_check, known };

Problems checkAll(const Project& project, Survey survey) {
  Problems problems = checkFields(project);
  if (problems.empty()) problems = geometry::check(project.tank, project.lining);
  if (problems.empty()) problems = site::check(project.notes);
  if (problems.empty() && project.water) problems = water::check(*project.water);
  if (problems.empty() && project.delivery) problems = hydraulics::check(*project.delivery);
  if (problems.empty() && project.works) problems = works::check(*project.works);
  if (problems.empty()) problems = cost::check(project.ranges);
  if (problems.empty() && project.prices) problems = cost::check(*project.prices);
  if (problems.empty()) problems = checkSearch(project);
  if (problems.empty()) problems = checkOptions(project);
  const bool has_survey = project.site.ground.kind == GroundKind::spot_heights;
  if (problems.empty() && has_survey && survey == Survey::to_check)
    problems = site::surveyFaults(project.site.ground.points_m);
  return problems;
}

}  // namespace

Problems check(const Project& project) {
  return checkAll(project, Survey::to_check);
}

namespace {

/// The ground at hand that is the project's own.
std::shared_ptr<const site::SurveyedGround> groundOf(const Project& project, const Plan* before,
                                                     std::shared_ptr<const site::SurveyedGround> ground) {
  const auto is_of_project = [&](const site::SurveyedGround& g) {
    return g.from == project.site.ground && g.faults.empty() &&
           (g.surface || g.surface.error() != site::TinFault::cancelled);
  };
  if (ground && is_of_project(*ground)) return ground;
  return before && is_of_project(*before->site.ground) ? before->site.ground : nullptr;
}

/// Works and money, which follow from all the rest.
void addWorksAndMoney(const Project& in_force, const works::Platform& platform, Plan& plan) {
  const water::WaterPlan* water = plan.water ? &*plan.water : nullptr;
  if (in_force.works)
    plan.works = works::worksPlan({{plan.geometry, in_force, plan.quantities, platform}, water});
  if (!in_force.prices) return;
  cost::CostInput input{{plan.geometry, in_force, plan.quantities, 0, 0},
                        plan.works ? &*plan.works : nullptr,
                        water,
                        plan.tank.full_volume_m3};
  if (plan.works) {
    input.bill.labourer_days = plan.works->person_days - plan.works->mason_days;
    input.bill.mason_days = plan.works->mason_days;
  }
  plan.cost = cost::costPlan(input);
}

}  // namespace

tl::expected<Plan, Problems> plan(const Project& project, const Plan* before,
                                  std::shared_ptr<const site::SurveyedGround> ground) {
  ground = groundOf(project, before, std::move(ground));
  Problems problems = checkAll(project, ground ? Survey::known : Survey::to_check);
  if (!problems.empty()) return tl::make_unexpected(std::move(problems));
  const works::Calibration calibration = works::calibration(project);
  const Project in_force = works::inForce(project, calibration);
  geometry::TankGeometry g(in_force.tank, in_force.lining);
  lining::Quantities quantities = lining::quantities(g, in_force);
  site::SitePlan site = site::sitePlan(g, in_force.site, in_force.lining, std::move(ground));
  const std::optional<works::Platform> platform = moved(site);
  const works::Earthwork earthwork = works::earthwork(g, in_force.site.soil, platform);
  Plan plan{.geometry = g,
            .tank = figures(g),
            .earthwork = earthwork,
            .layers = g.layers(),
            .quantities = std::move(quantities),
            .dip_stick = dipStick(g),
            .setting_out = geometry::settingOut(g),
            .site = std::move(site),
            .field_tests = site::fieldTests(in_force.notes, earthwork.pit_depth_m),
            .calibration = calibration,
            .works = {},
            .water = {},
            .delivery = {},
            .cost = {},
            .ranges = {},
            .options = {},
            .findings = {}};
  if (in_force.water) {
    const water::WaterPlan* old = before && before->water ? &*before->water : nullptr;
    plan.water = water::waterPlan(g, in_force.site, *in_force.water, old);
  }
  if (in_force.delivery)
    plan.delivery = hydraulics::deliveryPlan(g, in_force.site, in_force.water, *in_force.delivery);
  addWorksAndMoney(in_force, platform.value_or(works::Platform{}), plan);
  plan.findings = findings(in_force, plan);
  return plan;
}

}  // namespace core
