#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/water_inputs.h"
#include "ui/text/reckonings.h"
#include "ui/text/words.h"

#include <QCoreApplication>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using words::Reckoning;

constexpr double kIndent_mm = 4, kAfter_mm = 0.8;

QString howText(const Reckoning& reckoning, SourceList& sources) {
  return Text::tr("%1. From: %2. %3")
      .arg(reckoning.formula, reckoning.inputs, sources.mark(reckoning.source));
}

/// Lines that keep to the width also where a line without foreign digits is set in another font than the
/// whole.
QStringList linesOf(const QString& text, const drawings::Lettering& lettering, double width_mm) {
  const QStringList families = drawings::font(lettering, text).families();
  QStringList lines;
  for (const QString& line : wrapped(text, lettering, width_mm)) {
    const bool is_same_font = drawings::font(lettering, line).families() == families;
    lines += is_same_font ? QStringList{line} : wrapped(line, lettering, width_mm);
  }
  return lines;
}

/// Name and value in heavy type, below them set in how it was reckoned.
Block blockOf(const Reckoning& reckoning, double width_mm, SourceList& sources) {
  const QStringList what =
      linesOf(Text::tr("%1: %2").arg(reckoning.name, reckoning.value), kStrong, width_mm);
  const QStringList how = linesOf(howText(reckoning, sources), kBody, width_mm - kIndent_mm);
  const double what_mm = double(what.size()) * lineHeight_mm(kStrong);
  const double how_mm = double(how.size()) * lineHeight_mm(kBody);
  return {what_mm + how_mm + kAfter_mm, [=](QPainter& painter, QPointF at) {
            drawLines(painter, at, what, kStrong, width_mm);
            drawLines(painter, at + QPointF(kIndent_mm, what_mm), how, kBody, width_mm - kIndent_mm);
          }};
}

}  // namespace

void buildCalculation(Sheet& sheet, const Content& content) {
  SourceList sources(content.format);
  sheet.paragraph(
      Text::tr("Every number of this plan: what it is, how it was reckoned, from which numbers, and where "
               "the figures come from. A number that is reckoned from others names them; each stands "
               "here in its own place."));
  std::string group;
  for (const Reckoning& r : words::reckonings(content.project, content.plan, content.format)) {
    if (r.group != group) sheet.heading(words::reckoningGroupName(r.group));
    group = r.group;
    sheet.add(blockOf(r, sheet.width(), sources));
  }
  sources.print(sheet);
}

}  // namespace ui::handouts
