#include "engine/filter/filter_thickness.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<FilterThicknessInputs, FilterThicknessResult> build_filter_thickness() {
  MethodDescription about;
  about.id = "filter-thickness";
  about.title = "Thickness of a filter layer";
  about.purpose = "How thick a layer of granular filter or bedding must be, dry or under water.";
  about.group = MethodGroup::filter;
  about.sources = {
      {"FHWA HEC-11 (1989); HEC-23 Design Guideline 16",
       "6 in for a single layer, 4 in for each of several; half as much again under water",
       SourceStanding::memory},
      {"trade", "1.5 times the largest grain", SourceStanding::common_practice}};
  about.cautions = {
      "Thicker where the curves of filter and soil are less alike: HEC-11 goes to 15 "
      "in for a single layer, 8 in for each of several (from memory)."};
  TypedMethod<FilterThicknessInputs, FilterThicknessResult> method(about, &filter_thickness);
  method.optional({"largest_grain", "D100", "largest grain of the layer"},
                  &FilterThicknessInputs::largest_grain, unit::inch, AllowedRange::positive_to(100),
                  "not looked at", LengthUse::rock);
  method.choice({"layers", "", "granular layers under the rock"}, &FilterThicknessInputs::layers,
                {ChoiceOption<FilterLayers>{FilterLayers::single, "single", "one"},
                 {FilterLayers::several, "several", "more than one"}});
  method.choice({"placing", "", "where it is placed"}, &FilterThicknessInputs::placing,
                {ChoiceOption<FilterPlacing>{FilterPlacing::dry, "dry", "above water"},
                 {FilterPlacing::under_water, "under-water", "through water"}});
  method.output({"thickness", "t", "least thickness of the layer"},
                &FilterThicknessResult::thickness, unit::inch, LengthUse::rock);
  return method;
}

}  // namespace

Expected<FilterThicknessResult> filter_thickness(const FilterThicknessInputs& in, Steps& steps) {
  const auto& sources = filter_thickness_method().description().sources;
  Length least = Length::inches(in.layers == FilterLayers::single ? 6 : 4);
  steps.given_rock("t", "least of such a layer, placed dry", least, sources.front().sentence());
  if (in.largest_grain) {
    least = std::max(least, 1.5 * *in.largest_grain);
    steps.computed_rock("t", "and for its largest grain", "not below 1.5·D100", least,
                        sources.back().sentence());
  }
  if (in.placing == FilterPlacing::under_water) {
    least = 1.5 * least;
    steps.computed_rock("t", "placed under water", "1.5·t", least, sources.front().sentence());
  }
  return FilterThicknessResult{least};
}

const Method& filter_thickness_method() {
  static const TypedMethod<FilterThicknessInputs, FilterThicknessResult> method =
      build_filter_thickness();
  return method;
}

}  // namespace proofstone
