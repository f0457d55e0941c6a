#include "engine/mix/void_occupation.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedVoidOccupation = TypedMethod<VoidOccupationInputs, VoidOccupationResult>;

DescribedVoidOccupation build_void_occupation() {
  MethodDescription about;
  about.id = "void-occupation";
  about.title = "What the voids between stones let in";
  about.purpose =
      "The largest fill that can be washed into rock that already lies, and what fits into its "
      "voids.";
  about.sources = {
      {"geometry of equal touching spheres", "throat, tetrahedral and octahedral void",
       SourceStanding::computed},
      {"trade", "fill below 0.15 of the rock can be washed in", SourceStanding::common_practice}};
  about.group = MethodGroup::mix;
  DescribedVoidOccupation method(std::move(about), &void_occupation);
  method.required({"rock_size", "D", "size of the rock"}, &VoidOccupationInputs::rock_size,
                  unit::inch, AllowedRange::positive_to(400), LengthUse::rock);
  const auto size = [&method](Naming name, Length VoidOccupationResult::* member) {
    method.output(name, member, unit::inch, LengthUse::rock);
  };
  size({"throat", "", "passes between three touching stones"}, &VoidOccupationResult::throat);
  size({"tetrahedral_void", "", "fits between four"}, &VoidOccupationResult::tetrahedral_void);
  size({"octahedral_void", "", "fits between six"}, &VoidOccupationResult::octahedral_void);
  size({"washed_in", "", "largest fill to wash in"}, &VoidOccupationResult::washed_in);
  return method;
}

}  // namespace

Expected<VoidOccupationResult> void_occupation(const VoidOccupationInputs& inputs, Steps& steps) {
  const Length D = inputs.rock_size;
  VoidOccupationResult result;
  result.throat = (2 / std::sqrt(3.0) - 1) * D;
  result.tetrahedral_void = (std::sqrt(1.5) - 1) * D;
  result.octahedral_void = (std::sqrt(2.0) - 1) * D;
  result.washed_in = 0.15 * D;
  steps.given_rock("D", "size of the rock", D);
  steps.computed_rock("", "throat between three", "(2/√3 − 1)·D", result.throat);
  steps.computed_rock("", "void between four", "(√(3/2) − 1)·D", result.tetrahedral_void);
  steps.computed_rock("", "void between six", "(√2 − 1)·D", result.octahedral_void);
  steps.computed_rock("", "largest fill to wash in", "0.15·D", result.washed_in);
  return result;
}

const Method& void_occupation_method() {
  static const DescribedVoidOccupation method = build_void_occupation();
  return method;
}

}  // namespace proofstone
