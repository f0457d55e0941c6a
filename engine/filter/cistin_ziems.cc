#include "engine/filter/cistin_ziems.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<CistinZiemsInputs, CistinZiemsResult> build_cistin_ziems() {
  MethodDescription about;
  about.id = "cistin-ziems";
  about.title = "Cistin–Ziems chart";
  about.purpose = "Largest median of a granular filter by the uniformity of soil and filter.";
  about.group = MethodGroup::filter;
  about.sources = {
      {"FHWA HEC-23 vol. 2 (2009)", "Design Guideline 16, chart of A50", SourceStanding::memory}};
  about.cautions = {"Not known until the chart is digitised: the engine holds none of its points."};
  TypedMethod<CistinZiemsInputs, CistinZiemsResult> method(about, &cistin_ziems);
  method.required({"base_d50", "d50B", "median of the soil"}, &CistinZiemsInputs::base_d50,
                  unit::millimeter, AllowedRange::positive_to(1000), LengthUse::grain);
  method.required({"base_uniformity", "Cu_B", "D60/D10 of the soil"},
                  &CistinZiemsInputs::base_uniformity, unit::number,
                  AllowedRange::between(1, 1000));
  method.required({"filter_uniformity", "Cu_F", "D60/D10 of the filter"},
                  &CistinZiemsInputs::filter_uniformity, unit::number,
                  AllowedRange::between(1, 1000));
  method.output({"ratio", "A50", "read from the chart"}, &CistinZiemsResult::ratio, unit::number);
  method.output({"most_d50", "D50F", "largest median of the filter"}, &CistinZiemsResult::most_d50,
                unit::millimeter, LengthUse::grain);
  return method;
}

/// The interval that holds a value and how far into it the value lies; nothing outside the axis.
struct Place {
  std::size_t index = 0;
  double share = 0;
};
std::optional<Place> place_on(const std::vector<double>& axis, double value) {
  if (axis.size() < 2 || !(value >= axis.front() && value <= axis.back())) return std::nullopt;
  const auto upper = std::upper_bound(axis.begin() + 1, axis.end() - 1, value);
  const auto index = static_cast<std::size_t>(upper - axis.begin()) - 1;
  return Place{index, (value - axis[index]) / (axis[index + 1] - axis[index])};
}

}  // namespace

Expected<double> read_chart(const CistinZiemsChart& chart, double base, double filter) {
  if (chart.ratios.empty()) {
    return Problem{"chart-not-digitised",
                   "Not known until the Cistin–Ziems chart is digitised from HEC-23 vol. 2, Design "
                   "Guideline 16.",
                   "", "", "another filter criterion: filter-ratios, filter-band"};
  }
  const auto row = place_on(chart.base_uniformities, base);
  const auto column = place_on(chart.filter_uniformities, filter);
  if (!row || !column) {
    return Problem{"outside-chart", "The chart does not reach these uniformities.", "",
                   row ? "/filter_uniformity" : "/base_uniformity", "uniformities on the chart"};
  }
  const auto along = [&](std::size_t r) {
    const auto& values = chart.ratios[r];
    return values[column->index] +
           column->share * (values[column->index + 1] - values[column->index]);
  };
  const double low = along(row->index);
  return low + row->share * (along(row->index + 1) - low);
}

Expected<CistinZiemsResult> cistin_ziems(const CistinZiemsInputs& in, Steps& steps) {
  const auto ratio =
      read_chart(cistin_ziems_chart(), in.base_uniformity.number(), in.filter_uniformity.number());
  if (!ratio) return ratio.problems();
  CistinZiemsResult result;
  result.ratio = Dimensionless::number(*ratio);
  result.most_d50 = *ratio * in.base_d50;
  steps.computed("A50", "read from the chart", "by Cu_B and Cu_F", measure(*ratio));
  steps.computed_grain("D50F", "largest median", "A50·d50B", result.most_d50);
  return result;
}

const Method& cistin_ziems_method() {
  static const TypedMethod<CistinZiemsInputs, CistinZiemsResult> method = build_cistin_ziems();
  return method;
}

}  // namespace proofstone
