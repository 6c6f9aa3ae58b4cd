#include "core/water/flow.h"

#include "core/base/median.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace core::water {
namespace {

constexpr double kSecondsPerMinute = 60;
constexpr double kQuickest_s = 3;        // volumetric_method: the vessel takes 3 s or more
constexpr std::size_t kEnough = 3;       // volumetric_method: more than three readings
constexpr double kOutlierScore = 3.5;    // iglewicz_hoaglin
constexpr double kMedianScale = 0.6745;  // median deviation of a normal distribution over its spread
constexpr double kFinest = 0.02;         // own: bucket and watch are read no finer than this share

/// Modified z-scores. The spread is taken no finer than bucket and watch can be read. Two readings cannot
/// tell which of them is apart.
std::vector<double> scores(const std::vector<double>& values) {
  const double middle = medianOf(values);
  std::vector<double> deviation(values.size());
  std::transform(values.begin(), values.end(), deviation.begin(),
                 [&](double v) { return std::abs(v - middle); });
  const double spread = std::max(medianOf(deviation) / kMedianScale, kFinest * middle);
  std::vector<double> score(values.size(), 0);
  if (spread <= 0 || values.size() < 3) return score;
  std::transform(deviation.begin(), deviation.end(), score.begin(), [&](double d) { return d / spread; });
  return score;
}

MonthReadings summed(int month, const std::vector<std::size_t>& rows,
                     const std::vector<FlowReading>& readings) {
  MonthReadings m;
  m.month = month;
  m.rows = rows;
  m.enough = rows.size() > kEnough;
  std::vector<double> flows;
  for (const std::size_t row : rows) {
    flows.push_back(flowOf(readings[row]));
    if (readings[row].seconds < kQuickest_s) m.too_quick.push_back(row);
  }
  m.median_l_per_min = medianOf(flows);
  const std::vector<double> score = scores(flows);
  std::vector<double> kept;
  for (std::size_t i = 0; i < flows.size(); ++i) {
    if (score[i] > kOutlierScore)
      m.outliers.push_back(rows[i]);
    else
      kept.push_back(flows[i]);
  }
  const auto [least, most] = std::minmax_element(kept.begin(), kept.end());
  m.least_l_per_min = *least;
  m.most_l_per_min = *most;
  if (m.median_l_per_min > 0) m.spread_percent = 100 * (*most - *least) / m.median_l_per_min;
  return m;
}

}  // namespace

double flowOf(const FlowReading& reading) {
  return reading.vessel_l / reading.seconds * kSecondsPerMinute;
}

std::vector<MonthReadings> readingsByMonth(const std::vector<FlowReading>& readings) {
  std::map<int, std::vector<std::size_t>> rows;
  for (std::size_t row = 0; row < readings.size(); ++row) rows[readings[row].month].push_back(row);
  std::vector<MonthReadings> months;
  months.reserve(rows.size());
  for (const auto& [month, of_month] : rows) months.push_back(summed(month, of_month, readings));
  return months;
}

}  // namespace core::water
