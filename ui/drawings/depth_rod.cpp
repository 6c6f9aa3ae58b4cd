#include "ui/drawings/dimensions.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::geometry::LevelMark;

constexpr double kRodHalf_mm = 1.6, kRodOver_mm = 9;  // half its width; its end above the string
constexpr double kFloor_mm = 30;                      // floor shown to the left of the rod
constexpr double kEarth_mm = 6;
constexpr double kTextOff_mm = 14;
constexpr double kLeastHatched_mm = 1;  // thinner layers take no hatch

/// Marks from the string down.
std::vector<LevelMark> marksDown(const core::Plan& plan) {
  std::vector<LevelMark> marks = plan.setting_out.levels;
  std::ranges::stable_sort(marks, {}, &LevelMark::below_ground_m);
  return marks;
}

QString textOf(const LevelMark& mark, const core::Plan& plan, const Formatter& format) {
  const QString name = words::levelName(mark.id);
  if (mark.id == "rim") return Text::tr("%1, level with the string: 0").arg(name);
  const QString down = format.quantity(mark.below_ground_m, core::Unit::metre, 3);
  if (mark.id == "pit_floor") return Text::tr("%1, dig to here: %2 down").arg(name, down);
  if (mark.id == plan.setting_out.clearFloor().id)
    return Text::tr("%1, the clear floor: %2 down").arg(name, down);
  return Text::tr("%1: %2 down").arg(name, down);
}

Line lineOf(const LevelMark& mark, const core::Plan& plan) {
  if (mark.id == "pit_floor") return Line::outline;
  return mark.id == plan.setting_out.clearFloor().id ? Line::edge : Line::thin;
}

void addRod(Figure& figure, double foot) {
  figure.add(polygonPath({{-kRodHalf_mm, -kRodOver_mm},
                          {kRodHalf_mm, -kRodOver_mm},
                          {kRodHalf_mm, foot},
                          {-kRodHalf_mm, foot}}),
             Line::edge);
}

/// The layer between two marks, beside the rod.
void addLayer(Figure& figure, const LevelMark& upper, double top, double bottom) {
  const QRectF room(QPointF(-kFloor_mm, top), QPointF(-kRodHalf_mm, bottom));
  if (room.height() < kLeastHatched_mm) return;
  if (upper.id == "stone_bed_top") return figure.add(stones(room), Line::hatch);
  if (!upper.id.starts_with("coat_")) return;
  QPainterPath face;
  face.addRect(room);
  const CoatHatch hatch = coatHatch(face, std::stoi(upper.id.substr(5)));
  figure.addSolid(hatch.dots);
  figure.add(hatch.lines, Line::hatch);
}

/// The floor as it is built up, cut beside the rod.
void addFloor(Figure& figure, const std::vector<LevelMark>& marks, const core::Plan& plan, double mm_per_m) {
  for (std::size_t k = 0; k < marks.size(); ++k) {
    const double y = marks[k].below_ground_m * mm_per_m;
    if (k + 1 < marks.size()) addLayer(figure, marks[k], y, marks[k + 1].below_ground_m * mm_per_m);
    if (marks[k].id == "rim" || marks[k].id == "overflow") continue;
    figure.add({-kFloor_mm, y}, {-kRodHalf_mm, y}, lineOf(marks[k], plan));
  }
  const double floor = marks.back().below_ground_m * mm_per_m;
  const QPolygonF earth{{-kFloor_mm, floor},
                        {kRodHalf_mm, floor},
                        {kRodHalf_mm, floor + kEarth_mm},
                        {-kFloor_mm, floor + kEarth_mm}};
  figure.add(earthHatch(polygonPath(earth)), Line::hatch);
  figure.add({-kRodHalf_mm, floor}, {kRodHalf_mm, floor}, Line::outline);
}

void addMarks(Figure& figure, const std::vector<LevelMark>& marks, const core::Plan& plan, double mm_per_m,
              const Formatter& format, const Lettering& lettering) {
  std::vector<Leader> leaders;
  for (const LevelMark& mark : marks) {
    const double y = mark.below_ground_m * mm_per_m;
    figure.add({-kRodHalf_mm, y}, {kRodHalf_mm + 2, y}, lineOf(mark, plan));
    leaders.push_back({{kRodHalf_mm + 2, y}, textOf(mark, plan, format)});
  }
  addLeaders(figure, leaders, kRodHalf_mm + kTextOff_mm, lettering);
}

void addDepths(Figure& figure, const core::Plan& plan, double mm_per_m, const Formatter& format,
               const Lettering& lettering) {
  const auto row = [&](const QString& sentence, double depth_m) {
    const double y = depth_m * mm_per_m;
    return Measure{0, y, -kFloor_mm, -kFloor_mm,
                   sentence.arg(format.quantity(depth_m, core::Unit::metre, 3))};
  };
  addRows(figure, Side::left, -kFloor_mm - 1,
          {row(Text::tr("clear depth %1"), plan.tank.depth_m),
           row(Text::tr("pit depth %1"), plan.earthwork.pit_depth_m)},
          lettering);
}

Figure rodFigure(const core::Plan& plan, const Formatter& format, const Style& style, double n) {
  const Lettering lettering{style.text_mm};
  const std::vector<LevelMark> marks = marksDown(plan);
  const double mm_per_m = 1000 / n;
  Figure figure;
  addRod(figure, marks.back().below_ground_m * mm_per_m);
  addFloor(figure, marks, plan, mm_per_m);
  figure.add({-kFloor_mm, 0}, {kRodHalf_mm + 2, 0}, Line::edge);  // the string
  addMarks(figure, marks, plan, mm_per_m, format, lettering);
  addDepths(figure, plan, mm_per_m, format, lettering);
  addScaleBar(figure, {figure.bounds().left() + 2, figure.bounds().bottom() + 4}, n, format, style);
  return figure;
}

}  // namespace

int drawDepthRod(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                 const Style& style) {
  return paintFitted(painter, box_mm, style, [&](double n) { return rodFigure(plan, format, style, n); });
}

}  // namespace ui::drawings
