#include "engine/scour/thorne_bend_scour.h"

#include <algorithm>
#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_thorne_bend_scour = "Thorne (from memory; confirm)";

TypedMethod<ThorneBendInputs, ThorneBendResult> build_thorne_bend_scour() {
  MethodDescription about;
  about.id = "thorne-bend-scour";
  about.title = "Bend scour by Thorne";
  about.purpose =
      "Depth of the scour pool at the outer toe of a bend, from its radius and width, by either of "
      "two formulas.";
  about.group = MethodGroup::scour;
  about.sources = {{"Thorne, bend scour in gravel and sand rivers",
                    "extra-depth and total-depth forms", SourceStanding::memory}};
  about.cautions = {
      "One form gives the extra depth below the mean bed, the other the whole depth from the "
      "water; for flat bends they part, and the whole-depth form is the deeper."};
  TypedMethod<ThorneBendInputs, ThorneBendResult> method(about, &thorne_bend_scour);
  method.required({"bend_radius", "Rc", "centreline radius of the bend"},
                  &ThorneBendInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6));
  method.required({"width", "W", "water-surface width upstream of the bend"},
                  &ThorneBendInputs::width, unit::foot, AllowedRange::positive_to(1e5));
  method.required({"mean_depth", "d", "mean depth upstream of the bend"},
                  &ThorneBendInputs::mean_depth, unit::foot, AllowedRange::positive_to(200));
  method.choice({"form", "", "which of the two formulas"}, &ThorneBendInputs::form,
                {ChoiceOption<ThorneForm>{ThorneForm::extra_depth, "extra-depth",
                                          "scour below the mean bed over the mean depth"},
                 {ThorneForm::total_depth, "total-depth",
                  "greatest depth from the water over the mean depth"}});
  method.output({"extra_ratio", "d_s/d", "by the extra-depth form"}, &ThorneBendResult::extra_ratio,
                unit::number);
  method.output({"total_ratio", "d_max/d", "by the total-depth form"},
                &ThorneBendResult::total_ratio, unit::number);
  method.output({"bend_depth", "d_max", "greatest depth in the bend, from the water surface"},
                &ThorneBendResult::bend_depth, unit::foot);
  method.output({"scour", "d_s", "bend scour below the mean bed"}, &ThorneBendResult::scour,
                unit::foot);
  method.limit({"Rc/W above 2 and at most 22", page_of_thorne_bend_scour},
               [](const ThorneBendInputs& in) {
                 const double ratio = in.bend_radius / in.width;
                 return ratio > 2 && ratio <= 22;
               });
  return method;
}

}  // namespace

Expected<ThorneBendResult> thorne_bend_scour(const ThorneBendInputs& inputs, Steps& steps) {
  const double r_w = inputs.bend_radius / inputs.width;
  if (!(r_w > 2)) {
    return Problem{"bend-too-sharp", "A radius of two widths or less is below these formulas.", "",
                   "/bend_radius", "more than twice the width"};
  }
  const double extra = std::max(0.0, 1.07 - std::log10(r_w - 2));
  const double total = std::max(1.0, 2.07 - 0.19 * std::log(r_w - 2));
  const bool by_extra = inputs.form == ThorneForm::extra_depth;

  ThorneBendResult result;
  result.extra_ratio = Dimensionless::number(extra);
  result.total_ratio = Dimensionless::number(total);
  result.scour = (by_extra ? extra : total - 1) * inputs.mean_depth;
  result.bend_depth = result.scour + inputs.mean_depth;
  steps.given("d", "mean depth upstream of the bend", measure(inputs.mean_depth));
  steps.computed("Rc/W", "radius over width", "", measure(r_w));
  steps.computed("d_s/d", by_extra ? "extra depth ratio" : "note, not used: extra depth ratio",
                 "max(0, 1.07 − log₁₀(Rc/W − 2))", measure(extra), page_of_thorne_bend_scour);
  steps.computed("d_max/d", by_extra ? "note, not used: total depth ratio" : "total depth ratio",
                 "max(1, 2.07 − 0.19·ln(Rc/W − 2))", measure(total), page_of_thorne_bend_scour);
  steps.computed("d_max", "greatest depth in the bend", by_extra ? "(1 + d_s/d)·d" : "(d_max/d)·d",
                 measure(result.bend_depth), page_of_thorne_bend_scour);
  steps.computed("d_s", "bend scour below the mean bed", "d_max − d", measure(result.scour),
                 page_of_thorne_bend_scour);
  return result;
}

const Method& thorne_bend_scour_method() {
  static const TypedMethod<ThorneBendInputs, ThorneBendResult> method = build_thorne_bend_scour();
  return method;
}

}  // namespace proofstone
