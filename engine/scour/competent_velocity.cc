#include "engine/scour/competent_velocity.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

constexpr double ku = 11.17;

const char* const page_of_competent_velocity = "FHWA HEC-18 (2012) eq. 6.1 (from memory; confirm)";

TypedMethod<CompetentVelocityInputs, CompetentVelocityResult> build_competent_velocity() {
  MethodDescription about;
  about.id = "competent-velocity";
  about.title = "Critical velocity of a bed";
  about.purpose =
      "The velocity at which the grains of a bed begin to move; for sand, gravel and cobble.";
  about.group = MethodGroup::scour;
  about.sources = {
      {"FHWA HEC-18, Evaluating Scour at Bridges (2012)", "eq. 6.1", SourceStanding::memory}};
  about.cautions = {"The critical velocity is a mean one; turbulence moves grains below it.",
                    "Cohesive beds need the other table: see cohesive-competent-velocity."};
  TypedMethod<CompetentVelocityInputs, CompetentVelocityResult> method(about, &competent_velocity);
  method.required({"depth", "y", "depth of flow"}, &CompetentVelocityInputs::depth, unit::foot,
                  AllowedRange::positive_to(200));
  method.required({"bed_grain", "D50", "median grain size of the bed"},
                  &CompetentVelocityInputs::bed_grain, unit::foot, AllowedRange::positive_to(5),
                  LengthUse::rock);
  method.output({"critical_velocity", "Vc", "velocity at which the grains begin to move"},
                &CompetentVelocityResult::critical_velocity, unit::foot_per_second);
  method.limit({"Grains of at least 0.2 mm: smaller ones cohere", page_of_competent_velocity},
               [](const CompetentVelocityInputs& in) { return in.bed_grain.millimeters() >= 0.2; });
  return method;
}

}  // namespace

Velocity critical_velocity(Length depth, Length grain) {
  const double y = depth.feet();
  const double D = grain.feet();
  return Velocity::feet_per_second(ku * std::pow(y, 1.0 / 6) * std::pow(D, 1.0 / 3));
}

const char* critical_velocity_source() { return page_of_competent_velocity; }

Expected<CompetentVelocityResult> competent_velocity(const CompetentVelocityInputs& inputs,
                                                     Steps& steps) {
  CompetentVelocityResult result;
  result.critical_velocity = critical_velocity(inputs.depth, inputs.bed_grain);
  steps.given("y", "depth of flow", measure(inputs.depth));
  steps.given_rock("D50", "median grain size of the bed", inputs.bed_grain);
  steps.computed("Vc", "critical velocity", "11.17·y^⅙·D50^⅓ (ft, ft/s)",
                 measure(result.critical_velocity), page_of_competent_velocity);
  return result;
}

const Method& competent_velocity_method() {
  static const TypedMethod<CompetentVelocityInputs, CompetentVelocityResult> method =
      build_competent_velocity();
  return method;
}

}  // namespace proofstone
