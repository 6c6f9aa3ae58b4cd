#pragma once

#include "core/compare/search.h"
#include "ui/panels/paged_panel.h"
#include "ui/panels/search_worker.h"

#include <QTimer>

class QProgressBar;
class QPushButton;
class QSplitter;

namespace ui {

class OptionsTable;
class PitView;

/// Which one to build: options side by side in one picture and one table, and the search of all sizes within
/// limits.
class OptionsPanel : public PagedPanel {
  Q_OBJECT

public:
  explicit OptionsPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  SearchWorker& worker() { return worker_; }
  const core::compare::SearchResult& result() const { return result_; }

protected:
  void refreshMore() override;
  void showEvent(QShowEvent* event) override;

private:
  OptionsTable* table_ = nullptr;
  QSplitter* parts_ = nullptr;
  PitView* view_ = nullptr;  // made when the panel is first looked at: a 3D view takes time and memory
  QTimer redraw_;
  SearchWorker worker_;
  core::compare::SearchResult result_;
  core::Project searched_;  // that the result belongs to
  QPushButton *search_ = nullptr, *stop_ = nullptr;
  QProgressBar* progress_ = nullptr;
  ChartView* frontier_ = nullptr;

  void makeComparePage();
  void makeSearchPage();
  void makeView();
  void showNames();
  void drawSideBySide();
  void startSearch();
  void endSearch();
  void takeResult(const core::compare::SearchResult& result);
  void adopt(const core::compare::Candidate& candidate);
  core::compare::Candidate present() const;
  QStringList searchText() const;
};

}  // namespace ui
