#pragma once

#include "engine/evidence/blend.h"
#include "engine/evidence/size_margin.h"
#include "engine/site/lot_evidence.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// More loads than this in one round of mixing are not kept count of at the pile (common practice).
inline constexpr int most_loads_in_a_round = 10;

/// A blend with what the looks at the rock in it say of it.
struct JudgedBlend {
  const BlendOption* option = nullptr;
  MeasuredGradation evidence;
  std::optional<BandComparison> comparison;
  std::optional<SizeMargin> margin;
  bool is_shown() const;
};

/// Compares a blend with the class that was ordered and with the size that is asked for. `option`
/// must outlive the result. Precondition: the looks go together.
JudgedBlend judge_blend(const LotEvidence& evidence, const BlendOption& option,
                        const RequiredSize& required, const DecisionRisks& risks);

/// Puts steps, confidence and margin of a judged blend into a finding.
void state_judged(Finding& finding, const JudgedBlend& blend);

}  // namespace proofstone
