#include "ui/drawings/map_classes.h"

#include "ui/text/worth.h"

#include <QCoreApplication>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

/// Hatch of a class on paper, denser where water lasts longer.
struct Tone {
  std::vector<double> angles;
  double spacing_mm;
};

const Tone& tone(int reliability_class) {
  static const std::array<Tone, kClasses> tones{Tone{{}, 0},     Tone{{45}, 5},      Tone{{45}, 2.8},
                                                Tone{{45}, 1.6}, Tone{{45, -45}, 2}, Tone{{45, -45}, 1.1}};
  return tones[static_cast<std::size_t>(reliability_class)];
}

QString classText(int k, const Formatter& format) {
  if (k == 0) return Text::tr("under %1").arg(words::yearsInTenText(kLevels.front(), format));
  if (k == kClasses - 1) return words::yearsInTenText(kLevels.back(), format);
  const auto at = static_cast<std::size_t>(k);
  return Text::tr("%1 to %2")
      .arg(words::yearsInTenText(kLevels[at - 1], format), words::yearsInTenText(kLevels[at], format));
}

void addClassSign(Chart& chart, const QRectF& room, int k, bool dark) {
  chart.fill(rectangle(room), ramp(kClasses, dark)[static_cast<std::size_t>(k)]);
  addTone(chart, rectangle(room), k);
  chart.line(rectangle(room), kContourLine, chart.colours().ink);
}

}  // namespace

void addTone(Chart& chart, const QPainterPath& region, int reliability_class) {
  if (!chart.onPaper()) return;
  const Tone& hatch = tone(reliability_class);
  for (const double angle : hatch.angles) chart.hatch(region, angle, hatch.spacing_mm);
}

Legend mapLegend(const Formatter& format, bool dark) {
  Legend legend{{Text::tr("Years in ten in which the water lasts:")}};
  for (int k = 0; k < kClasses; ++k) {
    legend.push_back({classText(k, format),
                      [k, dark](Chart& chart, const QRectF& room) { addClassSign(chart, room, k, dark); }});
  }
  legend.push_back({Text::tr("target"), [](Chart& chart, const QRectF& room) {
                      chart.line({room.left(), room.center().y()}, {room.right(), room.center().y()},
                                 kTargetLine, chart.colours().ink);
                    }});
  legend.push_back({Text::tr("this tank and its beds"), [](Chart& chart, const QRectF& room) {
                      chart.line(presentCross(room.center(), room), kSignLine, chart.colours().ink);
                    }});
  return legend;
}

}  // namespace ui::drawings
