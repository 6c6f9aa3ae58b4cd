#include "ui/text/money_words.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QStringList>
#include <vector>

namespace ui::words {
namespace {

using core::Project;
using core::cost::CostPlan;
using core::cost::LiningCost;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString years(double life, const Formatter& format) {
  return format.quantity(life, core::Unit::year, decimalsFor(life, 0));
}

QString aYear(const LiningCost& lining, const Project& project, const Formatter& format) {
  return money(*lining.annual, project, format);
}

QString cheapest(const LiningCost& lining, const Project& project, const Formatter& format) {
  const QString text =
      say(QT_TRANSLATE_NOOP("ui::words",
                            "Over the years %1 costs least: %2 a year, interest and upkeep counted."))
          .arg(liningName(lining.lining), aYear(lining, project, format));
  if (!lining.annual_per_m3) return text;
  return text + u' ' +
         say(QT_TRANSLATE_NOOP("ui::words", "That is %1 a year for each m³ (%2) stored."))
             .arg(money(*lining.annual_per_m3, project, format), format.litres(1));
}

QString lineOf(const LiningCost& lining, const Project& project, const Formatter& format) {
  return say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "%1: %2 a year; %3 to build with its digging, lasts about %4, upkeep %5 a year."))
      .arg(liningName(lining.lining), aYear(lining, project, format), money(lining.capital, project, format),
           years(lining.life_years, format), money(lining.upkeep_year, project, format));
}

QString notCompared(const std::vector<const LiningCost*>& unknown) {
  if (unknown.empty()) return {};
  QStringList names;
  for (const LiningCost* lining : unknown) names << liningName(lining->lining);
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Not compared, for their price or their digging is not known: %1."))
      .arg(names.join(say(QT_TRANSLATE_NOOP("ui::words", ", "))));
}

QString startOf(QString sentence) {
  if (!sentence.isEmpty()) sentence[0] = sentence[0].toUpper();
  return sentence;
}

}  // namespace

QStringList liningAnswers(const Project& project, const CostPlan& plan, const Formatter& format) {
  std::vector<const LiningCost*> known, unknown;
  for (const LiningCost& lining : plan.linings) (lining.annual ? known : unknown).push_back(&lining);
  if (known.empty())
    return {say(
        QT_TRANSLATE_NOOP("ui::words",
                          "No lining can be compared yet: enter what one costs, how long it lasts and what "
                          "its upkeep takes. All but the moulded tank need the works, too, and what a "
                          "labourer costs, for their digging."))};
  QStringList answers;
  if (known.size() > 1)
    answers << cheapest(*known.front(), project, format);
  else
    answers << say(QT_TRANSLATE_NOOP(
        "ui::words", "Only one lining can be reckoned; enter what the others cost to compare them."));
  for (const LiningCost* lining : known) answers << startOf(lineOf(*lining, project, format));
  answers << notCompared(unknown)
          << say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Compared is the lining with the digging that it needs. What every tank needs, whatever its "
                 "lining, is left out of all of them: pipes, fence, silt trap, overflow, clearing, filling "
                 "and other things of your own."))
          << say(QT_TRANSLATE_NOOP(
                 "ui::words",
                 "Life and upkeep are proposals to begin with: ask people who have such a lining, "
                 "and change them."));
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
