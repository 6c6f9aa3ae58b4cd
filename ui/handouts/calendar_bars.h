#pragma once

#include "core/works/schedule.h"

#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <vector>

namespace ui::handouts {

/// Room for the sign of a task that leaves no room, before its name [mm].
inline constexpr double kCriticalSign_mm = 5.5;

/// Days that the bars of the work calendar cover.
struct BarSpan {
  core::works::Day first;
  int days;
  bool runs_on;  ///< something lies later than they reach
};

/// Sacks are kept wet; nothing else is done.
bool isWetting(const core::works::Task& task);

/// From the first day to the last one, but no more days than can be told apart on paper.
BarSpan barSpan(const std::vector<core::works::Task>& tasks);

/// Work is solid, wetting hatched, filling and watching open, a last day a triangle. What lies later than the
/// bars reach is an arrow at the right.
void paintBar(QPainter& painter, const core::works::Task& task, const BarSpan& span, const QRectF& row);

/// Black diamond.
void paintCriticalSign(QPainter& painter, QPointF top_left);

}  // namespace ui::handouts
