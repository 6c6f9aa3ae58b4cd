#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>

namespace ui::words {
namespace {

constexpr std::array kWrong{
    Entry{"cannot_read", QT_TRANSLATE_NOOP("ui::words", "cannot be read")},
    Entry{"cannot_write",
          QT_TRANSLATE_NOOP("ui::words", "cannot be written; what was there before is untouched")},
    Entry{"too_large", QT_TRANSLATE_NOOP("ui::words", "is too large, in bytes")},
    Entry{"not_json", QT_TRANSLATE_NOOP("ui::words", "is not JSON from this line and column on")},
    Entry{"too_deep", QT_TRANSLATE_NOOP("ui::words", "has too many levels of brackets")},
    Entry{"not_utf8", QT_TRANSLATE_NOOP("ui::words", "is not UTF-8 text from this line and column on")},
    Entry{"not_a_project", QT_TRANSLATE_NOOP("ui::words", "is not a Tankwright project")},
    Entry{"unknown_version",
          QT_TRANSLATE_NOOP("ui::words", "is of a version that this program does not know")},
    Entry{"missing", QT_TRANSLATE_NOOP("ui::words", "is missing")},
    Entry{"wrong_type", QT_TRANSLATE_NOOP("ui::words", "is of the wrong kind")},
    Entry{"not_finite", QT_TRANSLATE_NOOP("ui::words", "is not a finite number")},
    Entry{"out_of_range", QT_TRANSLATE_NOOP("ui::words", "is outside the allowed range")},
    Entry{"unknown_choice", QT_TRANSLATE_NOOP("ui::words", "is not one of the choices")},
    Entry{"too_long", QT_TRANSLATE_NOOP("ui::words", "is too long, in bytes of UTF-8")},
    Entry{"bad_date", QT_TRANSLATE_NOOP("ui::words", "is not a calendar date written year-month-day")},
    Entry{"duplicate_key", QT_TRANSLATE_NOOP("ui::words", "is given twice")},
    Entry{"too_few", QT_TRANSLATE_NOOP("ui::words", "has too few entries")},
    Entry{"too_many", QT_TRANSLATE_NOOP("ui::words", "has too many entries")},
    Entry{"outline_clockwise",
          QT_TRANSLATE_NOOP("ui::words", "runs clockwise; list the corners anticlockwise")},
    Entry{"outline_self_touching", QT_TRANSLATE_NOOP("ui::words", "touches or crosses itself")},
    Entry{"outline_not_convex",
          QT_TRANSLATE_NOOP("ui::words", "is bent inward at this corner; every corner must point outward")},
    Entry{"freeboard_not_below_rim",
          QT_TRANSLATE_NOOP("ui::words",
                            "puts the overflow level at or below the clear floor; it must be less than the "
                            "clear depth")},
    Entry{"dead_depth_not_below_full",
          QT_TRANSLATE_NOOP("ui::words",
                            "reaches the overflow level; it must be less than the clear depth without the "
                            "freeboard")},
    Entry{"coats_thicker_than_tank",
          QT_TRANSLATE_NOOP("ui::words", "make a lining thicker than the clear inside of the tank")},
    Entry{"rim_outline_vanishes",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "leaves no clear floor: the size at the rim is too small for this depth and batter")},
    Entry{"corner_radius_too_large",
          QT_TRANSLATE_NOOP("ui::words", "does not fit into the corners of the clear floor")},
    Entry{"corner_radius_too_small",
          QT_TRANSLATE_NOOP("ui::words",
                            "is too small: with this batter the corners would vanish at the floor")},
    Entry{"cove_too_large",
          QT_TRANSLATE_NOOP("ui::words", "does not fit between the clear floor and the rim")},
    Entry{"mix_without_filler",
          QT_TRANSLATE_NOOP("ui::words", "has neither soil nor sand; give at least one of them some parts")},
    Entry{"pit_floor_vanishes", QT_TRANSLATE_NOOP("ui::words", "leaves no pit floor to stand on")},
    Entry{"unknown_key",
          QT_TRANSLATE_NOOP("ui::words", "is not known to this version; it is kept and not used")},
};

constexpr std::array kPlaces{
    Entry{"", QT_TRANSLATE_NOOP("ui::words", "The project file")},
    Entry{"format", QT_TRANSLATE_NOOP("ui::words", "Format mark")},
    Entry{"version", QT_TRANSLATE_NOOP("ui::words", "Version of the format")},
    Entry{"site", QT_TRANSLATE_NOOP("ui::words", "Site")},
    Entry{"site.ground", QT_TRANSLATE_NOOP("ui::words", "Ground")},
    Entry{"site.ground.points_m", QT_TRANSLATE_NOOP("ui::words", "Spot heights")},
    Entry{"site.edge", QT_TRANSLATE_NOOP("ui::words", "Terrace edge")},
    Entry{"tank", QT_TRANSLATE_NOOP("ui::words", "Tank")},
    Entry{"tank.outline_m", QT_TRANSLATE_NOOP("ui::words", "Clear outline")},
    Entry{"lining", QT_TRANSLATE_NOOP("ui::words", "Lining")},
    Entry{"lining.coats", QT_TRANSLATE_NOOP("ui::words", "Coats")},
    Entry{"lining.customary_bill", QT_TRANSLATE_NOOP("ui::words", "Customary bill")},
    Entry{"practice", QT_TRANSLATE_NOOP("ui::words", "Recommended by builders")},
    Entry{"works", QT_TRANSLATE_NOOP("ui::words", "Labour and dates")},
};

constexpr std::array kAllowed{
    Entry{"number", QT_TRANSLATE_NOOP("ui::words", "a number")},
    Entry{"whole number", QT_TRANSLATE_NOOP("ui::words", "a whole number")},
    Entry{"text", QT_TRANSLATE_NOOP("ui::words", "text")},
    Entry{"list", QT_TRANSLATE_NOOP("ui::words", "a list")},
    Entry{"object", QT_TRANSLATE_NOOP("ui::words", "a group in braces")},
    Entry{"convex", QT_TRANSLATE_NOOP("ui::words", "all corners pointing outward")},
    Entry{"anticlockwise", QT_TRANSLATE_NOOP("ui::words", "corners listed anticlockwise")},
    Entry{"not self-touching", QT_TRANSLATE_NOOP("ui::words", "no corner given twice, no sides crossing")},
};

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

const core::Field* fieldOf(const std::string& id) {
  const auto all = core::fields();
  const auto found = std::ranges::find(all, id, &core::Field::id);
  return found == all.end() ? nullptr : &*found;
}

/// Name of a place without its path; empty when there is no word for it.
QString placeName(const Place& place, const Formatter& format) {
  const std::string list = place.id.substr(0, place.id.find('['));
  const int number = place.row.value_or(0) + 1;
  if (fieldOf(place.id)) {
    const QString label = fieldLabel(place.id);
    if (!place.row) return label;
    return QCoreApplication::translate("ui::words", "Coat %1: %2").arg(format.integer(number), label);
  }
  if (!has(kPlaces, list)) return {};
  if (!place.row) return list == place.id ? lookUp(kPlaces, list, "place") : QString();
  if (list == "lining.coats")
    return QCoreApplication::translate("ui::words", "Coat %1").arg(format.integer(number));
  return QCoreApplication::translate("ui::words", "%1, entry %2")
      .arg(lookUp(kPlaces, list, "place"), format.integer(number));
}

int editorDecimals(const core::Problem& problem) {
  const core::Field* const field = fieldOf(placeOf(problem.path).id);
  if (field) return field->decimals;
  return problem.unit == core::Unit::metre ? 2 : 0;
}

QString allowedTokens(const std::string& allowed) {
  if (const auto dots = allowed.find(".."); dots != std::string::npos) {
    return QCoreApplication::translate("ui::words", "%1 to %2")
        .arg(fromCore(allowed.substr(0, dots)), fromCore(allowed.substr(dots + 2)));
  }
  QStringList items;
  for (const QString& token : fromCore(allowed).split(u'|', Qt::SkipEmptyParts)) {
    const std::string id = token.toStdString();
    items << (has(kAllowed, id) ? lookUp(kAllowed, id, "kind") : token);
  }
  return orList(items);
}

QString allowedText(const core::Problem& problem, const Formatter& format) {
  const QString range =
      rangeText({problem.least, problem.most, problem.unit, editorDecimals(problem)}, format);
  const bool range_says_it = !range.isEmpty() && problem.code != "wrong_type" && problem.code != "not_finite";
  if (range_says_it || problem.allowed.empty()) return range;
  const QString kind = allowedTokens(problem.allowed);
  if (range.isEmpty()) return kind;
  return QCoreApplication::translate("ui::words", "%1, %2").arg(kind, range);
}

/// The value as found; in feet and inches a length is also given that way, since the file holds metres.
QString foundText(const core::Problem& problem, const Formatter& format) {
  const QString raw = fromCore(problem.value);
  bool is_number = false;
  const double value = raw.toDouble(&is_number);
  if (!is_number || problem.unit == core::Unit::none || !std::isfinite(value)) return raw;
  if (format.system() == UnitSystem::metric || std::abs(value) > 1e6) return raw;
  const QString shown = format.quantity(value, problem.unit, decimalsFor(value, editorDecimals(problem)));
  return QCoreApplication::translate("ui::words", "%1 in the file, %2").arg(raw, shown);
}

/// A file that the system would not read or write; the value is the system's reason.
bool isOfFile(const core::Problem& problem) {
  return !problem.path.empty() && (problem.code == "cannot_read" || problem.code == "cannot_write");
}

}  // namespace

QString placeText(std::string_view path, const Formatter& format) {
  const QString name = placeName(placeOf(path), format);
  if (path.empty()) return name;
  const QString where = fromCore(path);
  return name.isEmpty() ? where : QCoreApplication::translate("ui::words", "%1 (%2)").arg(name, where);
}

QString problemText(const core::Problem& problem, const Formatter& format) {
  const QString wrong = lookUp(kWrong, problem.code, "problem");
  if (isOfFile(problem)) {
    return QCoreApplication::translate("ui::words", "%1 %2: %3.")
        .arg(fromCore(problem.path), wrong, fromCore(problem.value));
  }
  const QString place = placeText(problem.path, format);
  const QString found = foundText(problem, format);
  const QString allowed = allowedText(problem, format);
  if (found.isEmpty() && allowed.isEmpty())
    return QCoreApplication::translate("ui::words", "%1 %2.").arg(place, wrong);
  if (allowed.isEmpty())
    return QCoreApplication::translate("ui::words", "%1 %2: found %3.").arg(place, wrong, found);
  if (found.isEmpty())
    return QCoreApplication::translate("ui::words", "%1 %2: allowed %3.").arg(place, wrong, allowed);
  return QCoreApplication::translate("ui::words", "%1 %2: found %3; allowed %4.")
      .arg(place, wrong, found, allowed);
}

}  // namespace ui::words
