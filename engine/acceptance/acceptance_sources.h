#pragma once

#include "engine/finding/source.h"

namespace proofstone {

/// Documents behind more than one file of the acceptance plans.
inline Source sequential_plan_source() {
  return {"NIST/SEMATECH e-Handbook of Statistical Methods", "§6.2.6, sequential sampling plans",
          SourceStanding::published};
}
inline Source single_plan_source() {
  return {"NIST/SEMATECH e-Handbook of Statistical Methods",
          "§6.2.3.2, single sampling plans and their operating characteristic",
          SourceStanding::published};
}

}  // namespace proofstone
