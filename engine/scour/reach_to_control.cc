#include "engine/scour/reach_to_control.h"

#include <algorithm>

namespace proofstone {

Length degradation_above_control(const ReachToControl& reach, Slope limiting_slope, Steps& steps) {
  if (!reach.existing_slope || !reach.distance_to_control) return Length::feet(0);
  const double fall = std::max(0.0, (*reach.existing_slope - limiting_slope).ratio());
  const Length degradation = fall * *reach.distance_to_control;
  steps.given("S", "present slope of the bed", measure(*reach.existing_slope));
  steps.given("L", "distance to what holds the bed", measure(*reach.distance_to_control));
  steps.computed("zd", "lowering of the bed here", "max(0, S − S_L)·L", measure(degradation),
                 "NRCS NEH 654 TS14B (2007) (from memory; confirm)");
  return degradation;
}

}  // namespace proofstone
