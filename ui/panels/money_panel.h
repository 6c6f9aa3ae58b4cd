#pragma once

#include "ui/panels/paged_panel.h"

class QComboBox;

namespace ui {

class BillTable;

/// What it costs and who gives what: the bill, money by day, linings compared, and how far it may all range.
class MoneyPanel : public PagedPanel {
  Q_OBJECT

public:
  explicit MoneyPanel(Document& document, QWidget* parent = nullptr);

signals:
  void readDistrictWanted();
  void writeDistrictWanted();

protected:
  void refreshMore() override;

private:
  BillTable* bill_ = nullptr;
  QComboBox* outcome_ = nullptr;
  ChartView* spread_ = nullptr;

  const core::cost::CostPlan& cost() const;
  const core::cost::Spread& spread() const;
  void makeBillPage();
  void makeDaysPage();
  void makeLiningsPage();
  void makeRangesPage();
  void showOutcomes();
};

}  // namespace ui
