#pragma once

#include "ui/panels/map_worker.h"
#include "ui/text/formatter.h"

#include <QWidget>

class QStackedWidget;
class QTabBar;

namespace ui {

class ChartView;
class Document;

/// The charts of the water balance, one at a time: level through the year, supply and need by month, the map
/// of tank size and bed area, storage against reliability.
class WaterChartsView : public QWidget {
  Q_OBJECT

public:
  explicit WaterChartsView(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  void setDark(bool dark);
  const core::water::ReliabilityMap& map() const { return map_; }
  bool isRefining() const { return refining_; }

protected:
  void showEvent(QShowEvent* event) override;

private:
  enum Kind { level, flows, map_of_sizes, storage };

  Document& document_;
  Formatter format_;
  bool dark_ = false;
  QTabBar* kinds_;
  QStackedWidget* stack_;
  std::vector<ChartView*> views_;
  MapWorker worker_;
  core::water::ReliabilityMap map_;
  bool refining_ = false;
  bool map_is_old_ = true;

  void addLevel();
  void addFlows();
  void addMap();
  void addStorage();
  void projectChanged();
  void startMap();
  void takeMap(const core::water::ReliabilityMap& map, bool is_final);
  void repaintAll();
  const core::water::WaterPlan& plan() const;
};

}  // namespace ui
