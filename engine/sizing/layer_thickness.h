#pragma once

#include <string>

#include "engine/finding/steps.h"
#include "engine/method/method.h"
#include "engine/rock/rock_class.h"
#include "engine/sizing/layer_of_place.h"

namespace proofstone {

/// Where the rock of a layer is placed.
enum class Placement { dry, under_water };

/// What a layer is laid with and where.
struct LayerThicknessInputs : LayerOfPlace {
  std::optional<Length> d50_upper;  ///< median size, upper limit of the band
  /// Of the nominal D50, where the class's own manual states it.
  std::optional<Dimensionless> stated_multiple;
  Placement placement = Placement::dry;
};

struct LayerThicknessResult {
  Length general;  ///< by the general rule, before the under-water factor
  Length least;
  Length common_low;   ///< 1.75·D50; 0 while no D50 is known
  Length common_high;  ///< 2·D50
  std::string governed_by;
  Source source;  ///< of the rule that governs
};

/// The general rule is the larger of D100 (upper limit), 1.5·D50 (upper limit) and 12 in (USACE EM
/// 1110-2-1601 para. 3-2h; FHWA HEC-23 DG4 and DG14). Where the class's own manual states a
/// multiple of the nominal D50, that multiple and at least 12 in stand in its place, and the
/// general rule is shown beside it. The rule of the place (layer_of_place.h) is kept as well. Half
/// as much again under water.
///
/// Problems: neither a multiple nor an upper limit of D50 nor a largest stone; a size that the rule
/// of the place multiplies.
Expected<LayerThicknessResult> layer_thickness(const LayerThicknessInputs& inputs, Steps& steps);

/// What rock of a class asks for at `at`, whose sizes are taken from the class, in its own meaning
/// of size.
LayerThicknessInputs layer_of_class(const RockClass& rock_class, Placement placement,
                                    LayerOfPlace at = {});

/// The same by name, from sizes.
const Method& layer_thickness_method();

}  // namespace proofstone
