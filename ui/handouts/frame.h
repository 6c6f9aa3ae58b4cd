#pragma once

#include "ui/handouts/page_table.h"

#include <QLocale>
#include <QPainter>
#include <QRectF>
#include <QSizeF>
#include <QString>

namespace ui::handouts {

/// What stands around the content of a page.
struct FrameText {
  QString code, title, project, place, version;
  int page = 1, pages = 1;
  bool cautions = false, stop = false;
  QString override_text;  ///< whose word stands against a stop; empty when there is none
};

inline constexpr double kMargin_mm = 14;
inline constexpr double kCheckBar_mm = 100;

/// Room that the frame leaves for content [mm].
QRectF contentArea(const QSizeF& page_mm, const FrameText& text);
void paintFrame(QPainter& painter, const QSizeF& page_mm, const FrameText& text, const QLocale& locale);

/// Short mark of the project as saved: sheets of different versions carry different marks.
QString versionMark(const core::Project& project);

}  // namespace ui::handouts
