#include "engine/scour/antidune_allowance.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

using Inputs = AntiduneInputs;
using Result = AntiduneResult;

const char* const page = "NRCS NEH 654 TS14B (2007) (from memory; confirm)";

TypedMethod<Inputs, Result> build() {
  MethodDescription about;
  about.id = "antidune-allowance";
  about.title = "Troughs of antidunes";
  about.purpose = "How far the bed lies below its mean level in the troughs of antidunes.";
  about.group = MethodGroup::scour;
  about.sources = {{"NRCS National Engineering Handbook Part 654 (2007)",
                    "Technical Supplement 14B, bedforms", SourceStanding::memory}};
  about.cautions = {
      "Antidunes form over sand in rapid or nearly rapid flow; in tranquil flow look at dunes."};
  TypedMethod<Inputs, Result> method(about, &antidune_allowance);
  method.required({"velocity", "V", "mean velocity"}, &Inputs::velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.required({"depth", "d", "depth of flow"}, &Inputs::depth, unit::foot,
                  AllowedRange::positive_to(200));
  method.output({"trough", "z_bf", "trough below the mean bed"}, &Result::trough, unit::foot);
  return method;
}

}  // namespace

Expected<AntiduneResult> antidune_allowance(const AntiduneInputs& inputs, Steps& steps) {
  const double V = inputs.velocity.feet_per_second();
  Result result;
  result.trough = std::min(Length::feet(0.0137 * V * V), inputs.depth / 2);
  steps.given("V", "mean velocity", measure(inputs.velocity));
  steps.given("d", "depth of flow", measure(inputs.depth));
  steps.computed("z_bf", "trough of antidunes below the mean bed", "min(0.0137·V², d/2) (ft, ft/s)",
                 measure(result.trough), page);
  return result;
}

const Method& antidune_allowance_method() {
  static const TypedMethod<Inputs, Result> method = build();
  return method;
}

}  // namespace proofstone
