#include "core/hydraulics/head_line.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace core::hydraulics {
namespace {

/// Level and length along the pipe at a station.
struct Place {
  double level_m, length_m;
};

Place placeAt(const std::vector<PipePoint>& profile, double station_m) {
  double length = 0;
  for (std::size_t i = 1;; ++i) {
    const PipePoint& a = profile[i - 1];
    const PipePoint& b = profile[i];
    const double piece = std::hypot(b.station_m - a.station_m, b.level_m - a.level_m);
    if (station_m <= b.station_m || i + 1 == profile.size()) {
      const double share = (station_m - a.station_m) / (b.station_m - a.station_m);
      return {a.level_m + share * (b.level_m - a.level_m), length + share * piece};
    }
    length += piece;
  }
}

/// Every station where the head line bends or steps.
std::set<double> stationsOf(const Line& line) {
  std::set<double> stations;
  for (const PipePoint& p : line.profile) stations.insert(p.station_m);
  for (const Fitting& f : line.fittings) stations.insert(f.station_m);
  return stations;
}

double lossesAt(const Line& line, double station_m) {
  double sum = 0;
  for (const Fitting& f : line.fittings) {
    if (f.station_m == station_m) sum += f.k;
  }
  return sum;
}

LinePoint pointAt(double station_m, const Place& place, double energy_m, double velocity_head_m,
                  double upper_level_m) {
  const double head_line = energy_m - velocity_head_m;
  return {station_m,
          place.level_m,
          place.length_m,
          energy_m,
          head_line,
          head_line - place.level_m,
          upper_level_m - place.level_m};
}

/// Station between two points where the pressure passes the bound.
double crossing(const LinePoint& a, const LinePoint& b, double bound_m) {
  const double share = (bound_m - a.pressure_m) / (b.pressure_m - a.pressure_m);
  return a.station_m + share * (b.station_m - a.station_m);
}

void lower(Stretch& stretch, const LinePoint& p) {
  if (p.pressure_m >= stretch.worst_m) return;
  stretch.worst_m = p.pressure_m;
  stretch.worst_station_m = p.station_m;
}

/// Pressure at a station; the lower of the two where a fitting sits.
double pressureAt(const std::vector<LinePoint>& points, double station_m) {
  double pressure = points.front().pressure_m;
  for (const LinePoint& p : points) {
    if (p.station_m == station_m) pressure = p.pressure_m;
  }
  return pressure;
}

}  // namespace

double pipeLength(const std::vector<PipePoint>& profile) {
  return placeAt(profile, profile.back().station_m).length_m;
}

std::vector<Stretch> stretchesBelow(const std::vector<LinePoint>& points, double bound_m) {
  std::vector<Stretch> found;
  bool below = false;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const LinePoint& p = points[i];
    const bool now = p.pressure_m < bound_m;
    if (now && !below) {
      const double from = i == 0 ? p.station_m : crossing(points[i - 1], p, bound_m);
      found.push_back({from, p.station_m, p.pressure_m, p.station_m});
    }
    if (now) {
      lower(found.back(), p);
      found.back().to_m = p.station_m;
    } else if (below) {
      found.back().to_m = crossing(points[i - 1], p, bound_m);
    }
    below = now;
  }
  return found;
}

void fillHeadLine(LineFlow& flow, const Line& line, double upper_level_m) {
  double spent = 0;
  for (const double station : stationsOf(line)) {
    const Place place = placeAt(line.profile, station);
    const double energy = upper_level_m - spent - flow.friction_head_m * place.length_m / flow.length_m;
    flow.points.push_back(pointAt(station, place, energy, flow.velocity_head_m, upper_level_m));
    const double loss = lossesAt(line, station) * flow.velocity_head_m;
    if (loss > 0)
      flow.points.push_back(pointAt(station, place, energy - loss, flow.velocity_head_m, upper_level_m));
    spent += loss;
  }
  flow.above_head_line = stretchesBelow(flow.points, 0);
  flow.near_vapour = stretchesBelow(flow.points, flow.lowest_allowed_m);
  flow.humps = humpsOf(line.profile);
  for (Hump& hump : flow.humps) {
    hump.pressure_m = pressureAt(flow.points, hump.station_m);
    flow.air_lock_head_m += hump.fall_m;
  }
}

void fillStatic(LineFlow& flow, const Line& line, double upper_level_m, const Water& water) {
  double lowest = line.profile.front().level_m;
  for (const PipePoint& p : line.profile) lowest = std::min(lowest, p.level_m);
  flow.static_head_m = upper_level_m - lowest;
  flow.static_bar = water.density_kg_m3 * kGravity_m_s2 * flow.static_head_m / kPascalPerBar;
  if (line.pressure_class_bar) flow.class_left_bar = *line.pressure_class_bar - flow.static_bar;
}

}  // namespace core::hydraulics
