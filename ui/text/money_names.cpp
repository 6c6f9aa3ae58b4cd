#include "core/project/fields.h"
#include "ui/text/money_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <array>
#include <cmath>

namespace ui::words {
namespace {

constexpr std::array kItems{
    Entry{"cement_bags", QT_TRANSLATE_NOOP("ui::words", "Cement")},
    Entry{"soil", QT_TRANSLATE_NOOP("ui::words", "Soil")},
    Entry{"sand", QT_TRANSLATE_NOOP("ui::words", "Sand")},
    Entry{"stone", QT_TRANSLATE_NOOP("ui::words", "Stone")},
    Entry{"water", QT_TRANSLATE_NOOP("ui::words", "Water")},
    Entry{"sacks", QT_TRANSLATE_NOOP("ui::words", "Sacks")},
    Entry{"labourer", QT_TRANSLATE_NOOP("ui::words", "Labourers")},
    Entry{"mason", QT_TRANSLATE_NOOP("ui::words", "Masons")},
    Entry{"source_pipe", QT_TRANSLATE_NOOP("ui::words", "Pipe from the source")},
    Entry{"field_pipe", QT_TRANSLATE_NOOP("ui::words", "Pipe to the field")},
    Entry{"fence", QT_TRANSLATE_NOOP("ui::words", "Fence")},
    Entry{"porter", QT_TRANSLATE_NOOP("ui::words", "Porters")},
    Entry{"mule", QT_TRANSLATE_NOOP("ui::words", "Mules")},
    Entry{"trolley", QT_TRANSLATE_NOOP("ui::words", "Trolley")},
};

constexpr std::array kUnits{
    Entry{"bag", QT_TRANSLATE_NOOP("ui::words", "bag")},
    Entry{"m3", QT_TRANSLATE_NOOP("ui::words", "m³")},
    Entry{"piece", QT_TRANSLATE_NOOP("ui::words", "piece")},
    Entry{"person_day", QT_TRANSLATE_NOOP("ui::words", "person-day")},
    Entry{"m", QT_TRANSLATE_NOOP("ui::words", "m")},
    Entry{"job", QT_TRANSLATE_NOOP("ui::words", "job")},
};

constexpr std::array kOutcomes{
    Entry{"cement_bags", QT_TRANSLATE_NOOP("ui::words", "Bags of cement")},
    Entry{"person_days", QT_TRANSLATE_NOOP("ui::words", "Person-days of work")},
    Entry{"money", QT_TRANSLATE_NOOP("ui::words", "Money")},
    Entry{"fill_days", QT_TRANSLATE_NOOP("ui::words", "Days to fill the tank")},
};

constexpr std::array kWeights{
    Entry{"weight.soil", QT_TRANSLATE_NOOP("ui::words", "weight of loose soil")},
    Entry{"weight.sand", QT_TRANSLATE_NOOP("ui::words", "weight of loose sand")},
    Entry{"weight.stone", QT_TRANSLATE_NOOP("ui::words", "weight of loose stone")},
    Entry{"weight.water", QT_TRANSLATE_NOOP("ui::words", "weight of water")},
    Entry{"weight.sack", QT_TRANSLATE_NOOP("ui::words", "weight of an empty sack")},
    Entry{"weight.pipe", QT_TRANSLATE_NOOP("ui::words", "weight of pipe")},
    Entry{"weight.fence", QT_TRANSLATE_NOOP("ui::words", "weight of fence")},
};

/// Name of a choice by its place among those of its field.
template <class Choice>
QString choiceName(std::string_view field_id, Choice choice) {
  return choiceLabel(field_id, core::field(field_id).choices[static_cast<std::size_t>(choice)]);
}

constexpr double kLarge = 10;  // amounts from here on are told whole

}  // namespace

QString money(double amount, const core::Project& project, const Formatter& format) {
  constexpr double kCents = 100, kWholeFrom = 100;
  const double cents = std::round(amount * kCents);
  const bool is_whole = std::abs(amount) >= kWholeFrom || std::fmod(cents, kCents) == 0;
  const QString number = format.number(amount, core::Unit::money, is_whole ? 0 : 2);
  if (project.currency.empty()) return number;
  return isolated(fromCore(project.currency) + QChar(QChar::Nbsp) + number);
}

QString priceItemName(std::string_view item) {
  return has(kItems, item) ? lookUp(kItems, item, "item") : fromCore(item);
}

QString costUnitName(std::string_view unit) {
  return lookUp(kUnits, unit, "unit of an item");
}

QString costQuantity(double quantity, std::string_view unit, const Formatter& format) {
  if (unit == "bag" || unit == "piece") return amount(quantity, unit, format);
  if (unit == "person_day") return format.quantity(quantity, core::Unit::person_day, 1);
  return isolated(format.number(quantity, core::Unit::none, unit == "job" ? 0 : 1) + QChar::Nbsp +
                  costUnitName(unit));
}

QString carrierName(core::Carrier carrier) {
  return choiceName("prices.items[].carried_by", carrier);
}

QString liningName(core::LiningKind lining) {
  return choiceName("prices.linings[].lining", lining);
}

QString rangedInputName(core::RangedInput input) {
  return choiceName("ranges.inputs[].input", input);
}

QString outcomeName(std::string_view outcome) {
  return lookUp(kOutcomes, outcome, "outcome");
}

QString outcomeAmount(double value, std::string_view outcome, const core::Project& project,
                      const Formatter& format) {
  if (outcome == "money") return money(value, project, format);
  if (outcome == "fill_days") return format.quantity(std::round(value), core::Unit::day, 0);
  const bool is_large = std::abs(value) >= kLarge;
  if (outcome == "person_days") return format.quantity(value, core::Unit::person_day, is_large ? 0 : 1);
  if (outcome == "cement_bags") return amount(is_large ? std::round(value) : value, "bag", format);
  return lookUp({}, outcome, "outcome");
}

QString weightName(std::string_view key) {
  return lookUp(kWeights, key, "figure");
}

}  // namespace ui::words
