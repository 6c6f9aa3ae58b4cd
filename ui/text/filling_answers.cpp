#include "ui/text/words.h"
#include "ui/text/works_words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QStringList>
#include <optional>
#include <vector>

namespace ui::words {
namespace {

using core::works::Filling;
using core::works::WallBand;

constexpr double kLeastCarried_m3 = 0.01;
constexpr double kLitres = 1000;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString metres(double level_m, const Formatter& format) {
  return format.quantity(level_m, core::Unit::metre, 2);
}

bool isInflowKnown(const Filling& filling) {
  return filling.inflow_from != "none";
}

QString start(const Filling& filling, const Formatter& format) {
  const char* const text =
      filling.start > filling.latest_start
          ? QT_TRANSLATE_NOOP(
                "ui::words",
                "Filling starts on %1, later than %2, by which it should: plaster that falls dry "
                "cracks.")
          : QT_TRANSLATE_NOOP("ui::words", "Filling starts on %1; it should start by %2 at the latest.");
  return say(text).arg(format.date(filling.start), format.date(filling.latest_start));
}

QString inflow(const Filling& filling, const Formatter& format) {
  const QString a_day = format.litres(filling.inflow_m3_day);
  if (filling.inflow_from == "entered")
    return say(QT_TRANSLATE_NOOP("ui::words", "with %1 a day let in, as entered")).arg(a_day);
  return say(QT_TRANSLATE_NOOP("ui::words", "with %1 a day from the source at first")).arg(a_day);
}

QString full(const Filling& filling, const Formatter& format) {
  if (!isInflowKnown(filling))
    return say(
        QT_TRANSLATE_NOOP("ui::words",
                          "What flows in is not known, so nobody can say when the tank is full. Enter the "
                          "water let in each day, or the flow of the source."));
  if (filling.full_on)
    return say(QT_TRANSLATE_NOOP("ui::words", "The tank is full on %1, %2."))
        .arg(format.date(*filling.full_on), inflow(filling, format));
  const double level_m = filling.days.empty() ? 0 : filling.days.back().level_m;
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The tank does not fill within a year, %1: the water comes to %2 over the floor."))
      .arg(inflow(filling, format), metres(level_m, format));
}

QString heldBack(const Filling& filling) {
  if (!filling.is_held_back) return {};
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "On some days less is let in than could be, so that the water does not rise too "
                        "fast for the young plaster."));
}

/// Neighbours that are wet equally long are told as one.
std::vector<WallBand> joined(const std::vector<WallBand>& bands) {
  std::vector<WallBand> out;
  for (const WallBand& band : bands) {
    const bool same = !out.empty() && out.back().wet_until == band.wet_until &&
                      out.back().covered_on.has_value() == band.covered_on.has_value();
    if (same)
      out.back().to_m = band.to_m;
    else
      out.push_back(band);
  }
  return out;
}

QString bandText(const WallBand& band, const Filling& filling, const Formatter& format) {
  const char* const text =
      band.covered_on || !isInflowKnown(filling)
          ? QT_TRANSLATE_NOOP("ui::words", "Wall from %1 to %2 over the floor: wet sacks until %3.")
          : QT_TRANSLATE_NOOP(
                "ui::words",
                "Wall from %1 to %2 over the floor, which the water does not cover: wet sacks until "
                "%3.");
  return say(text).arg(metres(band.from_m, format), metres(band.to_m, format), format.date(band.wet_until));
}

QString bareWall(const Filling& filling, const Formatter& format) {
  if (filling.wetting_after_cure_l <= 0) return {};
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Sacks on bare wall take about %1 of water after the last coat has cured."))
      .arg(litresWorth(filling.wetting_after_cure_l / kLitres, format, Rounding::up));
}

QString carried(const Filling& filling, const Formatter& format) {
  if (filling.carried_m3 < kLeastCarried_m3) return {};
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "For the water to cover all walls by the time their curing ends, about %1 would "
                 "have to be brought by hand."))
      .arg(litresWorth(filling.carried_m3, format, Rounding::up));
}

}  // namespace

QStringList fillingAnswers(const core::works::Works& works, const Formatter& format) {
  if (!works.filling)
    return {
        say(QT_TRANSLATE_NOOP("ui::words", "There is no coat yet after which the tank could be filled."))};
  const Filling& filling = *works.filling;
  QStringList answers{start(filling, format), full(filling, format)};
  for (const WallBand& band : joined(filling.bands)) answers << bandText(band, filling, format);
  answers << bareWall(filling, format) << carried(filling, format) << heldBack(filling);
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
