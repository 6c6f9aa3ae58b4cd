#include "ui/drawings/lettering.h"

#include "ui/drawings/text_log.h"
#include "ui/text/languages.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QHash>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <tuple>
#include <utility>

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

constexpr char16_t kFirstOther = 0x530;  // no letter before it is of a script of the list

/// Family of the first script of a text that has its own; none for Latin alone.
const char* familyOf(const QString& text) {
  for (const QChar c : text) {
    if (c.unicode() < kFirstOther) continue;
    const auto found = std::ranges::find(kFamilies, c.script(), &ScriptFamily::script);
    if (found != kFamilies.end()) return found->family;
  }
  return nullptr;
}

QFont fontOf(const char* family, int pixels, bool bold) {
  QStringList families{QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")};
  if (family != nullptr) families.prepend(QString::fromLatin1(family));
  QFont f;
  f.setFamilies(families);
  f.setPixelSize(pixels);
  f.setHintingPreference(QFont::PreferNoHinting);
  f.setStyleStrategy(QFont::PreferOutline);
  f.setBold(bold);
  return f;
}

int pixelsOf(const Lettering& lettering) {
  return static_cast<int>(std::ceil(body_mm(lettering) * kPixelsPerMm));
}

/// Whether a font is already the one for a family and a lettering.
bool isFont(const QFont& font, const char* family, const Lettering& lettering) {
  return font.pixelSize() == pixelsOf(lettering) && font.bold() == lettering.bold &&
         font.families().size() > 1 &&
         font.families().constFirst() == QLatin1String(family == nullptr ? "Noto Sans" : family);
}

/// Some words in the program's language, for the height its script needs.
QString languageSample() {
  return QCoreApplication::translate("Drawings", "section");
}

struct Reach {
  double up = 0, down = 0;
};

/// How far the letters of Latin, of the program's language and of a family go from the baseline [pixels].
Reach measuredReach(const char* family, const Lettering& lettering) {
  Reach reach;
  for (const char* each : {static_cast<const char*>(nullptr), familyOf(languageSample()), family}) {
    const QFontMetricsF metrics(fontOf(each, pixelsOf(lettering), lettering.bold));
    reach = {std::max(reach.up, metrics.ascent()), std::max(reach.down, metrics.descent())};
  }
  return reach;
}

// To ask a font costs more than to paint with it; each thread keeps answers, of numbers alone, for fonts must
// not outlive the application.
constexpr std::size_t kMostReaches = 1000;
constexpr qsizetype kMostWidths = 20000;

Reach reachOf(const Lettering& lettering, const QString& text) {
  using Key = std::tuple<int, bool, const char*, QString>;
  thread_local std::map<Key, Reach> known;  // NOLINT
  const char* family = familyOf(text);
  const Key key(pixelsOf(lettering), lettering.bold, family, language());
  const auto found = known.find(key);
  if (found != known.end()) return found->second;
  if (known.size() >= kMostReaches) known.clear();
  return known[key] = measuredReach(family, lettering);
}

}  // namespace

QFont font(const Lettering& lettering, const QString& text) {
  return fontOf(familyOf(text), pixelsOf(lettering), lettering.bold);
}

double body_mm(const Lettering& lettering) {
  return lettering.cap_mm / kCapPerBody;
}

double width_mm(const QString& text, const Lettering& lettering) {
  thread_local QHash<std::pair<QString, int>, double> known;  // NOLINT
  const std::pair key(text, 2 * pixelsOf(lettering) + (lettering.bold ? 1 : 0));
  const auto found = known.constFind(key);
  if (found != known.constEnd()) return *found;
  if (known.size() >= kMostWidths) known.clear();
  const double width = QFontMetricsF(font(lettering, text)).horizontalAdvance(text) / kPixelsPerMm;
  known.insert(key, width);
  return width;
}

double ascent_mm(const Lettering& lettering, const QString& text) {
  return std::min(kMostAscent * body_mm(lettering), reachOf(lettering, text).up / kPixelsPerMm);
}

double descent_mm(const Lettering& lettering, const QString& text) {
  return std::min(kMostDescent * body_mm(lettering), reachOf(lettering, text).down / kPixelsPerMm);
}

double height_mm(const Lettering& lettering, const QString& text) {
  return ascent_mm(lettering, text) + descent_mm(lettering, text);
}

void drawText(QPainter& painter, QPointF baseline_mm, const QString& text, const Lettering& lettering,
              double angle_deg) {
  const QTransform before = painter.transform();  // lighter than to save all of the painter
  painter.translate(baseline_mm);
  if (angle_deg != 0) painter.rotate(-angle_deg);
  if (painter.worldTransform().determinant() < 0) {  // a page mirrored for writing from the right
    painter.translate(width_mm(text, lettering), 0);
    painter.scale(-1, 1);
  }
  painter.scale(1 / kPixelsPerMm, 1 / kPixelsPerMm);
  const char* family = familyOf(text);
  if (!isFont(painter.font(), family, lettering))
    painter.setFont(fontOf(family, pixelsOf(lettering), lettering.bold));
  painter.setLayoutDirection(textDirection());
  painter.drawText(QPointF(0, 0), text);
  TextLog::note(painter, text);
  painter.setTransform(before);
}

}  // namespace ui::drawings
