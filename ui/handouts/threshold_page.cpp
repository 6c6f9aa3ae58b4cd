#include "core/site/thresholds.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/water_inputs.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::site::Threshold;

constexpr int kMostDecimals = 2;

QString valueText(const Threshold& threshold, const Formatter& format) {
  const int least = threshold.unit == Unit::metre ? 1 : 0;  // 0: whole feet
  const int decimals = std::min(kMostDecimals, words::decimalsFor(threshold.value, least));
  return format.quantity(threshold.value, threshold.unit, decimals);
}

std::vector<Cell> row(const Threshold& threshold, const Formatter& format, SourceList& sources) {
  return {words::thresholdName(threshold.key), valueText(threshold, format), sources.mark(threshold.source)};
}

/// Table of those founded alike; nothing when there are none.
void addTagged(Sheet& sheet, core::Tag tag, const Formatter& format, SourceList& sources) {
  std::vector<std::vector<Cell>> rows;
  for (const Threshold& threshold : core::site::thresholds()) {
    if (threshold.tag == tag) rows.push_back(row(threshold, format, sources));
  }
  if (rows.empty()) return;
  sheet.table({{words::tagName(tag), 0.72},
               {Text::tr("Value"), 0.16, CellAlign::right},
               {Text::tr("Source"), 0.12, CellAlign::right}},
              rows);
}

}  // namespace

void buildThresholds(Sheet& sheet, const Content& content) {
  SourceList sources(content.format);
  sheet.paragraph(
      Text::tr("From these numbers findings about site and safety are raised. A practitioner should question "
               "those that no published source stands behind."));
  for (const core::Tag tag : {core::Tag::pub, core::Tag::cp, core::Tag::mem, core::Tag::own, core::Tag::data})
    addTagged(sheet, tag, content.format, sources);
  sources.print(sheet);
}

}  // namespace ui::handouts
