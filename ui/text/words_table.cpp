#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <charconv>
#include <stdexcept>
#include <string>

namespace ui::words {
namespace {

QString joined(const QStringList& items, const QString& last_two) {
  if (items.size() < 2) return items.join(QString());
  const QString all_but_last =
      items.first(items.size() - 1).join(QCoreApplication::translate("ui::words", ", "));
  return last_two.arg(all_but_last, items.last());
}

}  // namespace

QString lookUp(std::span<const Entry> table, std::string_view id, const char* what) {
  const auto found = std::ranges::find(table, id, &Entry::id);
  if (found == table.end())
    throw std::logic_error(std::string("no words for ") + what + " " + std::string(id));
  return QCoreApplication::translate("ui::words", found->text);
}

bool has(std::span<const Entry> table, std::string_view id) {
  return std::ranges::find(table, id, &Entry::id) != table.end();
}

QString fromCore(std::string_view text) {
  return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

int numberIn(std::string_view id, std::string_view prefix, std::string_view suffix) {
  if (id.size() <= prefix.size() + suffix.size() || !id.starts_with(prefix) || !id.ends_with(suffix))
    return 0;
  const std::string_view digits = id.substr(prefix.size(), id.size() - prefix.size() - suffix.size());
  int number = 0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
  return error == std::errc{} && end == digits.data() + digits.size() ? number : 0;
}

QString orList(const QStringList& items) {
  return joined(items, QCoreApplication::translate("ui::words", "%1 or %2"));
}

QString andList(const QStringList& items) {
  return joined(items, QCoreApplication::translate("ui::words", "%1 and %2"));
}

}  // namespace ui::words
