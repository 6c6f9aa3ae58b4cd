#include "core/lining/bill.h"

#include <cmath>
#include <functional>

namespace core::lining {
namespace {

using geometry::TankGeometry;

constexpr double kMostFactor = 50;  // answers beyond this are no answers

/// Cement of all coats when every thickness is multiplied by `factor`, by the exact shells [kg].
double cementAtThickness(const Project& project, double factor) {
  Project scaled = project;
  for (Coat& coat : scaled.lining.coats) coat.thickness_m *= factor;
  const TankGeometry geometry(scaled.tank, scaled.lining);
  double kg = 0;
  std::size_t coat = 0;
  for (const geometry::Layer& layer : geometry.layers()) {
    if (layer.id == "stone_bed") continue;
    const bool is_coat = geometry::isCoat(layer);
    const Coat& parts =
        is_coat ? scaled.lining.coats[coat++] : scaled.lining.coats.back();  // cove, rim: last coat's mix
    kg += mixFor(layer.volume_m3, parts, scaled.lining).cement_kg;
  }
  return kg;
}

/// The coats with soil and sand per cement multiplied by `factor`.
std::vector<Coat> leaner(std::vector<Coat> coats, double factor) {
  for (Coat& coat : coats) {
    coat.soil *= factor;
    coat.sand *= factor;
  }
  return coats;
}

double cementAtFiller(const Quantities& q, const Lining& lining, double CoatQuantities::*volume,
                      double factor) {
  const std::vector<Coat> coats = leaner(lining.coats, factor);
  double kg = 0;
  for (std::size_t k = 0; k < coats.size(); ++k) kg += mixFor(q.coats[k].*volume, coats[k], lining).cement_kg;
  return kg;
}

/// x in (0, most] with f(x) = wanted for a monotone f, by bisection; nothing when f does not reach it.
std::optional<double> solve(const std::function<double(double)>& f, double wanted, double most) {
  double low = 0;
  double high = most;
  const bool rising = f(1) < f(2);
  const auto too_big = [&](double x) { return (f(x) > wanted) == rising; };
  if (too_big(1e-9) || !too_big(high)) return {};
  for (int i = 0; i < 200 && high - low > 1e-13 * high; ++i) {
    const double x = (low + high) / 2;
    (too_big(x) ? high : low) = x;
  }
  return (low + high) / 2;
}

/// Largest factor on the coats that still leaves sound geometry.
double mostThicknessFactor(const Project& project) {
  double factor = kMostFactor;
  Lining lining = project.lining;
  for (int i = 0; i < 60; ++i, factor *= 0.9) {
    lining.coats = project.lining.coats;
    for (Coat& coat : lining.coats) coat.thickness_m *= factor;
    if (geometry::check(project.tank, lining).empty()) return factor;
  }
  return 1;
}

/// Whether the coats times a factor leave sound geometry; thin coats can starve the pit floor under a steep
/// batter.
bool soundAtThickness(const Project& project, double factor) {
  Lining lining = project.lining;
  for (Coat& coat : lining.coats) coat.thickness_m *= factor;
  return geometry::check(project.tank, lining).empty();
}

std::vector<double> thicknesses(const Lining& lining, const std::optional<double>& factor) {
  std::vector<double> t;
  if (!factor) return t;
  for (const Coat& coat : lining.coats) t.push_back(coat.thickness_m * *factor);
  return t;
}

BillAnswers answers(const Quantities& q, const Project& project, double customary_kg) {
  const Lining& lining = project.lining;
  BillAnswers a{};
  for (const CoatQuantities& coat : q.coats) {
    a.cement_kg += coat.net.cement_kg;
    a.cement_by_area_kg += coat.by_area.cement_kg;
  }
  if (a.cement_by_area_kg > 0) a.thickness_by_area_factor = customary_kg / a.cement_by_area_kg;
  a.thickness_factor = solve([&](double f) { return cementAtThickness(project, f); }, customary_kg,
                             mostThicknessFactor(project));
  if (a.thickness_factor && !soundAtThickness(project, *a.thickness_factor)) a.thickness_factor.reset();
  a.filler_factor = solve([&](double f) { return cementAtFiller(q, lining, &CoatQuantities::shell_m3, f); },
                          customary_kg, kMostFactor);
  a.filler_by_area_factor =
      solve([&](double f) { return cementAtFiller(q, lining, &CoatQuantities::area_times_thickness_m3, f); },
            customary_kg, kMostFactor);
  a.thickness_m = thicknesses(lining, a.thickness_factor);
  a.thickness_by_area_m = thicknesses(lining, a.thickness_by_area_factor);
  if (a.filler_factor) a.mix = leaner(lining.coats, *a.filler_factor);
  if (a.filler_by_area_factor) a.mix_by_area = leaner(lining.coats, *a.filler_by_area_factor);
  return a;
}

void addLine(BillComparison& bill, const char* id, const char* unit, const std::optional<double>& customary,
             double shell, double by_area) {
  if (!customary) return;
  const double per = *customary > 0 ? 1 / *customary : 0;
  bill.lines.push_back({id, unit, *customary, shell, by_area, shell * per, by_area * per});
}

}  // namespace

std::optional<BillComparison> compareBill(const TankGeometry& geometry, const Quantities& computed,
                                          const Project& project) {
  const CustomaryBill& given = project.lining.customary;
  if (!given.soil_m3 && !given.sand_m3 && !given.stone_m3 && !given.cement_kg) return {};
  Mix shell;
  Mix by_area;
  for (const CoatQuantities& coat : computed.coats) {
    shell.soil_m3 += coat.net.soil_m3;
    shell.sand_m3 += coat.net.sand_m3;
    shell.cement_kg += coat.net.cement_kg;
    by_area.soil_m3 += coat.by_area.soil_m3;
    by_area.sand_m3 += coat.by_area.sand_m3;
    by_area.cement_kg += coat.by_area.cement_kg;
  }
  BillComparison bill;
  addLine(bill, "soil", "m3", given.soil_m3, shell.soil_m3, by_area.soil_m3);
  addLine(bill, "sand", "m3", given.sand_m3, shell.sand_m3, by_area.sand_m3);
  addLine(bill, "stone", "m3", given.stone_m3, computed.stone_net_m3,
          geometry.floorArea() * geometry.stoneBed());
  addLine(bill, "cement", "kg", given.cement_kg, shell.cement_kg, by_area.cement_kg);
  if (given.cement_kg && *given.cement_kg > 0) bill.cement = answers(computed, project, *given.cement_kg);
  if (given.soil_m3 && given.sand_m3 && *given.sand_m3 > 0)
    bill.bill_soil_per_sand = *given.soil_m3 / *given.sand_m3;
  if (shell.sand_m3 > 0) bill.mix_soil_per_sand = shell.soil_m3 / shell.sand_m3;
  return bill;
}

}  // namespace core::lining
