#include "ui/handouts/page_table.h"
#include "ui/handouts/rulers.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr int kRuler_mm = 150, kJars = 3;

void addWork(Sheet& sheet, const Formatter& format) {
  const auto n = [&](int value) { return format.integer(value); };
  addSteps(
      sheet,
      {{{"soil", "sieve"},
        Text::tr("Take soil from below the roots, dry and crush it, sieve out stones and straw."),
        true},
       {{"jar", "water"},
        Text::tr(
            "Fill a clear jar with straight sides to a third with the soil. Add a pinch of salt or washing "
            "powder, and water until two fingers of air are left."),
        true},
       {{"stopwatch"},
        Text::tr("Shut it, shake it hard for %1 minutes, set it down level and do not move it again.")
            .arg(n(5)),
        true},
       {{"jar"},
        Text::tr(
            "After %1 minute mark the top of the sand on the jar, after %2 hours the top of the silt. When "
            "the water is clear, after %3 to %4 hours, mark the top of the clay.")
            .arg(n(1), n(2), n(24), n(48)),
        true},
       {{"tally"},
        Text::tr(
            "Fold the sheet along the ruler's edge, stand it at the jar with its zero at the jar's floor "
            "inside, and read how thick each layer is."),
        true}});
}

void addTable(Sheet& sheet, const Formatter& format) {
  QStringList jars;
  for (int k = 1; k <= kJars; ++k) jars << format.integer(k);
  addWriteRows(sheet,
               {{Text::tr("Jar"), 0.08},
                {Text::tr("Soil from where, how deep"), 0.3},
                {Text::tr("Sand, mm"), 0.12},
                {Text::tr("Silt, mm"), 0.12},
                {Text::tr("Clay, mm"), 0.12},
                {Text::tr("All, mm"), 0.12},
                {Text::tr("Clay, %"), 0.14}},
               jars);
}

}  // namespace

void buildJarForm(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  sheet.paragraph(Text::tr("How much clay is in the soil? In water sand sinks first, then silt, clay last."));
  addWork(sheet, format);
  sheet.space(2);
  addRuler(sheet, kRuler_mm, format);
  sheet.space(2);
  addTable(sheet, format);
  sheet.space(2);
  sheet.paragraph(Text::tr("Clay in the soil, in percent = clay ÷ all × %1.").arg(format.integer(100)),
                  kStrong);
  addWriteLine(sheet, {Text::tr("Date:"), Text::tr("Read by:")});
  sheet.paragraph(Text::tr("Type the thickness of each layer in on the tab %1.").arg(Text::tr("Notes")));
  sheet.paragraph(Text::tr("How the jar is done: %1. A laboratory measures it more exactly.")
                      .arg(words::tagName(core::Tag::cp)));
}

}  // namespace ui::handouts
