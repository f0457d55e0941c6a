#include "engine/mix/toufar_packing.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedToufarPacking = TypedMethod<ToufarPackingInputs, ToufarPackingResult>;

DescribedToufarPacking build_toufar_packing() {
  MethodDescription about;
  about.id = "toufar-packing";
  about.title = "Toufar packing, modified";
  about.purpose = "How dense a mix of two sizes packs, by a second model for comparison.";
  about.sources = {{"Toufar, Klose & Born (1977), as modified by Goltermann and others (1997)",
                    "packing of two sizes", SourceStanding::memory}};
  about.group = MethodGroup::mix;
  DescribedToufarPacking method(std::move(about), &toufar_packing);
  method.required({"coarse_size", "d2", "size of the coarse"}, &ToufarPackingInputs::coarse_size,
                  unit::inch, AllowedRange::positive_to(400), LengthUse::rock);
  method.required({"fine_size", "d1", "size of the fine"}, &ToufarPackingInputs::fine_size,
                  unit::inch, AllowedRange::positive_to(400), LengthUse::rock);
  method.defaulted({"coarse_density", "φ2", "solids share of the coarse packed alone"},
                   &ToufarPackingInputs::coarse_density, unit::number,
                   AllowedRange::between(0.2, 0.9));
  method.defaulted({"fine_density", "φ1", "solids share of the fine packed alone"},
                   &ToufarPackingInputs::fine_density, unit::number,
                   AllowedRange::between(0.2, 0.9));
  method.required({"fine_share", "r1", "fine, share of the volume of all solids"},
                  &ToufarPackingInputs::fine_share, unit::number, AllowedRange::between(0, 0.99));
  method.output({"density", "Φ", "solids share of the mix"}, &ToufarPackingResult::density,
                unit::number);
  method.limit({"d1/d2 below about 0.22", "from memory; confirm"},
               [](const ToufarPackingInputs& in) { return in.fine_size / in.coarse_size <= 0.22; });
  return method;
}

}  // namespace

Expected<ToufarPackingResult> toufar_packing(const ToufarPackingInputs& inputs, Steps& steps) {
  const double d1 = inputs.fine_size.meters();
  const double d2 = inputs.coarse_size.meters();
  if (!(d1 < d2)) {
    return Problem{"not-smaller", "The fine is not smaller than the coarse.", "", "/fine_size",
                   "smaller than the coarse"};
  }
  const double phi1 = inputs.fine_density.number();
  const double phi2 = inputs.coarse_density.number();
  const double r1 = inputs.fine_share.number();
  const double r2 = 1 - r1;
  const double kd = (d2 - d1) / (d1 + d2);
  const double x = (r1 / r2) * (phi2 / phi1) / (1 - phi2);
  const double ks = x < 0.4753 ? x * 0.3881 / 0.4753 : 1 - (1 + 4 * x) / std::pow(1 + x, 4);
  ToufarPackingResult result;
  result.density =
      Dimensionless::number(1 / (r1 / phi1 + r2 / phi2 - r2 * (1 / phi2 - 1) * kd * ks));
  steps.given("r1", "fine, share of the solids", measure(r1));
  steps.computed("kd", "how far the sizes lie apart", "(d2 − d1)/(d1 + d2)", measure(kd));
  steps.computed("x", "fine over the voids of the coarse", "(r1/r2)·(φ2/φ1)/(1 − φ2)", measure(x));
  steps.computed("ks", "", "0.3881·x/0.4753 below 0.4753, else 1 − (1 + 4x)/(1 + x)^4",
                 measure(ks));
  steps.computed("Φ", "solids share of the mix", "1/[r1/φ1 + r2/φ2 − r2·(1/φ2 − 1)·kd·ks]",
                 measure(result.density));
  return result;
}

const Method& toufar_packing_method() {
  static const DescribedToufarPacking method = build_toufar_packing();
  return method;
}

}  // namespace proofstone
