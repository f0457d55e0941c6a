#include "engine/scour/armouring_scour.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

using Inputs = ArmouringInputs;
using Result = ArmouringResult;

const char* const page =
    "USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984) (from memory; confirm)";

TypedMethod<Inputs, Result> build() {
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
  TypedMethod<Inputs, Result> method(about, &armouring_scour);
  method.required({"armour_grain", "Dc", "smallest grain that the flow leaves in place"},
                  &Inputs::armour_grain, unit::foot, AllowedRange::positive_to(10),
                  LengthUse::rock);
  method.required({"coarse_share", "ΔP", "share of the bed by mass that is coarser, 0 to 1"},
                  &Inputs::coarse_share, unit::number, AllowedRange::positive_to(1));
  method.output({"armour_layer", "ya", "thickness of the armour"}, &Result::armour_layer,
                unit::foot);
  method.output({"degradation", "zd", "lowering of the bed"}, &Result::degradation, unit::foot);
  method.limit({"At least a tenth of the bed is coarse enough", page},
               [](const Inputs& in) { return in.coarse_share.number() >= 0.1; });
  return method;
}

}  // namespace

Expected<ArmouringResult> armouring_scour(const ArmouringInputs& inputs, Steps& steps) {
  const double share = inputs.coarse_share.number();
  Result result;
  result.armour_layer = std::min(3 * inputs.armour_grain, Length::feet(0.5));
  result.degradation = (1 / share - 1) * result.armour_layer;
  steps.given_rock("Dc", "smallest grain that stays", inputs.armour_grain);
  steps.given("ΔP", "share of the bed that is coarser", measure(inputs.coarse_share));
  steps.computed("ya", "thickness of the armour", "min(3·Dc, 0.5 ft)", measure(result.armour_layer),
                 page);
  steps.computed("zd", "lowering of the bed", "ya·(1/ΔP − 1)", measure(result.degradation), page);
  return result;
}

const Method& armouring_scour_method() {
  static const TypedMethod<Inputs, Result> method = build();
  return method;
}

}  // namespace proofstone
