#include "ui/handouts/stage_pictures.h"

#include "ui/drawings/drawings.h"

#include <algorithm>

namespace ui::handouts {
namespace {

using core::works::BuildDay;

constexpr double kGap = 6, kBelow = 1;
constexpr double kLeastPicture = 26;  // smaller ones have no room for their scale

std::vector<BuildDay> stagesOf(const core::Plan& plan) {
  return core::works::buildStages(plan.geometry, plan.site.bench.has_value());
}

void drawCaption(QPainter& painter, QPointF at, const QStringList& caption, double width_mm) {
  for (const QString& text : caption) {
    const drawings::Lettering lettering = &text == &caption.front() ? kStrong : kBody;
    drawLines(painter, at, {elided(text, lettering, width_mm)}, lettering);
    at.ry() += lineHeight_mm(lettering);
  }
}

double captionHeight(const std::vector<StagePicture>& pictures) {
  qsizetype lines = 0;
  for (const StagePicture& picture : pictures) lines = std::max(lines, picture.caption.size());
  return static_cast<double>(lines) * lineHeight_mm(kStrong);
}

}  // namespace

std::vector<BuildDay> datedStages(const Content& content) {
  std::vector<BuildDay> stages = stagesOf(content.plan);
  if (!content.plan.works) return stages;
  const auto rank = [&](const BuildDay& day) {
    const auto found = std::ranges::find(stages, day.stage, &BuildDay::stage);
    return found == stages.end() ? -1 : found - stages.begin();
  };
  std::ptrdiff_t dated = 0;
  for (const BuildDay& day : core::works::buildDays(content.plan.geometry, *content.plan.works)) {
    for (; dated <= rank(day); ++dated) stages[static_cast<std::size_t>(dated)].date = day.date;
  }
  return stages;
}

core::geometry::Built builtAt(const Content& content, std::string_view stage) {
  const std::vector<BuildDay> stages = stagesOf(content.plan);
  const auto found = std::ranges::find(stages, stage, &BuildDay::stage);
  return found == stages.end() ? core::geometry::Built{} : found->built;
}

void drawStage(QPainter& painter, const QRectF& box_mm, const Content& content,
               const core::geometry::Built& built) {
  drawings::Style fit;
  fit.fixed_scale = false;
  drawings::drawIsometric(painter, box_mm, content.plan, content.format, fit, built);
}

void addStagePictures(Sheet& sheet, const Content& content, const std::vector<StagePicture>& pictures,
                      int columns, double high_mm) {
  const double wide = (sheet.width() - (columns - 1) * kGap) / columns;
  const double captions = captionHeight(pictures);
  const double picture_mm = std::max(kLeastPicture, high_mm - captions - kBelow);
  sheet.add({captions + picture_mm + kBelow, [=, &content](QPainter& painter, QPointF at) {
               for (const StagePicture& picture : pictures) {
                 drawCaption(painter, at, picture.caption, wide);
                 drawUnmirrored(painter, {at + QPointF(0, captions), QSizeF(wide, picture_mm)},
                                [&](QPainter& upright, const QRectF& box) {
                                  drawStage(upright, box, content, picture.built);
                                });
                 at.rx() += wide + kGap;
               }
             }});
}

}  // namespace ui::handouts
