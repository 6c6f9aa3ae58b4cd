#pragma once

#include "core/works/build_days.h"
#include "ui/drawings/drawings.h"
#include "ui/text/formatter.h"

#include <QWidget>
#include <optional>

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
  /// Shows the sections as the tank stands on a day of the works; nothing: finished, with dimensions.
  void showDay(const std::optional<core::works::BuildDay>& day);

private:
  enum Sheet { plan_and_section, both_sections, setting_out, corner };

  Document& document_;
  Formatter format_;
  bool dark_ = false;
  std::optional<core::works::BuildDay> built_;
  QTabBar* sheets_;
  Canvas* canvas_;

  void paint(QPainter& painter, const QRectF& box_mm) const;
  void paintSection(QPainter& painter, const QRectF& box_mm, const drawings::Style& style,
                    drawings::SectionCut cut) const;
};

}  // namespace ui
