#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/paper.h"
#include "ui/drawings/scale.h"

#include <QCoreApplication>
#include <QTransform>
#include <algorithm>
#include <cmath>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::geometry::Peg;
using core::geometry::Tie;

constexpr std::ptrdiff_t kMostNamedInFull = 12;  // corners

/// Outline at an offset in the frame of the pegs: origin at the first corner, first side along x; a circle
/// about its centre.
QPainterPath inPegFrame(const core::geometry::TankGeometry& tank, double offset_m, const Paper& paper) {
  const auto& outline = tank.outline();
  const Paper site(Eigen::Vector2d::Zero(), 1000 / paper.mm(1));
  const QPainterPath path = site.outline(outline, offset_m);
  const auto corners = outline.corners(tank.pitOffset(tank.depth()));
  if (corners.empty()) return path.translated(paper.at({0, 0}));
  const Eigen::Vector2d along = corners[1] - corners[0];
  const QPointF first = site.at(corners[0]);
  const double turn_deg = std::atan2(along.y(), along.x()) * 180 / M_PI;
  const QTransform frame = QTransform::fromTranslate(-first.x(), -first.y()) * QTransform().rotate(turn_deg);
  return frame.map(path).translated(paper.at({0, 0}));
}

Eigen::Vector2d middleOf(const std::vector<Peg>& pegs) {
  Eigen::Vector2d low = pegs.front().at_m.head<2>(), high = low;
  for (const Peg& peg : pegs) {
    low = low.cwiseMin(peg.at_m.head<2>());
    high = high.cwiseMax(peg.at_m.head<2>());
  }
  return (low + high) / 2;
}

void addPeg(Figure& figure, const Peg& peg, QPointF at) {
  QPainterPath sign;
  if (peg.kind == "offset_peg") {
    sign.addRect(QRectF(at.x() - 1, at.y() - 1, 2, 2));
    return figure.addSolid(sign);
  }
  if (peg.kind == "square_mark") {
    sign.moveTo(at + QPointF(-1.4, 1.2));
    sign.lineTo(at + QPointF(1.4, 1.2));
    sign.lineTo(at + QPointF(0, -1.4));
    sign.closeSubpath();
    return figure.addSolid(sign);
  }
  sign.addEllipse(at, 1.4, 1.4);
  figure.add(sign, Line::thin);
  QPainterPath dot;
  dot.addEllipse(at, 0.5, 0.5);
  figure.addSolid(dot);
}

/// Puts a name beside a peg where it touches nothing, first away from the middle, then farther and with a
/// leader.
void addName(Figure& figure, const QString& name, QPointF at, QPointF middle, const Lettering& lettering) {
  const double away = std::atan2(at.y() - middle.y(), at.x() - middle.x());
  for (int reach = 0; reach < 40; reach += 2) {
    for (const double turn : {0., 0.5, -0.5, 1., -1., 1.6, -1.6, 2.3, -2.3, M_PI}) {
      const QPointF way(std::cos(away + turn), std::sin(away + turn));
      const double half = width_mm(name, lettering) / 2, tall = height_mm(lettering) / 2;
      const QPointF to = at + QPointF(way.x() * (half + 2.5 + reach), way.y() * (tall + 2 + reach));
      const QRectF room = Figure::roomAbout(name, to, lettering);
      const double edge = std::min((half + 0.8) / std::max(1e-9, std::abs(way.x())),
                                   (tall + 0.4) / std::max(1e-9, std::abs(way.y())));
      const QPointF tip = at + way * 2, end = to - way * edge;
      const bool leader = reach >= 6;
      if (!figure.isFree(room.adjusted(-0.5, -0.2, 0.5, 0.2)) || (leader && figure.meetsText(tip, end)))
        continue;
      if (leader) figure.add(tip, end, Line::thin);
      return figure.addTextAbout(name, to, lettering);
    }
  }
}

const Peg* find(const std::vector<Peg>& pegs, const std::string& id) {
  const auto peg = std::ranges::find(pegs, id, &Peg::id);
  return peg == pegs.end() ? nullptr : &*peg;
}

bool isDrawn(const Peg& peg) {
  return peg.kind != "pit_floor_corner";
}

/// Names of offset pegs crowd round many corners; there the corner's name must do.
bool isNamed(const Peg& peg, const core::geometry::SettingOut& out) {
  const auto corners = std::ranges::count(out.pegs, "pit_corner", &Peg::kind);
  return isDrawn(peg) && (peg.kind == "pit_corner" || corners <= kMostNamedInFull);
}

void addTies(Figure& figure, const core::geometry::SettingOut& out, const Paper& paper) {
  for (const Tie& tie : out.ties) {
    const Peg* from = find(out.pegs, tie.from);
    const Peg* to = find(out.pegs, tie.to);
    if (!from || !to || tie.kind == "triangle_3_4_5" || !isDrawn(*from) || !isDrawn(*to)) continue;
    const bool side = tie.kind == "side";
    figure.add(paper.at(from->at_m.head<2>()), paper.at(to->at_m.head<2>()),
               side ? Line::thin : Line::centre);
  }
}

/// The line of each side prolonged to its offset pegs: where the string runs.
void addStrings(Figure& figure, const core::geometry::SettingOut& out, const Paper& paper) {
  for (const Peg& peg : out.pegs) {
    if (peg.kind != "offset_peg") continue;
    const Peg* corner = find(out.pegs, peg.id.substr(0, peg.id.size() - 1));
    if (corner) figure.add(paper.at(corner->at_m.head<2>()), paper.at(peg.at_m.head<2>()), Line::hidden);
  }
}

void addSideLengths(Figure& figure, const core::geometry::SettingOut& out, const Paper& paper, QPointF middle,
                    const Formatter& format, const Lettering& lettering) {
  for (const Tie& tie : out.ties) {
    const Peg* from = find(out.pegs, tie.from);
    const Peg* to = find(out.pegs, tie.to);
    if (tie.kind != "side" || !from || !to) continue;
    const QPointF half = (paper.at(from->at_m.head<2>()) + paper.at(to->at_m.head<2>())) / 2;
    const QPointF way =
        (middle - half) / std::max(1e-9, std::hypot(middle.x() - half.x(), middle.y() - half.y()));
    const QString text = format.quantity(tie.length_m, core::Unit::metre, 2);
    for (int reach = 4; reach < 16; ++reach) {
      const QPointF to_mm =
          half + QPointF(way.x() * (reach + width_mm(text, lettering) / 2), way.y() * reach);
      if (!figure.isFree(Figure::roomAbout(text, to_mm, lettering).adjusted(-1.2, 0, 1.2, 0))) continue;
      figure.addTextAbout(text, to_mm, lettering);
      break;
    }
  }
}

struct KeyRow {
  const char* kind;
  QString text;
};

void addKey(Figure& figure, const std::vector<Peg>& pegs, const Lettering& lettering) {
  const double x = figure.bounds().left(), pitch = height_mm(lettering) + 1;
  double y = figure.bounds().bottom() + 5;
  std::vector<KeyRow> rows{
      {"pit_corner", Text::tr("corner peg at the pit edge, or centre")},
      {"offset_peg", Text::tr("offset peg, 1 m clear of the digging; A1 and A2 belong to A")}};
  if (std::ranges::find(pegs, "square_mark", &Peg::kind) != pegs.end()) {
    rows.push_back({"square_mark", Text::tr("mark on the string for the right angle, 3-4-5")});
  }
  for (const KeyRow& row : rows) {
    addPeg(figure, {"", row.kind, {}}, {x + 3, y});
    figure.addText(row.text, {x + 8, y + lettering.cap_mm / 2}, lettering);
    y += pitch;
  }
}

Figure settingOutFigure(const core::Plan& plan, const Formatter& format, const Style& style, double n) {
  const auto& out = plan.setting_out;
  const Paper paper(middleOf(out.pegs), n);
  const Lettering lettering{style.text_mm};
  const double bottom = plan.geometry.depth() - plan.geometry.pitDepth();
  Figure figure;
  figure.add(inPegFrame(plan.geometry, plan.geometry.pitOffset(plan.geometry.depth()), paper), Line::outline);
  figure.add(inPegFrame(plan.geometry, plan.geometry.pitOffset(bottom), paper), Line::hidden);
  addTies(figure, out, paper);
  addStrings(figure, out, paper);
  for (const Peg& peg : out.pegs) {
    if (isDrawn(peg)) addPeg(figure, peg, paper.at(peg.at_m.head<2>()));
  }
  const QPointF middle = figure.bounds().center();
  for (const Peg& peg : out.pegs) {
    if (!isNamed(peg, out)) continue;
    addName(figure, QString::fromStdString(peg.id), paper.at(peg.at_m.head<2>()), middle, lettering);
  }
  addSideLengths(figure, out, paper, middle, format, lettering);
  addKey(figure, out.pegs, lettering);
  addScaleBar(figure, {figure.bounds().left(), figure.bounds().bottom() + 4}, n, format, style);
  return figure;
}

}  // namespace

int drawSettingOut(QPainter& painter, const QRectF& box_mm, const core::Plan& plan, const Formatter& format,
                   const Style& style) {
  return paintFitted(painter, box_mm, style,
                     [&](double n) { return settingOutFigure(plan, format, style, n); });
}

}  // namespace ui::drawings
