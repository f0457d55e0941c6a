#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Whether the general scour of the formula chosen already holds the troughs of bedforms.
enum class BedformRule {
  added,         ///< troughs below the mean bed are added (the safe side)
  held_already,  ///< the formula or the survey holds them
};

/// How deep below the bed a toe must reach, put together from allowances: NRCS NEH 654 TS14B,
///   zt = FS·[z_ad + z_c + max(z_general, z_b) + z_bf + z_s]  [memory].
/// Of several estimates of one allowance the largest counts. General scour by a regime formula
/// holds bend scour through its factor, so of the two the larger counts and never their sum.
/// Estimates of the whole toe depth are compared with the sum and not added to it.
struct ToeDepthInputs {
  std::optional<Length> long_term;  ///< z_ad, lowering of the bed over the years
  std::vector<Length> contraction;  ///< z_c
  std::vector<Length> general;      ///< regime formulas, with their factor Z
  std::vector<Length> bend;         ///< z_b
  std::vector<Length> bedform;      ///< z_bf
  std::vector<Length> local;        ///< z_s, at piers, wall ends, spurs, drops
  std::vector<Length> whole;        ///< estimates of the whole, such as HEC-11's
  BedformRule bedform_rule = BedformRule::added;
  Dimensionless safety_factor = Dimensionless::number(1.3);
  std::optional<Length> least_depth;  ///< as local criteria ask
};

struct ToeDepthResult {
  Length sum;       ///< of the allowances, before the factor
  Length build_up;  ///< with the factor
  Length depth;     ///< below the existing bed: build-up, whole estimate or least depth
  std::string governed_by;
  /// Allowances nobody gave: each counts as nothing, and each must be looked at.
  std::vector<std::string> left_out;
};

/// Problem "missing-input": no allowance at all.
Expected<ToeDepthResult> toe_depth(const ToeDepthInputs& inputs, Steps& steps);

const Method& toe_depth_method();

}  // namespace proofstone
