#pragma once

#include "core/plan.h"
#include "ui/text/formatter.h"

#include <QWidget>

class QGridLayout;

namespace ui::group {

/// The options as columns of a few big numbers, in the order in which they stand in the picture.
class OptionsStrip : public QWidget {
  Q_OBJECT

public:
  explicit OptionsStrip(QWidget* parent);
  void show(const core::Project& project, const core::Plan& plan, const Formatter& format);

private:
  QGridLayout* grid_;

  void add(int row, int column, const QString& text, bool strong);
};

}  // namespace ui::group
