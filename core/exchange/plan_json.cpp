#include "core/exchange/plan_json.h"

#include "core/exchange/cost_json.h"
#include "core/exchange/delivery_json.h"
#include "core/exchange/json_leaves.h"
#include "core/exchange/json_values.h"
#include "core/exchange/notes_json.h"
#include "core/exchange/plan_leaves.h"
#include "core/exchange/site_json.h"
#include "core/exchange/water_json.h"
#include "core/exchange/works_json.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace core::exchange {
namespace {

constexpr double kWholeBag = 1;

Json tank(const TankFigures& t, const geometry::Outline& outline) {
  return {{"brim_volume_m3", number(t.brim_volume_m3)},
          {"full_volume_m3", number(t.full_volume_m3)},
          {"usable_volume_m3", number(t.usable_volume_m3)},
          {"dead_volume_m3", number(t.dead_volume_m3)},
          {"full_surface_m2", number(t.full_surface_m2)},
          {"floor_m2", number(t.floor_m2)},
          {"floor_perimeter_m", number(outline.perimeter(0))},
          {"corner_coefficient", number(outline.cornerCoefficient())},
          {"wall_m2", number(t.wall_m2)},
          {"rim_length_m", number(t.rim_length_m)},
          {"brim_area_m2", number(t.brim_area_m2)},
          {"clear_floor_length_m", number(t.clear_floor_length_m)},
          {"clear_floor_width_m", number(t.clear_floor_width_m)},
          {"clear_rim_length_m", number(t.clear_rim_length_m)},
          {"clear_rim_width_m", number(t.clear_rim_width_m)},
          {"depth_m", number(t.depth_m)},
          {"full_level_m", number(t.full_level_m)},
          {"dead_level_m", number(t.dead_level_m)}};
}

Json earthwork(const works::Earthwork& e) {
  return {{"pit_volume_m3", number(e.pit_volume_m3)},
          {"pit_top_length_m", number(e.pit_top_length_m)},
          {"pit_top_width_m", number(e.pit_top_width_m)},
          {"pit_floor_length_m", number(e.pit_floor_length_m)},
          {"pit_floor_width_m", number(e.pit_floor_width_m)},
          {"pit_depth_m", number(e.pit_depth_m)},
          {"bench_cut_m3", number(e.bench_cut_m3)},
          {"bench_fill_m3", number(e.bench_fill_m3)},
          {"topsoil_m3", number(e.topsoil_m3)},
          {"spoil_bank_m3", number(e.spoil_bank_m3)},
          {"swell_percent", number(e.swell_percent)},
          {"spoil_loose_m3", number(e.spoil_loose_m3)}};
}

Json layer(const geometry::Layer& l) {
  return {{"id", l.id},
          {"thickness_m", number(l.thickness_m)},
          {"volume_m3", number(l.volume_m3)},
          {"area_m2", number(l.area_m2)}};
}

Json mix(const lining::Mix& m) {
  return {{"soil_m3", number(m.soil_m3)},
          {"sand_m3", number(m.sand_m3)},
          {"cement_m3", number(m.cement_m3)},
          {"cement_kg", number(m.cement_kg)}};
}

Json coat(const lining::CoatQuantities& c) {
  return {{"coat", c.coat},
          {"thickness_m", number(c.thickness_m)},
          {"face_m2", number(c.face_m2)},
          {"shell_m3", number(c.shell_m3)},
          {"area_times_thickness_m3", number(c.area_times_thickness_m3)},
          {"net", mix(c.net)},
          {"net_by_area", mix(c.by_area)},
          {"placed_m3", number(c.placed_m3)},
          {"to_mix", mix(c.to_mix)},
          {"clay_percent", number(c.clay_percent)}};
}

Json material(const lining::Material& m) {
  return {{"id", m.id}, {"net", number(m.net)}, {"order", number(m.order)}, {"unit", m.unit}};
}

Json batch(const lining::Batch& b) {
  return {{"coat", b.coat},
          {"bags", number(b.bags)},
          {"soil_m3", number(b.soil_m3)},
          {"sand_m3", number(b.sand_m3)},
          {"cement_kg", number(b.cement_kg)},
          {"yield_m3", number(b.yield_m3)},
          {"covers_m2", number(b.covers_m2)},
          {"count", b.count},
          {"soil_boxes", number(b.soil_boxes)},
          {"sand_boxes", number(b.sand_boxes)},
          {"soil_pans", number(b.soil_pans)},
          {"sand_pans", number(b.sand_pans)},
          {"soil_buckets", number(b.soil_buckets)},
          {"sand_buckets", number(b.sand_buckets)}};
}

enum class Batches { whole_bag, part_bag };

Json batches(const std::vector<lining::Batch>& all, Batches wanted) {
  Json list = Json::array();
  for (const lining::Batch& b : all) {
    if ((b.bags == kWholeBag) == (wanted == Batches::whole_bag)) list.push_back(batch(b));
  }
  return list;
}

Json billLine(const lining::BillLine& l) {
  return {{"id", l.id},
          {"unit", l.unit},
          {"customary", number(l.customary)},
          {"shell", number(l.shell)},
          {"by_area", number(l.by_area)},
          {"shell_ratio", number(l.shell_ratio)},
          {"by_area_ratio", number(l.by_area_ratio)}};
}

Json parts(const Coat& c) {
  return {{"soil", number(c.soil)}, {"sand", number(c.sand)}, {"cement", number(c.cement)}};
}

Json answers(const lining::BillAnswers& a) {
  return {{"cement_kg", number(a.cement_kg)},
          {"cement_by_area_kg", number(a.cement_by_area_kg)},
          {"thickness_factor", number(a.thickness_factor)},
          {"thickness_by_area_factor", number(a.thickness_by_area_factor)},
          {"thickness_m", numbers(a.thickness_m)},
          {"thickness_by_area_m", numbers(a.thickness_by_area_m)},
          {"filler_factor", number(a.filler_factor)},
          {"filler_by_area_factor", number(a.filler_by_area_factor)},
          {"mix", listOf(a.mix, parts)},
          {"mix_by_area", listOf(a.mix_by_area, parts)}};
}

Json customary(const std::optional<lining::BillComparison>& bill) {
  if (!bill) return nullptr;
  return {{"lines", listOf(bill->lines, billLine)},
          {"bill_soil_per_sand", number(bill->bill_soil_per_sand)},
          {"mix_soil_per_sand", number(bill->mix_soil_per_sand)},
          {"cement", bill->cement ? answers(*bill->cement) : Json(nullptr)}};
}

Json dipMark(const DipMark& mark) {
  return {{"level_m", number(mark.level_m)}, {"volume_m3", number(mark.volume_m3)}};
}

Json peg(const geometry::Peg& p) {
  return {{"id", p.id},
          {"kind", p.kind},
          {"x_m", number(p.at_m.x())},
          {"y_m", number(p.at_m.y())},
          {"z_m", number(p.at_m.z())}};
}

Json tie(const geometry::Tie& t) {
  return {{"from", t.from}, {"to", t.to}, {"kind", t.kind}, {"length_m", number(t.length_m)}};
}

Json levelMark(const geometry::LevelMark& m) {
  return {{"id", m.id}, {"below_ground_m", number(m.below_ground_m)}};
}

Json batterMark(const geometry::BatterMark& m) {
  return {{"below_ground_m", number(m.below_ground_m)}, {"in_from_edge_m", number(m.in_from_edge_m)}};
}

Json settingOut(const geometry::SettingOut& s) {
  return {{"pegs", listOf(s.pegs, peg)},
          {"ties", listOf(s.ties, tie)},
          {"levels", listOf(s.levels, levelMark)},
          {"batter", listOf(s.batter, batterMark)}};
}

std::string_view severity(Severity s) {
  switch (s) {
    case Severity::note:
      return "note";
    case Severity::caution:
      return "caution";
    case Severity::stop:
      break;
  }
  return "stop";
}

Json finding(const Finding& f) {
  Json values = Json::object();
  for (const FindingValue& value : f.values) {
    values[value.name] = value.token.empty() ? number(value.number) : Json(value.token);
  }
  Json at = nullptr;
  if (f.at_m) at = numbers({f.at_m->x(), f.at_m->y(), f.at_m->z()});
  return {{"code", f.code},   {"severity", severity(f.severity)},
          {"values", values}, {"source", f.source},
          {"field", f.field}, {"at_m", at}};
}

/// All of the plan but the map, which is reckoned for the file only.
Json planJson(const Plan& plan) {
  const lining::Quantities& quantities = plan.quantities;
  Json root = {{"format", "tankwright-plan"}, {"version", 1}};
  root["tank"] = tank(plan.tank, plan.geometry.outline());
  root["earthwork"] = earthwork(plan.earthwork);
  root["layers"] = listOf(plan.layers, layer);
  root["materials"] = listOf(quantities.materials, material);
  root["batches"] = batches(quantities.batches, Batches::whole_bag);
  if (plan.works) putWorks(root, *plan.works);
  if (Json records = recordsJson(plan.calibration); !records.is_null()) root["records"] = std::move(records);
  if (plan.cost) root["cost"] = costJson(*plan.cost);
  if (plan.ranges) root["ranges"] = rangesJson(*plan.ranges);
  if (!plan.options.empty()) root["options"] = listOf(plan.options, optionJson);
  root["site"] = siteJson(plan.site);
  if (Json tests = fieldTestsJson(plan.field_tests); !tests.is_null()) root["field_tests"] = std::move(tests);
  if (plan.delivery) root["delivery"] = deliveryJson(*plan.delivery);
  if (plan.water) root["water"] = waterJson(*plan.water);
  root["part_bag_batches"] = batches(quantities.batches, Batches::part_bag);
  root["coats"] = listOf(quantities.coats, coat);
  root["customary"] = customary(quantities.customary);
  root["dip_stick"] = listOf(plan.dip_stick, dipMark);
  root["setting_out"] = settingOut(plan.setting_out);
  root["findings"] = listOf(plan.findings, finding);
  return root;
}

}  // namespace

std::string planText(const Plan& plan) {
  Json root = planJson(plan);
  if (plan.water) root["water"]["map"] = waterMapJson(*plan.water);
  return prettyText(root);
}

std::vector<PlanLeaf> planLeaves(const Plan& plan) {
  return leavesOf(planJson(plan));
}

}  // namespace core::exchange
