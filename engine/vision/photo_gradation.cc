#include "engine/vision/photo_gradation.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/size_ranges.h"
#include "engine/vision/largest_stone.h"
#include "engine/vision/photo_cautions.h"
#include "engine/vision/photo_evidence.h"
#include "engine/vision/size_factors.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

std::string method_of(const StonesOnPhotos& seen, std::size_t photos) {
  return fmt::format("{} on {} {}", seen.tapped ? "taps" : "outlines", photos,
                     photos == 1 ? "photo" : "photos");
}

/// The factors pull D15 and D85 towards D50, past it where the sizes are nearly one.
std::optional<Problem> problem_of_alike_sizes(const std::vector<PhotoSize>& sizes) {
  for (std::size_t i = 1; i < sizes.size(); ++i) {
    if (sizes[i].size > sizes[i - 1].size) continue;
    return Problem{
        "too-alike",
        "The sizes are more alike than those of any pile that the factors were found on.", "",
        "photos", "outlines of rock as it lies, or a count of stones"};
  }
  return std::nullopt;
}

double surface_of(const std::vector<SeenStone>& stones) {
  double sum = 0;
  for (const auto& stone : stones) sum += stone.weight;
  return sum;
}

std::vector<PhotoSize> sizes_of(const StonesOnPhotos& seen, const SurfaceShare& share) {
  const std::vector<double> percents{15, 50, 85};
  const auto sampling = block_bootstrap(share, percents).errors();
  const double unresolved = share.percent_smaller(seen.smallest_resolved);
  std::vector<PhotoSize> sizes;
  for (std::size_t i = 0; i < percents.size(); ++i) {
    if (percents[i] < unresolved) continue;
    const auto factor = seen.factors.at(percents[i]);
    PhotoSize size;
    size.percent = percents[i];
    size.as_photographed = share.size_at(percents[i]);
    size.size = size.as_photographed / factor.ratio;
    size.sampling_error = sampling[i];
    size.scale_error = seen.scale_error;
    size.factor_error = factor.error;
    sizes.push_back(size);
  }
  return sizes;
}

/// The largest stone as a fact: taped, or tapped less what the scale may be wrong.
Expected<std::optional<Length>> largest_of_set(const PhotoSet& set, Steps& steps) {
  std::optional<Length> largest;
  if (set.taped_largest) {
    if (auto wrong = problem_of_size(*set.taped_largest, "largest")) return *wrong;
    largest = set.taped_largest;
    steps.given_rock("D_max", "largest stone, by tape", *largest, "document");
  }
  if (!set.tapped_largest) return largest;
  const auto by_ends = largest_by_ends(set, steps);
  if (!by_ends) return by_ends.problems();
  largest = std::max(largest.value_or(by_ends->low), by_ends->low);
  return largest;
}

}  // namespace

double PhotoSize::error() const {
  return std::sqrt(sampling_error * sampling_error + scale_error * scale_error +
                   factor_error * factor_error);
}

Length PhotoSize::low() const {
  return size * std::exp(-normal_quantile(1 - (1 - interval_confidence) / 2) * error());
}

Length PhotoSize::high() const {
  return size * std::exp(normal_quantile(1 - (1 - interval_confidence) / 2) * error());
}

void say_photo_size(const PhotoSize& size, Steps& steps) {
  const auto name = fmt::format("D{:g}", size.percent);
  steps.computed_rock(name + " seen", "size as photographed", "share of the surface by size",
                      size.as_photographed, surface_share_source().sentence());
  steps.computed_rock(name,
                      fmt::format("size of which {:g} % by mass is smaller{}", size.percent,
                                  size.percent < 50 ? ", indicative" : ""),
                      fmt::format("{} seen / k{:g}", name, size.percent), size.size,
                      rendered_piles("factors").sentence());
  steps.given("e_n", "error of sampling, standard deviation of ln D", measure(size.sampling_error),
              "spread over pictures put together anew from their blocks");
  steps.computed("e", "error of sampling, scale and factor together", "√(e_n² + e_s² + e_k²)",
                 measure(size.error()));
  steps.computed_rock(name + " low", "lower end of the 90 % interval", "D·exp(−1.645·e)",
                      size.low());
  steps.computed_rock(name + " high", "upper end of the 90 % interval", "D·exp(1.645·e)",
                      size.high());
}

Expected<PhotoGradation> gradation_from_photos(const PhotoSet& set,
                                               const std::vector<PhotoCalibration>& calibrations) {
  Steps steps;
  auto seen = stones_on_photos(set, calibrations, steps);
  if (!seen) return seen.problems();
  const SurfaceShare share(seen->stones);
  const auto largest = largest_of_set(set, steps);
  if (!largest) return largest.problems();
  auto curve = photo_curve(*seen, share);
  if (!curve) return curve.problems();
  if (set.taped_largest) {
    if (auto problem = end_at_largest(*curve, *set.taped_largest)) return *problem;
  }
  auto gradation = Gradation::make(curve->points, {});
  if (!gradation) return gradation.problems();

  PhotoGradation result{MeasuredGradation{std::move(*gradation)}, sizes_of(*seen, share)};
  if (auto problem = problem_of_alike_sizes(result.sizes)) return *problem;
  auto& measured = result.measured;
  measured.stones = static_cast<int>(seen->stones.size());
  measured.photos = static_cast<int>(set.photos.size());
  measured.method = method_of(*seen, set.photos.size());
  measured.picked_on_grid = true;
  measured.effective_at_points = std::move(curve->effective);
  measured.lasting_at_points = std::move(curve->lasting);
  measured.smallest_known = false;
  measured.largest_known = largest->has_value();
  measured.seen_larger_than = *largest;
  const auto median = measured.curve.size_at(50);
  measured.effective_stones =
      measured.effective_stones_at(median ? *median : measured.curve.points().front().size);

  measured.size_errors = std::move(curve->size_errors);

  steps.given("n", "stones used", measure(static_cast<double>(measured.stones)));
  steps.given("n cut", "stones cut by an edge of the picture, left out",
              measure(static_cast<double>(seen->cut_by_edge)));
  steps.given("n marks", "outlines of balls and marker boards, left out",
              measure(static_cast<double>(seen->on_marks)));
  steps.given("n hidden", "nodes left out as mostly hidden",
              measure(static_cast<double>(seen->mostly_hidden)));
  if (!seen->tapped) {
    steps.computed("A", "what the stones count together, m² of surface",
                   "Σ A·s²/[(1 − w/W)(1 − h/H)]", measure(surface_of(seen->stones)),
                   rendered_piles("pieces cut by the edge").sentence());
  }
  seen->factors.say(steps);
  steps.computed("e_s", "error of the scale of all photos together",
                 "√(Σ p²·e_s²), p what each photo counts; stated errors Σ p·e_s",
                 measure(seen->scale_error));
  for (const auto& size : result.sizes) say_photo_size(size, steps);
  steps.computed("ne", "equally informative stones behind D50",
                 "F(1 − F) / (variance of F by sampling, scale and factor)",
                 measure(measured.effective_stones));
  measured.steps = std::move(steps);

  measured.cautions = cautions_of_photos(set, *seen, result.sizes);
  return result;
}

}  // namespace proofstone
