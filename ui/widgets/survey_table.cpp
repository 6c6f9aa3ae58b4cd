#include "ui/widgets/survey_table.h"

#include "core/exchange/survey_csv.h"
#include "core/site/survey.h"
#include "ui/document/document.h"
#include "ui/text/words.h"
#include "ui/widgets/survey_model.h"
#include "ui/widgets/theme.h"
#include "ui/widgets/waiting.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>
#include <optional>
#include <set>

namespace ui {

namespace {

constexpr int kLinesSaid = 4;
constexpr double kNextPoint_m = 1;

/// The first few problems, a line each, and how many more there are.
QString listed(const core::Problems& problems, const Formatter& format,
               QString (*text)(const core::Problem&, const Formatter&)) {
  QStringList lines;
  for (const core::Problem& problem : problems) {
    if (lines.size() == kLinesSaid) break;
    lines << text(problem, format);
  }
  const auto more = qsizetype(problems.size()) - lines.size();
  if (more > 0) lines << SurveyTable::tr("and %1 more").arg(format.integer(int(more)));
  return lines.join(QLatin1Char('\n'));
}

}  // namespace

SurveyTable::SurveyTable(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      model_(new SurveyModel(document, this)),
      table_(new QTableView(this)),
      problem_(new QLabel(this)),
      notes_(new QLabel(this)) {
  table_->setObjectName(QStringLiteral("site.ground.points_m"));
  table_->setAccessibleName(tr("Spot heights"));
  table_->setModel(model_);
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  table_->setTabKeyNavigation(false);
  table_->setMinimumHeight(120);
  table_->installEventFilter(this);
  problem_->setObjectName(QStringLiteral("site.ground.points_m.problem"));
  notes_->setObjectName(QStringLiteral("site.ground.points_m.notes"));
  setTone(problem_, Tone::problem);
  notes_->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
  notes_->setAccessibleName(tr("Doubtful spot heights"));
  for (QLabel* label : {problem_, notes_}) {
    label->setWordWrap(true);
    label->hide();
  }
  auto* buttons = new QHBoxLayout;
  QToolButton* add = addButton(QStringLiteral("add"), tr("Add a point"));
  QToolButton* remove = addButton(QStringLiteral("remove"), tr("Remove points"));
  QToolButton* paste_in = addButton(QStringLiteral("paste"), tr("Paste"));
  QToolButton* file = addButton(QStringLiteral("file"), tr("Read a table…"));
  paste_in->setToolTip(tr("Puts the copied rows in place of all points: east, north, height, in metres"));
  for (QToolButton* button : {add, remove, paste_in, file}) buttons->addWidget(button);
  buttons->addStretch();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(table_, 1);
  layout->addLayout(buttons);
  layout->addWidget(problem_);
  layout->addWidget(notes_);
  connect(add, &QToolButton::clicked, this, &SurveyTable::addPoint);
  connect(remove, &QToolButton::clicked, this, &SurveyTable::removePoints);
  connect(paste_in, &QToolButton::clicked, this, &SurveyTable::paste);
  connect(file, &QToolButton::clicked, this, &SurveyTable::fileWanted);
  connect(model_, &SurveyModel::taken, this, [this] { say({}); });
  connect(model_, &SurveyModel::refused, this,
          [this](const core::Problems& problems) { say(listed(problems, format_, words::problemText)); });
  connect(notes_, &QLabel::linkActivated, this, [this](const QString& row) { showRow(row.toInt()); });
  connect(&document_, &Document::projectChanged, this, &SurveyTable::refresh);
  connect(&document_, &Document::loaded, this, [this] { say({}); });
  refresh();
}

QToolButton* SurveyTable::addButton(const QString& id, const QString& text) {
  auto* button = new QToolButton(this);
  button->setObjectName(QStringLiteral("site.ground.points_m.") + id);
  button->setText(text);
  return button;
}

void SurveyTable::setFormatter(const Formatter& format) {
  format_ = format;
  model_->setFormatter(format);
  refresh();
}

void SurveyTable::refresh() {
  model_->refresh();
  const auto& noted = model_->noted();
  QStringList lines;
  for (const auto& [row, note] : noted) {
    if (lines.size() == kLinesSaid) break;
    lines << QStringLiteral("<a href=\"%1\">%2</a>")
                 .arg(QString::number(row), words::problemText(note, format_).toHtmlEscaped());
  }
  const auto more = qsizetype(noted.size()) - lines.size();
  if (more > 0) lines << tr("and %1 more").arg(format_.integer(int(more)));
  notes_->setVisible(!lines.isEmpty());
  notes_->setText(lines.join(QStringLiteral("<br>")));
}

void SurveyTable::showRow(int row) {
  const QModelIndex index = model_->index(row, 0);
  table_->scrollTo(index, QAbstractItemView::PositionAtCenter);
  table_->setCurrentIndex(index);
  table_->setFocus(Qt::OtherFocusReason);
}

void SurveyTable::tell(const QString& text) {
  say(text);
  setTone(problem_, Tone::quiet);
}

void SurveyTable::say(const QString& text) {
  setTone(problem_, Tone::problem);
  problem_->setVisible(!text.isEmpty());
  problem_->setText(text);
}

bool SurveyTable::goTo(const QString& path) {
  const QString own = QStringLiteral("site.ground.points_m");
  if (!path.startsWith(own)) return false;
  const int row = path.mid(own.size()).remove(QLatin1Char('[')).remove(QLatin1Char(']')).toInt();
  showRow(model_->noted().empty() || path != own ? row : model_->noted().begin()->first);
  return true;
}

void SurveyTable::take(const QString& what, const QByteArray& table) {
  const auto read =
      resultBeside(window(), tr("Reading the table"), Patience::may_give_up, [&](const std::atomic<bool>&) {
        return core::exchange::parseSurveyCsv(std::string_view(table.constData(), std::size_t(table.size())));
      });
  if (!read) return;
  if (!*read)
    return say(tr("Nothing has changed.") + QLatin1Char('\n') +
               listed(read->error(), format_, words::surveyProblemText));
  std::optional<Eigen::Vector2d> moved_to;
  const core::Problems problems = document_.change(what, [&](core::Project& project) {
    project.site.ground.kind = core::GroundKind::spot_heights;
    project.site.ground.points_m = (*read)->points_m;
    core::Position& position = project.site.position;
    moved_to = core::site::placeInSurvey((*read)->points_m, {position.east_m, position.north_m});
    if (!moved_to) return;
    position.east_m = moved_to->x();
    position.north_m = moved_to->y();
  });
  if (!problems.empty())
    return say(tr("Nothing has changed.") + QLatin1Char('\n') +
               listed(problems, format_, words::problemText));
  const auto metres = [&](double length_m) { return format_.quantity(length_m, core::Unit::metre, 0); };
  const Eigen::Vector2d off = (*read)->taken_off_m;
  QStringList told;
  if (off.norm() > 0)
    told << tr("Taken off every point: %1 east, %2 north.").arg(metres(off.x()), metres(off.y()));
  if (moved_to)
    told << tr("The tank stood outside the survey and was moved to its middle: %1 east, %2 north.")
                .arg(metres(moved_to->x()), metres(moved_to->y()));
  if (format_.system() != UnitSystem::metric) told << tr("The numbers were taken as metres.");
  tell(told.join(QLatin1Char('\n')));
}

void SurveyTable::addPoint() {
  core::SpotHeights::List points = document_.project().site.ground.points_m.list();
  points.push_back(points.empty() ? Eigen::Vector3d::Zero().eval()
                                  : (points.back() + kNextPoint_m * Eigen::Vector3d::UnitX()).eval());
  const core::Problems problems = document_.change(
      tr("Add a point"), [&](core::Project& project) { project.site.ground.points_m = std::move(points); });
  say(listed(problems, format_, words::problemText));
  if (problems.empty()) showRow(model_->rowCount() - 1);
}

void SurveyTable::removePoints() {
  std::set<int> rows;
  for (const QModelIndex& index : table_->selectionModel()->selectedIndexes()) rows.insert(index.row());
  if (rows.empty()) return;
  const core::SpotHeights& all = document_.project().site.ground.points_m;
  core::SpotHeights::List kept;
  for (int row = 0; row < int(all.size()); ++row) {
    if (!rows.contains(row)) kept.push_back(all[std::size_t(row)]);
  }
  const core::Problems problems = document_.change(
      tr("Remove points"), [&](core::Project& project) { project.site.ground.points_m = std::move(kept); });
  say(listed(problems, format_, words::problemText));
}

void SurveyTable::paste() {
  const QByteArray text = QApplication::clipboard()->text().toUtf8();
  if (!text.trimmed().isEmpty()) take(tr("Paste spot heights"), text);
}

bool SurveyTable::eventFilter(QObject*, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return false;
  auto* key = static_cast<QKeyEvent*>(event);
  if (key->matches(QKeySequence::Paste)) {
    paste();
    return true;
  }
  if (key->matches(QKeySequence::Delete)) {
    removePoints();
    return true;
  }
  return false;
}

}  // namespace ui
