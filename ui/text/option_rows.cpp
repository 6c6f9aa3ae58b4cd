#include "core/project/fields.h"
#include "ui/text/money_words.h"
#include "ui/text/place_words.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <QDate>
#include <QStringList>
#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ui::words {
namespace {

using core::FieldValue;
using core::OptionResult;
using core::Project;
using Options = std::vector<OptionResult>;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

const QString kNone = QStringLiteral("–");

QString textOf(const core::Field& field, const std::string& text, const Formatter& format) {
  if (field.kind == core::FieldKind::choice) return choiceLabel(field.id, text);
  if (field.kind == core::FieldKind::date) {
    const QDate day = QDate::fromString(fromCore(text), Qt::ISODate);
    if (day.isValid()) return format.date(std::chrono::year(day.year()) / day.month() / day.day());
  }
  return text.empty() ? kNone : fromCore(text);
}

std::vector<std::string> pathsOf(const Options& options) {
  std::vector<std::string> paths;
  for (const OptionResult& option : options) {
    for (const core::FieldChange& change : option.changes) {
      if (std::ranges::find(paths, change.path) == paths.end()) paths.push_back(change.path);
    }
  }
  return paths;
}

/// What an option has in a place: its change, else what the project has.
FieldValue valueIn(const OptionResult& option, const std::string& path, const FieldValue& in_project) {
  const auto found = std::ranges::find(option.changes, path, &core::FieldChange::path);
  return found == option.changes.end() ? in_project : found->value;
}

OptionRow changeRow(const Project& project, const Options& options, const std::string& path,
                    const Formatter& format) {
  const QString name = placeName(path, format);
  OptionRow row{name.isEmpty() ? fromCore(path) : name, {}, {}, true};
  const auto place = core::placeOfPath(path);
  const bool is_there = place && place->row < core::rowCount(*place->field, project);
  const FieldValue own = is_there ? place->field->get(project, place->row) : FieldValue{};
  for (const OptionResult& option : options) {
    const FieldValue value = valueIn(option, path, own);
    row.values << (is_there ? fieldValueText(*place->field, value, format) : kNone);
    row.differs.push_back(value != own);
  }
  return row;
}

using Cell = std::optional<QString> (*)(const OptionResult&, const Project&, const Formatter&);

struct Outcome {
  const char* name;
  Cell cell;
};

std::optional<QString> litresOf(const std::optional<double>& volume_m3, const Formatter& format) {
  return volume_m3 ? std::optional(format.litres(*volume_m3)) : std::nullopt;
}

std::optional<QString> quantityOf(const std::optional<double>& value, core::Unit unit, int decimals,
                                  const Formatter& format) {
  return value ? std::optional(format.quantity(*value, unit, decimals)) : std::nullopt;
}

std::optional<QString> moneyOf(const std::optional<double>& amount, const Project& project,
                               const Formatter& format) {
  return amount ? std::optional(money(*amount, project, format)) : std::nullopt;
}

std::optional<QString> dateOf(const std::optional<std::chrono::year_month_day>& day,
                              const Formatter& format) {
  return day ? std::optional(format.date(*day)) : std::nullopt;
}

std::optional<QString> sizeOf(const OptionResult& o, const Project&, const Formatter& format) {
  if (!o.length_m || !o.width_m || !o.depth_m) return std::nullopt;
  const auto metres = [&](double length_m) { return format.quantity(length_m, core::Unit::metre, 2); };
  return say(QT_TRANSLATE_NOOP("ui::words", "%1 × %2 × %3"))
      .arg(metres(*o.length_m), metres(*o.width_m), metres(*o.depth_m));
}

std::optional<QString> fault(const OptionResult& o, const Project&, const Formatter& format) {
  return o.problems.empty() ? std::nullopt : std::optional(problemText(o.problems.front(), format));
}

std::optional<QString> findingsOf(const OptionResult& o, int count, const Formatter& format) {
  return o.problems.empty() ? std::optional(format.integer(count)) : std::nullopt;
}

using core::Unit;
using R = OptionResult;
using P = Project;
using F = Formatter;

// clang-format off
constexpr std::array kOutcomes{
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Cannot be built"), fault},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Clear floor and depth"), sizeOf},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Holds when full"), [](const R& o, const P&, const F& f) { return litresOf(o.full_volume_m3, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Can be drawn"), [](const R& o, const P&, const F& f) { return litresOf(o.usable_volume_m3, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Years in ten with water all year"), [](const R& o, const P&, const F& f) {
      return o.years_in_ten ? std::optional(yearsInTenText(*o.years_in_ten, f)) : std::nullopt; }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Days without water in a mean year"), [](const R& o, const P&, const F& f) { return quantityOf(o.dry_days_mean, Unit::day, 1, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Drawn in the dry months of a mean year"), [](const R& o, const P&, const F& f) { return litresOf(o.delivered_m3, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Cost"), [](const R& o, const P& p, const F& f) { return moneyOf(o.cost, p, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Of it in money"), [](const R& o, const P& p, const F& f) { return moneyOf(o.cash, p, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Cost for each m³ stored"), [](const R& o, const P& p, const F& f) { return moneyOf(o.per_m3_stored, p, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Bags of cement"), [](const R& o, const P&, const F& f) { return quantityOf(o.cement_bags, Unit::piece, 0, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Sand"), [](const R& o, const P&, const F& f) { return quantityOf(o.sand_m3, Unit::cubic_metre, 1, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Soil, sieved"), [](const R& o, const P&, const F& f) { return quantityOf(o.soil_m3, Unit::cubic_metre, 1, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Stone, loose"), [](const R& o, const P&, const F& f) { return quantityOf(o.stone_m3, Unit::cubic_metre, 1, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Ground to dig for the pit"), [](const R& o, const P&, const F& f) { return quantityOf(o.pit_volume_m3, Unit::cubic_metre, 1, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Person-days of work"), [](const R& o, const P&, const F& f) { return quantityOf(o.person_days, Unit::person_day, 1, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "People on a coat, at most"), [](const R& o, const P&, const F& f) {
      return o.people_on_coat ? std::optional(f.integer(*o.people_on_coat)) : std::nullopt; }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Works begin"), [](const R& o, const P&, const F& f) { return dateOf(o.start, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Works end"), [](const R& o, const P&, const F& f) { return dateOf(o.finish, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Findings that say stop"), [](const R& o, const P&, const F& f) { return findingsOf(o, o.stops, f); }},
    Outcome{QT_TRANSLATE_NOOP("ui::words", "Findings that ask for caution"), [](const R& o, const P&, const F& f) { return findingsOf(o, o.cautions, f); }},
};
// clang-format on

/// Nothing when no option has it.
std::optional<OptionRow> outcomeRow(const Outcome& outcome, const Project& project, const Options& options,
                                    const Formatter& format) {
  OptionRow row{say(outcome.name), {}, {}, false};
  bool any = false;
  for (const OptionResult& option : options) {
    const std::optional<QString> cell = outcome.cell(option, project, format);
    any = any || cell;
    row.values << cell.value_or(kNone);
    row.differs.push_back(row.values.back() != row.values.front());
  }
  return any ? std::optional(row) : std::nullopt;
}

}  // namespace

QString fieldValueText(const core::Field& field, const FieldValue& value, const Formatter& format) {
  if (const double* number = std::get_if<double>(&value))
    return format.quantity(*number, field.unit, decimalsFor(*number, field.decimals));
  if (const bool* flag = std::get_if<bool>(&value))
    return *flag ? say(QT_TRANSLATE_NOOP("ui::words", "yes")) : say(QT_TRANSLATE_NOOP("ui::words", "no"));
  if (const std::string* text = std::get_if<std::string>(&value)) return textOf(field, *text, format);
  return say(QT_TRANSLATE_NOOP("ui::words", "not entered"));
}

QString optionTitle(const OptionResult& option) {
  const QString letter = fromCore(option.letter);
  if (option.name.empty()) return letter;
  return say(QT_TRANSLATE_NOOP("ui::words", "%1 – %2")).arg(letter, fromCore(option.name));
}

std::vector<OptionRow> optionRows(const Project& project, const Options& options, const Formatter& format) {
  std::vector<OptionRow> rows;
  for (const std::string& path : pathsOf(options)) rows.push_back(changeRow(project, options, path, format));
  for (const Outcome& outcome : kOutcomes) {
    if (auto row = outcomeRow(outcome, project, options, format)) rows.push_back(std::move(*row));
  }
  return rows;
}

}  // namespace ui::words
