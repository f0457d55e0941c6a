#include "engine/chute/overtopping_abt_johnson.h"

#include <cmath>

#include "engine/method/published_range.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedOvertoppingAbtJohnson =
    TypedSizingMethod<OvertoppingAbtJohnsonInputs, OvertoppingAbtJohnsonResult>;

const char* const paper_of_overtopping_abt_johnson =
    "Abt and Johnson (1991), J. Hydraul. Eng. 117(8) (from memory; confirm)";
const char* const tests = "NUREG/CR-4651 vol. 2 (1988), abstract";

constexpr double rounded_over_angular = 1.4;

std::variant<OvertoppingAbtJohnsonInputs, NotApplicable> overtopping_abt_johnson_from_zone(
    const ZoneSetting& zone) {
  OvertoppingAbtJohnsonInputs in;
  take_chute_flow(zone, in);
  in.angularity = zone.rock.angularity;
  return in;
}

MethodDescription describe_overtopping_abt_johnson() {
  MethodDescription about;
  about.id = "overtopping-abt-johnson";
  about.title = "Abt and Johnson overtopping equation";
  about.purpose =
      "Median size of rock on an embankment face or chute that water runs over, for no movement of "
      "the stones, with allowances for gathered flow and rounded rock.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"Abt and Johnson (1991), Riprap Design for Overtopping Flow, J. Hydraul. Eng. 117(8)",
       "size equation, 1.35 for no movement, 1.4 for rounded rock", SourceStanding::memory},
      {"NUREG/CR-4651 vol. 2 (1988), Development of Riprap Design Criteria", "abstract: tests",
       SourceStanding::published}};
  about.cautions = {
      "Flow gathers on any real face; a concentration factor of 1 stands for perfect sheet flow, 2 "
      "to 3 are used where it may gather.",
      "How much larger rounded rock must be grows with discharge and slope; 1.4 is a mean.",
      "Overtopping of a dam is a matter for the licensed engineer and the dam-safety authority."};
  return about;
}

bool abt_johnson_tested_size(const OvertoppingAbtJohnsonInputs& in) {
  Steps unread;
  const auto result = overtopping_abt_johnson(in, unread);
  return result && PublishedRange{1, 6}.holds(result->d50_angular.inches());
}

void describe_overtopping_abt_johnson_inputs(DescribedOvertoppingAbtJohnson& method) {
  describe_chute_flow(method);
  method.required({"slope", "S", "slope of the face"}, &OvertoppingAbtJohnsonInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(2));
  method.defaulted({"movement_factor", "C_m",
                    "discharge of failure over that of no movement; 1 sizes for failure"},
                   &OvertoppingAbtJohnsonInputs::movement_factor, unit::number,
                   AllowedRange::between(1, 3));
  method.defaulted({"concentration", "C_f", "how far the flow gathers; 1 for sheet flow"},
                   &OvertoppingAbtJohnsonInputs::concentration, unit::number,
                   AllowedRange::between(1, 5));
  method.choice({"angularity", "", "shape of the stones"}, &OvertoppingAbtJohnsonInputs::angularity,
                {{Angularity::angular, "angular", "crushed rock"},
                 {Angularity::rounded, "rounded", "1.4 times the size"}});
}

DescribedOvertoppingAbtJohnson build_overtopping_abt_johnson() {
  DescribedOvertoppingAbtJohnson method(
      describe_overtopping_abt_johnson(), &overtopping_abt_johnson,
      &overtopping_abt_johnson_from_zone,
      [](const OvertoppingAbtJohnsonResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::chute});
  describe_overtopping_abt_johnson_inputs(method);
  method.output({"sizing_discharge", "q", "unit discharge with both factors"},
                &OvertoppingAbtJohnsonResult::sizing_discharge, unit::square_foot_per_second);
  method.output({"d50_at_failure", "D50", "angular rock that fails at the gathered q"},
                &OvertoppingAbtJohnsonResult::d50_at_failure, unit::inch, LengthUse::rock);
  method.output({"d50_angular", "D50", "angular rock that does not move"},
                &OvertoppingAbtJohnsonResult::d50_angular, unit::inch, LengthUse::rock);
  method.output({"d50", "D50", "required median size"}, &OvertoppingAbtJohnsonResult::d50,
                unit::inch, LengthUse::rock);
  method.limit({"Slope tested: 1 to 20 %", tests}, [](const OvertoppingAbtJohnsonInputs& in) {
    return PublishedRange{0.01, 0.20}.holds(in.slope.ratio());
  });
  method.limit({"Median size tested: 1 to 6 in", tests}, abt_johnson_tested_size);
  return method;
}

}  // namespace

Length abt_johnson_size(UnitDischarge q, Slope slope) {
  const double S = slope.ratio();
  return Length::inches(5.23 * std::pow(S, 0.43) * std::pow(q.square_feet_per_second(), 0.56));
}

Expected<OvertoppingAbtJohnsonResult> overtopping_abt_johnson(
    const OvertoppingAbtJohnsonInputs& inputs, Steps& steps) {
  const auto q = unit_discharge_of(inputs, steps);
  if (!q) return q.problems();
  const UnitDischarge gathered = inputs.concentration.number() * *q;
  const bool rounded = inputs.angularity == Angularity::rounded;

  OvertoppingAbtJohnsonResult result;
  result.sizing_discharge = inputs.movement_factor.number() * gathered;
  result.d50_at_failure = abt_johnson_size(gathered, inputs.slope);
  result.d50_angular = abt_johnson_size(result.sizing_discharge, inputs.slope);
  result.d50 = rounded ? rounded_over_angular * result.d50_angular : result.d50_angular;

  steps.given("S", "slope of the face", measure(inputs.slope));
  steps.given("C_f", "how far the flow gathers", measure(inputs.concentration));
  steps.given("C_m", "discharge of failure over that of no movement",
              measure(inputs.movement_factor), paper_of_overtopping_abt_johnson);
  steps.computed("q", "unit discharge to size for", "C_m·C_f·q", measure(result.sizing_discharge));
  steps.computed_rock("D50", "note, not used: angular rock that fails at C_f·q",
                      "5.23·S^0.43·q^0.56 (in, ft²/s)", result.d50_at_failure,
                      paper_of_overtopping_abt_johnson);
  steps.computed_rock("D50", "angular rock that does not move", "5.23·S^0.43·q^0.56 (in, ft²/s)",
                      result.d50_angular, paper_of_overtopping_abt_johnson);
  if (rounded) {
    steps.computed_rock("D50", "required median size of rounded rock", "1.4·D50", result.d50,
                        paper_of_overtopping_abt_johnson);
  }
  return result;
}

const SizingMethod& overtopping_abt_johnson_method() {
  static const DescribedOvertoppingAbtJohnson method = build_overtopping_abt_johnson();
  return method;
}

}  // namespace proofstone
