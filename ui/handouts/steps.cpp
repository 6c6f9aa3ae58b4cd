#include "ui/handouts/steps.h"

#include "core/site/thresholds.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr double kTick = 5, kTickRoom = 8;
constexpr double kGap = 1.5;  // between pictures, and below a step
constexpr double kTextGap = 3;

}  // namespace

void addStep(Sheet& sheet, const Step& step, double picture_mm) {
  const double first = step.tick ? kTickRoom : 0;
  const double left = first + static_cast<double>(step.pictures.size()) * (picture_mm + kGap) + kTextGap;
  const drawings::Lettering lettering = step.strong ? kStrong : kBody;
  const QStringList lines = wrapped(step.text, lettering, sheet.width() - left);
  const double text = static_cast<double>(lines.size()) * lineHeight_mm(lettering);
  const double high = std::max(picture_mm, text);
  Block block{high + kGap, [=](QPainter& painter, QPointF at) {
                if (step.tick) drawTickBox(painter, at + QPointF(0.25, (high - kTick) / 2), kTick);
                QRectF box(at + QPointF(first, (high - picture_mm) / 2), QSizeF(picture_mm, picture_mm));
                for (const Pictogram& picture : step.pictures) {
                  drawPictogram(painter, box, picture.name());
                  box.translate(picture_mm + kGap, 0);
                }
                drawLines(painter, at + QPointF(left, (high - text) / 2), lines, lettering);
              }};
  block.white_mm = kGap;
  sheet.add(std::move(block));
}

void addSteps(Sheet& sheet, const std::vector<Step>& steps, double picture_mm) {
  for (const Step& step : steps) addStep(sheet, step, picture_mm);
}

QString limitLength(const char* key, words::Rounding rounding, const Formatter& format) {
  const double value =
      words::toShownStep(core::site::threshold(key).value, core::Unit::metre, 1, format, rounding);
  return format.quantity(value, core::Unit::metre, 1);
}

Step cementStep() {
  return {{"gloves", "boots", "goggles", "mask"},
          Text::tr("Wet cement burns, its dust harms the lungs. Wear all of these; wash splashes off at once "
                   "with much clean water."),
          false,
          true};
}

Step neverAloneStep() {
  return {
      {"two_people"},
      Text::tr("Nobody goes into the pit alone: one works, one stays at the top, watches the walls and can "
               "fetch help."),
      false,
      true};
}

}  // namespace ui::handouts
