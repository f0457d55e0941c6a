#include "engine/evidence/blend_evidence.h"

namespace proofstone {

MeasuredGradation evidence_of_blend(const MeasuredGradation& measured, const BlendOption& option) {
  const double loads = option.loads_of_this_rock + option.loads_of_other;
  const double share = option.loads_of_this_rock / loads;

  MeasuredGradation blend{option.gradation};
  blend.effective_stones = measured.effective_stones / share;
  for (const auto& point : option.gradation.points()) {
    blend.effective_at_points.push_back(measured.effective_stones_at(point.size) / share);
    blend.lasting_at_points.push_back(measured.lasting_at(point.size) * share);
  }
  blend.reading_errors = measured.reading_errors;
  for (auto& error : blend.reading_errors) {
    error.percent *= share;
    error.stones /= share;
  }
  blend.stones = measured.stones;
  blend.method = "blend computed from " + measured.method;
  blend.photos = measured.photos;
  blend.smallest_known = measured.smallest_known;
  blend.largest_known = measured.largest_known;
  blend.picked_on_grid = measured.picked_on_grid;
  blend.seen_larger_than = measured.seen_larger_than;
  blend.seen_smaller_than = measured.seen_smaller_than;
  blend.steps.computed("w", "share of the measured rock in the blend", "loads of it / all loads",
                       measure(share));
  blend.steps.computed("n", "stones' worth of evidence for the blend", "n of the looks / w",
                       measure(blend.effective_stones));
  blend.cautions.push_back(
      "The gradation of the other material is taken from its certificate as exact.");
  return blend;
}

}  // namespace proofstone
