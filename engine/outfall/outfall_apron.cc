#include "engine/outfall/outfall_apron.h"
#include "engine/sizing/typed_sizing_method.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

using DescribedOutfallApron = TypedSizingMethod<OutfallApronInputs, OutfallApronResult>;

const char* const hec14_of_outfall_apron = "FHWA HEC-14 3rd ed. (2006) §10.2";
const char* const table = apron_table_source;

/// Eq. 10.4, ft.
double median_size(double Q, double D, double TW) {
  return 0.2 * D * std::pow(Q / (std::sqrt(g_us) * std::pow(D, 2.5)), 4.0 / 3.0) * (D / TW);
}

Length tailwater_held(const OutfallApronInputs& in, Steps& steps) {
  const Length given = tailwater_of(in.diameter, in, hec14_of_outfall_apron, steps);
  const Length held = std::clamp(given, 0.4 * in.diameter, in.diameter);
  steps.computed("TW", "tailwater used", "held between 0.4·D and 1.0·D", measure(held),
                 hec14_of_outfall_apron);
  return held;
}

Problem above_the_table(Length d50) {
  return {"no-class",
          fmt::format("The rock would have to be {:.1f} in ({:.0f} mm), larger than the largest "
                      "class of the table; an apron does not serve here.",
                      d50.inches(), d50.millimeters()),
          "", "/discharge", "a required size up to 22 in (550 mm), or another energy dissipator"};
}

void apron(const ApronClass& chosen, const OutfallApronInputs& in, OutfallApronResult& result) {
  result.apron_class = Dimensionless::number(chosen.number);
  result.class_d50 = Length::inches(chosen.d50_in);
  result.apron_length = chosen.length_over_diameter * in.diameter;
  result.apron_depth = chosen.depth_over_d50 * result.class_d50;
  result.end_width = 3 * in.diameter + 2.0 / 3.0 * result.apron_length;
}

void explain_apron(const ApronClass& chosen, const OutfallApronResult& result, Steps& steps) {
  steps.given("class", "smallest class of HEC-14 Table 10.1 not smaller than that",
              measure(result.apron_class), table);
  steps.given_rock("D50", "median size of that class", result.class_d50, table);
  steps.computed("L", "length of the apron", fmt::format("{:g}·D", chosen.length_over_diameter),
                 measure(result.apron_length), table);
  steps.computed("t", "depth of the apron",
                 fmt::format("{:g}·D50 of the class", chosen.depth_over_d50),
                 measure(result.apron_depth), table);
  steps.computed("W", "width at its end, flared 1:3 each side", "3·D + ⅔·L",
                 measure(result.end_width), table);
}

std::variant<OutfallApronInputs, NotApplicable> outfall_apron_from_zone(const ZoneSetting& zone) {
  OutfallApronInputs in;
  take_conduit_water(zone, in);
  return in;
}

MethodDescription describe_outfall_apron() {
  MethodDescription about;
  about.id = "outfall-apron";
  about.title = "Rock apron at a culvert outlet";
  about.purpose =
      "Median size of rock on a level apron below a culvert, with the apron's class, length, depth "
      "and width.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA HEC-14 3rd ed. (2006), FHWA-NHI-06-086", "§10.2, eqs. 10.4 and 10.5, tailwater rules",
       SourceStanding::published},
      {"FHWA HEC-14 3rd ed. (2006), FHWA-NHI-06-086", "Table 10.1", SourceStanding::memory}};
  about.cautions = {
      "The class numbers are those of HEC-14 Table 10.1. They are not the numbers of FP-14 or of "
      "the ten FHWA classes, nor letters of a local manual: order rock by its size.",
      "The apron lies level; a sloping outlet channel needs a lining of its own beyond it.",
      "A tailwater below 0.4·D is raised to it, as the manual says; a higher one helps."};
  return about;
}

DescribedOutfallApron build_outfall_apron() {
  DescribedOutfallApron method(
      describe_outfall_apron(), &outfall_apron, &outfall_apron_from_zone,
      [](const OutfallApronResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::outfall});
  method.required({"diameter", "D", "diameter of the culvert"}, &OutfallApronInputs::diameter,
                  unit::foot, AllowedRange::positive_to(50));
  describe_conduit_water(method);
  method.output({"diameter_used", "D'", "diameter used: D, or (D + yn)/2"},
                &OutfallApronResult::diameter_used, unit::foot);
  method.output({"tailwater_used", "TW", "tailwater used"}, &OutfallApronResult::tailwater_used,
                unit::foot);
  method.output({"d50", "D50", "required median size"}, &OutfallApronResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"apron_class", "", "class of HEC-14 Table 10.1"}, &OutfallApronResult::apron_class,
                unit::number);
  method.output({"class_d50", "D50", "median size of that class"}, &OutfallApronResult::class_d50,
                unit::inch, LengthUse::rock);
  method.output({"apron_length", "L", "length of the apron"}, &OutfallApronResult::apron_length,
                unit::foot);
  method.output({"apron_depth", "t", "depth of the apron"}, &OutfallApronResult::apron_depth,
                unit::foot);
  method.output({"end_width", "W", "width at its end"}, &OutfallApronResult::end_width, unit::foot);
  method.limit({"Culvert up to 60 in (1500 mm)", hec14_of_outfall_apron},
               [](const OutfallApronInputs& in) { return in.diameter.inches() < 60 + 1e-9; });
  return method;
}

}  // namespace

Expected<OutfallApronResult> outfall_apron(const OutfallApronInputs& inputs, Steps& steps) {
  steps.given("Q", "discharge", measure(inputs.discharge));
  const auto diameter = effective_height(inputs.diameter, inputs, hec14_of_outfall_apron, steps);
  if (!diameter) return diameter.problems();

  OutfallApronResult result;
  result.diameter_used = *diameter;
  result.tailwater_used = tailwater_held(inputs, steps);
  result.d50 = Length::feet(median_size(inputs.discharge.cubic_feet_per_second(), diameter->feet(),
                                        result.tailwater_used.feet()));
  steps.computed_rock("D50", "required median size",
                      "0.2·D·[Q/(√g·D^2.5)]^(4/3)·(D/TW), with D' for D where there is one",
                      result.d50, hec14_of_outfall_apron);
  const auto chosen = apron_class_for(result.d50);
  if (!chosen) return above_the_table(result.d50);
  apron(*chosen, inputs, result);
  explain_apron(*chosen, result, steps);
  return result;
}

const SizingMethod& outfall_apron_method() {
  static const DescribedOutfallApron method = build_outfall_apron();
  return method;
}

}  // namespace proofstone
