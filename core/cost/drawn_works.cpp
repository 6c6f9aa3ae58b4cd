#include "core/cost/drawn_works.h"

#include "core/works/labour.h"

#include <algorithm>
#include <utility>

namespace core::cost {
namespace {

constexpr double kMorePercent = 10;  // of unevenness, to see how labour rises with it

enum Kind : std::size_t { digging, plastering, all_else };

Kind kindOf(const std::string& task) {
  if (task.starts_with("coat_")) return plastering;
  if (task == "excavate" || task == "excavate_deep" || task == "platform_cut") return digging;
  return all_else;
}

double quantityOf(const std::vector<works::Labour>& all, std::string_view task) {
  for (const works::Labour& labour : all) {
    if (labour.task == task) return labour.quantity;
  }
  return 0;
}

/// What the works say that is moved for the platform.
works::Platform movedBy(const std::vector<works::Labour>& labour) {
  return {quantityOf(labour, "platform_cut"), quantityOf(labour, "platform_fill"),
          quantityOf(labour, "strip_topsoil"), quantityOf(labour, "carry_spoil")};
}

/// Person-days and skilled ones by kind.
struct DaySums {
  std::array<double, 3> person{}, mason{};
};

/// Of the tasks that the works have.
DaySums summed(const std::vector<works::Labour>& labour, const std::vector<works::Labour>& of_works) {
  DaySums sums;
  for (const works::Labour& l : labour) {
    const bool is_done = std::any_of(of_works.begin(), of_works.end(),
                                     [&](const works::Labour& other) { return other.task == l.task; });
    if (!is_done) continue;
    sums.person.at(kindOf(l.task)) += l.days;
    sums.mason.at(kindOf(l.task)) += l.mason_days;
  }
  return sums;
}

lining::Quantities moreUneven(Project& project, const geometry::TankGeometry& geometry) {
  project.lining.unevenness_percent += kMorePercent;
  return lining::quantities(geometry, project);
}

/// Days as they are, and what they rise by for each percent of unevenness.
struct Tangent {
  DaySums at, per_percent;
};

Tangent tangent(Project project, const geometry::TankGeometry& geometry, const lining::Quantities& quantities,
                const works::Platform& platform, const std::vector<works::Labour>& of_works) {
  Tangent t;
  t.at = summed(works::labour({geometry, project, quantities, platform}), of_works);
  const lining::Quantities uneven = moreUneven(project, geometry);
  t.per_percent = summed(works::labour({geometry, project, uneven, platform}), of_works);
  for (std::size_t k = 0; k < t.at.person.size(); ++k) {
    t.per_percent.person[k] = (t.per_percent.person[k] - t.at.person[k]) / kMorePercent;
    t.per_percent.mason[k] = (t.per_percent.mason[k] - t.at.mason[k]) / kMorePercent;
  }
  return t;
}

/// At the thickness in force, then at those of Cubic::kAt.
std::vector<Tangent> tangents(const RangesInput& input, const std::vector<Thicker>& thicker) {
  const std::vector<works::Labour>& of_works = input.works->labour;
  const works::Platform platform = movedBy(of_works);
  Project plain = input.project;
  plain.lining.customary = {};
  std::vector<Tangent> all{tangent(plain, input.geometry, input.quantities, platform, of_works)};
  for (const Thicker& t : thicker) {
    works::Platform moved = platform;
    moved.spoil_bank_m3 += t.geometry.pitVolume() - input.geometry.pitVolume();
    all.push_back(tangent(t.project, t.geometry, t.quantities, moved, of_works));
  }
  return all;
}

}  // namespace

std::vector<Thicker> atThicknesses(const Project& project) {
  std::vector<Thicker> all;
  for (const double factor : Cubic::kAt) {
    Project thicker = project;
    thicker.lining.customary = {};
    for (Coat& coat : thicker.lining.coats) coat.thickness_m *= factor;
    const geometry::TankGeometry geometry(thicker.tank, thicker.lining);
    lining::Quantities quantities = lining::quantities(geometry, thicker);
    all.push_back({std::move(thicker), geometry, std::move(quantities)});
  }
  return all;
}

DrawnLabour::DrawnLabour(const RangesInput& input, const std::vector<Thicker>& thicker)
    : unevenness_percent_(input.project.lining.unevenness_percent) {
  if (!input.works || !input.project.works) return;
  typical_person_ = input.works->person_days;
  typical_mason_ = input.works->mason_days;
  const std::vector<Tangent> at = tangents(input, thicker);
  const auto cubic = [&](DaySums Tangent::*which, std::array<double, kKinds> DaySums::*who, std::size_t k) {
    const auto value = [&](std::size_t place) { return (at[place].*which.*who)[k]; };
    return Cubic(value(0), {value(1), value(2), value(3)});
  };
  const auto days = [&](std::array<double, kKinds> DaySums::*who, std::size_t k) {
    return Days{(at[0].at.*who)[k], cubic(&Tangent::at, who, k), cubic(&Tangent::per_percent, who, k)};
  };
  for (std::size_t k = 0; k < kKinds; ++k) {
    person_[k] = days(&DaySums::person, k);
    mason_[k] = days(&DaySums::mason, k);
  }
}

double DrawnLabour::sum(const std::array<Days, kKinds>& kinds, double typical, const Factors& factors) const {
  const double over = factors[static_cast<std::size_t>(RangedInput::thickness)] - 1;
  const double more = unevenness_percent_ * (factors[static_cast<std::size_t>(RangedInput::unevenness)] - 1);
  const std::array<double, kKinds> rate{factors[static_cast<std::size_t>(RangedInput::digging)],
                                        factors[static_cast<std::size_t>(RangedInput::plastering)], 1};
  for (std::size_t k = 0; k < kKinds; ++k)
    typical += rate[k] * (kinds[k].days(over) + more * kinds[k].per_percent(over)) - kinds[k].typical;
  return typical;
}

DrawnDays DrawnLabour::operator()(const Factors& factors) const {
  return {sum(person_, typical_person_, factors), sum(mason_, typical_mason_, factors)};
}

}  // namespace core::cost
