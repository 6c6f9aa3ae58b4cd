#include "ui/text/money_words.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>

namespace ui::words {
namespace {

using core::Project;
using core::compare::Candidate;
using core::compare::LeftOut;
using core::compare::SearchResult;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString count(std::size_t number, const Formatter& format) {
  return format.integer(static_cast<int>(number));
}

QString sizeText(const Project& project, const Candidate& size, const Formatter& format) {
  constexpr int kDecimals = 1;
  const auto metres = [&](double length_m) {
    return format.quantity(length_m, core::Unit::metre, decimalsFor(length_m, kDecimals));
  };
  if (project.tank.shape == core::Shape::round)
    return say(QT_TRANSLATE_NOOP("ui::words", "%1 across, %2 deep"))
        .arg(metres(size.length_m), metres(size.depth_m));
  return say(QT_TRANSLATE_NOOP("ui::words", "%1 × %2 × %3"))
      .arg(metres(size.length_m), metres(size.width_m), metres(size.depth_m));
}

QString volumeText(double volume_m3, const Formatter& format) {
  constexpr double kLarge_m3 = 10;
  return format.quantity(volume_m3, core::Unit::cubic_metre, volume_m3 < kLarge_m3 ? 1 : 0);
}

QString ofTenYears(double years_in_ten, const Formatter& format) {
  constexpr int kTen = 10;
  return say(QT_TRANSLATE_NOOP("ui::words", "%1 of %2 years"))
      .arg(yearsInTenText(years_in_ten, format), format.integer(kTen));
}

bool isWaterKnown(const SearchResult& result) {
  const auto has_years = [](const Candidate& size) { return size.years_in_ten.has_value(); };
  return std::ranges::any_of(result.frontier, has_years) || (result.largest && has_years(*result.largest));
}

QString cheapest(const Project& project, const SearchResult& result, const Formatter& format) {
  const QString target = ofTenYears(result.target_years_in_ten, format);
  if (result.cheapest)
    return say(result.by_cost
                   ? QT_TRANSLATE_NOOP("ui::words", "The cheapest size with water all year in %1: %2.")
                   : QT_TRANSLATE_NOOP("ui::words",
                                       "The size with least cement and with water all year in %1: %2."))
        .arg(target, candidateText(project, *result.cheapest, format));
  if (isWaterKnown(result))
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "No size within the limits gives water all year in %1. Widen the "
                                 "limits, find more water, or water smaller beds."))
        .arg(target);
  return say(QT_TRANSLATE_NOOP(
      "ui::words", "Whether the water lasts is not known, so sizes are told apart by what they hold."));
}

QString largest(const Project& project, const SearchResult& result, const Formatter& format) {
  if (!result.largest) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "The size that holds most within the limits: %1."))
      .arg(candidateText(project, *result.largest, format));
}

QString frontier(const SearchResult& result, const Formatter& format) {
  if (result.frontier.size() < 2) return {};
  return say(result.by_cost
                 ? QT_TRANSLATE_NOOP(
                       "ui::words",
                       "Sizes worth a look, each better than all cheaper ones: %1. Of the others there "
                       "is always one that gives as much for less money.")
                 : QT_TRANSLATE_NOOP(
                       "ui::words",
                       "Sizes worth a look, each better than all that take less cement: %1. Of the "
                       "others there is always one that gives as much for less cement."))
      .arg(count(result.frontier.size(), format));
}

struct Reason {
  std::size_t LeftOut::*count;
  const char* text;
};

constexpr std::array kReasons{
    Reason{&LeftOut::geometry, QT_TRANSLATE_NOOP("ui::words", "the lining does not fit into them (%1)")},
    Reason{&LeftOut::pit_depth, QT_TRANSLATE_NOOP("ui::words", "the pit is too deep to dig by hand (%1)")},
    Reason{&LeftOut::cut, QT_TRANSLATE_NOOP("ui::words", "the cut is higher than this soil bears (%1)")},
    Reason{&LeftOut::platform, QT_TRANSLATE_NOOP("ui::words", "no platform can be made for them (%1)")},
    Reason{&LeftOut::people, QT_TRANSLATE_NOOP("ui::words", "a coat takes more people than can come (%1)")},
    Reason{&LeftOut::bags, QT_TRANSLATE_NOOP("ui::words", "they take more cement than can be had (%1)")},
    Reason{&LeftOut::cost, QT_TRANSLATE_NOOP("ui::words", "they cost more than is there (%1)")},
};

QString tried(const SearchResult& result, const Formatter& format) {
  return say(QT_TRANSLATE_NOOP("ui::words", "Sizes tried: %1; within all limits: %2."))
      .arg(count(result.tried, format), count(result.within, format));
}

QString leftOut(const SearchResult& result, const Formatter& format) {
  QStringList reasons;
  for (const Reason& reason : kReasons) {
    const std::size_t number = result.left_out.*reason.count;
    if (number > 0) reasons << say(reason.text).arg(count(number, format));
  }
  if (reasons.isEmpty()) return {};
  return say(QT_TRANSLATE_NOOP("ui::words", "Sizes are left out because %1."))
      .arg(reasons.join(say(QT_TRANSLATE_NOOP("ui::words", "; "))));
}

}  // namespace

QString candidateText(const Project& project, const Candidate& candidate, const Formatter& format) {
  QStringList parts{sizeText(project, candidate, format), volumeText(candidate.full_volume_m3, format),
                    outcomeAmount(candidate.cement_bags, "cement_bags", project, format)};
  if (candidate.cost) parts << money(*candidate.cost, project, format);
  if (candidate.years_in_ten) parts << ofTenYears(*candidate.years_in_ten, format);
  return parts.join(say(QT_TRANSLATE_NOOP("ui::words", ", ")));
}

QStringList searchAnswers(const Project& project, const SearchResult& result, const Formatter& format) {
  if (result.tried == 0)
    return {say(QT_TRANSLATE_NOOP(
        "ui::words", "No size was tried: the limits leave none, or the search was broken off."))};
  QStringList answers;
  if (result.within == 0)
    answers << say(QT_TRANSLATE_NOOP("ui::words", "No size keeps to all limits; widen them."));
  else
    answers << cheapest(project, result, format) << largest(project, result, format)
            << frontier(result, format);
  answers << tried(result, format) << leftOut(result, format);
  answers.removeAll(QString());
  return answers;
}

}  // namespace ui::words
