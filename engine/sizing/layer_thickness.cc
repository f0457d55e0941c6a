#include "engine/sizing/layer_thickness.h"

#include <algorithm>
#include <optional>

#include "engine/method/typed_method.h"

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

struct Inputs {
  std::optional<Length> d50_upper;
  std::optional<Length> d100_upper;
  std::optional<Length> d50_nominal;
  /// Of the nominal D50, where the class's own manual states it.
  std::optional<Dimensionless> stated_multiple;
  Placement placement = Placement::dry;
};

struct Result {
  Length general;  ///< by the general rule, before the under-water factor
  Length least;
  Length common_low;   ///< 1.75·D50; 0 while no D50 is known
  Length common_high;  ///< 2·D50
  std::string governed_by;
};

/// Raises `thickness` to `other` and remembers why.
void take_larger(Length other, const char* why, Length& thickness, std::string& governed_by) {
  if (!(other > thickness)) return;
  thickness = other;
  governed_by = why;
}

void general_thickness(const Inputs& in, Result& result, Steps& steps) {
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
std::optional<Length> median_for_common_practice(const Inputs& in) {
  return in.d50_nominal ? in.d50_nominal : in.d50_upper;
}

Expected<Result> compute(const Inputs& in, Steps& steps) {
  const bool stated = in.stated_multiple && in.d50_nominal;
  if (in.stated_multiple && !in.d50_nominal) {
    return Problem{"missing-input", "A stated multiple needs the nominal median size.", "",
                   "/d50_nominal", "a length"};
  }
  if (!stated && !in.d50_upper && !in.d100_upper) {
    return Problem{"missing-input",
                   "Neither the upper limit of D50, nor the largest stone, nor a stated multiple "
                   "is known.",
                   "", "/d50_upper", "a length"};
  }
  Result result;
  general_thickness(in, result, steps);
  result.least = result.general;
  if (stated) {
    const Length own = in.stated_multiple->number() * *in.d50_nominal;
    steps.given("k", "multiple of the nominal D50 in the class's own manual",
                measure(*in.stated_multiple));
    steps.computed("t", "thickness by the class's own manual, which goes before the general rule",
                   "k·D50", measure(own));
    result.least = least_anywhere;
    result.governed_by = "12 in, the least of any layer";
    take_larger(own, "the multiple of D50 in the class's own manual", result.least,
                result.governed_by);
  }
  if (in.placement == Placement::under_water) {
    result.least = under_water_factor * result.least;
    result.governed_by += ", half as much again under water";
    steps.given("k_w", "factor for rock placed under water",
                measure(Dimensionless::number(under_water_factor)), general_rule);
  }
  steps.computed("t", "least layer thickness", "", measure(result.least));
  if (const auto median = median_for_common_practice(in)) {
    result.common_low = common_low_multiple * *median;
    result.common_high = common_high_multiple * *median;
    steps.computed("t", "usual thickness, from", "1.75·D50", measure(result.common_low),
                   common_rule);
    steps.computed("t", "usual thickness, to", "2·D50", measure(result.common_high), common_rule);
  }
  return result;
}

TypedMethod<Inputs, Result> build() {
  MethodDescription about;
  about.id = "layer-thickness";
  about.title = "Thickness of a rock layer";
  about.purpose = "Least thickness of a layer of rock, from the upper limits of its sizes.";
  about.group = MethodGroup::layer;
  about.sources = {
      {"USACE EM 1110-2-1601 (1970)",
       "riprap gradation criteria, layer thickness (1): D100 and "
       "1.5·D50",
       SourceStanding::published},
      {"USACE EM 1110-2-1601 (1994)", "para. 3-2h: 12 in, under water", SourceStanding::memory},
      {"FHWA HEC-23 Vol. 2 (2009)", "Design Guideline 4", SourceStanding::memory},
      {"trade", "layers of 1.75 to 2 median sizes", SourceStanding::common_practice}};
  about.cautions = {
      "Add 6 to 12 in, and larger stone with it, where heavy debris, ice or waves strike.",
      "Quarry-run rock in place of graded rock takes 1.5 to 2 times the thickness."};
  TypedMethod<Inputs, Result> method(about, &compute);
  method.optional({"d50_upper", "D50", "median size, upper limit of the band"}, &Inputs::d50_upper,
                  unit::foot, AllowedRange::positive_to(30), "not known", LengthUse::rock);
  method.optional({"d100_upper", "D100", "largest stone, upper limit of the band"},
                  &Inputs::d100_upper, unit::foot, AllowedRange::positive_to(50), "not known",
                  LengthUse::rock);
  method.optional({"d50_nominal", "D50", "median size the class is named by"}, &Inputs::d50_nominal,
                  unit::foot, AllowedRange::positive_to(30), "not known", LengthUse::rock);
  method.optional({"stated_multiple", "k", "multiple of the nominal D50 in the class's own manual"},
                  &Inputs::stated_multiple, unit::number, AllowedRange::between(1, 5),
                  "the general rule");
  method.choice({"placement", "", "where the rock is placed"}, &Inputs::placement,
                {ChoiceOption<Placement>{Placement::dry, "dry", "above water"},
                 {Placement::under_water, "under-water", "through water"}});
  method.output({"general", "t", "least thickness by the general rule, in the dry"},
                &Result::general, unit::foot);
  method.output({"least", "t", "least layer thickness"}, &Result::least, unit::foot);
  method.output({"common_low", "t", "usual thickness, from 1.75 median sizes"}, &Result::common_low,
                unit::foot);
  method.output({"common_high", "t", "usual thickness, to 2 median sizes"}, &Result::common_high,
                unit::foot);
  return method;
}

/// The largest stone a class allows: as stated, or where its coarse limit comes to 100 %.
std::optional<Length> largest_stone(const RockClass& rock_class) {
  if (rock_class.largest_stone) return rock_class.largest_stone;
  const auto size = rock_class.band.largest_size_at(100);
  return size ? std::optional<Length>(*size) : std::nullopt;
}

}  // namespace

Expected<LayerThickness> least_layer_thickness(const RockClass& rock_class, Placement placement) {
  Inputs in;
  in.d50_nominal = rock_class.nominal_d50;
  if (const auto size = rock_class.band.largest_size_at(50)) in.d50_upper = *size;
  in.d100_upper = largest_stone(rock_class);
  if (rock_class.thickness_in_d50) {
    in.stated_multiple = Dimensionless::number(*rock_class.thickness_in_d50);
  }
  in.placement = placement;
  LayerThickness thickness;
  const auto result = compute(in, thickness.steps);
  if (!result) return result.problems();
  thickness.least = result->least;
  thickness.governed_by = result->governed_by;
  return thickness;
}

const Method& layer_thickness_method() {
  static const TypedMethod<Inputs, Result> method = build();
  return method;
}

}  // namespace proofstone
