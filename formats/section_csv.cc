#include "formats/section_csv.h"

#include "formats/csv_columns.h"
#include "formats/problem_list.h"

namespace proofstone {

Expected<SectionTable> read_section_csv(std::string_view bytes, const std::string& file) {
  const auto table = read_csv_table(bytes, file);
  if (!table) return table.problems();
  const std::vector<Unit> ground_units{unit::foot, unit::survey_foot, unit::meter};
  const auto columns = find_columns(
      *table, {{"station", ground_units}, {"elevation", ground_units}, {"roughness n", {}}});
  if (!columns) return columns.problems();
  const FoundColumn& station_column = *(*columns)[0];
  const FoundColumn& elevation_column = *(*columns)[1];
  const FoundColumn& roughness_column = *(*columns)[2];

  SectionTable section;
  section.station_unit = station_column.unit;
  section.elevation_unit = elevation_column.unit;
  ProblemList problems;
  for (const auto& row : table->rows) {
    const auto station = read_quantity_cell(*table, row, station_column);
    const auto elevation = read_quantity_cell(*table, row, elevation_column);
    const auto roughness = read_quantity_cell(*table, row, roughness_column);
    for (const auto* value : {&station, &elevation, &roughness}) {
      if (!*value) problems.add(value->problems());
    }
    if (!station || !elevation || !roughness) continue;
    section.points.push_back({station->unchecked_as<Length>(), elevation->unchecked_as<Length>(),
                              roughness->unchecked_as<Dimensionless>()});
  }
  if (!problems.empty()) return problems.take();

  const auto checked = Section::make(section.points);
  if (!checked) return at_rows_of(*table, checked.problems());
  return section;
}

}  // namespace proofstone
