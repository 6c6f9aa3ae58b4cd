#include "ui/drawings/dimensions.h"
#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

constexpr double kLeastGap_mm = 0.8;    // lines nearer than this on paper run together
constexpr double kLeastSlope_mm = 2.5;  // narrowest slope that takes slope strokes
constexpr double kSlopeStep_mm = 4;

/// An outline to draw and to measure.
struct Reach {
  double offset_m;
  Line line;
  QString length, width, diameter;  // sentences with %1 for the number
  bool is_clear = false;
};

std::vector<Reach> clearReaches(const core::Plan& plan) {
  const auto& g = plan.geometry;
  if (g.batter() * g.depth() < 0.0005) {
    return {{0, Line::outline, Text::tr("clear length %1"), Text::tr("clear width %1"),
             Text::tr("clear diameter %1"), true}};
  }
  return {{0, Line::edge, Text::tr("clear floor length %1"), Text::tr("clear floor width %1"),
           Text::tr("clear floor diameter %1"), true},
          {g.clearOffset(g.depth()), Line::outline, Text::tr("clear rim length %1"),
           Text::tr("clear rim width %1"), Text::tr("clear rim diameter %1"), true}};
}

std::vector<Reach> reaches(const core::Plan& plan) {
  const auto& g = plan.geometry;
  std::vector<Reach> all = clearReaches(plan);
  all.push_back({g.pitOffset(g.depth()), Line::outline, Text::tr("pit top length %1"),
                 Text::tr("pit top width %1"), Text::tr("pit top diameter %1")});
  if (const auto collar = collarReach(g)) {
    all.push_back({*collar, Line::edge, Text::tr("rim collar length %1"), Text::tr("rim collar width %1"),
                   Text::tr("rim collar diameter %1")});
  }
  return all;
}

/// Offsets of the joints between coats at the rim, without the clear face and the pit edge [m].
std::vector<double> coatJoints(const core::geometry::TankGeometry& g) {
  std::vector<double> joints;
  double offset = g.pitOffset(g.depth());
  for (const auto& layer : g.layers()) {
    if (!core::geometry::isCoat(layer)) continue;
    offset -= layer.thickness_m * g.slant();
    joints.push_back(offset);
  }
  if (!joints.empty()) joints.pop_back();
  return joints;
}

bool coatsShow(const core::geometry::TankGeometry& g, const Paper& paper) {
  return std::ranges::all_of(g.layers(), [&](const auto& layer) {
    return !core::geometry::isCoat(layer) || paper.mm(layer.thickness_m) >= kLeastGap_mm;
  });
}

/// Strokes down the wall, long and short in turn: the sign of a slope.
void addSlopeStrokes(Figure& figure, const QPolygonF& rim, const QPolygonF& floor) {
  int k = 0;
  double next = kSlopeStep_mm / 2, done = 0;
  for (qsizetype i = 0; i + 1 < rim.size(); ++i) {
    const double edge = std::hypot(rim[i + 1].x() - rim[i].x(), rim[i + 1].y() - rim[i].y());
    for (; edge > 0 && next < done + edge; next += kSlopeStep_mm, ++k) {
      const double t = (next - done) / edge;
      const QPointF top = rim[i] + t * (rim[i + 1] - rim[i]), foot = floor[i] + t * (floor[i + 1] - floor[i]);
      figure.add(top, top + (k % 2 == 0 ? 0.85 : 0.4) * (foot - top), Line::hatch);
    }
    done += edge;
  }
}

/// A place over or under a point where a letter meets nothing.
QPointF freeBeside(const Figure& figure, const QString& letter, QPointF end, const Lettering& lettering) {
  const Lettering bold{lettering.cap_mm, true};
  for (double away = 1.5 + lettering.cap_mm / 2; away < 12 * lettering.cap_mm; away += lettering.cap_mm / 2) {
    for (const double way : {1., -1.}) {
      const QPointF middle = end + QPointF(0, way * away);
      if (figure.isFree(Figure::roomAbout(letter, middle, bold))) return middle;
    }
  }
  return end;
}

/// Where a section is cut: thick line ends with arrows and letters, outside the object. Upright for A, level
/// for B.
void addSectionMark(Figure& figure, const QRectF& object, SectionCut cut, const Lettering& lettering) {
  const bool across = cut == SectionCut::across;
  const QString letter =
      across ? Text::tr("A", "letter of the section") : Text::tr("B", "letter of the section");
  // along the cut, and the way one looks
  const QPointF out = across ? QPointF(0, 1) : QPointF(1, 0), look = across ? QPointF(1, 0) : QPointF(0, -1);
  for (const double way : {-1., 1.}) {
    const QPointF edge = across ? QPointF(0, way < 0 ? object.top() : object.bottom())
                                : QPointF(way < 0 ? object.left() : object.right(), 0);
    const QPointF end = edge + way * 6 * out;
    figure.add(edge + way * out, end, Line::outline);
    QPainterPath arrow(end + 5 * look);
    arrow.lineTo(end + 1.5 * look - 1.2 * out);
    arrow.lineTo(end + 1.5 * look + 1.2 * out);
    arrow.closeSubpath();
    figure.addSolid(arrow);
    figure.add(end, end + 2 * look, Line::thin);
    if (across) {
      const double baseline = end.y() + ascent_mm(lettering) / 2 - 0.5;
      figure.addText(letter, {end.x() - 1.5, baseline}, {lettering.cap_mm, true}, Align::right);
    } else {
      figure.addTextAbout(letter, freeBeside(figure, letter, end, lettering), {lettering.cap_mm, true});
    }
  }
}

/// Lengths under the plan and widths on its right; of a circle the diameters, those of the clear inside under
/// it.
void addSizes(Figure& figure, const core::Plan& plan, const Paper& paper, const Formatter& format,
              const std::vector<Reach>& all, const QRectF& object, const Lettering& lettering,
              LongText long_text) {
  const auto& outline = plan.geometry.outline();
  const bool round = outline.isCircle();
  std::vector<Measure> across, up;
  for (const Reach& reach : all) {
    const Eigen::Vector2d size = outline.size(reach.offset_m);
    const QRectF box = paper.outline(outline, reach.offset_m).boundingRect();
    const auto text = [&](const QString& sentence, double length) {
      return sentence.arg(format.quantity(length, core::Unit::metre, 2));
    };
    const double foot_y = round ? box.center().y() : box.bottom();
    const double foot_x = round ? box.center().x() : box.right();
    if (!round || reach.is_clear) {
      across.push_back(
          {box.left(), box.right(), foot_y, foot_y, text(round ? reach.diameter : reach.length, size.x())});
    }
    if (!round || !reach.is_clear) {
      up.push_back(
          {box.top(), box.bottom(), foot_x, foot_x, text(round ? reach.diameter : reach.width, size.y())});
    }
  }
  addRows(figure, Side::below, object.bottom() + 8, across, lettering, long_text);
  addRows(figure, Side::right, object.right(), up, lettering, long_text);
}

Figure planFigure(const core::Plan& plan, const Formatter& format, const Style& style, LongText long_text,
                  double n) {
  const auto& g = plan.geometry;
  const Paper paper(g.outline().centre(), n);
  const Lettering lettering{style.text_mm};
  const std::vector<Reach> all = reaches(plan);
  Figure figure;
  for (const Reach& reach : all) figure.add(paper.outline(g.outline(), reach.offset_m), reach.line);
  if (coatsShow(g, paper)) {
    for (const double joint : coatJoints(g)) figure.add(paper.outline(g.outline(), joint), Line::thin);
  }
  if (paper.mm(g.clearOffset(g.depth())) >= kLeastSlope_mm) {
    addSlopeStrokes(figure, paper.polygon(g.outline(), g.clearOffset(g.depth())),
                    paper.polygon(g.outline(), 0));
  }
  const QRectF object = figure.bounds();
  addSectionMark(figure, object, SectionCut::across, lettering);
  addSizes(figure, plan, paper, format, all, object.adjusted(0, 0, 8, 0), lettering, long_text);
  addSectionMark(figure, object, SectionCut::along, lettering);
  addScaleBar(figure, {figure.bounds().left(), figure.bounds().bottom() + 5}, n, format, style);
  return figure;
}

}  // namespace

int drawPlan(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
             const Style& style) {
  const auto way = [&](LongText long_text) -> Draw {
    return [&, long_text](double n) { return planFigure(plan, format, style, long_text, n); };
  };
  return paintFitted(painter, box_mm, style, {way(LongText::beyond), way(LongText::one_line)});
}

}  // namespace ui::drawings
