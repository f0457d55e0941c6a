#pragma once

#include <optional>

#include "engine/method/typed_method.h"
#include "engine/sizing/zone_setting.h"

namespace proofstone {

/// The end of a conduit and the water below it, as the rock forms of outlets ask for them.
struct ConduitEnd {
  Discharge discharge;
  std::optional<Length> tailwater;  ///< depth above the outlet invert; absent where unknown
  /// Depth in the barrel where the flow in it is supercritical; absent where it is not.
  std::optional<Length> normal_depth;
};

/// Takes what a zone states of its discharge and tailwater; the conduit is the designer's to
/// choose.
void take_conduit_water(const ZoneSetting& zone, ConduitEnd& end);

/// Tailwater as the forms take an unknown one: 0.4 of the conduit's height.
inline constexpr double unknown_tailwater_share = 0.4;

/// The height that stands for the conduit: its own, or the mean of it and the normal depth where
/// the flow in the barrel is supercritical; put down as a step. Problem: the normal depth is not
/// less than the conduit's height.
Expected<Length> effective_height(Length height, const ConduitEnd& end, const char* source,
                                  Steps& steps);

/// The tailwater given, or 0.4 of `height` where it is unknown; put down as a step.
Length tailwater_of(Length height, const ConduitEnd& end, const char* source, Steps& steps);

/// Describes the water to a method whose inputs derive from ConduitEnd.
template <class Inputs, class Result, class Base>
void describe_conduit_water(TypedMethod<Inputs, Result, Base>& method) {
  method.required({"discharge", "Q", "discharge of the conduit"},
                  static_cast<Discharge Inputs::*>(&Inputs::discharge), unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e6));
  method.optional({"tailwater", "TW", "depth of the water below the outlet, above its invert"},
                  static_cast<std::optional<Length> Inputs::*>(&Inputs::tailwater), unit::foot,
                  AllowedRange::positive_to(1000), "unknown: 0.4 of the conduit's height");
  method.optional({"normal_depth", "yn", "depth in the barrel where its flow is supercritical"},
                  static_cast<std::optional<Length> Inputs::*>(&Inputs::normal_depth), unit::foot,
                  AllowedRange::positive_to(100), "flow in the barrel is not supercritical");
}

}  // namespace proofstone
