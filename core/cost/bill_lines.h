#pragma once

#include "core/cost/carriage.h"
#include "core/cost/cost_plan.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace core::cost {

/// Items whose quantity the plan knows.
enum class Known : std::size_t {
  cement_bags,
  soil,
  sand,
  stone,
  water,
  sacks,
  labourer,
  mason,
  source_pipe,
  field_pipe,
  fence
};
inline constexpr std::size_t kKnown = 11;

/// Quantity of each known item, in the unit of its price.
struct KnownQuantities {
  std::array<double, kKnown> of{};
  double& operator[](Known k) { return of[static_cast<std::size_t>(k)]; }
  double operator[](Known k) const { return of[static_cast<std::size_t>(k)]; }
};
/// Its name in the price list.
std::string_view nameOf(Known item);
KnownQuantities knownQuantities(const BillInput& input);

enum class Group : std::size_t { materials, labour, other };
inline constexpr std::size_t kGroups = 3;
std::string_view token(Group group);

/// One line of the price list, made ready to be multiplied.
struct LineTerms {
  const PriceItem* item = nullptr;
  Group group = Group::other;
  std::string_view unit;
  std::optional<Known> from_plan;  ///< absent: the quantity is given
  double given = 0;
  std::optional<Loading> loading;
  bool is_weight_unknown = false;  ///< to be carried, but nobody knows how heavy it is

  double quantity(const KnownQuantities& known) const { return from_plan ? known[*from_plan] : given; }
};

/// @pre the project's prices are there, and outlive what comes back
std::vector<LineTerms> lineTerms(const Project& project);

/// Money by group.
struct Sums {
  std::array<double, kGroups> of{};
  double carriage = 0;

  double& operator[](Group g) { return of[static_cast<std::size_t>(g)]; }
  double operator[](Group g) const { return of[static_cast<std::size_t>(g)]; }
  double beforeContingency() const { return of[0] + of[1] + of[2] + carriage; }
  double contingency(double percent) const { return beforeContingency() * percent / 100; }
  double total(double contingency_percent) const {
    return beforeContingency() + contingency(contingency_percent);
  }
};

}  // namespace core::cost
