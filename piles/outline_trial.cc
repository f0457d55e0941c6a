#include "piles/outline_trial.h"

#include <algorithm>
#include <cmath>

#include "engine/vision/outline_photo.h"
#include "engine/vision/photo_scale.h"
#include "engine/vision/surface_share.h"
#include "piles/noise.h"

namespace proofstone::piles {
namespace {

/// Stones of fewer pixels are not told from noise, in truth as in what is
/// found.
constexpr double least_pixels = 12;

/// What the outlines cover, drawn back into a picture: the number of the
/// outline at each pixel.
StoneRegions drawn_back(const std::vector<std::vector<PhotoPoint>>& outlines, int width,
                        int height) {
  StoneRegions regions{width, height, static_cast<int>(outlines.size()), {}};
  regions.stone.assign(static_cast<std::size_t>(width * height), 0);
  for (std::size_t number = 0; number < outlines.size(); ++number) {
    const auto& outline = outlines[number];
    for (int y = 0; y < height; ++y) {
      std::vector<double> crossings;
      for (std::size_t i = 0; i < outline.size(); ++i) {
        const PhotoPoint from = outline[i];
        const PhotoPoint to = outline[(i + 1) % outline.size()];
        if ((from.y > y + 0.5) == (to.y > y + 0.5)) continue;
        crossings.push_back(from.x + (y + 0.5 - from.y) / (to.y - from.y) * (to.x - from.x));
      }
      std::sort(crossings.begin(), crossings.end());
      for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
        const int last = std::min(width - 1, static_cast<int>(std::floor(crossings[i + 1] - 0.5)));
        for (int x = std::max(0, static_cast<int>(std::ceil(crossings[i] - 0.5))); x <= last; ++x) {
          regions.stone[static_cast<std::size_t>(y * width + x)] = static_cast<int>(number) + 1;
        }
      }
    }
  }
  return regions;
}

void match(const StoneRegions& truth, const StoneRegions& found, TriedPicture& tried) {
  const auto true_pieces = pieces_of(truth);
  const auto found_pieces = pieces_of(found);
  std::map<std::pair<int, int>, double> common;
  for (std::size_t i = 0; i < truth.stone.size(); ++i) ++common[{truth.stone[i], found.stone[i]}];
  std::vector<bool> matched(true_pieces.size(), false);
  for (const auto& [pair, area] : common) {
    if (pair.first == 0 || pair.second == 0) continue;
    const auto one = static_cast<std::size_t>(pair.first - 1);
    const auto other = static_cast<std::size_t>(pair.second - 1);
    if (area > 0.5 * (true_pieces[one].area + found_pieces[other].area - area)) matched[one] = true;
  }
  double all_area = 0;
  double all_count = 0;
  for (std::size_t i = 0; i < true_pieces.size(); ++i) {
    if (true_pieces[i].area < least_pixels) continue;
    all_area += true_pieces[i].area;
    all_count += 1;
    if (!matched[i]) continue;
    tried.matched_area += true_pieces[i].area;
    tried.matched_count += 1;
  }
  tried.matched_area /= all_area;
  tried.matched_count /= all_count;
}

/// The true sizes of the stones seen whole, each by its visible area; nothing
/// where the scale is contradictory, as it is on a face that falls away from
/// the camera.
void compare_seen(const TrialPile& pile, const TrialPicture& picture, TriedPicture& tried) {
  Steps steps;
  const auto scale = photo_scale(picture.photo, picture.name, steps);
  std::vector<SeenStone> seen;
  const auto pieces = pieces_of(picture.stones);
  for (std::size_t i = 0; i < pieces.size() && scale; ++i) {
    if (pieces[i].area < least_pixels || is_cut_by_edge(pieces[i], picture.photo.size)) continue;
    const Length pixel = scale->pixel_at(pieces[i].box.middle().y);
    seen.push_back(
        {Length::meters(pile.stone_sizes[i]), pieces[i].area * pixel.meters() * pixel.meters() *
                                                  edge_weight(pieces[i], picture.photo.size)});
  }
  if (seen.empty()) return;
  const SurfaceShare share(std::move(seen));
  for (std::size_t i = 0; i < tried_percents.size(); ++i) {
    tried.seen_over_pile[i] =
        std::log(share.size_at(tried_percents[i]).meters() / pile.sizes.at(tried_percents[i]));
  }
}

TriedPicture try_picture(const TrialPile& pile, const TrialPicture& picture,
                         const OutlineNetwork& network, unsigned seed) {
  TriedPicture tried;
  tried.light = picture.weather;
  tried.dust = picture.dust;
  tried.true_photo = tried.found_photo = picture.photo;
  for (const auto& piece : pieces_of(picture.stones)) {
    if (piece.area >= least_pixels) tried.true_photo.pieces.push_back(piece);
  }
  compare_seen(pile, picture, tried);
  tried.taps = seen_taps(picture, screen_grid, mixed_seed(seed, 1));
  tried.close_taps = seen_taps(picture, close_grid, mixed_seed(seed, 2));
  auto found = outline_photo(picture.pixels, network, picture.name);
  if (!found) {
    tried.why_not = found.problems().front().code;
    return tried;
  }
  match(picture.stones, drawn_back(found->outlines, picture.pixels.width, picture.pixels.height),
        tried);
  tried.found_photo.outlines = std::move(found->outlines);
  tried.found_photo.smallest_drawn = std::max(8.0, 8 * found->working_pixel);
  return tried;
}

/// Of a stone that is tapped so much shows at the least; the factors of tapped stones were found
/// so.
constexpr double least_shown = 0.35;
constexpr double least_shown_to_choosy = 0.5;

Photo tapped_photo(const Photo& taken, const std::vector<SeenTap>& taps, double least) {
  Photo photo = taken;
  photo.pieces.clear();
  photo.tapped = tapped_stones(taps, least, photo.size);
  return photo;
}

}  // namespace

Photo TriedPicture::photo_by(SizesBy by) const {
  switch (by) {
    case SizesBy::true_outlines:
      return true_photo;
    case SizesBy::network:
      return found_photo;
    case SizesBy::taps:
      return tapped_photo(true_photo, taps, least_shown);
    case SizesBy::close_taps:
      return tapped_photo(true_photo, close_taps, least_shown);
    case SizesBy::choosy_taps:
      break;
  }
  return tapped_photo(true_photo, close_taps, least_shown_to_choosy);
}

TriedPile try_pile(const TrialPile& pile, const OutlineNetwork& network) {
  TriedPile tried;
  tried.name = pile.name;
  tried.form = pile.form;
  tried.rock = pile.rock;
  tried.lies = pile.heap ? RockLies::in_heap : RockLies::in_layer;
  tried.sizes = pile.sizes;
  tried.apart = !pile.pictures.empty() && pile.pictures.front().apart;
  const auto seed = static_cast<unsigned>(pile.stone_sizes.size());
  for (std::size_t i = 0; i < pile.pictures.size(); ++i) {
    tried.pictures.push_back(
        try_picture(pile, pile.pictures[i], network, mixed_seed(seed, static_cast<unsigned>(i))));
  }
  return tried;
}

std::optional<SizesSaid> sizes_said(const TriedPile& pile, const std::vector<Photo>& photos,
                                    const std::vector<PhotoCalibration>& calibrations) {
  PhotoSet set;
  set.photos = photos;
  set.lies = pile.lies;
  const auto gradation = gradation_from_photos(set, calibrations);
  if (!gradation) return std::nullopt;
  SizesSaid said;
  for (const auto& size : gradation->sizes) said.sizes[static_cast<int>(size.percent)] = size;
  return said;
}

std::optional<PhotoCalibration> calibration_on(const TriedPile& pile,
                                               const std::vector<Photo>& photos) {
  const auto said = sizes_said(pile, photos);
  if (!said) return std::nullopt;
  double error = 0;
  std::map<int, Dimensionless> factors;
  for (const int percent : tried_percents) {
    const auto size = said->sizes.find(percent);
    if (size == said->sizes.end()) return std::nullopt;
    factors[percent] =
        Dimensionless::number(size->second.as_photographed.meters() / pile.sizes.at(percent));
    error = std::max(error, size->second.sampling_error);
  }
  PhotoCalibration calibration;
  calibration.from = pile.name;
  calibration.view = photos.front().view;
  calibration.lies = pile.lies;
  calibration.of_tapped_stones = !photos.front().tapped.empty();
  calibration.d15 = factors[15];
  calibration.d50 = factors[50];
  calibration.d85 = factors[85];
  calibration.error = Dimensionless::number(error);
  return calibration;
}

}  // namespace proofstone::piles
