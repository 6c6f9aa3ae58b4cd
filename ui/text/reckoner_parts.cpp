#include "core/hydraulics/figures.h"
#include "core/project/fields.h"
#include "ui/text/place_words.h"
#include "ui/text/reckoner.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace ui::words {
namespace {

using core::exchange::PlanLeaf;
using core::exchange::PlanRow;
using Rows = std::vector<std::size_t>;

constexpr std::size_t kMostInputs = 6;  // rows of an input that are listed; more stand in their own place

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

Rows rowsOf(const PlanLeaf& leaf, std::string_view wanted) {
  Rows rows;
  for (std::size_t k = 0; k < leaf.rows.size(); ++k) {
    const bool is_known = !std::holds_alternative<std::monostate>(leaf.rows[k].value);
    if (is_known && isRow(leaf.rows[k], wanted)) rows.push_back(k);
  }
  return rows;
}

std::vector<std::string> split(std::string_view text, char at) {
  std::vector<std::string> parts;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find(at, from), text.size());
    parts.emplace_back(text.substr(from, to - from));
    from = to + 1;
  }
  return parts;
}

bool isEntered(const core::FieldValue& value) {
  return !std::holds_alternative<std::monostate>(value);
}

/// First field among the inputs; empty when there is none.
std::string_view firstField(std::string_view inputs) {
  const std::size_t at = inputs.find('@');
  if (at == std::string_view::npos) return {};
  const std::string_view rest = inputs.substr(at + 1);
  return rest.substr(0, rest.find(' '));
}

}  // namespace

void Reckoner::addEntry(const ReckoningPart& part, const Use& use, std::vector<Reckoning>& to) const {
  const ReckoningEntry& entry = *use.entry;
  Reckoning reckoning{(use.place ? std::string(use.place->start) : std::string()) + std::string(entry.id),
                      std::string(part.group),
                      say(entry.name),
                      {},
                      say(entry.formula),
                      inputsOf(use),
                      {}};
  if (use.place) reckoning.name = QStringLiteral("%1: %2").arg(say(use.place->name), reckoning.name);
  const bool is_of_map = reckoning.id.starts_with("water.map.") && has_map_;
  const PlanLeaf* leaf = leafAt(reckoning.id);
  const Rows rows = leaf ? rowsOf(*leaf, entry.row) : Rows{};
  if (rows.empty() && !is_of_map) return;
  if (entry.source == "@") return addBySource(reckoning, *leaf, rows, to);
  const bool is_one = !is_of_map && !entry.row.empty() && rows.size() == 1;
  if (is_of_map)
    reckoning.value = say(QT_TRANSLATE_NOOP("ui::words", "on the map"));
  else
    reckoning.value = is_one ? rowText(*leaf, rows.front()).value : valueOf(*leaf, rows);
  reckoning.source = sourceOf(entry);
  to.push_back(std::move(reckoning));
}

/// Rows with one source together.
void Reckoner::addBySource(const Reckoning& blank, const PlanLeaf& leaf, const Rows& rows,
                           std::vector<Reckoning>& to) const {
  const PlanLeaf* sources = leafAt(leaf.path.substr(0, leaf.path.rfind('.')) + ".source");
  std::vector<std::pair<std::string, Rows>> groups;
  for (const std::size_t row : rows) {
    const auto& key = std::get<std::string>(sources->rows[row].value);
    auto group = std::ranges::find(groups, key, &std::pair<std::string, Rows>::first);
    if (group == groups.end()) group = groups.insert(groups.end(), {key, {}});
    group->second.push_back(row);
  }
  for (const auto& [key, own] : groups) {
    to.push_back(blank);
    to.back().value = valueOf(leaf, own);
    to.back().source = core::source(key).key;
  }
}

QString Reckoner::inputsOf(const Use& use) const {
  QStringList all;
  if (use.entry->inputs.empty()) return say(QT_TRANSLATE_NOOP("ui::words", "as entered"));
  for (std::string token : split(use.entry->inputs, ' ')) {
    if (token == "%" && use.place) token = use.place->input;
    if (token.starts_with('.') && use.place) token = std::string(use.place->start) + token.substr(1);
    const QString text = token.starts_with('@') ? fieldInput(token.substr(1)) : planInput(token);
    if (!text.isEmpty()) all << text;
  }
  return all.isEmpty() ? say(QT_TRANSLATE_NOOP("ui::words", "as entered")) : all.join(QStringLiteral("; "));
}

/// Name and value of another place of the plan; empty when the plan does not hold it.
QString Reckoner::planInput(std::string path) const {
  const std::size_t cut = path.find('/');
  const std::string wanted = cut == std::string::npos ? std::string() : path.substr(cut + 1);
  path.resize(std::min(cut, path.size()));
  const auto uses = uses_.find(path);
  if (uses == uses_.end()) throw std::logic_error("no reckoning of " + path);
  const PlanLeaf* leaf = leafAt(path);
  const Rows rows = leaf ? rowsOf(*leaf, wanted) : Rows{};
  if (rows.empty()) return {};
  const auto is_wanted = [&](const Use& u) { return wanted.empty() || u.entry->row == wanted; };
  const auto found = std::ranges::find_if(uses->second, is_wanted);
  const Use& named = found == uses->second.end() ? uses->second.front() : *found;
  const bool is_whole = wanted.empty() && !named.entry->row.empty() && named.place;
  const QString name = say(is_whole ? named.place->name : named.entry->name);
  if (rows.size() > kMostInputs)
    return say(QT_TRANSLATE_NOOP("ui::words", "%1: as it stands there")).arg(name);
  if (rows.size() == 1) return QStringLiteral("%1 %2").arg(name, rowText(*leaf, rows.front()).value);
  QStringList values;
  for (const std::size_t row : rows) {
    const RowText text = rowText(*leaf, row);
    values << QStringLiteral("%1 %2").arg(text.name, text.value);
  }
  return QStringLiteral("%1 (%2)").arg(name, values.join(QStringLiteral(", ")));
}

/// Label and value of a field of the project; empty when this project does not use it.
QString Reckoner::fieldInput(std::string_view id) const {
  const core::Field& field = core::field(id);
  const std::size_t count = field.applies(project_) ? core::rowCount(field, project_) : 0;
  QStringList values;
  for (std::size_t row = 0; row < count; ++row) {
    const core::FieldValue value = field.get(project_, row);
    if (!isEntered(value)) continue;
    values << (id == "water.beds[].crop" ? cropName(std::get<std::string>(value))
                                         : fieldValueText(field, value, format_));
  }
  if (values.isEmpty()) return {};
  const bool are_same = values.count(values.front()) == values.size();
  if (!are_same && values.size() > 2 * static_cast<qsizetype>(kMostInputs))
    return say(QT_TRANSLATE_NOOP("ui::words", "%1: as entered")).arg(fieldLabel(id));
  if (are_same) return QStringLiteral("%1 %2").arg(fieldLabel(id), values.front());
  return QStringLiteral("%1 (%2)").arg(fieldLabel(id), values.join(QStringLiteral(", ")));
}

/// Of a field's default while it stands, else the user.
std::string_view Reckoner::fieldSource(std::string_view id) const {
  const core::Field& field = core::field(id);
  const bool is_single = core::listOf(field) == nullptr && field.applies(project_);
  if (!is_single || !field.applies(blank_)) return "user";
  return field.get(project_, 0) == field.get(blank_, 0) ? field.source : "user";
}

/// "=outlet.>delivery.field.outlet>.head".
std::string_view Reckoner::figureSource(std::string_view wanted) const {
  const std::vector<std::string> parts = split(wanted, '>');
  const auto figure = core::hydraulics::figure(parts.at(0) + token(parts.at(1)) + parts.at(2));
  return figure ? core::source(figure->source).key : "own";
}

std::string_view Reckoner::sourceOf(const ReckoningEntry& entry) const {
  const std::string_view wanted = entry.source;
  if (wanted.starts_with('#')) return fieldSource(wanted.substr(1));
  if (wanted.starts_with('=')) return figureSource(wanted.substr(1));
  const std::string_view id = firstField(entry.inputs);
  if (wanted == "user") return id.empty() ? wanted : fieldSource(id);
  if (!wanted.starts_with("user?")) return wanted;
  const core::Field& field = core::field(id);
  const bool is_there = field.applies(project_) && core::rowCount(field, project_) > 0;
  return is_there && isEntered(field.get(project_, 0)) ? "user" : wanted.substr(5);
}

}  // namespace ui::words
