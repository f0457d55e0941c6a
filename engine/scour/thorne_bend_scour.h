#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// What a formula of Thorne returns. The two are quoted under one name and are easily exchanged.
enum class ThorneForm {
  extra_depth,  ///< scour below the mean bed over the mean depth: 1.07 − log₁₀(Rc/W − 2)
  total_depth,  ///< greatest depth over the mean depth: 2.07 − 0.19·ln(Rc/W − 2)
};

/// Bend scour by Thorne, in both forms; 2 < Rc/W ≤ 22 [memory]. They agree only near Rc/W 3.
struct ThorneBendInputs {
  Length bend_radius;
  Length width;
  Length mean_depth;  ///< mean depth upstream of the bend
  ThorneForm form = ThorneForm::extra_depth;
};

struct ThorneBendResult {
  Dimensionless extra_ratio;  ///< by the first form; not below 0
  Dimensionless total_ratio;  ///< by the second form; not below 1
  Length bend_depth;          ///< from the water surface, by the form chosen
  Length scour;               ///< below the mean bed, by the form chosen
};

/// Problem "bend-too-sharp": Rc/W of 2 or less, where neither form has a value.
Expected<ThorneBendResult> thorne_bend_scour(const ThorneBendInputs& inputs, Steps& steps);

const Method& thorne_bend_scour_method();

}  // namespace proofstone
