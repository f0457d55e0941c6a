#include "formats/weighed_sample_csv.h"

#include <optional>

#include "formats/problem_list.h"
#include "formats/size_columns.h"

namespace proofstone {

namespace {

/// The stones of a group, 0 where they were not counted.
Expected<int> read_stones(const CsvTable& table, const CsvRow& row,
                          const std::optional<FoundColumn>& column, bool has_mass) {
  if (!column || cell_text(row, *column).empty()) return 0;
  auto stones = read_count_cell(table, row, *column);
  if (stones && (*stones > 0) != has_mass) {
    return Problem{"mass-without-stones",
                   "The group has a mass without stones, or stones without a mass.", table.file,
                   cell_place(row.line, column->name),
                   "both above 0, both 0, or an empty cell where nobody counted"};
  }
  return stones;
}

}  // namespace

Expected<WeighedSampleTable> read_weighed_sample_csv(std::string_view bytes,
                                                     const std::string& file) {
  const auto table = read_csv_table(bytes, file);
  if (!table) return table.problems();
  const auto& sizes = stone_size_units();
  const auto columns =
      find_columns(*table, {{"larger than", sizes},
                            {"not larger than", sizes},
                            {"mass", {unit::pound, unit::short_ton, unit::kilogram, unit::tonne}},
                            {"stones", {}, false}});
  if (!columns) return columns.problems();
  const FoundColumn& larger_than = *(*columns)[0];
  const FoundColumn& not_larger_than = *(*columns)[1];
  const FoundColumn& mass_column = *(*columns)[2];
  const std::optional<FoundColumn>& stones_column = (*columns)[3];

  WeighedSampleTable sample;
  sample.larger_than_unit = larger_than.unit;
  sample.not_larger_unit = not_larger_than.unit;
  sample.mass_unit = mass_column.unit;
  ProblemList problems;
  for (const auto& row : table->rows) {
    const auto range = read_range_ends(*table, row, larger_than, not_larger_than);
    const auto mass = read_not_negative_cell(*table, row, mass_column);
    if (!range) problems.add(range.problems());
    if (!mass) {
      problems.add(mass.problems());
      continue;
    }
    const auto stones = read_stones(*table, row, stones_column, mass->si > 0);
    if (!stones) problems.add(stones.problems());
    if (!range || !stones) continue;
    sample.groups.push_back(
        {range->larger_than, range->not_larger_than, mass->unchecked_as<Mass>(), *stones});
  }
  if (!problems.empty()) return problems.take();
  const auto checked = gradation_from_weighed(sample.groups, SizeMeaning::intermediate_axis);
  if (!checked) return at_rows_of(*table, checked.problems());
  return sample;
}

}  // namespace proofstone
