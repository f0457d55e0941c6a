#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Basin below a storm-drain outlet where the tailwater is no more than a third of the conduit's
/// height: Front Range criteria (USDCM Vol. 2), US units. It gives the shape; the size of the rock
/// comes from the manual's figures.
struct LowTailwaterBasinInputs {
  Length height;      ///< D of the pipe, or height of the box
  Length width;       ///< w of the conduit
  Velocity velocity;  ///< V at the outlet
  Length tailwater;   ///< Yt
  Length d50;         ///< of the rock chosen
};

struct LowTailwaterBasinResult {
  Length length;
  Length basin_width;
  Length thinnest;  ///< 1.75·d50
  Length thickest;  ///< 2·d50
};

Expected<LowTailwaterBasinResult> low_tailwater_basin(const LowTailwaterBasinInputs& inputs,
                                                      Steps& steps);

const Method& low_tailwater_basin_method();

}  // namespace proofstone
