#include "ui/drawings/leaders.h"

#include "ui/drawings/wrap_lines.h"

#include <algorithm>
#include <cmath>

namespace ui::drawings {

namespace {

constexpr double kRowGap_mm = 1.2;
constexpr double kLabelCaps = 30;  // widest line of a text, in heights of its capitals

}  // namespace

std::vector<double> spread(const std::vector<double>& wanted_mm, const std::vector<double>& rooms_mm) {
  std::vector<double> heights;
  for (std::size_t k = 0; k < wanted_mm.size(); ++k)
    heights.push_back(k == 0 ? wanted_mm[k] : std::max(wanted_mm[k], heights[k - 1] + rooms_mm[k - 1]));
  return heights;
}

std::vector<double> spread(const std::vector<double>& wanted_mm, double pitch_mm) {
  return spread(wanted_mm, std::vector(wanted_mm.size(), pitch_mm));
}

double leaderPitch(const Lettering& lettering) {
  return height_mm(lettering) + kRowGap_mm;
}

void addLeaders(Figure& figure, std::vector<Leader> leaders, double text_x, const Lettering& lettering) {
  std::ranges::stable_sort(leaders, {}, [](const Leader& leader) { return leader.tip.y(); });
  const double line = height_mm(lettering);
  std::vector<QStringList> texts;
  std::vector<double> wanted, rooms;
  for (const Leader& leader : leaders) {
    wanted.push_back(leader.tip.y());
    texts.push_back(wrapLines(leader.text, lettering, kLabelCaps * lettering.cap_mm));
    rooms.push_back(static_cast<double>(texts.back().size()) * line + kRowGap_mm);
  }
  const std::vector<double> heights = spread(wanted, rooms);
  for (std::size_t k = 0; k < leaders.size(); ++k) {
    const QPointF tip = leaders[k].tip;
    QPainterPath dot, path(tip);
    dot.addEllipse(tip, 0.8, 0.8);
    path.lineTo(std::max(text_x - 8, tip.x()), tip.y());
    path.lineTo(text_x - 1.5, heights[k]);
    figure.addSolid(dot);
    figure.add(path, Line::thin);
    figure.addLines(texts[k], {text_x, heights[k] + lettering.cap_mm / 2}, lettering);
  }
}

void addBreak(Figure& figure, QPointF from, QPointF to) {
  const QPointF along = to - from;
  const QPointF unit = along / std::hypot(along.x(), along.y()), square(-unit.y(), unit.x());
  const QPointF middle = (from + to) / 2;
  QPainterPath path(from - 2 * unit);
  path.lineTo(middle - 2 * unit);
  path.lineTo(middle - unit + 2 * square);
  path.lineTo(middle + unit - 2 * square);
  path.lineTo(middle + 2 * unit);
  path.lineTo(to + 2 * unit);
  figure.add(path, Line::thin);
}

}  // namespace ui::drawings
