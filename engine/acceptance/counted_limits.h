#pragma once

#include <vector>

#include "engine/acceptance/share_risks.h"
#include "engine/evidence/decision_risks.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// A limit of a band as a count tests it: each stone is on the right or on the wrong side of a
/// size, and so many of a hundred on the wrong side are too many.
struct CountedLimit {
  BandCondition condition;
  Length size;  ///< of the condition, as the middle axis of a stone
  bool smaller_is_wrong = true;
  /// "No stone larger (smaller) than": a single wrong stone breaks it, and none of
  /// `stones_without_wrong` shows that at most the tolerable share lies beyond.
  bool no_stone_at_all = false;
  int stones_without_wrong = 0;  ///< where no stone at all may be wrong
  ShareRisks risks;              ///< where some stones may be wrong

  /// Whether a stone counts as wrong. One of just that size is on the right side of a limit "no
  /// stone larger than"; else it is not smaller.
  bool is_wrong(Length stone) const;
};

/// The limits of a band that a count can test, in their order. What must not be accepted is a share
/// at the limit, with the owner's risk whole (every limit must be accepted); what is good keeps it
/// by `good_by`, or by two thirds of it where that is less, with the producer's risk divided by
/// their number (any limit may turn the rock away). "The largest stone is at least" is left out.
std::vector<CountedLimit> counted_limits(const GradationBand& band, const DecisionRisks& risks,
                                         double good_by);

}  // namespace proofstone
