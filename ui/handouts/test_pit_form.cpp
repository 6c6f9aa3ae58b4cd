#include "core/site/thresholds.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;

constexpr int kStrips = 3, kTenthsAMetre = 10;
constexpr double kStripsHigh_mm = 80;
constexpr double kScaleWide_mm = 16;

/// Strips to sketch the layers of pits into, beside a scale of depth in metres.
struct Strips {
  int depth_m;         ///< of the scale, whole metres
  double pit_floor_m;  ///< where the tank's pit will end
  double wide_mm, high_mm;
  double mmPerMetre() const { return high_mm / depth_m; }
};

void drawScale(QPainter& painter, QPointF at, const Strips& strips, const Formatter& format) {
  for (int tenth = 0; tenth <= kTenthsAMetre * strips.depth_m; ++tenth) {
    const double y = tenth * strips.mmPerMetre() / kTenthsAMetre;
    const bool is_metre = tenth % kTenthsAMetre == 0;
    const double length = is_metre ? 5 : tenth % 5 == 0 ? 3.5 : 2;
    painter.setPen(line(is_metre ? 0.35 : 0.25));
    painter.drawLine(at + QPointF(kScaleWide_mm - length, y), at + QPointF(kScaleWide_mm, y));
    if (!is_metre) continue;
    const QString number = format.integer(tenth / kTenthsAMetre);
    drawLines(painter, at + QPointF(0, y - lineHeight_mm(kBody) / 2), {number}, kBody, kScaleWide_mm - 6,
              CellAlign::right);
  }
}

void drawStrips(QPainter& painter, QPointF at, const Strips& strips) {
  const double step = (strips.wide_mm - kScaleWide_mm) / kStrips;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(line(0.5));
  for (int k = 0; k < kStrips; ++k)
    painter.drawRect(QRectF(at + QPointF(kScaleWide_mm + k * step, 0), QSizeF(step - 4, strips.high_mm)));
  QPen dashed = line(0.35);
  dashed.setDashPattern({6, 4});
  painter.setPen(dashed);
  const double floor = strips.pit_floor_m * strips.mmPerMetre();
  painter.drawLine(at + QPointF(kScaleWide_mm, floor), at + QPointF(strips.wide_mm - 4, floor));
}

void addStrips(Sheet& sheet, const Content& content) {
  const double pit_m = content.plan.earthwork.pit_depth_m;
  const Strips strips{static_cast<int>(std::floor(pit_m)) + 1, pit_m, sheet.width(), kStripsHigh_mm};
  const QStringList titles{Text::tr("Pit:"), Text::tr("Pit:"), Text::tr("Pit:")};
  const double title = lineHeight_mm(kBody) + 2;
  sheet.add({title + strips.high_mm + 4, [=, format = content.format](QPainter& painter, QPointF at) {
               const double step = (strips.wide_mm - kScaleWide_mm) / kStrips;
               for (int k = 0; k < kStrips; ++k)
                 drawLines(painter, at + QPointF(kScaleWide_mm + k * step, 0), {titles[k]}, kBody);
               drawScale(painter, at + QPointF(0, title), strips, format);
               drawStrips(painter, at + QPointF(0, title), strips);
             }});
}

QString soils() {
  QStringList names;
  for (const char* soil : {"stiff_clay", "firm_loam", "sandy", "loose_fill", "soft_wet", "rock"})
    names << words::choiceLabel("site.soil", soil);
  return names.join(QStringLiteral(", "));
}

void addCautions(Sheet& sheet, const Formatter& format) {
  const double deep_m = core::site::threshold("pit.cave_in_from").value;
  const QString deep = format.quantity(
      words::toShownStep(deep_m, Unit::metre, 1, format, words::Rounding::down), Unit::metre, 1);
  addStep(sheet,
          {{"cave_in"},
           Text::tr("A narrow pit caves in on whoever stands in it. Nobody climbs into one deeper than "
                    "the waist: look from above, lift soil out with the spade. Deeper than %1 only with "
                    "an auger or a wide, leaning pit.")
               .arg(deep),
           false,
           true});
  addStep(sheet,
          {{"two_people", "fence"},
           Text::tr("Two people at each pit. Fence or cover it while it is open, and fill it when it has "
                    "been logged: people and animals fall in."),
           false,
           true});
}

void addWork(Sheet& sheet, const Content& content) {
  const QString depth = content.format.quantity(content.plan.earthwork.pit_depth_m, Unit::metre, 2);
  addSteps(
      sheet,
      {{{"test_pit"},
        Text::tr("Dig or bore two or three, at the tank's place and beside it. The tank's pit will be %1 "
                 "deep (dashed line): go deeper.")
            .arg(depth),
        true},
       {{"soil"},
        Text::tr("Draw a line in the strip wherever the soil changes, and write one row of the log for each "
                 "layer. Soil is one of: %1.")
            .arg(soils()),
        true},
       {{"water"},
        Text::tr("Write how deep water comes in. Look again the next day, and in the wet months."),
        true}});
}

/// The log, on a page of its own.
void addLog(Sheet& sheet) {
  sheet.breakPage();
  Sheet page({sheet.width(), sheet.height()});
  page.paragraph(
      Text::tr("Hard: a pick is needed. Firm: the spade goes in under the foot. Soft: the thumb goes in."));
  page.paragraph(Text::tr("Type the layers in on the tab %1.").arg(Text::tr("Notes")));
  addWriteTable(page, {{Text::tr("Pit"), 0.1},
                       {Text::tr("From, m"), 0.13},
                       {Text::tr("To, m"), 0.13},
                       {Text::tr("Soil"), 0.28},
                       {Text::tr("Hard, firm or soft"), 0.18},
                       {Text::tr("Water at, m"), 0.18}});
  append(sheet, page);
}

}  // namespace

void buildTestPits(Sheet& sheet, const Content& content) {
  addCautions(sheet, content.format);
  addWork(sheet, content);
  sheet.space(2);
  addStrips(sheet, content);

  addWriteLine(sheet, {Text::tr("Date:"), Text::tr("Logged by:")});
  addLog(sheet);
}

}  // namespace ui::handouts
