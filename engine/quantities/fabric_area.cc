#include "engine/quantities/fabric_area.h"

#include <algorithm>
#include <cmath>

#include "engine/quantity/rounding.h"

namespace proofstone {

namespace {

TypedMethod<FabricAreaInputs, FabricAreaResult> build_fabric_area() {
  MethodDescription about;
  about.id = "fabric-area";
  about.title = "Fabric with its overlaps";
  about.purpose = "Fabric to order for a layer, laid in strips down the slope with their overlaps.";
  about.group = MethodGroup::quantities;
  about.sources = {
      {"geometry of strips", "⌈(L − o)/(w − o)⌉ strips of w by S + k", SourceStanding::computed},
      {"FHWA HEC-11, 1989, and HEC-23, 2009", "overlap 1 ft in the dry, 3 ft under water",
       SourceStanding::memory}};
  about.cautions = {
      "Strips of a stream lap like shingles, the upstream one over the downstream one.",
      "Fabric torn in placing is replaced: order some to spare."};
  TypedMethod<FabricAreaInputs, FabricAreaResult> method(about, &fabric_area);
  method.required({"length", "L", "length of the layer along the stream"},
                  &FabricAreaInputs::length, unit::foot, AllowedRange::positive_to(1e6));
  method.required({"slope_length", "S", "length of the layer down the slope"},
                  &FabricAreaInputs::slope_length, unit::foot, AllowedRange::positive_to(10000));
  method.defaulted({"roll_width", "w", "width of a roll"}, &FabricAreaInputs::roll_width,
                   unit::foot, AllowedRange::between(1, 100));
  method.defaulted({"overlap", "o", "overlap of neighbouring strips"}, &FabricAreaInputs::overlap,
                   unit::foot, AllowedRange::between(0, 20));
  method.defaulted({"keyed_in", "k", "of each strip beyond the layer, its two ends together"},
                   &FabricAreaInputs::keyed_in, unit::foot, AllowedRange::between(0, 100));
  method.output({"strips", "N", "whole strips"}, &FabricAreaResult::strips, unit::number);
  method.output({"laid", "A_f", "fabric, overlaps and all"}, &FabricAreaResult::laid,
                unit::square_yard);
  method.output({"covered", "A", "ground covered"}, &FabricAreaResult::covered, unit::square_yard);
  return method;
}

}  // namespace

Expected<FabricAreaResult> fabric_area(const FabricAreaInputs& inputs, Steps& steps) {
  const double L = inputs.length.feet();
  const double S = inputs.slope_length.feet();
  const double w = inputs.roll_width.feet();
  const double o = inputs.overlap.feet();
  const double k = inputs.keyed_in.feet();
  if (!(w > o)) {
    return Problem{"overlap-too-wide", "Strips that overlap by their whole width cover nothing.",
                   "", "/overlap", "less than the width of a roll"};
  }
  const double N = std::max(1.0, std::ceil((L - o) / (w - o) - rounding));
  FabricAreaResult result;
  result.strips = Dimensionless::number(N);
  result.laid = Area::square_feet(N * w * (S + k));
  result.covered = Area::square_feet(L * S);
  steps.given("L", "length of the layer along the stream", measure(inputs.length));
  steps.given("S", "length of the layer down the slope", measure(inputs.slope_length));
  steps.given("w", "width of a roll", measure(inputs.roll_width));
  steps.given("o", "overlap of neighbouring strips", measure(inputs.overlap));
  steps.given("k", "of each strip beyond the layer", measure(inputs.keyed_in));
  steps.computed("N", "whole strips", "⌈(L − o)/(w − o)⌉", measure(result.strips));
  steps.computed("A_f", "fabric, overlaps and all", "N·w·(S + k)", measure(result.laid));
  steps.computed("A", "ground covered", "L·S", measure(result.covered));
  return result;
}

const Method& fabric_area_method() {
  static const TypedMethod<FabricAreaInputs, FabricAreaResult> method = build_fabric_area();
  return method;
}

}  // namespace proofstone
