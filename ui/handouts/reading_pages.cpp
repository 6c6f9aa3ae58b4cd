#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::DipMark;
using core::Unit;

constexpr std::size_t kDipColumns = 3;
constexpr double kSmall = 11.5;  // pictures, so that all advice stands on one page

void addMark(Sheet& sheet, const QString& sentence, double level, double volume, const Formatter& format) {
  sheet.paragraph(sentence.arg(format.quantity(level, Unit::metre, 2), format.litres(volume)), kStrong);
}

/// Rows of a page, read down each pair of columns in turn.
void addDipTable(Sheet& sheet, std::span<const DipMark> marks, const Formatter& format) {
  const std::size_t rows_needed = (marks.size() + kDipColumns - 1) / kDipColumns;
  std::vector<std::vector<Cell>> rows;
  for (std::size_t r = 0; r < rows_needed; ++r) {
    std::vector<Cell> row;
    for (std::size_t c = 0; c < kDipColumns; ++c) {
      const std::size_t k = c * rows_needed + r;
      row.push_back(k < marks.size() ? format.quantity(marks[k].level_m, Unit::metre, 2) : QString());
      row.push_back(k < marks.size() ? format.litres(marks[k].volume_m3) : QString());
      row.back().strong = true;
    }
    rows.push_back(std::move(row));
  }
  std::vector<Column> columns;
  for (std::size_t c = 0; c < kDipColumns; ++c) {
    columns.push_back({Text::tr("Water at"), 0.15, CellAlign::right});
    columns.push_back({Text::tr("holds"), 0.18, CellAlign::right});
  }
  sheet.table(columns, rows);
}

struct Advice {
  QString heading;
  std::vector<Step> steps;
};

std::vector<Advice> diggingAdvice(const Formatter& format) {
  return {
      {Text::tr("Digging"),
       {Step{{"cave_in"},
             Text::tr(
                 "Pit walls fall in without warning. Stop and get out when you see cracks along the edge, "
                 "bulging, or water in the wall."),
             true},
        Step{{"spoil_back"},
             Text::tr("Keep spoil, stones, bags and animals at least %1 back from the edge.")
                 .arg(limitLength("spoil.setback", words::Rounding::up, format)),
             true},
        Step{{"ladder", "two_people"},
             Text::tr("Keep a ladder in the pit at all times. No one digs alone; someone stays at the top."),
             true},
        Step{
            {"dig"},
            Text::tr("Never dig under a wall, and never stand in a narrow cut deeper than your waist without "
                     "support."),
            true},
        Step{{"lift_two"},
             Text::tr("Bags and stones: two people, backs straight, paths clear and dry."),
             true}}}};
}

std::vector<Advice> plasterAdvice() {
  return {
      {Text::tr("Cement"),
       {Step{{"gloves", "boots", "wash"},
             Text::tr(
                 "Wet cement burns skin and eyes. Wear gloves, boots and long sleeves; wash splashes off at "
                 "once with much clean water."),
             true},
        Step{{"mask", "goggles"},
             Text::tr(
                 "Cement dust harms the lungs. Open bags with the wind behind you, cover nose and mouth."),
             true},
        Step{{"boots"}, Text::tr("No bare feet in the mix. Children stay away."), true}}}};
}

std::vector<Advice> livingAdvice() {
  return {
      {Text::tr("The finished tank"),
       {Step{{"drowning", "fence"},
             Text::tr("A child can drown in it, and no one can climb out of smooth sloping walls. Fence all "
                      "four sides, with a gate that shuts."),
             true},
        Step{{"climb_out"},
             Text::tr("Fix a ladder or a knotted rope that reaches the floor, and keep a float beside it."),
             true},
        Step{{"fall_empty"},
             Text::tr("An empty tank is a pit: keep the fence shut while it is dry, and never go in alone."),
             true},
        Step{{"no_drinking"},
             Text::tr("The water is for fields and animals. It is not drinking water."),
             true}}}};
}

void addAdvice(Sheet& sheet, const std::vector<Advice>& all) {
  for (const Advice& advice : all) {
    sheet.heading(advice.heading);
    addSteps(sheet, advice.steps, kSmall);
  }
}

}  // namespace

void buildDipStick(Sheet& sheet, const Content& content) {
  const auto& [project, plan, format] = content;
  sheet.paragraph(
      Text::tr("Stand a marked stick upright on the finished floor, read where it is wet, and look up what "
               "the tank holds."));
  addMark(sheet, Text::tr("Full to the overflow at %1: %2."), plan.tank.full_level_m,
          plan.tank.full_volume_m3, format);
  addMark(sheet, Text::tr("Below %1 no water can be drawn; %2 stay in the tank."), plan.tank.dead_level_m,
          plan.tank.dead_volume_m3, format);
  const std::size_t page = kDipColumns * 24;
  const std::span<const DipMark> marks(plan.dip_stick);
  for (std::size_t k = 0; k < marks.size(); k += page)
    addDipTable(sheet, marks.subspan(k, std::min(page, marks.size() - k)), format);
}

void buildSafety(Sheet& sheet, const Content& content) {
  sheet.paragraph(
      Text::tr("Local codes and licensed practice come first. On a slope, on filled ground, near a "
               "house or a drop, "
               "or where ground water is high, ask a licensed engineer before digging."),
      kStrong);
  addAdvice(sheet, diggingAdvice(content.format));
  addAdvice(sheet, plasterAdvice());
  addAdvice(sheet, livingAdvice());
}

void buildFindings(Sheet& sheet, const Content& content) {
  sheet.paragraph(
      Text::tr("What a practitioner should look at before building. A finding is not a verdict; what is not "
               "known never counts as safe."));
  for (const core::Finding& finding : content.plan.findings) {
    const std::size_t first = sheet.blocks().size();
    sheet.heading(words::severityName(finding.severity));
    sheet.paragraph(words::findingText(finding, content.format));
    if (!finding.source.empty() && finding.source != "user")
      sheet.paragraph(Text::tr("Source: %1").arg(words::sourceText(finding.source)));
    sheet.keepTogether(first);
  }
}

}  // namespace ui::handouts
