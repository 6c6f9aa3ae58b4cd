#include "ui/drawings/isometric_patterns.h"

#include "ui/drawings/hatch.h"

#include <QRectF>
#include <algorithm>
#include <cmath>
#include <functional>

namespace ui::drawings {
namespace {

constexpr double kStoneWide_mm = 3.6, kStoneHigh_mm = 2;
constexpr double kStrokeLong_mm = 5, kStrokePitch_mm = 0.9;
constexpr double kClothThread_mm = 1.6;

/// Number from 0 to 1 that looks scattered but is always the same.
double scatter(int k) {
  const double x = std::sin(78.233 * (k + 1)) * 43758.5453;
  return x - std::floor(x);
}

/// Calls with the places of a staggered grid about the middle of a region, each with its number.
void eachPlace(const QRectF& box, QSizeF pitch, const std::function<void(QPointF, int)>& call) {
  const int rows = std::max(1, static_cast<int>(box.height() / pitch.height()));
  const int columns = std::max(1, static_cast<int>(box.width() / pitch.width()));
  for (int row = -rows / 2; row <= rows / 2; ++row) {
    for (int column = -columns / 2; column <= columns / 2; ++column) {
      const double shift = row % 2 == 0 ? 0 : 0.5;
      call(box.center() + QPointF((column + shift) * pitch.width(), row * pitch.height()),
           (row + rows) * (columns + 1) + column + columns);
    }
  }
}

}  // namespace

QPainterPath stonesOnFloor(const QPainterPath& floor) {
  QPainterPath out;
  eachPlace(floor.boundingRect(), {7.5, 4}, [&](QPointF at, int k) {
    const QSizeF size(kStoneWide_mm * (0.7 + 0.6 * scatter(k)),
                      kStoneHigh_mm * (0.75 + 0.5 * scatter(k + 500)));
    const QPointF corner = at + QPointF(2.4 * (scatter(k + 900) - 0.5), 1.2 * (scatter(k + 300) - 0.5));
    const QRectF stone(corner - QPointF(size.width() / 2, size.height() / 2), size);
    if (floor.contains(stone)) out.addRoundedRect(stone, size.width() * 0.4, size.height() * 0.45);
  });
  return out;
}

QPainterPath stillWater(const QPainterPath& surface) {
  QPainterPath out;
  eachPlace(surface.boundingRect(), {16, 9}, [&](QPointF at, int) {
    QPainterPath sign;
    for (int k = 0; k < 3; ++k) {
      const QPointF middle = at + QPointF(0, k * kStrokePitch_mm), half(kStrokeLong_mm / 2 - 0.8 * k, 0);
      sign.moveTo(middle - half);
      sign.lineTo(middle + half);
    }
    if (surface.contains(sign.boundingRect())) out.addPath(sign);
  });
  return out;
}

QPainterPath cloth(const QPainterPath& face) {
  QPainterPath out = lineHatch(face, 60, {kClothThread_mm});
  out.addPath(lineHatch(face, -60, {kClothThread_mm}));
  return out;
}

}  // namespace ui::drawings
