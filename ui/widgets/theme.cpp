#include "ui/widgets/theme.h"

#include <QApplication>
#include <QStyle>
#include <QStyleFactory>
#include <QToolTip>
#include <QWidget>
#include <optional>

namespace ui {

namespace {

constexpr int kHalfLight = 128;

struct Shades {
  QRgb window, base, raised, text, quiet, accent, on_accent, link, problem, caution, wrong_base;
};

constexpr Shades kLight{0xfff3f1ec, 0xffffffff, 0xffe6e2d9, 0xff1f2421, 0xff55605a, 0xff1f6a63,
                        0xffffffff, 0xff155f8a, 0xffa3241b, 0xff8a4b00, 0xfffbe3df};
constexpr Shades kDark{0xff1f2426, 0xff343c40, 0xff3d464a, 0xffe9ece8, 0xffaab4b0, 0xff5cbcb0,
                       0xff10201e, 0xff7cc4ee, 0xffff9d91, 0xfff3bd6a, 0xff4a2522};

const Shades& shades(bool dark) {
  return dark ? kDark : kLight;
}
bool isDark(const QPalette& palette) {
  return palette.color(QPalette::Window).lightness() < kHalfLight;
}

bool desktopIsDark() {
  static const bool dark = isDark(QGuiApplication::palette());
  return dark;
}

void setDisabled(QPalette& palette, const Shades& shade) {
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, shade.quiet);
  palette.setColor(QPalette::Disabled, QPalette::Highlight, shade.quiet);
}

}  // namespace

bool isDark(Theme theme) {
  const bool desktop = desktopIsDark();
  return theme == Theme::system ? desktop : theme == Theme::dark;
}

QPalette palette(bool dark) {
  const Shades& shade = shades(dark);
  QPalette palette(QColor(shade.raised), QColor(shade.window));
  palette.setColor(QPalette::WindowText, shade.text);
  palette.setColor(QPalette::Base, shade.base);
  palette.setColor(QPalette::AlternateBase, shade.raised);
  palette.setColor(QPalette::Text, shade.text);
  palette.setColor(QPalette::ButtonText, shade.text);
  palette.setColor(QPalette::BrightText, shade.problem);
  palette.setColor(QPalette::Highlight, shade.accent);
  palette.setColor(QPalette::HighlightedText, shade.on_accent);
  palette.setColor(QPalette::Link, shade.link);
  palette.setColor(QPalette::LinkVisited, shade.link);
  palette.setColor(QPalette::PlaceholderText, shade.quiet);
  palette.setColor(QPalette::ToolTipBase, shade.base);
  palette.setColor(QPalette::ToolTipText, shade.text);
  setDisabled(palette, shade);
  return palette;
}

namespace {

/// The desktop's own letters, and for each script of our languages those of the sheets: other fonts that come
/// in for what is missing may lack letters of Urdu.
void takeFonts() {
  QFont font = QApplication::font();
  QStringList families = font.families();
  for (const char* family : {"Noto Sans", "Noto Sans Arabic", "Noto Sans Devanagari"}) {
    if (!families.contains(QLatin1String(family))) families << QLatin1String(family);
  }
  font.setFamilies(families);
  QApplication::setFont(font);
}

}  // namespace

void applyTheme(bool dark) {
  takeFonts();
  static std::optional<bool> applied;
  if (applied == dark) return;
  applied = dark;
  desktopIsDark();
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QApplication::setPalette(palette(dark));
  QToolTip::setPalette(palette(dark));
}

void setTone(QWidget* text, Tone tone) {
  // roles of the palette above that hold the quiet and the problem colour
  text->setForegroundRole(tone == Tone::quiet     ? QPalette::PlaceholderText
                          : tone == Tone::problem ? QPalette::BrightText
                                                  : QPalette::WindowText);
}

QColor severityColour(core::Severity severity, const QPalette& palette) {
  const Shades& shade = shades(isDark(palette));
  switch (severity) {
    case core::Severity::stop:
      return shade.problem;
    case core::Severity::caution:
      return shade.caution;
    case core::Severity::note:
      break;
  }
  return shade.accent;
}

QColor quietColour(const QPalette& palette) {
  return shades(isDark(palette)).quiet;
}
QColor problemColour(const QPalette& palette) {
  return shades(isDark(palette)).problem;
}

QColor wrongColour(const QPalette& palette) {
  return shades(isDark(palette)).wrong_base;
}

void markWrong(QWidget* editor, bool wrong) {
  QPalette changed;
  if (wrong) changed.setColor(QPalette::Base, wrongColour(editor->palette()));
  editor->setPalette(changed);
}

}  // namespace ui
