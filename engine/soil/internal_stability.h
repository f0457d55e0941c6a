#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/outcome.h"
#include "engine/finding/steps.h"
#include "engine/rock/limit_curve.h"

namespace proofstone {

/// What one criterion says of a gradation. A margin of 1 just holds.
struct StabilityVerdict {
  std::string method;  ///< "kenney-lau"
  std::string name;    ///< "Kenney–Lau"
  Outcome outcome = Outcome::not_yet_known;
  std::optional<double> margin;
  std::string sentence;
};

/// Every criterion at once, and whether those that speak say the same.
struct InternalStability {
  std::vector<StabilityVerdict> verdicts;
  bool agree = true;
  /// meets where all that speak hold, falls short where all fail, ask the designer where they
  /// disagree or doubt, not yet known where none speaks.
  Outcome outcome = Outcome::not_yet_known;
  std::string sentence;
};

/// Whether the fine grains of a gradation are held by the coarse ones, by Kenney–Lau, Kezdi,
/// Burenkova, Chang–Zhang and Istomina. Criteria that disagree are both shown; none is preferred.
InternalStability internal_stability(const CurvePoints& curve, Steps& steps);

}  // namespace proofstone
