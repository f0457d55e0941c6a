#pragma once

#include <string>
#include <vector>

#include "engine/evidence/blend.h"

namespace proofstone {

/// F = Σ w·F over Σ w at every size of any part, from the largest of the sizes at which a part with
/// an open smallest bin begins, up to the smallest at which one with an open top ends. Behind both
/// `blend` and `pooled`; Problems name a part by `word` ("look 2"). Internal to the evidence.
Expected<Gradation> weighted_curve(const std::vector<BlendPart>& parts, const std::string& word);

}  // namespace proofstone
