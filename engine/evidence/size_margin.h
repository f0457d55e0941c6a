#pragma once

#include <map>
#include <optional>
#include <vector>

#include "engine/evidence/confidence.h"
#include "engine/evidence/decision_risks.h"
#include "engine/evidence/measured_gradation.h"
#include "engine/finding/outcome.h"

namespace proofstone {

/// Whether the size at a percent of a measured lot reaches a required size, and by how much.
struct SizeMargin {
  /// Measured size at the percent over the required one; absent where the curve does not reach down
  /// to the percent (an open smallest bin).
  std::optional<double> margin;
  /// The margin at the two-sided confidence limits of the size; absent where the curve ends first.
  std::optional<double> low;
  std::optional<double> high;
  double confidence_holds = 0;   ///< that the size reaches the required one, 0 to 1
  double confidence_broken = 0;  ///< that it does not; the two need not add to 1
  /// Meets when the first reaches one minus the owner's risk, falls short when the second reaches
  /// one minus the producer's.
  Outcome outcome = Outcome::not_yet_known;
  /// How many stones in all would decide it if the shares stay as they are; absent when decided
  /// already or when 5,000 would not do.
  std::optional<int> stones_to_decide;
  Steps steps;
};

/// What is wrong with "the size at `percent` must reach `required`" as a question; none when it can
/// be asked: a percent between 0 and 100, a size above 0.
Problems problems_of_requirement(double percent, Length required);

/// The size of which `percent` of the lot is smaller, by mass, against `required`, both in the
/// sense of size that the measured curve has. "Dp ≥ required" is tested as "at most p % is smaller
/// than the required size". Problems: percent not between 0 and 100, required not positive,
/// a risk not above 0 and up to 0.5. The limits of the margin are two-sided at one minus the
/// owner's risk.
///
/// Where the required size is itself uncertain, as by the scatter of density tests,
/// `required_errors` are equally likely values of ln(true over stated required size), from low to
/// high: confidences are means over them, and the limits of the margin are widened in quadrature.
Expected<SizeMargin> size_margin(const MeasuredGradation& measured, double percent, Length required,
                                 const DecisionRisks& risks,
                                 const std::vector<double>& required_errors = {});

/// The same of one measured lot against many required sizes: what hangs on the percent alone is
/// computed once. The gradation must outlive it.
class SizeMargins {
 public:
  SizeMargins(const MeasuredGradation& measured, const DecisionRisks& risks)
      : measured_(measured), risks_(risks) {}

  Expected<SizeMargin> at(double percent, Length required,
                          const std::vector<double>& required_errors = {});

 private:
  const SizeInterval& limits_of(double percent);

  const MeasuredGradation& measured_;
  DecisionRisks risks_;
  std::map<double, SizeInterval> limits_;  ///< by percent
};

/// As above, both risks being one minus the confidence.
Expected<SizeMargin> size_margin(const MeasuredGradation& measured, double percent, Length required,
                                 double confidence);

}  // namespace proofstone
