#pragma once

#include <vector>

#include "engine/method/typed_method.h"
#include "engine/rock/gradation.h"

namespace proofstone {

/// A gradation as a method takes it: as many sizes as percents smaller.
struct GradationInputs {
  std::vector<Length> sizes;
  std::vector<Dimensionless> smaller;
};

/// The curve of the two lists, or what is wrong with them, located under /sizes or /smaller.
Expected<Gradation> gradation_from(const GradationInputs& inputs);

/// The two lists of a curve.
GradationInputs inputs_of(const std::vector<GradationPoint>& points);

template <class Inputs, class Result>
void describe_gradation(TypedMethod<Inputs, Result>& method) {
  method.required_list({"sizes", "d", "openings of the sieves, rising or falling"},
                       static_cast<std::vector<Length> Inputs::*>(&Inputs::sizes), unit::millimeter,
                       AllowedRange::positive_to(5000), LengthUse::grain);
  method.required_list({"smaller", "P", "percent by mass that passes each"},
                       static_cast<std::vector<Dimensionless> Inputs::*>(&Inputs::smaller),
                       unit::percent, AllowedRange::between(0, 100));
}

}  // namespace proofstone
