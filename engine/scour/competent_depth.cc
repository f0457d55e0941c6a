#include "engine/scour/competent_depth.h"

#include <algorithm>
#include <cmath>

#include "engine/method/typed_method.h"
#include "engine/scour/competent_velocity.h"

namespace proofstone {

namespace {

TypedMethod<CompetentDepthInputs, CompetentDepthResult> build_competent_depth() {
  MethodDescription about;
  about.id = "competent-depth";
  about.title = "Competent depth";
  about.purpose =
      "Depth to which water scours before it is slow enough to leave the grains of the bed; for "
      "sand, gravel and cobble.";
  about.group = MethodGroup::scour;
  about.sources = {
      {"FHWA HEC-18, Evaluating Scour at Bridges (2012)", "eq. 6.1", SourceStanding::memory},
      {"USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984)",
       "competent velocity", SourceStanding::memory}};
  about.cautions = {
      "It takes the water to bring no bed material along; where it does, the scour is less.",
      "Cohesive beds need the other table: see cohesive-competent-velocity."};
  TypedMethod<CompetentDepthInputs, CompetentDepthResult> method(about, &competent_depth);
  method.required({"depth", "y", "existing depth of flow"}, &CompetentDepthInputs::depth,
                  unit::foot, AllowedRange::positive_to(200));
  method.required({"bed_grain", "D50", "median grain size of the bed"},
                  &CompetentDepthInputs::bed_grain, unit::foot, AllowedRange::positive_to(5),
                  LengthUse::rock);
  method.required({"unit_discharge", "q", "discharge for each unit of width"},
                  &CompetentDepthInputs::unit_discharge, unit::square_foot_per_second,
                  AllowedRange::positive_to(5000));
  method.output({"competent_depth", "y_c", "depth at which the water moves the grains no more"},
                &CompetentDepthResult::competent_depth, unit::foot);
  method.output({"scour", "d_s", "competent depth less the existing depth"},
                &CompetentDepthResult::scour, unit::foot);
  method.limit({"Grains of at least 0.2 mm: smaller ones cohere", critical_velocity_source()},
               [](const CompetentDepthInputs& in) { return in.bed_grain.millimeters() >= 0.2; });
  return method;
}

}  // namespace

Expected<CompetentDepthResult> competent_depth(const CompetentDepthInputs& inputs, Steps& steps) {
  const double q = inputs.unit_discharge.square_feet_per_second();
  // Vc = 11.17·D50^⅓ at a depth of 1 ft; it grows with the sixth root of the depth.
  const double velocity_at_one_foot =
      critical_velocity(Length::feet(1), inputs.bed_grain).feet_per_second();
  CompetentDepthResult result;
  result.competent_depth = Length::feet(std::pow(q / velocity_at_one_foot, 6.0 / 7));
  result.scour = std::max(Length::feet(0), result.competent_depth - inputs.depth);
  steps.given("y", "existing depth of flow", measure(inputs.depth));
  steps.given_rock("D50", "median grain size of the bed", inputs.bed_grain);
  steps.given("q", "discharge for each unit of width", measure(inputs.unit_discharge));
  steps.computed("y_c", "competent depth", "[q/(11.17·D50^⅓)]^(6/7) (ft, ft²/s)",
                 measure(result.competent_depth), critical_velocity_source());
  steps.computed("d_s", "scour below the bed", "max(0, y_c − y)", measure(result.scour));
  return result;
}

const Method& competent_depth_method() {
  static const TypedMethod<CompetentDepthInputs, CompetentDepthResult> method =
      build_competent_depth();
  return method;
}

}  // namespace proofstone
