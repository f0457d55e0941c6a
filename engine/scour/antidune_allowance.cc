#include "engine/scour/antidune_allowance.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_antidune_allowance = "NRCS NEH 654 TS14B (2007) (from memory; confirm)";

TypedMethod<AntiduneInputs, AntiduneResult> build_antidune_allowance() {
  MethodDescription about;
  about.id = "antidune-allowance";
  about.title = "Troughs of antidunes";
  about.purpose = "How far the bed lies below its mean level in the troughs of antidunes.";
  about.group = MethodGroup::scour;
  about.sources = {{"NRCS National Engineering Handbook Part 654 (2007)",
                    "Technical Supplement 14B, bedforms", SourceStanding::memory}};
  about.cautions = {
      "Antidunes form over sand in rapid or nearly rapid flow; in tranquil flow look at dunes."};
  TypedMethod<AntiduneInputs, AntiduneResult> method(about, &antidune_allowance);
  method.required({"velocity", "V", "mean velocity"}, &AntiduneInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60));
  method.required({"depth", "d", "depth of flow"}, &AntiduneInputs::depth, unit::foot,
                  AllowedRange::positive_to(200));
  method.output({"trough", "z_bf", "trough below the mean bed"}, &AntiduneResult::trough,
                unit::foot);
  return method;
}

}  // namespace

Expected<AntiduneResult> antidune_allowance(const AntiduneInputs& inputs, Steps& steps) {
  const double V = inputs.velocity.feet_per_second();
  AntiduneResult result;
  result.trough = std::min(Length::feet(0.0137 * V * V), inputs.depth / 2);
  steps.given("V", "mean velocity", measure(inputs.velocity));
  steps.given("d", "depth of flow", measure(inputs.depth));
  steps.computed("z_bf", "trough of antidunes below the mean bed", "min(0.0137·V², d/2) (ft, ft/s)",
                 measure(result.trough), page_of_antidune_allowance);
  return result;
}

const Method& antidune_allowance_method() {
  static const TypedMethod<AntiduneInputs, AntiduneResult> method = build_antidune_allowance();
  return method;
}

}  // namespace proofstone
