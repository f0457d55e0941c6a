#pragma once

#include <vector>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Which length of open water stands for the fetch.
enum class FetchRule {
  saville_radial,      ///< Σ x·cosα / Σ cosα, x along the radial
  saville_projection,  ///< the same with x projected on the wind: Σ x·cos²α / Σ cosα
  mean_of_radials,     ///< mean of the radials given (SPM 1984: nine at 3°)
  straight_line,       ///< the middle radial alone (CEM: no correction for width)
};

/// Radials drawn from the point of interest over open water to the far shore, from the left end of
/// the fan to the right one, at equal angles. An odd number; the middle one lies along the wind.
struct EffectiveFetchInputs {
  std::vector<Length> radials;
  Angle spacing = Angle::degrees(6);
  FetchRule rule = FetchRule::saville_radial;
};

struct EffectiveFetchResult {
  Length fetch;  ///< by the rule chosen
  Length saville_radial;
  Length saville_projection;
  Length mean_of_radials;
  Length straight_line;
};

/// Fetch by Saville (1962; TR-69, ACER TM-2: 15 radials, ±42° at 6°), SPM 1984 or CEM. A Problem
/// when the radials are even in number or the fan is wider than ±90°.
Expected<EffectiveFetchResult> effective_fetch(const EffectiveFetchInputs& inputs, Steps& steps);

const Method& effective_fetch_method();

}  // namespace proofstone
