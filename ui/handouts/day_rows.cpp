#include "ui/handouts/day_rows.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

constexpr int kWeek = 7;

}  // namespace

std::vector<DaySpan> daysThenWeeks(const std::vector<core::works::Day>& days, std::size_t one_by_one) {
  std::vector<DaySpan> spans;
  for (std::size_t k = 0; k < std::min(one_by_one, days.size()); ++k) spans.push_back({k, k});
  for (std::size_t k = one_by_one; k < days.size(); ++k) {
    const bool begins =
        k == one_by_one || core::works::daysBetween(days[spans.back().first], days[k]) >= kWeek;
    if (begins)
      spans.push_back({k, k});
    else
      spans.back().last = k;
  }
  return spans;
}

QString spanText(core::works::Day first, core::works::Day last, const Formatter& format) {
  if (first == last) return format.date(first);
  return Text::tr("%1 to %2").arg(format.shortDate(first), format.shortDate(last));
}

void addSentences(Sheet& sheet, const QStringList& sentences) {
  for (const QString& sentence : sentences) sheet.paragraph(sentence);
}

void addLeadIn(Sheet& sheet, const QString& text) {
  const QStringList lines = wrapped(text, kBody, sheet.width());
  Block block{static_cast<double>(lines.size()) * lineHeight_mm(kBody) + 1.5,
              [lines](QPainter& painter, QPointF at) { drawLines(painter, at, lines, kBody); }};
  block.keep_with_next = true;
  block.white_mm = 1.5;
  sheet.add(std::move(block));
}

void keepWhole(Sheet& sheet, std::size_t first) {
  double height = 0;
  for (std::size_t k = first; k < sheet.blocks().size(); ++k) height += sheet.blocks()[k].height_mm;
  if (height <= sheet.height()) sheet.keepTogether(first);
}

QString none() {
  return QStringLiteral("–");
}

}  // namespace ui::handouts
