#include "ui/drawings/section_ground.h"

#include "ui/drawings/paper.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ui::drawings {
namespace {

using core::site::GroundSample;

constexpr double kBeyond_m = 1.5;    // natural ground shown outside the works
constexpr double kMost_m = 1;        // ground shown outside rim collar and pit
constexpr double kWorked_m = 0.005;  // ground that differs less was not worked

bool isLevelWithRim(const GroundSample& sample, double rim_m) {
  return std::abs(sample.finished_m - rim_m) < kWorked_m;
}

/// Samples from a little outside the works on the left to the same on the right.
std::vector<GroundSample> shownSamples(const std::vector<GroundSample>& line, double rim_m) {
  double from = 0, to = 0;
  for (const GroundSample& sample : line) {
    const bool worked = std::abs(sample.finished_m - sample.natural_m) > kWorked_m;
    if (!worked && !isLevelWithRim(sample, rim_m)) continue;
    from = std::min(from, sample.along_m);
    to = std::max(to, sample.along_m);
  }
  std::vector<GroundSample> shown;
  std::ranges::copy_if(line, std::back_inserter(shown), [&](const GroundSample& sample) {
    return from - kBeyond_m <= sample.along_m && sample.along_m <= to + kBeyond_m;
  });
  return shown;
}

double edgeOffset(const core::geometry::TankGeometry& tank) {
  return collarReach(tank).value_or(tank.pitOffset(tank.depth()));
}

SectionGround levelGround(const SectionShape& shape, double beyond_mm) {
  const double from = shape.left(edgeOffset(shape.tank())) - beyond_mm;
  const double to = shape.right(edgeOffset(shape.tank())) + beyond_mm;
  return {{{from, 0}}, {{to, 0}}, {}, {}};
}

}  // namespace

QPolygonF SectionGround::line(const QPainterPath& pit_edge) const {
  QPolygonF all = left;
  for (int k = 0; k < pit_edge.elementCount(); ++k) all << pit_edge.elementAt(k);
  return all + right;
}

void SectionGround::leaveNatural() {
  if (natural.isEmpty()) return;
  const double from = left.back().x(), to = right.front().x();
  QPolygonF before, after;
  for (const QPointF& p : natural) {
    if (p.x() <= from) before << p;
    if (p.x() >= to) after << p;
  }
  left = before;
  right = after;
}

double SectionGround::heightAt(double x) const {
  const QPolygonF all = left + right;
  const auto after = std::ranges::lower_bound(all, x, {}, [](const QPointF& p) { return p.x(); });
  if (after == all.end()) return all.back().y();
  if (after == all.begin()) return all.front().y();
  const QPointF &a = *(after - 1), &b = *after;
  return b.x() - a.x() < 1e-9 ? b.y() : a.y() + (x - a.x()) / (b.x() - a.x()) * (b.y() - a.y());
}

double SectionGround::topBetween(double from_x, double to_x) const {
  double top = std::min(heightAt(from_x), heightAt(to_x));
  for (const QPolygonF& line : {right, natural}) {
    for (const QPointF& p : line) {
      if (from_x <= p.x() && p.x() <= to_x) top = std::min(top, p.y());
    }
  }
  return top;
}

double SectionGround::bottomFrom(double from_x) const {
  double bottom = heightAt(from_x);
  for (const QPolygonF& line : {right, natural}) {
    for (const QPointF& p : line) {
      if (from_x <= p.x()) bottom = std::max(bottom, p.y());
    }
  }
  return bottom;
}

QPainterPath SectionGround::edge(const QPainterPath& pit_edge, bool is_platform_made) const {
  if (is_platform_made || natural.isEmpty()) return pit_edge;
  QPainterPath path(left.back());
  for (const QPointF& p : natural) {
    if (p.x() > left.back().x() && p.x() < right.front().x()) path.lineTo(p);
  }
  path.lineTo(right.front());
  return path;
}

SectionGround sectionGround(const core::site::SitePlan& site, const SectionShape& shape, double beyond_mm) {
  SectionGround ground = levelGround(shape, beyond_mm);
  if (!site.has_relief) return ground;
  const double rim_m = shape.tank().depth();
  const double left = shape.left(edgeOffset(shape.tank())), right = shape.right(edgeOffset(shape.tank()));
  QPolygonF before, after, natural;
  double farthest = 0;
  for (const GroundSample& sample :
       shownSamples(shape.cut() == SectionCut::along ? site.along : site.across, rim_m)) {
    const double x = shape.mm(sample.along_m);
    if (x < left - shape.mm(kMost_m) || right + shape.mm(kMost_m) < x) continue;
    const QPointF finished(x, shape.level(sample.finished_m));
    natural << QPointF(x, shape.level(sample.natural_m));
    if (x < left) before << finished;
    if (x <= right) continue;
    after << finished;
    const double apart = std::abs(finished.y() - natural.back().y());
    if (apart >= farthest) ground.named = natural.back();
    farthest = std::max(farthest, apart);
  }
  if (before.isEmpty() || after.isEmpty()) return ground;
  ground.left = before;
  ground.right = after;
  ground.natural = natural;
  return ground;
}

}  // namespace ui::drawings
