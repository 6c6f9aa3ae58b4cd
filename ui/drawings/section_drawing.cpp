#include "core/geometry/scene.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"
#include "ui/drawings/section_ground.h"
#include "ui/drawings/section_labels.h"
#include "ui/drawings/section_shape.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::geometry::Built;

constexpr double kWaterSign_mm = 3;
constexpr double kGround_mm = 5;         // ground line beyond the pit
constexpr double kLeastHatched_mm = 1;   // thinner layers take no hatch
constexpr double kLeastLining_mm = 1.4;  // a thinner lining is drawn solid

void addCoat(Figure& figure, const QPainterPath& face, int coat, double thickness_mm) {
  if (thickness_mm >= kLeastHatched_mm) {
    const CoatHatch hatch = coatHatch(face, coat);
    figure.addSolid(hatch.dots);
    figure.add(hatch.lines, Line::hatch);
  }
  if (thickness_mm >= 0.7) figure.add(face, Line::thin);
}

void addStones(Figure& figure, const SectionShape& shape, const QPainterPath& bed) {
  const auto& g = shape.tank();
  QRectF box = bed.boundingRect();
  box.setLeft(shape.left(g.pitOffset(g.depth() - g.pitDepth())));
  box.setRight(shape.right(g.pitOffset(g.depth() - g.pitDepth())));
  figure.add(bed, Line::thin);
  if (box.height() >= kLeastHatched_mm) figure.add(stones(box), Line::hatch);
}

/// Where the layers are too thin to tell apart, all of the lining is solid.
void addLayers(Figure& figure, const SectionShape& shape, const Built& built) {
  const auto& g = shape.tank();
  const bool is_thin = shape.mm(g.liningThickness()) < kLeastLining_mm;
  int coat = 0;
  for (const auto& layer : g.layers()) {
    if (!core::geometry::stands(layer, g, built)) continue;
    if (is_thin) {
      figure.addSolid(shape.layer(layer.id));
      continue;
    }
    const QPainterPath face = shape.layer(layer.id);
    if (layer.id == "stone_bed") {
      addStones(figure, shape, face);
    } else if (core::geometry::isCoat(layer)) {
      addCoat(figure, face, ++coat, shape.mm(layer.thickness_m));
    } else {  // cove and rim are made with the last coat
      addCoat(figure, face, coat, shape.mm(layer.thickness_m));
    }
  }
}

void addWater(Figure& figure, const SectionShape& shape, double z) {
  const double offset = shape.tank().clearOffset(z), y = shape.level(z);
  const double a = shape.left(offset), b = shape.right(offset), x = a + (b - a) * 0.5;
  figure.add({a, y}, {b, y}, Line::thin);
  const double size = std::min(kWaterSign_mm, (b - a) / 4);
  QPainterPath triangle(QPointF(x, y));
  triangle.lineTo(x - size / 2, y - size);
  triangle.lineTo(x + size / 2, y - size);
  triangle.closeSubpath();
  figure.add(triangle, Line::thin);
  const double below = std::min(0.9, (shape.level(0) - y) / 4);
  for (int k = 1; k <= 3; ++k) {
    const double half = size * (0.75 - 0.2 * k);
    figure.add({x - half, y + k * below}, {x + half, y + k * below}, Line::hatch);
  }
}

void addGround(Figure& figure, const QPainterPath& edge, const SectionGround& ground) {
  QPainterPath left, right, natural;
  left.addPolygon(ground.left + QPolygonF{edge.elementAt(0)});
  right.addPolygon(QPolygonF{edge.currentPosition()} + ground.right);
  natural.addPolygon(ground.natural);
  figure.add(earthHatch(ground.line(edge), kSectionEarth_mm), Line::hatch);
  figure.add(left, Line::outline);
  figure.add(right, Line::outline);
  figure.add(edge, Line::outline);
  figure.add(natural, Line::hidden);
}

/// The clear inside with the rim seen beyond.
void addClearFace(Figure& figure, const SectionShape& shape) {
  const auto& g = shape.tank();
  const auto water = g.waterProfile(g.depth(), 12);
  figure.add(shape.face(water), Line::edge);
}

/// Room for the cut tank with its ground and water level sign.
QRectF objectRoom(const SectionShape& shape, const SectionGround& ground) {
  const auto& g = shape.tank();
  const QRectF natural = ground.natural.boundingRect();
  const QRectF finished = ground.line(shape.pitEdge()).boundingRect();
  const double line = width_mm(Line::outline) / 2;
  const double top = std::min({finished.top() - line, shape.level(g.fullLevel()) - kWaterSign_mm - 0.5,
                               ground.hasRelief() ? natural.top() - line : 0.});
  const double bottom = std::max({finished.bottom() + kSectionEarth_mm, natural.bottom() + line,
                                  shape.level(g.fullLevel()) + kWaterSign_mm});
  return {QPointF(ground.fromX(), top), QPointF(ground.toX(), bottom)};
}

void addSacks(Figure& figure, const SectionShape& shape, const Built& built) {
  figure.addSolid(shape.face(shape.tank().sackProfile(built.coats)));
}

/// Pegs beside the pit.
void addPegs(Figure& figure, const SectionShape& shape, const SectionGround& ground) {
  constexpr double kHigh_m = 0.4, kWide_m = 0.06, kMost_mm = 4;
  const double high = std::min(shape.mm(kHigh_m), kMost_mm);
  const double edge = shape.tank().pitProfile().points.back().offset_m;
  for (const double x : {shape.left(edge), shape.right(edge)}) {
    const double y = ground.heightAt(x);
    const QRectF peg(x - shape.mm(kWide_m) / 2, y - high, shape.mm(kWide_m), high);
    QPainterPath path;
    path.addRect(peg);
    figure.addSolid(path);
  }
}

/// The cut tank without dimensions.
Figure pictureFigure(const core::Plan& plan, double n, SectionCut cut, const std::optional<Built>& so_far) {
  const SectionShape shape(plan.geometry, n, cut);
  const Built built = so_far.value_or(Built{});
  SectionGround ground = sectionGround(plan.site, shape, kGround_mm);
  const QRectF room = objectRoom(shape, ground);
  if (!built.is_platform_made) ground.leaveNatural();
  const double water_m = so_far ? built.water_level_m : shape.tank().fullLevel();
  Figure figure;
  figure.addLater(room, [=](Figure& object) {
    addGround(object, ground.edge(shape.pitEdge(built.dug_m), built.is_platform_made), ground);
    addLayers(object, shape, built);
    if (core::geometry::isLined(shape.tank(), built)) addClearFace(object, shape);
    if (built.has_sacks) addSacks(object, shape, built);
    if (built.has_pegs) addPegs(object, shape, ground);
    if (water_m > 0) addWater(object, shape, water_m);
  });
  return figure;
}

Figure sectionFigure(const core::Plan& plan, const Formatter& format, const Style& style, SectionCut cut,
                     LongText long_text, double n) {
  const SectionShape shape(plan.geometry, n, cut);
  const Lettering lettering{style.text_mm};
  const SectionGround ground = sectionGround(plan.site, shape, kGround_mm);
  Figure figure = pictureFigure(plan, n, cut, {});
  addSectionLabels(figure, shape, ground, plan, format, lettering, long_text);
  addScaleBar(figure, {figure.bounds().left(), figure.bounds().bottom() + 4}, n, format, style);
  return figure;
}

}  // namespace

int drawSection(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                const Style& style, SectionCut cut) {
  const auto way = [&](LongText long_text) -> Draw {
    return [&, long_text](double n) { return sectionFigure(plan, format, style, cut, long_text, n); };
  };
  return paintFitted(painter, box_mm, style,
                     {way(LongText::beside), way(LongText::beyond), way(LongText::one_line_beside),
                      way(LongText::one_line)});
}

int drawSectionPicture(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Style& style,
                       SectionCut cut, const std::optional<Built>& built) {
  Style fit = style;
  fit.fixed_scale = false;
  return paintFitted(painter, box_mm, fit, [&](double n) { return pictureFigure(plan, n, cut, built); });
}

}  // namespace ui::drawings
