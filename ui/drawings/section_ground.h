#pragma once

#include "core/site/site_plan.h"
#include "ui/drawings/section_shape.h"

#include <QPointF>
#include <QPolygonF>
#include <optional>

namespace ui::drawings {

/// Ground beside the tank in its section, on paper as SectionShape draws it.
struct SectionGround {
  QPolygonF left, right;  ///< finished ground, from left to right, the pit edge left out
  QPolygonF natural;      ///< natural ground along all of it; empty on level ground
  QPointF named;          ///< on the natural ground where it lies farthest from the finished one

  double fromX() const { return left.front().x(); }
  double toX() const { return right.back().x(); }
  bool hasRelief() const { return !natural.isEmpty(); }
  /// The finished ground with the pit edge between.
  QPolygonF line(const QPainterPath& pit_edge) const;
  /// As it lies before the platform is made.
  void leaveNatural();
  /// Height on paper of the ground shown at a place.
  double heightAt(double x) const;
  /// Highest point of finished and natural ground on the right between two places [mm].
  double topBetween(double from_x, double to_x) const;
  /// Lowest point of both from a place to the right [mm].
  double bottomFrom(double from_x) const;
  /// The pit edge, or the natural ground over it where nothing was made yet.
  QPainterPath edge(const QPainterPath& pit_edge, bool is_platform_made) const;
};

/// Level ground as far as `beyond_mm` beyond rim collar and pit, or the real ground line a little beyond the
/// works, and a metre beyond rim collar and pit at most.
SectionGround sectionGround(const core::site::SitePlan& site, const SectionShape& shape, double beyond_mm);

}  // namespace ui::drawings
