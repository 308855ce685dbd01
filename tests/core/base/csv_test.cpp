// Comma-separated values: RFC 4180, section 2, whose numbered rules the first test follows.
#include "core/base/csv.h"

#include <catch2/catch.hpp>

#include "core/base/utf8.h"

using namespace weavelog;
using namespace std::string_literals;
using Fields = std::vector<std::string>;

TEST_CASE("a table is read as RFC 4180 writes it") {
  const auto table = read_csv("a,b,c\r\n1,\"x,y\",\"say \"\"hi\"\"\"\r\n\"two\r\nlines\",,3").value();
  CHECK(table.header == Fields{"a", "b", "c"});
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].fields == Fields{"1", "x,y", "say \"hi\""});
  CHECK(table.rows[1].fields == Fields{"two\r\nlines", "", "3"});
  CHECK(table.rows[0].line == 2);
  CHECK(table.rows[1].line == 3);
  CHECK(table.faults.empty());
}

TEST_CASE("line numbers count the line breaks inside quoted fields, and blank lines are left out") {
  const auto table = read_csv("a,b\n\n\"1\n2\n3\",x\n\nlast,y\n").value();
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[0].line == 3);
  CHECK(table.rows[1].line == 7);
}

TEST_CASE("old line ends of a lone CR are taken too") {
  const auto table = read_csv("a,b\r1,2\r3,4").value();
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[1].fields == Fields{"3", "4"});
}

TEST_CASE("the delimiter is found from the header line, quoted delimiters aside") {
  CHECK(read_csv("a;b;c\n1,5;2;3\n").value().rows[0].fields == Fields{"1,5", "2", "3"});
  CHECK(read_csv("a\tb\n1,5\t2\n").value().delimiter == '\t');
  CHECK(read_csv("\"x;y;z\",b\n1,2\n").value().delimiter == ',');
  CHECK(read_csv("one\n1\n").value().rows[0].fields == Fields{"1"});
  CsvOptions comma;
  comma.delimiter = ',';
  CHECK(read_csv("a;b,c\n1,2\n", comma).value().header == Fields{"a;b", "c"});
}

TEST_CASE("UTF-8 and UTF-16 with a byte order mark are read, and so are the one-byte encodings when named") {
  CHECK(read_csv("\xEF\xBB\xBF"
                 "a,b\nŁ,ß\n")
            .value()
            .rows[0]
            .fields == Fields{"Ł", "ß"});
  CHECK(read_csv("\xFF\xFE"s + "a\0,\0b\0\n\0A\x01,\0x\0"s).value().rows[0].fields == Fields{"Ł", "x"});
  CHECK(read_csv("\xFE\xFF"s + "\0a\0,\0b\0\n\x01\x41\0,\0x"s).value().rows[0].fields == Fields{"Ł", "x"});
  CsvOptions options;
  options.encoding = encoding_from("Windows-1252").value();
  CHECK(read_csv("a,b\n\xE9,\x80\n", options).value().rows[0].fields == Fields{"é", "€"});
  options.encoding = encoding_from("latin1").value();
  CHECK(read_csv("a,b\n\xE9,x\n", options).value().rows[0].fields == Fields{"é", "x"});
  CHECK_FALSE(encoding_from("klingon"));
}

TEST_CASE("a wrong encoding is one fault that says the line and what to do") {
  const auto latin = read_csv("a,b\n1,2\nJos\xE9,x\n", {}, "players.csv");
  REQUIRE_FALSE(latin);
  CHECK(latin.error().code == FaultCode::bad_input);
  CHECK(latin.error().where == "players.csv, line 3");
  CHECK(latin.error().what.find("0xe9") != std::string::npos);
  CHECK(latin.error().what_to_do.find("windows-1252") != std::string::npos);

  const auto no_mark = read_csv("a\0,\0b\0\n\0"s);
  REQUIRE_FALSE(no_mark);
  CHECK(no_mark.error().what.find("UTF-16") != std::string::npos);
  CHECK_FALSE(read_csv("\xFF\xFE\0\0a\0\0\0"s));
  CHECK_FALSE(read_csv("\xFF\xFE"s + "a\0,"s));                // half a unit at the end
  CHECK_FALSE(read_csv("\xFF\xFE"s + "a\0\n\0\x00\xD8x\0"s));  // a lone surrogate
}

TEST_CASE("a broken row is told with line and column, and the good rows still come in") {
  const auto table = read_csv("a,b\n1,2\n1,2,3\nonly\n5\" tall,x\n\"q\"z,x\n7,8,,\n", {}, "list.csv").value();
  REQUIRE(table.rows.size() == 2);
  CHECK(table.rows[1].fields == Fields{"7", "8"});
  REQUIRE(table.faults.size() == 4);
  CHECK(table.faults[0].message().find("list.csv, line 3, column 3: 3 fields where the header has 2") == 0);
  CHECK(table.faults[1].where == "list.csv, line 4, column 2");
  CHECK(table.faults[2].where == "list.csv, line 5, column 1");
  CHECK(table.faults[3].where == "list.csv, line 6, column 1");
  // The same apart, for whoever says it in another language.
  CHECK(table.faults[0].trouble == CsvTrouble::field_count);
  CHECK(table.faults[0].line == 3);
  CHECK(table.faults[0].column == 3);
  CHECK(table.faults[0].found == 3);
  CHECK(table.faults[0].allowed == 2);
  CHECK(table.faults[2].trouble == CsvTrouble::stray_quote);
  CHECK(table.faults[3].trouble == CsvTrouble::text_after_quote);
}

TEST_CASE("a quoted field that never ends is a fault where it begins") {
  const auto table = read_csv("a,b\n1,2\n3,\"open\n4,5\n");
  REQUIRE_FALSE(table);
  CHECK(table.error().where == "line 3, column 2");
  const auto apart = read_csv_table("a,b\n1,2\n3,\"open\n4,5\n");
  REQUIRE_FALSE(apart);
  CHECK(apart.error().trouble == CsvTrouble::quote_never_ends);
  CHECK(apart.error().line == 3);
  CHECK(apart.error().column == 2);
}

TEST_CASE("an empty file has no header") {
  for (const char* text : {"", "\n\n", "\xEF\xBB\xBF"}) {
    const auto table = read_csv_table(text);
    REQUIRE_FALSE(table);
    CHECK(table.error().trouble == CsvTrouble::empty);
    CHECK(table.error().line == 0);
  }
}

TEST_CASE("bounds hold: file size, rows, columns, field length") {
  CsvOptions options;
  options.limits.file_bytes = 30;
  CHECK_FALSE(read_csv(std::string(31, 'a'), options));
  options.limits = {};
  options.limits.rows = 2;
  CHECK(read_csv("a\n1\n2\n", options));
  CHECK_FALSE(read_csv("a\n1\n2\n3\n", options));
  options.limits = {};
  options.limits.columns = 2;
  CHECK_FALSE(read_csv("a,b,c\n", options));
  CHECK(read_csv("a,b\n1,2,3\n", options).value().faults.size() == 1);
  options.limits = {};
  options.limits.field_bytes = 4;
  CHECK(read_csv("a,b\n12345,x\n1234,x\n", options).value().faults.size() == 1);
}

TEST_CASE("what is written reads back the same") {
  CsvWriter writer;
  writer.row({"name", "note"});
  writer.row({"Ł \"x\"", "two\nlines; more"});
  writer.row({"-5.25", ""});
  const auto table = read_csv(writer.text()).value();
  CHECK(table.rows[0].fields == Fields{"Ł \"x\"", "two\nlines; more"});
  CHECK(table.rows[1].fields == Fields{"-5.25", ""});
}

TEST_CASE("cells that a spreadsheet would take for a formula are defused, plain numbers are not") {
  CsvWriter writer(';');
  writer.row({"=1+1", "+49 30", "-1", "-1+2", "@x", "plain"});
  CHECK(writer.text() == "'=1+1;'+49 30;-1;'-1+2;'@x;plain\r\n");
}

TEST_CASE("files that are missing or too large are told apart") {
  CHECK(read_text_file("/nonexistent/list.csv", 10).error().code == FaultCode::io);
  CHECK(read_text_file(std::string(WEAVELOG_FIXTURES) + "/published/units_cases.csv", 10).error().code ==
        FaultCode::bad_input);
}

TEST_CASE("invalid UTF-8 is found at its byte offset") {
  CHECK_FALSE(first_invalid_utf8("Łódź 王 🎾"));
  CHECK(first_invalid_utf8("ab\xFF") == 2u);
  CHECK(first_invalid_utf8("a\xC3") == 1u);             // cut off
  CHECK(first_invalid_utf8("\xC0\xAF") == 0u);          // overlong, RFC 3629 section 10
  CHECK(first_invalid_utf8("x\xED\xA0\x80") == 1u);     // surrogate
  CHECK(first_invalid_utf8("\xF4\x90\x80\x80") == 0u);  // beyond U+10FFFF
  const auto fault = check_utf8("ab\xFF", "name").error();
  CHECK(fault.where == "name");
  CHECK(fault.what == "not UTF-8: byte 0xff at offset 2");
}
