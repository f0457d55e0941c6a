#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// The sieve above which grains count as oversize.
enum class OversizeSieve { no_4, three_quarter_inch };

/// Unit weight and water content of compacted soil with oversize, from those of the finer part
/// (ASTM D4718).
struct OversizeCorrectionInputs {
  UnitWeight fine_unit_weight;  ///< dry, of the finer part
  Dimensionless oversize;       ///< share of the mass above the sieve
  Dimensionless oversize_gravity = Dimensionless::number(2.65);  ///< bulk specific gravity
  Dimensionless fine_water = Dimensionless::number(0);           ///< share of the dry mass
  Dimensionless oversize_water = Dimensionless::number(0);
  OversizeSieve sieve = OversizeSieve::no_4;
};

struct OversizeCorrectionResult {
  UnitWeight unit_weight;
  Dimensionless water;
};

Expected<OversizeCorrectionResult> oversize_correction(const OversizeCorrectionInputs& inputs,
                                                       Steps& steps);

const Method& oversize_correction_method();

}  // namespace proofstone
