#include "ui/handouts/water_inputs.h"

#include "core/project/fields.h"
#include "core/water/figures.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <ranges>
#include <set>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Field;
using core::FieldValue;
using core::Figure;

constexpr std::string_view kUser = "user";

QString fieldText(const Field& field, const FieldValue& value, const Formatter& format) {
  if (const auto* number = std::get_if<double>(&value)) return valueOf(field.id, *number, format);
  return words::choiceLabel(field.id, std::get<std::string>(value));  // no text stands by itself
}

/// The default's source when the value is the default, else the user; nothing at all has no source.
std::string_view sourceOf(const Field& field, const FieldValue& value) {
  if (value == FieldValue(0.0)) return kUser;
  core::Project blank;
  blank.water.emplace();
  return field.get(blank, 0) == value ? field.source : kUser;
}

/// Whether a part of the water plays a role, by the start of its fields' names.
bool hasPart(std::string_view id, const core::Water& water) {
  if (id.starts_with("water.roof.")) return water.roof.area_m2 > 0 || id == "water.roof.area_m2";
  if (id.starts_with("water.ground.")) return water.ground.area_m2 > 0 || id == "water.ground.area_m2";
  if (id == "water.l_per_person_day") return water.people > 0;
  const bool is_daily = water.climate.kind == core::ClimateKind::daily;
  if (id == "water.climate.gaps") return is_daily;
  constexpr std::array kMonthly{"water.climate.rain_cv_percent", "water.climate.years", "water.climate.seed"};
  return !is_daily || std::ranges::find(kMonthly, id) == kMonthly.end();
}

/// Whether a field stands by itself and has a part in the balance.
bool isUsed(const Field& field, const core::Water& water) {
  if (core::listOf(field)) return false;
  if (field.id == "site.latitude_deg" || field.id == "site.elevation_m") return true;
  return field.id.starts_with("water.") && hasPart(field.id, water);
}

std::vector<Cell> inputRow(const Field& field, const Content& content, SourceList& sources) {
  const FieldValue value = field.get(content.project, 0);
  const QString label = words::fieldLabel(field.id);
  if (!std::holds_alternative<std::monostate>(value))
    return {label, fieldText(field, value, content.format), sources.mark(sourceOf(field, value))};
  if (field.id != "site.elevation_m") return {label, Text::tr("not known"), QString()};
  const QString taken = valueOf(field.id, content.plan.water->made_at.elevation_m, content.format);
  return {label, Text::tr("not known, %1 taken").arg(taken), QString()};
}

/// Figures whose key starts so stand behind a field.
struct Behind {
  std::string_view key_start, field_id;
};

constexpr std::array kBehind{
    Behind{"runoff.roof", "water.roof.runoff"},
    Behind{"runoff.ground", "water.ground.runoff"},
    Behind{"first_flush.roof", "water.roof.first_flush_mm"},
    Behind{"first_flush.ground", "water.ground.first_flush_mm"},
    Behind{"open_water_kc", "water.losses.open_water_kc"},
    Behind{"cover", "water.losses.cover_percent"},
    Behind{"seepage", "water.losses.seepage_mm_day"},
    Behind{"soil_water", "water.soil_water_mm_per_m"},
    Behind{"efficiency", "water.beds[].efficiency_percent"},
    Behind{"animal", "water.animals[].l_per_head_day"},
    Behind{"person", "water.l_per_person_day"},
};

const Field& fieldBehind(const Figure& figure) {
  const auto found = std::ranges::find_if(
      kBehind, [&](const Behind& behind) { return figure.key.starts_with(behind.key_start); });
  return core::field(found->field_id);
}

/// Starts of the keys of the figures that this project has to do with.
std::vector<std::string> startsUsed(const core::Project& project) {
  const core::Water& water = *project.water;
  std::vector<std::string> starts{"open_water_kc", "seepage"};
  if (water.roof.area_m2 > 0) starts.insert(starts.end(), {"runoff.roof", "first_flush.roof"});
  if (water.ground.area_m2 > 0) starts.insert(starts.end(), {"runoff.ground", "first_flush.ground"});
  if (water.losses.cover_percent > 0) starts.emplace_back("cover");
  if (!water.beds.empty()) starts.emplace_back("soil_water");
  for (const core::Bed& bed : water.beds) starts.push_back(core::water::efficiency(bed.method).key);
  for (const core::Herd& herd : water.animals) starts.push_back(core::water::need(herd.kind).key);
  if (water.people > 0) starts.emplace_back("person");
  return starts;
}

QString labelOf(const Figure& figure, const Formatter& format) {
  const QString label = words::fieldLabel(fieldBehind(figure).id), unit = format.unit(figure.unit);
  return unit.isEmpty() ? label : label + QStringLiteral(" (%1)").arg(unit);
}

bool isNamedByField(const Figure& figure) {
  return figure.key.find('.') == std::string::npos || figure.key.starts_with("first_flush");
}

std::vector<Cell> figureRow(const Figure& figure, const Formatter& format, SourceList& sources) {
  std::vector<Cell> row{isNamedByField(figure) ? QString() : words::figureName(figure.key)};
  const std::vector<std::optional<double>> values{figure.low, figure.typical, figure.high};
  for (const auto& value : values) row.emplace_back(format.number(*value, figure.unit, decimalsOf(values)));
  row.emplace_back(sources.mark(figure.source));
  return row;
}

}  // namespace

QString SourceList::mark(std::string_view key) {
  if (key == kUser) return Text::tr("entered");
  auto found = std::ranges::find(keys_, key);
  if (found == keys_.end()) found = keys_.insert(keys_.end(), std::string(key));
  return QStringLiteral("[%1]").arg(format_.integer(static_cast<int>(found - keys_.begin()) + 1));
}

QString SourceList::marks(const std::vector<std::string_view>& keys) {
  QStringList all;
  for (const std::string_view key : keys) all << mark(key);
  all.removeDuplicates();
  return all.join(u' ');
}

void SourceList::print(Sheet& sheet) const {
  std::vector<std::vector<Cell>> rows;
  for (std::size_t k = 0; k < keys_.size(); ++k)
    rows.push_back(
        {QStringLiteral("[%1]").arg(format_.integer(static_cast<int>(k) + 1)), words::sourceText(keys_[k])});
  sheet.heading(Text::tr("Where the figures come from"));
  sheet.table({{Text::tr("No."), 0.07}, {Text::tr("Source, and how well it is founded"), 0.93}}, rows);
}

int decimalsOf(const std::vector<std::optional<double>>& values) {
  int decimals = 0;
  for (const auto& value : values) {
    if (value) decimals = words::decimalsFor(*value, decimals);
  }
  return decimals;
}

QString valueOf(std::string_view field_id, double value, const Formatter& format) {
  const Field& field = core::field(field_id);
  const int least = field.unit == core::Unit::metre ? field.decimals : 0;  // 0: whole feet
  return format.quantity(value, field.unit, words::decimalsFor(value, least));
}

void addSingleInputs(Sheet& sheet, const Content& content, SourceList& sources) {
  std::vector<std::vector<Cell>> rows;
  for (const Field& field : core::fields()) {
    if (!isUsed(field, *content.project.water)) continue;
    rows.push_back(inputRow(field, content, sources));
  }
  sheet.heading(Text::tr("What was entered"));
  sheet.table({{Text::tr("What"), 0.56},
               {Text::tr("Value"), 0.28, CellAlign::right},
               {Text::tr("Source"), 0.16, CellAlign::right}},
              rows);
}

void addUsualFigures(Sheet& sheet, const Content& content, SourceList& sources) {
  const std::vector<std::string> starts = startsUsed(content.project);
  std::vector<std::vector<Cell>> rows;
  std::string_view last;
  for (const Figure& figure : core::water::figures()) {
    const auto starts_key = [&](const std::string& start) { return figure.key.starts_with(start); };
    if (std::ranges::none_of(starts, starts_key)) continue;
    std::vector<Cell> row = figureRow(figure, content.format, sources);
    const std::string_view id = fieldBehind(figure).id;
    if (id != last)
      row[0].text.prepend(labelOf(figure, content.format) + (row[0].text.isEmpty() ? "" : ":\n"));
    last = id;
    rows.push_back(std::move(row));
  }
  sheet.heading(Text::tr("What is usual, to hold the figures against"));
  sheet.table({{Text::tr("Figure"), 0.5},
               {Text::tr("Low"), 0.11, CellAlign::right},
               {Text::tr("Typical"), 0.14, CellAlign::right},
               {Text::tr("High"), 0.11, CellAlign::right},
               {Text::tr("Source"), 0.14, CellAlign::right}},
              rows);
}

}  // namespace ui::handouts
