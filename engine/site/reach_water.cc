#include "engine/site/reach_water.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/site/reach_notes.h"

namespace proofstone {
namespace {

Expected<Reach> reach_of(const Site& site, const SiteReach& from) {
  std::vector<ReachSection> sections;
  for (const SiteReachSection& place : from.sections) {
    const SiteSection& surveyed = site.sections.at(place.section);
    ReachSection one{place.section, surveyed.survey};
    one.left_bank = surveyed.left_bank;
    one.right_bank = surveyed.right_bank;
    one.ineffective = place.ineffective;
    one.to_next = place.to_next;
    one.losses = place.losses;
    one.composite = surveyed.composite_roughness;
    sections.push_back(std::move(one));
  }
  return Reach::make(std::move(sections), from.greatest_step);
}

Finding begin_finding(const SiteReach& reach, const FlowCase& flow_case) {
  Finding finding;
  finding.topic = Topic::water;
  finding.about.reach = reach.id;
  finding.about.flow_case = flow_case.id;
  finding.id = fmt::format("profile.{}.{}", reach.id, flow_case.id);
  finding.title = fmt::format("{}: profile through {}", flow_case.name, reach.name);
  finding.sources = {
      {"Chow, Open-Channel Hydraulics, 1959", "chapters 9 to 11 and 15", SourceStanding::memory},
      {"Henderson, Open Channel Flow, 1966", "chapters 4 and 5", SourceStanding::memory}};
  finding.cautions.push_back(
      "One-dimensional steady flow: no bridges, no culverts, no bends; the level is one across "
      "each "
      "section.");
  return finding;
}

void report_problems(Finding& finding, const Problems& problems) {
  finding.outcome = Outcome::not_yet_known;
  for (const auto& problem : problems) finding.reasons.push_back(problem.sentence());
  finding.sentence = "The profile could not be computed. " + finding.reasons.front();
  finding.next = "Mend the reach, its boundaries or the discharge; then look again.";
}

void state_values(Finding& finding, const Site& site, const WaterProfile& profile) {
  for (const ProfileSection& section : profile.sections) {
    if (section.interpolated) continue;
    const std::string name = site.sections.at(section.name).name;
    const auto add = [&](const char* key, const char* symbol, const char* meaning, Measure value) {
      finding.values.push_back({fmt::format("{}.{}", key, section.name), symbol,
                                fmt::format("{}, {}", meaning, name), value, LengthUse::ground});
    };
    add("water_level", "w", "water level", measure(section.flow.water_level));
    add("velocity", "V", "mean velocity", measure(section.flow.mean_velocity()));
    add("froude_number", "Fr", "Froude number", measure(section.flow.froude_number));
  }
}

void show_working(Finding& finding, const Site& site, const ReachWater& water) {
  const WaterProfile& profile = *water.profile;
  Steps& steps = finding.steps;
  steps.given("Q", "discharge", measure(profile.discharge));
  const std::string method = "standard step method, bracketed root finding";
  const bool tranquil = profile.sections.back().regime == FlowRegime::subcritical;
  for (const ProfileSection& section : profile.sections) {
    if (section.interpolated) continue;
    const std::string name = site.sections.at(section.name).name;
    steps.computed(
        "w", fmt::format("water level at {}, {} flow", name, flow_regime_name(section.regime)),
        "w1 + α1·V1²/2g = w2 + α2·V2²/2g + L·Sf + C·|Δ(α·V²/2g)|",
        measure(section.flow.water_level), method);
    steps.computed("H", "level of the energy line there", "w + α·V²/2g",
                   measure(section.energy_level));
    steps.computed("wc", "critical level there", "dE/dw = 0", measure(section.critical_level));
    steps.computed("α", "energy coefficient there", "Σ(Kᵢ³/Aᵢ²)/(K³/A²)",
                   measure(section.flow.energy_coefficient));
    steps.computed("Sf", "slope of the energy line there", "(Q/K)²",
                   measure(section.friction_slope));
  }
  steps.given("L", "channel length of the reach", measure(profile.sections.back().distance),
              tranquil ? "computed upstream from the downstream boundary" : "");
}

std::string jump_sentence(const ProfileJump& jump, const Wording& wording) {
  return fmt::format(
      " A hydraulic jump stands about {} below the first section, from {} to {} (Froude number {} "
      "before it, {} of energy lost).",
      wording.ground(jump.distance), wording.ground(jump.level_before),
      wording.ground(jump.level_after), significant(jump.froude_before.number(), 3),
      wording.ground(jump.energy_lost));
}

void word_outcome(Finding& finding, const Site& site, const WaterProfile& profile,
                  const Wording& wording) {
  const ProfileSection& first = profile.sections.front();
  const ProfileSection& last = profile.sections.back();
  const auto fastest = std::max_element(
      profile.sections.begin(), profile.sections.end(),
      [](const auto& a, const auto& b) { return a.flow.mean_velocity() < b.flow.mean_velocity(); });
  finding.sentence = fmt::format(
      "{} stands at {} at {} and at {} at {}, {} further down; it is fastest {}, {} (Froude number "
      "{}).",
      wording.of(profile.discharge), wording.ground(first.flow.water_level),
      shown_name(site, first), wording.ground(last.flow.water_level), shown_name(site, last),
      wording.ground(last.distance),
      fastest->interpolated ? shown_name(site, *fastest) : "at " + shown_name(site, *fastest),
      wording.of(fastest->flow.mean_velocity()),
      significant(fastest->flow.froude_number.number(), 2));
  for (const ProfileJump& jump : profile.jumps) finding.sentence += jump_sentence(jump, wording);
  if (!profile.jumps.empty()) {
    finding.cautions.push_back(
        "Rock beside a jump must suit the rapid flow before it and the whole stretch along which "
        "it "
        "may travel; the jump's own length comes on top.");
  }
  if (!finding.reasons.empty()) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "Look at the sections named under reasons: survey further, or add sections.";
  } else if (!profile.jumps.empty()) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "Decide how the ground is held where the water jumps.";
  } else {
    finding.outcome = Outcome::meets;
    finding.next = "Nothing to do; the zones at these sections take their water from here.";
  }
}

ReachWater water_in(const Site& site, const SiteReach& from, const ReachEnds& ends,
                    const FlowCase& flow_case, const Expected<ProfileSolver>& solver,
                    const Wording& wording) {
  ReachWater water;
  water.reach = &from;
  water.flow_case = &flow_case;
  water.finding = begin_finding(from, flow_case);
  if (!solver) {
    report_problems(water.finding, solver.problems());
    return water;
  }
  ProfileCase profile_case;
  profile_case.discharge = flow_case.discharge;
  profile_case.downstream = ends.downstream;
  profile_case.upstream = ends.upstream;
  profile_case.friction = from.friction;
  profile_case.regime = ends.regime;
  auto profile = solver->solve(profile_case);
  if (!profile) {
    report_problems(water.finding, profile.problems());
    return water;
  }
  water.profile = std::move(*profile);
  tell_notes(water.finding, site, *water.profile);
  tell_rising_bed(water.finding, site, *water.profile);
  tell_regime(water.finding, ends.regime);
  word_outcome(water.finding, site, *water.profile, wording);
  state_values(water.finding, site, *water.profile);
  show_working(water.finding, site, water);
  return water;
}

Expected<ProfileSolver> solver_of(const Site& site, const SiteReach& from) {
  const auto reach = reach_of(site, from);
  if (!reach) return reach.problems();
  return ProfileSolver(*reach);
}

}  // namespace

const ProfileSection* ReachWater::at(const std::string& section) const {
  if (!profile) return nullptr;
  const auto found = std::find_if(
      profile->sections.begin(), profile->sections.end(),
      [&](const ProfileSection& one) { return !one.interpolated && one.name == section; });
  return found == profile->sections.end() ? nullptr : &*found;
}

const ProfileJump* ReachWater::jump_beside(const std::string& section) const {
  if (!profile) return nullptr;
  for (const ProfileJump& jump : profile->jumps) {
    for (const std::size_t i : {jump.upstream_section, jump.upstream_section + 1}) {
      const ProfileSection& one = profile->sections[i];
      if (!one.interpolated && one.name == section) return &jump;
    }
  }
  return nullptr;
}

std::vector<ReachWater> water_in_reaches(const Site& site, const Wording& wording) {
  std::vector<ReachWater> all;
  for (const auto& [id, reach] : site.reaches) {
    std::vector<std::pair<const FlowCase*, const ReachEnds*>> cases;
    for (const auto& [flow_case, ends] : reach.ends) {
      cases.emplace_back(&site.flow_cases.at(flow_case), &ends);
    }
    std::sort(cases.begin(), cases.end(), [](const auto& a, const auto& b) {
      return std::pair(a.first->discharge, a.first->id) <
             std::pair(b.first->discharge, b.first->id);
    });
    const auto solver = solver_of(site, reach);
    for (const auto& [flow_case, ends] : cases) {
      all.push_back(water_in(site, reach, *ends, *flow_case, solver, wording));
    }
  }
  return all;
}

const ReachWater* reach_water_of(const std::vector<ReachWater>& all, const std::string& section,
                                 const FlowCase& flow_case) {
  for (const ReachWater& water : all) {
    if (water.flow_case != &flow_case) continue;
    const auto& places = water.reach->sections;
    if (std::any_of(places.begin(), places.end(),
                    [&](const SiteReachSection& place) { return place.section == section; })) {
      return &water;
    }
  }
  return nullptr;
}

}  // namespace proofstone
