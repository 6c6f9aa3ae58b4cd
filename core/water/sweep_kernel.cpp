#include "core/water/sweep_kernel.h"

#include "core/water/balance.h"

#include <algorithm>

// Vectors stand in structs here, which those of unknown size cannot.
#define HWY_DISABLED_TARGETS (HWY_SVE | HWY_SVE2 | HWY_SVE_256 | HWY_SVE2_128 | HWY_RVV)
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/water/sweep_kernel.cpp"
#include <hwy/foreach_target.h>
#include <hwy/highway.h>

HWY_BEFORE_NAMESPACE();
namespace core::water::kernel::HWY_NAMESPACE {
namespace {

namespace hn = hwy::HWY_NAMESPACE;
using Floats = hn::ScalableTag<float>;
using Vec = hn::Vec<Floats>;

constexpr Floats kFloats;

struct Tanks {
  Vec a0, a1, a2, seepage0, seepage1, seepage2, volume0, volume2, volume3, tangent0, tangent1;
  Vec low_tangent0, low_tangent1;
  Vec catch_m2, bed_factor, empty, full;
};

struct State {
  Vec volume, carry, level, slope, slack;
};

struct Sums {
  Vec dry_days, evaporation, seepage, drawn, unmet, spill;
};

struct DayVecs {
  Vec supply, rain, evaporation, household, beds;
};

struct Drawing {
  Vec need, could, drawn;
};

HWY_INLINE Vec at(const Column& column, std::size_t lane) {
  return hn::Load(kFloats, column.data() + lane);
}

HWY_INLINE void put(Column& column, std::size_t lane, Vec v) {
  hn::Store(v, kFloats, column.data() + lane);
}

HWY_INLINE Tanks tanksAt(const Pack& p, std::size_t i) {
  return {at(p.a0, i),           at(p.a1, i),       at(p.a2, i),         at(p.seepage0, i),
          at(p.seepage1, i),     at(p.seepage2, i), at(p.volume0, i),    at(p.volume2, i),
          at(p.volume3, i),      at(p.tangent0, i), at(p.tangent1, i),   at(p.low_tangent0, i),
          at(p.low_tangent1, i), at(p.catch_m2, i), at(p.bed_factor, i), at(p.empty_m3, i),
          at(p.full_m3, i)};
}

HWY_INLINE Sums sumsAt(const Pack& p, std::size_t i) {
  return {at(p.dry_days, i), at(p.evaporation_m3, i), at(p.seepage_m3, i),
          at(p.drawn_m3, i), at(p.unmet_m3, i),       at(p.spill_m3, i)};
}

HWY_INLINE void put(Pack& p, std::size_t i, const Sums& s) {
  put(p.dry_days, i, s.dry_days);
  put(p.evaporation_m3, i, s.evaporation);
  put(p.seepage_m3, i, s.seepage);
  put(p.drawn_m3, i, s.drawn);
  put(p.unmet_m3, i, s.unmet);
  put(p.spill_m3, i, s.spill);
}

HWY_INLINE DayVecs spread(const Day& day) {
  return {hn::Set(kFloats, day.supply_m3), hn::Set(kFloats, day.rain_m), hn::Set(kFloats, day.evaporation_m),
          hn::Set(kFloats, day.household_m3), hn::Set(kFloats, day.beds_m3)};
}

/// c0 + z (c1 + z c2)
HWY_INLINE Vec polynomial(Vec z, Vec c0, Vec c1, Vec c2) {
  return hn::MulAdd(z, hn::MulAdd(z, c2, c1), c0);
}

/// One Newton step of the level towards a volume.
HWY_INLINE Vec newton(const Tanks& t, Vec level, Vec slope, Vec volume) {
  const Vec held = hn::MulAdd(level, polynomial(level, t.a0, t.volume2, t.volume3), t.volume0);
  return hn::MulAdd(hn::Sub(volume, held), slope, level);
}

/// Two Newton steps from the level of the day before. The volume curves upward, so that a tangent lies below
/// it and gives a level not below the true one: the least of three holds after a cloudburst too.
HWY_INLINE void follow(const Tanks& t, State& s) {
  const Vec by_tangents = hn::Min(hn::MulAdd(t.tangent1, s.volume, t.tangent0),
                                  hn::MulAdd(t.low_tangent1, s.volume, t.low_tangent0));
  const Vec near = hn::Min(newton(t, s.level, s.slope, s.volume), by_tangents);
  s.slope = hn::ApproximateReciprocal(polynomial(near, t.a0, t.a1, t.a2));
  s.level = hn::Max(newton(t, near, s.slope, s.volume), hn::Zero(kFloats));
}

/// Evaporation and seepage of a day at a level.
HWY_INLINE Vec losses(const Tanks& t, Vec evaporation_m, Vec level) {
  return polynomial(level, hn::MulAdd(evaporation_m, t.a0, t.seepage0),
                    hn::MulAdd(evaporation_m, t.a1, t.seepage1), hn::MulAdd(evaporation_m, t.a2, t.seepage2));
}

HWY_INLINE Drawing draw(const Tanks& t, const DayVecs& day, Vec left) {
  const Vec need = hn::MulAdd(day.beds, t.bed_factor, day.household);
  const Vec could = hn::Max(left, hn::Zero(kFloats));
  return {need, could, hn::Min(could, need)};
}

/// Losses are summed as taken: no more than there is, shared in proportion.
HWY_INLINE void addLosses(Sums& sums, Vec evaporation, Vec asked, Vec there) {
  const Vec share = hn::IfThenElse(hn::Gt(asked, there), hn::Div(there, asked), hn::Set(kFloats, 1.0F));
  sums.evaporation = hn::MulAdd(evaporation, share, sums.evaporation);
  sums.seepage = hn::MulAdd(hn::Sub(asked, evaporation), share, sums.seepage);
}

HWY_INLINE void addDrawing(Sums& sums, const Drawing& d, Vec slack, Vec over) {
  const Vec zero = hn::Zero(kFloats);
  const auto dry = hn::Lt(slack, zero);
  sums.dry_days = hn::Add(sums.dry_days, hn::IfThenElseZero(dry, hn::Set(kFloats, 1.0F)));
  sums.drawn = hn::Add(sums.drawn, d.drawn);
  sums.unmet = hn::Add(sums.unmet, hn::Sub(d.need, d.drawn));
  sums.spill = hn::Add(sums.spill, hn::Max(over, zero));
}

/// What rounding takes off the volume of one day is carried to the next.
template <Keep keep>
HWY_INLINE void step(const Tanks& t, const DayVecs& day, State& s, Sums& sums) {
  const Vec in = hn::Add(hn::MulAdd(day.rain, t.catch_m2, day.supply), s.carry);
  const Vec lost = losses(t, day.evaporation, s.level);
  const Vec change = hn::Sub(in, lost);
  const Drawing d = draw(t, day, hn::Add(s.volume, change));
  const Vec slack = hn::NegMulAdd(d.need, hn::Set(kFloats, static_cast<float>(kMetShare)), d.could);
  const Vec net = hn::Sub(change, d.drawn);
  const Vec end = hn::Add(s.volume, net);
  if constexpr (keep == Keep::totals) {
    const Vec there = hn::Add(hn::Sub(s.volume, t.empty), in);
    addLosses(sums, hn::Mul(day.evaporation, polynomial(s.level, t.a0, t.a1, t.a2)), lost, there);
    addDrawing(sums, d, slack, hn::Sub(end, t.full));
  }
  s.carry = hn::Sub(net, hn::Sub(end, s.volume));
  s.slack = hn::Min(s.slack, slack);
  s.volume = hn::Min(hn::Max(end, t.empty), t.full);
  follow(t, s);
}

HWY_INLINE State stateAt(const Pack& p, std::size_t i) {
  return {at(p.volume_m3, i), at(p.carry_m3, i), at(p.level_m, i), at(p.slope, i), at(p.slack_m3, i)};
}

HWY_INLINE void put(Pack& p, std::size_t i, const State& s) {
  put(p.volume_m3, i, s.volume);
  put(p.carry_m3, i, s.carry);
  put(p.level_m, i, s.level);
  put(p.slope, i, s.slope);
  put(p.slack_m3, i, s.slack);
}

/// All lanes take one day before the next: while one vector waits for a result, others are reckoned.
template <Keep keep>
HWY_INLINE void runAll(Pack& p, std::span<const Day> days) {
  static_assert(kPackLanes % hn::MaxLanes(kFloats) == 0);
  const std::size_t lanes = std::min(p.lanes, kPackLanes);
  for (const Day& day : days) {
    const DayVecs d = spread(day);
    for (std::size_t i = 0; i < lanes; i += hn::Lanes(kFloats)) {
      State s = stateAt(p, i);
      Sums sums = sumsAt(p, i);
      step<keep>(tanksAt(p, i), d, s, sums);
      put(p, i, s);
      if constexpr (keep == Keep::totals) put(p, i, sums);
    }
  }
}

void runSlack(Pack& pack, std::span<const Day> days) {
  runAll<Keep::slack>(pack, days);
}

void runTotals(Pack& pack, std::span<const Day> days) {
  runAll<Keep::totals>(pack, days);
}

const char* targetName() {
  return hwy::TargetName(HWY_TARGET);
}

}  // namespace
}  // namespace core::water::kernel::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace core::water::kernel {

HWY_EXPORT(runSlack);
HWY_EXPORT(runTotals);
HWY_EXPORT(targetName);

void runDays(Pack& pack, std::span<const Day> days, Keep keep) {
  if (keep == Keep::totals) {
    HWY_DYNAMIC_DISPATCH(runTotals)(pack, days);
  } else {
    HWY_DYNAMIC_DISPATCH(runSlack)(pack, days);
  }
}

const char* target() {
  return HWY_DYNAMIC_DISPATCH(targetName)();
}

}  // namespace core::water::kernel
#endif
