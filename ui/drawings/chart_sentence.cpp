#include "ui/drawings/chart.h"
#include "ui/drawings/wrap_lines.h"

namespace ui::drawings {

void drawSentence(QPainter& painter, const QRectF& box_mm, const QString& sentence, const Style& style) {
  const Lettering lettering{style.text_mm};
  const QStringList lines = wrapLines(sentence, lettering, box_mm.width() * 0.8);
  double height = 0;
  for (const QString& line : lines) height += height_mm(lettering, line);
  if (height > box_mm.height() || widest(lines, lettering) > box_mm.width()) return;
  painter.save();
  painter.setPen(chartColours(style.dark).ink);
  double top = box_mm.center().y() - height / 2;
  for (const QString& line : lines) {
    drawText(painter, {box_mm.center().x() - width_mm(line, lettering) / 2, top + ascent_mm(lettering, line)},
             line, lettering);
    top += height_mm(lettering, line);
  }
  painter.restore();
}

}  // namespace ui::drawings
