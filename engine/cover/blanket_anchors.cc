#include "engine/cover/blanket_anchors.h"

#include <cmath>

#include "engine/quantity/rounding.h"

namespace proofstone {

namespace {

const char* const practice_of_blanket_anchors = "common practice";
const char* const guideline =
    "Installation guideline of a blanket maker, Colorado DRMS record 911390 p. 24";

/// Lower end of what is usual, for each square yard.
double wanted_density(AnchorPlace place) {
  switch (place) {
    case AnchorPlace::gentle_slope:
      return 1.15;
    case AnchorPlace::steep_slope:
      return 1.75;
    case AnchorPlace::channel:
      return 3.5;
  }
  return 3.5;
}

MethodDescription describe_blanket_anchors() {
  MethodDescription about;
  about.id = "blanket-anchors";
  about.title = "Stakes and staples of a blanket";
  about.purpose =
      "How many stakes or staples a blanket takes on a square grid and along its edges, and "
      "whether "
      "the grid is as dense as usual.";
  about.group = MethodGroup::cover;
  about.sources = {
      {practice_of_blanket_anchors, "densities by slope and flow; the grid is arithmetic",
       SourceStanding::common_practice},
      {guideline, "fasteners 1 to 3 ft apart in the bottom of anchor trenches",
       SourceStanding::published}};
  about.cautions = {
      "The maker's own pattern stands before these densities.",
      "A stake holds in the soil below the topsoil: in loose topsoil alone it pulls out."};
  return about;
}

TypedMethod<BlanketAnchorsInputs, BlanketAnchorsResult> build_blanket_anchors() {
  TypedMethod<BlanketAnchorsInputs, BlanketAnchorsResult> method(describe_blanket_anchors(),
                                                                 &blanket_anchors);
  method.required({"area", "A", "area that is covered, along the ground"},
                  &BlanketAnchorsInputs::area, unit::square_foot, AllowedRange::positive_to(1e8));
  method.required({"spacing", "g", "spacing of the grid"}, &BlanketAnchorsInputs::spacing,
                  unit::foot, AllowedRange::between(0.25, 20));
  method.optional({"perimeter", "L", "length of edges held in trenches"},
                  &BlanketAnchorsInputs::perimeter, unit::foot, AllowedRange::between(0, 1e6),
                  "no edges counted");
  method.optional({"edge_spacing", "s", "spacing along the edges"},
                  &BlanketAnchorsInputs::edge_spacing, unit::foot, AllowedRange::between(0.25, 20),
                  "the spacing of the grid");
  using Option = ChoiceOption<AnchorPlace>;
  method.choice({"place", "", "where the blanket lies"}, &BlanketAnchorsInputs::place,
                {Option{AnchorPlace::gentle_slope, "gentle-slope", "3H:1V or flatter"},
                 Option{AnchorPlace::steep_slope, "steep-slope", "steeper than 3H:1V"},
                 Option{AnchorPlace::channel, "channel", "in a channel or high flow"}});
  method.output({"per_square_yard", "ρ", "for each square yard"},
                &BlanketAnchorsResult::per_square_yard, unit::number);
  method.output({"wanted_per_square_yard", "ρ_w", "usual for each square yard"},
                &BlanketAnchorsResult::wanted_per_square_yard, unit::number);
  method.output({"wanted_spacing", "g_w", "grid as dense as usual"},
                &BlanketAnchorsResult::wanted_spacing, unit::foot);
  method.output({"in_field", "N_f", "in the field"}, &BlanketAnchorsResult::in_field, unit::number);
  method.output({"along_edges", "N_e", "along the edges"}, &BlanketAnchorsResult::along_edges,
                unit::number);
  method.output({"total", "N", "in all"}, &BlanketAnchorsResult::total, unit::number);
  method.limit({"Grid at least as dense as usual", practice_of_blanket_anchors},
               [](const BlanketAnchorsInputs& in) {
                 const double yards = in.spacing.feet() / 3;
                 return 1 / (yards * yards) >= wanted_density(in.place) - 1e-9;
               });
  method.limit({"Edges held every 1 to 3 ft", guideline}, [](const BlanketAnchorsInputs& in) {
    const double feet = in.edge_spacing.value_or(in.spacing).feet();
    return !in.perimeter || (feet > 1 - 1e-9 && feet < 3 + 1e-9);
  });
  return method;
}

}  // namespace

Expected<BlanketAnchorsResult> blanket_anchors(const BlanketAnchorsInputs& inputs, Steps& steps) {
  const double A = inputs.area.square_feet() / 9;  // yd²
  const double g = inputs.spacing.feet();
  const double rho = 9 / (g * g);
  const double wanted = wanted_density(inputs.place);

  BlanketAnchorsResult result;
  result.per_square_yard = Dimensionless::number(rho);
  result.wanted_per_square_yard = Dimensionless::number(wanted);
  result.wanted_spacing = Length::feet(std::sqrt(9 / wanted));
  result.in_field = Dimensionless::number(rounded_up(A * rho));
  steps.given("A", "area that is covered", measure(inputs.area));
  steps.given("g", "spacing of the grid", measure(inputs.spacing));
  steps.computed("ρ", "for each square yard", "9/g² (g in ft)", measure(result.per_square_yard));
  steps.given("ρ_w", "usual for each square yard", measure(result.wanted_per_square_yard),
              practice_of_blanket_anchors);
  steps.computed("N_f", "in the field", "A·ρ, rounded up", measure(result.in_field));
  if (inputs.perimeter) {
    const Length spacing = inputs.edge_spacing.value_or(inputs.spacing);
    result.along_edges = Dimensionless::number(rounded_up(*inputs.perimeter / spacing) + 1);
    steps.given("L", "length of edges held in trenches", measure(*inputs.perimeter));
    steps.given("s", "spacing along the edges", measure(spacing));
    steps.computed("N_e", "along the edges", "L/s + 1", measure(result.along_edges));
  }
  result.total = result.in_field + result.along_edges;
  steps.computed("N", "in all", "N_f + N_e", measure(result.total));
  return result;
}

const Method& blanket_anchors_method() {
  static const TypedMethod<BlanketAnchorsInputs, BlanketAnchorsResult> method =
      build_blanket_anchors();
  return method;
}

}  // namespace proofstone
