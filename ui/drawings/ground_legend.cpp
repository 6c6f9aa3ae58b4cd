#include "ui/drawings/ground_legend.h"

#include "ui/drawings/ground_shapes.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::site::DaylightLine;

constexpr std::ptrdiff_t kMostNamedInFull = 8;  // corners of the platform

/// A corner of the face with the line where it meets the ground below.
LegendEntry faceEntry(const QString& text, DaylightLine::Of of, bool dark) {
  return {text, [of, dark](Chart& chart, const QRectF& room) {
            const bool cut = of == DaylightLine::Of::cut;
            (cut ? addCut : addFill)(chart, rectangle(room), dark);
            const QPainterPath low = straight(room.bottomLeft(), room.bottomRight());
            chart.line(cut ? low : dashDotted(low), cut ? kCutDaylight : kEdge, chart.colours().ink);
          }};
}

LegendEntry lineEntry(const QString& text, const Stroke& stroke) {
  return {text, [stroke](Chart& chart, const QRectF& room) {
            chart.line({room.left(), room.center().y()}, {room.right(), room.center().y()}, stroke,
                       chart.colours().ink);
          }};
}

bool isFilled(const core::geometry::Mesh& mesh) {
  return !mesh.triangles.empty();
}

}  // namespace

void addCut(Chart& chart, const QPainterPath& region, bool dark) {
  chart.fill(region, groundColours(dark).cut);
  chart.hatch(region, 45, 1.6);
}

void addFill(Chart& chart, const QPainterPath& region, bool dark) {
  chart.fill(region, groundColours(dark).fill);
  chart.hatch(region, -45, 3.2);
}

bool pegNamesCrowd(const core::Plan& plan) {
  return std::ranges::count(plan.site.pegs, "platform_corner", &core::site::BenchPeg::kind) >
         kMostNamedInFull;
}

Legend groundLegend(const core::Plan& plan, const Formatter& format, const Style& style) {
  const auto& site = plan.site;
  Legend legend{lineEntry(Text::tr("pit edge"), kPitEdge)};
  if (site.bench) {
    legend.push_back(lineEntry(
        Text::tr("platform edge, level %1").arg(format.quantity(site.bench->level_m, core::Unit::metre, 2)),
        kEdge));
    if (isFilled(site.bench->cut_face))
      legend.push_back(faceEntry(Text::tr("cut face, up to the ground"), DaylightLine::Of::cut, style.dark));
    if (isFilled(site.bench->fill_face))
      legend.push_back(
          faceEntry(Text::tr("fill face, down to the ground"), DaylightLine::Of::fill, style.dark));
  } else if (!site.shape.outline_m.empty()) {
    legend.push_back(lineEntry(Text::tr("platform edge"), kEdge));
  }
  if (site.has_relief)
    legend.push_back(
        lineEntry(Text::tr("natural ground, level (%1)").arg(format.unit(core::Unit::metre)), kContour));
  if (pegNamesCrowd(plan)) legend.push_back({Text::tr("P1 stands inward of Q1, P2 of Q2, and so on")});
  return legend;
}

}  // namespace ui::drawings
