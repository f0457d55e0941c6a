#include "engine/filter/filter_ratios.h"

#include <fmt/format.h>

#include "engine/method/typed_method.h"
#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

TypedMethod<FilterRatiosInputs, FilterRatiosResult> build_filter_ratios() {
  MethodDescription about;
  about.id = "filter-ratios";
  about.title = "Filter ratios between two layers";
  about.purpose =
      "Whether a layer holds the finer one below it and lets its water out: soil and filter, "
      "filter and rock, or rock and soil without a filter.";
  about.group = MethodGroup::filter;
  about.sources = {
      {"FHWA HDS-6 (2001)", "Eqs 6.24–6.26, problems 2 of ch. 6", SourceStanding::published},
      {"FHWA HEC-11 (1989)", "section 4.4.1", SourceStanding::memory},
      {"Horonjeff et al., Planning and Design of Airports", "p. 379, filters of subdrains",
       SourceStanding::published}};
  about.cautions = {"Of a band, take the coarsest D15 above with the finest d85 below."};
  TypedMethod<FilterRatiosInputs, FilterRatiosResult> method(about, &filter_ratios);
  const auto size = AllowedRange::positive_to(5000);
  const auto grain = LengthUse::grain;
  method.required({"upper_d15", "D15", "of the upper, coarser layer"},
                  &FilterRatiosInputs::upper_d15, unit::millimeter, size, grain);
  method.optional({"upper_d50", "D50", "of the upper layer"}, &FilterRatiosInputs::upper_d50,
                  unit::millimeter, size, "the ratio of medians is not asked", grain);
  method.required({"lower_d15", "d15", "of the lower, finer layer"}, &FilterRatiosInputs::lower_d15,
                  unit::millimeter, size, grain);
  method.optional({"lower_d50", "d50", "of the lower layer"}, &FilterRatiosInputs::lower_d50,
                  unit::millimeter, size, "the ratio of medians is not asked", grain);
  method.required({"lower_d85", "d85", "of the lower layer"}, &FilterRatiosInputs::lower_d85,
                  unit::millimeter, size, grain);
  method.choice({"form", "", "limits"}, &FilterRatiosInputs::form,
                {ChoiceOption<RatioForm>{RatioForm::highway, "highway",
                                         "D15/d85 < 5, D15/d15 > 5 and < 40, D50/d50 < 40"},
                 {RatioForm::airfield, "airfield", "D15/d85 ≤ 5, D15/d15 ≥ 5, D50/d50 ≤ 25"}});
  method.output({"retention", "D15/d85", "retention ratio"}, &FilterRatiosResult::retention,
                unit::number);
  method.output({"permeability", "D15/d15", "permeability ratio"},
                &FilterRatiosResult::permeability, unit::number);
  method.output({"median", "D50/d50", "ratio of medians; 0 where a size is not given"},
                &FilterRatiosResult::median, unit::number);
  method.output({"margin", "", "limit of retention over the ratio"}, &FilterRatiosResult::margin,
                unit::number);
  method.output({"kept", "", "criteria that are kept"}, &FilterRatiosResult::kept, unit::number);
  method.output({"asked", "", "criteria that were asked"}, &FilterRatiosResult::asked,
                unit::number);
  return method;
}

/// Holds ratios against limits and counts.
class Criteria {
 public:
  explicit Criteria(bool strict) : strict_(strict) {}
  void below(const char* name, double ratio, double limit) {
    ++asked;
    const bool keeps = strict_ ? ratio < limit : ratio <= limit * (1 + rounding);
    if (!keeps) {
      not_kept.push_back(fmt::format("{} is {}, {} {} is allowed", name, significant(ratio, 3),
                                     strict_ ? "less than" : "at most", significant(limit, 3)));
    }
  }
  void above(const char* name, double ratio, double limit) {
    ++asked;
    const bool keeps = strict_ ? ratio > limit : ratio >= limit * (1 - rounding);
    if (!keeps) {
      not_kept.push_back(fmt::format("{} is {}, {} {} is asked", name, significant(ratio, 3),
                                     strict_ ? "more than" : "at least", significant(limit, 3)));
    }
  }
  int asked = 0;
  std::vector<std::string> not_kept;

 private:
  bool strict_;
};

}  // namespace

Expected<FilterRatiosResult> filter_ratios(const FilterRatiosInputs& in, Steps& steps) {
  if (in.lower_d85 < in.lower_d15) {
    return Problem{"out-of-order", "d85 of the lower layer is below its d15.", "", "/lower_d85",
                   "at least d15"};
  }
  const bool highway = in.form == RatioForm::highway;
  const double retention = in.upper_d15 / in.lower_d85;
  const double permeability = in.upper_d15 / in.lower_d15;
  Criteria criteria(highway);
  criteria.below("D15/d85", retention, 5);
  criteria.above("D15/d15", permeability, 5);
  if (highway) criteria.below("D15/d15", permeability, 40);
  const auto source = filter_ratios_method().description().sources[highway ? 0 : 2].sentence();
  steps.given_grain("D15", "of the upper layer", in.upper_d15);
  steps.given_grain("d15", "of the lower layer", in.lower_d15);
  steps.given_grain("d85", "of the lower layer", in.lower_d85);
  steps.computed("D15/d85", "retention", "", measure(retention), source);
  steps.computed("D15/d15", "permeability", "", measure(permeability), source);
  FilterRatiosResult result;
  result.median = Dimensionless::number(0);
  if (in.upper_d50 && in.lower_d50) {
    const double median = *in.upper_d50 / *in.lower_d50;
    criteria.below("D50/d50", median, highway ? 40 : 25);
    result.median = Dimensionless::number(median);
    steps.computed("D50/d50", "ratio of medians", "", measure(median), source);
  }
  result.retention = Dimensionless::number(retention);
  result.permeability = Dimensionless::number(permeability);
  result.margin = Dimensionless::number(5 / retention);
  result.asked = Dimensionless::number(criteria.asked);
  result.kept = Dimensionless::number(criteria.asked - static_cast<int>(criteria.not_kept.size()));
  result.not_kept = std::move(criteria.not_kept);
  return result;
}

const Method& filter_ratios_method() {
  static const TypedMethod<FilterRatiosInputs, FilterRatiosResult> method = build_filter_ratios();
  return method;
}

}  // namespace proofstone
