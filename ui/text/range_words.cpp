#include "ui/text/range_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace ui::words {
namespace {

constexpr int kMostDecimals = 4;
constexpr double kRounding = 1e-6;  // of a step: what binary fractions leave

QString leastText(const Range& range, const Formatter& format) {
  const int decimals = decimalsFor(*range.least, range.decimals);
  const double step = format.shownStep(*range.least, range.unit, decimals);
  return format.quantity(std::ceil(*range.least / step - kRounding) * step, range.unit, decimals);
}

QString mostText(const Range& range, const Formatter& format) {
  const int decimals = decimalsFor(*range.most, range.decimals);
  const double step = format.shownStep(*range.most, range.unit, decimals);
  return format.quantity(std::floor(*range.most / step + kRounding) * step, range.unit, decimals);
}

}  // namespace

int decimalsFor(double value, int least) {
  int decimals = least;
  for (double scaled = value * std::pow(10.0, decimals); decimals < kMostDecimals; ++decimals, scaled *= 10) {
    if (std::abs(scaled - std::round(scaled)) <= kRounding * std::max(1.0, std::abs(scaled))) break;
  }
  return decimals;
}

QString rangeText(const Range& range, const Formatter& format) {
  if (range.least && range.most) {
    return QCoreApplication::translate("ui::words", "%1 to %2")
        .arg(leastText(range, format), mostText(range, format));
  }
  if (range.least)
    return QCoreApplication::translate("ui::words", "%1 or more").arg(leastText(range, format));
  if (range.most) return QCoreApplication::translate("ui::words", "up to %1").arg(mostText(range, format));
  return {};
}

}  // namespace ui::words
