#include "engine/hydraulics/slice_flow_method.h"

#include <algorithm>

#include "engine/hydraulics/section_inputs.h"
#include "engine/hydraulics/slice_flow.h"

namespace proofstone {

namespace {

struct SliceFlowInputs : SectionInputs {
  Length water_level;
  Discharge discharge;
  Slope slope;
  Length station;
  std::optional<Length> left;
  std::optional<Length> right;
  Length slice_width;
};

struct SliceFlowResult {
  Velocity velocity;
  UnitDischarge unit_discharge;
  Stress shear;
  Length depth;
  Dimensionless froude_number;
  Velocity fastest;
  Discharge discharge_carried;
  Dimensionless slices;
};

void explain(const SliceFlowInputs& inputs, const FlowSlice& here, double conveyance,
             Steps& steps) {
  steps.given("w", "water level", measure(inputs.water_level));
  steps.given("Q", "discharge that the slices share", measure(inputs.discharge));
  steps.given("S", "slope of the energy line", measure(inputs.slope));
  steps.given("x", "station asked for", measure(inputs.station));
  steps.computed("a", "area of the slice there", "Σ Δx·(d₁+d₂)/2", measure(here.area));
  steps.computed("p", "ground under it", "Σ √(Δx²+Δz²)", measure(here.wetted_perimeter));
  steps.computed("K", "its conveyance", "a·(a/p)^⅔/n",
                 measure(Discharge::cubic_meters_per_second(here.conveyance_si)));
  steps.computed("ΣK", "conveyance of all slices", "Σ a·(a/p)^⅔/n",
                 measure(Discharge::cubic_meters_per_second(conveyance)));
  steps.computed("V", "velocity of the slice", "(Q/ΣK)·K/a", measure(here.velocity),
                 slice_flow_source().sentence());
  steps.computed("q", "discharge for each unit of width", "V·a/T", measure(here.unit_discharge));
  steps.computed("τ", "shear on its ground", "γ·(a/p)·S, γ = 62.4 lb/ft³", measure(here.shear));
  steps.computed("Fr", "Froude number of the slice", "V/√(g·a/T)", measure(here.froude_number));
}

Expected<SliceFlowResult> compute_slice_flow(const SliceFlowInputs& inputs, Steps& steps) {
  const auto section = section_of(inputs);
  if (!section) return section.problems();
  const SliceExtent extent{inputs.left.value_or(section->left_end()),
                           inputs.right.value_or(section->right_end()), inputs.slice_width};
  const auto slices =
      slice_flow(*section, extent, {inputs.water_level, inputs.discharge, inputs.slope});
  if (!slices) return located_under(slices.problems(), "/");
  const FlowSlice* here = slice_at(*slices, inputs.station);
  if (here == nullptr || !(inputs.water_level > section->ground_at(inputs.station))) {
    return Problem{"dry", "No water stands at this station.", "", "/station",
                   "a station under water between the lines"};
  }
  SliceFlowResult result;
  double conveyance = 0;
  for (const FlowSlice& slice : *slices) {
    conveyance += slice.conveyance_si;
    result.discharge_carried = result.discharge_carried + slice.discharge;
    result.fastest = std::max(result.fastest, slice.velocity);
  }
  result.velocity = here->velocity;
  result.unit_discharge = here->unit_discharge;
  result.shear = here->shear;
  result.depth = here->mean_depth;
  result.froude_number = here->froude_number;
  result.slices = Dimensionless::number(static_cast<double>(slices->size()));
  explain(inputs, *here, conveyance, steps);
  return result;
}

void describe_slice_flow_outputs(TypedMethod<SliceFlowInputs, SliceFlowResult>& method) {
  method.output({"velocity", "V", "depth-averaged velocity of the slice at the station"},
                &SliceFlowResult::velocity, unit::foot_per_second);
  method.output({"unit_discharge", "q", "discharge for each unit of width there"},
                &SliceFlowResult::unit_discharge, unit::square_foot_per_second);
  method.output({"shear", "τ", "shear on the ground there"}, &SliceFlowResult::shear,
                unit::pound_per_square_foot);
  method.output({"depth", "d", "mean depth of the slice"}, &SliceFlowResult::depth, unit::foot);
  method.output({"froude_number", "Fr", "Froude number of the slice"},
                &SliceFlowResult::froude_number, unit::number);
  method.output({"fastest", "V_max", "velocity of the fastest slice"}, &SliceFlowResult::fastest,
                unit::foot_per_second);
  method.output({"discharge_carried", "ΣVa", "discharge of all slices together"},
                &SliceFlowResult::discharge_carried, unit::cubic_foot_per_second);
  method.output({"slices", "", "how many slices carry water"}, &SliceFlowResult::slices,
                unit::number);
}

TypedMethod<SliceFlowInputs, SliceFlowResult> build_slice_flow() {
  MethodDescription about;
  about.id = "slice-flow";
  about.title = "Velocity slice by slice";
  about.purpose =
      "The depth-averaged velocity, unit discharge, shear and Froude number at one place of a "
      "surveyed section, the discharge being shared between slices by their conveyance.";
  about.group = MethodGroup::water;
  about.sources = {slice_flow_source()};
  about.cautions = {
      "For straight reaches. Without mixing between slices the deepest one comes out too fast and "
      "the banks too slow; compare the lateral distribution, and use a bend ratio in bends."};
  TypedMethod<SliceFlowInputs, SliceFlowResult> method(about, &compute_slice_flow);
  describe_ground(method);
  method.required({"water_level", "w", "water level"}, &SliceFlowInputs::water_level, unit::foot,
                  AllowedRange::any());
  method.required({"discharge", "Q", "discharge between the two lines"},
                  &SliceFlowInputs::discharge, unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e8));
  method.required({"slope", "S", "slope of the energy line"}, &SliceFlowInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.required({"station", "x", "station of the place"}, &SliceFlowInputs::station, unit::foot,
                  AllowedRange::any());
  method.optional({"left", "", "station where the first slice begins, such as a bank top"},
                  &SliceFlowInputs::left, unit::foot, AllowedRange::any(),
                  "the left end of the section");
  method.optional({"right", "", "station where the last slice ends"}, &SliceFlowInputs::right,
                  unit::foot, AllowedRange::any(), "the right end of the section");
  method.defaulted(
      {"slice_width", "", "greatest width of a slice; 0 leaves one for each piece of ground"},
      &SliceFlowInputs::slice_width, unit::foot, AllowedRange::between(0, 1e5));
  describe_slice_flow_outputs(method);
  return method;
}

}  // namespace

const Method& slice_flow_method() {
  static const TypedMethod<SliceFlowInputs, SliceFlowResult> method = build_slice_flow();
  return method;
}

}  // namespace proofstone
