#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/quantity/measure.h"
#include "formats/csv_table.h"

namespace proofstone {

/// A column a reader knows.
struct WantedColumn {
  std::string name;         ///< as CsvColumn::name
  std::vector<Unit> units;  ///< the units its heading may state; empty: a column without a unit
  bool required = true;
};

/// A wanted column as it stands in a table.
struct FoundColumn {
  std::size_t index = 0;
  std::string name;
  Unit unit = unit::number;
};

/// Finds the wanted columns, in their order; an optional one may be absent. A missing column, an
/// unknown one, a missing unit and a unit of another kind are Problems, and so is a header of one
/// cell where more are needed (its separator is not one of ours).
Expected<std::vector<std::optional<FoundColumn>>> find_columns(
    const CsvTable& table, const std::vector<WantedColumn>& wanted);

/// The text of a cell.
const std::string& cell_text(const CsvRow& row, const FoundColumn& column);

/// The number in a cell in the unit of its column. An empty cell, a decimal comma or a separator of
/// thousands, a unit in the cell, NaN, an infinity and anything else that is not one decimal number
/// are Problems.
Expected<Measure> read_quantity_cell(const CsvTable& table, const CsvRow& row,
                                     const FoundColumn& column);

/// As read_quantity_cell; negative values are Problems too.
Expected<Measure> read_not_negative_cell(const CsvTable& table, const CsvRow& row,
                                         const FoundColumn& column);

/// As read_quantity_cell; zero and negative values are Problems too.
Expected<Measure> read_positive_cell(const CsvTable& table, const CsvRow& row,
                                     const FoundColumn& column);

/// A whole number from 0 to 1,000,000.
Expected<int> read_count_cell(const CsvTable& table, const CsvRow& row, const FoundColumn& column);

/// Problems of the engine that name an item by its number ("stone 12", "point 4, station") as
/// problems of the table: item 1 is the first row.
Problems at_rows_of(const CsvTable& table, const Problems& problems);

}  // namespace proofstone
