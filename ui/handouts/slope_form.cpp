#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr int kLeastSettings = 4, kMostSettings = 12;
constexpr double kHead_mm = 8;

void addWork(Sheet& sheet, const Formatter& format) {
  addSteps(
      sheet,
      {{{"fall_empty"},
        Text::tr("Two people who look where they step. Never walk backward toward the edge of a terrace or a "
                 "pit."),
        false,
        true},
       {{"water_level"},
        Text::tr("Take a clear hose of %1 to %2 m and two sticks with marks every centimetre. Fill the hose "
                 "until no bubble is left in it, and tie an end to each stick.")
            .arg(format.integer(10), format.integer(15)),
        true},
       {{"two_people"},
        Text::tr("One stick stands uphill, one straight downhill, both upright on the ground. Both ends of "
                 "the hose are open."),
        true},
       {{"water"},
        Text::tr("Wait until the water stands still: it is equally high at both ends. Read it on both "
                 "sticks, from the ground up."),
        true},
       {{"tally"},
        Text::tr("Drop = reading downhill less reading uphill; less than nothing where the ground rises. Run "
                 "= how far the sticks are apart, with the tape held level. Write both down."),
        true},
       {{"peg_and_string"},
        Text::tr("The uphill stick goes where the downhill one stood, and so on over the whole place of the "
                 "tank and some metres beyond."),
        true}});
}

/// As many settings as the page has room for over `below_mm`, and their sum.
void addRows(Sheet& sheet, const Formatter& format, double below_mm) {
  const double room = sheet.height() - sheet.used() - below_mm - kHead_mm;
  const int settings = std::clamp(static_cast<int>(room / kWriteRow_mm) - 1, kLeastSettings, kMostSettings);
  QStringList names;
  for (int k = 1; k <= settings; ++k) names << format.integer(k);
  names << Text::tr("Sum");
  addWriteRows(sheet,
               {{Text::tr("Setting"), 0.16},
                {Text::tr("Uphill, m"), 0.21},
                {Text::tr("Downhill, m"), 0.21},
                {Text::tr("Drop, m"), 0.21},
                {Text::tr("Run, m"), 0.21}},
               names);
}

}  // namespace

void buildSlopeForm(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  sheet.paragraph(Text::tr("How steep is the ground? Water in a hose stands equally high at both ends."));
  addWork(sheet, format);
  Sheet below({sheet.width(), sheet.height()});
  below.paragraph(
      Text::tr("Fall in percent = sum of the drops ÷ sum of the runs × %1.").arg(format.integer(100)),
      kStrong);
  addWriteLine(below, {Text::tr("Fall, %:"), Text::tr("Downhill toward, by compass:")});
  below.paragraph(Text::tr("Type runs and drops in on the tab %1.").arg(Text::tr("Notes")));
  below.paragraph(Text::tr("How the hose is used: %1.").arg(words::tagName(core::Tag::cp)));
  sheet.space(1);
  addRows(sheet, format, below.used() + 2);
  sheet.space(2);
  append(sheet, below);
}

}  // namespace ui::handouts
