#include "engine/sizing/ice_and_debris.h"

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const tests = "Sodhi, Borland and Stanley, CRREL Report 96-12 (1996)";
const char* const plucking = "Matheson (1988), cited in CRREL Report 96-12 (1996)";
const char* const thickening = "USACE EM 1110-2-1601 (1994) (from memory; confirm)";

constexpr double flat_slope = 1.0 / 3;
constexpr double steep_slope = 1 / 1.5;

MethodDescription describe_ice_and_debris() {
  MethodDescription about;
  about.id = "ice-and-debris";
  about.title = "Rock against ice and debris";
  about.purpose =
      "Sizes that ice asks for where it is pushed up a bank or lifts frozen rock, and how much a "
      "layer is thickened against ice and debris.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"CRREL Report 96-12, Ice Action on Riprap (1996)",
       "conclusions; ice plucking after Matheson (1988)", SourceStanding::published},
      {"USACE EM 1110-2-1601 (1994)", "thickening of 6 to 12 in", SourceStanding::memory}};
  about.cautions = {
      "On small streams ice can ask for far larger stone than the water: rock sized for the water, "
      "looked over and mended after each winter, is the other way (common practice).",
      "Most damage comes where ice piles up at or below the water line.",
      "Where people carry rock away, W50 of at least 80 lb (WES Streambank Handbook 1997, App. "
      "A)."};
  return about;
}

TypedMethod<IceAndDebrisInputs, IceAndDebrisResult> build_ice_and_debris() {
  TypedMethod<IceAndDebrisInputs, IceAndDebrisResult> method(describe_ice_and_debris(),
                                                             &ice_and_debris);
  method.required({"ice_thickness", "t_i", "greatest ice thickness of the winter"},
                  &IceAndDebrisInputs::ice_thickness, unit::meter, AllowedRange::positive_to(5));
  method.required({"bank_slope", "1/z", "slope of the bank"}, &IceAndDebrisInputs::bank_slope,
                  unit::rise_per_run, AllowedRange::between(0.02, 2));
  method.output({"shove_factor", "D100/t_i", "ice thicknesses"}, &IceAndDebrisResult::shove_factor,
                unit::number);
  method.output({"d100_against_shove", "D100", "largest stone that ice pushed up does not move"},
                &IceAndDebrisResult::d100_against_shove, unit::meter, LengthUse::rock);
  method.output({"d50_against_plucking", "D50", "median size that ice does not lift out"},
                &IceAndDebrisResult::d50_against_plucking, unit::meter, LengthUse::rock);
  method.output({"thickening_from", "Δt", "thickening of the layer, from"},
                &IceAndDebrisResult::thickening_from, unit::foot);
  method.output({"thickening_to", "Δt", "thickening of the layer, to"},
                &IceAndDebrisResult::thickening_to, unit::foot);
  method.limit(
      {"Banks of 1V:1.5H to 1V:3H were tested; flatter ones let ice ride up", tests},
      [](const IceAndDebrisInputs& in) { return in.bank_slope.ratio() <= steep_slope + 1e-9; });
  return method;
}

}  // namespace

Expected<IceAndDebrisResult> ice_and_debris(const IceAndDebrisInputs& inputs, Steps& steps) {
  const bool steep = inputs.bank_slope.ratio() > flat_slope + 1e-9;
  IceAndDebrisResult result;
  result.shove_factor = Dimensionless::number(steep ? 3 : 2);
  result.d100_against_shove = result.shove_factor.number() * inputs.ice_thickness;
  result.d50_against_plucking = inputs.ice_thickness;
  result.thickening_from = Length::inches(6);
  result.thickening_to = Length::inches(12);
  steps.given("t_i", "greatest ice thickness of the winter", measure(inputs.ice_thickness));
  steps.given("1/z", "slope of the bank", measure(inputs.bank_slope));
  steps.given("D100/t_i",
              steep ? "steeper than 1V:3H: as tested on 1V:1.5H, since nothing is published between"
                    : "1V:3H or flatter",
              measure(result.shove_factor), tests);
  steps.computed_rock("D100", "largest stone that ice pushed up does not move", "(D100/t_i)·t_i",
                      result.d100_against_shove, tests);
  steps.computed_rock("D50", "median size that rising ice does not lift out: above", "t_i",
                      result.d50_against_plucking, plucking);
  steps.given("Δt", "thickening of the layer, from", measure(result.thickening_from), thickening);
  steps.given("Δt", "thickening of the layer, to", measure(result.thickening_to), thickening);
  return result;
}

const Method& ice_and_debris_method() {
  static const TypedMethod<IceAndDebrisInputs, IceAndDebrisResult> method = build_ice_and_debris();
  return method;
}

}  // namespace proofstone
