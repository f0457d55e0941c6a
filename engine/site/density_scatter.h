#pragma once

#include <optional>
#include <vector>

#include "engine/site/site.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// How the size needed follows from tests of the specific gravity that scatter.
struct DensityScatter {
  Dimensionless lightest;          ///< of the tests
  Length needed_with_lightest;     ///< were all the rock as light
  std::vector<double> log_errors;  ///< of the size needed, equally likely, low to high
};

/// Absent where there are not two tests that differ, or the method does not answer for the
/// lightest. `needed` is what `method` asks for in `setting` with the mean of the tests, as
/// `meaning` measures stones. The size needed is taken as a power of the specific gravity less one,
/// as far as from the mean of the tests to the lightest; the mean errs by Student's t. How one
/// stone differs from another is not in it: a layer holds by the rock on the whole.
std::optional<DensityScatter> density_scatter(const RockSource& source, ZoneSetting setting,
                                              const SizingMethod& method, Length needed,
                                              SizeMeaning meaning);

}  // namespace proofstone
