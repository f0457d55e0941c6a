#include "piles/layer_factors.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/vision/size_factors.h"
#include "piles/trial_ratios.h"

namespace proofstone::piles {
namespace {

constexpr std::size_t photos_together = 4;
constexpr std::size_t fewest_rocks = 3;
constexpr double interval_confidence = 0.90;

}  // namespace

std::vector<const TriedPile*> of_same_rock(const std::vector<TriedPile>& piles) {
  std::vector<const TriedPile*> others(piles.size(), nullptr);
  for (std::size_t i = 0; i + 1 < piles.size(); ++i) {
    const bool same = piles[i].rock == piles[i + 1].rock && piles[i].form == piles[i + 1].form;
    if (!same || others[i] != nullptr) continue;
    others[i] = &piles[i + 1];
    others[i + 1] = &piles[i];
  }
  return others;
}

double LayerFactor::error() const {
  const auto n = static_cast<double>(rocks);
  const double above = (1 - interval_confidence) / 2;
  return between_rocks * std::sqrt(1 + 1 / n) * student_quantile_above(above, n - 1) /
         normal_quantile(1 - above);
}

std::optional<LayerFactors::Seen> LayerFactors::layer_seen(const TriedPile& pile,
                                                           PhotoView view) const {
  std::vector<Photo> photos;
  for (const auto& picture : pile.pictures) {
    if (!picture.why_not.empty() || picture.found_photo.view != view) continue;
    if (photos.size() < photos_together) photos.push_back(picture.photo_by(by_));
  }
  if (photos.size() < photos_together) return std::nullopt;
  const auto said = sizes_said(pile, photos);
  if (!said) return std::nullopt;
  Seen seen;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    const auto size = said->sizes.find(tried_percents[i]);
    if (size == said->sizes.end()) return std::nullopt;
    seen[i] = {std::log(size->second.as_photographed.meters() / pile.sizes.at(tried_percents[i])),
               size->second.sampling_error};
  }
  return seen;
}

LayerFactors::LayerFactors(const std::vector<TriedPile>& piles, SizesBy by) : by_(by) {
  const auto others = of_same_rock(piles);
  for (std::size_t i = 0; i + 1 < piles.size(); ++i) {
    if (others[i] != &piles[i + 1]) continue;
    for (const auto view : {PhotoView::straight_on, PhotoView::oblique}) {
      const auto one = layer_seen(piles[i], view);
      const auto other = layer_seen(piles[i + 1], view);
      if (one && other) pairs_.push_back({&piles[i], &piles[i + 1], view, *one, *other});
    }
  }
}

std::optional<LayerFactor> LayerFactors::without(const TriedPile* pile, PhotoView view,
                                                 int percent) const {
  const auto at = static_cast<std::size_t>(
      std::find(tried_percents.begin(), tried_percents.end(), percent) - tried_percents.begin());
  Ratios means;
  double squares_within = 0;
  double squares_of_sampling = 0;
  for (const auto& pair : pairs_) {
    if (pair.view != view || pair.one == pile || pair.other == pile) continue;
    const auto& one = pair.seen_of_one.at(at);
    const auto& other = pair.seen_of_other.at(at);
    means.logs.push_back((one.log_ratio + other.log_ratio) / 2);
    const double apart = one.log_ratio - other.log_ratio;
    squares_within += apart * apart / 2;
    squares_of_sampling +=
        (one.sampling_error * one.sampling_error + other.sampling_error * other.sampling_error) / 2;
  }
  if (means.logs.size() < fewest_rocks) return std::nullopt;
  const auto n = static_cast<double>(means.logs.size());
  const double of_means = means.deviation() * means.deviation();
  LayerFactor factor;
  factor.rocks = means.logs.size();
  factor.ratio = std::exp(means.mean());
  factor.between_layers = std::sqrt(squares_within / n);
  // The means of two layers scatter by half the variance of one, too.
  factor.between_rocks = std::sqrt(std::max(0.0, of_means - squares_within / n / 2));
  factor.sampling = std::sqrt(squares_of_sampling / n);
  return factor;
}

std::string LayerFactors::table() const {
  std::string text =
      "| Four photos | | rocks | factor | from rock to rock | between two layers | of sampling, as "
      "stated | error left | used: factor, error |\n|---|---|---|---|---|---|---|---|---|\n";
  for (const auto view : {PhotoView::straight_on, PhotoView::oblique}) {
    const bool tapped = by_ != SizesBy::true_outlines && by_ != SizesBy::network;
    const auto used = size_factors({view, RockLies::in_layer, tapped}, std::nullopt, nullptr);
    for (const int percent : tried_percents) {
      const auto found = without(nullptr, view, percent);
      if (!found) continue;
      const auto factor = used.at(percent);
      text += fmt::format(
          "| {} | D{} | {} | {:.3f} | {:.1f} % | {:.1f} % | {:.1f} % | {:.1f} % | {:.3f}, {:.1f} % "
          "|\n",
          view == PhotoView::oblique ? "oblique" : "straight on", percent, found->rocks,
          found->ratio, 100 * found->between_rocks, 100 * found->between_layers,
          100 * found->sampling, 100 * found->error(), factor.ratio, 100 * factor.error);
    }
  }
  return text;
}

}  // namespace proofstone::piles
