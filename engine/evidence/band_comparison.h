#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/evidence/confidence.h"
#include "engine/finding/outcome.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// One condition of a band against the evidence.
struct ConditionCheck {
  BandCondition condition;
  double measured_percent = 0;  ///< at the condition's size
  double confidence_kept = 0;   ///< that the condition is kept, 0 to 1
  Outcome outcome = Outcome::not_yet_known;
};

/// A measured curve against a band. All conditions are stated together at the overall confidence
/// (each is tested at 1 − (1 − confidence)/k, Bonferroni).
struct BandComparison {
  Outcome outcome = Outcome::not_yet_known;
  bool inside_by_estimate = false;  ///< every point estimate is inside, whatever the confidence
  double confidence = 0.95;         ///< overall, as asked
  std::vector<ConditionCheck> checks;
  /// How many stones in all would decide every condition if the shares stay as they are; absent
  /// when none of a reasonable number (5,000) would, or when it is decided already.
  std::optional<int> stones_to_decide;
  Steps steps;
};

/// Compares on the band's own basis. A Problem when the bases cannot be compared: percents by mass
/// against a band by count (a grid count serves both, see MeasuredGradation).
Expected<BandComparison> compare_with_band(const MeasuredGradation& measured,
                                           const GradationBand& band, double confidence);

}  // namespace proofstone
