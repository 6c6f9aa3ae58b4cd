#pragma once

#include "ui/handouts/sheet.h"
#include "ui/text/formatter.h"

#include <QPainter>
#include <QPointF>

namespace ui::handouts {

/// Height of a ruler with its numbers [mm].
double rulerHeight_mm();

/// Draws a ruler at true size, a line every millimetre, longer every 5 and 10, numbered every 10, its zero at
/// the left end of its edge `at`; the lines hang from the edge.
void drawRuler(QPainter& painter, QPointF at, int length_mm, const Formatter& format);

/// Adds a ruler that is never mirrored, in the middle of the sheet's width.
void addRuler(Sheet& sheet, int length_mm, const Formatter& format);

}  // namespace ui::handouts
