#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Groups of plants with one permissible velocity.
enum class GrassSpecies {
  bermudagrass,
  bluegrass_brome_grama,  ///< bluegrass, smooth brome, blue grama
  grass_mixture,
  lespedeza_lovegrass_group,  ///< lespedeza, weeping lovegrass, alfalfa, red fescue
  annuals,
};

enum class SoilErodibility { resistant, easily_eroded };

/// Velocity that established grass bears: SCS-TP-61.
struct VegetatedVelocityInputs {
  GrassSpecies species = GrassSpecies::grass_mixture;
  SoilErodibility soil = SoilErodibility::easily_eroded;
  Slope slope;  ///< of the channel
};

struct VegetatedVelocityResult {
  Velocity velocity;
};

/// Problem (not-listed): a slope for which the handbook lists nothing for these plants.
Expected<VegetatedVelocityResult> vegetated_velocity(const VegetatedVelocityInputs& inputs,
                                                     Steps& steps);

const Method& vegetated_velocity_method();

}  // namespace proofstone
