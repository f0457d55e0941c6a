#include "engine/vision/outline_photo.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/vision/outline_cautions.h"
#include "engine/vision/photo_marks.h"
#include "engine/vision/stone_regions.h"

namespace proofstone {
namespace {

constexpr int least_side_of_photo = 240;
constexpr int first_side = 768;
constexpr std::size_t fewest_stones = 20;
/// Below this share of the picture what looks like stones is chance.
constexpr double least_rock_share = 0.40;
// Median sizes in pixels, by area, of the piles that the network was trained on: 30 to 170.
constexpr double least_median = 36;
constexpr double largest_median = 165;
constexpr double good_small_median = 60;
constexpr double good_large_median = 110;
/// Of the whole work, what the first pass is taken for while nobody knows whether there is another.
constexpr double first_part = 0.4;

struct TentPart {
  int from = 0;
  std::vector<float> weights;
};

/// What each of `to` pixels takes from a row of `from` pixels.
std::vector<TentPart> tent_parts(int from, int to) {
  const double step = static_cast<double>(from) / to;
  const double reach = std::max(1.0, step);
  std::vector<TentPart> parts(static_cast<std::size_t>(to));
  for (int i = 0; i < to; ++i) {
    const double middle = (i + 0.5) * step - 0.5;
    const int first = std::max(0, static_cast<int>(std::ceil(middle - reach)));
    const int last = std::min(from - 1, static_cast<int>(std::floor(middle + reach)));
    auto& part = parts[static_cast<std::size_t>(i)];
    part.from = first;
    double sum = 0;
    for (int at = first; at <= last; ++at) sum += reach - std::abs(at - middle);
    for (int at = first; at <= last; ++at) {
      part.weights.push_back(static_cast<float>((reach - std::abs(at - middle)) / sum));
    }
  }
  return parts;
}

std::optional<Problem> problem_of_light(const LightOfPhoto& light, const std::string& where) {
  if (light.brightest < 45) {
    return Problem{"too-dark", "The photo is too dark to tell one stone from the next.", "", where,
                   "a photo by daylight"};
  }
  if (light.brightest - light.darkest < 12) {
    return Problem{"no-contrast", "The photo shows next to nothing: it is of one tone all over.",
                   "", where, "a photo of rock, in focus"};
  }
  return std::nullopt;
}

/// Half of the area of all pieces is of smaller ones.
double median_size(const std::vector<std::vector<PhotoPoint>>& outlines) {
  std::vector<double> areas;
  double all = 0;
  for (const auto& outline : outlines) {
    areas.push_back(piece_of_outline(outline, "")->area);
    all += areas.back();
  }
  std::sort(areas.begin(), areas.end());
  double below = 0;
  for (const double area : areas) {
    below += area;
    if (below >= all / 2) return equal_area_diameter(area);
  }
  return 0;
}

struct WorkingResult {
  std::vector<std::vector<PhotoPoint>> outlines;
  double rock_share = 0;
};

WorkingResult work_on(const PhotoPixels& photo, const OutlineNetwork& network,
                      const OutlineProgress& progress) {
  const auto regions = stone_regions(network.maps(photo, progress));
  const auto rock = std::count_if(regions.stone.begin(), regions.stone.end(),
                                  [](int stone) { return stone != 0; });
  return {outlines_of(regions),
          static_cast<double>(rock) / static_cast<double>(regions.stone.size())};
}

/// What hears of a part of the work, where anybody hears of the whole.
OutlineProgress part_of_work(const OutlineProgress& whole, double from, double to) {
  if (!whole) return {};
  return [&whole, from, to](double share) { whole(from + share * (to - from)); };
}

/// The side at which stones of this median are as large as those that were trained on; 0: as is.
double better_side(double side, double median, int photo_side) {
  if (median > 0 && median < least_median) {
    const double larger = std::min({side * good_small_median / median,
                                    static_cast<double>(longest_side_worked_on), 2.0 * photo_side});
    return larger > side * 1.15 ? larger : 0;
  }
  if (median > largest_median) {
    return std::max(static_cast<double>(least_side_of_photo), side * good_large_median / median);
  }
  return 0;
}

}  // namespace

PhotoPixels resized(const PhotoPixels& photo, int width, int height) {
  const auto across = tent_parts(photo.width, width);
  const auto down = tent_parts(photo.height, height);
  const auto row_floats = static_cast<std::size_t>(width) * 3;
  std::vector<float> rows(row_floats * static_cast<std::size_t>(photo.height));
  for (int y = 0; y < photo.height; ++y) {
    const std::uint8_t* in =
        photo.rgb.data() + static_cast<std::size_t>(y) * static_cast<std::size_t>(photo.width) * 3;
    float* out = rows.data() + static_cast<std::size_t>(y) * row_floats;
    for (const auto& part : across) {
      float sums[3] = {0, 0, 0};
      const std::uint8_t* from = in + static_cast<std::ptrdiff_t>(part.from) * 3;
      for (const float weight : part.weights) {
        for (int channel = 0; channel < 3; ++channel) {
          sums[channel] += weight * static_cast<float>(*from++);
        }
      }
      out = std::copy(std::begin(sums), std::end(sums), out);
    }
  }
  PhotoPixels result{width, height, {}};
  result.rgb.reserve(row_floats * static_cast<std::size_t>(height));
  std::vector<float> sums(row_floats);
  for (const auto& part : down) {
    std::fill(sums.begin(), sums.end(), 0.0F);
    for (std::size_t i = 0; i < part.weights.size(); ++i) {
      const float* row = rows.data() + (static_cast<std::size_t>(part.from) + i) * row_floats;
      for (std::size_t k = 0; k < row_floats; ++k) sums[k] += part.weights[i] * row[k];
    }
    for (const float sum : sums) {
      result.rgb.push_back(static_cast<std::uint8_t>(std::clamp(sum + 0.5F, 0.0F, 255.0F)));
    }
  }
  return result;
}

std::optional<Problem> problem_of_pixels(const PhotoPixels& photo, const std::string& where) {
  const bool sized = photo.width > 0 && photo.height > 0;
  if (!sized || photo.rgb.size() != static_cast<std::size_t>(photo.width) *
                                        static_cast<std::size_t>(photo.height) * 3) {
    return Problem{"not-a-photo", "Its pixels do not fill the picture.", "", where, "a photo"};
  }
  if (std::min(photo.width, photo.height) < least_side_of_photo) {
    return Problem{"too-small",
                   fmt::format("The photo has {} × {} pixels.", photo.width, photo.height), "",
                   where, fmt::format("{} pixels or more each way", least_side_of_photo)};
  }
  return std::nullopt;
}

Expected<OutlinedPhoto> outline_photo(const PhotoPixels& photo, const OutlineNetwork& network,
                                      const std::string& where, const OutlineProgress& progress) {
  if (auto problem = problem_of_pixels(photo, where)) return *problem;
  const int photo_side = std::max(photo.width, photo.height);
  double side = std::min(first_side, photo_side);
  const auto first = with_longer_side(photo, side);
  const auto light = light_of(first);
  if (auto problem = problem_of_light(light, where)) return *problem;
  auto found = work_on(first, network, part_of_work(progress, 0, first_part));
  if (found.rock_share >= least_rock_share) {
    const double better = better_side(side, median_size(found.outlines), photo_side);
    if (better > 0) {
      side = better;
      found =
          work_on(with_longer_side(photo, side), network, part_of_work(progress, first_part, 1));
    }
  }
  if (found.rock_share < least_rock_share) {
    return Problem{"no-rock",
                   fmt::format("No rock was found on it, or too little: {:.0f} % of the picture.",
                               100 * found.rock_share),
                   "", where,
                   fmt::format("rock on {:.0f} % of it or more, stones whole in the frame",
                               100 * least_rock_share)};
  }
  if (found.outlines.size() < fewest_stones) {
    return Problem{"too-few-stones",
                   fmt::format("Only {} stones were found on it.", found.outlines.size()), "",
                   where, fmt::format("{} or more, from farther away", fewest_stones)};
  }
  const double median = median_size(found.outlines);
  OutlinedPhoto result{std::move(found.outlines), photo_side / side, found.rock_share, {}, {}};
  result.balls = balls_on_smaller(first, photo.width);
  result.cautions = cautions_of_outlines(light, {median * result.working_pixel, side / median});
  for (auto& outline : result.outlines) {
    for (auto& point : outline) {
      // A side may have been rounded to a whole pixel: no corner leaves the photo.
      point.x = std::min(point.x * result.working_pixel, static_cast<double>(photo.width));
      point.y = std::min(point.y * result.working_pixel, static_cast<double>(photo.height));
    }
  }
  return result;
}

}  // namespace proofstone
