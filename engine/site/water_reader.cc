#include "engine/site/water_reader.h"

#include <fmt/format.h>

#include "engine/site/item_reader.h"

namespace proofstone {
namespace {

std::optional<Section> read_survey(FieldReader& reader, Problems& problems) {
  const auto* survey = reader.required("survey");
  if (survey == nullptr || is_unread_file(reader, "survey", *survey)) return std::nullopt;
  FieldReader table(*survey, reader.pointer() + "/survey", problems);
  std::vector<SectionPoint> points;
  const auto before = problems.size();
  if (table.required("points") != nullptr) {
    if (const auto* list = table.optional_list("points")) {
      points.reserve(list->size());
      for (std::size_t i = 0; i < list->size(); ++i) {
        FieldReader row((*list)[i], fmt::format("{}/points/{}", table.pointer(), i), problems);
        SectionPoint point;
        point.station = row.required_quantity<Length>("station");
        point.elevation = row.required_quantity<Length>("elevation");
        point.roughness = row.required_quantity<Dimensionless>("roughness");
        row.finish();
        points.push_back(point);
      }
    }
  }
  table.finish();
  if (problems.size() != before) return std::nullopt;
  auto section = Section::make(std::move(points));
  if (!section) {
    add_located(problems, section.problems(), table.pointer());
    return std::nullopt;
  }
  return std::move(*section);
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

}  // namespace proofstone
