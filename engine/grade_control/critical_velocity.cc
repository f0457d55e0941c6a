#include "engine/grade_control/critical_velocity.h"

namespace proofstone {

Velocity critical_velocity(UnitDischarge q, Steps& steps) {
  const Length yc = critical_depth(q);
  const auto Vc = Velocity::meters_per_second(q.square_meters_per_second() / yc.meters());
  steps.computed("yc", "critical depth", "(q²/g)^⅓", measure(yc));
  steps.computed("Vc", "critical velocity", "q/yc", measure(Vc));
  return Vc;
}

}  // namespace proofstone
