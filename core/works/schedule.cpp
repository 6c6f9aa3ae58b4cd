#include "core/works/schedule.h"

#include "core/lining/quantities.h"
#include "core/works/calendar.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <stdexcept>
#include <string_view>

#include <fmt/format.h>

namespace core::works {
namespace {

const Rate& rateFor(std::string_view key) {
  for (const Rate& r : rates()) {
    if (r.key == key) return r;
  }
  throw std::logic_error("no rate with key " + std::string(key));
}

std::string_view diggingKey(const std::optional<Soil>& soil) {
  constexpr std::array keys{"digging.stiff_clay", "digging.firm_loam", "digging.sandy",
                            "digging.loose_fill", "digging.soft_wet",  "digging.rock"};
  return keys[static_cast<std::size_t>(soil.value_or(Soil::firm_loam))];
}

Labour digging(const geometry::TankGeometry& g, const Site& site, const core::Works& w) {
  const Rate& r = rateFor(diggingKey(site.soil));
  const double v = g.pitVolume();
  const double rate = w.digging_person_day_per_m3.value_or(r.typical);
  return {"excavate", v * rate, v * r.low, v * r.high,
          "labourer", v,        rate,      w.digging_person_day_per_m3 ? "user" : r.source};
}

Labour bedding(double volume_m3, const core::Works& w) {
  const Rate& r = rateFor("stone_bed");
  return {"stone_bed",
          volume_m3 * w.bed_person_day_per_m3,
          volume_m3 * r.low,
          volume_m3 * r.high,
          "mason_and_helpers",
          volume_m3,
          w.bed_person_day_per_m3,
          r.source};
}

/// Spreading by face area and mixing by volume of plaster.
Labour plastering(const lining::CoatQuantities& q, const core::Works& w) {
  const Rate& spread = rateFor("plaster");
  const Rate& mix = rateFor("mixing");
  const double days = q.face_m2 * w.plaster_person_day_per_m2 + q.placed_m3 * w.mixing_person_day_per_m3;
  return {fmt::format("coat_{}", q.coat),
          days,
          q.face_m2 * spread.low + q.placed_m3 * mix.low,
          q.face_m2 * spread.high + q.placed_m3 * mix.high,
          "mason_and_helpers",
          q.face_m2,
          days / q.face_m2,
          spread.source};
}

int wholeDays(double person_days, int people) {
  return std::max(1, static_cast<int>(std::ceil(person_days / people - 1e-9)));
}

/// Lays one task after the other and remembers where the last one ended.
class Sequence {
public:
  explicit Sequence(const core::Works& w) : works_(w), next_(onOrAfter(w.start_date, w.rest_day)) {}

  void work(const std::string& id, int days, int crew) {
    const Day start = onOrAfter(next_, works_.rest_day);
    const Day finish = finishOf(start, days, works_.rest_day);
    tasks_.push_back({id, start, finish, days, crew});
    next_ = addDays(finish, 1);
  }

  /// Curing counts calendar days; sacks stay wet on rest days too.
  void cure(const std::string& id, int days) {
    if (days <= 0) return;
    tasks_.push_back({id, next_, addDays(next_, days - 1), days, 0});
    next_ = addDays(next_, days);
  }

  void mark(const std::string& id, Day day) { tasks_.push_back({id, day, day, 0, 0}); }
  Day lastFinish() const { return tasks_.back().finish; }
  std::vector<Task> take() { return std::move(tasks_); }

private:
  const core::Works& works_;
  Day next_;
  std::vector<Task> tasks_;
};

}  // namespace

Works schedule(const geometry::TankGeometry& geometry, const Site& site, const lining::Quantities& quantities,
               const Lining& lining, const core::Works& works) {
  Works result;
  Sequence sequence(works);

  result.labour.push_back(digging(geometry, site, works));
  sequence.work("excavate", wholeDays(result.labour.back().days, works.diggers), works.diggers);
  result.digging_days_by_norm = geometry.pitVolume() * rateFor("digging.norm").typical;
  result.digging_days_by_practice = geometry.pitVolume() * rateFor("digging.practice").typical;

  if (quantities.stone_net_m3 > 0) {
    result.labour.push_back(bedding(quantities.stone_net_m3, works));
    sequence.work("stone_bed", wholeDays(result.labour.back().days, works.diggers), works.diggers);
  }
  for (const lining::CoatQuantities& q : quantities.coats) {
    result.labour.push_back(plastering(q, works));
    const int needed = std::max(1, static_cast<int>(std::ceil(result.labour.back().days - 1e-9)));
    result.coat_crews.push_back({q.coat, works.plasterers, needed});
    sequence.work(fmt::format("coat_{}", q.coat), 1, works.plasterers);  // a coat is put on in one go
    const Day coat_day = sequence.lastFinish();
    sequence.cure(fmt::format("cure_{}", q.coat),
                  lining.coats[static_cast<std::size_t>(q.coat) - 1].cure_days);
    if (q.coat == static_cast<int>(quantities.coats.size()))
      sequence.mark("fill_by", addDays(coat_day, works.fill_within_days));
  }
  for (const Labour& labour : result.labour) result.person_days += labour.days;
  result.schedule = sequence.take();
  return result;
}

}  // namespace core::works
