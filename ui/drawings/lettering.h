#pragma once

#include <QFont>
#include <QPainter>
#include <QPointF>
#include <QString>

namespace ui::drawings {

/// Size and weight of a text on paper.
struct Lettering {
  double cap_mm = 3.1;  ///< height of a capital letter [mm]; 3.1 is a 12.3 point type
  bool bold = false;
};

/// Font for the script of a text, whose pixels are hundredths of a millimetre; draw with it under a scale of
/// 1/100.
QFont font(const Lettering& lettering, const QString& text = {});

/// Size of the type body [mm]; 12 point is 4.233 mm.
double body_mm(const Lettering& lettering);

double width_mm(const QString& text, const Lettering& lettering);
/// Room above and below the baseline [mm]: enough for the program's language and for the text's own script.
double ascent_mm(const Lettering& lettering, const QString& text = {});
double descent_mm(const Lettering& lettering, const QString& text = {});
/// Ascent and descent together [mm].
double height_mm(const Lettering& lettering, const QString& text = {});

/// Draws one line of text with its baseline starting at `baseline_mm`, turned anticlockwise by `angle_deg`.
/// Under a mirroring transform it takes the mirrored room, but is itself not mirrored.
void drawText(QPainter& painter, QPointF baseline_mm, const QString& text, const Lettering& lettering,
              double angle_deg = 0);

}  // namespace ui::drawings
