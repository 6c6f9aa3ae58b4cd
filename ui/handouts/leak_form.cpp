#include "ui/handouts/leak_form.h"

#include "core/hydraulics/figures.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <string>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;

QString perDay(std::string_view band, const Formatter& format) {
  return format.quantity(core::hydraulics::typical(band), Unit::mm_per_day, 0);
}

void addSteps(Sheet& sheet) {
  sheet.paragraph(Text::tr(
      "Does the tank lose water through its lining? The sun takes water too. A bucket that floats in "
      "the tank shows how much; what the tank loses more has leaked."));
  sheet.task(
      Text::tr("Fill the tank to the overflow. A new tank stands full for some days first, for dry "
               "plaster drinks. Choose days without rain."));
  sheet.task(Text::tr("Shut inlet and outlet. No one draws water until the test is over."));
  sheet.task(
      Text::tr("Set a light bucket afloat, tied so that it stands clear of the walls. Fill it with water "
               "until only a hand's breadth of it stays dry, so that it floats upright and deep."));
  sheet.task(
      Text::tr("Measure with a ruler, to the millimetre: in the tank from a mark on the rim down to the "
               "water, in the bucket from a mark on its edge down to the water."));
  sheet.task(
      Text::tr("Measure both again at the same hour on the next day, and on two days more. Rain in "
               "between: begin again."));
}

void addReckoning(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  sheet.paragraph(Text::tr("Leak = fall in the tank less fall in the bucket, in millimetres, for one day."),
                  kStrong);
  // 1 mm on 1 m2 is 1 litre, so the surface in square metres is the number of litres
  sheet.paragraph(Text::tr("In this tank, full, one millimetre is %1.")
                      .arg(format.quantity(content.plan.tank.full_surface_m2, Unit::litre, 0)),
                  kStrong);
}

}  // namespace

void addLeakBands(Sheet& sheet, const Formatter& format) {
  const QString tight = perDay("leak.tight", format), watch = perDay("leak.watch", format),
                repair = perDay("leak.repair", format);
  sheet.table(
      {{Text::tr("Leak"), 0.34}, {Text::tr("What to do"), 0.66}},
      {{Text::tr("up to %1").arg(tight), Text::tr("Tight. Nothing to do; test again each year.")},
       {Text::tr("more, up to %1").arg(watch),
        Text::tr("Watch: look for wet ground; test again in some weeks.")},
       {Text::tr("more, up to %1").arg(repair), Text::tr("Find the cracks and mend them; then test again.")},
       {Text::tr("more than %1").arg(repair),
        Text::tr("Let no more water in, empty the tank and mend it.")}});
  const std::string source = core::hydraulics::figuresOf("leak.tight").front().source;
  sheet.paragraph(Text::tr("These limits: %1.").arg(words::sourceText(source)));
}

void buildLeakForm(Sheet& sheet, const Content& content) {
  addSteps(sheet);
  addReckoning(sheet, content);
  Sheet below({sheet.width(), sheet.height()});
  addLeakBands(below, content.format);
  addWriteTable(sheet,
                {{Text::tr("Date"), 0.18},
                 {Text::tr("Time"), 0.12},
                 {Text::tr("Tank, mm"), 0.16},
                 {Text::tr("Bucket, mm"), 0.18},
                 {Text::tr("Signature"), 0.36}},
                below.used() + 3);
  sheet.space(3);
  for (const Block& block : below.blocks()) sheet.add(block);
}

}  // namespace ui::handouts
