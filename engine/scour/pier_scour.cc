#include "engine/scour/pier_scour.h"

#include <algorithm>
#include <cmath>

#include "engine/method/typed_method.h"
#include "engine/scour/competent_velocity.h"

namespace proofstone {

namespace {

const char* const page_of_pier_scour = "FHWA HEC-18 (2012) eq. 7.1 (from memory; confirm)";
const char* const wide_page = "FHWA HEC-18 (2012), wide piers (from memory; confirm)";

double nose_factor(PierShape nose, Angle attack) {
  if (attack > Angle::degrees(5)) return 1.0;
  switch (nose) {
    case PierShape::square:
      return 1.1;
    case PierShape::sharp:
      return 0.9;
    case PierShape::round:
    case PierShape::circular_cylinder:
    case PierShape::group_of_cylinders:
      break;
  }
  return 1.0;
}

double attack_factor(const PierScourInputs& in) {
  if (in.nose == PierShape::circular_cylinder) return 1.0;
  const double slenderness = std::min(12.0, in.pier_length / in.pier_width);
  const double theta = in.attack_angle.radians();
  return std::pow(std::cos(theta) + slenderness * std::sin(theta), 0.65);
}

double bed_factor(PierBed bed) {
  switch (bed) {
    case PierBed::medium_dunes:
      return 1.2;
    case PierBed::large_dunes:
      return 1.3;
    case PierBed::clear_water:
    case PierBed::plane_bed:
    case PierBed::small_dunes:
      break;
  }
  return 1.1;
}

/// 1 unless a wide pier stands in shallow, tranquil water over fine bed. Never above 1.
double wide_pier_factor(const PierScourInputs& in, double Fr) {
  const double y_a = in.depth / in.pier_width;
  const bool applies = in.bed_grain && y_a < 0.8 && in.pier_width / *in.bed_grain > 50 && Fr < 1;
  if (!applies) return 1;
  const bool at_rest = in.velocity < critical_velocity(in.depth, *in.bed_grain);
  const double Kw = at_rest ? 2.58 * std::pow(y_a, 0.34) * std::pow(Fr, 0.65)
                            : 1.0 * std::pow(y_a, 0.13) * std::pow(Fr, 0.25);
  return std::min(1.0, Kw);
}

/// Most scour in pier widths, where the source has a rule of thumb for it.
std::optional<double> widths_at_most(const PierScourInputs& in, double Fr) {
  const bool round = in.nose == PierShape::round || in.nose == PierShape::circular_cylinder;
  const bool in_line = in.nose == PierShape::circular_cylinder || !(in.attack_angle.radians() > 0);
  if (!round || !in_line) return std::nullopt;
  return Fr <= 0.8 ? 2.4 : 3.0;
}

void describe_pier_scour_inputs(TypedMethod<PierScourInputs, PierScourResult>& method) {
  method.required({"depth", "y1", "depth directly upstream of the pier"}, &PierScourInputs::depth,
                  unit::foot, AllowedRange::positive_to(200));
  method.required({"velocity", "V1", "velocity directly upstream of the pier"},
                  &PierScourInputs::velocity, unit::foot_per_second, AllowedRange::positive_to(60));
  method.required({"pier_width", "a", "width of the pier"}, &PierScourInputs::pier_width,
                  unit::foot, AllowedRange::positive_to(300));
  method.required({"pier_length", "L", "length of the pier"}, &PierScourInputs::pier_length,
                  unit::foot, AllowedRange::positive_to(1000));
  method.choice({"nose", "K1", "shape of the nose"}, &PierScourInputs::nose,
                {ChoiceOption<PierShape>{PierShape::square, "square", "square: 1.1"},
                 {PierShape::round, "round", "round: 1.0"},
                 {PierShape::circular_cylinder, "circular-cylinder", "circular cylinder: 1.0"},
                 {PierShape::group_of_cylinders, "group-of-cylinders", "group of cylinders: 1.0"},
                 {PierShape::sharp, "sharp", "sharp: 0.9"}});
  method.defaulted({"attack_angle", "θ", "angle between the flow and the pier"},
                   &PierScourInputs::attack_angle, unit::degree, AllowedRange::between(0, 90));
  method.choice({"bed", "K3", "condition of the bed"}, &PierScourInputs::bed,
                {ChoiceOption<PierBed>{PierBed::clear_water, "clear-water", "clear water: 1.1"},
                 {PierBed::plane_bed, "plane-bed", "plane bed or antidunes: 1.1"},
                 {PierBed::small_dunes, "small-dunes", "dunes of 2 to 10 ft: 1.1"},
                 {PierBed::medium_dunes, "medium-dunes", "dunes of 10 to 30 ft: 1.2"},
                 {PierBed::large_dunes, "large-dunes", "dunes of 30 ft and more: 1.3"}});
  method.optional({"bed_grain", "D50", "median grain size of the bed"}, &PierScourInputs::bed_grain,
                  unit::foot, AllowedRange::positive_to(5),
                  "no reduction for wide piers in shallow flow", LengthUse::rock);
}

TypedMethod<PierScourInputs, PierScourResult> build_pier_scour() {
  MethodDescription about;
  about.id = "pier-scour";
  about.title = "Pier scour, CSU equation";
  about.purpose =
      "Depth of the local scour hole at a bridge pier, for the depth to which rock or footing must "
      "reach.";
  about.group = MethodGroup::scour;
  about.sources = {{"FHWA HEC-18, Evaluating Scour at Bridges (2012)", "eq. 7.1 and its factors",
                    SourceStanding::memory}};
  about.cautions = {
      "Rock at a pier is a countermeasure: a bridge stands on foundations below the scour.",
      "Add contraction scour and long-term lowering of the bed; debris widens the pier."};
  TypedMethod<PierScourInputs, PierScourResult> method(about, &pier_scour);
  describe_pier_scour_inputs(method);
  method.output({"k1", "K1", "factor of the nose"}, &PierScourResult::k1, unit::number);
  method.output({"k2", "K2", "factor of the angle of attack"}, &PierScourResult::k2, unit::number);
  method.output({"k3", "K3", "factor of the bed"}, &PierScourResult::k3, unit::number);
  method.output({"wide_pier_factor", "Kw", "factor of wide piers"},
                &PierScourResult::wide_pier_factor, unit::number);
  method.output({"froude_number", "Fr1", "Froude number upstream"}, &PierScourResult::froude_number,
                unit::number);
  method.output({"scour", "ys", "pier scour"}, &PierScourResult::scour, unit::foot);
  return method;
}

}  // namespace

Expected<PierScourResult> pier_scour(const PierScourInputs& inputs, Steps& steps) {
  const double y1 = inputs.depth.feet();
  const double a = inputs.pier_width.feet();
  if (inputs.pier_length < inputs.pier_width && inputs.nose != PierShape::circular_cylinder) {
    return Problem{"pier-shorter-than-wide", "The pier is shorter than it is wide.", "",
                   "/pier_length", "at least the pier width"};
  }
  const double Fr = inputs.velocity.feet_per_second() / std::sqrt(g_us * y1);
  const double K1 = nose_factor(inputs.nose, inputs.attack_angle);
  const double K2 = attack_factor(inputs);
  const double K3 = bed_factor(inputs.bed);
  const double Kw = wide_pier_factor(inputs, Fr);
  double ys = 2.0 * K1 * K2 * K3 * std::pow(a / y1, 0.65) * std::pow(Fr, 0.43) * y1;

  steps.given("y1", "depth upstream", measure(inputs.depth));
  steps.given("a", "pier width", measure(inputs.pier_width));
  steps.computed("Fr1", "Froude number upstream", "V1/√(g·y1), g = 32.174 ft/s²", measure(Fr));
  steps.given("K1", "factor of the nose; 1.0 beyond 5° of attack", measure(K1), page_of_pier_scour);
  steps.computed("K2", "factor of the angle of attack", "(cos θ + (L/a)·sin θ)^0.65, L/a ≤ 12",
                 measure(K2), page_of_pier_scour);
  steps.given("K3", "factor of the bed", measure(K3), page_of_pier_scour);
  steps.computed("ys", "pier scour", "2.0·K1·K2·K3·(a/y1)^0.65·Fr1^0.43·y1",
                 measure(Length::feet(ys)), page_of_pier_scour);
  if (Kw < 1) {
    ys *= Kw;
    steps.computed("ys", "pier scour of a wide pier in shallow flow", "Kw·ys",
                   measure(Length::feet(ys)), wide_page);
  }
  const auto widths = widths_at_most(inputs, Fr);
  if (widths) {
    steps.computed("ys_max", "note, not used: rule of thumb for a round nose in line with the flow",
                   "2.4·a where Fr1 ≤ 0.8, otherwise 3.0·a", measure(Length::feet(*widths * a)),
                   page_of_pier_scour);
  }
  PierScourResult result;
  result.k1 = Dimensionless::number(K1);
  result.k2 = Dimensionless::number(K2);
  result.k3 = Dimensionless::number(K3);
  result.wide_pier_factor = Dimensionless::number(Kw);
  result.froude_number = Dimensionless::number(Fr);
  result.scour = Length::feet(ys);
  return result;
}

const Method& pier_scour_method() {
  static const TypedMethod<PierScourInputs, PierScourResult> method = build_pier_scour();
  return method;
}

}  // namespace proofstone
