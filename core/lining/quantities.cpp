#include "core/lining/quantities.h"

#include "core/lining/bill.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace core::lining {
namespace {

constexpr double kLitresPerM3 = 1000;

double plus(double percent) {
  return 1 + percent / 100;
}

/// Cove and rim are plastered with the last coat's mix.
double extraForLastCoat(const geometry::TankGeometry& geometry) {
  double sum = 0;
  for (const geometry::Layer& layer : geometry.layers()) {
    if (layer.id == "cove" || layer.id == "rim") sum += layer.volume_m3;
  }
  return sum;
}

std::vector<CoatQuantities> coatQuantities(const geometry::TankGeometry& geometry, const Project& project) {
  const Lining& lining = project.lining;
  std::vector<const geometry::Layer*> shells;
  for (const geometry::Layer& layer : geometry.layers()) {
    if (geometry::isCoat(layer)) shells.push_back(&layer);
  }
  std::vector<CoatQuantities> coats;
  for (std::size_t k = 0; k < lining.coats.size(); ++k) {
    const Coat& parts = lining.coats[k];
    const bool last = k + 1 == lining.coats.size();
    CoatQuantities q{};
    q.coat = static_cast<int>(k) + 1;
    q.thickness_m = parts.thickness_m;
    q.face_m2 = shells[k]->area_m2;
    q.shell_m3 = shells[k]->volume_m3 + (last ? extraForLastCoat(geometry) : 0);
    q.area_times_thickness_m3 = geometry.areaTimesThickness(k);
    q.net = mixFor(q.shell_m3, parts, lining);
    q.by_area = mixFor(q.area_times_thickness_m3, parts, lining);
    // only coat 1 lies against dug earth
    q.placed_m3 = q.shell_m3 * (k == 0 ? plus(lining.unevenness_percent) : 1) * plus(lining.waste_percent);
    q.to_mix = mixFor(q.placed_m3, parts, lining);
    if (project.site.clay_percent)
      q.clay_percent = *project.site.clay_percent * parts.soil / (parts.soil + parts.sand);
    coats.push_back(q);
  }
  return coats;
}

Batch batchFor(const CoatQuantities& q, const Coat& parts, const Lining& lining, double bags) {
  Batch b{};
  b.coat = q.coat;
  b.bags = bags;
  b.cement_kg = bags * lining.cement_bag_kg;
  const double part_m3 = b.cement_kg / lining.cement_loose_kg_m3 / parts.cement;
  b.soil_m3 = parts.soil * part_m3;
  b.sand_m3 = parts.sand * part_m3;
  b.yield_m3 = (parts.soil + parts.sand + parts.cement) * part_m3 / lining.dry_to_wet;
  b.covers_m2 = b.yield_m3 / q.thickness_m;
  b.count = static_cast<int>(std::ceil(q.placed_m3 / b.yield_m3 - 1e-9));
  const auto measures = [](double m3, double litres) { return m3 * kLitresPerM3 / litres; };
  b.soil_boxes = measures(b.soil_m3, lining.gauge_box_l);
  b.sand_boxes = measures(b.sand_m3, lining.gauge_box_l);
  b.soil_pans = measures(b.soil_m3, lining.pan_l);
  b.sand_pans = measures(b.sand_m3, lining.pan_l);
  b.soil_buckets = measures(b.soil_m3, lining.bucket_l);
  b.sand_buckets = measures(b.sand_m3, lining.bucket_l);
  return b;
}

double upToTenth(double value) {
  return std::ceil(value * 10 - 1e-9) / 10;
}

Mix total(const std::vector<CoatQuantities>& coats, Mix CoatQuantities::*which) {
  Mix sum;
  for (const CoatQuantities& q : coats) {
    const Mix& m = q.*which;
    sum.soil_m3 += m.soil_m3;
    sum.sand_m3 += m.sand_m3;
    sum.cement_m3 += m.cement_m3;
    sum.cement_kg += m.cement_kg;
  }
  return sum;
}

struct Water {
  double mixing_net, mixing_order, curing;  // [L]
};

Water water(const std::vector<CoatQuantities>& coats, const Lining& lining) {
  Water w{};
  for (std::size_t k = 0; k < coats.size(); ++k) {
    w.mixing_net += coats[k].shell_m3 * lining.mixing_water_l_per_m3;
    w.mixing_order += coats[k].placed_m3 * lining.mixing_water_l_per_m3;
    w.curing += coats[k].face_m2 * lining.curing_water_l_per_m2_day * lining.coats[k].cure_days;
  }
  return w;
}

std::vector<Material> materials(const Quantities& q, const Lining& lining) {
  const Mix net = total(q.coats, &CoatQuantities::net);
  const Mix mixed = total(q.coats, &CoatQuantities::to_mix);
  const double sieved = 1 / (1 - lining.sieving_loss_percent / 100);
  const double bags = std::ceil(mixed.cement_kg / lining.cement_bag_kg - 1e-9);
  const double stone = q.stone_net_m3 * plus(lining.unevenness_percent) * plus(lining.waste_percent) *
                       lining.stone_loose_factor;
  const Water w = water(q.coats, lining);
  double face = 0;
  for (const CoatQuantities& c : q.coats) face = std::max(face, c.face_m2);
  const double sacks = face / lining.sack_covers_m2;  // one set, used again for each coat

  return {
      {"cement", net.cement_kg, bags * lining.cement_bag_kg, "kg"},
      {"cement_bags", net.cement_kg / lining.cement_bag_kg, bags, "bag"},
      {"soil", net.soil_m3, upToTenth(mixed.soil_m3 * sieved), "m3"},
      {"sand", net.sand_m3, upToTenth(mixed.sand_m3 * sieved * plus(lining.sand_bulking_percent)), "m3"},
      {"stone", q.stone_net_m3, upToTenth(stone), "m3"},
      {"water", w.mixing_net + w.curing, std::ceil(w.mixing_order + w.curing), "L"},
      {"mixing_water", w.mixing_net, std::ceil(w.mixing_order), "L"},
      {"curing_water", w.curing, std::ceil(w.curing), "L"},
      {"sacks", sacks, std::ceil(sacks * plus(lining.sack_spare_percent) - 1e-9), "piece"},
  };
}

}  // namespace

Mix mixFor(double placed_m3, const Coat& parts, const Lining& lining) {
  const double part_m3 = placed_m3 * lining.dry_to_wet / (parts.soil + parts.sand + parts.cement);
  const double cement_m3 = parts.cement * part_m3;
  return {parts.soil * part_m3, parts.sand * part_m3, cement_m3, cement_m3 * lining.cement_loose_kg_m3};
}

Quantities quantities(const geometry::TankGeometry& geometry, const Project& project) {
  Quantities q;
  q.coats = coatQuantities(geometry, project);
  for (const geometry::Layer& layer : geometry.layers()) {
    if (layer.id == "stone_bed") q.stone_net_m3 = layer.volume_m3;
  }
  q.materials = materials(q, project.lining);
  for (std::size_t k = 0; k < q.coats.size(); ++k) {
    for (const double bags : {1.0, 0.5}) {
      q.batches.push_back(batchFor(q.coats[k], project.lining.coats[k], project.lining, bags));
    }
  }
  q.customary = compareBill(geometry, q, project);
  return q;
}

double orderOf(const Quantities& quantities, std::string_view material_id) {
  for (const Material& material : quantities.materials) {
    if (material.id == material_id) return material.order;
  }
  throw std::logic_error("no material " + std::string(material_id));
}

}  // namespace core::lining
