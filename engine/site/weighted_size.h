#pragma once

#include <optional>
#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// One method's part in a weighted size.
struct WeightedPart {
  const SizeAsked* asked = nullptr;  ///< in the flow case that asks most of the class
  double weight = 0;                 ///< as the owner states it
  double share = 0;                  ///< of the sum of weights that speak
  double ratio = 0;                  ///< size asked over the least the class has at that percent
  Length as_d50;                     ///< median of rock of this class's shape that would just serve
};

/// What weights that the owner states make of several methods. Methods ask for different percents,
/// so each is first put as a multiple of what the class has there; the mean of the multiples, and
/// the median size it stands for, follow.
struct WeightedSize {
  std::vector<WeightedPart> parts;
  std::vector<std::string> silent;  ///< ids of weighted methods that do not speak here
  Length d50;                       ///< weighted
  Length envelope_d50;              ///< of the largest part
  double margin = 0;                ///< class over weighted size
  double envelope_margin = 0;       ///< class over the largest part
};

/// Absent when no weighted method speaks within its limits or the class does not state a size
/// asked.
std::optional<WeightedSize> weigh_sizes(const ZoneSizing& sizing, const RockClass& rock_class);

/// Puts the parts, the weights, the mean and the warning into the finding of the class.
void tell_weighted(Finding& finding, const WeightedSize& weighted, const RockClass& rock_class,
                   const Wording& wording);

}  // namespace proofstone
