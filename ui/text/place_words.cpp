#include "ui/text/place_words.h"

#include "core/project/option_fields.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <charconv>
#include <optional>
#include <string>

namespace ui::words {
namespace {

constexpr std::array kPlaces{
    Entry{"", QT_TRANSLATE_NOOP("ui::words", "The project file")},
    Entry{"format", QT_TRANSLATE_NOOP("ui::words", "Format mark")},
    Entry{"version", QT_TRANSLATE_NOOP("ui::words", "Version of the format")},
    Entry{"site", QT_TRANSLATE_NOOP("ui::words", "Site")},
    Entry{"site.ground", QT_TRANSLATE_NOOP("ui::words", "Ground")},
    Entry{"site.ground.points_m", QT_TRANSLATE_NOOP("ui::words", "Spot heights")},
    Entry{"site.position", QT_TRANSLATE_NOOP("ui::words", "Place of the tank")},
    Entry{"site.platform", QT_TRANSLATE_NOOP("ui::words", "Platform")},
    Entry{"site.edge", QT_TRANSLATE_NOOP("ui::words", "Terrace edge")},
    Entry{"tank", QT_TRANSLATE_NOOP("ui::words", "Tank")},
    Entry{"tank.outline_m", QT_TRANSLATE_NOOP("ui::words", "Clear outline")},
    Entry{"lining", QT_TRANSLATE_NOOP("ui::words", "Lining")},
    Entry{"lining.coats", QT_TRANSLATE_NOOP("ui::words", "Coats")},
    Entry{"lining.customary_bill", QT_TRANSLATE_NOOP("ui::words", "Customary bill")},
    Entry{"practice", QT_TRANSLATE_NOOP("ui::words", "Recommended by builders")},
    Entry{"water", QT_TRANSLATE_NOOP("ui::words", "Water")},
    Entry{"water.source", QT_TRANSLATE_NOOP("ui::words", "Source")},
    Entry{"water.source.months", QT_TRANSLATE_NOOP("ui::words", "Months of the source")},
    Entry{"water.source.readings", QT_TRANSLATE_NOOP("ui::words", "Readings of the source")},
    Entry{"water.roof", QT_TRANSLATE_NOOP("ui::words", "Roof")},
    Entry{"water.ground", QT_TRANSLATE_NOOP("ui::words", "Ground led to the tank")},
    Entry{"water.losses", QT_TRANSLATE_NOOP("ui::words", "Losses")},
    Entry{"water.beds", QT_TRANSLATE_NOOP("ui::words", "Beds")},
    Entry{"water.animals", QT_TRANSLATE_NOOP("ui::words", "Animals")},
    Entry{"water.crops", QT_TRANSLATE_NOOP("ui::words", "Own crops")},
    Entry{"water.climate", QT_TRANSLATE_NOOP("ui::words", "Climate")},
    Entry{"water.climate.months", QT_TRANSLATE_NOOP("ui::words", "Months of the climate")},
    Entry{"water.climate.daily", QT_TRANSLATE_NOOP("ui::words", "Daily record")},
    Entry{"delivery", QT_TRANSLATE_NOOP("ui::words", "Delivery")},
    Entry{"delivery.source", QT_TRANSLATE_NOOP("ui::words", "Line from the source")},
    Entry{"delivery.source.route", QT_TRANSLATE_NOOP("ui::words", "Points of the source line")},
    Entry{"delivery.source.pipe", QT_TRANSLATE_NOOP("ui::words", "Pipe from the source")},
    Entry{"delivery.field", QT_TRANSLATE_NOOP("ui::words", "Line to the field")},
    Entry{"delivery.field.route", QT_TRANSLATE_NOOP("ui::words", "Points of the field line")},
    Entry{"delivery.field.pipe", QT_TRANSLATE_NOOP("ui::words", "Pipe to the field")},
    Entry{"delivery.overflow", QT_TRANSLATE_NOOP("ui::words", "Overflow")},
    Entry{"delivery.spill", QT_TRANSLATE_NOOP("ui::words", "Spill path")},
    Entry{"delivery.silt_trap", QT_TRANSLATE_NOOP("ui::words", "Silt trap")},
    Entry{"delivery.leak_test", QT_TRANSLATE_NOOP("ui::words", "Leak test")},
    Entry{"works", QT_TRANSLATE_NOOP("ui::words", "Labour and dates")},
    Entry{"works.closed", QT_TRANSLATE_NOOP("ui::words", "Closed days")},
    Entry{"works.wishes", QT_TRANSLATE_NOOP("ui::words", "Wishes for tasks")},
    Entry{"works.rates", QT_TRANSLATE_NOOP("ui::words", "Own rates")},
    Entry{"records", QT_TRANSLATE_NOOP("ui::words", "Records")},
    Entry{"records.batches", QT_TRANSLATE_NOOP("ui::words", "Trial batches")},
    Entry{"records.work", QT_TRANSLATE_NOOP("ui::words", "Work measured")},
    Entry{"notes", QT_TRANSLATE_NOOP("ui::words", "Field notes")},
    Entry{"notes.jars", QT_TRANSLATE_NOOP("ui::words", "Jars of soil")},
    Entry{"notes.feel", QT_TRANSLATE_NOOP("ui::words", "Balls and ribbons")},
    Entry{"notes.pit_layers", QT_TRANSLATE_NOOP("ui::words", "Layers of test pits")},
    Entry{"notes.slope", QT_TRANSLATE_NOOP("ui::words", "Settings of the hose level")},
    Entry{"prices", QT_TRANSLATE_NOOP("ui::words", "Prices")},
    Entry{"prices.items", QT_TRANSLATE_NOOP("ui::words", "Price list")},
    Entry{"prices.porter", QT_TRANSLATE_NOOP("ui::words", "Porter")},
    Entry{"prices.mule", QT_TRANSLATE_NOOP("ui::words", "Mule")},
    Entry{"prices.trolley", QT_TRANSLATE_NOOP("ui::words", "Trolley")},
    Entry{"prices.linings", QT_TRANSLATE_NOOP("ui::words", "Linings compared")},
    Entry{"ranges", QT_TRANSLATE_NOOP("ui::words", "Ranges")},
    Entry{"ranges.inputs", QT_TRANSLATE_NOOP("ui::words", "Uncertain figures")},
    Entry{"search", QT_TRANSLATE_NOOP("ui::words", "Limits of the search")},
    Entry{"options", QT_TRANSLATE_NOOP("ui::words", "Options")},
};

/// Rows that have a name of their own; the others are entries of their list.
constexpr std::array kRows{
    Entry{"site.ground.points_m", QT_TRANSLATE_NOOP("ui::words", "Spot height, row %1")},
    Entry{"lining.coats", QT_TRANSLATE_NOOP("ui::words", "Coat %1")},
    Entry{"water.source.readings", QT_TRANSLATE_NOOP("ui::words", "Reading %1")},
    Entry{"water.beds", QT_TRANSLATE_NOOP("ui::words", "Bed %1")},
    Entry{"water.animals", QT_TRANSLATE_NOOP("ui::words", "Animals %1")},
    Entry{"water.crops", QT_TRANSLATE_NOOP("ui::words", "Own crop %1")},
    Entry{"delivery.source.route", QT_TRANSLATE_NOOP("ui::words", "Source line, point %1")},
    Entry{"delivery.field.route", QT_TRANSLATE_NOOP("ui::words", "Field line, point %1")},
    Entry{"works.closed", QT_TRANSLATE_NOOP("ui::words", "Closed days %1")},
    Entry{"works.wishes", QT_TRANSLATE_NOOP("ui::words", "Wish %1")},
    Entry{"works.rates", QT_TRANSLATE_NOOP("ui::words", "Own rate %1")},
    Entry{"records.batches", QT_TRANSLATE_NOOP("ui::words", "Trial batch %1")},
    Entry{"records.work", QT_TRANSLATE_NOOP("ui::words", "Work measured %1")},
    Entry{"notes.jars", QT_TRANSLATE_NOOP("ui::words", "Jar %1")},
    Entry{"notes.feel", QT_TRANSLATE_NOOP("ui::words", "Ball and ribbon %1")},
    Entry{"notes.pit_layers", QT_TRANSLATE_NOOP("ui::words", "Layer %1")},
    Entry{"notes.slope", QT_TRANSLATE_NOOP("ui::words", "Setting %1")},
    Entry{"prices.items", QT_TRANSLATE_NOOP("ui::words", "Price list, line %1")},
    Entry{"prices.linings", QT_TRANSLATE_NOOP("ui::words", "Lining %1")},
    Entry{"ranges.inputs", QT_TRANSLATE_NOOP("ui::words", "Uncertain figure %1")},
};

/// Rows that are the months of a year, January first.
constexpr std::array kMonthRows{
    Entry{"water.source.months", QT_TRANSLATE_NOOP("ui::words", "Source in %1")},
    Entry{"water.climate.months", QT_TRANSLATE_NOOP("ui::words", "Climate of %1")},
};

/// Columns of the table of daily weather.
constexpr std::array kColumns{
    Entry{"date", QT_TRANSLATE_NOOP("ui::words", "date")},
    Entry{"rain_mm", QT_TRANSLATE_NOOP("ui::words", "rain")},
    Entry{"t_min_c", QT_TRANSLATE_NOOP("ui::words", "lowest temperature")},
    Entry{"t_max_c", QT_TRANSLATE_NOOP("ui::words", "highest temperature")},
    Entry{"wind_m_s", QT_TRANSLATE_NOOP("ui::words", "wind")},
    Entry{"humidity_percent", QT_TRANSLATE_NOOP("ui::words", "humidity")},
    Entry{"sun_hours", QT_TRANSLATE_NOOP("ui::words", "sunshine")},
};

constexpr std::string_view kTableRow = "row:";

struct Place {
  std::string id;          ///< with "[]" for a row
  std::optional<int> row;  ///< from 0, the first row named in the path
};

Place placeOf(std::string_view path) {
  Place place;
  for (std::size_t at = 0; at < path.size(); ++at) {
    place.id += path[at];
    if (path[at] != '[') continue;
    int row = 0;
    const auto [end, error] = std::from_chars(path.data() + at + 1, path.data() + path.size(), row);
    if (error != std::errc{}) continue;
    if (!place.row) place.row = row;
    at = static_cast<std::size_t>(end - path.data()) - 1;
  }
  return place;
}

QString rowName(const std::string& list, int row, const Formatter& format) {
  if (has(kMonthRows, list) && row >= 0 && row < static_cast<int>(core::kMonths))
    return lookUp(kMonthRows, list, "row").arg(format.monthName(row + 1, QLocale::LongFormat));
  const QString number = format.integer(row + 1);
  if (has(kRows, list)) return lookUp(kRows, list, "row").arg(number);
  return QCoreApplication::translate("ui::words", "%1, entry %2").arg(lookUp(kPlaces, list, "place"), number);
}

/// What stands in an option: "options[1].changes.tank.depth_m" is its second one's "tank.depth_m".
struct InOption {
  std::size_t option;     ///< from 0, the one after the project itself
  std::string_view rest;  ///< "name", "changes", the path that is changed, or nothing
};

std::optional<InOption> inOption(std::string_view path) {
  constexpr std::string_view kOptions = "options[", kChanges = "changes.";
  if (!path.starts_with(kOptions)) return std::nullopt;
  const char* const end = path.data() + path.size();
  InOption in{};
  const auto read = std::from_chars(path.data() + kOptions.size(), end, in.option);
  if (read.ec != std::errc{} || read.ptr == end || *read.ptr != ']') return std::nullopt;
  in.rest = path.substr(static_cast<std::size_t>(read.ptr - path.data()) + 1);
  if (in.rest.starts_with('.')) in.rest.remove_prefix(1);
  if (in.rest.starts_with(kChanges)) in.rest.remove_prefix(kChanges.size());
  return in;
}

QString optionPlace(const InOption& in, const Formatter& format) {
  const QString option =
      QCoreApplication::translate("ui::words", "Option %1").arg(fromCore(core::optionLetter(in.option + 1)));
  const QString what = in.rest == "name"      ? QCoreApplication::translate("ui::words", "Name")
                       : in.rest == "changes" ? QCoreApplication::translate("ui::words", "Changes")
                                              : placeName(in.rest, format);
  if (in.rest.empty() || what.isEmpty()) return option;
  return QCoreApplication::translate("ui::words", "%1: %2").arg(option, what);
}

}  // namespace

QString placeName(std::string_view path, const Formatter& format) {
  if (const auto in = inOption(path)) return optionPlace(*in, format);
  const Place place = placeOf(path);
  const std::string list = place.id.substr(0, place.id.find('['));
  if (const core::Field* const field = fieldAt(path)) {
    const QString label = fieldLabel(field->id);
    if (!place.row) return label;
    return QCoreApplication::translate("ui::words", "%1: %2").arg(rowName(list, *place.row, format), label);
  }
  if (!has(kPlaces, list)) return {};
  if (!place.row) return list == place.id ? lookUp(kPlaces, list, "place") : QString();
  return rowName(list, *place.row, format);
}

namespace {

/// Name of a line of the weather table, "row:17" or "row:17:rain_mm"; empty for any other path.
QString lineName(std::string_view path, const Formatter& format) {
  if (!path.starts_with(kTableRow)) return {};
  const std::string_view rest = path.substr(kTableRow.size());
  const std::size_t colon = std::min(rest.find(':'), rest.size());
  const int number = numberIn(path.substr(0, kTableRow.size() + colon), kTableRow);
  if (number == 0) return {};
  const QString line =
      QCoreApplication::translate("ui::words", "Line %1 of the table").arg(format.integer(number));
  if (colon == rest.size()) return line;
  const std::string_view column = rest.substr(colon + 1);
  const QString name = has(kColumns, column) ? lookUp(kColumns, column, "column") : fromCore(column);
  return QCoreApplication::translate("ui::words", "%1, %2").arg(line, name);
}

}  // namespace

const core::Field* fieldAt(std::string_view path) {
  if (const auto in = inOption(path)) return fieldAt(in->rest);
  const auto all = core::fields();
  const auto found = std::ranges::find(all, placeOf(path).id, &core::Field::id);
  return found == all.end() ? nullptr : &*found;
}

QString placeText(std::string_view path, const Formatter& format) {
  if (const QString line = lineName(path, format); !line.isEmpty()) return line;
  const QString name = placeName(path, format);
  if (path.empty()) return name;
  const QString where = fromCore(path);
  return name.isEmpty() ? where : QCoreApplication::translate("ui::words", "%1 (%2)").arg(name, where);
}

}  // namespace ui::words
