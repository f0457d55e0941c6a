#include "engine/site/lot_evidence.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/evidence/same_rock.h"
#include "engine/site/measured_look.h"
#include "engine/site/what_would_decide.h"
#include "engine/vision/largest_stone.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

Finding begin_finding(const LotEvidence& evidence, std::string id, std::string title) {
  Finding finding;
  finding.topic = Topic::gradation;
  finding.about.lot = evidence.lot->id;
  finding.about.rock_class = evidence.ordered->id;
  finding.id = std::move(id);
  finding.title = std::move(title);
  finding.cautions.push_back(
      "Measure only on a face that has been made safe: piles and loose stones slide and fall, and "
      "machines have blind sides.");
  return finding;
}

/// "D15 7.1 in, D50 10.4 in, D85 14.9 in" with limits, as stated values too; what is known where
/// the curve tells none of them.
std::string stated_sizes(Finding& finding, const MeasuredGradation& measured, double confidence,
                         const Wording& wording) {
  std::vector<std::string> words;
  for (const double percent : {15.0, 50.0, 85.0}) {
    const auto size = measured.curve.size_at(percent);
    if (!size) continue;
    const auto interval = size_interval(measured, percent, confidence);
    const auto symbol = "D" + percent_number(percent);
    std::string text = fmt::format("{} {}", symbol, wording.rock(*size));
    if (measured.photos > 0 && percent < 50) text += ", indicative";
    if (interval.low && interval.high) {
      text += fmt::format(" ({} to {})", wording.rock(*interval.low), wording.rock(*interval.high));
    }
    words.push_back(std::move(text));
    finding.values.push_back(
        {fmt::format("d{}", percent_number(percent)), symbol,
         fmt::format("size with {} % smaller by mass", percent_number(percent)), measure(*size),
         LengthUse::rock});
  }
  if (words.empty()) {
    const auto& coarsest = measured.curve.points().front();
    return fmt::format("{} % is smaller than {}, and no size below that is told apart",
                       significant(coarsest.percent_smaller, 3), wording.rock(coarsest.size));
  }
  return listed(words);
}

void state_conditions(Finding& finding, const BandComparison& comparison) {
  finding.reasons.push_back(
      "Limit by limit, each by itself; the outcome above speaks for all of them at once.");
  for (const auto& check : comparison.checks) {
    finding.reasons.push_back(fmt::format("{}: {}. {}", check.condition.wording,
                                          outcome_phrase(check.outcome), check.reason));
  }
}

/// The weakest condition decides how sure the whole statement is.
double confidence_of(const BandComparison& comparison) {
  double least = 1;
  for (const auto& check : comparison.checks) least = std::min(least, check.confidence_kept);
  return least;
}

std::string conditions_with(const BandComparison& comparison, Outcome outcome) {
  std::vector<std::string> words;
  for (const auto& check : comparison.checks) {
    if (check.outcome == outcome) words.push_back(check.condition.wording);
  }
  return listed(words);
}

void word_comparison(Finding& finding, const LotEvidence& evidence,
                     const BandComparison& comparison, const MeasuredGradation& measured) {
  const auto& name = evidence.ordered->name;
  const auto& risks = comparison.risks;
  finding.outcome = comparison.outcome;
  finding.confidence = confidence_of(comparison);
  switch (comparison.outcome) {
    case Outcome::meets:
      finding.sentence +=
          fmt::format(" Every limit of {} is shown to be kept at {} confidence, all at once.", name,
                      confidence_text(risks.to_accept()));
      finding.next = "Accept the lot; keep the measured pile as the reference.";
      break;
    case Outcome::falls_short:
      finding.sentence += fmt::format(" {} is broken at {} confidence: {}.", name,
                                      confidence_text(risks.to_turn_away()),
                                      conditions_with(comparison, Outcome::falls_short));
      finding.next = "See what this rock means for each zone, and the remedies.";
      break;
    default:
      finding.sentence += fmt::format(
          " {} {}; not yet decided at {} confidence: {}.",
          comparison.inside_by_estimate ? "By estimate inside" : "By estimate outside", name,
          confidence_text(risks.to_accept()), conditions_with(comparison, Outcome::not_yet_known));
      finding.next = what_would_decide(comparison, measured);
  }
}

void judge(Finding& finding, const LotEvidence& evidence, const MeasuredGradation& measured,
           std::optional<BandComparison>& kept, const EvidencePolicy& policy) {
  auto comparison = compare_with_band(measured, evidence.ordered->band, policy.risks());
  if (!comparison) {
    finding.outcome = Outcome::ask_the_designer;
    for (const auto& problem : comparison.problems()) finding.reasons.push_back(problem.sentence());
    finding.next = "The class and the measurement are stated on different bases.";
    return;
  }
  finding.steps.append(comparison->steps);
  word_comparison(finding, evidence, *comparison, measured);
  state_conditions(finding, *comparison);
  kept = std::move(*comparison);
}

void add_sources(Finding& finding, const MeasuredGradation* measured) {
  if (measured != nullptr && measured->photos > 0) {
    finding.sources.push_back(rendered_piles("factors, scale and limits of photos"));
  }
  finding.sources.push_back(
      {"Kellerhals & Bray, Sampling procedures for coarse fluvial sediments, "
       "J. Hydraulics Division ASCE, 1971",
       "Table 2, conversion of counts to mass", SourceStanding::memory});
  finding.sources.push_back(
      {"Clopper & Pearson, Biometrika, 1934", "limits of a proportion", SourceStanding::memory});
}

/// The largest stone on photos, which their curve does not tell.
void state_largest(Finding& finding, const Look& look, const Wording& wording) {
  const auto* photos = std::get_if<PhotoSet>(&look.taken);
  if (photos == nullptr) return;
  const auto state = [&](Length size) {
    finding.values.push_back(
        {"largest", "D_max", "largest stone seen", measure(size), LengthUse::rock});
  };
  if (photos->taped_largest) {
    state(*photos->taped_largest);
    finding.sentence +=
        fmt::format(" Largest stone seen: {} by tape.", wording.rock(*photos->taped_largest));
  } else if (photos->tapped_largest) {
    auto unread = Steps::unread();
    const auto by_ends = largest_by_ends(*photos, unread);
    if (!by_ends) return;
    state(by_ends->size);
    finding.sentence +=
        fmt::format(" Largest stone seen: {} by its ends ({} to {}).", wording.rock(by_ends->size),
                    wording.rock(by_ends->low), wording.rock(by_ends->high));
  }
}

Finding look_finding(const LotEvidence& evidence, const Look& look,
                     const Expected<MeasuredGradation>& measured, const EvidencePolicy& policy,
                     const Wording& wording) {
  auto finding =
      begin_finding(evidence, fmt::format("gradation.{}.{}", evidence.lot->id, look.id), look.name);
  finding.about.look = look.id;
  if (!measured) {
    finding.outcome = Outcome::not_yet_known;
    for (const auto& problem : measured.problems()) finding.reasons.push_back(problem.sentence());
    finding.sentence = "This look could not be turned into a curve. " + finding.reasons.front();
    finding.next = "Mend the entry named above.";
    return finding;
  }
  finding.steps = measured->steps;
  for (const auto& caution : measured->cautions) finding.cautions.push_back(caution);
  finding.sentence = fmt::format("{} stones by {}: {}.", measured->stones, measured->method,
                                 stated_sizes(finding, *measured, policy.confidence, wording));
  state_largest(finding, look, wording);
  add_sources(finding, &*measured);
  std::optional<BandComparison> comparison;
  judge(finding, evidence, *measured, comparison, policy);
  return finding;
}

/// Whether the looks can be looks at one rock; adds a finding when they contradict one another.
bool looks_agree(LotEvidence& evidence, const std::vector<MeasuredGradation>& measured,
                 double confidence) {
  const auto test = same_rock(measured, confidence);
  if (!test || !test->differ) return true;
  auto finding =
      begin_finding(evidence, fmt::format("same-rock.{}", evidence.lot->id), "Do the looks agree?");
  finding.outcome = Outcome::ask_the_designer;
  finding.steps = test->steps;
  finding.sentence = fmt::format(
      "The looks at {} differ by more than chance would allow at {} confidence, so they are not "
      "put "
      "together.",
      evidence.lot->name, confidence_text(confidence));
  finding.next =
      "Look whether the pile is segregated or one look was taken from other rock; then judge the "
      "parts as lots of their own.";
  evidence.findings.push_back(std::move(finding));
  return false;
}

/// The risks that the verdict is passed at, and which of them nobody stated.
std::string risks_sentence(const EvidencePolicy& policy) {
  const auto risks = policy.risks();
  return fmt::format(
      "Decided at an owner's risk of {:g} % (rock that breaks a limit is accepted{}) and a "
      "producer's risk of {:g} % (rock that keeps every limit is turned away{}).",
      100 * risks.owners, policy.owners_risk ? "" : "; not stated, from the confidence",
      100 * risks.producers, policy.producers_risk ? "" : "; not stated, from the confidence");
}

Finding lot_finding(LotEvidence& evidence, const EvidencePolicy& policy, const Wording& wording) {
  auto finding =
      begin_finding(evidence, "gradation." + evidence.lot->id,
                    fmt::format("{} against {}", evidence.lot->name, evidence.ordered->name));
  finding.governs = true;
  finding.sources.push_back(evidence.ordered->source);
  add_sources(finding, evidence.together ? &*evidence.together : nullptr);
  if (!evidence.together) {
    finding.outcome = evidence.seen.empty() ? Outcome::not_yet_known : Outcome::ask_the_designer;
    finding.sentence = evidence.seen.empty()
                           ? fmt::format("No look at {} could be used.", evidence.lot->name)
                           : "The looks contradict one another.";
    finding.next = evidence.seen.empty() ? "Count 100 stones on a grid over the whole pile."
                                         : "Find out why before the lot is judged.";
    return finding;
  }
  finding.steps = evidence.together->steps;
  finding.sentence =
      fmt::format("{} stones in all: {}.", evidence.together->stones,
                  stated_sizes(finding, *evidence.together, policy.confidence, wording));
  finding.reasons.push_back(risks_sentence(policy));
  judge(finding, evidence, *evidence.together, evidence.comparison, policy);
  return finding;
}

}  // namespace

LotEvidence weigh_lot(const Site& site, const Lot& lot, const Wording& wording) {
  LotEvidence evidence;
  evidence.lot = &lot;
  evidence.ordered = find_class(site, lot.rock_class);
  const auto& policy = site.evidence;
  std::vector<MeasuredGradation> measured;
  for (const auto& [id, look] : site.looks) {
    if (look.lot != lot.id || !gives_curve(look)) continue;
    auto curve = measured_look(site, look);
    evidence.findings.push_back(look_finding(evidence, look, curve, policy, wording));
    if (!curve) continue;
    measured.push_back(*curve);
    evidence.seen.push_back({&look, std::move(*curve)});
  }
  if (measured.size() == 1) {
    evidence.together = measured.front();
  } else if (measured.size() > 1 && looks_agree(evidence, measured, policy.confidence)) {
    if (auto together = pooled(measured)) evidence.together = std::move(*together);
  }
  evidence.findings.push_back(lot_finding(evidence, policy, wording));
  return evidence;
}

}  // namespace proofstone
