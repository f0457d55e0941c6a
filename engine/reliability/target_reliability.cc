#include "engine/reliability/target_reliability.h"

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/standard_normal.h"

namespace proofstone {
namespace {

TypedMethod<TargetReliabilityInputs, TargetReliabilityResult> build_target_reliability() {
  MethodDescription about;
  about.id = "target-reliability";
  about.title = "Safety factor for an accepted chance";
  about.purpose =
      "The safety factor on size that leaves an accepted chance of instability in the design "
      "flood, or the chance that a safety factor leaves.";
  about.group = MethodGroup::reliability;
  about.sources = {{"first-order second-moment analysis of a logarithmic margin", "worked out here",
                    SourceStanding::computed}};
  about.cautions = {
      "Which chance can be accepted is the owner's and the licensed engineer's to settle, not a "
      "formula's.",
      "The factor is no better than the spread it is computed from."};
  TypedMethod<TargetReliabilityInputs, TargetReliabilityResult> method(about, &target_reliability);
  method.required({"spread", "σG", "standard deviation of ln(available size / critical size)"},
                  &TargetReliabilityInputs::spread, unit::number, AllowedRange::positive_to(3));
  method.optional({"chance", "Pf", "accepted chance of instability in that flood"},
                  &TargetReliabilityInputs::chance, unit::number, {0.0, std::nullopt, 0.999999},
                  "computed from the safety factor");
  method.optional({"safety_factor", "SF", "available size over the size at which rock just moves"},
                  &TargetReliabilityInputs::safety_factor, unit::number,
                  AllowedRange::positive_to(100), "computed from the chance");
  method.output({"beta", "β", "reliability index"}, &TargetReliabilityResult::beta, unit::number);
  method.output({"chance", "Pf", "chance of instability in that flood"},
                &TargetReliabilityResult::chance, unit::number);
  method.output({"safety_factor", "SF", "available size over the size at which rock just moves"},
                &TargetReliabilityResult::safety_factor, unit::number);
  return method;
}

}  // namespace

Expected<TargetReliabilityResult> target_reliability(const TargetReliabilityInputs& inputs,
                                                     Steps& steps) {
  const auto& [spread, chance, safety_factor] = inputs;
  if (chance.has_value() == safety_factor.has_value()) {
    return Problem{chance ? "two-given" : "missing-input",
                   chance ? "The chance and the safety factor are both given, and one follows from "
                            "the other."
                          : "Neither the chance nor the safety factor is given.",
                   "", "/chance", "either a chance or a safety factor"};
  }
  TargetReliabilityResult result;
  steps.given("σG", "standard deviation of ln(available/critical)", measure(spread));
  if (chance) {
    result.chance = *chance;
    result.beta = Dimensionless::number(-normal_quantile(chance->number()));
    result.safety_factor = Dimensionless::number(std::exp(result.beta.number() * spread.number()));
    steps.given("Pf", "accepted chance", measure(result.chance));
    steps.computed("β", "reliability index", "−Φ⁻¹(Pf)", measure(result.beta));
    steps.computed("SF", "safety factor on size", "exp(β·σG)", measure(result.safety_factor));
    return result;
  }
  result.safety_factor = *safety_factor;
  result.beta = Dimensionless::number(std::log(safety_factor->number()) / spread.number());
  result.chance = Dimensionless::number(normal_cumulative(-result.beta.number()));
  steps.given("SF", "safety factor on size", measure(result.safety_factor));
  steps.computed("β", "reliability index", "ln(SF)/σG", measure(result.beta));
  steps.computed("Pf", "chance of instability", "Φ(−β)", measure(result.chance));
  return result;
}

const Method& target_reliability_method() {
  static const auto method = build_target_reliability();
  return method;
}

}  // namespace proofstone
