#include "engine/chute/rock_chute.h"

#include <cmath>

#include "engine/method/published_range.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedRockChute = TypedSizingMethod<RockChuteInputs, RockChuteResult>;

const char* const paper_of_rock_chute =
    "Robinson, Rice and Kadavy (1998), Trans. ASAE 41(3):621–626, as quoted in training on NRCS "
    "practice 468";
const char* const recalled =
    "Robinson, Rice and Kadavy (1998), Trans. ASAE 41(3):621–626 (from memory; confirm)";

constexpr double steep_from = 0.10;

/// Inches, from ft²/s.
double stable_size(double q, double S) {
  if (S < steep_from) return std::pow(q * std::pow(S, 1.5) / 4.75e-3, 1 / 1.89);
  return std::pow(q * std::pow(S, 0.58) / 3.93e-2, 1 / 1.89);
}

void uniform_flow(double q, double S, RockChuteResult& result) {
  const double D50 = result.d50.inches();
  const double n = 0.047 * std::pow(D50 * S, 0.147);
  const double z = std::pow(n * q / (1.486 * std::sqrt(S)), 3.0 / 5.0);
  result.roughness = Dimensionless::number(n);
  result.depth = Length::feet(z);
  result.velocity = Velocity::feet_per_second(q / z);
}

void explain(const RockChuteInputs& in, const RockChuteResult& result, Steps& steps) {
  const bool steep = in.slope.ratio() >= steep_from;
  steps.given("S", steep ? "slope of the chute: 10 % or more" : "slope of the chute: below 10 %",
              measure(in.slope));
  steps.computed_rock(
      "D50", "median size that just holds",
      steep ? "(q·S^0.58/3.93e−2)^(1/1.89) (in, ft²/s)" : "(q·S^1.5/4.75e−3)^(1/1.89) (in, ft²/s)",
      result.d50_at_failure, paper_of_rock_chute);
  steps.given("SF", "safety factor on that size, 1.2 or more", measure(in.safety_factor),
              paper_of_rock_chute);
  steps.computed_rock("D50", "required median size", "SF·D50", result.d50);
  steps.computed("n", "roughness of that rock", "0.047·(D50·S)^0.147 (in)",
                 measure(result.roughness), recalled);
  steps.computed("z", "depth of uniform flow", "[n·q/(1.486·S^½)]^(3/5) (ft, ft²/s)",
                 measure(result.depth), paper_of_rock_chute);
  steps.computed("V", "velocity", "q/z", measure(result.velocity));
  steps.computed("t", "least layer thickness", "2·D50", measure(result.layer_thickness), recalled);
  steps.computed("L", "length of the level apron at its foot", "15·D50",
                 measure(result.apron_length), recalled);
}

std::variant<RockChuteInputs, NotApplicable> rock_chute_from_zone(const ZoneSetting& zone) {
  if (zone.rock.angularity == Angularity::rounded) {
    return NotApplicable{"The equation is for angular rock, and this rock is rounded."};
  }
  RockChuteInputs in;
  take_chute_flow(zone, in);
  return in;
}

MethodDescription describe_rock_chute() {
  MethodDescription about;
  about.id = "rock-chute";
  about.title = "Rock chute equation";
  about.purpose =
      "Median size of angular loose rock on a chute of 2 to 40 % slope, with the depth of flow, "
      "the "
      "layer and the apron at its foot.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Robinson, Rice and Kadavy (1998), Design of Rock Chutes, Trans. ASAE 41(3)",
                    "pp. 621–626; the size equation as quoted in training on NRCS practice 468",
                    SourceStanding::published},
                   {"Robinson, Rice and Kadavy (1998), Design of Rock Chutes, Trans. ASAE 41(3)",
                    "roughness, layer and apron", SourceStanding::memory}};
  about.cautions = {
      "Angular rock of nearly one size (D60/D10 1.25 to 1.75); rounded rock needs more.",
      "Tailwater must stand at or above the height of the jump at the foot.",
      "Use the discharge of the deepest strip, not the total over the full width, where flow "
      "gathers.",
      "A local practice thickens the layer to 1.25·D100, about 2.5·D50."};
  return about;
}

bool rock_chute_size_was_tested(const RockChuteInputs& in) {
  const auto result = rock_chute(in);
  return result && PublishedRange{15, 278}.holds(result->d50_at_failure.millimeters());
}

DescribedRockChute build_rock_chute() {
  DescribedRockChute method(
      describe_rock_chute(), &rock_chute, &rock_chute_from_zone,
      [](const RockChuteResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::chute});
  method.without_steps(&rock_chute);
  describe_chute_flow(method);
  method.required({"slope", "S", "slope of the chute"}, &RockChuteInputs::slope, unit::rise_per_run,
                  AllowedRange::positive_to(2));
  method.defaulted({"safety_factor", "SF", "multiplies the size that just holds"},
                   &RockChuteInputs::safety_factor, unit::number, AllowedRange::between(1, 5));
  method.safety_margin("safety_factor", 1);
  method.output({"unit_discharge", "q", "discharge for each unit of width"},
                &RockChuteResult::unit_discharge, unit::square_foot_per_second);
  method.output({"d50_at_failure", "D50", "median size that just holds"},
                &RockChuteResult::d50_at_failure, unit::inch, LengthUse::rock);
  method.output({"d50", "D50", "required median size"}, &RockChuteResult::d50, unit::inch,
                LengthUse::rock);
  method.output({"roughness", "n", "Manning's n of that rock"}, &RockChuteResult::roughness,
                unit::number);
  method.output({"depth", "z", "depth of uniform flow"}, &RockChuteResult::depth, unit::foot);
  method.output({"velocity", "V", "velocity there"}, &RockChuteResult::velocity,
                unit::foot_per_second);
  method.output({"layer_thickness", "t", "least layer thickness"},
                &RockChuteResult::layer_thickness, unit::foot);
  method.output({"apron_length", "L", "level apron at the foot"}, &RockChuteResult::apron_length,
                unit::foot);
  method.limit({"Slope from 2 to 40 %", paper_of_rock_chute}, [](const RockChuteInputs& in) {
    return PublishedRange{0.02, 0.40}.holds(in.slope.ratio());
  });
  method.limit({"Median size tested: 15 to 278 mm (0.6 to 11 in)",
                "Robinson et al. (1997), ASAE paper 972062, abstract"},
               rock_chute_size_was_tested);
  method.limit({"Safety factor at least 1.2", paper_of_rock_chute},
               [](const RockChuteInputs& in) { return in.safety_factor.number() > 1.2 - 1e-9; });
  return method;
}

}  // namespace

Expected<RockChuteResult> rock_chute(const RockChuteInputs& inputs) {
  const auto unit_discharge = unit_discharge_of(inputs);
  if (!unit_discharge) return unit_discharge.problems();
  const double q = unit_discharge->square_feet_per_second();
  const double S = inputs.slope.ratio();

  RockChuteResult result;
  result.unit_discharge = *unit_discharge;
  result.d50_at_failure = Length::inches(stable_size(q, S));
  result.d50 = inputs.safety_factor.number() * result.d50_at_failure;
  uniform_flow(q, S, result);
  result.layer_thickness = 2 * result.d50;
  result.apron_length = 15 * result.d50;
  return result;
}

Expected<RockChuteResult> rock_chute(const RockChuteInputs& inputs, Steps& steps) {
  auto result = rock_chute(inputs);
  if (!result) return result;
  const auto shown = unit_discharge_of(inputs, steps);
  if (!shown) return shown.problems();
  explain(inputs, *result, steps);
  return result;
}

const SizingMethod& rock_chute_method() {
  static const DescribedRockChute method = build_rock_chute();
  return method;
}

}  // namespace proofstone
