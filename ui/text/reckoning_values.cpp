#include "ui/text/reckoning_values.h"

#include "ui/text/money_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <QDate>
#include <QRegularExpression>
#include <array>
#include <cmath>
#include <variant>

namespace ui::words {
namespace {

using core::Unit;
using core::exchange::PlanRow;

constexpr int kMostDecimals = 6;
constexpr double kNear = 0.005;  // share by which a number may be off as shown
constexpr double kSmallest = 1e-5;

constexpr std::array kStates{
    Entry{"empty", QT_TRANSLATE_NOOP("ui::words", "tank empty")},
    Entry{"full_leaking", QT_TRANSLATE_NOOP("ui::words", "tank full and leaking")},
};

int usualDecimals(Unit unit) {
  switch (unit) {
    case Unit::metre:
    case Unit::square_metre:
    case Unit::cubic_metre:
    case Unit::factor:
      return 2;
    case Unit::kilogram:
    case Unit::person_day:
    case Unit::litre_per_minute:
    case Unit::hour:
    case Unit::degree:
    case Unit::kilopascal:
      return 1;
    default:
      return 0;
  }
}

bool isShown(double value, int decimals) {
  const double scale = std::pow(10.0, decimals);
  return std::abs(std::round(value * scale) / scale - value) <= kNear * std::abs(value);
}

/// Less than all is never told as 100 %.
bool isHonest(double value, int decimals, Unit unit) {
  constexpr double kAll = 100;
  const double scale = std::pow(10.0, decimals);
  return unit != Unit::percent || value == kAll || std::round(value * scale) / scale != kAll;
}

QString dayText(const QString& text, const Formatter& format) {
  const QDate day = QDate::fromString(text, Qt::ISODate);
  if (day.isValid()) return format.date(std::chrono::year(day.year()) / day.month() / day.day());
  static const QRegularExpression of_year(QStringLiteral("^(\\d\\d)-(\\d\\d)$"));
  const auto match = of_year.match(text);
  return match.hasMatch() ? format.dayOfYear(match.captured(1).toInt(), match.captured(2).toInt()) : text;
}

bool isMonth(std::string_view path) {
  return path.ends_with(".month") || path.ends_with("first_month") || path.ends_with("dry_months[]");
}

QString numberText(const std::string& path, const PlanRow& row, double value, Unit unit,
                   const core::Project& project, const Formatter& format) {
  if (isMonth(path)) return format.monthName(static_cast<int>(value));
  if (path.ends_with("years_left_out[]")) return format.year(static_cast<int>(value));
  if (path.starts_with("ranges.spreads[].") && row.names.size() == 1)
    return outcomeAmount(value, row.names.front(), project, format);
  if (unit == Unit::money) return money(value, project, format);
  return enoughDecimals(value, unit, format);
}

using NameOf = QString (*)(std::string_view);

struct RowNames {
  std::string_view start;
  NameOf name;
};

QString pegName(std::string_view peg) {
  return fromCore(peg);
}

QString coatName(std::string_view number) {
  return layerName("coat_" + std::string(number));
}

QString stateName(std::string_view state) {
  return has(kStates, state) ? lookUp(kStates, state, "state") : fromCore(state);
}

QString lineName(std::string_view id) {
  return materialName(id);
}

template <const char* Field>
QString choiceName(std::string_view token) {
  return choiceLabel(Field, token);
}

constexpr char kLining[] = "prices.linings[].lining";
constexpr char kInput[] = "ranges.inputs[].input";
constexpr char kLevelBy[] = "site.platform.level_by";

constexpr std::array kRowNames{
    RowNames{"layers[]", layerName},
    RowNames{"materials[]", materialName},
    RowNames{"coats[]", coatName},
    RowNames{"batches[]", coatName},
    RowNames{"part_bag_batches[]", coatName},
    RowNames{"coat_crews[]", coatName},
    RowNames{"weather_window.drying[]", coatName},
    RowNames{"customary.cement.", coatName},
    RowNames{"customary.lines[]", lineName},
    RowNames{"labour[]", taskName},
    RowNames{"schedule[]", taskName},
    RowNames{"links[]", taskName},
    RowNames{"setting_out.levels[]", levelName},
    RowNames{"setting_out.ties[]", pegName},
    RowNames{"cost.lines[]", priceItemName},
    RowNames{"cost.linings[]", choiceName<kLining>},
    RowNames{"ranges.spreads[].drivers[]", choiceName<kInput>},
    RowNames{"ranges.spreads[]", outcomeName},
    RowNames{"site.choices[]", choiceName<kLevelBy>},
    RowNames{"site.stability.cuts[]", strengthName},
    RowNames{"site.stability.slips[]", stateName},
    RowNames{"water.beds[]", cropName},
};

}  // namespace

bool isRow(const PlanRow& row, std::string_view wanted) {
  if (wanted.empty()) return true;
  if (row.names.empty()) return false;
  if (wanted.ends_with('*')) return row.names.back().starts_with(wanted.substr(0, wanted.size() - 1));
  return row.names.back() == wanted;
}

QString enoughDecimals(double value, Unit unit, const Formatter& format) {
  if (value != 0 && std::abs(value) < kSmallest) return format.locale().toString(value, 'g', 2);
  int decimals = usualDecimals(unit);
  while (decimals < kMostDecimals && !(isShown(value, decimals) && isHonest(value, decimals, unit)))
    ++decimals;
  return format.quantity(value, unit, decimals);
}

QString rowValue(const std::string& path, const PlanRow& row, Unit unit, const core::Project& project,
                 const Formatter& format) {
  if (const double* number = std::get_if<double>(&row.value))
    return numberText(path, row, *number, unit, project, format);
  if (const auto* text = std::get_if<std::string>(&row.value)) return dayText(fromCore(*text), format);
  return {};
}

QString rowName(const std::string& path, const PlanRow& row, const Formatter& format) {
  if (row.names.empty()) return {};
  const std::string& name = row.names.back();
  if (path.starts_with("water.months[]") || path.starts_with("water.readings[].m"))
    return format.monthName(std::stoi(name));
  if (path.find(".fittings[]") != std::string::npos) return figureName(name);
  for (const RowNames& rows : kRowNames) {
    if (!path.starts_with(rows.start)) continue;
    const std::size_t to = name.find('>');
    if (to == std::string::npos) return rows.name(name);
    return QStringLiteral("%1 – %2").arg(rows.name(name.substr(0, to)), rows.name(name.substr(to + 1)));
  }
  return dayText(fromCore(name), format);
}

QString listed(const std::vector<RowText>& rows) {
  QStringList all;
  for (const RowText& row : rows)
    all << (row.name.isEmpty() ? row.value : row.name + QStringLiteral(": ") + row.value);
  return all.join(QStringLiteral("; "));
}

}  // namespace ui::words
