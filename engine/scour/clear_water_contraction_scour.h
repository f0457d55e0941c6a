#pragma once

#include <optional>

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Scour of a contracted section by water that brings no bed material (clear water): Laursen, as
/// FHWA HEC-18 (2012) eq. 6.4 prints it [memory]: y2 = [0.025·Q²/(Dm^⅔·W²)]^(3/7) in metres,
/// Dm = 1.25·D50. (The foot print, 0.0077, gives depths 0.4 % higher.)
struct ClearWaterContractionInputs {
  Discharge contracted_discharge;
  Length contracted_width;
  Length existing_depth;
  Length bed_grain;
  std::optional<Length> approach_depth;
  std::optional<Velocity> approach_velocity;
};

struct ClearWaterContractionResult {
  Length depth;
  Length scour;
};

Expected<ClearWaterContractionResult> clear_water_contraction_scour(
    const ClearWaterContractionInputs& inputs, Steps& steps);

const Method& clear_water_contraction_scour_method();

}  // namespace proofstone
