#pragma once

#include "core/base/field_value.h"
#include "core/base/problem.h"
#include "core/base/unit.h"
#include "core/project/project.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>

namespace core {

enum class FieldKind {
  number,  ///< double
  whole,   ///< whole number, carried as double
  text,    ///< UTF-8 string, at most `most` bytes
  flag,    ///< bool
  choice,  ///< one token of `choices`
  date,    ///< ISO 8601 calendar date, as text "2027-02-15"
};

/// One thing the user can enter. The reader, the writer, the range checks, the editors and the undo text all
/// use this table.
struct Field {
  std::string_view
      id;  ///< place in the project file, "tank.depth_m"; "[]" stands for a row, "lining.coats[].soil"
  FieldKind kind;
  Unit unit;
  double least;             ///< smallest allowed [unit]
  double most;              ///< largest allowed [unit]
  double step;              ///< one step of an editor [unit]
  int decimals;             ///< decimals an editor shows in SI
  std::string_view source;  ///< key of the default's source
  bool required;            ///< the file must hold it (when it applies)
  bool nullable;            ///< may be null: not known, or taken from a table
  std::span<const std::string_view> choices;
  FieldValue (*get)(const Project&, std::size_t row);
  void (*set)(Project&, std::size_t row, const FieldValue&);
  bool (*applies)(const Project&);  ///< false when the present shape or kind does not use it
};

/// All fields, in the order in which they are written.
std::span<const Field> fields();

/// One list whose rows hold fields.
struct List {
  std::string_view id;  ///< place in the project file, "lining.coats"
  std::size_t least, most;
  bool required;  ///< the file must hold it when what holds it is there
  std::size_t (*size)(const Project&);
  void (*resize)(Project&, std::size_t rows);  ///< new rows are blank ones
  bool (*applies)(const Project&);
  bool is_left_out_empty = false;  ///< not written while it has no rows
};

/// All lists of rows.
std::span<const List> lists();

/// The list whose rows hold a field; nothing for a field that stands by itself.
const List* listOf(const Field& field);

/// The field with `id`. @throws std::logic_error when there is none.
const Field& field(std::string_view id);

/// A field and its row, as a path names them.
struct FieldPlace {
  const Field* field;
  std::size_t row;
};

/// The place that a path names; nothing when there is no such field.
std::optional<FieldPlace> placeOfPath(std::string_view path);

/// Path with the row filled in: "lining.coats[1].soil".
std::string pathOf(const Field& field, std::size_t row);

/// Rows a field has in this project: 1, or for a "[]" field the length of its list.
std::size_t rowCount(const Field& field, const Project& project);

/// A value as JSON text, at most 60 bytes and "..." after them; "NaN" and "Infinity" for what JSON cannot
/// hold.
std::string jsonText(const FieldValue& value);

/// `text` cut to at most 60 bytes at the edge of a character, with "..." after it when something was cut off.
std::string shortened(std::string_view text);

/// What a field takes, for Problem::allowed: "number", "whole number", "text", "true|false", the choices, the
/// dates.
std::string allowedText(const Field& field);

/// Problems of one value against the field's own type, range and choices (empty when it is good).
Problems checkValue(const Field& field, std::size_t row, const FieldValue& value);

/// Most corners an outline may have, most rows of lists.
inline constexpr std::size_t kLeastCorners = 3;
inline constexpr std::size_t kMostCorners = 32;
inline constexpr std::size_t kMostCoats = 6;
inline constexpr std::size_t kMostRoutePoints = 60;
inline constexpr std::size_t kMostReadings = 60;
inline constexpr std::size_t kMostBeds = 24;
inline constexpr std::size_t kMostHerds = 16;
inline constexpr std::size_t kMostOwnCrops = 24;
inline constexpr std::size_t kMostClosedDays = 60;
inline constexpr std::size_t kMostWishes = 60;
inline constexpr std::size_t kMostOwnRates = 40;
inline constexpr std::size_t kMostRecords = 200;
inline constexpr std::size_t kMostNotes = 60;
inline constexpr std::size_t kMostPriceItems = 60;
inline constexpr std::size_t kMostLinings = 12;
inline constexpr std::size_t kMostRanges = 9;
inline constexpr std::size_t kMostOptions = 8;
inline constexpr std::size_t kMostChanges = 60;
inline constexpr std::size_t kMostWeatherDays = 80000;
inline constexpr std::size_t kLeastSpotHeights = 3;  // a plane needs three
inline constexpr std::size_t kMostSpotHeights = 100000;
inline constexpr double kMostCoordinate_m = 1000;

}  // namespace core
