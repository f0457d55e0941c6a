#pragma once

#include "engine/finding/source.h"

namespace proofstone {

/// Documents behind more than one file of the evidence.
inline Source kellerhals_bray_source() {
  return {"Kellerhals & Bray 1971, Sampling procedures for coarse fluvial sediments",
          "Table 2, weighting exponents", SourceStanding::memory};
}
inline Source clopper_pearson_source() {
  return {"NIST/SEMATECH e-Handbook of Statistical Methods", "§7.2.4.2, exact confidence limits",
          SourceStanding::published};
}
inline Source percentile_limits_source() {
  return {"Eaton, Moore & MacKenzie 2019, Earth Surf. Dynam. 7, 789–806",
          "abstract: limits of the percent read on the sample's own curve",
          SourceStanding::published};
}
inline Source weighed_sample_source() {
  return {"ASTM D5519", "scope: percent finer by mass from size or mass ranges",
          SourceStanding::published};
}

}  // namespace proofstone
