#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Soil Conservation Service TR-69 (1983) for riprap on dam faces and reservoir shores, from
/// memory: W50 = 19.5·Gs·Hs³/[(Gs−1)³·cotα] (lb, ft), which is Hudson with KD 3.2 and the
/// significant wave.
struct ReservoirWaveRockInputs {
  Length wave_height;  ///< significant
  Angle slope;
  Dimensionless specific_gravity = Dimensionless::number(2.65);
};

struct ReservoirWaveRockResult {
  Mass median_mass;
  Length d50;  ///< sphere of the median mass
};

Expected<ReservoirWaveRockResult> reservoir_wave_rock(const ReservoirWaveRockInputs& inputs,
                                                      Steps& steps);

const SizingMethod& reservoir_wave_rock_method();

}  // namespace proofstone
