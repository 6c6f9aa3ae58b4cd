#pragma once

#include "core/works/schedule.h"
#include "ui/drawings/drawings.h"

#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <optional>

namespace ui::drawings {

/// Charts of the works. On paper (`style.fixed_scale`) black only; on a screen the same in colours that also
/// tell apart by lightness. Where there is nothing to draw, a sentence says why.

/// Bars of all tasks over the days: names at the left, rest and closed days shaded, critical bars marked
/// besides their colour, float as a thin line behind the bar, wetting hatched, fill_by a triangle.
/// @param shifted_days the marked bar is drawn so many days later (a drag under way), outlined
void drawWorkBars(QPainter& painter, const QRectF& box_mm, const core::works::Works& works,
                  const Formatter& format, const Style& style, std::optional<int> marked_task = {},
                  int shifted_days = 0);
/// Height that all bars need at their best [mm].
double workBarsHeight(const core::works::Works& works, const Formatter& format, const Style& style);
/// Index into Works::schedule of the row under a place.
std::optional<int> workBarAt(const QRectF& box_mm, QPointF at, const core::works::Works& works,
                             const Formatter& format, const Style& style);
/// Width of one day [mm], to turn a drag into days.
double workBarDayWidth(const QRectF& box_mm, const core::works::Works& works, const Formatter& format,
                       const Style& style);
/// "Coat 1: 14 Mar, 1 day, 14 people; no room to slip": one or two lines.
QString workBarReading(const core::works::Works& works, int task, const Formatter& format);

/// People on each day, stacked by skill. Places are indices of Works::days.
void drawPeople(QPainter& painter, const QRectF& box_mm, const core::works::Works& works,
                const Formatter& format, const Style& style, std::optional<int> marked_day = {});
std::optional<int> peopleDayAt(const QRectF& box_mm, QPointF at, const core::works::Works& works,
                               const Formatter& format, const Style& style);
/// "14 March: 11 labourers, 3 masons, 1 person wetting, 340 L for wetting".
QString peopleReading(const core::works::Works& works, int day, const Formatter& format);

/// Water level day by day of the first filling, and bars of the bands of wall with the days their sacks stay
/// wet. Places are indices of Filling::days.
void drawFilling(QPainter& painter, const QRectF& box_mm, const core::works::Filling& filling,
                 const Formatter& format, const Style& style, std::optional<int> marked_day = {});
std::optional<int> fillingDayAt(const QRectF& box_mm, QPointF at, const core::works::Filling& filling,
                                const Formatter& format, const Style& style);
QString fillingReading(const core::works::Filling& filling, int day, const Formatter& format);

/// Chance of undisturbed coats in each of the 52 weeks; the planned week and the best one are marked.
/// Places are weeks.
void drawWeatherWindow(QPainter& painter, const QRectF& box_mm, const core::works::WeatherWindow& window,
                       const Formatter& format, const Style& style, std::optional<int> marked_week = {});
std::optional<int> weekAt(const QRectF& box_mm, QPointF at, const core::works::WeatherWindow& window,
                          const Formatter& format, const Style& style);
/// "Week from 5 March: undisturbed 8 times of 10; heavy rain 12 %, frost 0 %, heat 8 %".
QString weekReading(const core::works::WeatherWindow& window, int week, const Formatter& format);

}  // namespace ui::drawings
