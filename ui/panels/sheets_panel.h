#pragma once

#include "ui/handouts/handout.h"
#include "ui/text/formatter.h"

#include <QTimer>
#include <QWidget>
#include <optional>

class QComboBox;
class QListWidget;
class QPushButton;
class QScrollArea;
class QSlider;
class QToolButton;

namespace ui {

class Canvas;
class Document;

/// The printed pages as they will come out, page by page: which sheets, in what language, on what paper.
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

  /// What is to be printed, as chosen here.
  handouts::Options options() const;
  handouts::Content content() const;
  /// Takes all sheets, or only those whose code begins with a letter.
  void choose(const QString& letter);

signals:
  void exportWanted();
  void printWanted();

protected:
  void showEvent(QShowEvent* event) override;

private:
  Document& document_;
  Formatter format_;
  QToolButton *previous_, *next_;
  QComboBox *pages_, *language_, *paper_;
  QListWidget* kinds_;
  QPushButton *export_ = nullptr, *print_ = nullptr;
  QSlider* zoom_;
  QScrollArea* scroll_;
  Canvas* canvas_;
  std::optional<handouts::Handout> handout_;
  QStringList left_out_;  // codes of sheets not wanted
  QTimer rebuild_;

  QWidget* makeBar();
  QWidget* makeChoice();
  QToolButton* makeTurn(const QString& id, const QString& name, int by);
  void again();
  void rebuild();
  void showKinds();
  void takeKinds();
  void showZoom();
  int fitting() const;  // zoom at which the whole page shows [%]
};

}  // namespace ui
