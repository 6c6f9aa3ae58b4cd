#include "core/hydraulics/delivery_plan.h"
#include "ui/drawings/delivery_charts.h"
#include "ui/handouts/leak_form.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/hydraulics_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::hydraulics::BlockedState;
using core::hydraulics::LeakTest;
using core::hydraulics::Notch;
using core::hydraulics::OverflowPipe;
using core::hydraulics::OverflowPlan;
using core::hydraulics::RimPartFlow;
using core::hydraulics::TrapPlan;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kMmPerMetre = 1000, kPercent = 100;
constexpr DrawingHeight kOverflow{70, 95};

QString metres(double value, const Formatter& format, int decimals = 2) {
  return format.quantity(value, Unit::metre, decimals);
}

QString squareMetres(double value, const Formatter& format) {
  return format.quantity(value, Unit::square_metre, 1);
}

QString speed(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre_per_second, 2);
}

void addAnswers(Sheet& sheet, const QStringList& answers) {
  for (const QString& answer : answers) sheet.paragraph(answer);
}

void addValues(Sheet& sheet, const QString& title, const Rows& rows) {
  sheet.table({{title, 0.62}, {QString(), 0.38, CellAlign::right}}, rows);
}

QString wayText(const OverflowPlan& plan, const Formatter& format) {
  if (const auto* notch = std::get_if<Notch>(&plan.overflow.way))
    return Text::tr("notch, %1 wide").arg(metres(notch->width_m, format));
  const auto& pipe = std::get<OverflowPipe>(plan.overflow.way);
  return Text::tr("pipe, %1 inside").arg(format.quantity(pipe.diameter_m * kMmPerMetre, Unit::millimetre, 0));
}

void addAreas(Rows& rows, const Content& content) {
  const auto& format = content.format;
  if (content.project.water) {
    const core::Water& water = *content.project.water;
    if (water.roof.area_m2 > 0)
      rows.push_back({Text::tr("Roof led in"), squareMetres(water.roof.area_m2, format)});
    if (water.ground.area_m2 > 0)
      rows.push_back({Text::tr("Ground led in"), squareMetres(water.ground.area_m2, format)});
  }
  rows.push_back({Text::tr("The tank's own opening"), squareMetres(content.plan.tank.brim_area_m2, format)});
}

void addStorm(Sheet& sheet, const Content& content) {
  const OverflowPlan& plan = content.plan.delivery->overflow;
  const auto& format = content.format;
  const QString rain = format.quantity(plan.storm_mm_h, Unit::mm_per_hour, 0);
  Rows rows{{Text::tr("Storm"), plan.is_storm_known ? rain : Text::tr("%1, planning value").arg(rain)}};
  addAreas(rows, content);
  rows.push_back({Text::tr("Rain that runs in"), words::flowText(plan.storm_m3_s, format)});
  rows.push_back({Text::tr("From the source"), words::flowText(plan.source_m3_s, format)});
  rows.push_back({Text::tr("Together"), words::flowText(plan.flow_m3_s, format)});
  for (Cell& cell : rows.back()) cell.strong = true;
  addValues(sheet, Text::tr("What runs in"), rows);
}

void addState(Sheet& sheet, const OverflowPlan& plan, const Formatter& format) {
  Rows rows{{Text::tr("Overflow"), wayText(plan, format)}};
  if (plan.state) {
    rows.push_back({Text::tr("Water over its sill"), metres(plan.state->head_m, format, 3)});
    rows.push_back({Text::tr("Freeboard left in the storm"), metres(plan.state->freeboard_left_m, format)});
    rows.back()[1].strong = true;
    rows.push_back({Text::tr("Freeboard wanted"), metres(plan.wanted_freeboard_m, format)});
    rows.push_back(
        {Text::tr("Passes with water at the rim"), words::flowText(plan.state->capacity_m3_s, format)});
  }
  addValues(sheet, Text::tr("Overflow free"), rows);
}

QString partName(const std::string& key) {
  return key == "lip" ? Text::tr("over the low part of the rim") : Text::tr("over the rest of the rim");
}

void addBlocked(Sheet& sheet, const OverflowPlan& plan, const Formatter& format) {
  if (!plan.blocked) return;
  Rows rows;
  for (const RimPartFlow& part : plan.blocked->parts)
    rows.push_back(
        {partName(part.key), metres(part.depth_m, format, 3), words::flowText(part.flow_m3_s, format)});
  sheet.table({{Text::tr("Overflow blocked"), 0.5},
               {Text::tr("Deep"), 0.25, CellAlign::right},
               {Text::tr("Flow"), 0.25, CellAlign::right}},
              rows);
}

void addSpill(Sheet& sheet, const OverflowPlan& plan, const Formatter& format) {
  Rows rows{{Text::tr("Bottom width and depth of the channel"),
             Text::tr("%1, %2").arg(metres(plan.channel.bottom_width_m, format),
                                    metres(plan.channel_depth_m, format))},
            {Text::tr("Fall"), format.quantity(plan.channel.fall * kPercent, Unit::percent, 1)}};
  if (plan.spill) {
    rows.push_back({Text::tr("Water in it"), metres(plan.spill->depth_m, format)});
    rows.push_back({Text::tr("Speed"), speed(plan.spill->velocity_m_s, format)});
  }
  if (plan.scour) {
    const auto& limit = plan.scour->limit;
    rows.push_back({words::figureName(limit.key),
                    Text::tr("%1 to %2").arg(speed(limit.low, format), speed(limit.high, format))});
  }
  addValues(sheet, Text::tr("Spill channel"), rows);
}

void addTrapSize(Rows& rows, const core::hydraulics::SiltTrap& trap, const Formatter& format) {
  rows.push_back({Text::tr("Length"), metres(trap.length_m, format)});
  rows.push_back({Text::tr("Width"), metres(trap.width_m, format)});
  rows.push_back({Text::tr("Depth, all together"), metres(trap.depth_m, format)});
  for (std::size_t k = rows.size() - 3; k < rows.size(); ++k) rows[k][1].strong = true;
  rows.push_back({Text::tr("Of it for water that settles"), metres(trap.settling_depth_m, format)});
  rows.push_back({Text::tr("Of it for mud"), metres(trap.deposit_depth_m, format)});
  const double sinks_mm_s = trap.settling.velocity_m_s * kMmPerMetre;
  rows.push_back({Text::tr("The grain sinks"),
                  Text::tr("%1 a second").arg(format.quantity(sinks_mm_s, Unit::millimetre, 1))});
  rows.push_back({Text::tr("Water may run through at most at"), speed(trap.speed_limit_m_s, format)});
}

void addTrap(Sheet& sheet, const Content& content) {
  const TrapPlan& plan = content.plan.delivery->trap;
  const auto& format = content.format;
  sheet.breakPage();
  sheet.heading(Text::tr("Silt trap"));
  addAnswers(sheet, words::siltTrapAnswers(*content.plan.delivery, format));
  const QString flow = words::flowText(plan.flow_m3_s, format);
  Rows rows{{Text::tr("Smallest grain that must stay behind"),
             format.quantity(plan.grain.diameter_mm, Unit::millimetre, 2)},
            {Text::tr("Flow"), plan.is_flow_given ? flow : Text::tr("%1, source and storm").arg(flow)}};
  if (!plan.is_flow_given)
    rows.push_back({Text::tr("Mud is brought by"), Text::tr("the source, and one hour of the storm")});
  if (plan.trap) addTrapSize(rows, *plan.trap, format);
  rows.push_back({Text::tr("Clean it out every"),
                  format.quantity(content.project.delivery->silt_trap.cleaning_days, Unit::day, 0)});
  if (plan.check && *plan.check && (*plan.check)->slow_enough)
    rows.push_back({Text::tr("The trap as it is holds back grains from"),
                    format.quantity((*plan.check)->kept_mm, Unit::millimetre, 2)});
  addValues(sheet, Text::tr("For the grain named"), rows);
  sheet.paragraph(Text::tr("Area, speed and mud: %1").arg(words::sourceText("micro_hydro_civil_works")));
}

std::vector<Cell> markRow(const core::hydraulics::LeakRule& rule, const Formatter& format) {
  return {words::sourceText(rule.source), format.quantity(rule.allowed_mm_day, Unit::mm_per_day, 1),
          rule.kept ? Text::tr("kept") : Text::tr("not kept")};
}

void addLeakNumbers(Sheet& sheet, const LeakTest& test, const Formatter& format) {
  const auto mmDay = [&](double value) { return format.quantity(value, Unit::mm_per_day, 1); };
  Rows rows{{Text::tr("Tank falls"), mmDay(test.tank_mm_day)},
            {Text::tr("Bucket falls: evaporation"), mmDay(test.evaporation_mm_day)},
            {Text::tr("Error of the readings, either way"), mmDay(test.error_mm_day)}};
  using core::hydraulics::LeakVerdict;
  const bool tells_nothing = test.verdict == LeakVerdict::gains || test.verdict == LeakVerdict::unsure;
  if (tells_nothing) return addValues(sheet, Text::tr("Leak test"), rows);
  rows.push_back({Text::tr("Leak"), mmDay(test.leak_mm_day)});
  rows.push_back({Text::tr("Water lost"), format.quantity(test.leak_l_day, Unit::litre_per_day, 0)});
  rows.push_back(
      {Text::tr("Share of the water a day"), format.quantity(test.share_percent_day, Unit::percent, 2)});
  addValues(sheet, Text::tr("Leak test"), rows);
  sheet.table({{Text::tr("Published marks for concrete tanks"), 0.58},
               {Text::tr("Allows"), 0.22, CellAlign::right},
               {Text::tr("This tank"), 0.2, CellAlign::right}},
              {markRow(test.by_drop, format), markRow(test.by_volume, format)});
}

void addLeak(Sheet& sheet, const Content& content) {
  const auto& leak = content.plan.delivery->leak;
  if (leak && *leak) sheet.breakPage();
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Leak test"));
  addAnswers(sheet, words::leakAnswers(*content.plan.delivery, content.format));
  if (leak && *leak) addLeakNumbers(sheet, **leak, content.format);
  addLeakBands(sheet, content.format);
  if (!leak || !*leak) sheet.keepTogether(first);
}

}  // namespace

void buildOverflow(Sheet& sheet, const Content& content) {
  const OverflowPlan& plan = content.plan.delivery->overflow;
  const auto& format = content.format;
  sheet.heading(Text::tr("Overflow"));
  Sheet below({sheet.width(), sheet.height()});
  below.space(2);
  addAnswers(below, words::overflowAnswers(*content.plan.delivery, format));
  addStorm(below, content);
  addAbove(sheet, below, kOverflow, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawOverflow(painter, box, content.plan.delivery->overflow, content.format, {});
  });
  addState(sheet, plan, format);
  addBlocked(sheet, plan, format);
  addSpill(sheet, plan, format);
  addTrap(sheet, content);
  addLeak(sheet, content);
}

}  // namespace ui::handouts
