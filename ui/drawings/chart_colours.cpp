#include "ui/drawings/chart_colours.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ui::drawings {
namespace {

/// f of CIE 15, inverted.
double unfold(double t) {
  constexpr double kKnee = 6. / 29;
  return t > kKnee ? t * t * t : 3 * kKnee * kKnee * (t - 4. / 29);
}

/// IEC 61966-2-1: linear light to sRGB.
float encoded(double linear) {
  const double v = linear <= 0.0031308 ? 12.92 * linear : 1.055 * std::pow(linear, 1 / 2.4) - 0.055;
  return static_cast<float>(std::clamp(v, 0., 1.));
}

constexpr double kGreen = 20;  // how far the middle of the ramp swings to green, so that it is not grey

struct RampEnd {
  double lightness, a, b;
};

}  // namespace

const ChartColours& chartColours(bool dark) {
  static const ChartColours light{0xff000000, 0xffffffff, 0xffd9d8d2, 0xffdbe8f1, 0xff93bddb,
                                  0xff08395c, 0xff2c6c9c, 0xff86bcd9, 0xffd2b17a, 0xffd9ecf6,
                                  0xff9dbf78, 0xffe6cb75, 0xffc3aed3, 0xffa8321a, 0xffa8321a};
  static const ChartColours night{0xfff0f0f0, 0xff171b1d, 0xff454d50, 0xff2c424f, 0xff3f7190,
                                  0xffe3f2fb, 0xff8cc6ec, 0xff3f7896, 0xff7a5c2e, 0xff24465a,
                                  0xff47692b, 0xff7d6420, 0xff5e4a70, 0xffff9d7a, 0xffff9d7a};
  return dark ? night : light;
}

QColor fromLab(double lightness, double a, double b) {
  const double fy = (lightness + 16) / 116;
  const double x = 0.95047 * unfold(fy + a / 500), y = unfold(fy), z = 1.08883 * unfold(fy - b / 200);
  return QColor::fromRgbF(encoded(3.2406 * x - 1.5372 * y - 0.4986 * z),
                          encoded(-0.9689 * x + 1.8758 * y + 0.0415 * z),
                          encoded(0.0557 * x - 0.2040 * y + 1.0570 * z));
}

std::vector<QColor> ramp(int count, bool dark) {
  const RampEnd fails = dark ? RampEnd{24, 3, 20} : RampEnd{95, 0, 22};
  const RampEnd lasts = dark ? RampEnd{84, -8, -22} : RampEnd{34, 2, -38};
  std::vector<QColor> colours;
  for (int k = 0; k < count; ++k) {
    const double t = count > 1 ? static_cast<double>(k) / (count - 1) : 1;
    const double green = kGreen * std::sin(t * std::numbers::pi);
    colours.push_back(fromLab(std::lerp(fails.lightness, lasts.lightness, t),
                              std::lerp(fails.a, lasts.a, t) - green, std::lerp(fails.b, lasts.b, t)));
  }
  return colours;
}

}  // namespace ui::drawings
