#include "core/geometry/scene.h"
#include "ui/drawings/dimensions.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"
#include "ui/drawings/section_ground.h"
#include "ui/drawings/section_shape.h"
#include "ui/text/words.h"

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

constexpr double kEarth_mm = 5;  // depth of the hatched ground
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
    } else if (layer.id.starts_with("coat_")) {
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
  figure.add(earthHatch(ground.line(edge), kEarth_mm), Line::hatch);
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

struct LevelLabel {
  double y;
  double from_x;
  QString text;
};

QString levelText(const std::string& id, const core::Plan& plan, const Formatter& format) {
  const auto& levels = plan.setting_out.levels;
  const auto found = std::ranges::find(levels, id, &core::geometry::LevelMark::id);
  const QString depth = format.quantity(found->below_ground_m, core::Unit::metre, 2);
  if (id == "rim" && plan.site.bench) return Text::tr("rim and platform: 0");
  if (id == "rim" && plan.site.has_relief) return Text::tr("rim: 0");
  if (id == "rim") return Text::tr("rim and ground: 0");
  if (id == "overflow") return Text::tr("overflow: %1 down").arg(depth);
  if (id == "pit_floor") return Text::tr("pit floor: %1 down").arg(depth);
  return Text::tr("clear floor: %1 down").arg(depth);
}

std::string floorId(const core::Plan& plan) {
  return "coat_" + std::to_string(plan.quantities.coats.size()) + "_top";
}

std::vector<LevelLabel> levelLabels(const SectionShape& shape, const SectionGround& ground,
                                    const core::Plan& plan, const Formatter& format) {
  const auto& g = shape.tank();
  const double bottom = g.depth() - g.pitDepth();
  std::vector<LevelLabel> labels{
      {shape.level(g.depth()), ground.rim_x, levelText("rim", plan, format)},
      {shape.level(g.fullLevel()), shape.right(g.clearOffset(g.fullLevel())),
       levelText("overflow", plan, format)},
      {shape.level(0), shape.right(0), levelText(floorId(plan), plan, format)},
      {shape.level(bottom), shape.right(g.pitOffset(bottom)), levelText("pit_floor", plan, format)}};
  if (ground.hasRelief()) labels.push_back({ground.named.y(), ground.named.x(), Text::tr("natural ground")});
  std::ranges::stable_sort(labels, {}, &LevelLabel::y);
  return labels;
}

void addLevels(Figure& figure, const std::vector<LevelLabel>& labels, double from_x,
               const Lettering& lettering) {
  std::vector<double> wanted;
  for (const LevelLabel& label : labels) wanted.push_back(label.y);
  const std::vector<double> heights = spread(wanted, height_mm(lettering) + 0.6);
  const double knee = from_x + 1, text_x = from_x + 6;
  for (std::size_t k = 0; k < labels.size(); ++k) {
    const LevelLabel& label = labels[k];
    QPainterPath leader(QPointF(label.from_x, label.y));
    leader.lineTo(std::max(knee, label.from_x), label.y);
    leader.lineTo(text_x - 1.5, heights[k]);
    figure.add(leader, Line::thin);
    figure.addText(label.text, {text_x, heights[k] + lettering.cap_mm / 2}, lettering);
  }
}

/// Widths along the cut; for a polygon they may differ from its greatest width, and then say where they are
/// taken.
class Widths {
public:
  Widths(const SectionShape& shape, const Formatter& format) : shape_(shape), format_(format) {}

  Measure at(double offset_m, double z_m, const QString& width, const QString& diameter) const {
    const double left = shape_.left(offset_m), right = shape_.right(offset_m), y = shape_.level(z_m);
    const double length_m = (right - left) / shape_.mm(1);
    const auto& outline = shape_.tank().outline();
    const bool whole = std::abs(length_m - extent(offset_m)) < 0.0005;
    const QString sentence = outline.isCircle()                  ? diameter
                             : whole                             ? width
                             : shape_.cut() == SectionCut::along ? Text::tr("%1, at B-B").arg(width)
                                                                 : Text::tr("%1, at A-A").arg(width);
    return {left, right, y, y, sentence.arg(format_.quantity(length_m, core::Unit::metre, 2))};
  }

private:
  const SectionShape& shape_;
  const Formatter& format_;

  double extent(double offset_m) const {
    const Eigen::Vector2d size = shape_.tank().outline().size(offset_m);
    return shape_.cut() == SectionCut::along ? size.x() : size.y();
  }
};

void addWidths(Figure& figure, const SectionShape& shape, const Formatter& format, double above_y,
               double below_y, const Lettering& lettering) {
  const auto& g = shape.tank();
  const Widths widths(shape, format);
  const double rim = g.clearOffset(g.depth()), top = g.pitOffset(g.depth());
  const double bottom = g.depth() - g.pitDepth();
  const bool along = shape.cut() == SectionCut::along;
  addRows(figure, Side::above, above_y,
          {widths.at(rim, g.depth(), along ? Text::tr("clear rim length %1") : Text::tr("clear rim width %1"),
                     Text::tr("clear rim diameter %1")),
           widths.at(top, g.depth(), along ? Text::tr("pit top length %1") : Text::tr("pit top width %1"),
                     Text::tr("pit top diameter %1"))},
          lettering);
  std::vector<Measure> below{
      widths.at(0, 0, along ? Text::tr("clear floor length %1") : Text::tr("clear floor width %1"),
                Text::tr("clear floor diameter %1")),
      widths.at(g.pitOffset(bottom), bottom,
                along ? Text::tr("pit floor length %1") : Text::tr("pit floor width %1"),
                Text::tr("pit floor diameter %1"))};
  std::ranges::sort(below, {}, [](const Measure& m) { return m.to - m.from; });
  addRows(figure, Side::below, below_y, below, lettering);
}

void addDepths(Figure& figure, const SectionShape& shape, const SectionGround& ground,
               const Formatter& format, const Lettering& lettering) {
  const auto& g = shape.tank();
  const auto text = [&](const QString& sentence, double depth) {
    return sentence.arg(format.quantity(depth, core::Unit::metre, 2));
  };
  const double bottom = g.depth() - g.pitDepth();
  const double rim = ground.hasRelief() ? shape.left(g.pitOffset(g.depth())) : ground.fromX() + 1;
  addRows(figure, Side::left, ground.fromX(),
          {{0, shape.level(0), rim, shape.left(0), text(Text::tr("clear depth %1"), g.depth())},
           {0, shape.level(bottom), rim, shape.left(g.pitOffset(bottom)),
            text(Text::tr("pit depth %1"), g.pitDepth())}},
          lettering);
}

/// Room for the cut tank with its ground and water level sign.
QRectF objectRoom(const SectionShape& shape, const SectionGround& ground) {
  const auto& g = shape.tank();
  const QRectF natural = ground.natural.boundingRect();
  const QRectF finished = ground.line(shape.pitEdge()).boundingRect();
  const double line = width_mm(Line::outline) / 2;
  const double top = std::min({finished.top() - line, shape.level(g.fullLevel()) - kWaterSign_mm - 0.5,
                               ground.hasRelief() ? natural.top() - line : 0.});
  const double bottom = std::max(
      {finished.bottom() + kEarth_mm, natural.bottom() + line, shape.level(g.fullLevel()) + kWaterSign_mm});
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
                     double n) {
  const SectionShape shape(plan.geometry, n, cut);
  const Lettering lettering{style.text_mm};
  const SectionGround ground = sectionGround(plan.site, shape, kGround_mm);
  Figure figure = pictureFigure(plan, n, cut, {});
  const QRectF object = figure.bounds();
  addLevels(figure, levelLabels(shape, ground, plan, format), ground.toX(), lettering);
  addWidths(figure, shape, format, object.top() - 1, std::max(object.bottom(), figure.bounds().bottom()),
            lettering);
  addDepths(figure, shape, ground, format, lettering);
  addScaleBar(figure, {figure.bounds().left(), figure.bounds().bottom() + 4}, n, format, style);
  return figure;
}

}  // namespace

int drawSection(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                const Style& style, SectionCut cut) {
  return paintFitted(painter, box_mm, style,
                     [&](double n) { return sectionFigure(plan, format, style, cut, n); });
}

int drawSectionPicture(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Style& style,
                       SectionCut cut, const std::optional<Built>& built) {
  Style fit = style;
  fit.fixed_scale = false;
  return paintFitted(painter, box_mm, fit, [&](double n) { return pictureFigure(plan, n, cut, built); });
}

}  // namespace ui::drawings
