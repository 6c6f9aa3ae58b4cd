#include "ui/text/words.h"
#include "ui/text/works_words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QStringList>
#include <string>

namespace ui::words {
namespace {

using core::works::Drying;
using core::works::WeatherWindow;
using core::works::WeekChance;

constexpr double kPercent = 100;
constexpr double kLeastTold = 0.005;  // less is shown as nothing

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

const WeekChance& week(const WeatherWindow& window, int index) {
  return window.weeks.at(static_cast<std::size_t>(index));
}

QString weekFrom(const WeekChance& chance, const Formatter& format) {
  return format.dayOfYear(chance.month, chance.day, QLocale::LongFormat);
}

QString planned(const WeatherWindow& window, const Formatter& format) {
  const WeekChance& chosen = week(window, window.chosen);
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "With the first coat in the week from %1, as planned, the coats stay undisturbed "
                 "%2, by %3 of weather."))
      .arg(weekFrom(chosen, format), timesInTen(chosen.undisturbed, format),
           format.quantity(double(window.years), core::Unit::year, 0));
}

QString percent(double share, const Formatter& format) {
  return format.quantity(share * kPercent, core::Unit::percent, 0);
}

QString disturbances(const WeatherWindow& window, const Formatter& format) {
  const WeekChance& chosen = week(window, window.chosen);
  QStringList causes;
  if (chosen.rain >= kLeastTold)
    causes << say(QT_TRANSLATE_NOOP("ui::words",
                                    "%1 or more of rain on the day of a coat or the day after (%2)"))
                  .arg(format.quantity(window.heavy_rain_mm, core::Unit::millimetre, 0),
                       percent(chosen.rain, format));
  if (chosen.frost >= kLeastTold)
    causes << say(QT_TRANSLATE_NOOP("ui::words", "a night of frost in the week after a coat (%1)"))
                  .arg(percent(chosen.frost, format));
  if (chosen.heat >= kLeastTold)
    causes << say(QT_TRANSLATE_NOOP("ui::words", "a day too hot or too cold for plaster (%1)"))
                  .arg(percent(chosen.heat, format));
  if (causes.isEmpty()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "What disturbs them: %1."))
      .arg(causes.join(say(QT_TRANSLATE_NOOP("ui::words", "; "))));
}

QString best(const WeatherWindow& window, const Formatter& format) {
  const WeekChance& best = week(window, window.best);
  if (best.undisturbed <= week(window, window.chosen).undisturbed)
    return say(QT_TRANSLATE_NOOP("ui::words", "No other week of the year is better."));
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "The best week for the first coat begins on %1: undisturbed %2. For that the works "
                 "start on %3."))
      .arg(weekFrom(best, format), timesInTen(best.undisturbed, format), format.date(window.best_start));
}

QString drying(const Drying& coat, const Formatter& format) {
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "%1: in the mean weather of its day fresh plaster loses %2 of water."))
      .arg(layerName("coat_" + std::to_string(coat.coat)),
           format.quantity(coat.kg_m2_h, core::Unit::kg_per_m2_h, 2));
}

QString caveat() {
  return say(
      QT_TRANSLATE_NOOP("ui::words",
                        "This is a chance, not a forecast: look at the sky and hear the forecast before you "
                        "call people together."));
}

}  // namespace

QStringList windowAnswers(const core::works::Works& works, const Formatter& format) {
  if (!works.window || works.window->weeks.empty())
    return {say(
        QT_TRANSLATE_NOOP("ui::words",
                          "The weather of the place is not known, so nobody can say how often rain or frost "
                          "disturbs the coats. Enter the climate with the water, by monthly means or a daily "
                          "record."))};
  const WeatherWindow& window = *works.window;
  QStringList answers{planned(window, format), disturbances(window, format), best(window, format), caveat()};
  for (const Drying& coat : window.drying) answers << drying(coat, format);
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
