#include "engine/site/zone_water.h"

#include <algorithm>
#include <optional>

#include "engine/site/local_attack.h"
#include "engine/site/near_structure.h"
#include "engine/site/section_water.h"
#include "engine/site/stated_zone_water.h"
#include "engine/site/zone_in_plan.h"
#include "engine/site/zone_setting_of.h"
#include "engine/site/zone_water_words.h"

namespace proofstone {
namespace {

/// Puts the water of the main channel and the bend of the plan into the setting.
ZoneSetting channel_setting(const Site& site, const Zone& zone, ZoneWater& water,
                            Slope energy_slope, const Wording& wording) {
  Finding& finding = water.finding;
  ZoneSetting setting = setting_of(site, zone, *water.flow_case);
  take_channel(setting, energy_slope, *water.channel);
  take_bend_from_plan(setting, site, zone, finding, wording);
  finding.steps.computed("V", "mean velocity of the main channel", "Q_channel / A_channel",
                         measure(setting.average_velocity));
  finding.steps.computed("Fr", "Froude number of the main channel", "V / √(g·A/T)",
                         measure(setting.froude_number));
  return setting;
}

ZoneWater water_in(const Site& site, const Zone& zone, UniformFlows& uniform,
                   const FlowCase& flow_case, const ReachWater* reach, const Wording& wording) {
  const SiteSection& section = site.sections.at(zone.section);
  ZoneWater water;
  water.flow_case = &flow_case;
  water.finding = begin_water_finding(zone, flow_case);
  auto& finding = water.finding;
  const auto there = water_of_section(section, uniform, flow_case, reach, finding, wording);
  if (!there) {
    report_water_problems(finding, there.problems());
    return water;
  }
  water.flow = there->flow;
  const FlowPart* channel = main_channel(*water.flow, section);
  if (channel == nullptr || channel->top_width.si() <= 0) {
    report_water_problems(finding, {{"dry", "The main channel carries no water.", "", "", ""}});
    return water;
  }
  water.channel = *channel;
  ZoneSetting setting = channel_setting(site, zone, water, there->energy_slope, wording);
  const auto problems = take_ground(setting, zone, section.survey, *water.flow, water.bank);
  if (!problems.empty()) {
    report_water_problems(finding, problems);
    return water;
  }
  if (water.bank) {
    finding.steps.append(water.bank->steps);
  } else {
    finding.steps.computed("d", "greatest depth over the bed", "w − lowest ground",
                           measure(setting.local_depth));
  }
  if (const auto* stated = stated_at(zone, flow_case)) take_stated(setting, *stated, finding);
  water.setting = std::move(setting);
  caution_about_ground(finding, water, wording);
  word_water(finding, water, zone, wording);
  if (level_is_assumed(reach, section)) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "The level is assumed critical: add sections to the reach, then look again.";
  }
  state_water(finding, water);
  add_local_attack(water, zone, section, wording);
  take_near_structure(water, zone, wording);
  return water;
}

}  // namespace

std::vector<ZoneWater> water_at_zone(const Site& site, const Zone& zone,
                                     const std::vector<ReachWater>& reaches,
                                     const Wording& wording) {
  std::vector<const FlowCase*> cases;
  for (const auto& [id, flow_case] : site.flow_cases) cases.push_back(&flow_case);
  std::sort(cases.begin(), cases.end(), [](const FlowCase* a, const FlowCase* b) {
    if (a->discharge < b->discharge || b->discharge < a->discharge) {
      return a->discharge < b->discharge;
    }
    return a->id < b->id;
  });
  std::vector<ZoneWater> all;
  all.reserve(cases.size());
  std::optional<UniformFlows> uniform;
  if (!zone.section.empty()) uniform.emplace(uniform_flows_of(site.sections.at(zone.section)));
  for (const auto* flow_case : cases) {
    if (uniform) {
      all.push_back(water_in(site, zone, *uniform, *flow_case,
                             reach_water_of(reaches, zone.section, *flow_case), wording));
    } else if (stated_at(zone, *flow_case) != nullptr ||
               flow_case->purpose == FlowPurpose::design) {
      // Of base and frequent flows nobody has to state anything.
      all.push_back(stated_zone_water(site, zone, *flow_case, wording));
    }
  }
  return all;
}

}  // namespace proofstone
