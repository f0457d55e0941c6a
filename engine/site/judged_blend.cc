#include "engine/site/judged_blend.h"

#include "engine/evidence/blend_evidence.h"

namespace proofstone {

bool JudgedBlend::is_shown() const {
  return comparison && comparison->outcome == Outcome::meets && margin &&
         margin->outcome == Outcome::meets;
}

JudgedBlend judge_blend(const LotEvidence& evidence, const BlendOption& option,
                        const RequiredSize& required, const DecisionRisks& risks) {
  JudgedBlend judged{&option, evidence_of_blend(*evidence.together, option), std::nullopt,
                     std::nullopt};
  if (auto comparison = compare_with_band(judged.evidence, evidence.ordered->band, risks)) {
    judged.comparison = std::move(*comparison);
  }
  if (auto margin = size_margin(judged.evidence, required.percent_smaller, required.size, risks)) {
    judged.margin = std::move(*margin);
  }
  return judged;
}

void state_judged(Finding& finding, const JudgedBlend& blend) {
  finding.steps.append(blend.evidence.steps);
  for (const double percent : {15.0, 50.0, 85.0}) {
    const auto size = blend.option->gradation.size_at(percent);
    if (!size) continue;
    finding.steps.computed_rock("D" + percent_number(percent), "of the blend, by mass",
                                "F = Σ w·F, log-size interpolation", *size);
  }
  if (blend.comparison) finding.steps.append(blend.comparison->steps);
  if (!blend.margin) return;
  finding.steps.append(blend.margin->steps);
  finding.confidence = blend.margin->confidence_holds;
  if (blend.margin->margin) {
    finding.margin = Margin{*blend.margin->margin, blend.margin->low, blend.margin->high};
  }
}

}  // namespace proofstone
