#include "core/exchange/works_json.h"

#include "core/exchange/json_values.h"

#include <array>
#include <utility>

namespace core::exchange {
namespace {

const char* clockToken(works::Clock clock) {
  return clock == works::Clock::working ? "working" : "calendar";
}

const char* linkToken(works::LinkKind kind) {
  constexpr std::array kTokens{"finish_start", "start_start", "finish_finish", "start_finish"};
  return kTokens.at(static_cast<std::size_t>(kind));
}

Json labour(const works::Labour& l) {
  return {{"task", l.task},
          {"days", number(l.days)},
          {"skill", l.skill},
          {"low_days", number(l.low_days)},
          {"high_days", number(l.high_days)},
          {"mason_days", number(l.mason_days)},
          {"quantity", number(l.quantity)},
          {"unit", l.unit},
          {"rate", number(l.rate)},
          {"source", l.source}};
}

Json task(const works::Task& t) {
  Json json = {{"id", t.id},
               {"start", date(t.start)},
               {"finish", date(t.finish)},
               {"days", t.days},
               {"crew", t.crew},
               {"labourers", t.by_skill.labourers},
               {"masons", t.by_skill.masons},
               {"wetters", t.by_skill.wetters},
               {"work_days", number(t.work_days)},
               {"clock", clockToken(t.clock)},
               {"start_in_day", number(t.start_in_day)},
               {"float_days", number(t.float_days)},
               {"free_float_days", number(t.free_float_days)},
               {"critical", t.is_critical},
               {"mark", t.is_mark}};
  if (t.not_before) json["not_before"] = date(t.not_before);
  return json;
}

Json link(const works::TaskLink& l) {
  return {{"from", l.from},
          {"to", l.to},
          {"kind", linkToken(l.kind)},
          {"lag_days", number(l.lag_days)},
          {"lag_clock", clockToken(l.lag_clock)}};
}

Json dayLoad(const works::DayLoad& d) {
  return {{"date", date(d.date)}, {"labourers", d.labourers},         {"masons", d.masons},
          {"wetters", d.wetters}, {"wetting_l", number(d.wetting_l)}, {"worked", d.is_worked}};
}

Json sizeForCrew(const std::optional<works::SizeForCrew>& size) {
  if (!size) return nullptr;
  return {{"plan_factor", number(size->plan_factor)},
          {"length_m", number(size->length_m)},
          {"width_m", number(size->width_m)},
          {"full_volume_m3", number(size->full_volume_m3)}};
}

Json coatCheck(const works::CoatCheck& c) {
  return {{"coat", c.coat},
          {"people", c.people},
          {"needed", c.needed},
          {"masons", c.masons},
          {"masons_needed", c.masons_needed},
          {"enough", c.is_enough()},
          {"person_days", number(c.person_days)},
          {"hours", number(c.hours)},
          {"batches", c.batches},
          {"batches_per_hour_needed", number(c.batches_per_hour_needed)},
          {"batches_per_hour_possible", number(c.batches_per_hour_possible)},
          {"mixing_places_needed", c.mixing_places_needed},
          {"minutes_to_place_batch", number(c.minutes_to_place_batch)},
          {"minutes_to_place_half_batch", number(c.minutes_to_place_half_batch)},
          {"placing_minutes", number(c.placing_minutes)},
          {"bags", number(c.bags)},
          {"water_l", number(c.water_l)},
          {"sacks", c.sacks},
          {"size", sizeForCrew(c.size)}};
}

Json fillDay(const works::FillDay& d) {
  return {{"date", date(d.date)},
          {"inflow_m3", number(d.inflow_m3)},
          {"lost_m3", number(d.lost_m3)},
          {"volume_m3", number(d.volume_m3)},
          {"level_m", number(d.level_m)},
          {"bare_wall_m2", number(d.bare_wall_m2)},
          {"wetting_l", number(d.wetting_l)}};
}

Json wallBand(const works::WallBand& b) {
  return {{"from_m", number(b.from_m)},
          {"to_m", number(b.to_m)},
          {"area_m2", number(b.area_m2)},
          {"wet_from", date(b.wet_from)},
          {"covered_on", date(b.covered_on)},
          {"wet_until", date(b.wet_until)},
          {"days", b.days}};
}

Json filling(const works::Filling& f) {
  return {{"inflow_from", f.inflow_from},
          {"inflow_m3_day", number(f.inflow_m3_day)},
          {"start", date(f.start)},
          {"latest_start", date(f.latest_start)},
          {"full_on", date(f.full_on)},
          {"held_back", f.is_held_back},
          {"wetting_after_cure_l", number(f.wetting_after_cure_l)},
          {"carried_m3", number(f.carried_m3)},
          {"bands", listOf(f.bands, wallBand)},
          {"days", listOf(f.days, fillDay)}};
}

std::string weekId(const works::WeekChance& w) {
  return fmt::format("{:02}-{:02}", w.month, w.day);
}

Json week(const works::WeekChance& w) {
  return {{"id", weekId(w)},
          {"undisturbed_share", number(w.undisturbed)},
          {"rain_share", number(w.rain)},
          {"frost_share", number(w.frost)},
          {"heat_share", number(w.heat)}};
}

Json drying(const works::Drying& d) {
  return {{"coat", d.coat},
          {"air_c", number(d.air_c)},
          {"humidity_percent", number(d.humidity_percent)},
          {"wind_km_h", number(d.wind_km_h)},
          {"water_lost_kg_m2_h", number(d.kg_m2_h)}};
}

Json weatherWindow(const works::WeatherWindow& w) {
  const auto id = [&](int week) { return weekId(w.weeks.at(static_cast<std::size_t>(week))); };
  return {{"years", w.years},
          {"heavy_rain_mm", number(w.heavy_rain_mm)},
          {"chosen_week", id(w.chosen)},
          {"best_week", id(w.best)},
          {"best_coat", date(w.best_coat)},
          {"best_start", date(w.best_start)},
          {"weeks", listOf(w.weeks, week)},
          {"drying", listOf(w.drying, drying)}};
}

Json measured(const works::Measured& m, const char* unit) {
  return {{"count", m.count},         {"unit", unit},           {"median", number(m.median)},
          {"least", number(m.least)}, {"most", number(m.most)}, {"entered", number(m.entered)}};
}

}  // namespace

void putWorks(Json& root, const works::Works& works) {
  root["labour"] = listOf(works.labour, labour);
  root["schedule"] = listOf(works.schedule, task);
  root["person_days"] = number(works.person_days);
  root["mason_days"] = number(works.mason_days);
  root["coat_crews"] = listOf(works.coat_checks, coatCheck);
  root["digging_days"] = {{"by_norm", number(works.digging_days_by_norm)},
                          {"by_practice", number(works.digging_days_by_practice)}};
  root["links"] = listOf(works.links, link);
  root["people_by_day"] = listOf(works.days, dayLoad);
  if (works.filling) root["filling"] = filling(*works.filling);
  if (works.window) root["weather_window"] = weatherWindow(*works.window);
}

Json recordsJson(const works::Calibration& calibration) {
  using Entry = std::pair<const char*, std::optional<works::Measured> works::Calibration::*>;
  using C = works::Calibration;
  constexpr const char* kPerM3 = "person_day/m3";
  Json json = {{"in_force", calibration.in_force}};
  if (calibration.dry_to_wet) json["dry_to_wet"] = measured(*calibration.dry_to_wet, "1");
  for (const auto& [id, member] : {Entry{"digging", &C::digging}, Entry{"ramming", &C::ramming},
                                   Entry{"stone_bed", &C::stone_bed}, Entry{"mixing", &C::mixing}})
    if (calibration.*member) json[id] = measured(*(calibration.*member), kPerM3);
  if (calibration.spreading) json["spreading"] = measured(*calibration.spreading, "person_day/m2");
  return json.size() > 1 ? json : Json(nullptr);
}

}  // namespace core::exchange
