#include "engine/site/water_reader.h"

#include <fmt/format.h>

#include "engine/site/item_reader.h"

namespace proofstone {
namespace {

/// The rows under `field`/points, each by `read_row(reader)`, made into a Made.
template <class Made, class ReadRow>
std::optional<Made> made_of_points(FieldReader& reader, const std::string& field,
                                   Problems& problems, ReadRow read_row) {
  const auto* kept = reader.required(field);
  if (kept == nullptr || is_unread_file(reader, field, *kept)) return std::nullopt;
  FieldReader table(*kept, reader.pointer() + "/" + field, problems);
  std::vector<decltype(read_row(table))> points;
  const auto before = problems.size();
  if (table.required("points") != nullptr) {
    if (const auto* list = table.optional_list("points")) {
      points.reserve(list->size());
      for (std::size_t i = 0; i < list->size(); ++i) {
        FieldReader row((*list)[i], fmt::format("{}/points/{}", table.pointer(), i), problems);
        points.push_back(read_row(row));
        row.finish();
      }
    }
  }
  table.finish();
  if (problems.size() != before) return std::nullopt;
  auto made = Made::make(std::move(points));
  if (!made) {
    add_located(problems, made.problems(), table.pointer());
    return std::nullopt;
  }
  return std::move(*made);
}

std::optional<Section> read_survey(FieldReader& reader, Problems& problems) {
  return made_of_points<Section>(reader, "survey", problems, [](FieldReader& row) {
    SectionPoint point;
    point.station = row.required_quantity<Length>("station");
    point.elevation = row.required_quantity<Length>("elevation");
    point.roughness = row.required_quantity<Dimensionless>("roughness");
    return point;
  });
}

std::optional<Centreline> read_course(FieldReader& reader, Problems& problems) {
  return made_of_points<Centreline>(reader, "course", problems, [](FieldReader& row) {
    PlanPoint point;
    point.x = row.required_quantity<Length>("easting");
    point.y = row.required_quantity<Length>("northing");
    return point;
  });
}

}  // namespace

FlowCase read_flow_case(FieldReader& reader, const std::string& id) {
  FlowCase flow;
  flow.id = id;
  flow.name = reader.required_text("name");
  flow.purpose = reader.choice<FlowPurpose>("purpose",
                                            {{"design", FlowPurpose::design},
                                             {"frequent", FlowPurpose::frequent},
                                             {"base", FlowPurpose::base}},
                                            std::nullopt);
  flow.discharge =
      reader.required_positive<Discharge>("discharge", "A discharge is more than zero.");
  flow.return_period_years = reader.optional_quantity<Dimensionless>("return_period_years");
  flow.days_per_year = reader.optional_quantity<Dimensionless>("days_per_year");
  if (flow.days_per_year &&
      !(flow.days_per_year->number() >= 0 && flow.days_per_year->number() <= 366)) {
    reader.report("out-of-range", "A year has not so many days.", "days_per_year", "0 to 366");
  }
  return flow;
}

std::optional<SiteSection> read_section(FieldReader& reader, const std::string& id,
                                        Problems& problems) {
  const auto name = reader.required_text("name");
  auto survey = read_survey(reader, problems);
  const auto left = reader.optional_quantity<Length>("left_bank");
  const auto right = reader.optional_quantity<Length>("right_bank");
  const auto slope = reader.required_positive<Slope>(
      "energy_slope", "Water runs downhill: the slope is more than zero.");
  const auto composite =
      reader.choice<CompositeRoughness>("composite_roughness",
                                        {{"horton", CompositeRoughness::horton},
                                         {"pavlovskii", CompositeRoughness::pavlovskii},
                                         {"lotter", CompositeRoughness::lotter}},
                                        CompositeRoughness::horton);
  if (!survey) return std::nullopt;
  const Length first = survey->points().front().station;
  const Length last = survey->points().back().station;
  const Length left_bank = left.value_or(first);
  const Length right_bank = right.value_or(last);
  if (left_bank < first || right_bank > last || left_bank >= right_bank) {
    reader.report("bad-banks",
                  "The bank stations do not lie inside the section, left before right.",
                  left ? "left_bank" : "right_bank", "stations of the survey");
  }
  return SiteSection{id, name, std::move(*survey), left_bank, right_bank, slope, composite};
}

std::optional<SiteCentreline> read_centreline(FieldReader& reader, const std::string& id,
                                              Problems& problems) {
  const auto name = reader.required_text("name");
  auto course = read_course(reader, problems);
  if (!course) return std::nullopt;
  return SiteCentreline{id, name, std::move(*course)};
}

}  // namespace proofstone
