#include "formats/gradation_csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/finding/quoted_text.h"
#include "engine/soil/soil_curve.h"
#include "formats/csv_columns.h"
#include "formats/problem_list.h"
#include "formats/sieve_name.h"
#include "formats/size_columns.h"

namespace proofstone {
namespace {

/// Percents are rounded row by row: so far may their sum lie from 100.
constexpr double sum_tolerance = 0.5;

struct Columns {
  FoundColumn size;
  FoundColumn percent;
  bool by_name = false;   ///< `sieve`, not `size`
  bool retained = false;  ///< `retained`, not `passing`
};

bool has_column(const CsvTable& table, const char* name) {
  return std::any_of(table.columns.begin(), table.columns.end(),
                     [&](const CsvColumn& column) { return column.name == name; });
}

Expected<Columns> columns_of(const CsvTable& table) {
  Columns columns;
  columns.by_name = has_column(table, "sieve");
  columns.retained = has_column(table, "retained") && !has_column(table, "passing");
  const WantedColumn size = columns.by_name ? WantedColumn{"sieve", {}, true}
                                            : WantedColumn{"size", stone_size_units(), true};
  const auto found =
      find_columns(table, {size, {columns.retained ? "retained" : "passing", {unit::percent}}});
  if (!found) return found.problems();
  columns.size = *(*found)[0];
  columns.percent = *(*found)[1];
  return columns;
}

/// One row: a sieve, or the pan below the last.
struct Row {
  int line = 0;
  std::optional<NamedSieve> sieve;  ///< absent for the pan
  double percent = 0;
};

bool is_pan(const std::string& text) { return text == "pan" || text == "Pan" || text == "PAN"; }

Expected<Row> read_row(const CsvTable& table, const CsvRow& row, const Columns& columns) {
  Row read;
  read.line = row.line;
  ProblemList problems;
  const std::string& size = cell_text(row, columns.size);
  if (!(columns.retained && is_pan(size))) {
    if (columns.by_name) {
      read.sieve = sieve_called(size);
      if (!read.sieve) {
        problems.add(Problem{"unknown-sieve", fmt::format("{} names no sieve.", in_quotes(size)),
                             table.file, cell_place(row.line, columns.size.name),
                             "a number (No. 4 to No. 200) or an opening with its unit (3 in, 3/8 "
                             "in, 4.75 mm)"});
      }
    } else if (const auto opening = read_positive_cell(table, row, columns.size)) {
      read.sieve = NamedSieve{opening->unchecked_as<Length>(), columns.size.unit};
    } else {
      problems.add(opening.problems());
    }
  }
  const auto percent = read_not_negative_cell(table, row, columns.percent);
  if (!percent) {
    problems.add(percent.problems());
  } else {
    read.percent = percent->si / unit::percent.si_factor;
    if (read.percent > 100 * (1 + 1e-12)) {
      problems.add(
          Problem{"percent-outside",
                  fmt::format("{} is more than all.", in_quotes(cell_text(row, columns.percent))),
                  table.file, cell_place(row.line, columns.percent.name),
                  "0 to 100; a mass does not belong here"});
    }
    read.percent = std::min(read.percent, 100.0);
  }
  if (!problems.empty()) return problems.take();
  return read;
}

Problem at_row(const CsvTable& table, const Columns& columns, int line, const std::string& code,
               const std::string& what, const std::string& allowed) {
  return {code, what, table.file, cell_place(line, columns.size.name), allowed};
}

/// Sieves go one way; the first that does not is named.
Problems wrong_order(const CsvTable& table, const Columns& columns, const std::vector<Row>& rows) {
  const bool falling = rows.size() < 2 || rows[0].sieve->opening > rows[1].sieve->opening;
  for (std::size_t i = 1; i < rows.size(); ++i) {
    const Length before = rows[i - 1].sieve->opening;
    const Length now = rows[i].sieve->opening;
    if (before == now) {
      return {at_row(table, columns, rows[i].line, "size-twice", "This sieve stands twice.",
                     "each sieve once")};
    }
    if ((before > now) != falling) {
      return {at_row(table, columns, rows[i].line, "sieve-order",
                     "The sieves are not in order: this one turns round.",
                     "from the largest opening to the smallest; are two units mixed?")};
    }
  }
  return {};
}

/// Percents passing from percents retained on each sieve, the largest first.
Expected<std::vector<GradationPoint>> from_retained(const CsvTable& table, const Columns& columns,
                                                    std::vector<Row> rows, std::optional<Row> pan) {
  if (rows.front().sieve->opening < rows.back().sieve->opening) {
    std::reverse(rows.begin(), rows.end());
  }
  double sum = pan ? pan->percent : 0;
  for (const auto& row : rows) sum += row.percent;
  if (std::abs(sum - 100) > sum_tolerance) {
    const bool never_falls = std::is_sorted(
        rows.begin(), rows.end(), [](const Row& a, const Row& b) { return a.percent < b.percent; });
    return Problem{"sum-not-100",
                   fmt::format("The percents retained sum to {}, not to 100.", significant(sum, 4)),
                   table.file, columns.percent.name,
                   never_falls && sum > 100
                       ? "percents retained on each sieve alone; these look cumulative: give "
                         "passing, 100 less each"
                   : pan ? "percents that sum to 100; weigh again what was lost"
                         : "percents that sum to 100; is the row pan missing?"};
  }
  std::vector<GradationPoint> points;
  double passing = 100;
  for (const auto& row : rows) {
    passing = std::max(0.0, passing - row.percent);
    points.push_back({row.sieve->opening, passing});
  }
  return points;
}

Problems with_mend(const CsvTable& table, const Columns& columns, const Problems& wrong,
                   bool retained) {
  auto problems = at_rows_of(table, wrong);
  for (auto& problem : problems) {
    problem.where += ", " + columns.percent.name;
    if (retained) {
      problem.code = "retained-for-passing";
      problem.allowed =
          "percents passing; these look like percents retained: call the column so, or give 100 "
          "less each";
    }
  }
  return problems;
}

}  // namespace

Expected<GradationTable> read_gradation_csv(std::string_view bytes, const std::string& file) {
  const auto table = read_csv_table(bytes, file);
  if (!table) return table.problems();
  const auto columns = columns_of(*table);
  if (!columns) return columns.problems();
  ProblemList problems;
  std::vector<Row> rows;
  std::optional<Row> pan;
  for (const auto& row : table->rows) {
    const auto read = read_row(*table, row, *columns);
    if (!read) {
      problems.add(read.problems());
    } else if (read->sieve) {
      rows.push_back(*read);
    } else if (pan) {
      problems.add(at_row(*table, *columns, read->line, "size-twice", "The pan stands twice.",
                          "one row pan"));
    } else {
      pan = *read;
    }
  }
  if (!problems.empty()) return problems.take();
  if (rows.size() < 2) {
    return Problem{"too-few-points", "A gradation needs at least two sieves.", file, "",
                   "two or more sieves"};
  }
  if (auto wrong = wrong_order(*table, *columns, rows); !wrong.empty()) return wrong;
  GradationTable result;
  if (columns->retained) {
    auto points = from_retained(*table, *columns, rows, pan);
    if (!points) return points.problems();
    result.points = std::move(*points);
    if (rows.front().sieve->opening < rows.back().sieve->opening) {
      std::reverse(rows.begin(), rows.end());
    }
  } else {
    for (const auto& row : rows) result.points.push_back({row.sieve->opening, row.percent});
  }
  for (const auto& row : rows) result.units.push_back(row.sieve->unit);
  const auto checked = Gradation::make(result.points, sieved_by_mass);
  if (!checked) {
    return with_mend(*table, *columns, checked.problems(), look_retained(result.points));
  }
  return result;
}

}  // namespace proofstone
