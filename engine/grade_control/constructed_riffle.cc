#include "engine/grade_control/constructed_riffle.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedConstructedRiffle =
    TypedSizingMethod<ConstructedRiffleInputs, ConstructedRiffleResult>;

const char* const newbury =
    "Newbury and Gaboury (1993), Stream Analysis and Fish Habitat Design (from memory; confirm)";

std::variant<ConstructedRiffleInputs, NotApplicable> constructed_riffle_from_zone(
    const ZoneSetting& zone) {
  ConstructedRiffleInputs in;
  if (zone.stated.depth) in.depth = *zone.stated.depth;
  return in;
}

MethodDescription describe_constructed_riffle() {
  MethodDescription about;
  about.id = "constructed-riffle";
  about.title = "Constructed riffle rock";
  about.purpose =
      "Diameter of the rock of a constructed riffle from the depth of water over its face and the "
      "slope of that face.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Newbury and Gaboury (1993), Stream Analysis and Fish Habitat Design",
                    "riffle rock by tractive force", SourceStanding::memory}};
  about.cautions = {
      "Customary faces: about 20H:1V downstream, 4H:1V upstream.",
      "The largest rocks on the crest and face carry the riffle; the voids must be filled with "
      "graded smaller rock so that low flow stays on top."};
  return about;
}

DescribedConstructedRiffle build_constructed_riffle() {
  DescribedConstructedRiffle method(
      describe_constructed_riffle(), &constructed_riffle, &constructed_riffle_from_zone,
      [](const ConstructedRiffleResult& result) { return RequiredSize{50, result.rock_diameter}; },
      {ZonePlace::drop});
  method.required({"depth", "d", "depth of water over the face"}, &ConstructedRiffleInputs::depth,
                  unit::meter, AllowedRange::positive_to(30));
  method.required({"slope", "S", "slope of the downstream face"}, &ConstructedRiffleInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(0.5));
  method.defaulted({"safety_factor", "SF", "multiplies the diameter"},
                   &ConstructedRiffleInputs::safety_factor, unit::number,
                   AllowedRange::between(1, 5));
  method.safety_margin("safety_factor", 1);
  method.output({"tractive_force", "τ", "tractive force"}, &ConstructedRiffleResult::tractive_force,
                unit::pascal);
  method.output({"stable_size", "D", "diameter that is just moved"},
                &ConstructedRiffleResult::stable_size, unit::centimeter, LengthUse::rock);
  method.output({"rock_diameter", "D", "diameter of the riffle rock"},
                &ConstructedRiffleResult::rock_diameter, unit::centimeter, LengthUse::rock);
  method.limit({"Safety factor at least 1.5", newbury}, [](const ConstructedRiffleInputs& in) {
    return in.safety_factor.number() > 1.5 - 1e-9;
  });
  return method;
}

}  // namespace

Expected<ConstructedRiffleResult> constructed_riffle(const ConstructedRiffleInputs& inputs,
                                                     Steps& steps) {
  const double d = inputs.depth.meters();
  const double S = inputs.slope.ratio();
  const double tau = 1000 * d * S;  // kilogram-force for each m²

  ConstructedRiffleResult result;
  result.tractive_force = Stress::pascals(tau * standard_gravity.meters_per_second_squared());
  result.stable_size = Length::of(tau, unit::centimeter);
  result.rock_diameter = inputs.safety_factor.number() * result.stable_size;
  steps.given("d", "depth of water over the face", measure(inputs.depth));
  steps.given("S", "slope of the downstream face", measure(inputs.slope));
  steps.computed("τ", "tractive force; 1 kgf/m² is 9.80665 N/m²", "1000·d·S (kgf/m², m)",
                 measure(result.tractive_force), newbury);
  steps.computed_rock("D", "diameter that is just moved, in cm as many as τ in kgf/m²", "τ",
                      result.stable_size, newbury);
  steps.given("SF", "safety factor", measure(inputs.safety_factor), newbury);
  steps.computed_rock("D", "diameter of the riffle rock", "SF·D", result.rock_diameter, newbury);
  return result;
}

const SizingMethod& constructed_riffle_method() {
  static const DescribedConstructedRiffle method = build_constructed_riffle();
  return method;
}

}  // namespace proofstone
