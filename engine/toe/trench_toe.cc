#include "engine/toe/trench_toe.h"

#include <cmath>

namespace proofstone {

namespace {

const char* const depth_source = "USACE WES Streambank Handbook (1997), §6.3.1";

MethodDescription describe_trench_toe() {
  MethodDescription about;
  about.id = "trench-toe";
  about.title = "Toe in a trench";
  about.purpose =
      "Rock and excavation of a layer that is carried down the bank's slope to the depth of scour.";
  about.group = MethodGroup::toe;
  about.sources = {
      {"geometry of the trench", "worked here", SourceStanding::computed},
      {"USACE WES Streambank Handbook (1997)", "§6.3.1, dig in or let launch; ten feet under water",
       SourceStanding::published}};
  about.cautions = {
      "A trench beside a bank can bring the bank down: slope or shore it, and keep people out of "
      "unshored trenches.",
      "The layer is not to hang on its toe: the bank's slope must stand by itself."};
  return about;
}

TypedMethod<TrenchToeInputs, TrenchToeResult> build_trench_toe() {
  TypedMethod<TrenchToeInputs, TrenchToeResult> method(describe_trench_toe(), &trench_toe);
  method.required({"layer_thickness", "T", "thickness of the layer, square to the slope"},
                  &TrenchToeInputs::layer_thickness, unit::foot, AllowedRange::positive_to(30));
  method.required({"depth", "d", "depth of the toe below the bed"}, &TrenchToeInputs::depth,
                  unit::foot, AllowedRange::positive_to(100));
  method.defaulted({"bank_slope", "1/z", "slope of the bank"}, &TrenchToeInputs::bank_slope,
                   unit::rise_per_run, AllowedRange::between(0.05, 2));
  method.defaulted({"trench_slope", "1/z_t", "slope of the water side of the trench"},
                   &TrenchToeInputs::trench_slope, unit::rise_per_run,
                   AllowedRange::between(0.1, 10));
  method.choice({"placement", "", "where the trench is dug"}, &TrenchToeInputs::placement,
                {ChoiceOption<ToePlacement>{ToePlacement::dry, "dry", "behind a dam, in the dry"},
                 {ToePlacement::under_water, "under-water", "under water"}});
  describe_placed_rock(method);
  describe_quantity(method);
  method.output({"bottom_width", "b", "level bottom of the trench"}, &TrenchToeResult::bottom_width,
                unit::foot);
  method.output({"top_width", "B", "width of the trench at the bed"}, &TrenchToeResult::top_width,
                unit::foot);
  method.output({"excavation_section", "A_e", "excavation for each unit of length"},
                &TrenchToeResult::excavation_section, unit::square_foot);
  method.output({"excavation", "V_e", "excavation over the length of toe"},
                &TrenchToeResult::excavation, unit::cubic_foot);
  method.limit(
      {"At most about 10 ft deep under water, where ordinary excavation ends", depth_source},
      [](const TrenchToeInputs& in) {
        return in.placement == ToePlacement::dry || in.depth <= Length::feet(10);
      });
  return method;
}

}  // namespace

Expected<TrenchToeResult> trench_toe(const TrenchToeInputs& inputs, Steps& steps) {
  const double T = inputs.layer_thickness.feet();
  const double d = inputs.depth.feet();
  const double z = 1 / inputs.bank_slope.ratio();
  const double z_t = 1 / inputs.trench_slope.ratio();
  const double slant = std::sqrt(1 + z * z);
  const double b = T * slant;
  const double B = b + (z + z_t) * d;
  const double A_e = (b + B) / 2 * d;

  steps.given("T", "thickness of the layer, square to the slope", measure(inputs.layer_thickness));
  steps.given("d", "depth of the toe below the bed", measure(inputs.depth));
  steps.given("1/z", "slope of the bank", measure(inputs.bank_slope));
  steps.given("1/z_t", "slope of the water side of the trench", measure(inputs.trench_slope));
  steps.computed("A", "rock for each unit of length", "T·d·√(1 + z²)",
                 measure(Area::square_feet(T * d * slant)));
  const auto quantity = quantity_of(Area::square_feet(T * d * slant), inputs, steps);
  TrenchToeResult result;
  result.cross_section = Area::square_feet(T * d * slant);
  result.volume = quantity.volume;
  result.mass = quantity.mass;
  result.bottom_width = Length::feet(b);
  result.top_width = Length::feet(B);
  result.excavation_section = Area::square_feet(A_e);
  result.excavation = Volume::cubic_feet(A_e * inputs.toe_length.feet());
  steps.computed("b", "level bottom of the trench, as wide as the layer lies level", "T·√(1 + z²)",
                 measure(result.bottom_width));
  steps.computed("B", "width at the bed", "b + (z + z_t)·d", measure(result.top_width));
  steps.computed("A_e", "excavation for each unit of length", "(b + B)/2·d",
                 measure(result.excavation_section));
  steps.computed("V_e", "excavation over the length of toe", "A_e·L", measure(result.excavation));
  return result;
}

const Method& trench_toe_method() {
  static const TypedMethod<TrenchToeInputs, TrenchToeResult> method = build_trench_toe();
  return method;
}

}  // namespace proofstone
