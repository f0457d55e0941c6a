#pragma once

#include <optional>

#include "engine/method/typed_method.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// The flow down a chute, rundown or overtopped face, as the inputs of a method give it: for each
/// unit of width, or as a discharge over a width.
struct ChuteFlow {
  std::optional<UnitDischarge> unit_discharge;
  std::optional<Discharge> discharge;
  std::optional<Length> width;  ///< of the flow on the face: the bottom width, or a notch in it
};

/// q, as given or Q/b, put down as a step. Problems (missing-input): neither q nor both Q and b.
Expected<UnitDischarge> unit_discharge_of(const ChuteFlow& flow, Steps& steps);
/// The same without its step.
Expected<UnitDischarge> unit_discharge_of(const ChuteFlow& flow);

/// Takes what a zone states of its discharge; the width is the designer's to choose.
void take_chute_flow(const ZoneSetting& zone, ChuteFlow& flow);

/// Critical depth of a wide or rectangular flow, (q²/g)^⅓.
Length critical_depth(UnitDischarge q);

/// The problem of a face as steep as the angle of repose of its rock.
Problem face_too_steep();

/// Describes the flow to a method whose inputs derive from ChuteFlow.
template <class Inputs, class Result, class Base>
void describe_chute_flow(TypedMethod<Inputs, Result, Base>& method) {
  method.optional(
      {"unit_discharge", "q", "discharge for each unit of width, where it runs deepest"},
      static_cast<std::optional<UnitDischarge> Inputs::*>(&Inputs::unit_discharge),
      unit::square_foot_per_second, AllowedRange::positive_to(10'000), "discharge over width");
  method.optional({"discharge", "Q", "discharge down the chute"},
                  static_cast<std::optional<Discharge> Inputs::*>(&Inputs::discharge),
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e7),
                  "needed where q is not given");
  method.optional({"width", "b", "width it runs over: the bottom of the chute"},
                  static_cast<std::optional<Length> Inputs::*>(&Inputs::width), unit::foot,
                  AllowedRange::positive_to(1e5), "needed where q is not given");
}

}  // namespace proofstone
