#pragma once

#include "core/base/finding.h"
#include "ui/text/formatter.h"

#include <QScrollArea>
#include <QTimer>
#include <vector>

class QVBoxLayout;

namespace ui {

class BillPanel;
class Document;
class FigureTile;
class FindingsList;

/// What follows from the project: the first answers, what to look out for, and the customary bill beside the
/// computed one.
class FiguresPanel : public QScrollArea {
  Q_OBJECT

public:
  explicit FiguresPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  /// Shows everything again in the colours of a changed theme.
  void refresh();

signals:
  void findingWanted(const core::Finding& finding);

private:
  Document& document_;
  Formatter format_;
  std::vector<FigureTile*> tiles_;
  FindingsList* findings_;
  BillPanel* bill_;
  QTimer findings_turn_;

  void showFindings();
  void addHeading(QVBoxLayout* layout, const QString& text);
};

}  // namespace ui
