#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"
#include "ui/drawings/wall_cut.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::geometry::TankGeometry;

constexpr double kEarth_mm = 8;   // ground shown beyond the pit
constexpr double kFloor_mm = 32;  // floor shown inside the foot of the wall

QString named(const core::geometry::Layer& layer, const Formatter& format) {
  const QString size = thicknessText(layer.thickness_m, format);
  if (layer.id == "cove") return Text::tr("Cove, radius %1").arg(size);
  return Text::tr("%1, %2 thick", "layer and its thickness").arg(words::layerName(layer.id), size);
}

std::vector<const core::geometry::Layer*> coatsFromInside(const TankGeometry& tank) {
  std::vector<const core::geometry::Layer*> coats;
  for (const auto& layer : tank.layers()) {
    if (core::geometry::isCoat(layer)) coats.insert(coats.begin(), &layer);
  }
  return coats;
}

/// The window of the detail: from the floor inside the tank to the ground outside, and up the wall as far as
/// the labels need.
QRectF window(const TankGeometry& tank, const WallCut& foot, double pitch) {
  const double wanted = pitch * (static_cast<double>(tank.layers().size()) + 1.5);
  const double up = std::min(std::max(wanted, 30.), foot.mm(tank.depth()) * 0.95);
  const double outer = foot.mm(tank.pitOffset(up / foot.mm(1)));
  const double reach =
      std::max(kFloor_mm, foot.mm(hasLayer(tank, "cove") ? 2.2 * tank.layers().back().thickness_m : 0));
  return {QPointF(-reach, -up), QPointF(outer + kEarth_mm, -foot.mm(foot.bottom_m()) + kEarth_mm)};
}

/// Leader tips: coats on the wall one below the other, then cove, bed and ground.
std::vector<Leader> labels(const TankGeometry& tank, const WallCut& foot, const QRectF& view, double pitch,
                           const Formatter& format) {
  std::vector<Leader> out;
  double y = view.top() + pitch;
  double inner = 0;
  for (const auto* coat : coatsFromInside(tank)) {
    const double z = -y / foot.mm(1);
    const double middle = tank.clearOffset(z) + (inner + coat->thickness_m / 2) * tank.slant();
    out.push_back({foot.at(middle, z), named(*coat, format)});
    inner += coat->thickness_m;
    y += pitch;
  }
  out.push_back({{view.right() - kEarth_mm / 2, y}, Text::tr("Undisturbed ground")});
  for (const auto& layer : tank.layers()) {
    const double t = layer.thickness_m;
    if (layer.id == "cove") out.push_back({foot.at(-t * 0.12, t * 0.12), named(layer, format)});
    if (layer.id == "stone_bed") {
      const double z = foot.bottom_m() + t / 2;
      out.push_back({foot.at(tank.pitOffset(z), z) - QPointF(3, 0), named(layer, format)});
    }
  }
  return out;
}

void addLayerFaces(Figure& figure, const TankGeometry& tank, const WallCut& foot, const QPainterPath& view) {
  int coat = 0;
  for (const auto& layer : tank.layers()) {
    if (layer.id == "rim") continue;
    const QPainterPath face = foot.face(layer.id).intersected(view);
    if (layer.id == "stone_bed") {
      QRectF bed = face.boundingRect();
      bed.setRight(foot.mm(tank.pitOffset(foot.bottom_m())));
      figure.add(stones(bed), Line::thin);
    } else {
      if (core::geometry::isCoat(layer)) ++coat;
      const CoatHatch hatch = coatHatch(face, coat);
      figure.addSolid(hatch.dots);
      figure.add(hatch.lines, Line::hatch);
    }
  }
}

/// The lines between the layers, without the edges where the detail breaks off.
void addJoints(Figure& figure, const TankGeometry& tank, const WallCut& foot, const QRectF& view) {
  double thickness = 0;
  const double top_z = -view.top() / foot.mm(1);
  const auto joint = [&](double behind_m, Line line) {
    QPainterPath path(foot.at(tank.clearOffset(top_z) + behind_m * tank.slant(), top_z));
    path.lineTo(foot.at(tank.clearOffset(-behind_m) + behind_m * tank.slant(), -behind_m));
    path.lineTo(view.left(), foot.mm(behind_m));
    figure.add(path, line);
  };
  joint(0, Line::edge);
  for (const auto* coat : coatsFromInside(tank)) {
    thickness += coat->thickness_m;
    if (coat->id != "coat_1") joint(thickness, Line::thin);
  }
  if (hasLayer(tank, "stone_bed")) {
    const double z = -tank.liningThickness();
    figure.add(QPointF(view.left(), -foot.mm(z)), foot.at(tank.pitOffset(z), z), Line::thin);
  }
  if (hasLayer(tank, "cove")) {
    QPainterPath frame;
    frame.addRect(view);
    figure.add(foot.face("cove").intersected(frame), Line::thin);
  }
  QPainterPath pit(foot.at(tank.pitOffset(top_z), top_z));
  pit.lineTo(foot.at(tank.pitOffset(foot.bottom_m()), foot.bottom_m()));
  pit.lineTo(view.left(), -foot.mm(foot.bottom_m()));
  figure.add(pit, Line::outline);
}

Figure cornerFigure(const core::Plan& plan, const Formatter& format, const Style& style, double n) {
  const TankGeometry& tank = plan.geometry;
  const WallCut foot(tank, n);
  const Lettering lettering{style.text_mm};
  const double pitch = leaderPitch(lettering);
  const QRectF view = window(tank, foot, pitch);
  Figure figure;
  figure.addLater(view, [&tank, foot, view](Figure& object) {
    QPainterPath frame;
    frame.addRect(view);
    object.add(earthHatch(frame.subtracted(foot.dug())), Line::hatch);
    addLayerFaces(object, tank, foot, frame);
  });
  addJoints(figure, tank, foot, view);
  const double top_z = -view.top() / foot.mm(1);
  addBreak(figure, foot.at(tank.clearOffset(top_z), top_z), foot.at(tank.pitOffset(top_z), top_z));
  addBreak(figure, {view.left(), 0}, {view.left(), -foot.mm(foot.bottom_m())});
  addLeaders(figure, labels(tank, foot, view, pitch, format), view.right() + 12, lettering);
  addScaleBar(figure, {view.left(), figure.bounds().bottom() + 4}, n, format, style);
  return figure;
}

}  // namespace

QString thicknessText(double thickness_m, const Formatter& format) {
  if (format.system() != UnitSystem::metric) return format.quantity(thickness_m, core::Unit::metre, 3);
  const double mm = thickness_m * 1000;
  const int decimals = std::abs(mm - std::round(mm)) < 0.05 ? 0 : 1;
  return Text::tr("%1 mm").arg(format.number(mm, core::Unit::none, decimals));
}

int drawCornerDetail(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                     const Style& style) {
  return paintFitted(painter, box_mm, style, [&](double n) { return cornerFigure(plan, format, style, n); });
}

}  // namespace ui::drawings
