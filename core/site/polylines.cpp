#include "core/site/polylines.h"

#include <cmath>
#include <cstddef>
#include <map>
#include <utility>

namespace core::site {
namespace {

using Index = std::uint32_t;
using Step = std::array<Index, 2>;

/// Steps by their points; each is walked once.
class Walker {
public:
  explicit Walker(const std::vector<Step>& steps) : steps_(steps), walked_(steps.size(), false) {
    for (Index k = 0; k < steps.size(); ++k) {
      at_[steps[k][0]].push_back(k);
      at_[steps[k][1]].push_back(k);
    }
  }

  std::vector<std::vector<Index>> all() {
    std::vector<std::vector<Index>> runs;
    for (const auto& [point, touching] : at_) {
      if (touching.size() != 2) walkFrom(point, touching, runs);  // ends and forks first, rings after
    }
    for (const auto& [point, touching] : at_) walkFrom(point, touching, runs);
    return runs;
  }

private:
  const std::vector<Step>& steps_;
  std::vector<bool> walked_;
  std::map<Index, std::vector<Index>> at_;

  void walkFrom(Index point, const std::vector<Index>& touching, std::vector<std::vector<Index>>& runs) {
    for (const Index step : touching) {
      if (!walked_[step]) runs.push_back(run(point, step));
    }
  }

  std::vector<Index> run(Index point, Index step) {
    std::vector<Index> points{point};
    while (!walked_[step]) {
      walked_[step] = true;
      point = steps_[step][0] == point ? steps_[step][1] : steps_[step][0];
      points.push_back(point);
      const std::vector<Index>& touching = at_.at(point);
      if (touching.size() != 2) break;
      step = walked_[touching[0]] ? touching[1] : touching[0];
    }
    return points;
  }
};

}  // namespace

std::vector<std::vector<Index>> joined(const std::vector<Step>& steps) {
  return Walker(steps).all();
}

Welder::Cell Welder::cellOf(const Eigen::Vector3d& p) const {
  const auto whole = [&](double x) { return static_cast<std::int64_t>(std::floor(x / (2 * within_m_))); };
  return {whole(p.x()), whole(p.y()), whole(p.z())};
}

std::vector<Welder::Entry>& Welder::bucketOf(const Cell& cell) {
  std::uint64_t hash = 0;
  for (const std::int64_t k : cell) hash = (hash ^ static_cast<std::uint64_t>(k)) * 0x9E3779B97F4A7C15ULL;
  return table_[static_cast<std::size_t>((hash >> 20) % table_.size())];
}

void Welder::grow() {
  std::vector<std::vector<Entry>> old(4 * table_.size());
  std::swap(old, table_);
  for (const auto& bucket : old) {
    for (const Entry& entry : bucket) bucketOf(entry.cell).push_back(entry);
  }
}

Index Welder::add(const Eigen::Vector3d& p) {
  const Cell home = cellOf(p);
  for (std::int64_t x = home[0] - 1; x <= home[0] + 1; ++x) {
    for (std::int64_t y = home[1] - 1; y <= home[1] + 1; ++y) {
      for (std::int64_t z = home[2] - 1; z <= home[2] + 1; ++z) {
        const Cell cell{x, y, z};
        for (const Entry& entry : bucketOf(cell)) {
          if (entry.cell == cell && (points_[entry.point] - p).cwiseAbs().maxCoeff() <= within_m_)
            return entry.point;
        }
      }
    }
  }
  if (points_.size() > 2 * table_.size()) grow();
  points_.push_back(p);
  bucketOf(home).push_back({home, static_cast<Index>(points_.size() - 1)});
  return static_cast<Index>(points_.size() - 1);
}

}  // namespace core::site
