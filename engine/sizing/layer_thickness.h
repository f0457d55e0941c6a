#pragma once

#include <string>

#include "engine/finding/steps.h"
#include "engine/method/method.h"
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

/// Where the class's own manual states a multiple of the nominal D50: that multiple, and at least
/// 12 in; the general rule is then shown beside it. Otherwise the general rule: the larger of D100
/// (upper limit), 1.5·D50 (upper limit) and 12 in (USACE EM 1110-2-1601 para. 3-2h; FHWA HEC-23
/// DG4), in the size meaning of the class. Half as much again under water.
///
/// Problem: a class that states neither a multiple nor an upper limit of D50.
Expected<LayerThickness> least_layer_thickness(const RockClass& rock_class, Placement placement);

/// The same by name, from sizes.
const Method& layer_thickness_method();

}  // namespace proofstone
