#include "engine/site/stated_zone_water.h"

#include <fmt/format.h>

#include "engine/site/zone_setting_of.h"
#include "engine/site/zone_water_words.h"

namespace proofstone {
namespace {

void add_stated_values(Finding& finding, const StatedWater& stated) {
  const auto add = [&finding](const char* key, const char* symbol, const char* meaning,
                              const auto& value) {
    if (!value) return;
    finding.values.push_back({key, symbol, meaning, measure(*value), LengthUse::ground});
  };
  add("discharge", "Q", "discharge", stated.discharge);
  add("average_velocity", "V", "velocity", stated.velocity);
  add("local_depth", "d", "depth", stated.depth);
  add("tailwater_depth", "TW", "tailwater depth", stated.tailwater_depth);
  add("water_level", "w", "water level", stated.water_level);
  add("wave_height", "H", "significant wave height", stated.wave_height);
}

}  // namespace

const StatedWater* stated_at(const Zone& zone, const FlowCase& flow_case) {
  const auto stated = zone.water.find(flow_case.id);
  return stated == zone.water.end() ? nullptr : &stated->second;
}

void take_stated(ZoneSetting& setting, const StatedWater& stated, Finding& finding) {
  setting.stated = stated;
  finding.sources.push_back({stated.from, "", SourceStanding::stated});
  const auto given = [&](const char* symbol, const char* meaning, const auto& value) {
    if (value) finding.steps.given(symbol, meaning, measure(*value), stated.from);
  };
  given("Q", "discharge at the zone, stated", stated.discharge);
  given("V", "velocity at the zone, stated", stated.velocity);
  given("d", "depth at the zone, stated", stated.depth);
  given("TW", "tailwater depth, stated", stated.tailwater_depth);
  given("w", "water level, stated", stated.water_level);
  given("H", "significant wave height, stated", stated.wave_height);
  if (stated.velocity) setting.average_velocity = *stated.velocity;
  if (stated.depth) {
    setting.toe_depth = *stated.depth;
    setting.local_depth = *stated.depth;
  }
}

ZoneWater stated_zone_water(const Site& site, const Zone& zone, const FlowCase& flow_case,
                            const Wording& wording) {
  ZoneWater water;
  water.flow_case = &flow_case;
  water.finding = begin_water_finding(zone, flow_case);
  auto& finding = water.finding;
  const StatedWater* stated = stated_at(zone, flow_case);
  if (stated == nullptr) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence =
        "Nothing is stated of the water at this zone in this flow case, and no section gives it.";
    finding.next = "State the water of this flow case at the zone, or give the zone a section.";
    return water;
  }
  ZoneSetting setting = setting_of(site, zone, flow_case);
  take_stated(setting, *stated, finding);
  add_stated_values(finding, *stated);
  std::vector<std::string> words;
  for (const auto& value : finding.values) {
    words.push_back(
        fmt::format("{} {}", value.meaning, wording.shown(value.value, value.length_use)));
  }
  finding.outcome = words.empty() ? Outcome::not_yet_known : Outcome::meets;
  finding.sentence = words.empty() ? fmt::format("{} states no figure.", stated->from)
                                   : fmt::format("Stated by {}: {}.", stated->from, listed(words));
  finding.next = words.empty()
                     ? "State what the methods for this place ask for."
                     : "Nothing to do; see that the source of these figures is on record.";
  water.setting = std::move(setting);
  return water;
}

}  // namespace proofstone
