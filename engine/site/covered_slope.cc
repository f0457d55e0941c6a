#include "engine/site/covered_slope.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/cover/cover_line.h"
#include "engine/finding/outcome_order.h"
#include "engine/sizing/hec15_curves.h"

namespace proofstone {
namespace {

Dimensionless bend_factor_at(const ZoneSetting& setting) {
  const bool outside = setting.bend_side == BendSide::outside && setting.bend_radius &&
                       setting.water_top_width.meters() > 0;
  return Dimensionless::number(
      outside ? hec15::bend_factor(*setting.bend_radius / setting.water_top_width) : 1.0);
}

std::optional<Length> along_stream(const Zone& zone) {
  if (zone.cover->length) return zone.cover->length;
  if (zone.extent.length) return zone.extent.length;
  if (zone.along && zone.along->to > zone.along->from) return zone.along->to - zone.along->from;
  return std::nullopt;
}

}  // namespace

std::optional<CoveredSlope> covered_slope(const Zone& zone, const SiteSection* section,
                                          const std::vector<ZoneWater>& waters) {
  if (section == nullptr || !in_stream(zone.place)) return std::nullopt;
  if (zone.place == ZonePlace::bed) {
    const Length bed = section->survey.lowest();
    return CoveredSlope{bed, bed, Angle::radians(0), Length::meters(0), along_stream(zone)};
  }
  const auto slope = slope_of_zone(zone, *section);
  if (!slope) return std::nullopt;
  const auto from = elevation_of(zone.cover->from, waters, slope->toe_elevation);
  if (!from) return std::nullopt;
  const Length low = std::clamp(*from, slope->toe_elevation, slope->top_elevation);
  return CoveredSlope{low, slope->top_elevation, slope->angle,
                      slope_length_between(zone, *section, *slope, low, slope->top_elevation),
                      along_stream(zone)};
}

Finding begin_cover_finding(const Zone& zone, const std::string& part, const std::string& title) {
  Finding finding;
  finding.topic = Topic::cover;
  finding.about.zone = zone.id;
  finding.id = fmt::format("cover.{}.{}", zone.id, part);
  finding.title = fmt::format("{} of {}", title, zone.name);
  finding.outcome = Outcome::meets;
  finding.next = "Nothing to do.";
  return finding;
}

std::vector<ShearAtEdge> shear_at_edge(const CoveredSlope& slope,
                                       const std::vector<ZoneWater>& waters) {
  std::vector<ShearAtEdge> all;
  for (const ZoneWater& water : waters) {
    const auto level = water_level_of(water);
    if (water.flow_case->purpose != FlowPurpose::frequent || !level || !water.setting) continue;
    if (!(water.setting->energy_slope.ratio() > 0)) continue;
    ShearAtEdge edge;
    edge.water = &water;
    edge.depth = *level - slope.from;
    edge.bend_factor = bend_factor_at(*water.setting);
    if (edge.depth.meters() > 0) {
      CoverLineInputs inputs{edge.depth,       water.setting->energy_slope, slope.angle,
                             edge.bend_factor, Stress::pascals(1),          std::nullopt};
      Steps unread;
      const auto line = cover_line(inputs, unread);
      if (!line) continue;
      edge.shear = line->toe_shear;
    }
    all.push_back(edge);
  }
  return all;
}

void worsen(Finding& finding, Outcome outcome, const std::string& sentence,
            const std::string& next) {
  finding.sentence += (finding.sentence.empty() ? "" : " ") + sentence;
  if (weight(outcome) <= weight(finding.outcome)) return;
  finding.outcome = outcome;
  finding.next = next;
  finding.governs = outcome == Outcome::falls_short;
}

}  // namespace proofstone
