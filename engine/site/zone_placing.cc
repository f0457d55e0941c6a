#include "engine/site/zone_placing.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/finding/stable_order.h"
#include "engine/site/placed_layer.h"

namespace proofstone {
namespace {

std::vector<const PlacingWalk*> walks_of(const Site& site, const Zone& zone) {
  std::vector<const PlacingWalk*> walks;
  for (const auto& [id, walk] : site.placing_walks) {
    if (walk.zone == zone.id) walks.push_back(&walk);
  }
  sort_in_order(walks.begin(), walks.end(), [](const auto* one, const auto* other) {
    return one->seen.when < other->seen.when;
  });
  return walks;
}

std::vector<const Nonconformance*> about_check(const Site& site, const Zone& zone,
                                               const std::string& check) {
  std::vector<const Nonconformance*> about;
  for (const auto& [id, one] : site.nonconformances) {
    if (one.zone == zone.id && one.check == check) about.push_back(&one);
  }
  return about;
}

/// "B. Lund, 2026-06-03T10:00:00Z, station 4+60, with a level"
std::string seen_text(const std::string& name, const Observation& seen) {
  std::string text = name;
  const auto add = [&text](const std::string& part) {
    if (!part.empty()) text += ", " + part;
  };
  add(seen.who);
  add(seen.when);
  add(seen.where);
  if (!seen.instrument.empty()) add("with " + seen.instrument);
  for (const auto& photo : seen.photos) add("photo " + photo.substr(0, 12));
  return text;
}

std::string entry_text(const PlacingCheck& check, const PlacingWalk& walk, const CheckEntry& entry,
                       CheckState says, const Wording& wording) {
  auto text = seen_text(walk.name, walk.seen) + ": ";
  std::vector<std::string> parts;
  if (entry.loads.empty()) parts.emplace_back(check_state_word(says));
  if (!entry.measured.empty()) {
    std::vector<std::string> lengths;
    lengths.reserve(entry.measured.size());
    for (const auto length : entry.measured)
      lengths.push_back(wording.shown(measure(length), length_use(check)));
    parts.push_back(fmt::format("measured {}", fmt::join(lengths, ", ")));
  }
  for (const auto& [material, loads] : entry.loads) {
    parts.push_back(fmt::format("{} loads of {}", loads, material));
  }
  if (!entry.note.empty()) parts.push_back(entry.note);
  for (const auto& photo : entry.photos) parts.push_back("photo " + photo.substr(0, 12));
  return text + fmt::format("{}", fmt::join(parts, "; "));
}

CheckState state_of_outcome(Outcome outcome) {
  if (outcome == Outcome::meets) return CheckState::pass;
  return outcome == Outcome::falls_short ? CheckState::fail : CheckState::not_yet;
}

void add_surveys(const Site& site, const Zone& zone, const Wording& wording, StandingCheck& one,
                 std::vector<CheckEvidence>& evidence) {
  const auto found = placed_layer_findings(site, zone, wording);
  std::size_t next = 0;
  for (const auto& [id, survey] : site.layer_surveys) {
    if (survey.zone != zone.id) continue;
    const auto& finding = found[next++];
    CheckEvidence said;
    said.when = survey.seen.when;
    said.says = state_of_outcome(finding.outcome);
    said.points = static_cast<int>(survey.thicknesses.size());
    evidence.push_back(said);
    one.evidence.push_back(fmt::format("{}: {}. {}", seen_text(survey.name, survey.seen),
                                       check_state_word(said.says), finding.sentence));
  }
}

/// Loads of what is no part of the mix are told, with what they leave open.
void note_loads_beside_the_mix(const PlacingDesign& design, const std::map<std::string, int>& loads,
                               StandingCheck& one) {
  const auto beside = loads_beside_mix(design.mix, loads);
  if (beside.empty()) return;
  std::vector<std::string> parts;
  for (const auto& share : design.mix) parts.push_back(share.id);
  one.remarks.push_back(fmt::format(
      "Tallied, but no part of the mix as it is designed now: {}. If the mix was changed since, "
      "let "
      "the designer say whether what lies there stays; if a name is wrong, write one of: {}.",
      loads_text(beside), fmt::join(parts, ", ")));
}

void add_tally(const PlacingDesign& design, const std::map<std::string, int>& loads,
               const std::string& last_when, StandingCheck& one,
               std::vector<CheckEvidence>& evidence) {
  std::optional<double> tolerance;
  if (design.tolerances.mix) tolerance = design.tolerances.mix->number();
  one.tally = tally_lines(design.mix, loads, tolerance);
  if (one.tally.empty()) return;
  const bool holds = std::all_of(one.tally.begin(), one.tally.end(),
                                 [](const TallyLine& line) { return line.holds(); });
  CheckEvidence said;
  said.when = last_when;
  said.says = holds ? CheckState::pass : CheckState::fail;
  evidence.push_back(said);
}

/// What every day's loads say of the mix by themselves: a day off the recipe that another one makes
/// up for in the sum lies in the ground as it was mixed.
void note_days_off_the_recipe(const PlacingDesign& design,
                              const std::map<std::string, std::map<std::string, int>>& by_day,
                              StandingCheck& one) {
  std::optional<double> tolerance;
  if (design.tolerances.mix) tolerance = design.tolerances.mix->number();
  for (const auto& [day, loads] : by_day) {
    const auto lines = tally_lines(design.mix, loads, tolerance);
    if (lines.empty()) {
      one.remarks.push_back(fmt::format("On {} fill was tallied without a load of rock.", day));
    }
    for (const auto& line : lines) {
      if (line.holds()) continue;
      one.remarks.push_back(fmt::format(
          "On {} {:.0f} loads of {} were tallied, where {:.1f} go with the rock of that day; what "
          "another day makes up for is not mixed in there.",
          day, line.counted, line.name, line.wanted));
    }
  }
}

StandingCheck stand(const Site& site, const Zone& zone, const PlacingDesign& design,
                    PlacingCheck check, const std::vector<const PlacingWalk*>& walks,
                    const Wording& wording) {
  StandingCheck one;
  one.check = std::move(check);
  std::vector<CheckEvidence> evidence;
  std::map<std::string, int> loads;
  std::map<std::string, std::map<std::string, int>> loads_by_day;
  std::string counted_when;
  const bool tallies = one.check.measure == CheckMeasure::load_tally;
  for (const auto* walk : walks) {
    for (const auto& entry : walk->entries) {
      if (entry.check != one.check.id) continue;
      auto said = judge_entry(one.check, entry, walk->seen.when);
      // Without a recipe there is nothing that could be kept.
      if (tallies && design.mix.empty() && said.says == CheckState::pass) {
        said.says = CheckState::not_yet;
      }
      if (entry.loads.empty()) evidence.push_back(said);
      for (const auto& [material, count] : entry.loads) {
        loads[material] += count;
        loads_by_day[walk->seen.when.substr(0, 10)][material] += count;
      }
      if (!entry.loads.empty()) counted_when = walk->seen.when;
      one.evidence.push_back(entry_text(one.check, *walk, entry, said.says, wording));
    }
  }
  if (tallies) {
    one.mix = design.mix;
    add_tally(design, loads, counted_when, one, evidence);
    if (loads_by_day.size() > 1) note_days_off_the_recipe(design, loads_by_day, one);
    note_loads_beside_the_mix(design, loads, one);
  }
  if (one.check.measure == CheckMeasure::layer_survey) {
    add_surveys(site, zone, wording, one, evidence);
  }
  one.standing = standing_of(one.check, std::move(evidence), about_check(site, zone, one.check.id));
  return one;
}

/// When something was first seen of a check; empty: never.
std::string first_seen(const std::vector<const PlacingWalk*>& walks, const std::string& check) {
  for (const auto* walk : walks) {
    for (const auto& entry : walk->entries) {
      if (entry.check == check) return walk->seen.when;
    }
  }
  return {};
}

/// A hold point is not released while a check before it is open.
void hold_what_is_open(ZonePlacing& placing) {
  const StandingCheck* open = nullptr;
  placing.released = placing.checks.size();
  for (std::size_t i = 0; i < placing.checks.size(); ++i) {
    auto& one = placing.checks[i];
    if (one.check.hold_point) {
      if (open != nullptr) one.waits_for = open->check.title;
      if (!one.released()) placing.released = std::min(placing.released, i);
    }
    if (open == nullptr && one.standing.state != CheckState::pass) open = &one;
  }
}

/// The hold point of an earlier stage that was released after `seen`, or is not released yet.
const StandingCheck* hold_passed_over(const ZonePlacing& placing, const StandingCheck& one,
                                      const std::string& seen) {
  for (const auto& hold : placing.checks) {
    if (!hold.check.hold_point || hold.check.stage >= one.check.stage) continue;
    const bool released = hold.standing.state == CheckState::pass;
    if (!released || seen < hold.standing.passed_when) return &hold;
  }
  return nullptr;
}

/// Work that went on before a hold point ahead of it was released.
void note_what_went_ahead(ZonePlacing& placing, const std::vector<const PlacingWalk*>& walks) {
  for (auto& one : placing.checks) {
    const auto seen = first_seen(walks, one.check.id);
    if (seen.empty()) continue;
    const auto* hold = hold_passed_over(placing, one, seen);
    if (hold == nullptr) continue;
    one.remarks.push_back(fmt::format(
        "Looked at on {}, before the hold point \"{}\" was released: open it up again, or have the "
        "engineer say how it is shown.",
        seen, hold->check.title));
  }
}

}  // namespace

ZonePlacing placing_of(const Site& site, const Zone& zone, const Wording& wording) {
  ZonePlacing placing;
  placing.zone = &zone;
  const auto design = placing_design(site, zone);
  const auto walks = walks_of(site, zone);
  for (auto& check : placing_checks(design)) {
    placing.checks.push_back(stand(site, zone, design, std::move(check), walks, wording));
    placing.begun = placing.begun || !placing.checks.back().evidence.empty();
  }
  for (const auto& [id, one] : site.nonconformances) {
    if (one.zone != zone.id) continue;
    placing.begun = true;
    if (!one.closed) placing.open_nonconformances.push_back(one.name);
  }
  hold_what_is_open(placing);
  note_what_went_ahead(placing, walks);
  return placing;
}

}  // namespace proofstone
