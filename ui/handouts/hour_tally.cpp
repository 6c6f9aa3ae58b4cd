#include "ui/handouts/hour_tally.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr double kBox = 6, kBoxStep = 7.4, kGroupGap = 3, kName = 32;
constexpr int kGroup = 5;

double placeOf(int box) {
  return kName + box * kBoxStep + box / kGroup * kGroupGap;
}

int mostBoxes(double width_mm) {
  int boxes = 1;
  while (placeOf(boxes) + kBox <= width_mm) ++boxes;
  return boxes;
}

/// Boxes full by the end of each hour, less those full before.
std::vector<int> spread(int boxes, double hours) {
  std::vector<int> rows;
  int done = 0;
  for (int hour = 1; done < boxes; ++hour) {
    const int full = static_cast<int>(std::ceil(boxes * std::min<double>(hour, hours) / hours - 1e-9));
    rows.push_back(full - done);
    done = full;
  }
  return rows;
}

}  // namespace

HourTally hourTally(int batches, double hours, double width_mm) {
  const int most = mostBoxes(width_mm);
  HourTally tally;
  for (const int each : {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000}) {
    tally = {spread((batches + each - 1) / each, hours), each};
    if (tally.boxes.empty() || std::ranges::max(tally.boxes) <= most) break;
  }
  return tally;
}

void addHourTally(Sheet& sheet, const HourTally& tally, const Formatter& format) {
  int hour = 0;
  for (const int boxes : tally.boxes) {
    const QString name = Text::tr("Hour %1").arg(format.integer(++hour));
    sheet.add({kBox + 2, [=](QPainter& painter, QPointF at) {
                 drawLines(painter, at + QPointF(0, 0.8), {elided(name, kBody, kName - 2)}, kBody);
                 for (int k = 0; k < boxes; ++k) drawTickBox(painter, at + QPointF(placeOf(k), 0.25), kBox);
               }});
  }
}

}  // namespace ui::handouts
