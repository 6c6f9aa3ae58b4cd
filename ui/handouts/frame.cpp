#include "ui/handouts/frame.h"

#include "core/exchange/project_file.h"
#include "ui/handouts/steps.h"
#include "ui/text/languages.h"

#include <QCoreApplication>
#include <QCryptographicHash>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using drawings::Lettering;

constexpr Lettering kStop{7, true};
constexpr double kGap = 3;
constexpr double kBarHigh = 2;

QRectF inside(const QSizeF& page) {
  return QRectF(QPointF(0, 0), page).adjusted(kMargin_mm, kMargin_mm, -kMargin_mm, -kMargin_mm);
}

double headHeight() {
  return lineHeight_mm(kTitle) + 2 * lineHeight_mm(kBody) + 1.5;
}

double footHeight() {
  return 1.5 + kBarHigh + (isDraft(language()) ? 3 : 2) * lineHeight_mm(kBody) + 0.5;
}

QString stopText() {
  return Text::tr("NOT FOR CONSTRUCTION");
}

Lettering stopLettering(double width) {
  return fitting(stopText(), kStop, width - 6);
}

double stopHeight(double width) {
  return lineHeight_mm(stopLettering(width)) + 2;
}

double cautionHeight(const FrameText& text) {
  return static_cast<double>(text.cautions.size()) * lineHeight_mm(kBody) + 2;
}

void paintHead(QPainter& painter, const QRectF& area, const FrameText& text) {
  const double code = drawings::width_mm(text.code, kTitle) + 5;
  const double high = lineHeight_mm(kTitle);
  painter.setPen(line(0.7));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(area.topLeft() + QPointF(0.35, 0.35), QSizeF(code, high)));
  drawLines(painter, area.topLeft() + QPointF(2.8, 0.35), {text.code}, kTitle);
  const double left = code + 4;
  const Lettering title = fitting(text.title, kTitle, area.width() - left);
  drawLines(painter, area.topLeft() + QPointF(left, 0.35), {elided(text.title, title, area.width() - left)},
            title);
  const QString project =
      text.place.isEmpty() ? text.project : text.project + QStringLiteral(", ") + text.place;
  const double second = area.top() + high + 1;
  drawLines(painter, {area.left(), second}, {elided(project, kStrong, area.width())}, kStrong);
  drawLines(painter, {area.left(), second + lineHeight_mm(kBody)},
            {elided(text.version, kBody, area.width())}, kBody);
  painter.setPen(line(0.5));
  painter.drawLine(QPointF(area.left(), area.top() + headHeight()),
                   QPointF(area.right(), area.top() + headHeight()));
}

/// A bar of exactly 100 mm between the outer edges of its end strokes' centre lines.
void paintCheckBar(QPainter& painter, QPointF at) {
  painter.setPen(line(0.35));
  painter.drawLine(at + QPointF(0, kBarHigh), at + QPointF(kCheckBar_mm, kBarHigh));
  for (int cm = 0; cm <= 10; ++cm) {
    const double x = cm * kCheckBar_mm / 10;
    painter.drawLine(at + QPointF(x, cm % 5 == 0 ? 0 : kBarHigh / 2), at + QPointF(x, kBarHigh));
  }
}

void paintFoot(QPainter& painter, const QRectF& area, const FrameText& text, const QLocale& locale) {
  const double top = area.bottom() - footHeight();
  painter.setPen(line(0.5));
  painter.drawLine(QPointF(area.left(), top), QPointF(area.right(), top));
  const QPointF bar(area.left() + 0.2, top + 1.5);
  paintCheckBar(painter, bar);
  const double first = bar.y() + kBarHigh + 0.3;
  drawLines(painter, {area.left(), first}, {Text::tr("This bar is 100 mm on a true print.")}, kBody);
  const QString page = Text::tr("Page %1 of %2").arg(locale.toString(text.page), locale.toString(text.pages));
  drawLines(painter, {area.left(), first}, {page}, kBody, area.width(), CellAlign::right);
  drawLines(painter, {area.left(), first + lineHeight_mm(kBody)},
            {Text::tr("Local codes and licensed practice come first.")}, kStrong);
  if (isDraft(language()))
    drawLines(painter, {area.left(), first + 2 * lineHeight_mm(kBody)}, {draftMark()}, kBody);
}

void paintStop(QPainter& painter, const QRectF& area) {
  const Lettering lettering = stopLettering(area.width());
  const double top = area.top() + headHeight() + kGap;
  painter.setPen(line(1));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(area.left() + 0.5, top, area.width() - 1, stopHeight(area.width())));
  drawLines(painter, {area.left(), top + 1}, {stopText()}, lettering, area.width(), CellAlign::centre);
}

void paintCautions(QPainter& painter, const QRectF& area, const FrameText& text) {
  const double high = cautionHeight(text);
  const double top = area.bottom() - footHeight() - kGap - high;
  painter.setPen(line(0.5));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(area.left() + 0.25, top, area.width() - 0.5, high));
  drawLines(painter, {area.left() + 2, top + 1}, text.cautions, kBody);
}

}  // namespace

QStringList cautionLines(const QString& override_text, const QSizeF& page_mm, const Formatter& format) {
  const QString cautions =
      Text::tr(
          "Caution. Pit walls can fall in: never work alone, keep spoil %1 back, keep a ladder in "
          "the pit. "
          "Cement burns skin and eyes, its dust harms the lungs: gloves, boots, wash at once. "
          "Lift bags two together. Fence the pit: people fall in and drown.")
          .arg(limitLength("spoil.setback", words::Rounding::up, format));
  const QString all = override_text.isEmpty() ? cautions : override_text + QLatin1Char(' ') + cautions;
  return wrapped(all, kBody, inside(page_mm).width() - 4);
}

QRectF contentArea(const QSizeF& page_mm, const FrameText& text) {
  const QRectF area = inside(page_mm);
  const double above = headHeight() + kGap + (text.stop ? stopHeight(area.width()) + kGap : 0);
  const double below = footHeight() + kGap + (text.cautions.isEmpty() ? 0 : cautionHeight(text) + kGap);
  return area.adjusted(0, above, 0, -below);
}

void paintFrame(QPainter& painter, const QSizeF& page_mm, const FrameText& text, const QLocale& locale) {
  const QRectF area = inside(page_mm);
  painter.save();
  paintHead(painter, area, text);
  paintFoot(painter, area, text, locale);
  if (text.stop) paintStop(painter, area);
  if (!text.cautions.isEmpty()) paintCautions(painter, area, text);
  painter.restore();
}

QString versionMark(const core::Project& project) {
  const QByteArray bytes = QByteArray::fromStdString(core::exchange::projectText(project));
  const QByteArray hash = QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toUpper();
  return QString::fromLatin1(hash.left(4) + '-' + hash.mid(4, 4));
}

}  // namespace ui::handouts
