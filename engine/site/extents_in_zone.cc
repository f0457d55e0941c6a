#include "engine/site/extents_in_zone.h"

#include <fmt/format.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/sizing/key_trench.h"
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

/// What the method of keys is asked: the zone, with the designer's choices over it. Nothing where
/// the slope is not known.
std::optional<nlohmann::json> keys_asked(const Zone& zone, const ZoneWater& at) {
  if (!at.bank || !(at.bank->wet_slope_length.si() > 0)) return std::nullopt;
  const auto length = [](Length value) { return exact_text(measure(value), unit::meter); };
  nlohmann::json asked = {{"layer_thickness", length(zone.layer_thickness)},
                          {"slope_length", length(at.bank->wet_slope_length)},
                          {"channel_width", length(at.setting->water_top_width)}};
  if (zone.along && zone.along->to > zone.along->from) {
    asked["protected_length"] = length(zone.along->to - zone.along->from);
  }
  const auto own = zone.method_choices->find(key_trench_method().description().id);
  if (own != zone.method_choices->end() && own->is_object()) asked.update(*own);
  return asked;
}

ZoneKeys keys_of(const Evaluation& evaluation, Length slope_length) {
  const auto length = [&](const char* key) {
    return evaluation.output(key).unchecked_as<Length>();
  };
  ZoneKeys keys;
  keys.depth = length("depth");
  keys.bottom_width = length("bottom_width");
  keys.top_width = length("top_width");
  keys.length = slope_length;
  keys.volume = evaluation.output("volume").unchecked_as<Volume>();
  keys.spacing = length("spacing");
  keys.count = static_cast<int>(std::lround(evaluation.output("keys").si));
  return keys;
}

/// The extents with the working of keys, or why there are none.
struct Worked {
  const ZoneWater* water = nullptr;
  ZoneExtents extents;
  Steps steps;
  std::vector<LimitDescription> limits_not_kept;
  Problems problems;
};

std::optional<Worked> work_out(const Zone& zone, const std::vector<ZoneWater>& water) {
  if (zone.place != ZonePlace::bank) return std::nullopt;
  Worked worked;
  worked.water = highest_design_water(water);
  if (worked.water == nullptr) return std::nullopt;
  const auto extents = protection_extents(
      {worked.water->setting->water_top_width, zone.layer_thickness}, worked.steps);
  if (!extents) return std::nullopt;
  worked.extents = {extents->upstream, extents->downstream, extents->end_thickness,
                    extents->end_length, std::nullopt};
  const auto asked = keys_asked(zone, *worked.water);
  if (!asked) return worked;
  const auto keys = key_trench_method().evaluate(*asked);
  if (!keys) {
    worked.problems = located_under(keys.problems(), "/key-trench");
    return worked;
  }
  worked.extents.keys = keys_of(*keys, worked.water->bank->wet_slope_length);
  worked.steps.append(keys->steps);
  worked.limits_not_kept = keys->limits_not_kept;
  return worked;
}

void state_keys(Finding& finding, const ZoneKeys& keys, const Wording& wording) {
  finding.state("key_depth", "dk", "depth of a key from the layer's surface", measure(keys.depth));
  finding.state("key_width", "bk", "width of a key's bottom", measure(keys.bottom_width));
  finding.state("key_volume", "Vk", "rock of one key below the layer", measure(keys.volume));
  finding.state("key_spacing", "sk", "between keys, at most", measure(keys.spacing));
  finding.sentence += fmt::format(
      " Key both ends into the bank, and between them at most every {}: {} deep from the layer's "
      "surface, {} wide at the bottom, {} of rock each.",
      wording.ground(keys.spacing), wording.ground(keys.depth), wording.ground(keys.bottom_width),
      wording.of(keys.volume));
  if (keys.count == 0) return;
  finding.sentence +=
      fmt::format(" Over the stretch that is drawn that makes {} keys.", keys.count);
  finding.state("keys", "N", "keys over the stretch that is drawn",
                measure(Dimensionless::number(keys.count)));
}

Finding begin_finding(const Zone& zone, const ZoneWater& water) {
  Finding finding;
  finding.topic = Topic::extent;
  finding.about.zone = zone.id;
  finding.about.flow_case = water.flow_case->id;
  finding.id = "extent." + zone.id;
  finding.title = fmt::format("Extents of {}", zone.name);
  finding.about.method = protection_extents_method().description().id;
  for (const auto* method : {&protection_extents_method(), &key_trench_method()}) {
    const auto& about = method->description();
    finding.sources.insert(finding.sources.end(), about.sources.begin(), about.sources.end());
    finding.cautions.insert(finding.cautions.end(), about.cautions.begin(), about.cautions.end());
  }
  finding.limits = key_trench_method().description().limits;
  return finding;
}

}  // namespace

std::optional<ZoneExtents> extents_of_zone(const Zone& zone, const std::vector<ZoneWater>& water) {
  const auto worked = work_out(zone, water);
  if (!worked) return std::nullopt;
  return worked->extents;
}

std::optional<Finding> extents_finding(const Zone& zone, const std::vector<ZoneWater>& water,
                                       const Wording& wording) {
  const auto worked = work_out(zone, water);
  if (!worked) return std::nullopt;
  const auto& extents = worked->extents;
  Finding finding = begin_finding(zone, *worked->water);
  finding.steps = worked->steps;
  finding.limits_not_kept = worked->limits_not_kept;
  for (const auto& problem : worked->problems) finding.reasons.push_back(problem.sentence());
  finding.state("upstream", "Lu", "length upstream of what is protected",
                measure(extents.upstream));
  finding.state("downstream", "Ld", "length downstream of what is protected",
                measure(extents.downstream));
  finding.state("end_thickness", "Te", "thickness of the layer at its ends",
                measure(extents.end_thickness));
  finding.sentence = fmt::format(
      "Rock goes {} upstream and {} downstream beyond what it protects, {} thick over the last {} "
      "at each end.",
      wording.ground(extents.upstream), wording.ground(extents.downstream),
      wording.rock(extents.end_thickness), wording.ground(extents.end_length));
  if (extents.keys) state_keys(finding, *extents.keys, wording);
  finding.outcome = Outcome::ask_the_designer;
  finding.next =
      "Draw both ends of the zone and its keys; the document does not say where they lie.";
  return finding;
}

}  // namespace proofstone
