#include "engine/site/lot_on_filter.h"

#include <fmt/format.h>

#include "engine/site/filter_chain.h"
#include "engine/site/filter_layer_findings.h"

namespace proofstone {
namespace {

/// What a curve of the lot comes to on the layer below it; absent where nothing is below it.
std::optional<PairVerdict> judge_rock(const Site& site, const Zone& zone, const std::string& name,
                                      const Gradation& curve, const Wording& wording) {
  const auto chain = judge_chain(site, zone, layers_of(zone), LayerCurves(name, curve), wording);
  if (chain.pairs.empty()) return std::nullopt;
  return chain.pairs.back();
}

void say_limits(const PairVerdict& measured, const PairVerdict& coarse, const PairVerdict& fine,
                double confidence, Finding& finding) {
  const auto at = fmt::format("{:.4g} % confidence", 100 * confidence);
  finding.reasons.push_back(fmt::format("As coarse as the looks leave it possible at {}: {}. {}",
                                        at, outcome_phrase(coarse.outcome), coarse.sentence));
  finding.reasons.push_back(
      fmt::format("As fine: {}. {}", outcome_phrase(fine.outcome), fine.sentence));
  if (coarse.outcome == measured.outcome && fine.outcome == measured.outcome) {
    finding.confidence = confidence;
    return;
  }
  finding.outcome = Outcome::not_yet_known;
  finding.sentence = fmt::format(
      "By the measured curve: {}. The limits of confidence leave the opposite possible.",
      measured.sentence);
  finding.next = fmt::format(
      "Count more stones, most of all small ones, before rock is laid on it; or lay what {} asks "
      "for.",
      is_worse(coarse.outcome, fine.outcome) ? "the coarser rock" : "the finer rock");
}

}  // namespace

std::optional<Finding> lot_on_filter(const Site& site, const Zone& zone,
                                     const LotEvidence& evidence, const Wording& wording) {
  if (all_filled(zone) || (zone.soil.empty() && !zone.filter) || !evidence.together) {
    return std::nullopt;
  }
  const auto& name = evidence.lot->name;
  const auto measured = judge_rock(site, zone, name, evidence.together->curve, wording);
  if (!measured) return std::nullopt;
  auto finding =
      pair_finding(zone, *measured, fmt::format("filter.{}.{}", zone.id, evidence.lot->id));
  finding.title = fmt::format("{} on the filter of {}", name, zone.name);
  finding.about.lot = evidence.lot->id;
  const auto limits = limit_curves(*evidence.together, site.evidence.confidence);
  if (!limits) {
    finding.cautions = {"The measured curve is taken as it is, without its limits of confidence."};
    return finding;
  }
  const auto coarse = judge_rock(site, zone, name, limits->coarse, wording);
  const auto fine = judge_rock(site, zone, name, limits->fine, wording);
  say_limits(*measured, *coarse, *fine, site.evidence.confidence, finding);
  return finding;
}

}  // namespace proofstone
