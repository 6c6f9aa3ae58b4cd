#include "core/exchange/cost_json.h"

#include "core/exchange/field_json.h"
#include "core/exchange/json_values.h"

namespace core::exchange {
namespace {

Json carriage(const std::optional<cost::Carriage>& c) {
  if (!c) return nullptr;
  return {{"by", choiceOf("prices.items[].carried_by", c->by)},
          {"weight_kg", number(c->kg)},
          {"loads", c->loads},
          {"loads_per_piece", c->loads_per_piece},
          {"days", number(c->days)},
          {"amount", number(c->amount)}};
}

Json costLine(const cost::CostLine& l) {
  return {{"item", l.item},
          {"group", l.group},
          {"unit", l.unit},
          {"quantity", number(l.quantity)},
          {"price", number(l.price)},
          {"amount", number(l.amount)},
          {"own", number(l.own)},
          {"cash", number(l.cash)},
          {"carriage", carriage(l.carriage)}};
}

Json liningCost(const cost::LiningCost& l) {
  return {{"lining", choiceOf("prices.linings[].lining", l.lining)},
          {"price", number(l.price)},
          {"earth", number(l.earth)},
          {"capital", number(l.capital)},
          {"life_years", number(l.life_years)},
          {"recovery_factor", number(l.recovery)},
          {"upkeep_year", number(l.upkeep_year)},
          {"annual", number(l.annual)},
          {"annual_per_m3", number(l.annual_per_m3)}};
}

Json dayMoney(const cost::DayMoney& d) {
  return {{"date", date(d.date)},
          {"goods", number(d.goods)},
          {"wages", number(d.wages)},
          {"together", number(d.together)}};
}

/// Months from 1.
Json months(const std::vector<int>& from_0) {
  return listOf(from_0, [](int month) { return month + 1; });
}

void putBill(Json& json, const cost::Bill& bill) {
  json["lines"] = listOf(bill.lines, costLine);
  json["materials"] = number(bill.materials);
  json["labour"] = number(bill.labour);
  json["other"] = number(bill.other);
  json["carriage"] = number(bill.carriage);
  json["contingency"] = number(bill.contingency);
  json["total"] = number(bill.total);
  json["own"] = number(bill.own);
  json["cash"] = number(bill.cash);
  json["missing"] = bill.missing;
}

const char* unitOfOutcome(std::string_view outcome) {
  if (outcome == "cement_bags") return "bag";
  if (outcome == "person_days") return "person_day";
  return outcome == "fill_days" ? "day" : "money";
}

Json driver(const cost::Driver& d) {
  return {{"input", choiceOf("ranges.inputs[].input", d.input)},
          {"share", number(d.share)},
          {"correlation", number(d.correlation)}};
}

Json spread(const cost::Spread& s) {
  return {{"outcome", s.outcome},         {"unit", unitOfOutcome(s.outcome)},
          {"typical", number(s.typical)}, {"p10", number(s.p10)},
          {"p50", number(s.p50)},         {"p90", number(s.p90)},
          {"mean", number(s.mean)},       {"least", number(s.least)},
          {"most", number(s.most)},       {"drivers", listOf(s.drivers, driver)}};
}

void putFigures(Json& json, const OptionResult& r) {
  json["full_volume_m3"] = number(r.full_volume_m3);
  json["usable_volume_m3"] = number(r.usable_volume_m3);
  json["pit_volume_m3"] = number(r.pit_volume_m3);
  json["length_m"] = number(r.length_m);
  json["width_m"] = number(r.width_m);
  json["depth_m"] = number(r.depth_m);
  json["cement_bags"] = number(r.cement_bags);
  json["sand_m3"] = number(r.sand_m3);
  json["soil_m3"] = number(r.soil_m3);
  json["stone_m3"] = number(r.stone_m3);
  json["person_days"] = number(r.person_days);
  json["people_on_coat"] = whole(r.people_on_coat);
  json["start"] = date(r.start);
  json["finish"] = date(r.finish);
  json["cost"] = number(r.cost);
  json["cash"] = number(r.cash);
  json["per_m3_stored"] = number(r.per_m3_stored);
  json["years_in_ten"] = number(r.years_in_ten);
  json["dry_days_mean"] = number(r.dry_days_mean);
  json["delivered_m3"] = number(r.delivered_m3);
  json["stops"] = r.stops;
  json["cautions"] = r.cautions;
}

}  // namespace

Json costJson(const cost::CostPlan& plan) {
  Json json = Json::object();
  putBill(json, plan.bill);
  json["per_m3_stored"] = number(plan.per_m3_stored);
  json["delivered_m3"] = number(plan.delivered_m3);
  json["dry_months"] = months(plan.dry_months);
  json["annual"] = number(plan.annual);
  json["per_m3_delivered"] = number(plan.per_m3_delivered);
  json["linings"] = listOf(plan.linings, liningCost);
  json["days"] = listOf(plan.days, dayMoney);
  return json;
}

Json rangesJson(const cost::RangesPlan& plan) {
  return {{"draws", plan.draws}, {"spreads", listOf(plan.spreads, spread)}};
}

Json optionJson(const OptionResult& result) {
  Json json = {{"letter", result.letter}, {"name", result.name}, {"changes", Json::object()}};
  for (const FieldChange& change : result.changes) json["changes"][change.path] = jsonOf(change.value);
  if (result.problems.empty()) {
    putFigures(json, result);
    return json;
  }
  const auto problem = [](const Problem& p) { return Json{{"code", p.code}, {"path", p.path}}; };
  json["problems"] = listOf(result.problems, problem);
  return json;
}

}  // namespace core::exchange
