#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Manning's n of gravel, cobble and rock beds by published formulas: Limerinos 1970, Jarrett 1984,
/// Strickler, riprap by USACE, Blodgett (HEC-15) and Ferguson 2007 for shallow flow among large
/// stones. Each asks for its own inputs.
const Method& bed_roughness_method();

}  // namespace proofstone
