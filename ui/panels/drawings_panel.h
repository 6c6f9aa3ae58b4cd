#pragma once

#include "ui/text/formatter.h"

#include <QWidget>

class QTabBar;

namespace ui {

class Canvas;
class Document;

/// Plan, section, detail and setting-out as line drawings that fit the window.
class DrawingsPanel : public QWidget {
  Q_OBJECT

public:
  explicit DrawingsPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  void setDark(bool dark);

private:
  enum Sheet { plan_and_section, setting_out, corner };

  Document& document_;
  Formatter format_;
  bool dark_ = false;
  QTabBar* sheets_;
  Canvas* canvas_;

  void paint(QPainter& painter, const QRectF& box_mm) const;
};

}  // namespace ui
