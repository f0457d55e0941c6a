#include "engine/mix/degree_of_filling.h"

#include <algorithm>

namespace proofstone {

namespace {

using DescribedDegreeOfFilling = TypedMethod<DegreeOfFillingInputs, DegreeOfFillingResult>;

DescribedDegreeOfFilling build_degree_of_filling() {
  MethodDescription about;
  about.id = "degree-of-filling";
  about.title = "Degree of filling";
  about.purpose =
      "How full the voids of rock become when fill is mixed in by loose volume, the most that "
      "fits, "
      "and by how much more forces the rock apart.";
  about.sources = {
      {"volume balance of rock, voids and fill", "S = r·c/n", SourceStanding::computed},
      {"Urban Storm Drainage Criteria Manual Vol. 1",
       "soil riprap: 65 % rock to 35 % soil by volume", SourceStanding::memory}};
  about.cautions = {
      "65 to 35 parts fit voids of 40 % only if the loose soil shrinks to about 0.74 of its "
      "volume; "
      "measured as compacted volumes the same parts over-fill by a third.",
      "The voids of rock as placed are known only by a box or a weight test."};
  about.group = MethodGroup::mix;
  DescribedDegreeOfFilling method(std::move(about), &degree_of_filling);
  method.defaulted({"voids", "n", "voids of the rock, share of its bulk volume"},
                   &DegreeOfFillingInputs::voids, unit::number, {0.0, std::nullopt, 0.7});
  method.required({"fill_share", "f", "fill, share of the sum of both loose volumes"},
                  &DegreeOfFillingInputs::fill_share, unit::number, {std::nullopt, 0.0, 0.95});
  method.defaulted({"fill_compaction", "c", "volume of the fill in place over its loose volume"},
                   &DegreeOfFillingInputs::fill_compaction, unit::number, {0.0, std::nullopt, 1.5});
  method.output({"loose_ratio", "r", "loose fill to rock"}, &DegreeOfFillingResult::loose_ratio,
                unit::number);
  method.output({"filling", "S", "degree of filling"}, &DegreeOfFillingResult::filling,
                unit::number);
  method.output({"largest_share", "f_max", "largest share of fill that fits"},
                &DegreeOfFillingResult::largest_share, unit::number);
  method.output({"bulking", "", "volume of the mix over that of the rock alone"},
                &DegreeOfFillingResult::bulking, unit::number);
  return method;
}

}  // namespace

Expected<DegreeOfFillingResult> degree_of_filling(const DegreeOfFillingInputs& inputs,
                                                  Steps& steps) {
  const double n = inputs.voids.number();
  const double f = inputs.fill_share.number();
  const double c = inputs.fill_compaction.number();
  const double r = f / (1 - f);
  const double S = r * c / n;
  const double r_max = n / c;
  DegreeOfFillingResult result;
  result.loose_ratio = Dimensionless::number(r);
  result.filling = Dimensionless::number(S);
  result.largest_share = Dimensionless::number(r_max / (1 + r_max));
  result.bulking = Dimensionless::number(std::max(1.0, 1 + r * c - n));
  steps.given("n", "voids of the rock", measure(n));
  steps.given("f", "fill, share of the summed loose volumes", measure(f));
  steps.given("c", "fill in place over loose", measure(c));
  steps.computed("r", "loose fill to rock", "f/(1 − f)", measure(r));
  steps.computed("S", "degree of filling", "r·c/n", measure(S));
  steps.computed("f_max", "largest share of fill that fits", "(n/c)/(1 + n/c)",
                 measure(result.largest_share));
  steps.computed("", "volume of the mix over that of the rock", "1 + r·c − n, not below 1",
                 measure(result.bulking));
  return result;
}

const Method& degree_of_filling_method() {
  static const DescribedDegreeOfFilling method = build_degree_of_filling();
  return method;
}

}  // namespace proofstone
