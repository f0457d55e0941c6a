#include "formats/centreline_csv.h"

#include "formats/csv_columns.h"
#include "formats/problem_list.h"

namespace proofstone {

Expected<CentrelineTable> read_centreline_csv(std::string_view bytes, const std::string& file) {
  const auto table = read_csv_table(bytes, file);
  if (!table) return table.problems();
  const std::vector<Unit> ground_units{unit::foot, unit::survey_foot, unit::meter};
  const auto columns =
      find_columns(*table, {{"easting", ground_units}, {"northing", ground_units}});
  if (!columns) return columns.problems();
  const FoundColumn& easting_column = *(*columns)[0];
  const FoundColumn& northing_column = *(*columns)[1];

  CentrelineTable course;
  course.easting_unit = easting_column.unit;
  course.northing_unit = northing_column.unit;
  ProblemList problems;
  for (const auto& row : table->rows) {
    const auto easting = read_quantity_cell(*table, row, easting_column);
    const auto northing = read_quantity_cell(*table, row, northing_column);
    for (const auto* value : {&easting, &northing}) {
      if (!*value) problems.add(value->problems());
    }
    if (!easting || !northing) continue;
    course.points.push_back({easting->unchecked_as<Length>(), northing->unchecked_as<Length>()});
  }
  if (!problems.empty()) return problems.take();

  const auto checked = Centreline::make(course.points);
  if (!checked) return at_rows_of(*table, checked.problems());
  return course;
}

}  // namespace proofstone
