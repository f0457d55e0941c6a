#include "engine/reliability/hudson_reliability.h"

#include <cmath>

#include "engine/reliability/design_point.h"
#include "engine/reliability/first_order.h"

namespace proofstone {
namespace {

const char* const limit_state =
    "USACE EM 1110-2-1100 Part VI Ch. 6; PIANC 1992 (from memory; confirm)";

double capacity(double A, double delta, double Dn, double KD, double cot) {
  return A * delta * Dn * std::pow(KD * cot, 1.0 / 3.0);
}

/// A quantity with its spread; certain where the variation is 0.
struct UncertainQuantity {
  const char* key;
  double mean;
  double variation;
};

/// Z with those quantities uncertain that have a spread; the others stay at their means.
FormulaLimitState limit_of(const std::vector<UncertainQuantity>& quantities, double KD) {
  std::vector<RandomVariable> variables;
  std::vector<double> means;
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < quantities.size(); ++i) {
    const auto& [key, mean, variation] = quantities[i];
    means.push_back(mean);
    const auto spread = Distribution::normal(mean, variation * mean);
    if (!spread) continue;
    variables.push_back({key, key, *spread});
    places.push_back(i);
  }
  return {variables, [means, places, KD](std::span<const double> values) -> std::optional<double> {
            std::vector<double> x = means;
            for (std::size_t i = 0; i < places.size(); ++i) x[places[i]] = values[i];
            if (!(x[3] > 0)) return std::nullopt;
            return capacity(x[0], x[1], x[2], KD, x[3]) - x[4];
          }};
}

double share_of(const FormulaLimitState& limit, const FirstOrderResult& first,
                const std::string& key) {
  for (std::size_t i = 0; i < limit.variables().size(); ++i) {
    if (limit.variables()[i].key == key) return first.shares[i];
  }
  return 0;
}

MethodDescription describe_hudson_reliability() {
  MethodDescription about;
  about.id = "hudson-reliability";
  about.title = "Chance of displaced armour, Hudson limit state";
  about.purpose =
      "Chance that stone on a slope in waves of a known height is displaced beyond the damage its "
      "stability coefficient stands for, from how well waves, stone, slope and formula are known.";
  about.group = MethodGroup::reliability;
  about.sources = {{"USACE EM 1110-2-1100, Coastal Engineering Manual", "Part VI Ch. 6, Hudson",
                    SourceStanding::memory},
                   {"PIANC (1992), rubble-mound breakwaters", "limit state of the Hudson formula",
                    SourceStanding::memory}};
  about.cautions = {
      "The chance holds for that sea state only.",
      "The manual is recalled to give the formula factor a deviation of 0.18 about 1 (from memory; "
      "confirm); state it only after you have seen it.",
      "The damage the stability coefficient stands for must be the one you can bear."};
  return about;
}

void describe_hudson_reliability_inputs(
    TypedMethod<HudsonReliabilityInputs, HudsonReliabilityResult>& method) {
  method.required({"nominal_size", "Dn50", "nominal size (M50/ρ)^⅓ of the armour, mean"},
                  &HudsonReliabilityInputs::nominal_size, unit::meter,
                  AllowedRange::positive_to(10), LengthUse::rock);
  method.required({"relative_density", "Δ", "density of the rock over water, less 1, mean"},
                  &HudsonReliabilityInputs::relative_density, unit::number,
                  AllowedRange::between(0.5, 3));
  method.required({"stability_coefficient", "KD", "Hudson's coefficient"},
                  &HudsonReliabilityInputs::stability_coefficient, unit::number,
                  AllowedRange::positive_to(50));
  method.required({"cot_slope", "cot α", "horizontal over vertical of the slope, mean"},
                  &HudsonReliabilityInputs::cot_slope, unit::number, AllowedRange::between(1, 10));
  method.required({"wave_height", "Hs", "significant wave height, mean"},
                  &HudsonReliabilityInputs::wave_height, unit::meter,
                  AllowedRange::positive_to(20));
  const auto range = AllowedRange::between(0, 1);
  method.defaulted({"nominal_size_variation", "δDn", "coefficient of variation of the size"},
                   &HudsonReliabilityInputs::nominal_size_variation, unit::number, range);
  method.defaulted({"relative_density_variation", "δΔ", "coefficient of variation of Δ"},
                   &HudsonReliabilityInputs::relative_density_variation, unit::number, range);
  method.defaulted({"cot_slope_variation", "δcot", "coefficient of variation of the slope"},
                   &HudsonReliabilityInputs::cot_slope_variation, unit::number, range);
  method.defaulted({"wave_height_variation", "δH", "coefficient of variation of the wave height"},
                   &HudsonReliabilityInputs::wave_height_variation, unit::number, range);
  method.defaulted({"formula_variation", "σA", "standard deviation of the formula factor A"},
                   &HudsonReliabilityInputs::formula_variation, unit::number, range);
}

TypedMethod<HudsonReliabilityInputs, HudsonReliabilityResult> build_hudson_reliability() {
  TypedMethod<HudsonReliabilityInputs, HudsonReliabilityResult> method(
      describe_hudson_reliability(), &hudson_reliability);
  describe_hudson_reliability_inputs(method);
  method.output({"capacity", "Hc", "wave height the armour bears at the means"},
                &HudsonReliabilityResult::capacity, unit::meter);
  method.output({"margin", "Z", "margin at the means"}, &HudsonReliabilityResult::margin,
                unit::meter);
  method.output({"spread", "σZ", "standard deviation of the margin"},
                &HudsonReliabilityResult::spread, unit::meter);
  method.output({"beta", "β", "reliability index, first-order second-moment"},
                &HudsonReliabilityResult::beta, unit::number);
  method.output({"probability", "Pf", "chance of displaced armour"},
                &HudsonReliabilityResult::probability, unit::number);
  method.output({"wave_height_share", "", "share of the variance from the wave height"},
                &HudsonReliabilityResult::wave_height_share, unit::number);
  method.output({"formula_share", "", "share from the formula itself"},
                &HudsonReliabilityResult::formula_share, unit::number);
  method.output({"design_point_beta", "β", "reliability index at the design point"},
                &HudsonReliabilityResult::design_point_beta, unit::number);
  method.output({"design_point_probability", "Pf", "the chance by the design point"},
                &HudsonReliabilityResult::design_point_probability, unit::number);
  method.limit({"Slope from 1V:1.5H to 1V:3H, as tested", "Shore Protection Manual (from memory)"},
               [](const HudsonReliabilityInputs& in) {
                 const double cot = in.cot_slope.number();
                 return cot > 1.5 - 1e-9 && cot < 3 + 1e-9;
               });
  return method;
}

}  // namespace

Expected<HudsonReliabilityResult> hudson_reliability(const HudsonReliabilityInputs& inputs,
                                                     Steps& steps) {
  const double KD = inputs.stability_coefficient.number();
  const std::vector<UncertainQuantity> quantities{
      {"A", 1, inputs.formula_variation.number()},
      {"Δ", inputs.relative_density.number(), inputs.relative_density_variation.number()},
      {"Dn50", inputs.nominal_size.meters(), inputs.nominal_size_variation.number()},
      {"cot", inputs.cot_slope.number(), inputs.cot_slope_variation.number()},
      {"Hs", inputs.wave_height.meters(), inputs.wave_height_variation.number()}};
  const auto limit = limit_of(quantities, KD);
  const auto first = first_order(limit);
  if (!first) return first.problems();
  const auto point = find_design_point(limit);
  if (!point) return point.problems();

  HudsonReliabilityResult result;
  result.margin = Length::meters(first->margin_at_means);
  result.capacity = result.margin + inputs.wave_height;
  result.spread = Length::meters(first->standard_deviation);
  result.beta = Dimensionless::number(first->beta);
  result.probability = Dimensionless::number(first->probability);
  result.wave_height_share = Dimensionless::number(share_of(limit, *first, "Hs"));
  result.formula_share = Dimensionless::number(share_of(limit, *first, "A"));
  result.design_point_beta = Dimensionless::number(point->beta);
  result.design_point_probability = Dimensionless::number(point->probability);

  steps.given_rock("Dn50", "nominal size", inputs.nominal_size);
  steps.given("Δ", "relative density", measure(inputs.relative_density));
  steps.given("KD", "stability coefficient", measure(inputs.stability_coefficient));
  steps.given("cot α", "slope", measure(inputs.cot_slope));
  steps.given("Hs", "significant wave height", measure(inputs.wave_height));
  steps.computed("Hc", "wave height the armour bears", "A·Δ·Dn50·(KD·cot α)^⅓, A = 1",
                 measure(result.capacity), limit_state);
  steps.computed("Z", "margin", "Hc − Hs", measure(result.margin), limit_state);
  steps.computed("σZ", "standard deviation of the margin",
                 "√[Hc²·(σA² + δΔ² + δDn² + (δcot/3)²) + (δH·Hs)²]", measure(result.spread));
  steps.computed("β", "reliability index", "Z / σZ", measure(result.beta));
  steps.computed("Pf", "chance of displaced armour", "Φ(−β)", measure(result.probability));
  steps.computed("β", "reliability index at the design point, all quantities normal",
                 "distance to Z = 0 in standard deviations", measure(result.design_point_beta));
  steps.computed("Pf", "the chance by the design point", "Φ(−β)",
                 measure(result.design_point_probability));
  return result;
}

const Method& hudson_reliability_method() {
  static const auto method = build_hudson_reliability();
  return method;
}

}  // namespace proofstone
