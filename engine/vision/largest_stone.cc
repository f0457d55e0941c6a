#include "engine/vision/largest_stone.h"

#include <fmt/format.h>

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/vision/photo_scale.h"
#include "engine/vision/repeated_photos.h"
#include "engine/vision/size_factors.h"

namespace proofstone {
Expected<LargestByEnds> largest_by_ends(const PhotoSet& set, Steps& steps) {
  const auto& tapped = *set.tapped_largest;
  if (tapped.photo < 1 || static_cast<std::size_t>(tapped.photo) > set.photos.size()) {
    return Problem{"no-photo", "There is no photo of that number.", "", "largest",
                   fmt::format("1 to {}", set.photos.size())};
  }
  const auto index = static_cast<std::size_t>(tapped.photo - 1);
  const auto& photo = set.photos[index];
  auto unread = Steps::unread();
  const auto scale = photo_scale(photo, photo_name(index), unread);
  if (!scale) return scale.problems();
  const double pixels = pixels_between(tapped.from, tapped.to);
  const Length pixel = scale->pixel_at((tapped.from.y + tapped.to.y) / 2);
  if (!(pixels >= 1 && is_on_picture(tapped.from, photo.size) &&
        is_on_picture(tapped.to, photo.size) && pixel.si() > 0)) {
    return Problem{"outside-picture", "Its ends are at one place or outside the picture.", "",
                   "largest", "two taps at the ends of the stone"};
  }
  const double z = normal_quantile(1 - (1 - interval_confidence) / 2);
  const double part = std::exp(z * scale->error());
  const Length size = pixels * pixel;
  LargestByEnds largest{size, size / part, size * part};
  steps.computed("s", "metres to a pixel at the largest stone", "scale half-way between its ends",
                 measure(pixel.meters()));
  steps.computed_rock("D_max seen", "largest stone seen, by its tapped ends", "pixels · s", size);
  steps.computed_rock("D_max", "size that the largest stone has at least, by its tapped ends",
                      "pixels · s · exp(−1.645·e_s)", largest.low);
  return largest;
}

}  // namespace proofstone
