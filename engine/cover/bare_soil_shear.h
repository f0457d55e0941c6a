#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// The ground under a cover: Unified Soil Classification groups that have a published permissible
/// shear, or soil without cohesion by its grain size.
enum class CoverSoil { non_cohesive, gm, gc, sm, sc, ml, cl, mh, ch };

/// Permissible shear of bare soil: FHWA HEC-15 3rd ed. (2005) ch. 4. SI units.
struct BareSoilShearInputs {
  CoverSoil soil = CoverSoil::non_cohesive;
  std::optional<Length> d75;                      ///< grain size, of soil without cohesion
  std::optional<Dimensionless> plasticity_index;  ///< PI, of cohesive soil
  std::optional<Dimensionless> void_ratio;        ///< e, of cohesive soil
};

struct BareSoilShearResult {
  Stress permissible_shear;  ///< τp,soil
  Dimensionless roughness;   ///< ns
};

/// Problems: what the soil needs is missing; cohesive soil with PI below 10 (treat it as without
/// cohesion); CH with PI of 20 or less, for which nothing is published.
Expected<BareSoilShearResult> bare_soil_shear(const BareSoilShearInputs& inputs, Steps& steps);

const Method& bare_soil_shear_method();

/// Describes the soil to a method whose inputs derive from BareSoilShearInputs.
template <class Inputs, class Result, class Base>
void describe_cover_soil(TypedMethod<Inputs, Result, Base>& method) {
  using Option = ChoiceOption<CoverSoil>;
  method.choice(
      {"soil", "", "the soil, by Unified Soil Classification group"},
      static_cast<CoverSoil Inputs::*>(&Inputs::soil),
      {Option{CoverSoil::non_cohesive, "non-cohesive", "plasticity index below 10"},
       Option{CoverSoil::gm, "gm", "silty gravel"}, Option{CoverSoil::gc, "gc", "clayey gravel"},
       Option{CoverSoil::sm, "sm", "silty sand"}, Option{CoverSoil::sc, "sc", "clayey sand"},
       Option{CoverSoil::ml, "ml", "silt"}, Option{CoverSoil::cl, "cl", "lean clay"},
       Option{CoverSoil::mh, "mh", "elastic silt"}, Option{CoverSoil::ch, "ch", "fat clay"}});
  method.optional({"d75", "D75", "grain size of which 75 % is finer"},
                  static_cast<std::optional<Length> Inputs::*>(&Inputs::d75), unit::millimeter,
                  AllowedRange::positive_to(200), "needed for soil without cohesion",
                  LengthUse::rock);
  method.optional({"plasticity_index", "PI", "plasticity index"},
                  static_cast<std::optional<Dimensionless> Inputs::*>(&Inputs::plasticity_index),
                  unit::number, AllowedRange::between(0, 150), "needed for cohesive soil");
  method.optional({"void_ratio", "e", "void ratio"},
                  static_cast<std::optional<Dimensionless> Inputs::*>(&Inputs::void_ratio),
                  unit::number, AllowedRange::between(0.1, 2), "needed for cohesive soil");
}

}  // namespace proofstone
