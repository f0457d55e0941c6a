#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Toe of a slope that waves run at. Where nothing better is known the bed is taken to scour by one
/// wave height, and the toe goes below that or is an apron at least three stones wide (USACE EM
/// 1110-2-1614 and Shore Protection Manual, from memory). The stone of a toe berm in shallow water:
/// Hs/(Δ·Dn50) = [2 + 6.2·(ht/h)^2.7]·Nod^0.15 (van der Meer 1998, as CIRIA C683 gives it, from
/// memory); homogeneous.
struct WaveToeInputs {
  Length wave_height;                  ///< significant, at the toe
  Length armour_cube;                  ///< Dn50 of the rock on the slope
  std::optional<Length> scour;         ///< a better estimate than one wave height
  std::optional<Length> water_depth;   ///< h, before the structure
  std::optional<Length> depth_at_toe;  ///< ht, over the toe berm
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Dimensionless water_specific_gravity = Dimensionless::number(1);
  Dimensionless damage = Dimensionless::number(0.5);  ///< Nod
};

struct WaveToeResult {
  Length scour;               ///< below the bed, to which the toe goes
  Length stone_cube;          ///< Dn50 of the toe's stone
  Mass stone_mass;            ///< W50 of it
  Length apron_width;         ///< where the toe is an apron instead
  Length apron_thickness;     ///< two stones
  Area apron_section;         ///< rock of the apron for each unit of length
  Dimensionless depth_ratio;  ///< ht/h; 0 where the depths are not given
};

/// Problems: a depth over the toe larger than the depth of the water.
Expected<WaveToeResult> wave_toe(const WaveToeInputs& inputs, Steps& steps);

const Method& wave_toe_method();

}  // namespace proofstone
