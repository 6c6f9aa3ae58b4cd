#include "ui/drawings/drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using Rows = std::vector<std::vector<Cell>>;

QString metres(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre, 2);
}

void addPegs(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Where the pegs stand"));
  sheet.paragraph(content.plan.geometry.outline().isCircle()
                      ? Text::tr("Measured from the centre O; x toward A, y toward B.")
                      : Text::tr("Measured from peg A; x along side A to B, y square to it, into the pit."));
  Rows rows;
  for (const auto& peg : content.plan.setting_out.pegs) {
    rows.push_back({QString::fromStdString(peg.id), words::pegKindName(peg.kind),
                    metres(peg.at_m.x(), content.format), metres(peg.at_m.y(), content.format)});
    rows.back()[0].strong = true;
  }
  sheet.table({{Text::tr("Peg"), 0.12},
               {Text::tr("What it marks"), 0.44},
               {Text::tr("x"), 0.22, CellAlign::right},
               {Text::tr("y"), 0.22, CellAlign::right}},
              rows);
}

void addTies(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Check with the tape"));
  Rows rows;
  for (const auto& tie : content.plan.setting_out.ties) {
    const QString ends =
        Text::tr("%1 to %2").arg(QString::fromStdString(tie.from), QString::fromStdString(tie.to));
    rows.push_back({ends, words::tieKindName(tie.kind), metres(tie.length_m, content.format), Cell::box()});
    rows.back()[2].strong = true;
  }
  sheet.table({{Text::tr("From peg to peg"), 0.28},
               {Text::tr("What it is"), 0.34},
               {Text::tr("Length"), 0.24, CellAlign::right},
               {Text::tr("Checked"), 0.14, CellAlign::centre}},
              rows);
}

void addBatter(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Batter board: how far the pit wall has come in"));
  Rows rows;
  for (const auto& mark : content.plan.setting_out.batter) {
    rows.push_back(
        {metres(mark.below_ground_m, content.format), metres(mark.in_from_edge_m, content.format)});
  }
  sheet.table({{Text::tr("Depth below ground"), 0.5, CellAlign::right},
               {Text::tr("In from the pit edge"), 0.5, CellAlign::right}},
              rows);
}

void addRod(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Depth rod: marks measured down from the string at ground level"));
  Rows rows;
  for (const auto& mark : content.plan.setting_out.levels) {
    rows.push_back({words::levelName(mark.id), content.format.quantity(mark.below_ground_m, Unit::metre, 3),
                    Cell::box()});
  }
  sheet.table({{Text::tr("Level"), 0.5},
               {Text::tr("Below the string"), 0.3, CellAlign::right},
               {Text::tr("Marked"), 0.2, CellAlign::centre}},
              rows);
}

QString batterText(const Content& content) {
  const double batter = content.plan.geometry.batter();
  if (batter == 0) return Text::tr("Walls stand upright.");
  return Text::tr("Walls lean outward: %1 out for each %2 up.")
      .arg(metres(batter, content.format), metres(1, content.format));
}

/// A section in what is left of the page.
void addSection(Sheet& sheet, const Content& content, drawings::SectionCut cut) {
  sheet.drawing(sheet.height() - sheet.used(), [&content, cut](QPainter& painter, const QRectF& box) {
    drawings::drawSection(painter, box, content.plan, content.format, {}, cut);
  });
}

}  // namespace

void buildPlanDrawing(Sheet& sheet, const Content& content) {
  sheet.paragraph(
      Text::tr(
          "Clear sizes are inside the finished plaster. Pit sizes are what is dug, before any lining. ") +
      batterText(content) + QLatin1Char(' ') + Text::tr("Sections: A-A on sheet M3, B-B on sheet M15."));
  sheet.space(2);
  sheet.drawing(sheet.height() - sheet.used(), [&content](QPainter& painter, const QRectF& box) {
    drawings::drawPlan(painter, box, content.plan, content.format, {});
  });
}

void buildSection(Sheet& sheet, const Content& content) {
  sheet.paragraph(Text::tr("Section A-A of the plan. ") + batterText(content) + QLatin1Char(' ') +
                  Text::tr("B-B: sheet M15."));
  addSection(sheet, content, drawings::SectionCut::across);
}

void buildSectionAlong(Sheet& sheet, const Content& content) {
  sheet.paragraph(Text::tr("Section B-B of the plan. A-A: sheet M3."));
  addSection(sheet, content, drawings::SectionCut::along);
}

void buildWallFoot(Sheet& sheet, const Content& content) {
  Sheet rod({sheet.width(), sheet.height()});
  addRod(rod, content);
  sheet.paragraph(
      Text::tr("Foot of the wall, enlarged. Thickness of a coat is measured square to its face."));
  const double left = sheet.height() - sheet.used() - rod.used() - 4;
  sheet.drawing(std::clamp(left, 70., 110.), [&content](QPainter& painter, const QRectF& box) {
    drawings::drawCornerDetail(painter, box, content.plan, content.format, {});
  });
  addRod(sheet, content);
}

void buildSettingOut(Sheet& sheet, const Content& content) {
  sheet.drawing(sheet.height(), [&content](QPainter& painter, const QRectF& box) {
    drawings::drawSettingOut(painter, box, content.plan, content.format, {});
  });
  addTies(sheet, content);
  addBatter(sheet, content);
  sheet.breakPage();
  addPegs(sheet, content);
}

}  // namespace ui::handouts
