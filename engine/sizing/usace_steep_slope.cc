#include "engine/sizing/usace_steep_slope.h"

#include <cmath>

#include "engine/sizing/setting_words.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedUsaceSteepSlope = TypedSizingMethod<UsaceSteepSlopeInputs, UsaceSteepSlopeResult>;

/// 165 lb/ft³, about what was tested (167 lb/ft³).
constexpr double least_specific_gravity = 165 / 62.4;

const char* const em_of_usace_steep_slope =
    "USACE EM 1110-2-1601 (1994) eq. 3-5 (from memory; confirm)";

std::variant<UsaceSteepSlopeInputs, NotApplicable> usace_steep_slope_from_zone(
    const ZoneSetting& zone) {
  // The slope of a chute is not that of the stream it hangs on: the designer gives it.
  const bool slope_known = zone.place == ZonePlace::bed;
  if (slope_known && zone.energy_slope.ratio() < 0.02) {
    return NotApplicable{"The equation is for slopes of 2 to 20 %; this one is milder."};
  }
  UsaceSteepSlopeInputs in;
  in.unit_discharge = UnitDischarge::square_feet_per_second(
      zone.average_velocity.feet_per_second() * zone.local_depth.feet());
  if (slope_known) in.slope = zone.energy_slope;
  in.angularity = zone.rock.angularity;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_usace_steep_slope() {
  MethodDescription about;
  about.id = "usace-steep-slope";
  about.title = "USACE steep-slope equation";
  about.purpose =
      "Size of rock on a steep channel bed or chute of 2 to 20 %, from the discharge for each foot "
      "of bottom width.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"USACE EM 1110-2-1601, Hydraulic Design of Flood Control Channels (1991, Change 1 1994)",
       "eq. 3-5 and the paragraph with it", SourceStanding::memory}};
  about.cautions = {
      "Lay it 1.5·D100 thick over a filter fabric, with a uniform gradation (D85/D15 not above 2).",
      "It holds no safety factor, and no term for the density of the rock: tested with rock of "
      "167 lb/ft³.",
      "Raise the concentration above 1.25 where the flow comes in askew.",
      "For a straight channel without tailwater."};
  return about;
}

void describe_limits(DescribedUsaceSteepSlope& method) {
  method.limit({"Slope from 2 to 20 %", em_of_usace_steep_slope},
               [](const UsaceSteepSlopeInputs& in) {
                 const double S = in.slope.ratio();
                 return S > 0.02 - 1e-9 && S < 0.20 + 1e-9;
               });
  method.limit({"Angular rock", em_of_usace_steep_slope}, [](const UsaceSteepSlopeInputs& in) {
    return in.angularity == Angularity::angular;
  });
  method.limit(
      {"Rock not lighter than tested: 165 lb/ft³ (tests: 167 lb/ft³)", em_of_usace_steep_slope},
      [](const UsaceSteepSlopeInputs& in) {
        return !in.specific_gravity ||
               in.specific_gravity->number() > least_specific_gravity - 1e-9;
      });
  method.limit({"Side slopes not steeper than 1V:2.5H", em_of_usace_steep_slope},
               [](const UsaceSteepSlopeInputs& in) {
                 return std::tan(in.bank_angle.radians()) < 1 / 2.5 + 1e-9;
               });
  method.limit({"D85/D15 of the rock at most 2.7, as tested", em_of_usace_steep_slope},
               [](const UsaceSteepSlopeInputs& in) { return in.size_ratio.number() < 2.7 + 1e-9; });
}

DescribedUsaceSteepSlope build_usace_steep_slope() {
  DescribedUsaceSteepSlope method(
      describe_usace_steep_slope(), &usace_steep_slope, &usace_steep_slope_from_zone,
      [](const UsaceSteepSlopeResult& result) { return RequiredSize{30, result.d30}; },
      {ZonePlace::bed, ZonePlace::chute});
  method.required({"unit_discharge", "Q/b", "discharge over bottom width"},
                  &UsaceSteepSlopeInputs::unit_discharge, unit::square_foot_per_second,
                  AllowedRange::positive_to(1000));
  method.defaulted(
      {"flow_concentration", "Kc", "factor for flow that gathers in part of the width"},
      &UsaceSteepSlopeInputs::flow_concentration, unit::number, AllowedRange::between(1, 5));
  method.required({"slope", "S", "slope of the bed"}, &UsaceSteepSlopeInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.defaulted({"bank_angle", "θ", "side slope of the channel, for its limit"},
                   &UsaceSteepSlopeInputs::bank_angle, unit::degree, AllowedRange::between(0, 90));
  method.choice({"angularity", "", "shape of the rock, for its limit"},
                &UsaceSteepSlopeInputs::angularity, angularity_options());
  method.optional({"specific_gravity", "γs/γw", "specific gravity of the rock, for its limit"},
                  &UsaceSteepSlopeInputs::specific_gravity, unit::number,
                  AllowedRange::between(1.5, 4), "its limit is not watched");
  method.defaulted({"size_ratio", "D85/D15", "how widely the sizes of the rock are spread"},
                   &UsaceSteepSlopeInputs::size_ratio, unit::number, AllowedRange::between(1, 20));
  method.output({"design_unit_discharge", "q", "unit discharge, concentrated"},
                &UsaceSteepSlopeResult::design_unit_discharge, unit::square_foot_per_second);
  method.output({"d30", "D30", "required size, 30 % smaller by mass"}, &UsaceSteepSlopeResult::d30,
                unit::foot, LengthUse::rock);
  method.output({"d50", "D50", "median size that goes with it"}, &UsaceSteepSlopeResult::d50,
                unit::foot, LengthUse::rock);
  describe_limits(method);
  method.for_comparison_until_chosen(
      {"unit_discharge"},
      "the discharge for each foot of bottom width is not known of the zone; mean velocity times "
      "depth stands in for it. Choose unit_discharge for the zone to let it govern.");
  return method;
}

}  // namespace

Expected<UsaceSteepSlopeResult> usace_steep_slope(const UsaceSteepSlopeInputs& inputs,
                                                  Steps& steps) {
  const double q =
      inputs.flow_concentration.number() * inputs.unit_discharge.square_feet_per_second();
  const double S = inputs.slope.ratio();
  const double D30 = 1.95 * std::pow(S, 0.555) * std::pow(q, 2.0 / 3.0) / std::pow(g_us, 1.0 / 3.0);

  UsaceSteepSlopeResult result;
  result.design_unit_discharge = UnitDischarge::square_feet_per_second(q);
  result.d30 = Length::feet(D30);
  result.d50 = std::pow(inputs.size_ratio.number(), 1.0 / 3.0) * result.d30;
  steps.given("Q/b", "discharge over bottom width", measure(inputs.unit_discharge));
  steps.given("Kc", "factor for flow that gathers", measure(inputs.flow_concentration),
              em_of_usace_steep_slope);
  steps.computed("q", "unit discharge to design for", "Kc·Q/b",
                 measure(result.design_unit_discharge));
  steps.given("S", "slope of the bed", measure(inputs.slope));
  steps.computed_rock("D30", "required size, 30 % smaller by mass",
                      "1.95·S^0.555·q^(2/3)/g^(1/3), g = 32.174 ft/s²", result.d30,
                      em_of_usace_steep_slope);
  steps.given("D85/D15", "how widely the sizes are spread", measure(inputs.size_ratio));
  steps.computed_rock("D50", "median stone size that goes with it", "D30·(D85/D15)^⅓", result.d50);
  return result;
}

const SizingMethod& usace_steep_slope_method() {
  static const DescribedUsaceSteepSlope method = build_usace_steep_slope();
  return method;
}

}  // namespace proofstone
