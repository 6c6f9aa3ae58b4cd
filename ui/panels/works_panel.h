#pragma once

#include "ui/panels/paged_panel.h"

namespace ui {

class TaskControls;

/// Who does what when: dates, people, coats in one go, first filling, weather, and what was measured on site.
class WorksPanel : public PagedPanel {
  Q_OBJECT

public:
  explicit WorksPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);

protected:
  void refreshMore() override;

private:
  TaskControls* controls_ = nullptr;
  ChartView* bars_ = nullptr;
  int shifted_days_ = 0;  // of the bar that is dragged

  const core::works::Works& works() const;
  void makeDatesPage();
  Chart barsChart();
  void drag(int task, double along_mm, bool is_done);
  bool press(std::optional<int> task, int key);
  void makePeoplePage();
  void makeCoatsPage();
  void makeFillingPage();
  void makeWeatherPage();
  void makeRecordsPage();
  void moveToBestStart();
};

}  // namespace ui
