#include "engine/sizing/superelevation.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

enum class Regime { tranquil, rapid };
enum class Shape { rectangular, trapezoidal };
enum class Curve { simple, spiral, spiral_banked };

struct SuperelevationInputs {
  SuperelevationForm form = SuperelevationForm::usace;
  Velocity velocity;
  Length top_width;
  Length bend_radius;
  Regime regime = Regime::tranquil;
  Shape shape = Shape::trapezoidal;
  Curve curve = Curve::simple;
  Acceleration gravity = standard_gravity;
};

struct SuperelevationResult {
  Length rise;
  Length bank_to_bank;
};

/// C of EM 1110-2-1601 Table 2-4; nothing for a row that the table does not have.
std::optional<double> table_coefficient(const SuperelevationInputs& in) {
  if (in.curve == Curve::simple) return in.regime == Regime::tranquil ? 0.5 : 1.0;
  if (in.regime == Regime::tranquil) return std::nullopt;
  if (in.shape == Shape::rectangular) return 0.5;
  if (in.curve == Curve::spiral) return 1.0;
  return std::nullopt;
}

/// V²·W/(g·r).
double velocity_head_rise(const SuperelevationInputs& in) {
  const double v = in.velocity.meters_per_second();
  return v * v * in.top_width.meters() /
         (in.gravity.meters_per_second_squared() * in.bend_radius.meters());
}

Expected<SuperelevationResult> by_table(const SuperelevationInputs& in, Steps& steps) {
  const auto c = table_coefficient(in);
  if (!c) {
    return Problem{"not-in-table", "The table has no coefficient for this flow, section and curve.",
                   "", "/curve",
                   "simple curves; spirals in rapid flow, banked ones in rectangular sections"};
  }
  SuperelevationResult result;
  result.rise = Length::meters(*c * velocity_head_rise(in));
  result.bank_to_bank = 2 * result.rise;
  steps.given("C", "coefficient for flow, section and curve", measure(*c),
              superelevation_source().sentence());
  steps.computed("Δy", "rise above the mean level at the outer bank", "C·V²·W/(g·r)",
                 measure(result.rise), superelevation_source().sentence());
  return result;
}

Expected<SuperelevationResult> by_halves(const SuperelevationInputs& in, Steps& steps) {
  SuperelevationResult result;
  result.bank_to_bank = Length::meters(velocity_head_rise(in));
  result.rise = 0.5 * result.bank_to_bank;
  steps.computed("Δd", "from the inner to the outer bank", "V²·W/(g·r)",
                 measure(result.bank_to_bank), "FHWA HEC-22 eq. 5-11");
  steps.computed("Δd/2", "rise above the mean level at the outer bank", "Δd/2",
                 measure(result.rise), "FHWA HEC-22 eq. 5-11");
  return result;
}

Expected<SuperelevationResult> by_radii(const SuperelevationInputs& in, Steps& steps) {
  const double outer = in.bend_radius.meters() + in.top_width.meters() / 2;
  const double inner = in.bend_radius.meters() - in.top_width.meters() / 2;
  if (!(inner > 0)) {
    return Problem{"radius-too-small", "The inner bank would lie beyond the centre of the bend.",
                   "", "/bend_radius", "a radius above half the width"};
  }
  const double v = in.velocity.meters_per_second();
  SuperelevationResult result;
  result.bank_to_bank =
      Length::meters(v * v / in.gravity.meters_per_second_squared() * std::log(outer / inner));
  result.rise = 0.5 * result.bank_to_bank;
  steps.computed("Δz", "from the inner to the outer bank", "V²/g·ln((r + W/2)/(r − W/2))",
                 measure(result.bank_to_bank), "FHWA HDS-6 sec. 2.7.3 (from memory; confirm)");
  steps.computed("Δz/2", "rise above the mean level at the outer bank", "Δz/2",
                 measure(result.rise));
  return result;
}

Expected<SuperelevationResult> compute_superelevation(const SuperelevationInputs& inputs,
                                                      Steps& steps) {
  steps.given("V", "mean velocity", measure(inputs.velocity));
  steps.given("W", "width of the water surface", measure(inputs.top_width));
  steps.given("r", "centreline radius of the bend", measure(inputs.bend_radius));
  steps.given("g", "gravity", measure(inputs.gravity));
  switch (inputs.form) {
    case SuperelevationForm::usace:
      return by_table(inputs, steps);
    case SuperelevationForm::half:
      return by_halves(inputs, steps);
    case SuperelevationForm::log_radii:
      return by_radii(inputs, steps);
  }
  return SuperelevationResult{};
}

void describe_superelevation_inputs(
    TypedMethod<SuperelevationInputs, SuperelevationResult>& method) {
  method.choice({"form", "", "which published form"}, &SuperelevationInputs::form,
                {{SuperelevationForm::usace, "usace", "C·V²·W/(g·r) above the mean level"},
                 {SuperelevationForm::half, "half-of-full-difference",
                  "V²·W/(g·r) from bank to bank, half of it on each side"},
                 {SuperelevationForm::log_radii, "radii",
                  "V²/g·ln(r_o/r_i) from bank to bank, half of it on each side"}});
  method.required({"velocity", "V", "mean velocity"}, &SuperelevationInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(100));
  method.required({"top_width", "W", "width of the water surface"},
                  &SuperelevationInputs::top_width, unit::foot, AllowedRange::positive_to(1e5));
  method.required({"bend_radius", "r", "centreline radius of the bend"},
                  &SuperelevationInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6));
  method.choice({"regime", "", "flow"}, &SuperelevationInputs::regime,
                {{Regime::tranquil, "tranquil", "Froude number below 1"},
                 {Regime::rapid, "rapid", "Froude number above 1"}});
  method.choice({"shape", "", "section"}, &SuperelevationInputs::shape,
                {{Shape::rectangular, "rectangular", "upright walls"},
                 {Shape::trapezoidal, "trapezoidal", "sloping banks"}});
  method.choice({"curve", "", "curve"}, &SuperelevationInputs::curve,
                {{Curve::simple, "simple", "circular"},
                 {Curve::spiral, "spiral", "with spiral transitions"},
                 {Curve::spiral_banked, "spiral-banked", "with spirals and a banked bottom"}});
  method.defaulted({"gravity", "g", "gravity"}, &SuperelevationInputs::gravity,
                   unit::foot_per_second_squared, AllowedRange::between(32, 32.4));
}

TypedMethod<SuperelevationInputs, SuperelevationResult> build_superelevation() {
  MethodDescription about;
  about.id = "superelevation";
  about.title = "Superelevation of the water in a bend";
  about.purpose = "How far the water stands higher at the outer bank of a bend.";
  about.group = MethodGroup::water;
  about.sources = {superelevation_source(),
                   {"FHWA HEC-22", "eq. 5-11", SourceStanding::published},
                   {"FHWA HDS-6 (2001)", "sec. 2.7.3", SourceStanding::memory}};
  about.cautions = {
      "In rapid flow cross waves run on below the bend and stand higher than this in places."};
  TypedMethod<SuperelevationInputs, SuperelevationResult> method(about, &compute_superelevation);
  describe_superelevation_inputs(method);
  method.output({"rise", "Δy", "rise above the mean level at the outer bank"},
                &SuperelevationResult::rise, unit::foot);
  method.output({"bank_to_bank", "Δz", "difference from the inner to the outer bank"},
                &SuperelevationResult::bank_to_bank, unit::foot);
  method.limit({"tranquil flow for the forms by halves and by radii", "FHWA HEC-22 eq. 5-11"},
               [](const SuperelevationInputs& in) {
                 return in.form == SuperelevationForm::usace || in.regime == Regime::tranquil;
               });
  return method;
}

}  // namespace

Length superelevation_rise(Velocity velocity, Length top_width, Length bend_radius, bool rapid) {
  SuperelevationInputs in;
  in.velocity = velocity;
  in.top_width = top_width;
  in.bend_radius = bend_radius;
  return Length::meters((rapid ? 1.0 : 0.5) * velocity_head_rise(in));
}

const Source& superelevation_source() {
  static const Source source{"USACE EM 1110-2-1601 (1994)", "Table 2-4", SourceStanding::memory};
  return source;
}

const Method& superelevation_method() {
  static const TypedMethod<SuperelevationInputs, SuperelevationResult> method =
      build_superelevation();
  return method;
}

}  // namespace proofstone
