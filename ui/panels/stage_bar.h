#pragma once

#include "core/build_timeline.h"
#include "ui/text/formatter.h"

#include <QTimer>
#include <QWidget>
#include <optional>
#include <vector>

class QLabel;
class QSlider;
class QToolButton;

namespace ui {

class Document;

/// Time along the bottom of the window: a slider over the days of the works, or over the stages where there
/// are no dates. At its right end the tank is finished.
class StageBar : public QWidget {
  Q_OBJECT

public:
  explicit StageBar(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  void refreshIcons();
  /// The tank as it stands on the chosen day; nothing: finished.
  std::optional<core::works::BuildDay> day() const;
  /// Goes to the first day of the next stage, or back to the one before.
  void step(int stages);

signals:
  void changed();

private:
  Document& document_;
  Formatter format_;
  std::vector<core::works::BuildDay> days_;
  QSlider* slider_;
  QLabel* text_;
  QToolButton *before_, *next_;
  QTimer reckon_;

  QToolButton* makeStep(const QString& id, const QString& name, int by);
  void reckon();
  void show();
};

}  // namespace ui
