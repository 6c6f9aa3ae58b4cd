#include "core/exchange/csv_rows.h"

#include <algorithm>

namespace core::exchange {
namespace {

using std::string_view;

constexpr string_view kByteOrderMark = "\xEF\xBB\xBF";
constexpr string_view kSeparators = ";\t,";

bool isBlank(char c) {
  return c == ' ' || c == '\t';
}

void trim(std::string& cell) {
  while (!cell.empty() && isBlank(cell.back())) cell.pop_back();
  cell.erase(cell.begin(), std::find_if_not(cell.begin(), cell.end(), isBlank));
}

/// The first line that holds text, as far as quotes let it reach.
string_view firstRow(string_view text) {
  text.remove_prefix(std::min(text.find_first_not_of(" \t\r\n"), text.size()));
  bool is_quoted = false;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] == '"') is_quoted = !is_quoted;
    if (text[at] == '\n' && !is_quoted) return text.substr(0, at);
  }
  return text;
}

std::size_t countOutsideQuotes(string_view text, char wanted) {
  bool is_quoted = false;
  std::size_t count = 0;
  for (const char c : text) {
    if (c == '"') is_quoted = !is_quoted;
    if (c == wanted && !is_quoted) ++count;
  }
  return count;
}

char separatorOf(string_view row) {
  return *std::max_element(kSeparators.begin(), kSeparators.end(), [row](char a, char b) {
    return countOutsideQuotes(row, a) < countOutsideQuotes(row, b);
  });
}

}  // namespace

std::string csvField(string_view text) {
  if (text.find_first_of(",\"\r\n") == string_view::npos) return std::string(text);
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"') out += '"';
    out += c;
  }
  return out + '"';
}

CsvReader::CsvReader(string_view text) : text_(text) {
  if (text_.starts_with(kByteOrderMark)) text_.remove_prefix(kByteOrderMark.size());
  separator_ = separatorOf(firstRow(text_));
}

bool CsvReader::next(CsvRow& row) {
  const auto is_empty = [](const std::string& cell) { return cell.empty(); };
  while (at_ < text_.size()) {
    readRow(row);
    if (!row.is_well_quoted || !std::all_of(row.cells.begin(), row.cells.end(), is_empty)) return true;
  }
  return false;
}

void CsvReader::readRow(CsvRow& row) {
  row.line = line_;
  row.cells.clear();
  row.is_well_quoted = true;
  readCell(row);
  while (at_ < text_.size() && text_[at_] == separator_) {
    ++at_;
    readCell(row);
  }
  at_ = std::min(at_ + (text_.substr(at_).starts_with('\r') ? 2 : 1), text_.size());  // CRLF or LF
  ++line_;
}

void CsvReader::readCell(CsvRow& row) {
  std::string& cell = row.cells.emplace_back();
  while (!isAtCellEnd() && isBlank(text_[at_])) ++at_;
  const bool is_quoted = !isAtCellEnd() && text_[at_] == '"';
  if (is_quoted && !readQuoted(cell)) row.is_well_quoted = false;
  const std::size_t rest = at_;
  while (!isAtCellEnd()) ++at_;
  std::string after(text_.substr(rest, at_ - rest));
  trim(after);
  if (is_quoted && !after.empty()) row.is_well_quoted = false;
  cell += after;
  trim(cell);
}

/// Reads from a quote to the one that closes it. @return false when none does
bool CsvReader::readQuoted(std::string& cell) {
  for (++at_; at_ < text_.size(); ++at_) {
    if (text_[at_] == '"') {
      const bool is_doubled = text_.substr(at_ + 1).starts_with('"');
      if (!is_doubled) {
        ++at_;
        return true;
      }
      ++at_;
    }
    if (text_[at_] == '\n') ++line_;
    cell += text_[at_];
  }
  return false;
}

bool CsvReader::isAtCellEnd() const {
  return at_ >= text_.size() || text_[at_] == separator_ || isAtLineEnd();
}

bool CsvReader::isAtLineEnd() const {
  return text_[at_] == '\n' || text_.substr(at_).starts_with("\r\n");
}

}  // namespace core::exchange
