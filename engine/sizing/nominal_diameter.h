#pragma once

#include "engine/quantity/quantity.h"

namespace proofstone {

/// Median sieve size of rock from its nominal diameter Dn50, the side of a cube of the median mass:
/// D50 = Dn50/0.84 (CIRIA C683, The Rock Manual, 2007).
constexpr double nominal_over_sieve = 0.84;
constexpr const char* nominal_over_sieve_source =
    "CIRIA C683 (2007): Dn50 = 0.84·D50 (from memory; confirm)";
constexpr Length sieve_size_of_nominal(Length nominal) { return nominal / nominal_over_sieve; }

}  // namespace proofstone
