#pragma once

#include "core/plan.h"

#include <atomic>
#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace core::compare {

/// One size that was tried.
struct Candidate {
  double length_m = 0, width_m = 0,
         depth_m = 0;  ///< as the tank is entered; length is a round one's diameter
  double full_volume_m3 = 0;
  double cement_bags = 0;
  int people_on_coat = 0;
  std::optional<double> cost;          ///< absent without prices
  std::optional<double> years_in_ten;  ///< absent without water
  bool operator==(const Candidate&) const = default;
};

/// How many sizes fell out, and by what; each is counted at the first limit it breaks.
struct LeftOut {
  std::size_t geometry = 0, pit_depth = 0, cut = 0, platform = 0, people = 0, bags = 0, cost = 0;
};

struct SearchResult {
  std::size_t tried = 0, within = 0;
  LeftOut left_out;
  bool by_cost = false;               ///< the frontier is by money; else by bags of cement
  std::vector<Candidate> frontier;    ///< rising in money (or bags) and in reliability (or full volume)
  std::optional<Candidate> cheapest;  ///< that meets the target; absent: none does, or there is no water
  std::optional<Candidate> largest;   ///< most water within the limits
  double target_years_in_ten = 0;
};

/// All sizes in steps within the limits: how many there are.
std::size_t candidateCount(const Project& project);

/// Tries every size within project.search, on the project's own ground, with its own lining, prices and
/// weather years. Left out: what could not be built (geometry, platform, a tank on fill), pits deeper than
/// hand digging allows (pit.deepest_by_hand), cuts higher than just stand in the weakest soil of its class,
/// and what breaks a limit on bags, people or money. Polygons are tried as their outline scaled, by length
/// alone. Its numbers are those of core::plan for the same size.
/// @param plan of the same project: its weather years and ground are used
/// @param progress told the share done, 0 to 1, from any thread; may be empty
/// @param cancel when it becomes true the answer has tried == 0
SearchResult searchSizes(const Project& project, const Plan& plan, unsigned threads,
                         const std::function<void(double)>& progress, const std::atomic<bool>& cancel);

/// The tank as it stands, as the search would tell it.
Candidate presentSize(const Project& project, const Plan& plan);

/// The project with a candidate's size put in.
Project withSize(Project project, const Candidate& candidate);

}  // namespace core::compare
