#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// How full the voids of rock become when loose fill is mixed in by parts of loose volume, and
/// whether it forces the rock apart: S = r·c/n with r = f/(1 − f).
struct DegreeOfFillingInputs {
  Dimensionless voids = Dimensionless::number(0.40);  ///< share of the rock's bulk volume
  Dimensionless fill_share;                           ///< of the sum of both loose volumes
  /// Volume of the fill in place over its loose volume: 1 where it is measured in place.
  Dimensionless fill_compaction = Dimensionless::number(0.72);
};

struct DegreeOfFillingResult {
  Dimensionless loose_ratio;    ///< loose fill to rock
  Dimensionless filling;        ///< 1: voids just full; more: the rock is forced apart
  Dimensionless largest_share;  ///< of fill that still fits
  Dimensionless bulking;        ///< volume of the mix over that of the rock alone, 1 or more
};

Expected<DegreeOfFillingResult> degree_of_filling(const DegreeOfFillingInputs& inputs,
                                                  Steps& steps);

const Method& degree_of_filling_method();

}  // namespace proofstone
