#pragma once

#include "ui/document/document.h"
#include "ui/document/file_keeper.h"
#include "ui/document/recovery.h"
#include "ui/text/formatter.h"
#include "ui/text/words.h"
#include "ui/widgets/theme.h"

#include <QMainWindow>
#include <QPointer>
#include <QThreadPool>

class QTabWidget;

namespace ui {

class Actions;
class EditorPanel;
class FiguresPanel;
class DeliveryPanel;
class DrawingsPanel;
class GroundPanel;
class MessageBar;
class MoneyPanel;
class NotesPanel;
class OptionsPanel;
class PitPanel;
class SheetsPanel;
class StageBar;
class WaterPanel;
class WorksPanel;

namespace group {
class GroupView;
}

/// The window: what is entered at the left, the pit in the middle, what follows at the right.
class MainWindow : public QMainWindow {
  Q_OBJECT

public:
  explicit MainWindow(QWidget* parent = nullptr);
  ~MainWindow() override;

  Document& document() { return document_; }
  FileKeeper& keeper() { return keeper_; }
  MessageBar& messages() { return *messages_; }
  EditorPanel& editor() { return *editor_; }

  /// Opens a file in place of the open project, after asking about unsaved work. @return whether it was
  /// opened
  bool openFile(const QString& path);
  /// Puts a design in place that was typed in short form, after asking about unsaved work. @return whether it
  /// was taken
  bool openShortForm(const QString& text);
  /// Saves to a file and says how it went. @return whether it was saved
  bool saveFile(const QString& path);
  /// Writes pages, tables, solids or pictures in the background and says how it went.
  void exportFile(const QString& path);
  /// Waits until all exports so far are done.
  void finishExports();
  /// Puts the example in place as a copy without a file.
  void startWithExample();
  /// Takes a daily weather record from a file and says how it went.
  void readWeather(const QString& path);
  /// Takes spot heights from a file and says how it went.
  void readSurvey(const QString& path);
  /// Puts prices, records and rates of a district file in and says how it went.
  void readDistrict(const QString& path);
  /// Writes the project's prices, records and rates as a district file and says how it went.
  void writeDistrict(const QString& path);
  /// Offers work that an earlier run could not save.
  void offerRecovery();

  void setUnits(UnitSystem units);
  void setTheme(Theme theme);
  void setNumbers(const QLocale& locale);
  /// Builds everything that shows texts anew in another language; the project and its history stay.
  void setLanguage(const QLocale& locale);

protected:
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

private:
  Document document_;
  FileKeeper keeper_;
  Recovery recovery_;
  Formatter format_;
  QThreadPool exports_;
  Actions* actions_ = nullptr;
  MessageBar *messages_ = nullptr, *recovery_bar_ = nullptr;
  EditorPanel* editor_ = nullptr;
  QTabWidget* tabs_ = nullptr;
  PitPanel* pit_ = nullptr;
  GroundPanel* ground_ = nullptr;
  WaterPanel* water_ = nullptr;
  DeliveryPanel* delivery_ = nullptr;
  WorksPanel* works_ = nullptr;
  MoneyPanel* money_ = nullptr;
  NotesPanel* notes_ = nullptr;
  OptionsPanel* options_ = nullptr;
  DrawingsPanel* drawings_ = nullptr;
  SheetsPanel* sheets_ = nullptr;
  FiguresPanel* figures_ = nullptr;
  StageBar* stages_ = nullptr;
  QPointer<group::GroupView> group_;

  void build();
  void clear();
  void arrange();
  void addActions();
  void connectOnce();
  void connectPanels();
  void setFormatter(const Formatter& format);
  void applyDark(bool dark);
  void showTitle();
  void keepWork();
  void showTab(const QString& name);
  void look(const QString& preset);
  void showGroupView();
  void about();
  void goTo(const QString& field);
  void showFinding(const core::Finding& finding);

  // main_window_files.cpp
  bool mayLeave();
  void makeNew();
  void openExample();
  void askOpen();
  void askShortForm();
  void copyShortForm();
  void openRecent(const QString& path);
  bool save();
  bool askSaveAs();
  void askExport(const QString& ending);
  void print();
  void askWeather();
  void askSurvey();
  void askDistrict();
  void askDistrictTarget();
  std::shared_ptr<const core::site::SurveyedGround> makeGround(const core::Ground& ground, bool may_give_up);
  void recover(const LeftBehind& work);
  using ProblemText = QString (*)(const core::Problem&, const Formatter&);
  void sayProblems(const QString& what, const core::Problems& problems,
                   ProblemText text = words::problemText);
  /// Something was done, and there is something to note about it.
  void sayNotes(const QString& what, const core::Problems& notes, ProblemText text = words::problemText);
  QString listed(const QString& what, const core::Problems& problems, ProblemText text) const;
  QString suggestedName(const QString& ending) const;
};

}  // namespace ui
