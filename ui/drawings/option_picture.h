#pragma once

#include "core/geometry/tank_geometry.h"
#include "ui/drawings/chart.h"

#include <QPointF>

#include <Eigen/Core>

namespace ui::drawings {

inline constexpr double kPerson_m = 1.65;  ///< height of the person drawn for scale
inline constexpr double kBeside_m = 0.6;   ///< ground shown beside the tank: room for the person
inline constexpr double kUnder_mm = 2.2;   ///< hatched ground under the ground line

/// How the plan lies under the section: its width across the paper as in the section, or its length.
enum class PlanLies { as_cut, lengthwise };

/// Width of tank and ground in the section [m].
double sectionWidth(const core::geometry::TankGeometry& tank);
/// Across the paper and down it [m].
Eigen::Vector2d planSize(const core::geometry::TankGeometry& tank, PlanLies lies);

/// The tank cut across its width: ground line, lining, water when full. @param rim middle of the tank at the
/// rim
void addOptionSection(Chart& chart, const core::geometry::TankGeometry& tank, double n, QPointF rim);
/// The tank seen from above, with a line where the section is cut. @param top middle of its upper edge
void addOptionPlan(Chart& chart, const core::geometry::TankGeometry& tank, double n, QPointF top,
                   PlanLies lies);
/// A person who stands with the feet at a place.
void addPerson(Chart& chart, QPointF feet, double n);

}  // namespace ui::drawings
