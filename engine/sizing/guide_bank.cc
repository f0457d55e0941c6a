#include "engine/sizing/guide_bank.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedGuideBank = TypedMethod<GuideBankInputs, GuideBankResult>;

const char* const dg15 = "FHWA HEC-23 Vol. 2 (2009) DG15 (from memory; confirm)";

DescribedGuideBank build_guide_bank() {
  MethodDescription about;
  about.id = "guide-bank";
  about.title = "Plan of a guide bank";
  about.purpose =
      "Where the elliptical guide bank upstream of a bridge abutment runs, from its length.";
  about.group = MethodGroup::layer;
  about.sources = {{"FHWA HEC-23 Vol. 2, 3rd ed. (FHWA-NHI-09-112, 2009)", "Design Guideline 15",
                    SourceStanding::memory}};
  about.cautions = {
      "The length comes from the guideline's chart by the share of flow on the floodplain; the "
      "chart is not held here.",
      "Crest at least 2 ft above the design water level. Downstream, where it is needed, 50 ft "
      "straight.",
      "Size the rock for the velocity at the nose and carry the same rock all round."};
  DescribedGuideBank method(std::move(about), &guide_bank);
  method.required({"length", "Ls", "length of the bank upstream of the abutment"},
                  &GuideBankInputs::length, unit::foot, AllowedRange::positive_to(1000));
  method.required({"distance", "X", "distance upstream of the abutment"},
                  &GuideBankInputs::distance, unit::foot, AllowedRange::between(0, 1000));
  method.output({"offset", "Y", "offset of the bank there"}, &GuideBankResult::offset, unit::foot);
  method.output({"largest_offset", "", "offset at the abutment"}, &GuideBankResult::largest_offset,
                unit::foot);
  method.limit({"Length from 50 to 250 ft", dg15}, [](const GuideBankInputs& in) {
    return in.length > Length::feet(50 - 1e-9) && in.length < Length::feet(250 + 1e-9);
  });
  return method;
}

}  // namespace

Expected<GuideBankResult> guide_bank(const GuideBankInputs& inputs, Steps& steps) {
  const double share = inputs.distance / inputs.length;
  if (share > 1) {
    return Problem{"outside-allowed", "The guide bank ends before this distance.", "", "/distance",
                   "0 to the length of the bank"};
  }
  GuideBankResult result;
  result.largest_offset = 0.4 * inputs.length;
  result.offset = std::sqrt(1 - share * share) * result.largest_offset;
  steps.given("Ls", "length of the bank upstream of the abutment", measure(inputs.length));
  steps.given("X", "distance upstream of the abutment", measure(inputs.distance));
  steps.computed("Y", "offset of the bank there", "0.4·Ls·√(1 − X²/Ls²)", measure(result.offset),
                 dg15);
  return result;
}

const Method& guide_bank_method() {
  static const DescribedGuideBank method = build_guide_bank();
  return method;
}

}  // namespace proofstone
