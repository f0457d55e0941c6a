#include "formats/stone_count_csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>

#include "engine/finding/quoted_text.h"
#include "formats/problem_list.h"
#include "formats/size_columns.h"

namespace proofstone {

namespace {

/// The axes of one stone; the engine uses the intermediate one.
struct StoneAxes {
  std::optional<Length> longest;
  Length intermediate;
  std::optional<Length> shortest;
};

Expected<StoneAxes> read_axes(const CsvTable& table, const CsvRow& row,
                              const FoundColumn& intermediate,
                              const std::optional<FoundColumn>& longest,
                              const std::optional<FoundColumn>& shortest) {
  ProblemList problems;
  const auto read = [&](const FoundColumn& column) -> std::optional<Length> {
    const auto value = read_positive_cell(table, row, column);
    if (value) return value->unchecked_as<Length>();
    problems.add(value.problems());
    return std::nullopt;
  };
  StoneAxes axes;
  axes.intermediate = read(intermediate).value_or(Length());
  // The other axes are often measured on some stones only.
  if (longest && !cell_text(row, *longest).empty()) axes.longest = read(*longest);
  if (shortest && !cell_text(row, *shortest).empty()) axes.shortest = read(*shortest);
  if (!problems.empty()) return problems.take();

  const auto out_of_order = [&](const FoundColumn& column) {
    return Problem{"axes-out-of-order", "The axes of this stone are not in order.", table.file,
                   cell_place(row.line, column.name), "longest ≥ intermediate ≥ shortest"};
  };
  if (axes.longest && *axes.longest < axes.intermediate) return out_of_order(*longest);
  if (axes.shortest && *axes.shortest > axes.intermediate) return out_of_order(*shortest);
  return axes;
}

Expected<StoneCountTable> read_stones(const CsvTable& table) {
  const auto& units = stone_size_units();
  const auto columns = find_columns(table, {{"stone", {}, false},
                                            {"intermediate axis", units},
                                            {"longest axis", units, false},
                                            {"shortest axis", units, false}});
  if (!columns) return columns.problems();
  const auto& name_column = (*columns)[0];
  const FoundColumn& intermediate = *(*columns)[1];

  StoneCountTable count;
  count.axis_unit = intermediate.unit;
  ProblemList problems;
  std::map<std::string, int> line_of_stone;
  for (const auto& row : table.rows) {
    if (name_column) {
      const std::string& name = cell_text(row, *name_column);
      const auto [earlier, is_new] = line_of_stone.emplace(name, row.line);
      if (!is_new && !name.empty()) {
        problems.add(Problem{
            "duplicate-stone",
            fmt::format("Stone {} stands in row {} already.", in_quotes(name), earlier->second),
            table.file, cell_place(row.line, name_column->name),
            "every stone once, under a name of its own"});
      }
    }
    const auto axes = read_axes(table, row, intermediate, (*columns)[2], (*columns)[3]);
    if (axes) {
      count.intermediate_axes.push_back(axes->intermediate);
    } else {
      problems.add(axes.problems());
    }
  }
  if (!problems.empty()) return problems.take();
  // How the stones were picked stands in the document; what makes a list of stones unusable does
  // not depend on it.
  const auto checked = gradation_from_stones(count.intermediate_axes, StonePicking::grid);
  if (!checked) return at_rows_of(table, checked.problems());
  return count;
}

Expected<StoneCountTable> read_bins(const CsvTable& table) {
  const auto& units = stone_size_units();
  const auto columns =
      find_columns(table, {{"larger than", units}, {"not larger than", units}, {"stones", {}}});
  if (!columns) return columns.problems();
  const FoundColumn& larger_than = *(*columns)[0];
  const FoundColumn& not_larger_than = *(*columns)[1];
  const FoundColumn& stones_column = *(*columns)[2];

  StoneCountTable count;
  count.larger_than_unit = larger_than.unit;
  count.not_larger_unit = not_larger_than.unit;
  ProblemList problems;
  for (const auto& row : table.rows) {
    const auto range = read_range_ends(table, row, larger_than, not_larger_than);
    const auto stones = read_count_cell(table, row, stones_column);
    if (!range) problems.add(range.problems());
    if (!stones) problems.add(stones.problems());
    if (!range || !stones) continue;
    count.bins.push_back({range->larger_than, range->not_larger_than, *stones});
  }
  if (!problems.empty()) return problems.take();
  const auto checked = gradation_from_bins(count.bins, StonePicking::grid);
  if (!checked) return at_rows_of(table, checked.problems());
  return count;
}

}  // namespace

Expected<StoneCountTable> read_stone_count_csv(std::string_view bytes, const std::string& file) {
  const auto table = read_csv_table(bytes, file);
  if (!table) return table.problems();
  const bool in_bins =
      std::any_of(table->columns.begin(), table->columns.end(), [](const CsvColumn& column) {
        return column.name == "larger than" || column.name == "not larger than" ||
               column.name == "stones";
      });
  return in_bins ? read_bins(*table) : read_stones(*table);
}

}  // namespace proofstone
