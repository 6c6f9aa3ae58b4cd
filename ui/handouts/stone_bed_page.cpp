#include "ui/drawings/drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/handouts/stage_pictures.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;

constexpr double kLeastPicture_mm = 30, kMostPicture_mm = 55;

const core::geometry::Layer& bedOf(const core::Plan& plan) {
  return *std::ranges::find(plan.layers, "stone_bed", &core::geometry::Layer::id);
}

/// Depth below the string of the top of the bed.
double topOfBed(const core::Plan& plan) {
  return plan.setting_out.mark("stone_bed_top").below_ground_m;
}

void addNumbers(Sheet& sheet, const Content& content) {
  const auto& [project, plan, format] = content;
  const core::geometry::Layer& bed = bedOf(plan);
  const double stone_m3 = core::lining::orderOf(plan.quantities, "stone");
  std::vector<std::vector<Cell>> rows{
      {Text::tr("Thickness, rammed"), drawings::thicknessText(bed.thickness_m, format)},
      {Text::tr("Area"), format.quantity(bed.area_m2, Unit::square_metre, 1)},
      {Text::tr("Stone to bring, loose"), format.quantity(stone_m3, Unit::cubic_metre, 2)},
      {Text::tr("Top of the bed below the string at ground level"),
       format.quantity(topOfBed(plan), Unit::metre, 3)}};
  for (auto& row : rows) row.back().strong = true;
  sheet.table({{Text::tr("Stone bed under the floor"), 0.7}, {QString(), 0.3, CellAlign::right}}, rows);
}

void addWork(Sheet& sheet, const Content& content) {
  const QString thick = drawings::thicknessText(bedOf(content.plan).thickness_m, content.format);
  addSteps(
      sheet,
      {{{"two_people", "lift_two"},
        Text::tr("Nobody goes into the pit alone. Heavy stones: two people. Hand them or let them down; "
                 "never throw stones into a pit where somebody stands."),
        false,
        true},
       {{"stone"},
        Text::tr("Take hard, clean stones, about %1 high when they stand on edge. No soft or rotten ones.")
            .arg(thick),
        true},
       {{"carry_stone"},
        Text::tr("Set them on edge on the rammed floor, close together, from the far side toward the "
                 "ladder."),
        true},
       {{"ram", "sand"},
        Text::tr("Ram them until none moves under the foot. Fill all gaps with gravel and small stones, and "
                 "ram again."),
        true},
       {{"water_level"},
        Text::tr("Check with string and rod in the middle and along all sides: the top lies %1 below the "
                 "string everywhere.")
            .arg(content.format.quantity(topOfBed(content.plan), Unit::metre, 3)),
        true},
       {{"sprinkle"}, Text::tr("Wash dust off and keep the bed moist until the first coat goes on."), true}});
}

}  // namespace

void buildStoneBed(Sheet& sheet, const Content& content) {
  Sheet below({sheet.width(), sheet.height()});
  addNumbers(below, content);
  addWork(below, content);
  const double high = std::clamp(sheet.height() - below.used(), kLeastPicture_mm, kMostPicture_mm);
  addStagePictures(sheet, content, {{builtAt(content, "stone_bed"), {words::stageName("stone_bed")}}}, 1,
                   high);
  append(sheet, below);
}

}  // namespace ui::handouts
