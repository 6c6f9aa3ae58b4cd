#include "core/water/map.h"

#include "core/water/sweep.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <thread>

namespace core::water {
namespace {

constexpr double kReach = 2.5;
constexpr double kLeastOverPoint = 1.1;  // smallest size over the one whose floor is a point

/// 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8 times a power of ten, not below a value.
double plainNumber(double value) {
  if (!(value > 0)) return 0;
  const double power = std::pow(10, std::floor(std::log10(value)));
  for (const double step : {1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0}) {
    if (step * power >= value * (1 - 1e-9)) return step * power;
  }
  return 10 * power;
}

/// Sizes in even steps up to the most. With battered walls the first may be none: then from a little over
/// the size at which the floor is a point.
std::vector<double> sizes(const TankCurve& tank, double most_m3, std::size_t count) {
  const double least = std::max(most_m3 / static_cast<double>(count), leastSize(tank));
  std::vector<double> result(count, most_m3);
  for (std::size_t i = 0; i + 1 < count; ++i) {
    result[i] = least + (most_m3 - least) * static_cast<double>(i) / static_cast<double>(count - 1);
  }
  return result;
}

std::vector<double> areas(double most_m2, std::size_t count) {
  std::vector<double> result(count, 0);
  for (std::size_t i = 1; i < count; ++i) {
    result[i] = most_m2 * static_cast<double>(i) / static_cast<double>(count - 1);
  }
  return result;
}

class MapMaker {
public:
  MapMaker(const TankCurve& tank, const DaySeries& series, double bed_area_m2, ReliabilityMap& map)
      : series_(series), bed_area_m2_(bed_area_m2), map_(map) {
    for (const double full : map.full_m3) tanks_.push_back(scaled(tank, factorFor(tank, full)));
  }

  /// Every `step`th row from `first` on.
  void makeRows(std::size_t first, std::size_t step, const std::atomic<bool>& cancel) {
    const std::vector<Lane> lanes = lanesOf(first, step);
    const std::vector<int> years = yearsWithoutDryDay(lanes, series_, &cancel);
    const std::size_t columns = tanks_.size();
    for (std::size_t i = 0; i < years.size(); ++i) {
      const std::size_t row = first + i / columns * step;
      map_.years_in_ten[row * columns + i % columns] =
          10 * static_cast<float>(years[i]) / static_cast<float>(series_.years());
    }
  }

private:
  const DaySeries& series_;
  double bed_area_m2_;
  ReliabilityMap& map_;
  std::vector<TankCurve> tanks_;

  std::vector<Lane> lanesOf(std::size_t first, std::size_t step) const {
    std::vector<Lane> lanes;
    for (std::size_t row = first; row < map_.bed_area_m2.size(); row += step) {
      const double beds = bed_area_m2_ > 0 ? map_.bed_area_m2[row] / bed_area_m2_ : 0;
      for (const TankCurve& tank : tanks_) lanes.push_back({tank, beds});
    }
    return lanes;
  }
};

}  // namespace

double leastSize(const TankCurve& tank) {
  return kLeastOverPoint * leastFull(tank);
}

MapReach mapReach(double full_m3, double bed_area_m2) {
  return {plainNumber(kReach * full_m3), plainNumber(kReach * bed_area_m2)};
}

ReliabilityMap reliabilityMap(const TankCurve& tank, const DaySeries& series, double bed_area_m2,
                              const MapReach& reach, std::size_t cells, unsigned threads,
                              const std::atomic<bool>& cancel) {
  if (cells == 0 || series.years() == 0) return {};
  ReliabilityMap map;
  map.full_m3 = sizes(tank, reach.most_full_m3, cells);
  map.bed_area_m2 = areas(reach.most_bed_area_m2, bed_area_m2 > 0 ? cells : 1);
  map.years_in_ten.resize(map.full_m3.size() * map.bed_area_m2.size());
  MapMaker maker(tank, series, bed_area_m2, map);
  const std::size_t spread = std::clamp<std::size_t>(threads, 1, map.bed_area_m2.size());
  {
    std::vector<std::jthread> others;
    for (std::size_t t = 1; t < spread; ++t) {
      others.emplace_back([&maker, &cancel, t, spread] { maker.makeRows(t, spread, cancel); });
    }
    maker.makeRows(0, spread, cancel);
  }
  return cancel ? ReliabilityMap{} : map;
}

}  // namespace core::water
