#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace core::exchange {

/// A cell for writing: with a comma, a quote or a line break in it it stands in quotes, its quotes doubled.
/// @source RFC 4180
std::string csvField(std::string_view text);

/// One record of a table as text.
struct CsvRow {
  std::size_t line = 0;            ///< on which it starts, from 1
  std::vector<std::string> cells;  ///< without quotes, without spaces and tabs around them
  bool is_well_quoted = true;      ///< false: a quote is not closed, or text follows the closing quote
};

/// Reads a table row by row: RFC 4180 with comma, semicolon or tab between cells, the one that stands most
/// often in the first row, and lines that end with CRLF or LF. Rows without any text are passed over.
class CsvReader {
public:
  /// @param text UTF-8, which must outlive the reader; a byte order mark is passed over
  explicit CsvReader(std::string_view text);

  char separator() const { return separator_; }
  /// Reads the next row. @return false at the end
  bool next(CsvRow& row);

private:
  void readRow(CsvRow& row);
  void readCell(CsvRow& row);
  bool readQuoted(std::string& cell);
  bool isAtCellEnd() const;
  bool isAtLineEnd() const;

  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
  char separator_ = ',';
};

}  // namespace core::exchange
