#pragma once

#include "core/base/problem.h"
#include "ui/text/formatter.h"

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;

namespace ui {

class Document;
class Explained;

/// The customary bill beside the computed one, and the three ways to make cement, thickness and mix agree.
/// Nothing changes until one of the ways is chosen by its button.
class BillPanel : public QWidget {
  Q_OBJECT

public:
  explicit BillPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);

private:
  Document& document_;
  Formatter format_;
  Explained* explained_ = nullptr;
  QLabel* none_;
  QWidget* lines_;
  QStringList cells_;
  QLabel *trust_both_, *trust_mix_, *trust_thickness_, *problem_;
  QPushButton *use_thickness_, *use_mix_;

  void refresh();
  void showLines();
  QStringList cells() const;  // row by row
  void showAnswers();
  void useThickness();
  void useMix();
  void say(const core::Problems& problems);
};

}  // namespace ui
