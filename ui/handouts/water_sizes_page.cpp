#include "core/water/map.h"
#include "ui/drawings/water_charts.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/water_sizes.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <algorithm>
#include <atomic>
#include <memory>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::water::WaterPlan;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kLeastChart = 48, kMostChart = 115;
constexpr double kMapShare = 0.55;  // of the room for both pictures
constexpr double kBetween = 3;
constexpr std::size_t kMapCells = 32;
constexpr double kOfReach = 0.65;  // of a reach made for looking around on a screen

/// Reach of the printed map: what holds the present and the target, so that the picture is well used.
core::water::MapReach reachOf(const WaterPlan& water) {
  const double size = std::max(water.curve.full_m3, water.smallest_full_m3.value_or(0));
  const double area = std::max(water.bed_area_m2, water.largest_bed_area_m2.value_or(0));
  return core::water::mapReach(kOfReach * size, kOfReach * area);
}

core::water::ReliabilityMap mapOf(const WaterPlan& water) {
  const std::atomic<bool> never = false;
  return core::water::reliabilityMap(water.curve, *water.series, water.bed_area_m2, reachOf(water), kMapCells,
                                     1, never);
}

QString area(double area_m2, const Formatter& format) {
  return format.quantity(area_m2, Unit::square_metre, 0);
}

QString smallestTank(const WaterPlan& water, const Formatter& format) {
  const words::MetSize size = words::smallestTank(water, format);
  if (size.kind == words::MetSize::Kind::any) return Text::tr("almost any");
  return size.kind == words::MetSize::Kind::none ? Text::tr("none up to %1").arg(size.text) : size.text;
}

QString largestBeds(const WaterPlan& water, const Formatter& format) {
  const words::MetSize size = words::largestBeds(water, format);
  if (size.kind == words::MetSize::Kind::none) return Text::tr("none");
  return size.kind == words::MetSize::Kind::all_tried ? Text::tr("%1 or more").arg(size.text) : size.text;
}

void addAnswers(Sheet& sheet, const Content& content) {
  const WaterPlan& water = *content.plan.water;
  const Formatter& format = content.format;
  Rows rows{{Text::tr("Years in ten with water all year: wanted"),
             words::yearsInTenText(content.project.water->target_years_in_ten, format)},
            {Text::tr("Years in ten with water all year: as planned"),
             words::yearsInTenText(water.years_in_ten, format)},
            {Text::tr("This tank holds when full"), format.litres(water.curve.full_m3)},
            {Text::tr("Smallest tank for the years wanted, same depth"), smallestTank(water, format)}};
  if (water.bed_area_m2 > 0) {
    rows.push_back({Text::tr("Beds as entered"), area(water.bed_area_m2, format)});
    rows.push_back({Text::tr("Largest beds for the years wanted, this tank"), largestBeds(water, format)});
  }
  for (auto& row : rows) row[1].strong = true;
  sheet.table({{Text::tr("Question"), 0.7}, {Text::tr("Answer"), 0.3, CellAlign::right}}, rows);
}

void addMap(Sheet& sheet, const Content& content, double height_mm) {
  auto map = std::make_shared<const core::water::ReliabilityMap>(mapOf(*content.plan.water));
  sheet.drawing(height_mm, [&content, map](QPainter& painter, const QRectF& box) {
    drawings::drawReliabilityMap(painter, box, *map, *content.plan.water, content.format, {},
                                 {content.project.water->target_years_in_ten, {}, drawings::Refining::no});
  });
  sheet.space(kBetween);
}

void addStorage(Sheet& sheet, const Content& content, double height_mm) {
  sheet.drawing(height_mm, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawStorageChart(painter, box, *content.plan.water, content.format, {},
                               content.project.water->target_years_in_ten);
  });
}

}  // namespace

void buildWaterSizes(Sheet& sheet, const Content& content) {
  addAnswers(sheet, content);
  const bool has_beds = content.plan.water->bed_area_m2 > 0;
  if (has_beds)
    sheet.paragraph(
        Text::tr("Find the size of a tank at the foot of the first picture and the area of beds at its left: "
                 "where they meet it says in how many years of ten the water lasts."));
  const double left = sheet.height() - sheet.used() - kBetween;
  if (has_beds) addMap(sheet, content, std::clamp(kMapShare * left, kLeastChart, kMostChart));
  const double rest = has_beds ? (1 - kMapShare) * left : left;
  addStorage(sheet, content, std::clamp(rest, kLeastChart, kMostChart));
}

}  // namespace ui::handouts
