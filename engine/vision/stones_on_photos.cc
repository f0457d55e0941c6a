#include "engine/vision/stones_on_photos.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/vision/photo_reading.h"
#include "engine/vision/repeated_photos.h"
#include "engine/vision/surface_share.h"
#include "engine/vision/vision_sources.h"

namespace proofstone {
namespace {

constexpr std::size_t fewest_stones = 50;
constexpr std::size_t fewest_blocks = 6;
constexpr std::size_t most_stones_on_photo = 20'000;

bool has_outlines(const Photo& photo) { return !photo.outlines.empty() || !photo.pieces.empty(); }

Problems problems_of_set(const PhotoSet& set) {
  Problems problems;
  if (set.photos.empty()) {
    return {{"no-photo", "There is no photo.", "", "", "at least one photo"}};
  }
  bool outlined = false;
  bool tapped = false;
  for (std::size_t i = 0; i < set.photos.size(); ++i) {
    const auto& photo = set.photos[i];
    outlined = outlined || has_outlines(photo);
    tapped = tapped || !photo.tapped.empty();
    const std::size_t drawn = photo.outlines.size() + photo.pieces.size() + photo.tapped.size();
    if (drawn == 0 || drawn > most_stones_on_photo) {
      problems.push_back({"no-stones", fmt::format("{} stones are drawn on it.", drawn), "",
                          photo_name(i), fmt::format("1 to {} stones", most_stones_on_photo)});
    }
  }
  if (outlined && tapped) {
    problems.push_back({"mixed", "Outlined and tapped stones become sizes in different ways.", "",
                        "photos", "all outlined or all tapped; the other as a look of its own"});
  }
  for (auto& problem : problems_of_repeated_photos(set)) problems.push_back(std::move(problem));
  return problems;
}

const PhotoCalibration* calibration_for(const std::vector<PhotoCalibration>& calibrations,
                                        PhotoView view, RockLies lies, bool tapped) {
  for (const auto& one : calibrations) {
    if (one.view == view && one.lies == lies && one.of_tapped_stones == tapped) return &one;
  }
  return nullptr;
}

void add_part(SizeFactor& sum, const SizeFactor& factor, double part) {
  sum.ratio += part * factor.ratio;
  sum.error += part * factor.error;
}

/// The factors and the scale's error of all photos, each by the share of what it counts. An error
/// that the observer states is his on every photo; errors of balls are each photo's own.
void put_together(const PhotoSet& set, const std::vector<PhotoCalibration>& calibrations,
                  StonesOnPhotos& seen) {
  std::vector<double> weights(set.photos.size(), 0);
  double all = 0;
  for (const auto& stone : seen.stones) {
    weights[stone.block / blocks_of_photo] += stone.weight;
    all += stone.weight;
  }
  const Length median = SurfaceShare(seen.stones).size_at(50);
  SizeFactors mean{{0, 0}, {0, 0}, {0, 0}, {}};
  double own = 0;
  double common = 0;
  for (std::size_t i = 0; i < set.photos.size(); ++i) {
    const double part = weights[i] / all;
    const auto view = set.photos[i].view;
    const Length width = seen.scales[i].width_of(set.photos[i].size);
    const auto factors =
        size_factors({view, set.lies, seen.tapped, width < narrowest_in_medians * median},
                     set.spread, calibration_for(calibrations, view, set.lies, seen.tapped));
    add_part(mean.at_15, factors.at_15, part);
    add_part(mean.at_50, factors.at_50, part);
    add_part(mean.at_85, factors.at_85, part);
    if (mean.origin.find(factors.origin) == std::string::npos) {
      mean.origin += (mean.origin.empty() ? "" : "; ") + factors.origin;
    }
    const double error = seen.scales[i].error();
    if (seen.scales[i].error_stated()) {
      common += part * error;
    } else {
      own += part * part * error * error;
    }
  }
  seen.factors = mean;
  seen.scale_error = std::sqrt(own + common * common);
}

std::optional<Problem> problem_of_too_few(const StonesOnPhotos& seen) {
  if (seen.stones.size() < fewest_stones) {
    return Problem{"too-few-pieces",
                   fmt::format("{} stones could be used; {} were cut by an edge, {} mostly hidden.",
                               seen.stones.size(), seen.cut_by_edge, seen.mostly_hidden),
                   "", "photos",
                   fmt::format("{} or more: with fewer, errors were not measured", fewest_stones)};
  }
  if (filled_blocks(seen.stones) < fewest_blocks) {
    return Problem{"one-corner",
                   "The stones lie in a small part of the pictures: how they vary over the rock "
                   "cannot be told.",
                   "", "photos", "stones from all over each picture"};
  }
  return std::nullopt;
}

}  // namespace

Expected<StonesOnPhotos> stones_on_photos(const PhotoSet& set,
                                          const std::vector<PhotoCalibration>& calibrations,
                                          Steps& steps) {
  Problems problems = problems_of_set(set);
  StonesOnPhotos seen;
  for (std::size_t i = 0; i < set.photos.size() && problems.empty(); ++i) {
    auto scale = photo_scale(set.photos[i], photo_name(i), steps);
    if (!scale) return scale.problems();
    seen.scales.push_back(*scale);
  }
  if (!problems.empty()) return problems;

  seen.tapped = !set.photos.front().tapped.empty();
  for (std::size_t i = 0; i < set.photos.size(); ++i) {
    read_photo(set.photos[i], i, seen, problems);
  }
  if (!problems.empty()) return problems;
  if (auto too_few = problem_of_too_few(seen)) return *too_few;
  put_together(set, calibrations, seen);
  return seen;
}

}  // namespace proofstone
