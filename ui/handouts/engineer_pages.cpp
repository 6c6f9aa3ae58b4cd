#include "core/site/stability_plan.h"
#include "ui/drawings/ground_drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/handouts/water_inputs.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <functional>
#include <optional>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::site::CriticalSlip;
using core::site::CutHeights;
using core::site::EdgeGround;
using core::site::EdgeSlip;
using core::site::Stability;
using Rows = std::vector<std::vector<Cell>>;

constexpr DrawingHeight kSlip{58, 85};
// as core::site draws its section; see stability_plan.cpp
constexpr int kPercent = 100;

QString none() {
  return QStringLiteral("–");
}

QString metres(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre, 2);
}

QString factor(double value, const Formatter& format) {
  return format.number(value, Unit::factor, 2);
}

std::function<QString(double)> in(Unit unit, int decimals, const Formatter& format) {
  return [=, &format](double value) { return format.quantity(value, unit, decimals); };
}

using CutValue = std::function<std::optional<double>(const CutHeights&)>;

std::vector<Cell> cutRow(const QString& what, const Stability& stability, const CutValue& value,
                         const std::function<QString(double)>& text) {
  std::vector<Cell> row{what};
  for (const CutHeights& cut : stability.cuts) {
    const std::optional<double> number = value(cut);
    row.emplace_back(number ? text(*number) : none());
  }
  return row;
}

Rows cutRows(const Stability& s, const Formatter& format) {
  const auto height = in(Unit::metre, 2, format);
  const QString wanted = factor(s.wanted_cut, format);
  const auto safety = [&](double value) { return factor(value, format); };
  const auto number = [&](double value) { return format.number(value, Unit::factor, 3); };
  Rows rows{
      cutRow(
          Text::tr("Cohesion c"), s, [](const CutHeights& c) { return c.soil.cohesion_kpa; },
          in(Unit::kilopascal, 1, format)),
      cutRow(
          Text::tr("Friction φ"), s, [](const CutHeights& c) { return c.soil.friction_deg; },
          in(Unit::degree, 0, format)),
      cutRow(
          Text::tr("Unit weight γ"), s, [](const CutHeights& c) { return c.soil.unit_weight_kn_m3; },
          in(Unit::kn_per_m3, 1, format)),
      cutRow(
          Text::tr("Height of a vertical cut"), s, [](const CutHeights& c) { return c.vertical_m; }, height),
      cutRow(
          Text::tr("This face, Culmann, just stands"), s, [](const CutHeights& c) { return c.culmann_m; },
          height),
      cutRow(
          Text::tr("This face, Culmann, factor %1").arg(wanted), s,
          [](const CutHeights& c) { return c.culmann_safe_m; }, height),
      cutRow(
          Text::tr("Stability number c / (γ H)"), s, [](const CutHeights& c) { return c.taylor_number; },
          number),
      cutRow(
          Text::tr("This face by that number"), s, [](const CutHeights& c) { return c.taylor_m; }, height),
      cutRow(
          Text::tr("Factor of this cut by it"), s, [](const CutHeights& c) { return c.taylor_factor; },
          safety)};
  for (Cell& cell : rows.back()) cell.strong = true;
  return rows;
}

void addFormula(Sheet& sheet, const QString& name, const QString& formula, const QString& source) {
  sheet.paragraph(Text::tr("%1: %2 %3").arg(name, formula, source));
}

void addCutFormulas(Sheet& sheet, SourceList& sources) {
  addFormula(sheet, Text::tr("Vertical cut"), QStringLiteral("H = 4 c / γ · tan(45° + φ/2)"),
             sources.mark("culmann"));
  addFormula(sheet, Text::tr("Culmann, plane slip through the toe, face β"),
             QStringLiteral("H = 4 c sin β cos φ / (γ (1 − cos(β − φ)))"), sources.mark("culmann"));
  addFormula(sheet, Text::tr("Stability number, circles through the toe"), QStringLiteral("H = c / (γ N)"),
             sources.mark("taylor_1937"));
  sheet.paragraph(
      Text::tr("A factor F is put on cohesion and friction alike: c / F and tan φ / F. No water in "
               "the face, no crack, nothing standing on its edge."));
}

void addCut(Sheet& sheet, const Stability& s, const Formatter& format, SourceList& sources) {
  sheet.heading(Text::tr("Cut: the wall of the pit"));
  sheet.paragraph(Text::tr("Face at %1 from the level, pit %2 deep, factor wanted %3.")
                      .arg(format.quantity(s.face_deg, Unit::degree, 1), metres(s.pit_depth_m, format),
                           factor(s.wanted_cut, format)));
  if (s.cuts.empty())
    return sheet.paragraph(Text::tr("The soil is not known, so no height is reckoned."), kStrong);
  std::vector<Column> columns{{Text::tr("Strength of the soil %1").arg(sources.mark("soil_strength")), 0.49}};
  for (const CutHeights& cut : s.cuts)
    columns.push_back({words::strengthName(cut.strength), 0.17, CellAlign::right});
  sheet.table(columns, cutRows(s, format));
  sheet.paragraph(Text::tr(
      "–: friction alone holds the face, or it lies outside the table of stability numbers. Judge by "
      "the low strengths."));
  addCutFormulas(sheet, sources);
}

QString stateName(const EdgeSlip& slip) {
  return slip.state == "empty" ? Text::tr("Tank empty") : Text::tr("Tank full and leaking");
}

QString crackText(const EdgeSlip& slip, const Formatter& format) {
  if (!slip.section.crack) return Text::tr("lower without one");
  const QString depth = metres(slip.section.crack->depth_m, format);
  if (slip.section.crack->water_share <= 0) return Text::tr("%1 deep, dry").arg(depth);
  return Text::tr("%1 deep, %2 full of water")
      .arg(depth, format.quantity(slip.section.crack->water_share * kPercent, Unit::percent, 0));
}

QString placeText(double x_m, double z_m, const Formatter& format) {
  return Text::tr("%1, %2").arg(metres(x_m, format), metres(z_m, format));
}

QString count(std::size_t value, const Formatter& format) {
  return format.integer(static_cast<int>(value));
}

using SlipText = std::function<QString(const EdgeSlip&, const CriticalSlip&)>;

/// A row of the table: what it is, then each state; a dash where no circle was found.
std::vector<Cell> slipRow(const QString& what, const Stability& s, const SlipText& text) {
  std::vector<Cell> row{what};
  for (const EdgeSlip& slip : s.slips) row.emplace_back(slip.critical ? text(slip, *slip.critical) : none());
  return row;
}

Rows slipRows(const Stability& s, const Formatter& format) {
  Rows rows{
      slipRow(Text::tr("Lowest factor of safety; wanted"), s,
              [&](const EdgeSlip&, const CriticalSlip& c) {
                return Text::tr("%1; %2").arg(factor(c.slip.factor, format), factor(s.wanted_slope, format));
              }),
      slipRow(Text::tr("Centre of the circle x, z"), s,
              [&](const EdgeSlip&, const CriticalSlip& c) {
                return placeText(c.slip.circle.centre_m.x(), c.slip.circle.centre_m.y(), format);
              }),
      slipRow(Text::tr("Radius"), s,
              [&](const EdgeSlip&, const CriticalSlip& c) { return metres(c.slip.circle.radius_m, format); }),
      slipRow(Text::tr("Ends of the slip x, x"), s,
              [&](const EdgeSlip&, const CriticalSlip& c) {
                return placeText(c.slip.from_x_m, c.slip.to_x_m, format);
              }),
      slipRow(Text::tr("Crack"), s,
              [&](const EdgeSlip& slip, const CriticalSlip&) { return crackText(slip, format); }),
      slipRow(Text::tr("Circles tried; without a factor"), s,
              [&](const EdgeSlip&, const CriticalSlip& c) {
                return Text::tr("%1; %2").arg(count(c.tried, format), count(c.refused, format));
              }),
      slipRow(Text::tr("Slices; of them in pull"), s, [&](const EdgeSlip&, const CriticalSlip& c) {
        return Text::tr("%1; %2").arg(count(c.slip.slices.size(), format), format.integer(c.slip.pulling));
      })};
  for (Cell& cell : rows.front()) cell.strong = true;
  return rows;
}

/// What a reader must not overlook about the circles found.
void addWarnings(Sheet& sheet, const Stability& s) {
  const auto any = [&](const auto& what) {
    return std::ranges::any_of(s.slips,
                               [&](const EdgeSlip& slip) { return slip.critical && what(*slip.critical); });
  };
  if (any([](const CriticalSlip& c) { return c.slip.pulling > 0; }))
    sheet.paragraph(Text::tr(
        "Slices in pull: the method asks the soil there to pull, which it cannot. Where there are many, "
        "look at the circle before trusting its factor."));
  if (any([](const CriticalSlip& c) { return c.is_at_end; }))
    sheet.paragraph(Text::tr("A slip ends at the end of the section: a longer one may have a lower factor."));
}

/// Both states on a page of their own.
void addSlips(Sheet& sheet, const Stability& s, const Formatter& format) {
  Sheet below({sheet.width(), sheet.height()});
  below.space(2);
  std::vector<Column> columns{{Text::tr("Slip circle"), 0.34}};
  for (const EdgeSlip& slip : s.slips) columns.push_back({stateName(slip), 0.33});
  below.table(columns, slipRows(s, format));
  addWarnings(below, s);
  const double left = sheet.height() - below.used();
  const double height = std::clamp(left / static_cast<double>(s.slips.size()), kSlip.least, kSlip.most);
  sheet.breakPage();
  for (const EdgeSlip& slip : s.slips)
    sheet.drawing(height, [&slip, &format](QPainter& painter, const QRectF& box) {
      drawings::drawSlip(painter, box, slip, format, {});
    });
  for (const Block& block : below.blocks()) sheet.add(block);
}

/// Why there are no slips; empty when there are.
QString whyNoSlips(const Stability& s) {
  if (!s.slips.empty()) return {};
  if (s.cuts.empty()) return Text::tr("Not reckoned: the soil is not known.");
  return Text::tr(
      "Not reckoned: the ground is level and no terrace edge is entered, so there is nothing to slip.");
}

void addDownhill(Sheet& sheet, const Content& content, SourceList& sources) {
  const Stability& s = content.plan.site.stability;
  sheet.heading(Text::tr("Downhill side: slip circles"));
  if (const QString why = whyNoSlips(s); !why.isEmpty()) return sheet.paragraph(why, kStrong);
  sheet.paragraph(s.edge == EdgeGround::with_edge
                      ? Text::tr("Section: the finished ground down the fall, dropping at the terrace edge.")
                      : Text::tr("Section: the finished ground down the fall."));
  addFormula(sheet, Text::tr("Bishop's simplified method"),
             QStringLiteral("F = Σ[(c b + (W − u b) tan φ) / m] / (Σ W sin α + P e / R), "
                            "m = cos α + sin α tan φ / F"),
             sources.mark("bishop_1955"));
  sheet.paragraph(Text::tr(
      "b width, W weight and α base slope of a slice, u water pressure on its base; P thrust of water "
      "in a crack, e its depth below the centre, R the radius. x runs downhill from the middle of the "
      "tank, z up from its finished floor."));
  if (!s.is_searched)
    return sheet.paragraph(
        Text::tr("The circles were not searched for when this page was made; there is no factor yet."),
        kStrong);
  addSlips(sheet, s, content.format);
}

void addAssumptions(Sheet& sheet, const Stability& s, const Formatter& format, SourceList& sources) {
  sheet.heading(Text::tr("What is taken for granted"));
  addPoint(sheet, Text::tr("Strengths come from tables by the name of the soil, not from tests %1.")
                      .arg(sources.mark("soil_strength")));
  if (s.slips.empty()) return;
  if (s.edge_soil)
    addPoint(sheet,
             Text::tr("Low strengths are taken for the slips: cohesion %1, friction %2, unit weight %3.")
                 .arg(format.quantity(s.edge_soil->cohesion_kpa, Unit::kilopascal, 1),
                      format.quantity(s.edge_soil->friction_deg, Unit::degree, 0),
                      format.quantity(s.edge_soil->unit_weight_kn_m3, Unit::kn_per_m3, 1)));
  if (s.fill_soil)
    addPoint(sheet, Text::tr("Fill counts as loose fill: cohesion %1, friction %2, unit weight %3.")
                        .arg(format.quantity(s.fill_soil->cohesion_kpa, Unit::kilopascal, 1),
                             format.quantity(s.fill_soil->friction_deg, Unit::degree, 0),
                             format.quantity(s.fill_soil->unit_weight_kn_m3, Unit::kn_per_m3, 1)));
  addPoint(sheet, Text::tr("Plane strain: the slip is as wide as the slope. No earthquake."));
  addPoint(
      sheet,
      Text::tr("The pit counts as still full of ground, which weighs more than water and lining. Nothing "
               "else stands on the ground: no house, wall, heap or animals."));
  addPoint(
      sheet,
      Text::tr("The tank's hole has no strength: each state is searched with and without a crack as deep "
               "as the pit (no deeper than the ground falls away), and the lower factor counts. Behind a "
               "crack only slips that come out no higher than its foot are counted."));
  addPoint(sheet,
           Text::tr("With the tank empty the ground is dry down to the ground water entered. With the tank "
                    "full and leaking, water stands in the "
                    "ground as drawn: level with the tank's water to the pit edge, from there straight to "
                    "where the ground lies as low as the pit floor."));
  if (s.edge == EdgeGround::with_edge)
    addPoint(sheet, Text::tr("The terrace edge is taken to run out %1 for each 1 that it falls.")
                        .arg(format.number(core::site::kEdgeBatter, Unit::batter, 1)));
  addPoint(sheet, Text::tr("Slips shallower than %1, and those that begin more than %2 downhill from the "
                           "middle of the tank, leave tank and walkway alone and are left out.")
                      .arg(metres(core::site::kLeastSlip_m, format), metres(s.upper_end_most_m, format)));
}

void addSignature(Sheet& sheet) {
  const std::size_t first = sheet.blocks().size();
  sheet.heading(Text::tr("Checked by a licensed engineer"));
  addWriteLine(sheet, {Text::tr("Checked by:"), Text::tr("Licence:")});
  addWriteLine(sheet, {Text::tr("Date:"), Text::tr("Signature:")});
  sheet.keepTogether(first);
}

}  // namespace

void buildStability(Sheet& sheet, const Content& content) {
  const Stability& s = content.plan.site.stability;
  SourceList sources(content.format);
  sheet.paragraph(
      Text::tr("A calculation for a licensed engineer to check. It is not a promise that the ground stands."),
      kStrong);
  addCut(sheet, s, content.format, sources);
  addDownhill(sheet, content, sources);
  addAssumptions(sheet, s, content.format, sources);
  addSignature(sheet);
  sources.print(sheet);
}

}  // namespace ui::handouts
