#pragma once

#include <QAction>
#include <QActionGroup>
#include <QIcon>
#include <QMenu>
#include <functional>

class QMainWindow;
class QUndoStack;

namespace ui {

/// Menus and tool bar of the window: every command with its name, key and icon.
class Actions : public QObject {
  Q_OBJECT

public:
  using Run = std::function<void()>;
  using RunWith = std::function<void(const QString&)>;

  /// What the commands do.
  struct Commands {
    Run make_new, open_example, open, save, save_as, export_file, print, group_view, about;
    Run open_short_form, copy_short_form;
    RunWith open_recent, set_units, set_theme, set_language, set_locale, show_tab, look;
  };

  Actions(QMainWindow& window, QUndoStack* undo, Commands commands);

  /// Draws the icons in the present colours.
  void refreshIcons();
  void setRecentFiles(const QStringList& paths);
  /// Ticks the choice that is in force: group "units", "theme", "language" or "locale".
  void tick(const QString& group, const QString& choice);

private:
  QMainWindow& window_;
  Commands commands_;
  QMenu* recent_ = nullptr;
  QList<QPair<QAction*, QString>> icons_;

  QAction* add(QMenu* menu, const QString& id, const QString& text, const QKeySequence& key, const Run& run);
  void addChoices(QMenu* menu, const QString& group, const QList<QPair<QString, QString>>& choices,
                  const RunWith& run);
  void addFileMenu();
  void addEditMenu(QUndoStack* undo);
  void addViewMenu();
  void addHelpMenu();
  void addToolBar();
};

}  // namespace ui
