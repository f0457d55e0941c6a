#include "engine/reliability/chance_of_instability.h"

#include <cmath>

#include "engine/evidence/standard_normal.h"

namespace proofstone {
namespace {

const char* const exponents =
    "exponents of USACE EM 1110-2-1601 (1994) eq. 3-3 (from memory; confirm)";

/// One uncertain quantity: the exponent of the margin in it and its coefficient of variation.
struct Part {
  double exponent;
  double variation;

  double spread() const { return exponent * variation; }
  /// Variance of the logarithm of a lognormal quantity.
  double log_variance() const { return std::log1p(variation * variation); }
};

MethodDescription describe_chance_of_instability() {
  MethodDescription about;
  about.id = "chance-of-instability";
  about.title = "Chance of instability, USACE limit state";
  about.purpose =
      "Chance that rock on a bank or bed moves in the flood it is computed for, from how well "
      "velocity, depth, unit weight, stone size and the formula itself are known, and which of "
      "them "
      "matters most.";
  about.group = MethodGroup::reliability;
  about.sources = {{"USACE EM 1110-2-1601 (1994)", "eq. 3-3, whose exponents are the sensitivities",
                    SourceStanding::memory},
                   {"WES Streambank Handbook (1997)",
                    "App. A: sensitivity of stone weight and thickness to velocity and unit weight",
                    SourceStanding::published},
                   {"first-order second-moment analysis of a logarithmic margin", "worked out here",
                    SourceStanding::computed}};
  about.cautions = {
      "No table of coefficients of variation for rock protection is published that could be called "
      "standard: state your own and say where they come from.",
      "The chance holds for that flood only. Over the life of the works it must be combined with "
      "the chance that such a flood comes.",
      "Small chances rest on the tails of the distributions, which nobody has measured: compare "
      "designs by them rather than believe the last digit."};
  return about;
}

void describe_variation(TypedMethod<ChanceOfInstabilityInputs, ChanceOfInstabilityResult>& method,
                        const Naming& name, Dimensionless ChanceOfInstabilityInputs::* member) {
  method.defaulted(name, member, unit::number, AllowedRange::between(0, 1));
}

TypedMethod<ChanceOfInstabilityInputs, ChanceOfInstabilityResult> build_chance_of_instability() {
  TypedMethod<ChanceOfInstabilityInputs, ChanceOfInstabilityResult> method(
      describe_chance_of_instability(), &chance_of_instability);
  method.required({"available_size", "D30 available", "mean D30 of the rock that is there"},
                  &ChanceOfInstabilityInputs::available_size, unit::foot,
                  AllowedRange::positive_to(30), LengthUse::rock);
  method.required({"required_size", "D30 critical",
                   "D30 by the equation at the mean values, with a safety factor of 1"},
                  &ChanceOfInstabilityInputs::required_size, unit::foot,
                  AllowedRange::positive_to(30), LengthUse::rock);
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   &ChanceOfInstabilityInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  describe_variation(method, {"velocity_variation", "δV", "coefficient of variation of velocity"},
                     &ChanceOfInstabilityInputs::velocity_variation);
  describe_variation(method, {"depth_variation", "δd", "coefficient of variation of depth"},
                     &ChanceOfInstabilityInputs::depth_variation);
  describe_variation(method,
                     {"unit_weight_variation", "δγ", "coefficient of variation of unit weight"},
                     &ChanceOfInstabilityInputs::unit_weight_variation);
  describe_variation(method,
                     {"size_variation", "δD", "coefficient of variation of the available size"},
                     &ChanceOfInstabilityInputs::size_variation);
  describe_variation(method,
                     {"model_variation", "δC", "coefficient of variation of the formula itself"},
                     &ChanceOfInstabilityInputs::model_variation);
  method.output({"probability", "Pf", "chance of instability in that flood"},
                &ChanceOfInstabilityResult::probability, unit::number);
  method.output({"size_ratio", "D/Dc", "available over critical size"},
                &ChanceOfInstabilityResult::size_ratio, unit::number);
  method.output({"spread", "σG", "standard deviation of the margin"},
                &ChanceOfInstabilityResult::spread, unit::number);
  method.output({"beta", "β", "reliability index"}, &ChanceOfInstabilityResult::beta, unit::number);
  method.output({"velocity_share", "", "share of the variance from velocity"},
                &ChanceOfInstabilityResult::velocity_share, unit::number);
  method.output({"depth_share", "", "share from depth"}, &ChanceOfInstabilityResult::depth_share,
                unit::number);
  method.output({"unit_weight_share", "", "share from unit weight"},
                &ChanceOfInstabilityResult::unit_weight_share, unit::number);
  method.output({"size_share", "", "share from the available size"},
                &ChanceOfInstabilityResult::size_share, unit::number);
  method.output({"model_share", "", "share from the formula itself"},
                &ChanceOfInstabilityResult::model_share, unit::number);
  method.output({"lognormal_beta", "β", "reliability index when all are lognormal"},
                &ChanceOfInstabilityResult::lognormal_beta, unit::number);
  method.output({"lognormal_probability", "Pf", "chance of instability when all are lognormal"},
                &ChanceOfInstabilityResult::lognormal_probability, unit::number);
  method.limit({"Coefficients of variation up to 0.3, where first-order is near the sampled chance",
                "worked from the formula, apart from this engine"},
               [](const ChanceOfInstabilityInputs& in) {
                 for (const auto variation :
                      {in.velocity_variation, in.depth_variation, in.unit_weight_variation,
                       in.size_variation, in.model_variation}) {
                   if (variation.number() > 0.3 + 1e-9) return false;
                 }
                 return true;
               });
  return method;
}

void show(const ChanceOfInstabilityInputs& in, const ChanceOfInstabilityResult& result,
          Steps& steps) {
  steps.given_rock("D", "available D30", in.available_size);
  steps.given_rock("Dc", "critical D30, safety factor 1", in.required_size);
  steps.given("γs/γw", "specific gravity of the rock", measure(in.specific_gravity));
  steps.given("δV", "coefficient of variation of velocity", measure(in.velocity_variation));
  steps.given("δd", "coefficient of variation of depth", measure(in.depth_variation));
  steps.given("δγ", "coefficient of variation of unit weight", measure(in.unit_weight_variation));
  steps.given("δD", "coefficient of variation of the available size", measure(in.size_variation));
  steps.given("δC", "coefficient of variation of the formula", measure(in.model_variation));
  steps.computed("σG", "standard deviation of the margin ln(D/Dc)",
                 "√[(2.5 δV)² + (0.25 δd)² + (1.25·γs/(γs−γw)·δγ)² + δD² + δC²]",
                 measure(result.spread), exponents);
  steps.computed("β", "reliability index", "ln(D/Dc) / σG", measure(result.beta));
  steps.computed("Pf", "chance of instability in that flood", "Φ(−β)", measure(result.probability));
  steps.computed("share of V", "share of the variance from velocity", "(2.5 δV)² / σG²",
                 measure(result.velocity_share));
  steps.computed("β", "reliability index when all quantities are lognormal",
                 "[ln(D/Dc) − ½·Σ aᵢ·ζᵢ²] / √Σ(aᵢ·ζᵢ)², ζᵢ² = ln(1+δᵢ²), a = −2.5 (V), 0.25 (d), "
                 "1.25·γs/(γs−γw), 1 (D), −1 (formula)",
                 measure(result.lognormal_beta));
  steps.computed("Pf", "chance of instability when all quantities are lognormal", "Φ(−β)",
                 measure(result.lognormal_probability));
}

}  // namespace

Expected<ChanceOfInstabilityResult> chance_of_instability(const ChanceOfInstabilityInputs& inputs,
                                                          Steps& steps) {
  const double s = inputs.specific_gravity.number();
  const Part velocity{-2.5, inputs.velocity_variation.number()};
  const Part depth{0.25, inputs.depth_variation.number()};
  const Part weight{1.25 * s / (s - 1), inputs.unit_weight_variation.number()};
  const Part size{1, inputs.size_variation.number()};
  const Part model{-1, inputs.model_variation.number()};

  double variance = 0;
  double log_variance = 0;
  double median_margin = std::log(inputs.available_size / inputs.required_size);
  const double margin = median_margin;
  for (const Part& part : {velocity, depth, weight, size, model}) {
    variance += part.spread() * part.spread();
    log_variance += part.exponent * part.exponent * part.log_variance();
    median_margin -= part.exponent * part.log_variance() / 2;
  }
  if (!(variance > 0)) {
    return Problem{"nothing-uncertain",
                   "Every quantity is taken as certain, so there is no chance to speak of.", "",
                   "/velocity_variation", "a coefficient of variation above 0 for one of them"};
  }
  const auto share = [&](const Part& part) {
    return Dimensionless::number(part.spread() * part.spread() / variance);
  };
  ChanceOfInstabilityResult result;
  result.size_ratio = Dimensionless::number(inputs.available_size / inputs.required_size);
  result.spread = Dimensionless::number(std::sqrt(variance));
  result.beta = Dimensionless::number(margin / std::sqrt(variance));
  result.probability = Dimensionless::number(normal_cumulative(-result.beta.number()));
  result.velocity_share = share(velocity);
  result.depth_share = share(depth);
  result.unit_weight_share = share(weight);
  result.size_share = share(size);
  result.model_share = share(model);
  result.lognormal_beta = Dimensionless::number(median_margin / std::sqrt(log_variance));
  result.lognormal_probability =
      Dimensionless::number(normal_cumulative(-result.lognormal_beta.number()));
  show(inputs, result, steps);
  return result;
}

const Method& chance_of_instability_method() {
  static const auto method = build_chance_of_instability();
  return method;
}

}  // namespace proofstone
