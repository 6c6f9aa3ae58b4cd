#pragma once

#include "ui/text/formatter.h"

#include <QWidget>
#include <functional>
#include <initializer_list>
#include <string_view>
#include <vector>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTabBar;
class QVBoxLayout;

namespace core {
struct Plan;
}
namespace core::hydraulics {
struct DeliveryPlan;
struct LinePlan;
}  // namespace core::hydraulics

namespace ui {

class Canvas;
class ChartView;
class Document;
class Explained;
class RowTable;

/// How the water comes to the tank, leaves it and must not leave it: source line, field line, overflow, silt
/// trap and leak test, each with its answer in words.
class DeliveryPanel : public QWidget {
  Q_OBJECT

public:
  explicit DeliveryPanel(Document& document, QWidget* parent = nullptr);

  void setFormatter(const Formatter& format);
  void setDark(bool dark);
  /// Shows the cell of a field. @return false when it is in none of the tables
  bool goTo(const QString& path);
  /// Shows the page that a field of the delivery belongs to.
  void showPageOf(const QString& path);

private:
  using Answers = QStringList (*)(const core::hydraulics::DeliveryPlan&, const Formatter&);
  struct Answered {
    QLabel* label;
    Answers answers;
  };
  struct PagedTable {
    RowTable* table;
    int page;
  };

  Document& document_;
  Formatter format_;
  bool dark_ = false;
  QLabel* headline_;
  QPushButton* ask_;
  QTabBar* pages_;
  QStackedWidget* stack_;
  std::vector<Answered> answered_;
  std::vector<PagedTable> tables_;
  std::vector<ChartView*> charts_;
  std::vector<Canvas*> drawings_;
  std::vector<Explained*> explained_;

  QVBoxLayout* addPage(const QString& name);
  /// @param groups of reckonings that unfold below the answers
  void addAnswers(QVBoxLayout* layout, const QString& id, Answers answers,
                  std::initializer_list<std::string_view> groups);
  void addHeads(QVBoxLayout* layout, const QString& id,
                std::function<const core::hydraulics::LinePlan*()> line);
  void addEmptying(QVBoxLayout* layout);
  void addRoute(QVBoxLayout* layout, std::string_view list, const QString& heading);
  void makeSourcePage();
  void makeFieldPage();
  void makeOverflowPage();
  void makeTrapPage();
  void makeLeakPage();
  void refresh();
};

}  // namespace ui
