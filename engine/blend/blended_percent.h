#pragma once

#include <vector>
#include "engine/method/typed_method.h"

namespace proofstone {

/// What to do with shares that are not 1 together.
enum class PartialShares { refuse, scale };

/// Percent smaller of a blend at one sieve: P = Σ f·P. Shares that are not 1 together to 0.001 are
/// refused unless the asker says that they are to be scaled.
struct BlendedPercentInputs {
  std::vector<Dimensionless> shares;    ///< of the mass
  std::vector<Dimensionless> percents;  ///< smaller, of each material
  PartialShares partial = PartialShares::refuse;
};

struct BlendedPercentResult {
  Dimensionless percent;
  Dimensionless first_share;  ///< after scaling
};

Expected<BlendedPercentResult> blended_percent(const BlendedPercentInputs& inputs, Steps& steps);

const Method& blended_percent_method();

}  // namespace proofstone
