#include "ui/drawings/chart.h"
#include "ui/drawings/chart_axes.h"
#include "ui/drawings/ground_drawings.h"
#include "ui/drawings/ground_shapes.h"
#include "ui/drawings/hatch.h"
#include "ui/drawings/scaled_view.h"

#include <QCoreApplication>
#include <QLineF>
#include <algorithm>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::site::EdgeSlip;
using core::site::Slip;
using core::site::SlopeSection;
using Eigen::Vector2d;

constexpr double kBeside = 0.5;      // ground shown beyond the slip, share of its width
constexpr double kHighCentre = 1.2;  // a centre farther over the ground than so many widths is left out
constexpr double kBelow_m = 0.3;     // least ground shown under the slip
constexpr double kEarth_mm = 4;      // depth of the hatched ground
constexpr double kSlice_mm = 2.5;    // least distance between lines of slices
constexpr double kSpare_mm = 4;
constexpr double kLoad_mm = 5;  // height of the arrows of a load
constexpr Stroke kGround{0.7};
constexpr Stroke kCircle{0.9};
constexpr Stroke kThin{0.35};
constexpr Stroke kWater{0.5, 3, 1.2};
constexpr Stroke kLayer{0.35, 5, 1};
constexpr Stroke kRadius{0.35, 1.5, 1};

QString stateText(const EdgeSlip& slip) {
  return slip.state == "empty" ? Text::tr("tank empty") : Text::tr("tank full and leaking");
}

QString whyNone(const EdgeSlip& slip) {
  using core::site::SearchFault;
  if (!slip.fault) return Text::tr("No slip was searched for.");
  switch (*slip.fault) {
    case SearchFault::bad_section:
      return Text::tr("No slip was found: the ground down the fall does not make a sound section.");
    case SearchFault::level_section:
      return Text::tr("No slip was found: the ground down the fall is level.");
    case SearchFault::nothing_found:
      return Text::tr("No slip was found: no circle through this ground has a factor.");
    case SearchFault::cancelled:
      return Text::tr("The search for a slip was stopped.");
  }
  return {};
}

/// Line cut off at two places, with its ends there.
std::vector<Vector2d> between(const std::vector<Vector2d>& line, double from_x, double to_x) {
  std::vector<Vector2d> part{{from_x, core::site::heightAt(line, from_x)}};
  for (const Vector2d& p : line) {
    if (from_x < p.x() && p.x() < to_x) part.push_back(p);
  }
  part.emplace_back(to_x, core::site::heightAt(line, to_x));
  return part;
}

/// What of the section is shown.
struct Window {
  double from_x, to_x;
  std::vector<Vector2d> ground;
  bool has_centre;
  Eigen::AlignedBox2d extent;
};

Window windowOf(const SlopeSection& section, const Slip& slip) {
  const double width = slip.to_x_m - slip.from_x_m;
  Window window{std::max(section.leastX(), slip.from_x_m - kBeside * width),
                std::min(section.mostX(), slip.to_x_m + kBeside * width),
                {},
                false,
                {}};
  window.ground = between(section.ground_m, window.from_x, window.to_x);
  for (const Vector2d& p : window.ground) window.extent.extend(p);
  const double top = window.extent.max().y(), bottom = slip.circle.centre_m.y() - slip.circle.radius_m;
  window.extent.extend(Vector2d(window.from_x, bottom - std::max(kBelow_m, 0.1 * width)));
  window.has_centre = slip.circle.centre_m.y() < top + kHighCentre * width;
  if (window.has_centre) window.extent.extend(slip.circle.centre_m);
  return window;
}

/// The sliding ground: along the ground, back along the slices' bases and their outer corners.
struct Mass {
  std::vector<Vector2d> arc;  ///< left to right
  QPainterPath region;
};

double circleAt(const Slip& slip, double x) {
  const double r = slip.circle.radius_m, d = x - slip.circle.centre_m.x();
  return slip.circle.centre_m.y() - std::sqrt(std::max(0., r * r - d * d));
}

Mass massOf(const ScaledView& view, const SlopeSection& section, const Slip& slip) {
  constexpr int kChords = 60;
  Mass mass;
  const double width = slip.to_x_m - slip.from_x_m;
  for (int k = 0; k <= kChords; ++k) {
    const double x = slip.from_x_m + width * k / kChords;
    mass.arc.emplace_back(x, circleAt(slip, x));
  }
  std::vector<Vector2d> all = between(section.ground_m, slip.from_x_m, slip.to_x_m);
  all.insert(all.end(), mass.arc.rbegin(), mass.arc.rend());
  mass.region = view.closed(all);
  return mass;
}

void addEarth(Chart& chart, const ScaledView& view, const Window& window, const Mass& mass) {
  QPainterPath band = view.path(window.ground);
  band.connectPath(view.path(window.ground).toReversed().translated(0, kEarth_mm));
  band.closeSubpath();
  chart.line(earthHatch(band.subtracted(mass.region)), kHatchLine, chart.colours().ink);
}

void addMass(Chart& chart, const ScaledView& view, const SlopeSection& section, const Slip& slip,
             const Mass& mass, bool dark) {
  chart.fill(mass.region, groundColours(dark).fill);
  double last = -kSlice_mm;
  for (const auto& slice : slip.slices) {
    const double x_m = slice.x_m + slice.width_m / 2, x = view.mm(x_m - slip.from_x_m);
    if (x - last < kSlice_mm || x_m > slip.to_x_m - 1e-9) continue;
    last = x;
    chart.line(view.at(Vector2d(x_m, core::site::heightAt(section.ground_m, x_m))),
               view.at(Vector2d(x_m, circleAt(slip, x_m))), kHatchLine, chart.colours().ink);
  }
}

void addWater(Chart& chart, const ScaledView& view, const SlopeSection& section, const Window& window) {
  if (section.phreatic_m.size() < 2) return;
  const double from = std::max(window.from_x, section.phreatic_m.front().x());
  const double to = std::min(window.to_x, section.phreatic_m.back().x());
  if (from >= to) return;
  const QPainterPath line = view.path(between(section.phreatic_m, from, to));
  chart.dataLine(line, kWater, chart.colours().middle);
  const QPointF at = line.pointAtPercent(0.12);
  QPainterPath sign(at);
  sign.lineTo(at + QPointF(-1.5, -2.6));
  sign.lineTo(at + QPointF(1.5, -2.6));
  sign.closeSubpath();
  chart.dataLine(sign, kThin, chart.colours().middle);
}

void addLayers(Chart& chart, const ScaledView& view, const SlopeSection& section, const Window& window) {
  for (std::size_t k = 1; k < section.layers.size(); ++k)
    chart.line(inside(view.path(between(section.layers[k].top_m, window.from_x, window.to_x)), view.room()),
               kLayer, chart.colours().ink);
  if (section.firm_level_m)
    chart.line(inside(view.path(std::vector<Vector2d>{{window.from_x, *section.firm_level_m},
                                                      {window.to_x, *section.firm_level_m}}),
                      view.room()),
               kThin, chart.colours().ink);
}

void addLoads(Chart& chart, const ScaledView& view, const SlopeSection& section, const Window& window,
              const Formatter& format) {
  for (const auto& load : section.surcharges) {
    const double from = std::max(load.from_x_m, window.from_x), to = std::min(load.to_x_m, window.to_x);
    if (from >= to) continue;
    const int arrows = std::max(1, static_cast<int>(view.mm(to - from) / 4));
    QPainterPath path;
    for (int k = 0; k <= arrows; ++k) {
      const double x = from + (to - from) * k / arrows;
      const QPointF foot = view.at(Vector2d(x, core::site::heightAt(section.ground_m, x)));
      path.addPath(straight(foot - QPointF(0, kLoad_mm), foot));
      path.addPath(straight(foot + QPointF(-0.7, -1.4), foot));
      path.addPath(straight(foot + QPointF(0.7, -1.4), foot));
    }
    chart.dataLine(path, kThin, chart.colours().ink);
    const double middle = (from + to) / 2;
    const QPointF top = view.at(Vector2d(middle, core::site::heightAt(section.ground_m, middle)));
    const QString text =
        Text::tr("load %1").arg(format.quantity(load.pressure_kpa, core::Unit::kilopascal, 0));
    const double up = kLoad_mm + chart.type().line() / 2 + 0.6;
    chart.label(text, {top - QPointF(0, up), top - QPointF(0, up + 3), top - QPointF(0, up + 6)},
                view.room());
  }
}

void addCentre(Chart& chart, const ScaledView& view, const Slip& slip, const Window& window,
               const Mass& mass) {
  const QPointF centre = view.at(slip.circle.centre_m);
  QPainterPath radii = straight(view.at(mass.arc.front()), centre);
  radii.addPath(straight(centre, view.at(mass.arc.back())));
  chart.line(inside(radii, view.room()), kRadius, chart.colours().ink);
  if (!window.has_centre) return;
  QPainterPath cross = straight(centre - QPointF(2, 0), centre + QPointF(2, 0));
  cross.addPath(straight(centre - QPointF(0, 2), centre + QPointF(0, 2)));
  chart.dataLine(cross, kGround, chart.colours().ink);
}

void addCrack(Chart& chart, const ScaledView& view, const SlopeSection& section, const Mass& mass) {
  if (!section.crack) return;
  const bool falls_right = section.ground_m.front().y() >= section.ground_m.back().y();
  const Vector2d& foot = falls_right ? mass.arc.front() : mass.arc.back();
  chart.dataLine(
      view.path(std::vector<Vector2d>{{foot.x(), core::site::heightAt(section.ground_m, foot.x())}, foot}),
      kCircle, chart.colours().ink);
}

std::vector<QPointF> placesAbout(QPointF at, QSizeF size) {
  std::vector<QPointF> places;
  for (const double row : {-0.8, 0.8, 0., -1.8, 1.8, -3.}) {
    for (const double way : {1., -1., 0.}) {
      if (way == 0 && row == 0) continue;
      places.push_back(at + QPointF(way * (size.width() / 2 + 3), row * (size.height() + 1)));
    }
  }
  return places;
}

void addNames(Chart& chart, const ScaledView& view, const SlopeSection& section, const Slip& slip,
              const Window& window, const Formatter& format) {
  const Vector2d& c = slip.circle.centre_m;
  const QString factor = Text::tr("factor %1").arg(format.number(slip.factor, core::Unit::factor, 2));
  const QString radius =
      Text::tr("radius %1").arg(format.quantity(slip.circle.radius_m, core::Unit::metre, 2));
  const auto size = [&](const QString& text) {
    return Figure::roomAbout(text, {}, chart.lettering()).size();
  };
  QPointF at = view.at(c);
  if (!window.has_centre) {
    const double x = (slip.from_x_m + slip.to_x_m) / 2;
    at = QPointF(view.at(Vector2d(x, 0)).x(), view.room().top() + 2 * size(factor).height());
  }
  chart.label(factor, placesAbout(at, size(factor)), view.room());
  chart.label(radius, placesAbout(at, size(radius)), view.room());
  if (section.phreatic_m.size() < 2) return;
  const QString water = Text::tr("water in the ground");
  std::vector<QPointF> places;
  const double reach = size(water).height() / 2 + 0.6;
  for (const QPointF on : placesAlong(view.path(between(section.phreatic_m, window.from_x, window.to_x)))) {
    places.push_back(on + QPointF(0, reach));
    places.push_back(on + QPointF(0, 2 * reach));
  }
  chart.label(water, places, view.room());
}

}  // namespace

void drawSlip(QPainter& painter, const QRectF& box_mm, const EdgeSlip& slip, const Formatter& format,
              const Style& style) {
  if (!slip.critical) return drawSentence(painter, box_mm, whyNone(slip), style);
  constexpr double kLeast_mm = 30;
  Chart chart(style, format);
  const Type& type = chart.type();
  const QRectF room = box_mm.adjusted(0, type.line() + kGap_mm, 0, -scaleRowHeight(type) - 2 * kGap_mm);
  if (room.width() < kLeast_mm || room.height() < kLeast_mm) return;
  const Slip& found = slip.critical->slip;
  const Window window = windowOf(slip.section, found);
  const ScaledView view(room, window.extent, kSpare_mm, style);
  const Mass mass = massOf(view, slip.section, found);
  addGround(chart, room);
  addMass(chart, view, slip.section, found, mass, style.dark);
  addEarth(chart, view, window, mass);
  addLayers(chart, view, slip.section, window);
  addWater(chart, view, slip.section, window);
  addCentre(chart, view, found, window, mass);
  addCrack(chart, view, slip.section, mass);
  chart.dataLine(view.path(mass.arc), kCircle, chart.colours().marked);
  chart.dataLine(view.path(window.ground), kGround, chart.colours().ink);
  addLoads(chart, view, slip.section, window, format);
  addNames(chart, view, slip.section, found, window, format);
  chart.text(stateText(slip), box_mm.topLeft() + QPointF(0.1, 0.1 + type.ascent));  // rounding
  addScaleRow(chart, {box_mm.left(), room.bottom() + 2 * kGap_mm}, view.n(), format);
  chart.paint(painter);
}

}  // namespace ui::drawings
