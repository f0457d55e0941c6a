#include "engine/blend/share_from_one_sieve.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedShareFromOneSieve = TypedMethod<ShareFromOneSieveInputs, ShareFromOneSieveResult>;

DescribedShareFromOneSieve build_share_from_one_sieve() {
  MethodDescription about;
  about.id = "share-from-one-sieve";
  about.title = "Two materials to one percent";
  about.purpose =
      "The share of the first of two materials that brings a blend to a percent at one size.";
  about.sources = {
      {"mass balance of gradations", "f = (P_B − T)/(P_B − P_A)", SourceStanding::computed}};
  about.group = MethodGroup::mix;
  DescribedShareFromOneSieve method(std::move(about), &share_from_one_sieve);
  method.required({"first", "P_A", "percent smaller of the first"}, &ShareFromOneSieveInputs::first,
                  unit::percent, AllowedRange::between(0, 100));
  method.required({"second", "P_B", "percent smaller of the second"},
                  &ShareFromOneSieveInputs::second, unit::percent, AllowedRange::between(0, 100));
  method.required({"target", "T", "percent wanted"}, &ShareFromOneSieveInputs::target,
                  unit::percent, AllowedRange::between(0, 100));
  method.output({"share", "f_A", "share of the first"}, &ShareFromOneSieveResult::share,
                unit::percent);
  return method;
}

}  // namespace

Expected<ShareFromOneSieveResult> share_from_one_sieve(const ShareFromOneSieveInputs& inputs,
                                                       Steps& steps) {
  const double apart = inputs.second.number() - inputs.first.number();
  const double share = (inputs.second.number() - inputs.target.number()) / apart;
  if (!(std::abs(apart) > 1e-9) || !(share >= 0 && share <= 1)) {
    return Problem{"out-of-reach", "No share of the two brings this percent.", "", "/target",
                   "between the percents of the two materials"};
  }
  ShareFromOneSieveResult result;
  result.share = Dimensionless::number(share);
  steps.given("P_A", "percent smaller of the first", measure(inputs.first));
  steps.given("P_B", "of the second", measure(inputs.second));
  steps.given("T", "wanted", measure(inputs.target));
  steps.computed("f_A", "share of the first", "(P_B − T)/(P_B − P_A)", measure(result.share));
  return result;
}

const Method& share_from_one_sieve_method() {
  static const DescribedShareFromOneSieve method = build_share_from_one_sieve();
  return method;
}

}  // namespace proofstone
