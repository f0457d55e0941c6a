#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Porosity of a coarse and a fine sediment mixed ideally (Clarke 1979; Koltermann and Gorelick
/// 1995): n_c − c·(1 − n_f) while the fine lies in the voids of the coarse, c·n_f beyond.
struct MixturePorosityInputs {
  Dimensionless coarse_porosity;
  Dimensionless fine_porosity;
  Dimensionless fine_share;  ///< of the bulk volume
};

struct MixturePorosityResult {
  Dimensionless porosity;
  Dimensionless least_porosity;  ///< with the voids of the coarse just full
};

Expected<MixturePorosityResult> mixture_porosity(const MixturePorosityInputs& inputs, Steps& steps);

const Method& mixture_porosity_method();

}  // namespace proofstone
