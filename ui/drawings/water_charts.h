#pragma once

#include "core/water/map.h"
#include "core/water/water_plan.h"
#include "ui/drawings/drawings.h"

#include <QPainter>
#include <QPoint>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <optional>

namespace ui::drawings {

/// Charts of the water balance. On paper (`style.fixed_scale`) they are lines, hatches and solids in black;
/// on a screen the same in colours that also tell apart by lightness. A chart without data is a sentence that
/// says what is missing; a box too small for a chart stays empty.
///
/// What is marked is shown with its reading beside it. The `...At` functions give what the drawing shows at a
/// place, or nothing beside the plot; they lay the chart out as the drawing does, so the box, the formatter
/// and the style must be those of the drawing. The `...Reading` functions put the same into words, a line or
/// two.

/// Water in the tank through the year: all years, eight years in ten, the middle year. Days are indices of
/// `WaterPlan::band`.
void drawLevelChart(QPainter& painter, const QRectF& box_mm, const core::water::WaterPlan& plan,
                    const Formatter& format, const Style& style, std::optional<int> marked_day = {});
std::optional<int> dayAt(const QRectF& box_mm, QPointF at, const core::water::WaterPlan& plan,
                         const Formatter& format, const Style& style);
QString levelReading(const core::water::WaterPlan& plan, int day, const Formatter& format);

/// What comes in and what is needed, a pair of bars a month from the weather year's first on. Months are 0 to
/// 11, January first.
void drawFlowsChart(QPainter& painter, const QRectF& box_mm, const core::water::WaterPlan& plan,
                    const Formatter& format, const Style& style, std::optional<int> marked_month = {});
std::optional<int> monthAt(const QRectF& box_mm, QPointF at, const core::water::WaterPlan& plan,
                           const Formatter& format, const Style& style);
QString flowsReading(const core::water::WaterPlan& plan, int month, const Formatter& format);

/// Whether a finer map is still being worked out.
enum class Refining { no, yes };

/// What a map is drawn with besides its cells.
struct MapView {
  double target_years_in_ten = 8;
  std::optional<QPoint> marked_cell = {};  ///< column and row
  Refining refining = Refining::no;
};

/// Years in ten by size of the tank and area of the beds, with the tank and beds as entered.
void drawReliabilityMap(QPainter& painter, const QRectF& box_mm, const core::water::ReliabilityMap& map,
                        const core::water::WaterPlan& plan, const Formatter& format, const Style& style,
                        const MapView& view);
std::optional<QPoint> cellAt(const QRectF& box_mm, QPointF at, const core::water::ReliabilityMap& map,
                             const Formatter& format, const Style& style);
QString mapReading(const core::water::ReliabilityMap& map, QPoint cell, const Formatter& format);

/// Years in ten by size of the tank, at the beds as entered. Points are indices of `WaterPlan::storage`.
void drawStorageChart(QPainter& painter, const QRectF& box_mm, const core::water::WaterPlan& plan,
                      const Formatter& format, const Style& style, double target_years_in_ten,
                      std::optional<int> marked_point = {});
std::optional<int> storagePointAt(const QRectF& box_mm, QPointF at, const core::water::WaterPlan& plan,
                                  const Formatter& format, const Style& style);
QString storageReading(const core::water::WaterPlan& plan, int point, const Formatter& format);

}  // namespace ui::drawings
