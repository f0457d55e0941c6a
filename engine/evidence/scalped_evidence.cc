#include "engine/evidence/scalped_evidence.h"

namespace proofstone {
namespace {

constexpr double least_kept_percent = 50;  ///< else it is no longer this rock

}  // namespace

Expected<ScalpedEvidence> scalped_evidence(const MeasuredGradation& measured, Length at) {
  const auto& points = measured.curve.points();
  const double kept = measured.curve.percent_smaller(at);
  if (at >= points.back().size || kept >= 100 || kept < least_kept_percent) {
    return Problem{"nothing-to-scalp",
                   "Scalping there takes out nothing, or more than half of the rock.", "", "size",
                   "a size between the median and the largest stone"};
  }
  std::vector<GradationPoint> below;
  std::vector<double> effective;
  std::vector<double> lasting;
  for (const auto& point : points) {
    if (!(point.size < at)) break;
    below.push_back({point.size, point.percent_smaller * 100 / kept});
    effective.push_back(measured.effective_stones_at(point.size) * kept / 100);
    lasting.push_back(measured.lasting_at(point.size) * 100 / kept);
  }
  below.push_back({at, 100});
  effective.push_back(measured.effective_stones_at(at) * kept / 100);
  lasting.push_back(measured.lasting_at(at) * 100 / kept);
  auto curve = Gradation::make(std::move(below), measured.curve.basis());
  if (!curve) return curve.problems();
  ScalpedEvidence scalped{MeasuredGradation{std::move(*curve)}, 1 - kept / 100};
  auto& after = scalped.measured;
  after.effective_stones = measured.effective_stones * kept / 100;
  after.effective_at_points = std::move(effective);
  after.lasting_at_points = std::move(lasting);
  after.reading_errors = measured.reading_errors;
  for (auto& error : after.reading_errors) {
    error.percent *= 100 / kept;
    error.stones *= kept / 100;
  }
  after.stones = static_cast<int>(measured.stones * kept / 100);
  after.method = "scalping computed from " + measured.method;
  after.photos = measured.photos;
  after.smallest_known = measured.smallest_known;
  after.picked_on_grid = measured.picked_on_grid;
  after.seen_smaller_than = measured.seen_smaller_than;
  after.steps.computed("P_s", "percent smaller than the size of scalping", "read on the curve",
                       measure(kept));
  after.steps.computed("n", "stones' worth of evidence below it", "n of the looks · P_s/100",
                       measure(after.effective_stones));
  return scalped;
}

}  // namespace proofstone
