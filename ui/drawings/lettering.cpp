#include "ui/drawings/lettering.h"

#include "ui/text/languages.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>

namespace ui::drawings {
namespace {

constexpr double kPixelsPerMm = 100;
constexpr double kCapPerBody = 0.714;  // Noto Sans: capitals are 714 of 1000 units high

// parts of the type body; some Arabic fonts leave twice that for vowel marks one over another, which no text
// of ours has: its letters reach 0.90 up and 0.40 down
constexpr double kMostAscent = 1.08;
constexpr double kMostDescent = 0.42;

struct ScriptFamily {
  QChar::Script script;
  const char* family;
};

constexpr std::array kFamilies{
    ScriptFamily{QChar::Script_Devanagari, "Noto Sans Devanagari"},
    ScriptFamily{QChar::Script_Bengali, "Noto Sans Bengali"},
    ScriptFamily{QChar::Script_Gurmukhi, "Noto Sans Gurmukhi"},
    ScriptFamily{QChar::Script_Gujarati, "Noto Sans Gujarati"},
    ScriptFamily{QChar::Script_Oriya, "Noto Sans Oriya"},
    ScriptFamily{QChar::Script_Tamil, "Noto Sans Tamil"},
    ScriptFamily{QChar::Script_Telugu, "Noto Sans Telugu"},
    ScriptFamily{QChar::Script_Kannada, "Noto Sans Kannada"},
    ScriptFamily{QChar::Script_Malayalam, "Noto Sans Malayalam"},
    ScriptFamily{QChar::Script_Sinhala, "Noto Sans Sinhala"},
    ScriptFamily{QChar::Script_Thai, "Noto Sans Thai"},
    ScriptFamily{QChar::Script_Lao, "Noto Sans Lao"},
    ScriptFamily{QChar::Script_Myanmar, "Noto Sans Myanmar"},
    ScriptFamily{QChar::Script_Khmer, "Noto Sans Khmer"},
    ScriptFamily{QChar::Script_Ethiopic, "Noto Sans Ethiopic"},
    ScriptFamily{QChar::Script_Arabic, "Noto Sans Arabic"},
    ScriptFamily{QChar::Script_Hebrew, "Noto Sans Hebrew"},
    ScriptFamily{QChar::Script_Georgian, "Noto Sans Georgian"},
    ScriptFamily{QChar::Script_Armenian, "Noto Sans Armenian"},
};

/// Families to look in, the one of the text's own script first.
QStringList families(const QString& text) {
  QStringList all{QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")};
  for (const QChar c : text) {
    const auto found = std::ranges::find(kFamilies, c.script(), &ScriptFamily::script);
    if (found == kFamilies.end()) continue;
    all.prepend(QString::fromLatin1(found->family));
    break;
  }
  return all;
}

/// Some words in the program's language, for the height its script needs.
QString languageSample() {
  return QCoreApplication::translate("Drawings", "section");
}

QFontMetricsF metrics(const Lettering& lettering, const QString& text) {
  return QFontMetricsF(font(lettering, text));
}

}  // namespace

QFont font(const Lettering& lettering, const QString& text) {
  QFont f;
  f.setFamilies(families(text));
  f.setPixelSize(static_cast<int>(std::ceil(body_mm(lettering) * kPixelsPerMm)));
  f.setHintingPreference(QFont::PreferNoHinting);
  f.setStyleStrategy(QFont::PreferOutline);
  f.setBold(lettering.bold);
  return f;
}

double body_mm(const Lettering& lettering) {
  return lettering.cap_mm / kCapPerBody;
}

double width_mm(const QString& text, const Lettering& lettering) {
  return metrics(lettering, text).horizontalAdvance(text) / kPixelsPerMm;
}

double ascent_mm(const Lettering& lettering, const QString& text) {
  const double most = kMostAscent * body_mm(lettering) * kPixelsPerMm;
  return std::min(most,
                  std::max({metrics(lettering, {}).ascent(), metrics(lettering, languageSample()).ascent(),
                            metrics(lettering, text).ascent()})) /
         kPixelsPerMm;
}

double descent_mm(const Lettering& lettering, const QString& text) {
  const double most = kMostDescent * body_mm(lettering) * kPixelsPerMm;
  return std::min(most,
                  std::max({metrics(lettering, {}).descent(), metrics(lettering, languageSample()).descent(),
                            metrics(lettering, text).descent()})) /
         kPixelsPerMm;
}

double height_mm(const Lettering& lettering, const QString& text) {
  return ascent_mm(lettering, text) + descent_mm(lettering, text);
}

void drawText(QPainter& painter, QPointF baseline_mm, const QString& text, const Lettering& lettering,
              double angle_deg) {
  painter.save();
  painter.translate(baseline_mm);
  painter.rotate(-angle_deg);
  if (painter.worldTransform().determinant() < 0) {  // a page mirrored for writing from the right
    painter.translate(width_mm(text, lettering), 0);
    painter.scale(-1, 1);
  }
  painter.scale(1 / kPixelsPerMm, 1 / kPixelsPerMm);
  painter.setFont(font(lettering, text));
  painter.setLayoutDirection(textDirection());
  painter.drawText(QPointF(0, 0), text);
  painter.restore();
}

}  // namespace ui::drawings
