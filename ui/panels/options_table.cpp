#include "ui/panels/options_table.h"

#include "core/project/option_fields.h"
#include "ui/document/document.h"
#include "ui/text/money_words.h"
#include "ui/text/place_words.h"
#include "ui/text/words.h"
#include "ui/widgets/cell_text.h"
#include "ui/widgets/row_table_delegate.h"
#include "ui/widgets/theme.h"

#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

namespace ui {

namespace {

using core::FieldChange;
using core::Option;

constexpr int kNameColumn = 0;
constexpr int kBaseColumn = 1;

/// Parts of the project that options may change.
constexpr std::array kBeginnings{"tank.", "lining.", "site.", "works.", "water.", "delivery.", "prices."};

std::optional<core::FieldValue> valueIn(const Option& option, const std::string& path) {
  const auto found = std::ranges::find(option.changes, path, &FieldChange::path);
  return found == option.changes.end() ? std::nullopt : std::optional(found->value);
}

void setValue(Option& option, const std::string& path, const core::FieldValue& value) {
  const auto found = std::ranges::find(option.changes, path, &FieldChange::path);
  if (found != option.changes.end()) {
    found->value = value;
  } else {
    option.changes.push_back({path, value});
  }
}

/// Paths that any option changes, in the order in which they come up.
std::vector<std::string> changedPaths(const core::Project& project) {
  std::vector<std::string> paths;
  for (const Option& option : project.options) {
    for (const FieldChange& change : option.changes) {
      if (std::ranges::find(paths, change.path) == paths.end()) paths.push_back(change.path);
    }
  }
  return paths;
}

QString nameOf(const std::string& path, const Formatter& format) {
  const auto place = core::placeOfPath(path);
  const QString name = words::placeName(path, format);
  if (!place || name.isEmpty()) return QString::fromStdString(path);
  const QString unit = format.unit(place->field->unit);
  return unit.isEmpty() ? name : QStringLiteral("%1, %2").arg(name, unit);
}

QTableWidgetItem* plainItem(const QString& text, bool strong) {
  auto* item = new QTableWidgetItem(text);
  item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
  QFont font = item->font();
  font.setBold(strong);
  item->setFont(font);
  return item;
}

}  // namespace

OptionsTable::OptionsTable(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      table_(new QTableWidget(this)),
      problem_(new QLabel(this)),
      fields_(new QComboBox(this)),
      add_(new QToolButton(this)),
      remove_(new QToolButton(this)),
      adopt_(new QToolButton(this)) {
  table_->setObjectName(QStringLiteral("options.table"));
  table_->setAccessibleName(tr("Options side by side"));
  table_->setTabKeyNavigation(false);
  table_->verticalHeader()->hide();
  table_->setItemDelegate(new RowTableDelegate([](int) { return CellChoices(); }, table_));
  problem_->setObjectName(QStringLiteral("options.problem"));
  problem_->setWordWrap(true);
  setTone(problem_, Tone::problem);
  problem_->hide();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(3);
  layout->addWidget(table_, 1);
  layout->addWidget(problem_);
  makeButtons();
  connect(table_, &QTableWidget::cellChanged, this, &OptionsTable::take);
  connect(table_, &QTableWidget::currentCellChanged, this, &OptionsTable::showButtons);
  refresh();
}

void OptionsTable::makeButtons() {
  auto* bar = new QHBoxLayout;
  const auto button = [&](QToolButton* made, const char* id, const QString& text) {
    made->setObjectName(QStringLiteral("options.") + QLatin1String(id));
    made->setText(text);
    bar->addWidget(made);
  };
  button(add_, "add", tr("Add an option"));
  button(remove_, "remove", tr("Take out the option"));
  button(adopt_, "adopt", tr("Build this one"));
  fields_->setObjectName(QStringLiteral("options.field"));
  fields_->setAccessibleName(tr("Field in which the options differ"));
  fields_->setEditable(true);
  fields_->lineEdit()->setAccessibleName(fields_->accessibleName());
  fields_->setInsertPolicy(QComboBox::NoInsert);
  fields_->completer()->setFilterMode(Qt::MatchContains);
  fields_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  fields_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  bar->addWidget(fields_, 1);
  static_cast<QVBoxLayout*>(layout())->addLayout(bar);
  connect(add_, &QToolButton::clicked, this, &OptionsTable::addOption);
  connect(remove_, &QToolButton::clicked, this, [this] { removeOption(chosenOption()); });
  connect(adopt_, &QToolButton::clicked, this, [this] { adopt(chosenOption()); });
  connect(fields_, &QComboBox::activated, this, [this](int index) {
    addField(fields_->itemData(index).toString());
    fields_->setCurrentIndex(-1);
  });
}

void OptionsTable::fillFields() {
  fields_->clear();
  for (const core::Field& field : core::fields()) {
    const bool is_offered = std::ranges::any_of(
        kBeginnings, [&](const char* beginning) { return field.id.starts_with(beginning); });
    if (!is_offered || !field.applies(document_.project())) continue;
    for (std::size_t row = 0; row < core::rowCount(field, document_.project()); ++row) {
      const std::string path = core::pathOf(field, row);
      fields_->addItem(nameOf(path, format_), QString::fromStdString(path));
    }
  }
  fields_->setCurrentIndex(-1);
  fields_->lineEdit()->setPlaceholderText(tr("Differ also in…"));
}

void OptionsTable::addOption() {
  say(document_.change(tr("Add an option"), [](core::Project& project) {
    project.options.push_back({});
    Option& added = project.options.back();
    // it begins with a field that everyone asks about
    added.changes.push_back({"tank.depth_m", project.tank.depth_m});
  }));
  table_->setCurrentCell(0, table_->columnCount() - 1);
}

void OptionsTable::removeOption(std::size_t option) {
  say(document_.change(tr("Take out the option"), [&](core::Project& project) {
    if (option > 0 && option <= project.options.size())
      project.options.erase(project.options.begin() + std::ptrdiff_t(option) - 1);
  }));
}

void OptionsTable::adopt(std::size_t option) {
  const core::Project& before = document_.project();
  if (option == 0 || option > before.options.size()) return;
  say(document_.change(tr("Build another option"), [&](core::Project& project) {
    core::Project adopted = core::withChanges(before, before.options[option - 1]);
    for (const Option& other : before.options) {
      const bool is_adopted = &other == &before.options[option - 1];
      const core::Project as_it_was = is_adopted ? before : core::withChanges(before, other);
      adopted.options.push_back({is_adopted ? tr("as before").toStdString() : other.name,
                                 core::changesBetween(adopted, as_it_was)});
    }
    project = std::move(adopted);
  }));
}

void OptionsTable::addField(const QString& path) {
  const auto place = core::placeOfPath(path.toStdString());
  if (!place || document_.project().options.empty()) return;
  const std::size_t option = std::max<std::size_t>(1, chosenOption());
  say(document_.change(tr("Field in which options differ"), [&](core::Project& project) {
    setValue(project.options.at(option - 1), path.toStdString(), place->field->get(project, place->row));
  }));
}

/// 0 for A, 1 for the first option.
std::size_t OptionsTable::chosenOption() const {
  return std::size_t(std::max(0, table_->currentColumn() - kBaseColumn));
}

void OptionsTable::setFormatter(const Formatter& format) {
  format_ = format;
}

void OptionsTable::refresh() {
  const QScopedValueRollback filling(filling_, true);
  const int row = table_->currentRow();
  const int column = table_->currentColumn();
  paths_ = changedPaths(document_.project());
  const int options = int(document_.project().options.size());
  QStringList heads{QString(), tr("A, as it stands")};
  for (int k = 1; k <= options; ++k) heads << QString::fromStdString(core::optionLetter(std::size_t(k)));
  table_->setColumnCount(int(heads.size()));
  table_->setHorizontalHeaderLabels(heads);
  table_->setRowCount(0);
  showFieldRows();
  showResults();
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  // a cell is always current, so that the focus is seen
  table_->setCurrentCell(std::clamp(row, 0, table_->rowCount() - 1),
                         std::clamp(column, 0, table_->columnCount() - 1));
  fillFields();
  showButtons();
  say({});
}

void OptionsTable::showFieldRows() {
  const core::Project& project = document_.project();
  table_->setRowCount(1 + int(paths_.size()));
  table_->setItem(0, kNameColumn, plainItem(tr("Name"), false));
  table_->setItem(0, kBaseColumn, plainItem(QString(), false));
  for (std::size_t k = 0; k < project.options.size(); ++k)
    table_->setItem(0, kBaseColumn + 1 + int(k),
                    new QTableWidgetItem(QString::fromStdString(project.options[k].name)));
  for (std::size_t r = 0; r < paths_.size(); ++r) {
    const int row = 1 + int(r);
    const auto place = core::placeOfPath(paths_[r]);
    table_->setItem(row, kNameColumn, plainItem(nameOf(paths_[r], format_), false));
    if (!place || place->row >= core::rowCount(*place->field, project)) continue;
    const core::FieldValue base = place->field->get(project, place->row);
    const CellChoices choices = choicesOf(*place->field);
    table_->setItem(row, kBaseColumn, plainItem(cellText(*place->field, base, choices, format_), false));
    for (std::size_t k = 0; k < project.options.size(); ++k) {
      const auto own = valueIn(project.options[k], paths_[r]);
      auto* item = new QTableWidgetItem(own ? cellText(*place->field, *own, choices, format_) : QString());
      QFont font = item->font();
      font.setBold(own && *own != base);
      item->setFont(font);
      item->setToolTip(own ? words::fieldTip(*place->field, format_)
                           : tr("As A. Type a value to change it."));
      table_->setItem(row, kBaseColumn + 1 + int(k), item);
    }
  }
}

void OptionsTable::showResults() {
  const auto& options = document_.plan().options;
  if (options.size() != document_.project().options.size() + 1) {
    if (document_.project().options.empty()) return;
    const int row = table_->rowCount();
    table_->insertRow(row);
    table_->setItem(row, kNameColumn, plainItem(tr("Being reckoned…"), false));
    return;
  }
  for (const words::OptionRow& result : words::optionRows(document_.project(), options, format_)) {
    if (result.is_change) continue;  // stands above, to be typed
    const int row = table_->rowCount();
    table_->insertRow(row);
    table_->setItem(row, kNameColumn, plainItem(result.name, false));
    for (int k = 0; k < result.values.size(); ++k) {
      const bool differs = result.differs.at(std::size_t(k));
      const QString text = differs ? QStringLiteral("≠ ") + result.values[k] : result.values[k];
      table_->setItem(row, kBaseColumn + k, plainItem(text, differs));
    }
  }
}

void OptionsTable::showButtons() {
  const std::size_t chosen = chosenOption();
  add_->setEnabled(document_.project().options.size() < core::kMostOptions);
  remove_->setEnabled(chosen > 0);
  adopt_->setEnabled(chosen > 0);
  fields_->setEnabled(!document_.project().options.empty());
}

void OptionsTable::take(int row, int column) {
  const std::size_t option = std::size_t(column - kBaseColumn);
  if (filling_ || column <= kBaseColumn || row > int(paths_.size())) return;
  const QString text = table_->item(row, column)->text();
  core::Problems problems;
  if (row == 0) {
    problems = document_.change(tr("Name of an option"), [&](core::Project& project) {
      project.options.at(option - 1).name = text.toStdString();
    });
  } else {
    const std::string& path = paths_[std::size_t(row) - 1];
    const auto place = core::placeOfPath(path);
    core::FieldValue value;
    const bool is_as_base = text.trimmed().isEmpty() && !place->field->nullable;
    if (!is_as_base)
      problems = cellValue(*place->field, place->row, text, choicesOf(*place->field), format_, value);
    if (problems.empty())
      problems = document_.change(words::fieldLabel(place->field->id), [&](core::Project& project) {
        Option& changed = project.options.at(option - 1);
        if (is_as_base) {
          std::erase_if(changed.changes, [&](const FieldChange& c) { return c.path == path; });
        } else {
          setValue(changed, path, value);
        }
      });
  }
  if (problems.empty()) return refresh();
  const QScopedValueRollback filling(filling_, true);
  table_->item(row, column)->setBackground(wrongColour(palette()));
  say(problems);
}

void OptionsTable::say(const core::Problems& problems) {
  problem_->setVisible(!problems.empty());
  problem_->setText(problems.empty() ? QString() : words::problemText(problems.front(), format_));
}

}  // namespace ui
