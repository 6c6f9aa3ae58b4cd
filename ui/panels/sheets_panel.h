#pragma once

#include "ui/handouts/handout.h"
#include "ui/text/formatter.h"

#include <QTimer>
#include <QWidget>
#include <optional>

class QComboBox;
class QScrollArea;
class QSlider;
class QToolButton;

namespace ui {

class Canvas;
class Document;

/// The printed pages as they will come out, page by page.
class SheetsPanel : public QWidget {
  Q_OBJECT

public:
  explicit SheetsPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  /// Draws the icons in the colours of a changed theme.
  void refreshIcons();
  void showPage(int page);
  int page() const;
  int pageCount() const;

signals:
  void exportWanted();
  void printWanted();

protected:
  void showEvent(QShowEvent* event) override;

private:
  Document& document_;
  Formatter format_;
  QToolButton *previous_, *next_;
  QComboBox* pages_;
  QSlider* zoom_;
  QScrollArea* scroll_;
  Canvas* canvas_;
  std::optional<handouts::Handout> handout_;
  QTimer rebuild_;

  QWidget* makeBar();
  QToolButton* makeTurn(const QString& id, const QString& name, int by);
  void rebuild();
  void showZoom();
  int fitting() const;  // zoom at which the whole page shows [%]
};

}  // namespace ui
