#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/evidence/confidence.h"
#include "engine/evidence/decision_risks.h"
#include "engine/finding/outcome.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// One condition of a band against the evidence.
struct ConditionCheck {
  BandCondition condition;
  double measured_percent = 0;   ///< at the condition's size
  double confidence_kept = 0;    ///< that the condition is kept, 0 to 1
  double confidence_broken = 0;  ///< that it is not; the two need not add to 1
  Outcome outcome = Outcome::not_yet_known;
  std::string reason;  ///< one sentence
};

/// A measured curve against a band, all conditions at once at the two stated risks:
///
/// - It meets when every condition is shown to be kept at one minus the owner's risk. Rock that
///   breaks any of them, however many there are, is then accepted no more often than that risk,
///   because it would have to pass the very condition that it breaks (intersection–union test,
///   Berger 1982 [memory]).
/// - It falls short when any one condition is shown to be broken at 1 − producer's risk/k, k the
///   number of conditions tested with a confidence: rock that keeps all of them is turned away no
///   more often than that risk (Bonferroni).
///
/// The overall outcome is the worst of the checks in the order falls short, not yet known, ask the
/// designer, meets.
///
/// "No stone larger than" (at least 100 %) and "no stone smaller than" (at most 0 %) cannot be
/// shown by a sample. One such stone measured breaks the condition. When none was, the condition
/// meets if the sample shows that at most the tolerable percent of the lot lies beyond the limit,
/// and the reason says that it means no more than this. "The largest stone is at least" (at most
/// 100 %) is met by one such stone; when none is found although the tolerable percent would have
/// been, it is a question for the designer, for no sample contradicts it.
struct BandComparison {
  Outcome outcome = Outcome::not_yet_known;
  bool inside_by_estimate = false;  ///< every point estimate is inside, whatever the confidence
  DecisionRisks risks;              ///< overall, as asked
  std::vector<ConditionCheck> checks;
  /// How many stones in all would decide every condition if the shares stay as they are; absent
  /// when none of a reasonable number (5,000) would, or when it is decided already.
  std::optional<int> stones_to_decide;
  /// For photos: how many stones of a grid count of its own would decide the same, if it found the
  /// same shares. Absent as above, and where the largest or the smallest stone decides.
  std::optional<int> counted_stones_to_decide;
  Steps steps;
};

/// Share beyond the extreme limit that a sample must exclude to speak for "no stone beyond". EN
/// 13383 tolerates 3 % by mass above its extreme upper and 5 % below its extreme lower limit
/// (reference: seen in a document that quotes it); 5 % is our choice for both ends.
inline constexpr double default_tolerable_percent_beyond = 5;

/// Compares on the band's own basis: where the word size means different things, the size of each
/// condition is converted through the mass of the stone and the steps say so. A Problem when the
/// bases cannot be compared: percents by mass against a band by count (a grid count serves both,
/// see MeasuredGradation), or when a risk is not above 0 and up to 0.5.
Expected<BandComparison> compare_with_band(
    const MeasuredGradation& measured, const GradationBand& band, const DecisionRisks& risks,
    double tolerable_percent_beyond = default_tolerable_percent_beyond);

/// As above, both risks being one minus the confidence.
Expected<BandComparison> compare_with_band(
    const MeasuredGradation& measured, const GradationBand& band, double confidence,
    double tolerable_percent_beyond = default_tolerable_percent_beyond);

/// Whether a curve keeps a condition by its point values alone. `band_size` is what the word size
/// means in the band that the condition comes from.
bool kept_by_estimate(const Gradation& curve, const BandCondition& condition,
                      SizeMeaning band_size);

}  // namespace proofstone
