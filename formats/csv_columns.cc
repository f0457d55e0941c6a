#include "formats/csv_columns.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

#include "engine/finding/quoted_text.h"
#include "formats/problem_list.h"

namespace proofstone {

namespace {

bool same_unit(const Unit& a, const Unit& b) { return a.kind == b.kind && a.symbol == b.symbol; }

std::string headings_allowed(const WantedColumn& wanted) {
  if (wanted.units.empty()) return wanted.name;
  std::string text;
  for (const auto& unit : wanted.units) {
    if (!text.empty()) text += " or ";
    text += fmt::format("{} ({})", wanted.name, unit.symbol);
  }
  return text;
}

std::string headings_allowed(const std::vector<WantedColumn>& wanted) {
  std::string text;
  for (const auto& column : wanted) {
    if (!text.empty()) text += "; ";
    text += headings_allowed(column);
    if (!column.required) text += " (may be left out)";
  }
  return text;
}

/// The unit that `text` spells, if it is one of `allowed`.
std::optional<Unit> unit_among(const std::vector<Unit>& allowed, const std::string& text) {
  for (const auto& spelling : unit_spellings()) {
    if (spelling.spelling != text) continue;
    for (const auto& unit : allowed) {
      if (same_unit(unit, spelling.unit)) return unit;
    }
  }
  return std::nullopt;
}

Expected<FoundColumn> found_column(const CsvTable& table, std::size_t index,
                                   const WantedColumn& wanted) {
  const auto& column = table.columns[index];
  FoundColumn found{index, column.name, unit::number};
  const auto problem = [&](const std::string& code, const std::string& what) {
    return Problem{code, what, table.file, cell_place(table.header_line, column.name),
                   headings_allowed(wanted)};
  };
  if (wanted.units.empty()) {
    if (column.unit_text.empty()) return found;
    return problem("unknown-unit", "This column takes no unit.");
  }
  if (column.unit_text.empty())
    return problem("missing-unit", "The heading does not state a unit.");
  const auto unit = unit_among(wanted.units, column.unit_text);
  if (!unit) {
    return problem("unknown-unit",
                   fmt::format("{} is not a unit for this column.", in_quotes(column.unit_text)));
  }
  found.unit = *unit;
  return found;
}

bool has_plain_characters_only(std::string_view text) {
  return text.find_first_not_of("0123456789+-.eE") == std::string_view::npos;
}

/// Says why a cell that is not a plain number is none.
Problem number_problem(const CsvTable& table, const CsvRow& row, const FoundColumn& column) {
  const std::string& cell = cell_text(row, column);
  Problem problem{"not-a-number", fmt::format("{} is not a number.", in_quotes(cell)), table.file,
                  cell_place(row.line, column.name), "one decimal number, such as 12.5"};
  if (cell.empty()) {
    problem.code = "missing-value";
    problem.what = "The cell is empty.";
    return problem;
  }
  const auto number_end = cell.find_first_not_of("0123456789+-.,");
  const std::string_view number = std::string_view(cell).substr(0, number_end);
  const bool digits = number.find_first_of("0123456789") != std::string_view::npos;
  if (!digits) return problem;
  if (number_end == std::string::npos) {
    if (number.find(',') == std::string_view::npos) return problem;
    problem.code = "decimal-comma";
    problem.what = fmt::format("{} is written with a comma.", in_quotes(cell));
    problem.allowed = "write 12.5, not 12,5; 1200, not 1,200";
    return problem;
  }
  const char next = cell[number_end];
  if (next == 'x' || next == 'X' || next == 'e' || next == 'E') return problem;
  problem.code = "unit-mixed-in";
  problem.what = fmt::format("{} is more than a number.", in_quotes(cell));
  problem.allowed =
      column.unit.symbol.empty()
          ? "the number alone"
          : fmt::format("the number alone; the heading states the unit, {}", column.unit.symbol);
  return problem;
}

}  // namespace

Expected<std::vector<std::optional<FoundColumn>>> find_columns(
    const CsvTable& table, const std::vector<WantedColumn>& wanted) {
  ProblemList problems;
  std::vector<std::optional<FoundColumn>> found(wanted.size());
  const std::string header = fmt::format("row {}", table.header_line);

  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const auto& column = table.columns[i];
    const auto match = std::find_if(wanted.begin(), wanted.end(),
                                    [&](const auto& w) { return w.name == column.name; });
    if (match == wanted.end()) {
      problems.add(Problem{"unknown-column",
                           fmt::format("No column is called {}.", in_quotes(column.name)),
                           table.file, header, headings_allowed(wanted)});
      continue;
    }
    const auto place = static_cast<std::size_t>(match - wanted.begin());
    auto read = found_column(table, i, *match);
    if (read) {
      found[place] = *read;
    } else {
      problems.add(read.problems());
    }
  }

  const auto required =
      std::count_if(wanted.begin(), wanted.end(), [](const auto& w) { return w.required; });
  if (table.columns.size() == 1 && required > 1) {
    return Problem{"wrong-separator",
                   "The header is one cell: no comma, semicolon or tab separates its columns.",
                   table.file, header, headings_allowed(wanted)};
  }
  for (const auto& heading : wanted) {
    const bool present =
        std::any_of(table.columns.begin(), table.columns.end(),
                    [&](const auto& column) { return column.name == heading.name; });
    if (!present && heading.required) {
      problems.add(Problem{"missing-column", fmt::format("The column {} is missing.", heading.name),
                           table.file, header, headings_allowed(heading)});
    }
  }
  if (!problems.empty()) return problems.take();
  return found;
}

const std::string& cell_text(const CsvRow& row, const FoundColumn& column) {
  return row.cells[column.index];
}

Expected<Measure> read_quantity_cell(const CsvTable& table, const CsvRow& row,
                                     const FoundColumn& column) {
  const std::string& cell = cell_text(row, column);
  if (cell.empty() || !has_plain_characters_only(cell)) {
    return number_problem(table, row, column);
  }
  const auto value = parse_measure(
      column.unit.symbol.empty() ? cell : fmt::format("{} {}", cell, column.unit.symbol),
      column.unit.kind);
  if (!value) return number_problem(table, row, column);
  return *value;
}

Expected<Measure> read_not_negative_cell(const CsvTable& table, const CsvRow& row,
                                         const FoundColumn& column) {
  auto value = read_quantity_cell(table, row, column);
  if (value && value->si < 0) {
    return Problem{"negative",
                   fmt::format("{} is less than zero.", in_quotes(cell_text(row, column))),
                   table.file, cell_place(row.line, column.name), "a value from 0 up"};
  }
  return value;
}

Expected<Measure> read_positive_cell(const CsvTable& table, const CsvRow& row,
                                     const FoundColumn& column) {
  auto value = read_quantity_cell(table, row, column);
  if (value && !(value->si > 0)) {
    return Problem{"not-positive",
                   fmt::format("{} is not more than zero.", in_quotes(cell_text(row, column))),
                   table.file, cell_place(row.line, column.name), "a value above 0"};
  }
  return value;
}

Expected<int> read_count_cell(const CsvTable& table, const CsvRow& row, const FoundColumn& column) {
  const std::string& cell = cell_text(row, column);
  const bool digits = !cell.empty() && cell.find_first_not_of("0123456789") == std::string::npos;
  constexpr std::size_t most_digits = 7;
  constexpr int most = 1000000;
  if (digits && cell.size() <= most_digits) {
    const int value = std::atoi(cell.c_str());
    if (value <= most) return value;
  }
  auto problem = digits || (!cell.empty() && has_plain_characters_only(cell))
                     ? Problem{"not-a-count", fmt::format("{} is not a count.", in_quotes(cell)),
                               table.file, cell_place(row.line, column.name), ""}
                     : number_problem(table, row, column);
  problem.allowed = "a whole number from 0 to 1,000,000";
  return problem;
}

Problems at_rows_of(const CsvTable& table, const Problems& problems) {
  ProblemList located;
  for (Problem problem : problems) {
    problem.file = table.file;
    const auto number = problem.where.find_first_of("0123456789");
    const auto item =
        number == std::string::npos ? 0L : std::strtol(&problem.where[number], nullptr, 10);
    if (item >= 1 && static_cast<std::size_t>(item) <= table.rows.size()) {
      const auto rest = problem.where.find_first_not_of("0123456789", number);
      const int line = table.rows[static_cast<std::size_t>(item) - 1].line;
      problem.where = fmt::format("row {}", line) +
                      (rest == std::string::npos ? "" : problem.where.substr(rest));
    }
    located.add(std::move(problem));
  }
  return located.empty() ? Problems{} : located.take();
}

}  // namespace proofstone
