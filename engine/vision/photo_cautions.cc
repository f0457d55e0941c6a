#include "engine/vision/photo_cautions.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/evidence/size_text.h"
#include "engine/vision/scale_cautions.h"
#include "engine/vision/size_factors.h"

namespace proofstone {
namespace {

constexpr double fewest_pixels_of_median = 40;
constexpr double fewest_medians_across = 8;
constexpr double most_hidden_part = 0.5;

void caution_of_sizes(const PhotoSet& set, const StonesOnPhotos& seen,
                      const std::vector<PhotoSize>& sizes, std::vector<std::string>& cautions) {
  if (sizes.empty() || sizes.front().percent > 15) {
    cautions.push_back(fmt::format(
        "D15 is not yet known: it is smaller than the smallest stone that the photos resolve, {} "
        "as photographed.",
        size_in_both_systems(seen.smallest_resolved)));
  } else if (set.lies == RockLies::in_heap && !set.spread) {
    cautions.emplace_back(
        "D15 is indicative: small stones fall into the holes between large ones, and in a heap its "
        "factor hangs on how far the sizes spread.");
  } else {
    cautions.emplace_back(
        "D15 is indicative: small stones fall into the holes between large ones.");
  }
  const auto median = std::find_if(sizes.begin(), sizes.end(),
                                   [](const PhotoSize& size) { return size.percent >= 50; });
  if (median == sizes.end() || median->percent > 50) return;
  std::vector<double> pixels = seen.sizes_in_pixels;
  std::nth_element(pixels.begin(), pixels.begin() + static_cast<std::ptrdiff_t>(pixels.size() / 2),
                   pixels.end());
  if (pixels[pixels.size() / 2] < fewest_pixels_of_median) {
    cautions.push_back(
        fmt::format("Half of the stones are smaller than {:.0f} pixels; 50 to 100 tell more.",
                    pixels[pixels.size() / 2]));
  }
  double across = 0;
  int narrow = 0;
  for (std::size_t i = 0; i < set.photos.size(); ++i) {
    const Length width = seen.scales[i].width_of(set.photos[i].size);
    across += width / median->size;
    if (width < narrowest_in_medians * median->as_photographed) ++narrow;
  }
  if (across < fewest_medians_across) {
    cautions.push_back(fmt::format(
        "All photos together are {:.1f} D50 wide; take them 12 to 14 D50 wide, or more of them.",
        across));
  } else if (narrow > 0) {
    cautions.push_back(fmt::format(
        "{} of the photos {} less than {:g} D50 wide and not so sure; take them 12 to 14 D50 wide.",
        narrow, narrow == 1 ? "is" : "are", narrowest_in_medians));
  }
}

void caution_of_photos(const PhotoSet& set, const StonesOnPhotos& seen,
                       std::vector<std::string>& cautions) {
  for (std::size_t i = 0; i < set.photos.size(); ++i) {
    const auto& photo = set.photos[i];
    for (auto& caution : cautions_of_scale(photo, static_cast<int>(i) + 1)) {
      cautions.push_back(std::move(caution));
    }
    if (!photo.focal_length && !photo.balls.empty()) {
      cautions.push_back(fmt::format(
          "Photo {} does not state its focal length: 26 mm was taken (common practice).", i + 1));
    }
  }
  const double tapped = static_cast<double>(seen.stones.size()) + seen.mostly_hidden;
  if (seen.mostly_hidden > most_hidden_part * tapped) {
    cautions.emplace_back("More than half of the nodes were left out as mostly hidden.");
  }
  if (!seen.tapped) {
    cautions.emplace_back("How well the outlines were drawn is not in the limits.");
  }
  if (set.photos.size() > 1) {
    cautions.emplace_back(
        "Photos that show the same rock tell no more than one: where they overlap, or show all of "
        "a small pile, the limits are too narrow.");
  }
  cautions.emplace_back(
      "A photo shows the surface; the factors lead to the whole pile as it was poured or placed. "
      "Photograph several faces and heights, or a freshly cut face.");
  cautions.emplace_back(
      "The factors were found on rendered piles and never checked against rock that was weighed: "
      "replace them by a calibration of your own.");
}

}  // namespace

std::vector<std::string> cautions_of_photos(const PhotoSet& set, const StonesOnPhotos& seen,
                                            const std::vector<PhotoSize>& sizes) {
  std::vector<std::string> cautions;
  caution_of_sizes(set, seen, sizes, cautions);
  caution_of_photos(set, seen, cautions);
  return cautions;
}

}  // namespace proofstone
