#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Apron below a pipe outlet with rock chosen from a list of velocities: Dane County (Wisconsin)
/// erosion-control manual, US units.
struct DaneCountyApronInputs {
  Discharge discharge;
  Length diameter;
  Velocity velocity;  ///< at the outlet
};

struct DaneCountyApronResult {
  Length d50;
  Length apron_length;
  Length apron_width;
  Length thickness;
};

/// Problem (beyond-list): a velocity above the list, 10.8 ft/s.
Expected<DaneCountyApronResult> dane_county_apron(const DaneCountyApronInputs& inputs,
                                                  Steps& steps);

const SizingMethod& dane_county_apron_method();

}  // namespace proofstone
