#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Slope at which a bed moves no more by Meyer-Peter and Müller,
/// S = 0.19·(Q/Q_B)·(n_s/D90^⅙)^1.5·D/d with D and D90 in millimetres and d in feet. USBR
/// (Pemberton and Lara 1984) [memory].
struct MeyerPeterMullerInputs {
  Dimensionless discharge_ratio = Dimensionless::number(1);  ///< Q/Q_B, whole over that of the bed
  Dimensionless bed_roughness;                               ///< n_s
  Length d90;
  Length bed_grain;  ///< mean grain size
  Length depth;      ///< mean depth of the discharge that forms the channel
};

struct MeyerPeterMullerResult {
  Slope limiting_slope;
};

Expected<MeyerPeterMullerResult> meyer_peter_muller_slope(const MeyerPeterMullerInputs& inputs,
                                                          Steps& steps);

const Method& meyer_peter_muller_slope_method();

}  // namespace proofstone
