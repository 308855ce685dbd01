#include "core/base/csv.h"

#include <unicode/ucnv.h>
#include <unicode/unistr.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <memory>
#include <stdexcept>
#include <utility>

#include "core/base/bytes.h"
#include "core/base/decimal.h"
#include "core/base/utf8.h"

namespace weavelog {
namespace {

using namespace std::string_view_literals;

constexpr std::string_view kUtf8Mark = "\xEF\xBB\xBF";
constexpr std::string_view kSaveAsUtf8 =
    "save the file as UTF-8 or name its encoding (for instance windows-1252)";

std::size_t line_at(std::string_view text, std::size_t offset) {
  return 1 + static_cast<std::size_t>(
                 std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(offset), '\n'));
}

template <class T>
using Read = tl::expected<T, CsvFault>;

tl::unexpected<CsvFault> failed(CsvFault fault) { return tl::unexpected<CsvFault>(std::move(fault)); }

/// Of the whole file, or of one line of it.
CsvFault fault_at(CsvTrouble trouble, std::string what, std::string_view source, std::size_t line, std::string what_to_do) {
  std::string where = line == 0 ? std::string(source) : csv_place(source, line);
  return {{FaultCode::bad_input, std::move(what), std::move(where), std::move(what_to_do)}, trouble, line, 0, 0, 0};
}
CsvFault fault_of_bound(CsvTrouble trouble, std::string what, std::string_view source, std::size_t line, std::string what_to_do, std::size_t allowed) {
  CsvFault fault = fault_at(trouble, std::move(what), source, line, std::move(what_to_do));
  fault.allowed = allowed;
  return fault;
}

/// Converts strictly with ICU: a sequence that the encoding does not have is a fault, never a question mark.
Read<std::string> converted(std::string_view bytes, const char* encoding, std::string_view source) {
  UErrorCode status = U_ZERO_ERROR;
  const std::unique_ptr<UConverter, decltype(&ucnv_close)> converter(ucnv_open(encoding, &status),
                                                                     &ucnv_close);
  if (U_FAILURE(status)) throw std::logic_error(std::string("ICU has no converter for ") + encoding);
  ucnv_setToUCallBack(converter.get(), UCNV_TO_U_CALLBACK_STOP, nullptr, nullptr, nullptr, &status);

  // Every byte gives at most one UTF-16 unit in the encodings used here.
  std::vector<UChar> units(bytes.size() + 1);
  const char* from = bytes.data();
  UChar* to = units.data();
  ucnv_toUnicode(converter.get(), &to, units.data() + units.size(), &from, bytes.data() + bytes.size(),
                 nullptr, true, &status);
  const auto count = static_cast<std::int32_t>(to - units.data());
  if (U_FAILURE(status)) {
    const auto line = 1 + std::count(units.data(), to, u'\n');
    return failed(fault_at(CsvTrouble::not_the_encoding, std::string("not ") + encoding + " text", source, static_cast<std::size_t>(line),
                           std::string(kSaveAsUtf8)));
  }
  std::string out;
  icu::UnicodeString(false, units.data(), count).toUTF8String(out);
  if (out.starts_with(kUtf8Mark)) out.erase(0, kUtf8Mark.size());
  return out;
}

/// Splits text into records, one at a time.
class Records {
 public:
  Records(std::string_view text, char delimiter, const CsvLimits& limits, std::string_view source)
      : text_(text), delimiter_(delimiter), limits_(limits), source_(source) {}

  [[nodiscard]] bool at_end() const { return at_ >= text_.size(); }

  struct Record {
    CsvRow row;
    std::optional<CsvFault> fault;  ///< the record was read to its end but cannot be used
    [[nodiscard]] bool blank() const { return !fault && row.fields.size() == 1 && row.fields[0].empty(); }
  };

  /// The next record. Fails only if a quoted field never ends.
  Read<Record> next() {
    Record record;
    record.row.line = line_;
    for (bool more = true; more;) {
      auto field = at_ < text_.size() && text_[at_] == '"' ? quoted(record) : Read<std::string>(plain(record));
      if (!field) return failed(field.error());
      if (field->size() > limits_.field_bytes) {
        note(record, CsvTrouble::field_too_long, "the field is longer than " + std::to_string(limits_.field_bytes) + " bytes",
             "shorten it, or check for a missing quotation mark", limits_.field_bytes);
        field->clear();
      }
      if (record.row.fields.size() < limits_.columns) {
        record.row.fields.push_back(std::move(*field));
      } else {
        note(record, CsvTrouble::too_many_columns, "more than " + std::to_string(limits_.columns) + " columns",
             "leave out what is not needed", limits_.columns);
      }
      more = at_ < text_.size() && text_[at_] == delimiter_;
      if (more) ++at_;
    }
    end_of_line();
    return record;
  }

 private:
  void note(Record& record, CsvTrouble trouble, std::string what, std::string what_to_do, std::size_t allowed = 0) const {
    if (record.fault) return;
    const std::size_t column = std::min(record.row.fields.size(), limits_.columns) + 1;
    record.fault = CsvFault{{FaultCode::bad_input, std::move(what), csv_place(source_, line_, column), std::move(what_to_do)},
                            trouble, line_, column, 0, allowed};
  }

  [[nodiscard]] bool at_break() const {
    return at_ >= text_.size() || text_[at_] == delimiter_ || text_[at_] == '\n' || text_[at_] == '\r';
  }

  std::string plain(Record& record) {
    const std::size_t start = at_;
    while (!at_break()) {
      if (text_[at_] == '"') {
        note(record, CsvTrouble::stray_quote, "a quotation mark inside a field that does not begin with one",
             "put the whole field in quotation marks and double those inside it");
      }
      ++at_;
    }
    return std::string(text_.substr(start, at_ - start));
  }

  Read<std::string> quoted(Record& record) {
    const std::size_t opened_on = line_;
    ++at_;
    std::string out;
    for (;;) {
      const std::size_t mark = text_.find('"', at_);
      if (mark == std::string_view::npos) {
        const std::size_t column = record.row.fields.size() + 1;
        return failed({{FaultCode::bad_input, "a quoted field begins here and never ends", csv_place(source_, opened_on, column), "close the quotation mark"},
                       CsvTrouble::quote_never_ends, opened_on, column, 0, 0});
      }
      line_ += static_cast<std::size_t>(std::count(text_.begin() + static_cast<std::ptrdiff_t>(at_),
                                                   text_.begin() + static_cast<std::ptrdiff_t>(mark), '\n'));
      out.append(text_.substr(at_, mark - at_));
      at_ = mark + 1;
      if (at_ >= text_.size() || text_[at_] != '"') break;
      out.push_back('"');
      ++at_;
    }
    if (!at_break()) {
      note(record, CsvTrouble::text_after_quote, "text after the closing quotation mark",
           "double the quotation marks inside a quoted field");
      while (!at_break()) ++at_;
    }
    return out;
  }

  void end_of_line() {
    if (at_ < text_.size() && text_[at_] == '\r') ++at_;
    if (at_ < text_.size() && text_[at_] == '\n') ++at_;
    ++line_;
  }

  std::string_view text_;
  char delimiter_;
  const CsvLimits& limits_;
  std::string_view source_;
  std::size_t at_ = 0;
  std::size_t line_ = 1;
};

/// Comma, semicolon or tab: whichever the first non-blank line has most of, outside quotation marks.
char detect_delimiter(std::string_view text) {
  const std::size_t start = std::min(text.find_first_not_of("\r\n"), text.size());
  std::array<std::pair<char, std::size_t>, 3> counts{{{',', 0}, {';', 0}, {'\t', 0}}};
  bool inside = false;
  for (const char c : text.substr(start)) {
    if (c == '"') inside = !inside;
    if (inside) continue;
    if (c == '\n' || c == '\r') break;
    for (auto& [delimiter, count] : counts) count += c == delimiter ? 1 : 0;
  }
  return std::max_element(counts.begin(), counts.end(),
                          [](const auto& a, const auto& b) { return a.second < b.second; })
      ->first;
}

Read<std::string> decoded(std::string_view bytes, TextEncoding encoding, std::string_view source) {
  if (bytes.starts_with("\xFF\xFE\0\0"sv) || bytes.starts_with("\0\0\xFE\xFF"sv))
    return failed(fault_at(CsvTrouble::utf32, "UTF-32 text", source, 0, "save the file as UTF-8"));
  const bool wide_mark = bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF");
  if (encoding == TextEncoding::utf16 || (encoding == TextEncoding::detect && wide_mark)) {
    if (!wide_mark) return failed(fault_at(CsvTrouble::utf16_without_mark, "UTF-16 text without a byte order mark", source, 0, "save the file as UTF-8"));
    return converted(bytes, "UTF-16", source);
  }
  if (encoding == TextEncoding::windows_1252) return converted(bytes, "windows-1252", source);
  if (encoding == TextEncoding::latin_1) return converted(bytes, "ISO-8859-1", source);

  if (const std::size_t zero = bytes.find('\0'); zero != std::string_view::npos)
    return failed(fault_at(CsvTrouble::zero_byte, "a zero byte: this is not a text file, or UTF-16 without a byte order mark", source, line_at(bytes, zero),
                           "save the file as UTF-8"));
  if (const auto bad = first_invalid_utf8(bytes))
    return failed(fault_at(CsvTrouble::not_utf8, "not UTF-8 (byte 0x" + to_hex(as_bytes(bytes.substr(*bad, 1))) + "): probably Windows-1252 or Latin-1",
                           source, line_at(bytes, *bad), std::string(kSaveAsUtf8)));
  if (bytes.starts_with(kUtf8Mark)) bytes.remove_prefix(kUtf8Mark.size());
  return std::string(bytes);
}

std::string counted(std::size_t count, const char* noun) {
  return std::to_string(count) + " " + noun + (count == 1 ? "" : "s");
}

}  // namespace

std::optional<TextEncoding> encoding_from(std::string_view name) {
  static constexpr std::array<std::pair<std::string_view, TextEncoding>, 10> kNames{{
      {"utf8", TextEncoding::utf8},
      {"utf16", TextEncoding::utf16},
      {"utf16le", TextEncoding::utf16},
      {"utf16be", TextEncoding::utf16},
      {"windows1252", TextEncoding::windows_1252},
      {"cp1252", TextEncoding::windows_1252},
      {"latin1", TextEncoding::latin_1},
      {"iso88591", TextEncoding::latin_1},
      {"auto", TextEncoding::detect},
      {"detect", TextEncoding::detect},
  }};
  std::string wanted;
  for (const char c : name) {
    if (c == '-' || c == '_' || c == ' ') continue;
    wanted.push_back(c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c);
  }
  for (const auto& [known, encoding] : kNames)
    if (known == wanted) return encoding;
  return std::nullopt;
}

Outcome<std::string> decode_text(std::string_view bytes, TextEncoding encoding, std::string_view source) {
  auto text = decoded(bytes, encoding, source);
  if (!text) return fail(text.error());
  return std::move(*text);
}

std::string csv_place(std::string_view source, std::size_t line, std::size_t column,
                      std::string_view column_name) {
  std::string out(source);
  if (!out.empty()) out += ", ";
  out += "line " + std::to_string(line);
  if (column > 0) out += ", column " + std::to_string(column);
  if (!column_name.empty()) out.append(" (").append(column_name).append(")");
  return out;
}

Read<CsvTable> read_csv_table(std::string_view bytes, const CsvOptions& options, std::string_view source) {
  const CsvLimits& limits = options.limits;
  if (bytes.size() > limits.file_bytes)
    return failed(fault_of_bound(CsvTrouble::file_too_large, "the file is larger than " + counted(limits.file_bytes, "byte"), source, 0,
                                 "split it, or leave out what is not needed", limits.file_bytes));
  const auto text = decoded(bytes, options.encoding, source);
  if (!text) return failed(text.error());

  CsvTable table;
  table.delimiter = options.delimiter.value_or(detect_delimiter(*text));
  Records records(*text, table.delimiter, limits, source);
  while (!records.at_end()) {
    auto record = records.next();
    if (!record) return failed(record.error());
    if (record->blank()) continue;
    auto& fields = record->row.fields;
    if (table.header.empty()) {
      if (record->fault) return failed(*record->fault);
      table.header = std::move(fields);
      continue;
    }
    if (table.rows.size() + table.faults.size() >= limits.rows)
      return failed(fault_of_bound(CsvTrouble::too_many_rows, "more than " + counted(limits.rows, "row"), source, record->row.line, "split the file", limits.rows));
    if (record->fault) {
      table.faults.push_back(std::move(*record->fault));
      continue;
    }
    // Spreadsheets leave empty cells behind the last column; they carry nothing.
    while (fields.size() > table.header.size() && fields.back().empty()) fields.pop_back();
    if (fields.size() != table.header.size()) {
      const std::size_t column = std::min(fields.size(), table.header.size()) + 1;
      table.faults.push_back(
          {{FaultCode::bad_input, counted(fields.size(), "field") + " where the header has " + std::to_string(table.header.size()),
            csv_place(source, record->row.line, column), "add or remove delimiters, or put a field that holds one in quotation marks"},
           CsvTrouble::field_count, record->row.line, column, fields.size(), table.header.size()});
      continue;
    }
    table.rows.push_back(std::move(record->row));
  }
  if (table.header.empty()) return failed(fault_at(CsvTrouble::empty, "the file is empty", source, 0, "choose a file with a header line"));
  return table;
}

Outcome<CsvTable> read_csv(std::string_view bytes, const CsvOptions& options, std::string_view source) {
  auto table = read_csv_table(bytes, options, source);
  if (!table) return fail(table.error());
  return std::move(*table);
}

Outcome<std::string> read_text_file(const std::string& path, std::size_t max_bytes) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return fail(FaultCode::io, "cannot be opened", path, "check the name and that you may read it");
  std::string out;
  std::array<char, 64 * 1024> piece{};
  while (file.read(piece.data(), piece.size()), file.gcount() > 0) {
    out.append(piece.data(), static_cast<std::size_t>(file.gcount()));
    if (out.size() > max_bytes) {
      return fail(FaultCode::bad_input, "the file is larger than " + counted(max_bytes, "byte"), path,
                  "split it, or leave out what is not needed");
    }
  }
  if (file.bad())
    return fail(FaultCode::io, "cannot be read to its end", path, "copy it to this device and try again");
  return out;
}

void CsvWriter::row(const std::vector<std::string>& fields) {
  static constexpr std::string_view kFormulaStarts = "=+-@\t\r";
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (i > 0) text_.push_back(delimiter_);
    std::string field = fields[i];
    if (!field.empty() && kFormulaStarts.find(field[0]) != std::string_view::npos && !Decimal::parse(field))
      field.insert(0, 1, '\'');
    const bool quote = field.find_first_of("\"\r\n,;\t") != std::string::npos || field.starts_with(' ') ||
                       field.ends_with(' ') || (fields.size() == 1 && field.empty());
    if (!quote) {
      text_ += field;
      continue;
    }
    text_.push_back('"');
    for (const char c : field) {
      if (c == '"') text_.push_back('"');
      text_.push_back(c);
    }
    text_.push_back('"');
  }
  text_ += "\r\n";
}

}  // namespace weavelog
