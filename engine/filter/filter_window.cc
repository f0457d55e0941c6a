#include "engine/filter/filter_window.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<FilterWindowInputs, FilterWindowResult> build_filter_window() {
  MethodDescription about;
  about.id = "filter-window";
  about.title = "Sizes of a filter between soil and rock";
  about.purpose = "The sizes that one granular layer must have to stand between a soil and a rock.";
  about.group = MethodGroup::filter;
  about.sources = {{"FHWA HDS-6 (2001)", "Eqs 6.24–6.26 from both sides, as in problem 2 of ch. 6",
                    SourceStanding::published}};
  about.cautions = {
      "The printed example slips twice: \"D50 < 2 mm\" stands where its own line gives 20 mm, and "
      "\"D15 > 20\" where the inequality gives less. What is recomputed stands here."};
  TypedMethod<FilterWindowInputs, FilterWindowResult> method(about, &filter_window);
  const auto size = AllowedRange::positive_to(5000);
  const auto grain = LengthUse::grain;
  method.required({"soil_d15", "d15", "of the soil"}, &FilterWindowInputs::soil_d15,
                  unit::millimeter, size, grain);
  method.required({"soil_d50", "d50", "of the soil"}, &FilterWindowInputs::soil_d50,
                  unit::millimeter, size, grain);
  method.required({"soil_d85", "d85", "of the soil"}, &FilterWindowInputs::soil_d85,
                  unit::millimeter, size, grain);
  method.required({"rock_d15", "D15", "of the rock"}, &FilterWindowInputs::rock_d15,
                  unit::millimeter, size, grain);
  method.required({"rock_d50", "D50", "of the rock"}, &FilterWindowInputs::rock_d50,
                  unit::millimeter, size, grain);
  method.output({"least_d15", "D15F", "more than"}, &FilterWindowResult::least_d15,
                unit::millimeter, grain);
  method.output({"most_d15", "D15F", "less than"}, &FilterWindowResult::most_d15, unit::millimeter,
                grain);
  method.output({"least_d50", "D50F", "more than"}, &FilterWindowResult::least_d50,
                unit::millimeter, grain);
  method.output({"most_d50", "D50F", "less than"}, &FilterWindowResult::most_d50, unit::millimeter,
                grain);
  method.output({"least_d85", "D85F", "more than"}, &FilterWindowResult::least_d85,
                unit::millimeter, grain);
  return method;
}

}  // namespace

Expected<FilterWindowResult> filter_window(const FilterWindowInputs& in, Steps& steps) {
  FilterWindowResult result;
  result.least_d15 = std::max(5 * in.soil_d15, in.rock_d15 / 40);
  result.most_d15 = std::min({40 * in.soil_d15, 5 * in.soil_d85, in.rock_d15 / 5});
  result.least_d50 = in.rock_d50 / 40;
  result.most_d50 = 40 * in.soil_d50;
  result.least_d85 = in.rock_d15 / 5;
  steps.computed_grain("D15F", "more than", "5·d15 and D15/40", result.least_d15);
  steps.computed_grain("D15F", "less than", "40·d15, 5·d85 and D15/5", result.most_d15);
  steps.computed_grain("D50F", "more than", "D50/40", result.least_d50);
  steps.computed_grain("D50F", "less than", "40·d50", result.most_d50);
  steps.computed_grain("D85F", "more than", "D15/5", result.least_d85);
  if (result.least_d15 >= result.most_d15 || result.least_d50 >= result.most_d50) {
    return Problem{"no-single-filter",
                   "No single layer keeps the ratios to the soil and to the rock.", "", "",
                   "two layers or more, or a geotextile"};
  }
  return result;
}

const Method& filter_window_method() {
  static const TypedMethod<FilterWindowInputs, FilterWindowResult> method = build_filter_window();
  return method;
}

}  // namespace proofstone
