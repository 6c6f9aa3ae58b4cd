#include "core/build_timeline.h"

namespace core {

std::vector<works::BuildDay> buildTimeline(const Plan& plan) {
  std::vector<works::BuildDay> days;
  if (plan.works) days = works::buildDays(plan.geometry, *plan.works);
  if (days.empty()) days = works::buildStages(plan.geometry, plan.site.bench.has_value());
  return days;
}

std::size_t nextStage(const std::vector<works::BuildDay>& days, std::size_t at) {
  std::size_t next = at;
  while (next < days.size() && days[next].stage == days[at].stage) ++next;
  return next;
}

std::size_t stageBefore(const std::vector<works::BuildDay>& days, std::size_t at) {
  if (at == 0) return 0;
  std::size_t before = at - 1;
  while (before > 0 && days[before - 1].stage == days[before].stage) --before;
  return before;
}

}  // namespace core
