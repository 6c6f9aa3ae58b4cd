#include "core/water/balance.h"

#include <algorithm>

namespace core::water {
namespace {

constexpr double kMetre = 0.001;  // of a millimetre

struct DayIn {
  double supply, rain, evaporation, seepage, need;  // m3; losses as the level asks for them
};

struct DayOut {
  double evaporation, seepage, drawn, spill, end;
};

DayOut oneDay(const TankCurve& tank, double volume_m3, const DayIn& in) {
  const double there = volume_m3 + in.supply + in.rain;
  const double asked = in.evaporation + in.seepage;
  const double share = asked > there ? there / asked : 1;
  DayOut out{};
  out.evaporation = in.evaporation * share;
  out.seepage = in.seepage * share;
  const double left = std::max(there - out.evaporation - out.seepage, 0.0);
  out.drawn = std::min(in.need, std::max(left - tank.dead_m3, 0.0));
  out.spill = std::max(left - out.drawn - tank.full_m3, 0.0);
  out.end = left - out.drawn - out.spill;
  return out;
}

/// Follows one tank from day to day.
class Follower {
public:
  Follower(const TankCurve& tank, const DaySeries& series, double start_m3, double bed_factor)
      : tank_(tank), series_(series), bed_factor_(bed_factor), volume_m3_(start_m3) {}

  DayIn in(std::size_t day) {
    level_m_ = tank_.level(volume_m3_, level_m_);
    return {series_.supply_m3[day], kMetre * series_.rain_mm[day] * tank_.catch_m2,
            kMetre * series_.evaporation_mm[day] * tank_.surface(level_m_),
            kMetre * series_.seepage_mm_day * tank_.wetted(level_m_),
            series_.household_m3[day] + bed_factor_ * series_.beds_m3[day]};
  }

  DayOut take(const DayIn& in) {
    const DayOut out = oneDay(tank_, volume_m3_, in);
    volume_m3_ = out.end;
    return out;
  }

  double volume() const { return volume_m3_; }

private:
  const TankCurve& tank_;
  const DaySeries& series_;
  double bed_factor_;
  double volume_m3_;
  double level_m_ = 0;
};

void add(Totals& totals, const DayIn& in, const DayOut& out) {
  totals.supply += in.supply;
  totals.rain += in.rain;
  totals.evaporation += out.evaporation;
  totals.seepage += out.seepage;
  totals.drawn += out.drawn;
  totals.unmet += in.need - out.drawn;
  totals.spill += out.spill;
}

void record(Run& run, const DayIn& in, const DayOut& out) {
  run.volume_m3.push_back(static_cast<float>(out.end));
  run.rain_m3.push_back(static_cast<float>(in.rain));
  run.evaporation_m3.push_back(static_cast<float>(out.evaporation));
  run.seepage_m3.push_back(static_cast<float>(out.seepage));
  run.drawn_m3.push_back(static_cast<float>(out.drawn));
  run.unmet_m3.push_back(static_cast<float>(in.need - out.drawn));
  run.spill_m3.push_back(static_cast<float>(out.spill));
  run.dry.push_back(in.need > 0 && out.drawn < kMetShare * in.need ? 1 : 0);
}

void reserve(Run& run, std::size_t days) {
  for (std::vector<float>* column : {&run.volume_m3, &run.rain_m3, &run.evaporation_m3, &run.seepage_m3,
                                     &run.drawn_m3, &run.unmet_m3, &run.spill_m3}) {
    column->reserve(days);
  }
  run.dry.reserve(days);
}

}  // namespace

Run run(const TankCurve& tank, const DaySeries& series, double start_m3, double bed_factor) {
  Run result;
  reserve(result, series.days());
  Follower follower(tank, series, start_m3, bed_factor);
  for (std::size_t day = 0; day < series.days(); ++day) {
    const DayIn in = follower.in(day);
    const DayOut out = follower.take(in);
    record(result, in, out);
    add(result.totals, in, out);
  }
  result.totals.start = start_m3;
  result.totals.end = follower.volume();
  return result;
}

double startVolume(const TankCurve& tank, const DaySeries& series, double bed_factor) {
  if (series.years() == 0) return tank.full_m3;
  Follower follower(tank, series, tank.full_m3, bed_factor);
  for (std::size_t day = series.year_start[series.years() - 1]; day < series.year_start.back(); ++day) {
    follower.take(follower.in(day));
  }
  return follower.volume();
}

}  // namespace core::water
