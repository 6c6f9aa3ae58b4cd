#include "core/works/one_go.h"

#include "core/project/fields.h"
#include "core/works/rates.h"
#include "core/works/task_list.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <string_view>

#include <fmt/format.h>

namespace core::works {
namespace {

using geometry::TankGeometry;

constexpr double kMinutesPerHour = 60;
constexpr double kAlmost = 1e-9;      // a whole number in spite of rounding
constexpr double kFactorStep = 1e-7;  // within which the plan factor is found

int wholeUp(double value) {
  return static_cast<int>(std::ceil(value - kAlmost));
}

/// Who is there for one coat, and in what time it must be on.
struct CoatCrew {
  int people, masons;
  double hours_per_day, hours;

  int needed(double person_days) const { return std::max(1, wholeUp(person_days * hours_per_day / hours)); }
  static int masonsNeeded(int people_needed) { return wholeUp(people_needed * masonShareOfPlaster()); }
  bool canDo(double person_days) const {
    const int wanted = needed(person_days);
    return wanted <= people && masonsNeeded(wanted) <= masons;
  }
};

CoatCrew crewFor(const std::string& task, const core::Works& works) {
  const TaskWish* wish = wishFor(works, task);
  const int people = wish != nullptr ? wish->people.value_or(works.plasterers) : works.plasterers;
  return {people, std::min(works.masons, people), works.hours_per_day, works.coat_hours};
}

double daysOf(const std::string& task, const std::vector<Labour>& labour) {
  const auto line =
      std::find_if(labour.begin(), labour.end(), [&](const Labour& l) { return l.task == task; });
  if (line == labour.end()) throw std::logic_error("no labour for " + task);
  return line->days;
}

const lining::Batch& batchOf(int coat, double bags, const lining::Quantities& quantities) {
  const auto& all = quantities.batches;
  const auto batch = std::find_if(all.begin(), all.end(), [&](const lining::Batch& b) {
    return b.coat == coat && std::abs(b.bags - bags) < kAlmost;
  });
  if (batch == all.end()) throw std::logic_error("no batch for a coat");
  return *batch;
}

/// The tank with its plan scaled; depth, batter, corner radius and lining as they are.
Tank scaledTank(Tank tank, double factor) {
  tank.length_m *= factor;
  tank.width_m *= factor;
  tank.diameter_m *= factor;
  for (Eigen::Vector2d& corner : tank.outline_m) corner *= factor;
  return tank;
}

bool isInRange(std::string_view field_id, double value) {
  return value >= field(field_id).least && value <= field(field_id).most;
}

bool isBuildable(const Tank& tank, const Lining& lining) {
  const bool is_in_range = (tank.shape != Shape::rectangle || (isInRange("tank.length_m", tank.length_m) &&
                                                               isInRange("tank.width_m", tank.width_m))) &&
                           (tank.shape != Shape::round || isInRange("tank.diameter_m", tank.diameter_m));
  return is_in_range && geometry::check(tank, lining).empty();
}

/// Looks for the largest plan that a crew can plaster in one go.
class SizeSearch {
public:
  SizeSearch(const LabourInput& input, const std::string& task, const CoatCrew& crew)
      : whole_(input.project.tank),
        project_(input.project),
        platform_(input.platform),
        task_(task),
        crew_(crew) {
    project_.lining.customary = {};  // not asked of a tank that is only tried
  }

  std::optional<SizeForCrew> largest() {
    double low = 0;
    double high = 1;
    while (high - low > kFactorStep) {
      const double factor = (low + high) / 2;
      (tryOn(factor) == Fit::too_large ? high : low) = factor;
    }
    if (tryOn(low) != Fit::fits) return std::nullopt;
    const TankGeometry tank(project_.tank, project_.lining);
    const Eigen::Vector2d floor = tank.outline().size(0);
    return SizeForCrew{low, floor.x(), floor.y(), tank.volumeToLevel(tank.fullLevel())};
  }

private:
  enum class Fit { not_buildable, fits, too_large };

  Tank whole_;
  Project project_;
  const Platform& platform_;
  const std::string& task_;
  const CoatCrew& crew_;

  Fit tryOn(double factor) {
    project_.tank = scaledTank(whole_, factor);
    if (!isBuildable(project_.tank, project_.lining)) return Fit::not_buildable;
    const TankGeometry tank(project_.tank, project_.lining);
    const lining::Quantities quantities = lining::quantities(tank, project_);
    const double days = daysOf(task_, labour({tank, project_, quantities, platform_}));
    return crew_.canDo(days) ? Fit::fits : Fit::too_large;
  }
};

/// People on the wall: so many of the crew as spreading takes of the labour of mixing and spreading, for both
/// go on at the same time.
double spreaders(const lining::CoatQuantities& q, int people, const Project& project) {
  const double spreading = q.face_m2 * rateInForce("plaster", project).typical;
  const double mixing = q.placed_m3 * rateInForce("mixing", project).typical;
  return people * spreading / (spreading + mixing);
}

/// Minutes until a batch is on the wall when all who spread work on it.
double minutesToPlace(const lining::Batch& batch, double spreaders, const Project& project) {
  const double person_days = batch.covers_m2 * rateInForce("plaster", project).typical;
  return person_days * project.works->hours_per_day * kMinutesPerHour / spreaders;
}

void addMixing(const lining::CoatQuantities& q, const LabourInput& input, CoatCheck& check) {
  const core::Works& works = *input.project.works;
  const lining::Batch& whole = batchOf(q.coat, 1, input.quantities);
  const double on_the_wall = spreaders(q, check.people, input.project);
  check.batches = whole.count;
  check.batches_per_hour_needed = whole.count / works.coat_hours;
  check.batches_per_hour_possible = works.mixing_places * kMinutesPerHour / works.minutes_per_batch;
  check.mixing_places_needed =
      wholeUp(check.batches_per_hour_needed * works.minutes_per_batch / kMinutesPerHour);
  check.minutes_to_place_batch = minutesToPlace(whole, on_the_wall, input.project);
  check.minutes_to_place_half_batch =
      minutesToPlace(batchOf(q.coat, 0.5, input.quantities), on_the_wall, input.project);
  check.placing_minutes = works.placing_minutes;
}

void addMaterials(const lining::CoatQuantities& q, const Lining& lining, CoatCheck& check) {
  check.bags = q.to_mix.cement_kg / lining.cement_bag_kg;
  check.water_l = q.placed_m3 * lining.mixing_water_l_per_m3;
  check.sacks = wholeUp(q.face_m2 / lining.sack_covers_m2 * (1 + lining.sack_spare_percent / 100));
}

CoatCheck checkOf(const lining::CoatQuantities& q, const LabourInput& input,
                  const std::vector<Labour>& labour) {
  const std::string task = fmt::format("coat_{}", q.coat);
  const CoatCrew crew = crewFor(task, input.project.works.value());
  CoatCheck check{};
  check.coat = q.coat;
  check.person_days = daysOf(task, labour);
  check.hours = crew.hours;
  check.people = crew.people;
  check.needed = crew.needed(check.person_days);
  check.masons = crew.masons;
  check.masons_needed = CoatCrew::masonsNeeded(check.needed);
  addMixing(q, input, check);
  addMaterials(q, input.project.lining, check);
  if (!check.is_enough()) check.size = SizeSearch(input, task, crew).largest();
  return check;
}

}  // namespace

std::vector<CoatCheck> coatChecks(const LabourInput& input, const std::vector<Labour>& labour) {
  std::vector<CoatCheck> checks;
  checks.reserve(input.quantities.coats.size());
  for (const lining::CoatQuantities& q : input.quantities.coats) checks.push_back(checkOf(q, input, labour));
  return checks;
}

}  // namespace core::works
