#include "formats/size_columns.h"

#include "formats/problem_list.h"

namespace proofstone {

const std::vector<Unit>& stone_size_units() {
  static const std::vector<Unit> units{unit::inch, unit::foot, unit::millimeter, unit::centimeter};
  return units;
}

Expected<RangeEnds> read_range_ends(const CsvTable& table, const CsvRow& row,
                                    const FoundColumn& larger_than,
                                    const FoundColumn& not_larger_than) {
  RangeEnds range;
  ProblemList problems;
  const bool at_end = row.line == table.rows.front().line || row.line == table.rows.back().line;
  if (!at_end || !cell_text(row, larger_than).empty()) {
    const auto lower = at_end ? read_not_negative_cell(table, row, larger_than)
                              : read_positive_cell(table, row, larger_than);
    if (!lower) {
      problems.add(lower.problems());
    } else if (lower->si > 0) {
      range.larger_than = lower->unchecked_as<Length>();
    }
  }
  const auto upper = read_positive_cell(table, row, not_larger_than);
  if (upper) {
    range.not_larger_than = upper->unchecked_as<Length>();
  } else {
    problems.add(upper.problems());
  }
  if (!problems.empty()) return problems.take();
  return range;
}

}  // namespace proofstone
