#pragma once

#include "core/works/calendar.h"
#include "ui/handouts/sheet.h"
#include "ui/text/formatter.h"

#include <QString>
#include <QStringList>
#include <cstddef>
#include <vector>

namespace ui::handouts {

/// Days that a table lists one by one before it goes on by weeks.
inline constexpr std::size_t kDaysOneByOne = 14;

/// Neighbours in a list of days that share a row.
struct DaySpan {
  std::size_t first, last;  ///< indices, both counted in
};

/// The first `one_by_one` days alone, the others in weeks that count from the first of them.
/// @param days in order; days may be missing
std::vector<DaySpan> daysThenWeeks(const std::vector<core::works::Day>& days,
                                   std::size_t one_by_one = kDaysOneByOne);

/// "Mon 15 Feb 2027", or "15 Feb to 21 Feb" for more than a day.
QString spanText(core::works::Day first, core::works::Day last, const Formatter& format);

/// Sentences, a paragraph each.
void addSentences(Sheet& sheet, const QStringList& sentences);

/// Paragraph that stays with what comes after it.
void addLeadIn(Sheet& sheet, const QString& text);

/// Blocks from `first` on stay on one page where they fit on one.
void keepWhole(Sheet& sheet, std::size_t first);

/// What stands in a cell where there is nothing.
QString none();

}  // namespace ui::handouts
