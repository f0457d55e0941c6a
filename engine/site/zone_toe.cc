#include "engine/site/zone_toe.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/quantity/rounding.h"
#include "engine/site/gathered_scour.h"
#include "engine/toe/placed_rock.h"

namespace proofstone {
namespace {

/// The slope that launched rock takes: USACE EM 1110-2-1601 Table 3-2.
constexpr Slope launch_slope = Slope::ratio(0.5);

Finding begin_finding(const Zone& zone, const FlowCase& flow_case) {
  Finding finding;
  finding.topic = Topic::toe;
  finding.about.zone = zone.id;
  finding.about.flow_case = flow_case.id;
  finding.about.method = "toe-depth";
  finding.id = fmt::format("toe.{}.{}", zone.id, flow_case.id);
  finding.title = fmt::format("Toe of {} in the {}", zone.name, flow_case.name);
  finding.cautions = {
      "Scour is taken from the zone's own section; where a formula wants the crossing upstream, "
      "give its inputs under method_choices.",
      "Volumes of launched rock hold for beds that do not cohere. After a flood, survey the toe.",
  };
  return finding;
}

ToePlacement toe_placement(const Zone& zone) {
  return zone.placement == Placement::dry ? ToePlacement::dry : ToePlacement::under_water;
}

/// Rock that a toe with its foot at `foot` below the bed must hold ready; nothing once it reaches
/// the depth asked for.
std::optional<LaunchedRock> rock_to_launch(const Zone& zone, Length required, Length foot,
                                           Steps& steps) {
  const Length height = required - foot;
  if (!(height.si() > rounding)) return std::nullopt;
  return launched_rock(zone.layer_thickness, height, launch_slope, toe_placement(zone), steps);
}

/// Rock of either kind of toe, for comparison.
void state_options(const Zone& zone, const ZoneWater& at, Length required, Finding& finding) {
  const Length foot = zone.toe ? zone.toe->depth : Length::feet(0);
  if (const auto rock = rock_to_launch(zone, required, foot, finding.steps)) {
    PlacedRock placed;
    placed.specific_gravity = at.setting->rock.specific_gravity;
    const auto quantity = quantity_of(rock->cross_section, placed, finding.steps);
    finding.state("launch_rock", "A", "rock to store for launching, for each unit of length",
                  measure(rock->cross_section));
    finding.state("launch_mass", "M", "mass of that rock for each foot (0.3048 m) of toe",
                  measure(quantity.mass));
  }
  const double sine = std::sin(at.setting->bank_angle.radians());
  if (!(sine > rounding)) return;
  const Area trench = Area::square_meters(zone.layer_thickness.meters() * required.meters() / sine);
  finding.steps.computed("A_t", "rock of the layer carried down to the depth asked for",
                         "T·d_t/sin θ", measure(trench));
  finding.state("trench_rock", "A_t", "rock of a toe dug in, for each unit of length",
                measure(trench));
}

struct Judged {
  double margin = 0;
  std::string sentence;
  std::string next;
};

Judged judge_depth(const Zone& zone, Length required, const Wording& wording) {
  Judged judged;
  judged.margin = zone.toe->depth / required;
  judged.sentence = fmt::format("The toe as drawn reaches {}.", wording.ground(zone.toe->depth));
  judged.next =
      fmt::format("Carry the toe down to {}, or let it launch.", wording.ground(required));
  return judged;
}

/// Rock for launching: what is stored over what the scour takes.
Judged judge_stored(const Zone& zone, Length required, Steps& steps, const Wording& wording) {
  const auto& toe = *zone.toe;
  Area stored = toe.stored.value_or(Area::square_feet(0));
  if (toe.kind == ToeKind::thickened) {
    const double extra = std::max(0.0, (*toe.thickness - zone.layer_thickness).meters());
    stored = Area::square_meters(extra * toe.width->meters());
    steps.computed("A_s", "rock of the thicker part beyond the layer", "(t − T)·b",
                   measure(stored));
  } else {
    steps.given("A_s", "rock stored for each unit of length", measure(stored), "document");
  }
  Steps shown_already;
  const auto rock = rock_to_launch(zone, required, toe.depth, shown_already);
  Judged judged;
  if (!rock) {
    judged.margin = toe.depth / required;
    judged.sentence = fmt::format("Its foot stands at {} already.", wording.ground(toe.depth));
    return judged;
  }
  judged.margin = stored / rock->cross_section;
  steps.computed("A_s/A", "rock stored over rock to store", "", measure(judged.margin));
  judged.sentence = fmt::format(
      "It stores {} of rock for each unit of length; {} must launch, and "
      "that takes {}.",
      wording.of(stored), wording.ground(required - toe.depth), wording.of(rock->cross_section));
  judged.next = fmt::format("Store {} for each unit of length, or dig the toe in.",
                            wording.of(rock->cross_section));
  return judged;
}

void put_outcome(const Zone& zone, const GatheredScour& gathered, Length required, Finding& finding,
                 const Wording& wording) {
  if (!zone.toe) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence += " The zone states no toe.";
    finding.next = "Draw the toe: its kind, and its depth or the rock it stores.";
    return;
  }
  const auto judged = zone.toe->kind == ToeKind::trench
                          ? judge_depth(zone, required, wording)
                          : judge_stored(zone, required, finding.steps, wording);
  finding.sentence += " " + judged.sentence;
  finding.margin = Margin{judged.margin, std::nullopt, std::nullopt};
  if (judged.margin < 1 - rounding) {
    finding.outcome = Outcome::falls_short;
    finding.next = judged.next;
  } else if (!gathered.not_computed.empty()) {
    finding.outcome = Outcome::not_yet_known;
    finding.next = "Give what is missing for the methods that could not be computed.";
  } else if (!gathered.outside_limits.empty()) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "A method stands outside its published range. Judge the scour by another.";
  } else {
    finding.outcome = Outcome::meets;
    finding.next = "See that every allowance left out is truly nothing here.";
  }
}

void give_up(Finding& finding, const std::vector<std::string>& why) {
  finding.outcome = Outcome::not_yet_known;
  finding.sentence = "How deep the toe must reach is not known: no allowance could be computed.";
  finding.reasons.insert(finding.reasons.end(), why.begin(), why.end());
  finding.next = "Name scour methods that apply here and give what they need, or state allowances.";
}

Finding toe_finding(const Zone& zone, const ZoneWater& at, const Wording& wording) {
  Finding finding = begin_finding(zone, *at.flow_case);
  const auto gathered = gather_scour(zone, at, finding, wording);
  std::vector<std::string> silent = gathered.not_computed;
  silent.insert(silent.end(), gathered.outside_limits.begin(), gathered.outside_limits.end());
  if (!gathered.any || !at.setting) {
    give_up(finding, silent);
    return finding;
  }
  const auto depth = toe_depth(gathered.toe, finding.steps);
  if (!depth) {
    for (const auto& problem : depth.problems()) silent.push_back(problem.sentence());
    give_up(finding, silent);
    return finding;
  }
  const auto& sources = toe_depth_method().description().sources;
  finding.sources.insert(finding.sources.end(), sources.begin(), sources.end());
  finding.reasons.insert(finding.reasons.end(), silent.begin(), silent.end());
  if (!depth->left_out.empty()) {
    finding.reasons.push_back(
        fmt::format("Left out and counted as nothing: {}.", listed(depth->left_out)));
  }
  finding.state("required_depth", "d_t", "toe depth below the bed", measure(depth->depth));
  finding.sentence = fmt::format("The toe must reach {} below the bed, governed by {}.",
                                 wording.ground(depth->depth), depth->governed_by);
  if (!(depth->depth.si() > 0)) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = "The allowances counted come to no scour at all.";
    finding.next = "Look at the allowances again: a toe without any depth is rarely right.";
    return finding;
  }
  state_options(zone, at, depth->depth, finding);
  put_outcome(zone, gathered, depth->depth, finding, wording);
  return finding;
}

}  // namespace

std::vector<Finding> toe_findings(const Zone& zone, const std::vector<ZoneWater>& water,
                                  const Wording& wording) {
  std::vector<Finding> findings;
  if (!zone.scour) return findings;
  for (const auto& at : water) {
    if (at.flow_case->purpose != FlowPurpose::design) continue;
    findings.push_back(toe_finding(zone, at, wording));
  }
  // The flow that leaves the toe least margin speaks for the zone; one that is not known goes
  // first.
  std::size_t governing = 0;
  const auto margin_of = [&](std::size_t i) {
    return findings[i].margin ? findings[i].margin->value : 0;
  };
  for (std::size_t i = 1; i < findings.size(); ++i) {
    if (margin_of(i) < margin_of(governing)) governing = i;
  }
  if (!findings.empty()) findings[governing].governs = true;
  return findings;
}

}  // namespace proofstone
