#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct StonesForShareInputs {
  Dimensionless share = Dimensionless::number(0.5);   ///< percent smaller that is looked for
  Dimensionless within = Dimensionless::number(0.1);  ///< half-width wanted, in percent smaller
  Dimensionless confidence = Dimensionless::number(0.95);
  Dimensionless stones_in_load = Dimensionless::number(1);  ///< picked from each load
  Dimensionless alike_in_load;  ///< correlation of stones of one load; 0 for none
};

struct StonesForShareResult {
  Dimensionless independent_stones;
  Dimensionless stones;
  Dimensionless loads;
};

/// How many stones to count before going out, so that the percent smaller than a size is known to
/// within a half-width: z²·p·(1 − p)/ε², times 1 + (m − 1)·ρ where m stones come from each load.
Expected<StonesForShareResult> stones_for_share(const StonesForShareInputs& in, Steps& steps);

/// The same by name: "stones-for-share".
const Method& stones_for_share_method();

}  // namespace proofstone
