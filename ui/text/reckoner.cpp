#include "ui/text/reckoner.h"

#include "core/works/records.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <cctype>
#include <iterator>
#include <utility>

namespace ui::words {
namespace {

using core::exchange::PlanLeaf;
using core::exchange::PlanRow;

constexpr std::size_t kMostNumbered = 16, kMostNamed = 32;  // rows that are listed
constexpr std::size_t kMostZeros = 6;                       // of more rows those that are 0 are left out
constexpr const char* kQuantity = "cost.lines[].quantity";

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

std::vector<ReckoningPart> allParts() {
  std::vector<ReckoningPart> all;
  for (const auto make :
       {tankReckonings, liningReckonings, customaryReckonings, labourReckonings, datesReckonings,
        coatsReckonings, waterReckonings, sourceReckonings, pipesReckonings, deliveryReckonings,
        notesReckonings, siteReckonings, moneyReckonings})
    std::ranges::move(make(), std::back_inserter(all));
  return all;
}

/// A new project in which everything is asked.
core::Project blankProject() {
  core::Project blank;
  blank.water.emplace();
  blank.delivery.emplace();
  blank.prices.emplace();
  return blank;
}

template <class Visit>
void eachUse(const ReckoningPart& part, Visit visit) {
  if (part.places.empty()) {
    for (const ReckoningEntry& entry : part.entries) visit(entry, nullptr);
  }
  for (const ReckoningPlace& place : part.places) {
    for (const ReckoningEntry& entry : part.entries) visit(entry, &place);
  }
}

std::string pathOf(const ReckoningEntry& entry, const ReckoningPlace* place) {
  return (place ? std::string(place->start) : std::string()) + std::string(entry.id);
}

}  // namespace

Reckoner::Reckoner(const core::Project& project, const core::Plan& plan, const Formatter& format)
    : project_(core::works::inForce(project, plan.calibration)),
      blank_(blankProject()),
      format_(format),
      has_map_(plan.water.has_value()),
      leaves_(core::exchange::planLeaves(plan)),
      parts_(allParts()) {
  for (const PlanLeaf& leaf : leaves_) by_path_.emplace(leaf.path, &leaf);
  for (const ReckoningPart& part : parts_)
    eachUse(part, [&](const ReckoningEntry& entry, const ReckoningPlace* place) {
      uses_[pathOf(entry, place)].push_back({&entry, place});
    });
}

const PlanLeaf* Reckoner::leafAt(const std::string& path) const {
  const auto found = by_path_.find(path);
  return found == by_path_.end() ? nullptr : found->second;
}

/// A word of the plan that stands by itself; empty when there is none.
std::string Reckoner::token(const std::string& path) const {
  const PlanLeaf* leaf = leafAt(path);
  const auto* text = leaf ? std::get_if<std::string>(&leaf->rows.front().value) : nullptr;
  return text ? *text : std::string();
}

core::Unit Reckoner::unitOf(const std::string& path, const std::string& row) const {
  const auto uses = uses_.find(path);
  if (uses == uses_.end()) return core::Unit::none;
  for (const Use& use : uses->second) {
    if (isRow({{row}, {}}, use.entry->row)) return use.entry->unit;
  }
  return core::Unit::none;
}

RowText Reckoner::rowText(const PlanLeaf& leaf, std::size_t at) const {
  const PlanRow& row = leaf.rows[at];
  const QString name = rowName(leaf.path, row, format_);
  if (leaf.path == kQuantity)
    return {name, costQuantity(std::get<double>(row.value),
                               std::get<std::string>(leafAt("cost.lines[].unit")->rows[at].value), format_)};
  const std::string own = row.names.empty() ? std::string() : row.names.back();
  return {name, rowValue(leaf.path, row, unitOf(leaf.path, own), project_, format_)};
}

/// "365 values, 2.10 m³ to 28.0 m³": least and most, of days the first and the last.
QString Reckoner::ends(const PlanLeaf& leaf, const std::vector<std::size_t>& rows) const {
  const auto less = [&](std::size_t a, std::size_t b) {
    const auto* of_a = std::get_if<double>(&leaf.rows[a].value);
    const auto* of_b = std::get_if<double>(&leaf.rows[b].value);
    return of_a && of_b ? *of_a < *of_b : a < b;
  };
  const auto [least, most] = std::ranges::minmax_element(rows, less);
  return say(QT_TRANSLATE_NOOP("ui::words", "%1 values, %2 to %3"))
      .arg(format_.integer(static_cast<int>(rows.size())), rowText(leaf, *least).value,
           rowText(leaf, *most).value);
}

QString Reckoner::valueOf(const PlanLeaf& leaf, const std::vector<std::size_t>& rows) const {
  std::vector<RowText> texts;
  bool are_named = true;
  for (const std::size_t row : rows) {
    const auto& names = leaf.rows[row].names;
    are_named = are_named && (names.empty() || !std::isdigit(static_cast<unsigned char>(names.back()[0])));
  }
  if (rows.size() > (are_named ? kMostNamed : kMostNumbered)) return ends(leaf, rows);
  const auto is_nothing = [&](std::size_t row) { return leaf.rows[row].value == core::FieldValue(0.0); };
  const bool are_many = rows.size() > kMostZeros && !std::ranges::all_of(rows, is_nothing);
  bool has_left_out = false;
  for (const std::size_t row : rows) {
    if (are_many && is_nothing(row))
      has_left_out = true;
    else
      texts.push_back(rowText(leaf, row));
  }
  const QString text = listed(texts);
  return has_left_out ? say(QT_TRANSLATE_NOOP("ui::words", "%1; all others 0")).arg(text) : text;
}

void Reckoner::add(std::string_view group, std::vector<Reckoning>& to) const {
  for (const ReckoningPart& part : parts_) {
    if (part.group != group) continue;
    eachUse(part, [&](const ReckoningEntry& entry, const ReckoningPlace* place) {
      addEntry(part, {&entry, place}, to);
    });
  }
}

std::vector<std::string> reckoningIds() {
  std::vector<std::string> ids;
  for (const ReckoningPart& part : allParts())
    eachUse(part, [&](const ReckoningEntry& entry, const ReckoningPlace* place) {
      ids.push_back(pathOf(entry, place));
    });
  return ids;
}

}  // namespace ui::words
