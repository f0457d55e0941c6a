#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/rock/gradation.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// One material of a blend and how much of it, in any measure of mass: loads, tons, a share.
struct BlendPart {
  Gradation gradation;
  double amount = 1;
};

/// The curve of several materials mixed by mass: F = Σ w·F over Σ w at every size of any part. It
/// starts where every part knows its share. Problems: no part, amounts not positive, bases that
/// differ, percents by count.
Expected<Gradation> blend(const std::vector<BlendPart>& parts);

/// Two piles mixed in whole loads of equal mass.
struct BlendOption {
  int loads_of_this_rock = 1;
  int loads_of_other = 1;
  Gradation gradation;
  bool keeps_band = true;           ///< by estimate; true without a band
  std::vector<std::string> broken;  ///< wordings of the band conditions it breaks
  std::optional<double> margin;     ///< size at the percent over the required one
  bool reaches_size() const { return margin.value_or(0) >= 1; }
  bool holds() const { return keeps_band && reaches_size(); }
};

/// Every ratio of loads in lowest terms with at least one load of each and at most `most_loads` in
/// all: those that hold first, then those that keep the band, each from least to most of the other
/// material. The band may be null. Shares are point estimates: measure the blend before it is used.
///
/// Problems: bases that differ or a band that cannot be compared, `most_loads` outside 2 to 50,
/// percent or required size without meaning; and when no ratio holds, one that says which condition
/// stands in the way.
Expected<std::vector<BlendOption>> two_pile_blends(const Gradation& this_rock,
                                                   const Gradation& other,
                                                   const GradationBand* band, double percent,
                                                   Length required, int most_loads);

}  // namespace proofstone
