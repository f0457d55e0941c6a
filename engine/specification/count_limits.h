#pragma once

#include <optional>

#include "engine/rock/gradation_band.h"

namespace proofstone {

/// What a count of stones on a grid says of one condition of a band, in stones smaller than its
/// size. Between the two nothing is decided and more stones are counted.
struct CountLimits {
  std::optional<int> shown;   ///< at most (at least) so many smaller show that it is kept
  std::optional<int> broken;  ///< at least (at most) so many smaller show that it is not
};

/// By exact binomial limits at one-sided confidence `level`, as a lot is judged. Absent where no
/// number of stones in such a count shows it. `stones` from 1 to 10,000.
CountLimits count_limits(BandCondition::Sense sense, double percent, int stones, double level);

}  // namespace proofstone
