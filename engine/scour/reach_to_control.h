#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// The reach down to what holds the bed (rock, a drop, a confluence): over it a bed turns from its
/// present slope to its limiting one.
struct ReachToControl {
  std::optional<Slope> existing_slope;
  std::optional<Length> distance_to_control;
};

/// (S − S_L)·distance, not below 0; 0 while slope or distance is not known. NRCS NEH 654 TS14B
/// [memory].
Length degradation_above_control(const ReachToControl& reach, Slope limiting_slope, Steps& steps);

template <class Inputs, class Result>
void describe_reach(TypedMethod<Inputs, Result>& method) {
  method.optional({"existing_slope", "S", "present slope of the bed"},
                  static_cast<std::optional<Slope> Inputs::*>(&Inputs::existing_slope),
                  unit::rise_per_run, AllowedRange::positive_to(0.2), "no lowering is computed");
  method.optional({"distance_to_control", "L", "distance down to what holds the bed"},
                  static_cast<std::optional<Length> Inputs::*>(&Inputs::distance_to_control),
                  unit::foot, AllowedRange::positive_to(1e6), "no lowering is computed");
  method.output({"limiting_slope", "S_L", "slope at which the bed moves no more"},
                &Result::limiting_slope, unit::rise_per_run);
  method.output({"degradation", "zd", "lowering of the bed here"}, &Result::degradation,
                unit::foot);
}

}  // namespace proofstone
