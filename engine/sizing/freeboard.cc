#include "engine/sizing/freeboard.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

enum class FreeboardRule {
  usace_rectangular,
  usace_riprap,
  usace_levee,
  hec11_low,
  hec11_high,
  hec22,
  hec22_steep,
  usbr_canal,
  kohs,
};

struct FreeboardInputs {
  FreeboardRule rule = FreeboardRule::usace_riprap;
  Length depth;
  Velocity velocity;
  Length superelevation;
  Length waves;
  Dimensionless canal_coefficient = Dimensionless::number(2.5);
  Length bed_uncertainty;
  Length debris;
};

struct FreeboardResult {
  Length freeboard;
  Length above_mean_level;
};

/// A height and the rule that gives it.
struct Height {
  Length height;
  std::string formula;
  std::string source;
};

Height fixed(double feet, const std::string& source) {
  return {Length::feet(feet), "fixed by the rule", source + " (from memory; confirm)"};
}

/// F = √(C·y), feet.
Height usbr(const FreeboardInputs& in) {
  return {Length::feet(std::sqrt(in.canal_coefficient.number() * in.depth.feet())),
          "√(C·y), ft; C from 1.5 at 20 ft³/s to 2.5 at 3000 ft³/s",
          "Bureau of Reclamation, canals (from memory; confirm)"};
}

/// f_e = √(f_w² + f_v² + f_t²) with f_w = √(σ_z² + (0.06 + 0.06·h)²) and f_v = V²/2g, metres.
Height kohs(const FreeboardInputs& in, Steps& steps) {
  const double sigma = in.bed_uncertainty.meters();
  const double level = 0.06 + 0.06 * in.depth.meters();
  const double fw = std::sqrt(sigma * sigma + level * level);
  const double v = in.velocity.meters_per_second();
  const double fv = v * v / (2 * standard_gravity.meters_per_second_squared());
  const double ft = in.debris.meters();
  steps.given("σ_z", "uncertainty of the bed", measure(in.bed_uncertainty));
  steps.given("f_t", "clearance for floating debris", measure(in.debris));
  steps.computed("f_w", "uncertainty of the level", "√(σ_z² + (0.06 + 0.06·h)²), m",
                 measure(Length::meters(fw)));
  steps.computed("f_v", "waves and run-up against obstacles", "V²/(2·g)",
                 measure(Length::meters(fv)));
  return {Length::meters(std::sqrt(fw * fw + fv * fv + ft * ft)), "√(f_w² + f_v² + f_t²)",
          "Swiss Commission on Flood Protection, KOHS (2013) (from memory; confirm)"};
}

Height height_by(const FreeboardInputs& in, Steps& steps) {
  const std::string usace = "USACE EM 1110-2-1601 (1994)";
  const std::string hec11 = "FHWA HEC-11 (1989)";
  switch (in.rule) {
    case FreeboardRule::usace_rectangular:
      return fixed(2.0, usace);
    case FreeboardRule::usace_riprap:
      return fixed(2.5, usace);
    case FreeboardRule::usace_levee:
      return fixed(3.0, usace);
    case FreeboardRule::hec11_low:
      return fixed(1.0, hec11);
    case FreeboardRule::hec11_high:
      return fixed(2.0, hec11);
    case FreeboardRule::hec22:
      return {Length::feet(0.5), "fixed by the rule", "FHWA HEC-22 sec. 5.2.4"};
    case FreeboardRule::hec22_steep:
      return {in.depth, "the depth of the flow", "FHWA HEC-22 sec. 5.2.4"};
    case FreeboardRule::usbr_canal:
      return usbr(in);
    case FreeboardRule::kohs:
      return kohs(in, steps);
  }
  return {};
}

Expected<FreeboardResult> compute_freeboard(const FreeboardInputs& inputs, Steps& steps) {
  steps.given("h", "depth", measure(inputs.depth));
  steps.given("V", "velocity", measure(inputs.velocity));
  const Height found = height_by(inputs, steps);
  FreeboardResult result;
  result.freeboard = found.height;
  result.above_mean_level = found.height + inputs.superelevation + inputs.waves;
  steps.computed("F", "freeboard", found.formula, measure(result.freeboard), found.source);
  steps.given("Δy", "superelevation at the bank", measure(inputs.superelevation));
  steps.given("H_w", "waves and ice", measure(inputs.waves));
  steps.computed("F+", "top of the lining above the mean water level", "F + Δy + H_w",
                 measure(result.above_mean_level));
  return result;
}

void describe_freeboard_inputs(TypedMethod<FreeboardInputs, FreeboardResult>& method) {
  method.choice(
      {"rule", "", "whose rule"}, &FreeboardInputs::rule,
      {{FreeboardRule::usace_riprap, "usace-riprap", "2.5 ft: trapezoidal linings and riprap"},
       {FreeboardRule::usace_rectangular, "usace-rectangular", "2 ft: rectangular linings"},
       {FreeboardRule::usace_levee, "usace-levee", "3 ft: levees"},
       {FreeboardRule::hec11_low, "hec-11-low", "1 ft: the low end of what is typical"},
       {FreeboardRule::hec11_high, "hec-11-high", "2 ft: the high end of what is typical"},
       {FreeboardRule::hec22, "hec-22", "0.5 ft: permanent roadside channels"},
       {FreeboardRule::hec22_steep, "hec-22-steep",
        "the depth of the flow: steep roadside channels"},
       {FreeboardRule::usbr_canal, "usbr-canal", "√(C·y): canals"},
       {FreeboardRule::kohs, "kohs", "level, velocity head and debris: Swiss rivers"}});
  method.required({"depth", "h", "depth of the design flow"}, &FreeboardInputs::depth, unit::foot,
                  AllowedRange::positive_to(500));
  method.required({"velocity", "V", "velocity of the design flow"}, &FreeboardInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60));
  method.defaulted({"superelevation", "Δy", "rise of the water at this bank of a bend"},
                   &FreeboardInputs::superelevation, unit::foot, AllowedRange::between(0, 50));
  method.defaulted({"waves", "H_w", "allowance for waves and ice"}, &FreeboardInputs::waves,
                   unit::foot, AllowedRange::between(0, 50));
  method.defaulted({"canal_coefficient", "C", "canals: 1.5 at 20 ft³/s to 2.5 at 3000 ft³/s"},
                   &FreeboardInputs::canal_coefficient, unit::number,
                   AllowedRange::between(1.5, 2.5));
  method.defaulted({"bed_uncertainty", "σ_z", "Swiss rivers: uncertainty of the bed"},
                   &FreeboardInputs::bed_uncertainty, unit::foot, AllowedRange::between(0, 50));
  method.defaulted({"debris", "f_t", "Swiss rivers: clearance for floating debris"},
                   &FreeboardInputs::debris, unit::foot, AllowedRange::between(0, 50));
}

TypedMethod<FreeboardInputs, FreeboardResult> build_freeboard() {
  MethodDescription about;
  about.id = "freeboard";
  about.title = "Freeboard";
  about.purpose =
      "How far the top of the rock or bank should stand above the design water, by a named rule.";
  about.group = MethodGroup::water;
  about.sources = {
      {"USACE EM 1110-2-1601 (1994)", "freeboard of channels and levees", SourceStanding::memory},
      {"FHWA HEC-11 (1989)", "extent of protection", SourceStanding::memory},
      {"FHWA HEC-22", "sec. 5.2.4", SourceStanding::published},
      {"Bureau of Reclamation, canals", "freeboard", SourceStanding::memory},
      {"Swiss Commission on Flood Protection, KOHS (2013)", "freeboard", SourceStanding::memory}};
  about.cautions = {"Local criteria go before every rule here; dams and levees have their own."};
  TypedMethod<FreeboardInputs, FreeboardResult> method(about, &compute_freeboard);
  describe_freeboard_inputs(method);
  method.output({"freeboard", "F", "freeboard by the rule"}, &FreeboardResult::freeboard,
                unit::foot);
  method.output({"above_mean_level", "F+", "top of the rock above the mean water level"},
                &FreeboardResult::above_mean_level, unit::foot);
  return method;
}

}  // namespace

const Method& freeboard_method() {
  static const TypedMethod<FreeboardInputs, FreeboardResult> method = build_freeboard();
  return method;
}

}  // namespace proofstone
