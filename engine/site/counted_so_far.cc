#include "engine/site/counted_so_far.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/acceptance/acceptance_sources.h"
#include "engine/acceptance/count_plan.h"
#include "engine/acceptance/count_state.h"

namespace proofstone {
namespace {

Source every_limit_source() {
  return {
      "Berger 1982, Multiparameter hypothesis testing and acceptance sampling, Technometrics 24",
      "every limit must be accepted: the owner's risk is that of one", SourceStanding::memory};
}

Finding begin_count_finding(const LotEvidence& evidence, std::string id, std::string title) {
  Finding finding;
  finding.topic = Topic::gradation;
  finding.about.lot = evidence.lot->id;
  finding.about.rock_class = evidence.ordered->id;
  finding.id = std::move(id);
  finding.title = std::move(title);
  finding.sources = {sequential_plan_source(), every_limit_source()};
  return finding;
}

void state_policy(Steps& steps, const EvidencePolicy& policy, std::size_t limits) {
  const auto risks = policy.risks();
  const auto origin = [](bool stated) { return stated ? "document" : "one minus the confidence"; };
  steps.given("β", "owner's risk: rock at a limit is accepted", measure(risks.owners),
              origin(policy.owners_risk.has_value()));
  steps.given("α", "producer's risk: good rock is turned away", measure(risks.producers),
              origin(policy.producers_risk.has_value()));
  steps.given("δ", "good rock keeps a limit by so much of its mass", measure(policy.good_by),
              policy.good_by_stated ? "document" : "our default; the standards state none");
  steps.given("k", "limits counted; each turns away at α/k", measure(static_cast<double>(limits)));
}

std::string wrong_words(const CountedLimit& limit, const Wording& wording) {
  return fmt::format("{} than {}", limit.smaller_is_wrong ? "smaller" : "larger",
                     wording.rock(limit.size));
}

std::string state_words(const CountedLimitState& state, const Wording& wording) {
  auto words = fmt::format("{}: {} of {} stones {}; ", state.limit.condition.wording, state.wrong,
                           state.stones, wrong_words(state.limit, wording));
  words += state.accept_at_most ? fmt::format("accept with at most {}, ", *state.accept_at_most)
                                : std::string("too few to accept, ");
  words += state.reject_at_least
               ? fmt::format("turn away with {} or more: ", *state.reject_at_least)
               : std::string("too few to turn away: ");
  switch (state.outcome) {
    case Outcome::meets:
      words += "accept";
      break;
    case Outcome::falls_short:
      words += "turn away";
      break;
    default:
      words += "go on";
  }
  if (state.decided_at) words += fmt::format(", since stone {}", *state.decided_at);
  return words + ".";
}

/// The limit to look at: one that turns away before one that is open before the rest.
const CountedLimitState* most_telling(const CountState& state) {
  const CountedLimitState* chosen = nullptr;
  for (const auto& limit : state.limits) {
    if (limit.limit.no_stone_at_all) continue;
    const auto rank = [](Outcome outcome) {
      return outcome == Outcome::falls_short ? 0 : outcome == Outcome::meets ? 2 : 1;
    };
    if (chosen == nullptr || rank(limit.outcome) < rank(chosen->outcome)) chosen = &limit;
  }
  return chosen;
}

SequentialCountPicture picture_of(const LotEvidence& evidence, const Look& look,
                                  const StoneCount& count, const CountedLimitState& state,
                                  const Wording& wording) {
  SequentialCountPicture picture;
  picture.id = fmt::format("count.{}.{}", evidence.lot->id, look.id);
  picture.title = fmt::format("{}, stone by stone", look.name);
  picture.wrong = fmt::format("stones {}", wrong_words(state.limit, wording));
  picture.good_share = state.limit.risks.acceptable.number();
  picture.unacceptable_share = state.limit.risks.unacceptable.number();
  picture.producers_risk = state.limit.risks.producers_risk.number();
  picture.owners_risk = state.limit.risks.owners_risk.number();
  picture.stones = state.stones;
  picture.outcome = state.outcome;
  int wrong = 0;
  for (const auto& axis : count.intermediate_axes) {
    if (state.limit.is_wrong(axis)) ++wrong;
    picture.path.push_back(wrong);
  }
  if (picture.path.empty()) picture.path.push_back(state.wrong);
  picture.description = fmt::format(
      "{} of {} stones are {}, for {}. Below the lower line the rock is accepted, above the upper "
      "one it is turned away, between them the count goes on; below that, how often the plan "
      "accepts rock of each share, and after how many stones on average.",
      state.wrong, state.stones, wrong_words(state.limit, wording), state.limit.condition.wording);
  return picture;
}

void word_state(Finding& finding, const CountState& state) {
  std::vector<std::string> open;
  std::vector<std::string> broken;
  for (const auto& limit : state.limits) {
    if (limit.outcome == Outcome::not_yet_known) open.push_back(limit.limit.condition.wording);
    if (limit.outcome == Outcome::falls_short) broken.push_back(limit.limit.condition.wording);
  }
  finding.outcome = state.outcome;
  switch (state.outcome) {
    case Outcome::meets:
      finding.sentence = "The count may stop: every limit is accepted.";
      finding.next = "Stop counting and keep the list of stones.";
      break;
    case Outcome::falls_short:
      finding.sentence =
          fmt::format("The count may stop: the rock is turned away by {}.", listed(broken));
      finding.next = "Stop counting; see the remedies.";
      finding.cautions.emplace_back(
          "Turned away is rock that is not good: it does not keep the limit with what good rock "
          "has "
          "in reserve. Whether the limit itself is kept, and how sure that is, the verdict on the "
          "lot says.");
      break;
    default:
      finding.sentence = fmt::format(
          "Go on counting: {} still open.",
          open.size() == 1 ? open.front() + " is" : fmt::format("{} limits are", open.size()));
      finding.next = "Pick the next stones on the grid, and look again after each.";
  }
}

void add_count(const Site& site, const LotEvidence& evidence, const Look& look,
               const std::vector<CountedLimit>& limits, const Wording& wording,
               CountedSoFar& counted) {
  const auto& count = std::get<StoneCount>(look.taken);
  const auto state = count.intermediate_axes.empty() ? count_state(limits, count.bins)
                                                     : count_state(limits, count.intermediate_axes);
  auto finding =
      begin_count_finding(evidence, fmt::format("count.{}.{}", evidence.lot->id, look.id),
                          fmt::format("{}: stop or go on?", look.name));
  finding.about.look = look.id;
  state_policy(finding.steps, site.evidence, limits.size());
  word_state(finding, state);
  for (const auto& limit : state.limits) finding.reasons.push_back(state_words(limit, wording));
  finding.cautions.push_back(
      "Only these lines allow to look after every stone: whoever stops at the first moment at "
      "which "
      "a count of fixed length would do is mistaken more often than stated.");
  const auto* telling = most_telling(state);
  if (telling != nullptr && !counted.picture) {
    counted.picture = picture_of(evidence, look, count, *telling, wording);
  }
  counted.findings.push_back(std::move(finding));
}

Finding plan_finding(const Site& site, const LotEvidence& evidence) {
  auto finding =
      begin_count_finding(evidence, "count-plan." + evidence.lot->id,
                          fmt::format("How many stones of {} to count", evidence.lot->name));
  finding.sources = {single_plan_source(), every_limit_source()};
  const auto plan =
      single_count_plan(evidence.ordered->band, site.evidence.risks(), site.evidence.good_by);
  finding.outcome = Outcome::not_yet_known;
  if (!plan) {
    finding.sentence = plan.problems().front().sentence();
    finding.next = "State larger risks, or a larger share by which rock is good.";
    return finding;
  }
  state_policy(finding.steps, site.evidence, plan->limits.size());
  for (const auto& one : plan->limits) {
    finding.reasons.push_back(fmt::format(
        "{}: {} stones, at most {} of them {} than it.", one.limit.condition.wording, one.stones,
        one.accept_at_most, one.limit.smaller_is_wrong ? "smaller" : "larger"));
  }
  finding.values.push_back(
      {"stones", "n", "stones to plan for", measure(static_cast<double>(plan->stones))});
  finding.sentence = fmt::format(
      "{} stones decide every limit of {} at the stated risks when all are counted; {} asks for "
      "most.",
      plan->stones, evidence.ordered->name, plan->limits[plan->hardest].limit.condition.wording);
  finding.next =
      "Count on a grid over the whole pile, one by one: the sequential plan usually ends sooner.";
  return finding;
}

}  // namespace

CountedSoFar counted_so_far(const Site& site, const LotEvidence& evidence, const Wording& wording) {
  CountedSoFar counted;
  const auto limits =
      counted_limits(evidence.ordered->band, site.evidence.risks(), site.evidence.good_by);
  if (limits.empty()) return counted;
  for (const auto& [look, measured] : evidence.seen) {
    const auto* count = std::get_if<StoneCount>(&look->taken);
    if (count == nullptr || count->picking != StonePicking::grid) continue;
    add_count(site, evidence, *look, limits, wording, counted);
  }
  if (evidence.seen.empty()) counted.findings.push_back(plan_finding(site, evidence));
  return counted;
}

}  // namespace proofstone
