#include "engine/outfall/outlet_protection_length.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

using DescribedOutletProtectionLength =
    TypedMethod<OutletProtectionLengthInputs, OutletProtectionLengthResult>;

const char* const usdcm_of_outlet_protection_length =
    "USDCM Vol. 2, Hydraulic Structures (from memory; confirm)";

/// Q/Dc^2.5 or Q/(W·H^1.5); ft, ft³/s.
double froude_parameter(const OutletProtectionLengthInputs& in) {
  const double Q = in.discharge.cubic_feet_per_second();
  const double H = in.height.feet();
  if (in.shape == OutletShape::circular) return Q / std::pow(H, 2.5);
  return Q / (in.width.feet() * std::pow(H, 1.5));
}

/// 10·D, and D/4 more for each whole unit the parameter is above its range.
Length longest_length(const OutletProtectionLengthInputs& in, double parameter) {
  const double top_of_range = in.shape == OutletShape::circular ? 6.0 : 8.0;
  const double whole_units = std::floor(std::max(0.0, parameter - top_of_range) + 1e-9);
  return 10 * in.height + whole_units * 0.25 * in.height;
}

void explain(const OutletProtectionLengthInputs& in, const OutletProtectionLengthResult& result,
             Steps& steps) {
  steps.given("Q", "discharge", measure(in.discharge));
  steps.given("V", "velocity the channel below bears", measure(in.allowable_velocity));
  steps.computed("At", "area of flow at that velocity", "Q/V", measure(result.required_area),
                 usdcm_of_outlet_protection_length);
  steps.given("Yt", "tailwater", measure(in.tailwater));
  steps.given("W", "width of the conduit", measure(in.width));
  steps.given("1/(2·tan θ)", "expansion factor, read from the chart", measure(in.expansion_factor));
  steps.computed("Lp", "length by the equation", "1/(2·tan θ)·(At/Yt − W)",
                 measure(result.computed_length), usdcm_of_outlet_protection_length);
  steps.computed("3·D", "shortest length", "", measure(result.shortest),
                 usdcm_of_outlet_protection_length);
  steps.computed("10·D", "longest length; D/4 more for each whole unit above the parameter's range",
                 "", measure(result.longest), usdcm_of_outlet_protection_length);
  steps.computed("Lp", "protection length", "held between the shortest and the longest",
                 measure(result.length), usdcm_of_outlet_protection_length);
  steps.computed("T", "width at its end", "W + 2·Lp·tan θ", measure(result.end_width),
                 usdcm_of_outlet_protection_length);
}

MethodDescription describe_outlet_protection_length() {
  MethodDescription about;
  about.id = "outlet-protection-length";
  about.title = "Length of rock below a storm-drain outlet";
  about.purpose =
      "How far rock must reach below an outlet until the flow has spread to a velocity that the "
      "channel bears.";
  about.group = MethodGroup::layer;
  about.sources = {{"Urban Storm Drainage Criteria Manual (USDCM) Vol. 2",
                    "hydraulic structures: extent of protection", SourceStanding::memory}};
  about.cautions = {
      "The expansion factor comes from the manual's chart against Q/D^2.5 and Yt/D; values of 5 to "
      "6 stand in Colorado permits for small parameters. A smaller factor gives a shorter apron.",
      "The width W is subtracted; sheets that subtract 1 in its place give another length.",
      "About 5 ft/s is allowed on erodible ground, up to 7 ft/s on resistant ground."};
  return about;
}

void describe_outlet_protection_length_inputs(DescribedOutletProtectionLength& method) {
  method.choice({"shape", "", "shape of the conduit"}, &OutletProtectionLengthInputs::shape,
                {{OutletShape::circular, "circular", "a pipe"},
                 {OutletShape::rectangular, "rectangular", "a box"}});
  method.required({"discharge", "Q", "discharge of the conduit"},
                  &OutletProtectionLengthInputs::discharge, unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e6));
  method.required({"height", "D", "diameter of the pipe, or height H of the box"},
                  &OutletProtectionLengthInputs::height, unit::foot, AllowedRange::positive_to(50));
  method.required({"width", "W", "width of the conduit; the diameter of a pipe"},
                  &OutletProtectionLengthInputs::width, unit::foot, AllowedRange::positive_to(500));
  method.required({"tailwater", "Yt", "depth of the water below the outlet"},
                  &OutletProtectionLengthInputs::tailwater, unit::foot,
                  AllowedRange::positive_to(1000));
  method.required({"allowable_velocity", "V", "velocity the channel below bears"},
                  &OutletProtectionLengthInputs::allowable_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(30));
  method.required({"expansion_factor", "1/(2·tan θ)", "expansion factor, read from the chart"},
                  &OutletProtectionLengthInputs::expansion_factor, unit::number,
                  AllowedRange::positive_to(20));
}

DescribedOutletProtectionLength build_outlet_protection_length() {
  DescribedOutletProtectionLength method(describe_outlet_protection_length(),
                                         &outlet_protection_length);
  describe_outlet_protection_length_inputs(method);
  method.output({"required_area", "At", "area of flow at the allowable velocity"},
                &OutletProtectionLengthResult::required_area, unit::square_foot);
  method.output({"froude_parameter", "Q/D^2.5", "or Q/(W·H^1.5); ft, ft³/s"},
                &OutletProtectionLengthResult::froude_parameter, unit::number);
  method.output({"computed_length", "Lp", "length by the equation"},
                &OutletProtectionLengthResult::computed_length, unit::foot);
  method.output({"shortest", "3·D", "shortest length"}, &OutletProtectionLengthResult::shortest,
                unit::foot);
  method.output({"longest", "10·D", "longest length"}, &OutletProtectionLengthResult::longest,
                unit::foot);
  method.output({"length", "Lp", "protection length"}, &OutletProtectionLengthResult::length,
                unit::foot);
  method.output({"end_width", "T", "width at its end"}, &OutletProtectionLengthResult::end_width,
                unit::foot);
  return method;
}

}  // namespace

Expected<OutletProtectionLengthResult> outlet_protection_length(
    const OutletProtectionLengthInputs& inputs, Steps& steps) {
  const double Q = inputs.discharge.cubic_feet_per_second();
  const double V = inputs.allowable_velocity.feet_per_second();
  const double Yt = inputs.tailwater.feet();
  const double W = inputs.width.feet();
  const double factor = inputs.expansion_factor.number();

  OutletProtectionLengthResult result;
  const double At = Q / V;
  const double Lp = factor * (At / Yt - W);
  result.required_area = Area::square_feet(At);
  result.froude_parameter = Dimensionless::number(froude_parameter(inputs));
  result.computed_length = Length::feet(Lp);
  result.shortest = 3 * inputs.height;
  result.longest = longest_length(inputs, result.froude_parameter.number());
  result.length = std::clamp(result.computed_length, result.shortest, result.longest);
  result.end_width = inputs.width + result.length / factor;
  explain(inputs, result, steps);
  return result;
}

const Method& outlet_protection_length_method() {
  static const DescribedOutletProtectionLength method = build_outlet_protection_length();
  return method;
}

}  // namespace proofstone
