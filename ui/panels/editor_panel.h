#pragma once

#include "core/project/fields.h"
#include "ui/text/formatter.h"

#include <QScrollArea>
#include <vector>

class QPushButton;
class QVBoxLayout;

namespace ui {

class CoatsPanel;
class Document;
class FieldRow;
class PointTable;
class Section;
struct EditorSection;

/// Everything that can be entered, fold by fold in the order of the job.
class EditorPanel : public QScrollArea {
  Q_OBJECT

public:
  explicit EditorPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  void openAll();
  /// Unfolds, scrolls to and focuses the editor of a field, given by id or by path. @return whether there is
  /// one
  bool goTo(const QString& field);

signals:
  void surveyWanted();  ///< ground by spot heights was chosen, and there are none yet

private:
  Document& document_;
  QVBoxLayout* folds_;
  std::vector<Section*> sections_;
  std::vector<FieldRow*> rows_;
  std::vector<PointTable*> tables_;
  CoatsPanel* coats_ = nullptr;
  QPushButton* plan_works_ = nullptr;

  void addSection(const EditorSection& section);
  void addRow(Section* section, const core::Field& field, double slider_least, double slider_most);
  void hideEmptySections();
  void addLists(Section* section, const QString& id);
  void addWorksButton(Section* section);
  void askForSurveyWhenChosen();
  FieldRow* find(const QString& field) const;
};

}  // namespace ui
