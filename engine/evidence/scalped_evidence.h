#pragma once

#include "engine/evidence/measured_gradation.h"

namespace proofstone {

/// What looks at rock say of it once the stones above a size are taken out.
struct ScalpedEvidence {
  MeasuredGradation measured;
  double taken_out = 0;  ///< share of the mass, 0 to 1
};

/// F' = F/F(size) up to `at`, with the effective stones that lie below it. Problems: nothing or
/// everything would be taken out, or the curve does not say how much.
Expected<ScalpedEvidence> scalped_evidence(const MeasuredGradation& measured, Length at);

}  // namespace proofstone
