#include "ui/window/actions.h"

#include "ui/text/languages.h"
#include "ui/widgets/icons.h"

#include <QFileInfo>
#include <QLocale>
#include <QMainWindow>
#include <QMenuBar>
#include <QToolBar>
#include <QUndoStack>
#include <utility>

namespace ui {

namespace {

constexpr int kIcon_px = 20;

struct Digits {
  const char* locale;
  const char* name;  ///< in its own language
};

// Digits and number marks that can be chosen whatever the language of the texts.
constexpr Digits kDigits[] = {
    {"en_GB", "English  1,234.5"}, {"de_DE", "Deutsch  1.234,5"}, {"fr_FR", "Français  1 234,5"},
    {"es_ES", "Español  1.234,5"}, {"ne_NP", "नेपाली  १,२३४.५"},   {"hi_IN", "हिन्दी  1,234.5"},
    {"mr_IN", "मराठी  १,२३४.५"},   {"bn_BD", "বাংলা  ১,২৩৪.৫"},   {"ur_PK", "اردو  1,234.5"},
    {"ur_IN", "اردو  ۱٬۲۳۴٫۵"},    {"ar_EG", "العربية  ١٬٢٣٤٫٥"}, {"sw_KE", "Kiswahili  1,234.5"},
};

}  // namespace

Actions::Actions(QMainWindow& window, QUndoStack* undo, Commands commands)
    : QObject(&window), window_(window), commands_(std::move(commands)) {
  addFileMenu();
  addEditMenu(undo);
  addViewMenu();
  addHelpMenu();
  addToolBar();
  refreshIcons();
}

QAction* Actions::add(QMenu* menu, const QString& id, const QString& text, const QKeySequence& key,
                      const Run& run) {
  QAction* action = menu->addAction(text);
  action->setObjectName(id);
  action->setShortcut(key);
  connect(action, &QAction::triggered, &window_, run);
  return action;
}

void Actions::addFileMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&File"));
  const Commands& c = commands_;
  icons_ << qMakePair(add(menu, QStringLiteral("file.new"), tr("&New"), QKeySequence::New, c.make_new),
                      "new");
  add(menu, QStringLiteral("file.example"), tr("Open the e&xample"), {}, c.open_example);
  icons_ << qMakePair(add(menu, QStringLiteral("file.open"), tr("&Open…"), QKeySequence::Open, c.open),
                      "open");
  add(menu, QStringLiteral("file.open_short_form"), tr("Open from s&hort form…"), {}, c.open_short_form);
  recent_ = menu->addMenu(tr("Open &recent"));
  recent_->setObjectName(QStringLiteral("file.recent"));
  menu->addSeparator();
  icons_ << qMakePair(add(menu, QStringLiteral("file.save"), tr("&Save"), QKeySequence::Save, c.save),
                      "save");
  add(menu, QStringLiteral("file.save_as"), tr("Save &as…"), QKeySequence(tr("Ctrl+Shift+S")), c.save_as);
  menu->addSeparator();
  icons_ << qMakePair(
      add(menu, QStringLiteral("file.export"), tr("&Export…"), QKeySequence(tr("Ctrl+E")), c.export_file),
      "export");
  icons_ << qMakePair(add(menu, QStringLiteral("file.print"), tr("&Print…"), QKeySequence::Print, c.print),
                      "print");
  menu->addSeparator();
  add(menu, QStringLiteral("file.quit"), tr("&Quit"), QKeySequence::Quit, [this] { window_.close(); });
}

void Actions::addEditMenu(QUndoStack* undo_stack) {
  QMenu* menu = window_.menuBar()->addMenu(tr("&Edit"));
  QAction* undo = undo_stack->createUndoAction(this, tr("&Undo"));
  undo->setObjectName(QStringLiteral("edit.undo"));
  undo->setShortcut(QKeySequence::Undo);
  QAction* redo = undo_stack->createRedoAction(this, tr("&Redo"));
  redo->setObjectName(QStringLiteral("edit.redo"));
  redo->setShortcuts(QKeySequence::keyBindings(QKeySequence::Redo));
  menu->addActions({undo, redo});
  menu->addSeparator();
  add(menu, QStringLiteral("edit.copy_short_form"), tr("&Copy the design in short form"), {},
      commands_.copy_short_form);
  icons_ << qMakePair(undo, "undo") << qMakePair(redo, "redo");
}

void Actions::addChoices(QMenu* menu, const QString& group, const QList<QPair<QString, QString>>& choices,
                         const RunWith& run) {
  auto* exclusive = new QActionGroup(this);
  for (const auto& [id, text] : choices) {
    QAction* action = add(menu, group + QLatin1Char('.') + id, text, {}, [run, id = id] { run(id); });
    action->setCheckable(true);
    exclusive->addAction(action);
  }
}

void Actions::addViewMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&View"));
  const Commands& c = commands_;
  add(menu, QStringLiteral("view.group"), tr("Group &view, whole screen"), QKeySequence(Qt::Key_F5),
      c.group_view);
  menu->addSeparator();
  const QList<QPair<QString, QString>> tabs{
      {QStringLiteral("pit_panel"), tr("&Pit")},           {QStringLiteral("ground_panel"), tr("&Ground")},
      {QStringLiteral("water_panel"), tr("&Water")},       {QStringLiteral("delivery_panel"), tr("P&ipes")},
      {QStringLiteral("works_panel"), tr("Wor&ks")},       {QStringLiteral("money_panel"), tr("&Money")},
      {QStringLiteral("options_panel"), tr("&Options")},   {QStringLiteral("notes_panel"), tr("No&tes")},
      {QStringLiteral("drawings_panel"), tr("&Drawings")}, {QStringLiteral("sheets_panel"), tr("&Sheets")}};
  int key = 1;
  for (const auto& [id, text] : tabs)
    add(menu, QStringLiteral("tab.") + id, text, QKeySequence(QStringLiteral("Ctrl+%1").arg(key++ % 10)),
        [c, id = id] { c.show_tab(id); });
  menu->addSeparator();
  const QList<QPair<QString, QString>> looks{{QStringLiteral("oblique"), tr("Look from &above and aside")},
                                             {QStringLiteral("plan"), tr("Look straight d&own")},
                                             {QStringLiteral("section"), tr("Look at the &cut")}};
  key = 1;
  for (const auto& [id, text] : looks)
    add(menu, QStringLiteral("look.") + id, text, QKeySequence(QStringLiteral("Alt+%1").arg(key++)),
        [c, id = id] { c.look(id); });
  menu->addSeparator();
  addChoices(
      menu->addMenu(tr("&Units")), QStringLiteral("units"),
      {{QStringLiteral("metric"), tr("&Metres")}, {QStringLiteral("feet_inches"), tr("&Feet and inches")}},
      c.set_units);
  addChoices(menu->addMenu(tr("&Colours")), QStringLiteral("theme"),
             {{QStringLiteral("system"), tr("As the &desktop")},
              {QStringLiteral("light"), tr("&Light")},
              {QStringLiteral("dark"), tr("D&ark")}},
             c.set_theme);
  QList<QPair<QString, QString>> texts{{QString(), tr("As the desktop")}};
  for (const QString& language : languages()) texts.append({language, languageName(language)});
  addChoices(menu->addMenu(tr("&Language")), QStringLiteral("language"), texts, c.set_language);
  QList<QPair<QString, QString>> digits{{QString(), tr("As the language")}};
  for (const Digits& d : kDigits) digits.append({QLatin1String(d.locale), QString::fromUtf8(d.name)});
  addChoices(menu->addMenu(tr("&Numbers and dates")), QStringLiteral("locale"), digits, c.set_locale);
}

void Actions::addHelpMenu() {
  QMenu* menu = window_.menuBar()->addMenu(tr("&Help"));
  add(menu, QStringLiteral("help.about"), tr("&About Tankwright"), {}, commands_.about);
}

void Actions::addToolBar() {
  auto* bar = new QToolBar(tr("Tools"), &window_);
  bar->setObjectName(QStringLiteral("tools"));
  bar->setMovable(false);
  bar->setIconSize({kIcon_px, kIcon_px});
  for (const auto& [action, icon] : std::as_const(icons_)) bar->addAction(action);
  window_.addToolBar(bar);
}

void Actions::refreshIcons() {
  for (const auto& [action, name] : std::as_const(icons_)) action->setIcon(icon(name));
}

void Actions::setRecentFiles(const QStringList& paths) {
  recent_->clear();
  recent_->setEnabled(!paths.isEmpty());
  for (const QString& path : paths) {
    QAction* action = recent_->addAction(QFileInfo(path).fileName());
    action->setToolTip(path);
    action->setStatusTip(path);
    connect(action, &QAction::triggered, &window_, [this, path] { commands_.open_recent(path); });
  }
}

void Actions::tick(const QString& group, const QString& choice) {
  if (auto* action = window_.findChild<QAction*>(group + QLatin1Char('.') + choice)) action->setChecked(true);
}

}  // namespace ui
