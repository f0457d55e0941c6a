#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// What ice and debris ask of rock beyond the water:
///  - ice pushed up a bank does no damage where D100 is 2 ice thicknesses on 1V:3H and about 3 on
///    1V:1.5H (Sodhi, Borland and Stanley, CRREL Report 96-12, 1996; small-scale tests). Nothing is
///    published between: steeper than 1V:3H counts as 1V:1.5H;
///  - ice frozen to the rock lifts it out unless D50 exceeds the greatest winter ice thickness
///    (Matheson 1988, cited there);
///  - layers are thickened by 6 to 12 in, with larger stone to match (USACE EM 1110-2-1601
///    [memory]).
struct IceAndDebrisInputs {
  Length ice_thickness;  ///< greatest of the winter
  Slope bank_slope;
};

struct IceAndDebrisResult {
  Dimensionless shove_factor;
  Length d100_against_shove;
  Length d50_against_plucking;
  Length thickening_from;
  Length thickening_to;
};

Expected<IceAndDebrisResult> ice_and_debris(const IceAndDebrisInputs& inputs, Steps& steps);

const Method& ice_and_debris_method();

}  // namespace proofstone
