#include "ui/window/main_window.h"

#include "ui/group/group_view.h"
#include "ui/panels/delivery_panel.h"
#include "ui/panels/drawings_panel.h"
#include "ui/panels/editor_panel.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/ground_panel.h"
#include "ui/panels/money_panel.h"
#include "ui/panels/notes_panel.h"
#include "ui/panels/options_panel.h"
#include "ui/panels/pit_panel.h"
#include "ui/panels/sheets_panel.h"
#include "ui/panels/stage_bar.h"
#include "ui/panels/water_panel.h"
#include "ui/panels/works_panel.h"
#include "ui/text/languages.h"
#include "ui/widgets/icons.h"
#include "ui/widgets/message_bar.h"
#include "ui/widgets/survey_table.h"
#include "ui/widgets/waiting.h"
#include "ui/window/actions.h"
#include "ui/window/file_drops.h"
#include "ui/window/settings.h"
#include "ui/window/undo_keys.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QScreen>
#include <QStandardPaths>
#include <QTabWidget>
#include <QToolBar>
#include <QVBoxLayout>

namespace ui {

namespace {

constexpr QSize kFirstSize(1366, 740);

QString recoveryFolder() {
  return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation))
      .filePath(QStringLiteral("recovery"));
}

}  // namespace

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent), keeper_(document_), recovery_(recoveryFolder()) {
  setObjectName(QStringLiteral("main_window"));
  setWindowIcon(programIcon());
  setAcceptDrops(true);
  connectOnce();
  build();
  if (!restoreGeometry(Settings::geometry())) resize(kFirstSize.boundedTo(screen()->availableSize()));
}

MainWindow::~MainWindow() {
  finishExports();
  delete group_;
  delete takeCentralWidget();  // the panels read the document until they are gone
}

void MainWindow::build() {
  messages_ = new MessageBar(this);
  recovery_bar_ = new MessageBar(this);
  recovery_bar_->setObjectName(QStringLiteral("recovery_bar"));
  editor_ = new EditorPanel(document_, this);
  tabs_ = new QTabWidget(this);
  pit_ = new PitPanel(document_, this);
  ground_ = new GroundPanel(document_, this);
  water_ = new WaterPanel(document_, this);
  delivery_ = new DeliveryPanel(document_, this);
  works_ = new WorksPanel(document_, this);
  money_ = new MoneyPanel(document_, this);
  notes_ = new NotesPanel(document_, this);
  options_ = new OptionsPanel(document_, this);
  drawings_ = new DrawingsPanel(document_, this);
  sheets_ = new SheetsPanel(document_, this);
  figures_ = new FiguresPanel(document_, this);
  stages_ = new StageBar(document_, this);
  arrange();
  addActions();
  connectPanels();
  setTheme(Settings::theme());
  setFormatter(Formatter(Settings::locale(), Settings::units()));
  actions_->tick(QStringLiteral("language"), Settings::languageName());
  actions_->tick(QStringLiteral("locale"), Settings::localeName());
  actions_->setRecentFiles(Settings::recentFiles());
  showTitle();
}

void MainWindow::clear() {
  delete group_;
  delete takeCentralWidget();
  delete actions_;
  delete menuBar();
  for (QToolBar* bar : findChildren<QToolBar*>(Qt::FindDirectChildrenOnly)) delete bar;
}

void MainWindow::setLanguage(const QLocale& locale) {
  finishExports();
  const int tab = tabs_->currentIndex();
  useLanguage(locale);
  QGuiApplication::setLayoutDirection(textDirection());
  clear();
  build();
  QLocale::setDefault(format_.locale());
  tabs_->setCurrentIndex(tab);
  if (isDraft(language())) messages_->say(MessageBar::Kind::done, draftMark());
}

void MainWindow::arrange() {
  tabs_->setObjectName(QStringLiteral("tabs"));
  tabs_->setDocumentMode(true);
  tabs_->addTab(pit_, tr("Pit"));
  tabs_->addTab(ground_, tr("Ground"));
  tabs_->addTab(water_, tr("Water"));
  tabs_->addTab(delivery_, tr("Pipes"));
  tabs_->addTab(works_, tr("Works"));
  tabs_->addTab(money_, tr("Money"));
  tabs_->addTab(options_, tr("Options"));
  tabs_->addTab(notes_, tr("Notes"));
  tabs_->addTab(drawings_, tr("Drawings"));
  tabs_->addTab(sheets_, tr("Sheets"));
  auto* columns = new QHBoxLayout;
  columns->setSpacing(0);
  columns->addWidget(editor_);
  columns->addWidget(tabs_, 1);
  columns->addWidget(figures_);
  auto* centre = new QWidget(this);
  auto* rows = new QVBoxLayout(centre);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(0);
  rows->addWidget(recovery_bar_);
  rows->addWidget(messages_);
  rows->addLayout(columns, 1);
  rows->addWidget(stages_);
  setCentralWidget(centre);
}

void MainWindow::addActions() {
  Actions::Commands commands;
  commands.make_new = [this] { makeNew(); };
  commands.open_example = [this] { openExample(); };
  commands.open = [this] { askOpen(); };
  commands.open_short_form = [this] { askShortForm(); };
  commands.copy_short_form = [this] { copyShortForm(); };
  commands.save = [this] { save(); };
  commands.save_as = [this] { askSaveAs(); };
  commands.export_file = [this] { askExport(QString()); };
  commands.print = [this] { print(); };
  commands.group_view = [this] { showGroupView(); };
  commands.about = [this] { about(); };
  commands.open_recent = [this](const QString& path) { openRecent(path); };
  commands.set_units = [this](const QString& id) {
    setUnits(id == QLatin1String("metric") ? UnitSystem::metric : UnitSystem::feet_inches);
  };
  commands.set_theme = [this](const QString& id) {
    setTheme(id == QLatin1String("light")  ? Theme::light
             : id == QLatin1String("dark") ? Theme::dark
                                           : Theme::system);
  };
  commands.set_language = [this](const QString& name) {
    Settings::setLanguageName(name);
    // not while the menu that asks for it is at work
    QMetaObject::invokeMethod(
        this, [this] { setLanguage(Settings::language()); }, Qt::QueuedConnection);
  };
  commands.set_locale = [this](const QString& name) {
    Settings::setLocaleName(name);
    setNumbers(Settings::locale());
  };
  commands.show_tab = [this](const QString& name) { showTab(name); };
  commands.look = [this](const QString& preset) { look(preset); };
  actions_ = new Actions(*this, document_.undoStack(), std::move(commands));
}

void MainWindow::connectOnce() {
  qApp->installEventFilter(new UndoKeys(this));
  auto* drops = new FileDrops(this);
  qApp->installEventFilter(drops);
  connect(drops, &FileDrops::dropped, this, &MainWindow::openFile);
  connect(&keeper_, &FileKeeper::changed, this, &MainWindow::showTitle);
  connect(&keeper_, &FileKeeper::changed, this, &MainWindow::keepWork);
  connect(&document_, &Document::projectChanged, this, &MainWindow::keepWork);
  document_.setGroundMaker(
      [this](const core::Ground& ground, bool may_give_up) { return makeGround(ground, may_give_up); });
}

void MainWindow::connectPanels() {
  connect(figures_, &FiguresPanel::findingWanted, this, &MainWindow::showFinding);
  connect(editor_, &EditorPanel::surveyWanted, this, [this] {
    tabs_->setCurrentWidget(ground_);
    ground_->showSurvey();
  });
  connect(stages_, &StageBar::changed, this, [this] {
    pit_->showDay(stages_->day());
    drawings_->showDay(stages_->day());
  });
  connect(ground_->survey(), &SurveyTable::fileWanted, this, &MainWindow::askSurvey);
  connect(water_, &WaterPanel::importWanted, this, &MainWindow::askWeather);
  connect(money_, &MoneyPanel::readDistrictWanted, this, &MainWindow::askDistrict);
  connect(money_, &MoneyPanel::writeDistrictWanted, this, &MainWindow::askDistrictTarget);
  connect(sheets_, &SheetsPanel::exportWanted, this, [this] { askExport(QStringLiteral(".pdf")); });
  connect(sheets_, &SheetsPanel::printWanted, this, &MainWindow::print);
}

void MainWindow::setFormatter(const Formatter& format) {
  format_ = format;
  editor_->setFormatter(format);
  pit_->setFormatter(format);
  ground_->setFormatter(format);
  water_->setFormatter(format);
  delivery_->setFormatter(format);
  works_->setFormatter(format);
  money_->setFormatter(format);
  notes_->setFormatter(format);
  options_->setFormatter(format);
  drawings_->setFormatter(format);
  sheets_->setFormatter(format);
  figures_->setFormatter(format);
  stages_->setFormatter(format);
  actions_->tick(QStringLiteral("units"), format.system() == UnitSystem::metric
                                              ? QStringLiteral("metric")
                                              : QStringLiteral("feet_inches"));
}

void MainWindow::setUnits(UnitSystem units) {
  Settings::setUnits(units);
  setFormatter(Formatter(format_.locale(), units));
}

void MainWindow::setNumbers(const QLocale& locale) {
  QLocale::setDefault(locale);
  setFormatter(Formatter(locale, format_.system()));
}

void MainWindow::setTheme(Theme theme) {
  Settings::setTheme(theme);
  applyDark(isDark(theme));
  actions_->tick(QStringLiteral("theme"), theme == Theme::light  ? QStringLiteral("light")
                                          : theme == Theme::dark ? QStringLiteral("dark")
                                                                 : QStringLiteral("system"));
}

void MainWindow::applyDark(bool dark) {
  applyTheme(dark);
  actions_->refreshIcons();
  pit_->setDark(dark);
  ground_->setDark(dark);
  water_->setDark(dark);
  delivery_->setDark(dark);
  works_->setDark(dark);
  money_->setDark(dark);
  notes_->setDark(dark);
  options_->setDark(dark);
  drawings_->setDark(dark);
  sheets_->refreshIcons();
  stages_->refreshIcons();
  figures_->refresh();
}

void MainWindow::showTitle() {
  const QString file = keeper_.path().isEmpty() ? tr("not saved yet") : QFileInfo(keeper_.path()).fileName();
  const QString title = QString::fromStdString(document_.project().title);
  setWindowTitle(title.isEmpty() ? tr("%1[*] – Tankwright").arg(file)
                                 : tr("%1 (%2)[*] – Tankwright").arg(title, file));
  setWindowModified(!keeper_.isSaved());
}

void MainWindow::keepWork() {
  showTitle();
  if (keeper_.isSaved()) {
    recovery_.forget();
  } else {
    recovery_.keep(document_.project(), keeper_.path());
  }
}

void MainWindow::showTab(const QString& name) {
  for (int k = 0; k < tabs_->count(); ++k) {
    if (tabs_->widget(k)->objectName() == name) tabs_->setCurrentIndex(k);
  }
}

void MainWindow::look(const QString& preset) {
  using core::geometry::ViewPreset;
  tabs_->setCurrentWidget(pit_);
  pit_->look(preset == QLatin1String("plan")      ? ViewPreset::plan
             : preset == QLatin1String("section") ? ViewPreset::section
                                                  : ViewPreset::oblique);
}

void MainWindow::showGroupView() {
  if (group_ == nullptr) {
    group_ = new group::GroupView(document_, format_, this);
    group_->setAttribute(Qt::WA_DeleteOnClose);
    group_->setGeometry(screen()->geometry());
  }
  group_->showFullScreen();
  group_->activateWindow();
}

void MainWindow::goTo(const QString& field) {
  if (editor_->goTo(field)) {
    if (!field.startsWith(QLatin1String("delivery."))) return;
    tabs_->setCurrentWidget(delivery_);
    delivery_->showPageOf(field);
    editor_->goTo(field);  // the focus stays on the editor
  } else if (ground_->goTo(field)) {
    tabs_->setCurrentWidget(ground_);
  } else if (water_->goTo(field)) {
    tabs_->setCurrentWidget(water_);
  } else if (delivery_->goTo(field)) {
    tabs_->setCurrentWidget(delivery_);
  } else if (works_->goTo(field)) {
    tabs_->setCurrentWidget(works_);
  } else if (notes_->goTo(field)) {
    tabs_->setCurrentWidget(notes_);
  } else if (money_->goTo(field)) {
    tabs_->setCurrentWidget(money_);
  } else if (field.startsWith(QLatin1String("options"))) {
    tabs_->setCurrentWidget(options_);
  }
}

void MainWindow::showFinding(const core::Finding& finding) {
  pit_->pointAt(finding.at_m);
  const QString field = QString::fromStdString(finding.field);
  // beside a field of the editor the place can be seen; other fields stand in tabs of their own
  if (!editor_->goTo(field)) return goTo(field);
  if (finding.at_m) tabs_->setCurrentWidget(pit_);
}

void MainWindow::about() {
  QMessageBox::about(
      this, tr("About Tankwright"),
      tr("<b>Tankwright %1</b><p>Plans small hand-dug farm water tanks lined with soil-cement plaster.</p>"
         "<p>Digging, cement, lifting and open water can hurt and kill. Local codes and licensed "
         "practice come first; this program does not replace them.</p>")
          .arg(QCoreApplication::applicationVersion()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (isRunningBeside() || !mayLeave()) return event->ignore();
  recovery_.forget();
  recovery_.flush();
  Settings::setGeometry(saveGeometry());
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (!projectFileIn(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QString path = projectFileIn(event->mimeData());
  if (path.isEmpty()) return;
  event->acceptProposedAction();
  openFile(path);
}

}  // namespace ui
