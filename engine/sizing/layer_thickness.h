#pragma once

#include "engine/finding/steps.h"
#include "engine/rock/rock_class.h"

namespace proofstone {

/// Where the rock of a layer is placed.
enum class Placement { dry, under_water };

/// Least thickness of a rock layer and what governs it.
struct LayerThickness {
  Length least;
  std::string governed_by;
  Steps steps;
};

/// The larger of D100 (upper limit), 1.5·D50 (upper limit) and 12 in, half as much again under
/// water (USACE EM 1110-2-1601 para. 3-2h; FHWA HEC-23 DG4), and the multiple of the nominal D50
/// that the class's own manual states.
Expected<LayerThickness> least_layer_thickness(const RockClass& rock_class, Placement placement);

}  // namespace proofstone
