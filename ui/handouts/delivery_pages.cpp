#include "core/hydraulics/delivery_plan.h"
#include "ui/drawings/delivery_charts.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/text/hydraulics_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <functional>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::hydraulics::DeliveryPlan;
using core::hydraulics::FieldPlan;
using core::hydraulics::Hump;
using core::hydraulics::LineFlow;
using core::hydraulics::LinePlan;
using core::hydraulics::PipeSize;
using core::hydraulics::Result;
using core::hydraulics::SiphonFlow;
using core::hydraulics::SiphonState;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kMmPerMetre = 1000, kLitresPerM3 = 1000;
constexpr DrawingHeight kHeadLine{60, 110};
constexpr double kEmptying_mm = 65;

QString none() {
  return QStringLiteral("–");
}

QString metres(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre, 2);
}

QString bar(double value, const Formatter& format) {
  return format.quantity(value, Unit::bar, 1);
}

QString speed(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre_per_second, 2);
}

QString sizeText(const PipeSize& size, const Formatter& format) {
  return Text::tr("%1, class %2")
      .arg(format.quantity(size.outside_mm, Unit::millimetre, 0), bar(size.pressure_bar, format));
}

/// A number of two runs side by side; a dash where nothing is known.
template <typename T>
std::vector<Cell> pair(const QString& what, const Result<T>& full, const Result<T>& low,
                       const std::function<QString(const T&)>& text) {
  return {what, full ? text(*full) : none(), low ? text(*low) : none()};
}

/// Table with the tank full and nearly empty; without `low` one column is enough.
void addRuns(Sheet& sheet, const QString& title, const Rows& rows) {
  sheet.table({{title, 0.46},
               {Text::tr("Tank full"), 0.27, CellAlign::right},
               {Text::tr("Nearly empty"), 0.27, CellAlign::right}},
              rows);
}

void addFlowRows(Rows& rows, const LinePlan& line, const Formatter& format) {
  const auto add = [&](const QString& what, const std::function<QString(const LineFlow&)>& text) {
    rows.push_back(pair<LineFlow>(what, line.full, line.low, text));
  };
  add(Text::tr("Flow, end wide open"),
      [&](const LineFlow& f) { return words::flowText(f.flow_m3_s, format); });
  for (Cell& cell : rows.back()) cell.strong = true;
  add(Text::tr("By Hazen-Williams, to check"),
      [&](const LineFlow& f) { return words::flowText(f.hazen_williams_m3_s, format); });
  add(Text::tr("Velocity"), [&](const LineFlow& f) { return speed(f.velocity_m_s, format); });
  add(Text::tr("Head that drives the flow"), [&](const LineFlow& f) { return metres(f.head_m, format); });
  add(Text::tr("Lost by friction"), [&](const LineFlow& f) { return metres(f.friction_head_m, format); });
  add(Text::tr("Lost in bends and valves"),
      [&](const LineFlow& f) { return metres(f.minor_head_m, format); });
  add(Text::tr("Leaves as velocity"), [&](const LineFlow& f) { return metres(f.velocity_head_m, format); });
  const auto dips = [](const Result<LineFlow>& flow) { return flow && flow->residual_head_m > 0; };
  if (dips(line.full) || dips(line.low))
    add(Text::tr("Water over its end"), [&](const LineFlow& f) { return metres(f.residual_head_m, format); });
  add(Text::tr("Pressure, end shut"), [&](const LineFlow& f) { return bar(f.static_bar, format); });
  add(Text::tr("Left of the pressure class"),
      [&](const LineFlow& f) { return f.class_left_bar ? bar(*f.class_left_bar, format) : none(); });
}

QString pipeText(const LinePlan& line, const QString& grade, const Formatter& format) {
  if (!line.size) return Text::tr("bore measured");
  return grade + QStringLiteral(", ") + sizeText(*line.size, format);
}

const LineFlow* anyFlow(const LinePlan& line) {
  return line.full ? &*line.full : line.low ? &*line.low : nullptr;
}

/// The high points one by one; the sentences tell only the first.
QString highPoints(const LineFlow& flow, const Formatter& format) {
  QStringList all;
  for (const Hump& hump : flow.humps)
    all << Text::tr("at %1, %2 over the way before it")
               .arg(format.quantity(hump.station_m, Unit::metre, 1), metres(hump.rise_m, format));
  return all.join(QStringLiteral("; "));
}

void addPipe(Sheet& sheet, const LinePlan& line, const QString& grade, const Formatter& format) {
  const LineFlow* const flow = anyFlow(line);
  sheet.paragraph(Text::tr("Pipe: %1; bore %2, length %3.")
                      .arg(pipeText(line, grade, format),
                           format.quantity(line.line.bore.diameter_m * kMmPerMetre, Unit::millimetre, 1),
                           flow ? format.quantity(flow->length_m, Unit::metre, 1) : none()));
  if (flow && !flow->humps.empty())
    sheet.paragraph(Text::tr("High points: %1.").arg(highPoints(*flow, format)));
}

void addAnswers(Sheet& sheet, const QStringList& answers) {
  for (const QString& answer : answers) sheet.paragraph(answer);
}

void addMethod(Sheet& sheet) {
  sheet.paragraph(Text::tr("Friction by Darcy-Weisbach and Colebrook-White: %1\nCross-check: %2")
                      .arg(words::sourceText("colebrook_1939"), words::sourceText("hazen_williams")));
}

QString gradeText(core::PipeGrade grade) {
  return words::choiceLabel("delivery.source.pipe.grade", grade == core::PipeGrade::pe80 ? "pe80" : "pe100");
}

void addFlow(Sheet& sheet, const LinePlan& line, const Formatter& format) {
  Rows rows;
  addFlowRows(rows, line, format);
  addRuns(sheet, Text::tr("As it flows"), rows);
}

/// What there is to say about a line, and its pipe.
Sheet aboutLine(const Sheet& sheet, const LinePlan& line, core::PipeGrade grade, const QStringList& answers,
                const Formatter& format) {
  Sheet about({sheet.width(), sheet.height()});
  about.space(2);
  addAnswers(about, answers);
  addPipe(about, line, gradeText(grade), format);
  return about;
}

void addHeadLine(Sheet& sheet, const Sheet& below, const LinePlan& line, const Content& content) {
  addAbove(sheet, below, kHeadLine, [&line, &content](QPainter& painter, const QRectF& box) {
    drawings::drawHeadLine(painter, box, line, content.plan.delivery->rim_level_m, content.format, {});
  });
}

void addSource(Sheet& sheet, const Content& content) {
  const DeliveryPlan& plan = *content.plan.delivery;
  sheet.heading(Text::tr("From the source to the tank"));
  Sheet below = aboutLine(sheet, *plan.source, content.project.delivery->source.pipe.grade,
                          words::sourceLineAnswers(plan, content.format), content.format);
  addFlow(below, *plan.source, content.format);
  addHeadLine(sheet, below, *plan.source, content);
}

/// What fills the siphon, and how high it lifts.
void addSiphon(Sheet& sheet, const FieldPlan& field, const Formatter& format) {
  if (!field.siphon_full || !field.siphon_low) return;
  Rows rows;
  const auto add = [&](const QString& what, const std::function<QString(const SiphonFlow&)>& text) {
    rows.push_back(pair<SiphonFlow>(what, *field.siphon_full, *field.siphon_low, text));
  };
  const auto flowing = [&](double value, const SiphonFlow& s, const auto& text) {
    return s.flow_m3_s > 0 ? text(value, format) : none();
  };
  add(Text::tr("Top over the water"), [&](const SiphonFlow& s) { return metres(s.lift_m, format); });
  add(Text::tr("Most that it may be, at rest"),
      [&](const SiphonFlow& s) { return metres(s.most_lift_m, format); });
  add(Text::tr("Left of it with the valve open"),
      [&](const SiphonFlow& s) { return flowing(s.lift_left_m, s, metres); });
  add(Text::tr("Pressure at the top, as head"),
      [&](const SiphonFlow& s) { return flowing(s.crest_pressure_m, s, metres); });
  add(Text::tr("Speed that clears air"),
      [&](const SiphonFlow& s) { return flowing(s.clearing_velocity_m_s, s, speed); });
  const auto is_throttled = [](const Result<SiphonFlow>& s) { return s && s->throttled_m3_s; };
  if (is_throttled(*field.siphon_full) || is_throttled(*field.siphon_low))
    add(Text::tr("Most flow the top allows"), [&](const SiphonFlow& s) {
      return s.throttled_m3_s ? words::flowText(*s.throttled_m3_s, format) : none();
    });
  add(Text::tr("Water that fills it"),
      [&](const SiphonFlow& s) { return format.quantity(s.primed_with_m3 * kLitresPerM3, Unit::litre, 1); });
  const std::size_t first = sheet.blocks().size();
  addRuns(sheet, Text::tr("The siphon"), rows);
  sheet.paragraph(Text::tr("Speed that clears air: %1").arg(words::sourceText("sanks_air")));
  sheet.keepTogether(first);
}

void addOutlets(Sheet& sheet, const FieldPlan& field, const Formatter& format) {
  const auto text = [&](const double& head) { return metres(head, format); };
  Rows rows{pair<double>(Text::tr("Head left at them"), field.head_full_m, field.head_low_m, text)};
  if (field.check) {
    const QString wanted = metres(field.check->head.typical, format);
    rows.push_back({Text::tr("Head wanted"), wanted, wanted});
  }
  addRuns(sheet,
          Text::tr("Outlet, %1; open at a time: %2")
              .arg(words::outletName(field.outlet), format.integer(field.outlets)),
          rows);
}

void addEmptying(Sheet& sheet, const Content& content) {
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Drawing the tank down, end wide open"));
  sheet.drawing(kEmptying_mm, [&content](QPainter& painter, const QRectF& box) {
    drawings::drawEmptying(painter, box, *content.plan.delivery->field, content.format, {});
  });
  sheet.keepTogether(first);
}

void addField(Sheet& sheet, const Content& content) {
  const DeliveryPlan& plan = *content.plan.delivery;
  const LinePlan& line = plan.field->pipe;
  sheet.heading(Text::tr("From the tank to the field"));
  Sheet below = aboutLine(sheet, line, content.project.delivery->field.pipe.grade,
                          words::fieldLineAnswers(plan, content.format), content.format);
  addEmptying(below, content);
  addHeadLine(sheet, below, line, content);
  addFlow(sheet, line, content.format);
  addSiphon(sheet, *plan.field, content.format);
  addOutlets(sheet, *plan.field, content.format);
}

}  // namespace

void buildPipes(Sheet& sheet, const Content& content) {
  const DeliveryPlan& plan = *content.plan.delivery;
  if (plan.source)
    addSource(sheet, content);
  else
    addAnswers(sheet, words::sourceLineAnswers(plan, content.format));
  if (plan.source && plan.field) sheet.breakPage();
  if (plan.field)
    addField(sheet, content);
  else
    addAnswers(sheet, words::fieldLineAnswers(plan, content.format));
  if (plan.source || plan.field) addMethod(sheet);
}

}  // namespace ui::handouts
