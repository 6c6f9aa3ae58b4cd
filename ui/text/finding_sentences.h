#pragma once

#include "core/base/finding.h"
#include "ui/text/formatter.h"
#include "ui/text/words.h"

#include <QDate>
#include <QString>
#include <algorithm>
#include <chrono>
#include <span>
#include <stdexcept>
#include <string>
#include <string_view>

namespace ui::words {

/// The values behind a finding, looked up by name.
class Values {
public:
  Values(const core::Finding& finding, const Formatter& format) : finding_(finding), format_(format) {}

  bool has(std::string_view name) const { return find(name) != finding_.values.end(); }
  double number(std::string_view name) const { return at(name).number; }
  std::string token(std::string_view name) const { return at(name).token; }

  /// Number with its unit, in decimals that suit the unit.
  QString text(std::string_view name) const {
    const core::FindingValue& value = at(name);
    return format_.quantity(value.number, value.unit, decimals(value));
  }
  QString text(std::string_view name, int decimals) const {
    return format_.quantity(number(name), at(name).unit, decimals);
  }
  QString whole(std::string_view name) const { return format_.integer(static_cast<int>(number(name))); }
  /// Number of a row, counted from 1.
  QString row(std::string_view name) const { return format_.integer(static_cast<int>(number(name)) + 1); }
  QString month(std::string_view name) const {
    return format_.monthName(static_cast<int>(number(name)), QLocale::LongFormat);
  }
  QString calendarYear(std::string_view name) const { return format_.year(static_cast<int>(number(name))); }
  /// Day of an ISO 8601 token.
  QString date(std::string_view name) const {
    const std::string day = token(name);
    const QDate read = QDate::fromString(QString::fromStdString(day), Qt::ISODate);
    if (!read.isValid()) throw std::logic_error("finding " + finding_.code + " has a bad date " + day);
    return format_.date(std::chrono::year(read.year()) / read.month() / read.day());
  }
  const Formatter& format() const { return format_; }
  QString layer(std::string_view name) const {
    const core::FindingValue& value = at(name);
    return value.token.empty() ? layerName("coat_" + std::to_string(static_cast<int>(value.number)))
                               : layerName(value.token);
  }

private:
  std::vector<core::FindingValue>::const_iterator find(std::string_view name) const {
    return std::ranges::find(finding_.values, name, &core::FindingValue::name);
  }
  const core::FindingValue& at(std::string_view name) const {
    const auto found = find(name);
    if (found != finding_.values.end()) return *found;
    throw std::logic_error("finding " + finding_.code + " has no value " + std::string(name));
  }
  static int decimals(const core::FindingValue& value) {
    switch (value.unit) {
      case core::Unit::metre:
        return 2;
      case core::Unit::person_day:
        return 1;
      case core::Unit::factor:
      case core::Unit::none:
        return 2;
      default:
        return value.number == static_cast<int>(value.number) ? 0 : 1;
    }
  }

  const core::Finding& finding_;
  const Formatter& format_;
};

using Sentence = QString (*)(const Values&);

/// How the values of one code are told.
struct SentenceOf {
  std::string_view code;
  Sentence sentence;
};

/// That a daily record holds no whole year, and what helps.
QString noWholeYearText();

/// Sentences of the codes that start with "water_", "delivery_" and "site_"; those about survey, platform
/// and slips stand by themselves. For works_, records_, cost_ and option_ see works_words.h and
/// money_words.h.
std::span<const SentenceOf> waterSentences();
std::span<const SentenceOf> deliverySentences();
std::span<const SentenceOf> groundSentences();
std::span<const SentenceOf> siteSentences();

}  // namespace ui::words
