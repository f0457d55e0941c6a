#include "engine/outfall/front_range_outlet.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedFrontRangeOutlet = TypedSizingMethod<FrontRangeOutletInputs, FrontRangeOutletResult>;

const char* const usdcm_of_front_range_outlet =
    "USDCM Vol. 2, Hydraulic Structures; also FHWA HEC-14 (2006) App. D (from memory; confirm)";

constexpr double largest_circular = 6.0;
constexpr double largest_rectangular = 8.0;

void size_below_pipe(double Q, FrontRangeOutletResult& result) {
  const double Dc = result.height_used.feet();
  const double Yt = result.tailwater_used.feet();
  result.froude_parameter = Dimensionless::number(Q / std::pow(Dc, 2.5));
  result.d50 = Length::feet(0.023 * Q / (std::pow(Yt, 1.2) * std::pow(Dc, 0.3)));
}

void size_below_box(double Q, double W, FrontRangeOutletResult& result) {
  const double H = result.height_used.feet();
  const double Yt = result.tailwater_used.feet();
  result.froude_parameter = Dimensionless::number(Q / (W * std::pow(H, 1.5)));
  result.d50 = Length::feet(0.014 * std::sqrt(H) * Q / (Yt * W));
}

std::variant<FrontRangeOutletInputs, NotApplicable> front_range_outlet_from_zone(
    const ZoneSetting& zone) {
  FrontRangeOutletInputs in;
  take_conduit_water(zone, in);
  return in;
}

MethodDescription describe_front_range_outlet() {
  MethodDescription about;
  about.id = "front-range-outlet";
  about.title = "Front Range storm-drain outlet equations";
  about.purpose =
      "Median size of rock below a circular or rectangular storm-drain outlet, from discharge, "
      "conduit and tailwater.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Urban Storm Drainage Criteria Manual (USDCM) Vol. 2",
                    "hydraulic structures: rock sizing at conduit outlets", SourceStanding::memory},
                   {"FHWA HEC-14 3rd ed. (2006)", "App. D, eqs. D.1a and D.1b: symbols",
                    SourceStanding::published}};
  about.cautions = {
      "A deep tailwater is not certain: the lowest that can go with the discharge governs.",
      "The extent of the rock follows from the protection length, not from the size."};
  return about;
}

bool parameter_kept(const FrontRangeOutletInputs& in) {
  Steps unread;
  const auto result = front_range_outlet(in, unread);
  const double largest = in.shape == OutletShape::circular ? largest_circular : largest_rectangular;
  return result && result->froude_parameter.number() < largest + 1e-9;
}

DescribedFrontRangeOutlet build_front_range_outlet() {
  DescribedFrontRangeOutlet method(
      describe_front_range_outlet(), &front_range_outlet, &front_range_outlet_from_zone,
      [](const FrontRangeOutletResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::outfall});
  method.choice({"shape", "", "shape of the conduit"}, &FrontRangeOutletInputs::shape,
                {{OutletShape::circular, "circular", "a pipe"},
                 {OutletShape::rectangular, "rectangular", "a box; needs its width"}});
  method.required({"height", "Dc", "diameter of the pipe, or height H of the box"},
                  &FrontRangeOutletInputs::height, unit::foot, AllowedRange::positive_to(50));
  method.optional({"width", "W", "width of the box"}, &FrontRangeOutletInputs::width, unit::foot,
                  AllowedRange::positive_to(500), "only needed for a box");
  describe_conduit_water(method);
  method.output({"height_used", "Da", "height used: Dc or H, or its mean with yn"},
                &FrontRangeOutletResult::height_used, unit::foot);
  method.output({"tailwater_used", "Yt", "tailwater used"}, &FrontRangeOutletResult::tailwater_used,
                unit::foot);
  method.output({"froude_parameter", "Q/Dc^2.5", "or Q/(W·H^1.5); ft, ft³/s"},
                &FrontRangeOutletResult::froude_parameter, unit::number);
  method.output({"d50", "d50", "required median size"}, &FrontRangeOutletResult::d50, unit::foot,
                LengthUse::rock);
  method.limit({"Q/Dc^2.5 at most 6.0 for a pipe, Q/(W·H^1.5) at most 8.0 for a box (ft, ft³/s)",
                usdcm_of_front_range_outlet},
               parameter_kept);
  return method;
}

}  // namespace

Expected<FrontRangeOutletResult> front_range_outlet(const FrontRangeOutletInputs& inputs,
                                                    Steps& steps) {
  const bool pipe = inputs.shape == OutletShape::circular;
  if (!pipe && !inputs.width) {
    return Problem{"missing-input", "The width of the box is not known.", "", "/width", "a length"};
  }
  steps.given("Q", "discharge", measure(inputs.discharge));
  const auto height = effective_height(inputs.height, inputs, usdcm_of_front_range_outlet, steps);
  if (!height) return height.problems();

  FrontRangeOutletResult result;
  result.height_used = *height;
  result.tailwater_used = tailwater_of(inputs.height, inputs, usdcm_of_front_range_outlet, steps);
  const double Q = inputs.discharge.cubic_feet_per_second();
  if (pipe) {
    size_below_pipe(Q, result);
  } else {
    size_below_box(Q, inputs.width->feet(), result);
    steps.given("W", "width of the box", measure(*inputs.width));
  }
  steps.computed(pipe ? "Q/Dc^2.5" : "Q/(W·H^1.5)", "parameter of the published range", "ft, ft³/s",
                 measure(result.froude_parameter), usdcm_of_front_range_outlet);
  steps.computed_rock(
      "d50", "required median size",
      pipe ? "0.023·Q/(Yt^1.2·Dc^0.3) (ft, ft³/s)" : "0.014·H^½·Q/(Yt·W) (ft, ft³/s)", result.d50,
      usdcm_of_front_range_outlet);
  return result;
}

const SizingMethod& front_range_outlet_method() {
  static const DescribedFrontRangeOutlet method = build_front_range_outlet();
  return method;
}

}  // namespace proofstone
