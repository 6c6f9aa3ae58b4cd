#pragma once

#include "ui/panels/paged_panel.h"

#include <vector>

class QVBoxLayout;

namespace ui {

class FieldRow;

/// Paper forms typed in: flow, jars, ball and ribbon, test pits, slope and leak test, what follows from them,
/// and one button that puts it in place of what was entered for the site.
class NotesPanel : public PagedPanel {
  Q_OBJECT

public:
  explicit NotesPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);

private:
  std::vector<FieldRow*> leak_rows_;

  const core::Plan& plan() const;
  void makeShortPage();
  void makeFlowPage();
  void makeSoilPages();
  void makeSlopePage();
  void makeLeakPage();
  void addLeakRows(QVBoxLayout* layout);
  bool wouldChange() const;
  void putInPlace();
};

}  // namespace ui
