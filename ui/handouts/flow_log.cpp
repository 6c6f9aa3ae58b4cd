#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr int kLeastRows = 6;

}  // namespace

void buildFlowLog(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  const auto seconds = [&](int count) { return format.quantity(count, core::Unit::second, 0); };
  sheet.paragraph(
      Text::tr("How much does the tap or spring give? Catch all of its water in a vessel of known size and "
               "take the time until it is full."));
  sheet.task(Text::tr("Take a vessel that needs %1 or longer to fill; a larger one where it fills sooner.")
                 .arg(seconds(3)));
  sheet.task(Text::tr("Fill it, read the seconds, empty it, and do it again: more than %1 readings each time "
                      "you come. One line for each reading.")
                 .arg(format.integer(3)));
  sheet.task(
      Text::tr("Where it fills quickly, fill it several times running: a stroke in the tally for each time, "
               "and the seconds for all of them together."));
  sheet.task(
      Text::tr("Come back in every month, above all in the driest. The flow of the dry months decides."));
  sheet.paragraph(
      Text::tr("Litres in a minute: litres of the vessel × strokes × %1 ÷ seconds.").arg(format.integer(60)),
      kStrong);
  addWriteLine(sheet, {Text::tr("Tap or spring:")});
  addWriteLine(sheet, {Text::tr("Measured by:")});
  addWriteTable(sheet,
                {{Text::tr("Date"), 0.18},
                 {Text::tr("Vessel, litres"), 0.14},
                 {Text::tr("Seconds"), 0.15},
                 {Text::tr("Times filled, tally"), 0.2},
                 {Text::tr("Remarks: weather, hours it runs"), 0.33}},
                0, kLeastRows);
}

}  // namespace ui::handouts
