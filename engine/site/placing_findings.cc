#include "engine/site/placing_findings.h"

#include <fmt/format.h>

namespace proofstone {
namespace {

const char* const stay_clear =
    "Stay out of the swing of machines, off loose rock and from under loads; nobody stands below "
    "rock that is being placed.";

Finding begin_placing_finding(const Zone& zone, std::string id, std::string title) {
  Finding finding;
  finding.topic = Topic::placing_check;
  finding.about.zone = zone.id;
  finding.id = std::move(id);
  finding.title = std::move(title);
  finding.cautions.emplace_back(stay_clear);
  return finding;
}

std::string kind_of(const PlacingCheck& check) { return check.hold_point ? "hold point" : "check"; }

std::string state_text(const StandingCheck& one) {
  if (one.standing.state == CheckState::pass && !one.waits_for.empty()) {
    return fmt::format("pass, but not released: \"{}\" before it is open", one.waits_for);
  }
  if (!one.standing.accepted_by.empty()) {
    return fmt::format("used as it is, approved by {}", one.standing.accepted_by);
  }
  return std::string(check_state_word(one.standing.state));
}

/// What to do about a check.
std::string next_of(const StandingCheck& one) {
  const auto& standing = one.standing;
  if (one.check.hold_point ? one.released() : standing.state == CheckState::pass) {
    return one.remarks.empty() ? "Keep the record." : one.remarks.front();
  }
  if (standing.state == CheckState::pass && !one.waits_for.empty()) {
    return fmt::format("See to \"{}\" first: it stands before this hold point.", one.waits_for);
  }
  if (standing.failed_unanswered) {
    return "It fails and no nonconformance says so: open one, and stop what would cover it.";
  }
  if (standing.answered_open) {
    return "Carry out what its nonconformance says, look again, then close it.";
  }
  if (standing.wants_new_look) {
    return "Its nonconformance is closed, but no later look shows that it passes: look again.";
  }
  if (standing.too_few_points) {
    return fmt::format("Measure {} more points.", one.check.fewest_points - standing.points);
  }
  if (one.check.measure == CheckMeasure::load_tally && one.mix.empty()) {
    return "Ask the designer for the recipe: a mix of the zone with the parts of each material. "
           "Proportions that would fit are proposed where a mix names its materials. Loads tallied "
           "until then are kept.";
  }
  if (one.check.measure == CheckMeasure::layer_survey) {
    return fmt::format(
        "Survey the layer at about {} points: as many as give its mean to within a tenth, where "
        "thickness varies by a fifth (common practice, no source).",
        one.check.fewest_points);
  }
  return fmt::format("Look: {}.", one.check.how);
}

void state_tally(const StandingCheck& one, Finding& finding) {
  for (const auto& line : one.tally) {
    finding.steps.computed("", line.name + ", loads the recipe takes with the rock so far",
                           "loads of rock · parts / parts of rock", measure(line.wanted));
    finding.steps.given("", line.name + ", loads counted", measure(line.counted), "document");
    if (line.holds()) continue;
    finding.reasons.push_back(fmt::format(
        "{}: {:.0f} loads, where {:.1f} go with the rock so far; {:.1f} off is allowed.", line.name,
        line.counted, line.wanted, line.allowed));
  }
}

Outcome outcome_of(const StandingCheck& one) {
  if (one.standing.state == CheckState::fail) return Outcome::falls_short;
  if (one.standing.state == CheckState::not_yet || !one.waits_for.empty()) {
    return Outcome::not_yet_known;
  }
  return one.remarks.empty() ? Outcome::meets : Outcome::ask_the_designer;
}

Finding check_finding(const Zone& zone, const StandingCheck& one, const Wording& wording) {
  auto finding =
      begin_placing_finding(zone, fmt::format("placing-check.{}.{}", zone.id, one.check.id),
                            fmt::format("{}, {}", one.check.title, zone.name));
  finding.outcome = outcome_of(one);
  finding.sentence = fmt::format("{}: {}.", required_text(one.check, wording), state_text(one));
  const auto given = [&](const std::string& meaning, Length length, const std::string& origin) {
    if (one.check.reads_as_ground) {
      finding.steps.given("", meaning, measure(length), origin);
    } else {
      finding.steps.given_rock("", meaning, length, origin);
    }
  };
  if (one.check.asked) {
    given("asked, from " + one.check.design, *one.check.asked, "design");
  }
  if (one.check.tolerance) {
    given("tolerance", *one.check.tolerance, one.check.source.sentence());
  }
  finding.steps.given("", "times it was looked at",
                      measure(static_cast<double>(one.evidence.size())), "walks and surveys");
  state_tally(one, finding);
  if (one.standing.worst) {
    finding.values.push_back({"worst", "", "worst of the lengths measured",
                              measure(*one.standing.worst), length_use(one.check)});
  }
  finding.reasons.push_back(
      fmt::format("{} from {}.", one.check.hold_point ? "Hold point" : "Check", one.check.design));
  finding.reasons.push_back("Tolerance: " + tolerance_text(one.check, wording) + ".");
  finding.reasons.push_back("Measured by: " + one.check.how + ".");
  if (one.check.measure != CheckMeasure::layer_survey && one.check.fewest_points > 1) {
    finding.reasons.push_back(fmt::format(
        "Measured at {} points or more (common practice, no source).", one.check.fewest_points));
  }
  // What a survey or a note says may end with its own full stop.
  for (const auto& line : one.evidence) {
    finding.reasons.push_back(line.ends_with('.') ? line : line + ".");
  }
  for (const auto& remark : one.remarks) finding.reasons.push_back(remark);
  finding.sources.push_back(one.check.source);
  finding.next = next_of(one);
  return finding;
}

Outcome outcome_of(const ZonePlacing& placing) {
  if (placing.in_state(CheckState::fail) > 0 || !placing.open_nonconformances.empty()) {
    return Outcome::falls_short;
  }
  if (placing.in_state(CheckState::not_yet) > 0) return Outcome::not_yet_known;
  for (const auto& one : placing.checks) {
    if (!one.remarks.empty()) return Outcome::ask_the_designer;
  }
  return Outcome::meets;
}

/// What fails comes first, then what is not known, in the order of work; nullptr: nothing.
const StandingCheck* first_to_do(const ZonePlacing& placing) {
  for (const auto state : {CheckState::fail, CheckState::not_yet}) {
    for (const auto& one : placing.checks) {
      if (one.standing.state == state) return &one;
    }
  }
  return nullptr;
}

Finding list_finding(const ZonePlacing& placing, const Wording& wording) {
  const Zone& zone = *placing.zone;
  auto finding =
      begin_placing_finding(zone, "placing-checks." + zone.id, "Placing of " + zone.name);
  finding.governs = placing.begun;
  finding.outcome = outcome_of(placing);
  finding.sentence =
      fmt::format("{} checks from the design of the zone: {} pass, {} fail, {} not yet known.",
                  placing.checks.size(), placing.in_state(CheckState::pass),
                  placing.in_state(CheckState::fail), placing.in_state(CheckState::not_yet));
  for (const auto state : {CheckState::pass, CheckState::fail, CheckState::not_yet}) {
    finding.steps.given("", fmt::format("checks in the state \"{}\"", check_state_word(state)),
                        measure(static_cast<double>(placing.in_state(state))), "walks and surveys");
  }
  const auto* held = placing.held_at();
  const auto* urgent = first_to_do(placing);
  if (held != nullptr) {
    finding.sentence += fmt::format(" The work is held at: {}.", held->check.title);
  }
  finding.next = urgent != nullptr ? fmt::format("{}: {}", urgent->check.title, next_of(*urgent))
                                   : "Keep the record with the findings.";
  if (!placing.open_nonconformances.empty()) {
    finding.sentence += fmt::format(" Nonconformances not closed: {}.",
                                    fmt::join(placing.open_nonconformances, ", "));
  }
  int number = 0;
  for (const auto& one : placing.checks) {
    finding.reasons.push_back(fmt::format("{}. {} ({}): {}. {}.", ++number, one.check.title,
                                          kind_of(one.check), required_text(one.check, wording),
                                          state_text(one)));
  }
  for (const auto& one : placing.checks) finding.sources.push_back(one.check.source);
  return finding;
}

}  // namespace

std::vector<Finding> placing_findings(const ZonePlacing& placing, const Wording& wording) {
  std::vector<Finding> findings;
  findings.push_back(list_finding(placing, wording));
  if (!placing.begun) return findings;
  for (const auto& one : placing.checks) {
    findings.push_back(check_finding(*placing.zone, one, wording));
  }
  return findings;
}

PlacingRecord placing_record(const ZonePlacing& placing, const Wording& wording) {
  PlacingRecord record;
  record.zone = placing.zone->name;
  record.begun = placing.begun;
  for (const auto& one : placing.checks) {
    PlacingRecordLine line;
    line.id = one.check.id;
    line.title = one.check.title;
    line.measure = one.check.measure;
    line.length_use = length_use(one.check);
    line.fewest_points = one.check.fewest_points;
    line.mix = one.mix;
    line.next = next_of(one);
    line.hold_point = one.check.hold_point;
    line.required = required_text(one.check, wording);
    line.tolerance = tolerance_text(one.check, wording);
    line.how = one.check.how;
    line.outcome = outcome_of(one);
    line.state = state_text(one);
    line.evidence = one.evidence;
    line.evidence.insert(line.evidence.end(), one.remarks.begin(), one.remarks.end());
    record.lines.push_back(std::move(line));
  }
  return record;
}

}  // namespace proofstone
