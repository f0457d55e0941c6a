#include "engine/sizing/protection_extents.h"

namespace proofstone {
namespace {

constexpr double upstream_widths = 1.0;
constexpr double downstream_widths = 1.5;
constexpr double end_factor = 1.5;
constexpr Length end_length = Length::feet(3);

const char* const lengths_rule =
    "FHWA HEC-11 (1989) 3.6.1 and HEC-23 (2009) DG4 (from memory; 1.5 widths downstream also in "
    "the "
    "WES Streambank Handbook, 1997, 6.1.1.3)";
const char* const ends_rule = "Urban Storm Drainage Criteria Manual Vol. 1 (from memory; confirm)";

MethodDescription describe_protection_extents() {
  MethodDescription about;
  about.id = "protection-extents";
  about.title = "Extents of bank protection";
  about.purpose =
      "How far rock goes up and down the stream beyond what it protects, and how its ends are "
      "thickened.";
  about.group = MethodGroup::layer;
  about.sources = {{"WES Stream Investigation and Streambank Stabilization Handbook (1997)",
                    "6.1.1.3: at least 1.5 approach widths past the downstream point of tangency",
                    SourceStanding::published},
                   {"FHWA HEC-11 (1989) and HEC-23 Vol. 2 (2009) DG4",
                    "1.0 width upstream, 1.5 widths downstream", SourceStanding::memory},
                   {"Urban Storm Drainage Criteria Manual Vol. 1",
                    "ends half as thick again over 3 ft", SourceStanding::memory}};
  about.cautions = {
      "Lengths are a rule of thumb; signs of erosion on the ground go before them. The downstream "
      "end is the more critical one.",
      "Key both ends into the bank and found the toe below the scour that is expected; keys have a "
      "page of their own.",
      "Carry rock without a gap to where another kind of protection begins, and let the two "
      "overlap there."};
  return about;
}

TypedMethod<ProtectionExtentsInputs, ProtectionExtentsResult> build_protection_extents() {
  TypedMethod<ProtectionExtentsInputs, ProtectionExtentsResult> method(
      describe_protection_extents(), &protection_extents);
  method.required({"top_width", "W", "width of the water in the main channel"},
                  &ProtectionExtentsInputs::top_width, unit::foot, AllowedRange::positive_to(1e5));
  method.required({"layer_thickness", "T", "thickness of the layer"},
                  &ProtectionExtentsInputs::layer_thickness, unit::foot,
                  AllowedRange::positive_to(50));
  method.output({"upstream", "Lu", "length upstream of what is protected"},
                &ProtectionExtentsResult::upstream, unit::foot);
  method.output({"downstream", "Ld", "length downstream of what is protected"},
                &ProtectionExtentsResult::downstream, unit::foot);
  method.output({"end_thickness", "Te", "thickness of the layer at its ends"},
                &ProtectionExtentsResult::end_thickness, unit::foot);
  method.output({"end_length", "Le", "length over which the ends are thickened"},
                &ProtectionExtentsResult::end_length, unit::foot);
  return method;
}

}  // namespace

Expected<ProtectionExtentsResult> protection_extents(const ProtectionExtentsInputs& inputs,
                                                     Steps& steps) {
  ProtectionExtentsResult result;
  result.upstream = upstream_widths * inputs.top_width;
  result.downstream = downstream_widths * inputs.top_width;
  result.end_thickness = end_factor * inputs.layer_thickness;
  result.end_length = end_length;

  steps.given("W", "width of the water in the main channel", measure(inputs.top_width));
  steps.computed("Lu", "length upstream", "1.0·W", measure(result.upstream), lengths_rule);
  steps.computed("Ld", "length downstream", "1.5·W", measure(result.downstream), lengths_rule);
  steps.given("T", "thickness of the layer", measure(inputs.layer_thickness));
  steps.computed("Te", "thickness at the ends, over 3 ft", "1.5·T", measure(result.end_thickness),
                 ends_rule);
  return result;
}

const Method& protection_extents_method() {
  static const TypedMethod<ProtectionExtentsInputs, ProtectionExtentsResult> method =
      build_protection_extents();
  return method;
}

}  // namespace proofstone
