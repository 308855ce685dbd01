#pragma once
// Comma-separated values (RFC 4180) as spreadsheets write them, and as they may safely read them.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.h"

namespace weavelog {

/// How the bytes of a text file are to be read. `detect` takes UTF-8 with or without a byte order mark and
/// UTF-16 with one; the one-byte encodings cannot be told apart safely, so they have to be asked for.
enum class TextEncoding { detect, utf8, utf16, windows_1252, latin_1 };

/// "utf-8", "utf-16", "windows-1252", "latin-1" (and usual spellings), case-insensitive.
[[nodiscard]] std::optional<TextEncoding> encoding_from(std::string_view name);
/// The text as UTF-8 without a byte order mark. A fault names the line (from 1) and says what to do.
[[nodiscard]] Outcome<std::string> decode_text(std::string_view bytes, TextEncoding encoding,
                                               std::string_view source = {});

/// Bounds, checked before anything grows beyond them.
struct CsvLimits {
  std::size_t file_bytes = 16 * 1024 * 1024;
  std::size_t rows = 100'000;
  std::size_t columns = 256;
  std::size_t field_bytes = 32 * 1024;
};

struct CsvOptions {
  TextEncoding encoding = TextEncoding::detect;
  std::optional<char> delimiter;  ///< comma, semicolon or tab, found from the header line if not given
  CsvLimits limits;
};

struct CsvRow {
  std::size_t line = 0;             ///< of the file, from 1, where the row begins
  std::vector<std::string> fields;  ///< as many as the header has
};

/// What a table suffers from, for who says it in another language than English.
enum class CsvTrouble {
  file_too_large,     ///< `allowed` bytes are
  utf32,
  utf16_without_mark,
  zero_byte,          ///< no text, or UTF-16 without a mark
  not_utf8,
  not_the_encoding,   ///< that was said
  empty,              ///< no header
  too_many_rows,      ///< `allowed` are
  too_many_columns,   ///< `allowed` are
  field_too_long,     ///< `allowed` bytes are
  field_count,        ///< `found` fields where the header has `allowed`
  stray_quote,        ///< inside a field that does not begin with one
  text_after_quote,
  quote_never_ends,
};

struct CsvFault : Fault {
  CsvTrouble trouble = CsvTrouble::empty;
  std::size_t line = 0;     ///< of the file, from 1; 0: of the whole file
  std::size_t column = 0;   ///< from 1; 0: of the whole line
  std::size_t found = 0;
  std::size_t allowed = 0;
};

struct CsvTable {
  std::vector<std::string> header;
  std::vector<CsvRow> rows;
  /// Rows that could not be taken (wrong number of fields, stray quote): each names line and column. The good
  /// ones are in `rows`.
  std::vector<CsvFault> faults;
  char delimiter = ',';
};

/// Where something stands, for a fault: "players.csv, line 7, column 3 (seed)". Columns count from 1.
[[nodiscard]] std::string csv_place(std::string_view source, std::size_t line, std::size_t column = 0,
                                    std::string_view column_name = {});

/// Reads a table whose first non-blank line names the columns. Blank lines are left out. Fails as a whole
/// only if the file is too large, not text, has no header, or a quoted field never ends.
[[nodiscard]] Outcome<CsvTable> read_csv(std::string_view bytes, const CsvOptions& options = {},
                                         std::string_view source = {});
/// The same, with the reason apart where it fails.
[[nodiscard]] tl::expected<CsvTable, CsvFault> read_csv_table(std::string_view bytes, const CsvOptions& options = {},
                                                              std::string_view source = {});
/// The bytes of a file of at most `max_bytes`.
[[nodiscard]] Outcome<std::string> read_text_file(const std::string& path, std::size_t max_bytes);

/// Writes rows with CRLF ends. Cells that a spreadsheet would take for a formula (first character = + - @,
/// tab or CR) get an apostrophe in front, unless they are plain numbers.
class CsvWriter {
 public:
  explicit CsvWriter(char delimiter = ',') : delimiter_(delimiter) {}
  void row(const std::vector<std::string>& fields);
  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  char delimiter_;
  std::string text_;
};

}  // namespace weavelog
