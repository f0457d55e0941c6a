#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// The share of the first of two materials that brings their blend to a percent at one sieve.
struct ShareFromOneSieveInputs {
  Dimensionless first;   ///< percent smaller of the first
  Dimensionless second;  ///< of the second
  Dimensionless target;  ///< of the blend
};

struct ShareFromOneSieveResult {
  Dimensionless share;  ///< of the first
};

Expected<ShareFromOneSieveResult> share_from_one_sieve(const ShareFromOneSieveInputs& inputs,
                                                       Steps& steps);

const Method& share_from_one_sieve_method();

}  // namespace proofstone
