#include "engine/site/site_pictures.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/lined_ground.h"
#include "engine/site/local_attack.h"

namespace proofstone {
namespace {

std::vector<StonesPicture::Stone> stones_of(
    const std::vector<std::pair<std::string, Expected<Length>>>& sizes) {
  std::vector<StonesPicture::Stone> stones;
  for (const auto& [label, size] : sizes) {
    if (size) stones.push_back({label, *size});
  }
  return stones;
}

/// The flow whose velocity and shear are drawn: the governing one, else the largest computed.
const ZoneWater* drawn_across(const std::vector<ZoneWater>& water, const ZoneSizing& sizing) {
  const ZoneWater* governing = sizing.governing ? sizing.asked[*sizing.governing].water : nullptr;
  if (governing != nullptr && governing->flow && governing->setting) return governing;
  for (auto at = water.rbegin(); at != water.rend(); ++at) {
    if (at->flow && at->setting) return &*at;
  }
  return nullptr;
}

void add_across(SectionPicture& picture, const SiteSection& section,
                const std::vector<ZoneWater>& water, const ZoneSizing& sizing) {
  const ZoneWater* drawn = drawn_across(water, sizing);
  if (drawn == nullptr) return;
  picture.across_of = drawn->flow_case->name;
  for (const FlowSlice& slice :
       slices_across(section, *drawn->flow, drawn->setting->energy_slope)) {
    picture.across.push_back({slice.left, slice.right, slice.velocity, slice.shear});
  }
}

void add_ground(SectionPicture& picture, const SiteSection& section) {
  for (const auto& point : section.survey.points()) {
    picture.ground.push_back({point.station, point.elevation});
  }
}

}  // namespace

SectionPicture section_alone(const SiteSection& section) {
  SectionPicture picture;
  picture.id = "section.alone." + section.id;
  picture.title = section.name;
  picture.description = "Cross-section looking downstream, as it was surveyed; no zone lies on it.";
  add_ground(picture, section);
  return picture;
}

SectionPicture section_picture(const Site& site, const Zone& zone,
                               const std::vector<ZoneWater>& water, const ZoneSizing& sizing) {
  const auto& section = site.sections.at(zone.section);
  SectionPicture picture;
  picture.id = "section." + zone.id;
  picture.title = fmt::format("{}: {}", section.name, zone.name);
  add_ground(picture, section);
  add_across(picture, section, water, sizing);
  std::vector<std::string> levels;
  const ZoneWater* governing = sizing.governing ? sizing.asked[*sizing.governing].water : nullptr;
  for (const auto& at : water) {
    if (!at.flow) continue;
    picture.water_levels.push_back({at.flow_case->name, at.flow->water_level, &at == governing});
    levels.push_back(at.flow_case->name);
  }
  auto surface = lined_ground(section, zone, water);
  if (surface.size() > 1) {
    SectionPicture::RockLayer layer;
    layer.label = sizing.specified->name;
    layer.surface = std::move(surface);
    layer.thickness = zone.layer_thickness;
    layer.median_stone = sizing.specified->nominal_d50;
    layer.angularity = site.sources.at(zone.source).rock.angularity;
    picture.layers.push_back(std::move(layer));
  }
  picture.description = fmt::format(
      "Cross-section looking downstream with the water level of {} and the rock layer of {} drawn "
      "at size.",
      levels.empty() ? "no flow case" : levels.front(), zone.name);
  if (levels.size() > 1) {
    picture.description = fmt::format(
        "Cross-section looking downstream with {} water levels and the rock layer of {} drawn at "
        "size.",
        levels.size(), zone.name);
  }
  return picture;
}

GradationPicture gradation_picture(const Site& site, const LotEvidence& evidence,
                                   const std::vector<const RockInZone*>& zones) {
  GradationPicture picture;
  picture.id = "gradation." + evidence.lot->id;
  picture.title = fmt::format("{} in the band of {}", evidence.lot->name, evidence.ordered->name);
  picture.class_name = evidence.ordered->name;
  picture.coarse_limit = evidence.ordered->band.coarse_limit();
  picture.fine_limit = evidence.ordered->band.fine_limit();
  picture.confidence = site.evidence.confidence;
  if (evidence.together) {
    picture.measured = confidence_band(*evidence.together, site.evidence.confidence);
  }
  for (const auto& seen : evidence.seen) {
    picture.looks.push_back({seen.look->name, seen.measured.curve.points()});
  }
  for (const auto* zone : zones) {
    for (const auto& measured : zone->margins) {
      if (!counts(*zone->zone, *measured.asked)) continue;
      picture.required.push_back(
          {fmt::format("{}, {}", measured.asked->method->description().title, zone->zone->name),
           measured.required.percent_smaller, measured.required.size, measured.margin.outcome});
    }
  }
  picture.description = fmt::format(
      "Percent smaller by mass against stone size: the limits of {}, the measured curve of {} with "
      "its limits at each size, and the size that each method asks for.",
      evidence.ordered->name, evidence.lot->name);
  return picture;
}

StonesPicture stones_picture(const Site& site, const LotEvidence& evidence) {
  StonesPicture picture;
  picture.id = "stones." + evidence.lot->id;
  picture.title =
      fmt::format("The stones of {} and of {}", evidence.ordered->name, evidence.lot->name);
  const auto& band = evidence.ordered->band;
  const auto angularity = site.sources.at(evidence.lot->source).rock.angularity;
  auto class_stones = [&band](auto size_at) {
    return stones_of(
        {{"D15", (band.*size_at)(15)}, {"D50", (band.*size_at)(50)}, {"D85", (band.*size_at)(85)}});
  };
  picture.rows.push_back({fmt::format("{}, smallest allowed", evidence.ordered->name),
                          class_stones(&GradationBand::smallest_size_at), angularity});
  if (evidence.together) {
    const auto& curve = evidence.together->curve;
    picture.rows.push_back(
        {fmt::format("{}, measured", evidence.lot->name),
         stones_of(
             {{"D15", curve.size_at(15)}, {"D50", curve.size_at(50)}, {"D85", curve.size_at(85)}}),
         angularity});
  }
  picture.rows.push_back({fmt::format("{}, largest allowed", evidence.ordered->name),
                          class_stones(&GradationBand::largest_size_at), angularity});
  picture.description =
      "Stones drawn to one scale beside a rule: the smallest and the largest that "
      "the class allows at three percentages, and the measured ones between.";
  return picture;
}

}  // namespace proofstone
