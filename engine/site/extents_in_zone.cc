#include "engine/site/extents_in_zone.h"

#include <fmt/format.h>

#include "engine/sizing/protection_extents.h"

namespace proofstone {
namespace {

/// The design case with the highest water at the zone.
const ZoneWater* highest_design_water(const std::vector<ZoneWater>& water) {
  const ZoneWater* highest = nullptr;
  for (const auto& at : water) {
    if (at.flow_case->purpose != FlowPurpose::design || !at.flow || !at.setting) continue;
    if (highest == nullptr || at.flow->water_level > highest->flow->water_level) highest = &at;
  }
  return highest;
}

}  // namespace

std::optional<Finding> extents_finding(const Zone& zone, const std::vector<ZoneWater>& water,
                                       const Wording& wording) {
  if (zone.place != ZonePlace::bank) return std::nullopt;
  const auto* highest = highest_design_water(water);
  if (highest == nullptr) return std::nullopt;
  ProtectionExtentsInputs inputs;
  inputs.top_width = highest->setting->water_top_width;
  inputs.layer_thickness = zone.layer_thickness;
  Finding finding;
  finding.topic = Topic::extent;
  finding.about.zone = zone.id;
  finding.about.flow_case = highest->flow_case->id;
  finding.id = "extent." + zone.id;
  finding.title = fmt::format("Extents of {}", zone.name);
  const auto& about = protection_extents_method().description();
  finding.about.method = about.id;
  finding.sources = about.sources;
  finding.cautions = about.cautions;
  const auto extents = protection_extents(inputs, finding.steps);
  if (!extents) return std::nullopt;
  const auto add = [&finding](const char* key, const char* symbol, const char* meaning,
                              Length value) {
    finding.values.push_back({key, symbol, meaning, measure(value), LengthUse::ground});
  };
  add("upstream", "Lu", "length upstream of what is protected", extents->upstream);
  add("downstream", "Ld", "length downstream of what is protected", extents->downstream);
  add("end_thickness", "Te", "thickness of the layer at its ends", extents->end_thickness);
  finding.sentence = fmt::format(
      "Rock goes {} upstream and {} downstream beyond what it protects, {} thick over the last {} "
      "at "
      "each end.",
      wording.ground(extents->upstream), wording.ground(extents->downstream),
      wording.rock(extents->end_thickness), wording.ground(extents->end_length));
  finding.outcome = Outcome::ask_the_designer;
  finding.next = "Draw both ends of the zone; the document does not say where they lie.";
  return finding;
}

}  // namespace proofstone
