#include "engine/mix/mixture_porosity.h"

namespace proofstone {

namespace {

using DescribedMixturePorosity = TypedMethod<MixturePorosityInputs, MixturePorosityResult>;

DescribedMixturePorosity build_mixture_porosity() {
  MethodDescription about;
  about.id = "mixture-porosity";
  about.title = "Porosity of a mixture";
  about.purpose =
      "Porosity of a coarse and a fine material mixed ideally, by the share of the fine.";
  about.sources = {{"R. H. Clarke (1979); Koltermann & Gorelick, Water Resources Research (1995)",
                    "ideal mixture of two sizes", SourceStanding::memory}};
  about.cautions = {"Ideal: real mixtures keep more voids, most near the least porosity."};
  about.group = MethodGroup::mix;
  DescribedMixturePorosity method(std::move(about), &mixture_porosity);
  method.required({"coarse_porosity", "n_c", "porosity of the coarse alone"},
                  &MixturePorosityInputs::coarse_porosity, unit::number, {0.0, std::nullopt, 0.9});
  method.required({"fine_porosity", "n_f", "porosity of the fine alone"},
                  &MixturePorosityInputs::fine_porosity, unit::number, {0.0, std::nullopt, 0.9});
  method.required({"fine_share", "c", "bulk volume of the fine over that of the mixture"},
                  &MixturePorosityInputs::fine_share, unit::number, AllowedRange::between(0, 1));
  method.output({"porosity", "n", "porosity of the mixture"}, &MixturePorosityResult::porosity,
                unit::number);
  method.output({"least_porosity", "", "least porosity, at c = n_c"},
                &MixturePorosityResult::least_porosity, unit::number);
  return method;
}

}  // namespace

Expected<MixturePorosityResult> mixture_porosity(const MixturePorosityInputs& inputs,
                                                 Steps& steps) {
  const double n_c = inputs.coarse_porosity.number();
  const double n_f = inputs.fine_porosity.number();
  const double c = inputs.fine_share.number();
  const bool within_voids = c < n_c;
  MixturePorosityResult result;
  result.porosity = Dimensionless::number(within_voids ? n_c - c * (1 - n_f) : c * n_f);
  result.least_porosity = Dimensionless::number(n_c * n_f);
  steps.given("n_c", "porosity of the coarse", measure(n_c));
  steps.given("n_f", "porosity of the fine", measure(n_f));
  steps.given("c", "bulk share of the fine", measure(c));
  steps.computed("n", "porosity of the mixture", within_voids ? "n_c − c·(1 − n_f)" : "c·n_f",
                 measure(result.porosity));
  return result;
}

const Method& mixture_porosity_method() {
  static const DescribedMixturePorosity method = build_mixture_porosity();
  return method;
}

}  // namespace proofstone
