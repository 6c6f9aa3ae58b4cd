#pragma once

#include "core/water/map.h"
#include "core/water/water_plan.h"
#include "tests/support/recorder.h"
#include "ui/drawings/water_charts.h"

#include <QPainter>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace support {

/// Invented water balances for the drawings: a wet season from June on, need highest before the rains.
inline constexpr int kFirstMonth = 5;
core::water::WaterPlan samplePlan(double full_m3, double need_scale = 1);
core::water::ReliabilityMap sampleMap(double most_full_m3, double most_area_m2, std::size_t cells = 64);

struct Marks {
  std::optional<int> day, month, point;
  std::optional<QPoint> cell;
  ui::drawings::Refining refining = ui::drawings::Refining::no;
};

/// What a chart is drawn of.
struct Subject {
  core::water::WaterPlan plan = samplePlan(22.5);
  core::water::ReliabilityMap map = sampleMap(56, 300);
  double target = 8;
  Marks marks = {};
};

/// Subjects that differ in size, in what occurs and in where texts fall.
std::vector<Subject> subjects();

using DrawChart = std::function<void(QPainter&, const QRectF&, const Subject&, const ui::Formatter&,
                                     const ui::drawings::Style&)>;
struct NamedChart {
  std::string name;
  DrawChart draw;
};
const std::vector<NamedChart>& allCharts();
const DrawChart& chart(const std::string& name);

ui::Formatter english(ui::UnitSystem system = ui::UnitSystem::metric);
const std::vector<ui::Formatter>& readers();
ui::drawings::Style screen(bool dark = false);

inline const QRectF kSheet(15, 30, 182, 110);  // room of a chart on an A4 sheet
inline const QRectF kPane(4, 4, 230, 120);     // in a window of 1366 by 768 pixels at 96 to the inch

/// A chart as it reached the paint device.
struct DrawnChart : Recorder {
  DrawnChart(const DrawChart& draw, const QRectF& box, const Subject& subject, const ui::Formatter& format,
             const ui::drawings::Style& style);
};

/// Faults but for the rules that hold for paper alone.
QStringList faultsOnScreen(const Recorder& recorder, const QRectF& box);

/// Relative luminance, and contrast ratio, as WCAG 2.1 defines them.
double luminance(const QColor& colour);
double contrast(const QColor& a, const QColor& b);

}  // namespace support
