#include "engine/site/zone_transitions.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/rounding.h"
#include "engine/sizing/rock_transition.h"

namespace proofstone {
namespace {

/// Zones that lie further apart than this do not meet; it absorbs rounding of stations.
constexpr Length touching = Length::feet(1);

bool lies_on_a_bank(const Zone& zone) { return zone.place == ZonePlace::bank && zone.along; }

/// Bank zones along centrelines: by centreline and bank, then downstream.
std::vector<const Zone*> along_banks(const Site& site) {
  std::vector<const Zone*> zones;
  for (const auto& [id, zone] : site.zones) {
    if (lies_on_a_bank(zone)) zones.push_back(&zone);
  }
  std::sort(zones.begin(), zones.end(), [](const Zone* a, const Zone* b) {
    if (a->along->centreline != b->along->centreline) {
      return a->along->centreline < b->along->centreline;
    }
    if (a->bank != b->bank) return a->bank < b->bank;
    if (a->along->from < b->along->from || b->along->from < a->along->from) {
      return a->along->from < b->along->from;
    }
    return a->id < b->id;
  });
  return zones;
}

bool meet(const Zone& upstream, const Zone& downstream) {
  return upstream.along->centreline == downstream.along->centreline &&
         upstream.bank == downstream.bank &&
         downstream.along->from - upstream.along->to <= touching;
}

bool differ(const Zone& a, const Zone& b) {
  const double ratio = a.layer_thickness / b.layer_thickness;
  return a.rock_class != b.rock_class || ratio > 1 + rounding || ratio < 1 - rounding;
}

/// Two zones that meet, with the method's answer and its steps.
struct Meeting {
  const Zone* upstream = nullptr;
  const Zone* downstream = nullptr;
  RockTransitionResult needed;
  Steps steps;
};

std::vector<Meeting> meetings(const Site& site) {
  std::vector<Meeting> found;
  const auto zones = along_banks(site);
  for (std::size_t i = 0; i + 1 < zones.size(); ++i) {
    const Zone& upstream = *zones[i];
    const Zone& downstream = *zones[i + 1];
    if (!meet(upstream, downstream) || !differ(upstream, downstream)) continue;
    Meeting meeting{&upstream, &downstream, {}, {}};
    RockTransitionInputs inputs;
    inputs.upstream_d50 = find_class(site, upstream.rock_class)->nominal_d50;
    inputs.downstream_d50 = find_class(site, downstream.rock_class)->nominal_d50;
    inputs.upstream_thickness = upstream.layer_thickness;
    inputs.downstream_thickness = downstream.layer_thickness;
    const auto needed = rock_transition(inputs, meeting.steps);
    if (!needed) continue;  // sizes and thicknesses of a site are positive
    meeting.needed = *needed;
    found.push_back(std::move(meeting));
  }
  return found;
}

ZoneTransition transition_of(const Meeting& meeting) {
  ZoneTransition transition;
  transition.upstream_zone = meeting.upstream->id;
  transition.downstream_zone = meeting.downstream->id;
  transition.larger_upstream = meeting.needed.larger_upstream;
  transition.meets_at = meeting.downstream->along->from;
  transition.overlap = meeting.needed.overlap;
  transition.drawn_overlap =
      std::max(Length{}, meeting.upstream->along->to - meeting.downstream->along->from);
  transition.taper = meeting.needed.taper;
  return transition;
}

Finding transition_finding(const Meeting& meeting, const Wording& wording) {
  const auto transition = transition_of(meeting);
  const auto& about = rock_transition_method().description();
  const Zone& larger = transition.larger_upstream ? *meeting.upstream : *meeting.downstream;
  Finding finding;
  finding.topic = Topic::extent;
  finding.about.zone = transition.upstream_zone;
  finding.about.method = about.id;
  finding.id =
      fmt::format("transition.{}.{}", transition.upstream_zone, transition.downstream_zone);
  finding.title = fmt::format("From {} to {}", meeting.upstream->name, meeting.downstream->name);
  finding.sources = about.sources;
  finding.cautions = about.cautions;
  finding.steps = meeting.steps;
  const auto state = [&finding](const char* key, const char* symbol, const char* meaning,
                                Length value) {
    finding.values.push_back({key, symbol, meaning, measure(value), LengthUse::ground});
  };
  state("overlap", "Lo", "overlap of the larger rock into the reach of the smaller",
        transition.overlap);
  state("drawn_overlap", "", "overlap that is drawn", transition.drawn_overlap);
  state("taper", "Lt", "length over which the thickness changes", transition.taper);
  finding.margin =
      Margin{transition.drawn_overlap / transition.overlap, std::nullopt, std::nullopt};
  finding.sentence = fmt::format(
      "The rock of {} runs on {} {} into the reach of its neighbour, and the thickness changes "
      "over {}; {} of overlap is drawn.",
      larger.name, wording.ground(transition.overlap),
      transition.larger_upstream ? "downstream" : "upstream", wording.ground(transition.taper),
      wording.ground(transition.drawn_overlap));
  const bool enough = finding.margin->value >= 1 - rounding;
  finding.outcome = enough ? Outcome::meets : Outcome::ask_the_designer;
  finding.next = enough ? "Nothing to do; where the zones overlap the larger rock is laid."
                        : fmt::format("Carry {} on by {}, or say why not.", larger.name,
                                      wording.ground(transition.overlap));
  return finding;
}

}  // namespace

std::vector<ZoneTransition> transitions_along(const Site& site) {
  std::vector<ZoneTransition> transitions;
  for (const auto& meeting : meetings(site)) transitions.push_back(transition_of(meeting));
  return transitions;
}

std::vector<Finding> transition_findings(const Site& site, const Wording& wording) {
  std::vector<Finding> findings;
  for (const auto& meeting : meetings(site)) {
    findings.push_back(transition_finding(meeting, wording));
  }
  return findings;
}

}  // namespace proofstone
