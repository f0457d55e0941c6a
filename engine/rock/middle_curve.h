#pragma once

#include "engine/rock/gradation_band.h"

namespace proofstone {

/// A curve midway between the limits of a band: at each percent the mean, in log(size), of the
/// smallest and the largest size that a rock inside the band can have, or the one of the two that
/// the band limits. A Problem where the band limits fewer than two percents.
Expected<Gradation> middle_curve(const GradationBand& band);

}  // namespace proofstone
