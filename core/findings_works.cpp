#include "core/finding_list.h"
#include "core/project/field_access.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>

#include <fmt/format.h>

namespace core {
namespace {

using works::CoatCheck;
using works::Day;

constexpr double kPercent = 100;
constexpr double kFastDrying_kg_m2_h = 1.0;      // aci_305
constexpr double kFastDryingLean_kg_m2_h = 0.5;  // aci_305, lean and fine mixes
constexpr double kChanceLost = 0.10;             // own: the planned week is so much worse than the best one
constexpr int kRecordsWanted = 3;                // own
constexpr double kRecordsAgreeWithin = 0.10;     // own

/// With the size that the crew could do, where there is one.
std::vector<FindingValue> withSize(std::vector<FindingValue> values, const CoatCheck& c) {
  if (!c.size) return values;
  values.push_back(value("length_m", c.size->length_m, Unit::metre));
  values.push_back(value("width_m", c.size->width_m, Unit::metre));
  values.push_back(value("full_m3", c.size->full_volume_m3, Unit::cubic_metre));
  return values;
}

void crewOf(const CoatCheck& c, FindingList& out) {
  if (c.people < c.needed)
    out.caution("coat_crew_small",
                withSize({value("coat", c.coat), value("people", c.people, Unit::person),
                          value("needed", c.needed, Unit::person)},
                         c),
                "cpwd_plaster", "works.plasterers");
  if (c.masons < c.masons_needed)
    out.caution("works_masons_few",
                withSize({value("coat", c.coat), value("masons", c.masons, Unit::person),
                          value("needed", c.masons_needed, Unit::person)},
                         c),
                "cpwd_plaster", "works.masons");
}

void batchesOf(const CoatCheck& c, const Works& works, FindingList& out) {
  if (c.mixing_places_needed > works.mixing_places)
    out.caution("works_batches_slow",
                {value("coat", c.coat), value("needed_per_hour", c.batches_per_hour_needed),
                 value("possible_per_hour", c.batches_per_hour_possible),
                 value("places", c.mixing_places_needed, Unit::piece)},
                "own", "works.mixing_places");
  if (c.minutes_to_place_batch > c.placing_minutes)
    out.caution("works_batch_sets",
                {value("coat", c.coat), value("minutes", c.minutes_to_place_batch, Unit::minute),
                 value("half_minutes", c.minutes_to_place_half_batch, Unit::minute),
                 value("limit_minutes", c.placing_minutes, Unit::minute)},
                "memory", "works.placing_minutes");
}

/// People there for coats, and for everything else: as entered, or as wished for a task.
struct PeopleThere {
  int coats, others;
};

PeopleThere peopleThere(const Works& works) {
  PeopleThere there{works.plasterers, works.diggers};
  for (const TaskWish& wish : works.wishes) {
    if (wish.task == "carry_spoil") continue;  // apart from those who dig
    int& of = wish.task.starts_with("coat_") ? there.coats : there.others;
    of = std::max(of, wish.people.value_or(0));
  }
  return there;
}

/// More people on a day than there are: bars that were moved onto each other. Those who carry spoil are apart
/// from those who dig.
void peopleShort(const Project& project, const works::Works& works, FindingList& out) {
  const PeopleThere there = peopleThere(project.works.value());
  const works::Task* carry = works::findTask(works, "carry_spoil");
  for (const works::DayLoad& day : works.days) {
    const bool is_coat = std::any_of(works.schedule.begin(), works.schedule.end(), [&](const works::Task& t) {
      return t.id.starts_with("coat_") && t.start == day.date;
    });
    const bool is_carried = carry != nullptr && carry->start <= day.date && day.date <= carry->finish;
    const int most =
        is_coat ? std::max(there.coats, there.others) : there.others + (is_carried ? carry->crew : 0);
    if (day.people <= most) continue;
    return out.caution("works_people_short",
                       {token("date", access::dateText(day.date)), value("needed", day.people, Unit::person),
                        value("there", most, Unit::person)},
                       "user", "works.diggers");
  }
}

/// A coat that waits for the next one after its curing has ended.
void waitingCoats(const Project& project, const works::Works& works, FindingList& out) {
  constexpr int kWait_days = 2;  // own: from here on it is said
  for (std::size_t k = 1; k < project.lining.coats.size(); ++k) {
    const works::Task* cure = works::findTask(works, fmt::format("cure_{}", k));
    const works::Task* coat = works::findTask(works, fmt::format("coat_{}", k));
    const works::Task* next = works::findTask(works, fmt::format("coat_{}", k + 1));
    if (coat == nullptr || next == nullptr) continue;
    const int days = works::daysBetween(cure != nullptr ? cure->finish : coat->finish, next->start) - 1;
    if (days >= kWait_days)
      out.caution("works_coat_waits", {value("coat", static_cast<double>(k)), value("days", days, Unit::day)},
                  "is456_curing", "works.wishes");
  }
  if (project.works->wetting_people == 0)
    out.caution("works_nobody_wets", {}, "is456_curing", "works.wetting_people");
}

void filling(const works::Filling& filling, const Plan& plan, FindingList& out) {
  if (filling.inflow_from == "none")
    return out.note("works_fill_inflow_unknown", {}, "wocat_5684", "works.fill_inflow_l_per_day");
  if (filling.start > filling.latest_start)
    out.caution("works_fill_late",
                {token("start", access::dateText(filling.start)),
                 token("latest", access::dateText(filling.latest_start))},
                "wocat_5684", "works.fill_within_days");
  if (!filling.full_on && !filling.days.empty())
    out.caution("works_fill_never_full",
                {value("level_m", filling.days.back().level_m, Unit::metre),
                 value("full_m", plan.tank.full_level_m, Unit::metre)},
                "exact", "works.fill_inflow_l_per_day");
}

/// Walls that must stay wet beyond their curing, for the water does not rise fast enough.
void bareWalls(const works::Filling& filling, Day last_cure, FindingList& out) {
  if (filling.inflow_from == "none") return;
  Day until = last_cure;
  for (const works::WallBand& band : filling.bands) until = std::max(until, band.wet_until);
  const int days = works::daysBetween(last_cure, until);
  if (days <= 0) return;
  double most_l = 0;
  for (const works::FillDay& day : filling.days) {
    if (day.date > last_cure) most_l = std::max(most_l, day.wetting_l);
  }
  out.caution("works_walls_wet_long",
              {value("days", days, Unit::day), token("until", access::dateText(until)),
               value("l_per_day", most_l, Unit::litre_per_day),
               value("carried_m3", filling.carried_m3, Unit::cubic_metre)},
              "wocat_5684", "works.fill_inflow_l_per_day");
}

void weather(const works::WeatherWindow& window, const Project& project, FindingList& out) {
  const works::WeekChance& chosen = window.weeks.at(static_cast<std::size_t>(window.chosen));
  const works::WeekChance& best = window.weeks.at(static_cast<std::size_t>(window.best));
  if (best.undisturbed - chosen.undisturbed > kChanceLost)
    out.caution("works_weather_risk",
                {value("undisturbed_percent", chosen.undisturbed * kPercent, Unit::percent),
                 value("best_percent", best.undisturbed * kPercent, Unit::percent),
                 value("rain_percent", chosen.rain * kPercent, Unit::percent),
                 value("frost_percent", chosen.frost * kPercent, Unit::percent),
                 value("heat_percent", chosen.heat * kPercent, Unit::percent),
                 token("best_start", access::dateText(window.best_start))},
                "own", "works.start_date");
  for (const works::Drying& drying : window.drying) {
    const Coat& coat = project.lining.coats.at(static_cast<std::size_t>(drying.coat) - 1);
    constexpr double kLeanFillers = 4;  // soil and sand for one of cement
    const bool is_lean = coat.soil + coat.sand > kLeanFillers * coat.cement;
    const double limit = is_lean ? kFastDryingLean_kg_m2_h : kFastDrying_kg_m2_h;
    if (drying.kg_m2_h < limit) continue;
    out.note("works_coat_dries_fast",
             {value("coat", drying.coat), value("kg_m2_h", drying.kg_m2_h, Unit::kg_per_m2_h),
              value("limit", limit, Unit::kg_per_m2_h)},
             "uno_1998", "works.start_date");
  }
}

void record(const char* work, const char* field_id, const std::optional<works::Measured>& measured,
            bool in_force, FindingList& out) {
  if (!measured) return;
  if (in_force && !measured->is_used) {
    const Field& f = field(field_id);
    return out.caution("records_out_of_range",
                       {token("work", work), value("measured", measured->median), value("least", f.least),
                        value("most", f.most)},
                       "user", "records.in_force");
  }
  if (in_force && measured->count < kRecordsWanted)
    out.note("records_few",
             {token("work", work), value("count", measured->count), value("wanted", kRecordsWanted)}, "own",
             "records.in_force");
  const double ratio = measured->median / measured->entered;
  if (in_force || !(std::abs(std::log(ratio)) > std::log(1 + kRecordsAgreeWithin))) return;
  out.note("records_differ",
           {token("work", work), value("measured", measured->median), value("entered", measured->entered)},
           "own", "records.in_force");
}

void records(const works::Calibration& c, FindingList& out) {
  record("dry_to_wet", "lining.dry_to_wet", c.dry_to_wet, c.in_force, out);
  record("digging", "works.digging_person_day_per_m3", c.digging, c.in_force, out);
  record("ramming", "works.rates[].typical", c.ramming, c.in_force, out);
  record("stone_bed", "works.bed_person_day_per_m3", c.stone_bed, c.in_force, out);
  record("spreading", "works.plaster_person_day_per_m2", c.spreading, c.in_force, out);
  record("mixing", "works.mixing_person_day_per_m3", c.mixing, c.in_force, out);
}

}  // namespace

void worksFindings(const Project& project, const Plan& plan, FindingList& out) {
  records(plan.calibration, out);
  if (!project.works || !plan.works) return;
  const works::Works& works = *plan.works;
  for (const CoatCheck& check : works.coat_checks) {
    crewOf(check, out);
    batchesOf(check, *project.works, out);
  }
  peopleShort(project, works, out);
  waitingCoats(project, works, out);
  for (const std::string& task : works.wishes_unused)
    out.note("works_wish_unused", {token("task", task)}, "user", "works.wishes");
  if (works.filling) {
    filling(*works.filling, plan, out);
    const works::Task* last_cure =
        works::findTask(works, fmt::format("cure_{}", project.lining.coats.size()));
    const works::Task* last_coat =
        works::findTask(works, fmt::format("coat_{}", project.lining.coats.size()));
    if (const works::Task* end = last_cure != nullptr ? last_cure : last_coat)
      bareWalls(*works.filling, end->finish, out);
  }
  if (works.window) weather(*works.window, project, out);
}

}  // namespace core
