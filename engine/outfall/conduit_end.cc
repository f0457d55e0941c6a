#include "engine/outfall/conduit_end.h"

namespace proofstone {

void take_conduit_water(const ZoneSetting& zone, ConduitEnd& end) {
  if (zone.stated.discharge) end.discharge = *zone.stated.discharge;
  end.tailwater = zone.stated.tailwater_depth;
}

Expected<Length> effective_height(Length height, const ConduitEnd& end, const char* source,
                                  Steps& steps) {
  steps.given("D", "height of the conduit", measure(height));
  if (!end.normal_depth) return height;
  if (!(*end.normal_depth < height)) {
    return Problem{"deeper-than-conduit",
                   "The normal depth in the barrel is not less than the height of the conduit.", "",
                   "/normal_depth", "a depth less than the conduit's height"};
  }
  const Length mean = 0.5 * (height + *end.normal_depth);
  steps.given("yn", "normal depth in the barrel, supercritical", measure(*end.normal_depth));
  steps.computed("D'", "height in place of D, for supercritical flow in the barrel", "(D + yn)/2",
                 measure(mean), source);
  return mean;
}

Length tailwater_of(Length height, const ConduitEnd& end, const char* source, Steps& steps) {
  if (end.tailwater) {
    steps.given("TW", "tailwater above the outlet invert", measure(*end.tailwater));
    return *end.tailwater;
  }
  const Length taken = unknown_tailwater_share * height;
  steps.computed("TW", "tailwater, taken because it is unknown", "0.4·D", measure(taken), source);
  return taken;
}

}  // namespace proofstone
