#include "engine/sizing/spur_spacing.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedSpurSpacing = TypedMethod<SpurSpacingInputs, SpurSpacingResult>;

constexpr Angle impermeable_expansion = Angle::degrees(17);

const char* const dg2 = "FHWA HEC-23 Vol. 2 (2009) DG2 (from memory; confirm)";

DescribedSpurSpacing build_spur_spacing() {
  MethodDescription about;
  about.id = "spur-spacing";
  about.title = "Spacing of spurs";
  about.purpose = "How far apart spurs stand along a bank, from their length.";
  about.group = MethodGroup::layer;
  about.sources = {{"FHWA HEC-23 Vol. 2, 3rd ed. (FHWA-NHI-09-112, 2009)", "Design Guideline 2",
                    SourceStanding::memory}};
  about.cautions = {
      "The heads of spurs are attacked most: size their rock for the turbulence there.",
      "For permeable spurs the expansion angle grows with what passes through; take it from the "
      "guideline's chart."};
  DescribedSpurSpacing method(std::move(about), &spur_spacing);
  method.choice({"kind", "", "whether water passes through"}, &SpurSpacingInputs::kind,
                {{SpurKind::impermeable, "impermeable", "rock or earth"},
                 {SpurKind::permeable, "permeable", "fences, piles"}});
  method.required({"projected_length", "L", "length of the spur perpendicular to the flow"},
                  &SpurSpacingInputs::projected_length, unit::foot,
                  AllowedRange::positive_to(5000));
  method.optional({"expansion_angle", "θe", "expansion angle of the flow behind the spur"},
                  &SpurSpacingInputs::expansion_angle, unit::degree, AllowedRange::between(5, 60),
                  "17° for impermeable spurs");
  method.optional({"bankfull_width", "W", "width of the channel when it is full"},
                  &SpurSpacingInputs::bankfull_width, unit::foot, AllowedRange::positive_to(1e5),
                  "the limits on length are not watched");
  method.output({"expansion_angle", "θe", "expansion angle"}, &SpurSpacingResult::expansion_angle,
                unit::degree);
  method.output({"spacing", "S", "spacing of the spurs"}, &SpurSpacingResult::spacing, unit::foot);
  method.limit({"Impermeable spurs not longer than 15 % of the bank-full width, permeable not "
                "longer than 25 %",
                dg2},
               [](const SpurSpacingInputs& in) {
                 if (!in.bankfull_width) return true;
                 const double most = in.kind == SpurKind::impermeable ? 0.15 : 0.25;
                 return in.projected_length / *in.bankfull_width < most + 1e-9;
               });
  return method;
}

}  // namespace

Expected<SpurSpacingResult> spur_spacing(const SpurSpacingInputs& inputs, Steps& steps) {
  if (inputs.kind == SpurKind::permeable && !inputs.expansion_angle) {
    return Problem{"missing-input",
                   "The expansion angle behind a permeable spur depends on what passes through it.",
                   "", "/expansion_angle", "an angle from the guideline's chart"};
  }
  SpurSpacingResult result;
  result.expansion_angle = inputs.expansion_angle.value_or(impermeable_expansion);
  result.spacing = inputs.projected_length / std::tan(result.expansion_angle.radians());
  steps.given("L", "length of the spur perpendicular to the flow",
              measure(inputs.projected_length));
  steps.given("θe", "expansion angle of the flow behind the spur", measure(result.expansion_angle),
              inputs.expansion_angle ? "" : dg2);
  steps.computed("S", "spacing of the spurs", "L·cotθe", measure(result.spacing), dg2);
  return result;
}

const Method& spur_spacing_method() {
  static const DescribedSpurSpacing method = build_spur_spacing();
  return method;
}

}  // namespace proofstone
