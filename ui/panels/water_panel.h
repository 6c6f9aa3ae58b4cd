#pragma once

#include "ui/text/formatter.h"

#include <QWidget>
#include <vector>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTabBar;

namespace ui {

class Document;
class Explained;
class RowTable;
class WaterChartsView;

/// Whether the water lasts: the answer in words, the charts, and the tables of source, needs and weather.
class WaterPanel : public QWidget {
  Q_OBJECT

public:
  explicit WaterPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  void setDark(bool dark);
  /// Shows the cell of a field. @return false when it is in none of the tables
  bool goTo(const QString& path);

signals:
  void importWanted();  ///< a daily weather record from a file

private:
  Document& document_;
  Formatter format_;
  QLabel *headline_, *answers_, *readings_, *record_;
  QPushButton* ask_;
  QTabBar* pages_;
  QStackedWidget* stack_;
  WaterChartsView* charts_;
  Explained *explained_, *source_explained_ = nullptr;
  struct PagedTable {
    RowTable* table;
    int page;
  };
  std::vector<PagedTable> tables_;

  RowTable* addTable(std::string_view list, QWidget* page, const QString& heading, int rows_shown);
  QWidget* makeSourcePage();
  QWidget* makeNeedsPage();
  QWidget* makeWeatherPage();
  void addPage(const QString& name, QWidget* page);
  void refresh();
  void useMedians();
  void forgetRecord();
};

}  // namespace ui
