#pragma once

#include "ui/handouts/page_table.h"

#include <QLocale>
#include <QPainter>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>

namespace ui::handouts {

/// What stands around the content of a page.
struct FrameText {
  QString code, title, project, place, version;
  int page = 1, pages = 1;
  bool stop = false;
  QStringList cautions;  ///< in lines; none where they are not wanted
};

inline constexpr double kMargin_mm = 14;
inline constexpr double kCheckBar_mm = 100;

/// The usual cautions in lines, broken for a page; before them whose word stands against a stop, if any.
QStringList cautionLines(const QString& override_text, const QSizeF& page_mm, const Formatter& format);
/// Room that the frame leaves for content [mm].
QRectF contentArea(const QSizeF& page_mm, const FrameText& text);
void paintFrame(QPainter& painter, const QSizeF& page_mm, const FrameText& text, const QLocale& locale);

/// Short mark of the project as saved: sheets of different versions carry different marks.
QString versionMark(const core::Project& project);

}  // namespace ui::handouts
