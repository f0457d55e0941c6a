#include "formats/csv_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "engine/finding/quoted_text.h"
#include "formats/file_text.h"
#include "formats/problem_list.h"

namespace proofstone {

namespace {

constexpr std::size_t most_columns = 64;
constexpr std::size_t longest_heading = 100;
constexpr std::string_view separators = ",;\t";

std::string_view separator_name(char separator) {
  if (separator == ',') return "comma";
  if (separator == ';') return "semicolon";
  return "tab";
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

bool all_digits(std::string_view text) {
  return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

/// Goes through a text record by record and cell by cell, keeping count of the lines.
class CsvScanner {
 public:
  explicit CsvScanner(std::string_view text) : text_(text) {}

  bool at_end() const { return at_ == text_.size(); }
  int line() const { return line_; }

  /// The line that starts here, without its end.
  std::string_view peek_line() const {
    return text_.substr(at_, text_.find_first_of("\r\n", at_) - at_);
  }
  void skip_line() {
    at_ += peek_line().size();
    skip_line_end();
  }

  /// The cells of the record that starts here; with no separator, one cell. Or a problem, without
  /// its file; the scan cannot go on after it.
  Expected<std::vector<std::string>> record(std::optional<char> separator) {
    std::vector<std::string> cells;
    while (true) {
      auto read = cell(separator);
      if (!read) return read.problems();
      cells.push_back(std::move(*read));
      if (at_end() || text_[at_] == '\r' || text_[at_] == '\n') break;
      ++at_;  // the separator
    }
    skip_line_end();
    return cells;
  }

 private:
  Expected<std::string> cell(std::optional<char> separator) {
    // A tab that separates is not a space to be skipped.
    while (!at_end() && (text_[at_] == ' ' || (text_[at_] == '\t' && separator != '\t'))) ++at_;
    if (!at_end() && text_[at_] == '"') return quoted_cell(separator);
    const std::size_t start = at_;
    while (!at_end() && !ends_cell(text_[at_], separator)) {
      if (text_[at_] == '"') {
        return quote_problem("stray-quote", "A quote stands inside a cell that is not quoted.");
      }
      ++at_;
    }
    return std::string(trimmed(text_.substr(start, at_ - start)));
  }

  Expected<std::string> quoted_cell(std::optional<char> separator) {
    const int first_line = line_;
    std::string value;
    ++at_;
    while (true) {
      if (at_end()) {
        line_ = first_line;
        return quote_problem("open-quote", "A quoted cell is never closed.");
      }
      const char c = text_[at_++];
      if (c == '"') {
        if (at_end() || text_[at_] != '"') break;
        ++at_;
      } else if (c == '\n' || (c == '\r' && (at_end() || text_[at_] != '\n'))) {
        ++line_;
      }
      value += c;
    }
    while (!at_end() && text_[at_] == ' ') ++at_;
    if (!at_end() && !ends_cell(text_[at_], separator)) {
      return quote_problem("stray-quote", "Text follows the closing quote of a cell.");
    }
    return std::string(trimmed(value));
  }

  static bool ends_cell(char c, std::optional<char> separator) {
    return c == '\n' || c == '\r' || c == separator;
  }

  Problem quote_problem(const std::string& code, const std::string& what) const {
    return {code, what, "", fmt::format("row {}", line_),
            "quotes round a whole cell, or none; the unit (in, ft) in the heading alone"};
  }

  void skip_line_end() {
    if (at_end()) return;
    const bool two = text_.substr(at_, 2) == "\r\n";
    at_ += two ? 2 : 1;
    ++line_;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  int line_ = 1;
};

/// Which of comma, semicolon and tab stand in the header outside quotes.
std::string separators_in(std::string_view header) {
  std::string found;
  bool quoted = false;
  for (const char c : header) {
    if (c == '"') quoted = !quoted;
    if (quoted || separators.find(c) == std::string_view::npos) continue;
    if (found.find(c) == std::string::npos) found += c;
  }
  return found;
}

CsvColumn column_of(const std::string& heading) {
  CsvColumn column;
  std::string_view name = heading;
  const auto open = name.rfind('(');
  if (open != std::string_view::npos && name.back() == ')') {
    column.unit_text = trimmed(name.substr(open + 1, name.size() - open - 2));
    name = trimmed(name.substr(0, open));
  }
  for (const char c : name) {
    if (c == ' ' && !column.name.empty() && column.name.back() == ' ') continue;
    column.name += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  return column;
}

Problems problems_of_columns(const CsvTable& table) {
  ProblemList problems;
  const std::string where = fmt::format("row {}", table.header_line);
  if (table.columns.size() > most_columns) {
    problems.add(Problem{"too-many-columns",
                         fmt::format("The header has {} columns.", table.columns.size()),
                         table.file, where, "at most 64 columns"});
    return problems.take();
  }
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const auto& column = table.columns[i];
    if (column.name.empty()) {
      problems.add(Problem{"empty-heading", fmt::format("Column {} has no heading.", i + 1),
                           table.file, where, "a heading above every column"});
      continue;
    }
    if (column.name.size() > longest_heading) {
      problems.add(Problem{"heading-too-long",
                           fmt::format("The heading {} is too long.", in_quotes(column.name)),
                           table.file, where, "at most 100 characters"});
      continue;
    }
    const auto end = table.columns.begin() + static_cast<std::ptrdiff_t>(i);
    const bool again = std::any_of(table.columns.begin(), end,
                                   [&](const auto& other) { return other.name == column.name; });
    if (again) {
      problems.add(Problem{"duplicate-column",
                           fmt::format("Two columns are called {}.", in_quotes(column.name)),
                           table.file, where, "every column once"});
    }
  }
  return problems.empty() ? Problems{} : problems.take();
}

/// The first cell of which a decimal comma made two: digits at the end, digits at the start.
std::optional<std::size_t> split_by_decimal_comma(const std::vector<std::string>& cells) {
  for (std::size_t i = 0; i + 1 < cells.size(); ++i) {
    std::string_view whole = cells[i];
    if (!whole.empty() && (whole.front() == '-' || whole.front() == '+')) whole.remove_prefix(1);
    if (all_digits(whole) && all_digits(cells[i + 1])) return i;
  }
  return std::nullopt;
}

Problem wrong_cell_count(const CsvTable& table, const CsvRow& row) {
  const std::size_t wanted = table.columns.size();
  if (!row.cells.empty() && !row.cells.front().empty() && row.cells.front().front() == '#') {
    return {"comment-below-header", "A comment line stands below the header.", table.file,
            fmt::format("row {}", row.line), "comment lines above the header only"};
  }
  if (row.cells.size() > wanted && table.separator == ',') {
    const auto split = split_by_decimal_comma(row.cells);
    if (split) {
      const std::string field = *split < wanted ? table.columns[*split].name : "";
      return {"decimal-comma",
              fmt::format("The row has {} cells, the header has {}; a number is written with a "
                          "decimal comma.",
                          row.cells.size(), wanted),
              table.file, cell_place(row.line, field), "write 12.5, not 12,5"};
    }
  }
  return {"cell-count",
          fmt::format("The row has {} cell{}, the header has {}.", row.cells.size(),
                      row.cells.size() == 1 ? "" : "s", wanted),
          table.file, fmt::format("row {}", row.line),
          fmt::format("{} cells, separated by a {} as in the header", wanted,
                      separator_name(table.separator))};
}

Problems in_file(Problems problems, const std::string& file) {
  for (auto& problem : problems) problem.file = file;
  return problems;
}

}  // namespace

std::string cell_place(int line, const std::string& field) {
  if (field.empty()) return fmt::format("row {}", line);
  return fmt::format("row {}, {}", line, field);
}

Expected<CsvTable> read_csv_table(std::string_view bytes, const std::string& file) {
  const auto text = file_text(bytes, file);
  if (!text) return text.problems();

  CsvScanner scanner(*text);
  const auto skip_blank = [&](bool comments) {
    while (!scanner.at_end()) {
      const auto line = trimmed(scanner.peek_line());
      if (!line.empty() && !(comments && line.front() == '#')) return;
      scanner.skip_line();
    }
  };

  skip_blank(true);
  CsvTable table;
  table.file = file;
  table.header_line = scanner.line();
  if (scanner.at_end()) {
    return Problem{"no-header", "The file has no header row.", file, "",
                   "a header row and rows below it"};
  }
  const std::string found = separators_in(scanner.peek_line());
  if (found.size() > 1) {
    return Problem{"ambiguous-separator",
                   fmt::format("The header holds both {} and {}; which one separates the columns "
                               "is not clear.",
                               separator_name(found[0]), separator_name(found[1])),
                   file, fmt::format("row {}", table.header_line),
                   "one of comma, semicolon and tab throughout"};
  }
  std::optional<char> separator;
  if (!found.empty()) {
    separator = found.front();
    table.separator = found.front();
  }

  const auto header = scanner.record(separator);
  if (!header) return in_file(header.problems(), file);
  for (const auto& heading : *header) table.columns.push_back(column_of(heading));
  if (auto problems = problems_of_columns(table); !problems.empty()) return problems;

  ProblemList problems;
  while (true) {
    skip_blank(false);
    if (scanner.at_end()) break;
    if (table.rows.size() == most_table_rows) {
      problems.add(Problem{"too-many-rows", "The table is too long.", file,
                           fmt::format("row {}", scanner.line()), "at most 100,000 rows"});
      break;
    }
    CsvRow row;
    row.line = scanner.line();
    auto cells = scanner.record(separator);
    if (!cells) {
      problems.add(in_file(cells.problems(), file));
      break;
    }
    row.cells = std::move(*cells);
    if (row.cells.size() != table.columns.size()) problems.add(wrong_cell_count(table, row));
    table.rows.push_back(std::move(row));
  }
  if (!problems.empty()) return problems.take();
  if (table.rows.empty()) {
    return Problem{"no-rows", "The table has a header and no rows.", file, "",
                   "at least one row below the header"};
  }
  return table;
}

}  // namespace proofstone
