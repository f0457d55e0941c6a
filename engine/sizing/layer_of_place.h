#pragma once

#include <optional>
#include <string>

#include "engine/finding/problem.h"
#include "engine/finding/source.h"
#include "engine/finding/steps.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// The equation that sized the rock, where it asks for a layer of its own.
enum class SizedBy {
  any,
  usace_steep_slope,  ///< EM 1110-2-1601 eq. 3-5 presumes a layer of 1.5·D100
};

/// What the rule of a place reads.
struct LayerOfPlace {
  ZonePlace place = ZonePlace::bank;
  SizedBy sized_by = SizedBy::any;
  std::optional<Length> d50;          ///< the median size by which the rock is called
  std::optional<Length> d100_upper;   ///< largest stone
  std::optional<Length> median_cube;  ///< Dn50, side of the cube of the median mass
  std::optional<Length> largest_cube;
  Length contraction_scour;  ///< at a pier
  Length degradation;        ///< long-term, at a pier
};

/// What a published rule for the place asks of the layer, placed in the dry, beside the general
/// rule.
struct LayerRule {
  Length least;
  std::string governed_by;
  Source source;
};

/// The rule of a place; nothing on a bank, a bed and at an abutment, where the general rule is the
/// published one.
///  - pier: 3·D50; contraction scour and degradation together where contraction scour is deeper
///    (FHWA HEC-23 DG11);
///  - chute: 2·D50 (Robinson, Rice and Kadavy 1998);
///  - outfall: 3.5 to 2.0·D50 by its size (FHWA HEC-14 Table 10.1);
///  - basin: 2·D50, 3·D50 on the slope the water enters by (FHWA HEC-14 §10.1);
///  - drop: 2·D50 (Urban Storm Drainage Criteria Manual);
///  - shore: two stones, max[2·Dn50, 1.25·Dn100, 1 ft] (EM 1110-2-1614).
/// Rock sized by the USACE steep-slope equation takes 1.5·D100 wherever it lies.
///
/// Problem: the size that the rule multiplies is not known.
Expected<std::optional<LayerRule>> layer_rule_of(const LayerOfPlace& at, Steps& steps);

}  // namespace proofstone
