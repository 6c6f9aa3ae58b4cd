#pragma once

#include "core/plan.h"
#include "ui/panels/chart_view.h"
#include "ui/text/formatter.h"

#include <QStringList>
#include <QWidget>
#include <functional>
#include <string_view>
#include <vector>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTabBar;
class QVBoxLayout;

namespace ui {

class Document;
class Explained;
class RowTable;

/// A tab of the window that answers one question of the job: until it is asked a headline and a button; then
/// pages with answers in words, charts and tables.
class PagedPanel : public QWidget {
  Q_OBJECT

public:
  /// @param id object name, "works_panel"; the names of parts begin with what stands before "_panel"
  PagedPanel(Document& document, const QString& id, QWidget* parent);

  void setFormatter(const Formatter& format);
  void setDark(bool dark);
  /// Shows the cell of a field. @return false when it is in none of the tables
  bool goTo(const QString& path);
  void showPage(int page);

protected:
  using Sentences = std::function<QStringList()>;

  /// What is shown while `is_asked` says no. `ask` puts the part in place.
  void setQuestion(const QString& headline, const QString& button, std::function<bool()> is_asked,
                   std::function<void(core::Project&)> ask);
  /// A new page; what is added next stands on it.
  QVBoxLayout* addPage(const QString& name);
  /// @param group of reckonings that unfold below the answers; none when empty
  QLabel* addAnswers(const QString& name, Sentences sentences, std::string_view group = {});
  void addExplained(std::string_view group);
  ChartView* addChart(const QString& name, Chart chart, int least_height_px);
  RowTable* addTable(std::string_view list, const QString& heading, int rows_shown);
  QPushButton* addButton(const QString& name, const QString& text, std::function<void()> pressed);
  /// A button that can be used only when `may` says so.
  QPushButton* addButton(const QString& name, const QString& text, std::function<bool()> may,
                         std::function<void()> pressed);
  /// Called when plan, units or colours may have changed, while the panel is looked at.
  virtual void refreshMore() {}
  void refresh();
  void showEvent(QShowEvent* event) override;

  Document& document() const { return document_; }
  const Formatter& format() const { return format_; }
  bool isDark() const { return dark_; }
  QString idOf(const QString& name) const;

private:
  struct Answered {
    QLabel* label;
    Sentences sentences;
  };
  struct PagedTable {
    RowTable* table;
    int page;
  };
  struct Guarded {
    QPushButton* button;
    std::function<bool()> may;
  };

  Document& document_;
  Formatter format_;
  bool dark_ = false;
  QLabel* headline_;
  QPushButton* ask_;
  QTabBar* pages_;
  QStackedWidget* stack_;
  QVBoxLayout* page_ = nullptr;  // the last one added
  std::function<bool()> is_asked_ = [] { return true; };
  std::function<void(core::Project&)> put_in_place_;
  std::vector<Answered> answered_;
  std::vector<PagedTable> tables_;
  std::vector<Guarded> guarded_;
  std::vector<ChartView*> charts_;
  std::vector<Explained*> explained_;
  bool is_stale_ = false;

  void refreshWhenSeen();
};

}  // namespace ui
