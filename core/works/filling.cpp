#include "core/works/filling.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::works {
namespace {

using geometry::TankGeometry;

constexpr int kMostDays = 366;
constexpr double kLitresPerM3 = 1000;
constexpr double kMmPerM = 1000;
constexpr double kMinutesPerHour = 60;
constexpr double kPercent = 100;
constexpr double kSame = 1e-9;  // levels [m] and shares of the volume that are the same

std::size_t monthOf(Day day) {
  return static_cast<unsigned>(day.month()) - 1;
}

/// What a day of each month brings and takes.
struct Flows {
  std::string from = "none";
  std::array<double, kMonths> inflow_m3{};
  std::array<double, kMonths> evaporation_m{};  ///< of open water
  double seepage_m = 0;                         ///< through the wetted lining
};

void addInflow(const Project& project, Flows& flows) {
  const std::optional<double>& entered = project.works.value().fill_inflow_l_per_day;
  if (entered) {
    flows.from = "entered";
    flows.inflow_m3.fill(*entered / kLitresPerM3);
    return;
  }
  if (!project.water) return;
  for (std::size_t m = 0; m < kMonths; ++m) {
    const SourceMonth& month = project.water->source.months.at(m);
    flows.inflow_m3[m] = month.flow_l_per_min * kMinutesPerHour * month.hours_per_day / kLitresPerM3;
    if (flows.inflow_m3[m] > 0) flows.from = "source";
  }
}

void addLosses(const Losses& losses, const water::Weather& weather, Flows& flows) {
  const double open = losses.open_water_kc * (1 - losses.cover_percent / kPercent);
  flows.evaporation_m = water::monthlyMeans(weather, weather.et0_mm);
  for (double& depth : flows.evaporation_m) depth *= open / kMmPerM;
  flows.seepage_m = losses.seepage_mm_day / kMmPerM;
}

Flows flowsOf(const Project& project, const water::WaterPlan* water) {
  Flows flows;
  addInflow(project, flows);
  if (water && project.water) addLosses(project.water->losses, *water->weather, flows);
  return flows;
}

/// Fills an empty tank day by day.
class Rise {
public:
  Rise(const TankGeometry& tank, const Flows& flows, double most_rise_m)
      : tank_(tank),
        flows_(flows),
        most_rise_m_(most_rise_m),
        full_m3_(tank.volumeToLevel(tank.fullLevel())) {}

  bool isFull() const { return volume_m3_ >= full_m3_ * (1 - kSame); }
  bool isHeldBack() const { return is_held_back_; }

  /// Losses of the level at the start of the day; they take no more than there is.
  FillDay next(Day date) {
    const double given = flows_.inflow_m3[monthOf(date)];
    const double asked = flows_.evaporation_m[monthOf(date)] * tank_.surfaceAt(level_m_) +
                         flows_.seepage_m * tank_.wettedArea(level_m_);
    const double lost = std::min(asked, volume_m3_ + given);
    const double most = tank_.volumeToLevel(std::min(level_m_ + most_rise_m_, tank_.fullLevel()));
    const double let_in = std::min(given, most - volume_m3_ + lost);
    is_held_back_ = is_held_back_ || (let_in < given && most < full_m3_ * (1 - kSame));
    volume_m3_ += let_in - lost;
    level_m_ = isFull() ? tank_.fullLevel() : tank_.levelForVolume(volume_m3_);
    return {date,       let_in,   lost,
            volume_m3_, level_m_, tank_.wallArea() + tank_.floorArea() - tank_.wettedArea(level_m_),
            0};
  }

private:
  const TankGeometry& tank_;
  const Flows& flows_;
  double most_rise_m_, full_m3_;
  double volume_m3_ = 0, level_m_ = 0;
  bool is_held_back_ = false;
};

/// Days until full, at most a year of them; none when no inflow is known.
void fillUp(const TankGeometry& tank, const Flows& flows, double most_rise_m, Filling& filling) {
  if (flows.from == "none") return;
  Rise rise(tank, flows, most_rise_m);
  while (!rise.isFull() && filling.days.size() < kMostDays)
    filling.days.push_back(rise.next(addDays(filling.start, static_cast<int>(filling.days.size()))));
  filling.is_held_back = rise.isHeldBack();
  if (rise.isFull()) filling.full_on = filling.days.back().date;
}

/// Levels at which one band ends and the next begins: even steps up to the overflow level, then the rim.
std::vector<double> bandEdges(const TankGeometry& tank, double band_m) {
  std::vector<double> edges{0};
  for (int k = 1; k * band_m < tank.fullLevel() - kSame; ++k) edges.push_back(k * band_m);
  edges.push_back(tank.fullLevel());
  if (tank.depth() > tank.fullLevel() + kSame) edges.push_back(tank.depth());
  return edges;
}

std::optional<Day> coveredOn(double level_m, const std::vector<FillDay>& days) {
  const auto covers = [&](const FillDay& day) { return day.level_m >= level_m - kSame; };
  const auto day = std::find_if(days.begin(), days.end(), covers);
  return day == days.end() ? std::nullopt : std::optional(day->date);
}

/// A band that the water does not reach within the days reckoned stays wet through all of them; the one above
/// the overflow level, which it never reaches, and all of them where no inflow is known, to the end of
/// curing.
WallBand band(double from_m, double to_m, const TankGeometry& tank, const Filling& filling,
              const FillingDates& dates) {
  WallBand b{from_m,
             to_m,
             tank.wettedArea(to_m) - tank.wettedArea(from_m),
             addDays(dates.last_coat, 1),
             coveredOn(to_m, filling.days),
             dates.last_cure,
             0};
  if (b.covered_on)
    b.wet_until = std::max(b.wet_until, addDays(*b.covered_on, -1));
  else if (!filling.days.empty() && from_m < tank.fullLevel() - kSame)
    b.wet_until = std::max(b.wet_until, filling.days.back().date);
  b.days = std::max(0, daysBetween(b.wet_from, b.wet_until) + 1);
  return b;
}

/// Wall between the water and the rim whose sacks are still to be wet on a day [m2].
double wettedWall(const TankGeometry& tank, const std::vector<WallBand>& bands, Day date, double level_m) {
  double area = 0;
  for (const WallBand& b : bands) {
    if (date < b.wet_from || date > b.wet_until || level_m >= b.to_m) continue;
    area += tank.wettedArea(b.to_m) - tank.wettedArea(std::max(b.from_m, level_m));
  }
  return area;
}

/// Water for sacks: of each day of the filling, and all after the end of curing; the days between it and the
/// start of filling, with the tank empty, count too.
void addWetting(const TankGeometry& tank, double l_per_m2_day, const FillingDates& dates, Filling& filling) {
  for (Day date = addDays(dates.last_cure, 1); date < dates.start; date = addDays(date, 1))
    filling.wetting_after_cure_l += l_per_m2_day * wettedWall(tank, filling.bands, date, 0);
  for (FillDay& day : filling.days) {
    day.wetting_l = l_per_m2_day * wettedWall(tank, filling.bands, day.date, day.level_m);
    if (day.date > dates.last_cure) filling.wetting_after_cure_l += day.wetting_l;
  }
}

double volumeOn(Day date, const std::vector<FillDay>& days) {
  double volume = 0;
  for (const FillDay& day : days) {
    if (day.date <= date) volume = day.volume_m3;
  }
  return volume;
}

/// Water to be brought by hand [m3]: wanted - V. V is what the tank holds of the inflow at the end of the
/// last day of the window, the latest start plus the last coat's curing days; wanted is the volume up to the
/// overflow level, or to the level that the limit on the rise allows by then from the start of filling (from
/// the latest start when it starts later). This is the least: all of it comes on that day; what is brought
/// sooner evaporates and seeps as well.
double carried(const TankGeometry& tank, double most_rise_m, const FillingDates& dates,
               const Filling& filling) {
  const Day last = addDays(filling.latest_start, daysBetween(dates.last_coat, dates.last_cure));
  const int days = daysBetween(std::min(filling.start, filling.latest_start), last) + 1;
  const double wanted = tank.volumeToLevel(std::min(tank.fullLevel(), days * most_rise_m));
  const double lacking = wanted - volumeOn(last, filling.days);
  return lacking > kSame * wanted ? lacking : 0;
}

}  // namespace

Filling filling(const TankGeometry& geometry, const Project& project, const water::WaterPlan* water,
                const FillingDates& dates) {
  const core::Works& works = project.works.value();
  const Flows flows = flowsOf(project, water);
  Filling filling;
  filling.inflow_from = flows.from;
  filling.inflow_m3_day = flows.inflow_m3[monthOf(dates.start)];
  filling.start = dates.start;
  filling.latest_start = addDays(dates.last_coat, works.fill_within_days);
  fillUp(geometry, flows, works.fill_most_rise_m_per_day, filling);
  const std::vector<double> edges = bandEdges(geometry, works.wall_band_m);
  for (std::size_t k = 1; k < edges.size(); ++k)
    filling.bands.push_back(band(edges[k - 1], edges[k], geometry, filling, dates));
  addWetting(geometry, project.lining.curing_water_l_per_m2_day, dates, filling);
  filling.carried_m3 = carried(geometry, works.fill_most_rise_m_per_day, dates, filling);
  return filling;
}

FillTime fillTime(const TankGeometry& geometry, const Project& project, const water::WaterPlan* water,
                  Day start) {
  Filling filling;
  filling.start = start;
  fillUp(geometry, flowsOf(project, water), project.works.value().fill_most_rise_m_per_day, filling);
  return {static_cast<int>(filling.days.size()), filling.full_on.has_value()};
}

std::optional<int> daysToFill(const TankGeometry& geometry, const Project& project,
                              const water::WaterPlan* water, Day start) {
  const FillTime time = fillTime(geometry, project, water, start);
  return time.ends_full ? std::optional(time.days) : std::nullopt;
}

}  // namespace core::works
