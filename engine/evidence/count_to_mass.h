#pragma once

#include <vector>

#include "engine/evidence/measured_gradation.h"
#include "engine/method/method.h"

namespace proofstone {

struct CountToMassInputs {
  std::vector<Length> edges;          ///< of the bins, from small to large; one more than bins
  std::vector<Dimensionless> counts;  ///< stones in each bin
  StonePicking picked = StonePicking::grid;
  MidSize mid_size = MidSize::geometric;
  Length size;                                         ///< at which the percent is asked
  Dimensionless percent = Dimensionless::number(0.5);  ///< at which the size is asked
};

struct CountToMassResult {
  Dimensionless percent_smaller;  ///< by mass, at `size`
  Length size_at_percent;
  Dimensionless effective_stones;
};

/// A count in bins to a curve by mass (Kellerhals & Bray 1971), read at one size and one percent.
Expected<CountToMassResult> count_to_mass(const CountToMassInputs& in, Steps& steps);

/// The same by name: "count-to-mass".
const Method& count_to_mass_method();

/// The bins that edges and counts describe: whole counts, one edge more than counts. Problems are
/// located by JSON pointer ("/counts/2").
Expected<std::vector<CountBin>> bins_of(const std::vector<Length>& edges,
                                        const std::vector<Dimensionless>& counts);

}  // namespace proofstone
