#pragma once

#include "ui/text/formatter.h"

#include <QWidget>

class QLabel;
class QTableView;
class QToolButton;

namespace ui {

class Document;
class SurveyModel;

/// The spot heights of the project: typed, pasted, or read from a table; 100,000 of them if need be. What was
/// not taken is said with its row; rows that are doubtful are marked and listed.
class SurveyTable : public QWidget {
  Q_OBJECT

public:
  explicit SurveyTable(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  /// Takes the points of a table in place of all there are. `what` names the change for undo.
  void take(const QString& what, const QByteArray& table);
  /// Shows the row of "site.ground.points_m[k]". @return false for other paths
  bool goTo(const QString& path);

signals:
  void fileWanted();  ///< a table of spot heights from a file

public slots:
  void addPoint();
  void removePoints();
  void paste();

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  Document& document_;
  Formatter format_;
  SurveyModel* model_;
  QTableView* table_;
  QLabel *problem_, *notes_;

  QToolButton* addButton(const QString& id, const QString& text);
  void refresh();
  void showRow(int row);
  void say(const QString& text);
  void tell(const QString& text);  // of what went well
};

}  // namespace ui
