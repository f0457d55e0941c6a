#include "engine/grade_control/low_drop.h"

namespace proofstone {

namespace {

using DescribedLowDrop = TypedMethod<LowDropInputs, LowDropResult>;

const char* const paper_of_low_drop = "Rice and Kadavy, low drop structure, abstract";

MethodDescription describe_low_drop() {
  MethodDescription about;
  about.id = "low-drop";
  about.title = "Low drop with floor block and end sill";
  about.purpose =
      "Heights of the floor block and the end sill of a low drop, which is one no higher than the "
      "critical depth.";
  about.group = MethodGroup::water;
  about.sources = {{"Rice and Kadavy, low drop structure", "abstract", SourceStanding::published}};
  about.cautions = {"A least tailwater belongs to the design; it is not in the abstract.",
                    "Entrance face 2H:1V; the rock below the sill is sized by itself."};
  return about;
}

DescribedLowDrop build_low_drop() {
  DescribedLowDrop method(describe_low_drop(), &low_drop);
  describe_chute_flow(method);
  method.required({"drop_height", "h", "height of the drop"}, &LowDropInputs::drop_height,
                  unit::foot, AllowedRange::positive_to(100));
  method.output({"critical_depth", "dc", "critical depth"}, &LowDropResult::critical_depth,
                unit::foot);
  method.output({"drop_over_critical", "h/dc", "drop over critical depth"},
                &LowDropResult::drop_over_critical, unit::number);
  method.output({"block_height", "", "floor block, upstream face 1:2"},
                &LowDropResult::block_height, unit::foot);
  method.output({"sill_height", "", "end sill, upstream face 3:1"}, &LowDropResult::sill_height,
                unit::foot);
  method.limit({"Drop at most the critical depth", paper_of_low_drop}, [](const LowDropInputs& in) {
    Steps unread;
    const auto result = low_drop(in, unread);
    return result && result->drop_over_critical.number() < 1 + 1e-9;
  });
  return method;
}

}  // namespace

Expected<LowDropResult> low_drop(const LowDropInputs& inputs, Steps& steps) {
  const auto q = unit_discharge_of(inputs, steps);
  if (!q) return q.problems();

  LowDropResult result;
  result.critical_depth = critical_depth(*q);
  result.drop_over_critical = Dimensionless::number(inputs.drop_height / result.critical_depth);
  result.block_height = 0.5 * result.critical_depth;
  result.sill_height = 0.25 * result.critical_depth;
  steps.computed("dc", "critical depth", "(q²/g)^⅓", measure(result.critical_depth));
  steps.given("h", "height of the drop", measure(inputs.drop_height));
  steps.computed("h/dc", "drop over critical depth, at most 1", "",
                 measure(result.drop_over_critical), paper_of_low_drop);
  steps.computed("", "floor block", "0.5·dc", measure(result.block_height), paper_of_low_drop);
  steps.computed("", "end sill", "0.25·dc", measure(result.sill_height), paper_of_low_drop);
  return result;
}

const Method& low_drop_method() {
  static const DescribedLowDrop method = build_low_drop();
  return method;
}

}  // namespace proofstone
