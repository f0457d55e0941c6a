#include "engine/scour/armouring_scour.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_armouring_scour =
    "USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984) (from memory; confirm)";

TypedMethod<ArmouringInputs, ArmouringResult> build_armouring_scour() {
  MethodDescription about;
  about.id = "armouring-scour";
  about.title = "Lowering of a bed until it armours";
  about.purpose =
      "Long-term lowering of a bed that holds enough coarse grains to cover itself in the end.";
  about.group = MethodGroup::scour;
  about.sources = {{"USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984)",
                    "armouring", SourceStanding::memory}};
  about.cautions = {
      "A flood that moves the armour starts the lowering anew: take Dc of the design flood.",
      "Sample the bed to the depth computed; the share of coarse grains must hold all the way."};
  TypedMethod<ArmouringInputs, ArmouringResult> method(about, &armouring_scour);
  method.required({"armour_grain", "Dc", "smallest grain that the flow leaves in place"},
                  &ArmouringInputs::armour_grain, unit::foot, AllowedRange::positive_to(10),
                  LengthUse::rock);
  method.required({"coarse_share", "ΔP", "share of the bed by mass that is coarser, 0 to 1"},
                  &ArmouringInputs::coarse_share, unit::number, AllowedRange::positive_to(1));
  method.output({"armour_layer", "ya", "thickness of the armour"}, &ArmouringResult::armour_layer,
                unit::foot);
  method.output({"degradation", "zd", "lowering of the bed"}, &ArmouringResult::degradation,
                unit::foot);
  method.limit({"At least a tenth of the bed is coarse enough", page_of_armouring_scour},
               [](const ArmouringInputs& in) { return in.coarse_share.number() >= 0.1; });
  return method;
}

}  // namespace

Expected<ArmouringResult> armouring_scour(const ArmouringInputs& inputs, Steps& steps) {
  const double share = inputs.coarse_share.number();
  ArmouringResult result;
  result.armour_layer = std::min(3 * inputs.armour_grain, Length::feet(0.5));
  result.degradation = (1 / share - 1) * result.armour_layer;
  steps.given_rock("Dc", "smallest grain that stays", inputs.armour_grain);
  steps.given("ΔP", "share of the bed that is coarser", measure(inputs.coarse_share));
  steps.computed("ya", "thickness of the armour", "min(3·Dc, 0.5 ft)", measure(result.armour_layer),
                 page_of_armouring_scour);
  steps.computed("zd", "lowering of the bed", "ya·(1/ΔP − 1)", measure(result.degradation),
                 page_of_armouring_scour);
  return result;
}

const Method& armouring_scour_method() {
  static const TypedMethod<ArmouringInputs, ArmouringResult> method = build_armouring_scour();
  return method;
}

}  // namespace proofstone
