#pragma once

#include "ui/text/formatter.h"

#include <QTableWidget>

namespace core {
struct Plan;
struct Project;
}  // namespace core

namespace ui {

/// The bill as it is reckoned, to be read: quantity, price, amount, what is given and what is paid, loads.
class BillTable : public QTableWidget {
  Q_OBJECT

public:
  explicit BillTable(QWidget* parent = nullptr);

  void show(const core::Project& project, const core::Plan& plan, const Formatter& format);

private:
  void addLine(const QStringList& cells);
};

}  // namespace ui
