#pragma once

#include <QString>
#include <span>
#include <string_view>

namespace ui::words {

/// One translatable text and the id it belongs to. `text` is marked with QT_TRANSLATE_NOOP("ui::words", ...).
struct Entry {
  std::string_view id;
  const char* text;
};

/// Translated text of `id`. @throws std::logic_error naming `what` when the table has none
QString lookUp(std::span<const Entry> table, std::string_view id, const char* what);

/// Whether the table has `id`.
bool has(std::span<const Entry> table, std::string_view id);

/// QString from core's UTF-8.
QString fromCore(std::string_view text);

/// n of "coat_n", "cure_n", "coat_n_top": the number between prefix and suffix; 0 when the id has another
/// form.
int numberIn(std::string_view id, std::string_view prefix, std::string_view suffix = {});

/// Joins clauses as a sentence's list: "a, b or c".
QString orList(const QStringList& items);
/// "a, b and c".
QString andList(const QStringList& items);

}  // namespace ui::words
