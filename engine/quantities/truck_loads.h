#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Whole truckloads of what is ordered, some of it to spare.
struct TruckLoadsInputs {
  Mass mass;                                       ///< as it will lie
  Dimensionless spare = Dimensionless::number(0);  ///< ordered beyond that, as a share of it
  Mass truck_load;                                 ///< what one truck carries
};

struct TruckLoadsResult {
  Mass ordered;
  Dimensionless loads;  ///< whole
};

Expected<TruckLoadsResult> truck_loads(const TruckLoadsInputs& inputs, Steps& steps);

const Method& truck_loads_method();

}  // namespace proofstone
