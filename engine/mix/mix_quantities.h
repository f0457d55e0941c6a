#pragma once

#include <optional>
#include "engine/method/typed_method.h"

namespace proofstone {

/// Rock and fill of a filled layer from its volume in place: masses, and the fill as compacted,
/// bank and loose volume.
struct MixQuantitiesInputs {
  Volume volume;                                      ///< of the layer in place
  Dimensionless voids = Dimensionless::number(0.38);  ///< of the rock, share of its bulk volume
  Dimensionless specific_gravity = Dimensionless::number(2.65);  ///< of the rock
  Dimensionless filling = Dimensionless::number(0.95);      ///< share of the voids that is filled
  Dimensionless fill_swell = Dimensionless::number(1.25);   ///< loose over bank volume
  Dimensionless fill_shrink = Dimensionless::number(0.90);  ///< in place over bank volume
  std::optional<Density> fill_density;                      ///< dry, in place
};

struct MixQuantitiesResult {
  Density rock_density;  ///< bulk, of the rock alone
  Mass rock_mass;
  Volume fill_in_place;
  Volume fill_bank;
  Volume fill_loose;
  Mass fill_mass;
  Dimensionless loose_ratio;  ///< loose fill to rock
  Dimensionless fill_share;   ///< of the summed loose volumes
  Density mix_density;        ///< dry
};

Expected<MixQuantitiesResult> mix_quantities(const MixQuantitiesInputs& inputs, Steps& steps);

const Method& mix_quantities_method();

}  // namespace proofstone
