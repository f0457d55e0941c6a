#include "engine/sizing/hudson.h"

#include <algorithm>
#include <cmath>

#include "engine/rock/size_and_mass.h"
#include "engine/sizing/cotangent.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {
namespace {

using DescribedHudson = TypedSizingMethod<HudsonInputs, HudsonResult>;

constexpr double pounds_fresh = 62.4;
constexpr double pounds_sea = 64.0;
const char* const spm = "USACE Shore Protection Manual (1984) (from memory; confirm)";
const char* const table = "SPM (1984) Table 7-8, trunk (from memory; confirm)";
const char* const em1614 = "SPM (1984); EM 1110-2-1614 (from memory; confirm)";

bool is_graded(const HudsonInputs& in) { return in.armor == ArmorStone::graded_riprap; }

Length design_height(const HudsonInputs& in) {
  Length height = in.wave == HudsonWave::ten_percent ? 1.27 * in.wave_height : in.wave_height;
  if (in.toe_depth) height = std::min(height, 0.78 * *in.toe_depth);
  return height;
}

/// Sr.
double rock_over_water(const HudsonInputs& in) {
  const double water = in.water == WaterKind::sea ? pounds_sea : pounds_fresh;
  return in.specific_gravity.number() * pounds_fresh / water;
}

std::variant<HudsonInputs, NotApplicable> hudson_from_zone(const ZoneSetting& zone) {
  HudsonInputs in;
  if (zone.stated.wave_height) in.wave_height = *zone.stated.wave_height;
  in.slope = zone.bank_angle;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_hudson() {
  MethodDescription about;
  about.id = "hudson";
  about.title = "Hudson formula";
  about.purpose =
      "Median mass of rock on a slope that waves break on: revetments, shores, faces of dams.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"USACE Shore Protection Manual (1984)",
       "Chapter 7: formula, Table 7-8, graded riprap with KRR, layer and crest",
       SourceStanding::memory},
      {"USACE EM 1110-2-1614, Design of Coastal Revetments, Seawalls, and Bulkheads",
       "layer of graded riprap", SourceStanding::memory},
      {"FHWA HEC-25 (2008)", "Chapter 6: a design wave and Hudson for wave attack on highways",
       SourceStanding::published}};
  about.cautions = {
      "Which wave belongs to which coefficient: the manual of 1984 puts H10 = 1.27·Hs with its own "
      "lower coefficients, older users Hs with higher ones. Twice the mass lies between them.",
      "It knows neither period nor duration, nor what lies below the rock.",
      "Coefficients are those of a trunk; the head of a structure needs heavier stone: give its "
      "coefficient."};
  return about;
}

void describe_hudson_inputs(DescribedHudson& method) {
  method.required({"wave_height", "Hs", "significant wave height at the toe"},
                  &HudsonInputs::wave_height, unit::foot, AllowedRange::positive_to(60));
  method.optional({"toe_depth", "ds", "depth at the toe, which bounds the wave at 0.78·ds"},
                  &HudsonInputs::toe_depth, unit::foot, AllowedRange::positive_to(1000),
                  "no bound by depth");
  method.required({"slope", "θ", "angle of the slope"}, &HudsonInputs::slope, unit::degree,
                  AllowedRange::positive_to(60));
  method.defaulted({"specific_gravity", "γr/γ", "specific gravity of the rock"},
                   &HudsonInputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.choice(
      {"water", "", "fresh or sea water"}, &HudsonInputs::water,
      {{WaterKind::fresh, "fresh", "62.4 lb/ft³"}, {WaterKind::sea, "sea", "64.0 lb/ft³"}});
  method.choice({"wave", "H", "wave that enters the formula"}, &HudsonInputs::wave,
                {{HudsonWave::ten_percent, "h10", "H10 = 1.27·Hs, as the manual of 1984"},
                 {HudsonWave::significant, "hs", "Hs itself"}});
  method.choice({"armor", "KD", "kind of stone and placing"}, &HudsonInputs::armor,
                {{ArmorStone::rough_angular, "rough-angular", "two layers, random"},
                 {ArmorStone::rough_thick, "rough-angular-thick", "more than three layers, random"},
                 {ArmorStone::smooth_rounded, "smooth-rounded", "two layers, random"},
                 {ArmorStone::graded_riprap, "graded-riprap", "graded angular riprap"}});
  method.choice({"breaking", "", "whether the wave breaks before the slope"},
                &HudsonInputs::breaking,
                {{WaveBreaking::breaking, "breaking", "the depth breaks it"},
                 {WaveBreaking::nonbreaking, "nonbreaking", "it reaches the slope whole"}});
  method.optional({"stability_coefficient", "KD", "stability coefficient"},
                  &HudsonInputs::stability_coefficient, unit::number, AllowedRange::positive_to(30),
                  "that of the table");
}

void describe_hudson_outputs(DescribedHudson& method) {
  method.output({"design_height", "H", "wave height in the formula"}, &HudsonResult::design_height,
                unit::foot);
  method.output({"coefficient", "KD", "stability coefficient"},
                &HudsonResult::stability_coefficient, unit::number);
  method.output({"median_mass", "W50", "required median mass"}, &HudsonResult::median_mass,
                unit::pound);
  method.output({"d50", "D50", "sphere of the median mass"}, &HudsonResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"nominal_diameter", "Dn50", "cube of the median mass"},
                &HudsonResult::nominal_diameter, unit::foot, LengthUse::rock);
  method.output({"largest_mass", "Wmax", "largest stone"}, &HudsonResult::largest_mass,
                unit::pound);
  method.output({"smallest_mass", "Wmin", "smallest stone"}, &HudsonResult::smallest_mass,
                unit::pound);
  method.output({"layer", "r", "thickness of the layer"}, &HudsonResult::layer, unit::foot);
  method.output({"crest_width", "B", "width of a crest of this stone"}, &HudsonResult::crest_width,
                unit::foot);
  method.output({"underlayer_low", "W/15", "first underlayer, lightest"},
                &HudsonResult::underlayer_low, unit::pound);
  method.output({"underlayer_high", "W/10", "first underlayer, heaviest"},
                &HudsonResult::underlayer_high, unit::pound);
}

DescribedHudson build_hudson() {
  DescribedHudson method(describe_hudson(), &hudson, &hudson_from_zone,
                         [](const HudsonResult& result) {
                           RequiredSize required{50, result.d50};
                           required.by_mass = true;
                           return required;
                         },
                         {ZonePlace::shore});
  method.without_steps(&hudson);
  describe_hudson_inputs(method);
  describe_hudson_outputs(method);
  method.limit({"Slope between 1V:1.5H and 1V:3H, as tested", spm}, [](const HudsonInputs& in) {
    const double m = cot(in.slope);
    return m > 1.5 - 1e-9 && m < 3 + 1e-9;
  });
  method.limit({"Design wave at most 5 ft for graded riprap", spm}, [](const HudsonInputs& in) {
    return !is_graded(in) || design_height(in).feet() < 5 + 1e-9;
  });
  return method;
}

/// Masses and layer that follow from the median mass.
void dimension(const HudsonInputs& in, Density rock, HudsonResult& result) {
  const double W = result.median_mass.pounds();
  const double wr = rock.pounds_mass_per_cubic_foot();
  const double cube = std::pow(W / wr, 1.0 / 3);
  const bool graded = is_graded(in);
  result.nominal_diameter = Length::feet(cube);
  result.d50 = stone_size(result.median_mass, SizeMeaning::sphere, rock);
  result.largest_mass = (graded ? 4 : 1.25) * result.median_mass;
  result.smallest_mass = (graded ? 1.0 / 8 : 0.75) * result.median_mass;
  const double k_delta = in.armor == ArmorStone::smooth_rounded ? 1.02 : 1.00;
  const double stones = in.armor == ArmorStone::rough_thick ? 3 : 2;
  if (graded) {
    const double by_largest = 1.25 * std::pow(result.largest_mass.pounds() / wr, 1.0 / 3);
    result.layer = Length::feet(std::max({2.0 * cube, by_largest, 1.0}));
  } else {
    result.layer = Length::feet(stones * k_delta * cube);
  }
  result.crest_width = Length::feet(3 * k_delta * cube);
  result.underlayer_low = result.median_mass / 15;
  result.underlayer_high = result.median_mass / 10;
}

void explain(const HudsonInputs& in, const HudsonResult& result, Steps& steps) {
  steps.given("Hs", "significant wave height at the toe", measure(in.wave_height));
  if (in.toe_depth) steps.given("ds", "depth at the toe", measure(*in.toe_depth));
  const std::string wave = in.wave == HudsonWave::ten_percent ? "1.27·Hs" : "Hs";
  steps.computed("H", "wave height in the formula",
                 in.toe_depth ? "min(" + wave + ", 0.78·ds)" : wave, measure(result.design_height),
                 spm);
  steps.given("KD", "stability coefficient", measure(result.stability_coefficient),
              in.stability_coefficient ? "document" : table);
  steps.computed("Sr", "rock over water", "γr/γw", measure(rock_over_water(in)));
  steps.given("cotθ", "slope", measure(cot(in.slope)));
  steps.computed("W50", "required median mass", "wr·H³/[KD·(Sr−1)³·cotθ]",
                 measure(result.median_mass), spm);
  steps.computed_rock("D50", "sphere of the median mass", "(6·W50/(π·wr))^⅓", result.d50);
  steps.computed("Wmax", "largest stone", is_graded(in) ? "4·W50" : "1.25·W50",
                 measure(result.largest_mass), spm);
  steps.computed("Wmin", "smallest stone", is_graded(in) ? "W50/8" : "0.75·W50",
                 measure(result.smallest_mass), spm);
  steps.computed("r", "thickness of the layer",
                 is_graded(in) ? "max[2·(W50/wr)^⅓, 1.25·(Wmax/wr)^⅓, 1 ft]" : "n·kΔ·(W/wr)^⅓",
                 measure(result.layer), em1614);
  steps.computed("B", "width of a crest of this stone", "3·kΔ·(W/wr)^⅓",
                 measure(result.crest_width), em1614);
}

}  // namespace

double hudson_coefficient(ArmorStone armor, WaveBreaking breaking) {
  const bool breaks = breaking == WaveBreaking::breaking;
  switch (armor) {
    case ArmorStone::rough_angular:
      return breaks ? 2.0 : 4.0;
    case ArmorStone::rough_thick:
      return breaks ? 2.2 : 4.5;
    case ArmorStone::smooth_rounded:
      return breaks ? 1.2 : 2.4;
    case ArmorStone::graded_riprap:
      break;
  }
  return breaks ? 2.2 : 2.5;
}

Expected<HudsonResult> hudson(const HudsonInputs& inputs) {
  const double Sg = inputs.specific_gravity.number();
  const double wr = Sg * pounds_fresh;
  const double Sr = rock_over_water(inputs);
  const double KD = inputs.stability_coefficient
                        ? inputs.stability_coefficient->number()
                        : hudson_coefficient(inputs.armor, inputs.breaking);
  HudsonResult result;
  result.design_height = design_height(inputs);
  result.stability_coefficient = Dimensionless::number(KD);
  const double H = result.design_height.feet();
  const double W = wr * H * H * H / (KD * std::pow(Sr - 1, 3) * cot(inputs.slope));
  result.median_mass = Mass::pounds(W);
  dimension(inputs, Density::pounds_mass_per_cubic_foot(wr), result);
  return result;
}

Expected<HudsonResult> hudson(const HudsonInputs& inputs, Steps& steps) {
  auto result = hudson(inputs);
  if (result) explain(inputs, *result, steps);
  return result;
}

const SizingMethod& hudson_method() {
  static const DescribedHudson method = build_hudson();
  return method;
}

}  // namespace proofstone
