#include "ui/drawings/delivery_charts.h"

#include <QCoreApplication>
#include <cmath>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

constexpr double kLevel_m = 0.005;  // less rounds to nothing

QString placeOfPipe(const QString& along, double over_rim_m, const Formatter& format) {
  const QString far = format.quantity(std::abs(over_rim_m), core::Unit::metre, 2);
  if (std::abs(over_rim_m) < kLevel_m) return Text::tr("%1 along: pipe level with the rim").arg(along);
  return over_rim_m > 0 ? Text::tr("%1 along: pipe %2 over the rim").arg(along, far)
                        : Text::tr("%1 along: pipe %2 under the rim").arg(along, far);
}

}  // namespace

QString headReading(const core::hydraulics::LinePlan& line, double rim_level_m, int point,
                    const Formatter& format) {
  if (!line.full || point < 0 || point >= static_cast<int>(line.full->points.size())) return {};
  const core::hydraulics::LinePoint& p = line.full->points[static_cast<std::size_t>(point)];
  const QString along = format.quantity(p.station_m, core::Unit::metre, 1);
  const QString where = placeOfPipe(along, p.level_m - rim_level_m, format);
  const QString head = format.quantity(std::abs(p.pressure_m), core::Unit::metre, 2);
  return p.pressure_m < -kLevel_m ? Text::tr("%1, suction %2").arg(where, head)
                                  : Text::tr("%1, head %2").arg(where, head);
}

}  // namespace ui::drawings
