#include "engine/waves/wave_toe.h"

#include <cmath>

namespace proofstone {
namespace {

constexpr double stones_wide = 3;
constexpr double stones_thick = 2;

const char* const shore_manuals =
    "USACE EM 1110-2-1614; Shore Protection Manual (1984) (from memory; confirm)";
const char* const toe_formula = "van der Meer (1998), CIRIA C683 (2007) (from memory; confirm)";

bool is_berm(const WaveToeInputs& in) { return in.water_depth && in.depth_at_toe; }

double depth_ratio(const WaveToeInputs& in) { return *in.depth_at_toe / *in.water_depth; }

double submerged(const WaveToeInputs& in) {
  return in.specific_gravity / in.water_specific_gravity - 1;
}

double stability_number(const WaveToeInputs& in) {
  return (2 + 6.2 * std::pow(depth_ratio(in), 2.7)) * std::pow(in.damage.number(), 0.15);
}

Length stone_of_berm(const WaveToeInputs& in) {
  return in.wave_height / (submerged(in) * stability_number(in));
}

MethodDescription describe_wave_toe() {
  MethodDescription about;
  about.id = "wave-toe";
  about.title = "Toe of a slope under waves";
  about.purpose =
      "How deep the toe of a shore's rock goes, how wide an apron in its place is, and the stone "
      "of a toe berm in shallow water.";
  about.group = MethodGroup::toe;
  about.sources = {
      {"USACE EM 1110-2-1614; Shore Protection Manual (1984)",
       "scour of about one wave height; apron at least three stones wide", SourceStanding::memory},
      {"van der Meer (1998), as CIRIA C683, The Rock Manual (2007)", "stability of toe berms",
       SourceStanding::memory},
      {"trade", "an apron two stones thick, of the slope's own stone where no berm is computed",
       SourceStanding::common_practice}};
  about.cautions = {
      "One wave height is a rule for want of a better estimate: currents, ships and breaking on "
      "the toe scour deeper.",
      "Damage Nod: 0.5 where it begins, 2 where the toe is somewhat flattened, 4 where it fails.",
      "Lay filter and bedding under toe and apron as under the slope."};
  return about;
}

void describe_wave_toe_inputs(TypedMethod<WaveToeInputs, WaveToeResult>& method) {
  method.required({"wave_height", "Hs", "significant wave height at the toe"},
                  &WaveToeInputs::wave_height, unit::meter, AllowedRange::positive_to(20));
  method.required({"armour_cube", "Dn50,a", "cube of the median stone on the slope"},
                  &WaveToeInputs::armour_cube, unit::meter, AllowedRange::positive_to(10),
                  LengthUse::rock);
  method.optional({"scour", "ys", "scour of the bed at the toe"}, &WaveToeInputs::scour,
                  unit::meter, AllowedRange::between(0, 50), "one wave height");
  method.optional({"water_depth", "h", "depth of the water before the structure"},
                  &WaveToeInputs::water_depth, unit::meter, AllowedRange::positive_to(100),
                  "the toe's stone is that of the slope");
  method.optional({"depth_at_toe", "ht", "depth of the water over the toe berm"},
                  &WaveToeInputs::depth_at_toe, unit::meter, AllowedRange::positive_to(100),
                  "the toe's stone is that of the slope");
  method.defaulted({"specific_gravity", "γr/γ", "specific gravity of the rock"},
                   &WaveToeInputs::specific_gravity, unit::number, AllowedRange::between(1.5, 4));
  method.defaulted({"water_specific_gravity", "", "of the water: 1 fresh, 1.025 sea"},
                   &WaveToeInputs::water_specific_gravity, unit::number,
                   AllowedRange::between(0.95, 1.1));
  method.defaulted({"damage", "Nod", "damage accepted of a toe berm"}, &WaveToeInputs::damage,
                   unit::number, AllowedRange::positive_to(10));
}

void describe_limits(TypedMethod<WaveToeInputs, WaveToeResult>& method) {
  const auto within = [](double value, double low, double high) {
    return value > low - 1e-9 && value < high + 1e-9;
  };
  method.limit({"Depth over the toe 0.4 to 0.9 of the water's", toe_formula},
               [within](const WaveToeInputs& in) {
                 return !is_berm(in) || within(depth_ratio(in), 0.4, 0.9);
               });
  method.limit({"Wave height 0.28 to 0.8 of the water's depth", toe_formula},
               [within](const WaveToeInputs& in) {
                 return !is_berm(in) || within(in.wave_height / *in.water_depth, 0.28, 0.8);
               });
  method.limit({"Depth over the toe 3 to 25 stones", toe_formula},
               [within](const WaveToeInputs& in) {
                 return !is_berm(in) || within(*in.depth_at_toe / stone_of_berm(in), 3, 25);
               });
  method.limit({"Damage Nod from 0.5 to 4", toe_formula}, [within](const WaveToeInputs& in) {
    return !is_berm(in) || within(in.damage.number(), 0.5, 4);
  });
}

TypedMethod<WaveToeInputs, WaveToeResult> build_wave_toe() {
  TypedMethod<WaveToeInputs, WaveToeResult> method(describe_wave_toe(), &wave_toe);
  describe_wave_toe_inputs(method);
  method.output({"scour", "ys", "depth below the bed to which the toe goes"}, &WaveToeResult::scour,
                unit::meter);
  method.output({"stone_cube", "Dn50", "cube of the toe's median stone"},
                &WaveToeResult::stone_cube, unit::meter, LengthUse::rock);
  method.output({"stone_mass", "M50", "its mass"}, &WaveToeResult::stone_mass, unit::kilogram);
  method.output({"apron_width", "B", "width of an apron in place of a dug toe"},
                &WaveToeResult::apron_width, unit::meter);
  method.output({"apron_thickness", "t", "thickness of it"}, &WaveToeResult::apron_thickness,
                unit::meter);
  method.output({"apron_section", "A", "rock of it for each unit of length"},
                &WaveToeResult::apron_section, unit::square_meter);
  method.output(
      {"depth_ratio", "ht/h", "depth over the toe by that of the water; 0 where not given"},
      &WaveToeResult::depth_ratio, unit::number);
  describe_limits(method);
  return method;
}

void explain(const WaveToeInputs& in, const WaveToeResult& result, Steps& steps) {
  steps.given("Hs", "significant wave height at the toe", measure(in.wave_height));
  if (in.scour) {
    steps.given("ys", "scour of the bed at the toe", measure(result.scour), "given");
  } else {
    steps.computed("ys", "scour of the bed at the toe, where nothing better is known", "1.0·Hs",
                   measure(result.scour), shore_manuals);
  }
  if (is_berm(in)) {
    steps.given("h", "depth of the water before the structure", measure(*in.water_depth));
    steps.given("ht", "depth of the water over the toe", measure(*in.depth_at_toe));
    steps.given("Nod", "damage accepted", measure(in.damage));
    steps.computed("Ns", "Hs/(Δ·Dn50) of a toe berm", "[2 + 6.2·(ht/h)^2.7]·Nod^0.15",
                   measure(stability_number(in)), toe_formula);
    steps.computed_rock("Dn50", "cube of the toe's median stone", "Hs/(Δ·Ns), Δ = γr/γw − 1",
                        result.stone_cube, toe_formula);
  } else {
    steps.given_rock("Dn50", "cube of the toe's median stone, that of the slope", result.stone_cube,
                     "common practice");
  }
  steps.computed("M50", "mass of that stone", "ρr·Dn50³", measure(result.stone_mass));
  steps.computed("B", "width of an apron in place of a dug toe, at least", "3·Dn50",
                 measure(result.apron_width), shore_manuals);
  steps.computed("t", "thickness of it", "2·Dn50", measure(result.apron_thickness),
                 "common practice");
  steps.computed("A", "rock of it for each unit of length", "B·t", measure(result.apron_section));
}

}  // namespace

Expected<WaveToeResult> wave_toe(const WaveToeInputs& inputs, Steps& steps) {
  if (is_berm(inputs) && depth_ratio(inputs) > 1) {
    return Problem{"outside-allowed", "The water is deeper over the toe than before it.", "",
                   "/depth_at_toe", "at most water_depth"};
  }
  if (!(submerged(inputs) > 0)) {
    return Problem{"outside-allowed", "Rock no heavier than the water does not stay.", "",
                   "/specific_gravity", "more than water_specific_gravity"};
  }
  WaveToeResult result;
  result.scour = inputs.scour.value_or(inputs.wave_height);
  result.stone_cube = is_berm(inputs) ? stone_of_berm(inputs) : inputs.armour_cube;
  if (is_berm(inputs)) result.depth_ratio = Dimensionless::number(depth_ratio(inputs));
  const double Dn = result.stone_cube.meters();
  result.stone_mass = Mass::kilograms(1000 * inputs.specific_gravity.number() * Dn * Dn * Dn);
  result.apron_width = stones_wide * result.stone_cube;
  result.apron_thickness = stones_thick * result.stone_cube;
  result.apron_section = Area::square_meters(stones_wide * stones_thick * Dn * Dn);
  explain(inputs, result, steps);
  return result;
}

const Method& wave_toe_method() {
  static const TypedMethod<WaveToeInputs, WaveToeResult> method = build_wave_toe();
  return method;
}

}  // namespace proofstone
