#include "engine/reliability/lognormal_margin.h"

#include <cmath>

#include "engine/evidence/standard_normal.h"

namespace proofstone {
namespace {

TypedMethod<LognormalMarginInputs, LognormalMarginResult> build_lognormal_margin() {
  MethodDescription about;
  about.id = "lognormal-margin";
  about.title = "Margin of two uncertain quantities";
  about.purpose =
      "Reliability index and chance of failure from the ratio of the means of resistance and load "
      "and their coefficients of variation, for lognormal and for normal quantities.";
  about.group = MethodGroup::reliability;
  about.sources = {
      {"the difference of two normal logarithms", "worked out here", SourceStanding::computed}};
  about.cautions = {"Load and resistance are taken as independent."};
  TypedMethod<LognormalMarginInputs, LognormalMarginResult> method(about, &lognormal_margin);
  method.required({"mean_ratio", "μR/μS", "mean resistance over mean load"},
                  &LognormalMarginInputs::mean_ratio, unit::number,
                  AllowedRange::positive_to(1000));
  method.required({"resistance_variation", "δR", "coefficient of variation of the resistance"},
                  &LognormalMarginInputs::resistance_variation, unit::number,
                  AllowedRange::between(0, 2));
  method.required({"load_variation", "δS", "coefficient of variation of the load"},
                  &LognormalMarginInputs::load_variation, unit::number,
                  AllowedRange::between(0, 2));
  method.output({"beta", "β", "reliability index of lognormal quantities"},
                &LognormalMarginResult::beta, unit::number);
  method.output({"probability", "Pf", "chance that the load exceeds the resistance"},
                &LognormalMarginResult::probability, unit::number);
  method.output({"normal_beta", "β", "reliability index of normal quantities"},
                &LognormalMarginResult::normal_beta, unit::number);
  method.output({"normal_probability", "Pf", "the chance for normal quantities"},
                &LognormalMarginResult::normal_probability, unit::number);
  return method;
}

}  // namespace

Expected<LognormalMarginResult> lognormal_margin(const LognormalMarginInputs& inputs,
                                                 Steps& steps) {
  const double ratio = inputs.mean_ratio.number();
  const double dR = inputs.resistance_variation.number();
  const double dS = inputs.load_variation.number();
  const double log_variance = std::log1p(dR * dR) + std::log1p(dS * dS);
  if (!(log_variance > 0)) {
    return Problem{"nothing-uncertain", "Both quantities are taken as certain.", "",
                   "/load_variation", "a coefficient of variation above 0 for one of them"};
  }
  LognormalMarginResult result;
  result.beta = Dimensionless::number(std::log(ratio * std::sqrt((1 + dS * dS) / (1 + dR * dR))) /
                                      std::sqrt(log_variance));
  result.probability = Dimensionless::number(normal_cumulative(-result.beta.number()));
  const double normal_spread = std::sqrt(ratio * ratio * dR * dR + dS * dS);
  result.normal_beta = Dimensionless::number((ratio - 1) / normal_spread);
  result.normal_probability =
      Dimensionless::number(normal_cumulative(-result.normal_beta.number()));

  steps.given("μR/μS", "mean resistance over mean load", measure(inputs.mean_ratio));
  steps.given("δR", "coefficient of variation of the resistance",
              measure(inputs.resistance_variation));
  steps.given("δS", "coefficient of variation of the load", measure(inputs.load_variation));
  steps.computed("β", "reliability index of lognormal quantities",
                 "ln[(μR/μS)·√((1+δS²)/(1+δR²))] / √[ln(1+δR²) + ln(1+δS²)]", measure(result.beta));
  steps.computed("Pf", "chance that the load exceeds the resistance", "Φ(−β)",
                 measure(result.probability));
  steps.computed("β", "reliability index of normal quantities",
                 "(μR/μS − 1) / √[(μR/μS·δR)² + δS²]", measure(result.normal_beta));
  steps.computed("Pf", "the chance for normal quantities", "Φ(−β)",
                 measure(result.normal_probability));
  return result;
}

const Method& lognormal_margin_method() {
  static const auto method = build_lognormal_margin();
  return method;
}

}  // namespace proofstone
