#pragma once

#include "core/works/build_days.h"
#include "ui/handouts/handout.h"
#include "ui/handouts/sheet.h"

#include <QPainter>
#include <QRectF>
#include <QString>
#include <string_view>
#include <vector>

namespace ui::handouts {

/// The stages of the works, each with the first day at whose end the tank is as far or further; without dates
/// where there are no works or the day never comes.
std::vector<core::works::BuildDay> datedStages(const Content& content);

/// The tank at a stage of the works, finished where there is no such stage.
core::geometry::Built builtAt(const Content& content, std::string_view stage);

/// Draws the tank as far as it is built.
void drawStage(QPainter& painter, const QRectF& box_mm, const core::Plan& plan,
               const core::geometry::Built& built);

struct StagePicture {
  core::geometry::Built built;
  QStringList caption;  ///< one line each, the first one heavy
};

/// Adds pictures of stages side by side under their captions, a row `high_mm` high with room for `columns` of
/// them. @pre the plan outlives the sheet
void addStagePictures(Sheet& sheet, const core::Plan& plan, const std::vector<StagePicture>& pictures,
                      int columns, double high_mm);

}  // namespace ui::handouts
