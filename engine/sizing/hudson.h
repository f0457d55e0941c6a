#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Which wave enters the Hudson formula. The two pair with different stability coefficients; the
/// difference is 1.27³ = 2.05 in mass.
enum class HudsonWave {
  ten_percent,  ///< H10 = 1.27·Hs, as the Shore Protection Manual of 1984
  significant,  ///< Hs, as older users
};

enum class ArmorStone {
  rough_angular,   ///< two layers, random
  rough_thick,     ///< more than three layers, random
  smooth_rounded,  ///< two layers, random
  graded_riprap,   ///< graded angular riprap, KRR
};

enum class WaveBreaking { breaking, nonbreaking };

enum class WaterKind { fresh, sea };

/// Hudson formula: W = wr·H³/[KD·(Sr−1)³·cotθ].
struct HudsonInputs {
  Length wave_height;               ///< significant, at the toe
  std::optional<Length> toe_depth;  ///< bounds the wave at 0.78 of it
  Angle slope;
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  WaterKind water = WaterKind::fresh;
  HudsonWave wave = HudsonWave::ten_percent;
  ArmorStone armor = ArmorStone::graded_riprap;
  WaveBreaking breaking = WaveBreaking::breaking;
  std::optional<Dimensionless> stability_coefficient;  ///< in place of the tabulated one
};

struct HudsonResult {
  Length design_height;
  Dimensionless stability_coefficient;
  Mass median_mass;
  Length d50;               ///< sphere of the median mass
  Length nominal_diameter;  ///< cube of the median mass
  Mass largest_mass;        ///< of graded riprap: 4 times; else 1.25 times
  Mass smallest_mass;       ///< of graded riprap: an eighth; else 0.75 times
  Length layer;
  Length crest_width;
  Mass underlayer_low;   ///< a fifteenth
  Mass underlayer_high;  ///< a tenth
};

Expected<HudsonResult> hudson(const HudsonInputs& inputs, Steps& steps);
/// The same arithmetic without its steps, for simulation.
Expected<HudsonResult> hudson(const HudsonInputs& inputs);

/// The tabulated stability coefficient of a trunk (SPM 1984 Table 7-8, from memory).
double hudson_coefficient(ArmorStone armor, WaveBreaking breaking);

const SizingMethod& hudson_method();

}  // namespace proofstone
