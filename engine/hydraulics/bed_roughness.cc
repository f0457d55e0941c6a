#include "engine/hydraulics/bed_roughness.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

enum class Formula {
  limerinos,
  jarrett,
  strickler,
  riprap_mean,
  riprap_velocity,
  riprap_capacity,
  blodgett,
  ferguson,
};

struct BedRoughnessInputs {
  Formula formula = Formula::limerinos;
  std::optional<Length> hydraulic_radius;
  std::optional<Length> depth;
  std::optional<Slope> slope;
  std::optional<Length> d50;
  std::optional<Length> d84;
  std::optional<Length> d90;
};

struct BedRoughnessResult {
  Dimensionless roughness;
};

/// What a formula made of its inputs; not a number where the formula has no meaning.
struct Answer {
  double n = 0;
  std::string formula;
  std::string source;
};

const char* const from_memory = " (from memory; confirm)";

/// n = 0.0926·R^(1/6)/(1.16 + 2·log₁₀(R/D84)), feet.
Answer limerinos(const BedRoughnessInputs& in) {
  const double r = in.hydraulic_radius->feet();
  const double d84 = in.d84->feet();
  const double below = 1.16 + 2 * std::log10(r / d84);
  return {below > 0 ? 0.0926 * std::pow(r, 1.0 / 6.0) / below : -1,
          "0.0926·R^(1/6)/(1.16 + 2·log₁₀(R/D84)), R and D84 in ft",
          std::string("Limerinos, USGS WSP 1898-B (1970)") + from_memory};
}

/// n = 0.39·S^0.38·R^−0.16, feet.
Answer jarrett(const BedRoughnessInputs& in) {
  return {0.39 * std::pow(in.slope->ratio(), 0.38) * std::pow(in.hydraulic_radius->feet(), -0.16),
          "0.39·S^0.38·R^−0.16, R in ft",
          std::string("Jarrett, J. Hydraul. Eng. 110 (1984)") + from_memory};
}

Answer strickler(const BedRoughnessInputs& in) {
  return {std::pow(in.d50->meters(), 1.0 / 6.0) / 21.1, "D50^(1/6)/21.1, D50 in m",
          std::string("Strickler, as textbooks give it") + from_memory};
}

/// n = K·D90(min)^(1/6), feet.
Answer riprap(const BedRoughnessInputs& in, double k) {
  return {k * std::pow(in.d90->feet(), 1.0 / 6.0), fmt::format("{:.3f}·D90^(1/6), D90 in ft", k),
          "WES Streambank Handbook (1997), App. A eq. A.2"};
}

/// n = 0.262·d^(1/6)/(2.25 + 5.23·log₁₀(d/D50)), feet.
Answer blodgett(const BedRoughnessInputs& in) {
  const double d = in.depth->feet();
  const double below = 2.25 + 5.23 * std::log10(d / in.d50->feet());
  return {below > 0 ? 0.262 * std::pow(d, 1.0 / 6.0) / below : -1,
          "0.262·d^(1/6)/(2.25 + 5.23·log₁₀(d/D50)), d and D50 in ft",
          std::string("FHWA HEC-15 3rd ed. (2005) eq. 6.1") + from_memory};
}

/// U/u* = a₁·a₂·x/√(a₁² + a₂²·x^(5/3)), x = R/D84; n = R^(1/6)/(√g·U/u*), SI.
Answer ferguson(const BedRoughnessInputs& in) {
  constexpr double a1 = 6.5;
  constexpr double a2 = 2.5;
  const double r = in.hydraulic_radius->meters();
  const double x = r / in.d84->meters();
  const double ratio = a1 * a2 * x / std::sqrt(a1 * a1 + a2 * a2 * std::pow(x, 5.0 / 3.0));
  const double g = standard_gravity.meters_per_second_squared();
  return {std::pow(r, 1.0 / 6.0) / (std::sqrt(g) * ratio),
          "R^(1/6)/(√g·U/u*), U/u* = 16.25·x/√(6.5² + 2.5²·x^(5/3)), x = R/D84, SI",
          std::string("Ferguson, Water Resour. Res. 43 (2007)") + from_memory};
}

/// The inputs a formula asks for and does not have.
Problems missing(const BedRoughnessInputs& in) {
  Problems problems;
  const auto need = [&](bool there, const char* key, const char* what) {
    if (there) return;
    problems.push_back({"missing-input", fmt::format("This formula needs {}.", what), "",
                        std::string("/") + key, ""});
  };
  const auto need_radius = [&] {
    need(in.hydraulic_radius.has_value(), "hydraulic_radius", "the hydraulic radius");
  };
  switch (in.formula) {
    case Formula::limerinos:
    case Formula::ferguson:
      need_radius();
      need(in.d84.has_value(), "d84", "D84 of the bed");
      break;
    case Formula::jarrett:
      need_radius();
      need(in.slope.has_value(), "slope", "the slope of the energy line");
      break;
    case Formula::strickler:
      need(in.d50.has_value(), "d50", "D50 of the bed");
      break;
    case Formula::riprap_mean:
    case Formula::riprap_velocity:
    case Formula::riprap_capacity:
      need(in.d90.has_value(), "d90", "the smallest D90 that the class allows");
      break;
    case Formula::blodgett:
      need(in.depth.has_value(), "depth", "the mean depth");
      need(in.d50.has_value(), "d50", "D50 of the rock");
      break;
  }
  return problems;
}

Answer answer(const BedRoughnessInputs& in) {
  switch (in.formula) {
    case Formula::limerinos:
      return limerinos(in);
    case Formula::jarrett:
      return jarrett(in);
    case Formula::strickler:
      return strickler(in);
    case Formula::riprap_mean:
      return riprap(in, 0.036);
    case Formula::riprap_velocity:
      return riprap(in, 0.034);
    case Formula::riprap_capacity:
      return riprap(in, 0.038);
    case Formula::blodgett:
      return blodgett(in);
    case Formula::ferguson:
      return ferguson(in);
  }
  return {};
}

Expected<BedRoughnessResult> compute_bed_roughness(const BedRoughnessInputs& inputs, Steps& steps) {
  const Problems problems = missing(inputs);
  if (!problems.empty()) return problems;
  if (inputs.hydraulic_radius) {
    steps.given("R", "hydraulic radius", measure(*inputs.hydraulic_radius));
  }
  if (inputs.depth) steps.given("d", "mean depth", measure(*inputs.depth));
  if (inputs.slope) steps.given("S", "slope of the energy line", measure(*inputs.slope));
  if (inputs.d50) steps.given_rock("D50", "median stone", *inputs.d50);
  if (inputs.d84) steps.given_rock("D84", "size that 84 % are smaller than", *inputs.d84);
  if (inputs.d90) steps.given_rock("D90", "smallest D90 that the class allows", *inputs.d90);
  const Answer found = answer(inputs);
  if (!(found.n > 0)) {
    return Problem{"too-shallow",
                   "The water is so shallow over these stones that the formula has no answer.", "",
                   "/formula", "ferguson, which is made for shallow water, or deeper water"};
  }
  BedRoughnessResult result;
  result.roughness = Dimensionless::number(found.n);
  steps.computed("n", "Manning's n", found.formula, measure(result.roughness), found.source);
  return result;
}

bool within(double value, double low, double high) { return value >= low && value <= high; }

void describe_limits(TypedMethod<BedRoughnessInputs, BedRoughnessResult>& method) {
  method.limit({"Limerinos: hydraulic radius 1.02 to 10.9 ft and D84 0.062 to 2.45 ft",
                "Limerinos, USGS WSP 1898-B (1970)"},
               [](const BedRoughnessInputs& in) {
                 return in.formula != Formula::limerinos ||
                        (within(in.hydraulic_radius->feet(), 1.02, 10.9) &&
                         within(in.d84->feet(), 0.062, 2.45));
               });
  method.limit({"Jarrett: slope 0.002 to 0.04 and hydraulic radius 0.5 to 7 ft", "Jarrett (1984)"},
               [](const BedRoughnessInputs& in) {
                 return in.formula != Formula::jarrett ||
                        (within(in.slope->ratio(), 0.002, 0.04) &&
                         within(in.hydraulic_radius->feet(), 0.5, 7));
               });
  method.limit({"Blodgett: depth over D50 from 1.5 to 185", "FHWA HEC-15 3rd ed. (2005) ch. 6"},
               [](const BedRoughnessInputs& in) {
                 return in.formula != Formula::blodgett || within(*in.depth / *in.d50, 1.5, 185);
               });
  method.limit({"Ferguson: hydraulic radius below about four times D84", "Ferguson (2007)"},
               [](const BedRoughnessInputs& in) {
                 return in.formula != Formula::ferguson || *in.hydraulic_radius / *in.d84 < 4;
               });
}

void describe_bed_roughness_inputs(TypedMethod<BedRoughnessInputs, BedRoughnessResult>& method) {
  method.choice(
      {"formula", "", "which formula"}, &BedRoughnessInputs::formula,
      {{Formula::limerinos, "limerinos", "gravel and boulder beds with little vegetation"},
       {Formula::jarrett, "jarrett", "steep mountain streams, by slope and hydraulic radius"},
       {Formula::strickler, "strickler", "flat gravel beds under deep water"},
       {Formula::riprap_mean, "riprap-mean", "riprap, mean of the data"},
       {Formula::riprap_velocity, "riprap-velocity",
        "riprap, low side: for velocity and rock size"},
       {Formula::riprap_capacity, "riprap-capacity",
        "riprap, high side: for capacity and freeboard"},
       {Formula::blodgett, "blodgett", "rock linings by depth over stone"},
       {Formula::ferguson, "ferguson", "shallow water among large stones"}});
  const auto absent = "not known; a formula that needs it says so";
  method.optional({"hydraulic_radius", "R", "hydraulic radius"},
                  &BedRoughnessInputs::hydraulic_radius, unit::foot, AllowedRange::positive_to(500),
                  absent);
  method.optional({"depth", "d", "mean depth, area over top width"}, &BedRoughnessInputs::depth,
                  unit::foot, AllowedRange::positive_to(500), absent);
  method.optional({"slope", "S", "slope of the energy line"}, &BedRoughnessInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1), absent);
  method.optional({"d50", "D50", "median stone"}, &BedRoughnessInputs::d50, unit::foot,
                  AllowedRange::positive_to(30), absent, LengthUse::rock);
  method.optional({"d84", "D84", "size that 84 % of the bed are smaller than"},
                  &BedRoughnessInputs::d84, unit::foot, AllowedRange::positive_to(30), absent,
                  LengthUse::rock);
  method.optional({"d90", "D90", "smallest D90 that the class allows"}, &BedRoughnessInputs::d90,
                  unit::foot, AllowedRange::positive_to(30), absent, LengthUse::rock);
}

TypedMethod<BedRoughnessInputs, BedRoughnessResult> build_bed_roughness() {
  MethodDescription about;
  about.id = "bed-roughness";
  about.title = "Roughness of gravel and rock beds";
  about.purpose = "Manning's n of a gravel, cobble or riprap bed from its stones, depth or slope.";
  about.group = MethodGroup::water;
  about.sources = {
      {"Limerinos, USGS Water-Supply Paper 1898-B (1970)", "formula for n", SourceStanding::memory},
      {"Jarrett, J. Hydraul. Eng. 110 (1984)", "formula for n", SourceStanding::memory},
      {"WES Streambank Handbook (1997)", "App. A eq. A.2", SourceStanding::published},
      {"FHWA HEC-15 3rd ed. (2005)", "eq. 6.1", SourceStanding::memory},
      {"Ferguson, Water Resour. Res. 43 (2007)", "variable power equation",
       SourceStanding::memory}};
  about.cautions = {
      "Grain roughness of a stable bed alone: bends, plants, bars and debris add to it. Check the "
      "rock with a low n and the freeboard with a high one.",
      "Two constants of Strickler's formula are in print that differ by 14 %; the larger one, "
      "1/21.1 in SI, is used here."};
  TypedMethod<BedRoughnessInputs, BedRoughnessResult> method(about, &compute_bed_roughness);
  describe_bed_roughness_inputs(method);
  method.output({"roughness", "n", "Manning's n"}, &BedRoughnessResult::roughness, unit::number);
  describe_limits(method);
  return method;
}

}  // namespace

const Method& bed_roughness_method() {
  static const TypedMethod<BedRoughnessInputs, BedRoughnessResult> method = build_bed_roughness();
  return method;
}

}  // namespace proofstone
