#include "ui/drawings/hatch.h"
#include "ui/drawings/isometric_parts.h"
#include "ui/drawings/isometric_patterns.h"
#include "ui/drawings/paper.h"

#include <algorithm>

namespace ui::drawings {
namespace {

constexpr double kLeastDotted_mm = 4;  // narrower faces have no dots

/// A line with round ends, so that lines that meet leave no notch.
void addStroke(Figure& figure, const QPolygonF& points, Line line) {
  QPainterPath path;
  path.addPolygon(points);
  figure.add(path, line);
  QPainterPath ends;
  for (const QPointF end : {points.front(), points.back()})
    ends.addEllipse(end, width_mm(line) / 2, width_mm(line) / 2);
  figure.addSolid(ends);
}

/// Plaster: sparse dots, closer with each coat.
void addPlaster(Figure& figure, const QPainterPath& face, int coat) {
  if (face.boundingRect().height() < kLeastDotted_mm) return;
  figure.addSolid(dotHatch(face, std::max(2.6, 6 - 1.1 * coat), 0.5));
}

void addFace(Figure& figure, const Picture& picture, const Chain& chain, const Strip& strip) {
  const QPainterPath face = picture.ring.face(picture.view, chain, strip);
  figure.addBlank(face);
  if (picture.hasSacks(strip)) {
    figure.add(cloth(face), Line::hatch);
  } else if (picture.isPlaster(strip) && !strip.isLevel()) {
    addPlaster(figure, face, picture.coats());
  }
  for (std::size_t k = 0; k < chain.size(); ++k) {
    const bool is_end = k == 0 || k + 1 == chain.size();
    if (strip.isLevel() || !(picture.ring.hasCorners() || (is_end && strip.goesDown()))) continue;
    addStroke(figure,
              {picture.ring.at(picture.view, chain[k], strip.inner),
               picture.ring.at(picture.view, chain[k], strip.outer)},
              Line::edge);
  }
}

void addStrip(Figure& figure, const Picture& picture, const Chain& half, std::size_t k) {
  const Strip strip = picture.strip(k);
  for (const Chain& chain : picture.ring.seen(half, strip)) addFace(figure, picture, chain, strip);
}

void addRing(Figure& figure, const Picture& picture, const Chain& half, std::size_t k) {
  if (const auto line = picture.lines[k])
    addStroke(figure, picture.ring.line(picture.view, half, picture.points[k]), *line);
}

void addFloor(Figure& figure, const Picture& picture) {
  const QPainterPath seen = picture.seenFloor();
  figure.addBlank(polygonPath(picture.ring.outline(picture.view, picture.points.front())));
  if (picture.hasWater()) {
    figure.add(stillWater(seen), Line::thin);
  } else if (picture.coats() > 0) {
    addPlaster(figure, seen, picture.coats());
  } else if (picture.hasBed()) {
    figure.add(stonesOnFloor(seen), Line::thin);
  }
  addRing(figure, picture, picture.ring.farSides(), 0);
}

}  // namespace

void addPit(Figure& figure, const Picture& picture) {
  const SeenRing& ring = picture.ring;
  const std::size_t steps = picture.points.size() - 1;
  for (std::size_t k = steps; k-- > 0;) {
    addStrip(figure, picture, ring.farSides(), k);
    if (k + 1 < steps && !picture.strip(k).goesDown()) addRing(figure, picture, ring.farSides(), k + 1);
  }
  addFloor(figure, picture);
  for (std::size_t k = 0; k < steps; ++k) {
    addStrip(figure, picture, ring.nearSides(), k);
    if (!ring.seen(ring.nearSides(), picture.strip(k)).empty()) addRing(figure, picture, ring.nearSides(), k);
  }
}

}  // namespace ui::drawings
