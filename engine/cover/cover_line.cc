#include "engine/cover/cover_line.h"

#include <algorithm>
#include <cmath>

#include "engine/sizing/hec15_curves.h"

namespace proofstone {

namespace {

using DescribedCoverLine = TypedMethod<CoverLineInputs, CoverLineResult>;

constexpr double gamma_in_cover_line = 9810;  // N/m³, as the manual has it

const char* const hec15_of_cover_line = "FHWA HEC-15 3rd ed. (2005) ch. 3 (from memory; confirm)";
const char* const practice_of_cover_line = "common practice";

/// Shear on the bank for each metre of depth, N/m³.
double shear_per_depth(const CoverLineInputs& in) {
  const double tangent = std::tan(in.bank_angle.radians());
  constexpr double flat = 1e-9;
  const double K1 = tangent < flat ? 1.0 : hec15::side_shear_factor(1 / tangent);
  return K1 * in.bend_factor.number() * gamma_in_cover_line * in.slope.ratio();
}

void explain(const CoverLineInputs& in, const CoverLineResult& result, Steps& steps) {
  steps.given("d", "depth of the frequent flow at the toe", measure(in.depth));
  steps.given("S", "slope of the energy line", measure(in.slope));
  steps.given("θ", "bank angle from horizontal", measure(in.bank_angle));
  steps.given("Kb", "bend factor", measure(in.bend_factor));
  steps.computed("τ", "shear on the bank at its toe", "K1·Kb·γ·d·S, γ = 9810 N/m³",
                 measure(result.toe_shear), hec15_of_cover_line);
  steps.given("τp", "shear the grown cover bears", measure(in.established_shear));
  steps.computed("y", "depth of water over the grown cover that it bears", "τp/(K1·Kb·γ·S)",
                 measure(result.established_depth), practice_of_cover_line);
  steps.computed("h", "height above the toe from which the grown cover survives",
                 "d − y, not below 0", measure(result.established_height), practice_of_cover_line);
  if (!in.new_shear) return;
  steps.given("τp", "shear borne until the cover has grown", measure(*in.new_shear));
  steps.computed("y", "depth of water the new cover bears", "τp/(K1·Kb·γ·S)",
                 measure(result.new_depth), practice_of_cover_line);
  steps.computed("h", "height above the toe from which the new cover survives",
                 "d − y, not below 0", measure(result.new_height), practice_of_cover_line);
}

MethodDescription describe_cover_line() {
  MethodDescription about;
  about.id = "cover-line";
  about.title = "How far down a bank a cover survives";
  about.purpose =
      "Height above the toe of a bank from which a cover of topsoil and plants survives the "
      "frequent flow, grown and new; below it the rock stays bare or void-filled.";
  about.group = MethodGroup::layer;
  about.sources = {
      {"FHWA HEC-15 3rd ed. (2005), FHWA-NHI-05-114", "ch. 3: shear on a side",
       SourceStanding::memory},
      {practice_of_cover_line, "the cover is carried down to where the frequent flow would take it",
       SourceStanding::common_practice}};
  about.cautions = {
      "The cover is no part of the protection: the rock under it is sized as if it were bare.",
      "How long plants bear to stand under water is another limit, often the nearer one."};
  return about;
}

DescribedCoverLine build_cover_line() {
  DescribedCoverLine method(describe_cover_line(), &cover_line);
  method.required({"depth", "d", "depth of the frequent flow at the toe"}, &CoverLineInputs::depth,
                  unit::foot, AllowedRange::positive_to(200));
  method.required({"slope", "S", "slope of the energy line"}, &CoverLineInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.required({"bank_angle", "θ", "bank angle from horizontal"}, &CoverLineInputs::bank_angle,
                  unit::degree, AllowedRange::between(0, 80));
  method.defaulted({"bend_factor", "Kb", "shear outside of a bend over that of a straight reach"},
                   &CoverLineInputs::bend_factor, unit::number, AllowedRange::between(1, 3));
  method.required({"established_shear", "τp", "shear the grown cover bears"},
                  &CoverLineInputs::established_shear, unit::pound_per_square_foot,
                  AllowedRange::positive_to(100));
  method.optional({"new_shear", "τp", "shear borne until then, such as by a blanket"},
                  &CoverLineInputs::new_shear, unit::pound_per_square_foot,
                  AllowedRange::positive_to(100), "the grown cover alone");
  method.output({"toe_shear", "τ", "shear on the bank at its toe"}, &CoverLineResult::toe_shear,
                unit::pound_per_square_foot);
  method.output({"established_depth", "y", "depth of water the grown cover bears"},
                &CoverLineResult::established_depth, unit::foot);
  method.output({"new_depth", "y", "depth of water the new cover bears"},
                &CoverLineResult::new_depth, unit::foot);
  method.output({"established_height", "h", "height above the toe, grown"},
                &CoverLineResult::established_height, unit::foot);
  method.output({"new_height", "h", "height above the toe, new"}, &CoverLineResult::new_height,
                unit::foot);
  return method;
}

}  // namespace

Expected<CoverLineResult> cover_line(const CoverLineInputs& inputs, Steps& steps) {
  const double per_depth = shear_per_depth(inputs);
  const Stress until_grown = inputs.new_shear.value_or(inputs.established_shear);
  const auto above_toe = [&](Length borne) {
    return std::max(Length::meters(0), inputs.depth - borne);
  };

  CoverLineResult result;
  result.toe_shear = Stress::pascals(per_depth * inputs.depth.meters());
  result.established_depth = Length::meters(inputs.established_shear.pascals() / per_depth);
  result.new_depth = Length::meters(until_grown.pascals() / per_depth);
  result.established_height = above_toe(result.established_depth);
  result.new_height = above_toe(result.new_depth);
  explain(inputs, result, steps);
  return result;
}

const Method& cover_line_method() {
  static const DescribedCoverLine method = build_cover_line();
  return method;
}

}  // namespace proofstone
