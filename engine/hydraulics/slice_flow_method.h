#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Velocity, unit discharge, shear and Froude number of one slice of a section, by name; see
/// slice_flow for the calculation.
const Method& slice_flow_method();

}  // namespace proofstone
