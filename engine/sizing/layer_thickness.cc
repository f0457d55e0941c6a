#include "engine/sizing/layer_thickness.h"

#include <cmath>
#include <optional>

#include "engine/rock/size_and_mass.h"

namespace proofstone {

namespace {

constexpr double median_multiple = 1.5;
constexpr double under_water_factor = 1.5;
constexpr double common_low_multiple = 1.75;
constexpr double common_high_multiple = 2.0;
constexpr Length least_anywhere = Length::inches(12);

const char* const general_rule =
    "USACE EM 1110-2-1601 para. 3-2h; FHWA HEC-23 (2009) DG4 (from memory; confirm)";
const char* const common_rule = "common practice";

/// Raises `thickness` to `other` and remembers why.
void take_larger(Length other, const char* why, Length& thickness, std::string& governed_by) {
  if (!(other > thickness)) return;
  thickness = other;
  governed_by = why;
}

Source general_source() {
  return {"USACE EM 1110-2-1601 (1994)", "para. 3-2h; FHWA HEC-23 (2009) DG4 and DG14",
          SourceStanding::memory};
}

/// What the class's own manual states goes before the general rule.
void take_own_multiple(const LayerThicknessInputs& in, LayerThicknessResult& result, Steps& steps) {
  const Length own = in.stated_multiple->number() * *in.d50;
  steps.given("k", "multiple of the nominal D50 in the class's own manual",
              measure(*in.stated_multiple));
  steps.computed("t", "thickness by the class's own manual, which goes before the general rule",
                 "k·D50", measure(own));
  result.least = least_anywhere;
  result.governed_by = "12 in, the least of any layer";
  take_larger(own, "the multiple of D50 in the class's own manual", result.least,
              result.governed_by);
}

void general_thickness(const LayerThicknessInputs& in, LayerThicknessResult& result, Steps& steps) {
  result.general = least_anywhere;
  result.governed_by = "12 in, the least of any layer";
  steps.given("t_min", "least thickness of any layer", measure(least_anywhere), general_rule);
  if (in.d100_upper) {
    steps.given_rock("D100", "largest stone, upper limit", *in.d100_upper);
    take_larger(*in.d100_upper, "the largest stone", result.general, result.governed_by);
  }
  if (in.d50_upper) {
    const Length by_median = median_multiple * *in.d50_upper;
    steps.given_rock("D50", "median size, upper limit", *in.d50_upper);
    steps.computed("t", "thickness by the median size", "1.5·D50", measure(by_median),
                   general_rule);
    take_larger(by_median, "1.5 times the upper-limit median size", result.general,
                result.governed_by);
  }
  steps.computed("t", "least thickness by the general rule", "max(12 in, D100, 1.5·D50)",
                 measure(result.general), general_rule);
}

/// The median size that common practice multiplies.
std::optional<Length> median_for_common_practice(const LayerThicknessInputs& in) {
  return in.d50 ? in.d50 : in.d50_upper;
}

Problems missing_sizes(const LayerThicknessInputs& in) {
  if (in.stated_multiple && !in.d50) {
    return {{"missing-input", "A stated multiple needs the nominal median size.", "",
             "/d50_nominal", "a length"}};
  }
  if (in.stated_multiple || in.d50_upper || in.d100_upper) return {};
  return {{"missing-input",
           "Neither the upper limit of D50, nor the largest stone, nor a stated multiple is known.",
           "", "/d50_upper", "a length"}};
}

void show_common_practice(const LayerThicknessInputs& in, LayerThicknessResult& result,
                          Steps& steps) {
  const auto median = median_for_common_practice(in);
  if (!median) return;
  result.common_low = common_low_multiple * *median;
  result.common_high = common_high_multiple * *median;
  steps.computed("t", "usual thickness, from", "1.75·D50", measure(result.common_low), common_rule);
  steps.computed("t", "usual thickness, to", "2·D50", measure(result.common_high), common_rule);
}

/// The largest stone a class allows: as stated, or where its coarse limit comes to 100 %.
std::optional<Length> largest_stone(const RockClass& rock_class) {
  if (rock_class.largest_stone) return rock_class.largest_stone;
  const auto size = rock_class.band.largest_size_at(100);
  return size ? std::optional<Length>(*size) : std::nullopt;
}

/// Side of the cube of the mass of a stone of this size; the density falls out.
Length side_of_cube(Length size, SizeMeaning meaning) {
  const auto any = Density::kilograms_per_cubic_meter(1000);
  const double mass = stone_mass(size, meaning, any).kilograms();
  return Length::meters(std::pow(mass / any.kilograms_per_cubic_meter(), 1.0 / 3));
}

}  // namespace

Expected<LayerThicknessResult> layer_thickness(const LayerThicknessInputs& inputs, Steps& steps) {
  Problems missing = missing_sizes(inputs);
  if (!missing.empty()) return missing;
  LayerThicknessResult result;
  general_thickness(inputs, result, steps);
  result.least = result.general;
  result.source = general_source();
  if (inputs.stated_multiple) take_own_multiple(inputs, result, steps);
  const auto rule = layer_rule_of(inputs, steps);
  if (!rule) return rule.problems();
  if (*rule && (*rule)->least > result.least) {
    result.least = (*rule)->least;
    result.governed_by = (*rule)->governed_by;
    result.source = (*rule)->source;
  }
  if (inputs.placement == Placement::under_water) {
    result.least = under_water_factor * result.least;
    result.governed_by += ", half as much again under water";
    steps.given("k_w", "factor for rock placed under water",
                measure(Dimensionless::number(under_water_factor)), general_rule);
  }
  steps.computed("t", "least layer thickness", "", measure(result.least));
  show_common_practice(inputs, result, steps);
  return result;
}

LayerThicknessInputs layer_of_class(const RockClass& rock_class, Placement placement,
                                    LayerOfPlace at) {
  LayerThicknessInputs in;
  static_cast<LayerOfPlace&>(in) = at;
  in.placement = placement;
  in.d50 = rock_class.nominal_d50;
  if (const auto size = rock_class.band.largest_size_at(50)) in.d50_upper = *size;
  in.d100_upper = largest_stone(rock_class);
  const auto meaning = rock_class.band.basis().size;
  in.median_cube = side_of_cube(in.d50_upper.value_or(*in.d50), meaning);
  if (in.d100_upper) in.largest_cube = side_of_cube(*in.d100_upper, meaning);
  if (rock_class.thickness_in_d50) {
    in.stated_multiple = Dimensionless::number(*rock_class.thickness_in_d50);
  }
  return in;
}

}  // namespace proofstone
