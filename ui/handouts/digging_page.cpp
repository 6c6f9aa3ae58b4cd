#include "core/site/thresholds.h"
#include "ui/drawings/drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/stage_pictures.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::works::Earthwork;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kPicture_mm = 62;
constexpr double kBoard_mm = 150, kHeading_mm = 14;

QString metres(double value, const Formatter& format, int decimals = 2) {
  return format.quantity(value, Unit::metre, decimals);
}

QString volume(double value, const Formatter& format) {
  return format.quantity(value, Unit::cubic_metre, 1);
}

QString size(double length_m, double width_m, const Content& content) {
  const QString length = metres(length_m, content.format);
  if (content.plan.geometry.outline().isCircle()) return Text::tr("%1 across").arg(length);
  return Text::tr("%1 × %2", "length by width").arg(length, metres(width_m, content.format));
}

void addSafeSteps(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  addStep(sheet, neverAloneStep());
  addSteps(
      sheet,
      {{{"ladder"},
        Text::tr("From %1 deep on a ladder stands in the pit, close to those who dig, until the last one "
                 "is out.")
            .arg(limitLength("pit.ladder_from", words::Rounding::down, format)),
        true},
       {{"spoil_back"},
        Text::tr("Throw the spoil %1 or more back from the edge. No stones, tools, bags or animals nearer "
                 "than that.")
            .arg(limitLength("spoil.setback", words::Rounding::up, format)),
        true},
       {{"fence"}, Text::tr("Fence the pit, by night and on rest days too. Children stay away."), true}});
}

void addDigSteps(Sheet& sheet, const Content& content) {
  const QString step = metres(content.plan.setting_out.batter.front().below_ground_m, content.format);
  addSteps(
      sheet,
      {{{"peg_and_string"},
        Text::tr("Dig inside the strings. Leave the pegs where they stand: all sizes are measured from "
                 "them.")},
       {{"dig"},
        Text::tr("Take the whole floor down evenly, no more than %1 at a time. Never dig under a wall.")
            .arg(step)},
       {{"square_corner"},
        Text::tr("After every such step hold the batter board against the walls and check sides and "
                 "diagonals (sheet M5). Cut off what stands out; do not fill what was dug too far with "
                 "loose earth.")},
       {{"cave_in"},
        Text::tr("Watch walls and edge. Cracks along the edge, bulging, falling crumbs or water in the "
                 "wall: everybody out at once, and ask before going on."),
        false,
        true},
       {{"no_rain"},
        Text::tr("Stop in rain. Lead water away from the edge. Go in again only when the walls have been "
                 "looked at all round.")},
       {{"ram"},
        Text::tr("Dig the last hand's breadth by scraping, to the rod's mark for the pit floor; then ram "
                 "the floor.")}});
}

void addDeepCaution(Sheet& sheet, const Content& content) {
  const double deep_m = core::site::threshold("pit.cave_in_from").value;
  if (content.plan.earthwork.pit_depth_m < deep_m) return;
  addStep(sheet, {{"cave_in"},
                  Text::tr("This pit gets deeper than %1. Walls of that height bury people: ask a licensed "
                           "engineer how far they must lean or be propped, and follow the local code.")
                      .arg(limitLength("pit.cave_in_from", words::Rounding::down, content.format)),
                  false,
                  true});
}

void addHeap(Rows& rows, const Content& content) {
  const auto& [project, plan, format] = content;
  if (plan.earthwork.spoil_loose_m3)
    rows.push_back({Text::tr("Loose spoil left over"), volume(*plan.earthwork.spoil_loose_m3, format)});
  if (!plan.site.heap) return;
  rows.push_back({Text::tr("Heap of it"), Text::tr("%1 high, %2 across")
                                              .arg(metres(plan.site.heap->height_m, format, 1),
                                                   metres(2 * plan.site.heap->base_radius_m, format, 1))});
}

void addPitSizes(Sheet& sheet, const Content& content) {
  const Earthwork& pit = content.plan.earthwork;
  Rows rows{{Text::tr("Pit at the ground"), size(pit.pit_top_length_m, pit.pit_top_width_m, content)},
            {Text::tr("Pit at its floor"), size(pit.pit_floor_length_m, pit.pit_floor_width_m, content)},
            {Text::tr("Pit depth, ground to pit floor"), metres(pit.pit_depth_m, content.format)},
            {Text::tr("To dig for the pit, as it lies"), volume(pit.pit_volume_m3, content.format)}};
  addHeap(rows, content);
  for (auto& row : rows) row.back().strong = true;
  sheet.table({{Text::tr("What is dug, before any lining"), 0.5}, {QString(), 0.5, CellAlign::right}}, rows);
}

}  // namespace

void buildDigging(Sheet& sheet, const Content& content) {
  addDeepCaution(sheet, content);
  addSafeSteps(sheet, content);
  addDigSteps(sheet, content);
  sheet.heading(Text::tr("The pit when it is dug"));
  const core::geometry::Built dug = builtAt(content, "dug");
  sheet.drawing(kPicture_mm, [&content, dug](QPainter& painter, const QRectF& box) {
    drawings::drawSectionPicture(painter, box, content.plan, {}, drawings::SectionCut::across, dug);
  });
  sheet.space(3);
  addPitSizes(sheet, content);
  sheet.breakPage();
  sheet.heading(Text::tr("The board for the lean of the dug wall"));
  sheet.drawing(std::min(kBoard_mm, sheet.height() - kHeading_mm),
                [&content](QPainter& painter, const QRectF& box) {
                  drawings::drawBatterBoard(painter, box, content.plan, content.format, {});
                });
}

}  // namespace ui::handouts
