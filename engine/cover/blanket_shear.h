#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Units of the published form: its two factors for loss at 12.5 mm (0.5 in) differ by 2.3 %.
enum class BlanketFactor { si, us };

/// What a blanket and its seed bed bear by FHWA HEC-15 3rd ed. (2005) ch. 5, from the permissible
/// shear of the soil itself, beside the shear that is tabulated for the type. The formula lies far
/// below the table: in the table's test the blanket lost half an inch of soil.
struct BlanketShearInputs {
  Stress tested_shear;  ///< τl: applied shear with 12.5 mm (0.5 in) of soil loss in the test
  Stress soil_shear;    ///< τp,soil
  std::optional<Stress> tabulated_shear;  ///< of the type; absent: τl stands for it
  std::optional<Stress> applied_shear;    ///< τd
  BlanketFactor factor = BlanketFactor::si;
};

struct BlanketShearResult {
  Stress permissible_shear;  ///< τp by the formula
  Stress tabulated_shear;
  Dimensionless share;     ///< formula over table
  Stress effective_shear;  ///< τe on the soil at τd; 0 where τd is not given
};

Expected<BlanketShearResult> blanket_shear(const BlanketShearInputs& inputs, Steps& steps);

const Method& blanket_shear_method();

}  // namespace proofstone
