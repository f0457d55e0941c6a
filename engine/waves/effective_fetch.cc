#include "engine/waves/effective_fetch.h"

#include <cmath>

namespace proofstone {
namespace {

const char* const saville =
    "Saville 1962, as SCS TR-69 and ACER TM-2 use it (from memory; confirm)";

MethodDescription describe_effective_fetch() {
  MethodDescription about;
  about.id = "effective-fetch";
  about.title = "Fetch from radials";
  about.purpose =
      "Length of open water that the wind works on, from radials drawn to the far shore.";
  about.group = MethodGroup::water;
  about.sources = {
      {"Saville 1962; SCS TR-69 (1983); USBR ACER TM-2 (1981)",
       "effective fetch, 15 radials within 42° at 6°", SourceStanding::memory},
      {"USACE Shore Protection Manual (1984)", "mean of nine radials at 3°",
       SourceStanding::memory},
      {"USACE EM 1110-2-1100 Part II Chapter 2 (2003)",
       "p. II-2-45: straight-line fetch, no correction for width", SourceStanding::published}};
  about.cautions = {
      "Which fetch belongs to which wave formula: the effective fetch to the older reservoir "
      "procedures, the mean of nine radials to the Shore Protection Manual of 1984, the straight "
      "line to the Coastal Engineering Manual.",
      "Whether the length in Saville's sum is that of the radial or its projection is read both "
      "ways; the projection gives some 6 % less."};
  return about;
}

TypedMethod<EffectiveFetchInputs, EffectiveFetchResult> build_effective_fetch() {
  TypedMethod<EffectiveFetchInputs, EffectiveFetchResult> method(describe_effective_fetch(),
                                                                 &effective_fetch);
  method.required_list({"radials", "x",
                        "lengths over open water, from one end of the fan to the "
                        "other"},
                       &EffectiveFetchInputs::radials, unit::mile, AllowedRange::between(0, 1000));
  method.defaulted({"spacing", "Δα", "angle between neighbouring radials"},
                   &EffectiveFetchInputs::spacing, unit::degree, AllowedRange::positive_to(45));
  method.choice({"rule", "", "which length stands for the fetch"}, &EffectiveFetchInputs::rule,
                {{FetchRule::saville_radial, "saville-radial", "weighted by cosα, along radials"},
                 {FetchRule::saville_projection, "saville-projection",
                  "weighted by cosα, projected on the wind"},
                 {FetchRule::mean_of_radials, "mean", "mean of the radials"},
                 {FetchRule::straight_line, "straight-line", "the middle radial"}});
  method.output({"fetch", "F", "fetch by the rule chosen"}, &EffectiveFetchResult::fetch,
                unit::mile);
  method.output({"saville_radial", "Fe", "effective fetch, lengths along radials"},
                &EffectiveFetchResult::saville_radial, unit::mile);
  method.output({"saville_projection", "Fe", "effective fetch, lengths projected on the wind"},
                &EffectiveFetchResult::saville_projection, unit::mile);
  method.output({"mean_of_radials", "F", "mean of the radials"},
                &EffectiveFetchResult::mean_of_radials, unit::mile);
  method.output({"straight_line", "F", "middle radial"}, &EffectiveFetchResult::straight_line,
                unit::mile);
  method.limit(
      {"Fan of 42° to either side at 6°, fifteen radials, for the effective fetch", saville},
      [](const EffectiveFetchInputs& in) {
        if (in.rule == FetchRule::mean_of_radials || in.rule == FetchRule::straight_line) {
          return true;
        }
        return in.radials.size() == 15 && std::abs(in.spacing.degrees() - 6) < 1e-6;
      });
  return method;
}

Length chosen(const EffectiveFetchResult& result, FetchRule rule) {
  switch (rule) {
    case FetchRule::saville_radial:
      return result.saville_radial;
    case FetchRule::saville_projection:
      return result.saville_projection;
    case FetchRule::mean_of_radials:
      return result.mean_of_radials;
    case FetchRule::straight_line:
      break;
  }
  return result.straight_line;
}

}  // namespace

Expected<EffectiveFetchResult> effective_fetch(const EffectiveFetchInputs& inputs, Steps& steps) {
  const std::size_t count = inputs.radials.size();
  if (count % 2 == 0) {
    return Problem{"radials-even", "The radials have no middle one.", "", "/radials",
                   "an odd number of lengths, the middle one along the wind"};
  }
  const std::size_t middle = count / 2;
  const double widest = static_cast<double>(middle) * inputs.spacing.degrees();
  if (!(widest < 90)) {
    return Problem{"fan-too-wide", "The fan of radials reaches sideways of the wind or behind it.",
                   "", "/spacing", "less than 90° to either side"};
  }
  double sum_cos = 0;
  double sum_x_cos = 0;
  double sum_x_cos_cos = 0;
  double sum_x = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const double steps_off = static_cast<double>(i) - static_cast<double>(middle);
    const double cos_alpha = std::cos(steps_off * inputs.spacing.radians());
    const double x = inputs.radials[i].miles();
    sum_cos += cos_alpha;
    sum_x_cos += x * cos_alpha;
    sum_x_cos_cos += x * cos_alpha * cos_alpha;
    sum_x += x;
  }
  EffectiveFetchResult result;
  result.saville_radial = Length::miles(sum_x_cos / sum_cos);
  result.saville_projection = Length::miles(sum_x_cos_cos / sum_cos);
  result.mean_of_radials = Length::miles(sum_x / static_cast<double>(count));
  result.straight_line = inputs.radials[middle];
  result.fetch = chosen(result, inputs.rule);

  steps.given("n", "radials", measure(static_cast<double>(count)));
  steps.given("Δα", "angle between them", measure(inputs.spacing));
  steps.computed("Σcosα", "sum of the weights", "Σ cosα", measure(sum_cos), saville);
  steps.computed("Fe", "effective fetch, lengths along radials", "Σ x·cosα / Σ cosα",
                 measure(result.saville_radial), saville);
  steps.computed("Fe", "effective fetch, lengths projected on the wind", "Σ x·cos²α / Σ cosα",
                 measure(result.saville_projection), saville);
  steps.computed("F", "mean of the radials", "Σ x / n", measure(result.mean_of_radials));
  steps.given("F", "middle radial", measure(result.straight_line));
  return result;
}

const Method& effective_fetch_method() {
  static const TypedMethod<EffectiveFetchInputs, EffectiveFetchResult> method =
      build_effective_fetch();
  return method;
}

}  // namespace proofstone
