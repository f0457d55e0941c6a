#include "engine/filter/filter_band.h"

namespace proofstone {
namespace {

TypedMethod<FilterBandInputs, FilterBandResult> build_filter_band() {
  MethodDescription about;
  about.id = "filter-band";
  about.title = "Band of a filter by categories of base soils";
  about.purpose =
      "The gradation band of a granular filter that holds a soil and lets its water out, with its "
      "seven control points.";
  about.group = MethodGroup::filter;
  about.sources = {
      {"NRCS NEH 633 ch. 26 (Oct 1994; Aug 2017)", "base-soil categories and control points",
       SourceStanding::memory},
      {"FEMA (2011); NRCS NEH 633 ch. 26 (2017)",
       "6.5·d85 for dispersive soils and 5·d15, both second-hand", SourceStanding::memory}};
  about.cautions = {"Fines of a filter must not be plastic.",
                    "A soil that was not tested for dispersion is taken as one that does not "
                    "disperse; test clays and silts."};
  TypedMethod<FilterBandInputs, FilterBandResult> method(about, &filter_band);
  describe_gradation(method);
  method.choice({"dispersion", "", "does the soil disperse"}, &FilterBandInputs::dispersion,
                {ChoiceOption<Dispersion>{Dispersion::no, "no", "tested: no"},
                 {Dispersion::yes, "yes", "tested: yes"},
                 {Dispersion::not_tested, "not-tested", "not tested"}});
  method.choice({"edition", "", "issue that gives the permeability criterion"},
                &FilterBandInputs::edition,
                {ChoiceOption<FilterEdition>{FilterEdition::of_1994, "1994", "4·d15"},
                 {FilterEdition::of_2017, "2017", "5·d15"}});
  method.choice({"regrading", "", "is a soil with gravel regraded to what passes No. 4"},
                &FilterBandInputs::regrading,
                {ChoiceOption<Regrading>{Regrading::by_rule, "by-rule", "always"},
                 {Regrading::never, "never",
                  "never: for gravel that is neither gap-graded nor broadly graded, with less than "
                  "15 % of fines"}});
  const auto grain = LengthUse::grain;
  const auto& mm = unit::millimeter;
  method.output({"fines", "A", "passes No. 200 after regrading"}, &FilterBandResult::fines,
                unit::percent);
  method.output({"category", "", "of the base soil, 1 to 4"}, &FilterBandResult::category,
                unit::number);
  method.output({"base_d85", "d85", "of the regraded soil"}, &FilterBandResult::base_d85, mm,
                grain);
  method.output({"max_d15", "D15F", "largest (control point 1)"}, &FilterBandResult::max_d15, mm,
                grain);
  method.output({"permeable_d15", "D15F", "least to let the water out"},
                &FilterBandResult::permeable_d15, mm, grain);
  method.output({"min_d15", "D15F", "least in a band no wider than five (control point 2)"},
                &FilterBandResult::min_d15, mm, grain);
  method.output({"max_d60", "D60F", "largest (control point 3)"}, &FilterBandResult::max_d60, mm,
                grain);
  method.output({"min_d60", "D60F", "least (control point 4)"}, &FilterBandResult::min_d60, mm,
                grain);
  method.output({"min_d5", "D5F", "least (control point 5)"}, &FilterBandResult::min_d5, mm, grain);
  method.output({"max_d100", "D100F", "largest (control point 6)"}, &FilterBandResult::max_d100, mm,
                grain);
  method.output({"max_d90", "D90F", "largest, against segregation (control point 7)"},
                &FilterBandResult::max_d90, mm, grain);
  return method;
}

}  // namespace

Expected<FilterBandResult> filter_band(const FilterBandInputs& in, Steps& steps) {
  const auto curve = gradation_from(in);
  if (!curve) return curve.problems();
  const auto limits = filter_limits({curve->points(), curve->points()},
                                    {in.dispersion, in.edition, in.regrading}, steps);
  if (!limits) return limits.problems();
  FilterBandResult result;
  result.fines = Dimensionless::of(limits->fines, unit::percent);
  result.category = Dimensionless::number(limits->category);
  result.base_d85 = limits->base_d85;
  result.max_d15 = limits->max_d15;
  result.permeable_d15 = limits->permeable_d15;
  result.min_d15 = limits->min_d15;
  result.max_d60 = limits->max_d60;
  result.min_d60 = limits->min_d60;
  result.min_d5 = limits->min_d5;
  result.max_d100 = limits->max_d100;
  result.max_d90 = limits->max_d90;
  return result;
}

const Method& filter_band_method() {
  static const TypedMethod<FilterBandInputs, FilterBandResult> method = build_filter_band();
  return method;
}

}  // namespace proofstone
