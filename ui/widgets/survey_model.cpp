#include "ui/widgets/survey_model.h"

#include "ui/document/document.h"
#include "ui/text/words.h"
#include "ui/widgets/theme.h"

#include <QBrush>
#include <QColor>
#include <QCoreApplication>
#include <array>

namespace ui {

namespace {

constexpr int kDecimals = 2;

QString tr_(const char* text) {
  return QCoreApplication::translate("ui::SurveyTable", text);
}

/// k of "site.ground.points_m[k]"; -1 for other paths.
int rowOf(const std::string& path) {
  const std::size_t mark = path.find('[');
  return mark == std::string::npos ? -1 : std::stoi(path.substr(mark + 1));
}

core::Problem notANumber(int row, const QString& text) {
  return {.code = "wrong_type",
          .path = QStringLiteral("site.ground.points_m[%1]").arg(row).toStdString(),
          .value = text.toStdString(),
          .least = {},
          .most = {},
          .unit = core::Unit::metre,
          .allowed = "number"};
}

}  // namespace

SurveyModel::SurveyModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document) {}

int SurveyModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(shown_.size());
}

int SurveyModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : 3;
}

QVariant SurveyModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto note = noted_.find(index.row());
  switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
      return format_.number(shown_[std::size_t(index.row())][index.column()], core::Unit::metre, kDecimals);
    case Qt::TextAlignmentRole:
      return int(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::ToolTipRole:
      return note == noted_.end() ? QVariant() : words::problemText(note->second, format_);
    case Qt::FontRole: {
      QFont font;
      font.setBold(note != noted_.end());
      return font;
    }
    default:
      return {};
  }
}

QVariant SurveyModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole) return {};
  if (orientation == Qt::Vertical)
    return noted_.contains(section) ? QStringLiteral("%1 !").arg(format_.integer(section + 1))
                                    : format_.integer(section + 1);
  const std::array names{tr_(QT_TRANSLATE_NOOP("ui::SurveyTable", "East")),
                         tr_(QT_TRANSLATE_NOOP("ui::SurveyTable", "North")),
                         tr_(QT_TRANSLATE_NOOP("ui::SurveyTable", "Height"))};
  if (section >= int(names.size())) return {};
  return QStringLiteral("%1\n%2").arg(names.at(std::size_t(section)), format_.unit(core::Unit::metre));
}

Qt::ItemFlags SurveyModel::flags(const QModelIndex& index) const {
  return QAbstractTableModel::flags(index) | Qt::ItemIsEditable;
}

bool SurveyModel::setData(const QModelIndex& index, const QVariant& value, int role) {
  if (role != Qt::EditRole || !index.isValid()) return false;
  if (value.toString() == data(index, Qt::EditRole).toString()) return true;
  const auto number = format_.parse(value.toString(), core::Unit::metre);
  if (!number) {
    emit refused({notANumber(index.row(), value.toString())});
    return false;
  }
  core::SpotHeights::List points = shown_.list();
  points[std::size_t(index.row())][index.column()] = *number;
  const core::Problems problems =
      document_.change(words::placeText("site.ground.points_m", format_),
                       [&](core::Project& project) { project.site.ground.points_m = std::move(points); });
  if (problems.empty()) {
    emit taken();
  } else {
    emit refused(problems);
  }
  return problems.empty();
}

void SurveyModel::setFormatter(const Formatter& format) {
  beginResetModel();
  format_ = format;
  endResetModel();
}

void SurveyModel::refresh() {
  const core::SpotHeights& points = document_.project().site.ground.points_m;
  std::map<int, core::Problem> noted;
  for (const core::Problem& note : document_.plan().site.ground->notes) noted[rowOf(note.path)] = note;
  if (points.isSharedWith(shown_) && noted == noted_) return;
  const bool same_rows = points.size() == shown_.size();
  if (!same_rows) beginResetModel();
  shown_ = points;
  noted_ = std::move(noted);
  if (!same_rows) return endResetModel();
  if (shown_.empty()) return;
  emit dataChanged(index(0, 0), index(rowCount() - 1, 2));
  emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
}

}  // namespace ui
