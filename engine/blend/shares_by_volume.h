#pragma once

#include <vector>
#include "engine/method/typed_method.h"

namespace proofstone {

/// Shares of mass as shares of volume, where specific gravities differ: v = (f/G)/Σ(f/G).
struct SharesByVolumeInputs {
  std::vector<Dimensionless> shares;     ///< of the mass; 1 together
  std::vector<Dimensionless> gravities;  ///< specific gravities
};

struct SharesByVolumeResult {
  Dimensionless first_share;  ///< of the volume
  Dimensionless last_share;
  Dimensionless gravity;  ///< of the blend
};

Expected<SharesByVolumeResult> shares_by_volume(const SharesByVolumeInputs& inputs, Steps& steps);

const Method& shares_by_volume_method();

}  // namespace proofstone
