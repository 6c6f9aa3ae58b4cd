#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;

QString parts(double value, const Formatter& format) {
  return format.number(value, Unit::part, std::abs(value - std::round(value)) < 0.005 ? 0 : 1);
}

void addCleaning(Sheet& sheet) {
  sheet.heading(Text::tr("Cleaning, each year before the rains"));
  addSteps(
      sheet,
      {{{"two_people", "ladder"},
        Text::tr("Two people, never one alone in the tank, not even in an empty one. Ladder to the floor; "
                 "get out when you feel dizzy."),
        true,
        true},
       {{"calendar"},
        Text::tr("Choose the weeks when the tank is nearly empty and the rains are near. Draw the last "
                 "water for the beds."),
        true},
       {{"clean"},
        Text::tr("Loosen the silt with a soft brush and a wooden scoop. No spade, no hoe, no wire brush: "
                 "they cut the plaster."),
        true},
       {{"bucket"},
        Text::tr("Lift the silt out in buckets, the bucket never over someone's head. Silt is good soil: "
                 "spread it on the beds as manure."),
        true},
       {{"crack"},
        Text::tr("Look for cracks on walls and floor while it is clean. Mark them with charcoal and mend "
                 "them now."),
        true},
       {{"wet_sacks", "fill"},
        Text::tr("Do not let the plaster dry out: it shrinks and cracks. Keep it wet and fill the tank again "
                 "within days."),
        true}});
}

/// The last coat's mix and its days under wet sacks.
void addMix(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  const core::Coat& coat = content.project.lining.coats.back();
  sheet.paragraph(
      Text::tr("Mortar, as for the last coat: %1 soil : %2 sand : %3 cement, by loose volume, mixed stiff.")
          .arg(parts(coat.soil, format), parts(coat.sand, format), parts(coat.cement, format)),
      kStrong);
}

void addMending(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Mending cracks"));
  addMix(sheet, content);
  const QString days = content.format.quantity(content.project.lining.coats.back().cure_days, Unit::day, 0);
  addSteps(
      sheet,
      {cementStep(),
       {{"sprinkle"},
        Text::tr("Hairline crack, thinner than a fingernail: brush it clean, wet it, and rub in cement "
                 "stirred with water to a cream."),
        true},
       {{"crack"},
        Text::tr("Open crack: cut it out to a groove like a V, as deep as it is wide, until sound plaster "
                 "shows. Brush out all dust and wet the groove well."),
        true},
       {{"mix_wet"},
        Text::tr("Rub cement cream into the wet groove, then press the mortar in hard, in two layers where "
                 "it is deep, and float it level with the old face."),
        true},
       {{"wet_sacks"},
        Text::tr("Wet sacks over the place for %1. Then fill, and make the leak test (sheet F6).").arg(days),
        true},
       {{"cave_in"},
        Text::tr("A wall that bulges, leans or sinks, or a crack that opens again after mending: do not go "
                 "in, let no more water in, and ask a licensed engineer. Mortar does not hold moving "
                 "ground."),
        false,
        true}});
}

}  // namespace

void buildCleaning(Sheet& sheet, const Content& content) {
  addCleaning(sheet);
  sheet.space(2);
  addWriteTable(sheet, {{Text::tr("Cleaned on"), 0.22},
                        {Text::tr("By whom"), 0.34},
                        {Text::tr("Silt, buckets"), 0.2},
                        {Text::tr("Filled again on"), 0.24}});
  sheet.breakPage();
  Sheet page({sheet.width(), sheet.height()});
  addMending(page, content);
  page.paragraph(Text::tr("How to clean and mend: %1.").arg(words::tagName(core::Tag::cp)));
  page.space(2);
  addWriteTable(page, {{Text::tr("Mended on"), 0.22},
                       {Text::tr("Where"), 0.34},
                       {Text::tr("By whom"), 0.2},
                       {Text::tr("Wet sacks until"), 0.24}});
  append(sheet, page);
}

}  // namespace ui::handouts
