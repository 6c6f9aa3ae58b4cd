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

constexpr int kStrip_mm = 100, kSamples = 3;
constexpr int kWeak_mm = 25, kMedium_mm = 50;  // Thien: 2.5 and 5 cm

QString mm(int value, const Formatter& format) {
  return Text::tr("%1 mm").arg(format.integer(value));
}

void addWork(Sheet& sheet) {
  addSteps(
      sheet,
      {{{"soil_ball"},
        Text::tr("Take a handful of soil without stones. Drip water on and knead it until it is like putty: "
                 "no dry crumbs, no water running."),
        true},
       {{"ball_test"}, Text::tr("Squeeze it in the fist. Does a ball hold together?"), true},
       {{"ribbon"},
        Text::tr("Push the ball with the thumb over the forefinger to a flat ribbon of even thickness, and "
                 "let it hang until it breaks. Lay it on the strip below and read its length."),
        true},
       {{"water", "wash"},
        Text::tr("Wet a pinch in the palm very much and rub it with a finger. Is it above all gritty, above "
                 "all smooth, or neither? Then wash your hands."),
        true}});
}

void addDecisions(Sheet& sheet, const Formatter& format) {
  const QString weak = mm(kWeak_mm, format), medium = mm(kMedium_mm, format);
  const QString sand = Text::tr("sand"), loamy = Text::tr("loamy sand");
  sheet.table({{Text::tr("Ball and ribbon"), 0.34},
               {Text::tr("Gritty"), 0.22},
               {Text::tr("Neither"), 0.22},
               {Text::tr("Smooth"), 0.22}},
              {{Text::tr("no ball holds"), sand, sand, sand},
               {Text::tr("ball, but no ribbon"), loamy, loamy, loamy},
               {Text::tr("ribbon shorter than %1").arg(weak), Text::tr("sandy loam"), Text::tr("loam"),
                Text::tr("silt loam")},
               {Text::tr("%1 to %2").arg(weak, medium), Text::tr("sandy clay loam"), Text::tr("clay loam"),
                Text::tr("silty clay loam")},
               {Text::tr("%1 or longer").arg(medium), Text::tr("sandy clay"), Text::tr("clay"),
                Text::tr("silty clay")}});
}

void addRows(Sheet& sheet) {
  const std::vector<Cell> row{QString(),   Cell::box(), QString(), Cell::box(),
                              Cell::box(), Cell::box(), QString()};
  sheet.table({{Text::tr("Soil from where"), 0.22},
               {Text::tr("Ball"), 0.09, CellAlign::centre},
               {Text::tr("Ribbon, mm"), 0.13},
               {Text::tr("Gritty"), 0.11, CellAlign::centre},
               {Text::tr("Neither"), 0.12, CellAlign::centre},
               {Text::tr("Smooth"), 0.12, CellAlign::centre},
               {Text::tr("It is"), 0.21}},
              std::vector<std::vector<Cell>>(kSamples, row));
}

}  // namespace

void buildRibbonForm(Sheet& sheet, const Content& content) {
  const auto& format = content.format;
  sheet.paragraph(Text::tr("What soil is it? Hands can tell, with a little water."));
  addWork(sheet);
  addRuler(sheet, kStrip_mm, format);
  sheet.space(1);
  addDecisions(sheet, format);
  addRows(sheet);
  sheet.paragraph(Text::tr("Type the readings in on the tab %1.").arg(Text::tr("Notes")));
  sheet.paragraph(Text::tr("Source: %1").arg(words::sourceText("thien_1979")));
}

}  // namespace ui::handouts
