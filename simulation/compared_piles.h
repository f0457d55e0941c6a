#pragma once

#include "simulation/known_pile.h"

namespace proofstone {

/// In how many of `pairs` of looks the tests that the engine asks find a difference at 95 %
/// confidence, as a share: the largest distance between two curves, exact with ties, where both
/// observers measured stones on a grid one by one, else χ² of the shares between common sizes.
double found_different(const KnownPile& one, const KnownPile& other, const Observer& observer,
                       int pairs, unsigned seed);

}  // namespace proofstone
