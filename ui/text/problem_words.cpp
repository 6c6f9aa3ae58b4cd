#include "ui/text/place_words.h"
#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <cmath>
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
    Entry{"unknown_crop",
          QT_TRANSLATE_NOOP("ui::words",
                            "is neither in the table of crops nor one of your own; choose one, or enter it "
                            "among your own crops")},
    Entry{"bad_day_of_month",
          QT_TRANSLATE_NOOP("ui::words", "is a day that this month does not have; choose an earlier one")},
    Entry{"name_repeated", QT_TRANSLATE_NOOP("ui::words", "stands there already; give each line its own")},
    Entry{"season_too_long",
          QT_TRANSLATE_NOOP("ui::words", "makes the whole season too long; shorten the stages")},
    Entry{"rain_without_wet_days",
          QT_TRANSLATE_NOOP("ui::words",
                            "leaves a month with rain without a wet day; enter on how many days it rains")},
    Entry{"more_wet_days_than_days",
          QT_TRANSLATE_NOOP("ui::words", "is more than the days of this month; enter fewer")},
    Entry{"less_rain_than_wet_days",
          QT_TRANSLATE_NOOP("ui::words",
                            "is too little for the wet days of this month: each has 0.1 mm at least")},
    Entry{"max_below_min",
          QT_TRANSLATE_NOOP("ui::words", "is below the lowest temperature of the same month; check both")},
    Entry{"date_not_later",
          QT_TRANSLATE_NOOP("ui::words", "is not later than the day before it; put the days in order")},
    Entry{"route_not_onward",
          QT_TRANSLATE_NOOP("ui::words",
                            "is not further along the line than the point before it; list the points in the "
                            "order in which the water meets them")},
    Entry{"unknown_pipe",
          QT_TRANSLATE_NOOP("ui::words",
                            "is not in the table of pipes of this grade; choose one that is, or enter the "
                            "bore as measured")},
    Entry{"layer_not_below_its_top",
          QT_TRANSLATE_NOOP("ui::words",
                            "is not deeper than the top of the layer; measure both down from the ground")},
    Entry{"no_working_day",
          QT_TRANSLATE_NOOP("ui::words",
                            "leaves no day to work on; give fewer closed days, or another rest day")},
    Entry{"range_crossed",
          QT_TRANSLATE_NOOP("ui::words",
                            "does not lie in order: low must not be over typical, nor typical over high")},
    Entry{"part_absent",
          QT_TRANSLATE_NOOP("ui::words", "is not part of this project; its rates were left out")},
    Entry{"unknown_field",
          QT_TRANSLATE_NOOP("ui::words",
                            "is no entry that an option can change; take the change out of the option")},
    Entry{"unknown_work", QT_TRANSLATE_NOOP("ui::words", "is not in the table of rates; choose one that is")},
    Entry{"survey_too_few",
          QT_TRANSLATE_NOOP("ui::words", "holds fewer different points than a surface needs")},
    Entry{"survey_collinear",
          QT_TRANSLATE_NOOP("ui::words", "holds points that all lie on one line; survey some beside it")},
    Entry{"survey_conflict",
          QT_TRANSLATE_NOOP("ui::words", "has another height than an earlier point at the same place")},
    Entry{"given_up",
          QT_TRANSLATE_NOOP("ui::words",
                            "could not be joined to a surface, for the work was broken off; try again and "
                            "let it finish")},
    Entry{"survey_duplicate", QT_TRANSLATE_NOOP("ui::words", "repeats an earlier point and is left out")},
    Entry{"survey_spike",
          QT_TRANSLATE_NOOP("ui::words", "stands far above or below the points around it; check its height")},
    Entry{"survey_far", QT_TRANSLATE_NOOP("ui::words", "lies far from all other points; check its place")},
    Entry{"short_form_version",
          QT_TRANSLATE_NOOP("ui::words", "does not begin with a mark that this program knows")},
    Entry{"short_form_check",
          QT_TRANSLATE_NOOP(
              "ui::words",
              "was not copied as it stands, for its last four signs do not fit the rest; compare it "
              "sign by sign")},
    Entry{"short_form_token",
          QT_TRANSLATE_NOOP("ui::words",
                            "holds a part that this program does not know; compare it sign by sign")},
    Entry{"csv_no_header", QT_TRANSLATE_NOOP("ui::words",
                                             "does not name the columns; begin the table with a line such as "
                                             "date,rain_mm,t_min_c,t_max_c")},
    Entry{"csv_column_missing",
          QT_TRANSLATE_NOOP("ui::words",
                            "is not among the columns; add it to the table and to its first line")},
    Entry{"csv_row_cells",
          QT_TRANSLATE_NOOP("ui::words",
                            "does not have as many cells as the first line; look for a mark too many or too "
                            "few between them")},
    Entry{"csv_date_repeated",
          QT_TRANSLATE_NOOP("ui::words", "stands in the table already; keep one line for each day")},
    Entry{"csv_date_backwards",
          QT_TRANSLATE_NOOP("ui::words", "is earlier than the date above it; sort the lines by date")},
    Entry{"csv_max_below_min",
          QT_TRANSLATE_NOOP("ui::words", "is below the lowest temperature of the same day; check both")},
    Entry{"csv_days_missing",
          QT_TRANSLATE_NOOP("ui::words",
                            "comes after days that are left out, which count as gaps of the record")},
    Entry{"unknown_column", QT_TRANSLATE_NOOP("ui::words", "names a column that is not used")},
    Entry{"unknown_key",
          QT_TRANSLATE_NOOP("ui::words", "is not known to this version; it is kept and not used")},
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

int editorDecimals(const core::Problem& problem) {
  const core::Field* const field = fieldAt(problem.path);
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

/// "2001-03-02/2001-03-09": first and last day, which may be the same.
QString daysText(const std::string& days) {
  const QStringList ends = fromCore(days).split(u'/');
  if (ends.size() != 2 || ends[0] == ends[1]) return ends[0];
  return QCoreApplication::translate("ui::words", "%1 to %2").arg(ends[0], ends[1]);
}

/// A column of a table is not kept, unlike a key of the project file.
std::string_view wordsFor(const core::Problem& problem) {
  const bool is_column = problem.code == "unknown_key" && problem.path.starts_with("row:");
  return is_column ? "unknown_column" : std::string_view(problem.code);
}

/// A file that the system would not read or write; the value is the system's reason.
bool isOfFile(const core::Problem& problem) {
  return !problem.path.empty() && (problem.code == "cannot_read" || problem.code == "cannot_write");
}

bool isOfShortForm(const core::Problem& problem) {
  return problem.path.empty() && problem.code.starts_with("short_form_");
}

constexpr std::string_view kSpotHeight = "site.ground.points_m[";

QString textAt(const QString& place, const core::Problem& problem, const Formatter& format) {
  const QString wrong = lookUp(kWrong, wordsFor(problem), "problem");
  if (problem.code == "csv_days_missing")
    return QCoreApplication::translate("ui::words", "%1 %2: %3.").arg(place, wrong, daysText(problem.value));
  const QString found = foundText(problem, format);
  if (problem.allowed.starts_with(kSpotHeight))  // an earlier point at the same place
    return QCoreApplication::translate("ui::words", "%1 %2, %4: found %3.")
        .arg(place, wrong, found, placeText(problem.allowed, format));
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

}  // namespace

QString problemText(const core::Problem& problem, const Formatter& format) {
  if (isOfFile(problem)) {
    return QCoreApplication::translate("ui::words", "%1 %2: %3.")
        .arg(fromCore(problem.path), lookUp(kWrong, problem.code, "problem"), fromCore(problem.value));
  }
  const QString place = isOfShortForm(problem)
                            ? QCoreApplication::translate("ui::words", "The design on one line")
                            : placeText(problem.path, format);
  return textAt(place, problem, format);
}

QString surveyProblemText(const core::Problem& problem, const Formatter& format) {
  if (!problem.path.empty()) return problemText(problem, format);
  return textAt(QCoreApplication::translate("ui::words", "The table of spot heights"), problem, format);
}

QString tableProblemText(const core::Problem& problem, const Formatter& format) {
  if (!problem.path.empty()) return problemText(problem, format);
  return textAt(QCoreApplication::translate("ui::words", "The weather table"), problem, format);
}

}  // namespace ui::words
