#include "engine/vision/outline_cautions.h"

#include <fmt/format.h>

#include <algorithm>

namespace proofstone {
namespace {

// Reference study of rendered piles, section 10: a median of 40 pixels or more, 8 medians or more
// across the picture.
constexpr double least_median_to_trust = 40;
constexpr double least_across = 8;
/// A rendered pile that was darkened or blurred step by step had lost a tenth of its stones there
/// (blurred by 1.5 pixels of 768, standard deviation).
constexpr double dim = 80;
constexpr double blurred = 0.06;

double luma(const std::uint8_t* rgb) { return 0.299 * rgb[0] + 0.587 * rgb[1] + 0.114 * rgb[2]; }

}  // namespace

LightOfPhoto light_of(const PhotoPixels& photo) {
  LightOfPhoto light;
  if (photo.width <= 0 || photo.rgb.empty()) return light;
  std::vector<double> lumas;
  lumas.reserve(photo.rgb.size() / 3);
  for (std::size_t i = 0; i + 2 < photo.rgb.size(); i += 3) lumas.push_back(luma(&photo.rgb[i]));
  double changes = 0;
  double bends = 0;
  const auto width = static_cast<std::size_t>(photo.width);
  for (std::size_t row = 0; row + width <= lumas.size(); row += width) {
    for (std::size_t x = 1; x + 1 < width; ++x) {
      const double before = lumas[row + x] - lumas[row + x - 1];
      const double after = lumas[row + x + 1] - lumas[row + x];
      changes += before * before + after * after;
      bends += (after - before) * (after - before);
    }
  }
  if (changes > 0) light.sharpness = bends / (2 * changes);
  std::sort(lumas.begin(), lumas.end());
  const auto at = [&](double share) {
    return lumas[static_cast<std::size_t>(share * static_cast<double>(lumas.size() - 1))];
  };
  light.darkest = at(0.1);
  light.brightest = at(0.9);
  return light;
}

std::vector<std::string> cautions_of_light(const LightOfPhoto& light) {
  std::vector<std::string> cautions;
  if (light.brightest < dim) {
    cautions.emplace_back("The photo is dark: stones run into one another. Take it by daylight.");
  }
  if (light.sharpness < blurred) {
    cautions.emplace_back(
        "The photo is blurred: small stones are lost. Hold still, wipe the lens, focus on the "
        "rock.");
  }
  return cautions;
}

std::vector<std::string> cautions_of_outlines(const LightOfPhoto& light,
                                              const StonesInView& stones) {
  auto cautions = cautions_of_light(light);
  if (stones.median < least_median_to_trust) {
    cautions.push_back(fmt::format(
        "Half of the rock seen is smaller than {:.0f} pixels; {:.0f} or more tell more. "
        "Go nearer, or take the photo with more pixels.",
        stones.median, least_median_to_trust));
  }
  if (stones.across < least_across) {
    cautions.push_back(
        fmt::format("The photo is only {:.0f} median stones wide; 12 to 14 tell more. Take it from "
                    "farther away, or take more photos that do not overlap.",
                    stones.across));
  }
  return cautions;
}

}  // namespace proofstone
