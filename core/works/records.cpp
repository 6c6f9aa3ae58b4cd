#include "core/works/records.h"

#include "core/base/median.h"
#include "core/project/fields.h"
#include "core/works/rates.h"

#include <algorithm>
#include <string_view>
#include <vector>

namespace core::works {
namespace {

constexpr std::string_view kRamming = "ramming";

std::optional<Measured> measured(std::vector<double> values, double entered) {
  if (values.empty()) return std::nullopt;
  std::sort(values.begin(), values.end());
  return Measured{.count = static_cast<int>(values.size()),
                  .median = medianOf(values),
                  .least = values.front(),
                  .most = values.back(),
                  .entered = entered};
}

/// Loose ingredients of a batch over what they made, placed.
double dryToWet(const TrialBatch& batch, const Coat& parts, const Lining& lining) {
  const double cement_m3 = batch.bags * lining.cement_bag_kg / lining.cement_loose_kg_m3;
  const double loose_m3 = cement_m3 / parts.cement * (parts.soil + parts.sand + parts.cement);
  return loose_m3 / (batch.area_m2 * batch.thickness_m);
}

std::vector<double> batchFactors(const Project& project) {
  const std::vector<Coat>& coats = project.lining.coats;
  std::vector<double> factors;
  for (const TrialBatch& batch : project.records.batches) {
    const auto coat = static_cast<std::size_t>(batch.coat);
    if (coat >= 1 && coat <= coats.size())
      factors.push_back(dryToWet(batch, coats[coat - 1], project.lining));
  }
  return factors;
}

std::vector<double> workRates(const Project& project, RecordedWork work) {
  std::vector<double> rates;
  for (const WorkRecord& record : project.records.work) {
    const bool is_other_soil = record.work == RecordedWork::digging && record.soil &&
                               *record.soil != project.site.soil.value_or(Soil::firm_loam);
    if (record.work == work && !is_other_soil) rates.push_back(record.person_days / record.quantity);
  }
  return rates;
}

/// @param key of the table of rates
std::optional<Measured> measuredRate(const Project& project, RecordedWork work, std::string_view key) {
  return measured(workRates(project, work), rateInForce(key, project).typical);
}

/// The median, where it is one that the field could hold.
std::optional<double> usable(const std::optional<Measured>& measured, std::string_view field_id) {
  if (!measured) return std::nullopt;
  const Field& f = field(field_id);
  if (measured->median < f.least || measured->median > f.most) return std::nullopt;
  return measured->median;
}

template <class Member>
void put(const std::optional<Measured>& measured, std::string_view field_id, Member& member) {
  if (const std::optional<double> median = usable(measured, field_id)) member = *median;
}

/// The district's own figure gives way to the measured one.
void dropOwnRate(std::string_view key, core::Works& works) {
  std::erase_if(works.rates, [key](const OwnRate& own) { return own.work == key; });
}

/// A rate that is a field of its own.
template <class Member>
void putRate(const std::optional<Measured>& measured, std::string_view key, std::string_view field_id,
             Member core::Works::*member, core::Works& works) {
  if (usable(measured, field_id)) dropOwnRate(key, works);
  put(measured, field_id, works.*member);
}

/// The rate for ramming has no field but a row; low and high stay the shares of it that they were.
void putRamming(const std::optional<Measured>& measured, const Project& project, core::Works& works) {
  const std::optional<double> median = usable(measured, "works.rates[].typical");
  if (!median) return;
  const Figure before = rateInForce(kRamming, project);
  const double share = before.typical > 0 ? *median / before.typical : 0;
  dropOwnRate(kRamming, works);
  works.rates.push_back({std::string(kRamming), share > 0 ? before.low * share : *median, *median,
                         share > 0 ? before.high * share : *median});
}

}  // namespace

Calibration calibration(const Project& project) {
  Calibration c;
  c.dry_to_wet = measured(batchFactors(project), project.lining.dry_to_wet);
  c.digging = measuredRate(project, RecordedWork::digging, diggingKey(project.site.soil));
  c.ramming = measuredRate(project, RecordedWork::ramming, kRamming);
  c.stone_bed = measuredRate(project, RecordedWork::stone_bed, "stone_bed");
  c.spreading = measuredRate(project, RecordedWork::spreading, "plaster");
  c.mixing = measuredRate(project, RecordedWork::mixing, "mixing");
  const auto mark = [](std::optional<Measured>& measured, std::string_view field_id) {
    if (measured) measured->is_used = usable(measured, field_id).has_value();
  };
  mark(c.dry_to_wet, "lining.dry_to_wet");
  mark(c.digging, "works.digging_person_day_per_m3");
  mark(c.ramming, "works.rates[].typical");
  mark(c.stone_bed, "works.bed_person_day_per_m3");
  mark(c.spreading, "works.plaster_person_day_per_m2");
  mark(c.mixing, "works.mixing_person_day_per_m3");
  const bool has_any = c.dry_to_wet || c.digging || c.ramming || c.stone_bed || c.spreading || c.mixing;
  c.in_force = project.records.in_force && has_any;
  return c;
}

Project inForce(const Project& project, const Calibration& calibration) {
  Project result = project;
  if (!calibration.in_force) return result;
  put(calibration.dry_to_wet, "lining.dry_to_wet", result.lining.dry_to_wet);
  if (!result.works) return result;
  core::Works& works = *result.works;
  putRate(calibration.digging, diggingKey(project.site.soil), "works.digging_person_day_per_m3",
          &core::Works::digging_person_day_per_m3, works);
  putRate(calibration.stone_bed, "stone_bed", "works.bed_person_day_per_m3",
          &core::Works::bed_person_day_per_m3, works);
  putRate(calibration.spreading, "plaster", "works.plaster_person_day_per_m2",
          &core::Works::plaster_person_day_per_m2, works);
  putRate(calibration.mixing, "mixing", "works.mixing_person_day_per_m3",
          &core::Works::mixing_person_day_per_m3, works);
  putRamming(calibration.ramming, project, works);
  return result;
}

}  // namespace core::works
