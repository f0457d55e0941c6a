#include "engine/sizing/pier_riprap_layout.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedPierRiprapLayout = TypedMethod<PierRiprapLayoutInputs, PierRiprapLayoutResult>;

const char* const dg11_of_pier_riprap_layout =
    "FHWA HEC-23 Vol. 2 (2009) DG11 (from memory; confirm)";

DescribedPierRiprapLayout build_pier_riprap_layout() {
  MethodDescription about;
  about.id = "pier-riprap-layout";
  about.title = "Layout of rock round a bridge pier";
  about.purpose = "Extent, filter, thickness and volume of rock round an existing bridge pier.";
  about.group = MethodGroup::layer;
  about.sources = {{"FHWA HEC-23 Vol. 2, 3rd ed. (FHWA-NHI-09-112, 2009)", "Design Guideline 11",
                    SourceStanding::memory}};
  about.cautions = {
      "Lay its top level with the bed; do not heap it above.",
      "Placed under water the layer is half as thick again. Where dunes pass, its bottom lies "
      "below the passing trough.",
      "The filter ends at two thirds of the distance to the edge of the rock. In a bed with dunes "
      "use a geotextile, not a granular filter."};
  DescribedPierRiprapLayout method(std::move(about), &pier_riprap_layout);
  method.required({"d50", "D50", "median size of the class chosen"}, &PierRiprapLayoutInputs::d50,
                  unit::foot, AllowedRange::positive_to(10), LengthUse::rock);
  method.required({"pier_width", "a", "width of the pier"}, &PierRiprapLayoutInputs::pier_width,
                  unit::foot, AllowedRange::positive_to(200));
  method.required({"pier_length", "L", "length of the pier along its axis"},
                  &PierRiprapLayoutInputs::pier_length, unit::foot,
                  AllowedRange::positive_to(1000));
  method.defaulted({"skew", "θ", "angle of the flow to the pier's axis"},
                   &PierRiprapLayoutInputs::skew, unit::degree, AllowedRange::between(0, 90));
  method.defaulted({"contraction_scour", "ys", "contraction scour"},
                   &PierRiprapLayoutInputs::contraction_scour, unit::foot,
                   AllowedRange::between(0, 200));
  method.defaulted({"degradation", "yd", "long-term lowering of the bed"},
                   &PierRiprapLayoutInputs::degradation, unit::foot, AllowedRange::between(0, 200));
  method.output({"projected_width", "a'", "width of the pier across the flow"},
                &PierRiprapLayoutResult::projected_width, unit::foot);
  method.output({"extent", "B", "rock from the pier's face, on all sides"},
                &PierRiprapLayoutResult::extent, unit::foot);
  method.output({"filter_extent", "Bf", "filter from the pier's face"},
                &PierRiprapLayoutResult::filter_extent, unit::foot);
  method.output({"thickness", "t", "thickness of the layer, placed in the dry"},
                &PierRiprapLayoutResult::thickness, unit::foot);
  method.output({"volume", "Vol", "volume of the layer, pier in line with the flow"},
                &PierRiprapLayoutResult::volume, unit::cubic_yard);
  return method;
}

Length layer_thickness(const PierRiprapLayoutInputs& in, Steps& steps) {
  const Length by_size = 3 * in.d50;
  const bool scour_governs = in.contraction_scour > by_size;
  const Length t = scour_governs ? in.contraction_scour + in.degradation : by_size;
  steps.given_rock("D50", "median size of the class", in.d50);
  steps.given("ys", "contraction scour", measure(in.contraction_scour));
  steps.given("yd", "long-term lowering of the bed", measure(in.degradation));
  steps.computed("t", "thickness of the layer, placed in the dry",
                 scour_governs ? "ys + yd, since ys > 3·D50" : "3·D50", measure(t),
                 dg11_of_pier_riprap_layout);
  return t;
}

}  // namespace

Expected<PierRiprapLayoutResult> pier_riprap_layout(const PierRiprapLayoutInputs& inputs,
                                                    Steps& steps) {
  PierRiprapLayoutResult result;
  const double a = inputs.pier_width.feet();
  const double L = inputs.pier_length.feet();
  const double theta = inputs.skew.radians();
  const double projected = a * std::cos(theta) + L * std::sin(theta);
  steps.given("a", "width of the pier", measure(inputs.pier_width));
  steps.given("L", "length of the pier along its axis", measure(inputs.pier_length));
  steps.given("θ", "angle of the flow to the pier's axis", measure(inputs.skew));
  result.projected_width = Length::feet(projected);
  result.extent = 2 * result.projected_width;
  result.filter_extent = 2.0 / 3.0 * result.extent;
  result.thickness = layer_thickness(inputs, steps);
  const double B = result.extent.feet();
  const double plan = (a + 2 * B) * (L + 2 * B) - a * L;
  result.volume = Volume::cubic_feet(plan * result.thickness.feet());
  steps.computed("a'", "width of the pier across the flow", "a·cosθ + L·sinθ",
                 measure(result.projected_width), dg11_of_pier_riprap_layout);
  steps.computed("B", "rock from the pier's face, on all sides", "2·a'", measure(result.extent),
                 dg11_of_pier_riprap_layout);
  steps.computed("Bf", "filter from the pier's face", "⅔·B", measure(result.filter_extent),
                 dg11_of_pier_riprap_layout);
  steps.computed("Vol", "volume of the layer", "[(a+2B)·(L+2B) − a·L]·t", measure(result.volume));
  return result;
}

const Method& pier_riprap_layout_method() {
  static const DescribedPierRiprapLayout method = build_pier_riprap_layout();
  return method;
}

}  // namespace proofstone
