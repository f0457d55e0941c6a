#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Bed or bank material by grain size or kind, coarsest first.
enum class ScourMaterial {
  boulders,            ///< above 256 mm
  large_cobbles,       ///< 128–256 mm
  small_cobbles,       ///< 64–128 mm
  very_coarse_gravel,  ///< 32–64 mm
  coarse_gravel,       ///< 16–32 mm
  medium_gravel,       ///< 8–16 mm
  fine_gravel,         ///< 4–8 mm
  very_fine_gravel,    ///< 2–4 mm
  very_coarse_sand,    ///< 1–2 mm
  coarse_sand,         ///< 0.5–1 mm
  medium_sand,         ///< 0.25–0.5 mm
  fine_sand,           ///< 0.125–0.25 mm
  heavy_sandy_loam,
  light_sandy_loam,
  settled_loess,
};

/// Velocity that does not scour a material at a mean depth: FHWA HDS 6 Table 3.5.
struct NonScourVelocityInputs {
  ScourMaterial material = ScourMaterial::fine_sand;
  Length mean_depth;
};

struct NonScourVelocityResult {
  Velocity velocity;
};

/// Between the table's depths the velocity is taken on a straight line. Problem (outside-table): a
/// depth below 1.3 ft or above 9.8 ft.
Expected<NonScourVelocityResult> non_scour_velocity(const NonScourVelocityInputs& inputs,
                                                    Steps& steps);

const Method& non_scour_velocity_method();

}  // namespace proofstone
