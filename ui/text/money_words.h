#pragma once

#include "core/compare/search.h"
#include "core/plan.h"
#include "ui/text/finding_sentences.h"
#include "ui/text/formatter.h"
#include "ui/text/words_table.h"

#include <QString>
#include <QStringList>
#include <span>
#include <string_view>
#include <vector>

namespace ui::words {

/// An amount of money, whole above 100, with the project's currency: "Rs 12 400". No currency: the number
/// alone.
QString money(double amount, const core::Project& project, const Formatter& format);
/// Also what stands in Bill::missing for a carrier. An item of one's own comes back as it stands.
QString priceItemName(std::string_view item);
QString costUnitName(std::string_view unit);  ///< bag, m3, piece, person_day, m, job
/// A quantity of the bill in the unit that its price is for, whatever the reader measures in: "43 bags",
/// "141.2 person-days", "4.9 m³"; pieces bare.
QString costQuantity(double quantity, std::string_view unit, const Formatter& format);
QString carrierName(core::Carrier carrier);
QString liningName(core::LiningKind lining);
QString rangedInputName(core::RangedInput input);
QString outcomeName(std::string_view outcome);  ///< cement_bags, person_days, money, fill_days
/// A number of an outcome with its unit.
QString outcomeAmount(double value, std::string_view outcome, const core::Project& project,
                      const Formatter& format);

/// What a weight of core::cost::figures() is for: "weight of loose sand"; behind figureName().
QString weightName(std::string_view key);

/// Sentences, the one that matters most first.
QStringList billAnswers(const core::Project& project, const core::cost::CostPlan& plan,
                        const Formatter& format);
QStringList liningAnswers(const core::Project& project, const core::cost::CostPlan& plan,
                          const Formatter& format);
QStringList rangesAnswers(const core::Project& project, const core::cost::RangesPlan& plan,
                          const Formatter& format);
QStringList searchAnswers(const core::Project& project, const core::compare::SearchResult& result,
                          const Formatter& format);
/// "6.2 × 3.4 × 1.5 m, 28 m³, 17 bags, Rs 31 000, 9 of 10 years".
QString candidateText(const core::Project& project, const core::compare::Candidate& candidate,
                      const Formatter& format);

/// One line of the table of options: what, and its value for each option.
struct OptionRow {
  QString name;
  QStringList values;         ///< as many as options; "–" where there is none
  std::vector<bool> differs;  ///< from option A
  bool is_change;             ///< a field that an option changes; else what comes of it
};
/// Fields changed first (label and value with its unit), then what comes of them.
std::vector<OptionRow> optionRows(const core::Project& project,
                                  const std::vector<core::OptionResult>& options, const Formatter& format);
/// "A", or "B – deeper" when it has a name.
QString optionTitle(const core::OptionResult& option);

/// Labels, help of the fields of prices, ranges and search; sentences of the codes cost_ and option_.
std::span<const Entry> moneyLabels();
std::span<const Entry> moneyHelp();
std::span<const SentenceOf> moneySentences();

}  // namespace ui::words
