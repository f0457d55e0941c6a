#include "engine/site/zone_water.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/site/local_attack.h"
#include "engine/site/zone_in_plan.h"

namespace proofstone {
namespace {

std::vector<Length> divisions_of(const SiteSection& section) {
  std::vector<Length> divisions;
  const auto& points = section.survey.points();
  for (const Length station : {section.left_bank, section.right_bank}) {
    if (station > points.front().station && station < points.back().station) {
      divisions.push_back(station);
    }
  }
  return divisions;
}

/// The part of the flow between the bank stations.
const FlowPart* main_channel(const SectionFlow& flow, const SiteSection& section) {
  const Length middle = 0.5 * (section.left_bank + section.right_bank);
  for (const auto& part : flow.parts) {
    if (part.left <= middle && middle <= part.right) return &part;
  }
  return nullptr;
}

Length mean_depth_of(const FlowPart& part) {
  return Length::meters(part.area.square_meters() / part.top_width.meters());
}

double froude_of(const FlowPart& part) {
  return part.velocity.meters_per_second() /
         std::sqrt(standard_gravity.meters_per_second_squared() * mean_depth_of(part).meters());
}

Finding begin_finding(const Zone& zone, const FlowCase& flow_case) {
  Finding finding;
  finding.topic = Topic::water;
  finding.about.zone = zone.id;
  finding.about.flow_case = flow_case.id;
  finding.id = fmt::format("water.{}.{}", zone.id, flow_case.id);
  finding.title = fmt::format("{}: water at {}", flow_case.name, zone.name);
  return finding;
}

void report_problems(Finding& finding, const Problems& problems) {
  finding.outcome = Outcome::not_yet_known;
  for (const auto& problem : problems) finding.reasons.push_back(problem.sentence());
  finding.sentence = "The water at this zone could not be computed. " + finding.reasons.front();
  finding.next = "Mend the section, the slope or the discharge; then look again.";
}

/// What does not depend on any water.
ZoneSetting setting_of(const Site& site, const Zone& zone, const FlowCase& flow_case) {
  ZoneSetting setting;
  setting.zone = zone.id;
  setting.flow_case = flow_case.id;
  setting.place = zone.place;
  setting.channel_form = zone.channel_form;
  if (zone.bend) {
    setting.bend_side = zone.bend->side;
    setting.bend_radius = zone.bend->radius;
  }
  setting.turbulence = zone.turbulence;
  setting.rock = site.sources.at(zone.source).rock;
  setting.method_choices = &*zone.method_choices;
  return setting;
}

void take_channel(ZoneSetting& setting, Slope energy_slope, const FlowPart& channel) {
  setting.average_velocity = channel.velocity;
  setting.water_top_width = channel.top_width;
  setting.mean_depth = mean_depth_of(channel);
  setting.energy_slope = energy_slope;
  setting.froude_number = Dimensionless::number(froude_of(channel));
}

/// Puts what the zone states of its water over what was computed.
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

void state_values(Finding& finding, const ZoneWater& water) {
  const auto& flow = *water.flow;
  const auto add = [&finding](std::string key, std::string symbol, std::string meaning,
                              Measure value) {
    finding.values.push_back(
        {std::move(key), std::move(symbol), std::move(meaning), value, LengthUse::ground});
  };
  add("discharge", "Q", "discharge", measure(flow.discharge));
  add("water_level", "w", "water level", measure(flow.water_level));
  if (!water.setting) return;
  const auto& setting = *water.setting;
  add("average_velocity", "V", "mean velocity of the main channel",
      measure(setting.average_velocity));
  add("toe_depth", "y", "depth at the toe", measure(setting.toe_depth));
  add("local_depth", "d", "local depth at the rock", measure(setting.local_depth));
  add("top_width", "W", "water surface width of the main channel",
      measure(setting.water_top_width));
  add("froude_number", "Fr", "Froude number of the main channel", measure(setting.froude_number));
}

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

void word_outcome(Finding& finding, const ZoneWater& water, const Zone& zone,
                  const Wording& wording) {
  const auto& setting = *water.setting;
  finding.sentence = fmt::format(
      "{} stands at {} and runs at {} in the main channel (Froude number {}); at the rock it is {} "
      "deep.",
      wording.of(water.flow->discharge), wording.ground(water.flow->water_level),
      wording.of(setting.average_velocity), significant(setting.froude_number.number(), 2),
      wording.ground(setting.local_depth));
  if (water.flow->wet.end_wall_added) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "The water stands above an end of the survey: extend the section.";
  } else if (setting.froude_number.number() >= 1) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next =
        "The flow is rapid here. Bank formulas for tranquil flow do not apply; use a method for "
        "steep channels.";
  } else {
    finding.outcome = Outcome::meets;
    finding.next = fmt::format("Nothing to do; what {} needs in this water stands under rock size.",
                               zone.name);
  }
}

/// What a reviewer should look at in the ground before trusting the level.
void caution_about_ground(Finding& finding, const ZoneWater& water, const Wording& wording) {
  if (water.flow->wet.wet_stretches > 1) {
    finding.cautions.push_back(
        "Low ground apart from the channel is taken to carry water. See whether it is connected at "
        "this level; if not, the channel carries more.");
  }
  for (const auto& level : water.flow->further_levels) {
    finding.cautions.push_back(fmt::format(
        "The same discharge would also run uniformly at {}: conveyance falls while the water "
        "spreads. The lower level is used.",
        wording.ground(level)));
  }
  if (water.bank && water.bank->steepest_angle > water.bank->angle + Angle::degrees(3)) {
    finding.cautions.push_back(
        fmt::format("The bank is uneven: sized as {} from toe to top, but a piece of it stands at "
                    "{}. Trim it, or "
                    "size on the steeper piece.",
                    wording.of(water.bank->angle), wording.of(water.bank->steepest_angle)));
  }
}

const StatedWater* stated_at(const Zone& zone, const FlowCase& flow_case) {
  const auto stated = zone.water.find(flow_case.id);
  return stated == zone.water.end() ? nullptr : &stated->second;
}

/// The water of a zone without a section: what it states, or not yet known.
ZoneWater stated_water_in(const Site& site, const Zone& zone, const FlowCase& flow_case,
                          const Wording& wording) {
  ZoneWater water;
  water.flow_case = &flow_case;
  water.finding = begin_finding(zone, flow_case);
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

/// The water of a section, by a profile or as uniform flow.
struct SectionWater {
  SectionFlow flow;
  Slope energy_slope;
};

Expected<SectionWater> uniform_water(const SiteSection& section, const FlowCase& flow_case,
                                     Finding& finding) {
  finding.sources.push_back(
      {"Chow, Open-Channel Hydraulics, 1959", "chapters 5 and 6", SourceStanding::memory});
  finding.cautions.push_back(
      "Uniform flow at the stated energy slope: no backwater, no drawdown. Where a bridge, a "
      "confluence or a weir acts, use a computed profile.");
  auto flow = normal_flow(section.survey, divisions_of(section), flow_case.discharge,
                          section.energy_slope, section.composite_roughness, finding.steps);
  if (!flow) return flow.problems();
  return SectionWater{std::move(*flow), section.energy_slope};
}

Expected<SectionWater> profile_water(const SiteSection& section, const ReachWater& reach,
                                     Finding& finding, const Wording& wording) {
  finding.sources.push_back(
      {"Chow, Open-Channel Hydraulics, 1959", "chapters 9 to 11", SourceStanding::memory});
  const ProfileSection* at = reach.at(section.id);
  if (at == nullptr) {
    return Problem{"no-profile",
                   fmt::format("The profile through {} could not be computed.", reach.reach->name),
                   "", "", "see the finding on the profile"};
  }
  finding.steps.given("Q", "discharge", measure(reach.profile->discharge));
  finding.steps.computed("w",
                         fmt::format("water level of the profile through {}", reach.reach->name),
                         "energy balanced from section to section", measure(at->flow.water_level),
                         "standard step method");
  explain_flow(at->flow, finding.steps);
  finding.steps.computed("Sf", "slope of the energy line at the section", "(Q/K)²",
                         measure(at->friction_slope));
  for (const ProfileNote note : at->notes) {
    finding.cautions.emplace_back(profile_note_sentence(note));
  }
  if (const ProfileJump* jump = reach.jump_beside(section.id)) {
    finding.cautions.push_back(fmt::format(
        "A hydraulic jump stands beside this section, from {} to {}: the rock must suit both, and "
        "the jump's travel.",
        wording.ground(jump->level_before), wording.ground(jump->level_after)));
  }
  return SectionWater{at->flow, at->friction_slope};
}

/// Whether the profile put critical flow at the section because nothing else would balance.
bool is_assumed(const ReachWater* reach, const SiteSection& section) {
  const ProfileSection* at = reach == nullptr ? nullptr : reach->at(section.id);
  return at != nullptr && at->has(ProfileNote::critical_assumed);
}

ZoneWater water_in(const Site& site, const Zone& zone, const SiteSection& section,
                   const FlowCase& flow_case, const ReachWater* reach, const Wording& wording) {
  ZoneWater water;
  water.flow_case = &flow_case;
  water.finding = begin_finding(zone, flow_case);
  auto& finding = water.finding;
  const auto there = reach == nullptr ? uniform_water(section, flow_case, finding)
                                      : profile_water(section, *reach, finding, wording);
  if (!there) {
    report_problems(finding, there.problems());
    return water;
  }
  water.flow = there->flow;
  const SectionFlow* flow = &there->flow;
  const FlowPart* channel = main_channel(*flow, section);
  if (channel == nullptr || channel->top_width.si() <= 0) {
    report_problems(finding, {{"dry", "The main channel carries no water.", "", "", ""}});
    return water;
  }
  ZoneSetting setting = setting_of(site, zone, flow_case);
  take_channel(setting, there->energy_slope, *channel);
  water.channel = *channel;
  take_bend_from_plan(setting, site, zone, finding, wording);
  finding.steps.computed("V", "mean velocity of the main channel", "Q_channel / A_channel",
                         measure(setting.average_velocity));
  finding.steps.computed("Fr", "Froude number of the main channel", "V / √(g·A/T)",
                         measure(setting.froude_number));
  if (zone.place == ZonePlace::bank) {
    auto bank = bank_geometry(section.survey, zone.bank, zone.toe_station, zone.top_station,
                              flow->water_level);
    if (!bank) {
      report_problems(finding, bank.problems());
      return water;
    }
    setting.bank_angle = bank->angle;
    setting.toe_depth = bank->toe_depth;
    setting.local_depth = bank->local_depth;
    finding.steps.append(bank->steps);
    water.bank = std::move(*bank);
  } else {
    setting.toe_depth = flow->wet.deepest;
    setting.local_depth = flow->wet.deepest;
    finding.steps.computed("d", "greatest depth over the bed", "w − lowest ground",
                           measure(setting.local_depth));
  }
  if (const auto* stated = stated_at(zone, flow_case)) {
    take_stated(setting, *stated, finding);
  }
  water.setting = std::move(setting);
  caution_about_ground(finding, water, wording);
  word_outcome(finding, water, zone, wording);
  if (is_assumed(reach, section)) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "The level is assumed critical: add sections to the reach, then look again.";
  }
  state_values(finding, water);
  add_local_attack(water, zone, section, wording);
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
  for (const auto* flow_case : cases) {
    if (!zone.section.empty()) {
      all.push_back(water_in(site, zone, site.sections.at(zone.section), *flow_case,
                             reach_water_of(reaches, zone.section, *flow_case), wording));
    } else if (stated_at(zone, *flow_case) != nullptr ||
               flow_case->purpose == FlowPurpose::design) {
      // Of base and frequent flows nobody has to state anything.
      all.push_back(stated_water_in(site, zone, *flow_case, wording));
    }
  }
  return all;
}

}  // namespace proofstone
