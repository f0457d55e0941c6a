#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// The most rows a table may have.
inline constexpr int most_table_rows = 100000;

/// A column as its heading states it: "elevation (ft)" is "elevation" with the unit text "ft".
struct CsvColumn {
  std::string name;       ///< lower case, single spaces
  std::string unit_text;  ///< empty when the heading has no parentheses
};

struct CsvRow {
  int line = 0;  ///< in the file, the first line is 1
  std::vector<std::string> cells;
};

/// A table in text: a header row and rows of as many cells.
///
/// Accepted: UTF-8 with or without a byte order mark; lines ended by CRLF, LF or CR; cells parted
/// by comma, semicolon or tab, whichever the header uses; quotes as in RFC 4180; blank lines;
/// comment lines that start with # above the header. Spaces round a cell are dropped.
///
/// Refused: whatever file_text refuses; a header with more than one kind of separator; two columns
/// of one name; a row whose number of cells is not the header's (a decimal comma is the usual cause
/// and named as such); more than `most_table_rows` rows.
struct CsvTable {
  std::string file;
  char separator = ',';  ///< what the header uses; a comma when it has one column
  int header_line = 0;
  std::vector<CsvColumn> columns;
  std::vector<CsvRow> rows;  ///< at least one
};

/// Reads a table; Problems name `file`, the row and, where it is known, the field.
Expected<CsvTable> read_csv_table(std::string_view bytes, const std::string& file);

/// "row 12, elevation (ft)": the place of a cell in Problems.
std::string cell_place(int line, const std::string& field);

}  // namespace proofstone
