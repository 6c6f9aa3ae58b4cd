#pragma once

#include "core/compare/search.h"
#include "core/cost/cost_plan.h"
#include "core/cost/ranges.h"
#include "core/option_result.h"
#include "core/project/project.h"
#include "ui/drawings/drawings.h"

#include <QPainter>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

namespace ui::drawings {

/// Charts of money and choice; rules as in works_charts.h.

/// Money needed each day (bars) and together up to then (line). Places are indices of CostPlan::days.
void drawMoneyDays(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                   const core::cost::CostPlan& plan, const Formatter& format, const Style& style,
                   std::optional<int> marked_day = {});
std::optional<int> moneyDayAt(const QRectF& box_mm, QPointF at, const core::Project& project,
                              const core::cost::CostPlan& plan, const Formatter& format, const Style& style);
QString moneyDayReading(const core::Project& project, const core::cost::CostPlan& plan, int day,
                        const Formatter& format);

/// Linings side by side: cost a year, split into capital and upkeep. Places are indices of
/// CostPlan::linings.
void drawLinings(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                 const core::cost::CostPlan& plan, const Formatter& format, const Style& style,
                 std::optional<int> marked_lining = {});
std::optional<int> liningAt(const QRectF& box_mm, QPointF at, const core::Project& project,
                            const core::cost::CostPlan& plan, const Formatter& format, const Style& style);
QString liningReading(const core::Project& project, const core::cost::CostPlan& plan, int lining,
                      const Formatter& format);

/// One outcome: P10 to P90 as a bar with the median and the typical value, and below it what drives it.
/// Places are indices of Spread::drivers.
void drawSpread(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                const core::cost::Spread& spread, const Formatter& format, const Style& style,
                std::optional<int> marked_driver = {});
std::optional<int> driverAt(const QRectF& box_mm, QPointF at, const core::Project& project,
                            const core::cost::Spread& spread, const Formatter& format, const Style& style);
/// Height that leaves each driver its name [mm].
double spreadHeight_mm(const core::cost::Spread& spread);
QString driverReading(const core::cost::Spread& spread, int driver, const Formatter& format);

/// Money (or bags) against years in ten without a dry day (or water held); the present tank is a cross.
/// Places are indices of SearchResult::frontier.
void drawFrontier(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                  const core::compare::SearchResult& result,
                  const std::optional<core::compare::Candidate>& present, const Formatter& format,
                  const Style& style, std::optional<int> marked = {});
std::optional<int> frontierAt(const QRectF& box_mm, QPointF at, const core::Project& project,
                              const core::compare::SearchResult& result,
                              const std::optional<core::compare::Candidate>& present, const Formatter& format,
                              const Style& style);

/// The options beside each other at one scale: section through each tank over its plan, with its title.
void drawOptions(QPainter& painter, const QRectF& box_mm, const std::vector<core::OptionResult>& options,
                 const Formatter& format, const Style& style);

}  // namespace ui::drawings
